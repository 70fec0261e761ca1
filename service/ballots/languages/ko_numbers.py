"""Korean number words: Chinese-derived, which number pages, and native, which count and rank."""

from __future__ import annotations

from num2words import num2words

_NATIVE_TENS = ("열", "스물", "서른", "마흔", "쉰", "예순", "일흔", "여든", "아흔")
#: Alone, and before what is counted or ranked.
_NATIVE_UNITS = (
    "하나 한", "둘 두", "셋 세", "넷 네", "다섯", "여섯", "일곱", "여덟 여덜", "아홉",
)  # fmt: skip
_UNITS = "일이삼사오육칠팔구"
#: One syllable is a word, a particle or a laugh far more often than a number, so units are read
#: only with what they number; 이 with it says "this page", "this time".
_NUMBERED = ("번", "페이지", "쪽", "페이지째")
_AMBIGUOUS = frozenset({"이번", "이쪽", "이페이지", "이페이지째", "오쪽"})
_RANKED = ("번째", "째")


def _native() -> dict[str, int]:
    """Eleven to 99: below that they are counting words of everyday talk."""
    found: dict[str, int] = {"스무": 20}
    for tens, ten in enumerate(_NATIVE_TENS, 1):
        found[ten] = 10 * tens
        for value, units in enumerate(_NATIVE_UNITS, 1):
            found |= {ten + unit: 10 * tens + value for unit in units.split()}
    return {word: value for word, value in found.items() if value > 10}


def numbers() -> dict[str, int]:
    """Number words to 999, and units with the page word glued on, by their joined spelling."""
    found = {num2words(value, lang="ko"): value for value in range(11, 1000) if value != 100}
    # "One hundred" is also said with its one: 일백이십.
    found |= {"일" + word: value for word, value in found.items() if 100 < value < 200}
    for value, unit in enumerate(_UNITS, 1):
        found |= {unit + page: value for page in _NUMBERED if unit + page not in _AMBIGUOUS}
    for word, value in (("십", 10), ("백", 100)):
        found |= {word + page: value for page in _NUMBERED}
    return found | _native()


def ordinals() -> dict[str, int]:
    """The first ranks, written in one word; greater ones are a number before 번째."""
    ranks = ("", "두", "세", "네", "다섯", "여섯", "일곱", "여덟", "아홉", "열")
    found = {rank + last: value for value, rank in enumerate(ranks, 1) for last in _RANKED if rank}
    return found | {"첫번째": 1, "첫째": 1, "둘째": 2, "셋째": 3, "넷째": 4}
