"""Voters under pseudonyms: who knows a name finds it in a record, a record tells no name."""

from __future__ import annotations

import hashlib
from collections.abc import Iterable

import rfc8785

from service.counting.result import Ballot

#: A voter's pseudonym, and the pages of the ballot, ascending.
Cast = tuple[str, tuple[int, ...]]


def pseudonym_of(who: str, salt: bytes | None) -> str:
    """SHA-256 of the round's public salt and the voter's id or name, in hexadecimal.

    Without a salt `who` is a pseudonym already and stays. The salt keeps a voter's pseudonyms of
    two rounds apart; it is public, so somebody who guesses the name can check the guess. That is
    what lets viewers find their own ballot.
    """
    if salt is None:
        return who
    return hashlib.sha256(salt + who.encode("utf-8", "surrogatepass")).hexdigest()


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
    return hashlib.sha256(rfc8785.dumps(sorted(cast))).hexdigest()
