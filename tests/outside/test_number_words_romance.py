"""French, Spanish, Italian and Portuguese number words, 1 to 200, as others publish them.

Sources:
- num2words 0.5.14, `num2words(number, lang=...)`, the languages fr, fr_CH, fr_BE, es, it, pt and
  pt_BR. Not taken from it: it 118, which it writes "centodicotto", and fr_BE 80 to 89 and 180 to
  189, "quatre-vingt et un" and the like, which are no standard spelling.
- Unicode ICU 72 (CLDR 42), rule sets `%spellout-numbering` and `%spellout-cardinal-feminine`, by
  a run of PyICU 2.17 that is not repeated here, for the spellings that differ from num2words:
  fr "vingt-et-un", it 118 "centodiciotto" and "-tré" from 123 on, es and pt in the feminine,
  pt 16, 17 and 19 as Brazil writes them.
- Les rectifications de l'orthographe (Journal officiel, 6 December 1990), from memory: French
  numbers may be joined by hyphens throughout.
"""

from __future__ import annotations

from collections.abc import Callable

import pytest
from num2words import num2words

from service.ballots.reader import read_vote
from service.ballots.reading import Question
from service.chart.grid import Chart

NUMBERS = range(1, 201)
CHART = Chart(20, 10)
PAGE = {"fr": "page", "es": "página", "it": "pagina", "pt": "página"}
VOTE = {
    "fr": "Bonjour, je vote pour la page {}, s'il vous plaît. Merci beaucoup à vous",
    "es": "Hola a todas, voto por la página {}, por favor. Muchas gracias",
    "it": "Ciao a tutte, voto per la pagina {}, per favore. Grazie mille",
    "pt": "Olá a todas, voto na página {}, por favor. Muito obrigada",
}


def misread(code: str, spelled: Callable[[int], str], numbers: list[int]) -> dict[str, str]:
    """The spellings that are read as another page or none, each with what was read."""
    question = Question(CHART, languages=(code,))
    wrong = {}
    for number in numbers:
        comment = VOTE[code].format(spelled(number))
        reading = read_vote(comment, question)
        if (reading.outcome, reading.pages) != ("counts", (number,)):
            wrong[comment] = f"{reading.outcome} {reading.pages}"
    return wrong


def without(*left_out: int) -> list[int]:
    return [number for number in NUMBERS if number not in left_out]


@pytest.mark.parametrize(
    ("code", "lang", "numbers"),
    [
        pytest.param("fr", "fr", without(), id="French"),
        pytest.param("fr", "fr_CH", without(), id="French of Switzerland"),
        pytest.param(
            "fr", "fr_BE", without(*range(80, 90), *range(180, 190)), id="French of Belgium"
        ),
        pytest.param("es", "es", without(), id="Spanish"),
        pytest.param("it", "it", without(118), id="Italian"),
        pytest.param("pt", "pt", without(), id="Portuguese of Portugal"),
        pytest.param("pt", "pt_BR", without(), id="Portuguese of Brazil"),
    ],
)
def test_number_words_are_read_as_num2words_writes_them(
    code: str, lang: str, numbers: list[int]
) -> None:
    assert misread(code, lambda number: num2words(number, lang=lang), numbers) == {}


def feminine(words: str) -> str:
    """The last word in the feminine: "treinta y uno" to "treinta y una"; others stay."""
    for masculine, other in (("uno", "una"), ("dois", "duas"), (" um", " uma")):
        if words.endswith(masculine) and words != masculine:
            return words.removesuffix(masculine) + other
    return words


@pytest.mark.parametrize(
    ("code", "spelled"),
    [
        pytest.param("fr", lambda words: words.replace(" et ", "-et-"), id="vingt-et-un"),
        pytest.param("fr", lambda words: words.replace(" ", "-"), id="hyphens throughout"),
        pytest.param("fr", lambda words: words.replace("-", " "), id="no hyphens"),
        pytest.param("fr", lambda words: words + "e" * words.endswith(" un"), id="vingt et une"),
        pytest.param("es", feminine, id="treinta y una"),
        pytest.param(
            "es", lambda words: words.replace("í", "i").replace("ó", "o"), id="no accents"
        ),
        pytest.param("it", lambda words: words.replace("é", "e"), id="ventitre"),
        pytest.param("pt", feminine, id="vinte e duas"),
        pytest.param("pt", str.upper, id="capitals"),
    ],
)
def test_the_other_published_spellings_are_read_too(
    code: str, spelled: Callable[[str], str]
) -> None:
    def other(number: int) -> str:
        return spelled(num2words(number, lang=code))

    assert misread(code, other, without()) == {}


@pytest.mark.parametrize(
    ("code", "words", "number"),
    [
        pytest.param("it", "centodiciotto", 118, id="ICU's 118"),
        pytest.param("it", "centoventitré", 123, id="ICU's accent behind a hundred"),
        pytest.param("pt", "dezesseis", 16, id="16 in Brazil"),
        pytest.param("pt", "dezasseis", 16, id="16 in Portugal"),
        pytest.param("pt", "cento e dezenove", 119, id="119 in Brazil"),
        pytest.param("fr", "huitante-trois", 83, id="83 in Vaud"),
        pytest.param("fr", "nonante et un", 91, id="91 in Belgium"),
        pytest.param("es", "ciento una", 101, id="ICU's feminine 101"),
    ],
)
def test_a_spelling_that_num2words_does_not_give_is_read(
    code: str, words: str, number: int
) -> None:
    assert misread(code, lambda _: words, [number]) == {}


@pytest.mark.parametrize("code", PAGE)
def test_ordinals_to_a_hundred_are_read_before_a_page_word(code: str) -> None:
    """num2words, `to="ordinal"`; the first one is masculine there, which no reader minds."""
    question = Question(CHART, languages=(code,))
    wrong = []
    for number in range(1, 101):
        ordinal = num2words(number, lang=code, to="ordinal")
        reading = read_vote(f"{ordinal} {PAGE[code]}", question)
        if (reading.outcome, reading.pages) != ("counts", (number,)):
            wrong.append(number)
    assert wrong == []
