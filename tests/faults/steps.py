"""What processes are killed at: each step with what is there before it."""

from __future__ import annotations

import secrets
import time
from collections.abc import Callable
from datetime import UTC, datetime
from io import BytesIO

from client import in_process

from service.api.passing import Passing
from service.api.waiting import SentBy
from service.settings import Settings
from service.store.database import Database
from service.store.upgrade import upgrade
from tests.faults.game import ROUND, begin_game, export_of
from tests.store.aged.make import fill

NOW = datetime(2026, 3, 14, 18, 0, tzinfo=UTC)
#: With so many comments a step takes long enough to be hit in the midst.
COMMENTS = 500


def clock() -> datetime:
    """A time that is the same whenever a step is done, so that its outcome is too."""
    return NOW


def hand_in(settings: Settings) -> None:
    """Hand in an export with edits of comments that are known."""
    with in_process(settings, clock) as host:
        host.hand_in(f"{ROUND}/batches", "second.csv", export_of(COMMENTS, "second"))


def close(settings: Settings) -> None:
    """Close the voting."""
    with in_process(settings, clock) as host:
        host.post(f"{ROUND}/close")


def announce(settings: Settings) -> None:
    """Announce the result, with its record."""
    with in_process(settings, clock) as host:
        host.post(f"{ROUND}/announce")


def begin(settings: Settings, *, closed: bool = False) -> None:
    """A game whose first round has comments."""
    upgrade(settings)
    with in_process(settings, clock) as host:
        begin_game(host, export_of(COMMENTS, "first"))
        if closed:
            host.post(f"{ROUND}/close")


def begin_aged(settings: Settings) -> None:
    """A database of the first version."""
    fill(settings, "0001")


def announce_and_go_on(settings: Settings) -> None:
    """Announce the result, and live on as long: half of the kills come after it was kept."""
    began = time.monotonic()
    announce(settings)
    time.sleep(time.monotonic() - began)


def revise(settings: Settings) -> None:
    """Announce the result once more, with what was found late."""
    with in_process(settings, clock) as host:
        host.post(f"{ROUND}/revisions", {"reason": "a second export"})


def forget(settings: Settings) -> None:
    """Forget a voter, and write the database's files anew."""
    with in_process(settings, clock) as host:
        host.post("/games/harbour/forgotten/voters", {"voter": "viewer 5"})


def keep_waiting(settings: Settings) -> None:
    """Have an export wait in the database, under a key that is the same each time."""
    setattr(secrets, "token_urlsafe", lambda *_: "the same each time")  # noqa: B010 - of this process
    database = Database(settings)
    passing = Passing(settings, database, clock)
    export = export_of(COMMENTS, "second") * 100
    passing.waiting.keep(SentBy(1, "harbour"), "second.csv", BytesIO(export), NOW)
    passing.end()
    database.dispose()


def begin_late(settings: Settings) -> None:
    """A game whose first round is announced, and to which comments came late."""
    begin(settings, closed=True)
    announce(settings)
    hand_in(settings)


def begin_closed(settings: Settings) -> None:
    """A game whose first round is closed."""
    begin(settings, closed=True)


Step = tuple[Callable[[Settings], None], Callable[[Settings], None]]
STEPS: dict[str, Step] = {
    "import": (begin, hand_in),
    "close": (begin, close),
    "announce": (begin_closed, announce),
    "announced": (begin_closed, announce_and_go_on),
    "revise": (begin_late, revise),
    "forget": (begin, forget),
    "wait": (begin, keep_waiting),
    "migrate": (begin_aged, upgrade),
}
