"""Routes of the pace at the desk: stitches are logged, rounds planned, and it is said who sees what."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from fastapi import APIRouter
from fastapi.responses import Response
from sqlmodel import Session

from service.api.pace_models import CorrectionIn, EntryIn, PlanIn
from service.api.wiring import Now, Parts, Reading
from service.errors import NotFound
from service.pages.acting import acted, shown_again
from service.pages.desk_access import Desk, DeskForm
from service.pages.form_reading import Faults, lists_of, read_as, said, typed_in, words_of
from service.pages.game_frame import desk_address, went_well
from service.pages.pace_contexts import PacePage, pace_page
from service.pages.rendering import answer_page
from service.store.games import game_named, page_states
from service.store.stitch_log import add_entries, change_plan, correct_entry, log_of, today_of
from service.store.tables import GameRow

router = APIRouter(prefix="/desk/games/{slug}/pace", include_in_schema=False)

_DONE = {
    "logged": "It is logged.",
    "taken": "The entry is taken back; it stays in the log.",
    "planned": "The plan is kept.",
}
_COUNTS = ("fractional", "backstitch", "beads")


@router.get("")
def get_pace(slug: str, desk: Desk, session: Reading, now: Now, done: str = "") -> Response:
    """The log and the forecast as they are."""
    game = game_named(session, slug)
    return answer_page(pace_page(session, desk, game, (now, _DONE.get(done, ""))))


@router.post("/log")
def post_entry(slug: str, desk: Desk, form: DeskForm, parts: Parts, now: Now) -> Response:
    """Logs stitches on the page in hand, or on another piece."""
    words = words_of(form)

    def again(session: Session, faults: Faults) -> PacePage:
        typed = typed_in(form, "log", faults)
        return pace_page(session, desk, game_named(session, slug), (now, ""), typed)

    with parts.database.reading() as session:
        raw = _entry(session, game_named(session, slug), words, now)
    given, faults = read_as(EntryIn, raw, {"stitches": "amount", "percent": "amount"})
    if given is None:
        return shown_again(parts, again, faults)

    def add(session: Session) -> Response:
        add_entries(session, game_named(session, slug), [given.to_entry()], now)
        return went_well(f"{desk_address(slug)}/pace", "logged")

    return acted(parts, add, again, words, {"BadLog": ("amount",)})


@router.post("/log/{number}/taken-back")
def post_taken_back(
    slug: str, number: int, desk: Desk, form: DeskForm, parts: Parts, now: Now
) -> Response:
    """Takes an entry back; it stays in the log as taken back."""

    def again(session: Session, faults: Faults) -> PacePage:
        typed = typed_in(form, f"entry-{number}", faults)
        return pace_page(session, desk, game_named(session, slug), (now, ""), typed)

    def take_back(session: Session) -> Response:
        game = game_named(session, slug)
        wrong = next((one for one in log_of(session, game) if one.number == number), None)
        if wrong is None:
            raise NotFound("entry of the log", str(number), "look for it in the log")
        correct_entry(session, game, CorrectionIn().to_entry(wrong), now)
        return went_well(f"{desk_address(slug)}/pace#log", "taken")

    return acted(parts, take_back, again, words_of(form))


@router.post("/plan")
def post_plan(slug: str, desk: Desk, form: DeskForm, parts: Parts, now: Now) -> Response:
    """Keeps how rounds are planned and what everybody sees of the pace."""
    words = words_of(form)

    def again(session: Session, faults: Faults) -> PacePage:
        typed = typed_in(form, "plan", faults)
        return pace_page(session, desk, game_named(session, slug), (now, ""), typed)

    raw: dict[str, Any] = said(words, "round_days", "margin_days", "every")
    raw["shows"] = list(lists_of(form).get("shows", ()))
    given, faults = read_as(PlanIn, raw)
    if given is None:
        return shown_again(parts, again, faults)

    def plan(session: Session) -> Response:
        change_plan(session, game_named(session, slug), given.to_plan())
        return went_well(f"{desk_address(slug)}/pace#plan", "planned")

    return acted(parts, plan, again, words, {"BadChart": ("every",), "BadLog": ("every",)})


def _entry(session: Session, game: GameRow, words: Mapping[str, str], now: Now) -> dict[str, Any]:
    """The form as the API takes an entry: of the page in hand, if no other piece is named."""
    raw: dict[str, Any] = said(words, "how", "day", "first", "note", "piece", *_COUNTS)
    raw.setdefault("day", today_of(game, now).isoformat())
    amount = words.get("amount", "").strip().replace(",", "" if _is_grouped(words) else ".")
    if amount:
        raw["percent" if words.get("how") == "percent" else "stitches"] = amount
    in_hand = page_states(session, game).in_hand
    if "piece" not in raw and in_hand:
        raw["page"] = max(in_hand)
    return raw


def _is_grouped(words: Mapping[str, str]) -> bool:
    """Whether a comma parts thousands, as in "1,260 stitches", and not "69,4 %"."""
    return words.get("how") != "percent"
