"""Pages told by their row and their column: "third row, fourth column", "row 3 column 6"."""

from __future__ import annotations

from service.ballots.mention import Mention
from service.ballots.placing import judge_place
from service.ballots.relations import page_at
from service.ballots.scanning import DIGITS, SOFT, WORD
from service.ballots.scene import Scene

#: The middle of a row is told so few tokens from it.
_BESIDE = 6


def row_or_column(scene: Scene, at: int) -> Mention | None:
    """As in "third row, fourth column", "bottom row, second along", or a row alone."""
    first, step = _counted(scene, at)
    if not step:
        return None
    line = at + step
    is_row = bool(scene.begins("row", line))
    if not is_row and not scene.begins("column", line):
        return None
    first, end = _counted_from(scene, first, line + 1)
    second, after = _second_coordinate(scene, end)
    chart = scene.question.chart
    row, column = (first, second) if is_row else (second, first)
    pages = page_at(chart, row, column) if second else ()
    mention = Mention(at, after or end, None, "place", maybe=pages)
    return judge_place(scene, mention, named=bool(second))


def _counted_from(scene: Scene, line: int, at: int) -> tuple[int, int]:
    """The line, and the token behind where it is counted from: "third row from the bottom"."""
    step = scene.begins("relative_after", at)
    end = at + step
    far = any(scene.begins(group, end - 1) for group in ("bottom", "right"))
    return (-line if step and far else line), end


def page_in_line(scene: Scene, at: int) -> Mention | None:
    """As in "last page in the second row", "third page of the bottom row"."""
    second, step = _counted(scene, at)
    page = scene.begins("page", at + step) if step and at + step < len(scene.tokens) else 0
    if not page:
        return None
    behind = at + step + page
    for place in range(behind, min(behind + 3, len(scene.tokens))):
        first, length = _counted(scene, place)
        line = place + length
        if not length or line >= len(scene.tokens):
            continue
        is_row = bool(scene.begins("row", line))
        if not is_row and not scene.begins("column", line):
            return None
        row, column = (first, second) if is_row else (second, first)
        pages = page_at(scene.question.chart, row, column)
        end = line + 1 + scene.begins("below", line + 1)
        return judge_place(scene, Mention(at, end, None, "place", maybe=pages), named=True)
    return None


def numbered_row_or_column(scene: Scene, at: int) -> Mention | None:
    """As in "row 3 column 6": both are told by numbers."""
    is_row = bool(scene.begins("row", at))
    first, line = _numbered(scene, at, "row" if is_row else "column")
    first, line = _counted_from(scene, first, line)
    while line < len(scene.tokens) and (
        scene.kinds[line] == SOFT or scene.begins("also", line) or _is_spare(scene, line)
    ):
        line += 1
    second, end = _numbered(scene, line, "column" if is_row else "row")
    if not second:
        second, end = _numbered(scene, line, "number")  # "row 6, number 2"
    if not first or not second:
        return None
    row, column = (first, second) if is_row else (second, first)
    pages = page_at(scene.question.chart, row, column)
    return judge_place(scene, Mention(at, end, None, "place", maybe=pages), named=True)


def counted_row_or_column(scene: Scene, at: int) -> Mention | None:
    """As in "第5行第3列": the numbers stand before the row and the column."""
    first = _counted_before(scene, at)
    if not first:
        return None
    is_row = bool(scene.begins("row", at))
    other = "column" if is_row else "row"
    for place in range(at + 1, min(at + 5, len(scene.tokens))):
        second = _counted_before(scene, place) if scene.begins(other, place) else 0
        if second:
            row, column = (first, second) if is_row else (second, first)
            pages = page_at(scene.question.chart, row, column)
            mention = Mention(at - 1, place + 1, None, "place", maybe=pages)
            return judge_place(scene, mention, named=True)
    return None


def _counted_before(scene: Scene, at: int) -> int:
    """The number glued before token `at`, 0 for none."""
    if at < 1 or not scene.tokens[at].glued:
        return 0
    token = scene.tokens[at - 1]
    return int(token.text[:4]) if token.kind == DIGITS else scene.lexicon.numbers.get(token.text, 0)


def middle_of_line(scene: Scene, at: int, end: int) -> tuple[int, ...]:
    """The pages in the middle of the row or the column told beside it: "middle of the top row"."""
    chart = scene.question.chart
    start, stop = scene.sentence(at)
    near = range(max(at - _BESIDE, start), min(end + _BESIDE, stop))
    line = next((place for place in near if _is_line(scene, place)), -1)
    if line < 0:
        return ()
    told = [
        _counted(scene, place)[0]
        for place in range(max(line - 2, start), min(line + 4, stop))
        if not at <= place < end
    ]
    which = next((one for one in told if one), 0)
    if not which:
        return ()
    if scene.begins("row", line):
        places = {(chart.columns + 1) // 2, chart.columns // 2 + 1}
        return tuple(page for place in sorted(places) for page in page_at(chart, which, place))
    places = {(chart.rows + 1) // 2, chart.rows // 2 + 1}
    return tuple(page for place in sorted(places) for page in page_at(chart, place, which))


def _is_line(scene: Scene, at: int) -> bool:
    return scene.begins("row", at) > 0 or scene.begins("column", at) > 0


def _is_spare(scene: Scene, at: int) -> bool:
    return scene.begins("fillers", at) > 0 and not scene.begins("number", at)


def _numbered(scene: Scene, at: int, group: str) -> tuple[int, int]:
    """The number of a row or a column told from `at` on, and the token after it; 0 for none."""
    step = scene.begins(group, at) if at < len(scene.tokens) else 0
    at += step
    if not step or at >= len(scene.tokens):
        return 0, at
    token = scene.tokens[at]
    if token.kind == DIGITS:
        return int(token.text[:4]), at + 1
    return scene.lexicon.numbers.get(token.text, 0), at + 1


def _second_coordinate(scene: Scene, at: int) -> tuple[int, int]:
    for place in range(at, min(at + 4, len(scene.tokens))):
        value, step = _counted(scene, place)
        if step:
            end = place + step
            told = scene.begins("relative_after", end)
            if not told and end < len(scene.tokens) and scene.tokens[end].kind == WORD:
                end += 1
            return _counted_from(scene, value, end)
    return 0, 0


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
