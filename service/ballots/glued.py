"""Letters and digits in one word: a cue glued on, a unit, a tag, letters that look like digits."""

from __future__ import annotations

import re

from service.ballots import stands
from service.ballots.lexicon import Lexicon
from service.ballots.mention import Mention, whole_of
from service.ballots.scanning import Token

_GLUED = re.compile(r"([a-z]*)(\d+)([a-z]*)$")
_GLUED_TWO = re.compile(r"([a-z]*)(\d+)([a-z]+)(\d+)$")
_LOOKALIKE = str.maketrans({"o": "0", "l": "1", "i": "1", "s": "5"})
_LOOKS_LIKE_DIGITS = re.compile(r"[oli]*\d+[oli\d]*$|\d*[oli]+\d+$")
#: Letters that glue a cue to a number in any language: they are short for "page" or "number".
_SHORT_CUES = frozenset({"p", "pg", "pge", "nr", "num", "number", "page", "s", "seite", "pagina",
                         "sida", "side", "str", "stranica", "strona", "blz", "bladzijde"})  # fmt: skip
#: "no42" may rule 42 out or number it.
_DOUBTFUL_CUES = frozenset({"no", "team"})
_GLUED_COUNTS = frozenset(
    "ct k m mm cm km kg g lb lbs oz ml l h hr hrs hrs min mins sec secs s pm am yo yr yrs yrold d "
    "x px p th fps hd count st ft in w wk wks gb mb mph kph c f ish ies plus ply".split()
)


def mixed(token: Token, at: int, lexicon: Lexicon) -> Mention | None:
    """Letters and digits in one: a cue glued on, a unit, or letters that look like digits."""
    text = token.text
    two = _GLUED_TWO.match(text)
    if two and _joins_two(two, lexicon):
        return Mention(at, at + 1, None, "several", stands.ASKED, "several pages, and none is preferred",
                       (whole_of(two[2]), whole_of(two[4])))  # fmt: skip
    glued = _GLUED.match(text)
    if glued:
        head, digits, tail = glued.groups()
        ends = _ends_well(tail, lexicon)
        if head not in _DOUBTFUL_CUES and _cues(head, lexicon):
            if ends:
                return Mention(at, at + 1, whole_of(digits), "glued", stands.CUED,
                               "a page word glued to the number", cued_by_page=True)  # fmt: skip
        elif head in _DOUBTFUL_CUES and ends:
            return Mention(at, at + 1, whole_of(digits), "glued", stands.ASKED,
                           "letters glued to a number")  # fmt: skip
        elif (
            not head and tail in {"ish", "ies", "s", "th"} and digits.endswith("0") and tail == "s"
        ):
            return Mention(at, at + 1, None, "kind", stands.PLACED, "a kind of page, not one")
        elif not head and tail == "ish":
            return Mention(
                at,
                at + 1,
                whole_of(digits),
                "rough",
                stands.PLACED,
                "not an exact page",
                (whole_of(digits),),
            )
        elif not head and ends and tail:
            return Mention(at, at + 1, whole_of(digits), "digits")
        elif not tail and len(digits) == 1 and lexicon.numbers.get(head, 1) % 10 == 0:
            whole = lexicon.numbers[head] + int(digits)  # "forty2"
            return Mention(at, at + 1, whole, "glued", stands.ASKED, "half in words")
    looks = None if glued and glued[3] in _GLUED_COUNTS else lookalike(token, at)
    return looks or Mention(at, at + 1, None, "mixed", stands.OTHER, "digits inside a word")


def _ends_well(tail: str, lexicon: Lexicon) -> bool:
    """Whether the letters behind a number leave it one: "42please", and kisses, "35xx"."""
    return (
        not tail
        or tail in lexicon.glue_after
        or (len(tail) > 1 and set(tail) == {"x"})
        or any(tail.startswith(word) for word in lexicon.glue_after if len(word) > 2)
    )


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
