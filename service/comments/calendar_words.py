"""Words of time that Babel does not carry, and the names of months and days that it does.

"Today" and "yesterday" are Unicode CLDR's (its relative days 0, -1 and -2); the words for "just
now" and "about" are common practice on pages, without a published source.
"""

from __future__ import annotations

import re
from functools import lru_cache

from babel import Locale

#: By language: today, yesterday, and the day before where the language has a word for it.
_DAYS: dict[str, tuple[str, ...]] = {
    "ar": ("اليوم", "أمس"),
    "ca": ("avui", "ahir"),
    "cs": ("dnes", "včera", "předevčírem"),
    "da": ("i dag", "i går", "i forgårs"),
    "de": ("heute", "gestern", "vorgestern"),
    "el": ("σήμερα", "χθες"),
    "en": ("today", "yesterday"),
    "es": ("hoy", "ayer", "anteayer"),
    "fi": ("tänään", "eilen", "toissapäivänä"),
    "fo": ("í dag", "í gjár"),
    "fr": ("aujourd'hui", "hier", "avant-hier"),
    "he": ("היום", "אתמול"),
    "is": ("í dag", "í gær"),
    "it": ("oggi", "ieri", "l'altro ieri"),
    "ja": ("今日", "昨日", "一昨日"),
    "ko": ("오늘", "어제", "그저께"),
    "nb": ("i dag", "i går", "i forgårs"),
    "nl": ("vandaag", "gisteren", "eergisteren"),
    "pl": ("dzisiaj", "wczoraj", "przedwczoraj"),
    "pt": ("hoje", "ontem", "anteontem"),
    "ro": ("azi", "ieri"),
    "ru": ("сегодня", "вчера", "позавчера"),
    "sv": ("i dag", "i går", "i förrgår"),
    "tr": ("bugün", "dün"),
    "uk": ("сьогодні", "вчора", "позавчора"),
    "zh": ("今天", "昨天", "前天"),
}

#: How many local days before the day of copying a word tells of.
DAYS_BACK: dict[str, int] = {
    word: back for words in _DAYS.values() for back, word in enumerate(words)
}

_NOW: dict[str, tuple[str, ...]] = {
    "cs": ("teď", "právě teď"),
    "da": ("nu", "lige nu"),
    "de": ("gerade eben", "jetzt", "soeben", "vor ein paar sekunden", "vor wenigen sekunden"),
    "en": (
        *("just now", "right now", "now", "moments ago", "a moment ago", "seconds ago"),
        *("a few seconds ago", "less than a minute ago"),
    ),
    "es": ("ahora", "ahora mismo", "justo ahora", "hace un momento", "hace unos segundos"),
    "fi": ("nyt", "juuri nyt"),
    "fr": ("à l'instant", "maintenant", "il y a un instant", "il y a quelques secondes"),
    "it": ("adesso", "ora", "proprio ora", "poco fa", "qualche secondo fa", "pochi secondi fa"),
    "ja": ("たった今", "今", "数秒前"),
    "ko": ("방금", "방금 전", "지금"),
    "nb": ("nå", "akkurat nå"),
    "nl": ("nu", "zojuist", "zonet", "een paar seconden geleden"),
    "pl": ("teraz", "przed chwilą", "kilka sekund temu"),
    "pt": ("agora", "agora mesmo", "há instantes", "há alguns segundos", "há poucos segundos"),
    "ru": ("только что", "сейчас"),
    "sv": ("nu", "nyss", "just nu", "alldeles nyss"),
    "tr": ("şimdi", "az önce"),
    "uk": ("щойно", "зараз"),
    "zh": ("刚刚", "现在"),
}

#: Said of what was written a moment before the page was copied.
NOW = frozenset(word for words in _NOW.values() for word in words)

_ONES: dict[str, tuple[str, ...]] = {
    "cs": ("jeden", "jednu"),
    "da": ("en", "et"),
    "de": ("einem", "einer", "ein", "eine"),
    "el": ("ένα", "μία", "μια"),
    "en": ("a", "an", "one"),
    "es": ("un", "una"),
    "fr": ("un", "une"),
    "it": ("un", "una", "uno"),
    "nb": ("en", "et", "ett", "én"),
    "nl": ("een", "één"),
    "pl": ("jeden", "jedną"),
    "pt": ("um", "uma"),
    "ru": ("один", "одну"),
    "sv": ("en", "ett"),
    "tr": ("bir",),
    "uk": ("один", "одну"),
}

#: Words for one, as they stand in "an hour ago", "vor einer Stunde".
ONES = frozenset(word for words in _ONES.values() for word in words)

#: What says no more than "N units ago" says anyway.
AT_LEAST = re.compile(r"^(?:over|more than) ")

#: What makes a number a rounded one.
ROUGHLY = re.compile(
    r"(?:about|around|approximately|almost|nearly|environ|etwa|ungefähr|ca\.?|circa|"
    r"aproximadamente|ongeveer|cirka|omkring|około|~) "
)

#: Whose names of months and weekdays are known.
_NAMED = (
    *("en", "fr", "de", "es", "it", "pt", "nl", "sv", "pl"),
    *("da", "nb", "fi", "cs", "ru", "uk", "ro", "ca", "tr"),
)


@lru_cache(maxsize=1)
def month_names() -> dict[str, int]:
    """Month names and their abbreviations without dots, lower case, in the common languages."""
    named: dict[str, int] = {}
    for code in _NAMED:
        for widths in Locale.parse(code).months.values():
            for width in ("wide", "abbreviated"):
                for number, name in widths.get(width, {}).items():
                    named.setdefault(_bare(name), number)
    named["sept"] = 9
    return {name: number for name, number in named.items() if not name.isdigit()}


@lru_cache(maxsize=1)
def day_names() -> frozenset[str]:
    """Names of weekdays and their abbreviations without dots, lower case."""
    return frozenset(
        _bare(name)
        for code in _NAMED
        for widths in Locale.parse(code).days.values()
        for width in ("wide", "abbreviated")
        for name in widths.get(width, {}).values()
    )


def _bare(name: str) -> str:
    return str(name).replace(".", "").casefold()
