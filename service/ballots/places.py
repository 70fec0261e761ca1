"""Places on the chart as mentions: first and last page, corners, the middle, rows and sides."""

from __future__ import annotations

from service.ballots import stands
from service.ballots.beside import read_after, read_before
from service.ballots.lexicon import ORDINAL, ROMAN, bits_of
from service.ballots.mentions import Mention
from service.ballots.relations import page_at
from service.ballots.roman import roman_at
from service.ballots.scanning import WORD
from service.ballots.scene import Scene
from service.ballots.surroundings import in_a_saying, is_alone
from service.chart.grid import CORNERS, Corner, centre_pages, corner_page

_SIDES = ("top", "bottom", "left", "right")
#: What each way of telling a place begins with: only that way is tried where it stands.
_ALL_SIDES = bits_of(*_SIDES)
_CORNERS = _ALL_SIDES | bits_of("corner")
_ENDS = bits_of("first", "last")
_MIDDLE = bits_of("middle")
_FROM_LAST = bits_of("told_from_last")
_COUNTED = bits_of("first", "last", *_SIDES) | ORDINAL
_LINES = bits_of("row", "column")
_PLACE_BITS = _CORNERS | _ENDS | _MIDDLE | _FROM_LAST | ORDINAL | ROMAN
#: In a comment of more words than this a place in passing is no choice.
_TALK = 12
#: In one of so few words a place is hardly in passing.
_BRIEF = 5


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
        mention = _row_or_column(scene, at) if counted else None
    if mention is None and sign & _CORNERS:
        mention = _corner(scene, at)
    if mention is None and sign & _ENDS:
        mention = _end(scene, at)
    if mention is None and sign & _MIDDLE:
        mention = _middle(scene, at)
    if mention is None and sign & ROMAN:
        mention = roman_at(scene, at)
    return mention


def _place(scene: Scene, mention: Mention, *, named: bool) -> Mention:
    """Judge a place by the words around it; `named`: a page word is part of it."""
    mention.after += scene.begins("whole_chart", mention.after)
    before = read_before(scene, mention.first)
    after = read_after(scene, mention.after)
    mention.cued_by_page = named
    if before.group == "not_before" or after.group == "not_after":
        mention.standing, mention.rule = stands.STRUCK, "ruled out"
    elif in_a_saying(scene, mention):
        mention.standing, mention.rule = stands.OTHER, "part of a saying"
    elif _of_something_else(scene, mention):
        corner = mention.value is not None and scene.word_count() <= _TALK and not named
        mention.standing = stands.UNSURE if corner else stands.OTHER
        mention.rule = "a place of something else"
    elif before.group == "roughly_before":
        mention.maybe = mention.maybe or ((mention.value,) if mention.value else ())
        mention.standing, mention.rule = stands.PLACED, "about there, not an exact page"
    elif before.group == "choice_before" or before.page or after.group == "choice_after":
        mention.standing, mention.rule = stands.CUED, "a place on the chart, chosen"
    elif before.group in {"other_before", "weak_before"} and not is_alone(scene, mention):
        talk = scene.word_count() > _TALK
        mention.standing = stands.OTHER if talk else stands.UNSURE
        mention.rule = "a place, perhaps only talked about"
    elif is_alone(scene, mention) or (named and (before.clear or before.group == "")):
        standing = stands.CUED if named else stands.ALONE
        mention.standing, mention.rule = standing, "a place on the chart"
    else:
        mention.standing, mention.rule = stands.UNSURE, "a place, perhaps only talked about"
    if mention.value is None and mention.standing > stands.PLACED:
        meant = mention.standing > stands.UNSURE or scene.word_count() <= _BRIEF
        mention.standing = stands.PLACED if meant else stands.OTHER
    return mention


def _of_something_else(scene: Scene, mention: Mention) -> bool:
    """As in "The corner of my chart", "the last page of the book" are of something else."""
    step = scene.begins("part_of", mention.after)
    behind = scene.tokens[mention.after + step : mention.after + step + 1]
    # "The last page of 63" is the chart's.
    return bool(step and behind) and behind[0].text != str(scene.last_page)


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
        elif tokens[at].text in {"hand", "most", "-"} and at + 1 < len(tokens):
            at += 1
        else:
            break
    return at, named


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
    pages = tuple(
        page
        for corner in CORNERS
        if set(names) <= set(corner.split()) and (page := corner_page(chart, corner))
    )
    mention = Mention(start, end, None, "place", maybe=tuple(sorted(pages)))
    return _place(scene, mention, named=False)


_AFTER_CORNER = frozenset("at in on the of to de da do en a la ist di del della dans".split())


def _one_corner(scene: Scene, start: int, end: int, name: str, *, named: bool) -> Mention | None:
    corner: Corner = next(corner for corner in CORNERS if corner == name)
    page = corner_page(scene.question.chart, corner)
    mention = Mention(start, end, page, "place")
    return _place(scene, mention, named=named)


def _end(scene: Scene, at: int) -> Mention | None:
    """As in "first page", "the very last page", "last one please"."""
    chart = scene.question.chart
    for group, value in (("first", 1), ("last", chart.page_count)):
        step = scene.begins(group, at)
        if not step:
            continue
        page = scene.begins("page", at + step)
        before = read_before(scene, at)
        if not page and before.group == "not_before" and scene.tokens[at + step : at + step + 1]:
            page = int(scene.tokens[at + step].text in {"one", "1"})
        if page:
            return _place(scene, Mention(at, at + step + page, value, "place"), named=True)
        if before.page or _is_chosen_end(scene, at, step, group):
            return _place(scene, Mention(at, at + step, value, "place"), named=True)
    return None


def _is_chosen_end(scene: Scene, at: int, step: int, group: str) -> bool:
    """As in "the last one please": chosen without a page word; "first!" alone may be a boast."""
    before, after = read_before(scene, at), read_after(scene, at + step)
    one = at + step < len(scene.tokens) and scene.tokens[at + step].text == "one"
    if one:
        after = read_after(scene, at + step + 1)
    asked = after.group == "choice_after" or before.group == "choice_before"
    return asked and before.clear and after.clear and (one or group == "last")


def _middle(scene: Scene, at: int) -> Mention | None:
    step = scene.begins("middle", at)
    if not step:
        return None
    end, named = _with_corner_words(scene, at + step)
    row = any(scene.begins(group, end) for group in ("row", "column"))
    pages = () if row else centre_pages(scene.question.chart)
    value = pages[0] if len(pages) == 1 and not row else None
    mention = Mention(at, end, value, "place", maybe=pages)
    return _place(scene, mention, named=named)


def _told_from_last(scene: Scene, at: int) -> Mention | None:
    step = scene.begins("told_from_last", at)
    if not step:
        return None
    count = scene.last_page
    mention = Mention(at, at + step, None, "place", maybe=scene.on_chart((count - 1,)))
    mention.standing = stands.PLACED
    mention.rule = "a page told from the last one"
    return mention


def _counted(scene: Scene, at: int) -> tuple[int, int]:
    """An ordinal or an end ("second", "2nd", "bottom") at `at`: its value, -1 the last; length."""
    token = scene.tokens[at]
    if token.kind == "ordinal":
        return int("".join(c for c in token.text if c.isdigit())[:4]), 1
    if token.text in scene.lexicon.ordinals:
        return scene.lexicon.ordinals[token.text], 1
    for group, value in (
        ("first", 1),
        ("top", 1),
        ("left", 1),
        ("last", -1),
        ("bottom", -1),
        ("right", -1),
    ):
        step = scene.begins(group, at)
        if step:
            return value, step
    return 0, 0


def _row_or_column(scene: Scene, at: int) -> Mention | None:
    """As in "third row, fourth column", "bottom row, second along", or a row alone."""
    first, step = _counted(scene, at)
    if not step:
        return None
    line = at + step
    is_row = bool(scene.begins("row", line))
    if not is_row and not scene.begins("column", line):
        return None
    end = line + 1
    second, after = _second_coordinate(scene, end)
    chart = scene.question.chart
    row, column = (first, second) if is_row else (second, first)
    pages = page_at(chart, row, column) if second else ()
    mention = Mention(at, after or end, None, "place", maybe=pages)
    return _place(scene, mention, named=bool(second))


def _second_coordinate(scene: Scene, at: int) -> tuple[int, int]:
    for place in range(at, min(at + 4, len(scene.tokens))):
        value, step = _counted(scene, place)
        if step:
            end = place + step
            if end < len(scene.tokens) and scene.tokens[end].kind == WORD:
                end += 1
            return value, end
    return 0, 0
