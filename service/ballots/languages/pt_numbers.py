"""Portuguese number words: of Portugal and Brazil, of either gender, and with slips."""

from __future__ import annotations

from num2words import num2words

from service.ballots.languages.spelling import dozens, joined, with_slips

_SLIPS = (
    ("quarenta", "quareta"), ("quarenta", "cuarenta"), ("cinquenta", "cincoenta"),
    ("cinquenta", "cinqenta"), ("cinquenta", "sinquenta"), ("cinquenta", "cincuenta"),
    ("sessenta", "secenta"), ("sessenta", "sesenta"), ("setenta", "cetenta"),
    ("noventa", "novente"),
    ("trinta", "trita"), ("trinta", "trina"), ("quatro", "quarto"), ("dezesse", "dezece"),
    ("dezoito", "dezoitto"), ("dezoito", "desoito"), ("dezesseis", "desesseis"),
    ("dezesseis", "dezeseis"), ("dezessete", "dezesete"), ("dezenove", "desenove"),
    ("treze", "trese"), ("quinze", "quinse"), ("catorze", "quatorze"), ("catorze", "catorse"),
)  # fmt: skip

_HUNDREDTH = ("centesimo", "centesima")


def _below_hundred() -> dict[str, int]:
    found = {
        joined(num2words(value, lang=lang)): value
        for lang in ("pt", "pt_BR")
        for value in range(100)
    }
    for ten in range(20, 100, 10):
        word = joined(num2words(ten, lang="pt"))
        for one in range(1, 10):
            # "Trinta dois" leaves out the "e" that belongs between.
            found[word + joined(num2words(one, lang="pt"))] = ten + one
    found |= {
        word.removesuffix(end) + other: value
        for word, value in list(found.items())
        for end, other in (("um", "uma"), ("dois", "duas"))
        if word.endswith(end) and word != "um"
    }
    return found


def numbers() -> dict[str, int]:
    """Number words to 999 by their joined spelling; "uma" alone is an article."""
    small = _below_hundred()
    found = dict(small) | {"cem": 100, "cento": 100}
    for hundreds in range(1, 10):
        word = "cento" if hundreds == 1 else joined(num2words(100 * hundreds, lang="pt"))
        stems = {word, word.removesuffix("os") + "as"} if hundreds > 1 else {word}
        for stem in stems:
            found[stem] = 100 * hundreds
            for rest, value in (small | {"uma": 1}).items():
                if value:
                    found[stem + "e" + rest] = found[stem + rest] = 100 * hundreds + value
    kept = with_slips(found, _SLIPS)
    # "Quarto" by itself is the fourth, or a room.
    return {word: value for word, value in kept.items() if word != "quarto"} | dozens(
        "dúzia", "uma", "meia"
    )


def ordinals() -> dict[str, int]:
    """Ordinals to 200th by their joined spelling, of either gender."""
    found: dict[str, int] = {}
    for value in range(1, 101):
        parts = num2words(value, lang="pt", to="ordinal").split()
        found[joined("".join(parts))] = value
        found["".join(joined(part)[:-1] + "a" for part in parts)] = value
    found |= {"septimo": 7, "septima": 7, "undecimo": 11, "undecima": 11, "duodecimo": 12}
    small = [(word, value) for word, value in found.items() if value < 100]
    found |= {hundred + word: 100 + value for word, value in small for hundred in _HUNDREDTH}
    return found | {"ducentesimo": 200, "ducentesima": 200}
