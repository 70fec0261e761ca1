"""Dates of mail and of many exports, against RFC 5322, Internet Message Format (October 2008).

The values are from memory of the RFC: the examples of appendix A.1.1 and A.1.3, the letters of
section 4.3.
"""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

import pytest

from service.comments.spans import Span
from service.comments.times import read_time

COPIED = datetime(2026, 3, 5, tzinfo=UTC)


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("Fri, 21 Nov 1997 09:55:06 -0600", datetime(1997, 11, 21, 15, 55, 6, tzinfo=UTC)),
        ("Tue, 1 Jul 2003 10:52:37 +0200", datetime(2003, 7, 1, 8, 52, 37, tzinfo=UTC)),
        ("Thu, 13 Feb 1969 23:32:54 -0330", datetime(1969, 2, 14, 3, 2, 54, tzinfo=UTC)),
    ],
)
def test_the_examples_of_the_appendix(text: str, expected: datetime) -> None:
    assert read_time(text, UTC, COPIED) == Span.at(expected)


@pytest.mark.parametrize(
    ("letters", "hours"),
    [
        ("UT", 0),
        ("GMT", 0),
        ("EDT", -4),
        ("EST", -5),
        ("CDT", -5),
        ("CST", -6),
        ("MDT", -6),
        ("MST", -7),
        ("PDT", -7),
        ("PST", -8),
    ],
)
def test_the_letters_of_section_4_3_are_offsets(letters: str, hours: int) -> None:
    found = read_time(f"Fri, 21 Nov 1997 09:55:06 {letters}", UTC, COPIED)
    assert found == Span.at(datetime(1997, 11, 21, 9, 55, 6, tzinfo=UTC) - timedelta(hours=hours))


@pytest.mark.parametrize("letters", ["IST", "CET", "XYZ", "A"])
def test_other_letters_name_no_one_zone(letters: str) -> None:
    """Section 4.3: other letters "SHOULD be considered equivalent to -0000": nothing is known."""
    assert read_time(f"Fri, 21 Nov 1997 09:55:06 {letters}", UTC, COPIED) is None
