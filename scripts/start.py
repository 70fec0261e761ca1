"""Starts Loopstart.

    python3 scripts/start.py           your own games, kept in your data folder
    python3 scripts/start.py --demo    plays the first round of an invented game and serves it

The first start sets everything up. --no-serve ends after printing; --help has the rest.
"""

import environment

environment.enter("run")

import argparse
import socket
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from client import Client, in_process
from demo_shown import play_first_round
from fastapi import FastAPI
from serving import is_loopback, serve, take_port, url_of
from terminal import Options, finish
from workers import check_workers, serve_by_several

from demo.play import Clock
from service.app import create_app
from service.settings import Settings, read_settings
from service.store.upgrade import upgrade


def make_options() -> Options:
    """The command line of start.py."""
    options = Options(
        prog="start.py", description="Starts Loopstart and serves your games.", allow_abbrev=False
    )
    options.add_argument(
        "--demo", action="store_true", help="play the demo game's first round and serve that"
    )
    options.add_argument("--no-serve", action="store_true", help="end after printing")
    options.add_argument(
        "--no-token",
        action="store_true",
        help="print no token and no link: where others read what is printed",
    )
    options.add_argument("--port", type=int, help="the port to serve on; 0 takes any free one")
    options.add_argument("--host", help="the network address to serve on (127.0.0.1)")
    options.add_argument(
        "--workers", type=int, help="how many processes serve (1); more only on PostgreSQL"
    )
    return options


@contextmanager
def settings_for(given: argparse.Namespace) -> Iterator[Settings]:
    """The settings, with the command line's before all others.

    The demo has a folder of its own, new at each start and gone after it.
    """
    told = {"port": given.port, "address": given.host, "workers": given.workers}
    told = {name: value for name, value in told.items() if value is not None}
    if not given.demo:
        yield read_settings(**told)
        return
    with tempfile.TemporaryDirectory(
        prefix="loopstart-demo-", ignore_cleanup_errors=True
    ) as folder:
        yield read_settings(**told, data_folder=Path(folder), database_url="")


def make_host_token(client: Client) -> str | None:
    """A token for the host, named "host", where no host has one yet."""
    if any(token["role"] == "host" for token in client.get("/tokens")):
        return None
    return str(client.post("/tokens", {"name": "host", "role": "host"})["token"])


def make_desk_link(client: Client) -> str:
    """Where a browser is signed in to the desk, once, after the service's own address."""
    return str(client.post("/desk/links")["path"])


def tell_token(token: str | None, *, demo: bool) -> None:
    """Shows a new token, this once, and how it is used."""
    if token is None:
        return
    later = "it ends with the demo" if demo else "scripts/tokens.py makes another"
    print()
    print(f"The host's token, shown only this once ({later}):")
    print(f"  {token}")
    print("Send it with requests that change something, as the header")
    print(f"  Authorization: Bearer {token}")
    print("or give it to /docs under 'Authorize'. Who has it may do everything.")


def tell_start(settings: Settings, *, demo: bool) -> None:
    """The start line: mode, database and settings file."""
    file = settings.settings_file
    there = "" if file.exists() else " (none there, so the defaults hold)"
    mode = "the demo game" if demo else "your own games"
    print(f"Loopstart with {mode}; database {settings.database_shown}; settings {file}{there}.")


def tell_exposure(settings: Settings) -> None:
    """A warning where others could listen in: passwords and cookies would be read on the way."""
    if is_loopback(settings.address):
        return
    print()
    print(
        f"Careful: on {settings.address} other computers reach Loopstart, and what they send is "
        "not encrypted. Put a web server with TLS before it; README.md says how."
    )


def tell_place(url: str, link: str) -> None:
    """Where the games are served, and the link that signs the host in, if one was made."""
    print()
    if link:
        print("Your desk; the link signs one browser in, once, within an hour:")
        print(f"  {url}{link}")
    else:
        print("A link into your desk is made by: scripts/desk.py link")
    print(f"Serving on {url}, what viewers see; the API with its pages to try it: {url}/docs")
    print("Ctrl-C ends it.", flush=True)


def start(settings: Settings, given: argparse.Namespace, taken: socket.socket | None) -> int:
    """Sets up the database, plays the demo if asked, and serves."""
    check_workers(settings)
    upgrade(settings)
    clock = Clock()
    with in_process(settings, clock if given.demo else None) as client:
        if given.demo:
            play_first_round(client, clock)
            print()
        # A demo that is not served has nobody to show a token to.
        nobody = given.no_token or (given.demo and taken is None)
        token = None if nobody else make_host_token(client)
        link = "" if taken is None or given.no_token else make_desk_link(client)
    tell_start(settings, demo=given.demo)
    tell_token(token, demo=given.demo)
    tell_exposure(settings)
    if taken is None:
        return 0
    try:
        status = _serve(settings, clock, taken, link, demo=given.demo)
    except KeyboardInterrupt:
        status = 0
    if status == 0:  # by Ctrl-C, or where that is not heard by a signal of the system
        print("Stopped.")
    return status


def _serve(settings: Settings, clock: Clock, taken: socket.socket, link: str, *, demo: bool) -> int:
    """Serves by as many processes as the settings say, until it is stopped."""

    def tell() -> None:
        tell_place(url_of(taken), link)

    if settings.workers > 1:
        return serve_by_several(taken, tell, settings)
    app = _demo_app(settings, clock) if demo else create_app(settings)
    return serve(app, taken, tell, settings)


def _demo_app(settings: Settings, clock: Clock) -> FastAPI:
    """The demo goes on at its own time: its comments and its log are of a spring long gone."""
    clock.go_on()
    return create_app(settings, clock=clock)


def main() -> int:
    """Starts as the command line says."""
    given = make_options().read()
    with settings_for(given) as settings:
        if given.no_serve:
            return start(settings, given, None)
        # Taken before anything is set up, so that a taken port is told at once.
        with take_port(settings.address, settings.port) as taken:
            return start(settings, given, taken)


if __name__ == "__main__":
    finish(main)
