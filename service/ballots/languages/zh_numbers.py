"""Number words in Han characters, as Chinese and Japanese writers count, and digit by digit."""

from __future__ import annotations

_DIGITS = "一二三四五六七八九"
_NOUGHTS = "零〇"
_PINYIN = "yi er san si wu liu qi ba jiu".split()


def _below_hundred() -> dict[str, int]:
    found = {digit: value for value, digit in enumerate(_DIGITS, 1)}
    for tens in range(1, 10):
        # Ten alone is 十; both 十二 and 一十二 are written, and 廿 and 卅 for twenty and thirty.
        written = {_DIGITS[tens - 1] + "十"}
        written |= {1: {"十"}, 2: {"廿"}, 3: {"卅"}}.get(tens, set())
        for ten in written:
            found[ten] = 10 * tens
            found |= {ten + digit: 10 * tens + value for value, digit in enumerate(_DIGITS, 1)}
    return found


def han_numbers() -> dict[str, int]:
    """From nought to 999; two digits in a row where they cannot mean "two or three"."""
    small = _below_hundred()
    found = small | dict.fromkeys(_NOUGHTS, 0)
    for hundreds, digit in enumerate(_DIGITS, 1):
        for hundred in {digit + "百"} | ({"百"} if hundreds == 1 else set()):
            base = 100 * hundreds
            found[hundred] = base
            for word, value in small.items():
                # A Chinese 一百一 is 110, a Japanese 百一 is 101: only the plain ones are read.
                if value >= 10 or hundred == "百":
                    found[hundred + word] = base + value
                if value < 10:
                    found |= {hundred + nought + word: base + value for nought in _NOUGHTS}
        for value, second in enumerate(_DIGITS, 1):
            if value != hundreds + 1:
                found[digit + second] = 10 * hundreds + value
        found |= {digit + nought: 10 * hundreds for nought in _NOUGHTS}
    return found


def _in_latin_letters() -> dict[str, int]:
    """Eleven to 199 in pinyin without its tones; smaller ones are other languages' words."""
    units = {word: value for value, word in enumerate(_PINYIN, 1)}
    found = {"shi" + word: 10 + value for word, value in units.items()}
    for ten, tens in units.items():
        found[ten + "shi"] = 10 * tens
        found |= {ten + "shi" + word: 10 * tens + value for word, value in units.items()}
    for hundred in ("yibai", "yibaiyi"):
        found |= {hundred + word: 100 + value for word, value in found.items() if value < 100}
    found |= {"yibailing" + word: 100 + value for word, value in units.items()}
    return {word: value for word, value in found.items() if value > 10} | {"yibai": 100}


def ordinals() -> dict[str, int]:
    """Pinyin that may begin a spaced number ("er shi san"), but alone is another word."""
    return {word: value for value, word in enumerate(_PINYIN, 1)} | {"shi": 10}


def numbers() -> dict[str, int]:
    """As Chinese writers count; 两 for two before a hundred; and in pinyin."""
    found = han_numbers() | _in_latin_letters()
    return found | {
        "两" + word[1:]: value for word, value in found.items() if word.startswith("二百")
    }
