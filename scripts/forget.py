"""Removes a voter's words and name for good, or all of a game's once it is over.

    python3 scripts/forget.py "Maren" --game harbour
    python3 scripts/forget.py --everybody --game harbour

A voter is named by the author's name or id; without --game all games are gone through. Counts and
records stay and can be checked as before: they know the voter by a pseudonym. Backups that were
made before still hold the words. It cannot be undone, so it asks, unless --yes is given.
"""

import environment

environment.enter("run")

import sys
from urllib.parse import quote

from client import Client, Json, chosen
from terminal import FAILED, Options, finish

from service.counting.wording import how_many
from service.errors import BadInput, NotFound, ProblemAnswered


def make_options() -> Options:
    """The command line of forget.py."""
    options = Options(
        prog="forget.py",
        description="Removes a voter's words and name for good, or all of a game's.",
        allow_abbrev=False,
    )
    options.add_argument("voter", nargs="?", metavar="VOTER", help="the author's name, or id")
    options.add_argument(
        "--everybody", action="store_true", help="all words of a game that is over"
    )
    options.add_argument("--game", metavar="NAME", help="the game's short name")
    options.add_argument("--yes", action="store_true", help="do not ask before")
    options.add_server()
    return options


def ask_before(what: str) -> None:
    """Asks whether it is to be done.

    Raises:
        BadInput: it is not, or nobody can be asked.
    """
    if not sys.stdin.isatty():
        raise BadInput("nobody can be asked whether to remove this for good", "add --yes")
    print(f"This removes {what} for good. Write yes to go on: ", end="", flush=True)
    if sys.stdin.readline().strip().lower() != "yes":
        raise BadInput("nothing was removed", "write yes where you want it")


def forget_in(client: Client, games: list[str], voter: str) -> list[Json]:
    """Forgets a voter in these games; what was done in each.

    Raises:
        NotFound: nobody of that name or id wrote in any of them.
    """
    done: list[Json] = []
    for game in games:
        try:
            path = f"/games/{quote(game, safe='')}/forgotten/voters"
            done.append({"game": game} | client.post(path, {"voter": voter}))
        except ProblemAnswered as refused:
            if refused.status != 404 or len(games) == 1:
                raise
    if not done:
        raise NotFound("voter", voter, "write the name or id as the comments have it")
    return done


def show(done: list[Json]) -> int:
    """Prints what was removed; the status."""
    for one in done:
        rounds = ", ".join(map(str, one["rounds"])) or "none"
        many = how_many(one["comments"], "comment")
        print(f"{one['game']}: words and name removed from {many} (rounds: {rounds}).")
    if not all(one["wiped"] for one in done):
        print("The database was in use, so its files may still hold them: ask once more.")
        return FAILED
    print("Nothing of it is left in the database's files. Delete backups made before.")
    return 0


def main() -> int:
    """Asks, removes and tells."""
    options = make_options()
    given = options.read()
    if given.everybody == (given.voter is not None):
        options.error("give a VOTER, or --everybody")
    if given.everybody and given.game is None:
        options.error("name the game with --game")
    if not given.yes:
        whose = "everybody" if given.everybody else given.voter
        ask_before(f"what {whose} wrote{f' in {given.game}' if given.game else ''}")
    with chosen(given.server, given.token) as client:
        if given.everybody:
            path = f"/games/{quote(given.game, safe='')}/forgotten/everybody"
            return show([{"game": given.game} | client.post(path)])
        games = [given.game] if given.game else [one["slug"] for one in client.get("/games")]
        return show(forget_in(client, games, given.voter))


if __name__ == "__main__":
    finish(main)
