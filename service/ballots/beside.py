"""What stands right before and right after a number, as far as it decides anything."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from service.ballots.lexicon import NUMBER, bits_of
from service.ballots.scanning import DIGITS, END, QUOTE, SOFT, WORD, Token
from service.ballots.scene import Scene

_SOFT_BEFORE = frozenset({":", "=", "-", ",", "*", "(", ">", "[", "/"})
#: Kinds of tokens that are read on before a number.
_READ_BEFORE = frozenset({WORD, END, SOFT, QUOTE})
#: Before "p. 29", "op. 23" the full stop ends no sentence.
_CUES = frozenset({"page", "number"})
_CHOICE = bits_of("choice_before")
_ABBREVIATIONS = frozenset({"op", "vol", "ep"})
#: What reaches over a comma, and over a colon, which says "is": "page: 56", "age: 56".
_CROSSED = frozenset({"choice_before", "lucky_before", "fillers"})
_CROSSED_BY_COLON = _CROSSED | {"page", "number", "labels"}


@dataclass(slots=True)
class Beside:
    """One side of a number.

    `group` is the deciding group of words, "" for none. `clear`: nothing unknown stands there.
    `page` and `number`: a page word or a number word cues it. `at` is the first token beyond
    what was read, `phrase` the first token of the deciding phrase.
    """

    group: str = ""
    clear: bool = True
    page: bool = False
    number: bool = False
    at: int = -1
    phrase: int = -1
    crossed: bool = False
    joined: bool = False


def read_before(scene: Scene, first: int) -> Beside:
    """What stands right before token `first`."""
    tokens = scene.tokens
    side = Beside(at=first - 1)
    if first and tokens[first - 1].kind not in _READ_BEFORE:
        return side
    while side.at >= 0:
        token = tokens[side.at]
        if token.kind == WORD or (token.kind == END and token.text == "."):
            if not _take_word_before(scene, side, first):
                return side
        elif token.kind == SOFT and token.text == "#":
            side.number = True
            side.at -= 1
        elif token.text == "-" and token.glued and tokens[side.at + 1].glued:
            side.joined = True  # "Hatch-22", "page-42": one word
            side.at -= 1
        elif token.kind == SOFT and token.text in _SOFT_BEFORE and not side.crossed:
            side.crossed = True
            side.at -= 1
        elif token.kind == QUOTE:
            side.at -= 1
        else:
            return side
    return side


def _take_word_before(scene: Scene, side: Beside, first: int) -> bool:
    """Read the word at `side.at` into `side`; whether reading goes on before it."""
    tokens = scene.tokens
    group, count = scene.lexicon.before(tokens, side.at)
    if tokens[side.at].kind == END and group not in {"page", "number"}:
        # "p. 29": the full stop of an abbreviation ends no sentence.
        inner, inner_count = scene.lexicon.before(tokens, side.at - 1) if side.at else ("", 0)
        short = side.at > 0 and len(tokens[side.at - 1].text) <= 3
        known = inner in _CUES or (side.at > 0 and tokens[side.at - 1].text in _ABBREVIATIONS)
        if not known or not short or not tokens[side.at].glued:
            return False
        group, count = inner, inner_count + 1
    if side.crossed and not _reaches_over(scene, side, group):
        return False
    if group == "page":
        side.page = True
    elif group == "number":
        side.number = True
    elif not group and scene.signs[side.at] & NUMBER:
        return False
    elif group != "fillers":
        side.group = "" if group == "neutral_before" else group
        side.clear = bool(group) or (side.at != first - 1 and not side.joined)
        if group and group != "neutral_before":
            side.phrase = side.at - count + 1
            side.at -= count
        return False
    side.at -= count
    return True


def _reaches_over(scene: Scene, side: Beside, group: str) -> bool:
    """Whether words of this group reach over the mark between them and the number."""
    mark = scene.tokens[side.at + 1].text
    if mark in {",", "("}:
        return group in _CROSSED
    label = scene.lexicon.group("labels").before(scene.tokens, side.at)
    # "This time: 62" tells no time.
    if label and not scene.lexicon.group("soft_correction").before(scene.tokens, side.at):
        side.group, side.phrase = "labels", side.at
        return False
    return group in _CROSSED_BY_COLON


def _has_an_ending(tokens: Sequence[Token], at: int) -> bool:
    """As in "20'li", "42'yi": a Turkish ending behind an apostrophe."""
    glued = at + 1 < len(tokens) and tokens[at].glued and tokens[at + 1].glued
    return glued and tokens[at + 1].kind == WORD


def _take_word_after(scene: Scene, side: Beside) -> None:
    """Read the words that begin at `side.at` into `side`."""
    group, count = scene.lexicon.after(scene.tokens, side.at)
    step = scene.begins("page", side.at)
    if step:
        # An ordinal is cued by the page word behind it: "42nd page".
        side.page = True
        side.at += step - 1
        side.group = group
        return
    side.group = "" if group == "neutral_after" else group
    sign = scene.signs[side.at]
    said_again = not group and sign & _CHOICE and scene.begins("choice_before", side.at) > 0
    side.clear = bool(group or said_again or sign & NUMBER)
    side.phrase = side.at
    side.at += count


def read_after(scene: Scene, after: int) -> Beside:
    """What stands right after the token before `after`."""
    tokens, lexicon = scene.tokens, scene.lexicon
    side = Beside(at=after)
    if (
        after + 1 < len(tokens)
        and tokens[after].text == "-"
        and tokens[after].glued
        and tokens[after + 1].glued
    ):
        side.at += 1
    while side.at < len(tokens) and tokens[side.at].kind == QUOTE:
        side.at += 1
    if side.at >= len(tokens):
        return side
    token = tokens[side.at]
    if (
        token.text == "'"
        and _has_an_ending(tokens, side.at)
        and lexicon.after(tokens, side.at + 1)[0]
    ):
        side.at += 1
        token = tokens[side.at]
    if token.kind in {WORD, "mixed"}:
        _take_word_after(scene, side)
    elif token.kind == SOFT and token.text in {",", "-", "("} and side.at + 1 < len(tokens):
        group, step = lexicon.after(tokens, side.at + 1)
        beyond = side.at + 1 + step
        if group == "not_after" and scene.kinds[beyond : beyond + 1] == [DIGITS]:
            return side  # "12，不要13": said of the next
        if group in {"choice_after", "not_after", "roughly_after"}:
            side.group = group
            side.crossed = True
            side.phrase = side.at + 1
    elif token.kind == DIGITS:
        side.clear = True
    return side
