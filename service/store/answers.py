"""The sealed answer: kept once, read only to judge guesses, told to nobody."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import datetime

from sqlmodel import Session, col, select

from service.errors import BadRules, WrongState
from service.mystery.answer import Answer, GuessRules
from service.mystery.leaks import is_lost_in_talk, names_answer
from service.mystery.names import fold
from service.mystery.notes import AliasNote, seal_of_note, with_notes
from service.mystery.seal import seal_of
from service.store.columns import id_of
from service.store.games import chart_of, take_game
from service.store.tables import AnswerRow, GameRow
from service.store.tables_mystery import AliasNoteRow, PrizeRow, WinnerRow


@dataclass(frozen=True, slots=True)
class KeptAnswer:
    """What is sealed of a game: the rules with the answer, its salt, and the notes of aliases."""

    rules: GuessRules
    salt: bytes
    sealed: datetime
    notes: tuple[AliasNote, ...]

    @property
    def with_notes(self) -> GuessRules:
        """The rules with every alias that counts by now."""
        return replace(self.rules, answer=with_notes(self.rules.answer, self.notes))


def seal_answer(
    session: Session, game: GameRow, answer: Answer, salt: bytes, now: datetime
) -> None:
    """Keep the answer and publish its seal.

    Raises:
        WrongState: an answer is sealed already.
        BadRules: the game asks for more than the answer tells, or is named after it; or every
            vote would name the answer.
    """
    take_game(session, game)
    if game.seal is not None:
        raise WrongState(
            f"the answer of game {game.slug}",
            "sealed",
            "changed",
            "what is sealed stays so; another name that counts can be added as an alias",
        )
    _check_names(session, game, _guess_rules(answer, game))
    session.add(
        AnswerRow(
            game_id=id_of(game),
            title=answer.title,
            designer=answer.designer,
            aliases=list(answer.aliases),
            salt=salt,
            sealed=now,
        )
    )
    game.seal = seal_of(answer, salt)
    session.add(game)
    session.flush()


def note_alias(session: Session, game: GameRow, alias: str, salt: bytes, now: datetime) -> None:
    """Add another name that counts from now on, and publish the note's seal and time.

    Raises:
        WrongState: no answer is sealed, a winner is announced or the answer revealed, or the name
            counts already.
        BadRules: the game or its prize is named after it; or every vote would name it.
    """
    take_game(session, game)
    kept = kept_answer(session, game)
    if game.revealed is not None:
        raise WrongState(f"game {game.slug}", "revealed", "given an alias", "its mystery is over")
    announced = select(WinnerRow.id).where(WinnerRow.game_id == id_of(game))
    if session.exec(announced).first() is not None:
        todo = "guesses are judged by the names that counted till then"
        raise WrongState(f"game {game.slug}", "won", "given an alias", todo)
    known = kept.with_notes.answer
    if fold(alias) in map(fold, (known.title, *known.aliases)):
        raise WrongState("this name", "one that counts", "added", "nothing needs to be done")
    note = AliasNote(len(kept.notes) + 1, alias, now.replace(microsecond=0), salt)
    _check_names(session, game, GuessRules(Answer(alias)))
    seal = seal_of_note(note, game.seal or "")
    row = AliasNoteRow(
        game_id=id_of(game), number=note.number, alias=alias, salt=salt, seal=seal, at=note.at
    )
    session.add(row)
    session.flush()


def alias_notes(session: Session, game: GameRow) -> tuple[AliasNoteRow, ...]:
    """The notes of a game in their order; only number, time and seal are public."""
    of_game = select(AliasNoteRow).where(AliasNoteRow.game_id == id_of(game))
    return tuple(session.exec(of_game.order_by(col(AliasNoteRow.number))))


def kept_answer(session: Session, game: GameRow) -> KeptAnswer:
    """What is sealed of a game.

    Raises:
        WrongState: the game has no sealed answer.
    """
    row = session.get(AnswerRow, id_of(game))
    if row is None:
        raise WrongState(
            f"game {game.slug}", "without a sealed answer", "guessed", "seal its answer first"
        )
    rules = _guess_rules(Answer(row.title, row.designer, tuple(row.aliases)), game)
    notes = tuple(
        AliasNote(note.number, note.alias, note.at, note.salt)
        for note in alias_notes(session, game)
    )
    return KeptAnswer(rules, row.salt, row.sealed, notes)


def sealed_at(session: Session, game: GameRow) -> datetime | None:
    """When the answer was sealed, which is public; None while it is not."""
    of_game = select(AnswerRow.sealed).where(AnswerRow.game_id == id_of(game))
    return session.exec(of_game).first()


def check_tells_nothing(
    session: Session, game: GameRow, text: str, what: str, todo: str = "word it otherwise"
) -> None:
    """Stop a text for the public that would give the sealed answer away; `what` is its name.

    Once the answer is revealed, every text may tell it.

    Raises:
        BadRules: the text names the answer, a near spelling of it, or a word that tells it.
    """
    if game.seal is not None and game.revealed is None:
        _check_telling(text, kept_answer(session, game).with_notes, what, todo)


def check_announcement(session: Session, game: GameRow, pick: tuple[int, str] | None) -> None:
    """Stop an announcement that would give the sealed answer away by what the host put into it.

    These are the game's name and the reason for her pick. All else is said of every game alike
    and tells nothing of this one, even where an answer is made of such words ("The Edge").

    Raises:
        BadRules: one of them does; it says which.
    """
    check_tells_nothing(session, game, game.name, "the game's name")
    if pick is not None:
        check_reason(session, game, pick)


def check_reason(session: Session, game: GameRow, pick: tuple[int, str]) -> None:
    """Stop a pick (page, reason) whose reason, which everybody reads, gives the answer away.

    Raises:
        BadRules: it does.
    """
    page, reason = pick
    what = f"the reason for the pick of page {page}"
    check_tells_nothing(session, game, reason, what, "pick the page with a reason in other words")


def _check_names(session: Session, game: GameRow, rules: GuessRules) -> None:
    """Whether the names of an answer can be kept secret in this game."""
    if is_lost_in_talk(rules.answer, chart_of(game).page_count):
        raise BadRules(
            "the answer's title or an alias is a page's number, a small word or a single letter, "
            "and could not be told from votes and announcements",
            "add a word that viewers would also write",
        )
    _check_telling(game.name, rules, "the game's name")
    _check_telling(game.slug, rules, "the game's short name", "make the game under another one")
    prize = session.get(PrizeRow, id_of(game))
    if prize is not None:
        _check_telling(f"{prize.offer}\n{prize.choose_from}", rules, "what the prize offers")


def _check_telling(
    text: str, rules: GuessRules, what: str, todo: str = "word it otherwise"
) -> None:
    if names_answer(text, rules):
        raise BadRules(f"{what} gives the sealed answer or a part of it away", todo)


def _guess_rules(answer: Answer, game: GameRow) -> GuessRules:
    return GuessRules(answer, game.wants, game.names_per_comment)  # type: ignore[arg-type]
