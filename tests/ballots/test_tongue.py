"""Which language a comment is plainly written in, told by its words."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from service.ballots import tongue
from service.ballots.languages import LANGUAGES
from service.ballots.lexicon import lexicon_of
from service.ballots.met import Met, how_many
from service.ballots.normal import plain_of
from service.ballots.scanning import WORD, scan
from service.ballots.tellings import Telling, tellings
from tests.ballots.heard import SEVEN

PLAIN = {
    "a page and a please": ("Strona 57 poproszę", "pl"),
    "a number word and greetings": ("tjugofem, hälsningar från en blåsig brygga", "sv"),
    "a number word alone": ("vierenveertig!", "nl"),
    "digits and please": ("42 por favor", "es"),
    "digits and thanks in Swedish": ("42 tack", "sv"),
    "digits and thanks in Norwegian": ("42 takk", "no"),
    "digits and thanks in Finnish": ("42 kiitos", "fi"),
    "digits and please in Turkish": ("42 lütfen", "tr"),
    "digits and please in Czech": ("42 prosím", "cs"),
    "digits and please in German": ("42 bitte", "de"),
    "digits and please in Dutch": ("42 alsjeblieft", "nl"),
    "digits and please in French": ("42 s'il te plaît", "fr"),
    "digits and please in Italian": ("42 per favore", "it"),
    "sixty as Danes say it": ("side tres, tak", "da"),
    "fifty-two as Danes say it": ("tooghalvtreds", "da"),
    "a Norwegian number": ("syttifire", "no"),
    "a spoken Finnish number": ("kakskytviis", "fi"),
    "a Czech number, ones first": ("dvaačtyřicet", "cs"),
    "Polish number words only": ("trzydzieści dwa", "pl"),
    "Turkish number words only": ("kırk iki", "tr"),
    "a German number": ("zweiundvierzig", "de"),
    "a French number": ("quarante-deux", "fr"),
    "an Italian number": ("ventotto", "it"),
    "a Portuguese number": ("quarenta e dois", "pt"),
    "a Dutch ordinal": ("de 12e pagina", "nl"),
    "a whole sentence of Dutch": ("ik ga deze keer voor 12, groetjes", "nl"),
    "a whole sentence of German": ("ich bin für die 12, liebe Grüße", "de"),
    "German with an English word": ("Hallo! Mein Team ist die 12, love you", "de"),
    "Swedish with an English word": ("Hej! Så fint, jag röstar på 12 please", "sv"),
    "Polish without accents": ("poprosze strone 12, dziekuje", "pl"),
    "Turkish without dots": ("tesekkurler, 12 olsun lutfen", "tr"),
    "Danish small words": ("jeg tager nummer to", "da"),
    "Norwegian, not Danish": ("jeg vil gjerne ha 12, takk for koselig video", "no"),
    "Danish, not Norwegian": ("jeg vil gerne have 12, tak for hyggelig video", "da"),
    "Swedish, not Danish": ("jag vill gärna ha 12, tack för mysig video", "sv"),
}

ENGLISH = {
    "nothing foreign": "I vote for 42, lovely video",
    "a foreign thank-you": "42 please, and danke for the video",
    "a foreign greeting": "Hola ladies! My vote is 42",
    "a foreign grandmother": "42 because my oma was born on that day",
    "a German dog": "my dachshund is called Vier, he says 42",
    "names": "Otto and Elli say 42",
    "a name that is a Turkish number": "Kirk says 42",
    "an Italian coffee": "having a venti latte while I watch, 42 please",
    "men": "42! the men are out on the boat",
    "fire": "by the fire with my stitching, 42",
    "side": "the left side is my favourite, 42",
    "to": "42 to start with",
    "die": "I could die of suspense! 42",
    "also": "also 42 for me",
    "a French phrase": "42, it is my raison d'etre",
    "ten": "ten please",
    "on": "on to 42",
    "if it is free": "42 if it's free",
}


def told(text: str, switched_on: tuple[str, ...] = SEVEN) -> tuple[str, ...]:
    return tongue.tongue_of(scan(plain_of(text).text), switched_on).codes


@pytest.mark.parametrize(("text", "code"), PLAIN.values(), ids=PLAIN)
def test_a_comment_plainly_in_a_language_is_told(text: str, code: str) -> None:
    assert told(text)[0] == code


@pytest.mark.parametrize(
    ("text", "code"),
    [case for case in PLAIN.values() if case[1] not in SEVEN],
    ids=[name for name, case in PLAIN.items() if case[1] not in SEVEN],
)
def test_it_is_told_in_an_english_round_too(text: str, code: str) -> None:
    assert told(text, ("en",))[0] == code


@pytest.mark.parametrize("text", ENGLISH.values(), ids=ENGLISH)
def test_an_english_comment_with_a_foreign_word_stays_english(text: str) -> None:
    assert told(text)[0] == "en"
    assert told(text, ("en",)) == ("en",)


@pytest.mark.parametrize("text", ["", "42", "42!!! 🎉", "xyzzy 42", "onze", "elf"])
def test_where_no_word_tells_all_switched_on_languages_are_read(text: str) -> None:
    assert told(text) == SEVEN
    assert told(text, ("en", "nl")) == ("en", "nl")


def test_english_is_always_read() -> None:
    assert told("42", ("de",)) == ("de", "en")
    assert told("42 bitte", ("de",)) == ("de", "en")
    assert told("I vote for 42, thank you", ("de",)) == ("en",)


def test_english_gives_way_to_another_language_that_is_as_likely() -> None:
    assert told("12 of 13") == ("nl", "en")
    assert told("12 of 13", ("en",)) == ("en",)


def test_languages_that_cannot_be_told_apart_are_read_together() -> None:
    assert told("acht") == ("de", "nl", "en")


def test_a_number_word_of_a_switched_on_language_is_read_in_an_english_comment() -> None:
    assert told("I vote for zweiundvierzig please") == ("en", "de")
    assert told("I vote for zweiundvierzig please", ("en", "nl")) == ("en",)


def test_a_number_word_that_is_an_ordinary_word_is_one_only_among_few_words() -> None:
    assert "de" in told("elf please")
    assert told("there is an elf on my shelf and he wants 42 please") == ("en",)


class Counting(dict[str, Telling]):
    """Counts how often it is asked."""

    asked = 0

    def get(self, key: str, *_: object) -> Telling | None:  # type: ignore[override]
        self.asked += 1
        return super().get(key)


def test_each_word_is_looked_up_once_however_often_it_is_said(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    known = Counting(tellings())
    monkeypatch.setattr(tongue, "tellings", lambda: known)
    monkeypatch.setattr(tongue, "_MET", Met(tongue._told_by))
    tokens = scan(plain_of("hallo ik ga voor 12, want dat is een mooie pagina").text)
    first = tongue.tongue_of(tokens, SEVEN)
    assert tongue.tongue_of(tokens + tokens, SEVEN) == first
    assert known.asked == sum(token.kind == WORD for token in tokens) == 10


@given(st.text(max_size=60), st.lists(st.sampled_from(sorted(LANGUAGES)), unique=True, max_size=4))
@settings(max_examples=200)
def test_whatever_the_text_known_languages_are_read_and_english_is_one(
    text: str, switched_on: list[str]
) -> None:
    codes = told(text, tuple(switched_on))
    assert "en" in codes
    assert len(codes) == len(set(codes))
    assert set(codes) <= set(LANGUAGES)


def test_the_words_of_a_mixture_of_languages_are_let_go_when_many_others_came() -> None:
    """Comments choose the mixture, so that whoever writes them could fill the memory."""
    kept = lexicon_of.cache_info().maxsize
    assert kept is not None
    for number in range(kept):
        lexicon_of((f"no language {number}",))
    tables = how_many()
    for number in range(2 * kept):
        lexicon_of((f"another {number}",))
    assert lexicon_of.cache_info().currsize == kept
    assert how_many() == tables


def test_a_word_that_many_languages_have_tells_least() -> None:
    points = {word: dict(tellings()[word].points) for word in ("bitte", "alle", "de")}
    assert points["bitte"] == {"de": 4}
    assert max(points["alle"].values()) < 4
    assert len(points["de"]) > 2
    assert set(points["de"].values()) == {1}
