"""Aliases added after the sealing: by a public note that is sealed as the answer is.

The note's seal and time are public at once, its words only with the reveal. So nobody is told the
alias, and nobody can say later that another one was noted, or that it was noted earlier.
"""

from __future__ import annotations

import hashlib
import hmac
from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import UTC, datetime

import rfc8785

from service.comments.spans import Span
from service.errors import BadRules
from service.mystery.answer import Answer, GuessRules
from service.mystery.guess import GUESS_OUTCOMES, GuessReading, read_guess
from service.mystery.seal import SALT_BYTES


@dataclass(frozen=True, slots=True)
class AliasNote:
    """Another name that counts from `at` on; `number` counts a game's notes from 1.

    Raises:
        BadRules: a name without letter and digit, or a salt that is not 32 bytes long.
    """

    number: int
    alias: str
    at: datetime
    salt: bytes

    def __post_init__(self) -> None:
        Answer("a title", aliases=(self.alias,))
        if len(self.salt) != SALT_BYTES:
            raise BadRules(
                f"the salt of a note has {len(self.salt)} bytes", f"give {SALT_BYTES} random bytes"
            )


def noted_bytes(note: AliasNote, seal: str) -> bytes:
    """What is sealed of a note, as canonical JSON (RFC 8785); `seal` is the one of the answer.

    Raises:
        BadRules: a name with a broken character in it.
    """
    told: dict[str, str | int] = {
        "alias": note.alias,
        "at": note.at.astimezone(UTC).isoformat(timespec="seconds").replace("+00:00", "Z"),
        "number": note.number,
        "salt": note.salt.hex(),
        "seal": seal,
    }
    try:
        return rfc8785.dumps(told)
    except (rfc8785.CanonicalizationError, UnicodeError) as broken:
        raise BadRules("the alias holds a broken character", "type the name again") from broken


def seal_of_note(note: AliasNote, seal: str) -> str:
    """The note's seal: SHA-256 (FIPS 180-4), 64 hexadecimal digits.

    Raises:
        BadRules: as noted_bytes.
    """
    return hashlib.sha256(noted_bytes(note, seal)).hexdigest()


def opens_note(published: str, note: AliasNote, seal: str) -> bool:
    """Whether the note is what was sealed as `published`."""
    return hmac.compare_digest(seal_of_note(note, seal), published.strip().lower())


def with_notes(answer: Answer, notes: Sequence[AliasNote]) -> Answer:
    """The answer with the aliases that were noted later."""
    return replace(answer, aliases=(*answer.aliases, *(note.alias for note in notes)))


def read_with_notes(
    text: str, rules: GuessRules, notes: Sequence[AliasNote], written: Span
) -> GuessReading:
    """Read one comment as a guess by the names that counted when it was written.

    A name that was noted only after that, or perhaps after, is for the host to decide: else an
    alias could be added for a guess that is known already.
    """
    then = [note for note in notes if note.at <= written.earliest]
    by_then = read_guess(text, _among(rules, then))
    if len(then) == len(notes):
        return by_then
    by_now = read_guess(text, _among(rules, notes))
    better = GUESS_OUTCOMES.index(by_now.outcome) < GUESS_OUTCOMES.index(by_then.outcome)
    if not better or by_now.outcome not in ("right", "look"):
        return by_then
    why = f"It names the piece by an alias that was noted only later. {by_now.why}"
    return GuessReading("look", why, by_now.evidence)


def _among(rules: GuessRules, notes: Sequence[AliasNote]) -> GuessRules:
    return replace(rules, answer=with_notes(rules.answer, notes)) if notes else rules
