"""Names that say what a thing is, and no trace of the machine it was written on.

The patterns here are written so that they do not match themselves.
"""

from __future__ import annotations

import re
import shutil
import subprocess
from collections.abc import Iterable
from pathlib import Path, PurePosixPath

import pytest

ROOT = Path(__file__).parents[2]
LOCK = "requirements.lock"
EMPTY_NAMES = {"util", "utils", "helper", "helpers", "core", "common", "misc"}
LEFT_OUT = {".git", ".venv", "__pycache__", "node_modules"}

MACHINE = re.compile(
    r"(?<![\w.])/(?:[h]ome|[U]sers|[r]oot|[w]ork|[t]mp)/\w|\b[A-Z]:\\{1,2}[U]sers\b|[.]{2}/[s]hared"
)
REGISTRY = re.compile(
    r"py[p]i\b|python[h]osted|npm[j]s|debian[.](?:org|net)|(?:deb|apt|security)[.]debian",
    re.IGNORECASE,
)
ADDRESS = re.compile(
    r"[a-z]+:/[/]|--(?:extra-)?index-url|--find-links|--trusted-host", re.IGNORECASE
)


def tracked_files() -> list[str]:
    """What belongs to the project; without git, all that lies in its folder."""
    git = shutil.which("git")
    if git and (ROOT / ".git").exists():
        listed = subprocess.run(  # noqa: S603 - git's own words, no input of anybody
            [git, "ls-files", "-z"], cwd=ROOT, capture_output=True, check=True
        ).stdout
        names = [name for name in listed.decode().split("\0") if name]
        return [name for name in names if (ROOT / name).is_file()]
    paths = (path for path in ROOT.rglob("*") if path.is_file())
    names = [path.relative_to(ROOT).as_posix() for path in paths]
    return [name for name in names if LEFT_OUT.isdisjoint(PurePosixPath(name).parts)]


def empty_names(names: Iterable[str]) -> list[str]:
    """The modules and folders of modules whose name says nothing."""
    modules = [PurePosixPath(name).with_suffix("") for name in names if name.endswith(".py")]
    return [str(module) for module in modules if EMPTY_NAMES.intersection(module.parts)]


def lines_with(pattern: re.Pattern[str], texts: Iterable[tuple[str, str]]) -> list[str]:
    return [
        f"{name}, line {number}: {line.strip()[:100]}"
        for name, text in texts
        for number, line in enumerate(text.splitlines(), start=1)
        if pattern.search(line)
    ]


def texts() -> list[tuple[str, str]]:
    return [
        (name, (ROOT / name).read_bytes().decode("utf-8", "replace")) for name in tracked_files()
    ]


def test_the_files_of_the_project_are_found() -> None:
    assert {"pyproject.toml", "service/errors.py"} <= set(tracked_files())


def test_no_module_has_a_name_that_says_nothing() -> None:
    assert empty_names(tracked_files()) == []


def test_no_file_holds_a_path_of_the_machine_it_was_written_on() -> None:
    assert lines_with(MACHINE, texts()) == []


def test_no_file_names_the_host_of_a_package_registry() -> None:
    assert lines_with(REGISTRY, texts()) == []


def test_the_lock_file_holds_packages_and_hashes_but_no_address() -> None:
    lock = (ROOT / LOCK).read_text(encoding="utf-8")
    assert "--hash=sha256:" in lock
    assert lines_with(ADDRESS, [(LOCK, lock)]) == []


@pytest.mark.parametrize(
    "name",
    ["service/utils.py", "service/core/grid.py", "tests/helpers.py", "scripts/common.py"],
)
def test_a_name_that_says_nothing_is_seen(name: str) -> None:
    assert empty_names([name]) == [name.removesuffix(".py")]


@pytest.mark.parametrize("name", ["service/chart/grid.py", "demo/core.csv", "scripts/score.py"])
def test_a_name_of_the_trade_is_let_through(name: str) -> None:
    assert empty_names([name]) == []


@pytest.mark.parametrize(
    "parts",
    [
        ("see ", "", "home", "ann", "chart.csv"),
        ("", "Users", "ann", "chart.csv"),
        ("'", "root", "chart.csv"),
        ("cd ", "work", "main"),
        ("(", "tmp", "votes.csv"),
        ("..", "shared", "design.md"),
    ],
)
def test_a_path_of_a_machine_is_seen(parts: tuple[str, ...]) -> None:
    start, *rest = parts
    text = start + "/" + "/".join(part for part in rest if part)
    assert lines_with(MACHINE, [("README.md", f"One line.\n{text}\n")]) == [
        f"README.md, line 2: {text.strip()}"
    ]


def test_a_windows_path_is_seen() -> None:
    assert lines_with(MACHINE, [("README.md", "\\".join(["C:", "Users", "ann"]))])


@pytest.mark.parametrize(
    "text",
    ["https://hall.example/work/3", "at home/in the hall", "data/users/", "/api/games", "~/charts"],
)
def test_an_address_or_a_plain_slash_is_let_through(text: str) -> None:
    assert lines_with(MACHINE, [("README.md", text)]) == []


@pytest.mark.parametrize(
    "parts",
    [
        ("https://", "py", "pi.org/simple"),
        ("a Py", "PI page"),
        ("files.python", "hosted.org"),
        ("registry.npm", "js.org"),
        ("d", "eb.deb", "ian.org"),
        ("ftp.de.", "deb", "ian.org"),
    ],
)
def test_the_host_of_a_registry_is_seen(parts: tuple[str, ...]) -> None:
    assert len(lines_with(REGISTRY, [("README.md", "".join(parts))])) == 1


@pytest.mark.parametrize(
    "line",
    [
        "rfc8785 @ https" + "://hall.example/rfc8785.whl",
        "--index" + "-url http" + "://hall.example/simple",
        "--find" + "-links wheels",
    ],
)
def test_an_address_in_the_lock_file_is_seen(line: str) -> None:
    assert len(lines_with(ADDRESS, [(LOCK, line)])) == 1
