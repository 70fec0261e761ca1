"""Which words of a comment count: those that stood when the round closed."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

import pytest

from service.comments.comment import Comment
from service.comments.identity import KnownComment, Version, version_at
from service.comments.spans import Answer, Span

START = datetime(2026, 2, 27, 18, 0, tzinfo=UTC)


def at(hours: float) -> datetime:
    return START + timedelta(hours=hours)


def known(*versions: tuple[str, float, float]) -> KnownComment:
    made = tuple(Version(text, Span(at(first), at(last))) for text, first, last in versions)
    return KnownComment("c1", Comment("Gran T", made[-1].text, made[0].written), made)


@pytest.mark.parametrize(
    ("versions", "closes", "text", "in_time"),
    [
        pytest.param([("12", 0, 0)], 5, "12", Answer.YES, id="written before"),
        pytest.param([("12", 0, 0)], -1, "12", Answer.NO, id="written after"),
        pytest.param([("12", 5, 5)], 5, "12", Answer.NO, id="written at the closing is late"),
        pytest.param([("12", 0, 0), ("14", 3, 3)], 5, "14", Answer.YES, id="edited in time"),
        pytest.param([("12", 0, 0), ("14", 6, 8)], 5, "12", Answer.YES, id="edited too late"),
        pytest.param(
            [("12", 0, 0), ("14", 5, 8)], 5, "12", Answer.YES, id="edited from the closing on"
        ),
        pytest.param(
            [("12", 0, 0), ("14", 4, 8)], 5, "14", Answer.CANNOT_TELL, id="edited before or after"
        ),
        pytest.param(
            [("12", 0, 0), ("14", 1, 2), ("20", 6, 7)], 5, "14", Answer.YES, id="the last in time"
        ),
        pytest.param([("12", 6, 6), ("14", 7, 7)], 5, "14", Answer.NO, id="all of them late"),
    ],
)
def test_the_words_that_stood_at_the_closing(
    versions: list[tuple[str, float, float]], closes: float, text: str, in_time: Answer
) -> None:
    found = version_at(known(*versions), at(closes))
    assert found.text == text
    assert found.written.is_before(Span.at(at(closes))) is in_time


def test_while_a_round_is_open_the_newest_words_stand() -> None:
    assert version_at(known(("12", 0, 0), ("14", 3, 9)), None).text == "14"
