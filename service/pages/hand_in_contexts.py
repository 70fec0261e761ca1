"""What handing in comments shows: where to give them, how they would be read, what a batch held."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime
from typing import ClassVar

from sqlmodel import Session

from service.api.handing_in import Glance
from service.comments.formats import FORMATS, MEANINGS
from service.comments.times import zone_of
from service.counting.wording import sentence
from service.pages.desk_access import SignedIn
from service.pages.form_reading import NOTHING, Typed
from service.pages.frame import Frame
from service.pages.game_contexts import round_title
from service.pages.game_frame import GameBar, TimeShown, game_bar, round_address, time_or_none
from service.pages.marked_text import short_span
from service.pages.rendering import Context
from service.store.batches import BatchReport, first_report, reach_of
from service.store.tables import GameRow, RoundRow
from service.store.tables_comments import BatchRow

#: How many comments are read to show how they would be.
AT_A_GLANCE = 8
_MEANT = {
    "text": "The comment's words",
    "author": "Who wrote it",
    "author_id": "The writer's id",
    "id": "The comment's id",
    "posted": "When it was written",
    "edited": "When it was edited",
    "reply_to": "What it answers",
}
_REACH = {
    "yes": "It reaches past the closing, so no vote that was in time is missing from it.",
    "no": "It was copied before the closing: hand in the comments once more after it.",
    "cannot tell": "Nobody said when it was copied, so it cannot be told whether it reaches past "
    "the closing.",
    None: "",
}


@dataclass(frozen=True, slots=True)
class HandInPage(Context):
    """Where comments are given."""

    template: ClassVar[str] = "hand_in.html"

    frame: Frame
    bar: GameBar
    title: str
    at: str
    typed: Typed
    zone: str
    limit: int


@dataclass(frozen=True, slots=True)
class MeaningShown:
    """What a column means, and which column that is."""

    name: str
    words: str
    column: str


@dataclass(frozen=True, slots=True)
class SampleShown:
    """A comment as it would be read."""

    author: str
    written: str
    text: str


@dataclass(frozen=True, slots=True)
class GlancePage(Context):
    """An export that waits, as it would be read."""

    template: ClassVar[str] = "glance.html"

    frame: Frame
    bar: GameBar
    title: str
    at: str
    key: str
    name: str
    typed: Typed
    format: str
    formats: tuple[tuple[str, str], ...]
    has_columns: bool
    named: bool
    meanings: tuple[MeaningShown, ...]
    columns: tuple[str, ...]
    samples: tuple[SampleShown, ...]
    unreadable: tuple[tuple[str, str], ...]
    notes: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class BatchPage(Context):
    """What a batch held."""

    template: ClassVar[str] = "batch.html"

    frame: Frame
    bar: GameBar
    title: str
    round: str
    number: int
    name: str
    done: str
    format: str
    figures: tuple[tuple[str, str], ...]
    covers: tuple[TimeShown, ...]
    copied: TimeShown | None
    reach: str
    mapping: tuple[tuple[str, str], ...]
    notes: tuple[str, ...]
    unreadable_count: int
    unreadable: tuple[tuple[str, str, str], ...]
    taken_back: TimeShown | None
    why_taken_back: str
    stays: bool
    typed: Typed


def hand_in_page(
    session: Session,
    desk: SignedIn,
    place: tuple[GameRow, RoundRow],
    told: tuple[datetime, int],
    typed: Typed = NOTHING,
) -> HandInPage:
    """Where comments are given; `told` are the time and the largest upload in megabytes."""
    (game, row), (now, limit) = place, told
    at = f"{round_address(game.slug, row.number)}/hand-in"
    return HandInPage(
        frame=desk.frame("Hand in comments", at),
        bar=game_bar(session, game, now, at),
        title=round_title(row),
        at=at,
        typed=typed,
        zone=game.zone,
        limit=limit,
    )


@dataclass(frozen=True, slots=True)
class Waits:
    """An export that waits: its key, its name, what it held at a glance.

    `named` tells whether the host named columns; `columns` are a table's headers to choose from.
    """

    key: str
    name: str
    glance: Glance | None
    named: bool
    columns: tuple[str, ...]


def glance_page(
    session: Session,
    desk: SignedIn,
    place: tuple[GameRow, RoundRow],
    told: tuple[datetime, Waits],
    typed: Typed,
) -> GlancePage:
    """How an export that waits would be read."""
    (game, row), (now, waits) = place, told
    at = f"{round_address(game.slug, row.number)}/hand-in"
    glance, zone = waits.glance, zone_of(game.zone)
    mapping = dict(glance.mapping) if glance else _typed_columns(typed)
    return GlancePage(
        frame=desk.frame("Hand in comments", at),
        bar=game_bar(session, game, now, at),
        title=round_title(row),
        at=at,
        key=waits.key,
        name=waits.name,
        typed=typed,
        format="" if glance is None else glance.format,
        formats=(("", "found by itself"), *((one, sentence(one)) for one in FORMATS)),
        has_columns=glance is None or bool(glance.mapping),
        named=waits.named,
        meanings=tuple(MeaningShown(one, _MEANT[one], mapping.get(one, "")) for one in MEANINGS),
        columns=waits.columns,
        samples=()
        if glance is None
        else tuple(
            SampleShown(one.author or "(no name)", short_span(one.posted, zone), one.text)
            for one in glance.comments
        ),
        unreadable=()
        if glance is None
        else tuple((one.place, one.why) for one in glance.unreadable),
        notes=() if glance is None else glance.notes,
    )


def _typed_columns(typed: Typed) -> Mapping[str, str]:
    return {one: typed.values.get(f"column_{one}", "") for one in MEANINGS}


def _figures(report: BatchReport) -> list[tuple[str, int]]:
    return [
        ("New comments", report.new),
        ("Edited since an earlier batch", report.edited),
        ("Known already", report.unchanged),
        ("Deleted by their writers", report.gone),
    ]


def batch_page(
    session: Session,
    desk: SignedIn,
    place: tuple[GameRow, RoundRow],
    told: tuple[datetime, BatchRow],
    done: str,
    typed: Typed = NOTHING,
) -> BatchPage:
    """What a batch held, as it was reported when it was handed in."""
    (game, row), (now, batch) = place, told
    of_round = round_address(game.slug, row.number)
    at, zone = f"{of_round}/batches/{batch.number}", zone_of(game.zone)
    figures = _figures(first_report(batch))
    ends = [time_or_none(batch.first, zone), time_or_none(batch.last, zone)]
    return BatchPage(
        frame=desk.frame(f"Batch {batch.number}", at),
        bar=game_bar(session, game, now, at),
        title=round_title(row),
        round=of_round,
        number=batch.number,
        name=batch.name,
        done=done,
        format=batch.format,
        figures=tuple((name, f"{many:,}") for name, many in figures),
        covers=tuple(end for end in ends if end is not None),
        copied=time_or_none(batch.copied_at, zone),
        reach=_REACH[reach_of(batch, row.closes)],
        mapping=tuple((_MEANT.get(name, name), column) for name, column in batch.mapping.items()),
        notes=tuple(batch.notes),
        unreadable_count=batch.unreadable_count,
        unreadable=tuple((one["place"], one["why"], one["text"]) for one in batch.unreadable[:50]),
        taken_back=time_or_none(batch.taken_back, zone),
        why_taken_back=batch.why_taken_back,
        stays=row.state == "announced" or bool(batch.edited or batch.unchanged),
        typed=typed,
    )
