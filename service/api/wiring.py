"""What a route is handed: the app's own parts, a transaction, the time, who is calling."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Annotated

from fastapi import Depends, Request, Security
from fastapi.security import HTTPAuthorizationCredentials, HTTPBearer
from fastapi.security.utils import get_authorization_scheme_param
from sqlmodel import Session

from service.api.gate import caller_is
from service.api.gathered import Gathered
from service.api.metrics import Metrics
from service.api.progress import Progress
from service.api.waiting import WaitingExports
from service.errors import TokenMissing, TokenTooWeak, TokenWrong
from service.settings import Settings
from service.store.database import Database
from service.store.tokens import is_same_token, known_token


@dataclass(frozen=True, slots=True)
class Wiring:
    """The parts of one app. `local_token` opens it to the process that made it, as the host."""

    settings: Settings
    database: Database
    clock: Callable[[], datetime]
    local_token: str | None
    progress: Progress
    metrics: Metrics
    waiting: WaitingExports
    callers: Gathered[None, str, Caller]


@dataclass(frozen=True, slots=True)
class Caller:
    """Who sent the request: the name of the token and its role."""

    name: str
    role: str


def wiring_of(request: Request) -> Wiring:
    """The parts of the app that was asked."""
    wiring = getattr(request.app.state, "wiring", None)
    if not isinstance(wiring, Wiring):
        raise TypeError("the app has not been started: run its lifespan")
    return wiring


# What waits for nothing is awaited: the framework would give it a thread of its own.
async def _parts(request: Request) -> Wiring:
    return wiring_of(request)


Parts = Annotated[Wiring, Depends(_parts)]


async def _now(request: Request) -> datetime:
    return wiring_of(request).clock()


def _reading(parts: Parts) -> Iterator[Session]:
    with parts.database.reading() as session:
        yield session


def _writing(parts: Parts) -> Iterator[Session]:
    with parts.database.writing() as session:
        yield session


Now = Annotated[datetime, Depends(_now)]
# "function": the transaction ends before the answer is sent, so that no caller is told of
# something that then was not kept.
Reading = Annotated[Session, Depends(_reading, scope="function")]
Writing = Annotated[Session, Depends(_writing, scope="function")]

_bearer = HTTPBearer(
    auto_error=False,
    scheme_name="token",
    description="A token of this service: the host may do everything, a collector hands in "
    "batches of comments.",
)


async def _caller(
    request: Request,
    sent: Annotated[HTTPAuthorizationCredentials | None, Security(_bearer)],
) -> Caller | None:
    """Who calls; None without a token.

    Raises:
        TokenWrong: the token is not known.
    """
    if sent is None or not sent.credentials:
        return None
    parts = wiring_of(request)
    caller = _this_machine(parts, sent.credentials)
    caller = caller or await parts.callers.ask(None, sent.credentials)
    caller_is(request, caller.role)
    return caller


def caller_of_header(parts: Wiring, header: str) -> Caller | None:
    """Who calls with this Authorization header; None without a token.

    Raises:
        TokenWrong: the token is not known.
    """
    scheme, token = get_authorization_scheme_param(header)
    return _caller_with(parts, token if scheme.lower() == "bearer" else "")


def _caller_with(parts: Wiring, token: str) -> Caller | None:
    if not token:
        return None
    caller: Caller | Exception | None = _this_machine(parts, token)
    if caller is None:
        [caller] = callers_with(parts.database, [token])
    if isinstance(caller, Exception):
        raise caller
    return caller


def _this_machine(parts: Wiring, token: str) -> Caller | None:
    """The process that made the app, where it calls."""
    if parts.local_token is not None and is_same_token(token, parts.local_token):
        return Caller("this machine", "host")
    return None


def callers_with(database: Database, tokens: Sequence[str]) -> list[Caller | Exception]:
    """Who calls with each of the tokens, or TokenWrong; each is looked up once."""
    found: dict[str, Caller | Exception] = {}
    with database.reading() as session:
        for token in dict.fromkeys(tokens):
            known = known_token(session, token)
            found[token] = TokenWrong() if known is None else Caller(known.name, known.role)
    return [found[token] for token in tokens]


AnyCaller = Annotated[Caller | None, Depends(_caller)]


async def _collector(caller: AnyCaller) -> Caller:
    """The host or a collector.

    Raises:
        TokenMissing, TokenWrong.
    """
    if caller is None:
        raise TokenMissing
    return caller


async def _host(caller: Annotated[Caller, Depends(_collector)]) -> Caller:
    """The host.

    Raises:
        TokenMissing, TokenWrong.
        TokenTooWeak: a collector calls.
    """
    if caller.role != "host":
        raise TokenTooWeak(caller.role, "host")
    return caller


HostOrCollector = Annotated[Caller, Depends(_collector)]
Host = Annotated[Caller, Depends(_host)]
#: For a route whose answer does not depend on the caller, beyond its being the host.
host_only = Depends(_host)
