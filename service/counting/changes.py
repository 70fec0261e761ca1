"""Whether the comments that still need a look could change a result.

A result is safe when its winner stays ahead of every other page, taken one by one, in every way
to settle the looks. Against one page the voters can be taken one by one too: the most that all
together can do for it is the sum of the most that each can do. Only where that sum makes a tie
does the chain decide, and only `neighbours` and `reached first` then depend on how the looks are
settled; a draw may end either way, and a runoff holds for its own pages only.

The answer never says that nothing can change where something could. It says that something could
where nothing can only in rare cases: a voter with very many ways to settle their comments, ties of
three pages whose times cannot be told apart, and a tie that `neighbours` decides after a tie in
time, or a draw or a runoff does.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from service.counting.contest import Contest
from service.counting.result import Result
from service.counting.round import RoundInput
from service.counting.wording import how_many, pages_in_words

#: More pages than these are told by their number.
MOST_NAMED = 3


@dataclass(frozen=True, slots=True)
class Change:
    """Whether the open looks could change the result, and a sentence why.

    True where they could. `looks` is how many there are, `rivals` the pages that may yet win, draw
    level with the winner, or change who is tied. `lead` is the most votes by which another page
    may end ahead of the winner: 0 where it may just draw level, below 0 where it stays behind;
    None where there is no look, no winner or no other page.
    """

    possible: bool
    why: str
    looks: int
    rivals: tuple[int, ...] = ()
    lead: int | None = None

    def __bool__(self) -> bool:
        return self.possible


def can_looks_change(round_input: RoundInput, result: Result) -> Change:
    """Whether settling the looks of `result` could change its winner, or who is tied.

    `result` is the count of `round_input`. A comment that needs a look may turn out to choose any
    votable pages, nothing, or to take back what its voter said before; one that says something
    sure at a time that cannot be told is in time or not; of comments whose order cannot be told
    any may stand, or none.

    Raises:
        BadRuling: a ruling that holds cannot be.
    """
    return change_of(Contest.of(round_input, result), result)


def change_of(contest: Contest, result: Result) -> Change:
    """The same, where the contest that the looks leave open is known."""
    looks = result.figures.looks
    if not looks:
        return Change(possible=False, why="No comment needs a look.", looks=0)
    if result.winner is not None:
        return _of_winner(contest, result.winner, looks)
    return _of_no_winner(contest, result.undecided, looks)


def _of_winner(contest: Contest, winner: int, looks: int) -> Change:
    need = _still_need(looks)
    if contest.may_be_without_votes(winner):
        why = f"{need} and could leave page {winner} without a vote."
        return Change(possible=True, why=why, looks=looks)
    others = sorted(contest.round_input.rules.votable - {winner})
    rivals = tuple(page for page in others if contest.may_fail(winner, page))
    lead = max((contest.best_lead(winner, page) for page in others), default=None)
    if rivals:
        by = f"win, by at most {how_many(lead, 'vote')}, or " if lead else ""
        why = f"{need} and could change the winner: {_named(rivals)} may yet {by}draw level."
        return Change(possible=True, why=why, looks=looks, rivals=rivals, lead=lead)
    why = f"{need}, but {'it' if looks == 1 else 'they'} cannot change the winner: "
    if lead is None:
        why += "no other page can be chosen."
    elif lead == 0:
        why += f"at most another page draws level, and page {winner} wins that tie."
    else:
        why += f"no other page can come closer than {how_many(-lead, 'vote')}."
    return Change(possible=False, why=why, looks=looks, lead=lead)


def _of_no_winner(contest: Contest, tied: tuple[int, ...], looks: int) -> Change:
    need = _still_need(looks)
    votable = contest.round_input.rules.votable
    if not tied:
        rivals = tuple(page for page in sorted(votable) if contest.may_have_a_vote(page))
        if rivals:
            return Change(
                possible=True,
                why=f"{need} and could make a winner of {_any_of(rivals)}.",
                looks=looks,
                rivals=rivals,
            )
        return Change(possible=False, why=f"{need}, but none can be a vote.", looks=looks)
    rivals = tuple(page for page in sorted(votable) if _may_change_tie(contest, page, tied))
    if rivals:
        why = f"{need} and could settle or change the tie: it depends on {_named(rivals)}."
        if len(rivals) > MOST_NAMED:
            part = f"in which {_any_of(rivals)} may yet play a part"
            why = f"{need} and could settle or change the tie, {part}."
        return Change(possible=True, why=why, looks=looks, rivals=rivals)
    return Change(possible=False, why=f"{need}, but the tie stays whatever they say.", looks=looks)


def _may_change_tie(contest: Contest, page: int, tied: tuple[int, ...]) -> bool:
    if page not in tied:
        return any(contest.may_fail(one, page) for one in tied)
    return contest.may_be_without_votes(page) or any(
        contest.may_part(page, other) for other in tied if other != page
    )


def _still_need(looks: int) -> str:
    return f"{how_many(looks, 'comment')} still {'needs' if looks == 1 else 'need'} a look"


def _any_of(pages: Sequence[int]) -> str:
    if len(pages) > MOST_NAMED:
        return f"any of {how_many(len(pages), 'page')}"
    return pages_in_words(pages)


def _named(pages: Sequence[int]) -> str:
    if len(pages) > MOST_NAMED:
        return f"{how_many(len(pages), 'page')}, {pages_in_words(pages[:1])} among them,"
    return pages_in_words(pages)
