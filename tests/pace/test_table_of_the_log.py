"""The log as a table: out and in again without a loss, and no cell that a spreadsheet calculates."""

from __future__ import annotations

import csv
import io
from datetime import date
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from service.errors import BadLog
from service.pace.entry import HOWS, Details, Entry
from service.pace.table import COLUMNS, entries_of, table_of
from tests.pace.logs import day, entry, rest

#: Words that a host may write: a table keeps no blanks around them and no NUL.
WORDS = st.text(st.characters(exclude_categories=["Cs"], exclude_characters="\0"), max_size=12).map(
    str.strip
)
COUNTS = st.integers(0, 9_999)


@st.composite
def logs(draw: st.DrawFn) -> list[Entry]:
    many = draw(st.integers(1, 6))
    found: list[Entry] = []
    for number in range(1, many + 1):
        how = draw(st.sampled_from(HOWS))
        is_rest = how == "rest"
        page = None if is_rest else draw(st.none() | st.integers(1, 63))
        taken_back = draw(st.booleans()) and number > 1
        found.append(
            Entry(
                number=number,
                day=day(draw(st.integers(1, 300))),
                how=how,
                amount=0 if is_rest or taken_back else draw(COUNTS),
                page=page,
                piece="" if is_rest or page else draw(WORDS),
                details=Details(draw(COUNTS), draw(COUNTS), draw(COUNTS)),
                first=day(1) if is_rest else draw(st.none() | st.just(day(1))),
                corrects=draw(st.integers(1, number - 1)) if taken_back else None,
                taken_back=taken_back,
                note=draw(WORDS),
            )
        )
    return found


@given(logs())
def test_what_goes_out_comes_in_again(log: list[Entry]) -> None:
    assert list(entries_of(table_of(log))) == log


@given(logs())
def test_no_cell_is_taken_for_a_formula(log: list[Entry]) -> None:
    rows = list(csv.reader(io.StringIO(table_of(log), newline="")))
    cells = [cell for row in rows for cell in row if not cell.lstrip("-").isdigit()]
    assert not [cell for cell in cells if cell.startswith(("=", "+", "-", "@", "\t", "\r"))]
    assert rows[0] == list(COLUMNS)


def test_a_formula_is_kept_as_the_words_that_it_is() -> None:
    text = table_of([entry(1, 5, page=None, piece="=SUM(A1)", note="@home")])
    assert ",'=SUM(A1)," in text
    assert ",'@home" in text
    [kept] = entries_of(text)
    assert (kept.piece, kept.note) == ("=SUM(A1)", "@home")


def test_a_table_written_by_hand_needs_two_columns() -> None:
    [first, second] = entries_of("day,stitches,page\n2026-03-02,120,41\n\n2026-03-03,0,41\n")
    assert (first.day, first.how, first.amount) == (date(2026, 3, 2), "on the day", 120)
    assert (second.number, second.amount) == (2, 0)


def test_columns_in_any_order_semicolons_and_percent() -> None:
    text = (
        "\ufeffPage;Percent;Day;First day\r\n41;69,4 %;2026-03-02;\r\n;;2026-03-09;2026-03-03\r\n"
    )
    [percent, rested] = entries_of(text, start=7)
    assert (percent.how, percent.amount, percent.number) == ("percent", 6_940, 7)
    assert rested == rest(2, 8, number=8)


def test_corrections_name_the_rows_of_their_own_table() -> None:
    text = "entry,day,page,stitches,corrects\na,2026-03-02,41,5,\nb,2026-03-02,41,6,a\n"
    [wrong, right] = entries_of(text, start=30)
    assert (wrong.number, right.number, right.corrects) == (30, 31, 30)


WRONG: list[Any] = [
    pytest.param("", "no column|no row", id="empty"),
    pytest.param("day,stitches\n", "no row below its header", id="a header alone"),
    pytest.param("stitches,page\n5,41\n", "no column 'day'", id="no day"),
    pytest.param("day,stiches\n2026-03-02,5\n", "column 'stiches'", id="a slip in a header"),
    pytest.param("day,day\n2026-03-02,5\n", "two columns 'day'", id="a column twice"),
    pytest.param("day,stitches\n2.3.2026,5\n", "line 2: day is '2.3.2026'", id="a day otherwise"),
    pytest.param("day,stitches\n2026-02-30,5\n", "line 2: day is", id="no such day"),
    pytest.param("day,stitches\n,5\n", "line 2: there is no day", id="no day in a row"),
    pytest.param("day,stitches\n2026-03-02,many\n", "line 2: stitches is 'many'", id="no number"),
    pytest.param("day,stitches\n2026-03-02,٣\n", "line 2: stitches is", id="digits of elsewhere"),
    pytest.param(
        "day,stitches\n2026-03-02,1e9\n", "line 2: stitches is '1e9'", id="as an exponent"
    ),
    pytest.param("day,stitches\n2026-03-02,\n", "neither stitches nor percent", id="nothing told"),
    pytest.param("day,percent\n2026-03-02,most\n", "line 2: percent is 'most'", id="no percent"),
    pytest.param("day,percent\n2026-03-02,NaN\n", "line 2: percent is 'NaN'", id="not a number"),
    pytest.param("day,how,stitches\n2026-03-02,gladly,5\n", "told as 'gladly'", id="how"),
    pytest.param("day,stitches,corrects\n2026-03-02,5,9\n", "corrects entry 9", id="corrects none"),
    pytest.param("entry,day,stitches\n1,2026-03-02,5\n1,2026-03-03,5\n", "two entries 1", id="two"),
    pytest.param("day,stitches,taken back\n2026-03-02,5,maybe\n", "taken back is", id="maybe"),
    pytest.param(
        "day,stitches\n2026-03-02,5,7\n", "line 2: it has more cells", id="too many cells"
    ),
    pytest.param('day,stitches\n2026-03-02,"5\n', "this is no table", id="an open quote"),
]


@pytest.mark.parametrize(("text", "says"), WRONG)
def test_a_table_that_cannot_be_is_refused_with_its_line(text: str, says: str) -> None:
    with pytest.raises(BadLog, match=says) as told:
        entries_of(text)
    assert "\n" not in str(told.value)


@given(st.text(max_size=60))
def test_any_text_is_a_log_or_one_sentence(text: str) -> None:
    for whole in (text, "day,stitches,page\n" + text):
        try:
            entries_of(whole)
        except BadLog as trouble:
            assert str(trouble).endswith(".")  # noqa: PT017 - it may also be a log
