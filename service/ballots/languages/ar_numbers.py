"""Arabic number words: written Arabic in both genders and cases, and as they are spoken."""

from __future__ import annotations

from service.ballots.languages.spelling import joined

Table = tuple[tuple[int, str], ...]
#: As they are counted, of both genders, written and spoken.
_UNITS: Table = (
    (1, "واحد واحدة"), (2, "اثنان اثنين اثنتان اثنتين اتنين تنين ثنين إثنان إثنين"),
    (3, "ثلاثة ثلاث تلاتة تلات ثلاته"), (4, "أربعة أربع"), (5, "خمسة خمس"), (6, "ستة ست"),
    (7, "سبعة سبع"), (8, "ثمانية ثماني ثمان تمانية تمنية تمن ثمنية"), (9, "تسعة تسع"),
)  # fmt: skip
#: As they begin another number, never a number alone.
_STARTS: Table = ((1, "أحد إحدى"), (2, "اثنا اثني اثنتا اثنتي"))
_TEENS: Table = (
    (10, "عشرة عشر"),
    (11, "أحدعشر إحدىعشر إحدىعشرة أحدعشرة احداشر حداشر احدعش حدعش حداعش احدىعشره"),
    (12, "اثناعشر اثنيعشر اثنتاعشرة اثنتيعشرة اتناشر اثناشر اطنعش اتنعش اثنعش اثناعش طنعش"),
    (13, "تلتاشر تلاتاشر ثلتاشر تلتعش تلطعش ثلطعش ثلثطعش ثلاثطعش"),
    (14, "اربعتاشر اربعتعش اربعطعش"), (15, "خمستاشر خمستعش خمسطعش"),
    (16, "ستاشر ستعش سطعش ستطعش"), (17, "سبعتاشر سبعتعش سبعطعش"),
    (18, "تمنتاشر تمانتاشر تمنتعش تمنطعش ثمنطعش ثمنتاشر"), (19, "تسعتاشر تسعتعش تسعطعش"),
)  # fmt: skip
_TENS: Table = (
    (20, "عشرون عشرين"), (30, "ثلاثون ثلاثين تلاتين تلتين"), (40, "أربعون أربعين"),
    (50, "خمسون خمسين"), (60, "ستون ستين"), (70, "سبعون سبعين"), (80, "ثمانون ثمانين تمانين تمنين"),
    (90, "تسعون تسعين"),
)  # fmt: skip
_HUNDREDS: Table = (
    (100, "مائة مئة مية"), (200, "مئتان مئتين مائتان مائتين ميتين متين مئتا مائتا"),
    (300, "ثلاثمائة ثلاثمئة ثلاثمية تلتمية"), (400, "أربعمائة أربعمئة أربعمية ربعمية"),
    (500, "خمسمائة خمسمئة خمسمية"), (600, "ستمائة ستمئة ستمية"), (700, "سبعمائة سبعمئة سبعمية"),
    (800, "ثمانمائة ثمانمئة تمنمية ثمانيمائة"), (900, "تسعمائة تسعمئة تسعمية"),
)  # fmt: skip
#: Which one: "page" is feminine; the masculine goes with "number".
_WHICH: Table = (
    (1, "حادية حادي"), (2, "ثانية ثاني تانية تاني"), (3, "ثالثة ثالث تالتة تالت"),
    (4, "رابعة رابع"), (5, "خامسة خامس"), (6, "سادسة سادس"), (7, "سابعة سابع"),
    (8, "ثامنة ثامن تامنة تامن"), (9, "تاسعة تاسع"),
)  # fmt: skip


def _spelled(table: Table) -> dict[str, int]:
    return {joined(word): value for value, words in table for word in words.split()}


def _and(ones: dict[str, int], others: dict[str, int]) -> dict[str, int]:
    return {
        one + joined("و") + other: value + more
        for one, value in ones.items()
        for other, more in others.items()
    }


def _below_hundred() -> dict[str, int]:
    units, tens = _spelled(_UNITS), _spelled(_TENS)
    found = units | _spelled(_TEENS) | tens
    for word, value in units.items():
        if value > 2:
            found |= {word + joined(ten): value + 10 for ten in ("عشر", "عشرة")}
    # One and two take another form before a ten, too.
    return found | _and(units | _spelled(_STARTS), tens)


def _which_one() -> dict[str, int]:
    """Definite, from the second to the hundredth: "the twelfth", "the two and fortieth"."""
    definite = {"ال" + word: value for word, value in _spelled(_WHICH).items()}
    tens = {"ال" + word: value for word, value in _spelled(_TENS).items()}
    found = {word: value for word, value in definite.items() if value > 1}
    for word, value in definite.items():
        found |= {word + joined(ten): value + 10 for ten in ("عشر", "عشرة")}
    found |= _and(definite, tens) | tens
    found |= dict.fromkeys(map(joined, ("العاشرة", "العاشر")), 10)
    return found | dict.fromkeys(map(joined, ("المئة", "المائة", "المية")), 100)


def numbers() -> dict[str, int]:
    """Number words to 399, and "which page" from the fourth on, by their joined spelling."""
    small = _below_hundred()
    hundreds = _spelled(_HUNDREDS)
    # No chart has so many pages that beyond 399 more than the round numbers are needed.
    first_hundreds = {word: value for word, value in hundreds.items() if value < 400}
    found = small | hundreds | _and(first_hundreds, small) | _spelled(_STARTS) | {"صفر": 0}
    # "One page" in the feminine counts pages.
    del found[joined("واحدة")]
    return found | {word: value for word, value in _which_one().items() if value > 3}


def ordinals() -> dict[str, int]:
    """The first three in both genders, and the words that begin a greater one."""
    found = {word: value for word, value in _which_one().items() if value <= 3}
    found |= {joined(word): 1 for word in ("الأولى", "الأول", "الاولى", "أول", "أولى")}
    bare = {word: value for word, value in _spelled(_WHICH).items() if value > 1}
    return found | bare | dict.fromkeys(("الحاديه", "الحادي"), 11)
