"""Records made in a line, and rounds of every kind to make them of."""

from __future__ import annotations

import json
from dataclasses import replace
from typing import Any

from hypothesis import strategies as st

from service.counting.draw import plain_number
from service.counting.record import RecordAbout, make_record
from service.counting.round import RoundInput, Runoff
from service.counting.sources import DrawInput, DrawRules, DrawSource, Told, commitment_of
from tests.counting.rounds import (
    CLOSES,
    hour,
    look,
    round_of,
    ruling,
    takes_back,
    vote,
)
from tests.counting.test_counting_laws import rounds

Json = dict[str, Any]

SALT = bytes(range(100, 116))
OWN = bytes(range(32))
ABOUT = RecordAbout(
    game="windy-island",
    name="The windy island's mystery",
    seal="5e" * 32,
    round=2,
    announced=hour(50),
    salt=SALT,
)
LOTTERY = DrawSource("the island lottery of 4 March", hour(49))
FERRY = DrawSource("the ferry's passengers of 5 March", hour(49), "next numbers")


def record_of(given: RoundInput, about: RecordAbout = ABOUT) -> Json:
    """The record of a round, as whoever checks it reads it."""
    made = json.loads(make_record(about, given).text)
    assert isinstance(made, dict)
    return made


def full_round(*chain: Any, **changed: Any) -> RoundInput:
    """A round with something of everything: a tie, rulings, looks, spans, withdrawals."""
    rules: dict[str, Any] = {
        "stitched": frozenset({2, 6}),
        "tie_breaks": chain
        or ("most joined edges", "neighbours", "reached first", "lowest number"),
    }
    return round_of(
        vote("a", 3, 1, voter="mo"),
        vote("b", 3, (2, 4), voter="jo"),
        vote("c", 7, 5, voter="lu"),
        vote("d", 12, 3, voter="bo"),
        vote("e", 7, 6, voter="bo"),
        vote("f", 12, 7, voter="al"),
        vote("g", 12, 8, voter="Édith  Ask"),
        look("h", 3, 7, at=9, voter="ed", rulings=(ruling(7), ruling())),
        look("i", 5, at=10, voter="flo", rulings=(ruling(),)),
        vote("j", 9, 60, voter="gus"),
        vote("k", 9, (40, 60), ruling(in_time=False), voter="hal"),
        takes_back("l", 12, voter="ian"),
        vote("m", 2, 11, voter="ian"),
        **(rules | changed),
    )


def drawn_round(*told: Told, sources: tuple[DrawSource, ...] = (LOTTERY, FERRY)) -> RoundInput:
    """The same round, whose tie is drawn."""
    given = full_round("draw", draw=DrawRules(sources, commitment_of(OWN)))
    return replace(given, drawn=DrawInput(tuple(enumerate(told, start=1)), OWN), salt=SALT)


EVERY_KIND: dict[str, RoundInput] = {
    "a chain that counts": full_round(),
    "a draw by outside sources": drawn_round(Told(("4", "19.5", "8")), Told(("77",))),
    "a draw by one source": drawn_round(Told((), "cancelled"), Told(("77",))),
    "a draw by the own value": drawn_round(sources=()),
    "a runoff": replace(
        full_round("runoff", "lowest number"),
        runoff=Runoff(3, (3, 7, 12), 7, ((7, 5), (3, 4)), "ab" * 32),
    ),
    "a pick": replace(full_round("host's pick"), host_pick=(12, "nearest the harbour")),
    "nobody voted": round_of(),
}

numbers = st.decimals(0, 99, places=2).map(lambda it: plain_number(str(it)))
told = st.builds(Told, st.lists(numbers, min_size=1, max_size=4).map(tuple))


@st.composite
def rounds_to_record(draw: st.DrawFn) -> RoundInput:
    """Any round whose voting has ended, with whatever its tie-breaks may need."""
    given = draw(rounds())
    sources = draw(st.sampled_from([(), (LOTTERY,), (LOTTERY, FERRY)]))
    runoff = draw(
        st.none()
        | st.just(Runoff(3, (3, 7), None))
        | st.frozensets(st.integers(1, 12), min_size=2, max_size=3).map(
            lambda pages: Runoff(3, tuple(sorted(pages)), min(pages), ((min(pages), 2),))
        )
    )
    rules = replace(given.rules, closes=CLOSES, draw=DrawRules(sources, commitment_of(OWN)))
    known = tuple((place, draw(told)) for place, _ in enumerate(sources, start=1))
    value = draw(st.sampled_from([None, OWN]))
    return replace(given, rules=rules, runoff=runoff, drawn=DrawInput(known, value), salt=SALT)
