"""Relative times against Unicode CLDR 47's patterns, as Babel 2.18 carries them.

Each unit from 1 to 60 is written in each language by CLDR's pattern and plural rule, and must
be read back as that unit. A second check holds wordings printed in CLDR's charts.
"""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from typing import Any

import pytest
from babel import Locale

from service.comments.spans import Span
from service.comments.times import read_time

COPIED = datetime(2026, 3, 5, 12, 0, tzinfo=UTC)
TICK = timedelta(microseconds=1)
SECONDS = {"second": 1, "minute": 60, "hour": 3600, "day": 86400, "week": 604800}
LANGUAGES = [
    "en",
    "fr",
    "de",
    "es",
    "it",
    "pt",
    "pt_PT",
    "nl",
    "sv",
    "pl",
    "ja",
    "da",
    "nb",
    "fi",
    "ru",
]


def written(language: str, unit: str, number: int, width: str = "") -> str:
    locale = Locale.parse(language)
    data: Any = locale._data
    forms = data["date_fields"][unit + width].get("past", {})
    pattern: str = forms.get(locale.plural_form(number)) or forms.get("other", "")
    return pattern.replace("{0}", str(number))


def long_ago(unit: str, number: int) -> Span:
    size = timedelta(seconds=SECONDS[unit])
    return Span(COPIED - (number + 1) * size + TICK, COPIED - number * size)


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("unit", SECONDS)
def test_every_number_of_a_unit_is_read_back(language: str, unit: str) -> None:
    for number in range(1, 61):
        text = written(language, unit, number)
        assert read_time(text, UTC, COPIED) == long_ago(unit, number), text


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize(("unit", "days"), [("month", 30), ("quarter", 90), ("year", 365)])
def test_months_and_more_are_read_back_without_gaps(language: str, unit: str, days: int) -> None:
    """Each span begins no later than the next one ends, so that no comment falls between."""
    spans = [read_time(written(language, unit, number), UTC, COPIED) for number in range(1, 61)]
    for number, span in enumerate(spans, 1):
        assert span is not None
        assert span.latest >= COPIED - timedelta(days=days * number)
        assert span.earliest <= COPIED - timedelta(days=days * (number + 1))


#: Languages that have short forms of their own; French "-5 s" is left out: a sign alone says too
#: little beside people's words.
SHORT = [
    pytest.param(text, unit, id=f"{language}{width} {unit}")
    for language in LANGUAGES
    for width in ("-short", "-narrow")
    for unit in SECONDS
    if (text := written(language, unit, 5, width)) and text[0] not in "-−"
]


@pytest.mark.parametrize(("text", "unit"), SHORT)
def test_a_short_form_covers_its_unit_even_where_it_stands_for_two(text: str, unit: str) -> None:
    span = read_time(text, UTC, COPIED)
    exact = long_ago(unit, 5)
    assert span is not None
    assert span.earliest <= exact.earliest
    assert span.latest >= exact.latest


def test_short_forms_of_many_languages_were_checked() -> None:
    assert len(SHORT) > 60


@pytest.mark.parametrize(
    ("text", "unit"),
    [
        ("2 hours ago", "hour"),
        ("il y a 2 heures", "hour"),
        ("vor 2 Stunden", "hour"),
        ("hace 2 horas", "hour"),
        ("2 ore fa", "hour"),
        ("há 2 horas", "hour"),
        ("2 uur geleden", "hour"),
        ("för 2 timmar sedan", "hour"),
        ("2 godziny temu", "hour"),
        ("2 時間前", "hour"),
        ("vor 2 Tagen", "day"),
        ("il y a 2 jours", "day"),
        ("2 dni temu", "day"),
        ("2日前", "day"),
    ],
)
def test_wordings_of_the_charts(text: str, unit: str) -> None:
    """Unicode CLDR charts, Date & Time, Fields: relative time patterns."""
    assert read_time(text, UTC, COPIED) == long_ago(unit, 2)
