"""What the guesses of a game show: who was first, what needs a look, the prize, the reveal."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import ClassVar
from urllib.parse import quote
from zoneinfo import ZoneInfo

from sqlmodel import Session

from service.comments.times import zone_of
from service.mystery.prize import CAUTION
from service.pages.desk_access import SignedIn
from service.pages.form_reading import NOTHING, Typed
from service.pages.frame import Frame
from service.pages.game_frame import GameBar, TimeShown, desk_address, game_bar, time_or_none
from service.pages.marked_text import Piece, pieces_of, short_span, short_time
from service.pages.prize_shown import PrizeShown, prize_shown
from service.pages.rendering import Context
from service.store.answers import alias_notes, sealed_at
from service.store.desk_counts import guesses_kept
from service.store.guesses import FoundGuess, Guesses
from service.store.mystery_words import mystery_announcements
from service.store.reveals import revealed_of
from service.store.tables import GameRow
from service.store.window import guessing_state
from service.store.winners import passed_voters, winners_of

AT_ONCE = 25
LISTS = (
    ("decides", "What decides"),
    ("look", "Needs a look"),
    ("right", "Right"),
    ("all", "All that offer a name"),
)
DONE = {
    "sealed": "The answer is sealed.",
    "noted": "The other name is noted, and its seal is public.",
    "opened": "Guessing is open.",
    "ended": "Guessing has ended.",
    "ruled": "The ruling is kept.",
    "first": "Your ruling on who was first is kept.",
    "winner": "The winner is announced. The words are below.",
    "prize": "The prize is set up.",
    "asked": "It is kept what the winner asked for.",
    "sent": "It is kept that the prize was sent.",
    "passed": "The prize is passed on. The words are below.",
    "revealed": "The answer is revealed.",
}


@dataclass(frozen=True, slots=True)
class GuessShown:
    """A comment that offers a name."""

    key: str
    author: str
    written: str
    exact: str
    pieces: tuple[Piece, ...]
    outcome: str
    kind: str
    why: str
    cause: str
    rulings: tuple[tuple[str, str, str], ...]
    may_be_first: bool


@dataclass(frozen=True, slots=True)
class ListShown:
    """A list of guesses that can be asked for."""

    name: str
    many: int
    to: str
    is_here: bool


@dataclass(frozen=True, slots=True)
class GuessesPage(Context):
    """The guesses of a game, its prize and its reveal."""

    template: ClassVar[str] = "guesses.html"

    frame: Frame
    bar: GameBar
    done: str
    typed: Typed
    is_sealed: bool
    sealed: TimeShown | None
    seal: str
    aliases: int
    state: str
    opens: TimeShown | None
    ends: TimeShown | None
    first: str
    may_announce: bool
    lists: tuple[ListShown, ...]
    shown: str
    guesses: tuple[GuessShown, ...]
    later: str
    prize: PrizeShown
    caution: str
    announcements: tuple[tuple[str, str, str], ...]
    revealed: str
    may_reveal: bool


@dataclass(frozen=True, slots=True)
class WantedGuesses:
    """Which list, from which guess on, at what time, and what was done before."""

    now: datetime
    shown: str = "decides"
    start: str = ""
    done: str = ""


def guesses_page(
    session: Session,
    desk: SignedIn,
    game: GameRow,
    wanted: WantedGuesses,
    typed: Typed = NOTHING,
) -> GuessesPage:
    """The guesses as they stand."""
    at, zone = f"{desk_address(game.slug)}/guesses", zone_of(game.zone)
    guesses = guesses_kept(session, game) if game.seal is not None else None
    winners = winners_of(session, game)
    first = None if guesses is None else guesses.first_without(passed_voters(winners))
    found = {} if guesses is None else _lists(guesses)
    part, later = _part(found.get(wanted.shown, []), wanted.start)
    state = guessing_state(game, wanted.now)
    return GuessesPage(
        frame=desk.frame("Guesses and prize", at),
        bar=game_bar(session, game, wanted.now, at),
        done=DONE.get(wanted.done, ""),
        typed=typed,
        is_sealed=game.seal is not None,
        sealed=time_or_none(sealed_at(session, game) if game.seal else None, zone),
        seal=game.seal or "",
        aliases=len(alias_notes(session, game)),
        state=state,
        opens=time_or_none(game.guesses_open, zone),
        ends=time_or_none(game.guesses_close, zone),
        first="" if first is None else first.why,
        may_announce=first is not None and first.key is not None and not first.looks_before,
        lists=_listed(found, at, wanted.shown),
        shown=wanted.shown,
        guesses=tuple(_shown(one, zone, () if first is None else first.tied) for one in part),
        later=f"{at}?show={wanted.shown}&from={quote(later)}#list" if later else "",
        prize=prize_shown(session, game, winners, wanted.now),
        caution=CAUTION,
        announcements=_announcements(session, game, wanted.now),
        revealed=revealed_of(session, game).answer.title if game.revealed is not None else "",
        may_reveal=game.seal is not None and game.revealed is None and state != "open",
    )


def _announcements(
    session: Session, game: GameRow, now: datetime
) -> tuple[tuple[str, str, str], ...]:
    """Occasion, words, and why they are stopped."""
    found = mystery_announcements(session, game, now)
    return tuple((one.occasion, one.text, one.stopped) for one in found)


def _listed(found: Mapping[str, Sequence[FoundGuess]], at: str, here: str) -> tuple[ListShown, ...]:
    return tuple(
        ListShown(name, len(found.get(one, ())), f"{at}?show={one}#list", one == here)
        for one, name in LISTS
    )


def _lists(guesses: Guesses) -> dict[str, list[FoundGuess]]:
    """The guesses of each list, oldest first."""
    offer = [one for one in guesses.found if one.judged.outcome != "none" or one.rulings]
    first = guesses.first
    decides = {first.key, *first.tied, *first.looks_before}
    return {
        "decides": [one for one in offer if one.judged.key in decides],
        "look": [one for one in offer if one.judged.outcome == "look"],
        "right": [one for one in offer if one.judged.outcome == "right"],
        "all": offer,
    }


def _part(of_list: Sequence[FoundGuess], start: str) -> tuple[Sequence[FoundGuess], str]:
    """So many from the guess of that key on, and the key from which the next part begins."""
    places = (place for place, one in enumerate(of_list) if one.judged.key == start)
    where = next(places, 0)
    rest = of_list[where + AT_ONCE :]
    return of_list[where : where + AT_ONCE], rest[0].judged.key if rest else ""


def _shown(one: FoundGuess, zone: ZoneInfo, tied: Sequence[str]) -> GuessShown:
    judged = one.judged
    kind = {"right": "counts", "look": "look"}.get(judged.outcome, "aside")
    return GuessShown(
        key=judged.key,
        author=judged.author or "(no name)",
        written=short_span(judged.written, zone),
        exact=judged.written.earliest.isoformat(),
        pieces=pieces_of(one.text, judged.reading.evidence),
        outcome={"look": "needs a look", "none": "offers no name"}.get(
            judged.outcome, judged.outcome
        ),
        kind=kind,
        why=judged.reading.why,
        cause=one.settled.cause or "",
        rulings=tuple(
            (short_time(ruling.at, zone), _ruled(ruling.outcome, ruling.in_time), ruling.reason)
            for ruling in one.rulings
        ),
        may_be_first=judged.key in tied,
    )


def _ruled(outcome: str | None, in_time: bool | None) -> str:  # noqa: FBT001 - as it is kept
    said = [outcome] if outcome else []
    if in_time is not None:
        said.append("it counts" if in_time else "it does not count")
    return ", ".join(said)
