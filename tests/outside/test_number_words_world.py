"""Number words of languages in other scripts, 1 to 200, as others publish them.

Sources:
- num2words 0.5.14, `num2words(number, lang=...)`, the languages ru, uk, ar, ja and ko; its ordinals
  of ru and uk, turned to the feminine, for "page" is feminine. Not taken from it: its ordinals of
  ar from 21 on, which are cardinals, and 200 of ar, "مئتا", a form that stands only before a noun.
- Unicode CLDR 46, common/rbnf/hi.xml, rule set `spellout-cardinal` (read): Hindi.
- Unicode CLDR 46, common/rbnf/el.xml, rule sets `spellout-cardinal-neutre` and
  `spellout-ordinal-feminine` (read): Greek. num2words carries neither.
- ICU 72.1 (CLDR 42), `%spellout-numbering` of zh and `%spellout-cardinal-native-attributive` of
  ko, by a run that is not repeated here: how Chinese and native Korean numbers are put together.
- The Unicode Character Database, property Numeric_Value of Han characters (Unihan,
  kPrimaryNumeric), by `unicodedata.numeric`.
"""

from __future__ import annotations

import unicodedata
from collections.abc import Callable

import pytest
from num2words import num2words

from service.ballots.reader import read_vote
from service.ballots.reading import Question
from service.chart.grid import Chart

NUMBERS = range(1, 201)
CHART = Chart(20, 10)
VOTE = {
    "ru": "Здравствуйте, голосую за страницу {}, пожалуйста",
    "uk": "Вітаю, голосую за сторінку {}, будь ласка",
    "el": "Καλησπέρα, ψηφίζω τη σελίδα {}, παρακαλώ",
    "ar": "السلام عليكم، أختار صفحة {} من فضلك",
    "hi": "नमस्ते, मेरा वोट पेज {} के लिए",
    "ja": "こんにちは。{}ページでお願いします",
    "ko": "안녕하세요, {}페이지로 부탁드려요",
    "zh": "你好，我选第{}页，谢谢",
}
HINDI = """
एक दो तीन चार पाँच छह सात आठ नौ दस
ग्यारह बारह तेरह चौदह पन्द्रह सोलह सत्रह अठारह उन्नीस बीस
इक्कीस बाईस तेईस चौबीस पच्चीस छब्बीस सत्ताईस अट्ठाईस उनतीस तीस
इकतीस बत्तीस तैंतीस चौंतीस पैंतीस छत्तीस सैंतीस अड़तीस उनतालीस चालीस
इकतालीस बयालीस तैंतालीस चौवालीस पैंतालीस छियालीस सैंतालीस अड़तालीस उनचास पचास
इक्यावन बावन तिरेपन चौवन पचपन छप्पन सत्तावन अट्ठावन उनसठ साठ
इकसठ बासठ तिरेसठ चौंसठ पैंसठ छियासठ सड़सठ अड़सठ उनहत्तर सत्तर
इकहत्तर बहत्तर तिहत्तर चौहत्तर पचहत्तर छिहत्तर सतहत्तर अठहत्तर उनासी अस्सी
इक्यासी बयासी तिरासी चौरासी पचासी छियासी सत्तासी अट्ठासी नवासी नब्बे
इक्यानबे बानबे तिरानबे चौरानबे पंचानबे छियानबे सत्तानबे अट्ठानबे निन्यानबे
""".split()
GREEK = "ένα δύο τρία τέσσερα πέντε έξι επτά οκτώ εννέα δέκα έντεκα δώδεκα".split()
GREEK_TENS = "είκοσι τριάντα σαράντα πενήντα εξήντα εβδομήντα ογδόντα εννενήντα".split()
GREEK_WHICH = (
    "πρώτη δεύτερη τρίτη τέταρτη πέμπτη έκτη έβδομη όγδοη ένατη δέκατη ενδέκατη δωδέκατη".split()
)
GREEK_WHICH_TENS = (
    "εικοστή τριακοστή τεσσαρακοστή πεντηκοστή εξηκοστή εβδομηκοστή ογδοηκοστή εννενηκοστή".split()
)
HAN = "一二三四五六七八九"
NATIVE = "한 두 세 네 다섯 여섯 일곱 여덟 아홉".split()
NATIVE_TENS = "열 스물 서른 마흔 쉰 예순 일흔 여든 아흔".split()


def hindi(number: int) -> str:
    hundreds, rest = divmod(number, 100)
    words = [HINDI[hundreds - 1], "सौ"] if hundreds else []
    return " ".join(words + ([HINDI[rest - 1]] if rest else []))


def greek(number: int) -> str:
    if number == 200:
        return "διακόσια"
    if number >= 100:
        return f"εκατόν {greek(number - 100)}" if number > 100 else "εκατό"
    if number > 12 and number < 20:
        return "δεκα" + greek(number - 10)
    tens, rest = divmod(number, 10) if number > 12 else (0, number)
    return (
        " ".join(GREEK_TENS[tens - 2 : tens - 1] + GREEK[rest - 1 : rest])
        if tens
        else GREEK[rest - 1]
    )


def greek_which(number: int) -> str:
    if number <= 12:
        return GREEK_WHICH[number - 1]
    tens, rest = divmod(number, 10)
    first = "δέκατη" if tens == 1 else GREEK_WHICH_TENS[tens - 2]
    return f"{first} {GREEK_WHICH[rest - 1]}" if rest else first


def chinese(number: int) -> str:
    hundreds, below = divmod(number, 100)
    tens, rest = divmod(below, 10)
    words = HAN[hundreds - 1] + "百" if hundreds else ""
    if tens:
        words += (HAN[tens - 1] if hundreds or tens > 1 else "") + "十"
    elif hundreds and rest:
        words += "〇"
    return words + (HAN[rest - 1] if rest else "")


def misread(code: str, spelled: Callable[[int], str], numbers: list[int]) -> dict[str, str]:
    """The comments that are read as another page or none, each with what was read."""
    wrong = {}
    for number in numbers:
        comment = VOTE[code].format(spelled(number))
        reading = read_vote(comment, Question(CHART))
        if (reading.outcome, reading.pages) != ("counts", (number,)):
            wrong[comment] = f"{reading.outcome} {reading.pages}"
    return wrong


def without(*left_out: int) -> list[int]:
    return [number for number in NUMBERS if number not in left_out]


@pytest.mark.parametrize(
    ("code", "numbers"),
    [
        pytest.param("ru", without(), id="Russian"),
        pytest.param("uk", without(), id="Ukrainian"),
        pytest.param("ar", without(200), id="Arabic"),
        pytest.param("ja", without(), id="Japanese"),
        # "이페이지" is "this page" as well as "page two": a reader cannot be sure.
        pytest.param("ko", without(2), id="Korean"),
    ],
)
def test_number_words_are_read_as_num2words_writes_them(code: str, numbers: list[int]) -> None:
    assert misread(code, lambda number: num2words(number, lang=code), numbers) == {}


@pytest.mark.parametrize(
    ("code", "spelled"),
    [
        pytest.param("hi", hindi, id="Hindi"),
        pytest.param("el", greek, id="Greek"),
        pytest.param("zh", chinese, id="Chinese"),
    ],
)
def test_number_words_are_read_as_unicode_publishes_them(
    code: str, spelled: Callable[[int], str]
) -> None:
    assert misread(code, spelled, without()) == {}


def feminine(ordinal: str, code: str) -> str:
    """A masculine ordinal of ru or uk as it goes with the feminine "page"."""
    endings = {"ru": (("ий", "ья"), ("ый", "ая"), ("ой", "ая")), "uk": (("ій", "я"), ("ий", "а"))}
    ending, other = next(pair for pair in endings[code] if ordinal.endswith(pair[0]))
    return ordinal.removesuffix(ending) + other


@pytest.mark.parametrize(("code", "page"), [("ru", "страница"), ("uk", "сторінка")])
def test_slavic_ordinals_to_a_hundred_are_read_before_a_page_word(code: str, page: str) -> None:
    wrong = []
    for number in range(1, 101):
        ordinal = feminine(num2words(number, lang=code, to="ordinal"), code)
        reading = read_vote(f"{ordinal} {page}", Question(CHART))
        if (reading.outcome, reading.pages) != ("counts", (number,)):
            wrong.append(ordinal)
    assert wrong == []


def test_greek_ordinals_below_a_hundred_are_read_before_a_page_word() -> None:
    wrong = []
    for number in range(1, 100):
        reading = read_vote(f"{greek_which(number)} σελίδα", Question(CHART))
        if (reading.outcome, reading.pages) != ("counts", (number,)):
            wrong.append(greek_which(number))
    assert wrong == []


def test_native_korean_ranks_from_eleven_are_read_before_a_page_word() -> None:
    wrong = []
    for number in range(11, 100):
        tens, rest = divmod(number, 10)
        ten = "스무" if number == 20 else NATIVE_TENS[tens - 1]
        rank = ten + (NATIVE[rest - 1] if rest else "")
        reading = read_vote(f"{rank} 번째 페이지요", Question(CHART))
        if (reading.outcome, reading.pages) != ("counts", (number,)):
            wrong.append(rank)
    assert wrong == []


@pytest.mark.parametrize("numeral", HAN + "十")
def test_a_han_numeral_is_the_number_that_unicode_gives_it(numeral: str) -> None:
    number = int(unicodedata.numeric(numeral))
    for comment in (f"{numeral}ページでお願いします", f"第{numeral}页"):
        reading = read_vote(comment, Question(CHART))
        assert (reading.outcome, reading.pages) == ("counts", (number,)), comment
