"""A receipt for one voter: all that they wrote, what became of each, what stands and why."""

from __future__ import annotations

from collections import defaultdict
from dataclasses import dataclass

from service.comments.versions import name_of
from service.counting.result import Ballot, Result, SetAside
from service.counting.round import ReadComment, RoundInput
from service.counting.wording import how_many, pages_in_words


@dataclass(frozen=True, slots=True)
class Entry:
    """One comment of the voter, what became of it, and a sentence why."""

    comment: ReadComment
    outcome: Ballot | SetAside
    why: str


@dataclass(frozen=True, slots=True)
class Receipt:
    """What one voter wrote, oldest first, the ballot that stands, and a sentence about it."""

    voter: str
    entries: tuple[Entry, ...]
    ballot: Ballot | None
    why: str


def receipts_for(who: str, round_input: RoundInput, result: Result) -> tuple[Receipt, ...]:
    """The receipts of all voters of that author's id or name, case left aside.

    Several voters may have one name; each gets a receipt. None where nobody has it.
    """
    outcomes: dict[str, Ballot | SetAside] = {one.key: one for one in result.ballots}
    outcomes |= {one.key: one for one in result.set_aside}
    name = name_of(who)
    voters: dict[str, list[ReadComment]] = defaultdict(list)
    for comment in round_input.comments:
        voters[comment.voter].append(comment)
    return tuple(
        _receipt(voter, comments, outcomes)
        for voter, comments in sorted(voters.items())
        if voter in (who, who.strip(), name) or any(_is_called(one, name) for one in comments)
    )


def _is_called(comment: ReadComment, name: str) -> bool:
    return bool(name) and name_of(comment.author) == name


def _receipt(
    voter: str, comments: list[ReadComment], outcomes: dict[str, Ballot | SetAside]
) -> Receipt:
    ordered = sorted(comments, key=lambda one: (one.written.earliest, one.written.latest, one.key))
    entries = tuple(_entry(one, outcomes[one.key]) for one in ordered)
    ballots = [entry.outcome for entry in entries if isinstance(entry.outcome, Ballot)]
    ballot = ballots[0] if ballots else None
    return Receipt(voter, entries, ballot, _why(entries, ballot))


def _entry(comment: ReadComment, outcome: Ballot | SetAside) -> Entry:
    if isinstance(outcome, SetAside):
        return Entry(comment, outcome, outcome.why)
    if outcome.ruled and comment.rulings:
        return Entry(comment, outcome, f"The host's ruling: {comment.rulings[-1].reason.strip()}")
    return Entry(comment, outcome, comment.reading.why)


def _why(entries: tuple[Entry, ...], ballot: Ballot | None) -> str:
    if ballot is not None:
        gives = "it gives" if len(ballot.pages) == 1 else "it gives one vote each to"
        words = f"A ballot stands: {gives} {pages_in_words(ballot.pages)}"
        words += " one vote." if len(ballot.pages) == 1 else "."
        if ballot.left_out:
            words += f" It also named {pages_in_words(ballot.left_out)}, which cannot be chosen."
        return words
    looks = sum(isinstance(e.outcome, SetAside) and e.outcome.needs_look for e in entries)
    if looks:
        return f"No ballot stands yet: {how_many(looks, 'comment')} still to be looked at."
    last = entries[-1].outcome
    cause = last.cause if isinstance(last, SetAside) else ""
    return f"No ballot stands; of the last comment: {cause}."
