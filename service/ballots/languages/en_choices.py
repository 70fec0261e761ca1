"""English words of choosing, of taking back, and of other people's choices."""

from __future__ import annotations

CHOICE_BEFORE = """
this week | this round | this month | this time | preferably | ideally | won't say no to | wouldn't say no to | wouldn't mind | would not mind | beg for |
begging for | dream of | dreaming of | bagsy | bags | dibs on | shotgun | chuck us on | stick us on | big yes to |
yes to | thumbs up for | making it | money's going on | money is on | money goes on | please have | meself | stitch | please stitch | sew | made up with | happy with | delighted with |
chuffed with | pleased with | let us be having | let us have | let us do | a bit of | sneak in with |
sneaking in with | vote go to | vote go for | get stuck into | stuck in to | stuck into | crack on with | get going on | dive into | jump into |
straight into | set off from | set off on |
vote | votes | voting | voted | vote for | votes for | voting for | voted for | vote is |
vote's | vote on | vote goes to | vote goes for | vote would be | vote to | vote has to be |
pick | picks | picking | picked | pick is | picking out | choose | chose | choosing |
choose is | choice is | choice | choice would be | choices | selection | selecting | select |
go | go with | go for | going | going with | going for | going to go with | gonna go with |
gonna go for | goes with | went with | went for | gone for | put me on | put me at |
stick me on | stick me down for | put us on | i'm going to say | going to say | gonna say |
gut is shouting | is shouting | shouting | is screaming | screaming | is telling me |
telling me | i mean | i meant | meant | let's be having | why not | vote is on | voting on | i put |
whispers | says to me | start | start on | start at | start with | start from | started on |
starting on | starting at | starting with | start off on | start off with | begin |
begin with | begin on | begin at | beginning with | kick off with | kick off on | guess is |
guess | guess would be | how about | what about | hows about | how bout | what bout |
put me down for | put me down as | put us down for | pop me down for | mark me down for |
down for | sign me up for | count me in for | count me for | i say | i'd say | we say |
i'll say | id say | ill say | i would say | we'd say | have to say | say | so i say | saying |
i'm saying | i'd like | id like | i would like | we'd like | we would like | like to see |
love to see | want to see | would love | i'd love | id love | see | i want | we want |
i'd choose | i'd pick | i'd go | i'll take | ill take | i'll go | take | taking | we'll take |
i'll have | ill have | give me | gimme | give us | let's do | lets do | let's go | lets go |
let's have | lets have | let's see | lets see | do | let's try | lets try | try | make it |
make mine | make that | has to be | gotta be | got to be | must be | have to be | should be |
it is | it's | its | it'll be | it will be | can i have | can we have | could i have |
could we have | may i have | may we have | can we do | could we do | can you do |
could you do | could you start | can i get | could i get | may i | may i suggest | suggest |
stick with | sticking with | sticking to | stick to | i stick with | staying with | stay with |
settle on | settled on | settling on | opt for | opting for | favour | prefer | i prefer |
i'd prefer | rooting for | my heart says | heart says | gut says | head says | tummy says | add | gut feeling |
gut feeling is | brain says | agree on | agreed on | decided on | decide on | landed on |
plump for | plumping for | stick a pin in | pin in | name next to | name on | name down for |
name against | hoping for | cheer me up with | cheer us up with | treat us to | surprise us with | all on | all three on | both on | everything on | hope for | hope it's | fingers crossed for | crossed for |
cheering for | backing | i'm with | team | mine is | mine's | ours is | answer is | answer |
final answer | in favour of | throw in | throwing in | chuck in | calling | i call |
shout for | i reckon | reckon | i think | i fancy | fancy | feeling | i'm feeling | i feel |
vibes | i choose you | need | we need | i need | bet on | money on | my money's on | drawn to |
leaning towards | leaning to | lean towards | keen on | thinking | i'm thinking |
was thinking | nominate | request | requesting | asking for | wish for | i wish for |
switch to | switching to | change to | change it to | changing to | change mine to |
change my vote to | change my mind to | swap to | swapping to | swap me to | swap it to |
move me to | moving to | amend to | update to | it to | mine to | vote from me is |
vote this time is | vote remains | changed to | change it for | getting | pick me |
choosing page | would you consider | could you consider | consider | how do you feel about |
any chance of | chance of | tempt you with | may i request | can i suggest | could i suggest |
can i request | could i request | i'd suggest | spoil me with | spoil us with | treat me to
"""

CHOICE_AFTER = """
pleese | pleaze | pleas | pleeze | plese | pleez | plaese | pleae | plase | pleeese | pleasee | pls. |
it has to be | it must be | it is then | it shall be | it will be | it'll be | it's gotta be | it needs to be |
it should be | it was meant to be | decided | it's decided | that's settled | and that's final |
wuld be | woud be | woudl be | wud be | wld be | would b | wuld be nice | wud be nice | woud be nice |
woudl be nice |
please | pls | plz | plez | pleaseee | pleeease | pretty please | if you please | plse |
for me | from me | for us | from us | for the win | ftw | it is | it's | its | gets my vote |
get my vote | has my vote | have my vote | is my vote | my vote | is my choice | my choice |
is my pick | my pick | is my guess | my guess | is my final answer | final answer |
all the way | would be | would be nice | would be lovely | would be great | would be good |
would be my | will do | for sure | all day | all day long | is the one | is mine | mine |
has to be | must be | gotta be | stays | stands | remains | rocks | rules | beckons | appeals |
suits me | wins my vote | it stays | is what you're getting | is what i'd pick | sounds |
sounds good | looks good | feels right | seems | looks | is calling | calls to me |
is calling me | speaks to me | ta | ta very much | thank you please | then thanks | is where |
first please | to start | to start with | to begin | to begin with | kindly | thanks please |
por favor | i choose you | i say | i reckon | i think | for the first page |
as the first page | for a start | for starters | then please | definitely | deserves | needs |
is a good | is a nice | is the best | is best | it shall be | would you | will you | if you would |
if you will | if you please | if you don't mind | if possible | if i may | makes sense | is fine | if you'd be so kind | if you would be so kind | wins my heart | won my heart |
meself | myself | will ya | would ya
"""

NOT_BEFORE = """
never meant | not meant | wasn't meant | exept | excpet | anything accept | any page accept | anyone accept | whatever accept |
not falling for | no votes for | no vote for | no votes to | not | never | neither | nor | anything but | any but | hard pass on | pass on | no thanks to | nope to | away from | keep away from | keep well away from | scratch | drop | than | never | no to the | any page but | any number but |
anything except | any except | any page except | anywhere but | everything but | all but |
except | except for | apart from | instead of | rather than | other than | but not | and not |
don't do | dont do | do not do | don't pick | dont pick | do not pick | don't choose |
dont choose | don't start on | don't start with | don't want | dont want | do not want |
don't vote | don't vote for | dont vote for | please not | please no | not page | no to |
anything other than | without | avoid | skip | against | don't like | hate | won't do |
no more | over | not on | don't you dare start on | don't you dare do | i didn't mean |
didn't mean | not the | wouldn't pick | wouldn't choose | wouldn't start on | wouldn't do |
wouldn't go for | wouldn't go with | no not | not going with | not going for | not voting for |
not voting | not picking | not choosing | anyone but | don't go with | don't go for |
steer clear of | don't make it | dont make it | do not make it | don't let it be | don't say |
please don't do | please don't pick | never said | didn't say | did not say | didnt say | never voted |
never voted for | didn't vote for | never picked | never chose | never asked for
"""

CORRECTION = """
och naw | och no | och na | naw wait | ach no | ach naw | naw , | oh naw |
real vote | actual vote | serious vote | real answer | actual answer | seriously though | but seriously | no seriously | jokes aside | joking aside | jokes apart | joking apart | for real though |
no , too | no too | nah , too | nah too | no , that's too | no that's too | nope too | nope , too |
no wait | wait no | oh wait | hang on | hold on | i meant | i mean | meant | scratch that |
strike that | scrap that | jk | j/k | there aren't | there isn't | there is no | there's no |
only goes to | only goes up to | isn't a | just kidding | kidding | only joking | joking |
haha no | lol no | ha no | hmm no | um no | er no | nope | nah | no no | edit | correction |
corrected | changed my mind | change my mind | changing my mind | change that to | change to |
change it to | on second thought | on second thoughts | second thoughts | sorry meant |
sorry i meant | oops | whoops | typo | ignore that | forget that | no actually | or rather |
changed it to | switch to | switching to | swap to | and wanted | but wanted | and meant | but meant | my bad | correct to | should read |
should say | should have been | should've been | shouldve been | was meant to be | supposed to be | supposed to say | but today | but this time | but tonight | but now | meant to be | meant to say | meant to type | can i change | i've changed |
ive changed | changed to | amended | wait actually | actually wait | actually no | no sorry |
sorry no | make that | autocorrect | fat fingers | fat thumbs | fat finger | fat thumb |
wrong number | thumb slipped | finger slipped | doesn't exist | does not exist | doesnt exist |
isn't on the chart | not on the chart | it stops at | stops at | isn't one of them
"""

CONDITION = """
if it's free | if its free | if it is free | if it's still free | if free | if still free |
if it's available | if available | if still available | if it's still available |
if it's not taken | if its not taken | if not taken | if it isn't taken | if it's not gone |
if you haven't | if it hasn't | if you've not | if it's not done | if it isn't done | if nobody | if no one | if noone | if nobody's | if no one's | if someone | if somebody |
if somebody's | if someone's | if somebody's beaten | if anyone's | if i'm not too late for |
if anyone | if everyone | if everybody | if others | if enough | if it's not been |
if it hasn't been | if it hasnt been | if that's free | if that's still free |
if that's not taken | if it's taken | if it's gone | if that's taken | if it's winning |
if someone has | if somebody has | if it's already | as long as nobody | as long as no one |
provided nobody | only if | if my sister | if my husband | if my friend | if you think |
if there's | if there is | if it has | if it's got | if that's the | if that one |
if it's the | as long as | if that's been | if it's been | if that has been | if it has been
"""

REPORTED_BEFORE = """
everyone | everybody | everyone's | everybody's | people | others | somebody | someone |
someone's | somebody's | anyone | anybody | nobody | no one | folks | all saying | all say |
y'all | lot | most of you | many of you | some of you | all of you | crowd | majority |
looks like | seems like | surprised | was going to say | was gonna say | were going to say |
vote was | choice was | pick was | guess was | was going to pick | was going to vote |
was going to go with | nearly picked | was going to vote for | was going to choose |
nearly said | almost said | nearly voted | almost went with | nearly went with | tempted by |
thought about | considered | would have said | would've said | was tempted by | last time |
last round | i see | bet | i bet | predict | prediction | bots | comments | chat | lots of |
loads of | so many | too many | will win | the rest of you | i wanted | i was thinking |
almost picked | lot of | bunch of | plenty of | popular | most people | whoever | whoever's | i'm with * | im with * | other comment | every comment | winning is |
in the lead is
"""

FAMILY_BEFORE = """
husband | hubby | wife | partner | boyfriend | girlfriend | son | daughter | kid | kids |
child | mum | mom | mother | dad | father | sister | brother | friend | neighbour | neighbor |
nan | nana | gran | granny | grandma | grandad | colleague | boss | cat | dog | aunt | auntie |
cousin | niece | nephew | grandson | granddaughter | grandkids | other half | missus | he |
she | they | big one | middle one | small one | little one | eldest | oldest | twins | triplets | younger one | older one | youngest | mate |
bestie | mil | dh | flatmate | roommate | toddler | teenager | baby | other one | parrot |
budgie
"""

WITHDRAWN = """
actually forget it | actually , forget it | you know what forget it | you know what , forget it | no forget it |
oh forget it | actually never mind | actually nevermind | actually nvm | i take back # | take back # |
deleting my | removing my | scrapping my | cancelling my | canceling my |
vote was wrong ignore it | was wrong ignore it | ignore it please | please ignore it | ignore my first vote |
ignore my | ignore my vote | ignore my number | ignore my comment | ignore my last |
ignore my previous | ignore my earlier | disregard my | scrap my | scratch my | cancel my |
withdraw my | withdrawing my | i withdraw | retract my | take back my | take my vote back |
taking my vote back | taking back my | take my vote off | take me off | remove my |
take my # out | take my # back | take my # off | take # off | take # out | take # back |
take my vote out | take my vote away | take my votes out | take my votes back | take my number out | take my number back | take my number off |
take my name out | take my name off | take my pick back | take my comment back | take my choice back |
i'm withdrawing | withdrawing , i | withdrawing . |
delete my | forget my | don't count my | dont count my | do not count my | don't count me |
dont count me | discount my | please don't count | please dont count | please ignore |
no vote from me after all | scrap that no vote | strike my | i take back my | i take it back |
i take that back | my vote doesn't count | i change my vote to none | unvote | void my |
i'd like to withdraw | withdraw it | withdraw that | please withdraw | withdraw mine |
forget i voted | forget i said | forget i said anything | forget what i said | forget my vote | forget me |
cancel it | cancel mine | scrap mine | take it off | take mine off | ignore mine | remove it |
want to withdraw | pull my vote | cancel that | cancel that please | scrap that please
"""

ABSTAINING = """
you pick one | you choose one | pick one for me | pick one for us | choose one for me | choose one for us | no vote from me | no vote | not voting | no number from me | not going to vote |
won't be voting | won't vote | i'm not voting | i abstain | abstaining | no vote yet |
let me think | not sure yet | still thinking | ? not sure | ?? not sure | hmm not sure | but i don't know | but i dunno | but not sure | but i'm not sure | ? idk | ?? idk | idk though | can't agree | cannot agree | couldn't agree | undecided | can't decide | cant decide | haven't decided | no preference | don't mind which |
no number | i'm no help | not choosing | i'll sit this one out | sitting this one out |
don't have a vote | still deciding | will decide | need to think | no pick from me
"""

POINTING = """
his age please | her age please | use his age | use her age | take his age | take her age | go by his age | go by her age |
either of those pages | either of these pages | either of those numbers | either of these numbers |
lucky number whichever that is | number , whichever that is | page , whichever that is | the * , whichever that is | the * * , whichever that is |
take my age | use my age | go by my age | try my age | do my age | take my birthday | use my birthday | take my house number | use my house number |
second this | as per my | as per | copy the | i'll copy | whatever the lady before me | whatever the lady above | copying the | follow the | following the | i'll follow | going with the crowd | do with that | that's a sign | is that a sign | that a sign | must be a sign | see where i'm going |
see where this is going | know where i'm going | who am i to argue | still stands |
whatever i said | what i said last | maybe that as | the one to the left of |
the one to the right of | where you are now | wherever you are now |
do that one | use that | same one as | same page as | same number as | same three as | same two as | same ones as | same as last week | same as last week for me | that one please | so do that |
that number please | pick that one |
so that one | in the middle of those two | one in between them | the one between them | between those two |
the number of * on my | number of candles | number on my | number of my | that one please | so that page | that's my number | so that then | so that ! | so that . | so that !! |
day i was born | same | same as the * | with * on this | same here | same as above | same as | same again | ditto |
as above | me too | what she said | what he said | what they said | what she says | seconded |
i second that | second that | same page | same number | same one | same vote | my age |
my birthday | my house number | my birth month | my lucky number | +1 | the above | see above |
likewise | my shoe size | my wedding date | my birth date | my date of birth | copying |
my birth year | same for me | same as last time | same vote as | same as before |
the one above | copying the | copying her | copying him | copying my | copying them | copying you |
further up in the comments |
same one i * for | same page i * for | same number i * for | same one i wanted | same one i had |
got to be a sign | has to be a sign | it's a sign | a sign from above
"""

KINDS = """
even ones | odd ones | both even | both odd | ones in the * |
left hand side | right hand side | hand side somewhere |
somewhere on the left | somewhere on the right | on the left somewhere | on the right somewhere |
ending in | ends in | ending with | ends with | that starts with | beginning with a | right - hand side |
left - hand side | left - hand edge | right - hand edge | halfway down | halfway up | even page | even number | in the teens | in the twenties | in the thirties | in the forties |
in the fifties | in the sixties | in the seventies | in the eighties | in the nineties |
even numbers | odd numbers | prime numbers | primes | even pages | odd pages |
one of the corners | anywhere in the * | somewhere in the * | anything in the * |
something in the * | row along | along the top | along the bottom | row at the |
somewhere over | somewhere above | anything over | anything above | anything under |
the higher the | odd page | odd number | prime number | any even | any odd | an even | an odd |
a prime | double digits | single digit | single digits | double digits | double digit | even one | odd one | multiple of |
divisible by | high number | low number | lower half | upper half | top half | bottom half |
left half | right half | a border | edge page | an edge | the teens | any teens | teens please | top row | bottom row |
middle row | first row | last row | left side | right side | left column | right column |
left edge | right edge | top edge | bottom edge | an inside page | the edge | the side |
outer edge | a side | middle column | one of the edges | around the edge |
somewhere in the middle | near the middle | around the middle | towards the middle |
near the centre | near the center | somewhere central | near the top | near the bottom |
near the end | near the start | somewhere at the top | somewhere at the bottom
"""
