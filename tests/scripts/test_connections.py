"""A running server ends connections that do nothing, and believes only the proxies it is told of."""

from __future__ import annotations

import re
import socket
import time
from collections.abc import Iterator
from pathlib import Path

import httpx
import pytest

from tests.scripts.test_start import Server, start

#: In seconds. A connection may take up to twice as long to be cut off.
WAIT = 1
LONG = 20


@pytest.fixture(scope="module")
def impatient(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Server]:
    """A server that waits a second, and lets an address ask once a minute."""
    server = start(
        "--no-token",
        LOOPSTART_DATA_FOLDER=str(tmp_path_factory.mktemp("data")),
        LOOPSTART_SLOW_WAIT=str(WAIT),
        LOOPSTART_RATE_LIMIT="1",
    )
    yield server
    server.stop()


def connected(server: Server) -> socket.socket:
    url = httpx.URL(server.url)
    made = socket.create_connection((url.host, url.port or 80), timeout=LONG)
    made.settimeout(LONG)
    return made


def head_of(path: str, address: str, *more: str) -> bytes:
    lines = [f"GET {path} HTTP/1.1", "Host: x", f"X-Forwarded-For: {address}", *more]
    return "\r\n".join((*lines, "", "")).encode()


def answered(connection: socket.socket) -> bytes:
    """All that comes until the server ends the connection."""
    told = b""
    try:
        while piece := connection.recv(65_536):
            told += piece
    except ConnectionResetError:
        pass
    return told


@pytest.mark.parametrize(
    "sent", [b"", b"GET /api/health HT", b"GET /api/health HTTP/1.1\r\nHost: x\r\n"]
)
def test_a_connection_whose_request_does_not_come_is_cut_off(
    impatient: Server, sent: bytes
) -> None:
    with connected(impatient) as connection:
        began = time.monotonic()
        connection.sendall(sent)
        assert answered(connection) == b""
        assert time.monotonic() - began < LONG


def send_drop_by_drop(connection: socket.socket) -> None:
    for number in range(200):
        connection.sendall(f"X-{number}: 1\r\n".encode())
        time.sleep(0.1)


def test_a_head_that_comes_drop_by_drop_is_cut_off(impatient: Server) -> None:
    with connected(impatient) as connection:
        connection.sendall(b"GET /api/health HTTP/1.1\r\n")
        with pytest.raises((ConnectionResetError, BrokenPipeError)):
            send_drop_by_drop(connection)


def test_a_body_that_stands_still_is_told_so_and_cut_off(impatient: Server) -> None:
    with connected(impatient) as connection:
        head = head_of("/api/read", "198.51.100.1", "Content-Length: 1000").replace(b"GET", b"POST")
        connection.sendall(
            head.replace(b"\r\n\r\n", b"\r\nContent-Type: application/json\r\n\r\n{")
        )
        told = answered(connection)
        assert told.startswith(b"HTTP/1.1 408 ")
        assert b"came too slowly" in told


def test_a_head_of_more_than_32_kb_is_refused(impatient: Server) -> None:
    with connected(impatient) as connection:
        connection.sendall(head_of("/api/health", "198.51.100.2", "X-Long: " + "x" * 40_000))
        assert answered(connection)[:13] in {b"HTTP/1.1 400 ", b"HTTP/1.1 431 "}


def test_two_lengths_are_refused(impatient: Server) -> None:
    """Else a server in front could take a part of one request's body for a request of its own."""
    with connected(impatient) as connection:
        lengths = ("Content-Length: 5", "Content-Length: 6")
        connection.sendall(head_of("/api/health", "198.51.100.3", *lengths) + b"hello!")
        assert answered(connection).startswith(b"HTTP/1.1 400 ")


def test_the_server_does_not_tell_what_it_is_made_of(impatient: Server) -> None:
    told = httpx.get(f"{impatient.url}/api/health", headers={"X-Forwarded-For": "198.51.100.4"})
    assert "server" not in told.headers


def asked(server: Server, forwarded: str, times: int) -> list[int]:
    headers = {"X-Forwarded-For": forwarded}
    return [httpx.get(f"{server.url}/static/x", headers=headers).status_code for _ in range(times)]


def test_behind_a_trusted_server_each_viewer_is_counted_alone(impatient: Server) -> None:
    assert asked(impatient, "203.0.113.1", 2) == [404, 429]
    assert asked(impatient, "203.0.113.2", 1) == [404]
    # Whatever a viewer wrote into the header stands before what the server in front added.
    assert asked(impatient, "192.0.2.99, 203.0.113.1", 1) == [429]
    assert asked(impatient, "2001:db8::1", 2) == [404, 429]
    assert asked(impatient, "2001:db8::2", 1) == [429]


def test_from_elsewhere_the_header_is_not_believed(tmp_path: Path) -> None:
    server = start(
        "--no-token",
        LOOPSTART_DATA_FOLDER=str(tmp_path),
        LOOPSTART_RATE_LIMIT="1",
        LOOPSTART_TRUSTED_PROXIES="192.0.2.0/24",
    )
    try:
        told = [asked(server, f"203.0.113.{number}", 1)[0] for number in range(2)]
        assert told == [404, 429]
        page = httpx.get(f"{server.url}/desk/sign-in", headers={"X-Forwarded-Proto": "https"})
        assert page.status_code == 429
        assert "strict-transport-security" not in page.headers
    finally:
        assert re.search("Stopped", server.stop())
