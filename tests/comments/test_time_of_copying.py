"""The time of copying: told, else now, and never still to come."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

import pytest

from service.comments.copying import time_of_copying
from service.comments.times import zone_of
from service.errors import BadTime
from tests.comments.conftest import COPIED, Read

BERLIN = zone_of("Europe/Berlin")


def test_it_is_now_where_nothing_is_told() -> None:
    assert time_of_copying(None, BERLIN, COPIED) == COPIED


def test_it_is_local_or_has_its_offset() -> None:
    expected = COPIED - timedelta(hours=1)
    assert time_of_copying("2026-03-05T18:00", BERLIN, COPIED) == expected
    assert time_of_copying("2026-03-05T17:00:00Z", BERLIN, COPIED) == expected


def test_a_time_that_is_still_to_come_is_refused() -> None:
    with pytest.raises(BadTime, match="the time of copying is still to come"):
        time_of_copying("2026-03-05T18:05:01Z", BERLIN, COPIED)


def test_clocks_that_are_minutes_apart_agree() -> None:
    assert time_of_copying("2026-03-05T18:05:00Z", BERLIN, COPIED) == COPIED


@pytest.mark.parametrize(
    "export",
    [
        pytest.param("author,posted,text\nA,2026-03-05T18:00:01Z,12\n", id="a table"),
        pytest.param(
            "author,posted,edited,text\nA,2026-03-05,2026-03-06T10:00Z,12\n", id="an edit"
        ),
        pytest.param('[{"author": "A", "text": "12", "time": "2027-01-01T00:00:00Z"}]', id="JSON"),
        pytest.param("A\n6 Mar 2026\n12\nReply\nB\n4 Mar 2026\n8\nReply\n", id="a page"),
    ],
)
def test_comments_from_the_future_are_flagged(read: Read, export: str) -> None:
    told = [note for note in read(export).notes if "Times after the copying: 1" in note]
    assert len(told) == 1
    assert "check the time of copying and the zone" in told[0]


def test_comments_of_the_same_minute_are_none_from_the_future(read: Read) -> None:
    export = read(
        "author,posted,text\nA,2026-03-05 18:00,12\nB,2026-03-05,8\n",
        copied_at=datetime(2026, 3, 5, 18, 0, tzinfo=UTC),
    )
    assert not any("after the copying" in note for note in export.notes)
