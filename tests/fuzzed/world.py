"""Games in every state, and an app on them that can be set back to how they were."""

from __future__ import annotations

import asyncio
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import timedelta
from typing import Any

from sqlalchemy import delete, insert, select
from starlette.types import Receive, Scope, Send

from service.app import create_app
from service.settings import Settings
from service.store.columns import metadata
from service.store.database import Database
from service.store.engine import make_engine
from tests.api.asking import GAME, csv, done, votes
from tests.api.conftest import HOST_TOKEN, Service, running
from tests.api.guessing import MAREN, ODD, PRIZE, TOVE, WRONG
from tests.conftest import Clock

Json = Any
#: By the token that each sends; a viewer sends none.
Tokens = Mapping[str, str | None]
#: After so many requests the games are as they were: else little is soon left to ask about.
LASTS = 100
SPARE = "a spare collector"
PLAYED, OVER, DRAFTED = "windy-island", "over-isle", "drafted-cove"
#: Their first rounds are tied: one waits for a runoff, one for the numbers of a draw.
TIED, DRAWN = "tied-harbour", "drawn-skerry"
SOURCE: Json = {"name": "the island lottery of 7 March", "expected": "2026-03-07T20:00"}
LATE = csv(("Runa", "2026-03-01T19:50:00Z", "14"), ("Una", "2026-03-01T19:51:00Z", "14"))


@dataclass(frozen=True)
class World:
    """A database's rows when all games were made, the time then, and what is known in them.

    `known` are values that a request may name, by the name of the parameter.
    """

    settings: Settings
    rows: Mapping[str, Sequence[Mapping[str, Any]]]
    clock: Clock
    known: Mapping[str, Sequence[str | int]]
    tokens: Tokens


def make_world(settings: Settings) -> World:
    """The games, played through the API on an empty database."""
    clock = Clock()
    with running(settings, clock) as service:
        collector = done(_token(service, "the collector"), 201)["token"]
        done(_token(service, SPARE), 201)
        done(service.host.put("/desk/password", {"password": "gorse kettle lantern"}), 204)
        for slug in (DRAFTED, TIED, DRAWN, PLAYED, OVER):
            _make(service, slug)
        service.clock.go_on(hours=2)
        _tie(service, TIED)
        _tie(service, DRAWN)
        _play(service, PLAYED, "2026-04-01T20:00", "15 or 16")
        _play(service, OVER, "2026-03-01T21:00", "16")
        _log(service)
        service.clock.go_on(hours=2)
        _end(service)
        service.clock.go_on(days=9)
        known = _known(service)
    return World(
        settings,
        _rows_in(settings),
        clock,
        known,
        {"host": HOST_TOKEN, "collector": collector, "viewer": None},
    )


def _token(service: Service, name: str) -> Json:
    return service.host.post("/tokens", {"name": name, "role": "collector"})


def _make(service: Service, slug: str) -> None:
    done(service.host.post("/games", GAME | {"slug": slug}), 201)
    draw = {"tie_breaks": ["draw"], "sources": [SOURCE]}
    rules = {TIED: {"tie_breaks": ["runoff", "draw"]}, DRAFTED: draw, DRAWN: draw}.get(slug, {})
    done(service.host.post(f"/games/{slug}/rounds", rules), 201)
    if slug != DRAFTED:
        done(service.host.post(f"/games/{slug}/rounds/1/open"))


def _tie(service: Service, slug: str) -> None:
    first = f"/games/{slug}/rounds/1"
    done(service.host.hand_in(f"{first}/batches", votes("13", "21", "13 or 14")), 201)
    done(service.host.post(f"{first}/close"))


def _play(service: Service, slug: str, closes: str, *words: str) -> None:
    """Round 1 announced and recounted, round 2 open with comments; guesses, a prize, words."""
    host, game = service.host, f"/games/{slug}"
    done(host.put(f"{game}/prize", PRIZE))
    said = (("Ebbe", "2026-03-01T18:21:00Z", "13 please"), WRONG, MAREN, TOVE, ODD)
    done(host.hand_in(f"{game}/rounds/1/batches", csv(*said)), 201)
    key = done(host.get(f"{game}/rounds/1/comments"))[0]["key"]
    ruling = {"pages": [14], "reason": "she said so"}
    done(host.post(f"{game}/rounds/1/comments/{key}/rulings", ruling), 201)
    done(host.post(f"{game}/rounds/1/close"))
    done(host.post(f"{game}/rounds/1/announce"))
    done(host.hand_in(f"{game}/rounds/1/batches", LATE), 201)
    done(host.post(f"{game}/rounds/1/revisions", {"reason": "a second export"}), 201)
    done(host.post(f"{game}/rounds", {"closes": closes}), 201)
    done(host.post(f"{game}/rounds/2/open"))
    service.clock.go_on(minutes=10)
    written = (service.clock.now - timedelta(minutes=5)).isoformat()
    votes_now = ((f"viewer {word}", written, word) for word in ("13", "15", "nice!", *words))
    done(host.hand_in(f"{game}/rounds/2/batches", csv(*votes_now)), 201)
    template = {"text": "Round $round! $choose"}
    done(host.put(f"{game}/templates/opening", template))


def _log(service: Service) -> None:
    game = f"/games/{PLAYED}"
    done(service.host.post(f"{game}/mystery/aliases", {"alias": "Lantern Clock at Vesper"}), 201)
    shows = ["page", "chart", "forecast", "next round", "picture", "update"]
    done(service.host.put(f"{game}/pace/plan", {"every": 4_900, "shows": shows}))
    [page] = done(service.viewer.get(game))["pages"]["in_hand"]
    entries = [{"day": "2026-03-01", "page": page, "stitches": 400}]
    entries.append({"day": "2026-03-01", "piece": "The winter runner", "stitches": 90})
    done(service.host.post(f"{game}/pace/log", {"entries": entries}), 201)


def _end(service: Service) -> None:
    host, game = service.host, f"/games/{OVER}"
    done(host.post(f"{game}/guesses/winner"), 201)
    done(host.post(f"{game}/prize/pass-on", {"declined": "no room on her wall"}), 201)
    done(host.post(f"{game}/prize/asked-for", {"asked_for": "the sea green one"}))
    done(host.post(f"{game}/rounds/2/close"))
    done(host.post(f"{game}/rounds/2/announce"))
    done(host.post(f"{game}/mystery/reveal"))


def _known(service: Service) -> dict[str, list[str | int]]:
    keys = []
    for slug, number in ((PLAYED, 1), (PLAYED, 2), (TIED, 1), (OVER, 1)):
        listed = done(service.host.get(f"/games/{slug}/rounds/{number}/comments"))
        keys += [comment["key"] for comment in listed]
    return {
        "game": [PLAYED, TIED, DRAWN, DRAFTED, OVER],
        "number": [1, 2],
        "page": [13, 14, 1, 63],
        "key": keys,
        "name": [SPARE],
        "voter": ["Ebbe", "viewer 1"],
        "revision": [1, 2],
        "kind": ["not-found", "wrong-state"],
        "watch": ["an-import"],
    }


def _rows_in(settings: Settings) -> dict[str, list[dict[str, Any]]]:
    engine = make_engine(settings)
    with engine.connect() as connection:
        rows = {
            table.name: [dict(row) for row in connection.execute(select(table)).mappings()]
            for table in metadata.sorted_tables
        }
    engine.dispose()
    return rows


class App:
    """The app as a server has it; `renew` sets its database, its time and all it keeps back.

    Time goes on by half a minute with each request.
    """

    def __init__(self, world: World) -> None:
        self.world = world
        self.asked = 0
        self._due = True
        self._clock = Clock()
        # One app for all: it makes its routes when it is first asked, which takes a second.
        self._app = create_app(world.settings, local_token=HOST_TOKEN, clock=self._clock)
        self._lifespan = self._app.router.lifespan_context(self._app)
        self._runner = asyncio.Runner()
        self._runner.run(self._lifespan.__aenter__())

    def renew(self) -> None:
        """Set everything back before the next request."""
        self._due = True

    def close(self) -> None:
        """Close the database."""
        self._app.state.wiring.database.dispose()
        self._runner.run(self._lifespan.__aexit__(None, None, None))
        self._runner.close()

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        if scope["type"] != "http":
            await _live(receive, send)
            return
        if self._due:
            self._put_back()
        self.asked += 1
        self._due = self.asked % LASTS == 0
        self._clock.go_on(seconds=30)
        await self._app(scope, receive, send)

    def _put_back(self) -> None:
        wiring = self._app.state.wiring
        wiring.database.dispose()
        _put_back(self.world)
        # What is kept in the process is kept by the engine.
        self._app.state.wiring = replace(wiring, database=Database(self.world.settings))
        self._clock.now = self.world.clock.now


async def _live(receive: Receive, send: Send) -> None:
    """What a server's own beginning and end are answered with: the app has its own."""
    while True:
        message = await receive()
        await send({"type": f"{message['type']}.complete"})
        if message["type"] == "lifespan.shutdown":
            return


def _put_back(world: World) -> None:
    engine = make_engine(world.settings)
    with engine.begin() as connection:
        for table in reversed(metadata.sorted_tables):
            connection.execute(delete(table))
        for table in metadata.sorted_tables:
            if world.rows[table.name]:
                connection.execute(insert(table), list(world.rows[table.name]))
    engine.dispose()
