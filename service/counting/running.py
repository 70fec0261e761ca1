"""A round counted voter by voter, so that its comments need never all be in memory.

Whose comments do not come together is counted wrong; the order of the voters does not matter.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Set
from dataclasses import dataclass
from datetime import datetime
from typing import Any, Generic, TypeVar

from service.comments.spans import Span
from service.counting.changes import Change, change_of
from service.counting.contest import Contest
from service.counting.figures import Given, Running
from service.counting.hearing import Heard
from service.counting.outcome import why_so
from service.counting.plain_voters import PlainVoters
from service.counting.possible import OpenVoter, add_heard
from service.counting.pseudonyms import Cast, cast_in, digest_of_cast, pseudonym_of
from service.counting.result import Ballot, Cause, Result, SetAside, TieStep
from service.counting.round import ReadComment, RoundInput, RoundRules
from service.counting.rules import check_rules
from service.counting.settle import order_of, settle_voter
from service.counting.standing import Said
from service.counting.tally import leaders, tally_in_order
from service.counting.tie import Tie
from service.counting.tiebreaks import narrowed

_Signature = tuple[tuple[tuple[object, ...], ...], ...]


Outcome = TypeVar("Outcome", Ballot, SetAside)


@dataclass(frozen=True, slots=True)
class Listed(Generic[Outcome]):
    """A comment that is listed, and what became of it."""

    comment: ReadComment
    outcome: Outcome


class _Oldest(Generic[Outcome]):
    """The oldest of what comes in any order, at most so many; all where `most` is None."""

    def __init__(self, most: int | None) -> None:
        self._most = most
        self._kept: list[tuple[Heard, Outcome]] = []
        #: What is newer than this is not among the oldest.
        self._newest: datetime | None = None

    def add(self, heard: Heard, outcome: Outcome) -> None:
        if self._newest is not None and heard.comment.written.earliest > self._newest:
            return
        self._kept.append((heard, outcome))
        if self._most is not None and len(self._kept) >= 2 * self._most + 1000:
            self._cut()

    def _cut(self) -> None:
        self._kept.sort(key=lambda pair: order_of(pair[0]))
        del self._kept[self._most :]
        if self._kept:
            self._newest = self._kept[-1][0].comment.written.earliest

    def listed(self) -> list[Listed[Outcome]]:
        self._kept.sort(key=lambda pair: order_of(pair[0]))
        return [Listed(heard.comment, outcome) for heard, outcome in self._kept[: self._most]]


class RunningCount:
    """The count so far. `most` is how many ballots, looks and others set aside are listed."""

    def __init__(self, round_input: RoundInput, most: int | None = None) -> None:
        """A count by all that `round_input` holds but its comments, of no comment yet.

        Raises:
            BadRules, BadTime, ClosesBeforeOpening: rules that no round can be counted by.
        """
        check_rules(round_input.rules, round_input.chart)
        self._input = round_input
        self._running = Running()
        self._sure = Given()
        #: A draw goes by the digest of all ballots, so that of each this much is kept.
        self._draws = "draw" in round_input.rules.tie_breaks
        self._cast: list[Cast] = []
        self._open: dict[_Signature, OpenVoter] = {}
        self._most = most
        self._ballots: _Oldest[Ballot] = _Oldest(most)
        self._looks: _Oldest[SetAside] = _Oldest(most)
        self._others: _Oldest[SetAside] = _Oldest(most)

    @property
    def rules(self) -> RoundRules:
        """What is counted by."""
        return self._input.rules

    def add(self, of_one_voter: Iterable[ReadComment]) -> list[tuple[Heard, Ballot | SetAside]]:
        """Count all comments of one voter; each as it was heard, and what became of it.

        Raises:
            BadRuling: a ruling that holds cannot be.
        """
        settled = list(settle_voter(of_one_voter, self._input))
        looks = False
        for heard, outcome in settled:
            self._running.add(outcome)
            self._list(heard, outcome)
            if isinstance(outcome, SetAside):
                looks = looks or outcome.needs_look
            elif self._draws:
                self._cast.append(cast_in(outcome, self._input.salt))
        if not looks or not self._leaves_open(settled):
            for _, outcome in settled:
                if isinstance(outcome, Ballot):
                    self._sure.add(outcome)
        return settled

    def plain_voters(self) -> PlainVoters:
        """A count of plain voters, of none yet; `most` must be a number."""
        rules = self.rules
        return PlainVoters(rules.standing, self._most or 0, self._draws)

    def add_plain(self, plain: PlainVoters, as_time: Callable[[Any], datetime]) -> None:
        """Count what was counted of plain voters; `as_time` makes times of what they are told by."""
        self._running.ballots += plain.ballots
        if plain.replaced:
            self._running.causes["another ballot stands"] += plain.replaced
        reached = {page: Span.at(as_time(at)) for page, at in plain.reached.items()}
        for given in (self._running.given, self._sure):
            given.add_all(plain.votes, reached)
        salt = self._input.salt
        self._cast += [(pseudonym_of(who, salt), tuple(sorted(pages))) for who, pages in plain.cast]

    def list_plain(self, of_one_voter: Iterable[ReadComment], keys: Set[str]) -> None:
        """List those of these keys among a voter's comments, which `add_plain` counted."""
        for heard, outcome in settle_voter(of_one_voter, self._input):
            if outcome.key in keys:
                self._list(heard, outcome)

    def _list(self, heard: Heard, outcome: Ballot | SetAside) -> None:
        if isinstance(outcome, Ballot):
            self._ballots.add(heard, outcome)
        else:
            (self._looks if outcome.needs_look else self._others).add(heard, outcome)

    def add_silent(self, cause: Cause, many: int = 1) -> None:
        """Count comments that say nothing and that no ruling is on, by their cause."""
        self._running.causes[cause] += many

    def list_silent(self, comment: ReadComment) -> None:
        """List such a comment, which is counted by `add_silent`, if it is among the oldest."""
        for heard, outcome in settle_voter((comment,), self._input):
            self._list(heard, outcome)

    def result(self) -> Result:
        """The result of all that was counted."""
        figures = self._running.told()
        tally = tally_in_order(self._running.given.votes)
        leading = leaders(tally)
        steps = self._narrowed(leading) if len(leading) > 1 else ()
        left = steps[-1].kept if steps else leading
        return Result(
            ballots=tuple(one.outcome for one in self.listed_ballots()),
            set_aside=tuple(one.outcome for one in self.listed_aside()),
            tally=tally,
            steps=steps,
            winner=left[0] if len(left) == 1 else None,
            undecided=left if len(left) > 1 else (),
            why=why_so(tally, figures.ballots, steps, left),
            figures=figures,
        )

    def _narrowed(self, leading: tuple[int, ...]) -> tuple[TieStep, ...]:
        digest = digest_of_cast(self._cast) if self._draws else ""
        return narrowed(Tie(leading, self._running.given, self._input, digest))

    def change(self, result: Result) -> Change:
        """Whether the looks could change `result`, which is this count's."""
        voters = list(self._open.values())
        return change_of(Contest(self._input, voters, self._sure), result)

    def listed_ballots(self) -> list[Listed[Ballot]]:
        """The comments whose ballots are listed, oldest first."""
        return self._ballots.listed()

    def listed_aside(self) -> list[Listed[SetAside]]:
        """The comments set aside that are listed, oldest first."""
        both = [*self._looks.listed(), *self._others.listed()]
        return sorted(both, key=lambda one: written_order(one.comment))

    def _leaves_open(self, settled: list[tuple[Heard, Ballot | SetAside]]) -> bool:
        """Keep the voter where the looks leave their vote open."""
        voter = OpenVoter(settled[0][0].comment.voter, self._input)
        unclear = False
        for heard, outcome in settled:
            add_heard(voter, heard, self._input.chart)
            unclear = unclear or (
                heard.cause is None and isinstance(outcome, SetAside) and outcome.needs_look
            )
        if not (unclear or voter.maybe or voter.free):
            return False
        signature = tuple(_signs(said) for said in (voter.sure, voter.maybe, voter.free))
        alike = self._open.setdefault(signature, voter)
        if alike is not voter:
            alike.many += 1
        return True


def _signs(said: list[Said]) -> tuple[tuple[object, ...], ...]:
    return tuple((one.written.earliest, one.written.latest, one.pages) for one in said)


def written_order(comment: ReadComment) -> tuple[datetime, datetime, str]:
    """Where a comment comes among others: oldest first."""
    return comment.written.earliest, comment.written.latest, comment.key
