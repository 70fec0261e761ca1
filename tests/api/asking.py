"""A game played through the API, and what every refusal must look like."""

from __future__ import annotations

import re
from typing import Any

import httpx
from sqlalchemy import select

from service.store.columns import metadata
from service.store.engine import make_engine
from tests.api.conftest import Caller, Service

Json = Any

GAME: Json = {
    "slug": "windy-island",
    "name": "The windy island's mystery",
    "zone": "Atlantic/Faroe",
    "chart": {"columns": 9, "rows": 7},
    "hosts": ["Island Guild"],
    "guesses_open": "2026-03-01T18:00:00Z",
    "answer": {
        "title": "The Tarnished Astrolabe of Skerrymouth",
        "designer": "Wenna Quarmby",
        "aliases": ["Pilot's Farewell"],
    },
}
PATH = "/games/windy-island"
ROUND = f"{PATH}/rounds/1"
QUESTION: Json = {
    "chart": {"columns": 9, "rows": 7},
    "zone": "Atlantic/Faroe",
    "opens": "2026-03-01T18:00",
    "closes": "2026-03-04T18:00",
}


def csv(*comments: tuple[str, str, str]) -> str:
    """An export: author, RFC 3339 time and words of each comment."""
    lines = ["Name,Time,Comment"]
    for author, time, words in comments:
        quoted = words.replace('"', '""')
        lines.append(f'"{author}",{time},"{quoted}"')
    return "\r\n".join(lines) + "\r\n"


def votes(*words: str) -> str:
    """An export of one comment a word, each by another viewer, a second apart from 19:00 UTC on."""
    return csv(
        *(
            (f"viewer {number}", f"2026-03-01T19:{number // 60:02}:{number % 60:02}Z", each)
            for number, each in enumerate(words)
        )
    )


def done(answer: httpx.Response, status: int = 200) -> Json:
    """The JSON of an answer that must have succeeded."""
    assert answer.status_code == status, answer.text
    return answer.json() if answer.content else None


def make_game(host: Caller, **other: Json) -> Json:
    return done(host.post("/games", GAME | other), 201)


def open_round(service: Service, **rules: Json) -> Json:
    """Round 1 of a new game, open from 18:00 UTC on, an hour after which it is now 20:00."""
    make_game(service.host)
    done(service.host.post(f"{PATH}/rounds", rules), 201)
    opened = done(service.host.post(f"{ROUND}/open"))
    service.clock.go_on(hours=2)
    return opened


def assert_problem(answer: httpx.Response, status: int, says: str = "") -> Json:
    """Problem details (RFC 9457, section 3): its members, and one sentence that says `says`."""
    assert answer.headers["content-type"] == "application/problem+json", answer.text
    problem = answer.json()
    assert answer.status_code == problem["status"] == status, problem
    assert {"type", "title", "status", "detail", "instance"} <= problem.keys()
    assert problem["instance"] == httpx.URL(str(answer.request.url)).raw_path.decode().split("?")[0]
    detail = problem["detail"]
    assert "\n" not in detail
    assert detail.endswith("."), detail
    assert re.search(says, detail), detail
    return problem


def everything_kept(service: Service) -> dict[str, list[tuple[Any, ...]]]:
    """Every row of every table, to be compared with what it was before."""
    settings = service.app.state.wiring.settings
    engine = make_engine(settings)
    try:
        with engine.connect() as connection:
            return {
                table.name: sorted(map(tuple, connection.execute(select(table))), key=repr)
                for table in metadata.sorted_tables
            }
    finally:
        engine.dispose()
