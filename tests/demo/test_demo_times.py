"""The demo's times follow from its exports, worked out again here."""

from __future__ import annotations

import csv
import json
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any
from zoneinfo import ZoneInfo

import pytest

STEPS = {
    "minute": timedelta(minutes=1),
    "hour": timedelta(hours=1),
    "day": timedelta(days=1),
}

Json = dict[str, Any]


def _instant(text: str) -> datetime:
    instant = datetime.fromisoformat(text)
    assert instant.tzinfo is not None, text
    return instant.astimezone(UTC)


def _written(expected: Json, number: int) -> list[tuple[datetime, datetime]]:
    spans = [it["written"] for it in expected["rounds"][number - 1]["comments"]]
    return [(_instant(earliest), _instant(latest)) for earliest, latest in spans]


def _span_of_age(age: str, copied: datetime) -> tuple[datetime, datetime]:
    """At least as many whole units before the copying as it says, and less than one more."""
    if age == "just now":
        return copied - STEPS["minute"], copied
    figure, unit, _ = age.split()
    step = STEPS[unit.removesuffix("s")]
    count = 1 if figure in {"a", "an"} else int(figure)
    return copied - (count + 1) * step, copied - count * step


def test_the_tables_comments_count_from_their_posting_or_last_edit(
    demo_folder: Path, demo_expected: Json
) -> None:
    with (demo_folder / "invented-round-1.csv").open(encoding="utf-8", newline="") as file:
        rows = list(csv.DictReader(file))
    instants = [_instant(row["edited_at"] or row["posted_at"]) for row in rows]
    assert _written(demo_expected, 1) == [(at, at) for at in instants]
    edits = [(row["posted_at"], row["edited_at"]) for row in rows if row["edited_at"]]
    assert edits
    assert all(_instant(posted) < _instant(edited) for posted, edited in edits)


def test_the_notes_count_from_their_publishing_or_update(
    demo_folder: Path, demo_expected: Json
) -> None:
    content = json.loads((demo_folder / "invented-round-2.json").read_text(encoding="utf-8"))
    notes = content["orderedItems"]
    instants = [_instant(note.get("updated", note["published"])) for note in notes]
    assert _written(demo_expected, 2) == [(at, at) for at in instants]
    published = [_instant(note["published"]) for note in notes]
    assert published == sorted(published, reverse=True)


def test_the_pasted_pages_ages_are_spans_before_the_copying(
    demo_game: Json, demo_expected: Json
) -> None:
    copied = _instant(demo_game["rounds"][2]["export"]["copied_at"])
    comments = demo_expected["rounds"][2]["comments"]
    for it, written in zip(comments, _written(demo_expected, 3), strict=True):
        earliest, latest = _span_of_age(it["age"], copied)
        # An edit at a time that the page does not tell: any time from the posting to the copying.
        assert written == (earliest, copied if it["edited"] else latest)


def test_the_pasted_page_is_oldest_first(demo_expected: Json) -> None:
    # Below the comment that the host keeps on top.
    begins = [earliest for earliest, _ in _written(demo_expected, 3)][1:]
    assert begins == sorted(begins)


@pytest.mark.parametrize("number", [1, 2, 3])
def test_the_rounds_local_times_are_these_instants(
    demo_game: Json, demo_expected: Json, number: int
) -> None:
    zone = ZoneInfo(demo_game["game"]["zone"])
    rules, told = demo_game["rounds"][number - 1], demo_expected["rounds"][number - 1]
    for end in ("opens", "closes"):
        local = datetime.fromisoformat(rules[end])
        assert local.tzinfo is None
        assert local.replace(tzinfo=zone).astimezone(UTC) == _instant(told[end])
    copied = _instant(rules["export"]["copied_at"])
    assert _instant(told["opens"]) < _instant(told["closes"]) < copied
    assert all(latest <= copied for _, latest in _written(demo_expected, number))


def test_the_clocks_change_while_round_2_is_open(demo_game: Json) -> None:
    zone = ZoneInfo(demo_game["game"]["zone"])
    opens, closes = (
        datetime.fromisoformat(demo_game["rounds"][1][end]).replace(tzinfo=zone)
        for end in ("opens", "closes")
    )
    assert (opens.utcoffset(), closes.utcoffset()) == (timedelta(0), timedelta(hours=1))


def test_the_tables_offsets_are_many(demo_folder: Path) -> None:
    with (demo_folder / "invented-round-1.csv").open(encoding="utf-8", newline="") as file:
        posted = [datetime.fromisoformat(row["posted_at"]) for row in csv.DictReader(file)]
    assert len({at.utcoffset() for at in posted}) >= 6
