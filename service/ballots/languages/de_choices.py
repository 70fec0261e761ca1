"""German words of choosing, of taking back, and of other people's choices."""

from __future__ import annotations

CHOICE_BEFORE = """
tippe * auf | setze * auf | weiter mit | bleibe * bei | stimme * * für | dass ich | stimme |
stimmen | stimme für | stimmen für | stimme ist | stimme geht an | stimme geht für | stimme auf |
meine stimme für | meine stimme | stimme bekommt | stimme gehört | stimme hat | stimme kriegt |
voting für | vote | vote für | votiere für | voten für | wähle | wähl | wählen | wähle ich |
wählte | wählen wir | gewählt | wähle für | wahl | wahl ist | wahl fällt auf | wahl wäre |
entscheide mich für | entschieden für | entscheide für | entscheidung für | entscheiden uns für |
nehme | nehm | nehmen | nehmen wir | nimm | nimm die | nehmt | nehme ich | nehm ich |
würde nehmen | will | wollen | wir wollen | ich will | möchte | möchten | ich möchte | möcht |
mag | magst | mögen | ich mag | hätte gern | hätte gerne | hätt gern | hätt gerne |
hätte so gern | hätte so gerne | hätten gern | hätten gerne | würde gern | würde gerne |
würd gern | würd gerne | gerne | gern | ganz gern | wünsche mir | wünsch mir | ich wünsche |
wünschen uns | wünsche | wunsch ist | wunsch wäre | wunsch | wünscht sich | bitte | bitte mit |
mach | mache | mach mal | mach doch | machen wir | machst du | mach bitte | starte mit |
starte bei | starten mit | start mit | starten wir mit | starten bei | start bei | start auf |
beginn mit | beginne mit | beginnen mit | beginnen bei | beginn bei | beginnen wir mit |
fang mit | fang bei | fang doch mit | fang bitte mit | fang mal mit | fange mit | anfangen mit |
anfang mit | fangen wir mit | los mit | los geht's mit | mal mit | doch mit | einfach mit |
gerne mit | gern mit | lieber mit | würde mit | gehe mit | geh mit | ich gehe mit | bin für |
ich bin für | wäre für | plädiere für | plädiere auf | bin dafür | für | bin mal für |
bin klar für | bin dieses mal für | tippe auf | tipp | tippe | tipp ist | mein tipp | setze auf |
setz auf | setze alles auf | lust auf | hoffe auf | ich hoffe auf | tendiere zu | tendiere zur |
neige zu | neige zur | wechsle zu | wechsle zur | wechsel zu | wechsel auf | bleibe bei |
bleib bei | bleiben bei | bleibe dabei | ich bleibe bei | ich bleib bei | schlage vor |
ich schlage vor | vorschlag | mein vorschlag | vorschlag ist | ich sage | ich sag | sag | sage |
sag ich | sage ich | ich sag mal | sagen wir | sag mal | würde sagen | ich rufe |
bei mir wird es | bei mir wird's | mir wird es | bei mir ist es | wird es | wird's | es wird |
es ist | es soll | soll es | es muss | muss es | muss | soll | sollte | es sollte | dann ist es |
ist mein favorit | mein favorit | favorit | mein favorit ist | favorit ist | favoritin |
meine favoritin ist | mein herz sagt | herz sagt | bauch sagt | bauchgefühl sagt |
mein bauch sagt | bauchgefühl | kann ich | könnte ich | könnten wir | können wir | darf ich |
dürfte ich | dürfen wir | dürfte es | darf es | darf's | wie wär's mit | wie wäre es mit |
wie wär es mit | wie wärs mit | wie wäre | wie wär | wie ist's mit | was ist mit |
wie steht's mit | warum nicht | wieso nicht | wie immer | gib mir | gib uns | her mit |
ich brauche | ich bräuchte | am liebsten | am besten | aller liebsten | allerliebsten | lieber |
eher | für mich | für uns | von mir | von uns | von mir die | von mir aus | mir gefällt |
bei mir | mich zieht es zu | zieht's zu | zieht es zur | zieht mich | drücke | daumen für |
daumen drücken für | trag mich für | schreib mich für | schreib mir | notier mich für | notiere |
setz mich auf | trag mich ein für | kreuze an | kreuzchen bei | kreuz bei | änder auf |
ändere auf | ändern auf | ändere zu | ändere meine auf | umentschieden auf | nächste seite |
seite bitte | abstimmen für | stimme ab für | stimme mit | wette auf | ganz klar | team |
ich seh | würde ich | mir | schließe mit | einmal | ein klares | klares votum für | votum für |
votum | lautet | antwort | meine antwort | nummer eins wäre | liebäugle mit | verliebt in |
meinte | ich meinte | meine natürlich | gemeint war | gemeint ist | korrektur | änderung | edit |
geht an | geht an die | fällt auf | also dann | könnten * mit | können * mit | könnt * mit |
kannst * mit | würde * mit | fang * mit | fangt * mit | fange * mit | fangen * mit |
starte * mit | startet mit | starten * mit | beginne * mit | beginnen * mit | beginnt mit |
beginn * mit | gleich mit | heute mit | jetzt mit | bitte mit der | hauptsache | egal welche |
egal
"""

CHOICE_AFTER = """
nehme | nehm | wähle | wähl | möchte | mag ich | gefällt mir gut | dürfen | wünschen | bekommen |
aussuchen | vorschlagen | fände ich | fänd ich | find ich | finde ich | er | fände ich toll |
zeigen | weitermachen | bitte | bitte bitte | bittebitte | bitteschön | bitte schön | bidde |
büdde | biddö | pls | plz | please | gern | gerne | bitte gerne | sehr gerne | für mich |
von mir | für uns | von uns | wäre | wär | wäre toll | wäre schön | wäre super | wär toll |
wär schön | wäre meine | wäre mein | ist meine wahl | ist mein favorit | ist meine |
ist mein tipp | ist es | ist's | ists | soll es sein | soll's sein | sein | muss es sein |
muss es | muss her | muss | soll es | sollte es | wird es | wird's | nehme ich | nehm ich |
nehmen wir | nehmen | wähle ich | wähl ich | wählen | hätte ich | hätt ich | möchte ich |
will ich | haben | machen | sehen | anfangen | beginnen | starten | sticken | an | wünsche ich |
wünsch ich | sag ich | sage ich | bekommt meine stimme | hat meine stimme | kriegt meine stimme |
gewinnt meine stimme | als nächstes | als nächste | als erstes | zuerst | zum start | zum anfang |
zu beginn | gefällt mir | lacht mich an | ruft mich | ruft nach mir | spricht mich an |
klingt gut | sieht gut aus | passt | in der ecke | ganz klar | auf jeden fall | unbedingt |
definitiv | natürlich | los | her | drann | dran | tippe ich | ist perfekt | ist super |
ist toll | ist schön | halt | machen wir | wär's | wärs | fertig aus | hats mir angetan |
hat's mir angetan | hat es mir angetan | mach ich | im kopf | im sinn | im auge | gewählt |
genommen | getippt | anzufangen | zu nehmen | nimm ich | te | ter | ten | tes | bitte danke |
dankeschön bitte
"""

NOT_BEFORE = """
stimme von | ändern von | ändere von | vote von | nicht | bitte nicht | bloß nicht | nur nicht |
nicht mit | nicht auf | nicht für | nicht bei | nicht mehr | nie | niemals | kein | keine |
außer | alles außer | alle außer | jede außer | ausgenommen | ohne | statt | anstatt |
anstelle von | anstelle der | auf keinen fall | keinesfalls | gegen | bin gegen | stimme gegen |
lieber nicht | hauptsache nicht | alles bis auf | bis auf | alles andere als | nicht wieder |
nicht schon wieder | weder | noch nicht | überspringe | meide | vermeide | mag nicht | hasse |
nix mit | nichts mit | nein zu | nein zur
"""

NOT_AFTER = """
bitte nicht | lieber nicht | bloß nicht | auf keinen fall | auf gar keinen fall | ist raus |
fällt raus | mag ich nicht | mag ich gar nicht | will ich nicht | geht gar nicht | ist tabu |
nein danke | wäre schrecklich | bringt unglück | ist eine unglückszahl | kommt nicht in frage |
eher nicht | besser nicht | auf gar keinen
"""

CORRECTION = """
nein warte | ach nein | ach ne | ach nee | ne warte | nee warte | äh nein | ähm nein | oh nein |
halt nein | halt stopp | stopp | moment | warte | wartet | quatsch | blödsinn | unsinn |
ich meinte | meinte | ich meine | gemeint | korrektur | korrigiere | edit | änderung | geändert |
ich ändere | ändere auf | umentschieden | anders überlegt | überleg's mir anders |
um entschieden | doch lieber | dann doch lieber | dann doch | doch eher | ups | uups | hoppla |
vertippt | verschrieben | tippfehler | schreibfehler | sorry nein | doch nicht | falsch |
sollte heißen | soll heißen | spaß | spässle | scherz | nur spaß | kleiner scherz |
war ein scherz | verguckt | verlesen | oder nein | nein doch | nee | nö | besser gesagt |
beziehungsweise | vielmehr | dicke finger | dicker finger | autokorrektur | wechsle zu |
wechsel zu | wechsle auf | wechsel auf | nehme zurück und | mich vertan | vertan
"""

SECOND = """
zweite wahl | zweitwahl | 2. wahl | 2 wahl | als zweites | an zweiter stelle | zweiter wunsch |
alternativ | alternative | ersatz | ersatzweise | hilfsweise | notfalls | ansonsten | sonst |
oder sonst | falls nicht | wenn nicht | falls die weg | falls die schon | falls schon |
falls weg | falls vergeben | falls belegt | falls das nicht geht | falls die vergeben |
falls die nicht | wenn die weg | wenn die schon | wenn die nicht | wenn schon | wenn weg |
wenn vergeben | wenn das nicht | wenn die vergeben | wenn's die nicht | dann | danach |
gefolgt von | plan b | und falls | und wenn | zur not | anderenfalls | andernfalls |
nächste wahl | oder wenn
"""

CONDITION = """
wenn sonst keiner | wenn sonst niemand | falls sonst keiner | wenn keiner die | wenn niemand die |
wenn sie noch | noch frei | noch nicht weg | noch zu haben | noch nicht vergeben |
noch nicht genommen | falls sie noch | wenn noch frei | falls noch frei | wenn die noch |
falls die noch | sofern sie | sofern noch | sofern die | sofern keiner | wenn keiner |
wenn niemand | falls keiner | falls niemand | wenn frei | falls frei | es sei denn | wenn alle |
wenn jemand | falls jemand | nur wenn | nur falls | vorausgesetzt | kommt drauf an |
kommt darauf an | wenn sie frei | falls sie frei | wenn's noch | wenn es noch | falls es noch |
falls noch nicht | wenn noch nicht | falls noch keiner | wenn noch keiner | wenn noch niemand |
solange niemand | solange keiner | wenn sie nicht schon | falls sie nicht | wenn meine |
wenn mein mann | wenn da | falls da | wenn dort
"""

REPORTED_BEFORE = """
alle | jeder | leute | viele | manche | einige | die meisten | die anderen | niemand | keiner |
jemand | irgendwer | mehrheit | die mehrheit | wollte eigentlich | eigentlich wollte |
wollte erst | wollte zuerst | hätte fast | hab fast | habe fast | beinahe | wollte gerade |
letztes mal | voriges mal | letzte runde | letzte woche | letztes mal hatte | vorhin | dachte an |
hab überlegt | überlegte | schwankte | schließe mich | schliesse mich | schließ mich | ich sehe |
gewinnt wohl | gewinnen wird | wette dass | ich wette | so viele | kommentare | im chat |
vorhersage | wird gewinnen | liebling der | stimme zu
"""

FAMILY_BEFORE = """
mann | ehemann | gatte | göttergatte | frau | ehefrau | partner | partnerin | freund | freundin |
sohn | tochter | kind | kids | kinder | mama | mutter | mutti | papa | vater | vati | schwester |
bruder | oma | opa | omi | opi | enkel | enkelin | enkelkind | nachbarin | nachbar | kollegin |
kollege | chef | chefin | katze | kater | hund | tante | onkel | cousine | cousin | nichte |
neffe | schwiegermutter | schwiegermama | schwägerin | mitbewohnerin | baby | kleine | kleiner |
große | er sagt | sie sagt | er meint | sie meint | er will | sie will | er nimmt | sie nimmt |
papagei
"""

REPORTED_AFTER = """
wäre auch | wäre auch schön | wäre auch toll | ist auch schön | ist auch gut | sieht klasse aus |
sieht toll aus | sieht super aus | ist toll geworden | ist schön geworden |
ist wunderschön geworden | war toll | war schön | war super | nicht | gewinnt | wird gewinnen |
hat gewonnen | liegt vorn | liegt vorne | führt | ist vorn | ist vorne | wird es wohl |
ist beliebt | ist weg | ist schon weg | ist vergeben | ist schon vergeben | ist belegt |
war schon | sagt mein | sagt meine | sagt er | sagt sie | meint mein | meint meine | sagen alle |
wollen alle | nehmen alle | haben alle | war letztes mal | macht das rennen |
scheint zu gewinnen
"""

ASKING = """
ist | sind | war | waren | hat | haben | hatte | wurde | wird | warum | wieso | weshalb | wer |
wessen | wem | wann | wo | wie | was | welche | welcher | welches | gibt | gibt's | gab | habt |
habe | hab | will | wollte | sagt | sagen | nimmt | nehmen | stimmt | ob | bin | seid |
haben schon | hat jemand | hat schon | kommt | geht | muss | müssen | soll
"""

SUGGESTING = """
wie wär's | wie wäre | wie wär | wie wärs | kann ich | kann man | kannst du | könnte ich |
könnten wir | könntest du | könnt ihr | können wir | darf ich | dürfen wir | dürfte | wollen wir |
sollen wir | soll ich | magst du | möchtest du | würdest du | würdet ihr | machst du | fängst du |
warum nicht | wieso nicht | bitte | vielleicht | was ist mit | was hältst du von |
was haltet ihr von | geht auch | geht noch | ginge | wäre | darf's | darf es | bin ich zu spät |
zu spät | was denkst du | nehmen wir | ist es zu spät | starten wir | ich würde | ich möchte |
ich nehme | nimm
"""

WITHDRAWN = """
bitte streichen | bitte löschen | stimme bitte löschen | stimme bitte streichen |
stimme bitte ignorieren | vergesst mich | stimme zurück | stimme zurückziehen |
stimme zurücknehmen | ziehe meine | zieh meine | nehme meine stimme | nehm meine |
nehme alles zurück | ziehe zurück | stimme nicht zählen | stimme bitte nicht |
stimme nicht mitzählen | stimme nicht werten | zähl meine | zählt meine stimme nicht |
zähle meine | zählt mich nicht | zähl mich nicht | streich meine | streiche meine |
streicht meine | vergiss meine | vergesst meine | vergiss meinen | vergesst meinen |
ignorier meine | ignoriere meine | ignoriert meine | ignorier meinen | ignoriert meinen |
bitte ignorieren | stimme löschen | lösche meine | löscht meine | stimme streichen |
stimme ungültig | stimme zählt nicht | stimme soll nicht | stimme gilt nicht | ich bin raus |
bin doch raus | doch keine stimme | lass mich raus | nicht mitzählen | nicht mit zählen |
doch nicht abstimmen | stimme ignorieren | lasst mich raus | stimme entfernen
"""

ABSTAINING = """
keine stimme | enthalte mich | enthaltung | stimme nicht ab | stimme nicht mit |
stimme heute nicht | kann mich nicht entscheiden | kann mich gar nicht entscheiden |
noch unentschlossen | unentschlossen | keine präferenz | weiß noch nicht | weiss noch nicht |
muss noch überlegen | muss überlegen | überlege noch | wähle nicht | will nicht wählen |
nicht abstimmen | noch keine stimme | noch keine zahl
"""

POINTING = """
wie * über mir | wie die * über mir | wie der * über mir | wie die über mir | wie die * vor mir |
wie oben | siehe oben | das gleiche | dasselbe | die gleiche | dieselbe | gleiche | gleiche wie |
die selbe | dito | ditto | same | ebenso | ebenfalls | schließe mich an | schliesse mich an |
schließ mich an | bin auch dafür | ich auch | mein alter | mein geburtstag | meine hausnummer |
mein geburtsmonat | mein geburtsjahr | meine glückszahl | meine schuhgröße | mein geburtsdatum |
mein hochzeitstag | +1 | wie die vorrednerin | wie meine vorrednerin | wie vorher |
wie letztes mal | gleiche seite | wie mein | wie meine | was sie sagt | so wie | das da oben |
die da oben
"""

KINDS = """
gerade seite | gerade zahl | gerade nummer | ungerade | primzahl | zweistellig | zweistellige |
einstellig | einstellige | teilbar durch | durch drei teilbar | hohe zahl | niedrige zahl |
obere hälfte | untere hälfte | linke hälfte | rechte hälfte | obere reihe | oberste reihe |
untere reihe | unterste reihe | mittlere reihe | erste reihe | letzte reihe | linke seite |
rechte seite | linken seite | rechten seite | obere seite | untere seite | linke spalte |
rechte spalte | am rand | rand | randseite | eine randseite | eine eckseite | linker rand |
rechter rand | oberer rand | unterer rand | irgendwo in der mitte | ungefähr in der mitte |
mehr in der mitte | irgendwo oben | irgendwo unten | irgendwo am rand | irgendwo links |
irgendwo rechts | eher oben | eher unten | weiter oben | weiter unten | am anfang |
ziemlich am ende | gegen ende | in den zwanzigern | in den dreißigern | in den vierzigern |
in den fünfzigern
"""
