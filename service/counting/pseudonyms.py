"""Voters under pseudonyms: who knows a name finds it in a record, a record tells no name."""

from __future__ import annotations

import hashlib
from collections.abc import Iterable

from service.comments.versions import name_of
from service.counting.marks import plain_json
from service.counting.result import Ballot

#: Before the pseudonym of a voter or a name that was forgotten. No name and no id begins so: blanks
#: around them are cut off when comments are read.
FORGOTTEN = " forgotten "
#: A voter's pseudonym, and the pages of the ballot, ascending.
Cast = tuple[str, tuple[int, ...]]


def pseudonym_of(who: str, salt: bytes | None) -> str:
    """SHA-256 of the round's public salt and the voter's id or name, in hexadecimal.

    Without a salt `who` is a pseudonym already and stays. The salt keeps a voter's pseudonyms of
    two rounds apart; it is public, so somebody who guesses the name can check the guess. That is
    what lets viewers find their own ballot. Of a voter who was forgotten only it is left.
    """
    if is_forgotten(who):
        return who.removeprefix(FORGOTTEN)
    if salt is None:
        return who
    return hashlib.sha256(salt + who.encode("utf-8", "surrogatepass")).hexdigest()


def is_forgotten(who: str | None) -> bool:
    """Whether a voter or a name was forgotten, and its pseudonym stands for it."""
    return who is not None and who.startswith(FORGOTTEN)


def forgotten_as(who: str, salt: bytes) -> str:
    """What is kept of a voter or a name that is to be forgotten."""
    return FORGOTTEN + pseudonym_of(who, salt)


def name_pseudonym(author: str, salt: bytes) -> str | None:
    """The pseudonym of an author's name, as names are compared; None where there is none."""
    if is_forgotten(author):
        return pseudonym_of(author, salt)
    name = name_of(author)
    return pseudonym_of(name, salt) if name else None


def shown_name(author: str) -> str:
    """An author's name as it is shown: nothing where it was forgotten."""
    return "" if is_forgotten(author) else author


def digest_of_ballots(ballots: Iterable[Ballot], salt: bytes | None) -> str:
    """SHA-256 over the canonical JSON (RFC 8785) of the ballots, in hexadecimal.

    Each ballot is the voter's pseudonym and its pages ascending; all are sorted. Whoever votes
    last changes it, so nobody knows it before the voting has ended.
    """
    return digest_of_cast(cast_in(one, salt) for one in ballots)


def cast_in(ballot: Ballot, salt: bytes | None) -> Cast:
    """A ballot as the digest of all ballots takes it."""
    return pseudonym_of(ballot.voter, salt), tuple(sorted(ballot.pages))


def digest_of_cast(cast: Iterable[Cast]) -> str:
    """The digest of ballots that were kept as it takes them, in any order."""
    running = hashlib.sha256(b"[")
    before = ""
    for voter, pages in sorted(cast):
        # The canonical JSON of a list of such pairs, which may be as many as comments.
        running.update(f"{before}{plain_json([voter, pages])}".encode())
        before = ","
    running.update(b"]")
    return running.hexdigest()
