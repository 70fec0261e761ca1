"""Dutch number words and ordinals, in every spelling that people use."""

from __future__ import annotations

from num2words import num2words

from service.ballots.languages.spelling import dozens, joined, with_slips

#: What is written for a part of a number word besides the right spelling.
_SLIPS = (
    ("veertien", "viertien"), ("dertien", "drietien"), ("veertig", "viertig"),
    ("dertig", "drietig"), ("tachtig", "tagtig"), ("tachtig", "tachentig"),
    ("twintig", "twingtig"), ("achttien", "achtien"), ("zeventien", "zeventin"),
    ("zeventig", "seventig"), ("zestig", "sestig"), ("vijftig", "vyftig"), ("vijf", "vyf"),
)  # fmt: skip


def _hundreds(word: str) -> set[str]:
    """As in "honderdvijf", also said "eenhonderdvijf" and "honderd en vijf"."""
    words = {word}
    if word.startswith("honderd"):
        words.add("een" + word)
    return words | {one.replace("honderd", "honderden", 1) for one in words if "honderd" in one}


def numbers() -> dict[str, int]:
    """Number words to 999, joined as comments are levelled."""
    found = {"zeuven": 7}
    rounds = (*range(200), *range(200, 1000, 50), 333, 444, 555, 666, 777, 888, 999)
    for value in rounds:
        for word in _hundreds(joined(num2words(value, lang="nl"))):
            found[word] = value
    return with_slips(found, _SLIPS) | dozens("dozijn", "een", "half", "een half")


def ordinals() -> dict[str, int]:
    """Ordinals to the 200th."""
    found: dict[str, int] = {}
    for value in range(1, 201):
        for word in _hundreds(joined(num2words(value, lang="nl", to="ordinal"))):
            found[word] = value
    return found
