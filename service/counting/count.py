"""A round counted: settled, tallied, ties narrowed by its chain, every step kept."""

from __future__ import annotations

from collections.abc import Mapping

from service.counting.result import Result, TieStep
from service.counting.round import RoundInput, TieBreak
from service.counting.rules import check_rules
from service.counting.settle import settle
from service.counting.tally import leaders, tally_of
from service.counting.tie import Tie
from service.counting.tiebreaks import narrowed
from service.counting.wording import how_many, listed, pages_in_words, sentence

_WAITS_FOR: Mapping[TieBreak, str] = {
    "runoff": "a runoff among them is to be held",
    "draw": "the draw among them is still to be held",
    "host's pick": "the host has yet to pick one of them",
}


def count_round(round_input: RoundInput) -> Result:
    """Count a round; the same input always gives the same result.

    The page with the most votes wins; a tie is narrowed by the round's chain of tie-breaks. Where
    the chain ends or waits with more than one page, there is no winner yet and the result says so.

    Raises:
        BadRules, BadTime, ClosesBeforeOpening: rules that no round can be counted by.
        BadRuling: a ruling that holds cannot be.
    """
    check_rules(round_input.rules, round_input.chart)
    ballots, set_aside = settle(round_input)
    tally = tally_of(ballots)
    leading = leaders(tally)
    steps = narrowed(Tie(leading, ballots, round_input)) if len(leading) > 1 else ()
    left = steps[-1].kept if steps else leading
    winner = left[0] if len(left) == 1 else None
    undecided = left if len(left) > 1 else ()
    why = _why(tally, len(ballots), steps, left)
    return Result(ballots, set_aside, tally, steps, winner, undecided, why)


def _why(
    tally: tuple[tuple[int, int], ...],
    ballots: int,
    steps: tuple[TieStep, ...],
    left: tuple[int, ...],
) -> str:
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
