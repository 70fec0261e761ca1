"""bench.py pace: the range that says 8 times in 10 holds the true day about so often.

The logs are made by chance from a start that is told, so a run gives the same figures each time.
"""

from __future__ import annotations

import re
import statistics
from datetime import timedelta
from random import Random

import bench_pace
import pytest
from bench_pace import FIRST, KINDS, Kind, Made, true_day, try_kind

from tests.scripts.running import run_script, sentences

LOGS = 120


def test_the_range_holds_the_true_day_as_often_as_it_says() -> None:
    chance = Random(7)  # noqa: S311 - a simulation that can be repeated
    shares = {kind.name: try_kind(kind, LOGS, chance).share for kind in KINDS}
    # With 120 logs chance alone makes 3.7 of 100 either way (one standard deviation).
    assert all(70 <= share <= 90 for share in shares.values()), shares
    assert 77 <= statistics.fmean(shares.values()) <= 83, shares


def test_a_range_of_another_confidence_would_be_seen(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(bench_pace, "CONFIDENCE", 0.5)
    chance = Random(7)  # noqa: S311 - as above
    shares = [try_kind(kind, 40, chance).share for kind in KINDS]
    assert statistics.fmean(shares) < 65


def test_the_true_day_is_the_one_on_which_what_is_left_is_done() -> None:
    made = Made([5, 5, 3, 0, 4, 9], 2)
    last = FIRST + timedelta(days=1)
    assert [(true_day(made, last, left) - last).days for left in (1, 3, 4, 7, 8)] == [1, 1, 3, 3, 4]


@pytest.mark.parametrize("kind", KINDS, ids=lambda kind: kind.name)
def test_what_comes_after_the_log_is_hidden_from_the_forecast(kind: Kind) -> None:
    made = kind.make(Random(3), kind.weeks * 7)  # noqa: S311 - as above
    entries = kind.tell(made, Random(3))  # noqa: S311 - as above
    assert entries
    assert entries[-1].day < FIRST + timedelta(days=made.known)
    assert sum(entry.amount for entry in entries) <= sum(made.stitches[: made.known])
    assert len(made.stitches) > made.known + 100


def test_bench_prints_a_line_for_each_kind_and_the_mean() -> None:
    told = run_script("bench.py", "pace", "--logs", "3")
    assert told.returncode == 0, told.stderr
    *kinds, mean = told.stdout.splitlines()
    assert len(kinds) == len(KINDS)
    form = re.compile(
        r".+, \d+ weeks: \d+\.\d of 100 \(true day before it in \d+, after it in \d+, of \d+\), half "
        r"of the ranges within \d+ days"
    )
    assert [line for line in kinds if not form.fullmatch(line)] == []
    assert re.fullmatch(r"all kinds: \d+\.\d of 100", mean)


def test_logs_that_cannot_be_are_one_sentence() -> None:
    told = run_script("bench.py", "pace", "--logs", "none")
    assert (told.returncode, told.stdout) == (2, "")
    [sentence] = sentences(told.stderr)
    assert "'none'" in sentence
