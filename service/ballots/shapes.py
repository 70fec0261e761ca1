"""Numbers whose punctuation is part of them: ranges, fractions, sums, sizes, broken digits."""

from __future__ import annotations

import re

from service.ballots import stands
from service.ballots.beside import read_after, read_before
from service.ballots.mention import Mention
from service.ballots.scene import Scene
from service.ballots.surroundings import is_alone

#: As in "it's 9.30": no choice, where more is said.
_CLOCK = re.compile(r"(?:[01]?\d|2[0-3])\.[0-5]\d")
_FEW = 4
#: Among so many words "3-1" is a score.
_TALK = 3
SEVERAL = "several pages, and none is preferred"
#: Beyond the chart's pages such small numbers may still be multiplied: "9 x 9".
_TEN = 10


def judge_shape(scene: Scene, mention: Mention) -> None:
    """Set what a shaped number may mean, by its shape and the words beside it."""
    before = read_before(scene, mention.first)
    after = read_after(scene, mention.after)
    cued = before.page or before.group == "choice_before" or after.group == "choice_after"
    if mention.shape == "score":
        _score(scene, mention, cued=before.page or before.group == "choice_before")
        return
    counts = after.group == "other_after" and " " in scene.tokens[mention.first].text
    if mention.shape == "range" and counts and (before.page or before.group == "choice_before"):
        _placed(mention, "a page and a count", mention.maybe[0])
        return
    if after.group == "other_after" or (before.group == "other_before" and not before.page):
        mention.standing, mention.rule = stands.OTHER, "counts or measures something else"
        mention.maybe = ()
        return
    judges = {
        "range": _range, "fraction": _fraction, "sum": _sum, "size": _size,
        "decimal": _decimal, "broken": _broken, "kind": _decade,
    }  # fmt: skip
    judge_one = judges.get(mention.shape)
    if judge_one is not None:
        judge_one(scene, mention, cued=cued or before.number)


def _other(mention: Mention, rule: str) -> None:
    mention.standing, mention.rule, mention.maybe = stands.OTHER, rule, ()


def _placed(mention: Mention, rule: str, *pages: int) -> None:
    mention.standing, mention.rule, mention.maybe = stands.PLACED, rule, tuple(pages)


def _range(scene: Scene, mention: Mention, *, cued: bool) -> None:
    low, high = mention.maybe[0], mention.maybe[1]
    if low <= 1 and high == scene.last_page:
        _other(mention, "the question's own numbers said back")
    elif not cued and high < low < 10 and scene.word_count() >= _TALK:
        _other(mention, "a score")
    elif cued and low < 10 and high < 10 and (high < low or high == low + 1):
        _placed(mention, "digits parted by a dash", low, high, low * 10 + high)
    elif high - low == 2:
        _placed(mention, "a range, not one page", low + 1)
    else:
        _placed(mention, "a range, not one page")


def _fraction(scene: Scene, mention: Mention, *, cued: bool) -> None:
    values = mention.maybe
    top, bottom = values[0], values[1]
    if len(values) > 2 and all(value <= 31 for value in values[:2]) and values[2] > 31:
        _other(mention, "a date")
    elif len(values) == 2 and (top == bottom or (top, bottom) == (24, 7) or top == 0):
        _other(mention, "a score or a date")
    elif len(values) == 2 and not cued and bottom in {2, 3, 4, 5, 8, 10, 100} and top < bottom:
        _other(mention, "a fraction or a score")
    elif len(values) == 2 and bottom == scene.last_page and cued:
        mention.value, mention.standing, mention.maybe = top, stands.CUED, ()
        mention.rule = "out of all pages, chosen"
    elif len(values) == 2 and bottom == scene.last_page:
        _placed(mention, "out of all pages", top)
    else:
        _placed(mention, SEVERAL, *values)


def _score(scene: Scene, mention: Mention, *, cued: bool) -> None:
    """As in "we won 3:1"; "page 4:2" may be 4, 2 or 42."""
    left, right = mention.maybe[0], mention.maybe[1]
    if cued or not scene.word_count():
        _placed(mention, "digits parted by a colon", left, right, left * 10 + right)
    else:
        _other(mention, "a score")


def _sum(scene: Scene, mention: Mention, *, cued: bool) -> None:
    if mention.maybe[:1] and (cued or scene.word_count() <= 4 or is_alone(scene, mention)):
        less = "-" in scene.tokens[mention.first].text
        first, *others = mention.maybe
        _placed(mention, "a sum, not a page", first + (-1 if less else 1) * sum(others))
    else:
        _other(mention, "a sum of something else")


def _size(scene: Scene, mention: Mention, *, cued: bool) -> None:
    wide, high = mention.maybe[0], mention.maybe[1]
    chart = scene.question.chart
    product = wide * high
    spoken = cued or scene.word_count() <= 3 or mention.first == 0
    reckoned = product <= chart.page_count or max(wide, high) < _TEN
    if spoken and reckoned and {wide, high} != {chart.columns, chart.rows}:
        _placed(mention, "a sum, not a page", *scene.on_chart((product,)))
    else:
        _other(mention, "a size")


def _decimal(scene: Scene, mention: Mention, *, cued: bool) -> None:
    values = mention.maybe
    talk = scene.word_count() > _FEW
    comma = "," in scene.tokens[mention.first].text
    if comma and len(values) >= 2 and values[0] > 0 and (cued or is_alone(scene, mention)):
        _placed(mention, "a decimal or several pages", *values)
    elif cued and not (_CLOCK.fullmatch(scene.tokens[mention.first].text) and talk):
        mention.value, mention.standing = -1, stands.CUED
        mention.rule, mention.maybe = "a decimal is no page", ()
    elif is_alone(scene, mention) and scene.word_count() == 0:
        mention.value, mention.standing = -1, stands.ALONE
        mention.rule, mention.maybe = "a decimal is no page", ()
    else:
        _other(mention, "a size or a measure")


def _broken(scene: Scene, mention: Mention, *, cued: bool) -> None:
    if not cued and not is_alone(scene, mention):
        _other(mention, "digits in other talk")


def _decade(scene: Scene, mention: Mention, *, cued: bool) -> None:
    """As in "anything in the 20s"; "the 80s were grand" talks of years."""
    near = {token.text for token in scene.tokens[max(mention.first - 5, 0) : mention.first]}
    if not cued and scene.word_count() > 4 and not near & _ANY_OF:
        _other(mention, "years, not pages")


_ANY_OF = frozenset(
    "anything something somewhere anywhere one any page pages number whatever".split()
)
