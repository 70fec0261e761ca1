"""Lists that say which place each page has: "1st: 70, 2nd: 12", "20 first, 10 second"."""

from __future__ import annotations

from itertools import pairwise

from service.ballots.mentions import Mention, Standing
from service.ballots.scene import Scene

_MARKS = frozenset({":", ".", ")", "-", "=", ").", ".)"})
_COUNTED = frozenset({"digits", "word"})
_PLACE = "the place in a list"


def read_numbering(scene: Scene, mentions: list[Mention]) -> None:
    """Numbers that only number others are set aside, and the others take their order."""
    pairs = list(pairwise(mentions))
    for ahead in (True, False):
        ranked = [
            pair if ahead else pair[::-1]
            for pair in pairs
            if (_numbers_what_follows if ahead else _is_numbered_behind)(scene, *pair)
        ]
        places = [place.value for place, _page in ranked]
        if len(ranked) > 1 and places == list(range(1, len(ranked) + 1)):
            for place, page in ranked:
                place.standing, place.rule = Standing.OTHER, _PLACE
                page.rank = place.value or 0
                if Standing.OTHER <= page.standing < Standing.ALONE and page.value is not None:
                    page.standing, page.rule = Standing.ALONE, "a page in a numbered list"
            return
    _count_what_follows(scene, mentions)


def _numbers_what_follows(scene: Scene, place: Mention, page: Mention) -> bool:
    """As in "1st: 70", "2) page 12"."""
    tokens, at = scene.tokens, place.after
    marked = at < page.first and tokens[at].text in _MARKS
    if not marked and "ordinal" not in place.shape:
        return False
    at += marked
    while at < page.first:
        step = scene.begins("page", at) or scene.begins("fillers", at)
        if not step:
            return False
        at += step
    return True


def _is_numbered_behind(_scene: Scene, page: Mention, place: Mention) -> bool:
    """As in "20 first": an ordinal right behind the page."""
    return "ordinal" in place.shape and place.first == page.after and "ordinal" not in page.shape


def _count_what_follows(scene: Scene, mentions: list[Mention]) -> None:
    """As in "my three: 2, 20, 74": how many pages follow."""
    for at, one in enumerate(mentions[:-2]):
        following = mentions[at + 1 :]
        colon = one.after < len(scene.tokens) and scene.tokens[one.after].text == ":"
        if colon and one.shape in _COUNTED and one.value == len(following):
            one.standing, one.rule = Standing.OTHER, "how many pages follow"
