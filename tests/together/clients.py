"""Clients that work at the same time: threads over HTTP, and a script on the database itself.

    python tests/together/clients.py

is that script: each line that comes in is an act, each that goes out what came of it.
"""

from __future__ import annotations

import json
import os
import subprocess
import sys
import time
from dataclasses import asdict, dataclass, field
from pathlib import Path
from typing import Any, Protocol

import httpx

ROOT = Path(__file__).resolve().parents[2]
PATIENCE = 90


@dataclass(frozen=True)
class Act:
    """One request to the API; an act with an export hands that in. `pause` are seconds before."""

    kind: str
    method: str
    path: str
    body: Any = None
    export: str | None = None
    fields: dict[str, str] = field(default_factory=dict)
    pause: float = 0.0


@dataclass(frozen=True)
class Done:
    """What came of an act, and between when; the clock is the same for all processes."""

    act: Act
    status: int
    answer: Any
    began: float
    ended: float

    @property
    def is_kept(self) -> bool:
        """Whether it was granted."""
        return self.status in (200, 201)


class Client(Protocol):
    """Does one act after the other."""

    def do(self, act: Act) -> Done:
        """Do an act."""

    def close(self) -> None:
        """End it."""


class OverHttp:
    """A client of the running server."""

    def __init__(self, url: str, token: str) -> None:
        headers = {"Authorization": f"Bearer {token}"}
        self._web = httpx.Client(base_url=url, headers=headers, timeout=PATIENCE)

    def do(self, act: Act) -> Done:
        """See Client."""
        began = time.monotonic()
        answer = self._web.request(act.method, act.path, **_content(act))
        is_json = answer.headers.get("Content-Type", "").endswith("json")
        told = answer.json() if is_json else answer.text
        return Done(act, answer.status_code, told, began, time.monotonic())

    def close(self) -> None:
        """End it."""
        self._web.close()


class AsScript:
    """A process of its own that works on the database as the scripts do, without the server."""

    def __init__(self, environment: dict[str, str]) -> None:
        self._process = subprocess.Popen(  # noqa: S603 - this very file
            [sys.executable, str(Path(__file__))],
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            text=True,
            env=dict(os.environ) | environment,
        )

    def do(self, act: Act) -> Done:
        """See Client."""
        assert self._process.stdin
        assert self._process.stdout
        self._process.stdin.write(json.dumps(asdict(act)) + "\n")
        self._process.stdin.flush()
        told = json.loads(self._process.stdout.readline())
        return Done(act, **told)

    def close(self) -> None:
        """End it."""
        self._process.communicate(timeout=PATIENCE)


def _content(act: Act) -> dict[str, Any]:
    if act.export is not None:
        return {"files": {"file": ("comments.csv", act.export.encode())}, "data": act.fields}
    return {} if act.body is None else {"json": act.body}


def main() -> None:
    """Does what comes in."""
    sys.path[:0] = [str(ROOT), str(ROOT / "scripts")]
    from client import in_process  # noqa: PLC0415 - only once the project is found

    from service.errors import ProblemAnswered  # noqa: PLC0415 - the same
    from service.settings import read_settings  # noqa: PLC0415 - the same

    with in_process(read_settings()) as host:
        for line in sys.stdin:
            act = Act(**json.loads(line))
            path, status, told = act.path.removeprefix("/api"), 200, None
            began = time.monotonic()
            try:
                if act.export is None:
                    told = host.ask(act.method, path, act.body)
                else:
                    told = host.hand_in(path, "comments.csv", act.export.encode(), **act.fields)
            except ProblemAnswered as refused:
                status, told = refused.status, str(refused)
            done = {"status": status, "answer": told, "began": began, "ended": time.monotonic()}
            sys.stdout.write(json.dumps(done) + "\n")
            sys.stdout.flush()


if __name__ == "__main__":
    main()
