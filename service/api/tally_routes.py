"""Routes that count: a stored round's comments, or an export's without storing anything."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Annotated

from fastapi import APIRouter, File, Form, Query, UploadFile
from pydantic import Json
from sqlmodel import Session

from service.api.counted_out import Announcement, Intake, tally_out
from service.api.places import InRound
from service.api.problem_models import problems
from service.api.progress_routes import Watch
from service.api.tally_in import TallyIn
from service.api.tally_models import TallyOut, UnreadableOut
from service.api.uploads import Uploaded, name_of
from service.api.wiring import Now, Parts, Reading, host_only
from service.comments.intake import open_export
from service.comments.times import zone_of
from service.counting.rules import check_rules
from service.errors import BadRules
from service.store.answers import check_announcement
from service.store.batches import Delivery, batches_with_notes, digest_of, hand_in, last_batch
from service.store.counting import count_stored
from service.store.games import page_states
from service.store.readings import Counted
from service.store.readings_kept import VoteReader
from service.store.rounds import next_number
from service.store.scratch import passing_round
from service.store.staging import staged
from service.store.tables import GameRow, RoundRow
from service.store.tables_comments import BatchRow
from service.store.words import stored_result, unnamed_result

router = APIRouter(
    prefix="/api", tags=["counting"], dependencies=[host_only], responses=problems(401, 403, 422)
)

Most = Annotated[
    int,
    Query(
        ge=0,
        le=10_000_000,
        description="How many ballots, looks and other comments set aside are listed at most, of "
        "each the oldest; all are counted.",
    ),
]
_LISTED = 2000


@router.post("/tally", summary="Count an export without storing it", responses=problems(413))
def post_tally(
    file: Annotated[UploadFile, File(description="The export.")],
    question: Annotated[Json[TallyIn], Form(description="The question as JSON.")],
    now: Now,
    parts: Parts,
    watch: Watch = None,
    most: Most = _LISTED,
) -> TallyOut:
    """Reads and counts the export by the rules in `question`. Nothing is kept."""
    tell = parts.progress.teller(watch)
    asked = question.to_asked(name_of(file), now)
    check_rules(asked.rules, asked.question.chart)
    content = Uploaded.of(file)
    opened = open_export(content, asked.source, parts.settings.whole_limit)
    with (
        staged(opened, VoteReader(asked.question), content.size, tell) as read,
        passing_round(asked.question, asked.rules, asked.hosts, question.zone, now) as passing,
    ):
        delivery = Delivery(
            name=asked.source.name,
            size=content.size,
            digest=digest_of(content),
            staged=read,
            copied_at=asked.source.copied_at,
            by="",
            at=now,
        )
        batch = hand_in(passing[0], passing[2], delivery, tell).batch
        tell("counting", 0, read.count)
        counted = count_stored(*passing, most)
    words = unnamed_result(counted, zone_of(question.zone))
    out = tally_out(counted, _intake(batch, [batch]), Announcement(words))
    tell("done", out.comments, out.comments)
    return out


@router.get(
    "/games/{game}/rounds/{number}/tally",
    summary="Count a stored round as it stands",
    responses=problems(404, 409),
)
def get_tally(place: InRound, session: Reading, most: Most = _LISTED) -> TallyOut:
    """The count of all comments handed in so far, with those that need a look."""
    row, wanted = place.found(session)
    counted = count_stored(session, row, wanted, most)
    return tally_out(
        counted,
        _intake(last_batch(session, wanted), batches_with_notes(session, wanted)),
        _announcement(session, row, wanted, counted),
        (place.game, place.number),
    )


def _intake(last: BatchRow | None, batches: Sequence[BatchRow]) -> Intake:
    """How comments came in: `batches` are those that have something to tell of it."""
    return Intake(
        format=last.format if last else None,
        mapping=last.mapping if last else {},
        notes=tuple(dict.fromkeys(note for batch in batches for note in batch.notes)),
        unreadable=tuple(UnreadableOut(**one) for batch in batches for one in batch.unreadable),
        unreadable_count=sum(batch.unreadable_count for batch in batches),
    )


def _announcement(session: Session, game: GameRow, row: RoundRow, counted: Counted) -> Announcement:
    """What would be announced now, unless it gave the sealed answer away."""
    try:
        check_announcement(session, game, counted.round_input.host_pick)
    except BadRules as error:
        return Announcement(None, f"The announcement is left out: {error}")
    taken = page_states(session, game).taken
    to_come = next_number(session, game)
    return Announcement(stored_result(counted, game, row, taken=taken, to_come=to_come))
