"""Routes for the mystery: seal and guessing for everybody, noted aliases, reveal, announcements."""

from __future__ import annotations

import secrets
from typing import Any

from fastapi import APIRouter

from service.api.mystery_models import AliasIn, AnnouncementOut, MysteryOut, RevealOut
from service.api.problem_models import problems
from service.api.wiring import Now, Reading, Writing, host_only
from service.mystery.seal import SALT_BYTES
from service.store.answers import note_alias
from service.store.games import game_named
from service.store.mystery_words import mystery_announcements
from service.store.reveals import reveal_answer, revealed_of

router = APIRouter(prefix="/api/games/{game}/mystery", tags=["mystery"])

_HOST: dict[str, Any] = {"dependencies": [host_only]}


@router.get("", summary="The seal and the rules of guessing", responses=problems(404, 422))
def get_mystery(game: str, session: Reading, now: Now) -> MysteryOut:
    """What everybody may know: seal, noted aliases' seals, rules of guessing, window and prize."""
    return MysteryOut.of(session, game_named(session, game), now)


@router.post(
    "/aliases",
    summary="Add an alias by a sealed note",
    status_code=201,
    responses=problems(401, 403, 404, 409, 422),
    **_HOST,
)
def post_alias(game: str, alias: AliasIn, session: Writing, now: Now) -> MysteryOut:
    """Adds another name that counts from now on; the note's seal and time are public at once.

    An earlier guess that offers this name needs the host's look. The name is told with the reveal.
    """
    kept = game_named(session, game)
    note_alias(session, kept, alias.alias, secrets.token_bytes(SALT_BYTES), now)
    return MysteryOut.of(session, kept, now)


@router.post(
    "/reveal",
    summary="Reveal the answer",
    responses=problems(401, 403, 404, 409, 422),
    **_HOST,
)
def post_reveal(game: str, session: Writing, now: Now) -> RevealOut:
    """Publishes salt and answer, once guessing has ended, after checking that they make the seal.

    From then on everybody may read the reveal, and announcements may tell the answer.
    """
    kept = game_named(session, game)
    return RevealOut.of(kept, reveal_answer(session, kept, now))


@router.get("/reveal", summary="The reveal", responses=problems(404, 409, 422))
def get_reveal(game: str, session: Reading) -> RevealOut:
    """The answer with all that is needed to check its seal, once the host has revealed it."""
    kept = game_named(session, game)
    return RevealOut.of(kept, revealed_of(session, kept))


@router.get(
    "/announcements",
    summary="The announcements of the mystery",
    responses=problems(401, 403, 404, 409, 422),
    **_HOST,
)
def get_announcements(game: str, session: Reading, now: Now) -> list[AnnouncementOut]:
    """All words that can be pasted by now; those that would tell the answer are stopped.

    They are of the opening and the end of guessing, the winner, the claim, and the reveal.
    """
    kept = game_named(session, game)
    return [AnnouncementOut.of(one) for one in mystery_announcements(session, kept, now)]
