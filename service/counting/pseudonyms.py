"""Voters under pseudonyms: who knows a name finds it in a record, a record tells no name."""

from __future__ import annotations

import hashlib
from collections.abc import Iterable

import rfc8785

from service.counting.result import Ballot


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
    told = sorted((pseudonym_of(one.voter, salt), tuple(sorted(one.pages))) for one in ballots)
    return hashlib.sha256(rfc8785.dumps(told)).hexdigest()
