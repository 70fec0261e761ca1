"""The demo's stitch log, read without the program's own readers, gives what was worked out by hand."""

from __future__ import annotations

import csv
import math
import statistics
from datetime import date, timedelta
from pathlib import Path
from typing import Any

import pytest
from scipy import stats

Json = dict[str, Any]


@pytest.fixture(scope="module")
def rows(demo_folder: Path, demo_game: Json) -> list[dict[str, str]]:
    with (demo_folder / demo_game["stitches"]["file"]).open(encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file, strict=True))


@pytest.fixture(scope="module")
def by_day(rows: list[dict[str, str]]) -> list[int]:
    """The stitches on page 41 of each day from the first to the last, empty days too."""
    told = {date.fromisoformat(row["day"]): int(row["stitches"]) for row in rows if row["page"]}
    first, last = min(told), max(told)
    days = [first + timedelta(days=number) for number in range((last - first).days + 1)]
    return [told.get(day, 0) for day in days]


def test_every_row_is_marked_as_invented(rows: list[dict[str, str]], demo_game: Json) -> None:
    assert {row["note"] for row in rows} == {"invented"}
    assert demo_game["stitches"]["file"].startswith("invented-")


def test_the_totals_are_those_that_were_added_up_by_hand(
    rows: list[dict[str, str]], by_day: list[int], demo_expected: Json, demo_game: Json
) -> None:
    told = demo_expected["stitches"]
    assert (sum(by_day), len(by_day)) == (told["done"], told["days"])
    assert demo_game["stitches"]["plan"]["every"] == told["total"] == told["done"] + told["left"]
    assert sum(int(row["stitches"]) for row in rows if row["piece"]) == told["other_pieces"]
    assert sum(int(row["backstitch"] or 0) for row in rows) == told["backstitch"]
    assert statistics.fmean(by_day) == told["a_day"]


def test_the_range_is_where_the_limits_of_the_days_to_come_reach_what_is_left(
    by_day: list[int], demo_expected: Json
) -> None:
    told = demo_expected["stitches"]
    last = date.fromisoformat(told["day"])
    many, mean, deviation = len(by_day), statistics.fmean(by_day), statistics.stdev(by_day)
    reach = float(stats.t.ppf(0.9, many - 1)) * deviation
    thousandths = [number / 1_000 for number in range(1, 20_000)]

    def reached(sign: int) -> float:
        """The first of many small steps at which so many stitches may be done."""
        return next(
            h
            for h in thousandths
            if mean * h + sign * reach * math.sqrt(h + h * h / many) >= told["left"]
        )

    assert last + timedelta(days=round(reached(1)) + 1) == date.fromisoformat(told["earliest"])
    assert last + timedelta(days=math.ceil(reached(0))) == date.fromisoformat(told["middle"])
    assert last + timedelta(days=round(reached(-1))) == date.fromisoformat(told["latest"])
