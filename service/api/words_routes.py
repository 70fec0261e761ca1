"""Routes for the words of rounds: announcements to paste, templates, how a game is announced."""

from __future__ import annotations

from typing import Annotated

from fastapi import APIRouter, Query

from service.announce.templates import LENGTHS, OCCASIONS, Length, Occasion
from service.api.places import InRound
from service.api.problem_models import problems
from service.api.wiring import Now, Reading, Writing, host_only
from service.api.words_models import (
    AnnouncingIn,
    AnnouncingOut,
    RoundWordsOut,
    TemplateIn,
    TemplateOut,
)
from service.store.announcing_settings import (
    announcing_of,
    drop_template,
    set_announcing,
    set_template,
    templates_of,
)
from service.store.games import game_named
from service.store.round_announcements import round_announcements

router = APIRouter(
    prefix="/api/games/{game}",
    tags=["words"],
    dependencies=[host_only],
    responses=problems(401, 403, 404, 409, 422),
)

_Limit = Annotated[
    int | None,
    Query(ge=1, le=100_000, description="The longest text wanted, instead of the game's own."),
]
_Length = Annotated[Length, Query(description="In full, or in short.")]


@router.get("/rounds/{number}/announcements", summary="The announcements of a round")
def get_round_announcements(
    place: InRound, session: Reading, now: Now, limit: _Limit = None
) -> list[RoundWordsOut]:
    """All words on the round that can be pasted by now, each in full and in short.

    They are of its opening, a reminder, a tie, the result and the next round. Those that would
    tell the sealed answer are stopped.
    """
    game, row = place.found(session)
    most = announcing_of(session, game).most_characters if limit is None else limit
    found = round_announcements(session, game, row, now)
    return [RoundWordsOut.of(one, most) for one in found]


@router.get("/announcing", summary="How a game is announced")
def get_announcing(game: str, session: Reading) -> AnnouncingOut:
    """Further time zones, the language of dates, the longest text, and whether counts are shown."""
    return AnnouncingOut.of(announcing_of(session, game_named(session, game)))


@router.put("/announcing", summary="Say how a game is announced")
def put_announcing(game: str, said: AnnouncingIn, session: Writing) -> AnnouncingOut:
    """Says it anew, as a whole. Templates must still fit the language that is named."""
    kept = game_named(session, game)
    set_announcing(session, kept, said.to_announcing())
    return AnnouncingOut.of(announcing_of(session, kept))


@router.get("/templates", summary="The templates of a game")
def get_templates(game: str, session: Reading) -> list[TemplateOut]:
    """Every template with its blanks: the host's own, or the one that is there from the start."""
    own = templates_of(session, game_named(session, game))
    return [
        TemplateOut.of(occasion, length, own.get((occasion, length)))
        for occasion in OCCASIONS
        for length in LENGTHS
    ]


@router.put("/templates/{occasion}", summary="Write a template of one's own")
def put_template(
    game: str,
    occasion: Occasion,
    template: TemplateIn,
    session: Writing,
    now: Now,
    length: _Length = "full",
) -> TemplateOut:
    """Keeps the template, if every blank in it is known and it tells nothing of the answer.

    A blank is $name. ${voters|voter|voters} chooses the word that fits the number, in the order of
    Unicode CLDR's plural forms. $$ is a dollar sign.
    """
    kept = game_named(session, game)
    row = set_template(session, kept, (occasion, length), template.text, now)
    return TemplateOut.of(occasion, length, row)


@router.delete(
    "/templates/{occasion}", summary="Go back to the template that was there", status_code=204
)
def delete_template(
    game: str, occasion: Occasion, session: Writing, length: _Length = "full"
) -> None:
    """Forgets the host's own template for that occasion."""
    drop_template(session, game_named(session, game), (occasion, length))
