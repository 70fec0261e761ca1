"""Runoffs: a new round among just the pages that are tied, by the rules that follow in the chain.

The runoff's tie-breaks are those after `runoff` in the chain of the first round, so they were
frozen when that one opened. A voter has one choice in it. Announcing it announces the first round.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from sqlmodel import Session

from service.chart.votable import Votable
from service.counting.sources import DrawSource
from service.counting.wording import pages_in_words, sentence
from service.errors import BadRules, WrongState
from service.store.counting import count_stored
from service.store.games import chart_of, take_game
from service.store.round_rules import DraftRules, check_draft
from service.store.rounds import add_draft, all_rounds, name_of, rules_of, take_round
from service.store.tables import GameRow, RoundRow


@dataclass(frozen=True, slots=True)
class RunoffTimes:
    """What the host says of a runoff: its times, and the sources of its draw, if it has one."""

    opens: datetime | None = None
    closes: datetime | None = None
    sources: tuple[DrawSource, ...] = ()


def draft_runoff(
    session: Session, game: GameRow, first: RoundRow, times: RunoffTimes, now: datetime
) -> RoundRow:
    """Draft the runoff of a closed round whose tie waits for one.

    Raises:
        WrongState: the round is not closed, no tie waits for a runoff, an open look could change
            the tie, or a runoff is drafted or being held already.
        BadRules: the round's chain has no runoff.
        BadDraw, ClosesBeforeOpening: its times or sources cannot be.
    """
    take_game(session, game)
    take_round(session, first)
    runoff_pages(session, game, first)
    for other in all_rounds(session, game):
        if other.runoff_of == first.number and other.state != "announced":
            raise WrongState(
                name_of(first), "in a runoff", "given another", f"go on with {name_of(other)}"
            )
    before = rules_of(first)
    rules = DraftRules(
        opens=times.opens,
        closes=times.closes,
        choices=1,
        standing=before.standing,
        tie_breaks=before.tie_breaks[before.tie_breaks.index("runoff") + 1 :],
        sources=times.sources,
    )
    check_draft(rules, chart_of(game))
    return add_draft(session, game, rules, now, runoff_of=first.number)


def runoff_pages(session: Session, game: GameRow, first: RoundRow) -> Votable:
    """The tied pages that wait for a runoff, which are those that it lets voters choose.

    Raises:
        WrongState: the round is not closed, no tie waits, or an open look could change the tie.
        BadRules: the round's chain has no runoff.
    """
    if "runoff" not in first.tie_breaks:
        raise BadRules(
            f"the tie-breaks of {name_of(first)} have no runoff",
            "its chain was frozen at the opening and decides by itself",
        )
    if first.state not in ("closed", "announced"):
        raise WrongState(name_of(first), first.state, "given a runoff", "close it first")
    counted = count_stored(session, game, first, most=0)
    last = counted.result.steps[-1] if counted.result.steps else None
    if last is None or last.rule != "runoff" or not last.waits:
        raise WrongState(
            name_of(first), "without a tie that waits", "given a runoff", "see how it was counted"
        )
    if counted.change.possible:
        raise WrongState(
            name_of(first),
            "undecided",
            "given a runoff",
            "rule on the comments that need a look, since they could change who is tied",
        )
    tied = sentence(pages_in_words(last.tied))
    why = f"{tied} are tied in {name_of(first)}, and this runoff is among them."
    return Votable(frozenset(last.tied), widened=False, why=why)
