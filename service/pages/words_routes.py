"""The route of the words of a round."""

from __future__ import annotations

from fastapi import APIRouter
from fastapi.responses import Response

from service.api.wiring import Now, Reading
from service.pages.desk_access import Desk
from service.pages.rendering import answer_page
from service.pages.round_places import InDeskRound
from service.pages.words_contexts import words_page

router = APIRouter(prefix="/desk/games/{slug}/rounds/{number}/words", include_in_schema=False)


@router.get("")
def get_words(
    place: InDeskRound, desk: Desk, session: Reading, now: Now, done: str = ""
) -> Response:
    """The words that can be pasted by now."""
    return answer_page(words_page(session, desk, place.found(session), (now, done)))
