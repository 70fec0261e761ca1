"""Routes for games: made by the host, public in what everybody may know."""

from __future__ import annotations

import secrets
from typing import Any

from fastapi import APIRouter
from sqlmodel import Session

from service.api.chart_models import ChartOut
from service.api.game_models import (
    AnswerIn,
    GameChangeIn,
    GameForHostOut,
    GameIn,
    GameOut,
    PageIn,
    PageOut,
    PagesOut,
    RoundInGameOut,
)
from service.api.making_games import make_game_of
from service.api.problem_models import problems
from service.api.shapes import moment_or_none
from service.api.wiring import Now, Reading, Writing, host_only
from service.comments.times import zone_of
from service.store.answers import check_tells_nothing, seal_answer
from service.store.games import (
    all_games,
    change_game,
    chart_of,
    game_named,
    page_states,
)
from service.store.pages import say_page
from service.store.rounds import all_rounds
from service.store.tables import GameRow
from service.store.window import check_window_change

router = APIRouter(prefix="/api/games", tags=["games"])

_HOST: dict[str, Any] = {"dependencies": [host_only]}


@router.post(
    "", summary="Make a game", status_code=201, responses=problems(401, 403, 409, 422), **_HOST
)
def post_game(new: GameIn, session: Writing, now: Now) -> GameForHostOut:
    """Makes a game and seals its answer. The answer is never told again, only its seal."""
    return _for_host(session, make_game_of(session, new, secrets.token_bytes(32), now))


@router.get("", summary="List the games", responses=problems(401, 403), **_HOST)
def get_games(session: Reading) -> list[GameForHostOut]:
    """All games with their drafts."""
    return [_for_host(session, game) for game in all_games(session)]


@router.get("/{game}", summary="A game's public facts", responses=problems(404, 422))
def get_game(game: str, session: Reading) -> GameOut:
    """What everybody may know: chart, pages, rounds, rules of guessing and the seal."""
    return GameOut(**_facts(session, game_named(session, game), drafts=False))


@router.patch(
    "/{game}",
    summary="Change what may change of a game",
    responses=problems(401, 403, 404, 409, 422),
    **_HOST,
)
def patch_game(game: str, change: GameChangeIn, session: Writing, now: Now) -> GameForHostOut:
    """Changes name, the host's own names, languages and when guesses count; what is sent.

    A round that has been opened keeps the host's own names and the languages of its opening.
    Guessing that has opened is not opened at another time, and once it has ended it stays so.
    """
    kept = game_named(session, game)
    zone = zone_of(kept.zone)
    sent = {name: getattr(change, name) for name in change.model_fields_set}
    for name in {"guesses_open", "guesses_close"} & sent.keys():
        sent[name] = moment_or_none(sent[name], zone)
    check_window_change(kept, sent, now)
    change_game(session, kept, sent)
    check_tells_nothing(session, kept, kept.name, "the game's name")
    return _for_host(session, kept)


@router.put(
    "/{game}/answer",
    summary="Seal a game's answer",
    status_code=204,
    responses=problems(401, 403, 404, 409, 422),
    **_HOST,
)
def put_answer(game: str, answer: AnswerIn, session: Writing, now: Now) -> None:
    """Seals the answer of a game that was made without one; a sealed answer stays."""
    row = game_named(session, game)
    seal_answer(session, row, answer.to_answer(), secrets.token_bytes(32), now)


@router.put(
    "/{game}/pages/{page}",
    summary="Say what state a page is in",
    responses=problems(401, 403, 404, 409, 422),
    **_HOST,
)
def put_page(game: str, page: int, said: PageIn, session: Writing, now: Now) -> PageOut:
    """Says that a page is stitched, in hand or unstitched. An open round's pages stay frozen.

    A page that a round may still choose is not stitched or in hand before it is announced.
    """
    say_page(session, game_named(session, game), page, said.state, now)
    return PageOut(page=page, state=said.state)


def _for_host(session: Session, game: GameRow) -> GameForHostOut:
    return GameForHostOut(
        **_facts(session, game, drafts=True), hosts=game.hosts, languages=game.languages
    )


def _facts(session: Session, game: GameRow, *, drafts: bool) -> dict[str, Any]:
    """What the public and the host's answers share. Nothing of the answer but its seal."""
    states = page_states(session, game)
    rounds = [row for row in all_rounds(session, game) if drafts or row.state != "draft"]
    kept = game.model_dump(include=set(GameOut.model_fields) - {"chart", "pages", "rounds"})
    return kept | {
        "chart": ChartOut.of(chart_of(game)),
        "pages": PagesOut(stitched=sorted(states.stitched), in_hand=list(states.in_hand)),
        "rounds": [
            RoundInGameOut(
                number=row.number,
                state=row.state,
                opens=row.opens,
                closes=row.closes,
                winner=None if row.result is None else row.result["winner"],
            )
            for row in rounds
        ],
    }
