"""English votes told in a roundabout way, and talk that only sounds like a vote."""

from __future__ import annotations

from collections.abc import Mapping

from service.ballots.language import Phrase, each_of, phrases
from service.ballots.languages.en_composed import SAYINGS

_WISHING = (
    each_of("i | we | just |", "wish", "i | we")
    + each_of("if", "i | we", "had | could | were | was | weren't | wasn't | hadn't | couldn't")
    + phrases(
        "what would happen if | what happens if | imagine if | if only | were i | had i | if it were up to me to choose again"
    )
)
_IT = "that | that one | that number | that page | those"
_POINTING_BACK = (
    each_of(
        "so you | you | so | guess |",
        "know | guess | can guess",
        "which | what | the",
        "page | one | number",
    )
    + each_of("page | number | one", "matched | matches | to match | that matches | was the same")
    + each_of(
        "that's | there's | thats | theres | that is | there is | that can be | let that be | "
        "make that | make it | call that | call it | as | be | is",
        "my | our | the",
        "vote | page | number | pick | choice | answer | guess | page number",
    )
    + each_of(
        "go with | go for | use | let's use | lets use | let's go with | have | take | let's have | "
        "i'll go with | i'll use | i'll take | i'll say | i'll have | do | pick | choose | let's do | "
        "stitch | vote | vote for | vote with",
        _IT,
    )
    + each_of(
        "that'll | that will | that would | that'd | it'd | it would | which would | that might | "
        "that seems | seems | what a | would make | a",
        "do | be | a | be a | make a | like a | like the",
        "lovely | nice | good | perfect | fun | fitting | great | proper | special | the | my | right |",
        "page | present | gift | choice | number | vote | pick | treat | sign | omen | one",
    )
    + phrases(
        """
        go with the | go for the | so that please | so that page | so that then | so that one | that one please | that one then | that page please | that will do | that'll do |
        hint hint | hint | wink wink | nudge nudge | just saying | just sayin | make of that what you will |
        nice present | lovely present | birthday treat | birthday present | as a present | as a treat |
        for my birthday | must mean something | must be a sign | is a sign | that's a sign | coincidence |
        in honour of that | in honor of that | to match | seems fitting | if you catch my drift |
        work it out from that | that's the one | that's your answer | that's your clue
        """
    )
)
_FACT = (
    "birthday | bday | birth date | birthdate | birth month | birth day | age | house number | "
    "door number | jersey number | shirt number | phone number | shoe size | lucky number | favourite number | favorite number | anniversary | "
    "birth year | wedding date | due date"
)
_OWN_FACTS = (
    each_of("my | our | the | your", "* | * *", _FACT)
    + each_of("my", _FACT, "backwards | reversed | doubled | halved | upside down")
    + each_of("whatever | whichever", "* | * * | * * *", "age is | birthday is | number is")
    + each_of(
        "number of | the number of | however many | how many | as many as",
        "* | * *",
        "i own | i have | i've got | we have | we own | there are | i keep | we've got",
    )
    + each_of("as many as", "i have | i own | we have | i've got", "* | * *")
    + each_of(
        "the | my",
        "day | year | month",
        "my * was born | i was born | i got married | we got married | we met | i started",
    )
    + phrases("today's date | todays date | the date | today's date please | date of my birthday")
)
_DESCRIBED = (
    each_of(
        "one | something | anything | page | any page",
        "with a | with an | with some | with flowers | that has a",
    )
    + each_of(
        "the | that | whichever | whatever",
        "page | one | bit | square | piece | section | part",
        "with | where | that has | that's got | thats got | containing | that looks like | has | "
        "showing | next to the | near the | under the | above the | beside the | closest to the | "
        "nearest the | underneath the | that shows | which has | left of the | right of the",
    )
    + each_of("whichever", "has | has got | is | looks | needs | comes | shows")
)

GROUPS: Mapping[str, tuple[Phrase, ...]] = {
    "rated": phrases("""
        give this a | give it a | give you a | gave it a | i'd give it a | i give it a |
        that's a | thats a | it's a | its a | deserves a | a solid | solid | a perfect |
        a firm | it gets a | this is a
        """),
    "neutral_before": phrases("legs | my op | his op | her op | their op | the op | an op"),
    "suggesting": phrases("""
        if i had to choose | if i had to pick | if i had to say | if i have to choose |
        if i must | if i had to guess
        """),
    "reported_after": phrases("next time | next week | next month | next round")
    + phrases("""
        s gone | s taken | s already gone | s already taken | s been taken | s been done |
        was my first thought | was my first idea | was my first instinct
        """),
    "not_after": phrases("""
        looks dull | looks boring | is boring | is dull | looks ugly | is ugly |
        looks horrible | looks awful | is too blue | is too dark | is too plain | is too big |
        is too hard | is too easy | is too busy | is too obvious | is too pale |
        looks too dark | looks too hard | looks too busy | s unlucky | s bad luck | s cursed |
        s done | s finished
        """),
    "choice_before": phrases("""
        as another | down as another | down for another | another vote for | one more for |
        fancy doing | fancy starting on | fancy stitching | fancy a go at
        """),
    "choice_after": phrases("wins for me | wins it for me | wins with me")
    + phrases("""
        til i die | till i die | until i die | gets a gold star | gets a star | gets a kiss |
        gets the nod
        """),
    "other_after": phrases("""
        for breakfast | for lunch | for dinner | for tea | for supper | for pudding |
        for elevenses | for my tea | for brunch | vibes | is when | is the day |
        is my due date | is the due date | is late | is delayed | was late | is running late |
        never came | is cancelled | got cancelled | was packed | and counting | sleeps |
        sleeps to go
        """)
    + phrases("""
        on the go | on the needle | on my needle | on the hoop | underway | on the frame
        """),
    "abstaining": phrases("""
        you'll have to be the judge | you be the judge | you're the judge | you settle it |
        settle it for us | you decide between
        """),
    "other_before": phrases("""
        do you prefer | do you like | do you recommend | mine has | mine took | mine had |
        my record is | my best is | my record was | got through | managed | caught the |
        missed the
        """)
    + phrases("at #, now | at # and now | at # and at | aged #, now"),
    "ages": phrases("""
        our anniversary | my anniversary | wedding anniversary | our wedding day |
        our wedding was | anniversary is | anniversary's
        """)
    + phrases("""
        learnt at | learned at | taught me at | learnt stitching at | started stitching at |
        started at | began at | began stitching at
        """),
    "sounded_after": phrases("""
        sleep | eat | wait | stop | start | finish | come | think | learn | try | buy | use |
        hug | cry | bed | school | church | talk | comment | type | read | real
        """),
    "finished": phrases("""
        done | finished | completed | stitched | complete | is done | is finished | all done |
        half done | half | nearly done | almost done
        """),
    "squaring": phrases("squared | the square of"),
    "rooting": phrases("square root of | the root of | root of"),
    "doubling": phrases("double | twice | two times | doubled"),
    "halving": phrases("half of | half"),
    "any_of": phrases("""
        anything | something | somewhere | any page | any number | any | pages | numbers |
        whatever | anywhere
        """),
    "torn": phrases("""
        torn | stuck | can't decide | cant decide | cannot decide | can't choose |
        cant choose | undecided | hesitating | wavering | dithering | toss up | tossing up |
        i'm | can't pick | flip a coin | in two minds | tie
        """),
    "neutral_after": phrases("xoxo | xo | mwah | xoxoxo | xox") + phrases("in my head"),
    "soft_correction": phrases("""
        there's only | theres only | there are only | there is only | only has | it only has |
        only got | its only got | it's only got
        """),
    "winning": phrases("""
        wins | won | wins it | won it | wins out | always wins | wins today | wins again
        """),
    "wondering": phrases("""
        whether | what to | what i | what colour | what color | if the | if that | if it |
        if it's | if i | if she | if he | how | when to | where | who | between tea |
        which film | which tea | which mug | which colour | which color | which shade
        """),
    "sounded_before": phrases("""
        me | love it | i love it | like it | i like it | want it | i want it | hate it
        """),
    "again": phrases("again | again then | again huh | again really | again lol"),
    "named_before": phrases("waiting for the")
    + phrases("""
        agree with | agreed with | agreeing with | i agree with | in agreement with |
        if you did | if you stitched | if you picked | if you chose | if we did | if you do |
        if you'd done | if you had done | as well as | siding with | on the same page as
        """),
    "answered": phrases("otherwise | or else")
    + phrases("""
        if so | if yes | if it is | if it has | if that's the case | if that is the case |
        in that case | if that's so | if gone | if taken | if it's gone | if it's taken |
        if not | if no | if not then | if so then | then | if it isn't | if it hasn't
        """),
    "today": phrases("today | tomorrow"),
    "digit_words": phrases("""
        w8 | w8ing | gr8 | gr8t | l8r | l8 | b4 | m8 | m8s | h8 | str8 | 2day | 2nite |
        2night | 2moro | 2morrow | 4ever | 4eva | sum1 | any1 | every1 | no1 | some1 | in2 |
        u2 | me2 | l8er | cre8 | cre8ive | appreci8 | congr8s | any1s | f8 | 2gether |
        b4hand | h8ers | 1nce
        """),
    "sounded_too": phrases("""
        cute | funny | kind | sweet | much | many | good | true | bad | early | late | long |
        hard | right | adorable | precious | clever | easy | busy | tired | small | big |
        soon | excited | pretty | generous | far | old | young | slow | fast | hot | cold
        """),
    "wishing": _WISHING,
    "turning": phrases(
        "but | anyway | anyways | anywho | anyhow | instead | oh well | never mind | still"
    ),
    "own_piece": phrases("of my | of mine | of the | of our | of a | of her | of his"),
    "whereabouts": phrases(
        "i'm | im | am | still | stuck | currently | halfway | up | got | we're | finally | was | only | "
        "already | he's | she's | is | live | lives | living"
    ),
    "describing": phrases(
        "lovely | good | great | little | long | whole | happy | beautiful | old | new | different | other | "
        "more | full | big | small | solid | straight | extra | gorgeous | tiny | huge | wonderful | red | "
        "blue | green | white | black"
    ),
    "because": phrases("because | cos | coz | cuz | bc | since | as | 'cause | cause | 'cos"),
    "as_named": phrases("same as | same as my | like | with"),
    "owning": phrases(
        "my | our | his | her | their | your | husband's | daughter's | son's | mum's"
    ),
    "it_is": phrases(
        "it's | its | it is | it was | it's been | it's about | it's only | it's nearly"
    ),
    "weather": phrases(
        "here | outside | out there | out | degrees | in the | in here | inside | already here | and sunny | "
        "and raining | and humid | celsius | centigrade | fahrenheit"
    ),
    "pointing_back": phrases("""
        you know what to do | you know what that means | but that's my vote |
        but it's my vote | but that is my vote | but that's my pick | but i want it
        """)
    + _POINTING_BACK,
    "own_facts": _OWN_FACTS,
    "described": _DESCRIBED,
    "agreeing": phrases(
        """
        you and me both | me and you both | agree | agree with | agreed | i agree | same as | ditto | me too | same | exactly | so this | this one | all of this |
        this | omg yes | yes | yep | yes this | second this | seconded | i second | was about to say |
        about to say | just what i | my thought | great minds | with you | also me | +1 | here too |
        what i was | came here to | same here | i'd go along with | go along with | snap
        """
    ),
    "asked_plainly": phrases(
        "probably taken | probably gone | probably been taken | probably been done | surely taken | surely gone | bet it's gone | bet it's taken | bet it's been taken | probably already | already taken i expect | guess it's gone | guess it's taken | anyone know | anybody know | does anyone know | any idea | is it page | is it number | is that page | was it page | is it still page | is it true that | is it true"
    ),
    "asked_later": phrases(
        """
        is that gone | is that taken | is it gone | is it taken | is that still free |
        is it still free | has that gone | has it gone | has that been taken |
        has anyone said it | has anyone said that | has anyone had it |
        has anyone had that | is that one gone | is that one taken | been taken yet |
        or is that taken | or is it taken
        """
    ),
    "told_from_last": phrases(
        "last page but | last but | next to last | second last | penultimate | last but one | "
        "from the end | before the last | one before last | third last | third but last"
    )
    + each_of("second | third | fourth | 2nd | 3rd | 4th", "to | from | from the", "last"),
    "sayings": SAYINGS,
    "topics": phrases(
        """
        size | needle | needles | count | thread | threads | floss | colour | colours | color |
        colors | strand | strands | fabric | aida | linen | evenweave | hoop | lamp | oven | bus |
        train | ferry | boat | minutes | hours | price | cost | degrees | gauge | stitches | skeins |
        bobbin | magnifier | glasses | battery | volts | watts | lumen | mm | cm | inch | inches |
        episode | season | chapter | song | film | movie | album | recipe | tv | score | kg | litres
        """
    ),
    "concluding": phrases(
        """
        preferably | but preferably | but ideally | ideally | but mostly | but especially | but rather | rather |
        but really | if pushed | if i have to choose | if i must choose | mainly | so | so it's | so that's | so i'm going | therefore | final answer | so yes |
        so yeah
        """
    ),
    "replacing": phrases("edit | edited | amend | amended | correct")
    + phrases(
        """
        change | changed | changing | swap | swapped | swapping | switch | switched |
        switching | trade | make | move | moved | moving | replace | alter
        """
    ),
    "replaced_by": phrases("to | for | into | with | a | by"),
}
