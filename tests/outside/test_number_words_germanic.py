"""Number words of northern, Slavic and Turkish comments, 1 to 200, as others publish them.

Sources:
- num2words 0.5.14, `num2words(number, lang=...)` for de, nl, sv, da, no, fi, pl, cs and tr. Not
  taken from it as right: sv 40 to 49 and 140 to 149, which it writes "förtio"; da 60 to 69 and 160
  to 169, which it writes "treds". Both are slips that people make too, so they are still read.
- Unicode ICU 72 (CLDR 42), rule set `%spellout-numbering`, by a run of PyICU 2.17 that is not
  repeated here: de and pl agree with num2words throughout, nl differs at 1 and 101 only ("een"),
  sv 40 to 49 are "fyrtio". Its soft hyphens were left out.
- Danish "tres", "tresindstyve" and the ordinals of its tens: from memory.
- Ordinals: num2words for de, nl, pl and tr; no other source for them was at hand.
"""

from __future__ import annotations

from collections.abc import Callable

import pytest
from num2words import num2words

from service.ballots.languages import LANGUAGES
from service.ballots.languages.spelling import joined
from service.ballots.reader import read_vote
from service.ballots.reading import Question
from service.chart.grid import Chart

NUMBERS = range(1, 201)
CODES = ("de", "nl", "sv", "da", "no", "fi", "pl", "cs", "tr")
VOTE = {
    "de": "Hallo, ich stimme für Seite {}, bitte. Vielen Dank",
    "nl": "Hallo, ik stem op pagina {} alsjeblieft. Dank je wel",
    "sv": "Hej, jag röstar på sida {}, tack så mycket",
    "da": "Hej, jeg stemmer på side {}, mange tak",
    "no": "Hei, jeg stemmer på side {}, tusen takk",
    "fi": "Hei, äänestän sivua {}, kiitos paljon",
    "pl": "Dzień dobry, głosuję na stronę {}, dziękuję",
    "cs": "Dobrý den, hlasuju pro stranu {}, prosím. Děkuji",
    "tr": "Merhaba, oyum sayfa {}, lütfen. Teşekkürler",
}
ORDINAL_VOTE = {
    "de": "Hallo, ich stimme für die {} Seite, bitte",
    "nl": "Hallo, ik stem op de {} pagina, alsjeblieft",
    "pl": "Dzień dobry, proszę, strona {}, dziękuję",
    "tr": "Merhaba, oyum {} sayfa, lütfen",
}
#: In a round in English alone: each of these is read because the comment is plainly in it.
ROUND = Question(Chart(20, 10))


def misread(
    votes: dict[str, str], code: str, spelled: Callable[[int], str], numbers: list[int]
) -> dict[str, str]:
    """The spellings that are read as another page or none, each with what was read."""
    wrong = {}
    for number in numbers:
        comment = votes[code].format(spelled(number))
        reading = read_vote(comment, ROUND)
        if (reading.outcome, reading.pages) != ("counts", (number,)):
            wrong[comment] = f"{reading.outcome} {reading.pages}"
    return wrong


@pytest.mark.parametrize("code", CODES)
def test_the_number_words_that_num2words_writes_are_read(code: str) -> None:
    assert misread(VOTE, code, lambda number: num2words(number, lang=code), list(NUMBERS)) == {}


@pytest.mark.parametrize("code", ["de", "nl", "sv", "fi"])
def test_they_are_read_when_typed_without_accents(code: str) -> None:
    plain = str.maketrans("äöüåéë", "aouaee")

    def bare(number: int) -> str:
        return str(num2words(number, lang=code)).translate(plain)

    assert misread(VOTE, code, bare, list(NUMBERS)) == {}


ICU_SV_UNITS = "ett två tre fyra fem sex sju åtta nio".split()


def fyrtio(number: int) -> str:
    """40 to 49 and 140 to 149 as ICU spells them."""
    unit = number % 10
    hundred = "etthundra" if number > 100 else ""
    return hundred + "fyrtio" + (ICU_SV_UNITS[unit - 1] if unit else "")


def test_the_swedish_forties_are_read_as_icu_spells_them() -> None:
    forties = [*range(40, 50), *range(140, 150)]
    assert all(num2words(number, lang="sv") != fyrtio(number) for number in forties)
    assert misread(VOTE, "sv", fyrtio, forties) == {}


DA_UNITS = "et to tre fire fem seks syv otte ni".split()


@pytest.mark.parametrize("sixty", ["tres", "tresindstyve"])
def test_the_danish_sixties_are_read_as_danes_spell_them(sixty: str) -> None:
    def spelled(number: int) -> str:
        unit = number % 10
        one = "en" if unit == 1 else DA_UNITS[unit - 1]
        return f"{one}og{sixty}" if unit else sixty

    assert misread(VOTE, "da", spelled, list(range(60, 70))) == {}


@pytest.mark.parametrize(("code", "words"), [("nl", {1: "een"}), ("pl", {1: "jedna", 2: "dwie"})])
def test_the_forms_that_icu_adds_are_read(code: str, words: dict[int, str]) -> None:
    assert misread(VOTE, code, words.__getitem__, list(words)) == {}


def german(number: int) -> str:
    """Before a page an ordinal ends in -e as num2words writes it, or -en: "die zwölfte Seite"."""
    return str(num2words(number, lang="de", to="ordinal"))


def polish(number: int) -> str:
    """A page is feminine: num2words writes the masculine."""
    words = str(num2words(number, lang="pl", to="ordinal")).split()
    return " ".join(
        word + "a" if word == "trzeci" else word[:-1] + "a" if word[-1] in "yi" else word
        for word in words
    )


def dutch_or_turkish(code: str) -> Callable[[int], str]:
    return lambda number: str(num2words(number, lang=code, to="ordinal"))


@pytest.mark.parametrize(
    ("code", "spelled"),
    [
        pytest.param("de", german, id="German"),
        pytest.param("nl", dutch_or_turkish("nl"), id="Dutch"),
        pytest.param("pl", polish, id="Polish"),
        pytest.param("tr", dutch_or_turkish("tr"), id="Turkish"),
    ],
)
def test_ordinals_with_a_page_word_are_read(code: str, spelled: Callable[[int], str]) -> None:
    assert misread(ORDINAL_VOTE, code, spelled, list(range(1, 200))) == {}


@pytest.mark.parametrize("code", CODES)
def test_no_two_numbers_are_levelled_to_one_word(code: str) -> None:
    words = [joined(num2words(number, lang=code)) for number in NUMBERS]
    assert len(set(words)) == len(NUMBERS)
    numbers = LANGUAGES[code].numbers
    assert {number: numbers[word] for number, word in zip(NUMBERS, words, strict=True)} == {
        number: number for number in NUMBERS
    }


def test_the_norwegian_eighth_and_eighteenth_are_one_word_without_the_ring_and_are_looked_at() -> (
    None
):
    eighth, eighteenth = "åttende", "attende"
    assert joined(eighth) == joined(eighteenth)
    for word in (eighth, eighteenth):
        reading = read_vote(f"Hei! Jeg vil gjerne ha den {word} siden, tusen takk", ROUND)
        assert reading.outcome == "look"
