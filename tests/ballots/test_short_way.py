"""What is left out for speed changes no reading: the short way reads as the long way does.

The reader asks a rule or begins a stage only where words stand that could make it say something,
keeps what it found out of a word, and cuts most of a text at its spaces. Each law here compares
that with asking everything, everywhere, anew.
"""

from __future__ import annotations

from collections.abc import Sequence

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from service.ballots import scanning, scene, tongue
from service.ballots.language import Language
from service.ballots.languages import LANGUAGES
from service.ballots.lexicon import GROUP_BITS, ORDINAL, ROMAN, Lexicon, lexicon_of
from service.ballots.met import LONGEST, MOST, Met, forget
from service.ballots.normal import plain_of
from service.ballots.reader import read_thoroughly, read_vote
from service.ballots.reading import Question
from service.ballots.scanning import WORD, Token, places_of, scan
from service.ballots.tellings import ENGLISH, tellings
from service.ballots.tongue import tongue_of
from service.chart.grid import Chart
from tests.ballots.heard import SEVEN

#: Every phrase of the languages that a round can switch on and of two others, and all that makes
#: trouble among them.
PHRASES = sorted(
    {
        " ".join(phrase).replace("*", "fog").replace("#", "9")
        for code in (*SEVEN, "pl", "ja")
        for group in Language.phrase_groups()
        for phrase in getattr(LANGUAGES[code], group)
    }
)
ENGLISH_PHRASES = sorted(
    {
        " ".join(phrase).replace("*", "fog").replace("#", "9")
        for group in Language.phrase_groups()
        for phrase in getattr(LANGUAGES["en"], group)
    }
)
NUMBERS = (
    "42 7 1 12 63 64 154 1980 #20 (12) 2nd 4,5 30-40 forty-two one twelve first zwanzig".split()
)
ODD = [
    *("fog", "Gustray", ",", ".", "?", "!", "\n", '"', "(", ")", ":", "-", "/", "x", "xx", "~~"),
    *(
        "> ",
        "'",
        "...",
        "!!",
        "\t",
        "\xa0",
        "£",
        "%",
        "+",
        "🎉",
        "&amp;",
        "4️⃣2️⃣",
        "no.",
        "seventeeen",
    ),
    *("12:30", "2x3", "page42", "42please", "14ct", "https://a.b/1", "@a1", "#tag", "<3", "nº"),
]
WORDS = st.one_of(
    st.sampled_from(ENGLISH_PHRASES),
    st.sampled_from(PHRASES),
    st.sampled_from(NUMBERS),
    st.sampled_from(ODD),
)
GAPS = st.sampled_from([" ", " ", " ", " ", ", ", ". ", "  ", ""])
TALK = st.lists(st.tuples(WORDS, GAPS), max_size=10).map(
    lambda pairs: "".join(word + gap for word, gap in pairs)
)
QUESTIONS = st.builds(
    Question,
    st.just(Chart(9, 7)),
    st.integers(1, 2),
    st.sampled_from([("en",), SEVEN, ("nl", "de")]),
)


@given(TALK, QUESTIONS)
@settings(max_examples=1000, deadline=None)
def test_whatever_is_not_asked_for_want_of_its_words_would_have_said_nothing(
    text: str, question: Question
) -> None:
    every = ORDINAL | ROMAN | sum(GROUP_BITS.values())
    signs_of = scene.signs_of

    def everything(tokens: Sequence[Token], lexicon: Lexicon) -> tuple[list[int], int]:
        signs, present = signs_of(tokens, lexicon)
        return [sign | every for sign in signs], present | every

    read = read_thoroughly(text, question)
    with pytest.MonkeyPatch.context() as patched:
        patched.setattr(scene, "signs_of", everything)
        assert read_thoroughly(text, question) == read


#: What goes on behind a space: "2 x 3", "5 %", "4 2", "£ 5", "1:30 pm".
REACHING = st.tuples(
    st.sampled_from(["fog", "£", "~~", "3,", ""]),
    st.sampled_from(["2", "12", "4.", "1:30", "2x", "7-"]),
    st.sampled_from(["x", "xx", "*", "-", "+", "~", "%", "$", "pm", "am,", "a", "5", "3,"]),
    st.sampled_from(["3", "4.", "=", "x", "fog", "~~", ""]),
).map(" ".join)


@given(st.one_of(TALK, REACHING, st.text("ab12 .,!?'\n-:/#()xé½❤７>~\"&;$%_\t", max_size=20)))
@settings(max_examples=900)
def test_a_text_cut_at_its_spaces_gives_the_tokens_of_the_whole(text: str) -> None:
    plain = plain_of(text).text
    whole: list[Token] = []
    scanning._scan_piece(plain, 0, len(plain), -1, whole)
    tokens = scan(plain)
    assert tokens == whole
    for token, place in zip(tokens, places_of(tokens, plain), strict=True):
        assert plain[place : place + token.size] == token.text


@given(TALK, st.sampled_from([("en",), SEVEN, ("nl", "de"), ("pl",)]))
@settings(max_examples=500)
def test_a_language_told_at_once_is_the_one_that_all_words_together_tell(
    text: str, switched_on: tuple[str, ...]
) -> None:
    tokens = scan(plain_of(text).text)
    words = sum(token.kind == WORD for token in tokens)
    assert tongue_of(tokens, switched_on).codes == tongue._weighed(tokens, words, switched_on)
    heard = tongue._heard(tokens)
    if sum(one.english for one in heard) > sum(one.abroad for one in heard):
        assert tongue._own_languages(heard, switched_on) == (ENGLISH,)


@given(st.sampled_from(sorted(tellings())), st.integers(1, 9))
def test_a_number_is_read_on_only_while_a_longer_word_of_one_begins_so(
    word: str, letters: int
) -> None:
    begun = word[:letters]
    lexicon = lexicon_of(("en",))
    longer = any(
        other.startswith(begun) and other != begun
        for words in (lexicon.numbers, lexicon.ordinals)
        for other in words
    )
    assert lexicon.may_go_on(begun) == longer


@given(TALK, QUESTIONS)
@settings(max_examples=100, deadline=None)
def test_a_comment_whose_words_were_met_reads_as_the_first_one(
    text: str, question: Question
) -> None:
    forget()
    first = read_vote(text, question)
    assert read_vote(text, question) == first


def test_no_more_words_are_kept_than_was_said_and_no_long_ones() -> None:
    asked: list[str] = []

    def find(word: str) -> int:
        asked.append(word)
        return len(word)

    met = Met(find)
    assert [met["fog"], met["fog"], met["f" * (LONGEST + 1)]] == [3, 3, LONGEST + 1]
    assert asked == ["fog", "f" * (LONGEST + 1)]
    assert list(met) == ["fog"]
    for number in range(MOST):
        assert met[str(number)] == len(str(number))
    assert len(met) <= MOST
    assert met["fog"] == 3
