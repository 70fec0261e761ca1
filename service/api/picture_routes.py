"""Routes for pictures and the calendar: public, with counts only where everybody may know them."""

from __future__ import annotations

from datetime import timedelta
from typing import Annotated, Any

from fastapi import APIRouter, Query, Response

from service.announce.calendar import calendar_of
from service.announce.captions import caption_of_days
from service.announce.map_picture import draw_map
from service.announce.tally_bars import bars_in_words, draw_tally, size_of_tally
from service.announce.votes_by_day import SIZE_OF_DAYS, days_in_words, draw_days
from service.api.picture_models import PictureOut, PicturesOut, maps_out
from service.api.pictures_out import (
    ChartLook,
    InEnding,
    MapLook,
    PublicFile,
    RoundFile,
    calendar_files,
    picture_files,
)
from service.api.places import InRound
from service.api.problem_models import problems
from service.api.wiring import AnyCaller, Now, Reading
from service.store.games import game_named
from service.store.pictures import (
    caption_of_round,
    closing_of,
    counts_are_shown,
    days_shown,
    map_of_game,
    map_of_round,
    tally_shown,
    title_of,
    winner_shown,
)

router = APIRouter(prefix="/api/games/{game}", tags=["pictures"])

_FILE: dict[str, Any] = {"response_class": Response}
_Alarm = Annotated[
    int | None,
    Query(ge=1, le=40_320, description="Minutes before the closing to be reminded, if wanted."),
]


@router.get(
    "/map.{ending}", summary="The map of a game", responses=picture_files(404, 422), **_FILE
)
def get_map(
    game: str, ending: InEnding, look: MapLook, session: Reading, sending: PublicFile
) -> Response:
    """The pages as they are now, with the round that is open or was announced last."""
    kept = game_named(session, game)
    drawn = draw_map(map_of_game(session, kept), look)
    return sending.picture(drawn, f"{kept.slug}-map", ending)


@router.get("/pictures", summary="The pictures of a game", responses=problems(404, 422))
def get_pictures(game: str, session: Reading) -> PicturesOut:
    """Where the pictures of a game are, how large, and their alternative texts."""
    kept = game_named(session, game)
    address = f"/api/games/{kept.slug}"
    return PicturesOut(pictures=maps_out(map_of_game(session, kept), address), calendar=None)


@router.get(
    "/rounds/{number}/map.{ending}",
    summary="The map of a round",
    responses=picture_files(401, 404, 422),
    **_FILE,
)
def get_round_map(
    place: InRound,
    ending: InEnding,
    look: MapLook,
    session: Reading,
    sending: RoundFile,
) -> Response:
    """The pages as they were when it opened, with what it chose; a draft's to the host only."""
    game, row = place.shown(session, sending.caller)
    drawn = draw_map(map_of_round(session, game, row), look)
    return sending.picture(drawn, f"{game.slug}-round-{row.number}-map", ending)


@router.get(
    "/rounds/{number}/votes-by-day.{ending}",
    summary="The votes of a round by day",
    responses=picture_files(401, 404, 409, 422),
    **_FILE,
)
def get_votes_by_day(
    place: InRound,
    ending: InEnding,
    look: ChartLook,
    session: Reading,
    sending: RoundFile,
    now: Now,
) -> Response:
    """The votes that count by the day they were written, once the counts are for everybody."""
    game, row = place.shown(session, sending.caller)
    days = days_shown(session, game, row, now)
    drawn = draw_days(days, title_of(game, row), caption_of_days(days), look)
    return sending.picture(drawn, f"{game.slug}-round-{row.number}-votes-by-day", ending)


@router.get(
    "/rounds/{number}/tally.{ending}",
    summary="The tally of a round as bars",
    responses=picture_files(401, 404, 409, 422),
    **_FILE,
)
def get_tally_bars(
    place: InRound,
    ending: InEnding,
    look: ChartLook,
    session: Reading,
    sending: RoundFile,
) -> Response:
    """The pages with votes, most votes first, once the counts are for everybody."""
    game, row = place.shown(session, sending.caller)
    tally, winner = tally_shown(session, game, row), winner_shown(row)
    drawn = draw_tally(tally, winner, title_of(game, row), caption_of_round(game, row), look)
    return sending.picture(drawn, f"{game.slug}-round-{row.number}-tally", ending)


@router.get(
    "/rounds/{number}/pictures",
    summary="The pictures of a round",
    responses=problems(401, 404, 422),
)
def get_round_pictures(
    place: InRound, session: Reading, caller: AnyCaller, now: Now
) -> PicturesOut:
    """Where its pictures and its calendar file are, with sizes and alternative texts."""
    game, row = place.shown(session, caller)
    address = f"/api/games/{game.slug}/rounds/{row.number}"
    found = maps_out(map_of_round(session, game, row), address)
    if counts_are_shown(session, game, row):
        title, caption = title_of(game, row), caption_of_round(game, row)
        tally = tally_shown(session, game, row)
        size = size_of_tally(tally, title, caption)
        words = bars_in_words(tally, winner_shown(row))
        found.append(PictureOut.of("tally", f"{address}/tally", size, words))
        days = days_in_words(days_shown(session, game, row, now))
        found.append(PictureOut.of("votes by day", f"{address}/votes-by-day", SIZE_OF_DAYS, days))
    has_closing = row.closes is not None and row.state != "draft"
    return PicturesOut(pictures=found, calendar=f"{address}/closing.ics" if has_closing else None)


@router.get(
    "/rounds/{number}/closing.ics",
    summary="The closing of a round for a calendar",
    responses=calendar_files(401, 404, 409, 422),
    **_FILE,
)
def get_closing(
    place: InRound,
    session: Reading,
    sending: RoundFile,
    alarm: _Alarm = None,
) -> Response:
    """A calendar file (RFC 5545) with the closing in UTC, where one was announced."""
    game, row = place.shown(session, sending.caller)
    before = None if alarm is None else timedelta(minutes=alarm)
    content = calendar_of(closing_of(game, row), alarm=before)
    return sending.file(content, "text/calendar", f"{game.slug}-round-{row.number}-closing.ics")
