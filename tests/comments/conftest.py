"""What the tests of comments share: an export read from bytes or text."""

from __future__ import annotations

import os
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Protocol

import pytest
from hypothesis import HealthCheck, settings

from service.comments.formats import Export, Format, Source
from service.comments.intake import read_export
from service.comments.times import read_time

EXPORTS = Path(__file__).parent.parent / "corpus" / "exports"
COPIED = datetime(2026, 3, 5, 18, 0, tzinfo=UTC)
#: A span holds both its ends: "less than" is up to the microsecond before.
TICK = timedelta(microseconds=1)
#: How many inputs each way of breaking an export is tried with; LOOPSTART_TEST_INPUTS says otherwise.
INPUTS = int(os.environ.get("LOOPSTART_TEST_INPUTS", "120"))
TRIED = settings(max_examples=INPUTS, deadline=None, suppress_health_check=[HealthCheck.too_slow])


class Read(Protocol):
    def __call__(
        self,
        content: bytes | str,
        *,
        name: str = ...,
        zone: str = ...,
        copied_at: datetime = ...,
        columns: tuple[tuple[str, str], ...] = ...,
        form: Format | None = ...,
    ) -> Export: ...


@pytest.fixture
def read() -> Read:
    """Reads an export as it would come from a game in the zone UTC, copied on 5 March 2026."""

    def reading(
        content: bytes | str,
        *,
        name: str = "comments",
        zone: str = "UTC",
        copied_at: datetime = COPIED,
        columns: tuple[tuple[str, str], ...] = (),
        form: Format | None = None,
    ) -> Export:
        whole = content.encode() if isinstance(content, str) else content
        return read_export(whole, Source(name, zone, copied_at, columns, form))

    return reading


@pytest.fixture(scope="session", autouse=True)
def languages_are_loaded() -> None:
    """The patterns of all languages are read once; no single test is measured by that."""
    read_time("3 days ago", UTC, COPIED)
    read_time("27 Feb 2026", UTC, COPIED)


@pytest.fixture
def exports() -> Path:
    """The folder with three exports as hosts hand them in."""
    return EXPORTS
