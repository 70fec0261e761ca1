"""service/api/security.md is true of the tests, and leaves no requirement of OWASP ASVS 5.0.0 out."""

from __future__ import annotations

import ast
import re
from collections import Counter
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]
PAGE = (ROOT / "service" / "api" / "security.md").read_text("utf-8")
LIST = (Path(__file__).parent / "asvs-5.0.0.txt").read_text("utf-8")
NUMBER = re.compile(r"v5\.0\.0-([\d.]+\d|\d+)((?:\.\*)?)")


def levels() -> dict[str, int]:
    """The level of each requirement of levels 1 and 2."""
    lines = [line.split() for line in LIST.splitlines() if not line.startswith("#")]
    return {number: int(level) for level, number in lines}


def rows(heading: str) -> list[list[str]]:
    """The cells of the table below a heading."""
    part = PAGE.split(f"\n## {heading}\n")[1].split("\n## ")[0]
    lines = [line for line in part.splitlines() if line.startswith("| v5.0.0-")]
    return [[cell.strip() for cell in line.strip("|").split(" | ")] for line in lines]


def named_in(cell: str) -> list[str]:
    """The numbers in a cell; "9.*" is all that begin so."""
    found: list[str] = []
    for number, rest in NUMBER.findall(cell):
        below = [each for each in levels() if each.startswith(f"{number}.")]
        found += below if rest else [number]
    return found


def tables() -> dict[str, list[str]]:
    return {
        heading: [number for row in rows(heading) for number in named_in(row[0])]
        for heading in ("Held", "Not held, and why", "What does not apply")
    }


def names_in(path: str) -> set[str]:
    tree = ast.parse((ROOT / path).read_text("utf-8"))
    return {
        node.name
        for node in ast.walk(tree)
        if isinstance(node, ast.FunctionDef) and node.name.startswith("test_")
    }


def test_the_list_has_as_many_requirements_as_the_standard() -> None:
    # The standard's own count, from the same file: 70 of level 1, 183 of level 2.
    assert Counter(levels().values()) == {1: 70, 2: 183}


def test_every_requirement_of_both_levels_stands_in_one_table() -> None:
    told = Counter(number for numbers in tables().values() for number in numbers)
    assert {number for number, times in told.items() if times > 1} == set()
    assert set(told) - set(levels()) == set()
    assert set(levels()) - set(told) == set()


def test_level_1_is_held_where_it_applies() -> None:
    assert [each for each in tables()["Not held, and why"] if levels()[each] == 1] == []


@pytest.mark.parametrize("row", rows("Held"), ids=lambda row: row[0])
def test_the_tests_that_are_named_exist(row: list[str]) -> None:
    named = re.findall(r"`(tests/[\w/]+\.py)::(\w+)`", row[3])
    assert named
    assert len(named) == row[3].count("::"), row[3]
    for path, name in named:
        assert name in names_in(path), f"{path}::{name}"


def test_the_times_to_mend_are_told() -> None:
    told = " ".join(PAGE.split("**Vulnerabilities in packages**")[1].split("- **Log**")[0].split())
    assert re.search(r"within 7 days, any other within 30", told)
    assert "scripts/audit.py" in told


def test_no_script_stores_anything_in_the_browser() -> None:
    for script in (ROOT / "service" / "pages" / "static").glob("*.js"):
        found = re.findall(
            r"localStorage|sessionStorage|indexedDB|document\.cookie|postMessage|WebSocket|innerHTML|eval\(",
            script.read_text("utf-8"),
        )
        assert found == [], script.name
