"""Roman numerals: sure after a page word, to be looked at when one is all there is."""

from __future__ import annotations

from service.ballots.beside import read_before
from service.ballots.mentions import Mention, Standing
from service.ballots.relations import on_chart
from service.ballots.scanning import WORD
from service.ballots.scene import Scene

_ROMANS = frozenset(
    c + x + i
    for c in ("", "c", "cc", "ccc")
    for x in ("", "x", "xx", "xxx", "xl", "l", "lx", "lxx", "lxxx", "xc")
    for i in ("", "i", "ii", "iii", "iv", "v", "vi", "vii", "viii", "ix")
) - {""}
_ROMAN_VALUES = {"i": 1, "v": 5, "x": 10, "l": 50, "c": 100}


def may_be_roman(word: str) -> bool:
    """Whether the word is written with roman numerals' letters only."""
    return word in _ROMANS


def roman_at(scene: Scene, at: int) -> Mention | None:
    """A roman numeral: sure after a page cue, to be looked at when it is all there is."""
    token = scene.tokens[at]
    if token.kind != WORD or token.text not in _ROMANS:
        return None
    value = _roman_value(token.text)
    before = read_before(scene, at)
    if before.page and token.text != "i":
        mention = Mention(
            at, at + 1, value, "roman", Standing.CUED, "a roman numeral after a page word"
        )
        mention.cued_by_page = True
        return mention
    start, end = scene.plain.original(token.start, token.end)
    written = scene.text[start:end]
    words = scene.word_count()
    if (
        len(token.text) > 1
        and written.isupper()
        and (words == 1 or before.group == "choice_before")
    ):
        return Mention(at, at + 1, None, "roman", Standing.PLACED, "a bare roman numeral",
                       on_chart(scene.question.chart, (value,)))  # fmt: skip
    return None


def _roman_value(text: str) -> int:
    total = 0
    for letter, following in zip(text, [*text[1:], "i"], strict=True):
        value = _ROMAN_VALUES[letter]
        total += -value if value < _ROMAN_VALUES[following] else value
    return total
