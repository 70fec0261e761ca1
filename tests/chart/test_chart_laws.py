"""What holds for every chart."""

from __future__ import annotations

from dataclasses import replace
from random import Random

from hypothesis import given, settings
from hypothesis import strategies as st

from service.chart.grid import (
    CORNERS,
    JOINED,
    ORDERS,
    Cell,
    Chart,
    Corner,
    DesignSize,
    Order,
    chart_of_design,
)
from service.chart.votable import NEXT_FROM, NextFrom, votable_pages

LAW = settings(max_examples=100, deadline=None)


def cells_of(columns: int, rows: int) -> list[Cell]:
    return [Cell(column, row) for column in range(1, columns + 1) for row in range(1, rows + 1)]


@st.composite
def charts(draw: st.DrawFn, *, holes: bool = True, longest: int = 9) -> Chart:
    columns = draw(st.integers(1, longest))
    rows = draw(st.integers(1, longest))
    no_page: frozenset[Cell] = frozenset()
    if holes:
        every = cells_of(columns, rows)
        no_page = draw(st.frozensets(st.sampled_from(every), max_size=len(every) - 1))
    return Chart(
        columns,
        rows,
        order=draw(st.sampled_from(ORDERS)),
        start=draw(st.sampled_from(CORNERS)),
        back_and_forth=draw(st.booleans()),
        no_page=no_page,
        joined=draw(st.sampled_from(JOINED)),
    )


sizes = st.builds(
    DesignSize,
    stitches_wide=st.integers(1, 500),
    stitches_high=st.integers(1, 500),
    page_wide=st.integers(20, 120),
    page_high=st.integers(20, 120),
    overlap=st.integers(0, 19),
)


@LAW
@given(charts())
def test_every_page_has_a_cell_of_its_own_and_every_cell_its_page_or_none(chart: Chart) -> None:
    cells = [chart.cell_of(page) for page in chart.pages]
    assert len(set(cells)) == len(cells) == chart.page_count
    assert set(cells) == set(cells_of(chart.columns, chart.rows)) - chart.no_page
    assert [chart.page_at(cell) for cell in cells] == list(chart.pages)
    assert all(chart.page_at(cell) is None for cell in chart.no_page)


@LAW
@given(charts())
def test_joined_goes_both_ways_and_never_to_the_page_itself(chart: Chart) -> None:
    for page in chart.pages:
        assert page not in chart.neighbours(page)
        assert all(page in chart.neighbours(other) for other in chart.neighbours(page))


@LAW
@given(charts())
def test_an_edge_joins_in_every_game_and_a_corner_only_adds(chart: Chart) -> None:
    edges = replace(chart, joined="edge")
    corners = replace(chart, joined="edge or corner")
    for page in chart.pages:
        assert edges.neighbours(page) <= corners.neighbours(page)
        assert edges.neighbours(page) == chart.edge_neighbours(page)


@LAW
@given(charts())
def test_starting_at_the_other_side_mirrors_the_chart(chart: Chart) -> None:
    high, side = chart.start.split()
    other_side = {"left": "right", "right": "left"}[side]
    other_high = {"top": "bottom", "bottom": "top"}[high]
    wide, tall = chart.columns + 1, chart.rows + 1

    def mirrored(cell: Cell) -> Cell:
        return Cell(wide - cell.column, cell.row)

    def upside_down(cell: Cell) -> Cell:
        return Cell(cell.column, tall - cell.row)

    for start, turned in (
        (f"{high} {other_side}", mirrored),
        (f"{other_high} {side}", upside_down),
    ):
        corner = next(corner for corner in CORNERS if corner == start)
        other = replace(chart, start=corner, no_page=frozenset(map(turned, chart.no_page)))
        for page in chart.pages:
            assert other.cell_of(page) == turned(chart.cell_of(page))
            assert other.neighbours(page) == chart.neighbours(page)


@LAW
@given(charts())
def test_down_is_across_with_rows_and_columns_exchanged(chart: Chart) -> None:
    def exchanged(cell: Cell) -> Cell:
        return Cell(cell.row, cell.column)

    start = {"top right": "bottom left", "bottom left": "top right"}.get(chart.start, chart.start)
    other = replace(
        chart,
        columns=chart.rows,
        rows=chart.columns,
        order="down" if chart.order == "across" else "across",
        start=next(corner for corner in CORNERS if corner == start),
        no_page=frozenset(map(exchanged, chart.no_page)),
    )
    assert [other.cell_of(page) for page in other.pages] == [
        exchanged(chart.cell_of(page)) for page in chart.pages
    ]


@LAW
@given(charts(holes=False))
def test_the_first_page_is_in_the_corner_and_back_and_forth_never_jumps(chart: Chart) -> None:
    first = chart.cell_of(1)
    assert (first.row == 1) == ("top" in chart.start) or chart.rows == 1
    assert (first.column == 1) == ("left" in chart.start) or chart.columns == 1
    if chart.back_and_forth:
        for page in range(1, chart.page_count):
            assert page + 1 in chart.edge_neighbours(page)


@LAW
@given(charts())
def test_cells_without_a_page_close_up_the_numbers_and_keep_their_order(chart: Chart) -> None:
    whole = replace(chart, no_page=frozenset())
    cells = [chart.cell_of(page) for page in chart.pages]
    numbers_on_the_whole = [whole.page_at(cell) or 0 for cell in cells]
    assert numbers_on_the_whole == sorted(numbers_on_the_whole)


@LAW
@given(sizes, st.sampled_from(ORDERS), st.sampled_from(CORNERS))
def test_every_stitch_of_a_design_is_on_exactly_one_page(
    size: DesignSize, order: Order, start: Corner
) -> None:
    chart = chart_of_design(size, order=order, start=start)
    on_pages = [chart.stitches_on(page) or 0 for page in chart.pages]
    assert sum(on_pages) == size.stitches_wide * size.stitches_high
    assert min(on_pages) >= 1
    assert max(on_pages) <= size.page_wide * size.page_high


@LAW
@given(charts(longest=5), st.sampled_from(NEXT_FROM), st.randoms(use_true_random=False))
def test_a_game_never_gets_stuck_and_ends_with_every_page_stitched(
    chart: Chart, next_from: NextFrom, luck: Random
) -> None:
    stitched: frozenset[int] = frozenset()
    previous = None
    for turn in chart.pages:
        votable = votable_pages(chart, stitched, next_from, previous)
        assert votable.pages
        assert votable.pages.isdisjoint(stitched)
        allowed = chart.neighbours(previous) if previous else frozenset(chart.pages)
        if next_from == "the previous page" and not votable.widened:
            assert votable.pages == allowed - stitched
        previous = luck.choice(sorted(votable.pages))
        stitched |= {previous}
        assert len(stitched) == turn
    assert votable_pages(chart, stitched, next_from, previous).pages == frozenset()


@LAW
@given(charts(holes=False, longest=5), st.sampled_from(NEXT_FROM), st.data())
def test_on_a_chart_without_gaps_each_page_after_the_first_is_joined_to_a_stitched_one(
    chart: Chart, next_from: NextFrom, data: st.DataObject
) -> None:
    start = data.draw(st.integers(1, chart.page_count))
    stitched, previous = frozenset({start}), start
    while votable := votable_pages(chart, stitched, next_from, previous).pages:
        assert all(chart.neighbours(page) & stitched for page in votable)
        previous = data.draw(st.sampled_from(sorted(votable)))
        stitched |= {previous}
    assert stitched == frozenset(chart.pages)
