"""Japanese number words: in Han characters, in kana and in Latin letters."""

from __future__ import annotations

from collections.abc import Iterable

from service.ballots.languages.zh_numbers import han_numbers

#: How units are read; the first reading is the one used before a ten.
_KANA = ("いち", "に", "さん", "よん し", "ご", "ろく", "なな しち", "はち", "きゅう く")
_LATIN = ("ichi", "ni", "san", "yon shi", "go", "roku", "nana shichi", "hachi", "kyuu kyu ku")
#: Of one or two kana, and particles, names or endings of other words far more often than numbers.
_LATIN_ALONE = {"ichi": 1, "yon": 4, "roku": 6, "shichi": 7, "hachi": 8, "kyuu": 9}
_LATIN_START = {"ni": 2, "san": 3, "go": 5, "nana": 7}


def _tens(units: Iterable[str], tens: Iterable[str], hundreds: Iterable[str]) -> dict[str, int]:
    """Ten to 199, built from the units' readings."""
    readings = [words.split() for words in units]
    found: dict[str, int] = {}
    for ten in tens:
        for times in range(1, 10):
            starts = [""] if times == 1 else readings[times - 1]
            for start in starts:
                found[start + ten] = 10 * times
                for value, words in enumerate(readings, 1):
                    found |= {start + ten + word: 10 * times + value for word in words}
    small = dict(found)
    for value, words in enumerate(readings, 1):
        small |= dict.fromkeys(words, value)
    for hundred in hundreds:
        found[hundred] = 100
        found |= {hundred + word: 100 + value for word, value in small.items()}
    return found


def numbers() -> dict[str, int]:
    """Number words to 999 in Han characters, to 199 in kana and Latin letters."""
    kana = _tens(_KANA, ("じゅう", "じゅー"), ("ひゃく",))
    latin = _tens(_LATIN, ("juu", "ju", "jyuu", "jyu"), ("hyaku",))
    for alone in ("じゅう", "じゅー", "juu", "ju", "jyuu", "jyu"):
        # "All through" ends many words, and a spaced "ni juu ni" must not be read from its "juu".
        kana.pop(alone, None)
        latin.pop(alone, None)
    # "Juni" is a month and "jugo" a drink; the teens are read where the vowel is written long.
    latin = {word: value for word, value in latin.items() if value > 19 or "uu" in word[:4]}
    return han_numbers() | kana | latin | _LATIN_ALONE | {"一番": 1, "いちばん": 1}


def ordinals() -> dict[str, int]:
    """Units that may begin a spaced number ("ni juu ni"), but alone are other words."""
    return dict(_LATIN_START)
