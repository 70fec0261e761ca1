"""The rules that narrow a tie, by name. A chain of them is chosen before the opening.

A rule is a function of the pages tied and of the round so far; it keeps some of them, never none.
A new rule is one function here, one line in `RULES` and its name in `TieBreak`.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass

from service.comments.spans import Span
from service.counting.figures import Given
from service.counting.result import TieStep
from service.counting.round import RoundInput, TieBreak
from service.counting.wording import how_many, pages_in_words, sentence
from service.errors import BadRuling


@dataclass(frozen=True, slots=True)
class Tie:
    """A tie to be narrowed: the pages, ascending, and all that a rule may look at.

    `given` are the votes of all ballots.
    """

    pages: tuple[int, ...]
    given: Given
    round_input: RoundInput


Rule = Callable[[Tie], TieStep]


def touches(page: int, round_input: RoundInput) -> int:
    """How many stitched pages share an edge of the chart with `page`."""
    return len(round_input.chart.edge_neighbours(page) & round_input.rules.stitched)


def most_joined_edges(tie: Tie) -> TieStep:
    """Keep the pages that touch the most stitched pages: the safest to count from."""
    touched = {page: touches(page, tie.round_input) for page in tie.pages}
    most = max(touched.values())
    kept = tuple(page for page in tie.pages if touched[page] == most)
    stitched = how_many(most, "stitched page") if most else "no stitched page"
    if len(kept) == len(tie.pages):
        who, none = ("Both", "Neither") if len(kept) == 2 else ("All", "None")
        why = (
            f"{who} of them touch {stitched}" if most else f"{none} of them touches a stitched page"
        )
        why += ", so the tie stays."
    else:
        verb = "touches" if len(kept) == 1 else "each touch"
        rest = "the other" if len(tie.pages) == 2 else "any other of them"
        why = f"{sentence(pages_in_words(kept))} {verb} {stitched}, more than {rest}."
    return TieStep("most joined edges", tie.pages, kept, why, _values(touched))


def reached_first(tie: Tie) -> TieStep:
    """Keep the pages that may have reached the tied total first: when the last vote was given.

    A page that provably reached it after another is out. Where times cannot be told apart, the
    tie stays.
    """
    reached = {page: tie.given.reached[page] for page in tie.pages}
    surely = min(at.latest for at in reached.values())
    kept = tuple(page for page in tie.pages if reached[page].earliest <= surely)
    if len(kept) == 1:
        why = f"{sentence(pages_in_words(kept))} reached that number of votes first."
    else:
        together = (
            all(reached[page] == reached[kept[0]] for page in kept) and reached[kept[0]].is_exact
        )
        how = "reached it at the same time" if together else "cannot be told apart by time"
        stays = "the tie stays" if kept == tie.pages else "these stay tied"
        why = f"{sentence(pages_in_words(kept))} {how}, so {stays}."
    values = {page: _span_in_words(at) for page, at in reached.items()}
    return TieStep("reached first", tie.pages, kept, why, _values(values))


def lowest_number(tie: Tie) -> TieStep:
    """Keep the page with the lowest number."""
    lowest = min(tie.pages)
    why = f"Page {lowest} has the lowest number."
    numbers = {page: page for page in tie.pages}
    return TieStep("lowest number", tie.pages, (lowest,), why, _values(numbers))


def hosts_pick(tie: Tie) -> TieStep:
    """Keep the page that the host picks, with her reason; all of them until she has picked.

    A pick that is not among the tied pages (it was made before the count changed) keeps them all
    too, and says so.
    """
    pick = tie.round_input.host_pick
    tied = pages_in_words(tie.pages)
    if pick is None:
        return TieStep("host's pick", tie.pages, tie.pages, f"The host has yet to pick: {tied}.")
    page, reason = pick
    if page not in tie.pages:
        why = f"The host picked page {page}, which is not among those tied: pick again from {tied}."
        return TieStep("host's pick", tie.pages, tie.pages, why)
    why = f"The host picked page {page}: {reason.strip()}"
    return TieStep("host's pick", tie.pages, (page,), why, ((page, reason.strip()),))


RULES: Mapping[TieBreak, Rule] = {
    "most joined edges": most_joined_edges,
    "reached first": reached_first,
    "lowest number": lowest_number,
    "host's pick": hosts_pick,
}

#: Rules that wait for somebody's act: while they keep more than one page, nothing follows them.
WAITING: frozenset[TieBreak] = frozenset({"host's pick"})


def narrowed(tie: Tie) -> tuple[TieStep, ...]:
    """The steps of the round's chain on a tie, until one page is left or the chain ends."""
    steps: list[TieStep] = []
    pages = tie.pages
    for rule in tie.round_input.rules.tie_breaks:
        if len(pages) == 1:
            break
        step = RULES[rule](Tie(pages, tie.given, tie.round_input))
        steps.append(step)
        pages = step.kept
        if rule in WAITING:
            break
    return tuple(steps)


def check_pick(page: int, reason: str, tied: tuple[int, ...]) -> None:
    """Refuse a host's pick that cannot be, where `tied` are the pages that wait for it.

    Raises:
        BadRuling: no tie waits for a pick; the page is not among the tied ones; no reason.
    """
    if not tied:
        raise BadRuling("no tie waits for the host's pick", "pick only where the count asks for it")
    if page not in tied:
        raise BadRuling(
            f"page {page} is not among the tied {pages_in_words(tied)}",
            "pick one of those",
        )
    if not reason.strip():
        raise BadRuling("the host's pick has no reason", "say in a few words why")


def _values(values: Mapping[int, object]) -> tuple[tuple[int, str], ...]:
    return tuple((page, str(value)) for page, value in sorted(values.items()))


def _span_in_words(span: Span) -> str:
    """RFC 3339 in UTC: one instant, or the first and the last it may have been."""
    ends = [at.isoformat().replace("+00:00", "Z") for at in (span.earliest, span.latest)]
    return ends[0] if span.is_exact else f"{ends[0]} to {ends[1]}"
