"""Two pages compared over every way to settle the comments that need a look."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import UTC, datetime
from operator import le, lt

from service.comments.spans import Span
from service.counting.figures import Given
from service.counting.places import place_of
from service.counting.possible import OpenVoter, Vote, open_voters
from service.counting.result import Result
from service.counting.round import RoundInput

End = Callable[[Span], datetime]
Compare = Callable[[datetime, datetime], bool]
#: For each open voter, the votes that are still looked at.
Votes = Sequence[frozenset[Vote]]

#: Stands for the time of a vote that is not given.
_NEVER = datetime.min.replace(tzinfo=UTC)


@dataclass(frozen=True, slots=True)
class _Timed:
    """A page, and which end of the times of its votes is looked at."""

    page: int
    end: End


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
        #: The places of the open voters who named a page.
        self._naming: dict[int, list[int]] = defaultdict(list)
        for place, voter in enumerate(voters):
            for page in voter.own:
                self._naming[page].append(place)
        self._unnamed: dict[int, tuple[int, list[int]]] = {}

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
        return self._votes[second] - self._votes[first] + self._open_lead(first, second)

    def _open_lead(self, first: int, second: int) -> int:
        """The most that the open voters can do for `second` against `first`.

        Pages that a voter never named are alike to them, unless it matters which pages lie around:
        of most voters this is so told once for all pages.
        """
        if "neighbours" in self.round_input.rules.tie_breaks:
            return sum(voter.many * _lead(voter, first, second) for voter in self._open)
        if first not in self._unnamed:
            self._unnamed[first] = self._leads_of_unnamed(first)
        whole, each = self._unnamed[first]
        return whole + sum(
            self._open[place].many * (_lead(self._open[place], first, second) - each[place])
            for place in self._naming.get(second, ())
        )

    def _leads_of_unnamed(self, first: int) -> tuple[int, list[int]]:
        """The same for a page that the voter did not name: of all voters together, and of each.

        It is 0 of whoever named every page.
        """
        others = sorted(self.round_input.rules.votable - {first})
        each = [
            next((_lead(voter, first, page) for page in others if page not in voter.own), 0)
            for voter in self._open
        ]
        return sum(voter.many * one for voter, one in zip(self._open, each, strict=True)), each

    def may_fail(self, first: int, second: int) -> bool:
        """Whether `first` may end other than ahead of `second`, its tie-breaks included."""
        lead = self.best_lead(first, second)
        return lead > 0 or (lead == 0 and self._may_fail_tied(first, second))

    def may_part(self, first: int, second: int) -> bool:
        """Whether two pages may end other than tied with no tie-break to tell them apart."""
        if self.best_lead(first, second) > 0 or self.best_lead(second, first) > 0:
            return True
        votes = self._doing_most(first, second)
        for rule in self.round_input.rules.tie_breaks:
            if rule == "neighbours":
                if self._most_around(first, second, votes) or self._most_around(second, first):
                    return True
            elif rule == "reached first":
                if self._may_be_first(first, second) or self._may_be_first(second, first):
                    return True
            else:
                place = place_of(rule, first, second, self.round_input)
                if place != "level":
                    return place != "waits"
        return False

    def _may_fail_tied(self, first: int, second: int) -> bool:
        """Whether `first`, tied with `second` at the best for it, may end other than ahead.

        The rules are gone through in their order. Where one may leave the tie, what the voters
        must then have done is kept for the next.
        """
        votes = self._doing_most(first, second)
        for rule in self.round_input.rules.tie_breaks:
            if rule == "neighbours":
                most = self._most_around(first, second, votes)
                if most:
                    return most > 0
                votes = [_most_near(some) for some in votes]
            elif rule == "reached first":
                if self._may_be_first(second, first, votes):
                    return True
                if not self._may_be_no_later(second, first, votes):
                    return False
                # Which votes make the times the same is not followed up: all stay possible.
            else:
                place = place_of(rule, first, second, self.round_input)
                if place != "level":
                    return place != "ahead"
        return True

    def _doing_most(self, first: int, second: int) -> Votes:
        """For each open voter the votes that do the most for `second` against `first`."""
        return [_most_leading(voter.votes(first, second)) for voter in self._open]

    def _most_around(self, first: int, second: int, votes: Votes | None = None) -> int:
        """The most votes by which the pages around `second` may have more than those of `first`."""
        near = self.round_input.chart.neighbours
        sure = sum(self._votes[page] for page in near(second))
        sure -= sum(self._votes[page] for page in near(first))
        votes = self._doing_most(first, second) if votes is None else votes
        return sure + sum(
            voter.many * max(vote.near for vote in some)
            for voter, some in zip(self._open, votes, strict=True)
        )

    def _may_be_first(self, first: int, second: int, votes: Votes | None = None) -> bool:
        """Whether `first` may have reached a tied total provably before `second`."""
        return self._may_hold(_Timed(first, _latest), _Timed(second, _earliest), lt, votes)

    def _may_be_no_later(self, first: int, second: int, votes: Votes | None = None) -> bool:
        """Whether `second` may have reached a tied total other than provably before `first`."""
        return self._may_hold(_Timed(first, _earliest), _Timed(second, _latest), le, votes)

    def _may_hold(self, early: _Timed, late: _Timed, compare: Compare, votes: Votes | None) -> bool:
        """Whether, tied at the most that voters can do for `early`, its time may be the lower.

        A total is reached with its last vote, so every vote for `early` should be given early,
        while for `late` one late vote is enough: each vote in turn is tried as that one.
        """
        low, high = early.end, late.end
        sure_low = low(self._sure[early.page]) if early.page in self._sure else _NEVER
        sure_high = high(self._sure[late.page]) if late.page in self._sure else _NEVER
        votes = self._doing_most(late.page, early.page) if votes is None else votes
        voters = [
            _times(some, low, high)
            for voter, some in zip(self._open, votes, strict=True)
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


def _lead(voter: OpenVoter, first: int, second: int) -> int:
    """The most that a voter can do for `second` against `first`."""
    return max(vote.lead for vote in voter.votes(first, second))


def _most_leading(votes: frozenset[Vote]) -> frozenset[Vote]:
    """Those that put the second page farthest ahead of the first."""
    most = max(vote.lead for vote in votes)
    return frozenset(vote for vote in votes if vote.lead == most)


def _most_near(votes: frozenset[Vote]) -> frozenset[Vote]:
    """Those that do the most for the pages around the second page."""
    most = max(vote.near for vote in votes)
    return frozenset(vote for vote in votes if vote.near == most)


def _times(votes: frozenset[Vote], low: End, high: End) -> list[tuple[datetime, datetime]]:
    """The times of each vote: the second page's, and the first's."""
    return [
        (
            _NEVER if vote.second is None else low(vote.second),
            _NEVER if vote.first is None else high(vote.first),
        )
        for vote in votes
    ]


def _earliest(span: Span) -> datetime:
    return span.earliest


def _latest(span: Span) -> datetime:
    return span.latest
