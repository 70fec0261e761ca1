"""The line below a picture's title: what stands in the game just now."""

from __future__ import annotations

from datetime import datetime
from zoneinfo import ZoneInfo

from service.announce.instants import instant_in_words
from service.announce.votes_by_day import VotesByDay
from service.counting.wording import how_many


def caption_of_pages(stitched: int, pages: int) -> str:
    """How far the piece is, where no round is to be told of."""
    return f"{stitched:,} of {how_many(pages, 'page')} stitched"


def caption_of_open_round(
    number: int, votable: int, closes: datetime | None, zone: ZoneInfo
) -> str:
    """A round that may be voted in."""
    until = f" until {instant_in_words(closes, zone)}" if closes is not None else ""
    return f"Round {number} is open: {how_many(votable, 'page')} can be chosen{until}"


def caption_of_closed_round(number: int) -> str:
    """A round that is closed and not announced."""
    return f"Round {number} has closed, and its result is still to come"


def caption_of_result(number: int, winner: int | None) -> str:
    """A round with its result."""
    return f"Round {number}: {'no page was chosen' if winner is None else f'page {winner} is next'}"


def caption_of_days(shown: VotesByDay) -> str:
    """The chart of votes by day, or by week where there are many."""
    zone = shown.zone.key.rpartition("/")[2].replace("_", " ")
    return f"Votes by {'week' if shown.weekly else 'day'}, {zone} time"
