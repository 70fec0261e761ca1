"""Letters and digits in one word: a cue glued on, a unit, a tag, letters that look like digits."""

from __future__ import annotations

import re
from collections.abc import Sequence

from service.ballots import stands
from service.ballots.lexicon import Lexicon
from service.ballots.mention import Mention, whole_of
from service.ballots.scanning import DIGITS, WORD, Token

_GLUED = re.compile(r"([a-z]*)(\d+)([a-z]*)$")
_GLUED_TWO = re.compile(r"([a-z]*)(\d+)([a-z]+)(\d+)$")
_LOOKALIKE = str.maketrans({"o": "0", "l": "1", "i": "1", "s": "5"})
_LOOKS_LIKE_DIGITS = re.compile(r"[oli]*\d+[oli\d]*$|\d*[oli]+\d+$")
#: Letters that glue a cue to a number in any language: they are short for "page" or "number".
_SHORT_CUES = frozenset({"p", "pg", "pge", "nr", "num", "number", "page", "s", "seite", "pagina",
                         "sida", "side", "str", "stranica", "strona", "blz", "bladzijde"})  # fmt: skip
_KISSED = re.compile(r"\d+x")
_BEFORE_A_KISSED = frozenset({"page", "number", "choice_before"})
#: "no42" may rule 42 out or number it.
_DOUBTFUL_CUES = frozenset({"no", "team"})
_GLUED_COUNTS = frozenset(
    "ct k m mm cm km kg g lb lbs oz ml l h hr hrs hrs min mins sec secs s pm am yo yr yrs yrold d "
    "x px p th fps hd count st ft in w wk wks gb mb mph kph c f ish ies plus ply".split()
)


def _doubted(at: int, digits: str) -> Mention:
    """A page that letters glued to its number throw doubt on."""
    return Mention(at, at + 1, whole_of(digits), "glued", stands.ASKED, "letters glued to a number")


def mixed(token: Token, at: int, lexicon: Lexicon) -> Mention | None:
    """Letters and digits in one: a cue glued on, a unit, or letters that look like digits."""
    two = _GLUED_TWO.match(token.text)
    if two and _joins_two(two, lexicon):
        return Mention(at, at + 1, None, "several", stands.ASKED, "several pages, and none is preferred",
                       (whole_of(two[2]), whole_of(two[4])))  # fmt: skip
    glued = _GLUED.match(token.text)
    read = _read_glued(glued, at, lexicon) if glued else None
    looks = None if glued and glued[3] in _GLUED_COUNTS else lookalike(token, at)
    return read or looks or Mention(at, at + 1, None, "mixed", stands.OTHER, "digits inside a word")


def _read_glued(glued: re.Match[str], at: int, lexicon: Lexicon) -> Mention | None:
    """What letters before and behind a number make of it; None for nothing."""
    head, digits, tail = glued.groups()
    ends = _ends_well(tail, lexicon)
    if head not in _DOUBTFUL_CUES and _cues(head, lexicon):
        if ends or _thanks(head, digits, tail, lexicon):
            return Mention(at, at + 1, whole_of(digits), "glued", stands.CUED,
                           "a page word glued to the number", cued_by_page=True)  # fmt: skip
        if _is_said_of(head, tail, lexicon):
            return _doubted(at, digits)
    elif head in _DOUBTFUL_CUES and ends:
        return _doubted(at, digits)
    elif not head and tail in {"ish", "ies", "s", "th"} and digits.endswith("0") and tail == "s":
        return Mention(at, at + 1, None, "kind", stands.PLACED, "a kind of page, not one")
    elif not head and tail == "ish":
        return Mention(at, at + 1, whole_of(digits), "rough", stands.PLACED,
                       "not an exact page", (whole_of(digits),))  # fmt: skip
    elif not head and ends and tail:
        return Mention(at, at + 1, whole_of(digits), "digits")
    elif not tail and len(digits) == 1 and lexicon.numbers.get(head, 1) % 10 == 0:
        whole = lexicon.numbers[head] + int(digits)  # "forty2"
        return Mention(at, at + 1, whole, "glued", stands.ASKED, "half in words")
    return None


def _ends_well(tail: str, lexicon: Lexicon) -> bool:
    """Whether the letters behind a number leave it one: "42please", and kisses, "35xx"."""
    return (
        not tail
        or tail in lexicon.glue_after
        or (len(tail) > 1 and set(tail) == {"x"})
        or any(tail.startswith(word) for word in lexicon.glue_after if len(word) > 2)
    )


def is_kissed(tokens: Sequence[Token], at: int, lexicon: Lexicon) -> bool:
    """As in "35x": a kiss behind a number that ends what is said, and no number of times."""
    behind = tokens[at + 1] if at + 1 < len(tokens) else None
    ends = behind is None or behind.kind not in {WORD, DIGITS, "mixed"}
    begins = at == 0 or lexicon.before(tokens, at - 1)[0] in _BEFORE_A_KISSED
    return begins and ends and _KISSED.fullmatch(tokens[at].text) is not None


def _thanks(head: str, digits: str, tail: str, lexicon: Lexicon) -> bool:
    """As in "pg31thankyou": a page word, and letters that are no unit and rule nothing out.

    A 2, 4 or 8 may be a word ("page2come").
    """
    sounds = digits in {"2", "4", "8"}
    return _is_said_of(head, tail, lexicon) and not sounds and not tail.startswith(lexicon.doubting)


def _is_said_of(head: str, tail: str, lexicon: Lexicon) -> bool:
    """Whether a page word stands before the number, and a word of some letters behind it."""
    paged = len(head) > 1 and head in lexicon.glue_pages
    return paged and len(tail) > 2 and tail not in _GLUED_COUNTS


def _joins_two(two: re.Match[str], lexicon: Lexicon) -> bool:
    """Whether two numbers are glued together, perhaps with a cue: "page22or23", "12and13"."""
    head, joining = two[1], two[3]
    joined = any(joining in lexicon.group(name).firsts for name in ("either", "also"))
    return joined and len(joining) > 1 and (not head or _cues(head, lexicon))


def lookalike(token: Token, at: int) -> Mention | None:
    """As in "l2", "O7", and behind a page word "2l": letters that look like digits."""
    if not _LOOKS_LIKE_DIGITS.fullmatch(token.text):
        return None
    value = whole_of(token.text.translate(_LOOKALIKE))
    return Mention(at, at + 1, value, "lookalike", stands.ASKED, "letters that look like digits")


def _cues(head: str, lexicon: Lexicon) -> bool:
    """Whether letters before a number cue it: "pg42", "votepage42"."""
    if head in _SHORT_CUES or head in lexicon.glue_before:
        return True
    return any(
        head.startswith(word) and head[len(word) :] in lexicon.glue_before
        for word in lexicon.glue_before
    )


def tag(token: Token, at: int, _lexicon: Lexicon) -> Mention | None:
    """A tag with digits in it: `#team58` may be meant, `#wip2026` is not."""
    found = re.fullmatch(
        r"#(?:team|crew|gang|squad|club|page|pg|p|vote|number|no|nr)_?(\d{1,4})", token.text
    )
    if found:
        return Mention(at, at + 1, int(found[1]), "glued", stands.ASKED, "a number inside a tag")
    if re.search(r"\d", token.text):
        return Mention(at, at + 1, None, "tag", stands.OTHER, "digits inside a tag")
    return None
