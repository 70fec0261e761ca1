"""The record of a count: everything needed to recount it, without a name, a comment or the answer.

It is one object of JSON in canonical form (RFC 8785); `digest` is the SHA-256 of all the rest of
it. DEVELOPERS.md tells the format field by field; `scripts/verify.py` recounts it with Python alone.
"""

from __future__ import annotations

import hashlib
from collections.abc import Iterable
from dataclasses import dataclass, replace
from datetime import datetime
from typing import Any

import rfc8785

from service.chart.grid import Chart
from service.counting.acts import drawn_pages
from service.counting.draw import key_string
from service.counting.marks import Marks, plain_json
from service.counting.pseudonyms import (
    Cast,
    cast_in,
    digest_of_cast,
)
from service.counting.record_entry import entry_of, utc
from service.counting.result import Ballot, Result, TieStep
from service.counting.round import ReadComment, RoundInput, RoundRules
from service.counting.running import RunningCount
from service.counting.settle import by_voter, order_of
from service.counting.sources import DrawSource, Told, lots_of
from service.errors import BadRules

Json = Any

FORMAT = "loopstart record 1"


@dataclass(frozen=True, slots=True)
class RecordAbout:
    """Which count a record is of.

    `game` is its short name, `seal` that of its answer. `runoff_of` is the round among whose tied
    pages this one decides. `revision` counts from 1, `before` is the digest of the one before and
    `reason` says why there is another. `salt` is the round's public salt.
    """

    game: str
    name: str
    seal: str | None
    round: int
    announced: datetime
    salt: bytes
    runoff_of: int | None = None
    revision: int = 1
    reason: str | None = None
    before: str | None = None


@dataclass(frozen=True, slots=True)
class SealedRecord:
    """A record as the text that is published, in canonical JSON, and its digest."""

    text: str
    digest: str


def make_record(about: RecordAbout, round_input: RoundInput) -> SealedRecord:
    """The record of a counted round. The same count gives the same text, byte for byte.

    Raises:
        BadRules, BadTime, BadRuling: the round cannot be counted; words with a broken character.
    """
    count = RecordedCount(about, round_input)
    entries = [one for voter in by_voter(round_input.comments) for one in count.add(voter)]
    return count.sealed(entry for _, entry in sorted(entries, key=lambda one: one[0]))


#: Where a comment stands in the record: oldest first.
Order = tuple[datetime, datetime, str]


class RecordedCount:
    """A round counted voter by voter for its record, so that its comments need never all be in memory.

    The comments' part of the record, which is nearly all of it, is made as text of each comment by
    itself; whoever counts brings these texts into their order.
    """

    def __init__(self, about: RecordAbout, round_input: RoundInput) -> None:
        """A count by all that `round_input` holds but its comments.

        Raises:
            BadRules, BadTime, ClosesBeforeOpening: rules that no round can be counted by.
        """
        self._about = about
        self._input = replace(round_input, comments=(), salt=about.salt)
        self._running = RunningCount(self._input, most=0)
        self._cast: list[Cast] = []

    def add(self, of_one_voter: Iterable[ReadComment]) -> list[tuple[Order, str]]:
        """Count all comments of one voter; each one's place in the record and its text there.

        Raises:
            BadRuling: a ruling that holds cannot be.
        """
        salt, found = self._about.salt, []
        for heard, outcome in self._running.add(of_one_voter):
            if isinstance(outcome, Ballot):
                self._cast.append(cast_in(outcome, salt))
            one = heard.comment
            found.append((order_of(heard), plain_json(entry_of(one, outcome, salt))))
        return found

    def sealed(self, entries: Iterable[str]) -> SealedRecord:
        """The record, by the texts of all comments in their order.

        Raises:
            BadRules: words with a broken character.
        """
        try:
            return self._sealed(entries)
        except (rfc8785.CanonicalizationError, UnicodeError) as broken:
            raise BadRules(
                "a name or a reason of this round holds a broken character", "type it again"
            ) from broken

    def _sealed(self, entries: Iterable[str]) -> SealedRecord:
        chart, marks = {"chart": _chart(self._input.chart)}, Marks()
        # The names of a record in their order are chart, comments, digest, and then the rest.
        text = bytearray(rfc8785.dumps(chart)[:-1] + b',"comments":[')
        before = b""
        for entry in entries:
            text += before + entry.encode()
            before = b","
            marks.add(entry)
        text += b"]"
        rest = self._rest()
        rest["marks"] = marks.told({**chart, **rest})
        parts = (f'"{name}":{_canonical(name, rest[name])}' for name in sorted(rest))
        ending = f",{','.join(parts)}}}".encode()
        running = hashlib.sha256(text)
        running.update(ending)
        digest = running.hexdigest()
        text += f',"digest":"{digest}"'.encode() + ending
        return SealedRecord(text.decode(), digest)

    def _rest(self) -> dict[str, Json]:
        """What a record tells beside its chart and its comments."""
        about, given, result = self._about, self._input, self._running.result()
        ballots = digest_of_cast(self._cast)
        return {
            "format": FORMAT,
            "game": {"slug": about.game, "name": about.name, "seal": about.seal},
            "round": about.round,
            "runoff_of": about.runoff_of,
            "revision": {
                "number": about.revision,
                "announced": utc(about.announced),
                "reason": about.reason,
                "before": about.before,
            },
            "rules": _rules(given.rules),
            "salt": about.salt.hex(),
            "pick": _pick(given),
            "runoff": _runoff(given),
            "draw": _draw(given, result, ballots),
            "result": _result(result, ballots),
        }


def _canonical(name: str, value: Json) -> str:
    # Marks are as many as comments, and of plain texts alone.
    return plain_json(value) if name == "marks" else rfc8785.dumps(value).decode()


def _rules(rules: RoundRules) -> Json:
    return {
        "opens": utc(rules.opens),
        "closes": None if rules.closes is None else utc(rules.closes),
        "choices": rules.choices,
        "standing": rules.standing,
        "tie_breaks": list(rules.tie_breaks),
        "votable": sorted(rules.votable),
        "stitched": sorted(rules.stitched),
    }


def _chart(chart: Chart) -> Json:
    return {
        "columns": chart.columns,
        "rows": chart.rows,
        "order": chart.order,
        "start": chart.start,
        "back_and_forth": chart.back_and_forth,
        "no_page": [[cell.column, cell.row] for cell in sorted(chart.no_page)],
        "joined": chart.joined,
    }


def _pick(given: RoundInput) -> Json:
    pick = given.host_pick
    return None if pick is None else {"page": pick[0], "reason": pick[1].strip()}


def _runoff(given: RoundInput) -> Json:
    held = given.runoff
    if held is None:
        return None
    return {
        "round": held.round,
        "pages": list(held.pages),
        "winner": held.winner,
        "votes": [{"page": page, "votes": votes} for page, votes in held.votes],
        "digest": held.digest,
    }


def _draw(given: RoundInput, result: Result, digest: str) -> Json:
    """How a tie is drawn; `digest` is that of the ballots.

    The round's own value is told only where it was drawn by.
    """
    rules = given.rules
    if "draw" not in rules.tie_breaks:
        return None
    told = dict(given.drawn.told)
    drawn = next((step for step in result.steps if step.rule == "draw"), None)
    lots = None
    if drawn is not None and len(drawn.kept) == 1:
        lots = lots_of(rules.draw, given.drawn, rules.closes, digest)
    value = given.drawn.value if lots is not None and lots.own else None
    return {
        "commitment": rules.draw.commitment,
        "sources": [
            _source(source, told.get(place))
            for place, source in enumerate(rules.draw.sources, start=1)
        ],
        "value": None if value is None else value.hex(),
        "key": None if lots is None else key_string(lots.numbers),
        "order": None if lots is None or drawn is None else list(drawn_pages(drawn.tied, lots)),
    }


def _source(source: DrawSource, told: Told | None) -> Json:
    return {
        "name": source.name,
        "expected": utc(source.expected),
        "if_late": source.if_late,
        "numbers": None if told is None else list(told.numbers),
        "left_out": None if told is None or told.numbers else told.reason,
    }


def _result(result: Result, digest: str) -> Json:
    figures = result.figures
    return {
        "comments": figures.comments,
        "ballots": figures.ballots,
        "ballots_digest": digest,
        "set_aside": dict(figures.set_aside),
        "looks": figures.looks,
        "tally": [{"page": page, "votes": votes} for page, votes in result.tally],
        "steps": [_step(step) for step in result.steps],
        "winner": result.winner,
        "undecided": list(result.undecided),
    }


def _step(step: TieStep) -> Json:
    return {
        "rule": step.rule,
        "tied": list(step.tied),
        "kept": list(step.kept),
        "values": [{"page": page, "value": value} for page, value in step.values],
    }
