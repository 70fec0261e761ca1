"""Reads the lock file: which packages, in which versions, with which hashes.

The file has one section for what running needs, one for what only the tests need, and one for what
only the audit needs. Python's own library only.
"""

import hashlib
import importlib.metadata
import re
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
LOCK = ROOT / "requirements.lock"
#: What begins each section of the lock file.
HEADING = re.compile(r"^# section (?P<name>\w+):.*$", re.MULTILINE)
PIN = re.compile(r"^(?P<name>[\w.-]+)==(?P<version>[^\s;\\]+)(?P<condition>\s*;)?", re.MULTILINE)


def section(name: str) -> str:
    """The lock file's section of that name, as requirements with hashes.

    Raises:
        SystemExit: the lock file is not there, or has no such section.
    """
    try:
        parts = HEADING.split(LOCK.read_text(encoding="utf-8"))
    except (OSError, UnicodeDecodeError):
        sys.exit(f"{LOCK} is missing or cannot be read: get the whole project again.")
    found = dict(zip(parts[1::2], parts[2::2], strict=True))
    if name not in found:
        sys.exit(f"{LOCK} has no section {name!r}: get the whole project again.")
    return found[name].strip() + "\n"


def digest(name: str) -> str:
    """The SHA-256 of a section, to know whether it was installed."""
    return hashlib.sha256(section(name).encode()).hexdigest()


def is_installed(name: str) -> bool:
    """Whether this Python has every package of the section in the version named.

    A package with a condition (one system only, say) may be missing.
    """
    versions: dict[str, set[str]] = {}
    always: set[str] = set()
    for pin in PIN.finditer(section(name)):
        versions.setdefault(pin["name"], set()).add(pin["version"])
        if not pin["condition"]:
            always.add(pin["name"])
    return all(
        _version_of(package) in (allowed if package in always else {*allowed, None})
        for package, allowed in versions.items()
    )


def _version_of(package: str) -> str | None:
    try:
        return normal(importlib.metadata.version(package))
    except importlib.metadata.PackageNotFoundError:
        return None


def normal(version: str) -> str:
    """A version as a lock has it: without zeros before a number, "2.012" is "2.12".

    PEP 440 (2013), "Integer normalization": a package may write its own version otherwise.
    """
    return re.sub(r"(?<![0-9a-z])0+(?=[0-9])", "", version)
