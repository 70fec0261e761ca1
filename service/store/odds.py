"""The odds of a tie for a stored round, from its votable pages and the voters to be expected."""

from __future__ import annotations

from sqlmodel import Session

from service.counting.chain_odds import TieOdds, odds_of_round
from service.errors import BadRules
from service.store.games import chart_of, page_states
from service.store.opening import votable_now
from service.store.rounds import all_rounds, rules_of
from service.store.tables import GameRow, RoundRow


def odds_of_stored(session: Session, game: GameRow, row: RoundRow, voters: int | None) -> TieOdds:
    """The odds for so many voters; without a number, for as many as voted in the last round.

    Raises:
        BadRules: no number where no round has been announced, or one that is not counted.
        WrongState: a runoff whose tie is no more.
    """
    chart, rules = chart_of(game), rules_of(row)
    if row.votable is not None:
        votable, stitched = row.votable, frozenset(row.stitched or ())
    else:
        votable = sorted(votable_now(session, game, row)[0].pages)
        stitched = page_states(session, game).taken
    touched = {page: len(chart.edge_neighbours(page) & stitched) for page in votable}
    expected = _voted_last(session, game) if voters is None else voters
    return odds_of_round(expected, touched, rules.choices, rules.tie_breaks)


def _voted_last(session: Session, game: GameRow) -> int:
    for row in reversed(all_rounds(session, game)):
        if row.result is not None and row.result["ballots"]:
            return int(row.result["ballots"])
    raise BadRules(
        "no round of this game tells how many voters to expect",
        "say how many, as in odds?voters=30",
    )
