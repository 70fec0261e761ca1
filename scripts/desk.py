"""The ways into the desk, where a host runs her games in a browser.

    python3 scripts/desk.py link        makes a link that signs one browser in, once
    python3 scripts/desk.py password    sets the password that the desk can be signed in to with
    python3 scripts/desk.py sign-out    signs every browser out

Without --server this is the desk of the games on this computer. The password is asked for, or read
from standard input; it is never given on the command line, where others could see it.
"""

import environment

environment.enter("run")

import getpass
import sys

from client import Client, chosen
from terminal import Options, finish

from service.errors import BadInput
from service.settings import read_settings


def make_options() -> Options:
    """The command line of desk.py."""
    options = Options(
        prog="desk.py",
        description="Makes a link into the desk, sets its password, or signs everybody out.",
        allow_abbrev=False,
    )
    options.add_argument("what", choices=("link", "password", "sign-out"))
    options.add_server()
    return options


def make_link(client: Client, server: str | None) -> None:
    """Prints a new link."""
    made = client.post("/desk/links")
    place = server.rstrip("/") if server else _usual_place()
    print(f"The link signs one browser in, once, within {made['minutes']} minutes:")
    print(f"  {place}{made['path']}")


def set_password(client: Client) -> None:
    """Asks for the password, twice where somebody types it, and sets it."""
    client.put("/desk/password", {"password": _asked_password()})
    print("The password is set. Every browser is signed out.")


def _usual_place() -> str:
    settings = read_settings()
    return f"http://{settings.address}:{settings.port}"


def _asked_password() -> str:
    if not sys.stdin.isatty():
        return sys.stdin.readline().rstrip("\r\n")
    password = getpass.getpass("The desk's new password: ")
    if getpass.getpass("Once more: ") != password:
        raise BadInput("the two are not the same", "type the password again")
    return password


def main() -> int:
    """Does what is asked."""
    given = make_options().read()
    with chosen(given.server, given.token) as client:
        if given.what == "link":
            make_link(client, given.server)
        elif given.what == "password":
            set_password(client)
        else:
            ended = client.delete("/desk/sessions")["signed_out"]
            print(f"Signed out: {ended}.")
    return 0


if __name__ == "__main__":
    finish(main)
