"""English, as viewers write it under a video."""

from __future__ import annotations

from service.ballots.language import Language, phrases
from service.ballots.languages import (
    en_choices,
    en_composed,
    en_counts,
    en_doubts,
    en_numbers,
    en_told,
)
from service.ballots.languages.spelling import extended

_PLAIN = Language(
    code="en",
    plural_s=True,
    everyday=phrases(
        """
        the | a | an | and | or | i | i'm | im | i'd | i'll | i've | my | me | you | your | we |
        it | it's | is | are | was | be | to | of | in | for | from | with | on | at | this | that |
        not | no | yes | please | pls | thanks | thank | love | hi | hello | page | vote | if |
        have | has | had | so | but | just | do | does | can | could | would | what | how | all |
        number | will | go | going | like | lovely | there | here | they | been | our | us | as
        """
    ),
    numbers=en_numbers.numbers(),
    ordinals=en_numbers.ordinals(),
    ordinal_endings=frozenset({"st", "nd", "rd", "th"}),
    homophones={"to": 2, "too": 2, "for": 4, "won": 1, "ate": 8, "fore": 4, "tree": 3},
    sounded_after=phrases(
        "the | u | ur | me | my | your | this | that | it | see | watch | do | be | know | go | all | "
        "ever | us | you | get | have | make | sharing | showing | hear | say | much | stitch | sew | a"
    ),
    page=phrases(
        "page | p | pp | pages | pg | pge | pgae | paeg | apge | pafe | pagw | pag | pgs | page number | page no | page num | page nr"
    ),
    number=phrases("numbered | number | num | nr | no. | numero | nbr | numbr | nummer"),
    fillers=phrases(
        """
        if it's not too much trouble | if it's no trouble | if that's ok | if that's okay | if possible |
        if you can | if you could | if you like | if you don't mind | if you wouldn't mind | if i may |
        if it's all the same to you | if it isn't too much trouble | if it's ok | if it's ok with you |
        the | a | an | good old | good ol | old | ol | definitely | defo | def | just | simply |
        obviously | probably | maybe | perhaps | surely | certainly | totally | only | big |
        lovely | lucky | little | my | that | this | be | then | oh | um | er | hmm | please | pls |
        plz | always | still | got to be | gotta be | has to be | have to be | very | really |
        actually | also | number | instead | choice | is | would be | for | today | now | again
        """
    ),
    choice_before=(
        phrases(en_choices.CHOICE_BEFORE)
        + en_composed.PUT_DOWN
        + en_composed.CHOICE_IS
        + en_composed.LIKED_IS
        + en_composed.LIKE_TO_SEE
        + en_composed.HIDDEN_ON
        + en_composed.ASKED_FOR
        + en_composed.I_WANT
        + en_composed.CANNOT_BUT
        + en_composed.NOTHING_BUT
        + en_composed.GLAD_OF
        + en_composed.IF_YOU_DID
        + en_composed.GUTTED_IF_NOT
        + en_composed.DAY_WITH
        + en_composed.SEE_YOU_DO
        + en_composed.TICK_BY
        + en_composed.GO_TO
        + en_composed.LOVE_IT_IF
    ),
    choice_after=phrases(en_choices.CHOICE_AFTER) + en_composed.GETS_IT,
    voting=phrases(
        "vote | votes | voting | voted | my vote | pick | picking | picked | choose | choosing | "
        "my choice | spoil me | treat me | please do | i choose"
    ),
    other_before=phrases(en_counts.OTHER_BEFORE),
    other_after=phrases(en_counts.OTHER_AFTER) + en_counts.TIME_AFTER,
    weak_before=phrases(en_counts.WEAK_BEFORE),
    weak_after=phrases(en_counts.WEAK_AFTER),
    neutral_before=phrases(en_counts.NEUTRAL_BEFORE),
    neutral_after=phrases(en_counts.NEUTRAL_AFTER),
    lucky_before=phrases(
        """
        lucky number is | i like | i love | i do like | my favourite is | my favorite is | lucky number | lucky number's | lucky no is | lucky is | lucky |
        favourite number is | favourite number | favorite number is | favorite number | fave number |
        favourite number's | fave number is | fav number is | fav number | favourite is |
        favorite is | favourite has always been | house number is | door number is |
        shirt number is | shirt number was | number was | number is | number has always been |
        number's always been | number has to be | number of mine is
        """
    ),
    not_before=phrases(en_choices.NOT_BEFORE)
    + en_composed.ANY_BUT
    + en_composed.AS_LONG_AS_NOT
    + en_composed.NEVER_CHOOSE
    + en_composed.THAN_DO,
    not_after=phrases(
        """
        is out | is off the table | no thanks | no thank you | would be awful | would be a mistake |
        is unlucky | is bad luck | scares me | is cursed | is done | is already done | is finished |
        is already finished | is stitched | is already stitched | are done | was done
        """
    ),
    correction=phrases(en_choices.CORRECTION),
    soft_correction=phrases(
        "actually | rather | instead | fine | ok fine | better | this time | no | oh no | wait | "
        "sorry | update | final answer | or no | well no | hmm | make it | now | go on then | fine then"
    ),
    relative_after=phrases(
        "from the end | from the top | from the bottom | from the left | from the right | "
        "from the start | along | rows down | rows up | from last | from the last"
    ),
    tally_before=phrases("votes for | votes on | people for | said | votes to"),
    labels=phrases(
        "age | size | count | score | thread | floss | colour | color | temp | temperature | "
        "oven | episode | chapter | weight | height | width | length | price | cost | total | time | "
        "date | birthday | version | level | rating | serves | makes | year | shade"
    ),
    months=phrases(
        "january | february | march | april | may | june | july | august | september | october | "
        "november | december | jan | feb | mar | apr | jun | jul | aug | sep | sept | oct | nov | dec"
    ),
    doubtful_months=phrases("may | march | mar"),
    of_month=phrases("of"),
    age_labels=phrases("age | birthday"),
    ages=phrases(
        """
        my age | year i was born | day i was born | birth year | year of my birth | how old i am |
        age i am | age i turned | i was born in | i was born on | my birth date | my birthday | my bday
        """
    ),
    depends=phrases(
        "whichever's | whichever has | whichever is | whichever one | depending on | depends | "
        "unless | provided | providing | whichever | whatever number of | however many"
    ),
    ranked=phrases(
        "in that order | in this order | in order | order of preference | in order of preference"
    ),
    third_choice=phrases(
        "third choice | 3rd choice | third pick | 3rd pick | bronze | bronze to | third place"
    ),
    first_choice=phrases(
        "gold | gold to | plan a | first choice | 1st choice | first pick | 1st pick | main vote | as my main vote | as main | "
        "first choice is | as my first choice | as first choice | is my first choice | top choice"
    ),
    second_choice=phrases(
        "silver | silver to | next best | runner up | runner - up | second best | if all else fails | second choice | 2nd choice | second pick | 2nd pick | as a backup | as backup | as my backup | as reserve | as a spare | as spare | my spare | as the reserve | in reserve | as a fallback | as fallback | "
        "as my second | as second choice | as a second | my second would be | second would be | my second is | second choice is | is my second choice | "
        "is my backup | as plan b | plan b | backup | reserve | as a reserve | runner up"
    ),
    own_voice=phrases(
        "i | i'm | i'll | i'd | i've | im | ill | id | so | but | we | we'll | we'd | me | my vote | "
        "my pick | my choice | my guess | my number | my page"
    ),
    if_words=phrases("if | unless"),
    being=phrases("is | was | falls | are | were | turned | turn"),
    stopgap=phrases("otherwise | or else | failing that | if not | alternatively | else"),
    either=phrases("or | or maybe | or perhaps | or else | either | and or"),
    also=phrases("and | n | & | plus | and also | and maybe | and then | as well as | also"),
    second=phrases(
        """
        second choice | 2nd choice | second | backup | back up | as a backup | as backup | then |
        failing that | or failing that | if not | if not then | otherwise | or else | else |
        or if | and if | if that's taken | if that's gone | if taken | followed by | plan b |
        second pick | 2nd pick | second place | runner up | reserve | next | second vote | secondly |
        after that | next choice | alternatively | fallback | as second | then maybe | over
        """
    ),
    condition=phrases(en_choices.CONDITION),
    reported_before=phrases(en_choices.REPORTED_BEFORE)
    + en_composed.WHO_SAID
    + en_composed.WOULD_HAVE
    + en_composed.VOTED_BEFORE
    + en_composed.HOPED
    + en_composed.GOING_TO
    + en_composed.OTHERS_CHOSE,
    family_before=phrases(en_choices.FAMILY_BEFORE),
    reported_after=en_composed.TAKEN
    + en_composed.HAD_MY_VOTE
    + en_composed.NICE_TOO
    + phrases(
        """
        wins | will win | is winning | is going to win | gonna win | to win | is leading | leads |
        will be popular | is popular | is ahead | has won | won | is in the lead | says my | said my |
        says the | said the | says he | says she | he says | she says | was winning | might win |
        seems popular | seems to be winning | is going to be popular | club | gang | crew | squad |
        is taken | has been taken | was taken | is gone | has gone | last time | last week | last round | last month | earlier | previously | one day | some day | someday | eventually | at some point | but everyone | but everybody | but i think | but that | but if | everyone | is everyone's
        """
    ),
    asking=phrases(
        """
        is | isn't | are | was | were | has | have | had | hasn't | haven't | did | didn't | does |
        doesn't | do | don't | will | won't | should | why | who | whose | when | where | which | what |
        what's | whats | how | now is | now was | anyone | anybody | am | wait is | so is | has anyone | has anybody
        """
    ),
    suggesting=phrases(
        """
        if there's room | if there's time | if there's still time | if there's space | if there is room | if there is time |
        if i'm not too late for | if there's any | if there's a chance | how about | what about | how bout | can i | can we | could i | could we | could you | can you |
        may i | may we | would you | will you | is it ok | shall we | should we | why not | why don't |
        please | maybe | perhaps | is it too late | am i too late | do i | did i | too late |
        would it be | is it too cheeky | too cheeky | dare i | how do you feel about | could you be talked into | can you be persuaded | would | could it be | hows about | what if we | can it be | can you start |
        pls | mind if | do you mind | don't you think
        """
    ),
    roughly_before=phrases(
        """
        give or take | around | about | roughly | approximately | near | nearish | close to | somewhere near |
        somewhere around | somewhere about | approx | circa | almost | nearly | ish | towards |
        something like | in the region of | just after | just before | just past | not far from |
        somewhere after | somewhere before | somewhere over | somewhere above | somewhere under | higher than | lower than | less than | fewer than | more than | bigger than | smaller than
        """
    ),
    roughly_after=phrases(
        "mark | ish | or so | or thereabouts | or around there | give or take | or nearby"
    ),
    between=phrases(
        "between | in between | from | anything from | anywhere from | somewhere between"
    ),
    sum_before=phrases(
        "half of | half | double | twice | a quarter of | quarter of | a third of | third of | "
        "three times | two times | the square of | square root of | the root of | multiple of | "
        "multiples of | factor of | divisible by"
    ),
    sum_after=phrases("squared | cubed | doubled | halved | divided by | plus | minus"),
    through=phrases("to | through | thru | till | until"),
    question_before=phrases(
        "out of | of | to | goes to | up to | all | only | just | are | for all"
    ),
    goes_on=phrases("is | looks | seems | would | was | too | also | could"),
    saying=phrases(
        "mentioned | was mentioned | says | said | say | saying | told | tells | goes | went | yelled | shouted | shouts | asked | "
        "asks | writes | wrote | reckons | announced | insists | demands | replied | answered | yells"
    ),
    relative_before=phrases(
        "next to | beside | besides | diagonal to | diagonal from | diagonally from | adjacent to | "
        "opposite | next door to | across from | neighbour of | touching | near to | kitty corner to"
    ),
    above=phrases(
        "above | on top of | over the top of | one up from | just above | directly above"
    ),
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
    withdrawn=phrases(en_choices.WITHDRAWN) + en_composed.NO_VOTE_AFTER_ALL,
    abstaining=phrases(en_choices.ABSTAINING),
    pointing=phrases(en_choices.POINTING)
    + en_composed.WHAT_OTHERS_SAID
    + en_composed.AGREED
    + en_composed.COPIED,
    kinds=phrases(en_choices.KINDS) + en_composed.DECADES + en_composed.DECADES,
    first=phrases("first | 1st | very first"),
    last=phrases("last | final | very last"),
    corner=phrases("corner | corners | edge corner | conner | cornor | coner | corne | cornner"),
    top=phrases("top | upper | uppermost"),
    bottom=phrases("bottom | lower | bottommost | bottem | botom | bottum | buttom | bottm"),
    left=phrases("left | left hand | lefthand"),
    right=phrases("right | right hand | righthand"),
    middle=phrases(
        "middle | centre | center | central | dead centre | dead center | exact middle | in the middle | smack in the middle | bang in the middle | slap bang in the middle | right in the middle | dead in the middle | very middle | in the very middle | dead middle | in the centre | in the center | in the dead centre | the middle bit"
    ),
    row=phrases("row"),
    column=phrases("column | col"),
    times=phrases("times | multiplied by | x"),
    plus=phrases("plus | and then add | added to | more than"),
    minus=phrases("minus | take away"),
    less_than=phrases("less than | fewer than"),
    divided_by=phrases("divided by"),
    part_of=phrases(
        "of | i ever | i've ever | we ever | i did | i stitched | i finished | i made | i have ever"
    ),
    whole_chart=phrases(
        """
        of the chart | of the whole chart | of the grid | of the map | of the pattern |
        of the design | of the piece | of the whole thing | of it | of it all |
        on the chart | on the grid | on the map | of all | of the page map |
        of this chart | of your chart
        """
    ),
    minutes_to=phrases("to | past | till"),
)

LANGUAGE = extended(extended(_PLAIN, en_told.GROUPS), en_doubts.GROUPS)
