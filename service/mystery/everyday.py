"""Everyday English words, to tell a common word from one that hardly stands elsewhere.

The lists serve two questions: whether a slip of typing makes another real word, and whether one
word of a title would turn up in anybody's comment. They are made by hand of the words of titles,
pictures and talk, no dictionary; endings are taken off before a word is looked up.
"""

from __future__ import annotations

from functools import cache

from service.mystery.wordlist import RARER_WORDS, WORDS

#: Usual first names: a slip that makes one of them makes another name.
FIRST_NAMES = frozenset(
    """
adam alan albert alfred alice allan allen amelia anders andrew anna anne anthony arnold arthur
barry basil ben bernard beth betty brian bruno bryan carl carla carol caroline catherine charles
charlie christian claire clara clare colin daisy daniel david dennis derek donald duncan edgar
edmund edward edwin elena eliza elizabeth ella ellen ellis elsie emily emma eric ernest felix
flora florence frances francis frank fred freya george gerald gerard gilbert gordon graham greg
hanna hannah harold harriet harry harvey hattie helen helena henrietta henry herbert holly hugh
hugo ian isaac ivan ivy jack jacob james jane jason jean jeanne jennifer jenny jess jessica joan
joanna johan john jonas joseph judith julia julie karl kate katherine katie keith kenneth kevin
kitty lars laura laurence lawrence lena leo leon leonard lewis lily linda lizzie lorna louis
lucy luke lydia mabel maggie magnus malcolm margaret maria marian marie marion mark marta martha
martin mary matilda matthew maud maude max michael miriam molly morris nancy nathan neil nell
nellie nicholas nigel noel nora norah norman olive oliver olivia oscar oswald otto pamela
patrick paul paula peggy penelope percy peter philip phoebe polly rachel ralph raymond rebecca
richard robert robin roger roland ronald rosa rose rosie ruby rupert ruth sally samuel sara
sarah saul sidney simon sophia sophie stanley stephen steven stewart stuart susan susanna sylvia
tamsin tamsyn teresa theodore thomas tilly timothy toby tony vera victor victoria vincent violet
walter wendy wilfred william winifred winston zoe
""".split()
)

#: Endings that make another form of a word, with what stands there instead.
_ENDINGS = (
    ("ies", "y"), ("ied", "y"), ("ier", "y"), ("iest", "y"), ("ily", "y"), ("iness", "y"), ("ves", "f"),
    ("ves", "fe"), ("es", ""), ("es", "e"), ("s", ""), ("ed", ""), ("ed", "e"), ("ing", ""), ("ing", "e"), ("ings", ""), ("ings", "e"),
    ("ers", ""), ("ers", "e"), ("er", ""), ("er", "e"), ("est", ""), ("est", "e"), ("ly", ""), ("y", ""),
    ("y", "e"), ("ness", ""), ("less", ""), ("ful", ""), ("en", ""), ("ish", ""), ("x", ""), ("ist", ""), ("ists", ""), ("n", ""),
)  # fmt: skip


@cache
def stems_of(form: str) -> frozenset[str]:
    """The word itself and what is left when usual endings are taken off (also "stopped": "stop")."""
    stems = {form}
    for ending, instead in _ENDINGS:
        stem = form[: -len(ending)]
        if form.endswith(ending) and len(stem) >= 3:
            stems.add(stem + instead)
            if not instead and len(stem) > 3 and stem[-1] == stem[-2]:
                stems.add(stem[:-1])
    return frozenset(stems)


@cache
def is_rarer_english(form: str) -> bool:
    """Whether `form` is a real English word, or a form of one, that hardly stands by chance."""
    return not stems_of(form).isdisjoint(RARER_WORDS)


#: Endings of learned words, which hardly stand in a place's or a person's name.
_LEARNED = (
    "tion", "sion", "ment", "ness", "ity", "ous", "able", "ible", "ism", "ist", "ance", "ence", "ology",
    "graphy", "ture", "ical", "ive", "ship", "hood",
)  # fmt: skip


@cache
def is_english(form: str) -> bool:
    """Whether `form` is a common English word, a form of one, or a usual first name."""
    known = form in FIRST_NAMES or not stems_of(form).isdisjoint(WORDS)
    return known or (len(form) > 6 and form.endswith(_LEARNED))
