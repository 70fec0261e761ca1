"""The desk's password: hashed with Argon2, tried only so often.

Tries are counted for the desk and not by address: a guesser has many addresses, and no viewer's is
kept. Whoever uses up the tries locks nobody out: the host can always sign in by a link.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta

from argon2 import PasswordHasher
from argon2.exceptions import InvalidHashError, VerificationError
from sqlalchemy import case
from sqlmodel import Session, col, update

from service.errors import BadPassword, SignInRefused, TooManyTries
from service.store.desk import begin_session, end_sessions
from service.store.tables_desk import DeskPasswordRow
from service.store.turns import take_turn

SHORTEST, LONGEST = 12, 1000
#: So many tries are let through in a span of that length.
MOST_TRIES = 10
TRIES_SPAN = timedelta(minutes=15)
#: zxcvbn's scale goes from 0 to 4; 3 is "safely unguessable" where hashes are slow.
_STRONG_ENOUGH = 3
#: Words that a guesser of this desk's password would try first.
CONTEXT_WORDS = (
    *("loopstart", "mystery", "stitch", "stitching", "crossstitch", "needlework", "embroidery"),
    *("chart", "desk", "board", "host", "viewer", "password"),
)
#: So many letters or digits must be left of a password without these words.
_BESIDES_CONTEXT = 8
#: zxcvbn looks at no more.
_LOOKED_AT = 72
_ONE_ROW = 1
_hasher = PasswordHasher()


@dataclass(frozen=True, slots=True)
class Try:
    """A try of the password that was let through: the hash that it is compared with."""

    hash: str


def has_password(session: Session) -> bool:
    """Whether a password is set."""
    return session.get(DeskPasswordRow, _ONE_ROW) is not None


def set_password(session: Session, password: str, now: datetime, keeps: int | None = None) -> None:
    """Set the password, in place of the one before; every session ends but the one that `keeps`.

    Raises:
        BadPassword: it is too short, too long, or easily guessed.
    """
    _check(password)
    # Set twice at once, or while somebody signs in by the old one, each goes by what is kept.
    take_turn(session, "ways into the desk")
    row = session.get(DeskPasswordRow, _ONE_ROW)
    if row is None:
        row = DeskPasswordRow(id=_ONE_ROW, hash="", since=now, tried_since=now)
    row.hash, row.since, row.tried, row.tried_since = _hasher.hash(password), now, 0, now
    session.add(row)
    end_sessions(session, but=keeps)
    session.flush()


def take_try(session: Session, now: datetime) -> Try | TooManyTries:
    """Count a try before it is made, so that many at once are counted as well.

    A refusal is given back and not raised: the count must be kept.

    Raises:
        SignInRefused: no password is set.
    """
    over = col(DeskPasswordRow.tried_since) <= now - TRIES_SPAN
    counted = update(DeskPasswordRow).values(
        tried=case((over, 1), else_=col(DeskPasswordRow.tried) + 1),
        tried_since=case((over, now), else_=col(DeskPasswordRow.tried_since)),
    )
    if session.exec(counted).rowcount != 1:
        raise SignInRefused(
            "no password is set for the desk", "sign in by the link that the start command prints"
        )
    row = session.get_one(DeskPasswordRow, _ONE_ROW)
    session.refresh(row)
    if row.tried > MOST_TRIES:
        left = row.tried_since + TRIES_SPAN - now
        return TooManyTries(max(1, -(-int(left.total_seconds()) // 60)))
    return Try(row.hash)


def check_password(tried: Try, password: str) -> None:
    """Whether it is the password. Takes a while, so that guessing does; outside a transaction.

    Raises:
        SignInRefused: it is not.
    """
    wrong = SignInRefused("this is not the desk's password", "try again, or sign in by a link")
    if len(password) > LONGEST:
        raise wrong
    try:
        _hasher.verify(tried.hash, password.encode("utf-8", "surrogatepass"))
    except (VerificationError, InvalidHashError):
        raise wrong from None


def begin_by_password(session: Session, tried: Try, now: datetime) -> str:
    """What the cookie of the session holds after the right password; the tries are forgotten.

    Raises:
        SignInRefused: the password was changed while it was compared.
    """
    take_turn(session, "ways into the desk")
    row = session.get(DeskPasswordRow, _ONE_ROW)
    if row is None or row.hash != tried.hash:
        raise SignInRefused("the password was changed just now", "sign in with the new one")
    row.tried = 0
    session.add(row)
    return begin_session(session, "password", now)


def _check(password: str) -> None:
    if len(password) < SHORTEST:
        raise BadPassword(
            f"the password has {len(password)} characters",
            f"take at least {SHORTEST}; three or four words that do not belong together will do",
        )
    if len(password) > LONGEST:
        raise BadPassword(f"the password has {len(password)} characters", f"take at most {LONGEST}")
    if len(_without_context(password)) < _BESIDES_CONTEXT:
        raise BadPassword(
            "the password is made of words that anybody would try here",
            "take three or four words that have nothing to do with the desk",
        )
    # Loaded when it is needed: its lists of words take much memory, and passwords are seldom set.
    from zxcvbn import zxcvbn  # noqa: PLC0415

    if zxcvbn(password[:_LOOKED_AT], list(CONTEXT_WORDS))["score"] < _STRONG_ENOUGH:
        raise BadPassword(
            "the password is one that is guessed early",
            "take three or four words that do not belong together",
        )


def _without_context(password: str) -> str:
    """What a password has besides the words that a guesser would begin with; letters and digits."""
    left = password.lower()
    for word in sorted(CONTEXT_WORDS, key=len, reverse=True):
        left = left.replace(word, " ")
    return "".join(letter for letter in left if letter.isalnum())
