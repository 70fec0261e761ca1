"""Plays the demo game through the API, as a host would from her terminal.

The game lies beside this file: `game.json` says what the host does, the exports are what she hands
in. The demo has a time of its own, since its comments are of a spring that may be long gone.
"""

from __future__ import annotations

import json
import time
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any, Protocol
from zoneinfo import ZoneInfo

from service.errors import NotFound

Json = Any
FOLDER = Path(__file__).resolve().parent


class Host(Protocol):
    """What the demo needs of a client of the API."""

    def get(self, path: str, **wanted: Any) -> Json:
        """Reads."""

    def post(self, path: str, content: Json = None) -> Json:
        """Makes or does something."""

    def put(self, path: str, content: Json) -> Json:
        """Sets something."""

    def hand_in(self, path: str, name: str, content: bytes, **fields: str | None) -> Json:
        """Hands in an export."""


class Clock:
    """The demo's time: it stands still until the demo sets it, or lets it go on."""

    def __init__(self) -> None:
        self.now = datetime(2026, 1, 1, tzinfo=UTC)
        self._since: float | None = None

    def __call__(self) -> datetime:
        """The demo's present."""
        if self._since is None:
            return self.now
        return self.now + timedelta(seconds=time.monotonic() - self._since)

    def go_on(self) -> None:
        """Lets the time go on from the demo's present, as fast as any other."""
        self._since = time.monotonic()


@dataclass(frozen=True, slots=True)
class PlayedRound:
    """What the API answered while one round was played.

    `before` is the count as it stood before the host's rulings, `after` as it was announced.
    """

    number: int
    batch: Json
    before: Json
    rulings: list[Json]
    after: Json
    announced: Json


@dataclass(frozen=True, slots=True)
class PlayedLog:
    """What the API answered once the stitch log was handed in: the pace, the update's words."""

    taken: Json
    pace: Json
    update: Json


class Demo:
    """The demo game, played round by round by `host` at the times that `clock` is set to."""

    def __init__(self, host: Host, clock: Clock) -> None:
        self._host = host
        self._clock = clock
        self.plan: Json = read_plan()
        self._zone = ZoneInfo(self.plan["game"]["zone"])
        self.path = f"/games/{self.plan['game']['slug']}"

    def make_game(self) -> Json:
        """Makes the game and seals its answer, an hour before its first round."""
        self._clock.now = self._instant(self.plan["rounds"][0]["opens"])
        told = {name: value for name, value in self.plan["game"].items() if name != "island"}
        return self._host.post("/games", told)

    def play_round(self, number: int) -> PlayedRound:
        """Drafts and opens the round, hands in its export, closes, rules, and announces it."""
        told = self.plan["rounds"][number - 1]
        path = f"{self.path}/rounds/{number}"
        for page in told["pages_before"]:
            self._host.put(f"{self.path}/pages/{page['page']}", {"state": page["state"]})
        self._clock.now = self._instant(told["opens"])
        rules = ("opens", "closes", "choices", "standing", "tie_breaks")
        self._host.post(f"{self.path}/rounds", {name: told[name] for name in rules})
        self._host.post(f"{path}/open")
        self._clock.now = self._instant(told["export"]["copied_at"])
        batch = self._hand_in(path, told["export"])
        self._host.post(f"{path}/close")
        before = self._host.get(f"{path}/tally")
        self._rule(path, told["rulings"])
        self._rule_on_guesses(told["guess_rulings"])
        after = self._host.get(f"{path}/tally")
        announced = self._host.post(f"{path}/announce")
        return PlayedRound(number, batch, before, told["rulings"], after, announced)

    def log_stitches(self) -> PlayedLog:
        """Plans the rounds, tells what page 41 has, and hands in the stitch log of its first days."""
        told = self.plan["stitches"]
        self._clock.now = self._instant(told["logged_at"])
        path = f"{self.path}/pace"
        self._host.put(f"{path}/plan", told["plan"])
        for page in told["pages"]:
            counts = {name: count for name, count in page.items() if name != "page"}
            self._host.put(f"{path}/pages/{page['page']}", counts)
        content = (FOLDER / told["file"]).read_bytes()
        taken = self._host.hand_in(f"{path}/log/table", told["file"], content)
        return PlayedLog(taken, self._host.get(path), self._host.get(f"{path}/update"))

    def guesses(self) -> Json:
        """The guesses so far, and the first right one."""
        return self._host.get(f"{self.path}/guesses")

    def _hand_in(self, path: str, export: Json) -> Json:
        content = (FOLDER / export["file"]).read_bytes()
        fields = {"copied_at": export["copied_at"], "format": export["format"]}
        return self._host.hand_in(f"{path}/batches", export["file"], content, **fields)

    def _rule(self, path: str, rulings: list[Json]) -> None:
        comments = self._host.get(f"{path}/comments", filter="look")
        for ruling in rulings:
            key = _key_of(ruling, comments)
            said = {name: ruling[name] for name in ("pages", "reason", "in_time") if name in ruling}
            self._host.post(f"{path}/comments/{key}/rulings", said)

    def _rule_on_guesses(self, rulings: list[Json]) -> None:
        for ruling in rulings:
            key = _key_of(ruling, self.guesses()["guesses"])
            said = {"outcome": ruling["outcome"], "reason": ruling["reason"]}
            self._host.post(f"{self.path}/guesses/{key}/rulings", said)

    def _instant(self, text: str) -> datetime:
        """A time of the plan; without an offset it is the island's."""
        told = datetime.fromisoformat(text)
        return told if told.tzinfo else told.replace(tzinfo=self._zone)


def read_plan() -> Json:
    """What the host of the demo game does, round by round."""
    return json.loads((FOLDER / "game.json").read_text(encoding="utf-8"))


def _key_of(ruling: Json, comments: list[Json]) -> str:
    """The key of the comment that the ruling is about: the one of its author among those shown.

    Raises:
        NotFound: none or several of them are that author's.
    """
    keys = [str(comment["key"]) for comment in comments if comment["author"] == ruling["author"]]
    if len(keys) != 1:
        raise NotFound("comment to rule on by", ruling["author"], "mend the demo's game.json")
    return keys[0]
