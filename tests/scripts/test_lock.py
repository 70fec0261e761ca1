"""The lock file holds what pyproject.toml asks for, and lock.py needs uv."""

from __future__ import annotations

import re
import tomllib

import lockfile
import pytest

from tests.scripts.running import ROOT, run_script, sentences

PROJECT = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))


def pinned(section: str) -> set[str]:
    return {pin["name"] for pin in lockfile.PIN.finditer(lockfile.section(section))}


def asked(requirements: list[str]) -> set[str]:
    return {re.split(r"[\[<>=]", each)[0].lower() for each in requirements}


def test_what_running_asks_for_is_locked_for_running() -> None:
    assert asked(PROJECT["project"]["dependencies"]) <= pinned("run")


def test_what_the_tests_ask_for_is_locked_for_the_tests_only() -> None:
    assert asked(PROJECT["dependency-groups"]["test"]) <= pinned("test")
    assert not pinned("test") & pinned("run")


def test_docopt_is_left_out_and_the_file_says_why() -> None:
    assert "docopt" not in pinned("run") | pinned("test")
    assert "docopt is left out on purpose" in lockfile.LOCK.read_text(encoding="utf-8")


@pytest.mark.parametrize("section", ["run", "test", "audit"])
def test_every_package_has_a_hash(section: str) -> None:
    text = lockfile.section(section)
    starts = [pin.start() for pin in lockfile.PIN.finditer(text)]
    for start, end in zip(starts, [*starts[1:], len(text)], strict=True):
        assert "--hash=sha256:" in text[start:end]


def test_this_python_has_the_versions_that_are_locked() -> None:
    assert lockfile.is_installed("run")


@pytest.mark.parametrize(
    ("written", "locked"),
    [
        ("2.012", "2.12"),
        ("0.10.0", "0.10.0"),
        ("2026.01.0", "2026.1.0"),
        ("4.1.post1", "4.1.post1"),
    ],
)
def test_a_version_is_compared_as_it_is_locked(written: str, locked: str) -> None:
    assert lockfile.normal(written) == locked


def test_without_uv_the_lock_stays_and_one_sentence_says_so() -> None:
    before = lockfile.LOCK.read_bytes()
    told = run_script("lock.py", environment={"PATH": ""})
    assert told.returncode == 1
    assert sentences(told.stderr) == [
        "The program uv is missing: install it, put it on the PATH, and start again."
    ]
    assert lockfile.LOCK.read_bytes() == before
