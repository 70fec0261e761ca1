"""The tally of a record, and its tie-breaks one after the other."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from verifying.lots import key_string, lots_of, order_of
from verifying.pages import Pages
from verifying.settling import Outcome

#: What a rule kept of the tied pages, and what it looked at; None while it waits for an act.
Kept = tuple[list[int], dict[int, str]]


@dataclass(frozen=True)
class Tie:
    """The tied pages, ascending, and all that a rule looks at."""

    pages: list[int]
    record: dict[str, Any]
    chart: Pages
    ballots: list[Outcome]
    votes: Counter[int]
    ballots_digest: str


def steps_of(tie: Tie) -> list[dict[str, Any]]:
    """The steps of the record's chain of tie-breaks, until one page is left or the chain ends."""
    steps: list[dict[str, Any]] = []
    pages = tie.pages
    for rule in tie.record["rules"]["tie_breaks"]:
        if len(pages) < 2:
            break
        here = Tie(pages, tie.record, tie.chart, tie.ballots, tie.votes, tie.ballots_digest)
        found = RULES[rule](here)
        kept, values = (pages, {}) if found is None else found
        told = [{"page": page, "value": value} for page, value in sorted(values.items())]
        steps.append({"rule": rule, "tied": pages, "kept": kept, "values": told})
        if found is None:
            break
        pages = kept
    return steps


def _most(tie: Tie, found: dict[int, int]) -> Kept:
    most = max(found.values())
    kept = [page for page in tie.pages if found[page] == most]
    return kept, {page: str(value) for page, value in found.items()}


def _most_joined_edges(tie: Tie) -> Kept:
    stitched = set(tie.record["rules"]["stitched"])
    return _most(tie, {page: len(tie.chart.over_an_edge(page) & stitched) for page in tie.pages})


def _neighbours(tie: Tie) -> Kept:
    around = {page: tie.chart.joined_to(page) for page in tie.pages}
    return _most(tie, {page: sum(tie.votes[near] for near in around[page]) for page in tie.pages})


def _reached_first(tie: Tie) -> Kept:
    reached = {}
    for page in tie.pages:
        given = [dict(ballot.since)[page] for ballot in tie.ballots if page in ballot.pages]
        reached[page] = (max(at[0] for at in given), max(at[1] for at in given))
    surely = min(latest for _, latest in reached.values())
    kept = [page for page in tie.pages if reached[page][0] <= surely]
    return kept, {page: _span_in_words(*at) for page, at in reached.items()}


def _runoff(tie: Tie) -> Kept | None:
    held = tie.record["runoff"]
    if held is None or held["pages"] != tie.pages:
        return None
    if held["winner"] is None:
        return tie.pages, {}
    votes = {one["page"]: one["votes"] for one in held["votes"]}
    return [held["winner"]], {page: str(votes.get(page, 0)) for page in tie.pages}


def _draw(tie: Tie) -> Kept | None:
    lots = lots_of(tie.record, tie.ballots_digest)
    if lots is None:
        return None
    order = order_of(key_string(lots), tie.pages)
    turns = {page: f"drawn {turn} of {len(order)}" for turn, page in enumerate(order, start=1)}
    return [order[0]], turns


def _lowest_number(tie: Tie) -> Kept:
    return [min(tie.pages)], {page: str(page) for page in tie.pages}


def _hosts_pick(tie: Tie) -> Kept | None:
    pick = tie.record["pick"]
    if pick is None or pick["page"] not in tie.pages:
        return None
    return [pick["page"]], {pick["page"]: pick["reason"]}


RULES: dict[str, Callable[[Tie], Kept | None]] = {
    "most joined edges": _most_joined_edges,
    "neighbours": _neighbours,
    "reached first": _reached_first,
    "runoff": _runoff,
    "draw": _draw,
    "lowest number": _lowest_number,
    "host's pick": _hosts_pick,
}


def _span_in_words(earliest: datetime, latest: datetime) -> str:
    ends = [at.isoformat().replace("+00:00", "Z") for at in (earliest, latest)]
    return ends[0] if earliest == latest else f"{ends[0]} to {ends[1]}"
