"""Greek number words: counting, saying which page, and in Latin letters as Greeks type them."""

from __future__ import annotations

from service.ballots.languages.spelling import joined, with_slips

_UNITS = (
    (1, "ένα μία έναν ένας"), (2, "δύο"), (3, "τρία τρεις"), (4, "τέσσερα τέσσερις"), (5, "πέντε"),
    (6, "έξι"), (7, "επτά εφτά"), (8, "οκτώ οχτώ"), (9, "εννέα εννιά"),
)  # fmt: skip
_TEENS = (
    (10, "δέκα"), (11, "έντεκα ένδεκα"), (12, "δώδεκα"), (13, "δεκατρία δεκατρείς δεκατρεις"),
    (14, "δεκατέσσερα δεκατέσσερις"), (15, "δεκαπέντε"), (16, "δεκαέξι δεκάξι"),
    (17, "δεκαεπτά δεκαεφτά"), (18, "δεκαοκτώ δεκαοχτώ"), (19, "δεκαεννέα δεκαεννιά"),
)  # fmt: skip
_TENS = (
    (20, "είκοσι"), (30, "τριάντα"), (40, "σαράντα"), (50, "πενήντα"), (60, "εξήντα"),
    (70, "εβδομήντα"), (80, "ογδόντα"), (90, "ενενήντα εννενήντα"),
)  # fmt: skip
_HUNDREDS = (
    (100, "εκατό εκατόν"), (200, "διακόσια διακόσιες"), (300, "τριακόσια τριακόσιες"),
    (400, "τετρακόσια τετρακόσιες"), (500, "πεντακόσια πεντακόσιες"), (600, "εξακόσια εξακόσιες"),
    (700, "επτακόσια εφτακόσια επτακόσιες"), (800, "οκτακόσια οχτακόσια οκτακόσιες"), (900, "εννιακόσια εννιακόσιες"),
)  # fmt: skip
_WHICH_UNITS = "πρώτ δεύτερ τρίτ τέταρτ πέμπτ έκτ έβδομ όγδο ένατ".split()
_WHICH_TENS = (
    "δέκατ εικοστ τριακοστ τεσσαρακοστ πεντηκοστ εξηκοστ εβδομηκοστ ογδοηκοστ ενενηκοστ"
).split()
_ENDINGS = ("η", "ης", "ην", "ο", "ος", "ου", "α")
_SLIPS = (
    ("σσ", "σ"), ("ννε", "νε"), ("ννι", "νι"), ("εικοσι", "ικοσι"), ("εικοσι", "εικωσι"),
    ("εικοσι", "ηκοσι"), ("πενηντα", "πενιντα"), ("εξηντα", "εξιντα"), ("οκτω", "οκτο"),
    ("οχτω", "οχτο"), ("εκατο", "εκατω"), ("εντεκα", "εντακα"),
)  # fmt: skip
_LATIN_UNITS = (
    (1, "ena mia"), (2, "dyo dio duo"), (3, "tria treis"), (4, "tessera tesera tesseris"),
    (5, "pente"), (6, "exi eksi"), (7, "epta efta"), (8, "okto oxto ohto oktw oxtw"),
    (9, "ennia enia ennea"),
)  # fmt: skip
_LATIN_TEENS = (
    (10, "deka"), (11, "enteka endeka"), (12, "dodeka dwdeka"), (13, "dekatria"),
    (14, "dekatessera dekatesera"), (15, "dekapente"), (16, "dekaexi dekaeksi dekaxi dekaksi"),
    (17, "dekaepta dekaefta"), (18, "dekaokto dekaoxto dekaoktw"), (19, "dekaennia dekaenia"),
)  # fmt: skip
_LATIN_TENS = (
    (20, "eikosi ikosi"), (30, "trianta triada"), (40, "saranta sarada"),
    (50, "peninta penhnta penida"), (60, "exinta eksinta eksida"), (70, "evdominta evdomhnta"),
    (80, "ogdonta ogdoda"), (90, "eneninta enenhnta"),
)  # fmt: skip
#: Words of other languages; they stand only within a number.
_ONLY_WITHIN = frozenset("ena mia dio duo tria tessera epta treis".split())

Table = tuple[tuple[int, str], ...]


def _spelled(table: Table) -> dict[str, int]:
    return {joined(word): value for value, words in table for word in words.split()}


def _beyond(tens: dict[str, int], units: dict[str, int]) -> dict[str, int]:
    return {
        ten + unit: above + below for ten, above in tens.items() for unit, below in units.items()
    }


def numbers() -> dict[str, int]:
    """Number words to 399 by their joined spelling."""
    units, tens = _spelled(_UNITS), _spelled(_TENS)
    small = units | _spelled(_TEENS) | tens | _beyond(tens, units)
    hundreds = _spelled(_HUNDREDS)
    # No chart has so many pages that beyond 399 more than the round numbers are needed.
    first_hundreds = {word: value for word, value in hundreds.items() if value < 400}
    found = small | hundreds | _beyond(first_hundreds, small) | {joined("μηδέν"): 0}
    latin_units, latin_tens = _spelled(_LATIN_UNITS), _spelled(_LATIN_TENS)
    latin = {word: value for word, value in latin_units.items() if word not in _ONLY_WITHIN}
    latin |= _spelled(_LATIN_TEENS) | latin_tens | _beyond(latin_tens, latin_units)
    # "One page" in the feminine counts pages; page one is "σελίδα ένα".
    del found[joined("μία")]
    return with_slips(found, _SLIPS) | latin | {"ekato": 100}


def ordinals() -> dict[str, int]:
    """Ordinals to 199th by their joined spelling."""
    found: dict[str, int] = {}
    for ending in _ENDINGS:
        units = {joined(stem + ending): value for value, stem in enumerate(_WHICH_UNITS, 1)}
        tens = {joined(stem + ending): 10 * value for value, stem in enumerate(_WHICH_TENS, 1)}
        teens = {"ενδεκατ": 11, "εντεκατ": 11, "δωδεκατ": 12}
        small = units | tens | _beyond(tens, units)
        small |= {stem + joined(ending): value for stem, value in teens.items()}
        hundred = {joined("εκατοστ" + ending): 100}
        found |= small | hundred | _beyond(hundred, small) | {joined("διακοσιοστ" + ending): 200}
    # Without accents "sixth" is the word for "except".
    del found[joined("έκτος")]
    return with_slips(found, [("ενενη", "εννενη")])
