"""Dutch words of choosing, of taking back, and of other people's choices."""

from __future__ import annotations

CHOICE_BEFORE = """
stem * op | stem * * op | stem * voor | stem * * voor | stem * * * op | dat ik | zou ik | mag ik |
ik denk dat ik | verder met | ga weer eens voor | stem | ik stem | stem op | stem voor |
stemmen op | stemmen voor | stem is | stem gaat naar | stem gaat voor | stem gaat dit keer naar |
stem gaat op | mijn stem | stem wordt | stem blijft | mijn stem op | stem krijgt | gestemd op |
kies | ik kies | kies voor | kiezen | kiezen voor | kies ik | keus | keuze | keuze is | keus is |
mijn keus | mijn keuze | keuze valt op | keus valt op | keuze gaat naar | keuze wordt |
gekozen voor | gekozen | koos | neem | neem ik | ik neem | nemen | nemen we | neemt | pak |
ik pak | pakken | doe | doe mij | doe mij maar | doe me | doe me maar | doe maar |
doe mij dan maar | doen | doen we | doen we maar | laten we | laat ons | geef mij | geef me |
geef ons | geef mij maar | geef maar | wil | ik wil | wil graag | ik wil graag | willen |
we willen | zou graag | zou wel | ik zou graag | zou willen | zou | ik zou | zou kiezen voor |
zou gaan voor | zou zeggen | ik zou zeggen | zeg | ik zeg | zeg maar | zeggen | wij zeggen |
we zeggen | zeggen we | ga voor | ik ga voor | ga met | ik ga met | gaan voor | gaan we voor |
we gaan voor | ga weer voor | ga toch voor | ga dan voor | ga deze keer voor | ga dit keer voor |
ga * voor | ga * * voor | gok | ik gok | gok op | ik gok op | gokje | mijn gok | mijn gok is |
gokken op | begin met | begin maar met | begin maar op | begin bij | begin op | beginnen met |
beginnen bij | beginnen we met | begin * met | begin * bij | beginnen * met | start met |
start maar met | start bij | start op | starten met | starten bij | start * met | starten * met |
maar met | eens met | gewoon met | gerust met | dan met | lekker met | nu met | mag ik graag |
mogen we | mogen wij | mag het | mag * zijn | mag ik * graag | kan ik | kunnen we | kun je |
kunt u | zou je | kun je * met | kunt u * met | wil je * met | zou je * willen | zullen we |
wat dacht je van | wat dacht u van | wat denk je van | wat vind je van | wat vinden jullie van |
wat dachten jullie van | waarom niet | hoe zit het met | misschien | wat zeggen we van |
voor mij | voor ons | voor mij graag | van mij | van mij mag | van mij mag het |
voor mij wordt het | voor mij is het | voor | wordt het | het wordt | het is | is het |
dan is het | dan wordt het | wordt | moet | moet het | het moet | het moet * zijn | zal het |
laat het | laat het maar | maak er | maak er maar | maak er * van | hou het op | houd het op |
hou het bij | houd het bij | blijf bij | ik blijf bij | blijven bij | hou vast aan | liever |
het liefst | liefst | het allerliefst | bij voorkeur | voorkeur | mijn voorkeur | voorkeur voor |
voorkeur is | mijn voorkeur is | voorkeur gaat naar | voorkeur gaat uit naar | voorkeur heeft |
favoriet | favoriet is | mijn favoriet | mijn favoriet is | lievelings | hoop op | ik hoop op |
hopen op | hoop dat het * wordt | duim voor | duimen voor | vingers gekruist voor | team |
zet mij op | zet me op | zet mij maar op | zet me maar op | zet mij bij | zet me bij | noteer |
noteer mij voor | noteer me voor | schrijf mij op voor | schrijf me op voor | schrijf mij * voor |
tel mij voor | zet een kruisje bij | verander naar | verander in | wijzig naar | wijziging naar |
ga over op | ga over naar | wissel naar | stap over op | stap over naar | verzet naar | maar dan |
zin in | trek in | heb zin in | voel voor | ik voel voor | gevoel zegt | mijn gevoel zegt |
hart zegt | mijn hart zegt | buik zegt | gevoel | bedoel | ik bedoel | bedoelde | ik bedoelde |
bedoelde natuurlijk | moest zijn | moet zijn | correctie | wijziging | edit | wens | ik wens |
verzoek | verzoekje | voorstel | stel voor | ik stel voor | antwoord | mijn antwoord is |
antwoord is | verliefd op | de keuze voor | graag | heel graag | alsjeblieft | aub | please |
pls | svp | ik roep | roep | ik denk aan | denk aan | ik denk | ik vind | valt op |
mijn oog valt op | mijn oog viel op | trekt | mij trekt | zou met | zou * met | zou * * met |
wil met | wil graag met | wil * met | zouden * met | willen * met | eentje | even |
ik pleit voor | pleit voor | ben voor | ik ben voor | opteer voor | wedden op | ik wed op |
inzetten op | zet in op | hoofdprijs voor | mijn geld op | mijn geld gaat op | anders |
zie graag | ik zie graag | zie ik graag | zie | wil ik zien | hoekje
"""

CHOICE_AFTER = """
neem | kies | pak | mogen | hebben | krijgen | wensen | vind ik mooi | vind ik leuk |
vind ik wel wat | graag | gráág | heel graag | graag gedaan | alsjeblieft | alstublieft |
alsjeblief | asjeblieft | aub | a.u.b. | a.u.b | svp | pls | plz | please | voor mij | voor ons |
voor mij graag | van mij | wat mij betreft | als het mag | als het kan | als dat kan | dan |
dan graag | dan maar | maar | dus | het is | is het | is het voor mij | wordt het |
wordt het voor mij | moet het worden | moet het zijn | zou leuk zijn | zou mooi zijn |
zou fijn zijn | lijkt me | lijkt mij | lijkt me leuk | lijkt me wel wat | is mijn keuze |
is mijn keus | is mijn stem | mijn stem | krijgt mijn stem | heeft mijn stem | is mijn favoriet |
is mijn gok | kies ik | neem ik | doe ik | zeg ik | zou ik zeggen | zeggen wij | zeggen we |
wil ik | wil ik graag | wil ik zien | zie ik graag | zou ik kiezen | zou ik nemen | zou ik doen |
natuurlijk | uiteraard | absoluut | zeker | hoor | doen | nemen | kiezen | beginnen | starten |
zien | borduren | zijn | worden | om te beginnen | om mee te beginnen | als eerste |
als volgende | eerst | als start | roept | roept mij | spreekt me aan | spreekt mij aan |
trekt me | klinkt goed | ziet er leuk uit | voelt goed | past | is perfect | is leuk | is mooi |
is goed | doe maar | maar weer | graag dank je | in gedachten | in mijn hoofd | gekozen |
genomen | gestemd | in de hoek | gewoon | bovenaan | graag en | wint mijn stem | moet je doen |
ga ik voor | ga ik | gok ik | is 'm
"""

NOT_BEFORE = """
stem van | verander van | wijzig van | vote van | niet | alsjeblieft niet | niet op | niet met |
niet voor | niet weer | niet alweer | niet meer | nooit | geen | alles behalve |
allemaal behalve | behalve | alles op * na | uitgezonderd | zonder | in plaats van | ipv |
i.p.v. | inplaats van | liever niet | als het maar niet | alles maar niet | tegen | ben tegen |
maakt niet uit als het maar niet | vooral niet | zeker niet | absoluut niet | nee tegen |
sla over | vermijd | haat | hekel aan | hou niet van | houd niet van | noch | alles liever dan |
liever dan | nog niet | geen zin in
"""

NOT_AFTER = """
alsjeblieft niet | liever niet | zeker niet | absoluut niet | in geen geval | valt af |
hoeft niet | hoeft niet voor mij | niet graag | vind ik niks | vind ik niets | nee bedankt |
nee dank je | brengt ongeluk | is een ongeluksgetal | vooral niet | maar niet | wil ik niet |
sla ik over | niet voor mij
"""

CORRECTION = """
nee wacht | nee toch | o nee | oh nee | wacht | wacht even | ho | hoho | stop | haha nee |
nee sorry | sorry nee | nee hoor | nee nee | ik bedoel | ik bedoelde | bedoel | bedoelde |
bedoelde ik | bedoel ik | correctie | gecorrigeerd | edit | wijziging | gewijzigd |
van gedachten | bedacht me | bedenk me | ik bedenk me | van mening veranderd | toch maar |
toch liever | dan toch | oeps | oei | foutje | tikfout | typefout | typfout | vertypt |
verkeerd getypt | vergist | vergis me | verkeerd | grapje | geintje | gekheid | was een grap |
moet zijn | moest zijn | moet worden | of nee | nee dan | beter gezegd | verander naar |
verander in | wijzig naar | veranderd in | veranderd naar | autocorrectie | dikke vingers |
dikke duimen | verkeerde knop | toch niet | of wacht | eigenlijk toch | bij nader inzien |
nader inzien | stap over op | ga over op
"""

SECOND = """
tweede keus | tweede keuze | 2e keus | 2e keuze | tweede | als tweede | als tweede keus | anders |
of anders | zo niet | zoniet | en anders | als die al | als die bezet | als die weg |
als dat niet | als die niet | als het niet | indien niet | indien bezet | mocht die | mocht dat |
als die vergeven | als die genomen | alternatief | als alternatief | reserve | als reserve |
daarna | gevolgd door | vervolgens | plan b | desnoods | op de tweede plaats | eventueel | dan |
en dan | en als | of als | back up | backup | als backup | volgende keus | als tie | als 't niet
"""

CONDITION = """
als die nog | als dat nog | als hij nog | als deze nog | als ie nog | als 't nog | als het nog |
nog vrij | nog niet bezet | nog niet weg | nog beschikbaar | als niemand | als iemand |
als iedereen | als anderen | als er nog | mits | alleen als | als mijn | als vrij | indien nog |
indien vrij | indien beschikbaar | zolang niemand | zolang die | als nog niemand | mag als |
als hij vrij | als die vrij | als genoeg | als er genoeg | als die wint | als jij | als jullie |
als daar | als dat de
"""

REPORTED_BEFORE = """
iedereen | allemaal | mensen | anderen | de anderen | iemand | niemand | sommigen | velen |
veel mensen | de meesten | de meeste | meerderheid | menigte | wilde eigenlijk | wou eigenlijk |
eigenlijk wilde | eigenlijk wou | wilde eerst | had bijna | bijna | zat te denken aan |
twijfelde | twijfel | vorige keer | vorige ronde | laatst | vorige week | dacht eerst aan |
dacht eerst | overwoog | ik zie dat | ik zie | zie dat | wedden dat | ik wed dat | zoveel |
zo veel | reacties | in de chat | voorspel | voorspelling | gaat winnen | wint vast |
het eens met | eens met | sluit me aan bij | sluit mij aan bij | populaire
"""

FAMILY_BEFORE = """
man | echtgenoot | manlief | vrouw | echtgenote | partner | vriend | vriendin | zoon | dochter |
kind | kids | kinderen | mama | moeder | mam | ma | papa | vader | pap | pa | zus | zusje |
broer | broertje | oma | opa | omi | kleinkind | kleinkinderen | kleinzoon | kleindochter |
buurvrouw | buurman | collega | baas | kat | poes | hond | tante | oom | nicht | neef |
schoonmoeder | schoonzus | huisgenoot | baby | jongste | oudste | kleine | hij zegt | zij zegt |
ze zegt | hij wil | zij wil | ze wil | papegaai
"""

REPORTED_AFTER = """
is prachtig geworden | is mooi geworden | was mooi | was prachtig | is ook leuk | is ook mooi |
is ook goed | zou ook leuk zijn | niet | wint | gaat winnen | wint vast | heeft gewonnen |
ligt voor | staat voor | leidt | zal winnen | wordt het vast | is populair | is al bezet |
is bezet | is al weg | is weg | is al geweest | is vergeven | was al | zegt mijn | zei mijn |
zegt hij | zegt zij | zegt ze | zegt iedereen | zeggen ze | willen ze | was vorige keer |
lijkt te winnen | kiest iedereen
"""

ASKING = """
is | zijn | was | waren | heeft | hebben | had | hadden | heb | waarom | wie | wiens | wanneer |
waar | hoe | wat | welke | welk | hoeveel | gaat | komt | kiest | kiezen | wil | zegt | zei |
doet | doen | mag | moet | moeten | wordt | werd | bent | ben | klopt | staat | zit | stemt |
heeft er al | hoezo | zou | is er al
"""

SUGGESTING = """
wat dacht je van | wat dacht u van | wat denk je van | wat vind je van | wat vinden jullie van |
mag ik | mag het | mogen we | mogen wij | kan ik | kunnen we | kun je | kunt u | zou je |
zullen we | waarom niet | misschien | alsjeblieft | aub | graag | ben ik te laat | te laat |
wil je | wilt u | zou u | zou jij | zouden jullie | zouden we | willen jullie | laten we |
hoe zit het met | doe maar | doe | ik wil | ik kies | ik ga voor | ik stem | zou ik | svp |
mag nog
"""

WITHDRAWN = """
trek mijn stem in | mijn stem intrekken | stem intrekken | stem in te trekken | trek hem in |
trek 'm in | trek mijn | mijn stem terug | stem terug | stem terugtrekken | tel mijn stem |
tel mij niet mee | tel me niet mee | mijn stem niet | mijn stem maar niet | stem niet meetellen |
telt niet mee | hoeft niet mee te tellen | negeer mijn | negeer mij | negeer me | vergeet mijn |
schrap mijn | schrap mij | streep mijn | verwijder mijn | haal mijn stem | haal mij eraf |
haal me eraf | stem ongeldig | mijn stem vervalt | stem vervalt | stem annuleren | annuleer mijn |
toch geen stem | laat mij maar buiten | laat me maar buiten | niet meetellen |
neem mijn stem terug | wis mijn
"""

ABSTAINING = """
geen stem | stem niet | ik stem niet | stem niet mee | onthoud me | onthouding | onthoud mij |
kan niet kiezen | kan niet beslissen | kan geen keuze maken | weet het nog niet | nog geen idee |
nog niet beslist | moet nog nadenken | geen voorkeur | geen keus | geen keuze | ik kies niet |
kies niet | twijfel nog | nog niet uit
"""

POINTING = """
zelfde | hetzelfde | dezelfde | zelfde als | hetzelfde als | dezelfde als | idem | ditto |
zoals hierboven | als hierboven | zie hierboven | zie boven | ik ook | ook die | ook deze |
sluit me aan | sluit mij aan | mijn leeftijd | mijn verjaardag | mijn huisnummer |
mijn geboortemaand | mijn geboortejaar | mijn geboortedatum | mijn geluksgetal | mijn schoenmaat |
mijn trouwdatum | +1 | wat zij zei | wat zij zegt | wat hij zegt | eens met | net als |
zelfde pagina | zelfde nummer | zelfde als vorige keer | same | wat * zegt | wat * zei |
die daar | die hierboven
"""

KINDS = """
even pagina | even getal | even nummer | even bladzijde | oneven | priemgetal | een hoog getal |
een laag getal | hoog nummer | laag nummer | dubbele cijfers | deelbaar door | bovenste helft |
onderste helft | linkerhelft | rechterhelft | bovenste rij | onderste rij | middelste rij |
eerste rij | laatste rij | linkerkant | rechterkant | linker kant | rechter kant | bovenkant |
onderkant | linkerkolom | rechterkolom | linker kolom | rechter kolom | langs de rand |
aan de rand | randpagina | de rand | een zijkant | de zijkant | ergens in het midden |
ergens bovenaan | ergens onderaan | ergens boven | ergens onder | ergens links | ergens rechts |
ergens aan | meer naar | in de twintig | in de dertig | in de veertig | in de vijftig |
in de zestig | tegen het eind | aan het begin
"""
