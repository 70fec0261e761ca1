"""The client makes every refusal one sentence and a status, whoever answers."""

from __future__ import annotations

import threading
from collections.abc import Iterator
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path

import pytest

from tests.scripts.running import run_script, sentences


class Stranger(BaseHTTPRequestHandler):
    """A server that is no Loopstart: it answers with the status named in the path."""

    def do_GET(self) -> None:
        status = int(self.path.rsplit("/", 1)[1])
        content = b"<html>hello</html>"
        self.send_response(status)
        self.send_header("Content-Length", str(len(content)))
        self.end_headers()
        self.wfile.write(content)

    def log_message(self, format: str, *args: object) -> None:  # noqa: A002 - its name there
        del format, args


@pytest.fixture(scope="module")
def stranger() -> Iterator[str]:
    with ThreadingHTTPServer(("127.0.0.1", 0), Stranger) as server:
        threading.Thread(target=server.serve_forever, daemon=True).start()
        yield f"http://127.0.0.1:{server.server_port}"
        server.shutdown()


@pytest.mark.parametrize(
    ("answered", "status"), [(200, 1), (404, 2), (418, 2), (401, 3), (403, 3), (500, 1), (302, 1)]
)
def test_a_server_that_is_no_loopstart_is_one_sentence(
    stranger: str, answered: int, status: int
) -> None:
    told = run_script("ask.py", "GET", f"/{answered}", "--server", stranger)
    assert (told.returncode, told.stdout) == (status, "")
    [sentence] = sentences(told.stderr)
    assert stranger in sentence
    assert "check that this is the address of a Loopstart server" in sentence


@pytest.mark.parametrize(
    "url", ["harbour", "ftp://hall.example", "http://", "http://hall.example:port", "http://[::1"]
)
def test_what_is_no_address_of_a_server_is_one_sentence(url: str) -> None:
    told = run_script("ask.py", "GET", "/games", "--server", url)
    assert told.returncode == 2
    [sentence] = sentences(told.stderr)
    assert "is no address" in sentence


@pytest.mark.parametrize(
    ("words", "given", "said"),
    [
        pytest.param(("LOOK", "/games"), b"", "LOOK", id="no such method"),
        pytest.param(("POST", "/games", "-"), b"{", "- holds no JSON", id="no JSON"),
        pytest.param(("POST", "/games", "-"), b"[" * 9999, "- holds no JSON", id="too deep"),
        pytest.param(("POST", "/games", "/no/such.json"), b"", "such.json", id="no file"),
        pytest.param(("GET", "/games", "--export", "x"), b"", "--export", id="an export to read"),
        pytest.param(
            ("POST", "/games", "--export", "x", "--field", "a"),
            b"",
            "NAME=VALUE",
            id="half a field",
        ),
    ],
)
def test_a_request_that_cannot_be_asked_is_one_sentence(
    words: tuple[str, ...], given: bytes, said: str
) -> None:
    told = run_script("ask.py", *words, given=given)
    assert (told.returncode, told.stdout) == (2, "")
    [sentence] = sentences(told.stderr)
    assert said in sentence


def test_an_address_with_a_line_break_is_one_sentence() -> None:
    run = run_script("ask.py", "GET", "/games/a\nb", "--server", "http://127.0.0.1:9")
    assert run.returncode == 2
    assert len(sentences(run.stderr)) == 1


def test_what_is_no_json_is_one_sentence(tmp_path: Path) -> None:
    file = tmp_path / "game.json"
    file.write_text('{"name": NaN}', "utf-8")
    run = run_script("ask.py", "POST", "/games", str(file), "--server", "http://127.0.0.1:9")
    assert run.returncode == 2
    assert len(sentences(run.stderr)) == 1


def test_a_token_with_letters_that_no_token_has_is_one_sentence() -> None:
    run = run_script("ask.py", "GET", "/games", "--server", "http://127.0.0.1:9", "--token", "bäd")
    assert run.returncode == 3
    assert len(sentences(run.stderr)) == 1
