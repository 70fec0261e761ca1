"""German words that stand beside a number: what it counts, measures or names if it is no page."""

from __future__ import annotations

OTHER_BEFORE = """
wohne in | wohne in nummer | 1 über | 2 über | ein über | zwei über | faden über | fäden über |
bin | bin jetzt | bin schon | bin erst | bin ja schon | ich bin | er ist | sie ist | wir sind |
sind | ist jetzt | ich wurde | er wurde | sie wurde | mann wurde | tochter wurde | sohn wurde | wurde gestern | wurde heute | wurde gerade | werde | werde bald | werde heute | werde morgen |
werde ich | bin über | wird bald | wird heute | wird morgen | wird im | feiere meinen | zum |
zum meinem | bald | knapp | fast | beinahe | seit | seit über | seit fast | seit nunmehr |
seit gut | seit etwa | seit ca | seit rund | schon seit | am | um | gegen | ab | bis | bis zum |
vom | im jahr | jahr | jahrgang | anno | baujahr | im alter von | alter | vor | vor über |
vor etwa | nach | nach über | nach fast | während | innerhalb von | binnen | diese | dieser |
dieses | folge | teil | kapitel | staffel | video | episode | band | level | stufe | runde |
spiel | platz | rang | tag | woche | monat | stunde | minute | größe | grösse | gr |
kleidergröße | schuhgröße | nadel | nadelstärke | nadel nr | stärke | garn | garnfarbe | farbe |
farbnummer | aida | leinen | symbol | faden | fäden | docke | reihe | zeile |
spalte | stich | rapport | linie | bus | zug | gleis | tram | fähre | flug | tor | raum | zimmer |
wohnung | haus | etage | stock | hausnr | straße | strasse | plz | postleitzahl | autobahn |
ausfahrt | paragraph | artikel | regel | punkt | aufgabe | klasse | jahrgangsstufe | psalm |
vers | lied | opus | sinfonie nr | sonate nr | version | modell | typ | kanal | sender | formel |
lotto | temperatur | minus | grad | windstärke | stärke bft | böen bis | insgesamt | zusammen |
höchstens | mindestens | maximal | minimal | mehr als | weniger als | bis zu | noch über |
über die | jede | jeder | jedes | pro | je | alle paar | die letzten | die nächsten | die ersten |
den letzten | den nächsten | der letzten | in den letzten | in den nächsten | letzten | nächsten |
vergangenen | von den | von diesen | von insgesamt | von | eine von | einer von | eins von | aus |
unsere | unseren | ihre | seine | haben nur | habe nur | habe schon | habe noch | habe erst |
hab schon | hab noch | hab erst | hab nur | habe über | gibt es | gibt's | es gibt | gab es |
waren es | sind es noch | fehlen noch | fehlen | brauche noch | brauche | brauchte | kostet |
kostete | kosten | bezahlt | gezahlt | verkauft | gekauft | kaufte | bestellt | gestickt |
geschafft | schaffe | schaffte | gesehen | geschaut | getrunken | gegessen | gefahren | gelaufen |
gewartet | warte schon | warten schon | gestern | vorgestern | morgens | abends | nachts |
kurz nach | kurz vor | halb | viertel nach | viertel vor | januar | februar | märz | april | mai |
juni | juli | august | september | oktober | november | dezember | sommer | winter | frühling |
herbst | ostern | weihnachten | montag | dienstag | mittwoch | donnerstag | freitag | samstag |
sonntag | den | zu | zu zweit | top | covid | gebe ich | gebe |
von mir gibt es | bewertung | note | punktzahl | spielstand | steht es | wir waren | zähle |
gezählt | zählte
"""

OTHER_AFTER = """
über 1 | über 2 | über eins | über zwei | pack | er pack | lei | jahr | jahre | jahren | jahres |
jährige | jähriger | jähriges | j | monat | monate | monaten | woche | wochen | tag | tage |
tagen | tages | wochenende | wochenenden | stunde | stunden | std | h | minute | minuten | min |
sekunde | sekunden | sek | uhr | morgens | abends | nachts | mal | x | fach | prozent | promille |
euro | eur | € | cent | dollar | franken | grad | faden | fäden | fädig | fädigem | fädige |
stich | stiche | stichen | kreuz | kreuze | kreuzchen | kreuzen | kreuzstiche | farbe | farben |
garn | garne | garnen | docke | docken | strang | stränge | nadel | nadeln | rahmen | count | ct |
cm | mm | m | meter | metern | km | kilometer | zentimeter | millimeter | kg | kilo | g | gramm |
l | liter | ml | seiten | blätter | felder | seitig | projekt | projekte | projekten | ufo |
ufos | wip | wips | stickbild | stickbilder | bild | bilder | muster | stickpackung |
stickpackungen | vorlagen | reihe | reihen | zeile | zeilen | spalte | spalten | kind | kinder |
kindern | katze | katzen | hund | hunde | hunden | kater | pferd | pferde | huhn | hühner |
hennen | schaf | schafe | kuh | kühe | ziegen | enten | gänse | vögel | mal so | enkel | enkeln |
enkelkinder | enkelkindern | söhne | töchter | jungs | mädchen | geschwister | schwestern |
brüder | personen | person | leute | leuten | menschen | frauen | männer | freundinnen | freunde |
zuschauer | abonnenten | abos | aufrufe | klicks | likes | kommentare | kommentaren | stimmen |
punkte | punkten | sterne | tasse | tassen | becher | kaffee | kaffees | tee | stück | stücke |
kekse | kuchen | eier | löffel | el | tl | brötchen | gläser | glas | bier | flaschen |
portionen | teller | bücher | folgen | teile | teilen | staffeln | kapitel | videos | filme |
serien | lieder | runden | spiele | tore | versuche | anläufe | chancen | gründe | dinge |
sachen | wünsche | fragen | antworten | mails | nachrichten | wörter | sätze | zeichen | kisten |
dosen | kartons | tüten | taschen | schubladen | regale | körbe | boxen | päckchen | pakete |
packungen | rollen | sets | paar | paare | socken | mützen | decken | kissen | hemden | zimmer |
räume | häuser | etagen | stufen | treppen | schritte | kilometern | meilen | knoten | boote |
schiffe | fähren | züge | busse | autos | fahrräder | inseln | winter | wintern | sommer |
sommern | weihnachten | geburtstag | geburtstage | hochzeitstag | jahrzehnte | nächte | abende |
morgen früh | mal schon | mal am | mal im | mal pro | mal täglich | pro | am tag | am stück |
in der woche | im monat | im jahr | von uns | von ihnen | von euch | von meinen | von den |
von diesen | davon | weitere | weiteren | andere | anderen | neue | neuen | verschiedene |
verschiedenen | kleine | kleinen | große | großen | alte | volle | ganze | tausend | hundert |
millionen | mio | dutzend | von fünf | von zehn | sternen | hände | finger | augen | beine |
lampen | lupen | brillen | perlen | knöpfe | reste | symbole | hobbys | jobs | schichten |
termine | todsünden | zwerge | euros | kilos | lichtjahre | weltwunder | mann | ahnung | problem |
plan | lust | bock | januar | februar | märz | april | mai | juni | juli | august | september |
oktober | november | dezember | jan | feb | apr | jun | jul | aug | sept | okt | nov | dez |
monatige | tägige | stündige | wöchige | seitige | köpfige | auf 14ct | auf 16ct | auf 18ct |
auf 20ct | auf 25ct | auf 28ct | auf 14 | auf 16 | auf 18 | auf aida | auf leinen
"""

#: These say something else only where nothing says that n is chosen.
WEAK_BEFORE = """
mit | auf | bei | in | an | aus der | habe | hab | haben | hatte | hatten | hat | gehabt | noch |
schon | erst | nur noch | nur | gerade | genau | bereits | ganze | ganzen | bin bei |
ich bin bei | bin auf | mein | meinen | meiner | unser | dein | deine | deinen | über | unter |
plus | immer noch | jetzt schon | sitze an | arbeite an | sticke | sticke gerade | stickte |
etwas über | zwischen den | hier | dort | sehe | ist heute | was ist | machst
"""

WEAK_AFTER = """
fertig | geschafft | gestickt | übrig | davon | mehr | weniger | punkt | stimme | teil |
habe ich schon | von | habe ich | hab ich | hatte ich | mit | auf
"""

NEUTRAL_BEFORE = """
sondern | nein | nee | sorry | entschuldigung | besser | warte | so | oh | ok | okay | hm | hmm |
ja | jaja | jo | na | nun | also | dann | und | aber | denn | weil | da | hier | hallo | hi |
hey | moin | moinmoin | servus | grüezi | huhu | tach | guten | morgen | abend | tag | gute |
nacht | schönen | liebe | lieben | lieber | grüße | grüsse | gruß | gruss | lg | vlg | glg |
herzliche | herzlichen | danke | dankeschön | vielen | dank | tausend | super | toll | klasse |
schön | wunderschön | prima | genial | herrlich | spannend | wahnsinn | wow | ach | puh | juhu |
jippie | yeah | bitte | bitteschön | bidde | sagt | meint | sage | in | auf | für | ihr | euch |
dich | dir | mich | mir | uns | alle | zusammen | mädels | lieblinge | ladies | leute |
ihr lieben | heute | diesmal | dieses | mal | einfach | natürlich | klar | ganz | logisch |
vielleicht | wohl | sicher | bestimmt | wahrscheinlich | definitiv | eindeutig | unbedingt |
gern | gerne | der | die | das | dem | den | seite | nummer | ist | sein | es | drum | deshalb |
deswegen | daher | darum | somit | trotzdem | jedenfalls | jetzt | endlich | sonst | wenn nicht |
falls nicht | wenn nicht dann | falls nicht dann | noch | immer | wieder | auch | wie immer |
wie | wie gesagt | spontan | ohne | überlegen | bauch | bauchgefühl | x | xx | lol | haha | hihi |
viel | glück | freu | freue | spaß | ahnung | keine | egal | na dann | tja
"""

NEUTRAL_AFTER = """
gesagt | genannt | gewählt | genommen | getippt | weil | da | denn | und | aber | oder | also |
dann | wenn | falls | ich | wir | du | ihr | mir | mich | es | das | der | die | dem | den | ist |
sind | war | wäre | hat | hatte | sieht | klingt | fühlt | gefällt | passt | lacht | ruft |
lächelt | schreit | steht | liegt | bringt | macht | muss | soll | sollte | könnte | kann | wird |
werden | sein | haben | nehmen | für | mit | von | vom | zur | zum | aus | an | auf | bei | im |
in | um | als | wie | so | ja | nein | doch | auch | noch | nur | natürlich | klar | ganz | gern |
gerne | bitte | danke | dankeschön | vielen | lieben | liebe | lg | vlg | grüße | grüsse | gruß |
gruss | viele | herzliche | heute | diesmal | dieses | diese | mal | jetzt | immer | wieder |
wie immer | hallo | hi | moin | x | xx | lol | haha | hihi | hehe | yay | juhu | super | toll |
schön | gut | prima | nicht vergessen | nicht die | nicht nummer | nicht seite | nicht schon |
nicht längst | nicht bereits | schon | bereits | längst | weg | dran | mein | meine | unsere |
sonst | ansonsten | statt | anstatt | zu | zuerst | erst | erstmal | zunächst | hoffe |
hoffentlich | viel | glück | daumen | finde | freue | freu | schönen | tschüss | tschüß |
einfach | eben | halt | vielleicht | wohl | bestimmt | definitiv | eindeutig | unbedingt | ohne |
weiter | los | nach | dafür | darum | deshalb | deswegen | wo | was | warum | welche | na | ok |
okay | spannend | ihr lieben | mädels | ladies | leute | zusammen | nochmal | lieber | besser |
dieser | irgendwie | keine | ahnung
"""
