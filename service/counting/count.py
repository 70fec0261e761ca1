"""A round counted: settled, tallied, ties narrowed by its chain, every step kept."""

from __future__ import annotations

from service.counting.result import Result
from service.counting.round import RoundInput
from service.counting.running import RunningCount
from service.counting.settle import by_voter


def count_round(round_input: RoundInput) -> Result:
    """Count a round; the same input always gives the same result.

    The page with the most votes wins; a tie is narrowed by the round's chain of tie-breaks. Where
    the chain ends or waits with more than one page, there is no winner yet and the result says so.

    Raises:
        BadRules, BadTime, ClosesBeforeOpening: rules that no round can be counted by.
        BadRuling: a ruling that holds cannot be.
    """
    running = RunningCount(round_input)
    for of_one_voter in by_voter(round_input.comments):
        running.add(of_one_voter)
    return running.result()
