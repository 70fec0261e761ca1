"""A receipt for one voter: all that they wrote, what became of each, what stands and why."""

from __future__ import annotations

from dataclasses import dataclass

from service.comments.versions import name_of
from service.counting.result import Ballot, SetAside
from service.counting.round import ReadComment, RoundInput
from service.counting.settle import by_voter, order_of, settle_voter
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


def receipts_of(round_input: RoundInput) -> tuple[Receipt, ...]:
    """The receipts of all voters of the round's comments.

    What becomes of a comment is decided by the rules and its voter's comments alone, so those of
    other voters may be left out of `round_input`.

    Raises:
        BadRuling: a ruling that holds cannot be.
    """
    voters = sorted(by_voter(round_input.comments), key=lambda comments: comments[0].voter)
    return tuple(_receipt(comments, round_input) for comments in voters)


def is_meant(who: str, voter: str, author: str) -> bool:
    """Whether `who` is that voter's id, or the name of an author who is that voter.

    Case is left aside. Several voters may have one name.
    """
    name = name_of(who)
    return voter in (who, who.strip(), name) or (bool(name) and name_of(author) == name)


def _receipt(comments: list[ReadComment], round_input: RoundInput) -> Receipt:
    settled = sorted(settle_voter(comments, round_input), key=lambda pair: order_of(pair[0]))
    entries = tuple(_entry(heard.comment, outcome) for heard, outcome in settled)
    ballots = [entry.outcome for entry in entries if isinstance(entry.outcome, Ballot)]
    ballot = ballots[0] if ballots else None
    return Receipt(comments[0].voter, entries, ballot, _why(entries, ballot))


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
