"""The tie-breaks that place two tied pages alike however the open looks are settled."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Literal

from service.counting.round import RoundInput, TieBreak
from service.counting.sources import lots_of
from service.counting.tie import touches

#: "waits": the rule waits for an act, so nothing follows it and neither page is ahead.
Place = Literal["ahead", "level", "behind", "waits"]

#: Any ballots' digest will do to see whether a draw still waits.
_SOME_DIGEST = "0"


def place_of(rule: TieBreak, first: int, second: int, round_input: RoundInput) -> Place:
    """Where `rule` leaves the first of two tied pages, whatever the looks turn out to be.

    A rule that is not known here is taken as able to decide either way.
    """
    return _PLACES[rule](first, second, round_input) if rule in _PLACES else "behind"


def _by_edges(first: int, second: int, round_input: RoundInput) -> Place:
    lead = touches(first, round_input) - touches(second, round_input)
    return "ahead" if lead > 0 else "behind" if lead < 0 else "level"


def _by_number(first: int, second: int, _round_input: RoundInput) -> Place:
    return "ahead" if first < second else "behind"


def _by_pick(first: int, second: int, round_input: RoundInput) -> Place:
    """A pick decides for its page; without one, or with one for another page, the chain waits."""
    picked = None if round_input.host_pick is None else round_input.host_pick[0]
    return "ahead" if picked == first else "behind" if picked == second else "waits"


def _by_runoff(first: int, second: int, round_input: RoundInput) -> Place:
    """A runoff decides among just its own pages; a tie of any others waits for a new one."""
    held = round_input.runoff
    if held is None:
        return "waits"
    if held.pages != tuple(sorted((first, second))):
        return "behind"
    return "level" if held.winner is None else "ahead" if held.winner == first else "behind"


def _by_draw(_first: int, _second: int, round_input: RoundInput) -> Place:
    """A draw among other pages, or after other ballots, may end either way."""
    rules = round_input.rules
    waits = lots_of(rules.draw, round_input.drawn, rules.closes, _SOME_DIGEST).waits
    return "waits" if waits else "behind"


_PLACES: Mapping[TieBreak, Callable[[int, int, RoundInput], Place]] = {
    "most joined edges": _by_edges,
    "lowest number": _by_number,
    "host's pick": _by_pick,
    "runoff": _by_runoff,
    "draw": _by_draw,
}
