"""The rules that narrow a tie, by name. A chain of them is chosen before the opening.

A rule is a function of the pages tied and of the round so far; it keeps some of them, never none.
Those that wait for an act after the voting are in `acts`. A new rule is one function, one line in
`RULES` and its name in `TieBreak`; DEVELOPERS.md says what else it needs.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

from service.comments.spans import Span
from service.counting.acts import draw, hosts_pick, runoff
from service.counting.result import TieStep
from service.counting.round import TieBreak
from service.counting.tie import Rule, Tie, told, touches, votes_around
from service.counting.wording import how_many, pages_in_words, sentence


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
    return TieStep("most joined edges", tie.pages, kept, why, told(touched))


def neighbours(tie: Tie) -> TieStep:
    """Keep the pages with the most votes on the pages joined to them: what is wished for nearby."""
    around = {page: votes_around(page, tie) for page in tie.pages}
    most = max(around.values())
    kept = tuple(page for page in tie.pages if around[page] == most)
    votes = how_many(most, "vote") if most else "no vote"
    if kept == tie.pages:
        who = "both" if len(kept) == 2 else "all"
        why = f"The pages joined to them have {votes} in {who} cases, so the tie stays."
    else:
        rest = "the other" if len(tie.pages) == 2 else "any other of them"
        each = "" if len(kept) == 1 else " each"
        why = f"The pages joined to {pages_in_words(kept)} have {votes}{each}, more than {rest}."
    return TieStep("neighbours", tie.pages, kept, why, told(around))


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
    return TieStep("reached first", tie.pages, kept, why, told(values))


def lowest_number(tie: Tie) -> TieStep:
    """Keep the page with the lowest number."""
    lowest = min(tie.pages)
    why = f"Page {lowest} has the lowest number."
    numbers = {page: page for page in tie.pages}
    return TieStep("lowest number", tie.pages, (lowest,), why, told(numbers))


RULES: Mapping[TieBreak, Rule] = {
    "most joined edges": most_joined_edges,
    "neighbours": neighbours,
    "reached first": reached_first,
    "runoff": runoff,
    "draw": draw,
    "lowest number": lowest_number,
    "host's pick": hosts_pick,
}


def narrowed(tie: Tie) -> tuple[TieStep, ...]:
    """The steps of the round's chain on a tie, until one page is left or the chain ends."""
    steps: list[TieStep] = []
    pages = tie.pages
    for rule in tie.round_input.rules.tie_breaks:
        if len(pages) == 1:
            break
        step = RULES[rule](replace(tie, pages=pages))
        steps.append(step)
        pages = step.kept
        if step.waits:
            break
    return tuple(steps)


def _span_in_words(span: Span) -> str:
    """RFC 3339 in UTC: one instant, or the first and the last it may have been."""
    ends = [at.isoformat().replace("+00:00", "Z") for at in (span.earliest, span.latest)]
    return ends[0] if span.is_exact else f"{ends[0]} to {ends[1]}"
