"""Times in tables: in one column or two, with what the headers and other rows say about them."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

import pytest

from service.comments.spans import Span
from tests.comments.conftest import COPIED, Read

NOON = Span.at(datetime(2026, 2, 27, 12, 0, 9, tzinfo=UTC))
LONG = Span(datetime(1970, 1, 1, tzinfo=UTC), COPIED)


def test_a_day_and_a_time_of_day_in_two_columns_are_one_time(read: Read) -> None:
    export = read(
        "Name;Datum;Uhrzeit;Kommentar\nGran T;27.02.2026;13:00:09;12\n", zone="Europe/Berlin"
    )
    assert export.comments[0].posted == NOON
    assert ("posted", "Datum + Uhrzeit") in export.mapping
    assert "Europe/Berlin" in " ".join(export.notes)


def test_a_header_that_names_utc_is_believed(read: Read) -> None:
    export = read("Name,Date (UTC),Comment\nGran T,2026-02-27 12:00:09,12\n", zone="Asia/Tokyo")
    assert export.comments[0].posted == NOON
    assert "times are in UTC" in export.notes[0]


def test_other_rows_settle_the_order_of_day_and_month(read: Read) -> None:
    export = read("name,date,comment\nGran T,3/2/2026,12\nAnnie,27/2/2026,8\n")
    day = datetime(2026, 2, 3, tzinfo=UTC)
    assert export.comments[0].posted == Span(day, day + timedelta(days=1, microseconds=-1))
    assert any("day first" in note for note in export.notes)


@pytest.mark.parametrize(
    ("edited", "expected"),
    [
        pytest.param("", None, id="empty"),
        pytest.param("false", None, id="a no"),
        pytest.param("0", None, id="no edits"),
        pytest.param("2026-02-27T12:00:09Z", None, id="the posting again"),
        pytest.param("2026-02-27T11:00:00Z", None, id="before the posting"),
        pytest.param("true", Span(NOON.earliest, COPIED), id="a mark without a time"),
        pytest.param("edited", Span(NOON.earliest, COPIED), id="a word"),
    ],
)
def test_what_an_edit_column_says(read: Read, edited: str, expected: Span | None) -> None:
    export = read(f"author,posted,edited,text\nGran T,2026-02-27T12:00:09Z,{edited},12\n")
    assert export.comments[0].edited == expected


def test_a_time_that_cannot_be_read_leaves_any_time_up_to_the_copying(read: Read) -> None:
    export = read("author,date,text\nGran T,whenever,12\nAnnie,2026-02-27T12:00:09Z,8\n")
    assert export.comments[0].posted == LONG
    assert any(
        "Times that cannot be read: 1" in note and "whenever" in note for note in export.notes
    )


def test_a_time_after_the_copying_is_pointed_out(read: Read) -> None:
    export = read("author,date,text\nGran T,2027-02-27T12:00:09Z,12\n")
    assert any("Times after the copying: 1" in note for note in export.notes)
