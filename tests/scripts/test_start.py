"""start.py as a person meets it: the demo, the own games, a taken port, Ctrl-C."""

from __future__ import annotations

import os
import re
import signal
import socket
import subprocess
import sys
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

import httpx
import pytest
from serving import take_port

from tests.scripts.running import LEFT_OUT, ROOT, run_script, sentences

TOKEN = re.compile(r"^  (?P<token>[\w-]{40,})$", re.MULTILINE)
DESK_LINK = re.compile(r"^  (?P<link>http://[\d.]+:\d+/desk/link/[\w-]+)$", re.MULTILINE)
SERVED = re.compile(r"Serving on (?P<url>http://[\d.]+:\d+)")


@dataclass
class Server:
    """A running start.py and what it printed until it served."""

    process: subprocess.Popen[str]
    printed: str

    @property
    def url(self) -> str:
        found = SERVED.search(self.printed)
        assert found is not None, self.printed
        return found["url"]

    @property
    def token(self) -> str:
        found = TOKEN.search(self.printed)
        assert found is not None, self.printed
        return found["token"]

    def stop(self) -> str:
        """Ctrl-C; answers what was printed then."""
        self.process.send_signal(signal.SIGINT)
        try:
            return self.process.communicate(timeout=60)[0]
        finally:
            self.process.kill()
            self.process.wait()


def start(*arguments: str, **environment: str) -> Server:
    inherited = {name: value for name, value in os.environ.items() if name not in LEFT_OUT}
    process = subprocess.Popen(  # noqa: S603 - the project's own script
        [sys.executable, str(ROOT / "scripts" / "start.py"), "--port", "0", *arguments],
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        text=True,
        env=inherited | environment,
    )
    assert process.stdout is not None
    printed = ""
    for line in process.stdout:
        printed += line
        if line.startswith("Ctrl-C"):
            break
    return Server(process, printed)


@pytest.fixture(scope="module")
def demo(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Server]:
    server = start("--demo", TMPDIR=str(tmp_path_factory.mktemp("demo")))
    yield server
    server.stop()


def test_the_demo_prints_the_result_that_was_counted_by_hand(demo: Server) -> None:
    printed = demo.printed
    for words in (
        "6 comments needed a look, and the host ruled:",
        "  32       6   ",
        "  41       6   ",
        "Tie-break 1: most joined edges",
        "Tie-break 2: reached first",
        "Page 41 wins with 6 votes",
        "Announcement, ready to paste",
        "First right guess: petrel in a teacup, 2026-03-14 12:10:31 UTC",
        "The stitch log on Wednesday 25 March 2026, 10 entries.",
        "Page 41: 3,415 of 4,200 stitches, 81.3 %.",
        "Page 41 should be finished around Saturday 28 March 2026",
        "Open the next round on Wednesday 25 March 2026.",
        "2,050 on “The winter runner”",
        "the demo game; database sqlite",
        "loopstart.toml",
    ):
        assert words in printed
    assert printed.index("Tie-break 1") < printed.index("Page 41 wins")


def test_the_demo_serves_its_game_and_pages_that_load_nothing_from_elsewhere(demo: Server) -> None:
    game = httpx.get(f"{demo.url}/api/games/gustray").json()
    assert game["pages"]["in_hand"] == [41]
    # The demo goes on at its own time, in which its log is fresh.
    progress = httpx.get(f"{demo.url}/api/games/gustray/progress").json()
    assert progress["finish"]["middle"] == "2026-03-28"
    page = httpx.get(f"{demo.url}/docs")
    assert page.status_code == 200
    sources = re.findall(r"""(?:src|href)\s*=\s*["']([^"']+)""", page.text)
    assert sources
    assert not [source for source in sources if "//" in source]
    loaded = [httpx.get(f"{demo.url}{source}") for source in sources if source.startswith("/")]
    assert all(each.status_code == 200 for each in loaded)


def test_the_link_that_it_prints_opens_the_desk_once(demo: Server) -> None:
    """By the real clock, whatever time the demo has; the board shows the demo's first round."""
    found = DESK_LINK.search(demo.printed)
    assert found is not None, demo.printed
    assert "signs one browser in, once" in demo.printed
    with httpx.Client(follow_redirects=True) as browser:
        page = browser.get(found["link"]).text
        token = re.search(r'name="form_token" value="(\w+)"', page)
        assert token is not None
        desk = browser.post(found["link"], data={"form_token": token[1]})
        assert "The piece in the drawer" in desk.text
        assert desk.url.path == "/desk"
        again = browser.get("/".join((demo.url, "games", "gustray"))).text
        assert "Round 1: page 41" in again
    with httpx.Client(follow_redirects=True) as other:
        token = re.search(r'name="form_token" value="(\w+)"', other.get(found["link"]).text)
        assert token is not None
        refused = other.post(found["link"], data={"form_token": token[1]})
        assert refused.status_code == 403
        assert "used already" in refused.text


@pytest.mark.parametrize(
    ("address", "warns"),
    [("127.0.0.1", False), ("::1", False), ("0.0.0.0", True), ("::", True)],  # noqa: S104 - nothing is served
)
def test_a_start_that_others_can_reach_warns(tmp_path: Path, address: str, *, warns: bool) -> None:
    told = run_script(
        "start.py", "--no-serve", "--host", address,
        environment={"LOOPSTART_DATA_FOLDER": str(tmp_path)},
    )  # fmt: skip
    assert told.returncode == 0
    assert ("not encrypted" in told.stdout) == warns


def test_a_server_is_asked_with_a_token(demo: Server, tmp_path: Path) -> None:
    export = tmp_path / "comments.csv"
    export.write_text("author,posted,text\nMaren,2026-03-13T19:00:00Z,page 7 please\n")
    told = run_script(
        "tally.py", export, "--chart", "4x3", "--zone", "Atlantic/Faroe",
        "--opens", "2026-03-13T18:00", "--server", demo.url, "--token", demo.token,
    )  # fmt: skip
    assert (told.returncode, told.stderr) == (0, "")
    assert "   7       1   Maren" in told.stdout


@pytest.mark.parametrize(
    ("token", "words"),
    [
        pytest.param((), "carries no token", id="none"),
        pytest.param(("--token", "made-up"), "not known here", id="wrong"),
    ],
)
def test_a_token_that_is_missing_or_wrong_is_one_sentence_and_status_3(
    demo: Server, token: tuple[str, ...], words: str
) -> None:
    told = run_script("ask.py", "GET", "/games", "--server", demo.url, *token)
    assert (told.returncode, told.stdout) == (3, "")
    [sentence] = sentences(told.stderr)
    assert words in sentence


def test_a_stored_round_is_counted_from_a_server(demo: Server) -> None:
    told = run_script(
        "tally.py", "--game", "gustray", "--round", "1", "--server", demo.url, "--token", demo.token
    )
    assert told.returncode == 0
    assert "Page 41 wins with 6 votes" in told.stdout


def test_a_collector_may_hand_in_and_nothing_else(demo: Server) -> None:
    at = ("--server", demo.url, "--token", demo.token)
    made = run_script("tokens.py", "make", "gatherer", "--role", "collector", *at)
    found = TOKEN.search(made.stdout)
    assert found is not None
    told = run_script("ask.py", "GET", "/games", "--server", demo.url, "--token", found["token"])
    assert told.returncode == 3
    assert "collector's" in told.stderr
    assert run_script("tokens.py", "delete", "gatherer", *at).returncode == 0
    assert "gatherer" not in run_script("tokens.py", *at).stdout


def test_ctrl_c_ends_the_demo_cleanly_and_leaves_nothing(tmp_path: Path) -> None:
    server = start("--demo", TMPDIR=str(tmp_path))
    assert list(tmp_path.glob("loopstart-demo-*"))
    said = server.stop()
    assert server.process.returncode == 0
    assert "Traceback" not in said
    assert not list(tmp_path.glob("loopstart-demo-*"))


def test_the_host_s_token_is_made_at_the_first_start_and_shown_once(tmp_path: Path) -> None:
    environment = {"LOOPSTART_DATA_FOLDER": str(tmp_path)}
    first = run_script("start.py", "--no-serve", environment=environment)
    assert TOKEN.search(first.stdout)
    assert f"your own games; database sqlite:///{tmp_path}/loopstart.sqlite3" in first.stdout
    second = run_script("start.py", "--no-serve", environment=environment)
    assert second.returncode == 0
    assert not TOKEN.search(second.stdout)
    assert second.stdout == first.stdout.splitlines(keepends=True)[0]


def test_a_whole_round_can_be_run_from_the_terminal(tmp_path: Path) -> None:
    environment = {"LOOPSTART_DATA_FOLDER": str(tmp_path)}
    assert run_script("start.py", "--no-serve", environment=environment).returncode == 0

    def ask(*words: str | Path, given: bytes = b"") -> str:
        told = run_script("ask.py", *words, given=given, environment=environment)
        assert told.returncode == 0, told.stderr
        return told.stdout

    export = tmp_path / "comments.csv"
    export.write_text("author,posted,text\nMaren,2026-03-13T19:00:00Z,page 7 please\n")
    game = b'{"slug": "harbour", "name": "H", "zone": "UTC", "chart": {"columns": 4, "rows": 3}}'
    ask("POST", "/games", "-", given=game)
    times = b'{"opens": "2026-03-13T18:00", "closes": "2026-03-15T18:00"}'
    ask("POST", "/games/harbour/rounds", "-", given=times)
    ask("POST", "/games/harbour/rounds/1/open")
    ask("POST", "/games/harbour/rounds/1/batches", "--export", export)
    ask("POST", "/games/harbour/rounds/1/close")
    told = run_script("tally.py", "--game", "harbour", "--round", "1", environment=environment)
    assert "Page 7 wins with 1 vote" in told.stdout
    assert '"winner": 7' in ask("POST", "/games/harbour/rounds/1/announce")


def test_an_answer_is_not_kept_back_until_its_beginning_was_received() -> None:
    """asyncio sends at once (TCP_NODELAY) only on sockets that say that they are TCP."""
    with take_port("127.0.0.1", 0) as taken:
        assert taken.proto == socket.IPPROTO_TCP
        with socket.create_connection(taken.getsockname()[:2]):
            accepted, _ = taken.accept()
            with accepted:
                assert accepted.proto == socket.IPPROTO_TCP


def test_a_taken_port_is_one_sentence(tmp_path: Path) -> None:
    with socket.create_server(("127.0.0.1", 0)) as taken:
        port = str(taken.getsockname()[1])
        told = run_script(
            "start.py", "--port", port, environment={"LOOPSTART_DATA_FOLDER": str(tmp_path)}
        )
    assert (told.returncode, told.stdout) == (2, "")
    [sentence] = sentences(told.stderr)
    assert f"{port} is taken" in sentence
    assert not list(tmp_path.iterdir())


@pytest.mark.parametrize(
    ("arguments", "environment", "words"),
    [
        pytest.param(("--port", "soon"), {}, "--port", id="no number"),
        pytest.param(("--port", "70000"), {}, "PORT", id="no port"),
        pytest.param(("--host", "not.an.address.example"), {}, "--host", id="no address"),
        pytest.param((), {"LOOPSTART_PRT": "1"}, "LOOPSTART_PORT", id="a slip in a setting"),
        pytest.param((), {"DATABASE_URL": "harbour"}, "DATABASE_URL", id="no database"),
        pytest.param(
            ("--no-serve",),
            {"DATABASE_URL": "postgresql://nobody@127.0.0.1:9/none"},
            "cannot be opened",
            id="a database that does not answer",
        ),
    ],
)
def test_what_cannot_be_started_is_one_sentence(
    arguments: tuple[str, ...], environment: dict[str, str], words: str
) -> None:
    told = run_script("start.py", *arguments, environment=environment)
    assert (told.returncode, told.stdout) == (2, "")
    [sentence] = sentences(told.stderr)
    assert words in sentence


def test_a_game_that_is_not_there_is_one_sentence(tmp_path: Path) -> None:
    environment = {"LOOPSTART_DATA_FOLDER": str(tmp_path)}
    before = run_script("ask.py", "GET", "/games/harbour", environment=environment)
    assert before.returncode == 1
    assert "scripts/start.py" in sentences(before.stderr)[0]
    run_script("start.py", "--no-serve", environment=environment)
    told = run_script("ask.py", "GET", "/games/harbour", environment=environment)
    assert told.returncode == 2
    [sentence] = sentences(told.stderr)
    assert "no game 'harbour'" in sentence
