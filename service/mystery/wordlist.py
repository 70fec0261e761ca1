"""English words of titles, pictures and talk: two lists and nothing else."""

from __future__ import annotations

#: Common words: one of them alone would turn up in anybody's comment.
WORDS = frozenset(
    """
abandoned above abroad absence accident account acorn acre across actor add advent adventure
aeroplane affair after afternoon afters again against age ago airing airplane airport alarm album
ale alive all alley alligator allotment almond alone along alpaca alphabet already altar always
amber ambulance amulet amuse anchor ancient angel anger angle angling angry animal ankle anklet
anniversary another answer ant antique any ape apology app appear appetite applause apple apricot
april apron arcade arch archery archway argument aries arm armour around arrival arrive arrow art
artichoke artist ash ask asleep asparagus assembly aster ate atlas attic aubergine auction audience
august aunt aurora autumn avalanche avenue awake award axe azalea baby bachelor back backpack
backwards bacon bad badge badger badminton bag bagel baguette bake baker bakery baking balcony ball
ballad ballet balloon balm bamboo banana band bandage banger bangle banister bank banner bannister
banquet banter banyan baptism bargain barge bark barley barn baron barrow basement basil basin
basket bat batch bath bathing bathroom batter battery batting battle bauble bay be beach beacon
bead beagle beak beam bean bear beard bearded beast beat beautiful beaver beck bed bedroom bedtime
bee beech beef beehive beekeeper been beer beetle beetroot before began beggar begin beginning
begun behind beige being bell bellpull belong below belt bench bend benny bent beret berry beside
best bethlehem better betting between beyond bicycle big bike bill billy bind bingo binoculars
birch bird birdhouse birdtable birth birthday biscuit bishop bison bistro bit bite biting bitten
bitter black blackberry blackbird blackboard blacksmith blaming blanket blaze blazing bleach bleat
blend bless blew blink blizzard blood bloomers blossom blouse blow blown blue bluebell blueberry
bluebird blunt boar board boat boater bobbin bobcat bodice body bog boil bold bolt bond bone boney
bonfire bonnet book bookcase bookend bookmark bookshelf bookshop bookstore boot booth border bore
bored born boss both bottle bottom bought boulder bound bouquet bow bowel bowl bowler bowtie box
boy boyhood bracelet braces bracket brain brake bramble branch brass brave braving bray breach
bread break breakfast breeze brick bridal bride bridge bridle bright bring broad broccoli broil
broke broken bronze brooch brook broom broomstick broth brother brought brown brush bubble bucket
buckle bud buddy budge buffalo buggy build builder built bulb bulk bull bully bumblebee bun bundle
bunny bunting buoy burden burglar burn burnt burrow bus bush bushel business bustle busy butcher
butchery butter buttercup butterfly buttery button buy buyer buzz cab cabbage cabin cable cactus
cafe cages cake calendar calf call calm camber came camel camellia cameo camera camp campfire
camping campsite canal candle candy cane cannon canoe canon canteen canter canton canvas cap cape
caper capital captain car caramel caravan card cardigan care career caribou carnation carnival
carol carolling carousel carpenter carpet carriage carrot carry cart carthorse carton cartoon
cascade case cashew casket casserole castle casual cat catch caterpillar cathedral caught cauldron
cauliflower causal cave cavern caw cedar ceiling celery cell cellar cello center centipede centre
century chain chair chairman chalk chamber chameleon champion chance change channel chapel chapter
charity charm charming chase cheap check checked checkers cheek cheese cheetah chef chemist cheque
cherries cherry chess chessboard chest chestnut chick chicken chief child childhood chill chilli
chime chimney chin china chirp chisel chive chocolate choir choose chop chorus chose chosen
christening christmas chrysanthemum chubby church churchyard churn chutney cider cinder cinnamon
circle circuit circus cistern city clam clarinet classic classroom claw clay clean clerk clever
click cliff clifftop climb climber clipper cloak clock clog close closed cloth clothesline cloud
cloudburst cloudy clout clove clover clown club cluck clue clutch clutter coach coal coast coat
cobbler cobra cock cockerel cocoa coconut cocoon cod coffee coil coin colander cold collage collar
collect college collie colony color colour column comb come comet comfort coming command committee
common community company compass compost computer concert cone confession conservatory constable
convent conversation coo cook cookbook cookie cool copper coral corgi coriander cork corkscrew corn
corner cornflower corridor corset cosmos costume cosy cot cottage cotton cough council count
counter country countryside county couple courgette course court courtship courtyard cousin cove
cow cower cozy crab cracker crackle cradle craft crag cranberry crane crate cravat craven craving
crawl crayon crazy creak cream creek creep creeper crescent crest crew cricket cried crime crimson
crinoline croak crochet crockery crocodile crocus croissant crooked croquet cross crossing
crossroads crow crowd crown cruel cruise crumb crumble crumbling crumpet crutch cry crystal cuckoo
cucumber cuddle cuff cufflink cup cupboard curled currant curry curse curtain cushion custard
customer customs cut cutlery cutter cutting dachshund dad daffodil dahlia dainty dairy daisy dale
damp dance dancer dandelion danger dangerous dangle dappled dark darkness darling darn darning
dates daughter daunt dawn day daydream dazing dead dear death debt december decision deck deckchair
deep deeper deer defeat delicate delight demon den denim dentist depart departure desert deserted
desire desk dessert detective devil dial diamond diaper diary dice dictionary did diet different
dig dill diner dinghy dingle dining dinner dipper director dirty disaster discount discover dish
dishing distant ditch diving divorce do dock docket doctor dodge does dog doily doing doll
dollhouse dolly dolphin dominoes done donkey door doorbell doorknob doormat doorstep doorway dot
double doubt dough doughnut dove dowel dower down downpour downwards dozen drag dragon dragonfly
drain drake drama drank drape draw drawer drawing drawn dream dreamt dredge dress dresser dressing
drew dried drift drifting driftwood drink drive driven driver drizzle drop drought drove drown
drowsy drum drummer drunk dry drying duchess duck duckling duke dull dully dumbwaiter dumpling dune
dusk dust duster dusty duty duvet dwarf dwell dynasty each eagle ear early earring earth earthquake
east easter eastern eat eaten echo eclipse edge eel egg eggnog eiderdown eight eighteen eighty
elbow elder elegant elephant eleven elf elk elm email ember emblem embrace embroidery emerald
emperor empire empress empty enchanted encore end ending endless engagement engine enough enter
entrance envelope equinox errand eruption eternal eucalyptus even evening event ever everlasting
every everybody everyone evidence ewe excuse exit expedition explanation explore explorer express
eye fable fabric face fact factory fade faded fair fairground fairly fairy faith falcon fall fallen
family fan fancy fantasy far farewell farm farmer farmhouse farmland farmyard fast fat fate father
fault fear feast feather february fedora feeder feel feet fell fellow felt fen fence fencepost
fennel fern ferry festival fete fetter fever few fiction fiddle fiddler field fiend fifteen fifty
fig fight figure fill film final finch find fine finger fining finish finisher fir fire firefighter
fireman fireplace firework firm first fish fisher fisherman fishing fitting five fjords flag flame
flaming flash flask flat flaunt flavor flavour fleece fleet flew flick flicker flight flighty float
floating flock flood floor floorboard floral flour flower flown flute flutter fly foal foam fog
foggy foil fold folk follow folly fond fonder font food foolish foot football foothill footpath
ford foreign foreigner forest forge forget forgetting forgot forgotten fork fort fortress fortune
forty forwards fought foul found fountain four fourteen fowl fox foxglove fragile fragment frame
framing freckled free freedom freesia freeze fresh friday fridge fried friend frighten fringe frog
front frontier frost frostbite frosty frown froze frozen fry fudge full fullmoon fully funeral
funny fur furlong fuse future galaxy gale gallery galley gallon gamekeeper gaming garage garden
gardener gardenia gardening garland garlic garment garter gasket gate gatepost gather gathered
gathering gauge gaunt gave gaze gazette gazing gear gecko gem gemini genius gentle gentleman
geography geranium gerbil get getter getting ghost giant gift giggle gilt ginger gingerbread
gingham giraffe girl girlhood give given glad glade glance glass glasshouse gleam glen glider
gliding glimmer glitter globe glove glow gnat go goalkeeper goat goblin godfather godmother goes
going gold golden goldfinch goldfish golf golly gone good goodbye goose gooseberry gorge gorgeous
gossip got gourd governor gown grace graceful gradual grain gran grand grandad grandchild
granddaughter grandfather grandma grandmother grandpa grandson granny grape grass grasshopper
grassland grassy grater grates grave graveyard gravy gray grazing great green greenhouse greet grew
grey greyhound griddle grief grin grind grocer groom ground grove grow growl grown guard guess
guest guide guidebook guild guilt guitar gull gully gulp gurgle gutter gypsy had hail hailstone
hair hairy half halfmoon hall halloween hallway halt ham hamlet hammer hammock hamper hamster hand
handkerchief handle handsome hang hanger hanging hanky happen happy harbor harbour hard harden hare
harness hart harvest has hat hatch hate haunt haunted have haven having haw hawk hawthorn hay
haystack hazel hazing head headland headline headscarf hear heard heart hearth heat heath heather
heaven heaver heavy hedge hedgehog hedgerow held helicopter helmet help helping hem hen herb herd
hero heroine heron herring hid hidden hide hideout high highland highlander highway hike hiker hill
hillside hilltop hilly hilt hinge hinter hints hip hippo hiss history hit hitch hitting hive hockey
hoe hold holiday hollow holly hollyhock holy home homecoming homeland homely homewards honey
honeybee honeymoon honeysuckle honk hood hoof hook hoop hoot hop hope horizon horn horned hornet
horse hose hospital host hot hotel hound hour house household housekeeper howl huddle huddled hue
hug huge hulk hull hum humble hummingbird hundred hunger hunt hunter husband hush hushed hut
hyacinth hydrangea hyena hymn ice iceberg icecream icicle icy idea idle iguana illness illusion
imagination inch incident indigo infinite ingredient ink inn inner innkeeper insect inside
instrument inter interest internet interval introduction invitation invite inward iris iron ironing
island islander isle itch ivory ivy jacket jaguar jail jam january jar jasmine jay jeans jelly
jellyfish jenny jerry jetty jewel jigsaw jingle job join joints jolly journal journey joy judge jug
juggler juice july jumble jump jumper junction june jungle juniper jury justice kangaroo kayak
kebab keep keeper kept kerb kerchief kestrel kettle key keyboard kick kicker kid kilt kimono kind
kindle king kingdom kiosk kipper kiss kitchen kitchenware kite kitten knee kneel knew knife knight
knit knitting knock know knowledge known koala labour labrador lace lad ladder ladle lady ladybird
ladybug lain lake lakeside lamb lamp lampposts lampshade land landing landlady landlord landscape
landslide lane lantern larder large lark lass last latch late later latter laugh launderette
laundrette laundry laurel lava lavender law lawn lawyer lay layby lazing lazy leach lead leader
leaf leafy league lean leaning leap learn learnt least leather leave leaver lectern ledge leech
leek left leftover leg legend lemon lend lent leo leopard less let letter letterbox letting lettuce
level lever liberty libra librarian library licker lid lie life lifeguard lift light lightbulb
lighthouse lightly lightning like lilac lily limber lime line linen liner linger lining lion
lioness lip liquorice listen litter little live living lizard llama loaf loan lobster loch lock
locked locket locust lodge loft log lollipop lolly lonely long longing look loom lord lorry lose
loser loss lost lottery lotto lotus loud lounge love lovely lover low lower lowland luck luggage
lullabies lullaby lumber lunch mad made madness magazine magenta magic magical magnet magnolia
magpie maid maiden mail make mallard malt man manager mangle mango manhole manhood manor mansion
mantel many map maple marbles march mare marigold marjoram marked marker market marred marriage
marrow marry marsh marshmallow martin marvellous mask mason mast master mat match mate matter
mattress mauve may mayor meadow meal measure medal medicine meet meeting melody melon melt member
memorial memories memory mend mended mending menu meow merchant mercy meringue mermaid merry
message met meteor meter microscope midday middle midge midnight mighty mile milk milking milkman
milky mill miller million millipede mincemeat mind mingle mining mint minute mirror misfortune mist
mistake mistletoe mistress misty mitt mitten mix mixture mobile moderate modern mole molly mom
moment monastery monday money mongrel monk monkey monocle monorail month monument moo moon
moonlight moonlighting moonlit moor moose mop more morning morsel mosquito moss mossy most moth
mother motif motor motorbike motorway mottled motto mound mount mountain mountaintop mouse mouth
move mow mower much muddle muddy muffin muffler mug mule mulled mum murder murmur museum mushroom
music musket mussel mustard mutter mutton mystery myth nail name naming nan nanny nap napkin
narcissus narrow nary nasturtium nation nature navy near neck necklace need needle needlepoint
needlework neigh neighbor neighbour neighbourhood nephew nest nestled net netting nettle never new
newspaper newt next nibble nice niece night nightdress nightgown nightingale nightly nightmare nine
nineteen ninety noble nobody nod noise noisy nomad none noodle noon north northern nose note notice
noticeboard novel november now nudge number numeral nun nurse nursery nut nutmeg oak oar oasis oat
ocean october octopus odd office officer often oink old olive omelette once one onion only onward
open opener opera orange orchard orchestra orchid order oregano organ ornament orphan ostrich other
otter ounce outback outer outside outward oven over overall overpass overseas owl own owner ox
oyster pack package packet padding paddle paddling padlock page paint painted painter painting
paintwork pair paisley palace pale palm pan pancake panda pander pansy pantry pants papaya paper
parachute parade paragraph paramedic parasols parcel parch parchment pardon parent park parliament
parlor parlour parrot parsley parsnip parson part partner partridge party pass passage passenger
passion passport past pasta pasture pasty pat patch patchwork path patience patient patter pattern
patterned patting pavement pavilion paving paw pea peace peaceful peach peaches peacock peak peanut
pear pearl pebble pedal peek peel peeler peep peeper peg pelican pen pencil pendant penguin
peninsula pennant penny pension peony people pepper peppermint perch perched perfume perry persian
person petal petit petrol petticoat petting petunia pew pharaoh pharmacy pheasant phoenix phone
phoney photo photograph piano pick picker picket pickle picnic picture pie piebald piece pier pig
pigeon piglet pilgrim pill pillar pillow pillowcase pilot pin pinafore pine pineapple pining pink
pint pipe piper pirate pisces pistachio piston pitch pizza plaid plain plan plane planet plank
plant planted plaster plate plateau plated platform play player playground playroom please pleasure
pleat pledge plenty pliers plough plug plum plumber plump pocket poem poet poetry point pointed
pointer poison poker police policeman polish poncho pond ponder pony poodle pool poor poppy porch
porchlight pork porridge port porter portion portrait post postbox postcard poster postman posy pot
potato potion potter pottery potting pound pour power prairie pram prawn pray prayer preach
precious presence present press pretty pretzel prick pride pried priest primrose prince princess
print printed printer prison privet prize problem procession profession profit programme projector
promise proud proven province prowl prune psalm pub pudding puddle puffin pull pulley pullover pump
pumpkin pupil puppet puppy purple purr purse push pushchair put putter putting puzzle pyjamas
python quack quaint quarrel quarter quay queen quest question queue quick quicker quiet quilt
quilted quilting quite rabbit race racket radar radio radish raffle raft rafters rages railing
railway rain rainbow raincoat raindrop rainy raisin rajah rake rally ram ramble ran rang ranger
raspberry rat rates raven raving raw reach read reader realm ream reap reason receipt recipe record
recorder red reed reef reflection reindeer remainder remnant rent reply reporter republic rest
restaurant restless retriever retro return reunion reverie reward rhino rhododendron rhubarb rhyme
ribbit ribbon rice rich ridden riddle ride rider ridge right ring ringer ringing ripe ripple rise
risen risk river riverbank riverside road roadside roam roaming roan roar roast robber robe robin
rock rocket rocky rode roll rollerskate rolling romance roof rooftop rook rooster root rope rose
rosemary rosette rough round roundabout route row rowboat rowing royal rub ruby rucksack rudder rug
rugby ruined rule rumour run rung runny runway rush russet rust rustic rustle rye sack sacred sad
saddle safari safe safety sage said sail sailboat sailing sailor saint salad salary sale sally
salmon salt salty same sampler sand sandal sandcastle sandpaper sandpit sandwich sandy sang
sapphire sari sash sat satellite satin saturday sauce saucepan saucer sausage save saving saw say
scare scarecrow scared scarf scarlet scarred scattered scene scenery scent scholar school
schoolroom science scissors scone scooter scores scrap scraper scratch scream screen screw scribble
scroll sea seabed seafront seagull seal seam search seashell seaside season seaweed second secret
secretary see seed seek seem seen sell seller send sent sentence september sergeant serious sermon
servant serving set setter setting settle seven seventeen seventy sever several sew sewing sexton
shade shadow shady shake shaken shallow shalt shame share shark sharp shaving shawl shed sheep
sheepdog sheet sheikh shelf shell shelter shepherd sheriff sherry shetland shied shield shilling
shimmer shine ship shire shirt shoe shone shook shoot shooting shop shopkeeper shore shoreline
short shortbread shot shoulder shout shovel show shower shown shrew shrine shrub shut shutter shy
siamese side sideboard sideways sidings siesta sieve sigh sight sign signal signpost silence silent
silhouette silk sill silly silty silver simmer simple sin since sing singer single sink sinner sip
sister sit sitting six sixteen sixty skate skateboard skated sketch ski skill skillet skin skip
skipper skipping skirt skirting skittles sky skyline slanted slants slate slated sledge sleep
sleeper sleepy sleet sleeve sleigh slice slick slide slightly slim slip slipper slope sloth slow
slug slumber small smell smelt smile smith smoke smooth snack snail snake snap snapdragon snapshot
snatch sneak sneeze snore snow snowdrop snowfall snowflake snowman snowstorm snowy snug soap
soaring sob society sock socket soft soil sold soldier solstice some somebody someone sometimes son
song soon sorrel sorrow sorry sought soul sound soup sour sourdough south southern sow sower spade
spaniel spanner spare sparkle sparkler sparrow spatula speak spear speckled spectacles spell spelt
spend spent spice spicy spider spied spill spilt spin spinach spindle spinner spinning spinster
spirit spit splash splendid splinter spoil spoilt spoke spoken sponge spool spoon spot spotted
spring sprinter sprints sprout spruce square squash squeeze squid squirrel stable stag stage stain
stair staircase stakes stale stalk stall stallion stammer stamp stand star stare starfish starlight
starling starred start started starter stated states station statue stay steal steam steamer steel
steep steer stem step stepmother steppe stepson stew stick sticker stile still stir stitch
stitching stocking stole stolen stomach stone stony stood stool stop stopwatch store storey stork
storm stormy story stout stove strain strait strange stranger straw strawberry stream street
stretch strike string stripe striped stroll strong student studio stunning sturdy stutter style
suburb subway succulent sudden suds sugar suitcase suited sulk sullen sully sultan sum summer
summit summon sun sundae sunday sunflower sung sunlight sunlit sunny sunrise sunset sunshine supper
surf surgeon surprise sushi suspect suspenders swallow swam swamp swan swarm swear sweater sweep
sweeper sweet sweetheart swift swim swimmer swimming swindle swing switch swollen sword symbol
tabby table tablecloth tablet tadpole tail tailor take taken tale talent talisman talk tall tally
tame taming tan tangle tangled tap taper tapestry target tarragon tart tartan task taste tasty
taught taunt tavern tawny tax taxi tea teacake teach teacher teacup team teapot tear teaspoon teddy
teeth telegraph telephone telescope television tell temple temptation ten tenant tennis tent
tentpole terrace terrier terry text thank thatch theater theatre theft then thermos thick thicker
thicket thief thimble thin think thinner third thirst thirteen thirty thistle thorn thought
thousand thread three thresh threshold threw throne through throw thrown thrush thumb thunder
thunderclap thunderstorm thursday thyme tiara ticket tickle tide tidied tie tiger tights tile till
tilt tilted timber time timeless timing tin tingle tinker tinsel tint tiny tired tit title toad
toast today toe toffee toil told toll tomato tomb tombola tomorrow ton tone tongs tongue tonic
tonight took tooth top torch tore torn tortoise tortoiseshell total touch tour toward towel tower
town townsfolk toy track tractor trade trader traffic trail train tram tramway travel traveller
trawler tray treason treasure treat treaty tree treehouse treetop trekker trend trial triangle
trick tricycle tried trifle trilby trimmer trip triumph trolley trolleybus trombone trophy trouble
trousers trout trowel truce truck truffle trumpet trunk trust truth try tsar tub tuba tuck tucked
tuesday tug tulip tumble tumbling tummy tundra tune tunnel turban turkey turmeric turn turnip
turquoise turtle tweet twelve twenty twice twig twilight twin twinkle twisted twitch twitter two
typewriter ugly umbrella uncle under underpass unicorn uniform union united universe untied until
upper upside upwards use utter vacuum valley van vanilla vanish varnish vault veil velvet veranda
verdict verse vessel vet vicar vice viceroy victory view village villager vine vinegar vintage
violet violin virgo virtue vision visit visitor vivid voice volcano volley volunteer vote vowel
voyage wading wafer waffle wafting wage wagon wailing waistcoat wait waiter waiting waitress wake
walk walking wall wallet wallpaper walnut waltz wand wander wanderer wandering waning want war
warden wardrobe warm warmth warn wary wash washboard washing wasp waste watch watching water
watercress waterfall watermill wave waver waxing way wayside weak weald wear weary weave weaver
weaving website wedding wedge wednesday weed week weekend weeper weigh weird welcome well wellies
wellington welly went west western wet wetland wetter whale whaling wharf wheal wheat wheel
wheelbarrow while whinny whisk whiskered whisper whispering whistle white whiting whole wick wicker
wicket wide widow wife wild wilderness willow wilt wilting win wind windmill window windy wine wing
wining wink winner winter wire wireless wisdom wise wish wishing wisteria witch witching within
without witness wizard woke woken wolf woman wonder wonderful wood wooden woodland woodpecker wool
woollen word wore work worker workshop world worm worn worse worst wound woven wrap wrapped wreath
wreck wren wrench wringer wrist write writer writing written wrote yacht yard yarn yawn year yeast
yellow yesterday yet yew yonder young youth zebra zinnia zip zipper
""".split()
)

#: Real words that hardly stand in a comment by chance.
RARER_WORDS = frozenset(
    """
abbey accordion aconite acrobat admiral agave airship albatross alder almanac aloe anemone anteater
antelope apiary applique appliqué aqueduct arbour archipelago armada armadillo aspen atoll auk
bagpipe bagpipes bandstand banjo baobab bargee battlement beeswax belfry bellows bellringer
bellringers biplane birdbath bittern blackthorn blackwork blancmange boathouse bookworm borage
bosun bower bridleway bugle bullfinch buzzard byre cablecar campanula campion candlelight
candlemaker candlemas candlestick canyon cardamom castaway causeway celandine chaffinch chandelier
chandler chariot cheesemaker chrysalis clockmaker cloister clotheshorse cockle coldframe combine
comfrey commodore concertina conker conkers constellation convoy cooper coot cordwainer cormorant
cornet coronation corral cougar cowslip coxswain creamery creel crewel croft crusade crypt curate
curlew cyclamen cymbal dagger damson deckhand delphinium delta derelict dormouse draper draughts
drawbridge dressmaker dungeon dunnock earwig easel egret elderberry elderflower embankment
engraving epiphany esplanade estuary etching evensong farrier fender ferret ferryman firefly
firelight firth fjord flotilla foghorn forsythia fresco frogspawn fulmar funicular galosh gannet
gatehouse gazebo gazelle geyser gibbous glacier gladiolus glassblower glowworm goldcrest goldsmith
gondola gramophone grebe greenfinch guillemot guinea gumdrop haberdashery halfpenny hangar hansom
hardanger harebell harmonica harp harpoon harrier hayloft haywain hellebore hemlock hermit
hermitage hoard hogmanay honeycomb hopscotch hourglass humbug ibis inkpot inkwell inlet jackal
jackdaw jig jubilee kelp keyhole kindling kingfisher kittiwake knocker laburnum lagoon lamplight
lamplighter lamppost lance lapwing larch larkspur ledger lifebelt lifeboat limestone limpet linnet
lobsterpot lockkeeper lupin lute lynx macaroon magi manger mantelpiece mantis mapmaker marten
marzipan masquerade matins maypole meadowsweet medlar metronome mews michaelmas milestone milliner
mimosa minuet moat moonrise moorhen moorland moraine morris mosaic mudflat mulberry mural
narrowboat nativity nave nestbox nightlight nuthatch oarsman oboe omnibus orb orion osprey outcrop
oxlip oystercatcher paddock pageant palette parasol pendulum pergola periwinkle petrel pilgrimage
pillarbox pincushion pipit pitchfork plover polecat polka pomegranate poplar priory promenade
pulpit puma pumpernickel quill quince quiver ramshackle rapids razorbill rector reel regatta
ringmaster rockery rosehip rowan rower saddler saffron salamander saltmarsh sandbank satchel
savanna sceptre scree scuttle scythe seascape seesaw semaphore sextant sexton sheaf sheaves sherbet
shingle shipwreck shoemaker sickle silversmith siskin sixpence skerries skerry skua sloe sluice
smuggler snipe soapsuds spyglass stagecoach starch starlit steeple stoat stockyard stowaway
streetlight strongman summerhouse sundial sycamore tambourine tango tansy tassel teal tearoom tern
thresher tightrope tollgate tollhouse torrent towpath toymaker trapeze trawl treecreeper trellis
trough tumbledown turret unicycle urchin valance verger vespers vestry viaduct vigil viper vole
wagtail watchmaker weasel weir wheelwright whelk whippet whirlpool wigeon wildcat willowherb
windowsill woodlouse woodpile workbasket workbox yak yarrow yellowhammer yoyo zeppelin zodiac
""".split()
)
