"""The form of a round's rules: what it holds at first, and what the API would make of it."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any
from zoneinfo import ZoneInfo

from service.api.round_models import RoundChangeIn
from service.counting.sources import MOST_SOURCES
from service.pages.form_reading import read_as, said
from service.pages.game_frame import typed_time
from service.store.round_rules import DraftRules

#: The tie-breaks in their order.
CHAIN = ("first", "second", "third", "fourth", "fifth", "last")
#: How many sources of a draw the form has room for.
SOURCES = tuple(range(1, min(3, MOST_SOURCES) + 1))
_NAMES = {"tie_breaks": "last", "sources": "source_1_name", "name": "source_1_name"}
#: Where the errors of rules are told.
PLACES: Mapping[str, tuple[str, ...]] = {
    "ClosesBeforeOpening": ("closes",),
    "PageNotOnChart": ("previous",),
    "BadDraw": ("source_1_name",),
    "BadRules": ("last",),
}


def form_of(rules: DraftRules, zone: ZoneInfo) -> dict[str, str]:
    """The rules as the form's fields hold them."""
    *before, last = rules.tie_breaks or ("lowest number",)
    found = {
        "opens": typed_time(rules.opens, zone),
        "closes": typed_time(rules.closes, zone),
        "choices": str(rules.choices),
        "standing": rules.standing,
        "previous": "" if rules.previous is None else str(rules.previous),
        "last": last,
    }
    found |= dict(zip(CHAIN, before, strict=False))
    found |= {"last": last}
    for place, source in enumerate(rules.sources[: len(SOURCES)], start=1):
        found[f"source_{place}_name"] = source.name
        found[f"source_{place}_expected"] = typed_time(source.expected, zone)
        found[f"source_{place}_late"] = source.if_late
    return found


def change_in(
    words: Mapping[str, str], *, is_runoff: bool
) -> tuple[RoundChangeIn | None, dict[str, str]]:
    """What the form says; a field left empty is none. A runoff's says only times and sources."""
    raw: dict[str, Any] = {
        name: words.get(name, "").strip() or None for name in ("opens", "closes")
    }
    raw["sources"] = [
        {
            "name": words[f"source_{place}_name"],
            "expected": words.get(f"source_{place}_expected", ""),
            **({"if_late": late} if (late := words.get(f"source_{place}_late")) else {}),
        }
        for place in SOURCES
        if words.get(f"source_{place}_name", "").strip()
    ]
    if not is_runoff:
        raw |= said(words, "choices", "standing")
        raw["previous"] = words.get("previous", "").strip() or None
        raw["tie_breaks"] = [words[name] for name in CHAIN if words.get(name)]
    return read_as(RoundChangeIn, raw, _NAMES)
