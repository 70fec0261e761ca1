"""Routes of a round's comments: the list, page by page, and the host's rulings."""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import Annotated, Any
from urllib.parse import quote

from fastapi import APIRouter, Depends, Query
from fastapi.responses import Response
from sqlmodel import Session

from service.api.comment_models import RulingIn
from service.api.wiring import Now, Parts
from service.counting.wording import pages_in_words
from service.errors import NotFound
from service.pages.acting import acted, shown_again
from service.pages.comments_contexts import CommentsPage, Wanted, comments_page
from service.pages.desk_access import Desk, DeskForm
from service.pages.form_reading import Faults, read_as, typed_in, words_of
from service.pages.game_frame import went_well
from service.pages.rendering import answer_page
from service.pages.round_places import InDeskRound
from service.store.comment_index import SHOWN, Shown
from service.store.rulings import rule_on_comment

router = APIRouter(prefix="/desk/games/{slug}/rounds/{number}/comments", include_in_schema=False)

#: What a ruling's button says, as a reason where the host gave none.
_REASONS: Mapping[str, str] = {
    "nothing": "The host read it: it chooses nothing.",
    "back": "The host read it: it takes the vote back.",
    "in time": "The host looked: it was in time.",
    "late": "The host looked: it was not in time.",
}


async def _wanted(
    now: Now,
    show: str = "all",
    start: Annotated[str | None, Query(alias="from", max_length=100)] = None,
    ruled: Annotated[str, Query(max_length=100)] = "",
) -> Wanted:
    return Wanted(_known(show), start or None, now, ruled)


@router.get("")
def get_comments(
    place: InDeskRound, desk: Desk, parts: Parts, wanted: Annotated[Wanted, Depends(_wanted)]
) -> Response:
    """Some of the round's comments, from the one of that key on."""
    # Read here: as a dependency of its own the transaction would wait for two more threads, and
    # this page is asked for at every ruling.
    with parts.database.reading() as session:
        page = comments_page(session, desk, place.found(session), wanted)
    return answer_page(page)


@router.post("/{key}/ruling")
def post_ruling(
    place: InDeskRound, key: str, desk: Desk, form: DeskForm, parts: Parts, now: Now
) -> Response:
    """Adds a ruling with its reason; the last one holds, and none is lost."""
    words = words_of(form)
    shown, start = _known(words.get("show", "all")), words.get("from") or None

    def again(session: Session, faults: Faults) -> CommentsPage:
        typed = typed_in(form, f"c-{key}", faults)
        found = place.found(session)
        return comments_page(session, desk, found, Wanted(shown, start, now), typed)

    given, faults = read_as(RulingIn, _ruling(words))
    if words.get("rule", "pages") == "pages" and not words.get("pages", "").strip():
        given, faults = None, {"pages": "Name one page or more, or press another button."}
    if given is None:
        return shown_again(parts, again, faults)

    def rule(session: Session) -> Response:
        rule_on_comment(session, *place.found(session), key, given.to_ruling(now))
        after = words.get("next", "")
        anchor = f"#c-{quote(after)}" if after else ""
        here = f"&from={quote(start)}" if start else ""
        return went_well(f"{place.address}/comments?show={shown}{here}&ruled={quote(key)}{anchor}")

    return acted(parts, rule, again, words, {"BadRuling": ("pages",), "PageNotOnChart": ("pages",)})


def _known(show: str) -> Shown:
    for shown in SHOWN:
        if shown == show:
            return shown
    raise NotFound("list of comments", show[:40], f"use one of {', '.join(SHOWN)}")


def _ruling(words: Mapping[str, str]) -> dict[str, Any]:
    """What the button that was pressed says, as the API takes it."""
    pressed, reason = words.get("rule", "pages"), words.get("reason", "").strip()
    raw: dict[str, Any] = {}
    pages: list[str] = []
    if pressed.startswith("page "):
        pages = [pressed.removeprefix("page ")]
    elif pressed == "pages":
        pages = re.findall(r"[^,;\s]+", words.get("pages", ""))
    elif pressed == "back":
        raw["withdraws"] = True
    elif pressed in ("in time", "late"):
        raw["in_time"] = pressed == "in time"
    numbers = [int(page) for page in pages if page.isascii() and page.isdecimal()]
    told = _REASONS.get(pressed) or f"The host read it as {pages_in_words(numbers)}."
    return raw | {"pages": pages, "reason": reason or told}
