"""What a round's draft shows: its rules, the pages that it would let voters choose, the odds."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from typing import Any, ClassVar

from markupsafe import Markup
from sqlmodel import Session

from service.announce.map_picture import Look, draw_map
from service.comments.times import zone_of
from service.counting.chain_odds import RuleOdds
from service.counting.round import TIE_BREAKS
from service.counting.wording import sentence
from service.errors import BadRules, WrongState
from service.pages.desk_access import SignedIn
from service.pages.draft_form import CHAIN, SOURCES, form_of
from service.pages.form_reading import NOTHING, Typed, as_sentence
from service.pages.frame import Frame
from service.pages.game_contexts import round_title
from service.pages.game_frame import GameBar, desk_address, game_bar, round_address
from service.pages.rendering import Context, inline
from service.store.odds import odds_of_stored
from service.store.opening import votable_now
from service.store.pictures import map_of_round
from service.store.round_rules import DraftRules
from service.store.rounds import all_rounds, next_number, rules_of
from service.store.tables import GameRow, RoundRow

#: How a draft was changed, said when its page is shown again.
DONE = {
    "drafted": "The round is drafted. Nothing is public before you open it.",
    "changed": "The rules are kept.",
}


@dataclass(frozen=True, slots=True)
class RuleChance:
    """How often a tie-break decides, in a sentence."""

    rule: str
    why: str


@dataclass(frozen=True, slots=True)
class OddsShown:
    """The odds of a tie for so many voters; `refused` where they cannot be told."""

    voters: str
    why: str
    rules: tuple[RuleChance, ...]
    refused: str


@dataclass(frozen=True, slots=True)
class DraftPage(Context):
    """A round that is drafted, or is about to be: then `number` is what it would get."""

    template: ClassVar[str] = "draft.html"

    frame: Frame
    bar: GameBar
    title: str
    number: int
    is_kept: bool
    is_runoff: bool
    at: str
    done: str
    typed: Typed
    rules: dict[str, str]
    chain: tuple[tuple[str, str], ...]
    tie_breaks: tuple[tuple[str, str], ...]
    sources: tuple[int, ...]
    zone: str
    picture: Markup
    why: str
    odds: OddsShown | None


def new_draft_page(
    session: Session, desk: SignedIn, game: GameRow, now: datetime, typed: Typed = NOTHING
) -> DraftPage:
    """A round to be drafted, with the rules of the round before."""
    at = f"{desk_address(game.slug)}/rounds/new"
    before = [row for row in all_rounds(session, game) if row.runoff_of is None]
    rules = DraftRules()
    if before:
        kept = rules_of(before[-1])
        rules = DraftRules(choices=kept.choices, standing=kept.standing, tie_breaks=kept.tie_breaks)
    number = next_number(session, game)
    return DraftPage(
        **_shared(game, rules, typed),
        frame=desk.frame(f"Round {number}, a draft", at),
        bar=game_bar(session, game, now, at),
        title=f"Round {number}",
        number=number,
        is_kept=False,
        is_runoff=False,
        at=at,
        done="",
        picture=Markup(""),
        why="",
        odds=None,
    )


def draft_page(
    session: Session,
    desk: SignedIn,
    place: tuple[GameRow, RoundRow],
    said: tuple[datetime, str, str],
    typed: Typed = NOTHING,
) -> DraftPage:
    """A round that is drafted; `said` are the time, the voters to reckon with, what was done."""
    (game, row), (now, voters, done) = place, said
    at = round_address(game.slug, row.number)
    picture, why = _map(session, game, row)
    return DraftPage(
        **_shared(game, rules_of(row), typed),
        frame=desk.frame(f"{round_title(row)}, a draft", at),
        bar=game_bar(session, game, now, at),
        title=round_title(row),
        number=row.number,
        is_kept=True,
        is_runoff=row.runoff_of is not None,
        at=at,
        done=DONE.get(done, ""),
        picture=picture,
        why=why,
        odds=_odds(session, game, row, voters),
    )


def _shared(game: GameRow, rules: DraftRules, typed: Typed) -> dict[str, Any]:
    words = ("First by", *(["Then by"] * (len(CHAIN) - 2)), "At last by")
    return {
        "typed": typed,
        "rules": form_of(rules, zone_of(game.zone)),
        "chain": tuple(zip(CHAIN, words, strict=True)),
        "tie_breaks": tuple((one, sentence(one)) for one in TIE_BREAKS),
        "sources": SOURCES,
        "zone": game.zone,
    }


def _map(session: Session, game: GameRow, row: RoundRow) -> tuple[Markup, str]:
    """The pages that could be chosen if it opened now, and why these."""
    try:
        votable, _ = votable_now(session, game, row)
        drawn = draw_map(map_of_round(session, game, row), Look(heading=False))
    except (WrongState, BadRules) as error:
        return Markup(""), as_sentence(str(error))
    return inline(drawn), votable.why


def _odds(session: Session, game: GameRow, row: RoundRow, voters: str) -> OddsShown:
    """The odds for as many voters as were asked for, or as voted last."""
    if voters and not (voters.isascii() and voters.isdecimal() and len(voters) < 10):
        return OddsShown(voters, "", (), "Give the number of voters as a whole number.")
    try:
        odds = odds_of_stored(session, game, row, int(voters) if voters else None)
    except (BadRules, WrongState) as error:
        return OddsShown(voters, "", (), as_sentence(str(error)) if voters else "")
    return OddsShown(str(odds.voters), odds.why, tuple(map(_chance, odds.rules)), "")


def _chance(rule: RuleOdds) -> RuleChance:
    return RuleChance(sentence(rule.rule), rule.why)
