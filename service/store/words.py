"""Announcements of a stored round, and of a count that is not stored."""

from __future__ import annotations

from dataclasses import dataclass
from zoneinfo import ZoneInfo

from service.announce.words import Heading, next_round_words, opening_words, result_words
from service.chart.votable import votable_pages
from service.comments.times import zone_of
from service.store.counting import counting_rules
from service.store.games import chart_of
from service.store.readings import Counted
from service.store.tables import GameRow, RoundRow


@dataclass(frozen=True, slots=True)
class _UnnamedHeading(Heading):
    """The heading of a count whose game and round nobody told."""

    @property
    def words(self) -> str:
        """How the announcement begins."""
        return "The vote"


def unnamed_result(counted: Counted, zone: ZoneInfo) -> str:
    """The result of a count that is not stored, ready to paste."""
    return result_words(_UnnamedHeading("", 0, zone), counted.result, change=counted.change)


def stored_result(
    counted: Counted,
    game: GameRow,
    row: RoundRow,
    *,
    taken: frozenset[int],
    to_come: int,
    digest: str = "",
) -> str:
    """The result of a stored round, and the pages of the round to come, ready to paste.

    `taken` are the pages stitched or in hand, `to_come` is the next round's number. `digest` is
    that of the record, once there is one.
    """
    heading = Heading(game.name, row.number, zone_of(game.zone))
    winner = counted.result.winner
    then = ""
    if winner is not None:
        votable = votable_pages(
            chart_of(game),
            taken | {winner},
            game.next_from,  # type: ignore[arg-type]  # checked when it was kept
            winner,
        )
        coming = Heading(game.name, to_come, heading.zone)
        then = next_round_words(coming, votable, opens=None, closes=None)
    return result_words(heading, counted.result, change=counted.change, then=then, digest=digest)


def opening(game: GameRow, row: RoundRow) -> str:
    """The opening of a stored round, ready to paste."""
    heading = Heading(game.name, row.number, zone_of(game.zone))
    return opening_words(heading, counting_rules(row), why_these=row.why)
