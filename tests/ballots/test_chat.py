"""Comments that are only chat are told at once, and never otherwise than the long way tells them."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as some

from service.ballots.chat import is_chat
from service.ballots.language import Language
from service.ballots.languages import LANGUAGES
from service.ballots.normal import plain_of
from service.ballots.reader import NO_PAGE, read_thoroughly
from service.ballots.reading import Question
from service.chart.grid import Chart

CHART = Chart(9, 7)
SEVEN = ("en", "fr", "de", "es", "it", "pt", "nl")


def chats(text: str, languages: tuple[str, ...] = ("en",)) -> bool:
    return is_chat(text, plain_of(text).text, languages)


@pytest.mark.parametrize(
    "text",
    [
        "Your stitches are so neat, I could watch this all day",
        "Greetings from a foggy island! 🌫️ xx",
        "That’s a gorgeous colour",
        "",
        "🎉🎉🎉",
        "the boats came in with the fog again and we had soup",
    ],
)
def test_chat_is_told_as_chat(text: str) -> None:
    assert chats(text)
    assert read_thoroughly(text, Question(CHART)) == NO_PAGE


@pytest.mark.parametrize(
    "text",
    [
        "42",
        "④",
        "🔟",
        "forty two",
        "the last one please",
        "bottom right corner",
        "Ⅻ",
        "XII",
        "page xx",
        "scrap my vote",
        "same as above",
        "still deciding",
        "> twelve\nagreed",
        "tolv",
        "стр",
        "十二",
        "row four",
    ],
)
def test_a_comment_that_may_tell_more_is_left_to_the_long_way(text: str) -> None:
    assert not chats(text)


def _words(language: Language) -> set[str]:
    phrases = {p for group in language.phrase_groups() for p in getattr(language, group)}
    spoken = {" ".join(phrase).replace("*", "fog") for phrase in phrases}
    return spoken | {word for phrase in phrases for word in phrase} | set(language.numbers)


EVERYDAY = sorted(" ".join(phrase) for phrase in LANGUAGES["en"].everyday)
ANY_WORDS = sorted(set[str]().union(*(_words(language) for language in LANGUAGES.values())))
ODD = ["fog", "Gustray", "XX", "mix", "!", "?", ",", "\n", '"', "'", "~", "👍", "&amp;", "<i>"]


@given(
    some.lists(
        some.one_of(
            some.sampled_from(EVERYDAY), some.sampled_from(ANY_WORDS), some.sampled_from(ODD)
        ),
        max_size=9,
    ),
    some.sampled_from([("en",), SEVEN, ("nl",), ("de", "fr")]),
)
def test_what_is_told_as_chat_says_nothing_on_the_long_way(
    words: list[str], languages: tuple[str, ...]
) -> None:
    text = " ".join(words)
    if chats(text, languages):
        assert read_thoroughly(text, Question(CHART, languages=languages)) == NO_PAGE


ENGLISH = LANGUAGES["en"]
BESIDE_LAST = sorted(
    {
        word
        for group in ("choice_before", "choice_after", "fillers", "everyday", "not_before", "page")
        for phrase in getattr(ENGLISH, group)
        for word in phrase
    }
)
WORDS = some.lists(some.sampled_from([*BESIDE_LAST, "fog", "week", "skein"]), max_size=5)
CALM = some.lists(some.sampled_from(["fog", "week", "the", "my", "soup", "we", "a"]), max_size=4)


@given(some.one_of(WORDS, CALM), some.one_of(WORDS, CALM), some.sampled_from([("en",), SEVEN]))
def test_last_that_is_told_as_chat_says_nothing_on_the_long_way(
    before: list[str], behind: list[str], languages: tuple[str, ...]
) -> None:
    text = " ".join([*before, "last", *behind])
    if chats(text, languages):
        assert read_thoroughly(text, Question(CHART, languages=languages)) == NO_PAGE


@pytest.mark.parametrize(
    ("text", "is_chat"),
    [
        ("it was so foggy last week here", True),
        ("we had my last skein of blue wool here", True),
        ("we had soup and then the last one here", False),
        ("fog or not I vote for the last boat here", False),
        ("we had soup and fog so last please", False),
        ("here is the page of the last boat", False),
    ],
)
def test_last_is_chat_only_where_no_page_is_meant(text: str, is_chat: bool) -> None:  # noqa: FBT001
    assert chats(text) is is_chat
