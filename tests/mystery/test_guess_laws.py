"""What holds for every comment and every answer."""

from __future__ import annotations

import unicodedata

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from service.mystery.answer import WANTS, Answer, GuessRules
from service.mystery.guess import GUESS_OUTCOMES, read_guess
from service.mystery.leaks import names_answer
from service.mystery.names import fold, words_of

TITLES = (
    "The Night Ferry over Vest Fjord",
    "Harbour Lanterns",
    "Salt & Rope",
    "Das müde Karussell",
    "The Tollkeeper's Geese",
)
#: Pieces that comments are made of: names, guess words, denials, chat, marks.
PIECES = st.sampled_from(
    [
        "The Night Ferry over Vest Fjord", "night ferry", "Maud Ferrisk", "is it", "not", "my mum says",
        "I think", "or", "and", "by", ",", "?", "\n", "> ", "🎉", "page 12", "it can't be", "the", "l'",
        "@anna", "#", "…", "no", "I agree with", "12", "月夜", "ﬁ", "'s", "~~", "(", ":",
    ]
)  # fmt: skip
COMMENTS = st.one_of(st.text(max_size=80), st.lists(PIECES, max_size=9).map(" ".join))


@settings(max_examples=150, deadline=None)
@given(COMMENTS, st.sampled_from(WANTS), st.integers(1, 3))
def test_any_text_can_be_read_and_the_evidence_stands_in_it(
    text: str, wants: str, names: int
) -> None:
    answer = Answer(TITLES[0], "Maud Ferrisk", ("Last Boat Over",))
    reading = read_guess(text, GuessRules(answer, wants, names))  # type: ignore[arg-type]
    assert reading.outcome in GUESS_OUTCOMES
    assert all(text[e.start : e.end] == e.text for e in reading.evidence)


@settings(max_examples=60, deadline=None)
@given(st.text(min_size=1, max_size=30), COMMENTS)
def test_any_answer_can_be_guessed_at(title: str, text: str) -> None:
    if not fold(title):
        return
    rules = GuessRules(Answer(title))
    assert read_guess(text, rules).outcome in GUESS_OUTCOMES
    assert read_guess(title, rules).outcome in ("right", "look", "none")


@pytest.mark.parametrize("title", TITLES)
@given(
    decorate=st.sampled_from(
        [str.upper, str.lower, str.title, lambda t: f"{t}!!!", lambda t: f"🎉 {t} 🎉"]
    ),
    form=st.sampled_from(["NFC", "NFD"]),
)
def test_the_bare_title_is_right_in_any_dress(title: str, decorate, form: str) -> None:  # type: ignore[no-untyped-def]
    text = unicodedata.normalize(form, decorate(title))  # type: ignore[arg-type]
    assert read_guess(text, GuessRules(Answer(title))).outcome == "right"


@settings(max_examples=60, deadline=None)
@given(COMMENTS)
def test_a_right_guess_names_the_answer_aloud(text: str) -> None:
    rules = GuessRules(Answer(TITLES[0], "Maud Ferrisk", ("Last Boat Over",)))
    if read_guess(text, rules).outcome == "right":
        assert names_answer(text, rules)


@settings(max_examples=100)
@given(st.text(max_size=60))
def test_words_stand_where_they_say_and_folding_twice_changes_nothing(text: str) -> None:
    assert fold(fold(text)) == fold(text)
    last = 0
    for word in words_of(text):
        assert last <= word.start < word.end <= len(text)
        last = word.end
        assert word.handle or word.form in ("and", "plus") or fold(text[word.start : word.end]) == word.form  # fmt: skip


@settings(max_examples=60, deadline=None)
@given(st.sampled_from([t for t in TITLES if t != "Salt & Rope"]), st.data())
def test_a_title_with_a_slip_is_never_lost(title: str, data: st.DataObject) -> None:
    """One letter taken out of a long word, or two swapped: right, or for the host to look at."""
    places = [i for w in words_of(title) if len(w.form) > 4 for i in range(w.start + 1, w.end - 1)]
    at = data.draw(st.sampled_from(places))
    swapped = title[:at] + title[at + 1] + title[at] + title[at + 2 :]
    for text in (title[:at] + title[at + 1 :], swapped):
        assert read_guess(text, GuessRules(Answer(title))).outcome in ("right", "look")
