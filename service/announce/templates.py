"""Templates of announcements: what a host may write her own of, and how its blanks are filled.

A blank is `$name` or `${name}`; `$$` is a dollar sign. A number may also choose the right word for
itself: `${voters|voter|voters}` gives "voter" for 1, else "voters". The forms stand in the order
of Unicode CLDR (zero, one, two, few, many, other), as many as the game's language has for
numbers: in Polish, say, one, few, many, other.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from string import Template
from typing import Literal, get_args

from babel import Locale
from babel.numbers import format_decimal

from service.errors import BadTemplate

Occasion = Literal["opening", "reminder", "result", "tie", "next round"]
OCCASIONS: tuple[Occasion, ...] = get_args(Occasion)
Length = Literal["full", "short"]
LENGTHS: tuple[Length, ...] = get_args(Length)
Values = Mapping[str, str | int]

#: The longest template that is kept, in characters.
MOST_CHARACTERS = 20_000
_PLURALS = ("zero", "one", "two", "few", "many", "other")

_FULL: dict[Occasion, str] = {
    "opening": (
        "$heading: the vote is open.\n\n"
        "Which page is stitched next? $choose $why\n\n$how\n\n$closing\n\n$ties\n\n$draw"
    ),
    "reminder": (
        "$heading: there is still time to vote, $left.\n\n"
        "Which page is stitched next? $choose $why\n\n$how\n\n$closing"
    ),
    "result": (
        "$heading: $headline\n\n$outcome\n\n$votes\n\n$steps\n\n$counted\n\n$looks\n\n"
        "$next\n\n$record"
    ),
    "tie": ("$heading: $headline\n\n$outcome\n\n$steps\n\n$decides\n\n$counted"),
    "next round": "$heading $begins\n\n$choose $why\n\n$closing",
}
_SHORT: dict[Occasion, str] = {
    "opening": "$heading: the vote is open. $choose $closing",
    "reminder": "$heading: vote now, $left. $choose",
    "result": "$heading: $headline $outcome",
    "tie": "$heading: $headline $outcome",
    "next round": "$heading $begins $choose",
}
DEFAULTS: dict[Length, dict[Occasion, str]] = {"full": _FULL, "short": _SHORT}

#: What every occasion fills in, and what each adds; numbers may choose words.
_ALWAYS = ("game", "round", "heading")
BLANKS: dict[Occasion, tuple[str, ...]] = {
    "opening": (
        *_ALWAYS,
        *("pages", "page_count", "choices", "choose", "why", "how"),
        *("opens", "closes", "closing", "ties", "draw"),
    ),
    "reminder": (
        *_ALWAYS,
        *("pages", "page_count", "choices", "choose", "why", "how", "closes", "closing", "left"),
    ),
    "result": (
        *_ALWAYS,
        *("winner", "winner_votes", "voters", "headline", "outcome", "votes", "steps"),
        *("counted", "looks", "next", "record", "digest"),
    ),
    "tie": (
        *_ALWAYS,
        *("tied", "tied_count", "tied_votes", "voters", "headline", "outcome", "votes", "steps"),
        *("decides", "counted"),
    ),
    "next round": (
        *_ALWAYS,
        *("pages", "page_count", "choose", "why", "opens", "begins"),
        *("closes", "closing"),
    ),
}
NUMBERS = frozenset(
    ("round", "page_count", "choices", "winner_votes", "voters", "tied_count", "tied_votes")
)


class _Blanks(Template):
    """A template whose blanks in braces may list the forms of a word."""

    braceidpattern = r"(?a:[_a-zA-Z][_a-zA-Z0-9]*(?:\|[^{}$|\n]*)*)"


def fill(template: str, values: Values, locale: str = "en_GB") -> str:
    """The template with its blanks filled in; a paragraph that stays empty is left out.

    Raises:
        BadTemplate: it asks for something that `values` does not hold, or cannot be read.
    """
    plurals = Locale.parse(locale).plural_form
    asked = _asked(template)
    given: dict[str, str] = {}
    for blank in asked:
        name, *forms = blank.split("|")
        if name not in values:
            raise BadTemplate(*_unknown(blank, tuple(values)))
        value = values[name]
        if forms:
            _check_forms(blank, locale)
            given[blank] = forms[_forms_of(locale).index(plurals(int(value)))]
        else:
            given[blank] = _shown(value, locale)
    return _tidy(_Blanks(template).substitute(given))


def check_template(occasion: Occasion, template: str, locale: str = "en_GB") -> None:
    """Whether a host's own template can be filled in for that occasion.

    Raises:
        BadTemplate: it is empty or too long, holds a blank that is not known, a lone dollar sign,
            or not as many forms of a word as the language has.
    """
    if not template.strip():
        raise BadTemplate("the template is empty", "write some words, or leave it out")
    if len(template) > MOST_CHARACTERS:
        what = f"the template has {len(template):,} characters"
        raise BadTemplate(what, f"write at most {MOST_CHARACTERS:,}")
    for blank in _asked(template):
        name, *forms = blank.split("|")
        if name not in BLANKS[occasion]:
            raise BadTemplate(*_unknown(blank, BLANKS[occasion]))
        if forms:
            _check_forms(blank, locale)


def _asked(template: str) -> list[str]:
    """The blanks of a template, each once.

    Raises:
        BadTemplate: a dollar sign that begins none.
    """
    read = _Blanks(template)
    if not read.is_valid():
        at = next(
            found for found in read.pattern.finditer(template) if found["invalid"] is not None
        )
        line = template.count("\n", 0, at.start()) + 1
        seen = template[at.start() : at.start() + 20].splitlines()[0]
        what = f"in line {line} of the template {seen!r} is no blank to fill in"
        raise BadTemplate(what, "write $$ for a dollar sign, or $ and a name that is known")
    return read.get_identifiers()


def _unknown(blank: str, known: tuple[str, ...]) -> tuple[str, str]:
    """What is wrong about a blank that is not known, and what to do."""
    what = f"the template asks for ${blank.partition('|')[0]}, which nothing fills in here"
    return what, f"use only {', '.join(f'${name}' for name in known)}"


def _check_forms(blank: str, locale: str) -> None:
    name, *forms = blank.split("|")
    if name not in NUMBERS:
        numbers = ", ".join(sorted(NUMBERS))
        what = f"the template gives forms of a word for ${name}, which is no number"
        raise BadTemplate(what, f"give them for one of {numbers}")
    wanted = _forms_of(locale)
    if len(forms) != len(wanted):
        what = f"the template gives {len(forms)} forms of a word for ${name}"
        raise BadTemplate(what, f"give {len(wanted)}, for {', '.join(wanted)}, parted by |")


def _forms_of(locale: str) -> list[str]:
    """The plural forms that the language has, in the order of CLDR."""
    tags = Locale.parse(locale).plural_form.tags | {"other"}
    return [form for form in _PLURALS if form in tags]


def _shown(value: str | int, locale: str) -> str:
    return value if isinstance(value, str) else format_decimal(value, locale=locale)


def _one_space(found: re.Match[str]) -> str:
    return " " if found.start() else ""


def _tidy(words: str) -> str:
    """Without the holes that empty blanks leave: double spaces, lines of nothing."""
    lines = (
        re.sub(r"(?<=\S) {2,}|^ (?=\S)", _one_space, line).rstrip() for line in words.split("\n")
    )
    return re.sub(r"\n{3,}", "\n\n", "\n".join(lines)).strip()
