"""Shows the demo game's first round while it is played."""

from datetime import date

from client import Client
from pace_shown import show_forecast
from rich.console import Console
from rich.text import Text
from tally_shown import pages_of, plain, printing, show, table

from demo.play import Clock, Demo, Json, PlayedLog, PlayedRound
from service.announce.instants import day_in_words


def play_first_round(client: Client, clock: Clock) -> None:
    """Makes the demo game, plays its first round and prints how the result came about."""
    demo = Demo(client, clock)
    game = demo.make_game()
    played = demo.play_round(1)
    guesses = demo.guesses()
    logged = demo.log_stitches()
    with printing() as console:
        _show_played(game["name"], played, guesses, console)
        _show_pace(logged, console)


def _show_played(name: str, played: PlayedRound, guesses: Json, console: Console) -> None:
    console.print(Text(f"The demo: {name!r}, round {played.number}.", style="bold"))
    console.print("All of it is invented: the island, its guild, the viewers, the piece.")
    console.print()
    console.print(f"{played.batch['name']} handed in: {played.batch['new']} new comments.")
    console.print(plain(f"As they were read: {played.before['why']}"))
    show_rulings(played, console)
    console.print()
    show(played.after, console, everything=False)
    console.print()
    console.print(plain(first_guess(guesses)))


def _show_pace(logged: PlayedLog, console: Console) -> None:
    console.print()
    day = day_in_words(date.fromisoformat(logged.pace["today"]))
    console.print(Text(f"The stitch log on {day}, {logged.taken['new']} entries.", style="bold"))
    show_forecast(logged.pace, console)
    console.print()
    console.print(Text("For the update post, ready to paste", style="bold"))
    console.print(plain(logged.update["text"] or logged.update["stopped"]))


def show_rulings(played: PlayedRound, console: Console) -> None:
    """What the demo's host ruled on the comments that needed a look."""
    looks = {comment["author"]: comment for comment in played.before["looks"]}
    console.print()
    console.print(f"{len(looks)} comments needed a look, and the host ruled:")
    rulings = table("Author", "Words", "Ruling", "Reason")
    for ruling in played.rulings:
        rulings.add_row(
            plain(ruling["author"]),
            plain(looks[ruling["author"]]["text"]),
            f"page {pages_of(ruling['pages'])}" if ruling["pages"] else "no page",
            plain(ruling["reason"]),
        )
    console.print(rulings)


def first_guess(guesses: Json) -> str:
    """Who named the piece first, in a sentence for the host."""
    first = guesses["first"]
    if first is None:
        return f"Nobody has named the piece yet. {guesses['why']}"
    when = first["written"]["earliest"].replace("T", " ").removesuffix("Z")
    sentence = f"First right guess: {first['author']}, {when} UTC, “{first['text']}”."
    in_doubt = guesses["tied"] or guesses["looks_before"]
    return f"{sentence} {guesses['why']}" if in_doubt else sentence
