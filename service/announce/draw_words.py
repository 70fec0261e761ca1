"""The draw in words: announced with the opening, so that nobody can choose it afterwards."""

from __future__ import annotations

from zoneinfo import ZoneInfo

from service.announce.instants import instant_in_words
from service.counting.round import RoundRules
from service.counting.sources import DrawSource, IfLate

_IF_LATE: dict[IfLate, str] = {
    "left out": "if they are late or cancelled, this source is left out",
    "next numbers": "if they are late or cancelled, its next numbers are waited for",
}


def draw_words(rules: RoundRules, zone: ZoneInfo) -> str:
    """How a tie would be drawn: the sources, what happens where one is late, the own value.

    Empty where the round's tie-breaks have no draw, or only after a runoff, which then has it.
    """
    chain = rules.tie_breaks
    if "draw" not in chain or "runoff" in chain[: chain.index("draw")]:
        return ""
    draw = rules.draw
    how = "A draw goes by RFC 3797, so that anybody can repeat it"
    own = (
        f"a value of the round's own, whose SHA-256 is {draw.commitment}"
        if draw.commitment
        else ("a value of the round's own, whose SHA-256 is told at the opening")
    )
    own += "; it is told after the draw and used with the digest of the ballots"
    if not draw.sources:
        return f"{how}. No outside source was named, so its number is {own}."
    named = "\n".join(
        f"{place}. {_source(source, zone)}" for place, source in enumerate(draw.sources, start=1)
    )
    return (
        f"{how}, with the numbers of:\n{named}\n"
        f"Where none of them can be used, the number is {own}."
    )


def _source(source: DrawSource, zone: ZoneInfo) -> str:
    expected = instant_in_words(source.expected, zone)
    return f"{source.name}, expected on {expected}; {_IF_LATE[source.if_late]}."
