"""Routes that count: a stored round's comments, or an export's without storing anything."""

from __future__ import annotations

from typing import Annotated

from fastapi import APIRouter, File, Form, UploadFile
from pydantic import Json
from sqlmodel import Session

from service.api.counted_out import Announcement, Intake, tally_out
from service.api.places import InRound
from service.api.problem_models import problems
from service.api.tally_in import UNNAMED, TallyIn
from service.api.tally_models import TallyOut, UnreadableOut
from service.api.wiring import Now, Reading, host_only
from service.comments.entries import clean
from service.comments.identity import merge_batch
from service.comments.intake import read_export
from service.comments.times import zone_of
from service.counting.round import RoundInput
from service.errors import BadRules
from service.store.answers import check_announcement
from service.store.batches import batches_of
from service.store.counting import count_stored
from service.store.games import page_states
from service.store.readings import Asked, Counted, Hosts, count, read_comments
from service.store.rounds import next_number
from service.store.tables import GameRow, RoundRow
from service.store.words import stored_result, unnamed_result

router = APIRouter(
    prefix="/api", tags=["counting"], dependencies=[host_only], responses=problems(401, 403, 422)
)


@router.post("/tally", summary="Count an export without storing it", responses=problems(413))
def post_tally(
    file: Annotated[UploadFile, File(description="The export.")],
    question: Annotated[Json[TallyIn], Form(description="The question as JSON.")],
    now: Now,
) -> TallyOut:
    """Reads and counts the export by the rules in `question`. Nothing is kept."""
    asked = question.to_asked(clean(file.filename or "") or UNNAMED, now)
    export = read_export(file.file.read(), asked.source)
    known = merge_batch((), export.comments, asked.source.copied_at).new
    how = Asked(asked.question, Hosts.of(asked.hosts), asked.rules.closes)
    read, texts = read_comments(known, how, {})
    counted = count(RoundInput(asked.question.chart, asked.rules, read), texts)
    intake = Intake(
        format=export.format,
        mapping=dict(export.mapping),
        notes=export.notes,
        unreadable=tuple(
            UnreadableOut(place=one.place, text=one.text, why=one.why) for one in export.unreadable
        ),
    )
    words = unnamed_result(counted, zone_of(question.zone))
    return tally_out(counted, intake, Announcement(words))


@router.get(
    "/games/{game}/rounds/{number}/tally",
    summary="Count a stored round as it stands",
    responses=problems(404, 409),
)
def get_tally(place: InRound, session: Reading) -> TallyOut:
    """The count of all comments handed in so far, with those that need a look."""
    row, wanted = place.found(session)
    counted = count_stored(session, row, wanted)
    batches = batches_of(session, wanted)
    intake = Intake(
        format=batches[-1].format if batches else None,
        mapping=batches[-1].mapping if batches else {},
        notes=tuple(dict.fromkeys(note for batch in batches for note in batch.notes)),
        unreadable=tuple(UnreadableOut(**one) for batch in batches for one in batch.unreadable),
    )
    return tally_out(
        counted, intake, _announcement(session, row, wanted, counted), (place.game, place.number)
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
