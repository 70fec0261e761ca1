"""English words that stand beside a number: what it counts, measures or names if it is no page."""

from __future__ import annotations

from service.ballots.language import each_of

TIME_AFTER = each_of(
    "the", "next | following | same | other",
    "day | week | month | year | morning | evening | night | summer | winter | time",
)  # fmt: skip

OTHER_BEFORE = """
ill be | shell be | at this rate ill be | do you use | will you use | would you use | did you use | are you using | should i use | can i use |
she'd be | he'd be | they'd be | i'd be | force | you'll be | i'll be | she'll be | he'll be | be nearly | was | were | there are | there were | there's |
there is | finished | completed | reading | oven's at | at | copy's | worst | gale | living at | live at |
i'm | im | i am | he's | she's | she is | he is | they're | we're | you're | who's | aged |
age | ages | turned | turning | turn | turns | just turned | is now | nearly | almost | since | since i was | when i was | until | till | til | size | a size | day | week |
month | year | years | the year | part | episode | ep | chapter | season | series | video |
vid | vlog | row | column | level | line | step | stage | round | covid | highway | route |
bus | tram | channel | thread | floss | colour | color | shade | skein | used |
room | flat | apartment | platform | verse | psalm | sonnet | score was | scored | score of |
won | lost | lost by | zone | grade | class of | born in | born on | version | v | vol |
volume | top | vitamin | area | formula | catch | opus |
symphony no | concerto no | sonata no | op | hymn | track | on the | of the | per | another |
all | both | these | those | past | other | bought | ordered |
buy | sold | made | spent | paid | cost | costs | worth | saw | counted | count | counting |
watched | stitched | finished | did | done | drank | ate | use | using | need another |
for the past | for about | for over | for nearly | for almost | up to | reached | gusts of |
blowing | degrees | temperature | temperature is | temperature here is | temp is | temp here is | delayed | late by | platform no | number of | gate |
seat | table | locker | cabin | hut | shelf | box | bag | drawer | pot | lot | item |
question | rule | point | note | article | section | paragraph | exercise | problem | lesson |
unit | module | option | plan | act | scene | book | bk | issue | edition | key | bar |
measure | minute | min | second | hour | mile | km | kilometre | junction | exit | terminal |
pier | berth | boat | ferry | train | flight | road | street | avenue | lane | house | block |
floor | ward | bed | oven | gas mark | mark | heat | serves | feeds | makes | preheat to |
needle | hook | hoop | ct | aida | evenweave | linen | fabric | pattern | kit | chart | wip |
project | piece | square | block no | bobbin | card | symbol | strand | pack of |
box of | set of | bag of | pair of | dozens of | group of | couple of | team of | total of |
out of | one of | as of | instead of the | march | april | may | june | july | august |
september | october | november | december | january | february | jan | feb | mar | apr | jun |
jul | aug | sept | sep | oct | nov | dec | summer of | winter of | back in | way back in |
the whole | whole | entire | these past | number one | rank | ranked | position | place |
came | finished in | at least | at most |  maximum |
minimum | max | limit | around age | population | pop | chapters | the last | the next | the first | tickets |
ticket | mine says | it says | label says | packet says | kit says | pattern says | tag says | box says |
clock says | scales say | forecast says | clue says | it's now | its now | it is now | it's only |
it's nearly | it's almost | it's already | it's gone | squared | times |
divided by | equals | highest | lowest | best | worst | studio | club | district | sector |
sub | model | type | type no | class | phase | league | division | game | match | lap |
heat no | hole | set | inning | quarter | jersey | shirt | squad | player
"""

OTHER_AFTER = """
teens | teen | teenagers | teenager | toddlers | toddler | babies | of these already | an evening | a morning | an afternoon |
in the morning | in the afternoon | in the evening | at night | next birthday | this birthday | on my next birthday | on my birthday | sts | st | dc | tr | each | a pop | a head | page a | page per | page each | page every | page at a | pages a |
bus | tram | train | car | lumen | lumens | watts | volts | frame | bobbin | lamp | colour chart | kph | knots | club sandwich | a day |
in all | all told | a week | a month | a year | a night | an hour | a page | a go | a piece | apiece | each way | o'clock ferry | pages long |
year | years | yr | yrs | yo | y/o | yo's | year old | years old | yearold | day | days |
week | weeks | wks | wk | month | months | mths | hour | hours | hr | hrs | minute | minutes |
min | mins | seconds | sec | secs | am | pm | a.m | p.m | oclock | o'clock | times | count |
ct | counts | strand | strands | thread | threads | ply | skein | skeins | colour | colours |
color | colors | shades | cat | cats | dog | dogs | kid | kids | child | children | people |
person | of us | of them | of you | of my | of the | of these | of those | of our | of your |
of a | of it | of mine | of which | of her | of his | of their | stitch | stitches | crosses |
wip | wips | ufo | ufos | pages | cm | mm | m | km | inch | inches | in wide | ft | feet |
foot | kg | g | kilos | grams | lb | lbs | oz | ml | litre | litres | mph | kph | degree |
degrees | pound | pounds | buck | bucks | quid | euro | euros | dollar | dollars | pence |
grand | view | views | likes | sub | subs | subscriber | subscribers | comment | comments |
votes | star | stars | points | percent | per cent | birthday | anniversary | to go |
in a row | down and | still to do | still to go | to do | left to do | more to go | done so far | video | videos | episode | episodes | parts | project | projects |
pieces | charts | kit | kits | needle | needles | hoop | hoops | row | rows | column |
columns | square | squares | blocks | metre | metres | meter | meters | yard | yards | mile |
miles | cup | cups | tea | teas | coffee | coffees | biscuit | biscuits | tbsp | tsp |
tablespoon | tablespoons | teaspoon | teaspoons | egg | eggs | slice | slices | serving |
servings | person recipe | grandchildren | grandkids | sons | daughters | girls | boys |
sisters | brothers | siblings | women | men | ladies | friends | neighbours | of clubs |
winter | winters | summer | summers | spring | springs | autumn | autumns | decades | decade |
century | centuries | fortnight | fortnights | nights | night | mornings | morning | evening |
evenings | weekend | weekends | session | sessions | letters | letter | words | song | songs |
album | albums | track | tracks | film | films | movie | movies | season | seasons | series |
chapter | chapters | book | books | game | games | goals | player players | boat | boats |
sheep | hens | hen | chickens | cows | goats | ducks | geese | horses | birds | fish | plants |
trees | roses | slates | tonnes | tons | tins | tin | boxes | box | bags | bag | packs |
packets | bottles | jars | pairs | pair | sets | socks | jumpers | shirts | thousand |
hundred | million | billion | dozen | k | ish people | and a half | and a bit | stone | st lb |
ways | things | thing | reasons | reason | tries | attempts | chances | rounds | places |
rooms | houses | calories | steps | floors | stairs | lights | candles | lamps | magnifiers |
ends | knots | beads | buttons | bobbins | symbols | holes | crafts | hobbies | jobs | shifts |
buses | trains | cars | bikes | seater | page chart | page monster | page pattern | pager |
page project | page design | stitcher | stitchers | viewers | watchers | members | guests |
customers | replies | notifications | emails | messages | tabs | screens | phones | gifts |
presents | cards | cake | cakes | scones | sandwiches | pies | watt | volt | hands | fingers |
thumbs | eyes | legs | heads | brain cells | wishes | dreams | lives | deaths | husbands |
wives | exes | gb | mb | hz | fps | hd | bpm | hp | cc | hundredths | tenths
"""

NEUTRAL_BEFORE = """
nah | nope | so | oh | ok | okay | hmm | hm | well | right | then | and | but | because | here | hello | hi | hey |
yes | yep | yeah | yay | um | er | erm | ah | aha | ooh | wow | lol | haha | omg | anyway | anyways | anywho | anyhow |
now | today | this time | also | plus | obviously | definitely | maybe | perhaps | probably | possibly |
certainly | surely | sure | always | still | finally | exciting | how exciting | love it | please |
pls | plz | pretty please | thanks | thank you | cheers | the | a | page | number | is | be | it | us |
me | in | x | xx | xxx | too | as | if | for | say | says | like | morning | evening | night | all |
everyone | ladies | girls | folks | dear | dears | hun | love | darling | lovely | great | good | nice |
cool | beautiful | gorgeous | stunning | amazing | fab | fabulous | wonderful | brilliant | awesome |
excited | count me in | i'm in | im in | in' | down | there | done | easy | simple | clearly | naturally |
honestly | personally | myself | wait | looking forward | to it | project | video | idea | start | go |
pick | luck | good luck | fun | guess | one | boring | predictable | random | randomly | otherwise |
anything | something | whatever | however | therefore | hence | thus | either | just | only | even | that |
"""

NEUTRAL_AFTER = """
becuase | beacuse | becasue | becouse | bcuz | becaus | cuase | bcos | becos | bcause | cus | cuz | beause | bcs |
please answer | please reply | please tell | please let | please advise | please help | please share | please say |
please could | please can | please show | please explain | please respond | pls answer | pls tell | pls reply | plz tell |
hasnt | isnt | doesnt | wasnt | cant it | can't it | mustn't | mustnt | innit |
got |
here | hasn't | isn't | doesn't | won't | wouldn't | shouldn't | innit' | unless | otherwise | whatever | forever | ta |
because | cause | cos | coz | cuz | bc | 'cause | since | as | for | and | but | or | if | so | it | it's |
its | please | x | xx | xxx | xxxx | lol | haha | hehe | ha | omg | yay | woo | woohoo | wohoo | hurray |
hooray | obviously | definitely | always | is | was | looks | feels | seems | sounds | just | i | i'm |
i'd | i've | i'll | my | me | from | the | in honour | in memory | in honor | thanks | thank | ty | cheers |
love | lovely | good | great | best | hope | hoping | can't | cant | too | then | now | this | that |
that's | thats | when | where | why | not | yes | yep | yeah | ok | okay | right | maybe | perhaps |
probably | with | without | on | at | by | which | who | what | how | all | also | again | anyway | anyways | hi |
hello | hey | we | we're | you | your | they | he | she | there | here | today | tonight | tomorrow |
tho | though | although | while | before | after | go | going | let's | lets | would | could | should |
will | might | may | can | do | does | has | have | had | are | am | were | be | any | anyone | every |
everyone | fingers | crossed | good luck | fyi | imo | imho | tbh | btw | only | still | first | next |
instead | hun | dear | y'all | yall | darling | lovey | petal | pet | duck | luv | hon | honey | sweetie | chuck | babe | mate | ladies | girls | folks | guys | friends | sorry | excited |
exciting | obvs | innit | eh | huh | right' | etc | to see | been | such | one | wins | ftw | thx | pls |
u wont | u won't | u will | u know | happy | greetings | regards | hugs | kisses | said | says | number | page | in | of | than | never | ever | already | till | until | come | comes | coming | appear | emerge | grow | take | rather | instead of | rather than | in place of |
"""

#: These say something else only where nothing says that n is chosen.
WEAK_BEFORE = """
his | her | their | our | no |
on | in | with | of | have | got | had | by | my | own | having | been | some | plus |
every | half | is now | am | only | near | like | has | had
"""

WEAK_AFTER = """
done | finished | stitched | filled | started | completed | over | to | left | down | more | out of | part | point | page | vote | second | to go | over 1 | all
"""
