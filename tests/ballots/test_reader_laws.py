"""What holds for every text, whoever wrote it."""

from __future__ import annotations

import json
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from service.ballots import judging
from service.ballots.case import Case, Rule
from service.ballots.judging import ALL_RULES, ALL_RULES_OF_ORDINALS
from service.ballots.language import Language
from service.ballots.languages import LANGUAGES as LANGUAGE_DATA
from service.ballots.quick import harmless, read_quickly
from service.ballots.reader import read_thoroughly, read_vote
from service.ballots.reading import Question, Reading
from service.chart.grid import Chart

LANGUAGES = ("en", "fr", "de", "es", "it", "pt", "nl")
CHART = Chart(9, 7)
QUESTION = Question(CHART, 1, LANGUAGES)
CORPUS = Path(__file__).parents[1] / "corpus" / "votes.jsonl"
LINES = [json.loads(line) for line in CORPUS.read_text("utf-8").splitlines()[1:]]

#: Pieces of talk that, put together at random, make more trouble than random characters do.
PIECES = st.sampled_from(
    [
        "42", "7", "page", "pg", "no.", "#", "not", "or", "and", "between", "63", "0", "-5", "3.5",
        "12/13", "30-40", "6 x 7", "forty", "two", "first", "last", "corner", "top", "left", "the",
        "please", "no wait", "EDIT:", "ignore my vote", ">", "\n", "~~", '"', "(", ")", "?", "!",
        "４２", "٤٢", "4️⃣2️⃣", "🔟", "½", "Ⅻ", "XII", "l2", "2nd", "14ct", "11,000", "&amp;", "&#52;",
        "\u200f", "\u0336", "says", "my husband", "dritte", "soixante", "once", "二十三番", "if",
        "unless", "otherwise", "around", "under", "row", "column", "I'm", "at", "<3", "12:34", "@a1",
    ]
)  # fmt: skip
TALK = st.one_of(st.text(), st.lists(PIECES, max_size=12).map(" ".join))


def check(text: str, reading: Reading, question: Question) -> None:
    pages = question.chart.page_count
    assert all(1 <= page <= pages for page in reading.pages)
    assert len(set(reading.pages)) == len(reading.pages)
    assert (reading.reason is None) == (reading.outcome != "none")
    assert reading.why
    if reading.outcome == "counts":
        assert 1 <= len(reading.pages) <= question.choices
        assert {found.page for found in reading.evidence} >= set(reading.pages)
    for found in reading.evidence:
        assert text[found.start : found.end] == found.text
        assert found.text
        assert found.rule


@given(text=TALK, choices=st.integers(1, 3))
@settings(max_examples=400, deadline=None)
def test_no_text_breaks_the_reader(text: str, choices: int) -> None:
    question = Question(CHART, choices, LANGUAGES)
    check(text, read_vote(text, question), question)


@given(text=TALK)
@settings(max_examples=100, deadline=None)
def test_a_text_read_twice_reads_the_same(text: str) -> None:
    assert read_vote(text, QUESTION) == read_vote(text, QUESTION)


@pytest.mark.parametrize("line", LINES, ids=lambda line: line["id"])
def test_evidence_is_cut_from_the_comment_itself(line: dict[str, str]) -> None:
    check(line["text"], read_vote(line["text"], QUESTION), QUESTION)


@given(page=st.integers(1, 63), columns=st.integers(1, 9), rows=st.integers(1, 7))
@settings(max_examples=60, deadline=None)
def test_a_bare_number_is_that_page_or_off_the_chart(page: int, columns: int, rows: int) -> None:
    chart = Chart(columns, rows)
    reading = read_vote(str(page), Question(chart, 1, ("en",)))
    if page <= chart.page_count:
        assert (reading.outcome, reading.pages) == ("counts", (page,))
    else:
        assert (reading.outcome, reading.reason) == ("none", "off-chart")


#: Said around a choice, none of these says anything of it.
AROUND = ["Hello! ", "Hi everyone, ", "🎉 ", "❤️❤️ ", "Good morning. ", "Thank you! "]
AFTER = [" 🎉", " 😂😂", "\nThanks!", " ❤️", "! Thank you", ". Love this"]
PLAIN_VOTES = ["42", "page 42", "I vote for 42", "forty-two please", "42nd page", "can I have 42"]


@pytest.mark.parametrize("vote", PLAIN_VOTES)
@pytest.mark.parametrize("before", AROUND)
@pytest.mark.parametrize("after", AFTER)
def test_a_greeting_or_emoji_at_either_end_changes_nothing(
    vote: str, before: str, after: str
) -> None:
    for text in (before + vote, vote + after, before + vote + after):
        reading = read_vote(text, QUESTION)
        assert (reading.outcome, reading.pages) == ("counts", (42,)), text


@pytest.mark.parametrize("line", LINES, ids=lambda line: line["id"])
def test_emoji_behind_a_comment_never_turn_it_into_another_count(line: dict[str, str]) -> None:
    bare = read_vote(line["text"], QUESTION)
    decorated = read_vote(line["text"] + " 🎉", QUESTION)
    if bare.outcome == "counts":
        assert (decorated.outcome, decorated.pages) == ("counts", bare.pages)


HARMLESS = harmless()
NEAR = st.sampled_from(sorted(HARMLESS.words))
GAPS = st.sampled_from([" ", " ", " ", ", ", "! ", ". ", "!! 🎉 ", "... "])


@given(
    before=st.lists(st.tuples(NEAR, GAPS), max_size=4),
    number=st.tuples(st.sampled_from(["", "#"]), st.integers(1, 63)),
    after=st.lists(st.tuples(GAPS, NEAR), max_size=4),
)
@settings(max_examples=500, deadline=None)
def test_what_is_read_quickly_reads_the_same_the_long_way(
    before: list[tuple[str, str]], number: tuple[str, int], after: list[tuple[str, str]]
) -> None:
    text = "".join(word + gap for word, gap in before)
    text += f"{number[0]}{number[1]}" + "".join(gap + word for gap, word in after)
    quick = read_quickly(text, QUESTION)
    if quick is not None:
        thorough = read_thoroughly(text, QUESTION)
        assert (quick.outcome, quick.pages) == (thorough.outcome, thorough.pages)


@pytest.mark.parametrize("text", ["42", "page 42 please", "I would go for #42!", "42 🎉"])
def test_the_plainest_comments_are_read_quickly(text: str) -> None:
    assert read_quickly(text, QUESTION) is not None


@pytest.mark.parametrize(
    "text", ["not 42", "42 or 43", "42 skeins", "is 42 taken?", "my age, 42", "2. ladies"]
)
def test_a_comment_that_says_more_goes_the_long_way(text: str) -> None:
    assert read_quickly(text, QUESTION) is None


#: Words of every group of English and German, so that every rule is met.
PHRASES = sorted(
    {
        " ".join(phrase).replace("*", "fog")
        for code in ("en", "de")
        for group in Language.phrase_groups()
        for phrase in getattr(LANGUAGE_DATA[code], group)
    }
)
NUMBERS = st.sampled_from(
    ["42", "7", "1", "63", "64", "1980", "forty two", "one", "twelve", "2nd", "twelfth", "zwanzig"]
)
RULED = st.lists(st.one_of(st.sampled_from(PHRASES), NUMBERS, PIECES), max_size=9).map(" ".join)


@given(text=RULED)
@settings(max_examples=400, deadline=None)
def test_a_rule_that_is_not_asked_would_have_said_nothing(text: str) -> None:
    def every_rule(case: Case) -> tuple[Rule, ...]:
        return ALL_RULES_OF_ORDINALS if "ordinal" in case.mention.shape else ALL_RULES

    quickly = read_thoroughly(text, QUESTION)
    with pytest.MonkeyPatch.context() as patched:
        patched.setattr(judging, "rules_of", every_rule)
        assert read_thoroughly(text, QUESTION) == quickly
