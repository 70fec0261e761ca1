"""The board of a game: everything that viewers may know, from what the store keeps."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime

from sqlmodel import Session

from service.announce.captions import caption_of_pages
from service.announce.map_picture import Look, draw_map
from service.announce.page_map import SIGNS, PageMap, Sign
from service.announce.palette import Theme
from service.announce.sentences import page_ranges
from service.announce.sign_picture import draw_sign
from service.comments.times import zone_of
from service.counting.wording import how_many
from service.pages.board_contexts import BoardPage, PagesShown, PlainPage, RoundNow
from service.pages.board_mystery import mystery_shown
from service.pages.board_round import past_round, round_now
from service.pages.frame import Frame
from service.pages.pace_contexts import pace_on_board
from service.pages.rendering import inline
from service.pages.times import closing, iso_of
from service.store.pictures import map_of_game
from service.store.rounds import all_rounds
from service.store.tables import GameRow, RoundRow

#: The columns of pages whose numbers can be read on a phone.
_BROAD = 12
_IN_WORDS: dict[Sign, str] = {
    "winner": "Chosen last",
    "stitched": "Stitched",
    "in hand": "In hand",
    "votable": "Can be chosen now",
    "unstitched": "Not stitched yet",
}


def board_page(session: Session, game: GameRow, now: datetime) -> BoardPage:
    """The board as it is now."""
    shown = map_of_game(session, game)
    rounds = _public(all_rounds(session, game))
    return BoardPage(
        frame=Frame(game.name, f"/games/{game.slug}"),
        name=game.name,
        caption=caption_of_pages(len(shown.stitched), shown.chart.page_count),
        picture=inline(draw_map(shown, Look(heading=False, legend=False))),
        is_broad=shown.chart.columns > _BROAD,
        states=_states(shown),
        now=_now(session, game, rounds, now),
        past=tuple(past_round(session, game, row) for row in reversed(rounds) if row.result),
        mystery=mystery_shown(session, game, now),
        pace=pace_on_board(session, game, now),
        files=f"/api/games/{game.slug}",
    )


def plain_page(session: Session, game: GameRow, now: datetime, theme: Theme) -> PlainPage:
    """The same to be laid over a video."""
    shown = map_of_game(session, game)
    rounds = _public(all_rounds(session, game))
    latest = rounds[-1] if rounds else None
    closes = latest.closes if latest is not None and latest.state == "open" else None
    left = "" if closes is None else closing(closes, zone_of(game.zone), (), now).left
    look = Look(theme=theme, plain=True, heading=False)
    return PlainPage(
        name=game.name,
        caption=shown.caption,
        picture=inline(draw_map(shown, look)),
        theme=theme,
        closes="" if closes is None else iso_of(closes),
        now=iso_of(now),
        left=left,
    )


def _public(rounds: Sequence[RoundRow]) -> list[RoundRow]:
    return [row for row in rounds if row.state != "draft"]


def _now(
    session: Session, game: GameRow, rounds: Sequence[RoundRow], now: datetime
) -> RoundNow | None:
    """The newest round that has no result yet; a runoff goes before the round that it decides."""
    waiting = [row for row in rounds if row.state in ("open", "closed")]
    return round_now(session, game, waiting[-1], now) if waiting else None


def _states(shown: PageMap) -> tuple[PagesShown, ...]:
    """Every page by its state."""
    found = ((sign, shown.pages_shown_as(sign)) for sign in SIGNS)
    return tuple(
        PagesShown(
            sign.replace(" ", "-"),
            inline(draw_sign(sign)),
            _IN_WORDS[sign],
            how_many(len(pages), "page"),
            page_ranges(pages),
        )
        for sign, pages in found
        if pages
    )
