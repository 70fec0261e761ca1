"""The record of a count: everything needed to recount it, without a name, a comment or the answer.

It is one object of JSON in canonical form (RFC 8785); `digest` is the SHA-256 of all the rest of
it. DEVELOPERS.md tells the format field by field; `scripts/verify.py` recounts it with Python alone.
"""

from __future__ import annotations

import hashlib
from collections import Counter
from dataclasses import dataclass, replace
from datetime import UTC, datetime
from typing import Any

import rfc8785

from service.chart.grid import Chart
from service.comments.spans import Span
from service.counting.acts import drawn_pages
from service.counting.count import count_round
from service.counting.draw import key_string
from service.counting.marks import marks_of
from service.counting.pseudonyms import digest_of_ballots, name_pseudonym, pseudonym_of
from service.counting.result import Result, TieStep
from service.counting.round import ReadComment, RoundInput, RoundRules, Ruling
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
    given, names = _under_pseudonyms(round_input, about.salt)
    result = count_round(given)
    record: dict[str, Json] = {
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
        "chart": _chart(given.chart),
        "salt": about.salt.hex(),
        "comments": _comments(given, names, result),
        "pick": _pick(given),
        "runoff": _runoff(given),
        "draw": _draw(given, result),
        "result": _result(given, result),
    }
    try:
        record["marks"] = marks_of(record)
        record["digest"] = hashlib.sha256(rfc8785.dumps(record)).hexdigest()
        return SealedRecord(rfc8785.dumps(record).decode(), record["digest"])
    except (rfc8785.CanonicalizationError, UnicodeError) as broken:
        raise BadRules(
            "a name or a reason of this round holds a broken character", "type it again"
        ) from broken


def utc(at: datetime) -> str:
    """An instant as a record has it: RFC 3339 in UTC, with `Z`."""
    return at.astimezone(UTC).isoformat().replace("+00:00", "Z")


def _under_pseudonyms(
    round_input: RoundInput, salt: bytes
) -> tuple[RoundInput, dict[str, str | None]]:
    """The round with pseudonyms for voters and places for keys; the authors' names by place.

    The comments are in the order in which settling takes them, so that it goes the same way.
    """
    ordered = sorted(
        round_input.comments, key=lambda one: (one.written.earliest, one.written.latest, one.key)
    )
    names: dict[str, str | None] = {}
    hidden: list[ReadComment] = []
    for place, one in enumerate(ordered):
        key = f"{place:09d}"
        names[key] = name_pseudonym(one.author, salt)
        hidden.append(replace(one, key=key, author="", voter=pseudonym_of(one.voter, salt)))
    return replace(round_input, comments=tuple(hidden), salt=None), names


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


def _comments(given: RoundInput, names: dict[str, str | None], result: Result) -> list[Json]:
    outcomes: dict[str, tuple[str, tuple[int, ...]]] = {
        aside.key: (aside.cause, aside.pages) for aside in result.set_aside
    }
    outcomes |= {ballot.key: ("counts", ballot.pages) for ballot in result.ballots}
    return [
        {
            "voter": one.voter,
            "name": names[one.key],
            "written": _span(one.written),
            "host": one.is_host,
            "reading": {
                "outcome": one.reading.outcome,
                "pages": list(one.reading.pages),
                "reason": one.reading.reason,
            },
            "rulings": [_ruling(ruling) for ruling in one.rulings],
            "outcome": outcomes[one.key][0],
            "pages": list(outcomes[one.key][1]),
        }
        for one in given.comments
    ]


def _span(span: Span) -> Json:
    return {"earliest": utc(span.earliest), "latest": utc(span.latest)}


def _ruling(ruling: Ruling) -> Json:
    """A ruling without its reason, which may quote the comment or name its writer."""
    return {
        "at": utc(ruling.at),
        "pages": list(ruling.pages),
        "withdraws": ruling.withdraws,
        "in_time": ruling.in_time,
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


def _draw(given: RoundInput, result: Result) -> Json:
    """How a tie is drawn. The round's own value is told only where it was drawn by."""
    rules = given.rules
    if "draw" not in rules.tie_breaks:
        return None
    told = dict(given.drawn.told)
    drawn = next((step for step in result.steps if step.rule == "draw"), None)
    lots = None
    if drawn is not None and len(drawn.kept) == 1:
        digest = digest_of_ballots(result.ballots, None)
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


def _result(given: RoundInput, result: Result) -> Json:
    return {
        "comments": len(given.comments),
        "ballots": len(result.ballots),
        "ballots_digest": digest_of_ballots(result.ballots, None),
        "set_aside": dict(Counter(aside.cause for aside in result.set_aside)),
        "looks": len(result.looks),
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
