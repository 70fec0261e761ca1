"""Where a round's comments stand, oldest first and by what became of them, for paging by key.

A comment's outcome depends on the other comments of its voter, so a page of a list cannot be asked
of the database alone. The outcomes of all are worked out once for a batch or a closing; rulings
since then change those of their voters only.
"""

from __future__ import annotations

import threading
from array import array
from bisect import bisect_left, insort
from collections.abc import Hashable, Iterator, Mapping
from typing import Any, Literal, get_args

from sqlmodel import Session

from service.counting.result import CAUSES, LOOKS, Ballot, Cause
from service.counting.settle import settle_voter
from service.counting.timing import timing_between
from service.store.columns import id_of
from service.store.counting import asked_in, input_of, read_comments
from service.store.desk_kept import KeptWhileStanding
from service.store.many import as_kept, rows_of
from service.store.readings import Asked
from service.store.readings_kept import read_by
from service.store.silent import WRITTEN
from service.store.speaking import voters_of
from service.store.tables import GameRow, RoundRow

Shown = Literal["look", "set-aside", "counts", "all"]
SHOWN: tuple[Shown, ...] = get_args(Shown)
#: What stands for a comment that counts, beside the places of causes in CAUSES.
_COUNTS = len(CAUSES)

_ALL = f"""
    SELECT c.id, c.key, c.author, c.author_id, {WRITTEN}
    FROM comments c WHERE c.round_id = :round ORDER BY 5, 6, c.key
"""  # noqa: S608 - the columns are this house's own words
# A round's rulings come one after the other, so their ids ascend. Those of all rounds do not: one
# with a lower id may be kept later.
_RULED_SINCE = """
    SELECT r.id, c.voter FROM rulings r JOIN comments c ON c.id = r.comment_id
    WHERE r.id > :last AND c.round_id = :round
"""
_BATCHES = """
    SELECT coalesce(max(id), 0), count(taken_back) FROM batches WHERE round_id = :round
"""


class CommentIndex:
    """The comments of one round by their places, 0 for the oldest."""

    def __init__(
        self,
        ids: array[int],
        outcomes: bytearray,
        stood: tuple[int, int],
        asked: Asked,
        *,
        is_kept: bool,
    ) -> None:
        #: The round's number of changes that it goes by, and the last of its rulings.
        self.changes, self.last_ruling = stood
        #: How its comments are heard, and whether the readings that are kept are good for that.
        self.asked, self.is_kept = asked, is_kept
        self.lock = threading.Lock()
        self._ids = ids
        self._outcomes = outcomes
        self._by_id = array("q", sorted(range(len(ids)), key=ids.__getitem__))
        self._lists: dict[Shown, list[int]] = {"look": [], "set-aside": [], "counts": []}
        for place, outcome in enumerate(outcomes):
            self._lists[_shown_as(outcome)].append(place)

    def many(self, shown: Shown) -> int:
        """How many comments are shown so."""
        return len(self._ids) if shown == "all" else len(self._lists[shown])

    def slice_from(self, shown: Shown, start: int | None, limit: int) -> tuple[int, list[int]]:
        """How many come before, and the ids of at most `limit` from the comment `start` on."""
        where = 0 if start is None else self._place_of(start)
        if shown == "all":
            return where, list(self._ids[where : where + limit])
        places = self._lists[shown]
        first = bisect_left(places, where)
        return first, [self._ids[place] for place in places[first : first + limit]]

    def id_at(self, shown: Shown, where: int) -> int | None:
        """The id of the comment that has so many before it among those shown so."""
        places = range(len(self._ids)) if shown == "all" else self._lists[shown]
        return self._ids[places[where]] if 0 <= where < len(places) else None

    def cause_of(self, comment_id: int) -> Cause | None:
        """Why the comment does not count; None where it does."""
        outcome = self._outcomes[self._place_of(comment_id)]
        return None if outcome == _COUNTS else CAUSES[outcome]

    def settle(self, comment_id: int, cause: Cause | None) -> None:
        """Have the comment stand where it belongs by now."""
        place, outcome = self._place_of(comment_id), _code(cause)
        before = _shown_as(self._outcomes[place])
        self._outcomes[place] = outcome
        after = _shown_as(outcome)
        if before != after:
            del self._lists[before][bisect_left(self._lists[before], place)]
            insort(self._lists[after], place)

    def _place_of(self, comment_id: int) -> int:
        """The place of the comment of that id; of one that is not there, the first."""
        found = bisect_left(self._by_id, comment_id, key=self._ids.__getitem__)
        if found < len(self._by_id) and self._ids[self._by_id[found]] == comment_id:
            return self._by_id[found]
        return 0


def index_of(session: Session, game: GameRow, row: RoundRow) -> CommentIndex:
    """The index of a round's comments as they stand.

    Raises:
        WrongState: the round is a draft.
    """

    def make() -> CommentIndex:
        return _made(session, game, row)

    index = _kept.of(session, id_of(row), _stands(session, game, row), make)
    with index.lock:
        if row.changes > index.changes:
            given = {"round": id_of(row), "last": index.last_ruling}
            since = list(rows_of(session, _RULED_SINCE, given))
            for voter in {voter for _, voter in since}:
                for comment_id, cause in _outcomes_of(session, game, row, voter):
                    index.settle(comment_id, cause)
            index.changes = row.changes
            index.last_ruling = max([index.last_ruling, *(number for number, _ in since)])
    return index


_kept: KeptWhileStanding[CommentIndex] = KeptWhileStanding()


def _stands(session: Session, game: GameRow, row: RoundRow) -> Hashable:
    [(newest, taken_back)] = rows_of(session, _BATCHES, {"round": id_of(row)})
    hosts = row.hosts if row.hosts is not None else game.hosts
    return newest, taken_back, row.state == "open", row.closes, row.read_by, tuple(hosts)


def _outcomes_of(
    session: Session, game: GameRow, row: RoundRow, voter: str
) -> Iterator[tuple[int, Cause | None]]:
    ids = {
        key: number
        for number, key in rows_of(
            session,
            "SELECT id, key FROM comments WHERE round_id = :round AND voter = :voter",
            {"round": id_of(row), "voter": voter},
        )
    }
    of_voter = list(read_comments(session, game, row, "AND c.voter = :voter", voter=voter))
    for _, outcome in settle_voter(of_voter, input_of(session, game, row)):
        yield ids[outcome.key], None if isinstance(outcome, Ballot) else outcome.cause


def _made(session: Session, game: GameRow, row: RoundRow) -> CommentIndex:
    asked, round_input = asked_in(session, game, row), input_of(session, game, row)
    given = {"round": id_of(row), "last": 0}
    last = max((number for number, _ in rows_of(session, _RULED_SINCE, given)), default=0)
    spoken: dict[str, Cause | None] = {}
    is_kept = row.read_by == read_by(asked.question)
    for of_one_voter in voters_of(session, row, asked, is_kept=is_kept):
        for _, outcome in settle_voter(of_one_voter, round_input):
            spoken[outcome.key] = None if isinstance(outcome, Ballot) else outcome.cause
    opens, closes = round_input.rules.opens, round_input.rules.closes
    edges: tuple[Any, Any] = (opens, closes)
    if session.connection().dialect.name == "sqlite":
        edges = (as_kept(opens), closes and as_kept(closes))
    ids, outcomes = array("q"), bytearray()
    for one in rows_of(session, _ALL, {"round": id_of(row)}):
        ids.append(one[0])
        outcomes.append(_code(_cause_in(one, spoken, asked, edges)))
    return CommentIndex(ids, outcomes, (row.changes, last), asked, is_kept=is_kept)


def _cause_in(
    one: Any, spoken: Mapping[str, Cause | None], asked: Asked, edges: tuple[Any, Any]
) -> Cause | None:
    """What became of a comment; those that say nothing were not settled with their voters."""
    _, key, author, author_id, earliest, latest = one
    if key in spoken:
        return spoken[key]
    if asked.hosts.are(author_id, author):
        return "the host's own"
    timing = timing_between((earliest, latest), edges)
    return "chooses no page" if timing == "in time" else timing


def _code(cause: Cause | None) -> int:
    return _COUNTS if cause is None else CAUSES.index(cause)


def _shown_as(outcome: int) -> Shown:
    if outcome == _COUNTS:
        return "counts"
    return "look" if CAUSES[outcome] in LOOKS else "set-aside"
