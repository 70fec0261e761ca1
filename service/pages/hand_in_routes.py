"""Routes of handing in comments: given, looked at with how they would be read, then kept."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import datetime
from io import BytesIO
from typing import Annotated, Any, BinaryIO

from fastapi import APIRouter, Path
from fastapi.responses import JSONResponse, Response
from pydantic import TypeAdapter, ValidationError
from sqlmodel import Session
from starlette.datastructures import FormData, UploadFile

from service.api.batch_models import TakeBackIn
from service.api.handing_in import HowToRead, Sent, glance_at, hand_in_export
from service.api.tally_in import Columns
from service.api.uploads import name_of
from service.api.waiting import SentBy, WaitingExport
from service.api.wiring import Now, Parts, Reading, Wiring
from service.comments.formats import FORMATS, MEANINGS
from service.errors import NoTextColumn
from service.pages.acting import acted, shown_again
from service.pages.desk_access import Desk, DeskForm, SignedIn
from service.pages.form_reading import (
    REFUSED,
    Faults,
    fault_of,
    read_as,
    status_for,
    typed_in,
    words_of,
)
from service.pages.game_frame import went_well
from service.pages.hand_in_contexts import (
    AT_A_GLANCE,
    BatchPage,
    HandInPage,
    Waits,
    batch_page,
    glance_page,
    hand_in_page,
)
from service.pages.rendering import NOT_KEPT, answer_page
from service.pages.round_places import DeskRound, InDeskRound
from service.store.batches import batch_numbered
from service.store.taking_back import take_back

router = APIRouter(prefix="/desk/games/{slug}/rounds/{number}", include_in_schema=False)
progress_router = APIRouter(include_in_schema=False)

_PASTED = "the paste"
_BY = "the desk"
_COLUMNS: TypeAdapter[dict[Any, str]] = TypeAdapter(Columns)
#: A reason for taking back where the host gave none.
_TAKEN_BACK = "The host handed it in by mistake."
_DONE = {
    "taken-back": "Its comments are out of the round again, and nothing of them counts.",
    "kept": "The comments are kept.",
    "repeated": "Just these comments were handed in before, so nothing has changed.",
}


@router.get("/hand-in")
def get_hand_in(
    place: InDeskRound, desk: Desk, session: Reading, parts: Parts, now: Now
) -> Response:
    """Where comments are given."""
    told = (now, parts.settings.upload_limit)
    return answer_page(hand_in_page(session, desk, place.found(session), told))


@router.post("/hand-in")
def post_hand_in(
    place: InDeskRound, desk: Desk, form: DeskForm, parts: Parts, now: Now
) -> Response:
    """Takes a file or a paste, and shows how it would be read. Nothing is kept in the game yet."""
    name, content = _given(form)
    if content is None:

        def again(session: Session, faults: Faults) -> HandInPage:
            told = (now, parts.settings.upload_limit)
            typed = typed_in(form, "hand-in", faults)
            return hand_in_page(session, desk, place.found(session), told, typed)

        return shown_again(
            parts, again, {"paste": "Nothing is here: paste comments or choose a file."}
        )
    key = parts.waiting.keep(SentBy(desk.number, place.slug), name, content, now)
    return _looked_at((place, desk), (form, key), parts, now)


@router.post("/hand-in/{key}")
def post_waiting(
    place: InDeskRound, key: str, desk: Desk, form: DeskForm, parts: Parts, now: Now
) -> Response:
    """Hands in the export that waits, or shows anew how it would be read."""
    waiting = parts.waiting.find(desk.number, key, now)
    words = words_of(form)
    if words.get("do") != "keep":
        return _looked_at((place, desk), (form, key), parts, now)
    sent, faults = _sent(waiting, words, now)
    if faults:
        return _looked_at((place, desk), (form, key), parts, now)
    try:
        report, _ = hand_in_export(parts, place.for_api, sent)
    except REFUSED as error:
        faults = fault_of(error, words, {"NoTextColumn": ("column_text",)})
        return _glanced((place, desk), (form, key), parts, (now, faults, status_for(error)))
    parts.waiting.drop(key)
    done = "repeated" if report.repeated else "kept"
    return went_well(f"{place.address}/batches/{report.batch.number}", done)


@router.get("/batches/{batch}")
def get_batch(
    place: InDeskRound,
    batch: Annotated[int, Path(ge=1, le=1_000_000)],
    desk: Desk,
    session: Reading,
    now: Now,
    done: str = "",
) -> Response:
    """What a batch held."""
    found = place.found(session)
    row = batch_numbered(session, found[1], batch)
    return answer_page(batch_page(session, desk, found, (now, row), _DONE.get(done, "")))


@router.post("/batches/{batch}/take-back")
def post_take_back(
    place: InDeskRound,
    batch: Annotated[int, Path(ge=1, le=1_000_000)],
    desk: Desk,
    form: DeskForm,
    parts: Parts,
    now: Now,
) -> Response:
    """Takes the comments of a batch out again, with the host's reason."""
    words = words_of(form)
    told, wrong = read_as(TakeBackIn, {"reason": words.get("reason", "").strip() or _TAKEN_BACK})

    def act(session: Session) -> Response:
        game, row = place.found(session)
        take_back(session, game, row, batch, (told.reason if told else "", now))
        return went_well(f"{place.address}/batches/{batch}", "taken-back")

    def again(session: Session, faults: Faults) -> BatchPage:
        found = place.found(session)
        row = batch_numbered(session, found[1], batch)
        typed = typed_in(form, "take-back", faults)
        return batch_page(session, desk, found, (now, row), "", typed)

    if told is None:
        return shown_again(parts, again, wrong)
    return acted(parts, act, again, words)


@progress_router.get("/desk/progress/{watch}")
def get_progress(watch: str, desk: Desk, parts: Parts) -> Response:
    """How far an import is, for the script of the page that waits for it."""
    del desk
    step, done, total = parts.progress.of(watch)
    return JSONResponse({"step": step, "done": done, "total": total}, headers=dict(NOT_KEPT))


def _given(form: FormData) -> tuple[str, BinaryIO | None]:
    """The file, else the paste."""
    file = form.get("file")
    if isinstance(file, UploadFile) and file.filename:
        return name_of(file), file.file  # type: ignore[arg-type]  # the framework's own class
    paste = form.get("paste")
    if isinstance(paste, str) and paste.strip():
        return _PASTED, BytesIO(paste.encode("utf-8", "surrogatepass"))
    return "", None


def _looked_at(
    place: tuple[DeskRound, SignedIn], sent: tuple[FormData, str], parts: Wiring, now: datetime
) -> Response:
    return _glanced(place, sent, parts, (now, {}, 200))


def _glanced(
    place: tuple[DeskRound, SignedIn],
    sent: tuple[FormData, str],
    parts: Wiring,
    told: tuple[datetime, Faults, int],
) -> Response:
    """The page on how the export would be read, with the first of its comments."""
    (desk_round, desk), (form, key), (now, wrong, status) = place, sent, told
    waiting, words = parts.waiting.find(desk.number, key, now), words_of(form)
    asked, faults = _sent(waiting, words, now)
    faults, glance = {**faults, **wrong}, None
    columns: tuple[str, ...] = ()
    if not faults:
        try:
            glance = glance_at(parts, desk_round.for_api, asked, AT_A_GLANCE)
            columns = glance.columns
        except REFUSED as error:
            faults = fault_of(error, words, {"NoTextColumn": ("column_text",)})
            status = status_for(error)
            columns = error.columns if isinstance(error, NoTextColumn) else ()
    waits = Waits(key, waiting.name, glance, bool(asked.how.columns), columns)
    with parts.database.reading() as session:
        found = desk_round.found(session)
        typed = typed_in(form, "glance", faults)
        page = glance_page(session, desk, found, (now, waits), typed)
    return answer_page(page, status if faults or status != 200 else 200)


def _sent(
    waiting: WaitingExport, words: Mapping[str, str], now: datetime
) -> tuple[Sent, dict[str, str]]:
    """The export with how it is to be read, and what is wrong with that."""
    faults: dict[str, str] = {}
    columns = _named(words)
    try:
        columns = _COLUMNS.validate_python(columns)
    except ValidationError:
        faults["column_text"] = "A column's name is at most 500 characters long."
    form = words.get("format", "")
    how = HowToRead(
        columns=columns,
        copied_at=words.get("copied_at", "").strip() or None,
        format=form if form in FORMATS else None,
        at=words.get("at", "").strip()[:1000] or None,
        watch=_watch(words.get("watch", "")),
        complete=words.get("complete") == "yes",
    )
    return Sent(waiting.name, waiting.content, _BY, now, how), faults


def _named(words: Mapping[str, str]) -> dict[Any, str]:
    """The columns, where the host has named them otherwise than they were found."""
    typed = {one: words.get(f"column_{one}", "").strip() for one in MEANINGS}
    found = {one: words.get(f"found_{one}", "").strip() for one in MEANINGS}
    if words.get("named") != "yes" and typed == found:
        return {}
    return {one: typed[one] or "-" for one in MEANINGS if typed[one] or found[one]}


def _watch(name: str) -> str | None:
    plain = name.isascii() and name.replace("-", "").replace("_", "").isalnum()
    return name if plain and 8 <= len(name) <= 64 else None
