"""Sums in words: "7 times 8", "ten less than fifty". The host may work them out; none counts."""

from __future__ import annotations

from collections.abc import Callable
from itertools import pairwise

from service.ballots import stands
from service.ballots.counted import MEASURED
from service.ballots.mention import Mention
from service.ballots.scene import Scene

SUM = "a sum, not a page"
#: So many words beside it make the numbers part of other talk ("I went 3 times 2 years ago").
_FEW = 4
_RECKONING: tuple[tuple[str, Callable[[int, int], int]], ...] = (
    ("times", lambda left, right: left * right),
    ("plus", lambda left, right: left + right),
    ("minus", lambda left, right: left - right),
    ("divided_by", lambda left, right: left // right if right and not left % right else 0),
    ("less_than", lambda left, right: right - left),
)


def join_sums(scene: Scene, mentions: list[Mention]) -> None:
    """Two numbers that make up a sum are one mention of what it comes to."""
    for left, right in pairwise(mentions):
        counted = right.rule == MEASURED  # "3 times 2 summers ago"
        if counted or left.value is None or right.value is None:
            continue
        if not _is_said_as_a_sum(scene, left, right):
            continue
        for group, reckon in _RECKONING:
            if left.after + scene.begins(group, left.after) == right.first > left.after:
                left.standing, left.rule = stands.PLACED, SUM
                left.maybe = (reckon(left.value, right.value),)
                right.standing, right.rule = stands.OTHER, "part of a sum"


def _is_said_as_a_sum(scene: Scene, left: Mention, right: Mention) -> bool:
    words = scene.word_count() - (right.after - left.first)
    start, end = scene.clause(left.first, right.after)
    behind = end - right.after
    wished = behind > 0 and scene.begins("choice_after", right.after) == behind
    own_clause = start == left.first and (not behind or wished)
    return words <= _FEW or own_clause or left.standing == stands.CUED


def add_up(mentions: list[Mention]) -> None:
    """As in "5 kids, 9 grandkids, so 14": a number that others before it come to."""
    counted: list[int] = []
    for one in mentions:
        bare = stands.BARE <= one.standing <= stands.ALONE
        if bare and len(counted) > 1 and one.value == sum(counted) and not one.cued_by_page:
            one.standing, one.rule, one.maybe = stands.PLACED, SUM, (one.value,)
        elif one.standing == stands.OTHER and one.rule == MEASURED and one.value:
            counted.append(one.value)
