"""Russian number words: counting, saying which page (it is feminine), and in Latin letters."""

from __future__ import annotations

from num2words import num2words

from service.ballots.languages.spelling import joined, with_slips

_SLIPS = (
    ("десят", "десет"), ("надцать", "надцять"), ("надцать", "натцать"), ("надцать", "нацать"),
    ("надцать", "надцат"), ("двадцать", "двадцат"), ("тридцать", "тридцат"), ("одинн", "один"),
    ("пятьдесят", "пятдесят"), ("пятьдесят", "пятьдесять"), ("шестьдесят", "шестдесят"),
    ("шестьдесят", "шестьдесять"), ("семьдесят", "семдесят"), ("восемьдесят", "восемдесят"),
    ("четыр", "читыр"), ("девяносто", "девеносто"), ("восем", "восим"), ("двадцать", "двацать"),
    ("тридцать", "трицать"),
)  # fmt: skip
#: How the endings of an ordinal turn to say "which page": nominative, and "I take which page".
_WHICH = (("ий", ("ья", "ью")), ("ый", ("ая", "ую")), ("ой", ("ая", "ую")))
#: The other endings: "page No. which", "of which", "from which".
_ELSEWHERE = (
    ("ий", ("ий", "ье", "ьего", "ьей")),
    ("ый", ("ый", "ое", "ого", "ом", "ой")),
    ("ой", ("ой", "ое", "ого", "ом")),
)
#: "The nine": as the numbers of a bus or a house are called. Two to five and ten are also marks.
_NOUNS = {
    joined(stem + ending): value
    for value, stems in enumerate(("шестёрк", "семёрк", "восьмёрк", "девятк"), 6)
    for stem in (stems, stems.removesuffix("к") + "очк")
    for ending in "ау"
}
_LATIN_UNITS = {
    "odin": 1, "odna": 1, "dva": 2, "dve": 2, "tri": 3, "chetyre": 4, "chetire": 4, "pyat": 5,
    "piat": 5, "shest": 6, "sem": 7, "vosem": 8, "devyat": 9, "deviat": 9,
}  # fmt: skip
_LATIN_TEENS = {
    "desyat": 10, "odinnadtsat": 11, "odinadtsat": 11, "dvenadtsat": 12, "trinadtsat": 13,
    "chetyrnadtsat": 14, "pyatnadtsat": 15, "shestnadtsat": 16, "semnadtsat": 17,
    "vosemnadtsat": 18, "devyatnadtsat": 19,
}  # fmt: skip
_LATIN_TENS = {
    "dvadtsat": 20, "tridtsat": 30, "sorok": 40, "pyatdesyat": 50, "shestdesyat": 60,
    "semdesyat": 70, "vosemdesyat": 80, "devyanosto": 90,
}  # fmt: skip
#: Latin words that say something else in other languages stand only within a number.
_ONLY_WITHIN = frozenset({"odin", "odna", "dva", "dve", "tri", "sem"})


def _in_latin_letters() -> dict[str, int]:
    found = {word: value for word, value in _LATIN_UNITS.items() if word not in _ONLY_WITHIN}
    found |= _LATIN_TEENS | _LATIN_TENS
    for ten, tens in _LATIN_TENS.items():
        found |= {ten + unit: tens + value for unit, value in _LATIN_UNITS.items()}
    return with_slips(
        found,
        (("dts", "dc"), ("dts", "ts"), ("dts", "c"), ("ya", "ia"), ("pya", "pja"), ("vya", "vja")),
    )


def _turned(words: str, endings: tuple[tuple[str, tuple[str, ...]], ...]) -> list[str]:
    for ending, others in endings:
        if words.endswith(ending):
            return [joined(words.removesuffix(ending) + other) for other in others]
    return []


def _which(value: int) -> str:
    return str(num2words(value, lang="ru", to="ordinal"))


def numbers() -> dict[str, int]:
    """Number words to 999, and "which page" from the fourth on, by their joined spelling."""
    found = {joined(num2words(value, lang="ru")): value for value in range(1000)}
    for word, value in list(found.items()):
        if value != 11 and value % 10 == 1:
            found[word.removesuffix("один") + "одна"] = value
        elif value % 10 == 2 and word.endswith("два"):
            found[word.removesuffix("два") + "две"] = value
    # "One page" in the feminine counts pages; page one is "страница один".
    del found["одна"]
    found = with_slips(found | {"ноль": 0}, _SLIPS)
    for value in range(4, 201):
        found |= dict.fromkeys(_turned(_which(value), _WHICH), value)
    return found | _NOUNS | _in_latin_letters()


def ordinals() -> dict[str, int]:
    """Ordinals to 200th in their other forms, and the first three in all."""
    found: dict[str, int] = {}
    for value in range(1, 201):
        found |= dict.fromkeys(_turned(_which(value), _ELSEWHERE), value)
        if value <= 3:
            found |= dict.fromkeys(_turned(_which(value), _WHICH), value)
    return found
