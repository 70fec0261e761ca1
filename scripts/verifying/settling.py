"""The comments of a record settled anew: each counts, or is set aside by the first cause."""

from __future__ import annotations

from collections import defaultdict
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from verifying.form import moment
from verifying.standing import Said, Span, given_since, what_stands

NOTHING, LOOK, WITHDRAWS, CHOOSES = "nothing", "look", "withdraws", "chooses"


@dataclass(frozen=True)
class Outcome:
    """What became of one comment: "counts" or the cause against it, and its pages.

    `since` tells for each page of a ballot since when the voter's vote for it was given.
    """

    outcome: str
    pages: tuple[int, ...]
    since: tuple[tuple[int, Span], ...] = ()


def settled(record: dict[str, Any]) -> list[Outcome]:
    """The outcome of every comment of the record, in its order."""
    rules = record["rules"]
    found: dict[int, Outcome] = {}
    voters: dict[str, list[Said]] = defaultdict(list)
    for place, comment in enumerate(record["comments"]):
        kind, pages, ruled = _meaning(comment, rules["choices"])
        votable = tuple(page for page in pages if page in rules["votable"])
        cause = _cause(comment, (kind, pages, ruled), rules)
        if cause is None:
            voters[comment["voter"]].append(Said(place, _span(comment["written"]), votable))
        else:
            found[place] = Outcome(cause, pages)
    for said in voters.values():
        found.update(_of_voter(said, rules["standing"]))
    return [found[place] for place in range(len(found))]


def _of_voter(said: list[Said], standing: str) -> dict[int, Outcome]:
    """Which of one voter's comments stands, and why the others do not."""
    stands, unclear = what_stands(said, standing)
    backs = [one.earliest for one in said if not one.pages]
    found = {}
    for one in said:
        if one == stands:
            since = tuple((page, given_since(page, said, standing)) for page in one.pages)
            found[one.place] = Outcome("counts", one.pages, since)
        elif one in unclear:
            found[one.place] = Outcome("cannot tell when", one.pages)
        elif not one.pages:
            found[one.place] = Outcome("chooses no page", ())
        elif backs and max(backs) > one.latest:
            found[one.place] = Outcome("withdrawn", one.pages)
        else:
            found[one.place] = Outcome("another ballot stands", one.pages)
    return found


def _meaning(comment: dict[str, Any], choices: int) -> tuple[str, tuple[int, ...], bool]:
    """What a comment says: as the last ruling on that has it, else as it was read."""
    for ruling in reversed(comment["rulings"]):
        pages = tuple(ruling["pages"])
        if ruling["withdraws"]:
            return WITHDRAWS, (), True
        if ruling["in_time"] is None or pages:
            return (CHOOSES if pages else NOTHING), pages, True
    reading = comment["reading"]
    if reading["outcome"] == "none":
        return (WITHDRAWS if reading["reason"] == "withdrawn" else NOTHING), (), False
    pages = tuple(dict.fromkeys(reading["pages"]))
    # More pages than the round allows: which of them count would be a guess.
    sure = reading["outcome"] == "counts" and 1 <= len(pages) <= choices
    return (CHOOSES if sure else LOOK), pages, False


def _cause(
    comment: dict[str, Any], meaning: tuple[str, tuple[int, ...], bool], rules: dict[str, Any]
) -> str | None:
    """The first cause that holds against a comment on its own account."""
    kind, pages, ruled = meaning
    if comment["host"]:
        return "the host's own"
    timing = _timing(comment, rules, settled_anyway=ruled and kind == NOTHING)
    if timing is not None:
        return timing
    if kind == NOTHING:
        return "chooses no page"
    if kind == LOOK:
        return "needs a look"
    if kind == CHOOSES and not any(page in rules["votable"] for page in pages):
        return "page not votable"
    return None


def _timing(comment: dict[str, Any], rules: dict[str, Any], *, settled_anyway: bool) -> str | None:
    """Why a comment is not in time; None where it is, or was ruled to be.

    One written at the opening is in time, one written at the closing is late. Where the span lies
    on both sides of either, only a ruling can tell.
    """
    earliest, latest = _span(comment["written"])
    opens = moment(rules["opens"])
    closes = None if rules["closes"] is None else moment(rules["closes"])
    if latest < opens:
        return "before the opening"
    if closes is not None and earliest >= closes:
        return "after the closing"
    over_the_closing = closes is not None and earliest < closes <= latest
    if earliest >= opens and not over_the_closing:
        return None
    for ruling in reversed(comment["rulings"]):
        if ruling["in_time"] is not None:
            if ruling["in_time"]:
                return None
            return "after the closing" if over_the_closing else "before the opening"
    return None if settled_anyway else "cannot tell when"


def _span(written: dict[str, str]) -> tuple[datetime, datetime]:
    return moment(written["earliest"]), moment(written["latest"])
