"""Lists that say which place each page has: "1st: 70, 2nd: 12", "20 first, 10 second"."""

from __future__ import annotations

from itertools import pairwise

from service.ballots import stands
from service.ballots.mention import Mention
from service.ballots.scanning import END
from service.ballots.scene import Scene

_MARKS = frozenset({":", ".", ")", "-", "=", ").", ".)"})
_COUNTED = frozenset({"digits", "word"})
#: Why a number that gives another its place is none itself.
PLACE = "the place in a list"
#: So many words may stand between a page and the place it is given ("5 is my third").
_REACH = 4

Pair = tuple[Mention, Mention]


def read_numbering(scene: Scene, mentions: list[Mention]) -> None:
    """Numbers that only number others are set aside, and the others take their places."""
    if not [one for one in mentions if _may_number(scene, one)]:
        return
    pairs = list(pairwise(mentions))
    ahead = [(one, other) for one, other in pairs if _numbers_what_follows(scene, one, other)]
    behind = [(other, one) for one, other in pairs if _is_numbered_behind(scene, one, other)]
    _number_lines(scene, mentions)
    if _are_places(scene, ahead):
        _give_places(ahead, mentions)
    elif _are_places(scene, behind):
        _give_places(behind, mentions)
    _count_what_follows(scene, mentions)


def _may_number(scene: Scene, mention: Mention) -> bool:
    """Whether it is written as numbers are that number others: "1st", "1)", "2:"."""
    after = mention.after
    marked = after < len(scene.tokens) and scene.tokens[after].text in _MARKS
    return marked or "ordinal" in mention.shape


def _are_places(scene: Scene, ranked: list[Pair]) -> bool:
    """Whether these are places 1, 2 and so on, one of which may go without saying."""
    places = [place.value or 0 for place, _page in ranked]
    if places == [1]:
        page = ranked[0][1]
        return page.standing >= stands.UNSURE and scene.has("second", page.after, len(scene.tokens))
    several = len(ranked) > 1 and len(set(places)) == len(places)
    return several and min(places) >= 1 and max(places) <= len(places) + 1


def _give_places(ranked: list[Pair], mentions: list[Mention]) -> None:
    for place, page in ranked:
        place.standing, place.rule = stands.OTHER, PLACE
        page.rank = place.value or 0
        if stands.OTHER <= page.standing < stands.ALONE and page.value is not None:
            page.standing, page.rule = stands.ALONE, "a page in a numbered list"
    given = {page.rank for _place, page in ranked}
    missing = set(range(1, len(ranked) + 2)) - given
    left = [one for one in mentions if not one.rank and one.standing >= stands.BARE]
    if len(left) == 1 and len(ranked) > 1 and len(missing) == 1:
        left[0].rank = missing.pop()


def _numbers_what_follows(scene: Scene, place: Mention, page: Mention) -> bool:
    """As in "1st: 70", "2) page 12"."""
    tokens, at = scene.tokens, place.after
    if "ordinal" in place.shape and at + 1 < page.first and tokens[at + 1].text == ":":
        at += 1  # "first wish: 21"
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


def _is_numbered_behind(scene: Scene, page: Mention, place: Mention) -> bool:
    """As in "20 first", "5 is my third": an ordinal behind the page, nothing telling between."""
    if "ordinal" not in place.shape or "ordinal" in page.shape:
        return False
    between = scene.tokens[page.after : place.first]
    plain = scene.lexicon.group("fillers").firsts | scene.lexicon.group("being").firsts
    return len(between) < _REACH and all(token.text in plain for token in between)


def _number_lines(scene: Scene, mentions: list[Mention]) -> None:
    """As in "1. Hello / 2. I vote for page 29": the numbers that begin the lines."""
    tokens = scene.tokens
    begun = [
        one
        for one in mentions
        if one.shape == "digits"
        and (not one.first or (tokens[one.first - 1].kind == END and "\n" in tokens[one.first - 1].text))
        and one.after < len(tokens)
        and tokens[one.after].text in _MARKS
    ]  # fmt: skip
    if len(begun) > 1 and [one.value for one in begun] == list(range(1, len(begun) + 1)):
        for one in begun:
            one.standing, one.rule = stands.OTHER, PLACE


def _count_what_follows(scene: Scene, mentions: list[Mention]) -> None:
    """As in "my three: 2, 20, 74": how many pages follow."""
    for at, one in enumerate(mentions[:-2]):
        following = mentions[at + 1 :]
        colon = one.after < len(scene.tokens) and scene.tokens[one.after].text == ":"
        if colon and one.shape in _COUNTED and one.value == len(following):
            one.standing, one.rule = stands.OTHER, "how many pages follow"
