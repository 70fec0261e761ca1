"""An export handed in to a stored round, by the API or at the desk: one way for both."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import datetime
from itertools import islice

from service.api.places import RoundPlace
from service.api.uploads import Uploaded, open_as_before
from service.api.wiring import Wiring
from service.ballots.reading import Question
from service.comments.comment import Comment
from service.comments.copying import time_of_copying
from service.comments.formats import Format, Meaning, OpenExport, Source, Unreadable
from service.comments.times import zone_of
from service.store.batches import (
    BatchReport,
    Delivery,
    check_takes_comments,
    digest_of,
    hand_in,
)
from service.store.counting import question_of
from service.store.games import remember_columns, take_game
from service.store.readings_kept import VoteReader
from service.store.staging import Busy, Staged, Tell, nobody_waits, say_nothing, staged
from service.store.tables import RoundRow


@dataclass(frozen=True, slots=True)
class HowToRead:
    """What the caller says of an export beside it."""

    columns: dict[Meaning, str]
    copied_at: str | None
    format: Format | None
    at: str | None
    watch: str | None
    complete: bool


@dataclass(frozen=True, slots=True)
class Sent:
    """An export as it was sent: its name and its bytes, by whom, when, and how it is to be read."""

    name: str
    content: Uploaded
    by: str
    now: datetime
    how: HowToRead


@dataclass(frozen=True, slots=True)
class Glance:
    """The beginning of an export as it would be read. Nothing of it is kept."""

    format: Format
    mapping: tuple[tuple[str, str], ...]
    comments: tuple[Comment, ...]
    unreadable: tuple[Unreadable, ...]
    notes: tuple[str, ...]
    #: The headers of a table, whatever they hold.
    columns: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class OfRound:
    """What reading needs to know of the round."""

    zone: str
    question: Question
    remembered: dict[str, str]


def hand_in_export(
    parts: Wiring, place: RoundPlace, sent: Sent, busy: Busy = nobody_waits
) -> tuple[BatchReport, RoundRow]:
    """Read an export into the round, all or nothing.

    Raises:
        BadExport, BadTime: it cannot be read so.
        NotFound, WrongState: there is no such round, or it takes no comments.
    """
    tell = parts.progress.teller(sent.how.watch)
    of_round = round_of(place, parts)
    reader = VoteReader(of_round.question)
    # Reading takes the longest by far, so it is done before the round is taken.
    with (
        delivered(parts, of_round, sent, reader, (tell, busy)) as delivery,
        parts.database.writing() as session,
    ):
        game, row = place.found(session)
        columns = dict[str, str](sent.how.columns.items())
        names_columns = bool(columns) and columns != game.columns
        if names_columns:
            take_game(session, game)  # before the round is taken
        report = hand_in(session, row, delivery, tell)
        if names_columns and not report.repeated:
            remember_columns(session, game, columns)
    tell("done", delivery.staged.count, delivery.staged.count)
    return report, row


@contextmanager
def delivered(
    parts: Wiring,
    of_round: OfRound,
    sent: Sent,
    reader: VoteReader,
    beside: tuple[Tell, Busy] = (say_nothing, nobody_waits),
) -> Iterator[Delivery]:
    """An export read to its end, ready to be kept within the block; `beside` as `staged` takes them.

    Raises:
        BadExport, BadTime: it cannot be read so.
    """
    source, opened = _opened(parts, of_round, sent)
    with staged(opened, reader, sent.content.size, *beside) as read:
        yield _delivery(read, source, sent)


def glance_at(parts: Wiring, place: RoundPlace, sent: Sent, most: int) -> Glance:
    """The first of what an export holds, as it would be handed in.

    Raises:
        BadExport, BadTime: it cannot be read so.
        NotFound, WrongState: there is no such round, or it takes no comments.
    """
    _, opened = _opened(parts, round_of(place, parts), sent)
    found = list(islice(opened.items, most))
    return Glance(
        format=opened.format,
        mapping=opened.mapping,
        comments=tuple(one for one in found if isinstance(one, Comment)),
        unreadable=tuple(one for one in found if isinstance(one, Unreadable)),
        notes=opened.notes(),
        columns=opened.columns,
    )


def round_of(place: RoundPlace, parts: Wiring) -> OfRound:
    """What reading an export needs to know of the round.

    Raises:
        NotFound, WrongState: there is no such round, or it takes no comments.
    """
    with parts.database.reading() as session:
        game, row = place.found(session)
        check_takes_comments(row)
        return OfRound(game.zone, question_of(game, row), dict(game.columns or {}))


def _opened(parts: Wiring, of_round: OfRound, sent: Sent) -> tuple[Source, OpenExport]:
    how = sent.how
    copied_at = time_of_copying(how.copied_at, zone_of(of_round.zone), sent.now)
    columns = tuple(how.columns.items())
    source = Source(sent.name, of_round.zone, copied_at, columns, how.format, how.at)
    limit = parts.settings.whole_limit
    return source, open_as_before(sent.content, source, of_round.remembered, limit)


def _delivery(read: Staged, source: Source, sent: Sent) -> Delivery:
    return Delivery(
        name=source.name,
        size=sent.content.size,
        digest=digest_of(sent.content),
        staged=read,
        copied_at=source.copied_at,
        by=sent.by,
        at=sent.now,
        copied_told=sent.how.copied_at is not None,
        complete=sent.how.complete,
    )
