"""How a count ended, in a sentence."""

from __future__ import annotations

from collections.abc import Mapping

from service.counting.result import TieStep
from service.counting.round import TieBreak
from service.counting.wording import how_many, listed, pages_in_words, sentence

_WAITS_FOR: Mapping[TieBreak, str] = {
    "runoff": "a runoff among them is to be held",
    "draw": "the draw among them is still to be held",
    "host's pick": "the host has yet to pick one of them",
}


def why_so(
    tally: tuple[tuple[int, int], ...],
    ballots: int,
    steps: tuple[TieStep, ...],
    left: tuple[int, ...],
) -> str:
    """Why a count ends with the pages that are left: the winner, those still tied, or none."""
    if not left:
        return "Nobody has chosen a page that could be chosen, so there is no winner."
    votes = f"{how_many(tally[0][1], 'vote')} on {how_many(ballots, 'ballot')}"
    if len(left) == 1 and not steps:
        return f"Page {left[0]} wins with {votes}."
    if len(left) == 1:
        with_it = [page for page in steps[0].tied if page != left[0]]
        rules = listed(step.rule for step in steps if step.kept != step.tied)
        return (
            f"Page {left[0]} wins with {votes}, after a tie with {pages_in_words(with_it)} "
            f"broken by {rules}."
        )
    tied = f"{sentence(pages_in_words(left))} are tied with {votes}"
    if steps and steps[-1].waits:
        return f"{tied}, and {_WAITS_FOR[steps[-1].rule]}."
    return f"{tied}, and no tie-break of this round tells them apart: there is no winner."
