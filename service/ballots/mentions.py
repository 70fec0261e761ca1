"""Numbers in a comment, as mentions: which values a piece of it may name, before asking why.

A mention covers one or more tokens. Its `shape` says how the number is written; a shape that can
be no page (a time code, money) is known as something else from the start.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace

from service.ballots import stands
from service.ballots.glued import is_kissed, lookalike, mixed, tag
from service.ballots.lexicon import COUNTING, Lexicon, parted_number
from service.ballots.mention import Mention, whole_of
from service.ballots.scanning import DIGITS, WORD, Token

_ORDINAL = re.compile(r"(\d+)(\D*)")
_SINGLE_DIGITS = re.compile(r"\d-\d-\d")
#: Between the words of one number: "forty-two", "tridcat' dva".
_JOINING = frozenset({"-", "'"})
#: Nobody numbers pages by the dozen; one dozen has so many.
_DOZENS = frozenset(
    "dozen dozens dutzend douzaine docena dozzina duzia dozijn dussin dusin tucet tuzin".split()
)
_DOZEN = 12
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
            mentions.append(Mention(at, at + 1, whole_of(token.text), "digits"))
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
    if token.kind == "mixed" and is_kissed(tokens, at, lexicon):
        return Mention(at, at + 1, whole_of(token.text[:-1]), "digits")
    if token.kind == "mixed" and lexicon.group("page").before(tokens, at - 1):
        return lookalike(token, at) or mixed(token, at, lexicon)
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
            whole = whole_of("".join(map(str, told)))
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


def _digits(tokens: Sequence[Token], at: int) -> Mention:
    token = tokens[at]
    mention = Mention(at, at + 1, whole_of(token.text), "digits")
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
    if before is not None and before.text == "~" and token.glued:
        wave = at + 1 < len(tokens) and tokens[at + 1].text == "~"
        if not wave:  # "~35" is about 35; "~35~" is trimmed with waves
            mention.standing, mention.rule = stands.ASKED, "about there, not an exact page"
    minus = before is not None and before.text == "-" and token.glued and not before.glued
    if minus and not (at > 1 and tokens[at - 2].text in {":", "-"}):
        mention.value = -whole_of(token.text)
        mention.first = at - 1
    return mention


def _ordinal(token: Token, at: int, lexicon: Lexicon) -> Mention | None:
    """Digits with an ordinal's ending; with another letter they are read as mixed."""
    digits, ending = _ORDINAL.fullmatch(token.text).groups()  # type: ignore[union-attr]
    if ending.isalpha() and ending.isascii() and ending not in lexicon.ordinal_endings:
        return mixed(token, at, lexicon)
    return Mention(at, at + 1, whole_of(digits), "ordinal")


def _spelled(tokens: Sequence[Token], at: int, lexicon: Lexicon) -> Mention | None:
    """The longest run of words from `at` that is one number, joined by spaces or hyphens."""
    joined = ""
    best: tuple[int, int, bool] | None = None
    end = at
    while end < len(tokens) and end - at < 9:
        token = tokens[end]
        if token.kind == WORD:
            joined += token.text.replace("'", "")
            best = _value_of(tokens, end, joined, lexicon) or best
            if not lexicon.may_go_on(joined):
                break
        elif token.text not in _JOINING or not joined:
            break
        end += 1
    if best is None:
        return None
    after, value, ordinal = best
    first = _first_of_two(tokens, at, after, lexicon)
    if first:
        return Mention(at, after, value, "word", stands.ASKED, "a dash that may part two numbers",
                       (first, value), spelled=True)  # fmt: skip
    if after < len(tokens) and tokens[after].text in _DOZENS and value < _DOZEN:
        after, value = after + 1, value * _DOZEN  # "two dozen"
    if tokens[after - 1].text in _DOZENS:
        return _dozens(tokens, at, after, value, lexicon)
    return Mention(at, after, value, "ordinal word" if ordinal else "word", spelled=True)


def _dozens(tokens: Sequence[Token], at: int, after: int, value: int, lexicon: Lexicon) -> Mention:
    """As in "two dozen", "half a dozen": sure of the number, hardly of the choice."""
    for first in (at - 2, at - 1):
        words = "".join(token.text for token in tokens[max(first, 0) : after]).replace("'", "")
        if first >= 0 and words in lexicon.numbers:
            at, value = first, lexicon.numbers[words]
            break
    if lexicon.group("page").before(tokens, at - 1):
        return Mention(at, after, value, "word", spelled=True)
    return Mention(at, after, None, "vague", stands.UNSURE, maybe=(value,), spelled=True)


def _value_of(
    tokens: Sequence[Token], end: int, joined: str, lexicon: Lexicon
) -> tuple[int, int, bool] | None:
    """The token after a number that ends at `end`, its value, and whether it is an ordinal.

    What is a slip for both is an ordinal before a page word: "thirty-eigth page".
    """
    number, ordinal = lexicon.numbers.get(joined), lexicon.ordinals.get(joined)
    if ordinal is not None and (number is None or lexicon.group("page").after(tokens, end + 1)):
        return end + 1, ordinal, True
    return None if number is None else (end + 1, number, False)


def _first_of_two(tokens: Sequence[Token], at: int, after: int, lexicon: Lexicon) -> int:
    """As in "page forty - two votes": what follows may count with the last part alone; else 0."""
    dash = after - 2
    spaced = dash > at and tokens[dash].text == "-" and not tokens[dash].glued
    if not spaced or after >= len(tokens) or tokens[after].kind != WORD:
        return 0
    parted = any(
        lexicon.group("splitting").after(tokens, place) for place in range(after, len(tokens))
    )
    if not parted and lexicon.after(tokens, after)[0] in {"choice_after", "neutral_after"}:
        return 0
    return lexicon.numbers.get("".join(token.text for token in tokens[at:dash]), 0)


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


def _numbers_in(text: str) -> tuple[int, ...]:
    return tuple(whole_of(digits) for digits in re.findall(r"\d+", text))


def _shaped(token: Token, at: int, _lexicon: Lexicon) -> Mention:
    """A number whose punctuation is part of it; what it means is judged with its neighbours."""
    values = _numbers_in(token.text)
    if token.kind == "grouped":
        whole = whole_of("".join(character for character in token.text if character.isdigit()))
        return Mention(at, at + 1, whole, "grouped", stands.OTHER, "a large count")
    if token.kind == "broken":
        whole = whole_of("".join(str(value) for value in values))
        if len(values) > 2 and len(set(values)) == 1:
            return Mention(at, at + 1, values[0], "digits")  # "7 7 7" is 7, said with joy
        maybe = (*values, whole) if len(values) == 2 else (whole, *values)
        return Mention(at, at + 1, None, "broken", stands.PLACED,
                       "digits parted by spaces", maybe)  # fmt: skip
    return Mention(at, at + 1, None, token.kind, stands.PLACED, maybe=values)


_READERS = {"ordinal": _ordinal, "mixed": mixed, "tag": tag}
