"""The answer is told to nobody before the reveal: a whole game is played, and all of it searched.

Every address of the OpenAPI document is asked, so that what is added later is searched as well.
"""

from __future__ import annotations

import gzip
import io
import logging
import re
import struct
import sys
import threading
import zipfile
import zlib
from collections.abc import Iterator
from contextlib import contextmanager
from time import perf_counter
from types import FrameType
from typing import Any

import pytest
from sqlalchemy import text

from service.pages.statics import static_address, statics
from tests.api.asking import GAME, PATH, ROUND, csv, done, make_game
from tests.api.conftest import Caller, Service
from tests.api.guessing import MAREN, ODD, PRIZE, TITLE, TOVE, WRONG, hand_in, rule
from tests.api.searching import Secret
from tests.api.test_every_route import address, operations
from tests.pages.conftest import page_routes

Json = Any
NOTED = "Gnomon of Uttermarch"
WORDS = ("astrolabe", "skerrymouth", "tarnished", "quarmby", "farewell", "gnomon", "uttermarch")


def play_to_the_winner(service: Service) -> list[str]:
    """Everything that a host does up to the reveal; answers what was refused on the way."""
    host = service.host
    make_game(host, guesses_open=None, guesses_per_voter=2)
    done(host.put(f"{PATH}/prize", PRIZE))
    done(host.post(f"{PATH}/guesses/open"))
    done(host.post(f"{PATH}/rounds", {"closes": "2026-03-01T20:00"}), 201)
    done(host.post(f"{ROUND}/open"))
    service.clock.go_on(hours=2)
    doubtful = ("Una", "2026-03-01T18:20:00Z", "Astrolabe of Skerrymouth")
    vote = ("Ebbe", "2026-03-01T18:21:00Z", "13 please")
    hand_in(service, WRONG, doubtful, vote, MAREN, TOVE, ODD)
    done(host.post(f"{PATH}/mystery/aliases", {"alias": NOTED}), 201)
    messages = refused(service)
    rule(service, "Una", outcome="none")
    done(host.post(f"{ROUND}/close"))
    done(host.post(f"{ROUND}/announce"))
    log_stitches(service)
    done(host.post(f"{PATH}/guesses/winner"), 201)
    done(host.post(f"{PATH}/prize/pass-on", {"declined": "no room on her wall"}), 201)
    done(host.post(f"{PATH}/prize/asked-for", {"asked_for": "the sea green one"}))
    done(host.post(f"{PATH}/prize/sent"))
    return messages


def log_stitches(service: Service) -> None:
    """The stitch log, shown to everybody as far as can be; another piece is named like the answer."""
    host = service.host
    shows = ["page", "chart", "forecast", "next round", "picture", "update"]
    done(host.put(f"{PATH}/pace/plan", {"every": 4_900, "shows": shows}))
    entries = [
        {"day": "2026-03-01", "page": 13, "stitches": 400, "note": TITLE},
        {"day": "2026-03-01", "piece": f"{TITLE} in blue", "stitches": 90},
    ]
    done(host.post(f"{PATH}/pace/log", {"entries": entries}), 201)
    told = done(host.get(f"{PATH}/pace/update"))
    assert told["text"] == ""
    assert told["stopped"].startswith("the name of another piece gives the sealed answer")


def refused(service: Service) -> list[str]:
    """Errors on the way: each tries to have the answer said in public, or to change it."""
    host = service.host
    answers = [
        host.patch(PATH, {"name": f"Is it {TITLE}?"}),
        host.put(f"{PATH}/answer", {"title": TITLE}),
        host.post(f"{PATH}/mystery/aliases", {"alias": NOTED}),
        host.post("/games", GAME | {"slug": "the-astrolabe"}),
        host.put(f"{PATH}/prize", PRIZE | {"offer": "an astrolabe"}),
        host.post(f"{PATH}/mystery/reveal"),
        host.post(f"{PATH}/mystery/reveal", {"a": 1}),
    ]
    assert all(answer.status_code in {409, 422} for answer in answers)
    return [answer.text for answer in answers]


def everything_told(
    caller: Caller, asked: dict[tuple[str, str], Json]
) -> Iterator[tuple[str, bytes]]:
    """All answers to this caller, with their headers and names: of the API, and every page."""
    more = [f"/api{PATH}?answer=1", f"/api{PATH}/answer", "/api/none", "/docs"]
    pictures = [f"{PATH}/map", *(f"{ROUND}/{each}" for each in ("map", "tally", "votes-by-day"))]
    more += [f"/api{each}.{ending}?theme=dark" for each in pictures for ending in ("svg", "png")]
    more += [f"/api{PATH}/map.png?shape={shape}" for shape in ("square", "wide", "video")]
    more += [f"/api{ROUND}/closing.ics?alarm=60", "/openapi.json"]
    more += [f"{PATH}{query}" for query in ("?plain", "?plain=dark", "?answer=1")]
    more += [static_address(name) for name in statics()] + ["/desk/sign-in?then=/desk"]
    paths = {path for _, path in asked} | {route.path for route in page_routes()}
    addresses = {address(path) for path in paths} | {*more}
    for each in sorted(addresses):
        for method in ("GET", "HEAD", "DELETE", "POST"):
            answer = caller.ask(method, each)
            headers = "\n".join(f"{name}: {value}" for name, value in answer.headers.items())
            yield f"{method} {each}", headers.encode() + b"\n\n" + answer.content


@pytest.mark.parametrize("who", ["viewer", "collector"])
def test_nothing_that_can_be_got_tells_the_answer_before_the_reveal(
    service: Service, caplog: pytest.LogCaptureFixture, who: str
) -> None:
    caplog.set_level(logging.DEBUG)
    messages = play_to_the_winner(service)
    secret = secret_of(service)
    caller = service.viewer if who == "viewer" else service.collector()
    told = dict(everything_told(caller, operations(service)))
    assert len(told) > 200
    assert b"Rounds until now" in told[f"GET {PATH}"]
    assert {where: found for where, each in told.items() if (found := secret.found_in(each))} == {}
    words = service.host.get(f"{PATH}/mystery/announcements")
    assert len(done(words)) >= 5
    stopped = service.host.get(f"{PATH}/pace/update")
    for shown in (words, stopped, service.host.get(f"{PATH}/prize"), service.host.get("/games")):
        assert secret.found_in(shown.content) == set()
    for message in messages:
        assert secret.found_in(message) == set()
    assert secret.found_in(caplog.text) == set()
    folder = service.app.state.wiring.settings.data_folder
    assert secret.found_in("\n".join(str(file) for file in folder.rglob("*"))) == set()


def secret_of(service: Service) -> Secret:
    """What nobody may learn of the game: names, and the salts of the seals."""
    with service.app.state.wiring.database.engine.connect() as connection:
        asked = "SELECT salt FROM answers UNION ALL SELECT salt FROM alias_notes"
        salts = [bytes(row[0]) for row in connection.execute(text(asked))]
    assert len(salts) == 2
    return Secret(WORDS, [salt.hex() for salt in salts])


def test_the_search_finds_the_answer_once_it_is_revealed(service: Service) -> None:
    """The same search, so that finding nothing before means something."""
    play_to_the_winner(service)
    done(service.host.post(f"{PATH}/mystery/reveal"))
    secret = secret_of(service)
    told = dict(everything_told(service.viewer, operations(service)))
    found = {where: secret.found_in(each) for where, each in told.items()}
    # The paragraph of the update post was stopped before, for a piece named like the answer.
    assert {where for where, seen in found.items() if seen} == {
        f"GET /api{PATH}/mystery/reveal",
        f"GET /api{PATH}/progress",
        f"GET {PATH}",
        f"GET {PATH}?answer=1",
    }
    assert found[f"GET {PATH}"] == secret.words
    assert found[f"GET /api{PATH}/mystery/reveal"] == secret.words | secret.exact


def png(*chunks: tuple[bytes, bytes]) -> bytes:
    packed = b"\x89PNG\r\n\x1a\n"
    for kind, data in chunks:
        packed += struct.pack(">I", len(data)) + kind + data + bytes(4)
    return packed


def zipped(name: str, content: str) -> bytes:
    with io.BytesIO() as held:
        with zipfile.ZipFile(held, "w", zipfile.ZIP_DEFLATED) as archive:
            archive.writestr(name, content)
        return held.getvalue()


PLANTED: list[Any] = [
    pytest.param(b"An ASTROLABE.", id="plain"),
    pytest.param(b"the-astrolabs.png", id="near, as a file's name"),
    pytest.param(b"q=%41strolabe", id="in an address"),
    pytest.param(b"As&#116;rolabe", id="in a page"),
    pytest.param(b'"\\u0061strolabe"', id="escaped in JSON"),
    pytest.param("Aströlabé".encode(), id="with accents"),
    pytest.param("astrolabe".encode("utf-16-le"), id="in UTF-16"),
    pytest.param(b"thetarnishedastrolabe", id="run together"),
    pytest.param(png((b"tEXt", b"Title\0Astrolabe")), id="metadata of a picture"),
    pytest.param(png((b"zTXt", b"T\0\0" + zlib.compress(b"Astrolabe"))), id="packed metadata"),
    pytest.param(
        b"a: b\n\n" + png((b"IDAT", b"x"), (b"zTXt", b"T\0\0" + zlib.compress(b"Astrolabe"))),
        id="packed metadata of an answer",
    ),
    pytest.param(gzip.compress(b"Astrolabe"), id="packed"),
    pytest.param(zipped("a.txt", "Astrolabe"), id="in an archive"),
    pytest.param(zipped("Astrolabe.txt", ""), id="name in an archive"),
]


@pytest.mark.parametrize("planted", PLANTED)
def test_a_planted_word_is_found(planted: bytes) -> None:
    assert "astrolabe" in Secret(WORDS).found_in(planted)
    assert Secret(WORDS, ["ab" * 32]).found_in(b"a trombone, a labour, AB" + b"AB" * 30) == set()


@contextmanager
def traced() -> Iterator[list[str]]:
    """The functions of the service that run, in their order, in every thread."""
    calls: list[str] = []

    def note(frame: FrameType, event: str, _: object) -> None:
        if event == "call" and "service" in (name := frame.f_code.co_filename):
            calls.append(f"{name}:{frame.f_code.co_name}")

    threading.setprofile(note)
    sys.setprofile(note)
    try:
        yield calls
    finally:
        sys.setprofile(None)
        threading.setprofile(None)


#: As long as one another, so that nothing but the answer differs.
RIGHT_GUESS = "Is it The Tarnished Astrolabe of Skerrymouth?"
WRONG_GUESS = "Is it The Abandoned Shipyards under Sundowns?"


def open_game(service: Service, slug: str) -> str:
    """Another game with an open round, which is answered."""
    make_game(service.host, slug=slug)
    done(service.host.post(f"/games/{slug}/rounds", {}), 201)
    done(service.host.post(f"/games/{slug}/rounds/1/open"))
    return f"/games/{slug}/rounds/1"


def test_a_right_guess_is_answered_by_the_same_steps_as_a_wrong_one(service: Service) -> None:
    """Handed in by a collector: the service runs the same functions, and none of the mystery's."""
    collector = service.collector()
    steps = []
    for slug, words in (("warm-up", WRONG_GUESS), ("one", WRONG_GUESS), ("two", RIGHT_GUESS)):
        opened = open_game(service, slug)
        export = csv(("a viewer", "2026-03-01T19:00:00Z", words))
        with traced() as calls:
            done(collector.hand_in(f"{opened}/batches", export), 201)
        steps.append([call for call in calls if "/api/" in call or "/store/" in call])
        assert len(calls) > 50
        assert not [call for call in calls if re.search(r"[\\/]mystery[\\/]", call)]
    assert steps[1] == steps[2]


def test_a_right_guess_is_answered_as_fast_as_a_wrong_one(service: Service) -> None:
    """Handed in by turns: of all pairs, the right one is the slower in about half.

    With 24 of each and no difference the share lies between 0.2 and 0.8 but in one run of some
    three thousand (Mann and Whitney 1947: a standard deviation of 0.084).
    """
    assert len(RIGHT_GUESS) == len(WRONG_GUESS)
    opened = open_game(service, "one")
    collector = service.collector()
    took: dict[str, list[float]] = {RIGHT_GUESS: [], WRONG_GUESS: []}
    for turn in range(50):
        words = (RIGHT_GUESS, WRONG_GUESS)[(turn + turn // 2) % 2]
        export = csv((f"viewer {turn:02}", "2026-03-01T19:00:00Z", words))
        before = perf_counter()
        done(collector.hand_in(f"{opened}/batches", export), 201)
        if turn > 1:
            took[words].append(perf_counter() - before)
    pairs = [(right, wrong) for right in took[RIGHT_GUESS] for wrong in took[WRONG_GUESS]]
    slower = sum(right > wrong for right, wrong in pairs) / len(pairs)
    assert 0.2 < slower < 0.8


def test_public_facts_do_not_depend_on_whether_a_guess_is_right(service: Service) -> None:
    """The same game with a right and with a wrong guess looks the same from outside."""
    seen = []
    for slug, words in (("one", RIGHT_GUESS), ("two", WRONG_GUESS)):
        opened, game = open_game(service, slug), f"/games/{slug}"
        export = csv(("viewer", "2026-03-01T19:00:00Z", words))
        done(service.host.hand_in(f"{opened}/batches", export), 201)
        done(service.host.get(f"{game}/guesses"))
        seen.append(
            [
                done(service.viewer.get(f"{game}{what}")) | {"seal": "", "slug": "", "game": ""}
                for what in ("", "/mystery", "/rounds/1")
            ]
        )
    assert seen[0] == seen[1]
    assert seen[0][1]["winner_announced"] is None


STOPPED: list[Any] = [
    pytest.param("UPDATE games SET name = 'The Astrolabe game'", "the game's name", id="name"),
    pytest.param("UPDATE prizes SET offer = 'an astrolabe'", "what the prize offers", id="prize"),
    pytest.param("UPDATE winners SET author = 'Quarmby'", "the winner's name", id="winner"),
]


@pytest.mark.parametrize(("change", "what"), STOPPED)
def test_an_announcement_that_would_tell_the_answer_is_stopped(
    service: Service, change: str, what: str
) -> None:
    play_to_the_winner(service)
    secret = secret_of(service)
    with service.app.state.wiring.database.engine.begin() as connection:
        connection.execute(text(change))
    told = done(service.host.get(f"{PATH}/mystery/announcements"))
    stopped = [one for one in told if one["stopped"]]
    assert stopped
    for one in stopped:
        assert one["text"] == ""
        assert one["stopped"].startswith(f"{what} gives the sealed answer")
    assert secret.found_in(str([one["text"] for one in told if not one["stopped"]])) == set()
