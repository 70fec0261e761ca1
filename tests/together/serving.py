"""A real server for clients that work at the same time."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass

from tests.scripts.test_start import start


@dataclass(frozen=True)
class Served:
    """A running server: its address, its host's token, the settings that scripts need to join.

    `process` is the number of the process that was started.
    """

    url: str
    token: str
    environment: dict[str, str]
    process: int


@contextmanager
def served(environment: dict[str, str], *arguments: str) -> Iterator[Served]:
    """A server with these settings; nothing may have gone wrong in it without being told."""
    server = start(*arguments, **environment)
    try:
        yield Served(server.url, server.token, environment, server.process.pid)
    finally:
        printed = server.stop()
    assert "Traceback" not in printed, printed
    assert "ERROR" not in printed, printed
