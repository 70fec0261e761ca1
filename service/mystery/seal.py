"""The seal of an answer, published before the game, and the check of its reveal.

The seal is SHA-256 (FIPS 180-4) over the canonical JSON (RFC 8785) of a random salt and the
answer. Who has salt and answer can make the seal again with any tools; who has the seal alone
cannot try out answers, since the salt is as long as the digest.
"""

from __future__ import annotations

import hashlib
import hmac
import re
from dataclasses import dataclass

import rfc8785

from service.errors import BadRules
from service.mystery.answer import Answer

#: Bytes of salt: as many as the digest has.
SALT_BYTES = 32

_SEAL = re.compile(r"[0-9a-fA-F]{64}")


@dataclass(frozen=True, slots=True)
class RevealCheck:
    """Whether a reveal opens a seal: `seal` is the one that salt and answer make."""

    holds: bool
    seal: str
    why: str


def revealed_bytes(answer: Answer, salt: bytes) -> bytes:
    """What is sealed, as the bytes whose SHA-256 is the seal; published with the reveal.

    Raises:
        BadRules: a salt that is not 32 bytes long, or a name with a broken character in it.
    """
    _check_salt(salt)
    names: dict[str, str | list[str]] = {
        "title": answer.title,
        "designer": answer.designer,
        "aliases": list(answer.aliases),
    }
    try:
        return rfc8785.dumps({"answer": names, "salt": salt.hex()})
    except (rfc8785.CanonicalizationError, UnicodeError) as broken:
        raise BadRules(
            "a name of the answer holds a broken character", "type the name again"
        ) from broken


def seal_of(answer: Answer, salt: bytes) -> str:
    """The seal of an answer: 64 hexadecimal digits.

    `salt` is 32 random bytes, kept with the answer until the reveal.

    Raises:
        BadRules: as revealed_bytes.
    """
    return hashlib.sha256(revealed_bytes(answer, salt)).hexdigest()


def draw_value_of(salt: bytes, game: str, round_number: int) -> bytes:
    """A round's own value for a draw: HMAC-SHA-256 (RFC 2104) of game and round, keyed by the salt.

    It can be published: nobody gets the salt back from it, so it tells nothing of the answer and
    lets nobody try answers against the seal. Once the salt is revealed, anybody can make it again
    and see that it was fixed when the answer was sealed.

    Raises:
        BadRules: a salt that is not 32 bytes long.
    """
    _check_salt(salt)
    about = rfc8785.dumps({"draw": {"game": game, "round": round_number}})
    return hmac.digest(salt, about, "sha256")


def check_reveal(seal: str, answer: Answer, salt: bytes) -> RevealCheck:
    """Whether `answer` and `salt` are what was sealed; `seal` as it was published.

    Raises:
        BadRules: as revealed_bytes.
    """
    made = seal_of(answer, salt)
    published = seal.strip()
    if not _SEAL.fullmatch(published):
        why = "The published seal is no SHA-256 digest: it should be 64 hexadecimal digits."
        return RevealCheck(holds=False, seal=made, why=why)
    if hmac.compare_digest(made, published.lower()):
        why = "Salt and answer make the published seal: this is what was sealed."
        return RevealCheck(holds=True, seal=made, why=why)
    why = "Salt and answer make another seal than the published one: something was changed."
    return RevealCheck(holds=False, seal=made, why=why)


def _check_salt(salt: bytes) -> None:
    if len(salt) != SALT_BYTES:
        raise BadRules(
            f"the salt of a seal has {len(salt)} bytes", f"give {SALT_BYTES} random bytes"
        )
