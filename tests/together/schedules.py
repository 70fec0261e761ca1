"""Random schedules: a game, and what each of several clients does in it, from a seed."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from random import Random
from typing import Any

from tests.together.clients import Act

OPENS = datetime(2026, 3, 13, 18, 0, tzinfo=UTC)
CLOSES = "2026-03-14T18:00:00Z"
EXPORTS = 6
#: How many viewers write in one export alone, and how many in several.
OWN, SHARED = 4, 10
LONGEST_PAUSE = 0.12
TIE_BREAKS = (["lowest number"], ["reached first", "lowest number"], ["draw"])
OCCASIONS = ("opening", "reminder", "result", "tie")


@dataclass(frozen=True)
class Schedule:
    """The game's short name, the export that is there before, and the acts of each client."""

    game: str
    first: str
    acts: tuple[tuple[Act, ...], ...]

    @property
    def at(self) -> str:
        """The address of the game."""
        return f"/api/games/{self.game}"

    @property
    def round(self) -> str:
        """The address of the round that all of this is about."""
        return f"{self.at}/rounds/1"


def own_voters(number: int) -> list[str]:
    """The viewers who write in that export and in no other."""
    return [f"own {number} viewer {one}" for one in range(OWN)]


def game_of(slug: str) -> dict[str, Any]:
    """The game, which has its answer sealed."""
    return {
        "slug": slug,
        "name": "The harbour mystery",
        "zone": "UTC",
        "chart": {"columns": 9, "rows": 7},
        "guesses_open": "2026-03-13T18:00:00Z",
        "answer": {"title": "The Lamp Room"},
    }


def first_export() -> str:
    """What is there before: page 13 well ahead, two comments that need a look, a right guess."""
    lines = [f"base-{one},base {one},{_at(one)},,page 13 please" for one in range(20)]
    lines += [f"look-{one},look {one},{_at(40 + one)},,12 or 40" for one in range(2)]
    lines.append(f"guess-1,Maren,{_at(50)},,is it the lamp room?")
    return "\n".join(["id,author,posted,edited,text", *lines])


def export_of(chance: Random, number: int) -> str:
    """One of the exports: its own viewers, some of those of all, some of them edited by then."""
    named = "words" if number % 3 == 0 else "text"
    lines = [f"id,author,posted,edited,{named}"]
    for place, voter in enumerate(own_voters(number)):
        late = place == 0 and number % 2 == 0
        at = _at(24 * 60 + 30 + number) if late else _at(60 + 10 * number + place)
        lines.append(f"own-{number}-{place},{voter},{at},,page {number * 5 + place + 1} please")
    for shared in range(SHARED):
        if chance.random() < 0.7:
            edited = shared % 3 == 0 and number > shared % EXPORTS
            at = _at(200 + shared)
            # Edited in time, or only after the voting: then the words before count.
            later = _at((300 if shared % 2 else 24 * 60 + 100) + shared) if edited else ""
            words = f"page {20 + shared} please" if edited else f"page {40 + shared} please"
            lines.append(f"shared-{shared},shared {shared},{at},{later},{words}")
    return "\n".join(lines)


def schedule_of(seed: int, slug: str, clients: int, looks: list[str]) -> Schedule:
    """What the clients do; `looks` are the keys of comments to be ruled on."""
    chance = Random(seed)  # noqa: S311 - a schedule, no secret
    at = f"/api/games/{slug}"
    exports = [export_of(chance, number) for number in range(EXPORTS)]
    wanted = [_hand_in(at, number, export) for number, export in enumerate(exports)]
    wanted += [wanted[chance.randrange(EXPORTS)] for _ in range(3)]
    wanted += [_ruling(chance, at, looks, number) for number in range(6)]
    wanted += [Act("close", "POST", f"{at}/rounds/1/close", {"at": CLOSES}) for _ in range(2)]
    wanted += [Act("announce", "POST", f"{at}/rounds/1/announce") for _ in range(4)]
    wanted += [Act("revise", "POST", f"{at}/rounds/1/revisions", {"reason": "found late"})]
    wanted += [Act("winner", "POST", f"{at}/guesses/winner") for _ in range(2)]
    wanted += [Act("open", "POST", f"{at}/rounds/2/open")]
    wanted += [_log(at, number) for number in range(4)]
    wanted += [Act("template", "PUT", f"{at}/templates/{one}", {"text": one}) for one in OCCASIONS]
    wanted += [Act("look", "GET", f"{at}/{what}") for what in ("rounds/1/tally", "guesses")]
    chance.shuffle(wanted)
    # Who announces does so rather late, so that there is something to be announced.
    wanted.sort(
        key=lambda act: chance.random() + 0.6 * (act.kind in ("announce", "open", "revise"))
    )
    acts: list[list[Act]] = [[] for _ in range(clients)]
    for act in wanted:
        chance.choice(acts).append(_paused(chance, act))
    # Each field of the draft is changed by one client alone, several times.
    for client, change in enumerate(_changes(chance)):
        for body in change:
            act = _paused(chance, Act(f"draft {client}", "PATCH", f"{at}/rounds/2", body))
            mine = acts[client % clients]
            mine.insert(chance.randrange(len(mine) + 1), act)
    return Schedule(slug, first_export(), tuple(tuple(one) for one in acts))


def _changes(chance: Random) -> list[list[dict[str, Any]]]:
    return [
        [{"choices": chance.randrange(1, 5)} for _ in range(3)],
        [{"standing": chance.choice(["latest", "first"])} for _ in range(3)],
        [{"tie_breaks": chance.choice(TIE_BREAKS)} for _ in range(3)],
    ]


def _hand_in(at: str, number: int, export: str) -> Act:
    fields = {"copied_at": f"2026-03-16T0{number}:00:00Z"}
    if number % 3 == 0:
        fields["columns"] = '{"text": "words"}'
    return Act(f"export {number}", "POST", f"{at}/rounds/1/batches", export=export, fields=fields)


def _ruling(chance: Random, at: str, looks: list[str], number: int) -> Act:
    body = {"pages": [chance.choice([12, 40])], "reason": f"ruling {number}"}
    return Act("ruling", "POST", f"{at}/rounds/1/comments/{chance.choice(looks)}/rulings", body)


def _log(at: str, number: int) -> Act:
    entry = {"day": f"2026-03-{16 + number}", "piece": f"piece {number}", "stitches": 100 + number}
    return Act("log", "POST", f"{at}/pace/log", {"entries": [entry]})


def _paused(chance: Random, act: Act) -> Act:
    pause = chance.random() * LONGEST_PAUSE if chance.random() < 0.5 else 0.0
    return Act(act.kind, act.method, act.path, act.body, act.export, act.fields, pause)


def _at(minutes: int) -> str:
    return (OPENS + timedelta(minutes=minutes)).isoformat().replace("+00:00", "Z")
