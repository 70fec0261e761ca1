"""What one voter's vote may become once the open looks at their comments are settled."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field
from itertools import combinations, product

from service.chart.grid import Chart
from service.comments.spans import Span
from service.counting.hearing import Heard, hear
from service.counting.round import ReadComment, RoundInput, RoundRules
from service.counting.rulings import meaning_of
from service.counting.standing import Said, Stands, given_since, what_stands

#: The size up to which every way to settle one voter's comments is tried. Beyond it anything is
#: taken as possible.
MOST_COMMENTS = 12
MOST_WAYS = 3000


@dataclass(frozen=True, slots=True)
class Vote:
    """What a voter's vote may be, as far as two pages go: since when given, None where not.

    `near` is by how many votes it puts the pages around the second page ahead of those around the
    first; 0 where the round does not look at that.
    """

    first: Span | None
    second: Span | None
    near: int = 0

    @property
    def lead(self) -> int:
        """By how much it puts the second page ahead of the first: 1, 0 or -1."""
        return (self.second is not None) - (self.first is not None)


@dataclass(slots=True)
class OpenVoter:
    """A voter with at least one comment that needs a look.

    `sure` are their comments that count in time as they were read or ruled. `maybe` are sure in
    what they say but not in time: each is in time or not. `free` are comments whose meaning is
    open: each may choose any votable pages, take back what came before, or choose nothing.
    """

    name: str
    round_input: RoundInput
    #: How many voters said just the same at the same times.
    many: int = 1
    sure: list[Said] = field(default_factory=list)
    maybe: list[Said] = field(default_factory=list)
    free: list[Said] = field(default_factory=list)
    _known: dict[tuple[int, int], frozenset[Vote]] = field(default_factory=dict, init=False)

    @property
    def rules(self) -> RoundRules:
        """The rules of the round."""
        return self.round_input.rules

    @property
    def own(self) -> frozenset[int]:
        """The pages that this voter's comments surely name."""
        return frozenset(page for said in (*self.sure, *self.maybe) for page in said.pages)

    def votes(self, first: int, second: int) -> frozenset[Vote]:
        """All that the vote may be, as far as those two pages go; `second` 0 is no page.

        Exact while there are few ways to settle the comments; beyond that, everything is taken
        as possible.
        """
        kind = (first, second)
        if "neighbours" not in self.rules.tie_breaks:
            # Pages that this voter never named are alike.
            kind = (
                first if first in self.own else -1,
                second if second in self.own or not second else -2,
            )
        if kind not in self._known:
            self._known[kind] = self._find_votes(first, second)
        return self._known[kind]

    def _find_votes(self, first: int, second: int) -> frozenset[Vote]:
        if len(self.sure) + len(self.maybe) + len(self.free) > MOST_COMMENTS:
            return self._anything(first, second)
        around = self._around(first, second)
        found: set[Vote] = set()
        ways = 0
        for settled in self._settled(first, second):
            for said, stands in _rulings_on_order(settled, self.rules):
                ways += 1
                if ways > MOST_WAYS:
                    return self._anything(first, second)
                if not stands.unclear:
                    found.add(_vote(stands.ballot, said, self.rules, (first, second), around))
        return frozenset(found)

    def _settled(self, first: int, second: int) -> Iterator[list[Said]]:
        """Every way to settle what needs a look, as what the voter then said in time."""
        chosen = list(self._choices(first, second)) if self.free else []
        ways = [[None, said] for said in self.maybe]
        ways += [
            [None, *(Said(free.key, free.written, pages) for pages in chosen)] for free in self.free
        ]
        for settled in product(*ways):
            yield self.sure + [said for said in settled if said is not None]

    def _choices(self, first: int, second: int) -> Iterator[tuple[int, ...]]:
        """What a comment may turn out to say; pages that nobody asks about are alike."""
        named = (self.own | {first, second}) & self.rules.votable
        around = self._around(first, second)
        unnamed: list[int] = []
        for page in sorted(self.rules.votable - named):
            alike = sum(around.get(page, 0) == around.get(other, 0) for other in unnamed)
            if alike < (self.rules.choices if around else 1):
                unnamed.append(page)
        yield ()
        for many in range(1, self.rules.choices + 1):
            yield from combinations([*sorted(named), *unnamed], many)

    def _around(self, first: int, second: int) -> dict[int, int]:
        """What a vote for each page does for the pages around `second` against those of `first`.

        Empty where the round does not look at that.
        """
        if "neighbours" not in self.rules.tie_breaks or not second:
            return {}
        near_first, near_second = map(self.round_input.chart.neighbours, (first, second))
        return {
            page: (page in near_second) - (page in near_first)
            for page in self.rules.votable & (near_first ^ near_second)
        }

    def _anything(self, first: int, second: int) -> frozenset[Vote]:
        times = [said.written for said in (*self.sure, *self.maybe, *self.free)]
        given = (
            None,
            Span(min(at.earliest for at in times), min(at.latest for at in times)),
            Span(max(at.earliest for at in times), max(at.latest for at in times)),
        )
        most = self.rules.choices if self._around(first, second) else 0
        return frozenset(
            Vote(one, other, near)
            for one, other in product(given, given)
            for near in range(-most, most + 1)
            if one is None or other is None or self.rules.choices > 1
        )


def open_voters(round_input: RoundInput, looks: frozenset[str]) -> list[OpenVoter]:
    """The voters of the comments with those keys, with all that they said.

    Raises:
        BadRuling: a ruling that holds cannot be.
    """
    names = {one.voter for one in round_input.comments if one.key in looks}
    voters = {name: OpenVoter(name, round_input) for name in names}
    for comment in round_input.comments:
        if comment.voter in voters:
            _add(voters[comment.voter], comment, round_input)
    return list(voters.values())


def _add(voter: OpenVoter, comment: ReadComment, round_input: RoundInput) -> None:
    add_heard(voter, hear(comment, round_input.rules, round_input.chart), round_input.chart)


def add_heard(voter: OpenVoter, heard: Heard, chart: Chart) -> None:
    """Add one comment of the voter, as the round hears it.

    Raises:
        BadRuling: a ruling on it that holds cannot be.
    """
    comment, rules = heard.comment, voter.rules
    if heard.cause is None:
        voter.sure.append(heard.said)
        return
    if heard.cause not in {"needs a look", "cannot tell when"}:
        return
    meaning = meaning_of(comment, rules, chart)
    votable = tuple(page for page in meaning.pages if page in rules.votable)
    if meaning.kind == "look":
        voter.free.append(Said(comment.key, comment.written, ()))
    elif meaning.kind == "withdraws" or (meaning.kind == "chooses" and votable):
        voter.maybe.append(Said(comment.key, comment.written, votable))


def _rulings_on_order(said: list[Said], rules: RoundRules) -> Iterator[tuple[list[Said], Stands]]:
    """What stands of all that was said, and of what is left where the order cannot be told.

    There the host rules that one comment after another chooses nothing, until it is clear.
    """
    seen: set[frozenset[str]] = set()
    waiting = [said]
    while waiting:
        left = waiting.pop()
        keys = frozenset(one.key for one in left)
        if keys in seen:
            continue
        seen.add(keys)
        stands = what_stands(left, rules.standing) if left else Stands(None)
        yield left, stands
        waiting += [[one for one in left if one is not unclear] for unclear in stands.unclear]


def _vote(
    ballot: Said | None,
    said: list[Said],
    rules: RoundRules,
    asked: tuple[int, int],
    around: dict[int, int],
) -> Vote:
    pages = () if ballot is None else ballot.pages
    first, second = (
        given_since(page, said, rules.standing) if page in pages else None for page in asked
    )
    return Vote(first, second, sum(around.get(page, 0) for page in pages))
