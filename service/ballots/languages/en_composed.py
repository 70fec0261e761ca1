"""English phrases that are said in many ways, composed of their parts; and sayings."""

from __future__ import annotations

from service.ballots.language import each_of, phrases

#: Said in many ways that differ in one word only.
PUT_DOWN = each_of(
    "put | stick | pop | mark | count | sign | book | pencil | shove | jot",
    "me | us | my name | my vote | it |",
    "down | in | up |",
    "for | as | on | against",
)
CHOICE_IS = each_of(
    "my | our |",
    "second | second choice | backup | reserve | first choice | favourite | favorite | page | pages | pick | picks | choice | choices | vote | votes | number | numbers | suggestion | "
    "answer | selection",
    "is | are | would be | would have to be | will be | has to be | have to be | must be | stays | "
    "remains",
)
DECADES = each_of(
    "early | mid | late | low | high | upper | lower",
    "teens | twenties | thirties | forties | fifties | sixties | seventies | eighties | nineties",
)
LIKED_IS = each_of(
    "page | one | number",
    "i | we",
    "like | love | want | prefer | fancy | choose | chose | pick | picked | am after | would like",
    "best | most | the most | the best |",
    "is | would be | has to be | was",
)
LIKE_TO_SEE = each_of(
    "i'd | id | i would | we'd | we would | would | wud | wld | i wud | i'd really | i would really | would really | "
    "i'd rather | i would rather | would rather | rather",
    "like | love | luv | prefer | choose | pick | have | see | go for | go with | like to see | love to see | "
    "luv to see | luv 2 see | luv 2 c | love 2 c | like 2 c | love 2 see | like 2 see | "
    "like to go with | love to have | like to have | like you to do | love you to do | "
    "like to vote for | like to pick | like to choose | say",
)
HIDDEN_ON = each_of(
    "see | find out | know | discover | wonder | reveal | uncover | show us | learn",
    "what's | whats | what is | what lies | what hides | whatever's", "hiding | hidden |",
    "on | in | under | behind | beneath",
)  # fmt: skip
ANY_BUT = each_of(
    "anything | any page | any | any one | anywhere | whichever | whatever | wherever",
    "you like | you want | you fancy | you wish | you please | you choose |",
    "but | except | exept | excpet | accept | apart from | bar | besides | other than | save",
)
AS_LONG_AS_NOT = each_of(
    "as long as | so long as | providing | provided",
    "it's | it is | its | it | that's | this",
    "not | isn't | isnt | ain't | aint | is anything but",
) + each_of(
    "as long as | so long as | providing | provided",
    "you | we | nobody | no one | they | it",
    "don't | dont | do not | doesn't | doesnt | never | picks | chooses | stay away from",
    "do | pick | choose | start on | start with | stitch | go for | go with | land on | say |",
)
NEVER_CHOOSE = each_of(
    "not | don't | dont | do not | never | wouldn't | won't | can't | please don't | pls don't | "
    "don't you dare | dont you dare | do not you dare | never ever | don't ever | i'd never | "
    "i would never | refuse to | i refuse to | i will not | i'd hate to | not going to | never going to | no way i'd | no way am i | try not to | rather not | please do not | you shouldn't | nobody should",
    "pick | choose | vote | vote for | voting for | pick | start on | start with | start at | go with | go for | do | "
    "want | take | say | like | use",
)
ASKED_FOR = each_of(
    "can | could | may | might | would",
    "i | we | you",
    "please | pls | possibly | just |",
    "have | do | get | see | start on | start with | start | begin with | begin on | go for | go with | "
    "pick | choose | stitch | sew | try | consider",
)
AGREED = each_of(
    "agree with | agreeing with | am agree with | siding with | side with | voting with | i'm with | "
    "going along with",
    "her | him | them | the lady | the gentleman | the person | the one | the comment | what | everyone | "
    "my friend | the last",
)
NO_VOTE_AFTER_ALL = each_of(
    "scrap that | scratch that | forget that | forget it | changed my mind | change my mind | "
    "i've changed my mind | ignore that | strike that | never mind | nevermind | cancel that",
    ", | . | - | ; | and | so |",
    "no vote | not voting | i'm not voting | im not voting | i won't vote | i'd rather not vote | "
    "i'll sit this one out | not going to vote | i don't want to vote",
)
COPIED = each_of(
    "copying | copy | following | follow",
    "the",
    "* |",
    "lady | one | person | girl | woman | gentleman | commenter",
    "above | before me | above me | before | further up | up there",
)
WHO_SAID = each_of(
    "who | whoever | that",
    "said | says | picked | picks | chose | wants | wanted | wrote | voted | voted for | went for | "
    "went with | suggested | put",
)
_SAID = (
    "said | says | put | picked | picks | chose | chooses | wants | wanted | wrote | voted | "
    "voted for | votes for | went for | went with | goes for | suggested | likes"
)
WHAT_OTHERS_SAID = each_of(
    "what | whatever | whichever | whichever one | whichever page | the one", "* | * *", _SAID
) + each_of("whatever | whichever", "* * * | * * * * | * * * * *", _SAID)
I_WANT = each_of(
    "i | we | we both | we all",
    "only | just | really | do | always | simply | definitely |",
    "want | need | choose | pick | say | vote | vote for | go for | go with | wanna see | want to see",
)
CANNOT_BUT = each_of(
    "cannot not | can't not | couldn't not | could not not",
    "vote for | pick | choose | say | go for",
)
NOTHING_BUT = each_of(
    "don't | dont | do not | don't you dare | never | i won't | nothing |",
    "do | pick | choose | start on | start with | take | stitch | go for | accept |",
    "anything other than | anything but | any page other than | none other than | no other than | "
    "nothing but | nothing other than",
)[1:]
IF_YOU_DID = each_of(
    "made my | make my | makes my | be | be so | be really | be just | be absolutely",
    "day if | week if | month if | year if | morning if | evening if | night if | weekend if | "
    "christmas if | birthday if | life if | lovely if | nice if | great if | amazing if | fun if | "
    "brilliant if | fab if | wonderful if | perfect if | fantastic if | awesome if | good if",
    "you | we",
    "did | stitched | chose | picked | started | started on | started with | started at | "
    "began with | went with | went for | do | stitch | choose | pick | start on | start with | go with",
)
DAY_WITH = each_of(
    "make my | made my | making my",
    "day | week | month | year | morning | evening | weekend | christmas | birthday",
    "with | by doing | by picking | by choosing | by stitching | and do | and pick | and choose",
) + phrases("please me more than | like nothing more than | love nothing more than | nothing beats")
GUTTED_IF_NOT = each_of(
    "gutted if | sad if | heartbroken if | devastated if | disappointed if | shocked if | upset if | "
    "surprised if | furious if",
    "it isn't | it's not | it isnt | it wasn't | you don't do | you don't pick | you don't choose | "
    "we don't get | we don't see",
)
GLAD_OF = each_of(
    "be | i'm | i am | i'd be | we'd be |",
    "glad of | grateful for | thankful for | thrilled with | over the moon with | tickled pink with | "
    "happy to see | thrilled to see | delighted to see | happy if you did | glad if you did",
)
SEE_YOU_DO = each_of(
    "see | watch | have | like | love", "you |", "do | tackle | stitch | start | sew | make | try"
)
GETS_IT = each_of(
    "gets | has | has got | wins | takes | earns | deserves | receives",
    "my | our | the | a",
    "vote | votes | thumbs up | nod | heart | prize | crown | love | support | point | points | tick",
)
THAN_DO = each_of(
    "than", "watch you | see you | have you | let you | make you |",
    "do | see | watch | have | stitch | pick | go with | choose | start on | vote for",
)  # fmt: skip
DECADES = each_of(
    "from the | in the | of the | low | mid | high | early | late | upper | lower",
    "teens | twenties | thirties | forties | fifties | sixties | seventies | eighties | nineties",
)
TICK_BY = each_of(
    "put | stick | pop | place | draw | place me | i'd put | i'll put |",
    "a | my | the | one",
    "tick | cross | mark | pin | x | star | dot | finger | sticker | flag | name | vote",
    "by | next to | beside | against | on | in | near | at | over",
)
GO_TO = each_of(
    "go | move on | move | jump | head | skip | turn | hop | onto | on | off | come",
    "to | onto | over to | on to | straight to",
) + phrases(
    "turn over | tackle | have a look at | take a look at | look at | have a peek at | peek at | "
    "come on | c'mon | cmon | we all say | we all vote | we all want | let it be | hand me"
)
WOULD_HAVE = each_of(
    "i'd have | i would have | i'd've | i would've | we'd have | we would have | would have | "
    "would've | might have | might've | could have | could've | nearly | almost",
    "said | picked | voted | voted for | gone for | gone with | chosen | put | liked | loved | "
    "taken | asked for | guessed | opted for | suggested",
) + each_of(
    "i think | i believe | pretty sure |",
    "it was | that was | hers was | his was | theirs was | yours was",
)
OTHERS_CHOSE = each_of(
    "you | they | he | she | friends | sisters | kids | girls | boys | people | folk | folks",
    "all | both |",
    "said | picked | chose | voted | voted for | went for | went with | wanted | promised | "
    "mentioned | wrote | put",
) + phrases("i second | i'd second | seconding | agree with the | agreeing with the")
VOTED_BEFORE = each_of(
    "last week | last time | last round | last month | yesterday | the other day | previously | earlier | "
    "once | in round one | first time round",
    "i | we",
    "voted | picked | chose | said | went | put | wanted",
    "for | with |",
)
LOVE_IT_IF = each_of(
    "love it if | thrilled if | happy if | chuffed if | nice if | great if | lovely if | cool if | glad if | "
    "delighted if | my day if | made up if | ace if | brilliant if | over the moon if | up no end if | "
    "grateful if | ecstatic if | pleased if | tickled if",
    "you did | we did | you stitched | you picked | you chose | it was | it were | we saw | you'd do | it's |",
)
HAD_MY_VOTE = each_of(
    "had | won | got",
    "my vote | my choice | my pick |",
    "last time | last week | last round | before",
)
GOING_TO = each_of(
    "was | were",
    "going to | gonna | about to",
    "go | go for | go with | say | pick | vote | vote for | choose | put | do | ask for",
) + each_of("haven't | have not | hasn't | not | never", "done | stitched | had | seen")
NICE_TOO = (
    each_of(
        "is | looks | sounds | seems",
        "nice | lovely | pretty | tempting | gorgeous",
        "too | as well",
    )
    + each_of("wouldn't | would not | isn't", "be bad | be too bad | hurt | bad")
    + each_of("took | turned out | came out | is coming | has come", "you | so | * | along |")
)
HOPED = each_of("was | were | been", "hoping | rooting | voting | going", "for") + phrases(
    "tempting to say | tempted to say | tempting to pick | tempted to pick | had hoped for | was hoping it'd be | thought it'd be | thought it would be | thought it was | "
    "was sure it'd be | any chance it's | any chance its | any chance it is | expected | was expecting"
)
TAKEN = each_of(
    "of course | obviously | sadly | i think | i see | already",
    "was | is | has | got | has been",
    "taken | gone | done | been | chosen | picked",
)
SAYINGS = (
    each_of("3 | three", "cheers for | cheers to | cheers and | cheers , | cheers !")
    + each_of(
        "one | two | three",
        "from the | of the | in the",
        "teens | twenties | thirties | forties | "
        "fifties | sixties | seventies | eighties | nineties | hundreds | corners | edges",
    )
    + phrases(
        """
        six of one | half a dozen of the other | forty winks | 40 winks | cloud nine | cloud 9 | nine lives |
        9 lives | eleventh hour | second to none | one of a kind | one for all | two left feet | high five |
        two's company | three's a crowd | two is company | three is a crowd | 2 is company | 3 is a crowd | square one | one day | day one | one of these days | one more |
        one another | one time | one thing | one way or another | third time lucky | ten out of ten |
        10 out of 10 | on all fours | at sixes and sevens | last but not least | first of all | at first |
        at last | first thing | last thing | first time | last time | last night | last week | last year |
        more than one | more than just one | less than one | you pick one | you choose one | just pick one | pick any one |
        pick one for | choose one for | pick one at random | to pick one | to choose one | can't pick one |
        cannot pick one | decide on one | pick just one | choose just one | pick only one | choose only one |
        last month | first night | last minute | last straw | at long last | first place | last place |
        first name | last name | round the corner | around the corner | just around the corner |
        in the middle of | in the corner of my eye | corner shop | right now | right away | top notch |
        two cents | 2 cents | two pence | 2p worth | one two three | in one go | in two minds | of two minds |
        five minutes | two minutes | 9 to 5 | nine to five | 9 - 5 job | two ducks | three cheers | 3 cheers | fifty fifty on | fifty fifty about | it's fifty fifty | fifty - fifty | scale of 1 to 10 | scale of one to ten | 2 ducks | two little ducks | 2 little ducks | two fat ladies | 2 fat ladies | 4 ever | 4 eva | 4 real | 4 u | 2 u | 2 die for | 2 die 4 | 2 be honest | 2 b honest | one and only | the one and only | number one fan | no 1 fan
        """
    )
)
