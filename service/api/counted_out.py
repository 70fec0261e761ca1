"""A count made into JSON for the host: one way for stored rounds and for what is not stored."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from service.api.chart_models import ChartOut
from service.api.shapes import SpanOut
from service.api.tally_models import (
    BallotOut,
    EvidenceOut,
    FiguresOut,
    RulesOut,
    SetAsideOut,
    StepOut,
    TallyOut,
    UnreadableOut,
    VotesOut,
)
from service.counting.pseudonyms import shown_name
from service.counting.result import Ballot, SetAside
from service.counting.round import RoundRules
from service.counting.running import Listed
from service.store.readings import Counted


@dataclass(frozen=True, slots=True)
class Intake:
    """How the comments came in: the format, the columns found, and what could not be read."""

    format: str | None
    mapping: Mapping[str, str]
    notes: tuple[str, ...]
    unreadable: tuple[UnreadableOut, ...]
    unreadable_count: int


@dataclass(frozen=True, slots=True)
class Announcement:
    """The words ready to paste; without any, `why` says why they are left out."""

    words: str | None
    why: str | None = None


def tally_out(
    counted: Counted,
    intake: Intake,
    announcement: Announcement,
    stored: tuple[str, int] | None = None,
) -> TallyOut:
    """The count for JSON; `stored` names the game and round where it is a stored one's."""
    result = counted.result
    set_aside = {one.comment.key: _set_aside(one) for one in counted.set_aside}
    return TallyOut(
        game=stored[0] if stored else None,
        round=stored[1] if stored else None,
        chart=ChartOut.of(counted.round_input.chart),
        rules=_rules(counted.round_input.rules),
        format=intake.format,
        mapping=dict(intake.mapping),
        notes=list(intake.notes),
        unreadable=list(intake.unreadable),
        unreadable_count=intake.unreadable_count,
        comments=result.figures.comments,
        figures=FiguresOut(
            ballots=result.figures.ballots,
            looks=result.figures.looks,
            set_aside=dict(result.figures.set_aside),
        ),
        ballots=[_ballot(one) for one in counted.ballots],
        tally=votes_out(counted),
        set_aside=list(set_aside.values()),
        looks=[set_aside[look.key] for look in result.looks],
        steps=[StepOut.of(step) for step in result.steps],
        winner=result.winner,
        undecided=list(result.undecided),
        why=result.why,
        can_change=counted.change.possible,
        can_change_why=counted.change.why,
        can_change_by=counted.change.lead,
        announcement=announcement.words,
        announcement_why=announcement.why,
    )


def votes_out(counted: Counted) -> list[VotesOut]:
    """The tally, most votes first."""
    return [VotesOut(page=page, votes=votes) for page, votes in counted.result.tally]


def _rules(rules: RoundRules) -> RulesOut:
    return RulesOut(
        opens=rules.opens,
        closes=rules.closes,
        choices=rules.choices,
        standing=rules.standing,
        tie_breaks=list(rules.tie_breaks),
        votable=sorted(rules.votable),
        stitched=sorted(rules.stitched),
    )


def _ballot(one: Listed[Ballot]) -> BallotOut:
    ballot = one.outcome
    return BallotOut(
        key=ballot.key,
        author=shown_name(ballot.author),
        text=one.comment.text,
        pages=list(ballot.pages),
        written=SpanOut.of(ballot.written),
        ruled=ballot.ruled,
    )


def _set_aside(one: Listed[SetAside]) -> SetAsideOut:
    aside, comment = one.outcome, one.comment
    return SetAsideOut(
        key=aside.key,
        author=shown_name(aside.author),
        text=comment.text,
        cause=aside.cause,
        why=aside.why,
        pages=list(aside.pages),
        written=SpanOut.of(comment.written),
        evidence=[EvidenceOut.of(evidence) for evidence in comment.reading.evidence],
    )
