"""Two pages compared over every way to settle the comments that need a look."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from datetime import UTC, datetime
from operator import le, lt
from typing import Literal

from service.comments.spans import Span
from service.counting.figures import Given
from service.counting.possible import OpenVoter, Vote, open_voters
from service.counting.result import Result
from service.counting.round import RoundInput, TieBreak
from service.counting.tiebreaks import WAITING, touches

Place = Literal["ahead", "level", "behind"]
End = Callable[[Span], datetime]
Compare = Callable[[datetime, datetime], bool]

#: Stands for the time of a vote that is not given.
_NEVER = datetime.min.replace(tzinfo=UTC)


class Contest:
    """The sure ballots of a result, and the voters whose vote the open looks leave open.

    `first` and `second` are votable pages throughout. Ties are judged between two pages alone: a
    page that loses a tie of many loses it to one of them alone as well.
    """

    def __init__(self, round_input: RoundInput, voters: Sequence[OpenVoter], sure: Given) -> None:
        """Of the round's rules and chart; its comments are not looked at."""
        self.round_input = round_input
        self._open = voters
        self._sure = sure.reached
        self._votes = sure.votes

    @classmethod
    def of(cls, round_input: RoundInput, result: Result) -> Contest:
        """The contest that the result of `round_input`, with all its ballots, leaves open."""
        voters = open_voters(round_input, frozenset(look.key for look in result.looks))
        names = {voter.name for voter in voters}
        sure = Given.by(ballot for ballot in result.ballots if ballot.voter not in names)
        return cls(round_input, voters, sure)

    def may_be_without_votes(self, page: int) -> bool:
        """Whether `page` may end with no vote at all."""
        return not self._votes[page] and all(
            any(vote.first is None for vote in voter.votes(page, 0)) for voter in self._open
        )

    def may_have_a_vote(self, page: int) -> bool:
        """Whether `page` may end with a vote."""
        return bool(self._votes[page]) or any(
            vote.first is not None for voter in self._open for vote in voter.votes(page, 0)
        )

    def best_lead(self, first: int, second: int) -> int:
        """The most votes by which `second` may end ahead of `first`; below 0: it stays behind."""
        return (
            self._votes[second]
            - self._votes[first]
            + sum(
                voter.many * max(vote.lead for vote in voter.votes(first, second))
                for voter in self._open
            )
        )

    def may_fail(self, first: int, second: int) -> bool:
        """Whether `first` may end other than ahead of `second`, its tie-breaks included."""
        lead = self.best_lead(first, second)
        return lead > 0 or (lead == 0 and self._may_fail_tied(first, second))

    def may_part(self, first: int, second: int) -> bool:
        """Whether two pages may end other than tied with no tie-break to tell them apart."""
        if self.best_lead(first, second) > 0 or self.best_lead(second, first) > 0:
            return True
        before, timed, after = _around(self.round_input.rules.tie_breaks, "reached first")
        if _place((*before, *after), first, second, self.round_input) != "level":
            return True
        return (
            timed
            and not WAITING.intersection(before)
            and (self._may_be_first(first, second) or self._may_be_first(second, first))
        )

    def _may_fail_tied(self, first: int, second: int) -> bool:
        before, timed, after = _around(self.round_input.rules.tie_breaks, "reached first")
        place = _place(before, first, second, self.round_input)
        if place != "level" or WAITING.intersection(before):
            return place != "ahead"
        if _place(after, first, second, self.round_input) != "ahead":
            return not timed or self._may_be_no_later(second, first)
        return timed and self._may_be_first(second, first)

    def _may_be_first(self, first: int, second: int) -> bool:
        """Whether `first` may have reached a tied total provably before `second`."""
        return self._may_hold(first, _latest, second, _earliest, lt)

    def _may_be_no_later(self, first: int, second: int) -> bool:
        """Whether `second` may have reached a tied total other than provably before `first`."""
        return self._may_hold(first, _earliest, second, _latest, le)

    def _may_hold(self, early: int, low: End, late: int, high: End, compare: Compare) -> bool:
        """Whether, tied at the most that voters can do for `early`, its time may be the lower.

        A total is reached with its last vote, so every vote for `early` should be given early,
        while for `late` one late vote is enough: each vote in turn is tried as that one.
        """
        sure_low = low(self._sure[early]) if early in self._sure else _NEVER
        sure_high = high(self._sure[late]) if late in self._sure else _NEVER
        voters = [
            _times(voter.votes(late, early), low, high)
            for voter in self._open
            # One of them is tried as the late one: of voters who are alike, two tell it all.
            for _ in range(min(voter.many, 2))
        ]
        floors = [min(time for time, _ in times) for times in voters]
        highest, next_highest = sorted([*floors, _NEVER, _NEVER])[:-3:-1]
        if compare(max(sure_low, highest), sure_high):
            return True
        for floor, times in zip(floors, voters, strict=True):
            others = max(sure_low, next_highest if floor == highest else highest)
            if any(compare(max(others, time), late_time) for time, late_time in times):
                return True
        return False


def _times(votes: frozenset[Vote], low: End, high: End) -> list[tuple[datetime, datetime]]:
    """The times of the votes that do the most for the second page: its own, and the first's."""
    most = max(vote.lead for vote in votes)
    return [
        (
            _NEVER if vote.second is None else low(vote.second),
            _NEVER if vote.first is None else high(vote.first),
        )
        for vote in votes
        if vote.lead == most
    ]


def _earliest(span: Span) -> datetime:
    return span.earliest


def _latest(span: Span) -> datetime:
    return span.latest


def _by_edges(first: int, second: int, round_input: RoundInput) -> Place:
    lead = touches(first, round_input) - touches(second, round_input)
    return "ahead" if lead > 0 else "behind" if lead < 0 else "level"


def _by_number(first: int, second: int, _round_input: RoundInput) -> Place:
    return "ahead" if first < second else "behind"


def _by_pick(first: int, second: int, round_input: RoundInput) -> Place:
    """A pick decides for its page; without one the chain waits, so neither is ahead for sure."""
    pick = round_input.host_pick
    if pick is None:
        return "level"
    return "ahead" if pick[0] == first else "behind" if pick[0] == second else "level"


#: The rules that place two tied pages alike however the looks are settled. A rule that is neither
#: here nor `reached first` is taken as able to decide either way.
_PLACES: Mapping[TieBreak, Callable[[int, int, RoundInput], Place]] = {
    "most joined edges": _by_edges,
    "lowest number": _by_number,
    "host's pick": _by_pick,
}


def _around(
    chain: tuple[TieBreak, ...], rule: TieBreak
) -> tuple[tuple[TieBreak, ...], bool, tuple[TieBreak, ...]]:
    """The chain before `rule`, whether it is there, and the chain after it."""
    if rule not in chain:
        return chain, False, ()
    place = chain.index(rule)
    return chain[:place], True, chain[place + 1 :]


def _place(chain: Iterable[TieBreak], first: int, second: int, round_input: RoundInput) -> Place:
    """Where the rules of a chain leave the first of two tied pages, however the looks end."""
    for rule in chain:
        place = _PLACES[rule](first, second, round_input) if rule in _PLACES else "behind"
        if place != "level" or rule in WAITING:
            return place
    return "level"
