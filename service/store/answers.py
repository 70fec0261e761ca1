"""The sealed answer: kept once, read only to judge guesses, told to nobody."""

from __future__ import annotations

from datetime import datetime

from sqlmodel import Session

from service.errors import BadRules, WrongState
from service.mystery.answer import Answer, GuessRules
from service.mystery.leaks import is_lost_in_talk, names_answer
from service.mystery.seal import seal_of
from service.store.columns import id_of
from service.store.games import chart_of, take_game
from service.store.tables import AnswerRow, GameRow


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
            f"the answer of game {game.slug}", "sealed", "changed", "what is sealed stays so"
        )
    rules = _guess_rules(answer, game)
    if is_lost_in_talk(answer, chart_of(game).page_count):
        raise BadRules(
            "the answer's title or an alias is a page's number, a small word or a single letter, "
            "and could not be told from votes and announcements",
            "add a word that viewers would also write",
        )
    _check_telling(game.name, rules, "the game's name")
    _check_telling(game.slug, rules, "the game's short name", "make the game under another one")
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


def guess_rules_of(session: Session, game: GameRow) -> GuessRules:
    """What guesses are judged by.

    Raises:
        WrongState: the game has no sealed answer.
    """
    row = session.get(AnswerRow, id_of(game))
    if row is None:
        raise WrongState(
            f"game {game.slug}", "without a sealed answer", "guessed", "seal its answer first"
        )
    return _guess_rules(Answer(row.title, row.designer, tuple(row.aliases)), game)


def check_tells_nothing(
    session: Session, game: GameRow, text: str, what: str, todo: str = "word it otherwise"
) -> None:
    """Stop a text for the public that would give the sealed answer away; `what` is its name.

    Raises:
        BadRules: the text names the answer, a near spelling of it, or a word that tells it.
    """
    if game.seal is not None:
        _check_telling(text, guess_rules_of(session, game), what, todo)


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


def _check_telling(
    text: str, rules: GuessRules, what: str, todo: str = "word it otherwise"
) -> None:
    if names_answer(text, rules):
        raise BadRules(f"{what} gives the sealed answer or a part of it away", todo)


def _guess_rules(answer: Answer, game: GameRow) -> GuessRules:
    return GuessRules(answer, game.wants, game.names_per_comment)  # type: ignore[arg-type]
