"""Comments that were read as nothing and never ruled on: they decide nothing, and most are such.

Of each only who wrote it and when is looked at; only the oldest are listed.
"""

from __future__ import annotations

from typing import Any

from sqlmodel import Session

from service.comments.spans import Span
from service.counting.round import ReadComment, RoundRules
from service.counting.running import RunningCount
from service.counting.timing import Timing
from service.store.many import InRound, as_kept, as_time, rows_of
from service.store.readings import Asked
from service.store.readings_kept import reading_from

_EARLIEST = "coalesce(c.edited_earliest, c.posted_earliest)"
_LATEST = "coalesce(c.edited_latest, c.posted_latest)"
#: When the newest words of a comment were written.
WRITTEN = f"{_EARLIEST}, {_LATEST}"
_SILENT = "AND NOT c.speaks AND c.id NOT IN (SELECT comment_id FROM rulings)"
_WHOLE = f"SELECT c.key, c.voter, c.author, c.author_id, {WRITTEN}, c.reading, c.text"
_STRADDLING = f" AND {_EARLIEST} < :edge AND {_LATEST} >= :edge"
_OLDEST = " ORDER BY 5, 6, c.key"


def count_silent(session: Session, within: InRound, asked: Asked, running: RunningCount) -> None:
    """Count these comments by their causes."""
    opens, closes = edges_of(session, running.rules)
    given = within.given | {"opens": opens} | ({} if closes is None else {"closes": closes})
    timing = _timing(closes is not None)
    if not asked.hosts.ids and not asked.hosts.names:
        # Nobody need be looked at, so that the database can count.
        many_at = f"SELECT {timing}, count(*) {within.of} {_SILENT} GROUP BY 1"
        for when, many in rows_of(session, many_at, given):
            _add(running, when, many)
        return
    are_hosts = asked.hosts.are
    each = f"SELECT c.author, c.author_id, {timing} {within.of} {_SILENT}"
    for author, author_id, when in rows_of(session, each, given):
        if are_hosts(author_id, author):
            running.add_silent("the host's own")
        else:
            _add(running, when)


def _timing(is_closed: bool) -> str:  # noqa: FBT001 - the only argument
    """As `timing_between` tells it, told by the database."""
    late = f"WHEN {_EARLIEST} >= :closes THEN 'after the closing'" if is_closed else ""
    at_end = f"OR {_LATEST} >= :closes" if is_closed else ""
    return (
        f"CASE WHEN {_LATEST} < :opens THEN 'before the opening' {late} "
        f"WHEN {_EARLIEST} < :opens {at_end} THEN 'cannot tell when' ELSE 'in time' END"
    )


def _add(running: RunningCount, when: Timing, many: int = 1) -> None:
    running.add_silent("chooses no page" if when == "in time" else when, many)


def list_silent(
    session: Session, within: InRound, asked: Asked, running: RunningCount, most: int | None
) -> None:
    """List the oldest `most` of them, and of those whose time needs a look; all for None."""
    limit = "" if most is None else f" LIMIT {most}"
    wanted: list[tuple[str, dict[str, Any]]] = [("", {})]
    if most is not None:
        edges = edges_of(session, running.rules)
        wanted += [(_STRADDLING, {"edge": edge}) for edge in edges if edge is not None]
    listed: set[str] = set()
    for which, given in wanted:
        asked_for = f"{_WHOLE} {within.of} {_SILENT} {which} {_OLDEST} {limit}"
        for row in rows_of(session, asked_for, within.given | given):
            if row[0] not in listed:
                listed.add(row[0])
                running.list_silent(_comment(row, asked))


def edges_of(session: Session, rules: RoundRules) -> tuple[Any, Any]:
    """The opening and the closing as the database gives times."""
    if session.connection().dialect.name != "sqlite":
        return rules.opens, rules.closes
    # Text of times, as SQLite keeps it, is ordered as they are.
    return as_kept(rules.opens), rules.closes and as_kept(rules.closes)


def _comment(row: Any, asked: Asked) -> ReadComment:
    key, voter, author, author_id, earliest, latest, reading, words = row
    first = as_time(earliest)
    written = Span(first, first if latest == earliest else as_time(latest))
    is_host = asked.hosts.are(author_id, author)
    return ReadComment(key, voter, author, written, reading_from(reading), is_host, (), words)
