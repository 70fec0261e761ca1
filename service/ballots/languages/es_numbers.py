"""Spanish number words: in one word or several, of either gender, and with slips."""

from __future__ import annotations

from num2words import num2words

from service.ballots.languages.spelling import dozens, joined, with_slips

_SLIPS = (
    ("cuarenta", "quarenta"), ("cincuenta", "sincuenta"), ("cincuenta", "cinquenta"),
    ("sesenta", "secenta"), ("setenta", "cetenta"), ("noventa", "nobenta"), ("noventa", "novienta"),
    ("veinti", "venti"), ("veinti", "beinti"), ("veinte", "beinte"), ("treinta", "treynta"),
    ("dieci", "diesi"), ("quince", "quinse"), ("trece", "trese"), ("catorce", "catorse"),
    ("cuatro", "quatro"), ("nueve", "nuebe"), ("ocho", "hocho"),
)  # fmt: skip

_HUNDREDTH = ("centesimo", "centesima")


def _below_hundred() -> dict[str, int]:
    found = {joined(num2words(value, lang="es")): value for value in range(100)}
    units = {word: value for word, value in found.items() if 0 < value < 10}
    tens = {word: value for word, value in found.items() if 10 <= value < 100 and not value % 10}
    for ten, value in tens.items():
        for unit, ones in units.items():
            # "Treinta y uno" is also written with "i", with nothing; "veinte y uno" is old.
            found |= {ten + link + unit: value + ones for link in ("y", "i", "")}
    ends = {"uno": ("un", "una")}
    for word, value in list(found.items()):
        for end, others in ends.items():
            if word.endswith(end) and word != end:
                found |= {word.removesuffix(end) + other: value for other in others}
    return found


def numbers() -> dict[str, int]:
    """Number words to 999 by their joined spelling.

    "Un" and "una" alone are articles, and "la uno" is what page one is called.
    """
    small = _below_hundred()
    # "Veinti tres" is written in two words by some.
    found = dict(small) | {"cien": 100, "ciento": 100, "veinti": 20}
    behind = small | {"un": 1, "una": 1}
    for hundreds in range(1, 10):
        word = joined(num2words(100 * hundreds, lang="es"))
        stems = {"ciento", "cien"} if hundreds == 1 else {word, word.replace("cientos", "cientas")}
        for stem in stems:
            found[stem] = 100 * hundreds
            found |= {
                stem + rest: 100 * hundreds + value for rest, value in behind.items() if value
            }
    return with_slips(found, _SLIPS) | dozens("docena", "una", "media")


def ordinals() -> dict[str, int]:
    """Ordinals to 200th by their joined spelling, of either gender."""
    found: dict[str, int] = {"primer": 1, "tercer": 3, "undecimo": 11, "duodecimo": 12}
    for value in range(1, 101):
        words = num2words(value, lang="es", to="ordinal")
        # The forties are "cuadragésimo" in the dictionaries, "quadragésimo" in num2words.
        for written in {words, words.replace("quadra", "cuadra")}:
            found[joined(written)] = value
            found["".join(joined(part)[:-1] + "a" for part in written.split())] = value
    found |= {word[:-1] + "a": value for word, value in found.items() if word.endswith("o")}
    found |= {word.replace("mooct", "moct"): value for word, value in found.items()}
    # Before a noun "primero" and "tercero" lose their end.
    found |= {
        word[:-1]: value for word, value in found.items() if word.endswith(("primero", "tercero"))
    }
    small = [(word, value) for word, value in found.items() if value < 100]
    found |= {hundred + word: 100 + value for word, value in small for hundred in _HUNDREDTH}
    found |= {"ducentesimo": 200, "ducentesima": 200}
    return found | {word.replace("septim", "setim"): value for word, value in found.items()}
