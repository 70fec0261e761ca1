"""More words for the same thing: house and table, trades, tales; as in things.py."""

from __future__ import annotations

GROUPS = """
tram tramway tramcar streetcar trolley train strassenbahn tranvía tranvai elétrico sporvogn
    spårvagn trikk tramwaj
bus omnibus coach autobus autocar autobús ônibus autocarro buss autobuss
boatman ferryman oarsman fährmann passeur batelier barquero traghettatore barqueiro veerman
    färjkarl
umbrella parasol brolly regenschirm schirm parapluie ombrelle paraguas sombrilla ombrello
    ombrellone guardachuva paraplu paraply parasoll
roof rooftop rooftops dach toit tejado techo tetto telhado dak tak tag
stairs stair steps staircase stairway treppe stufen escalier escaliers marches escalera escalones
    scala scale scalini escada trappa trappor trap trappe schody
wall mauer wand mur muraille muro pared parete parede muur vägg væg
cellar basement vault keller cave sótano bodega cantina porão kelder källare kælder kjeller
    piwnica
attic loft garret dachboden speicher grenier desván ático soffitta sótão zolder vind strych
chimney schornstein chimenea camino chaminé schoorsteen skorsten pipe komin
room chamber parlour parlor zimmer stube raum chambre pièce salon habitación cuarto sala stanza
    camera quarto kamer rum stue pokój
bridge footbridge steg passerelle
hat bonnet cap hut mütze chapeau casquette sombrero gorra gorro cappello berretto chapéu hoed muts
    hatt mössa kapelusz
coat cloak mantle mantel manteau cape abrigo manto cappotto mantello casaco jas kappa frakke
    płaszcz
dress gown frock kleid robe vestido vestito abito jurk klänning kjole sukienka
shoe shoes boot boots slipper slippers schuh schuhe stiefel chaussure chaussures souliers bottes
    zapato zapatos botas scarpa scarpe stivali sapato sapatos schoen schoenen sko støvler buty
button buttons knopf knöpfe bouton boutons botón botones bottone bottoni botão botões knoop knopen
    knapp knappar guzik guziki
needle pin nadel aiguille aguja ago agulha naald nål igła
thread yarn wool floss string faden garn wolle fil laine hilo lana filo fio draad wol tråd ull nić
    wełna
ribbon bow lace band schleife spitze ruban dentelle cinta lazo encaje nastro pizzo fita renda lint
    kant sløyfe wstążka koronka
quilt blanket patchwork coverlet decke couverture courtepointe edredón colcha manta coperta
    trapunta deken sprei täcke filt tæppe teppe kołdra
curtain drape vorhang rideau cortina tenda gordijn gardin zasłona
mirror lookingglass spiegel miroir espejo specchio espelho spegel spejl speil lustro
picture painting portrait image bild gemälde tableau peinture cuadro pintura retrato quadro
    dipinto ritratto schilderij tavla maleri obraz
box chest casket trunk schachtel kiste truhe dose boîte coffre caja cofre arcón lata scatola
    baule cassa caixa baú doos kist låda kista æske kasse eske pudełko skrzynia
basket hamper korb panier cesta canasta cesto cestino mand korg kurv koszyk
bottle jar jug flasche krug glas bouteille cruche bocal botella jarra frasco bottiglia brocca
    barattolo garrafa jarro fles kruik pot flaska burk krukke butelka słoik
cup mug teacup tasse becher taza copa tazza xícara chávena kop kopp filiżanka
pot kettle cauldron pan topf kessel marmite chaudron bouilloire casserole olla caldero tetera
    pentola calderone bollitore panela chaleira ketel gryta kittel gryde kedel czajnik garnek
spoon ladle löffel cuillère cuchara cucchiaio colher lepel sked ske łyżka
plate dish bowl teller schüssel assiette bol plato tazón piatto ciotola prato tigela bord kom
    tallrik skål tallerken talerz miska
milk milch lait leche latte leite melk mjölk mælk mleko
egg eggs eier oeuf oeufs huevo huevos uovo uova ovo ovos eieren ägg jajko
cheese käse fromage queso formaggio queijo kaas ost ser
butter beurre mantequilla burro manteiga boter smör smør masło
honey honig miel miele mel honing honung honning miód
soup broth suppe brühe soupe potage sopa caldo zuppa minestra soep soppa zupa
jam marmalade preserve konfitüre marmelade confiture mermelada marmellata confettura geleia sylt
    syltetøj dżem
coffee kaffee café caffè koffie kaffe kawa
wine wein vin vino vinho wijn wino
beer ale bier bière cerveza birra cerveja piwo
sugar sweet sweets candy zucker süss sucre bonbon bonbons azúcar dulce dulces caramelo zucchero
    dolce dolci caramella açúcar doce doces suiker zoet snoep socker godis sukker slik godteri
    cukier cukierki
chocolate cocoa schokolade chocolat cioccolato cioccolata chocola choklad chokolade sjokolade
    czekolada
pear pears birne birnen poire poires pera peras pere peer peren päron pære gruszka
plum plums pflaume prune pruneau ciruela prugna ameixa pruim plommon blomme śliwka
cherry cherries kirsche kirschen cerise cerises cereza cerezas ciliegia ciliegie cereja cerejas
    kers kersen körsbär kirsebær wiśnia czereśnia
lemon lemons zitrone citron limón limone limão citroen cytryna
orange oranges apfelsine naranja arancia laranja sinaasappel apelsin appelsin pomarańcza
strawberry raspberry blackberry blueberry berry berries bramble erdbeere himbeere brombeere beere
    beeren fraise framboise mûre baie fresa frambuesa mora fragola lampone bacca morango amora
    aardbei framboos braam bes jordgubbe hallon björnbär bär jordbær bær truskawka malina jagoda
mushroom toadstool pilz champignon seta hongo fungo cogumelo paddenstoel svamp sopp grzyb
oak eiche chêne roble quercia carvalho eik dąb
birch birke bouleau abedul betulla bétula berk björk birk bjerk brzoza
willow weide saule sauce salice salgueiro wilg pil selje wierzba
pine fir spruce tanne kiefer fichte sapin pin pino abeto abete pinheiro den gran furu tall sosna
    jodła
leaf leaves foliage blatt blätter laub feuille feuilles hoja hojas foglia foglie folha folhas blad
    bladeren löv liść liście
hay straw heu stroh foin paille heno paja fieno paglia feno palha hooi stro halm siano
seed seeds samen graine graines semilla semillas seme semi semente zaad frö frø nasiono
stone rock boulder pebble stein felsen pierre rocher caillou piedra roca pietra roccia sasso pedra
    rocha steen rots sten klippa kamień skała
sand dune dunes sable arena duna sabbia areia zand duin piasek wydma
gold treasure hoard schatz trésor tesoro tesouro schat skatt skat skarb
crown tiara krone couronne corona coroa kroon krona korona
ring rings bague anneau anillo anello anel
key keys schlüssel clé clef llave chiave chave sleutel nyckel nøgle nøkkel klucz
lock padlock schloss serrure cadenas cerradura candado serratura lucchetto fechadura slot lås
    zamek
money coin coins penny pennies pence cent cents geld münze münzen pfennig argent pièce pièces sou
    sous dinero moneda monedas soldi moneta monete dinheiro moeda moedas munt munten pengar mynt
    penge mønt pieniądze
word words wort worte mot mots palabra palabras parola parole palavra palavras woord woorden ord
    słowo słowa
story tale fable legend geschichte märchen sage histoire conte légende historia cuento leyenda
    storia racconto fiaba leggenda história conto lenda verhaal sprookje berättelse saga historie
    eventyr opowieść bajka
music melody tune musik musique música musica muziek musikk muzyka
piano flügel fortepiano klavier pianoforte klaver fortepian
violin fiddle geige violine violon violín violino viool fiol skrzypce
drum trommel tambour tambor tamburo trom trumma tromme bęben
sorrow grief sadness woe trauer kummer leid chagrin tristesse tristeza pena dolore tristezza dolor
    verdriet sorg smutek żal
joy gladness happiness freude glück joie bonheur alegría gioia felicità alegria vreugde glädje
    glæde glede radość
love heart sweetheart liebe herz amour coeur amor corazón amore cuore coração liefde hart kärlek
    hjärta kærlighed hjerte kjærlighet miłość serce
hand hands finger fingers hände main mains doigt mano manos dedo mani dito mão mãos vinger händer
    hånd ręka dłonie
eye eyes auge augen oeil yeux ojo ojos occhio occhi olho olhos oog ogen öga ögon øje øjne oko oczy
foot feet fuss füsse pied pieds pie pies piede piedi pés voet voeten fot fötter fod fødder stopa
hair braid haar haare zopf cheveux tresse pelo cabello trenza capelli treccia cabelo trança vlecht
    hår flätning włosy warkocz
wren robin sparrow swallow finch songbird zaunkönig rotkehlchen spatz sperling schwalbe fink
    troglodyte roitelet rougegorge moineau hirondelle pinson chochín petirrojo gorrión golondrina
    scricciolo pettirosso passero rondine pardal andorinha winterkoning roodborstje mus zwaluw
    gärdsmyg rödhake sparv svala
spider web cobweb spinne spinnennetz araignée toile araña telaraña ragno ragnatela aranha spin
    spinnenweb spindel edderkop pająk
snail slug schnecke escargot limace caracol chiocciola lumaca slak snigel snegl ślimak
snake serpent adder schlange couleuvre serpiente culebra serpente cobra slang orm slange wąż
squirrel eichhörnchen écureuil ardilla scoiattolo esquilo eekhoorn ekorre egern ekorn wiewiórka
badger otter mole dachs maulwurf blaireau loutre taupe tejón nutria topo tasso lontra talpa
dragon drache dragón drago dragão draak drake smok
unicorn einhorn licorne unicornio unicorno unicórnio eenhoorn enhörning enhjørning jednorożec
fairy elf pixie sprite fee elfe fée lutin hada duende fata folletto fada älva wróżka
ghost spirit phantom spectre geist gespenst fantôme esprit fantasma espíritu spirito espírito
    spook geest spöke ande spøgelse duch
giant ogre riese géant gigante reus jätte kæmpe olbrzym
dwarf gnome goblin zwerg nain enano gnomo nano duende dwerg dvärg dværg krasnal
pirate buccaneer pirat pirata piraat sjörövare
soldier guard soldat garde soldado guardia soldato wächter soldaat żołnierz
teacher schoolmaster lehrer lehrerin maître maîtresse professeur maestro maestra insegnante
    professor leraar lärare lærer nauczyciel
doctor physician nurse arzt doktor médecin docteur infirmière médico enfermera dottore medico
    infermiera dokter läkare læge lekarz
postman mailman postie postwoman briefträger postbote facteur cartero postino carteiro postbode
    brevbärare postbud listonosz
milkman dairymaid milkmaid milchmann laitier laitière lechero lechera lattaio leiteiro melkboer
    mjölkbud mleczarz
miller müller meunier molinero mugnaio moleiro molenaar mjölnare møller młynarz
smith blacksmith schmied forgeron herrero fabbro ferreiro smid smed kowal
shepherd shepherdess schäfer hirte berger bergère pastor pastora pastore pastorella herder
    schaapherder herde hyrde gjeter pasterz
archivist librarian archivar bibliothekar archiviste bibliothécaire archivero bibliotecario
    archivista arquivista archivaris bibliotecaris arkivarie
clockmaker watchmaker uhrmacher horloger relojero orologiaio relojoeiro klokkenmaker urmakare
    urmager zegarmistrz
supper dinner tea lunch breakfast abendessen mittagessen frühstück souper dîner déjeuner cena
    comida almuerzo desayuno pranzo colazione jantar almoço avondeten middag kvällsmat frokost
    kolacja obiad
recipe recipes rezept rezepte recette recettes receta recetas ricetta ricette receita receitas
    recept recepten opskrift oppskrift przepis
ladder leiter échelle escalera escada stege stige drabina
harvest ernte récolte moisson cosecha raccolto colheita oogst skörd høst żniwa
weddingdress bride braut mariée novia sposa noiva bruid brud panna
end ende fin final fine fim einde slut koniec
away fort weg loin lejos lontano longe borta væk daleko
"""
