"""The game that is played while processes are killed."""

from __future__ import annotations

from typing import Any

from client import Client

GAME: dict[str, Any] = {
    "slug": "harbour",
    "name": "The harbour mystery",
    "zone": "UTC",
    "chart": {"columns": 9, "rows": 7},
    "languages": ["en"],
    "guesses_open": "2026-03-13T18:00",
    "answer": {"title": "The Lamp Room"},
}
ROUND = "/games/harbour/rounds/1"


def begin_game(host: Client, export: bytes) -> None:
    """Play up to an open round with comments."""
    host.post("/games", GAME)
    host.post("/games/harbour/rounds", {"opens": "2026-03-13T18:00"})
    host.post(f"{ROUND}/open")
    host.hand_in(f"{ROUND}/batches", "first.csv", export)


def export_of(many: int, which: str) -> bytes:
    """So many comments; the second export edits each third of the first and brings as many new."""
    lines = ["id,author,posted,edited,text"]
    for number in range(many):
        shown = number if which == "first" or number % 3 == 0 else many + number
        edited = "2026-03-13T23:00:00Z" if which == "second" else ""
        page = shown * 7 % 63 + 1 if shown % 5 else 13
        at = f"2026-03-13T{19 + shown // 3600}:{shown // 60 % 60:02}:{shown % 60:02}Z"
        lines.append(f"post-{shown},viewer {shown},{at},{edited},page {page} please {which}")
    return "\n".join(lines).encode()
