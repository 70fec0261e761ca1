"""Number words 1 to 200 as Unicode CLDR spells them out, and as num2words does.

Sources:
- Unicode CLDR, spell-out rules (rule-based number formats), by way of ICU, which carries them:
  `RuleBasedNumberFormat` of PyICU. Which ICU this is stands in the head of the test run; ICU 72.1
  (CLDR 42) and later were seen. `%spellout-numbering` is how a number is said by itself, which is
  how a page is named; the cardinals beside it differ by gender.
- num2words 0.5.14, `num2words(number, lang=...)`.

Where the two differ, both are read. Left out, as said at each:
- ICU's cardinals of one in the form of an article ("un", "eine"): nobody numbers a page with it.
- num2words' Italian 118, "centodicotto", which is a slip of it.

PyICU has no ready-made form to install, so the tests that need it are skipped where it is missing.
"""

from __future__ import annotations

from collections.abc import Callable
from types import ModuleType
from typing import Any

import pytest
from num2words import num2words

from service.ballots.reader import read_vote
from service.ballots.reading import Question
from service.chart.grid import Chart

NUMBERS = range(1, 201)
CHART = Chart(20, 10)
VOTE = {
    "en": "Hello everybody, I vote for page {}, please. Thank you",
    "fr": "Bonjour, je vote pour la page {}, s'il vous plaît. Merci beaucoup à vous",
    "de": "Hallo, ich stimme für Seite {}, bitte. Vielen Dank",
    "es": "Hola a todas, voto por la página {}, por favor. Muchas gracias",
    "it": "Ciao a tutte, voto per la pagina {}, per favore. Grazie mille",
    "pt": "Olá a todas, voto na página {}, por favor. Muito obrigada",
    "nl": "Hallo, ik stem op pagina {} alsjeblieft. Dank je wel",
}
ORDINAL_VOTE = {
    "en": "Hello everybody, I vote for the {} page, please. Thank you",
    "fr": "Bonjour, je vote pour la {} page, s'il vous plaît. Merci beaucoup à vous",
    "de": "Hallo, ich stimme für die {} Seite, bitte. Vielen Dank",
    "es": "Hola a todas, voto por la {} página, por favor. Muchas gracias",
    "it": "Ciao a tutte, voto per la {} pagina, per favore. Grazie mille",
    "pt": "Olá a todas, voto na {} página, por favor. Muito obrigada",
    "nl": "Hallo, ik stem op de {} pagina alsjeblieft. Dank je wel",
}
#: ICU's places with spellings of their own, and the num2words languages.
PLACES = ("en", "en_GB", "fr", "fr_CH", "fr_BE", "de", "de_CH", "es", "it", "pt", "pt_PT", "nl")
NUM2WORDS = ("en", "fr", "fr_CH", "de", "es", "it", "pt", "pt_BR", "nl")

#: Number and rule set of ICU, to words.
Spell = Callable[[str, str, int], str]


@pytest.fixture(scope="module")
def icu() -> ModuleType:
    why = "PyICU is missing: DEVELOPERS.md says how to get it"
    found: ModuleType = pytest.importorskip("icu", reason=why)
    return found


@pytest.fixture(scope="module")
def spell(icu: Any) -> Spell:
    """Spells by one of ICU's rule sets, without the soft hyphens that it puts in."""
    formats = {
        place: icu.RuleBasedNumberFormat(icu.URBNFRuleSetTag.SPELLOUT, icu.Locale(place))
        for place in PLACES
    }

    def spelled(place: str, rules: str, number: int) -> str:
        return str(formats[place].format(number, rules)).replace("\N{SOFT HYPHEN}", "")

    return spelled


def misread(
    votes: dict[str, str], place: str, spelled: Callable[[int], str], left_out: frozenset[int]
) -> dict[str, str]:
    """The spellings that are read as another page or none, each with what was read."""
    code = place[:2]
    question = Question(CHART, languages=(code,))
    wrong = {}
    for number in NUMBERS:
        if number in left_out:
            continue
        comment = votes[code].format(spelled(number))
        reading = read_vote(comment, question)
        if (reading.outcome, reading.pages) != ("counts", (number,)):
            wrong[comment] = f"{reading.outcome} {reading.pages}"
    return wrong


@pytest.mark.parametrize("place", PLACES)
def test_number_words_are_read_as_cldr_spells_them(spell: Spell, place: str) -> None:
    def spelled(number: int) -> str:
        return spell(place, "%spellout-numbering", number)

    assert misread(VOTE, place, spelled, frozenset()) == {}


@pytest.mark.parametrize("lang", NUM2WORDS)
def test_number_words_are_read_as_num2words_spells_them(lang: str) -> None:
    def spelled(number: int) -> str:
        return str(num2words(number, lang=lang))

    slips = frozenset({118} if lang == "it" else ())
    assert misread(VOTE, lang, spelled, slips) == {}


@pytest.mark.parametrize(
    ("place", "rules", "left_out"),
    [
        pytest.param("en", "%spellout-cardinal-verbose", (), id="English with and"),
        pytest.param("fr", "%spellout-cardinal-feminine", (), id="French feminine"),
        pytest.param("es", "%spellout-cardinal-masculine", (1,), id="Spanish masculine"),
        pytest.param("es", "%spellout-cardinal-feminine", (1,), id="Spanish feminine"),
        pytest.param("it", "%spellout-cardinal-masculine", (1,), id="Italian masculine"),
        pytest.param("it", "%spellout-cardinal-feminine", (1,), id="Italian feminine"),
        pytest.param("pt", "%spellout-cardinal-feminine", (1,), id="Portuguese feminine"),
        pytest.param("de", "%spellout-cardinal-feminine", (1, 101), id="German feminine"),
        pytest.param("nl", "%spellout-cardinal", (), id="Dutch"),
    ],
)
def test_cldr_cardinals_of_every_gender_are_read(
    spell: Spell, place: str, rules: str, left_out: tuple[int, ...]
) -> None:
    def spelled(number: int) -> str:
        return spell(place, rules, number)

    assert misread(VOTE, place, spelled, frozenset(left_out)) == {}


@pytest.mark.parametrize(
    ("place", "rules"),
    [
        pytest.param("en", "%spellout-ordinal", id="English"),
        pytest.param("en", "%spellout-ordinal-verbose", id="English with and"),
        pytest.param("fr", "%spellout-ordinal-feminine", id="French"),
        pytest.param("fr_CH", "%spellout-ordinal-feminine", id="French of Switzerland"),
        pytest.param("fr_BE", "%spellout-ordinal-feminine", id="French of Belgium"),
        pytest.param("de", "%spellout-ordinal", id="German"),
        pytest.param("es", "%spellout-ordinal-feminine", id="Spanish"),
        pytest.param("it", "%spellout-ordinal-feminine", id="Italian"),
        pytest.param("pt", "%spellout-ordinal-feminine", id="Portuguese"),
        pytest.param("nl", "%spellout-ordinal", id="Dutch"),
    ],
)
def test_cldr_ordinals_are_read_before_a_page_word(spell: Spell, place: str, rules: str) -> None:
    def spelled(number: int) -> str:
        return spell(place, rules, number)

    assert misread(ORDINAL_VOTE, place, spelled, frozenset()) == {}


def test_the_two_sources_differ_where_they_are_known_to(spell: Spell) -> None:
    """So that the checks above are two and not one: e.g. English "and", French hyphens."""

    def differing(code: str) -> set[int]:
        return {
            number
            for number in NUMBERS
            if spell(code, "%spellout-numbering", number) != num2words(number, lang=code)
        }

    assert differing("en") == set(range(101, 200))
    assert {21, 31, 41, 51, 61, 71} <= differing("fr")
    assert differing("de") == set()
