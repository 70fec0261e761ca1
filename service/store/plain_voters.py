"""Voters that are settled by the rows of their comments alone, without a value for each comment.

Nearly all of a large round are such (counting/plain_voters.py). The others are counted as ever.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, field
from itertools import chain, groupby
from operator import itemgetter
from typing import Any

from sqlmodel import Session

from service.counting.plain_voters import Chose, PlainVoters
from service.counting.round import ReadComment, RoundRules
from service.counting.running import RunningCount
from service.store.many import AT_ONCE, InRound, as_time, rows_of
from service.store.readings import Asked
from service.store.readings_kept import reading_from
from service.store.silent import WRITTEN, edges_of
from service.store.speaking import SPEAKING, comments_of, rulings_of
from service.store.tables import RoundRow

#: How many different readings are remembered as the pages that they choose.
_MOST_READINGS = 20_000
_COLUMNS = f"SELECT c.id, c.voter, c.key, {WRITTEN}, c.reading, c.older"


def count_speaking(
    session: Session, row: RoundRow, asked: Asked, within: InRound, running: RunningCount
) -> None:
    """Count the comments that decide something or may, where their readings are good.

    `running` must list only so many, and no batch of the round may be complete.
    """
    rulings = rulings_of(session, row)
    plain = running.plain_voters()
    left: list[int] = []

    def count_left() -> None:
        comments = comments_of(session, row, asked, rulings, left)
        for _, of_one_voter in groupby(comments, key=lambda one: one.voter):
            running.add(of_one_voter)
        left.clear()

    told = _Told(edges_of(session, running.rules), _hosts(asked), rulings, running.rules)
    # Names are needed only where the host has any.
    names = "c.author, c.author_id" if told.are_hosts else "'', ''"
    rows = rows_of(session, f"{_COLUMNS}, {names} {within.of} {SPEAKING}", within.given)
    for voter, of_one_voter in groupby(rows, key=itemgetter(1)):
        comments = list(of_one_voter)
        chose = told.chosen_in(comments)
        if chose is None or not plain.add(voter, chose):
            left += [one[0] for one in comments]
            if len(left) >= AT_ONCE:
                count_left()
    count_left()
    running.add_plain(plain, as_time)
    _list_oldest(plain, running, lambda ids: comments_of(session, row, asked, rulings, ids))


def _hosts(asked: Asked) -> Callable[[str | None, str], bool] | None:
    return asked.hosts.are if asked.hosts.ids or asked.hosts.names else None


def _list_oldest(
    plain: PlainVoters,
    running: RunningCount,
    comments_of_ids: Callable[[Sequence[int]], Iterator[ReadComment]],
) -> None:
    """List the oldest of what was counted, each with the other comments of its voter."""
    listed = [*plain.oldest_ballots.listed(), *plain.oldest_replaced.listed()]
    keys = {key for _, key, _ in listed}
    ids = list(chain.from_iterable(dict.fromkeys(of_voter for _, _, of_voter in listed)))
    for _, of_one_voter in groupby(comments_of_ids(ids), key=lambda one: one.voter):
        running.list_plain(of_one_voter, keys)


@dataclass(slots=True)
class _Told:
    """What a comment's row tells by itself."""

    edges: tuple[Any, Any]
    are_hosts: Callable[[str | None, str], bool] | None
    rulings: Any
    rules: RoundRules
    _pages: dict[str | None, tuple[int, ...]] = field(default_factory=dict)

    def chosen_in(self, rows: Sequence[Any]) -> list[Chose] | None:
        """What a voter chose; None where a comment does anything else, or may."""
        opens, closes = self.edges
        pages_by_reading, are_hosts, rulings = self._pages, self.are_hosts, self.rulings
        found = []
        for number, _, key, at, latest, reading, older, author, author_id in rows:
            pages = pages_by_reading.get(reading)
            if pages is None:
                pages = self._pages_of(reading)
            if (
                not pages
                or at != latest
                or at < opens
                or (closes is not None and at >= closes)
                or older
                or key in rulings
                or (are_hosts is not None and are_hosts(author_id, author))
            ):
                return None
            found.append(Chose(at, key, pages, number))
        return found

    def _pages_of(self, kept: str | None) -> tuple[int, ...]:
        """The pages that a reading chooses where the round can take them all, else none."""
        pages: tuple[int, ...] = ()
        if kept:
            reading = reading_from(kept)
            named = tuple(dict.fromkeys(reading.pages))
            votable = self.rules.votable.issuperset(named) and len(named) <= self.rules.choices
            if reading.outcome == "counts" and votable:
                pages = named
        if len(self._pages) >= _MOST_READINGS:
            self._pages.clear()
        self._pages[kept] = pages
        return pages
