"""Prints the words on a round that can be pasted now; with --out it writes words, pictures, calendar.

    python3 scripts/announce.py --game harbour --round 2
    python3 scripts/announce.py --game harbour --round 2 --short --limit 280
    python3 scripts/announce.py --game harbour --round 2 --out FOLDER --theme dark

Each picture's alternative text is written beside it. A file that is there already is not written
over. Words that would tell the sealed answer are not told.
"""

import environment

environment.enter("run")

from pathlib import Path
from urllib.parse import quote

from client import Client, Json, chosen
from terminal import Options, finish

from service.errors import AlreadyThere, BadInput

#: What follows "/api" in an address that the API tells.
_API = "/api"


def make_options() -> Options:
    """The command line of announce.py."""
    options = Options(
        prog="announce.py", description="Words, pictures and calendar of a round.",
        allow_abbrev=False,
    )  # fmt: skip
    options.add_argument("--game", required=True, metavar="NAME", help="the game's short name")
    options.add_argument("--round", required=True, type=int, metavar="NUMBER", help="the round")
    options.add_argument("--short", action="store_true", help="the words in short, not in full")
    options.add_argument(
        "--limit", type=int, metavar="CHARACTERS", help="the longest text your place takes"
    )
    options.add_argument("--out", metavar="FOLDER", help="write words, pictures and calendar there")
    options.add_argument(
        "--theme", choices=("light", "dark"), default="light", help="of the pictures (light)"
    )
    options.add_argument(
        "--plain", action="store_true", help="pictures without ground, to lay over a video"
    )
    options.add_server()
    return options


def shown(words: Json, limit: int | None) -> str:
    """One announcement for the terminal, with a line that says what it is."""
    head = f"--- {words['occasion']}, {words['characters']:,} characters"
    if words["stopped"]:
        return f"{head}\nNot ready: {words['stopped']}"
    if words["outdated"]:
        head += "; the count has changed since it was announced"
    if not words["fits"]:
        head += f"; longer than {f'your {limit:,}' if limit else 'you said'}, see --short"
    return f"{head}\n{words['text']}"


def files_of(client: Client, path: str, begins: str, look: dict[str, str]) -> dict[str, bytes]:
    """The pictures as SVG and PNG, their alternative texts and the calendar, by file name."""
    told = client.get(f"{path}/pictures")
    found: dict[str, bytes] = {}
    for picture in told["pictures"]:
        name = f"{begins}-{picture['name'].replace(', ', '-').replace(' ', '-')}"
        for ending in ("svg", "png"):
            address, _, query = picture[ending].removeprefix(_API).partition("?")
            wanted = dict(part.split("=", 1) for part in query.split("&") if part)
            found[f"{name}.{ending}"] = client.fetch(address, **wanted, **look)
        found[f"{name}-alternative-text.txt"] = f"{picture['alternative']}\n".encode()
    if told["calendar"]:
        found[f"{begins}-closing.ics"] = client.fetch(told["calendar"].removeprefix(_API))
    return found


def write_all(folder: Path, files: dict[str, bytes]) -> None:
    """Writes files that are not there yet; where one is, none is written.

    Raises:
        AlreadyThere: there is one of them.
        BadInput: they cannot be written.
    """
    todo = "move it away, or name another folder with --out"
    for name in files:
        if (folder / name).exists():
            raise AlreadyThere("file", str(folder / name), todo)
    try:
        folder.mkdir(parents=True, exist_ok=True)
        for name, content in files.items():
            part = folder / f"{name}.part"
            part.write_bytes(content)
            part.rename(folder / name)
    except OSError as trouble:
        what = f"{folder} cannot be written into ({trouble.strerror})"
        raise BadInput(what, "name another folder with --out") from None


def main() -> int:
    """Asks, prints and writes."""
    given = make_options().read()
    path = f"/games/{quote(given.game, safe='')}/rounds/{given.round}"
    begins = f"{given.game}-round-{given.round}"
    with chosen(given.server, given.token) as client:
        limit = {} if given.limit is None else {"limit": given.limit}
        words = client.get(f"{path}/announcements", **limit)
        files: dict[str, bytes] = {}
        if given.out:
            look = {"theme": given.theme, "plain": str(given.plain).lower()}
            files = files_of(client, path, begins, look)
    for one in words:
        if one["text"]:
            short = "-short" if one["length"] == "short" else ""
            name = f"{begins}-{one['occasion'].replace(' ', '-')}{short}.txt"
            files[name] = f"{one['text']}\n".encode()
    wanted = [one for one in words if (one["length"] == "short") == given.short]
    print("\n\n".join(shown(one, given.limit) for one in wanted) or "Nothing is to be said now.")
    if given.out:
        write_all(Path(given.out), files)
        print(f"\n{len(files)} files written to {given.out}.")
    return 0


if __name__ == "__main__":
    finish(main)
