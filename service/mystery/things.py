"""The table of words for the same thing, in English and ten other languages.

Titles are made of a few hundred things: nights, boats, hares, gates. Each line of GROUPS holds
words that a viewer may write for one of them, as a synonym ("evening", "night") or in a
translation ("nuit"). An indented line continues the one above.
"""

from __future__ import annotations

GROUPS = """
night evening midnight nighttime nacht abend mitternacht nuit soir minuit noche medianoche
    notte sera mezzanotte noite avond natt kväll nat aften kveld noc wieczór
dusk twilight sunset nightfall gloaming sundown dämmerung abenddämmerung sonnenuntergang
    crépuscule anochecer atardecer crepúsculo crepuscolo tramonto entardecer schemering
    skymning tusmørke skumring zmierzch
dawn sunrise daybreak sunup morgendämmerung sonnenaufgang morgengrauen aube aurore amanecer
    alba aurora amanhecer dageraad gryning daggry świt
morning morn morgen matin matinée mañana mattina mattino manhã ochtend morgon poranek rano
day daytime tag jour journée día giorno giornata dia dag dzień
afternoon nachmittag tarde pomeriggio middag eftermiddag popołudnie
winter hiver invierno inverno vinter zima
summer sommer été verano estate verão zomer sommar lato
spring springtime frühling frühjahr printemps primavera lente vår forår wiosna
autumn fall herbst automne otoño autunno outono herfst höst efterår høst jesień
snow snowfall snowy schnee neige nieve neve sneeuw snö sne snø śnieg
rain shower drizzle rainy regen pluie lluvia pioggia chuva regn deszcz
wind breeze gale windy vent viento vento vind wiatr
storm tempest gale sturm gewitter tempête orage tormenta tempesta tempestade onweer oväder
    burza
fog mist haze misty foggy nebel brouillard brume niebla nebbia névoa dimma tåge tåke mgła
sun sunny sunlight sunshine sonne soleil sol sole zon zonne słońce
moon moonlight moonlit mond lune luna lua maan måne księżyc
star starry starlight stern étoile estrella stella estrela ster stjärna stjerne gwiazda
sky heaven heavens himmel ciel cielo céu hemel niebo
cloud wolke nuage nube nuvola nuvem wolk moln sky chmura
sea ocean meer see mer océan mar océano mare zee hav morze
coast shore seaside beach strand küste ufer plage côte rivage playa costa orilla spiaggia riva
    praia kust brzeg plaża
wave tide surf welle vague ola onda golf våg bølge fala
harbour harbor port haven marina hafen puerto porto hamn havn przystań
quay pier jetty dock wharf landing kai steg quai jetée muelle molo banchina cais kade steiger
    kaj brygga brygge nabrzeże
lighthouse beacon leuchtturm phare faro farol vuurtoren fyr fyrtorn fyrtårn latarnia
ship boat vessel barge ferry schiff boot navire bateau barco nave barca navio schip båt skib
    skip statek łódź
ferry ferryboat fähre bac traversier transbordador traghetto balsa veerboot pont färja færge
    ferje prom
sailor seaman mariner seafarer matrose seemann matelot marin marinero marinaio marinheiro
    matroos sjöman sømand marynarz
fisherman fisher angler fischer pêcheur pescador pescatore visser fiskare fisker rybak
river stream brook beck creek burn fluss bach rivière ruisseau río arroyo fiume ruscello rio
    ribeiro rivier beek älv bäck bæk rzeka strumień
lake loch mere pond pool see teich weiher lac étang lago laguna estanque stagno lagoa meer
    vijver sjö damm dam innsjø jezioro staw
bridge brücke pont puente ponte brug bro bru most
island isle insel île isla isola ilha eiland wyspa
mountain mount peak hill fell berg hügel montagne colline montaña colina monte collina
    montanha heuvel fjäll bjerg fjell góra wzgórze
valley dale glen vale tal vallée valle vallata dal dolina
forest wood woods woodland wald forêt bois bosque selva bosco floresta mata bos woud skog skov
    las
tree baum arbre árbol albero árvore boom träd træ tre drzewo
meadow field pasture lea wiese feld weide prairie pré champ prado campo pradera prato veld
    akker äng mark eng łąka pole
moor moorland heath heide lande brezal brughiera charneca hed hede hei wrzosowisko
garden yard garten jardin jardín giardino jardim tuin trädgård have hage ogród
orchard obstgarten verger huerto frutteto pomar boomgaard sad
flower bloom blossom posy blume blüte fleur flor fiore bloem blomma blomst kwiat
rose rosa roos ros róża
farm farmhouse homestead croft bauernhof gut ferme granja fattoria quinta fazenda boerderij
    gård farma gospodarstwo
barn shed byre stable scheune stall grange étable granero establo fienile stalla celeiro
    schuur lada lade stodoła
house home cottage cabin hut haus heim hütte maison chaumière foyer casa hogar cabaña capanna
    cabana huis huisje hem hus stuga hytte dom chata
castle fortress palace schloss burg château castillo palacio castello palazzo castelo palácio
    kasteel slott slot zamek
tower turret spire turm tour torre toren torn tårn wieża
church chapel kirk abbey kirche kapelle église chapelle iglesia capilla chiesa cappella igreja
    capela kerk kyrka kirke kościół kaplica
bell chime glocke cloche campana sino bel klok klocka klokke dzwon
mill windmill watermill mühle windmühle moulin molino mulino moinho molen kvarn mølle młyn
    wiatrak
shop store boutique laden geschäft magasin tienda negozio bottega loja winkel butik affär
    butikk sklep
bakery baker bäckerei bäcker boulangerie boulanger panadería panadero forno fornaio padaria
    bakkerij bakker bageri bageriet piekarnia piekarz
bookshop bookstore library buchladen bibliothek librairie bibliothèque librería libreria
    biblioteca livraria boekwinkel bibliotheek bokhandel bibliotek księgarnia
school schule école escuela scuola escola skola skole szkoła
market fair bazaar markt jahrmarkt marché foire mercado feria mercato fiera feira marknad
    marked jarmark rynek targ
village hamlet dorf pueblo aldea villaggio paese aldeia vila dorp landsby bygd wieś
town city stadt ville ciudad città cidade stad miasto
street road lane way path track avenue strasse weg gasse pfad rue route chemin sentier allée
    calle camino senda sendero via strada sentiero viale rua caminho estrada straat laan pad
    gata väg stig gade vej sti gate vei ulica droga ścieżka
corner ecke coin esquina rincón angolo canto hoek hörn hjørne róg
window fenster fenêtre ventana finestra janela venster raam fönster vindue vindu okno
door gate doorway gateway tür tor pforte porte portail puerta portón porta cancello portão
    deur poort dörr grind dør port drzwi brama
garden gate gartentor portillon
station platform halt depot bahnhof gleis bahnsteig gare quai estación andén stazione binario
    estação perron spår dworzec peron stacja
train railway railroad zug bahn eisenbahn tren treno ferrovia comboio trem trein tåg tog
    pociąg kolej
carousel roundabout merrygoround karussell manège carrusel tiovivo calesita giostra carrossel
    draaimolen karusell karrusel karuzela
circus fairground zirkus kirmes rummel cirque circo kermis cirkus tivoli cyrk
balloon ballon globo palloncino mongolfiera balão ballong balon
kite drachen papalote cometa aquilone papagaio vlieger drake drage latawiec
bicycle bike cycle fahrrad vélo bicyclette bicicleta bici bicicletta fiets cykel sykkel rower
clock watch timepiece uhr horloge montre reloj orologio relógio klok klocka zegar
lamp lantern light lampe laterne licht lanterne lumière lámpara farol linterna luz lampada
    lanterna luce candeeiro lantaarn lykta lygte lys lampa latarnia światło
candle kerze bougie chandelle vela candela kaars ljus lys świeca
fire hearth fireside flame blaze feuer kamin herd feu cheminée fuego chimenea fuoco camino
    fogo lareira vuur haard eld brasa ild bål ogień kominek
kitchen larder pantry scullery küche speisekammer cuisine cocina despensa cucina dispensa
    cozinha keuken kök køkken kjøkken kuchnia spiżarnia
table tisch mesa tavola tavolo tafel bord stół
chair seat bench stool stuhl bank sessel chaise banc siège silla banco asiento sedia panca
    panchina cadeira stoel bankje stol bänk bænk benk krzesło ławka
bed cradle cot bett wiege lit berceau cama cuna letto culla berço wieg säng seng łóżko
tea thee tee thé chá herbata
bread loaf brot pain pan pane pão brood bröd brød chleb
cake pie tart kuchen torte gâteau tarte pastel tarta torta crostata bolo taart kaka tårta kage
    kake ciasto tort
apple apfel pomme manzana mela maçã appel äpple æble eple jabłko
cat kitten kitty puss katze kätzchen chat chaton gato gatito gatto micio kat poes katt killing
    kot kotek
dog puppy hound hund welpe chien chiot perro cachorro cane cucciolo cão hond pup valp hvalp
    pies
horse pony mare stallion pferd cheval poney caballo yegua cavallo cavalo paard häst hest koń
donkey mule esel âne burro asno asino mulo ezel åsna æsel osioł
cow cattle bull kuh vache vaca mucca vacca koe krowa
sheep lamb ewe ram schaf lamm mouton agneau brebis oveja cordero pecora agnello ovelha
    cordeiro schaap får lam sau owca
goat kid ziege chèvre cabra capra geit get ged koza
pig piglet hog sow schwein cochon porc cerdo maiale porco varken gris svin świnia
hen chicken rooster cock cockerel henne huhn hahn poule poulet coq gallina pollo gallo galinha
    galo kip haan höna tupp høne hane kura kogut
duck drake duckling ente canard pato anatra eend anka and kaczka
goose geese gander gans oie ganso oca gås gęś
swan cygnet schwan cygne cisne cigno zwaan svan svane łabędź
bird vogel oiseau pájaro ave uccello pássaro fågel fugl ptak
owl eule kauz chouette hibou búho lechuza gufo civetta coruja uil uggla ugle sowa
crow raven rook krähe rabe corbeau corneille cuervo corneja corvo cornacchia kraai raaf kråka
    korp krage ravn kråke wrona kruk
gull seagull möwe mouette goéland gaviota gabbiano gaivota meeuw mås fiskmås måge måke mewa
fox fuchs renard zorro volpe raposa vos räv ræv rev lis
wolf loup lobo lupo varg ulv wilk
bear bär ours oso orso urso beer björn bjørn niedźwiedź
deer stag hart hind hirsch reh cerf biche ciervo venado cervo hert hjort rådjur jeleń sarna
hare rabbit bunny hase kaninchen lièvre lapin liebre conejo lepre coniglio lebre coelho haas
    konijn kanin zając królik
mouse mice rat maus souris ratón topo rato muis mus mysz
hedgehog igel hérisson erizo riccio ouriço egel igelkott pindsvin piggsvin jeż
frog toad frosch kröte grenouille crapaud rana sapo rospo kikker pad groda padda frø frosk
    żaba
fish fisch poisson pez pescado pesce peixe vis fisk ryba
whale wal baleine ballena balena baleia walvis val hval wieloryb
bee bumblebee honeybee biene abeille abeja ape abelha bij pszczoła
butterfly moth schmetterling falter papillon mariposa farfalla borboleta vlinder fjäril
    sommerfugl motyl
man gentleman fellow mann homme hombre uomo homem mand mężczyzna
woman lady dame frau femme señora mujer donna signora mulher senhora vrouw kvinna dam kvinde
    kvinne kobieta pani
child kid children kind enfant niño niña bambino bambina criança barn dziecko
girl maiden lass mädchen fille chica niña ragazza menina moça meisje flicka pige jente
    dziewczyna
boy lad junge bub garçon chico niño ragazzo menino rapaz jongen pojke dreng gutt chłopiec
king könig roi rey rei koning kung konge król
queen königin reine reina regina rainha koningin drottning dronning królowa
mother mum mutter mama mère maman madre mãe moeder mor mamma matka
father dad vater papa père padre pai vader far pappa ojciec
grandmother grandma granny nan gran oma grossmutter grandmère mamie abuela nonna avó mormor
    farmor babcia
witch hexe sorcière bruja strega bruxa heks häxa czarownica
angel engel ange ángel angelo anjo ängel anioł
dream traum rêve songe sueño sogno sonho droom dröm drøm sen marzenie
song tune melody ballad lied weise chanson chant canción canto canzone canção visa sång sang
    vise piosenka pieśń
dance dancing tanz danse bal baile danza ballo dança dans taniec
journey voyage trip travel reise fahrt trajet viaje travesía viaggio viagem reis resa rejse
    podróż
letter note brief lettre carta lettera brev list
book buch livre libro livro boek bok bog książka
secret hidden geheimnis geheim caché secreto escondido segreto nascosto segredo hemlighet
    hemmelighed hemmelig tajemnica sekret
lost missing forgotten verloren vergessen perdu oublié perdido olvidado perduto dimenticato
    esquecido vergeten förlorad glömd tabt glemt zgubiony
quiet silent still calm peaceful hushed ruhig stille tranquille calme silencieux tranquilo
    callado tranquillo silenzioso quieto stil rustig tyst lugn rolig cichy spokojny
old ancient aged olden alt alte alter altes vieux vieille ancien viejo vieja antiguo vecchio
    vecchia antico velho velha antigo oud oude gammal gamla gammel gamle stary stara
new modern fresh neu neue neuer neues nouveau nouvelle nuevo nueva nuovo nuova novo nova nieuw
    nieuwe nya nye nowy nowa
little small tiny wee miniature klein kleine kleiner kleines petit petite pequeño pequeña
    piccolo piccola pequeno pequena liten lilla lille små mały mała
big large great giant huge gross grosse grosser grosses grand grande gran grote groot stor
    stora store duży wielki
long tall lang lange largo lungo longo lång długi
last final latest letzte letzter letztes dernier dernière último última ultimo ultima laatste
    sista sidste siste ostatni
first erste erster erstes premier première primero primera primo prima primeiro primeira
    eerste första første pierwszy
red scarlet crimson rot rote roter rotes rouge rojo roja rosso rossa vermelho vermelha rood
    rode röd röda rød czerwony
blue azure navy blau blaue blauer blaues bleu bleue azul blu azzurro blauw blauwe blå
    niebieski
green grün grüne grüner grünes vert verte verde groen groene grön gröna grøn grønn zielony
white weiss weisse weisser weisses blanc blanche blanco blanca bianco bianca branco branca wit
    witte vit vita hvid hvit biały
black dark schwarz schwarze schwarzer schwarzes noir noire negro negra nero nera preto preta
    zwart zwarte svart svarta sort czarny
golden gold gilded goldene goldener goldenes doré dorée dorado oro dorato dourado ouro gouden
    gyllene gylden złoty
silver silbern argent plata plateado argento prata zilver sølv srebrny
tired weary sleepy drowsy müde müder müdes fatigué fatiguée ensommeillé endormi cansado
    cansada soñoliento stanco stanca assonnato sonolento moe slaperig trött sömnig træt trøtt
    zmęczony śpiący
sleeping asleep dozing slumbering schlafend schlafende endormi dormant durmiente dormido
    dormiente adormecido slapende sovande sovende śpiący
dancing tanzend tanzende dansant bailando danzante dansende dansande tańczący
singing singend chantant cantando zingende sjungande syngende śpiewający
flying soaring fliegend fliegende volant volando volante vliegende flygande flyvende latający
lonely solitary alone einsam einsame solitaire seul solitario solo sozinho eenzame ensam ensom
    samotny
happy merry joyful jolly cheerful glad fröhlich glücklich joyeux heureux feliz alegre felice
    allegro vrolijk gelukkig lycklig lykkelig wesoły
washing laundry wash wäsche lessive linge colada lavado bucato lavanderia roupa was wasgoed
    tvätt vask klesvask pranie
wedding marriage bridal hochzeit mariage noces boda matrimonio nozze casamento bruiloft
    bröllop bryllup ślub wesele
christmas advent yule noel weihnachten noël navidad natale natal kerst kerstmis jul boże
party feast festival celebration fest feier fête fiesta festa feest kalas święto
world earth welt erde monde terre mundo tierra mondo terra wereld aarde värld verden świat
    ziemia
hour stunde heure hora ora uur timme time godzina
year jahr année año anno ano jaar rok
home homeward heimwärts heimweg zuhause maison hogar casa thuis hem hjem dom
near nearly almost close beinahe fast nahe presque casi quasi quase bijna nästan næsten nesten
    prawie
again anew once wieder nochmal encore otra otravez ancora nuevo novamente weer opnieuw igen
    igjen znowu
salt salz sel sal sale zout sól
bottom lower under below unter unten sous bajo sotto debajo onder pod
gardener gärtner jardinier jardinero giardiniere jardineiro tuinman trädgårdsmästare gartner
    ogrodnik
map mapmaker cartographer karte landkarte carte carta mapa mappa kaart karta kort kart
    kartograf
keeper warden guardian watchman wächter hüter gardien guardián guardiano custode guardião
    wachter bewaker väktare vogter vokter strażnik
maker builder crafter macher hersteller fabricant faiseur fabricante hacedor fabbricante mager
    produttore
weaver spinner weber spinnerin tisserand tisseuse tejedor tejedora tessitore tessitrice tecelã
    wever vävare væver tkacz
seamstress tailor dressmaker näherin schneider couturière tailleur costurera sastre sarta
    sarto costureira alfaiate naaister kleermaker sömmerska skräddare krawiec
knitter knitting strickerin tricoteuse tejiendo breister stickerska strikker
"""

#: Plurals and other forms that no ending explains.
IRREGULAR = (
    "goose geese", "mouse mice", "man men", "woman women", "child children", "foot feet",
    "tooth teeth", "louse lice", "ox oxen", "person people", "die dice", "penny pence",
    "wolf wolves", "leaf leaves", "thief thieves", "loaf loaves", "calf calves", "half halves",
    "wife wives", "knife knives", "life lives", "shelf shelves", "scarf scarves", "hoof hooves",
    "sing sang sung song", "fly flew flown flight", "sleep slept asleep", "lose lost loss",
    "stand stood", "forget forgot forgotten", "hide hid hidden", "fall fell fallen",
    "break broke broken", "steal stole stolen", "freeze froze frozen", "write wrote written",
    "weave wove woven", "rise rose risen", "wake woke awake", "give gave given gift",
    "come came", "go goes went gone", "see saw seen", "bring brought", "catch caught",
    "moonlight moonlit", "sunlight sunlit", "starlight starlit", "north northern",
    "south southern", "east eastern", "west western", "high height", "long length", "deep depth",
)  # fmt: skip
