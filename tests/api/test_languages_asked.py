"""Languages are asked for by codes that are known, each once: a slip would lose votes unnoticed."""

from __future__ import annotations

import pytest

from service.ballots.languages import LANGUAGES
from tests.api.asking import QUESTION, assert_problem, done, make_game, votes
from tests.api.conftest import Service

REFUSED = [
    pytest.param(["xx"], r"languages/0: 'xx' is no language .*: use ar, cs, da, de", id="unknown"),
    pytest.param(["en", "eng"], r"languages/1: 'eng' is no language .* en, es", id="a slip"),
    pytest.param(["de", "fr", "de"], "'de' is there twice", id="twice"),
]


@pytest.mark.parametrize(("languages", "says"), REFUSED)
def test_a_count_in_languages_that_cannot_be_is_refused(
    service: Service, languages: list[str], says: str
) -> None:
    answer = service.host.count(votes("13"), QUESTION | {"languages": languages})
    assert_problem(answer, 422, says)


@pytest.mark.parametrize(("languages", "says"), REFUSED)
def test_a_text_is_not_read_in_languages_that_cannot_be(
    service: Service, languages: list[str], says: str
) -> None:
    asked = {"text": "12", "chart": {"columns": 9, "rows": 7}, "languages": languages}
    assert_problem(service.host.post("/read", asked), 422, says)


def test_a_game_may_be_in_every_language_that_votes_are_read_in(service: Service) -> None:
    every = sorted(LANGUAGES)
    assert len(every) > 20
    assert make_game(service.host, languages=every)["languages"] == every
    asked = {"text": "12", "chart": {"columns": 9, "rows": 7}, "languages": every}
    assert done(service.host.post("/read", asked))["pages"] == [12]
