"""English, as viewers write it under a video."""

from __future__ import annotations

from service.ballots.language import Language, phrases
from service.ballots.languages import en_counts

_UNITS = (
    "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen "
    "fifteen sixteen seventeen eighteen nineteen"
).split()
_TENS = "twenty thirty forty fifty sixty seventy eighty ninety".split()
_ORDINAL_UNITS = (
    "zeroth first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth "
    "thirteenth fourteenth fifteenth sixteenth seventeenth eighteenth nineteenth"
).split()
_SLIPS = {
    "thirten": 13, "thriteen": 13, "forteen": 14, "fourten": 14, "fiveteen": 15, "fiften": 15,
    "sixten": 16, "seventen": 17, "sevteen": 17, "eightteen": 18, "eighten": 18, "ninteen": 19,
    "nineten": 19, "ninetten": 19, "elevan": 11, "elevin": 11, "twelv": 12, "twelf": 12,
    "eigth": 8, "eigt": 8, "sevn": 7, "thre": 3, "foure": 4, "nien": 9,
}  # fmt: skip
_TENS_SLIPS = {
    "twety": 20, "twenny": 20, "twentie": 20, "tweny": 20, "thirdy": 30, "thrity": 30,
    "therty": 30, "thirtie": 30, "fourty": 40, "fourthy": 40, "forthy": 40, "fivety": 50,
    "fity": 50, "fivty": 50, "fiftie": 50, "sixy": 60, "sixtie": 60, "sevnty": 70, "sevety": 70,
    "seventie": 70, "eigthy": 80, "eightty": 80, "eighy": 80, "ninty": 90, "nintey": 90,
    "ninetie": 90,
}  # fmt: skip


def _below_hundred() -> dict[str, int]:
    words = {word: value for value, word in enumerate(_UNITS)} | _SLIPS
    tens = {word: 20 + 10 * place for place, word in enumerate(_TENS)} | _TENS_SLIPS
    ones = {word: value for word, value in words.items() if 0 < value < 10}
    pairs = {ten + one: tens[ten] + ones[one] for ten in tens for one in ones}
    return words | tens | pairs


def _numbers() -> dict[str, int]:
    """Number words to 999, joined as people write them, with and without "and"."""
    small = _below_hundred()
    found = dict(small) | {"hundred": 100, "ahundred": 100, "nought": 0, "dozen": 12}
    exact = {word: value for word, value in small.items() if value and word not in _SLIPS}
    hundreds = {"onehundred": 100, "ahundred": 100, "hundred": 100}
    hundreds |= {_UNITS[times] + "hundred": 100 * times for times in range(2, 10)}
    for word, hundred in hundreds.items():
        found[word] = hundred
        for rest, value in exact.items():
            found[word + rest] = hundred + value
            found[word + "and" + rest] = hundred + value
    # "one fifty-four" is said for 154; a bare "one four" is not one number.
    for rest, value in exact.items():
        if value >= 10:
            found["one" + rest] = 100 + value
    return found


def _ordinals() -> dict[str, int]:
    units = {word: value for value, word in enumerate(_ORDINAL_UNITS) if value}
    units |= {"twelth": 12, "fith": 5, "nineth": 9, "eigth": 8, "fourtieth": 40}
    tens = {word[:-1] + "ieth": 20 + 10 * place for place, word in enumerate(_TENS)}
    found = units | tens
    for place, ten in enumerate(_TENS):
        for word, value in units.items():
            if value < 10:
                found[ten + word] = 20 + 10 * place + value
    hundred = {"hundredth": 100, "onehundredth": 100}
    for word, value in list(found.items()):
        hundred["hundred" + word] = hundred["onehundred" + word] = 100 + value
        hundred["hundredand" + word] = hundred["onehundredand" + word] = 100 + value
    return found | hundred


LANGUAGE = Language(
    code="en",
    everyday=phrases(
        """
        the | a | an | and | or | i | i'm | im | i'd | i'll | i've | my | me | you | your | we |
        it | it's | is | are | was | be | to | of | in | for | from | with | on | at | this | that |
        not | no | yes | please | pls | thanks | thank | love | hi | hello | page | vote | if |
        have | has | had | so | but | just | do | does | can | could | would | what | how | all |
        number | will | go | going | like | lovely | there | here | they | been | our | us | as
        """
    ),
    numbers=_numbers(),
    ordinals=_ordinals(),
    ordinal_endings=frozenset({"st", "nd", "rd", "th"}),
    homophones={"to": 2, "too": 2, "for": 4, "won": 1, "ate": 8, "fore": 4, "tree": 3},
    page=phrases("page | p | pp | pages | pg | pge | pag | pgs | page number | page no | page num | page nr"),
    number=phrases("number | num | nr | no. | numero | nbr | numbr | nummer"),
    fillers=phrases(
        """
        the | a | an | good old | good ol | old | ol | definitely | defo | def | just | simply |
        obviously | probably | maybe | perhaps | surely | certainly | totally | only | big |
        lovely | lucky | little | my | that | this | be | then | oh | um | er | hmm | please | pls |
        plz | always | still | got to be | gotta be | has to be | have to be | very | really |
        actually | also | number | instead | choice | is | would be | for | today | now | again
        """
    ),
    choice_before=phrases(
        """
        vote | votes | voting | voted | vote for | votes for | voting for | voted for | vote is |
        vote's | vote on | vote goes to | vote goes for | vote would be | vote to | vote has to be |
        pick | picks | picking | picked | pick is | picking out | choose | chose | choosing |
        choose is | choice is | choice | choice would be | choices | selection | selecting |
        select | go | go with | go for | going | going with | going for | going to go with |
        gonna go with | gonna go for | goes with | went with | went for | gone for | put me on | put me at | stick me on | stick me down for | put us on | i'm going to say | going to say | gonna say | gut is shouting | is shouting | shouting | is screaming | screaming | is telling me | telling me | i mean | i meant | let's be having | why not | vote is on | voting on | i put | whispers | says to me |
        start | start on | start at | start with | start from | started on | starting on |
        starting at | starting with | start off on | start off with | begin | begin with |
        begin on | begin at | beginning with | kick off with | kick off on | guess is | guess |
        guess would be | how about | what about | hows about | how bout | what bout |
        put me down for | put me down as | put us down for | pop me down for | mark me down for |
        down for | sign me up for | count me in for | count me for | i say | i'd say | we say |
        i'll say | id say | ill say | i would say | we'd say | have to say | say | so i say |
        saying | i'm saying | i'd like | id like | i would like | we'd like | we would like |
        like to see | love to see | want to see | would love | i'd love | id love | see |
        i want | we want | i'd choose | i'd pick | i'd go | i'll take | ill take | i'll go |
        take | taking | we'll take | i'll have | ill have | give me | gimme | give us | let's do |
        lets do | let's go | lets go | let's have | lets have | let's see | lets see | do |
        let's try | lets try | try | make it | make mine | make that | has to be | gotta be |
        got to be | must be | have to be | should be | it is | it's | its | it'll be | it will be |
        can i have | can we have | could i have | could we have | may i have | may we have |
        can we do | could we do | can you do | could you do | could you start | can i get |
        could i get | may i | may i suggest | suggest | stick with | sticking with | sticking to |
        stick to | i stick with | staying with | stay with | settle on | settled on | settling on |
        opt for | opting for | favour | prefer | i prefer | i'd prefer | rooting for |
        my heart says | heart says | gut says | gut feeling | gut feeling is | brain says |
        agree on | agreed on | decided on | decide on | landed on | plump for | plumping for |
        stick a pin in | pin in | name next to | name on | name down for | name against |
        hoping for | hope for | hope it's | fingers crossed for | crossed for | cheering for |
        backing | i'm with | team | mine is | mine's | ours is | answer is | answer | final answer |
        in favour of | throw in | throwing in | chuck in | calling | i call | shout for |
        i reckon | reckon | i think | i fancy | fancy | feeling | i'm feeling | i feel |
        vibes | i choose you | need | we need | i need | bet on | money on | my money's on |
        drawn to | leaning towards | leaning to | lean towards | keen on | thinking | i'm thinking |
        was thinking | nominate | request | requesting | asking for | wish for | i wish for |
        switch to | switching to | change to | change it to | changing to | change mine to |
        change my vote to | change my mind to | swap to | swapping to | swap me to | swap it to |
        move me to | moving to | amend to | update to | it to | mine to | vote from me is |
        vote this time is | vote remains | changed to | change it for | getting | pick me | choosing page
        """
    ),
    choice_after=phrases(
        """
        please | pls | plz | plez | pleaseee | pleeease | pretty please | if you please | plse |
        for me | from me | for us | from us | for the win | ftw | it is | it's | its | gets my vote |
        get my vote | has my vote | have my vote | is my vote | my vote | is my choice | my choice |
        is my pick | my pick | is my guess | my guess | is my final answer | final answer |
        all the way | would be | would be nice | would be lovely | would be great | would be good |
        would be my | will do | for sure | all day | all day long | is the one | is mine | mine |
        has to be | must be | gotta be | stays | stands | remains | rocks | rules | beckons | appeals | suits me | wins my vote | it stays | is what you're getting | is what i'd pick | sounds | sounds good | looks good |
        feels right | seems | looks | is calling | calls to me | is calling me | speaks to me | ta | ta very much | thank you please | then thanks |
        is where | first please | to start | to start with | to begin | to begin with | kindly |
        thanks please | por favor | i choose you | i say | i reckon | i think |
        for the first page | as the first page | for a start | for starters | then please |
        definitely | deserves | needs | is a good | is a nice | is the best | is best | it shall be
        """
    ),
    other_before=phrases(en_counts.OTHER_BEFORE),
    other_after=phrases(en_counts.OTHER_AFTER),
    weak_before=phrases(en_counts.WEAK_BEFORE),
    weak_after=phrases(en_counts.WEAK_AFTER),
    neutral_before=phrases(en_counts.NEUTRAL_BEFORE),
    neutral_after=phrases(en_counts.NEUTRAL_AFTER),
    lucky_before=phrases(
        """
        lucky number is | lucky number | lucky number's | lucky no is | lucky is | lucky |
        favourite number is | favourite number | favorite number is | favorite number | fave number |
        favourite number's | fave number is | fav number is | fav number | favourite is |
        favorite is | favourite has always been | house number is | door number is |
        shirt number is | shirt number was | number was | number is | number has always been |
        number's always been | number has to be | number of mine is
        """
    ),
    not_before=phrases(
        """
        not | never | neither | nor | anything but | any but | any page but | any number but | anything except |
        any except | any page except | anywhere but | everything but | all but | except | except for |
        apart from | instead of | rather than | other than | but not | and not | don't do | dont do |
        do not do | don't pick | dont pick | do not pick | don't choose | dont choose | don't start on |
        don't start with | don't want | dont want | do not want | don't vote | don't vote for |
        dont vote for | please not | please no | not page | no to | anything other than |
        without | avoid | skip | against | don't like | hate | won't do | no more | over | not on |
        don't you dare start on | don't you dare do | i didn't mean | didn't mean | not the |
        wouldn't pick | wouldn't choose | wouldn't start on | wouldn't do | wouldn't go for |
        wouldn't go with | no not | not going with | not going for | not voting for | not voting |
        not picking | not choosing | anyone but | don't go with | don't go for | steer clear of
        """
    ),
    not_after=phrases(
        """
        is out | is off the table | no thanks | no thank you | would be awful | would be a mistake |
        is unlucky | is bad luck | scares me | is cursed
        """
    ),
    correction=phrases(
        """
        no wait | wait no | oh wait | hang on | hold on | i meant | i mean | meant |
        scratch that | strike that | scrap that | jk | j/k | there aren't | there isn't | there is no | there's no | only goes to | only goes up to | isn't a | just kidding | kidding | only joking |
        joking | haha no | lol no | ha no | hmm no | um no | er no | nope | nah | no no |
        edit | correction | corrected | changed my mind | change my mind | changing my mind |
        change that to | change to | change it to | on second thought | on second thoughts |
        second thoughts | sorry meant | sorry i meant | oops | whoops | typo | ignore that |
        forget that | no actually | or rather | changed it to | switch to | switching to | swap to |
        my bad | correct to | should read | should say | meant to be | meant to say | meant to type |
        can i change | i've changed | ive changed | changed to | amended | wait actually |
        actually wait | actually no | no sorry | sorry no | make that | autocorrect | fat fingers |
        fat thumbs | fat finger | fat thumb | wrong number | thumb slipped | finger slipped
        """
    ),
    soft_correction=phrases(
        "actually | rather | instead | fine | ok fine | better | this time | no | oh no | wait | "
        "sorry | update | final answer | or no | well no | hmm | make it | now | go on then | fine then"
    ),
    relative_after=phrases(
        "from the end | from the top | from the bottom | from the left | from the right | "
        "from the start | along | rows down | rows up | from last | from the last"
    ),
    tally_before=phrases("votes for | votes on | people for | said | votes to"),
    topics=phrases(
        """
        size | needle | needles | count | dmc | thread | threads | floss | colour | colours | color |
        colors | strand | strands | fabric | aida | linen | evenweave | hoop | lamp | oven | bus |
        train | ferry | boat | minutes | hours | price | cost | degrees | gauge | stitches | skeins |
        bobbin | magnifier | glasses | battery | volts | watts | lumen | mm | cm | inch | inches |
        episode | season | chapter | song | film | movie | album | recipe | tv | score | kg | litres
        """
    ),
    ages=phrases(
        """
        my age | year i was born | day i was born | birth year | year of my birth | how old i am |
        age i am | age i turned | i was born in | i was born on | my birth date | my birthday | my bday
        """
    ),
    depends=phrases(
        "whichever's | whichever has | whichever is | whichever one | depending on | depends | "
        "unless | provided | providing | whichever"
    ),
    ranked=phrases(
        "in that order | in this order | in order | order of preference | in order of preference"
    ),
    first_choice=phrases(
        "first choice | 1st choice | first pick | 1st pick | main vote | as my main vote | as main | "
        "first choice is | as my first choice | as first choice | is my first choice | top choice"
    ),
    second_choice=phrases(
        "second choice | 2nd choice | second pick | 2nd pick | as a backup | as backup | as my backup | "
        "as my second | as second choice | as a second | second choice is | is my second choice | "
        "is my backup | as plan b | plan b | backup | reserve | as a reserve | runner up"
    ),
    either=phrases("or | or maybe | or perhaps | or else | either | and or"),
    also=phrases("and | & | plus | and also | and maybe | and then | as well as | also"),
    second=phrases(
        """
        second choice | 2nd choice | second | backup | back up | as a backup | as backup | then |
        failing that | or failing that | if not | if not then | otherwise | or else | else |
        or if | and if | if that's taken | if that's gone | if taken | followed by | plan b |
        second pick | 2nd pick | second place | runner up | reserve | next | second vote | secondly |
        after that | next choice | alternatively | fallback | as second | then maybe | over
        """
    ),
    condition=phrases(
        """
        if it's free | if its free | if it is free | if it's still free | if free | if still free |
        if it's available | if available | if still available | if it's still available |
        if it's not taken | if its not taken | if not taken | if it isn't taken | if it's not gone |
        if nobody | if no one | if noone | if nobody's | if no one's | if someone | if somebody |
        if somebody's | if someone's | if somebody's beaten | if anyone's | if i'm not too late for |
        if anyone | if everyone | if everybody | if others | if enough | if it's not been |
        if it hasn't been | if it hasnt been | if that's free | if that's still free |
        if that's not taken | if it's taken | if it's gone | if that's taken | if it's winning |
        if somebody's | if someone has | if somebody has |
        if it's already | as long as nobody | as long as no one | provided nobody | only if |
        if my sister | if my husband | if my friend | if you think |
        if there's | if there is | if it has | if it's got | if that's the | if that one |
        if it's the | as long as
        """
    ),
    reported_before=phrases(
        """
        everyone | everybody | everyone's | everybody's | people | others | somebody | someone |
        someone's | somebody's | anyone | anybody | nobody | no one | folks | all saying | all say |
        y'all | lot | most of you | many of you | some of you | all of you | crowd | majority |
        looks like | seems like | surprised | was going to say | was gonna say | were going to say |
        vote was | choice was | pick was | guess was | was going to pick | was going to vote | was going to go with | nearly picked |
        was going to vote for | was going to choose | nearly said | almost said | nearly voted |
        almost went with | nearly went with | tempted by | thought about | considered |
        would have said | would've said | was tempted by | last time | last round | i see | bet |
        i bet | predict | prediction | bots | comments | chat | lots of | loads of | so many |
        too many | will win | the rest of you | i wanted | i was thinking | almost picked |
        lot of | bunch of | plenty of | popular | most people | winning is | in the lead is
        """
    ),
    family_before=phrases(
        """
        husband | hubby | wife | partner | boyfriend | girlfriend | son | daughter | kid | kids |
        child | mum | mom | mother | dad | father | sister | brother | friend | neighbour | neighbor |
        nan | nana | gran | granny | grandma | grandad | colleague | boss | cat | dog | aunt | auntie |
        cousin | niece | nephew | grandson | granddaughter | grandkids | other half | missus | he |
        she | they | big one | middle one | small one | little one | eldest | youngest | mate | bestie |
        mil | dh | flatmate | roommate | toddler | teenager | baby | other one | parrot | budgie
        """
    ),
    reported_after=phrases(
        """
        wins | will win | is winning | is going to win | gonna win | to win | is leading | leads |
        will be popular | is popular | is ahead | has won | won | is in the lead | says my | said my |
        says the | said the | says he | says she | he says | she says | was winning | might win |
        seems popular | seems to be winning | is going to be popular | club | gang | crew | squad |
        is taken | has been taken | was taken | is gone | but | everyone | is everyone's
        """
    ),
    asking=phrases(
        """
        is | isn't | are | was | were | has | have | had | hasn't | haven't | did | didn't | does |
        doesn't | do | don't | will | won't | should | why | who | whose | when | where | which | what |
        what's | whats | how | anyone | anybody | am | wait is | so is | has anyone | has anybody
        """
    ),
    suggesting=phrases(
        """
        how about | what about | how bout | can i | can we | could i | could we | could you | can you |
        may i | may we | would you | will you | is it ok | shall we | should we | why not | why don't |
        please | maybe | perhaps | is it too late | am i too late | do i | did i | too late |
        would it be | would | could it be | hows about | what if we | can it be | can you start |
        pls | mind if | do you mind | don't you think
        """
    ),
    roughly_before=phrases(
        """
        around | about | roughly | approximately | near | nearish | close to | somewhere near |
        somewhere around | somewhere about | approx | circa | almost | nearly | ish | towards |
        something like | in the region of | just after | just before | just past | not far from |
        somewhere after | somewhere before | somewhere over | somewhere above | somewhere under | higher than | lower than
        """
    ),
    roughly_after=phrases("ish | or so | or thereabouts | or around there | give or take | or nearby"),
    between=phrases("between | in between | from | anything from | anywhere from | somewhere between"),
    through=phrases("to | through | thru | till | until"),
    question_before=phrases("out of | of | to | goes to | up to | all | only | just | are | for all"),
    goes_on=phrases("is | looks | seems | would | was | too | also | could"),
    saying=phrases(
        "says | said | say | saying | told | tells | goes | went | yelled | shouted | shouts | asked | "
        "asks | writes | wrote | reckons | announced | insists | demands | replied | answered | yells"
    ),
    relative_before=phrases(
        "next to | beside | besides | diagonal to | diagonal from | diagonally from | adjacent to | "
        "opposite | next door to | across from | neighbour of | touching | near to | kitty corner to"
    ),
    above=phrases("above | on top of | over the top of | one up from | just above | directly above"),
    below=phrases("under | underneath | below | beneath | one down from | just below | just under"),
    later=phrases(
        "to the right of | right of | the one after | one after | page after | just after | "
        "right after | following | number after"
    ),
    earlier=phrases(
        "to the left of | left of | the one before | one before | page before | just before | "
        "right before | preceding | number before"
    ),
    doubtful=phrases("six | due | elf | once"),
    withdrawn=phrases(
        """
        ignore my | ignore my vote | ignore my number | ignore my comment | ignore my last |
        ignore my previous | ignore my earlier | disregard my | scrap my | scratch my | cancel my |
        withdraw my | withdrawing my | i withdraw | retract my | take back my | take my vote back |
        taking my vote back | taking back my | take my vote off | take me off | take my | remove my |
        delete my | forget my | don't count my | dont count my | do not count my | don't count me |
        dont count me | discount my | please don't count | please dont count | please ignore |
        no vote from me after all | scrap that no vote | strike my | i take back my | i take it back |
        i take that back | my vote doesn't count | i change my vote to none | unvote |
        void my | i'd like to withdraw | withdraw it | withdraw that | please withdraw | withdraw mine | cancel it | cancel mine | scrap mine | take it off | take mine off | ignore mine | remove it | want to withdraw | pull my vote
        """
    ),
    abstaining=phrases(
        """
        no vote from me | no vote | not voting | no number from me | not going to vote |
        won't be voting | won't vote | i'm not voting | i abstain | abstaining | no vote yet |
        undecided | can't decide | cant decide | haven't decided | no preference | don't mind which |
        no number | i'm no help | not choosing | i'll sit this one out | sitting this one out |
        don't have a vote | still deciding | will decide | need to think | no pick from me
        """
    ),
    pointing=phrases(
        """
        so that one | that one please | so that page | that's my number | so that then | day i was born | same | same as the * | what * said | what * says | what * * said | what * wrote | with * on this |
        same here | same as above | same as | same again | ditto | as above | me too |
        what she said | what he said | what they said | what she says | seconded | i second that |
        second that | same page | same number | same one | same vote | my age | my birthday |
        my house number | my birth month | my lucky number | +1 | the above | see above | likewise |
        my shoe size | my wedding date | my birth date | my date of birth | copying | my birth year |
        same for me | same as last time | same vote as | same as before | the one above
        """
    ),
    agreeing=phrases(
        """
        agree | agree with | agreed | i agree | same as | ditto | me too | same | exactly | this |
        omg yes | yes | yep | yes this | second this | seconded | i second | was about to say |
        about to say | just what i | my thought | great minds | with you | also me | +1 | here too |
        what i was | came here to | same here | i'd go along with | go along with | snap
        """
    ),
    kinds=phrases(
        """
        even page | even number | in the teens | in the twenties | in the thirties | in the forties | in the fifties | in the sixties | in the seventies | in the eighties | in the nineties | even numbers | odd numbers | prime numbers | primes | even pages | odd pages | one of the corners | anywhere in the * | somewhere in the * | anything in the * | something in the * | row along | along the top | along the bottom | row at the | somewhere over | somewhere above | anything over | anything above | anything under | the higher the | odd page | odd number | prime number | any even | any odd | an even |
        an odd | a prime | double digits | single digit | double digit | even one | odd one |
        multiple of | divisible by | high number | low number | lower half | upper half | top half |
        bottom half | left half | right half | a border | edge page | an edge | teens | top row |
        bottom row | middle row | first row | last row | left side | right side | left column |
        right column | left edge | right edge | top edge | bottom edge | an inside page | the edge |
        the side | outer edge | a side | middle column | one of the edges | around the edge |
        somewhere in the middle | near the middle | around the middle | towards the middle |
        near the centre | near the center | somewhere central | near the top | near the bottom |
        near the end | near the start | somewhere at the top | somewhere at the bottom
        """
    ),
    first=phrases("first | 1st | very first"),
    last=phrases("last | final | very last"),
    corner=phrases("corner | corners | edge corner"),
    top=phrases("top | upper | uppermost"),
    bottom=phrases("bottom | lower | bottommost"),
    left=phrases("left | left hand | lefthand"),
    right=phrases("right | right hand | righthand"),
    middle=phrases("middle | centre | center | central | dead centre | dead center | exact middle | in the middle | smack in the middle | bang in the middle | slap bang in the middle | right in the middle | dead in the middle | very middle | in the very middle | dead middle | in the centre | in the center | in the dead centre | the middle bit"),
    row=phrases("row"),
    column=phrases("column | col"),
    told_from_last=phrases(
        "last page but | last but | second to last | next to last | second last | penultimate | "
        "last but one | third to last | from the end | before the last | one before last | "
        "second from last | 2nd to last | third last"
    ),
)
