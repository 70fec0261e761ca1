"""How a round stands: its tally, whether looks can change it, its tie-breaks step by step."""

from __future__ import annotations

from dataclasses import dataclass

from sqlmodel import Session

from service.comments.times import zone_of
from service.counting.result import TieStep
from service.counting.wording import pages_in_words, sentence
from service.pages.game_frame import TimeShown, time_shown
from service.store.draw_sources import sources_of
from service.store.draws import drawn_so_far
from service.store.readings import Counted
from service.store.tables import GameRow, RoundRow


@dataclass(frozen=True, slots=True)
class VotesShown:
    """A page with its votes."""

    page: int
    votes: int


@dataclass(frozen=True, slots=True)
class StepOfTie:
    """One tie-break: what it found tied, what it kept, what it looked at for each page."""

    rule: str
    tied: str
    kept: str
    why: str
    values: tuple[tuple[int, str], ...]
    waits: bool


@dataclass(frozen=True, slots=True)
class Outcome:
    """The count as it stands. `waits` names the rule that waits for the host's act.

    `may_announce` says that nothing stands against announcing it.
    """

    comments: int
    ballots: int
    looks: int
    aside: tuple[tuple[str, int], ...]
    tally: tuple[VotesShown, ...]
    most: int
    winner: int | None
    why: str
    change: str
    can_change: bool
    steps: tuple[StepOfTie, ...]
    waits: str
    tied: tuple[int, ...]
    may_announce: bool


@dataclass(frozen=True, slots=True)
class SourceShown:
    """A source of the round's draw, and what is told of it."""

    place: int
    name: str
    expected: TimeShown
    told: str


def outcome_of_round(row: RoundRow, counted: Counted) -> Outcome:
    """The count for the host."""
    result = counted.result
    waiting = next((step for step in result.steps if step.waits), None)
    decided = not result.undecided and not counted.change.possible
    return Outcome(
        comments=result.figures.comments,
        ballots=result.figures.ballots,
        looks=result.figures.looks,
        aside=tuple((cause, many) for cause, many in result.figures.set_aside if many),
        tally=tuple(VotesShown(page, votes) for page, votes in result.tally),
        most=max((votes for _, votes in result.tally), default=1) or 1,
        winner=result.winner,
        why=result.why,
        change=counted.change.why,
        can_change=counted.change.possible,
        steps=tuple(map(_step, result.steps)),
        waits="" if waiting is None else waiting.rule,
        tied=_pickable(result.steps),
        may_announce=row.state == "closed" and decided,
    )


def _pickable(steps: tuple[TieStep, ...]) -> tuple[int, ...]:
    """The pages among which the host picks; she may pick anew until she announces."""
    return next((step.tied for step in steps if step.rule == "host's pick"), ())


def _step(step: TieStep) -> StepOfTie:
    return StepOfTie(
        rule=sentence(step.rule),
        tied=pages_in_words(step.tied),
        kept=pages_in_words(step.kept),
        why=step.why,
        values=step.values,
        waits=step.waits,
    )


def sources_shown(session: Session, game: GameRow, row: RoundRow) -> tuple[SourceShown, ...]:
    """The draw's sources in their order."""
    told = dict(drawn_so_far(session, row).told)
    found = []
    for place, source in enumerate(sources_of(row), start=1):
        known = told.get(place)
        words = "" if known is None else ", ".join(known.numbers) or f"left out: {known.reason}"
        expected = time_shown(source.expected, zone_of(game.zone))
        found.append(SourceShown(place, source.name, expected, words))
    return tuple(found)
