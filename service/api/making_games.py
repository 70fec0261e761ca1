"""A game made of what its host says, by the API or at the desk: one way for both."""

from __future__ import annotations

from datetime import datetime

from sqlmodel import Session

from service.api.game_models import GameIn
from service.api.shapes import moment_or_none
from service.comments.times import zone_of
from service.store.answers import seal_answer
from service.store.games import NewGame, make_game, set_page
from service.store.tables import GameRow


def make_game_of(session: Session, new: GameIn, salt: bytes, now: datetime) -> GameRow:
    """Keep the game with its pages, and seal its answer with `salt` where one is given.

    Raises:
        BadChart, BadRules, BadTime, PageNotOnChart: a part of it cannot be.
        AlreadyThere: there is a game of that short name.
    """
    game = make_game(session, _new_game(new), now)
    for page in new.stitched:
        set_page(session, game, page, "stitched", now)
    if new.answer is not None:
        seal_answer(session, game, new.answer.to_answer(), salt, now)
    return game


def _new_game(new: GameIn) -> NewGame:
    zone = zone_of(new.zone)
    return NewGame(
        slug=new.slug,
        name=new.name,
        zone=new.zone,
        chart=new.chart.to_chart(),
        next_from=new.next_from,
        hosts=tuple(new.hosts),
        languages=tuple(new.languages),
        wants=new.wants,
        names_per_comment=new.names_per_comment,
        guesses_per_voter=new.guesses_per_voter,
        guesses_open=moment_or_none(new.guesses_open, zone),
        guesses_close=moment_or_none(new.guesses_close, zone),
    )
