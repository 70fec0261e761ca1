"""Guesses: every comment of a game read against its sealed answer. For the host alone."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Mapping
from dataclasses import dataclass

from sqlmodel import Session, col, select

from service.comments.versions import KnownComment, Version, voter_in
from service.errors import BadRuling, NotFound
from service.mystery.first import FirstRight, first_right
from service.mystery.guess import GUESS_OUTCOMES, GuessReading
from service.mystery.judged import (
    GuessRuling,
    JudgedGuess,
    check_guess_ruling,
    standing_ruling,
    standing_time,
)
from service.mystery.notes import read_with_notes
from service.mystery.window import SettledGuess, Window, in_window, settle_guesses
from service.store.answers import KeptAnswer, kept_answer
from service.store.columns import id_of
from service.store.comments import stored_comments
from service.store.forgotten import REMOVED, kept_guesses
from service.store.games import take_game
from service.store.readings import Hosts
from service.store.rounds import all_rounds, take_opened_rounds
from service.store.tables import GameRow
from service.store.tables_comments import GuessRulingRow
from service.store.tables_mystery import GuessPickRow
from service.store.window import window_of

#: Words of a comment and how they read.
ReadVersion = tuple[Version, GuessReading]
_NO_GUESS = GuessReading("none", f"Its words were {REMOVED}.")


@dataclass(frozen=True, slots=True)
class FoundGuess:
    """A comment that offers a name: the words that offer it, how they were read, and rulings."""

    settled: SettledGuess
    text: str
    round_number: int
    rulings: tuple[GuessRuling, ...]

    @property
    def judged(self) -> JudgedGuess:
        """The guess itself."""
        return self.settled.guess


@dataclass(frozen=True, slots=True)
class Guesses:
    """All guesses of a game, oldest first, and the first right one.

    `picked` is the guess that the host ruled to be the first of those that cannot be told apart,
    `pick_reason` says why.
    """

    found: tuple[FoundGuess, ...]
    first: FirstRight
    picked: str | None = None
    pick_reason: str = ""

    def first_without(self, voters: frozenset[str]) -> FirstRight:
        """The first right guess of anybody but these voters."""
        settled = tuple(one.settled for one in self.found)
        return first_right(settled, picked=self.picked, without=voters)

    def by_key(self, key: str) -> JudgedGuess | None:
        """The guess of that key."""
        return next((one.judged for one in self.found if one.judged.key == key), None)


def judge_guesses(session: Session, game: GameRow) -> Guesses:
    """Read every comment of the game as a guess and find the first right one.

    A comment that stands in the exports of several rounds is one guess.

    Raises:
        WrongState: the game has no sealed answer.
    """
    kept = kept_answer(session, game)
    rulings = _rulings(session, game)
    hosts, window = Hosts.of(game.hosts), window_of(game)
    found: dict[str, tuple[JudgedGuess, str, int]] = {}
    forgotten = kept_guesses(session, game)
    for row in all_rounds(session, game):
        for one in stored_comments(session, id_of(row), "ORDER BY c.id"):
            known = one.known
            if known.key not in found:
                ruled = rulings.get(known.key, ())
                is_host = hosts.wrote(known.comment)
                if one.is_forgotten:
                    readings = _kept_readings(known, forgotten.get(one.id, {}))
                else:
                    readings = readings_of(known, kept)
                judged, text = _judged(known, readings, window, ruled, is_host=is_host)
                found[known.key] = (judged, text, row.number)
    in_order = sorted(found.values(), key=lambda one: (one[0].written.earliest, one[0].key))
    settled = settle_guesses([judged for judged, _, _ in in_order], window)
    guesses = tuple(
        FoundGuess(one, text, number, rulings.get(judged.key, ()))
        for one, (judged, text, number) in zip(settled, in_order, strict=True)
    )
    pick = _picked(session, game)
    picked, reason = (pick.key, pick.reason) if pick else (None, "")
    return Guesses(guesses, first_right(settled, picked=picked), picked, reason)


def rule_on_guess(session: Session, game: GameRow, key: str, ruling: GuessRuling) -> None:
    """Add a ruling on one guess.

    Raises:
        NotFound: no comment of the game has this key.
        BadRuling: the outcome cannot be ruled, or the ruling decides nothing.
        WrongState: the game has no sealed answer.
    """
    check_guess_ruling(ruling)
    take_game(session, game)
    if judge_guesses(session, game).by_key(key) is None:
        raise _no_comment(key)
    session.add(
        GuessRulingRow(
            game_id=id_of(game),
            key=key,
            outcome=ruling.outcome,
            in_time=ruling.in_time,
            reason=ruling.reason,
            at=ruling.at,
        )
    )
    session.flush()


def pick_first(session: Session, game: GameRow, pick: GuessPickRow, passed: frozenset[str]) -> None:
    """Add the host's ruling on which of the guesses that cannot be told apart was the first.

    `passed` are the voters who had the prize before and are passed over.

    Raises:
        NotFound: no comment of the game has this key.
        BadRuling: it is none of the right guesses that cannot be told apart.
        WrongState: the game has no sealed answer.
    """
    take_game(session, game)
    take_opened_rounds(session, game)
    guesses = judge_guesses(session, game)
    if guesses.by_key(pick.key) is None:
        raise _no_comment(pick.key)
    if pick.key not in guesses.first_without(passed).tied:
        raise BadRuling(
            "this is none of the right guesses that cannot be told apart",
            "see `tied` in the game's guesses, or rule on each guess",
        )
    session.add(pick)
    session.flush()


def _no_comment(key: str) -> NotFound:
    return NotFound("comment", key, "see the keys in the game's guesses")


def readings_of(known: KnownComment, kept: KeptAnswer) -> list[ReadVersion]:
    """How each of a comment's words read as a guess, by the names that counted then."""
    return [
        (version, read_with_notes(version.text, kept.rules, kept.notes, version.written))
        for version in known.versions
    ]


def _kept_readings(known: KnownComment, kept: Mapping[int, GuessReading]) -> list[ReadVersion]:
    """The same of words that were forgotten."""
    return [
        (version, kept.get(number, _NO_GUESS))
        for number, version in enumerate(known.versions, start=1)
    ]


def _judged(
    known: KnownComment,
    readings: list[ReadVersion],
    window: Window,
    rulings: tuple[GuessRuling, ...],
    *,
    is_host: bool,
) -> tuple[JudgedGuess, str]:
    """The comment as a guess, by the version that says most in the window, and its words.

    Words that an edit brought in count from the edit, words that it took out were still written.
    """
    version, reading = min(readings, key=lambda pair: _rank(pair[0], pair[1], window))
    judged = JudgedGuess(
        key=known.key,
        author=known.comment.author,
        voter=voter_in(known),
        written=version.written,
        reading=reading,
        is_host=is_host,
        ruling=standing_ruling(rulings),
        in_time=standing_time(rulings),
    )
    return judged, version.text


def _rank(version: Version, reading: GuessReading, window: Window) -> tuple[bool, bool, int, bool]:
    """The lowest is the version to judge by; of equal ones the earliest."""
    state = in_window(version.written, window.opens, window.ends)
    return (
        reading.outcome == "none",
        state in ("before", "after"),
        GUESS_OUTCOMES.index(reading.outcome),
        state == "cannot tell",
    )


def _rulings(session: Session, game: GameRow) -> dict[str, tuple[GuessRuling, ...]]:
    found: dict[str, list[GuessRuling]] = defaultdict(list)
    of_game = select(GuessRulingRow).where(GuessRulingRow.game_id == id_of(game))
    for row in session.exec(of_game.order_by(col(GuessRulingRow.id))):
        ruling = GuessRuling(row.outcome, row.reason, row.at, row.in_time)  # type: ignore[arg-type]
        found[row.key].append(ruling)
    return {key: tuple(rulings) for key, rulings in found.items()}


def _picked(session: Session, game: GameRow) -> GuessPickRow | None:
    of_game = select(GuessPickRow).where(GuessPickRow.game_id == id_of(game))
    return session.exec(of_game.order_by(col(GuessPickRow.id).desc())).first()
