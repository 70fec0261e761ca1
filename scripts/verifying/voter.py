"""A voter's own comments in a record, found by name or id: a record tells neither."""

from __future__ import annotations

import hashlib
import unicodedata
from typing import Any

#: Signs that steer direction or join nothing: a name is the same with or without them.
_HIDDEN = dict.fromkeys(
    [0x200B, 0x200E, 0x200F, *range(0x202A, 0x202F), 0x2060, *range(0x2066, 0x206A), 0xFEFF]
)


def show_voter(record: dict[str, Any], who: str) -> None:
    """Print what became of every comment of the voter with that name or id."""
    places = places_of(record, who)
    voters = {record["comments"][place]["voter"] for place in places}
    if not places:
        print(f"No comment of {who} is in this record: write the name or id as it was shown there.")
        return
    if len(voters) > 1:
        print(f"{len(voters)} voters are called {who}; each is one of their own:")
    else:
        print(f"The comments of {who}:")
    for place in places:
        print(f"- {in_words(record['comments'][place])}")


def places_of(record: dict[str, Any], who: str) -> list[int]:
    """The places of the voter's comments, by the author's id or by the name, case left aside."""
    salt = bytes.fromhex(record["salt"])
    hidden = {_hash(salt, who), _hash(salt, who.strip()), _hash(salt, _name(who))}
    return [
        place
        for place, comment in enumerate(record["comments"])
        if comment["voter"] in hidden or comment["name"] in hidden
    ]


def in_words(comment: dict[str, Any]) -> str:
    """One comment of a record, in a sentence."""
    earliest, latest = comment["written"]["earliest"], comment["written"]["latest"]
    when = earliest if earliest == latest else f"between {earliest} and {latest}"
    pages = ", ".join(map(str, comment["pages"]))
    named = f" for page {pages}" if len(comment["pages"]) == 1 else f" for pages {pages}"
    if comment["outcome"] == "counts":
        return f"written {when}: counts{named}."
    told = (
        f" (it names {'page' if len(comment['pages']) == 1 else 'pages'} {pages})" if pages else ""
    )
    return f"written {when}: set aside, {comment['outcome']}{told}."


def _hash(salt: bytes, who: str) -> str:
    return hashlib.sha256(salt + who.encode("utf-8", "surrogatepass")).hexdigest()


def _name(author: str) -> str:
    """A name as names are compared: without case, accents kept, spaces drawn together."""
    if not author.isascii():
        author = unicodedata.normalize("NFC", author).translate(_HIDDEN)
    return unicodedata.normalize("NFC", " ".join(author.split()).casefold())
