"""Serves the app: takes the port first, says where it is, ends cleanly with Ctrl-C."""

import ctypes
import errno
import ipaddress
import signal
import socket
import sys
from collections.abc import Callable
from contextlib import suppress
from types import FrameType

import uvicorn
from connections import watched
from fastapi import FastAPI
from logs import log_as

from service.api.gate import LARGEST_HEAD
from service.errors import BadSetting
from service.settings import Settings

CONNECTIONS_A_REQUEST = 6
#: The number of this setting in glibc's malloc.h.
_M_ARENA_MAX = -8


def take_port(address: str, port: int) -> socket.socket:
    """The listening socket; port 0 takes any that is free.

    Raises:
        BadSetting: the port is taken, or the address is none of this computer's.
    """
    family = socket.AF_INET6 if ":" in address else socket.AF_INET
    try:
        made = socket.create_server((address, port), family=family)
    except (OSError, OverflowError) as trouble:
        number = getattr(trouble, "errno", None)
        if number == errno.EADDRINUSE:
            raise BadSetting(
                "port",
                f"{port} is taken on {address}",
                "stop the program that uses it, or add --port 0 for any that is free",
            ) from None
        if number == errno.EACCES:
            raise BadSetting(
                "port", f"this user may not take {port}", "give one above 1023, with --port"
            ) from None
        raise BadSetting(
            "address",
            f"{address} with port {port} cannot be served on here",
            "give --host 127.0.0.1 and a port from 0 to 65535",
        ) from None
    # Named as TCP: else asyncio lets each answer's second packet wait for the first one's receipt,
    # which a browser on the same computer sends only after 40 milliseconds.
    return socket.socket(family, socket.SOCK_STREAM, socket.IPPROTO_TCP, fileno=made.detach())


def is_loopback(address: str) -> bool:
    """Whether only this computer reaches what is served there."""
    try:
        return ipaddress.ip_address(address).is_loopback
    except ValueError:
        return address == "localhost"


def url_of(taken: socket.socket) -> str:
    """Where a browser on this computer finds what the socket serves."""
    address, port = taken.getsockname()[:2]
    ip = ipaddress.ip_address(address)
    if ip.is_unspecified:
        ip = ipaddress.ip_address("::1" if ip.version == 6 else "127.0.0.1")
    return f"http://[{ip}]:{port}" if ip.version == 6 else f"http://{ip}:{port}"


class TellingServer(uvicorn.Server):
    """A server that tells once it serves: from then on a Ctrl-C is sure to be heard."""

    def __init__(self, config: uvicorn.Config, tell: Callable[[], None]) -> None:
        super().__init__(config)
        self._tell = tell

    async def startup(self, sockets: list[socket.socket] | None = None) -> None:
        """Starts, and tells."""
        await super().startup(sockets)
        if self.started:
            self._tell()


def config_of(app: FastAPI | str, settings: Settings) -> uvicorn.Config:
    """How the app is served, or what makes it (by its name, for a process that is still to begin).

    It stays within limits, and believes only those proxies that are named.
    """
    return uvicorn.Config(
        app,
        factory=isinstance(app, str),
        lifespan="on",
        log_config=None,
        access_log=False,
        timeout_graceful_shutdown=settings.stop_wait,
        http=watched(settings.slow_wait),  # type: ignore[arg-type]  # it is only called
        ws="none",
        h11_max_incomplete_event_size=LARGEST_HEAD,
        # A browser keeps several connections open while it sends one request.
        limit_concurrency=CONNECTIONS_A_REQUEST * settings.at_once,
        forwarded_allow_ips=settings.trusted_proxies,
        server_header=False,
        workers=settings.workers,
    )


def keep_memory_together() -> None:
    """Have all threads share two pools of memory, before the first is begun.

    The C library of most Linux systems gives each thread one of its own, and what a large export took
    there stays: after a few of them, each read by another thread, a process would hold several times as
    much as it needs (mallopt(3), M_ARENA_MAX). Elsewhere nothing is done.
    """
    if sys.platform != "linux":
        return
    with suppress(OSError, AttributeError):  # another C library, which has no such pools
        ctypes.CDLL(None).mallopt(_M_ARENA_MAX, 2)


def serve(app: FastAPI, taken: socket.socket, tell: Callable[[], None], settings: Settings) -> int:
    """Serves until it is stopped, and calls `tell` once it does; the exit status.

    Stopped, it takes no new request and lets those that were begun end, for a while.

    Raises:
        KeyboardInterrupt: stopped with Ctrl-C, after what was begun has been tidied up.
    """
    log_as(settings.log)
    keep_memory_together()
    server = TellingServer(config_of(app, settings), tell)

    def end(number: int, frame: FrameType | None) -> None:
        """Also where a terminal is closed or the system ends, what was begun is tidied up."""
        del number, frame
        server.should_exit = True

    for name in ("SIGTERM", "SIGHUP"):
        if hasattr(signal, name):  # Windows has not both
            signal.signal(getattr(signal, name), end)
    server.run(sockets=[taken])
    return 0 if server.started else 1
