"""Languages by their own names, for whoever chooses which votes may be in."""

from __future__ import annotations

from functools import cache

from babel import Locale, UnknownLocaleError


@cache
def language_name(code: str) -> str:
    """The language's English name and its own: "French (français)"."""
    try:
        locale = Locale.parse(code)
    except (UnknownLocaleError, ValueError):
        return code
    english, own = locale.english_name or code, locale.display_name or code
    return english if english.lower() == own.lower() else f"{english} ({own})"
