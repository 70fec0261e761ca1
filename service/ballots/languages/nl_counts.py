"""Dutch words that stand beside a number: what it counts, measures or names if it is no page."""

from __future__ import annotations

OTHER_BEFORE = """
woon op | woon op nummer | 1 over | 2 over | draad over | draden over | draadje over |
draadjes over | ben | ben nu | ben net | ben al | ik ben | hij is | zij is | ze is | we zijn |
zijn | is nu | is net | word | ik word | werd | net | geworden | word morgen | word vandaag |
word bijna | bijna | leeftijd | oud | sinds | al sinds | al bijna | al ruim | al meer dan |
al zo'n | om | rond | tegen | vanaf | jaar | in het jaar | bouwjaar | anno | op de leeftijd van |
vanaf mijn | toen ik | tot | tot en met | binnen | elke | iedere | ieder | per | om de |
aflevering | deel | hoofdstuk | seizoen | video | filmpje | episode | level | niveau | ronde |
wedstrijd | plaats | plek | rang | dag | week | maand | uur | minuut | maat | schoenmaat |
kledingmaat | naald | naald nr | naalddikte | garen | kleur | kleurnummer | aida |
linnen | symbool | draad | draadje | streng | rij | regel | kolom | steek | lijn | bus | trein |
spoor | perron | tram | boot | veerboot | vlucht | kamer | flat | verdieping | etage | straat |
postcode | snelweg | afslag | afrit | paragraaf | artikel | punt | opgave | klas | groep | psalm |
vers | lied | opus | versie | model | type | kanaal | zender | formule | lotto | temperatuur |
min | graden | windkracht | vlagen tot | totaal | in totaal | samen | hoogstens | hooguit |
minstens | minimaal | maximaal | meer dan | minder dan | wel | wel meer dan | ruim |
de afgelopen | de laatste | de komende | afgelopen | laatste | komende | de eerste | van de |
van die | van in totaal | een van de | uit | onze | hun | haar | zijn er | er zijn | er waren |
er zitten | heb nog | heb al | heb ik nog | heb er | heb maar | hebben nog | heb nog maar |
hebben maar | nog maar | kost | kostte | betaald | betaalde | verkocht | gekocht | kocht |
besteld | geborduurd | borduurde | af | gezien | gekeken | gedronken | gegeten | gereden |
gelopen | gewacht | gisteren | eergisteren | stipt | kwart over | kwart voor | half | januari |
februari | maart | april | mei | juni | juli | augustus | september | oktober | november |
december | zomer | winter | lente | herfst | pasen | kerst | maandag | dinsdag | woensdag |
donderdag | vrijdag | zaterdag | zondag | top | covid | geef het |
geef ik een | een dikke | cijfer | score | stand | beoordeling | telde | geteld | tel |
op zoek naar
"""

OTHER_AFTER = """
over 1 | over 2 | over een | over twee | jaar | jaren | jarige | jr | maand | maanden | week |
weken | dag | dagen | weekend | weekenden | uur | uren | minuut | minuten | min | seconden |
seconde | sec | keer | x | maal | procent | promille | euro | eurootjes | cent | dollar | pond |
graden | draad | draden | draadje | draadjes | dradig | steek | steken | kruisje | kruisjes |
kruissteken | kleur | kleuren | garen | garens | streng | strengen | strengetjes | naald |
naalden | frame | frames | count | ct | cm | mm | m | meter | km | kilometer | centimeter | kg |
kilo | g | gram | l | liter | ml | pagina's | paginas | bladzijden | bladzijdes | bladen |
blaadjes | project | projecten | ufo's | ufos | wip | wips | wip's | borduurwerk | borduurwerken |
patroon | patronen | pakket | pakketten | rij | rijen | kolommen | kind | kinderen | kids | kat |
katten | poezen | hond | honden | paard | paarden | kip | kippen | schaap | schapen | koe |
koeien | geiten | eenden | ganzen | vogels | kleinkind | kleinkinderen | zonen | dochters |
jongens | meisjes | zussen | broers | personen | mensen | man | vrouwen | mannen | vriendinnen |
vrienden | kijkers | abonnees | views | likes | reacties | stemmen | punten | sterren | kop |
kopje | koppen | kopjes | koffie | thee | bakjes | stuks | stuk | koekjes | taart | taarten |
eieren | lepels | boterhammen | glazen | bier | flessen | porties | borden | boeken |
afleveringen | delen | seizoenen | hoofdstukken | video's | filmpjes | films | series | liedjes |
rondes | wedstrijden | doelpunten | pogingen | kansen | redenen | dingen | wensen | vragen |
antwoorden | mails | berichten | woorden | zinnen | dozen | blikken | tassen | lades | kasten |
manden | pakjes | rollen | sets | paar | sokken | mutsen | truien | kussens | kamers | huizen |
verdiepingen | trappen | stappen | mijl | knopen | boten | schepen | treinen | bussen | auto's |
fietsen | eilanden | winters | zomers | verjaardagen | nachten | avonden | ochtenden |
's ochtends | 's avonds | 's middags | 's nachts | per dag | per week | per maand | per jaar |
op een dag | in de week | van ons | van mijn | van de | van die | ervan | andere | nieuwe |
verschillende | kleine | grote | oude | lange | volle | hele | mooie | lieve | leuke | duizend |
honderd | miljoen | dozijn | handen | vingers | ogen | benen | lampen | brillen | kralen |
restjes | symbolen | hobby's | banen | diensten | afspraken | winkels | dorpen | uurtjes |
minuutjes | weekjes | jaartjes | maandjes | dagjes | daagjes | persoons | daagse | januari |
februari | maart | april | mei | juni | juli | augustus | september | oktober | november |
december | jan | feb | apr | aug | sept | okt | nov | dec | op 14ct | op 16ct | op 18ct |
op aida
"""

#: These say something else only where nothing says that n is chosen.
WEAK_BEFORE = """
op | met | bij | in | aan | uit de | heb | heb ik | hebben | had | hadden | heeft | gehad | nog |
al | pas | alleen | slechts | maar liefst | precies | hele | ben op | ben bij | ik ben op |
ik ben bij | zit op | zit nu op | mijn | onze | jouw | je | jullie | over | onder | plus |
nog steeds | nu al | borduur | borduur nu | werk aan | bezig met | bezig aan | na | van | hier |
daar | zag | is vandaag | te | ter
"""

WEAK_AFTER = """
klaar | af | gedaan | over | geborduurd | ervan | meer | minder | punt | stem | deel | heb ik al |
heb ik | had ik | te gaan | van | met | op | in
"""

NEUTRAL_BEFORE = """
naar | nee | sorry | wacht | eigenlijk | beter | liever | excuses | pardon | zo | oh | o | ok |
oké | oke | hm | hmm | ja | jaja | jep | yep | nou | nu | dus | dan | en | maar | want | omdat |
daar | hier | hallo | hoi | hey | hai | dag | goede | goedemorgen | goedemiddag | goedenavond |
goeiemorgen | goeiedag | goeie | morgen | avond | fijne | lieve | liefs | groetjes | groeten |
groet | dank | dankje | bedankt | dankjewel | heel | veel | erg | super | leuk | mooi | prachtig |
schitterend | geweldig | spannend | wauw | wow | ach | jee | joepie | yes | alsjeblieft |
alsjeblieft dan | zegt | zei | zeg | in | op | voor | jullie | je | jou | mij | ons | allemaal |
allen | samen | dames | meiden | lieverds | mensen | vandaag | deze | dit | keer | gewoon |
natuurlijk | tuurlijk | uiteraard | zeker | misschien | vast | waarschijnlijk | absoluut | graag |
de | het | een | die | dat | pagina | nummer | is | zijn | daarom | vandaar | toch |
in ieder geval | eindelijk | anders | of | als | zo niet | ook | weer | zoals altijd | altijd |
spontaan | zonder | twijfel | gevoel | x | xx | xxx | lol | haha | hihi | succes | geluk |
plezier | idee | geen | geen idee | eerlijk | gezegd | ik | we | wij | kijk | zin | goed | wel |
moeilijk | lastig | simpel | makkelijk | tja | zie | er
"""

NEUTRAL_AFTER = """
gezegd | genoemd | gekozen | gestemd | genomen | want | omdat | en | maar | of | dus | dan | als |
ik | we | wij | jij | je | u | mij | het | de | dat | die | dit | is | was | zijn | zou | heeft |
had | ziet | klinkt | voelt | past | lacht | roept | staat | ligt | brengt | maakt | moet | mag |
kan | kunnen | wordt | worden | hebben | nemen | voor | met | van | uit | aan | op | bij | in |
om | zoals | zo | ja | nee | toch | ook | nog | al | alleen | natuurlijk | tuurlijk | heel |
graag | dank | bedankt | dankjewel | dankje | lieve | liefs | groetjes | groeten | groet |
vandaag | deze | keer | nu | altijd | weer | zoals altijd | hallo | hoi | dag | x | xx | xxx |
lol | haha | hihi | hehe | yay | joepie | super | leuk | mooi | goed | prachtig | niet vergeten |
niet de | niet nummer | niet pagina | mijn | onze | anders | ipv | in plaats van | te | eerst |
hopelijk | hoop | veel | succes | duim | duimen | vind | fijne | doei | gewoon | misschien |
vast | zeker | absoluut | zonder | verder | naar | daarom | vandaar | waar | wat | waarom |
welke | oke | ok | oké | spannend | dames | meiden | mensen | allemaal | samen | liever | beter |
lekker | hoor | geen | idee | twijfel | eigenlijk | echt | even | jullie | jongens | iedereen |
moeilijk | zin
"""
