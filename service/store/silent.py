"""Comments that were read as nothing and never ruled on: they decide nothing, and most are such.

Of each only who wrote it and when is looked at; only the oldest are listed.
"""

from __future__ import annotations

from typing import Any

from sqlmodel import Session

from service.comments.spans import Span
from service.counting.round import ReadComment, RoundRules
from service.counting.running import RunningCount
from service.counting.timing import timing_between
from service.store.many import as_kept, as_time, rows_of
from service.store.readings import Asked
from service.store.readings_kept import reading_from

#: When the newest words of a comment were written.
WRITTEN = (
    "coalesce(c.edited_earliest, c.posted_earliest), coalesce(c.edited_latest, c.posted_latest)"
)
_SILENT = """
    FROM comments c WHERE c.round_id = :round AND NOT c.speaks
    AND c.id NOT IN (SELECT comment_id FROM rulings)
"""
_WHEN = f"SELECT c.author, c.author_id, {WRITTEN} {_SILENT}"
_WHOLE = f"SELECT c.key, c.voter, c.author, c.author_id, {WRITTEN}, c.reading, c.text {_SILENT}"
_STRADDLING = (
    " AND coalesce(c.edited_earliest, c.posted_earliest) < :edge"
    " AND coalesce(c.edited_latest, c.posted_latest) >= :edge"
)
_OLDEST = " ORDER BY 5, 6, c.key"


def count_silent(
    session: Session, round_id: int, asked: Asked, rules: RoundRules, running: RunningCount
) -> None:
    """Count these comments by their causes."""
    held = _edges(session, rules)
    are_hosts, add = asked.hosts.are, running.add_silent
    for author, author_id, earliest, latest in rows_of(session, _WHEN, {"round": round_id}):
        if are_hosts(author_id, author):
            add("the host's own")
            continue
        timing = timing_between((earliest, latest), held)
        add("chooses no page" if timing == "in time" else timing)


def list_silent(
    session: Session, round_id: int, asked: Asked, running: RunningCount, most: int | None
) -> None:
    """List the oldest `most` of them, and of those whose time needs a look; all for None."""
    limit = "" if most is None else f" LIMIT {most}"
    wanted: list[tuple[str, dict[str, Any]]] = [("", {})]
    if most is not None:
        edges = _edges(session, running.rules)
        wanted += [(_STRADDLING, {"edge": edge}) for edge in edges if edge is not None]
    listed: set[str] = set()
    for which, given in wanted:
        for row in rows_of(session, _WHOLE + which + _OLDEST + limit, {"round": round_id} | given):
            if row[0] not in listed:
                listed.add(row[0])
                running.list_silent(_comment(row, asked))


def _edges(session: Session, rules: RoundRules) -> tuple[Any, Any]:
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
