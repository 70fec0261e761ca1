"""Who wrote a comment."""

from __future__ import annotations

from datetime import UTC, datetime

import pytest

from service.comments.comment import Comment
from service.comments.identity import voter_of
from service.comments.spans import Span

POSTED = Span.at(datetime(2026, 2, 27, 18, tzinfo=UTC))


def by(author: str, author_id: str | None = None, *, text: str = "12") -> Comment:
    return Comment(author, text, POSTED, author_id=author_id)


@pytest.mark.parametrize(
    ("one", "other"),
    [
        pytest.param("Gran T", "GRAN t", id="case"),
        pytest.param("Straße", "STRASSE", id="case of a letter that is two in capitals"),
        pytest.param("  Gran   T ", "Gran T", id="spaces"),
        pytest.param("maré de linhas", "mare\u0301 de linhas", id="an accent written apart"),
        pytest.param("\u200eGran T\u200f", "Gran T", id="marks of direction"),
    ],
)
def test_one_name_is_one_voter(one: str, other: str) -> None:
    assert voter_of(by(one)) == voter_of(by(other))


@pytest.mark.parametrize(
    ("one", "other"),
    [
        pytest.param("maré", "mare", id="accents are kept"),
        pytest.param("Annie", "Annie2", id="another name"),
        pytest.param("xX_Xx", "xXXx", id="signs are kept"),
    ],
)
def test_other_names_are_other_voters(one: str, other: str) -> None:
    assert voter_of(by(one)) != voter_of(by(other))


def test_an_id_tells_voters_of_one_name_apart() -> None:
    assert voter_of(by("Annie", "a-1")) != voter_of(by("Annie", "a-2"))


def test_an_id_is_one_voter_whatever_the_name() -> None:
    assert voter_of(by("Annie", "a-1")) == voter_of(by("Annie of the Hill", "a-1"))


def test_nobody_named_is_nobody_else() -> None:
    one, other = by("", text="12"), by("", text="14")
    assert voter_of(one) != voter_of(other)
    assert voter_of(one) == voter_of(by("", text="12"))
    assert voter_of(one) != voter_of(by("unnamed"))
