"""Numbers in a comment, as mentions: which values a piece of it may name, before asking why.

A mention covers one or more tokens. Its `shape` says how the number is written; a shape that can
be no page (a time code, money) is known as something else from the start.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace

from service.ballots import stands
from service.ballots.lexicon import COUNTING, Lexicon, parted_number
from service.ballots.scanning import DIGITS, WORD, Token
from service.ballots.stands import Standing


@dataclass(slots=True, eq=False)
class Mention:
    """A number in the comment: tokens [first:after], the values it may mean, how it stands.

    `rule` says in words what decided. `value` is the page meant where it is one, `maybe` every
    page it may mean where it is not sure.
    """

    first: int
    after: int
    value: int | None
    shape: str
    standing: Standing = stands.UNSURE
    rule: str = ""
    maybe: tuple[int, ...] = ()
    spelled: bool = False
    cued_by_page: bool = False
    #: Of these the host is shown the page, but it never counts by itself.
    reported: bool = False
    family: bool = False
    lucky: bool = False
    #: Its place in the order that the writer numbers; 0 where nothing is numbered.
    rank: int = 0
    conditional: bool = False
    #: The condition is about the page itself or unknown: no order follows from it.
    depends: bool = False


_ORDINAL = re.compile(r"(\d+)(\D*)")
_GLUED = re.compile(r"([a-z]*)(\d+)([a-z]*)$")
_LOOKALIKE = str.maketrans({"o": "0", "l": "1", "i": "1", "s": "5"})
_LOOKS_LIKE_DIGITS = re.compile(r"[oli]*\d+[oli\d]*$|\d*[oli]+\d+$")
_SINGLE_DIGITS = re.compile(r"\d-\d-\d")
#: Between the words of one number: "forty-two", "tridcat' dva".
_JOINING = frozenset({"-", "'"})
_VAGUE = frozenset({"dozen"})
_NO_NUMBER = frozenset({"soft", "end", "quote", "other", "strike"})
#: Shapes that can be no page, with what the host is told of them.
_SHAPES_OF_OTHER = {
    "link": "part of a link",
    "handle": "part of somebody's name",
    "emoticon": "a face or a heart",
    "money": "an amount of money",
    "percent": "a percentage",
    "clock": "a time of day, or a place in a video",
    "date": "a date",
}
#: Letters that glue a cue to a number in any language: they are short for "page" or "number".
_SHORT_CUES = frozenset({"p", "pg", "pge", "nr", "num", "number", "page", "s", "seite", "pagina",
                         "sida", "side", "str", "stranica", "strona", "blz", "bladzijde"})  # fmt: skip
#: "no42" may rule 42 out or number it.
_DOUBTFUL_CUES = frozenset({"no", "team"})
_GLUED_COUNTS = frozenset(
    "ct k m mm cm km kg g lb lbs oz ml l h hr hrs hrs min mins sec secs s pm am yo yr yrs yrold d "
    "x px p th fps hd count st ft in w wk wks gb mb mph kph c f ish ies plus ply".split()
)


def find_mentions(tokens: Sequence[Token], signs: Sequence[int], lexicon: Lexicon) -> list[Mention]:
    """Every number among the tokens, in order; `signs` are what each of them is a sign of."""
    mentions: list[Mention] = []
    reached = 0
    for at, token in enumerate(tokens):
        kind = token.kind
        if kind == WORD:
            if not signs[at] & COUNTING or at < reached:
                continue
        elif kind in _NO_NUMBER or at < reached:
            continue
        elif kind == DIGITS and not token.glued:
            mentions.append(Mention(at, at + 1, _whole(token.text), "digits"))
            continue
        mention = _mention_at(tokens, at, lexicon)
        if mention is not None:
            mentions.append(mention)
            reached = mention.after
    return _join_spoken_digits(mentions) if len(mentions) > 1 else mentions


def _mention_at(tokens: Sequence[Token], at: int, lexicon: Lexicon) -> Mention | None:
    """The number that begins at this token, if one does."""
    token = tokens[at]
    if token.kind == WORD:
        return _spelled(tokens, at, lexicon) or _parted(token, at, lexicon)
    if token.kind == DIGITS:
        return _digits(tokens, at)
    if token.kind == "date" and _SINGLE_DIGITS.fullmatch(token.text):
        return _shaped(replace(token, kind="broken"), at, lexicon)
    if token.kind == "mixed" and lexicon.group("page").before(tokens, at - 1):
        return _lookalike(token, at) or _mixed(token, at, lexicon)
    if token.kind in _SHAPES_OF_OTHER:
        numeric = any(character.isdigit() for character in token.text)
        if not numeric:
            return None
        return Mention(at, at + 1, None, token.kind, stands.OTHER, _SHAPES_OF_OTHER[token.kind])
    return _READERS.get(token.kind, _shaped)(token, at, lexicon)


def _join_spoken_digits(mentions: list[Mention]) -> list[Mention]:
    """As in "Four two" may be 4 and 2 or 42, as "4 2" may."""
    joined: list[Mention] = []
    told: list[int] = []
    for one in mentions:
        last = joined[-1] if joined else None
        digit = one.value if one.shape == "word" and 0 <= (one.value or 0) < 10 else None
        if last is not None and told and digit is not None and last.after == one.first:
            told.append(digit)
            whole = _whole("".join(map(str, told)))
            if len(told) > 2 and len(set(told)) == 1:
                # "nine nine nine" is 9, said with joy
                joined[-1] = Mention(last.first, one.after, told[0], "word", spelled=True)
                continue
            maybe = (*told, whole) if len(told) == 2 else (whole, *told)
            joined[-1] = Mention(last.first, one.after, None, "broken", stands.PLACED,
                                 "digits told one by one", maybe)  # fmt: skip
        else:
            joined.append(one)
            told = [digit] if digit else []
    return joined


def _whole(digits: str) -> int:
    """The value of a run of digits; beyond nine digits only its being too large matters."""
    return int(digits) if len(digits) < 10 else 10**9


def _digits(tokens: Sequence[Token], at: int) -> Mention:
    token = tokens[at]
    mention = Mention(at, at + 1, _whole(token.text), "digits")
    before = tokens[at - 1] if at else None
    if before is not None and before.text == "+" and token.glued:
        # "+1" agrees with somebody; other numbers behind a plus may be meant.
        agrees = mention.value == 1
        mention.standing = stands.PLACED if agrees else stands.ASKED
        mention.rule = "points at something instead of a page"
        mention.first = at - 1
        mention.value = None if agrees else mention.value
        return mention
    if before is not None and before.text == "'" and token.glued and not before.glued:
        closed = at + 1 < len(tokens) and tokens[at + 1].text == "'"
        if not closed:
            mention.standing, mention.rule = stands.OTHER, "a year"
            return mention
    minus = before is not None and before.text == "-" and token.glued and not before.glued
    if minus and not (at > 1 and tokens[at - 2].text in {":", "-"}):
        mention.value = -_whole(token.text)
        mention.first = at - 1
    return mention


def _ordinal(token: Token, at: int, lexicon: Lexicon) -> Mention | None:
    """Digits with an ordinal's ending; with another letter they are read as mixed."""
    digits, ending = _ORDINAL.fullmatch(token.text).groups()  # type: ignore[union-attr]
    if ending.isalpha() and ending.isascii() and ending not in lexicon.ordinal_endings:
        return _mixed(token, at, lexicon)
    return Mention(at, at + 1, _whole(digits), "ordinal")


def _spelled(tokens: Sequence[Token], at: int, lexicon: Lexicon) -> Mention | None:
    """The longest run of words from `at` that is one number, joined by spaces or hyphens."""
    joined = ""
    best: tuple[int, int, bool] | None = None
    end = at
    while end < len(tokens) and end - at < 9:
        token = tokens[end]
        if token.kind == WORD:
            joined += token.text.replace("'", "")
            if joined in lexicon.numbers:
                best = (end + 1, lexicon.numbers[joined], False)
            elif joined in lexicon.ordinals:
                best = (end + 1, lexicon.ordinals[joined], True)
            if not lexicon.may_go_on(joined):
                break
        elif token.text not in _JOINING or not joined:
            break
        end += 1
    if best is None:
        return None
    after, value, ordinal = best
    if tokens[at].text in _VAGUE:
        # Nobody numbers pages by the dozen: sure of the number, not of the choice.
        return Mention(at, after, None, "vague", stands.UNSURE, maybe=(value,), spelled=True)
    return Mention(at, after, value, "ordinal word" if ordinal else "word", spelled=True)


def _parted(token: Token, at: int, lexicon: Lexicon) -> Mention | None:
    """As in "thirteen's", which is "thirteen is", and "pagetwentytwo"."""
    head, bare = parted_number(token.text, lexicon.numbers, lexicon.heads)
    if not bare:
        return None
    value = lexicon.numbers[bare]
    if not head:
        return Mention(at, at + 1, value, "word", spelled=True)
    return Mention(at, at + 1, value, "glued", stands.CUED, "a page word glued to the number",
                   cued_by_page=True)  # fmt: skip


def _mixed(token: Token, at: int, lexicon: Lexicon) -> Mention | None:
    """Letters and digits in one: a cue glued on, a unit, or letters that look like digits."""
    text = token.text
    glued = _GLUED.match(text)
    if glued:
        head, digits, tail = glued.groups()
        ends = (
            not tail
            or tail in lexicon.glue_after
            or any(tail.startswith(word) for word in lexicon.glue_after if len(word) > 2)
        )
        if head not in _DOUBTFUL_CUES and _cues(head, lexicon):
            if ends:
                return Mention(at, at + 1, _whole(digits), "glued", stands.CUED,
                               "a page word glued to the number", cued_by_page=True)  # fmt: skip
        elif head in _DOUBTFUL_CUES and ends:
            return Mention(at, at + 1, _whole(digits), "glued", stands.ASKED,
                           "letters glued to a number")  # fmt: skip
        elif (
            not head and tail in {"ish", "ies", "s", "th"} and digits.endswith("0") and tail == "s"
        ):
            return Mention(at, at + 1, None, "kind", stands.PLACED, "a kind of page, not one")
        elif not head and tail == "ish":
            return Mention(at, at + 1, _whole(digits), "rough", stands.PLACED, "not an exact page")
        elif not head and ends and tail:
            return Mention(at, at + 1, _whole(digits), "digits")
        elif not tail and len(digits) == 1 and lexicon.numbers.get(head, 1) % 10 == 0:
            whole = lexicon.numbers[head] + int(digits)  # "forty2"
            return Mention(at, at + 1, whole, "glued", stands.ASKED, "half in words")
    lookalike = None if glued and glued[3] in _GLUED_COUNTS else _lookalike(token, at)
    return lookalike or Mention(at, at + 1, None, "mixed", stands.OTHER, "digits inside a word")


def _lookalike(token: Token, at: int) -> Mention | None:
    """As in "l2", "O7", and behind a page word "2l": letters that look like digits."""
    if not _LOOKS_LIKE_DIGITS.fullmatch(token.text):
        return None
    value = _whole(token.text.translate(_LOOKALIKE))
    return Mention(at, at + 1, value, "lookalike", stands.ASKED, "letters that look like digits")


def _cues(head: str, lexicon: Lexicon) -> bool:
    """Whether letters before a number cue it: "pg42", "votepage42"."""
    if head in _SHORT_CUES or head in lexicon.glue_before:
        return True
    return any(
        head.startswith(word) and head[len(word) :] in lexicon.glue_before
        for word in lexicon.glue_before
    )


def _tag(token: Token, at: int, _lexicon: Lexicon) -> Mention | None:
    """A tag with digits in it: `#team58` may be meant, `#wip2026` is not."""
    found = re.fullmatch(
        r"#(?:team|crew|gang|squad|club|page|pg|p|vote|number|no|nr)_?(\d{1,4})", token.text
    )
    if found:
        return Mention(at, at + 1, int(found[1]), "glued", stands.ASKED, "a number inside a tag")
    if re.search(r"\d", token.text):
        return Mention(at, at + 1, None, "tag", stands.OTHER, "digits inside a tag")
    return None


def _numbers_in(text: str) -> tuple[int, ...]:
    return tuple(_whole(digits) for digits in re.findall(r"\d+", text))


def _shaped(token: Token, at: int, _lexicon: Lexicon) -> Mention:
    """A number whose punctuation is part of it; what it means is judged with its neighbours."""
    values = _numbers_in(token.text)
    if token.kind == "grouped":
        whole = _whole("".join(character for character in token.text if character.isdigit()))
        return Mention(at, at + 1, whole, "grouped", stands.OTHER, "a large count")
    if token.kind == "broken":
        whole = _whole("".join(str(value) for value in values))
        if len(values) > 2 and len(set(values)) == 1:
            return Mention(at, at + 1, values[0], "digits")  # "7 7 7" is 7, said with joy
        maybe = (*values, whole) if len(values) == 2 else (whole, *values)
        return Mention(at, at + 1, None, "broken", stands.PLACED,
                       "digits parted by spaces", maybe)  # fmt: skip
    return Mention(at, at + 1, None, token.kind, stands.PLACED, maybe=values)


_READERS = {"ordinal": _ordinal, "mixed": _mixed, "tag": _tag}
