"""French number words: of France, Belgium and Switzerland, old and new spelling, and slips."""

from __future__ import annotations

from num2words import num2words

from service.ballots.languages.spelling import dozens, joined, with_slips

_SLIPS = (
    ("quarante", "quarente"), ("quarante", "quarrante"), ("cinquante", "cinquente"),
    ("cinquante", "cincquante"), ("soixante", "soisante"), ("soixante", "soixente"),
    ("soixante", "soissante"), ("trente", "trante"), ("vingt", "vingts"), ("quatorze", "quatorse"),
    ("treize", "treise"), ("seize", "seise"), ("quinze", "quinse"), ("quatre", "quattre"),
    ("quatrevingt", "quatresvingt"), ("dixhuit", "dishuit"), ("dixneuf", "disneuf"),
)  # fmt: skip
#: Said in Belgium and Switzerland; num2words writes the eighties of fr_BE in a way nobody does.
_OTHER_TENS = {"septante": 70, "huitante": 80, "octante": 80, "nonante": 90}


def _below_hundred() -> dict[str, int]:
    found = {joined(num2words(value, lang="fr")): value for value in range(100)}
    units = {word: value for word, value in found.items() if 0 < value < 10}
    for ten, tens in _OTHER_TENS.items():
        found[ten] = tens
        found |= {ten + word: tens + value for word, value in units.items()}
        found[ten + "etun"] = tens + 1
    # "Vingt-un" and "quatre-vingt et un" are not right, but plain; eleven goes like one.
    for word, value in list(found.items()):
        for unit in ("un", "onze"):
            if word.endswith(unit) and word != unit:
                stem = word.removesuffix(unit).removesuffix("et")
                found |= {stem + unit: value, stem + "et" + unit: value}
    found["quatrevingt"] = 80
    return found | {word + "e": value for word, value in found.items() if word.endswith("un")}


def numbers() -> dict[str, int]:
    """Number words to 999 by their joined spelling."""
    small = _below_hundred()
    found = dict(small)
    for hundreds in range(1, 10):
        times = "" if hundreds == 1 else joined(num2words(hundreds, lang="fr"))
        for cent in ("cent", "cents"):
            found[times + cent] = 100 * hundreds
            for word, value in small.items():
                if value:
                    found[times + cent + word] = 100 * hundreds + value
        found[times + "centetun"] = found[times + "centetune"] = 100 * hundreds + 1
        found[times + "centetonze"] = 100 * hundreds + 11
    del found["cents"]
    return with_slips(found, _SLIPS) | dozens("douzaine", "une", "demi", "une demi")


def _as_ordinal(number: str) -> str:
    for end, other in (("cinq", "cinqu"), ("neuf", "neuv")):
        if number.endswith(end):
            return number.removesuffix(end) + other + "ieme"
    return number.removesuffix("s").removesuffix("e") + "ieme"


def ordinals() -> dict[str, int]:
    """Ordinals to 200th by their joined spelling."""
    found = {
        joined(num2words(value, lang=lang, to="ordinal")): value
        for lang in ("fr", "fr_CH")
        for value in range(2, 201)
    }
    # In every spelling of the number; num2words knows one, and none of "quatre-vingtième".
    found |= {_as_ordinal(word): value for word, value in numbers().items() if 1 < value <= 200}
    found |= {word.replace("uniem", "unem"): value for word, value in found.items()}
    first = dict.fromkeys(("premier", "premiere", "premiers", "premieres"), 1)
    return found | first | {"second": 2, "seconde": 2}
