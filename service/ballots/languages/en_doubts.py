"""English phrases put together of parts: doubts, grumbles, choices left to others, talk."""

from __future__ import annotations

from collections.abc import Mapping

from service.ballots.language import Phrase, each_of, phrases

GROUPS: Mapping[str, tuple[Phrase, ...]] = {
    "saying": phrases(
        "read out | read aloud | a comment | that comment | the comment | somebody's comment | one comment"
    ),
    "own_piece": phrases(
        "of it and | of it since | of it now | of it that | of it which | of it with | of it where | of an | of some | of their"
    ),
    "torn": phrases(
        "couldn't agree | couldnt agree | can't agree | cannot agree | couldn't decide"
    ),
    "again": phrases("already | already then | already really"),
    "weak_after": each_of(
        "on | last | next | this",
        "monday | tuesday | wednesday | thursday | friday | saturday | sunday",
    ),
    "other_after": each_of(
        "on | in | from",
        "the | my | this | that | their | her | his",
        "album | list | playlist | cd | record | menu | shelf | series | season | queue | waiting list | "
        "programme | recipe | background | charts | world | family | country | county | street",
    ),
    "printed": phrases(
        "magazine | magazines | newspaper | the paper | my book | the book | a book | this book | novel | diary | catalogue | catalog | cookbook | recipe book | manual | leaflet | hymn | hymnal | library | thriller | atlas | calendar | textbook | brochure"
    ),
    "pointing": each_of(
        "the same page as | the same number as | the same one as | same page as | same number as | same vote as | "
        "i'll have the same as | like the same as | want the same as | take the same as | vote the same as | "
        "voting the same as | go for the same as | pick the same as | choose the same as | say the same as",
        "* | my * | last week | last time | the other day | yesterday | before | the last time",
    ),
    "neutral_after": phrases("even if | even though | nxt"),
    "crowds": each_of(
        "everybody | everyone | the whole world | half the world | all the world | every man",
        "and",
        "their | his | her | all their",
    ),
    "others_choose": phrases(
        "wants | picks | chooses | want | fancies | prefers | votes for | goes for"
    ),
    "reported_after": each_of(
        "was | were",
        "so | just | really | absolutely |",
        "gorgeous | lovely | beautiful | stunning | amazing | wonderful | fun | great | delightful | brilliant",
        "last month | last time | last week | to watch | to see |",
    )
    + each_of("gets picked | gets chosen", "every | again | too | a lot | all the")
    + each_of(
        "might have | might've | could have | could've | would have | would've | mighta | coulda | woulda",
        "been | looked",
        "nice | lovely | fun | good | great | interesting | my choice | my pick | my vote | tempting | the one |",
    ),
    "reported_before": each_of(
        "thinks | says | reckons | believes | swears | insists",
        "it's | it is | its | that's | it was",
    )
    + each_of(
        "told me to | told us to | want me to | wants me to | asked me to | begged me to | telling me to",
        "say | pick | vote | vote for | choose | go for | put | do",
    )
    + phrases("internet | whole street | whole office | whole class | half the street"),
    "popular_after": phrases(
        "winning | always winning | keeps winning | getting | being | gets | wins | taking | every | "
        "again | all the time | everywhere"
    ),
    "expected": each_of(
        "where | when | while | and | but |",
        "there",
        "should be | should have been | should've been | ought to be | ought to have been | "
        "should only be | were meant to be | are meant to be | were supposed to be",
    )
    + each_of(
        "where | when",
        "it | they | i",
        "should be | should have been | should've been | ought to be | needed | should have had | "
        "was meant to be | were meant to be | should have",
    )
    + phrases("supposed to be | meant to be | should've been | chart wanted | pattern wanted"),
    "fillers": each_of(
        "if",
        "it's | its | it is | that's | that is | i'm | it isn't | that isn't",
        "not | not too | no | not a |",
        "much trouble | much bother | much to ask | trouble | bother | late | too late | problem | fine | "
        "alright | all right | okay | cheeky | allowed | mistaken | in time | permitted | ok",
    )
    + each_of(
        "if you'd | if you would | if you'll | if you will",
        "be",
        "so good | so kind | so nice | kind enough",
    )
    + phrases(
        """
        if there's any justice | if there is any justice | if it were me | if it was me | if it were up to me |
        if it was up to me | if i spelled | if i've spelled | if i got that right | if this is | if ye dinnae mind |
        if you can read | if i may be so bold | if i can vote | if i had to | if i must | if pushed |
        if you catch my drift | if you know what i mean | if you ask me | if i'm honest | if i am honest |
        if i'm being honest | if my memory | if i remember | if you'd like | if you would like |
        if you need | if you're asking | if anyone's asking | if that counts | if it counts | if i get a vote |
        if i have a vote | if i get a say | if i have a say | if votes are still open | if voting is still open
        """
    ),
    "relative_after": phrases("from the back"),
    "kinds": each_of(
        " | ".join(
            ten + end
            for ten in "twenty thirty forty fifty sixty seventy eighty ninety".split()
            for end in ("ish", "something", "somethings", "odd")
        )
    ),
    "described": each_of(
        "a | an | one of the | any | some",
        "* | * *",
        "page please | page pls | page plz | page next please | pages please",
    ),
    "letting_choose": each_of(
        "let | letting | i had | we had | got",
        "my | the | our",
        "* | * *",
        "pick | choose | decide | pick one | choose one | to pick | to choose | to decide | to pick one | pick this time | "
        "choose this time | pick a number | choose a number | choose a page | pick a page",
    ),
    "chosen_too": each_of(
        "and | so | and so |",
        "so do i | so did i | so would i | so will i | so do we | as do i | as do we | i do too | i vote the same | "
        "that's mine too | that's my vote too | that is my vote too | it's mine too | it's my vote too",
    ),
    "settled_after": phrases(
        "it is | it is then | it is so | it shall be | it will be | it'll be | it must be | it has to be"
    ),
    "scoffing": phrases(
        "oh yeah | oh yes | oh sure | oh right | yeah right | yeah sure | oh great | oh of course | oh fab | oh wonderful"
    ),
    "mocking": phrases(
        """
        oh great | oh look | oh joy | oh goody | yawn | groan | sigh | ugh | shocking | shocker |
        what a shock | shock horror | what a surprise | surprise surprise | what are the odds | how original |
        how surprising | how unexpected | colour me surprised | color me surprised | big surprise | no surprise |
        nobody saw that coming | no one saw that coming | didn't see that coming | here we go | nobody's ever | no one's ever | nobody has ever | never been done before | 🙄 | 😴 | 🥱
        """
    ),
    "own_numbers": each_of(
        "my | our",
        "old | first | school | team | netball | football | hockey | favourite |",
        "jersey number | shirt number | house number | locker number | door number | team number | "
        "player number | squad number | bib number | race number | bus number | room number | "
        "badge number | flat number | class number | kit number",
    ),
    "siding": each_of(
        "i'm | im | i am | we're | count me | put me | i side | i stand | siding | agree",
        "in |",
        "with | among",
        "all |",
        "the | you | them | those | team",
    ),
    "sided_with": phrases(
        "people | peoples | folk | folks | lot | crew | camp | voters | ers | 's | fans | gang | crowd | "
        "team | club | bunch | girls | ladies | guys | lovers | supporters | squad | tribe"
    ),
    "sayings": phrases(
        "just the one | only the one | the one vote | just one vote | only one vote | one vote from me"
    )
    + each_of(
        "sank | sinks | sunk | sinking | soggy | burst | burst open | cracked | cracks | split | splits | "
        "broke | snapped | burnt | burned | raw | gooey | melted | collapsed | hollow | ripped | torn | "
        "stopped | paused | crashed | asleep | interrupted | dipped | sagged | runny",
        "right |",
        "in the",
        "middle | centre | center",
    ),
    "roughly_after": phrases("somewhere"),
    "counting_pages": phrases("in this one | in this | in here | on this one | on this chart"),
    "choice_after": phrases("fae me | frae me | fur me")
    + phrases("gets picked | gets chosen | gets stitched | gets its turn | gets a turn")
    + each_of(
        "get | getting | have | having | come to",
        "some love | some attention | done | stitched | its turn | its moment | a turn | a go | finished | filled in | life",
    ),
    "choice_before": each_of(
        "at least | please | just | so |", "let me have | let us have | lemme have | let me get"
    )
    + each_of("but | and | so | no", "i'm having | im having | i am having")
    + each_of(
        "come | came | coming | been brought",
        "round to | around to",
    )
    + each_of(
        "we'd | we would | i'd | i would | we'd all | we'd both | we both | we all",
        "both | all | really | most |",
        "like | love | choose | pick",
    )
    + each_of("us", "all | both |", "want | love | choose | pick | like | say | vote for | prefer"),
    "lucky_before": phrases("i adore | adore | adoring | i do adore")
    + each_of(
        "like | love | loving | liking | fancy | prefer",
        "the |",
        "look | sound | idea | thought | ring | shape | feel | vibe",
        "of",
    ),
    "ages": each_of(
        "birthday | bday | b day | b-day | anniversary | wedding | due date | birth date",
        "is | is on | was | falls on | 's",
    ),
    "other_before": each_of("seats | rooms | lanes | platforms | lots", "# and | # or |")
    + each_of(
        "i | then i | so i | and i | we | had to | i've | i have",
        "started | restarted | started again | started over | begun again",
        "from | at | on | with",
        "the | page | page number |",
    )
    + each_of(
        "had to | has to | made us | made me | have to | made to", "do | write | stitch | copy"
    )
    + each_of(
        "bus | train | tram | ferry | route | line",
        "i | we",
        "take | get | catch | ride | need",
        "is | is the | is number | is no",
    )
    + each_of(
        "a | an | another | in a",
        "day | hour | minute | min | second | sec | week | month | year | moment",
        "or",
    )
    + each_of(
        "loved | enjoyed | liked | i was | been | i've been | rewatched | rewatching | remember | caught up on",
        "watching you | seeing you | watching her | you |",
        "finish | finishing | stitch | stitching | complete | completing | do | doing | work on | "
        "working on | tackle | fill in | start",
        "page | pages | number |",
    )
    + each_of(
        "song | film | movie | book | story | poem | show | documentary | programme | joke | podcast | "
        "video | article | episode",
        "about",
        "the |",
    ),
    "splitting": phrases("the other | other one | one for | another for"),
    "maybe_sayings": each_of(
        "give me | gimme | give us | gi'us", "five | 5 | a five | a high five"
    ),
    "affirming": each_of(
        "but | still | anyway",
        "that's | thats | that is | it's | it is | it's still | that's still",
        "my | our",
        "vote | pick | page | choice | number | answer",
    )
    + each_of(
        "that's | thats | that is | that'd be | it's",
        "the | my",
        "page | one | number | pick | vote | choice",
        "i'd | i would | i'll | i want | for me | i choose | i'm going | we'd | please",
    ),
    "preferred_after": each_of(
        "is | would be | 's",
        "the one | the page | what | the number",
        "i | we",
        "really | actually | most |",
        "want | prefer | love | would like | 'd like | choose | would pick | like best | like most | "
        "would choose",
    )
    + each_of(
        "is | would be",
        "my",
        "favourite | favorite | first choice | preference | top choice | fave",
    ),
    "sized_by": phrases("by"),
    "clock_before": phrases("at"),
    "comparing": phrases("than"),
}
