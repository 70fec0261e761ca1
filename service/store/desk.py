"""Ways into the desk: a link that signs in once, and the session that a browser then has.

What a link or a cookie holds is random, given out once, and kept as a digest only (see tokens.py).
"""

from __future__ import annotations

import hmac
import secrets
from collections.abc import Sequence
from datetime import datetime, timedelta
from typing import Literal

from sqlalchemy import bindparam
from sqlmodel import Session, col, delete, select

from service.errors import NotFound, SignInRefused
from service.store.tables_desk import DeskLinkRow, DeskSessionRow
from service.store.tokens import digest_of
from service.store.turns import take_turn

Way = Literal["link", "password"]
#: How long a link waits to be used: the host has it before her eyes when it is made.
LINK_LASTS = timedelta(hours=1)
#: How long a browser stays signed in: over a round, and not for ever on a computer lent out.
SESSION_LASTS = timedelta(days=7)
_BYTES = 32
#: Made once: every page of the desk asks it.
_BY_DIGEST = select(DeskSessionRow).where(DeskSessionRow.digest == bindparam("digest"))


def make_link(session: Session, now: datetime) -> str:
    """The key of a new link; links made before it are useless from now on."""
    # Of two that are made at once only the later one is good as well.
    take_turn(session, "ways into the desk")
    session.exec(delete(DeskLinkRow))
    key = secrets.token_urlsafe(_BYTES)
    session.add(DeskLinkRow(digest=digest_of(key), made=now, ends=now + LINK_LASTS))
    session.flush()
    return key


def use_link(session: Session, key: str, now: datetime) -> str:
    """Sign in by a link, which is used up by it; what the browser's cookie holds from now on.

    Raises:
        SignInRefused: the link was used, replaced, or is too old.
    """
    # Deleting it is the test: of two who use it at once, one finds no row any more.
    here = (col(DeskLinkRow.digest) == digest_of(key), col(DeskLinkRow.ends) > now)
    if session.exec(delete(DeskLinkRow).where(*here)).rowcount != 1:
        raise SignInRefused(
            "this link was used already, is too old, or was replaced by a newer one",
            "make another one with scripts/desk.py, or sign in with the password",
        )
    return begin_session(session, "link", now)


def begin_session(session: Session, way: Way, now: datetime) -> str:
    """What the cookie of a new session holds. Sessions that have ended are forgotten."""
    session.exec(delete(DeskSessionRow).where(col(DeskSessionRow.ends) <= now))
    key = secrets.token_urlsafe(_BYTES)
    row = DeskSessionRow(digest=digest_of(key), way=way, began=now, ends=now + SESSION_LASTS)
    session.add(row)
    session.flush()
    return key


def known_session(session: Session, key: str, now: datetime) -> DeskSessionRow | None:
    """The session that a cookie belongs to; None where it has ended or never was."""
    digest = digest_of(key)
    row = session.exec(_BY_DIGEST, params={"digest": digest}).first()
    if row is None or row.ends <= now:
        return None
    return row if hmac.compare_digest(row.digest, digest) else None


def sessions_now(session: Session, now: datetime) -> Sequence[DeskSessionRow]:
    """The sessions that last, the newest first."""
    lasting = select(DeskSessionRow).where(col(DeskSessionRow.ends) > now)
    newest = (col(DeskSessionRow.began).desc(), col(DeskSessionRow.id).desc())
    return session.exec(lasting.order_by(*newest)).all()


def end_session(session: Session, number: int) -> None:
    """End one session by its id.

    Raises:
        NotFound: it has ended already.
    """
    ended = session.exec(delete(DeskSessionRow).where(col(DeskSessionRow.id) == number))
    if ended.rowcount != 1:
        raise NotFound("session", str(number), "it has ended already")


def end_session_of(session: Session, key: str) -> None:
    """End the session that a cookie belongs to, if there is one."""
    session.exec(delete(DeskSessionRow).where(col(DeskSessionRow.digest) == digest_of(key)))


def end_sessions(session: Session, but: int | None = None) -> int:
    """End every session, all but the one of that id; how many there were."""
    every = delete(DeskSessionRow)
    if but is not None:
        every = every.where(col(DeskSessionRow.id) != but)
    return session.exec(every).rowcount
