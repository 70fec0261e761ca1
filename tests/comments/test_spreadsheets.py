# ruff: noqa: DTZ001 - a cell holds local times, without a zone
"""Spreadsheets: dates and numbers as they are kept, the right sheet, and no bomb goes off."""

from __future__ import annotations

import io
import tracemalloc
import zipfile
from datetime import UTC, date, datetime, time, timedelta
from typing import Any

import pytest
from openpyxl import Workbook

from service.comments.formats import Export, Source
from service.comments.intake import read_export
from service.comments.spans import Span
from service.errors import BadExport, EmptyExport
from tests.comments.conftest import COPIED, TICK, Read
from tests.comments.sheets import cell, empty, ods, ods_of, row, words, xlsx, zipped

HEAD = ["author", "posted", "text"]


def spans(export: Export) -> list[Span]:
    return [one.posted for one in export.comments]


def local(*parts: int, lasts: timedelta = timedelta(0)) -> Span:
    start = datetime(*parts, tzinfo=UTC)  # type: ignore[misc,arg-type]
    return Span(start, start + max(lasts - TICK, timedelta(0)))


MINUTE, DAY = timedelta(minutes=1), timedelta(days=1)


@pytest.mark.parametrize(
    ("value", "form", "span"),
    [
        (datetime(2026, 2, 27, 12, 0, 9), "yyyy-mm-dd h:mm:ss", local(2026, 2, 27, 12, 0, 9)),
        (datetime(2026, 2, 27, 12, 0), "dd/mm/yyyy hh:mm:ss", local(2026, 2, 27, 12)),
        (datetime(2026, 2, 27, 12, 0), "d. mmmm yyyy hh:mm", local(2026, 2, 27, 12, lasts=MINUTE)),
        (datetime(2026, 2, 27, 12, 0, 9), "dd/mm/yyyy hh:mm", local(2026, 2, 27, 12, 0, 9)),
        (datetime(2026, 2, 27), "dd/mm/yyyy hh:mm", local(2026, 2, 27, lasts=MINUTE)),
        (datetime(2026, 2, 27), "dd/mm/yyyy", local(2026, 2, 27, lasts=DAY)),
        (date(2026, 2, 27), '"the" d mmm "s"', local(2026, 2, 27, lasts=DAY)),
        (datetime(2026, 2, 27, 12, 0, 9), "dd/mm/yyyy", local(2026, 2, 27, 12, 0, 9)),
        (46080.5, "m/d/yy h:mm AM/PM", local(2026, 2, 27, 12, lasts=MINUTE)),
        (46080, "m/d/yy", local(2026, 2, 27, lasts=DAY)),
        ("2026-02-27T12:00:09+02:00", None, local(2026, 2, 27, 10, 0, 9)),
        ("27.2.2026 12:00", None, local(2026, 2, 27, 12, lasts=MINUTE)),
    ],
)  # fmt: skip
def test_a_time_in_xlsx_is_as_exact_as_its_cell(
    read: Read, value: Any, form: str | None, span: Span
) -> None:
    export = read(xlsx([HEAD, ["Gran T", (value, form), "12"]]))
    assert export.format == "spreadsheet"
    assert spans(export) == [span]


@pytest.mark.parametrize(
    ("told", "shown", "span"),
    [
        ("2026-02-27T12:00:09", "27.02.26 12:00:09", local(2026, 2, 27, 12, 0, 9)),
        ("2026-02-27T12:00:00", "27.02.26 12:00", local(2026, 2, 27, 12, lasts=MINUTE)),
        ("2026-02-27T12:00:00", "27.02.26 12:00:00", local(2026, 2, 27, 12)),
        ("2026-02-27T12:00:09.500000000", "12:00", local(2026, 2, 27, 12, 0, 9, 500000)),
        ("2026-02-27", "Feb. 26", local(2026, 2, 27, lasts=DAY)),
    ],
)
def test_a_time_in_ods_is_as_exact_as_its_cell(
    read: Read, told: str, shown: str, span: Span
) -> None:
    cells = (cell("string", "Gran T"), cell("date", shown, date_value=told), cell("string", "12"))
    assert spans(read(ods(words(*HEAD) + row(*cells)))) == [span]


def test_numbers_are_read_as_people_write_them(read: Read) -> None:
    numbers: list[Any] = [14, 14.0, 14.5, True, 1234567, 0.1]
    rows_of_numbers: list[list[Any]] = [["A", number] for number in numbers]
    export = read(xlsx([["author", "text"], *rows_of_numbers]))
    texts = ["14", "14", "14.5", "true", "1234567", "0.1"]
    assert [one.text for one in export.comments] == texts
    kinds = [
        cell("float", "14,00", value="14"),
        cell("float", "14", value="14.0"),
        cell("float", "14,5", value="14.5"),
        cell("boolean", "WAHR", boolean_value="true"),
        cell("currency", "1.234.567 €", value="1234567"),
        cell("percentage", "10%", value="0.1"),
    ]
    rows = "".join(row(cell("string", "A"), kind) for kind in kinds)
    assert [one.text for one in read(ods(words("author", "text") + rows)).comments] == texts


def test_days_and_times_may_stand_in_columns_of_their_own(read: Read) -> None:
    day, clock = (date(2026, 2, 27), "dd/mm/yyyy"), (time(12, 0, 9), "h:mm:ss")
    export = read(xlsx([["name", "date", "time", "text"], ["A", day, clock, "12"]]))
    assert spans(export) == [local(2026, 2, 27, 12, 0, 9)]
    cells = (
        cell("string", "A"),
        cell("date", "x", date_value="2026-02-27"),
        cell("time", "12:00", time_value="PT12H00M00S"),
        cell("string", "12"),
    )
    found = read(ods(words("name", "date", "time", "text") + row(*cells)))
    assert spans(found) == [local(2026, 2, 27, 12, lasts=MINUTE)]
    assert dict(found.mapping)["posted"] == "date + time"


def test_a_number_that_the_spreadsheet_has_rounded_is_no_id(read: Read) -> None:
    """Two ids that differ in their 17th digit are one number there, and would join strangers."""
    rows: list[list[Any]] = [["author id", "text"]]
    rows += [[1.2345678901234567e16, "12"], [1.2345678901234568e16, "14"]]
    export = read(xlsx(rows))
    assert [one.author_id for one in export.comments] == [None, None]
    assert any(
        "more than 15 digits: 2, left out" in note and "row 2" in note for note in export.notes
    )
    exact = row(cell("float", "x", value="12345678901234567"), cell("string", "12"))
    found = read(ods(words("author id", "text") + exact))
    assert [one.author_id for one in found.comments] == ["12345678901234567"]


def test_words_in_ods_keep_their_lines_and_lose_the_notes_beside_them(read: Read) -> None:
    inner = (
        '<table:table-cell office:value-type="string"><office:annotation><text:p>NOTE</text:p>'
        '</office:annotation><text:p>one<text:s text:c="3"/>two<text:tab/>x</text:p>'
        "<text:p>three<text:line-break/>four <text:a>at the hall</text:a><text:note>"
        "<text:p>FOOT</text:p></text:note>!</text:p></table:table-cell>"
    )
    comment = read(ods(words("author", "text") + row(cell("string", "Gran T"), inner))).comments[0]
    assert comment.text == "one   two\tx\nthree\nfour at the hall!"


def test_line_breaks_and_escapes_in_xlsx_are_read(read: Read) -> None:
    export = read(xlsx([["author", "text"], ["A", "12_x000D_\nplease"], ["B", "a_xb 8"]]))
    assert [one.text for one in export.comments] == ["12\nplease", "a_xb 8"]


def test_errors_in_cells_are_no_words(read: Read) -> None:
    export = read(xlsx([["author", "text"], ["A", "#N/A"], ["B", "12"]]))
    assert [one.text for one in export.comments] == ["12"]
    assert [one.place for one in export.unreadable] == ["row 2"]


def test_rows_keep_their_numbers_and_empty_ones_are_nothing(read: Read) -> None:
    export = read(
        xlsx([["The guild's vote"], [], HEAD, [], ["A", None, "12"], [], ["B", None, "8"]])
    )
    assert [one.place for one in export.comments] == ["row 5", "row 7"]
    assert any("row 1 (The guild's vote)" in note for note in export.notes)
    rows = row(empty(16384), times=3) + words(*HEAD) + row(empty(3), times=2) + words("A", "", "12")
    rows += row(empty(16384), times=1_048_569)
    assert [one.place for one in read(ods(rows)).comments] == ["row 7"]


def test_a_repeated_row_is_as_many_rows(read: Read) -> None:
    rows = words("author", "text") + row(cell("string", "12", times=2), times=3)
    assert [(one.place, one.author, one.text) for one in read(ods(rows)).comments] == [
        (f"row {number}", "12", "12") for number in (2, 3, 4)
    ]


def test_the_sheet_with_comments_is_found_and_another_can_be_named(read: Read) -> None:
    data = xlsx(
        [["summary"], ["of the round"]], Votes=[HEAD, ["A", None, "12"]], Old=[["x"], ["9"]]
    )
    export = read(data)
    assert [one.text for one in export.comments] == ["12"]
    assert "Of several sheets 'Votes' was read, not 'Sheet' or 'Old'." in export.notes
    source = Source("x", "UTC", COPIED, at="Old", columns=(("text", "x"),))
    assert [one.text for one in read_export(data, source).comments] == ["9"]
    with pytest.raises(BadExport, match="no sheet 'Vote': name one of these: Sheet, Votes, Old"):
        read_export(data, Source("x", "UTC", COPIED, at="Vote"))
    two = ods(words("summary"), Votes=words(*HEAD) + words("A", "", "12"))
    assert [one.text for one in read(two).comments] == ["12"]


def test_columns_can_be_named_and_the_mapping_given_again(read: Read) -> None:
    data = xlsx([["q", "w", ""], ["A", "8", "x"], ["B", "12", "y"]])
    export = read(data, columns=(("text", "w"), ("author", "1")))
    assert [(one.author, one.text) for one in export.comments] == [("A", "8"), ("B", "12")]
    assert read(data, columns=export.mapping).comments == export.comments


def test_an_empty_spreadsheet_is_empty(read: Read) -> None:
    for data in (xlsx([]), ods(row(empty(16384), times=1_048_576))):
        with pytest.raises(EmptyExport):
            read(data)


WHOLE = xlsx([HEAD, *(["A", None, f"{number} please"] for number in range(300))])
BOMB = '<?xml version="1.0"?><!DOCTYPE x [<!ENTITY a "ha"><!ENTITY b "&a;&a;&a;&a;">]><x>&b;</x>'


@pytest.mark.parametrize(
    ("data", "sentence"),
    [
        pytest.param(WHOLE[:-100], "cut off, locked or broken", id="cut off at its end"),
        pytest.param(WHOLE[: len(WHOLE) // 2], "cut off, locked or broken", id="half of it"),
        pytest.param(ods(words("text"))[:-30], "cut off, locked or broken", id="ods cut off"),
        pytest.param(ods_of(BOMB), "defines entities", id="entities in ods"),
        pytest.param(ods_of("<x>"), "cut off, locked or broken", id="broken XML in ods"),
        pytest.param(ods_of("\x00locked"), "cut off, locked or broken", id="locked ods"),
        pytest.param(zipped({"xl/workbook.xml": "<x/>"}), "is broken|cut off", id="no workbook"),
        pytest.param(
            zipped({"xl/workbook.xml": "<x/>", **{f"a{n}": "" for n in range(6000)}}),
            "holds 6,001 files", id="files without end",
        ),
        pytest.param(
            zipped({"xl/workbook.xml": b"<x>" + b" " * 6_000_000}),
            "unpacks to 6 MB in one place, and 5 MB are read", id="a list of sheets without end",
        ),
    ],
)  # fmt: skip
def test_what_cannot_be_read_is_one_sentence(read: Read, data: bytes, sentence: str) -> None:
    with pytest.raises(BadExport, match=sentence) as raised:
        read(data)
    assert str(raised.value).count("\n") == 0


def resized(data: bytes, size: int) -> bytes:
    """The archive with another size of its content in its directory."""
    told = zipfile.ZipFile(io.BytesIO(data)).getinfo("content.xml").file_size
    changed = data.replace(told.to_bytes(4, "little"), size.to_bytes(4, "little"))
    assert changed != data
    return changed


TWO_THOUSAND = ods(words("text") + words("12") * 2000)


def test_a_sheet_that_unpacks_to_too_much_is_refused_unread(read: Read) -> None:
    with pytest.raises(BadExport, match="unpacks to 400 MB in one place, and 300 MB are read"):
        read(resized(TWO_THOUSAND, 400_000_000))


def test_an_archive_that_lies_about_its_sizes_is_broken(read: Read) -> None:
    """What its directory tells is all that is unpacked, so a bomb cannot call itself small."""
    for size in (1000, 100_000):
        with pytest.raises(BadExport, match="cut off, locked or broken"):
            read(resized(TWO_THOUSAND, size))


def test_cells_at_the_far_corner_take_no_room(read: Read) -> None:
    """A sheet with three cells, far apart: nothing is laid out between them."""
    book = Workbook()
    sheet = book.active
    assert sheet is not None
    sheet["A1"], sheet["A2"], sheet["XFD40000"] = "text", "12", "far"
    out = io.BytesIO()
    book.save(out)
    tracemalloc.start()
    export = read(out.getvalue())
    peak = tracemalloc.get_traced_memory()[1]
    tracemalloc.stop()
    assert [one.text for one in export.comments] == ["12"]
    assert peak < 10_000_000


def test_repeats_without_end_take_no_room(read: Read) -> None:
    far = row(cell("string", "x" * 50, times=9_999_999)) + row(empty(9_999_999), times=9_999_999)
    export = read(ods(words("author", "text") + far + words("A", "12")))
    assert len(export.comments) <= 1
    with pytest.raises(BadExport):
        read(
            ods(
                f"<table:table-row><table:table-cell><text:p>{'<text:span>' * 5000}"
                f"{'</text:span>' * 5000}</text:p></table:table-cell></table:table-row>"
            )
        )


def test_a_document_of_another_kind_is_named(read: Read) -> None:
    for data, kind in (
        (zipped({"word/document.xml": "<x/>"}), "a text document"),
        (zipped({"a.txt": "12"}), "a zip archive"),
    ):
        with pytest.raises(BadExport, match=f"this is {kind}"):
            read(data)
    with pytest.raises(BadExport, match="this is no spreadsheet that can be read"):
        read("author,text\nA,12\n", form="spreadsheet")
