"""The announced winner of the guessing: the first, put right with a reason, or the next one."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from typing import Literal

from sqlmodel import Session, col, select

from service.announce.mystery_words import Winner, passed_on_words, winner_words
from service.comments.times import zone_of
from service.counting.pseudonyms import is_forgotten
from service.errors import WrongState
from service.mystery.first import FirstRight
from service.mystery.judged import JudgedGuess
from service.mystery.prize import Claim, check_passed_on, claim_end
from service.store.announcing_settings import announcing_of
from service.store.answers import check_tells_nothing
from service.store.columns import id_of
from service.store.games import take_game
from service.store.guesses import Guesses, judge_guesses
from service.store.rounds import take_opened_rounds
from service.store.tables import GameRow
from service.store.tables_mystery import PrizeRow, WinnerRow
from service.store.window import guessing_state

#: How a winner is called whose name the export does not tell.
NAMELESS = "a viewer without a name"
#: And one who was forgotten.
FORGOTTEN_WINNER = "a viewer who asked to be forgotten"

Cause = Literal["first", "put right", "passed on"]


@dataclass(frozen=True, slots=True)
class Why:
    """Why a winner is announced: the cause, and the host's reason where there is one.

    `ruled` is her reason where she ruled which of several guesses was the first.
    """

    cause: Cause
    reason: str = ""
    ruled: str = ""


def winners_of(session: Session, game: GameRow) -> tuple[WinnerRow, ...]:
    """The winners as they were announced, the last one being the winner now."""
    of_game = select(WinnerRow).where(WinnerRow.game_id == id_of(game))
    return tuple(session.exec(of_game.order_by(col(WinnerRow.number))))


def passed_voters(winners: tuple[WinnerRow, ...]) -> frozenset[str]:
    """The voters whom the prize has left."""
    return frozenset(row.voter for row in winners if row.passed_on is not None)


def announce_winner(session: Session, game: GameRow, reason: str, now: datetime) -> WinnerRow:
    """Announce the first right guesser; guessing ends with it.

    A winner who was announced before is put right only with a `reason`, and while the prize is
    not asked for.

    Raises:
        WrongState: guessing has not opened; nobody is right, it cannot be told who was first, or a
            comment that needs a look may stand before; the winner is announced already.
        BadRules: the host's words or the winner's name would give the sealed answer away.
    """
    take_game(session, game)
    take_opened_rounds(session, game)
    before = winners_of(session, game)
    guesses = judge_guesses(session, game)
    first = guesses.first_without(passed_voters(before))
    winner = _proved(game, guesses, first)
    ruled = guesses.pick_reason if first.tied else ""
    why = Why("first", ruled=ruled)
    if before:
        _check_put_right(game, before[-1], winner, reason)
        why = Why("put right", reason, ruled)
    if guessing_state(game, now) == "open":
        game.guesses_close = now
        session.add(game)
    return _announced(session, game, winner, why, now)


def pass_prize_on(session: Session, game: GameRow, declined: str, now: datetime) -> WinnerRow:
    """Pass an unclaimed prize on to the next right guesser; `declined` says why before its time.

    Raises:
        WrongState: there is no prize or no winner, it can still be claimed, or it cannot be told
            who is next.
        BadRules: the next one's name would give the sealed answer away.
    """
    take_game(session, game)
    before = winners_of(session, game)
    claim = claim_of(before[-1]) if before else None
    if claim is None:
        raise no_claim(game)
    check_passed_on(claim, now, declined=bool(declined))
    take_opened_rounds(session, game)
    guesses = judge_guesses(session, game)
    passed = passed_voters(before) | {before[-1].voter}
    winner = _proved(game, guesses, guesses.first_without(passed))
    before[-1].passed_on = now
    session.add(before[-1])
    return _announced(session, game, winner, Why("passed on", declined), now)


def claim_of(row: WinnerRow) -> Claim | None:
    """The claim of an announced winner; None where the game has no prize."""
    if row.claim_by is None:
        return None
    return Claim(row.claim_by, row.asked_for, row.asked_at, row.sent_at, row.passed_on)


def told_of(session: Session, game: GameRow, row: WinnerRow) -> Winner:
    """A winner and the prize as announcements tell of them."""
    prize = session.get(PrizeRow, id_of(game))
    written = row.written_earliest if row.written_earliest == row.written_latest else None
    return Winner(
        game=game.name,
        zone=zone_of(game.zone),
        author=row.author,
        written=written,
        offer="" if prize is None else prize.offer,
        choose_from="" if prize is None else prize.choose_from,
        claim_by=row.claim_by,
        also=announcing_of(session, game).also,
    )


def _called(winner: JudgedGuess) -> str:
    return FORGOTTEN_WINNER if is_forgotten(winner.author) else winner.author or NAMELESS


def _claim_by(game: GameRow, prize: PrizeRow | None, now: datetime) -> datetime | None:
    return None if prize is None else claim_end(now, prize.claim_days, zone_of(game.zone))


def no_claim(game: GameRow) -> WrongState:
    """There is nothing to be claimed: no prize, or nobody to claim it."""
    todo = "set a prize up and announce the winner"
    return WrongState(f"game {game.slug}", "without a prize that was won", "asked for it", todo)


def _proved(game: GameRow, guesses: Guesses, first: FirstRight) -> JudgedGuess:
    """The first right guess, if nothing stands against announcing it."""
    winner = None if first.key is None else guesses.by_key(first.key)
    if winner is None or first.looks_before:
        todo = f"{first.why[:1].lower()}{first.why[1:].rstrip('.')}"
        if first.looks_before:
            todo += "; rule on the comments that need a look first"
        raise WrongState(f"the guessing of game {game.slug}", "undecided", "announced", todo)
    return winner


def _check_put_right(game: GameRow, kept: WinnerRow, winner: JudgedGuess, reason: str) -> None:
    thing = f"the winner of game {game.slug}"
    if winner.voter == kept.voter:
        raise WrongState(thing, "announced", "announced again", "an announced winner stays")
    if kept.asked_at is not None:
        todo = "the prize is asked for; tell both what happened"
        raise WrongState(thing, "announced", "put right", todo)
    if not reason:
        todo = "somebody else is the first by now; say why the earlier announcement is put right"
        raise WrongState(thing, "announced", "put right without a reason", todo)


def _announced(
    session: Session, game: GameRow, winner: JudgedGuess, why: Why, now: datetime
) -> WinnerRow:
    """Keep the winner with the words of the announcement; an edge of a second is no matter."""
    check_tells_nothing(session, game, game.name, "the game's name")
    check_tells_nothing(
        session, game, winner.author, "the winner's name", "reveal the answer first"
    )
    if why.cause == "put right":
        check_tells_nothing(session, game, why.reason, "the reason")
    if why.ruled:
        check_tells_nothing(session, game, why.ruled, "the reason of the ruling")
    prize = session.get(PrizeRow, id_of(game))
    row = WinnerRow(
        game_id=id_of(game),
        number=len(winners_of(session, game)) + 1,
        key=winner.key,
        voter=winner.voter,
        author=_called(winner),
        written_earliest=winner.written.earliest,
        written_latest=winner.written.latest,
        cause=why.cause,
        reason=why.reason,
        announcement="",
        at=now,
        claim_by=_claim_by(game, prize, now),
    )
    told = told_of(session, game, row)
    if why.cause == "passed on":
        row.announcement = passed_on_words(told)
    else:
        row.announcement = winner_words(told, instead_of=why.reason, ruled=why.ruled)
    session.add(row)
    session.flush()
    return row
