"""Tokens: made once, shown once, kept as a digest, compared in constant time."""

from __future__ import annotations

import hmac
import secrets
from collections.abc import Sequence
from datetime import datetime
from hashlib import sha256
from typing import Literal, get_args

from sqlmodel import Session, col, delete, select

from service.errors import AlreadyThere, NotFound
from service.store.columns import keep_new
from service.store.tables import TokenRow

Role = Literal["host", "collector"]
ROLES: tuple[Role, ...] = get_args(Role)
_BYTES = 32


def digest_of(token: str) -> str:
    """What is kept of a token: its SHA-256. It is random, so it needs no salt."""
    return sha256(token.encode("utf-8", "surrogatepass")).hexdigest()


def is_same_token(sent: str, known: str) -> bool:
    """Whether two tokens are the same, in a time that tells nothing of where they differ."""
    return hmac.compare_digest(digest_of(sent), digest_of(known))


def make_token(session: Session, name: str, role: Role, now: datetime) -> str:
    """A new token. It is given out here and never again.

    Raises:
        AlreadyThere: there is a token of that name.
    """
    token = secrets.token_urlsafe(_BYTES)
    row = TokenRow(name=name, role=role, digest=digest_of(token), created=now)
    taken = AlreadyThere("token", name, "choose another name, or delete that token first")
    keep_new(session, row, taken)
    return token


def known_token(session: Session, token: str) -> TokenRow | None:
    """The row of that token; None where it is not known."""
    digest = digest_of(token)
    row = session.exec(select(TokenRow).where(TokenRow.digest == digest)).first()
    # The database found the digest by comparing it, so this adds nothing that could be timed:
    # to guess a digest's beginning one would have to find a token that gives it.
    return row if row is not None and hmac.compare_digest(row.digest, digest) else None


def all_tokens(session: Session) -> Sequence[TokenRow]:
    """All tokens by name."""
    return session.exec(select(TokenRow).order_by(col(TokenRow.name))).all()


def delete_token(session: Session, name: str) -> None:
    """Make a token useless from now on.

    Raises:
        NotFound: there is no token of that name.
    """
    deleted = session.exec(delete(TokenRow).where(col(TokenRow.name) == name))
    if deleted.rowcount != 1:
        raise NotFound("token", name, "list the tokens to see their names")
