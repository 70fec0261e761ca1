"""Which column of a table holds what: by the headers' meaning, else by what stands in them."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence, Set
from dataclasses import dataclass

from service.comments.column_content import Choosing, Column, by_content, is_header
from service.comments.column_names import NO_COLUMN, is_number, names_of, take_named
from service.comments.dates import Order, order_of
from service.comments.formats import MEANINGS, Meaning, Source
from service.comments.meanings import Known, meanings_of
from service.errors import NoTextColumn

#: Among how many of the first rows a header is looked for.
_HEADER_WITHIN = 10


@dataclass(frozen=True, slots=True)
class ColumnMap:
    """For each meaning its column, counted from 0.

    `names` are the headers, "column 1" and so on where there is none; no two are alike, so that
    `pairs` can be given again as they are. `clock` is a column
    with the time of day beside `posted`. `order` is what the dates show of day and month.
    `rivals` are the columns whose headers mean the same as one that was taken.
    """

    places: dict[Meaning, int]
    names: tuple[str, ...]
    has_header: bool
    clock: int | None = None
    order: Order | None = None
    in_utc: bool = False
    rivals: tuple[tuple[Meaning, tuple[int, ...]], ...] = ()

    @property
    def pairs(self) -> tuple[tuple[str, str], ...]:
        """Meanings with the headers they are read from, for the host."""
        told = {meaning: self.names[place] for meaning, place in self.places.items()}
        if self.clock is not None and "posted" in told:
            told["posted"] += f" + {self.names[self.clock]}"
        return tuple((meaning, told[meaning]) for meaning in MEANINGS if meaning in told)

    def fields(self, cells: Sequence[str]) -> dict[str, str]:
        """A row's cells by their meanings; those that the row does not reach are left out."""
        found: dict[str, str] = {
            meaning: cells[place] for meaning, place in self.places.items() if place < len(cells)
        }
        if self.clock is not None and self.clock < len(cells) and found.get("posted"):
            found["posted"] = f"{found['posted'].strip()} {cells[self.clock].strip()}".strip()
        return found


def header_hits(cells: Sequence[str]) -> int:
    """How many of a first row's cells are names that headers of comments have."""
    return sum(1 for cell in cells if len(cell) <= 40 and meanings_of(cell))


def lines_above_header(rows: Sequence[Sequence[str]], named: Set[str] = frozenset()) -> int:
    """How many of a table's rows stand above its header, among the first ten; 0 without one.

    `named` are headers that the caller named. What stands above a header has fewer cells than it,
    or there are only two columns and it has no name of a comment's.
    """
    beginning = rows[:_HEADER_WITHIN]
    told = [
        place for place, row in enumerate(beginning) if named and named <= {*row, *names_of(row)}
    ]
    likely = [place for place, row in enumerate(beginning) if header_hits(row) > 1]
    both = [place for place in told if place in likely]
    for place in (*both, *told, *likely):
        row, above = rows[place], rows[:place]
        if len(row) != _usual_width(rows[place + 1 :] or rows):
            continue
        hits, filled = header_hits(row), _filled(row)
        plain = hits == filled == 2 and not any(map(header_hits, above))
        if plain or all(_filled(one) < filled for one in above):
            return place
    return 0


def _filled(row: Sequence[str]) -> int:
    return sum(1 for cell in row if cell.strip())


def map_columns(rows: Sequence[Sequence[str]], source: Source) -> ColumnMap:
    """The columns of a table from its first rows, at least one.

    Raises NoTextColumn where none holds texts, BadExport where `source.columns` names one that
    is not there.
    """
    has_header = _has_header(rows, dict(source.columns))
    width = len(rows[0]) if has_header else _usual_width(rows)
    names = names_of(rows[0] if has_header else ("",) * width)
    body = rows[1:] if has_header else rows
    columns = [
        Column(place, tuple(row[place].strip() if place < len(row) else "" for row in body))
        for place in range(width)
    ]
    choosing = Choosing(columns)
    clock = take_named(choosing, names, source)
    if has_header:
        by_name(choosing, [meanings_of(each) for each in names])
    if has_header and clock is None:
        clock = _clock(choosing, names)
    by_content(choosing, has_header=has_header)
    without_doubtful_ids(choosing)
    if "text" not in choosing.places:
        raise NoTextColumn(source.name, names)
    posted = choosing.places.get("posted")
    order = order_of(list(columns[posted].values)) if posted is not None else None
    in_utc = posted is not None and bool(re.search(r"\b(utc|gmt)\b", names[posted].casefold()))
    rivals = _rivals(choosing, names, source, clock) if has_header else ()
    return ColumnMap(choosing.places, names, has_header, clock, order, in_utc, rivals)


def _rivals(
    choosing: Choosing, names: Sequence[str], source: Source, clock: int | None
) -> tuple[tuple[Meaning, tuple[int, ...]], ...]:
    """For each meaning that its header gave the other filled columns that mean the same."""
    named = {meaning for meaning, _ in source.columns}
    free = [
        column.place
        for column in choosing.columns
        if column.filled and column.place not in {*choosing.places.values(), clock}
    ]
    found = (
        (meaning, tuple(each for each in free if meaning in meanings_of(names[each])))
        for meaning, place in choosing.places.items()
        if meaning not in named and meaning in meanings_of(names[place])
    )
    return tuple((meaning, others) for meaning, others in found if others)


def _usual_width(rows: Sequence[Sequence[str]]) -> int:
    widths = [len(row) for row in rows]
    return max(set(widths), key=lambda width: (widths.count(width), width))


def _has_header(rows: Sequence[Sequence[str]], named: dict[str, str]) -> bool:
    headers = [header for header in named.values() if header != NO_COLUMN]
    if any(header in rows[0] for header in headers):
        return True
    if headers and all(map(is_number, headers)):
        return header_hits(rows[0]) >= max(1, len(rows[0]) // 2) or is_header(rows)
    return bool(headers) or header_hits(rows[0]) > 0 or is_header(rows)


def by_name(choosing: Choosing, claims: Sequence[Mapping[Known, int]]) -> None:
    """Give each meaning the column with the surest name. `claims` are what the names may mean."""
    for meaning in MEANINGS:
        if not choosing.lacks(meaning):
            continue
        ranked = sorted(
            (claim[meaning], place)
            for place, claim in enumerate(claims)
            if meaning in claim and place not in choosing.not_free
        )
        if ranked:
            choosing.take(meaning, ranked[0][1])
    for place, claim in enumerate(claims):
        # What has a name of its own is no text only because nothing better was found.
        if claim and "text" not in claim:
            choosing.not_free.add(place)


def without_doubtful_ids(choosing: Choosing) -> None:
    """Leave out ids that stand for more than one comment: they are an author's or a page's."""
    place, text = choosing.places.get("id"), choosing.places.get("text")
    if place is None or text is None:
        return
    said: dict[str, set[str]] = {}
    for own, words in zip(
        choosing.columns[place].values, choosing.columns[text].values, strict=True
    ):
        if own:
            said.setdefault(own, set()).add(words)
    shared = sum(len(words) for words in said.values() if len(words) > 1)
    # A few may be edits of one comment, shown twice in one file.
    if shared <= len(choosing.columns[place].filled) // 5:
        return
    del choosing.places["id"]
    author = choosing.places.get("author")
    if author is None or "author_id" in choosing.places:
        return
    pairs = set(zip(choosing.columns[place].values, choosing.columns[author].values, strict=True))
    if len(pairs) == len(said):
        choosing.places["author_id"] = place


def _clock(choosing: Choosing, names: Sequence[str]) -> int | None:
    """The column with the time of day, where dates and times stand apart."""
    posted = choosing.places.get("posted")
    for place, each in enumerate(names):
        if place in choosing.places.values() or "clock" not in meanings_of(each):
            continue
        if posted is not None and choosing.columns[place].holds_clocks:
            choosing.not_free.add(place)
            return place
    return None
