"""What is usual among stitchers, held against what the program takes. Common practice, no source."""

from __future__ import annotations

import math
from datetime import date, timedelta

import pytest

from service.chart.grid import Cell, Chart, DesignSize, chart_of_design
from service.chart.stitches import ToldStitches, stitches_on, stitches_on_all
from service.pace.entry import Entry, check_entry
from service.pace.forecast import Finish, Outlook, finish_of, outlook
from service.pace.settled import settle_log

FIRST = date(2026, 1, 5)


@pytest.mark.parametrize(("wide", "high"), [(60, 100), (70, 70), (80, 80), (80, 100), (50, 80)])
def test_a_full_page_has_4000_to_8000_stitches(wide: int, high: int) -> None:
    """Common practice, no source: pages of 60 to 100 stitches each way, 4,000 to 8,000 a page."""
    chart = chart_of_design(DesignSize(wide * 9, high * 7, wide, high, overlap=3))
    assert chart.stitches_on(1) == wide * high
    assert 4_000 <= wide * high <= 8_000


def test_a_full_coverage_chart_has_50000_to_500000_stitches_on_20_to_200_pages() -> None:
    """Common practice, no source; and the edge pages are smaller, with an overlap or without."""
    for overlap in (0, 2, 5):
        chart = chart_of_design(DesignSize(600, 450, 70, 80, overlap))
        total = stitches_on_all(chart, ToldStitches(), chart.pages)
        assert total == 600 * 450
        assert 20 <= chart.page_count <= 200
        last = chart.page_at(Cell(chart.columns, chart.rows))
        assert last is not None
        assert chart.stitches_on(last) == (600 - 8 * 70) * (450 - 5 * 80)


@pytest.mark.parametrize("a_day", [100, 200, 300, 500, 1_000])
def test_a_usual_pace_finishes_a_usual_page_in_usual_time(a_day: int) -> None:
    """Common practice, no source: 100 to 300 a day usual, 500 to 1,000 a long day."""
    chart, told = Chart(9, 7), ToldStitches(every=5_600)
    log = [Entry(n + 1, FIRST + timedelta(n), "on the day", a_day, page=1) for n in range(5)]
    for entry in log:
        check_entry(entry, date(2027, 1, 1))
    # Five days of stitching, five of none, and so on: half the pace, for four weeks.
    later = [
        Entry(6 + n, FIRST + timedelta(10 + n), "on the day", a_day // 2, page=2) for n in range(10)
    ]
    settled = settle_log([*log, *later], {1: stitches_on(chart, told, 1), 2: 5_600})
    seen = outlook(settled, later[-1].day + timedelta(1))
    assert isinstance(seen, Outlook)
    finish = finish_of(seen, 5_600)
    assert isinstance(finish, Finish)
    days = (finish.middle - later[-1].day).days
    assert days == math.ceil(5_600 / (a_day / 2))


def test_a_fortnight_over_all_pieces_is_taken_as_one_update() -> None:
    """Common practice, no source: 5,000 to 15,000 stitches in a fortnight over all pieces."""
    for stitches in (5_000, 15_000):
        entry = Entry(1, FIRST, "since last time", stitches, piece="The winter runner")
        check_entry(entry, FIRST)
        assert settle_log([entry], {}).brought[0].stitches == stitches
