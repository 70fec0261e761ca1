"""Whether a reveal opens the seals that were published before: a digest made again, no more.

The canonical form (RFC 8785, section 3.2) of objects whose names are plain ASCII and which hold
only texts, lists and small whole numbers is what Python's own JSON writer gives, sorted and
without spaces.
"""

from __future__ import annotations

import hashlib
import json
import re
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

FORMAT = "loopstart reveal 1"

_HEX = re.compile(r"[0-9a-f]{64}")
_ANSWER = {"title": str, "designer": str, "aliases": list}
_NOTE = {"number": int, "at": str, "alias": str, "salt": str, "seal": str}


@dataclass(frozen=True)
class RevealReport:
    """What a reveal is of, what was checked, and what does not fit, each in a sentence."""

    heading: str
    checks: tuple[str, ...]
    troubles: tuple[str, ...]

    @property
    def fits(self) -> bool:
        """Whether everything fits."""
        return not self.troubles


def is_reveal(value: Any) -> bool:
    """Whether this is a reveal, as against a record or something else."""
    return isinstance(value, dict) and value.get("format") == FORMAT


def check_reveal(reveal: dict[str, Any], seal: str | None = None) -> RevealReport:
    """Check a reveal; `seal` is the one that was shown before the game, to be compared."""
    troubles = _of_form(reveal)
    if troubles:
        return RevealReport("A reveal that is not whole.", (), tuple(troubles))
    answer = reveal["answer"]
    by = f" by {answer['designer']}" if answer["designer"] else ""
    heading = f"The reveal of {reveal['name']}: {answer['title']}{by}."
    made = sha256_of({"answer": {name: answer[name] for name in _ANSWER}, "salt": reveal["salt"]})
    if made != reveal["seal"]:
        troubles.append(
            f"seal: answer and salt make {made}, and it is {reveal['seal']}: title, designer, "
            "aliases or salt are not what was sealed."
        )
    if seal is not None and seal.strip().lower() != reveal["seal"]:
        troubles.append(f"seal: it is {reveal['seal']}, which is not the one shown beforehand.")
    for place, note in enumerate(reveal["alias_notes"]):
        troubles += _of_note(note, place, reveal["seal"])
    return RevealReport(heading, tuple(_checks(reveal, seal)), tuple(troubles))


def show_reveal(report: RevealReport) -> None:
    """Print the report."""
    print(report.heading)
    if report.fits:
        print("\n".join(report.checks))
        print("Everything fits.")
    else:
        print("This does not fit:")
        print("\n".join(f"  {trouble}" for trouble in report.troubles))


def sha256_of(value: Any) -> str:
    """SHA-256 over the canonical form of such an object, in hexadecimal."""
    told = json.dumps(value, ensure_ascii=False, sort_keys=True, separators=(",", ":"))
    return hashlib.sha256(told.encode("utf-8", "surrogatepass")).hexdigest()


def _checks(reveal: dict[str, Any], seal: str | None) -> list[str]:
    told = ["Answer and salt were hashed anew, and make the seal."]
    if seal is not None:
        told.append("The seal is the one that was shown beforehand.")
    else:
        told.append("Compare the seal with the one shown beforehand: " + reveal["seal"])
    many = len(reveal["alias_notes"])
    if many:
        told.append(
            f"{many} noted alias{'es' if many > 1 else ''}: each note makes its own seal, which "
            "was shown from the time of the note on."
        )
    told.append("Not sealed, and so not checked: the game's name, and when it was sealed.")
    return told


def _of_note(note: dict[str, Any], place: int, seal: str) -> list[str]:
    where = f"alias_notes/{place}"
    troubles = []
    if note["number"] != place + 1:
        troubles.append(f"{where}/number: it is {note['number']}, and should be {place + 1}.")
    said = {name: note[name] for name in ("alias", "at", "number", "salt")}
    made = sha256_of({**said, "seal": seal})
    if made != note["seal"]:
        troubles.append(
            f"{where}/seal: the note makes {made}, and it is {note['seal']}: its alias, time, "
            "number or salt is not what was sealed."
        )
    return troubles


def _of_form(reveal: dict[str, Any]) -> list[str]:
    """What of a reveal's fields is missing or not as it must be."""
    kinds = {"name": str, "seal": str, "salt": str, "answer": dict, "alias_notes": list}
    troubles = _of_fields(reveal, kinds, "")
    if troubles:
        return troubles
    troubles = _of_fields(reveal["answer"], _ANSWER, "answer/")
    if not troubles and not all(isinstance(alias, str) for alias in reveal["answer"]["aliases"]):
        troubles.append("answer/aliases: each of them should be a text.")
    for place, note in enumerate(reveal["alias_notes"]):
        if not isinstance(note, dict):
            troubles.append(f"alias_notes/{place}: it should hold a note.")
            continue
        troubles += _of_fields(note, _NOTE, f"alias_notes/{place}/")
    return troubles


def _of_fields(told: dict[str, Any], kinds: Mapping[str, type], where: str) -> list[str]:
    troubles = []
    for name, kind in kinds.items():
        if name not in told:
            troubles.append(f"{where}{name}: this is missing.")
        elif type(told[name]) is not kind:
            troubles.append(f"{where}{name}: this should be {_KINDS[kind]}.")
        elif name in ("seal", "salt") and not _HEX.fullmatch(told[name]):
            troubles.append(f"{where}{name}: this should be 64 small hexadecimal digits.")
    return troubles


_KINDS: dict[type, str] = {
    str: "a text",
    int: "a whole number",
    dict: "an object",
    list: "a list",
}
