"""Ukrainian number words: counting, and saying which page (it is feminine)."""

from __future__ import annotations

from num2words import num2words

from service.ballots.languages.spelling import joined, with_slips

#: The apostrophe is often left out, or typed as another mark; Russian sounds slip in.
_SLIPS = (
    ("десят", "десет"), ("надцять", "надцать"), ("дцять", "дцать"), ("один", "оден"),
    ("шість", "шисть"), ("пят", "пьят"), ("вісім", "висим"), ("чотир", "четир"),
    ("девяносто", "девеносто"), ("девят", "девьят"),
    ("дванадцять", "двінадцять"), ("шістдесят", "шісдесят"), ("шістнадцять", "шіснадцять"),
)  # fmt: skip
_WHICH = (("ій", ("я", "ю")), ("ий", ("а", "у")))
_ELSEWHERE = (
    ("ій", ("ій", "є", "ього", "ьої")),
    ("ий", ("ий", "е", "ого", "ої", "ій", "им")),
)


def _turned(words: str, endings: tuple[tuple[str, tuple[str, ...]], ...]) -> list[str]:
    for ending, others in endings:
        if words.endswith(ending):
            return [joined(words.removesuffix(ending) + other) for other in others]
    return []


def _which(value: int) -> str:
    return str(num2words(value, lang="uk", to="ordinal"))


def _apostrophes(found: dict[str, int]) -> dict[str, int]:
    """The words that may begin a number and are written with an apostrophe, as they are written."""
    marked: dict[str, int] = {}
    for word, value in found.items():
        for start in ("пят", "девят", "девян"):
            if word.startswith(start):
                at = start.index("я")
                marked[word[:at] + "'" + word[at:]] = value
    return marked


_LATIN_UNITS = "odyn dva try chotyry pyat shist sim visim devyat".split()
_LATIN_TEENS = (
    "desyat odynadtsyat dvanadtsyat trynadtsyat chotyrnadtsyat pyatnadtsyat shistnadtsyat simnadtsyat "
    "visimnadtsyat devyatnadtsyat"
).split()
_LATIN_TENS = (
    "dvadtsyat trydtsyat sorok pyatdesyat shistdesyat simdesyat visimdesyat devyanosto".split()
)


def _in_latin_letters() -> dict[str, int]:
    """From ten on, as Ukrainians type them; smaller ones are other languages' words."""
    found = {word: value for value, word in enumerate(_LATIN_TEENS, 10)}
    for value, ten in enumerate(_LATIN_TENS, 2):
        found[ten] = 10 * value
        found |= {ten + unit: 10 * value + n for n, unit in enumerate(_LATIN_UNITS, 1)}
    return with_slips(
        found, (("dtsyat", "dcyat"), ("dtsyat", "tsyat"), ("ya", "ia"), ("odyn", "odin"))
    )


def numbers() -> dict[str, int]:
    """Number words to 999, and "which page" from the fourth on, by their joined spelling."""
    found = {joined(num2words(value, lang="uk")): value for value in range(1000)}
    for word, value in list(found.items()):
        if value != 11 and value % 10 == 1 and word.endswith("один"):
            found[word.removesuffix("один") + "одна"] = value
            found[word.removesuffix("один") + "одну"] = value
        elif value % 10 == 2 and word.endswith("два"):
            found[word.removesuffix("два") + "дві"] = value
    # "One page" in the feminine counts pages; page one is "сторінка один".
    del found["одна"], found["одну"]
    found = with_slips(found | {"ноль": 0}, _SLIPS)
    for value in range(4, 201):
        found |= dict.fromkeys(_turned(_which(value), _WHICH), value)
    return found | _apostrophes(found) | _in_latin_letters()


def ordinals() -> dict[str, int]:
    """Ordinals to 200th in their other forms, and the first three in all."""
    found: dict[str, int] = {}
    for value in range(1, 201):
        found |= dict.fromkeys(_turned(_which(value), _ELSEWHERE), value)
        if value <= 3:
            found |= dict.fromkeys(_turned(_which(value), _WHICH), value)
    return found | _apostrophes(found)
