"""English votes that are not quite one: grumbles, counts told twice, numbers of one's own, sayings."""

from __future__ import annotations

from collections.abc import Mapping

from service.ballots.language import Phrase, each_of, phrases

GROUPS: Mapping[str, tuple[Phrase, ...]] = {
    "crowds": each_of(
        "everybody | everyone | the whole world | half the world | all the world | every man",
        "and",
        "their | his | her | all their",
    ),
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
    ),
    "own_numbers": each_of(
        "my | our",
        "old | first | school | team | netball | football | hockey | favourite |",
        "jersey number | shirt number | house number | locker number | door number | team number | "
        "player number | squad number | bib number | race number | bus number | room number | "
        "badge number | flat number | class number | kit number",
    ),
    "sayings": each_of(
        "sank | sinks | sunk | sinking | soggy | burst | burst open | cracked | cracks | split | splits | "
        "broke | snapped | burnt | burned | raw | gooey | melted | collapsed | hollow | ripped | torn | "
        "stopped | paused | crashed | asleep | interrupted | dipped | sagged | runny",
        "right |",
        "in the",
        "middle | centre | center",
    ),
    "roughly_after": phrases("somewhere"),
    "counting_pages": phrases("in this one | in this | in here | on this one | on this chart"),
    "choice_before": each_of(
        "we'd | we would | i'd | i would | we'd all | we'd both | we both | we all",
        "both | all | really | most |",
        "like | love | choose | pick",
    ),
    "other_before": each_of(
        "a | an | another | in a",
        "day | hour | minute | min | second | sec | week | month | year | moment",
        "or",
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
}
