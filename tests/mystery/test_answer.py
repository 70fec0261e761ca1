"""An answer and the rules of guessing that cannot be are refused."""

from __future__ import annotations

import pytest

from service.errors import BadRules
from service.mystery.answer import Answer, GuessRules


@pytest.mark.parametrize("title", ["", "   ", "!!!", "🎉"])
def test_a_title_without_letters_is_refused(title: str) -> None:
    with pytest.raises(BadRules, match="title"):
        Answer(title)


def test_an_alias_without_letters_is_refused() -> None:
    with pytest.raises(BadRules, match="alias"):
        Answer("The Night Ferry", aliases=("Last Boat Over", "..."))


def test_an_unknown_wish_is_refused() -> None:
    with pytest.raises(BadRules, match="choose one"):
        GuessRules(Answer("The Night Ferry"), "designer")  # type: ignore[arg-type]


@pytest.mark.parametrize("wants", ["title and designer", "title or designer"])
def test_a_designer_is_needed_where_one_is_asked_for(wants: str) -> None:
    with pytest.raises(BadRules, match="no designer"):
        GuessRules(Answer("The Night Ferry"), wants)  # type: ignore[arg-type]


@pytest.mark.parametrize("names", [0, -1])
def test_no_names_a_comment_is_refused(names: int) -> None:
    with pytest.raises(BadRules, match="one name or more"):
        GuessRules(Answer("The Night Ferry"), names_per_comment=names)
