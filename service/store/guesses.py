"""Guesses: every comment of a game read against its sealed answer. For the host alone."""

from __future__ import annotations

from collections import defaultdict
from dataclasses import dataclass

from sqlmodel import Session, col, select

from service.comments.versions import KnownComment, voter_in
from service.errors import BadRuling, NotFound
from service.mystery.answer import GuessRules
from service.mystery.first import (
    FirstRight,
    GuessRuling,
    JudgedGuess,
    first_right,
    standing_ruling,
)
from service.mystery.guess import GUESS_OUTCOMES, GuessOutcome, read_guess
from service.store.answers import guess_rules_of
from service.store.columns import id_of
from service.store.comments import known_comments
from service.store.games import take_game
from service.store.readings import Hosts
from service.store.rounds import all_rounds
from service.store.tables import GameRow
from service.store.tables_comments import GuessRulingRow

#: The version of a comment that is judged is the earliest of its best reading.
_BEST_FIRST: tuple[GuessOutcome, ...] = ("right", "look", "wrong", "none")


@dataclass(frozen=True, slots=True)
class FoundGuess:
    """A comment that offers a name: the words that offer it, how they were read, and rulings."""

    judged: JudgedGuess
    text: str
    round_number: int
    rulings: tuple[GuessRuling, ...]


@dataclass(frozen=True, slots=True)
class Guesses:
    """All guesses of a game, oldest first, and the first right one."""

    found: tuple[FoundGuess, ...]
    first: FirstRight


def judge_guesses(session: Session, game: GameRow) -> Guesses:
    """Read every comment of the game as a guess and find the first right one.

    A comment that stands in the exports of several rounds is one guess.

    Raises:
        WrongState: the game has no sealed answer.
    """
    rules = guess_rules_of(session, game)
    rulings = _rulings(session, game)
    hosts = Hosts.of(game.hosts)
    found: dict[str, FoundGuess] = {}
    for row in all_rounds(session, game):
        for known in known_comments(session, row):
            if known.key not in found:
                ruled = rulings.get(known.key, ())
                is_host = hosts.wrote(known.comment)
                judged, text = _judged(known, rules, ruled, is_host=is_host)
                found[known.key] = FoundGuess(judged, text, row.number, ruled)
    guesses = tuple(
        sorted(found.values(), key=lambda one: (one.judged.written.earliest, one.judged.key))
    )
    first = first_right(tuple(one.judged for one in guesses), game.guesses_open, game.guesses_close)
    return Guesses(guesses, first)


def rule_on_guess(session: Session, game: GameRow, key: str, ruling: GuessRuling) -> None:
    """Add a ruling on one guess.

    Raises:
        NotFound: no comment of the game has this key.
        BadRuling: the outcome cannot be ruled.
        WrongState: the game has no sealed answer.
    """
    if ruling.outcome not in GUESS_OUTCOMES or ruling.outcome == "look":
        raise BadRuling(f"a guess is ruled {ruling.outcome!r}", "rule right, wrong or none")
    take_game(session, game)
    if key not in {one.judged.key for one in judge_guesses(session, game).found}:
        raise NotFound("comment", key, "see the keys in the game's guesses")
    session.add(
        GuessRulingRow(
            game_id=id_of(game),
            key=key,
            outcome=ruling.outcome,
            reason=ruling.reason,
            at=ruling.at,
        )
    )
    session.flush()


def _judged(
    known: KnownComment, rules: GuessRules, rulings: tuple[GuessRuling, ...], *, is_host: bool
) -> tuple[JudgedGuess, str]:
    """The comment as a guess, by the version that says most, and that version's words.

    Words that an edit brought in count from the edit, words that it took out were still written.
    """
    readings = [(version, read_guess(version.text, rules)) for version in known.versions]
    version, reading = min(readings, key=lambda pair: _BEST_FIRST.index(pair[1].outcome))
    judged = JudgedGuess(
        key=known.key,
        author=known.comment.author,
        voter=voter_in(known),
        written=version.written,
        reading=reading,
        is_host=is_host,
        ruling=standing_ruling(rulings),
    )
    return judged, version.text


def _rulings(session: Session, game: GameRow) -> dict[str, tuple[GuessRuling, ...]]:
    found: dict[str, list[GuessRuling]] = defaultdict(list)
    of_game = select(GuessRulingRow).where(GuessRulingRow.game_id == id_of(game))
    for row in session.exec(of_game.order_by(col(GuessRulingRow.id))):
        ruling = GuessRuling(row.outcome, row.reason, row.at)  # type: ignore[arg-type]
        found[row.key].append(ruling)
    return {key: tuple(rulings) for key, rulings in found.items()}
