"""Places on the chart as mentions: first and last page, corners, the middle, rows and sides."""

from __future__ import annotations

from functools import lru_cache

from service.ballots import stands
from service.ballots.beside import read_after, read_before
from service.ballots.coordinates import (
    counted_row_or_column,
    middle_of_line,
    numbered_row_or_column,
    page_in_line,
    row_or_column,
)
from service.ballots.lexicon import ORDINAL, ROMAN, bits_of
from service.ballots.mention import Mention
from service.ballots.placing import judge_place
from service.ballots.roman import roman_at
from service.ballots.scene import Scene
from service.ballots.surroundings import is_number
from service.chart.grid import CORNERS, Chart, Corner, centre_pages, corner_page

_SIDES = ("top", "bottom", "left", "right")
#: What each way of telling a place begins with: only that way is tried where it stands.
_ALL_SIDES = bits_of(*_SIDES)
_CORNERS = _ALL_SIDES | bits_of("corner")
_ENDS = bits_of("first", "last")
_MIDDLE = bits_of("middle")
_FROM_LAST = bits_of("told_from_last")
_COUNTED = bits_of("first", "last", *_SIDES) | ORDINAL
_LINES = bits_of("row", "column")
_PLACE_BITS = _CORNERS | _ENDS | _MIDDLE | _FROM_LAST | _LINES | ORDINAL | ROMAN


def find_places(scene: Scene) -> list[Mention]:
    """Every place the comment names, in order, judged."""
    numbered = "ordinal" in scene.kinds
    if not numbered and not scene.present & _PLACE_BITS:
        return []
    found: list[Mention] = []
    reached = 0
    for at, sign in enumerate(scene.signs):
        begun = sign & _PLACE_BITS or (numbered and scene.kinds[at] == "ordinal")
        mention = _place_at(scene, at) if begun and at >= reached else None
        if mention is not None and found and at == reached == mention.after - 1:
            mention = None  # "the last page first"
        if mention is not None:
            found.append(mention)
            reached = mention.after
    if not found:
        return found
    if any(one.value is not None and one.standing > stands.OTHER for one in found):
        return [one for one in found if one.value is not None or len(one.maybe) != 4]
    return found


def _place_at(scene: Scene, at: int) -> Mention | None:
    """The place that begins at this token, if one does."""
    sign = scene.signs[at]
    mention = _told_from_last(scene, at) if sign & _FROM_LAST else None
    if mention is None and scene.present & _LINES:
        counted = sign & _COUNTED or scene.kinds[at] == "ordinal"
        if counted:
            mention = page_in_line(scene, at) or row_or_column(scene, at)
        if mention is None and sign & _LINES:
            mention = numbered_row_or_column(scene, at) or counted_row_or_column(scene, at)
    if mention is None and sign & _CORNERS:
        mention = _corner(scene, at)
    if mention is None and sign & _ENDS:
        mention = _end(scene, at)
    if mention is None and sign & _MIDDLE:
        mention = _middle(scene, at)
    if mention is None and sign & ROMAN:
        mention = roman_at(scene, at)
    return mention


def _with_corner_words(scene: Scene, at: int) -> tuple[int, bool]:
    """The first token after optional "hand", "corner", "page", and whether a page was named."""
    named = False
    tokens = scene.tokens
    while at < len(tokens):
        step = scene.begins("corner", at)
        if step:
            at += step
        elif (step := scene.begins("page", at)) or (tokens[at].text in {"one", "square"}):
            at += step or 1
            named = True
        elif (step := _in_the_corner(scene, at)) > 0:
            at += step
        elif tokens[at].text in {"hand", "most", "-"} and at + 1 < len(tokens):
            at += 1
        else:
            break
    return at, named


def _in_the_corner(scene: Scene, at: int) -> int:
    """As in "nere till vänster i hörnet": how many tokens; 0 for none."""
    if scene.tokens[at].text not in _IN:
        return 0
    for behind in (at + 1, at + 2):
        step = scene.begins("corner", behind)
        if step:
            return behind + step - at
        if scene.lexicon.before(scene.tokens, behind)[0:1] != ("fillers",):
            return 0
    return 0


def _directions(scene: Scene, at: int) -> tuple[list[str], int]:
    """The directions named from `at` on, such as top and left, and the token after them."""
    names: list[str] = []
    tokens = scene.tokens
    end = at
    while at < len(tokens) and len(names) < 2:
        side = _side_at(scene, at) if scene.signs[at] & _ALL_SIDES else ""
        if side:
            names.append(side)
            at += scene.begins(side, at)
            end = at
        elif names and tokens[at].text in _BETWEEN_DIRECTIONS:
            at += 1
        else:
            break
    return names, end


def _side_at(scene: Scene, at: int) -> str:
    return next((name for name in _SIDES if scene.begins(name, at)), "")


_IN = frozenset("i in im en na w v nel no dans im hoek".split())
_BETWEEN_DIRECTIONS = frozenset(
    "- hand and the on in at to a à al la y et e en de da do und most i an till w v na och og den het , /".split()
)


def _corner(scene: Scene, at: int) -> Mention | None:
    """As in "top right", "bottom left corner page", "the corner at the top left", "any corner"."""
    tokens = scene.tokens
    start = at
    corner_first = scene.begins("corner", at)
    if corner_first:
        at += corner_first
        while at < len(tokens) and tokens[at].text in _AFTER_CORNER:
            at += 1
    names, end = _directions(scene, at)
    if not names and not corner_first:
        return None
    end, named = _with_corner_words(scene, end if names else start + corner_first)
    said_corner = corner_first or any(scene.begins("corner", place) for place in range(start, end))
    vertical = [name for name in names if name in {"top", "bottom"}]
    sideways = [name for name in names if name in {"left", "right"}]
    chart = scene.question.chart
    if len(vertical) == 1 and len(sideways) == 1:
        return _one_corner(scene, start, end, f"{vertical[0]} {sideways[0]}", named=named)
    if not said_corner:
        return None
    mention = Mention(start, end, None, "place", maybe=_corners_at(chart, tuple(names)))
    return judge_place(scene, mention, named=False)


# Much talk holds the word, and a chart is slow to look up.
@lru_cache(maxsize=256)
def _corners_at(chart: Chart, sides: tuple[str, ...]) -> tuple[int, ...]:
    """The pages of the corners on all of these sides, ascending."""
    found = (corner_page(chart, one) for one in CORNERS if set(sides) <= set(one.split()))
    return tuple(sorted(page for page in found if page))


_AFTER_CORNER = frozenset("at in on the of to de da do en a la ist di del della dans".split())


def _one_corner(scene: Scene, start: int, end: int, name: str, *, named: bool) -> Mention | None:
    corner: Corner = next(corner for corner in CORNERS if corner == name)
    page = corner_page(scene.question.chart, corner)
    mention = Mention(start, end, page, "place")
    return judge_place(scene, mention, named=named)


def _end(scene: Scene, at: int) -> Mention | None:
    """As in "first page", "the very last page", "last one please"."""
    chart = scene.question.chart
    for group, value in (("first", 1), ("last", chart.page_count)):
        step = scene.begins(group, at)
        if not step:
            continue
        page = scene.begins("page", at + step)
        if not page and _is_one_of_two(scene, at + step):
            return judge_place(scene, Mention(at, at + step, value, "place"), named=True)
        if not page and scene.lexicon.group("owning").before(scene.tokens, at - 1):
            continue  # "at 58 I do my last"
        before = read_before(scene, at)
        if not page and before.group == "not_before" and scene.tokens[at + step : at + step + 1]:
            page = int(scene.tokens[at + step].text in {"one", "1"})
        if page:
            return judge_place(scene, Mention(at, at + step + page, value, "place"), named=True)
        if group == "last" and _is_all_there_is(scene, at, step):
            rule = "the last one, perhaps the last page"
            return Mention(at, at + step, None, "place", stands.PLACED, rule, (value,))
        if before.page or _is_chosen_end(scene, at, step, group):
            return judge_place(scene, Mention(at, at + step, value, "place"), named=True)
    return None


def _is_one_of_two(scene: Scene, behind: int) -> bool:
    """As in "first or last page": the page word stands behind the other one, and is of both."""
    either = scene.begins("either", behind)
    if not either:
        return False
    at = behind + either
    at += scene.begins("fillers", at)
    return any(
        (step := scene.begins(group, at)) and scene.begins("page", at + step)
        for group in ("first", "last")
    )


def _is_all_there_is(scene: Scene, at: int, step: int) -> bool:
    """As in "Die letzte": nothing but an article stands beside it."""
    words = scene.word_count() - step
    article = at == 1 and scene.lexicon.before(scene.tokens, 0)[0] == "fillers"
    return words == at and article


def _is_chosen_end(scene: Scene, at: int, step: int, group: str) -> bool:
    """As in "the last one please": chosen without a page word; "first!" alone may be a boast."""
    before, after = read_before(scene, at), read_after(scene, at + step)
    one = at + step < len(scene.tokens) and scene.tokens[at + step].text == "one"
    if one:
        after = read_after(scene, at + step + 1)
    elif at + step < len(scene.tokens) and is_number(scene, at + step):
        return False  # "picked the last six tomatoes"
    asked = after.group == "choice_after" or before.group == "choice_before"
    return asked and before.clear and after.clear and (one or group == "last")


def _middle(scene: Scene, at: int) -> Mention | None:
    step = scene.begins("middle", at)
    if not step:
        return None
    end, named = _with_corner_words(scene, at + step)
    row = any(scene.begins(group, end) for group in ("row", "column"))
    if not row and scene.present & _LINES and (pages := middle_of_line(scene, at, end)):
        rule = "the middle of a row or a column"
        return Mention(at, end, None, "place", stands.PLACED, rule, pages)
    pages = () if row else centre_pages(scene.question.chart)
    value = pages[0] if len(pages) == 1 and not row else None
    mention = Mention(at, end, value, "place", maybe=pages)
    return judge_place(scene, mention, named=named)


def _nth(scene: Scene, at: int) -> int:
    """Third in "third to last"; "last but one" and "next to last" are the second."""
    told = scene.tokens[at].text
    digits = told.rstrip("abcdefghijklmnopqrstuvwxyz")
    if digits.isascii() and digits.isdigit():
        return int(digits[:4])
    return scene.lexicon.ordinals.get(told, 2)


def _told_from_last(scene: Scene, at: int) -> Mention | None:
    step = scene.begins("told_from_last", at)
    if not step:
        return None
    page = scene.last_page + 1 - _nth(scene, at)
    mention = Mention(at, at + step, None, "place", maybe=scene.on_chart((page,)))
    mention.standing = stands.PLACED
    mention.rule = "a page told from the last one"
    return mention
