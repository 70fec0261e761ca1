"""The tokens that open a server to a host or to a collector.

    python3 scripts/tokens.py                                   lists them
    python3 scripts/tokens.py make NAME [--role collector]      makes one and shows it, once
    python3 scripts/tokens.py delete NAME                       makes one useless

Without --server these are the tokens of the games on this computer.
"""

import environment

environment.enter("run")

from urllib.parse import quote

from client import Client, chosen
from tally_shown import make_console, plain
from terminal import Options, finish

from service.store.tokens import ROLES


def make_options() -> Options:
    """The command line of tokens.py."""
    options = Options(
        prog="tokens.py",
        description="Lists, makes and deletes tokens. A host may do everything, a collector may "
        "only hand in comments.",
        allow_abbrev=False,
    )
    options.add_argument("what", nargs="?", choices=("list", "make", "delete"), default="list")
    options.add_argument("name", nargs="?", help="the token's name, to know it by")
    options.add_argument("--role", choices=ROLES, default="host", help="what it may do (host)")
    options.add_server()
    return options


def list_tokens(client: Client) -> None:
    """Prints the tokens by name, without their secrets."""
    console = make_console()
    for token in client.get("/tokens"):
        console.print(plain(f"{token['role']:<10} {token['created'][:10]}  {token['name']}"))


def main() -> int:
    """Lists, makes or deletes."""
    options = make_options()
    given = options.read()
    if (given.what == "list") != (given.name is None):
        options.error("give a NAME with make and delete, and none with list")
    with chosen(given.server, given.token) as client:
        if given.what == "list":
            list_tokens(client)
        elif given.what == "make":
            made = client.post("/tokens", {"name": given.name, "role": given.role})
            print(f"The {made['role']}'s token {given.name!r}, shown only this once:")
            print(f"  {made['token']}")
        else:
            client.delete(f"/tokens/{quote(given.name)}")
            print(f"The token {given.name!r} is useless from now on.")
    return 0


if __name__ == "__main__":
    finish(main)
