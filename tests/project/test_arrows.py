"""The house's arrows, read from the imports: the inside knows nothing of the world.

Planted wrong lines show that each arrow is really held.
"""

from __future__ import annotations

import ast
from collections.abc import Iterator
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
SERVICE = ROOT / "service"

#: What each part of the house may import of the others; every part may use the errors.
INSIDE: dict[str, set[str]] = {
    "chart": set(),
    "comments": set(),
    "ballots": {"chart", "comments"},
    "counting": {"chart", "comments", "ballots"},
    "mystery": {"comments"},
    "pace": {"chart"},
    "announce": {"chart", "comments", "ballots", "counting", "pace"},
}
OUTSIDE: dict[str, set[str]] = {
    "errors": set(),
    "settings": set(),
    "store": {*INSIDE, "settings"},
    "api": {*INSIDE, "settings", "store"},
    "pages": {*INSIDE, "settings", "store", "api"},
    "app": {*INSIDE, "settings", "store", "api", "pages"},
}
MAY_IMPORT = INSIDE | OUTSIDE

#: Frameworks, clocks, chance, files and the environment have no place in the inside.
WORLD = {
    *("fastapi", "starlette", "uvicorn", "httpx", "requests", "socket", "urllib", "http"),
    *("sqlmodel", "sqlalchemy", "alembic", "sqlite3", "psycopg"),
    *("jinja2", "pydantic", "pydantic_settings", "rich"),
    *("random", "secrets", "uuid", "time", "os", "sys", "subprocess", "platformdirs"),
    *("pathlib", "tempfile", "shutil", "glob", "fileinput", "logging", "importlib"),
}
#: Names that reach out without an import of their own.
REACHES_OUT = {"open", "input", "print", "exec", "eval", "__import__"}
CLOCKS = {"now", "today", "utcnow"}
FILES = {"open", "read_text", "read_bytes", "write_text", "write_bytes"}


def imported(tree: ast.AST, package: str) -> Iterator[str]:
    """Full names of what a module imports; `package` is the folder it lies in."""
    for node in ast.walk(tree):
        if isinstance(node, ast.Import):
            yield from (alias.name for alias in node.names)
        elif isinstance(node, ast.ImportFrom):
            above = package.split(".")
            above = above[: len(above) + 1 - node.level] if node.level else []
            origin = ".".join([*above, *([node.module] if node.module else [])])
            yield from (f"{origin}.{alias.name}" for alias in node.names)


def wrong_arrows(source: str, module: str) -> list[str]:
    """What a module of the service imports of the house and must not."""
    part = module.split(".")[1]
    allowed = MAY_IMPORT.get(part, set()) | {part, "errors"}
    # Modules two levels down say "from . import x": their package is what is before the last dot.
    names = imported(ast.parse(source), module.rpartition(".")[0])
    return [
        f"{module} imports {name}"
        for name in names
        if name.split(".")[0] == "service" and name.split(".")[1] not in allowed
    ] + [
        f"{module} imports {name}"
        for name in imported(ast.parse(source), module.rpartition(".")[0])
        if name.split(".")[0] in {"scripts", "tests", "demo"}
    ]


def reaches_out(source: str, module: str) -> list[str]:
    """What a module of the inside imports or calls of the world."""
    tree = ast.parse(source)
    found = [
        f"{module} imports {name}"
        for name in imported(tree, module.rpartition(".")[0])
        if name.split(".")[0] in WORLD
    ]
    for node in ast.walk(tree):
        if isinstance(node, ast.Name) and node.id in REACHES_OUT:
            found.append(f"{module}, line {node.lineno}: {node.id}")
        elif isinstance(node, ast.Attribute) and node.attr in (CLOCKS | FILES) - _in_memory(node):
            found.append(f"{module}, line {node.lineno}: .{node.attr}")
    return found


def _in_memory(node: ast.Attribute) -> set[str]:
    """A file inside an archive is opened in memory: the archive itself was handed in as bytes."""
    held = node.value
    name = held.id if isinstance(held, ast.Name) else getattr(held, "attr", "")
    return {"open"} if name in {"archive", "_archive"} else set()


def modules() -> list[tuple[str, str]]:
    """Name and source of every module of the service."""
    return [
        (".".join(path.relative_to(ROOT).with_suffix("").parts), path.read_text(encoding="utf-8"))
        for path in sorted(SERVICE.rglob("*.py"))
        if path.parent != SERVICE or path.name != "__init__.py"
    ]


def inside() -> list[tuple[str, str]]:
    return [(name, source) for name, source in modules() if name.split(".")[1] in INSIDE]


def test_every_part_of_the_house_has_its_arrows() -> None:
    assert {name.split(".")[1] for name, _ in modules()} <= set(MAY_IMPORT)


def test_the_inside_is_there_to_be_read() -> None:
    parts = {name.split(".")[1] for name, _ in inside()}
    assert {"chart", "comments", "ballots", "counting", "mystery", "pace", "announce"} <= parts


def test_the_parts_import_one_another_only_along_the_arrows() -> None:
    assert [wrong for name, source in modules() for wrong in wrong_arrows(source, name)] == []


def test_the_inside_reaches_no_framework_file_clock_chance_or_environment() -> None:
    assert [wrong for name, source in inside() for wrong in reaches_out(source, name)] == []


@pytest.mark.parametrize(
    ("module", "line"),
    [
        ("service.chart.grid", "from service.counting.round import Ruling"),
        ("service.chart.grid", "import service.store.tables"),
        ("service.chart.grid", "from service import comments"),
        ("service.chart.grid", "from ..counting import round"),
        ("service.chart.grid", "from .. import counting"),
        ("service.chart.grid", "if TYPE_CHECKING:\n    from service.ballots import reading"),
        ("service.ballots.reader", "from service.counting import result"),
        ("service.ballots.languages.en", "from ...counting import result"),
        ("service.comments.times", "def f():\n    from service.settings import Settings"),
        ("service.counting.settle", "from service.announce.words import result_words"),
        ("service.mystery.guess", "from service.ballots.reading import Reading"),
        ("service.pace.forecast", "from service.counting.wording import how_many"),
        ("service.pace.situation", "from service.announce.pace_words import finish_words"),
        ("service.store.games", "from service.api.errors import problem"),
        ("service.api.rounds", "from service.app import create_app"),
        ("service.errors", "from service.chart.grid import Chart"),
        ("service.store.games", "import scripts.backup"),
    ],
)
def test_a_wrong_arrow_is_seen(module: str, line: str) -> None:
    assert len(wrong_arrows(line, module)) == 1


@pytest.mark.parametrize(
    ("module", "line"),
    [
        ("service.chart.votable", "from service.chart.grid import Chart"),
        ("service.chart.votable", "from .grid import Chart"),
        ("service.chart.votable", "from service.errors import BadChart"),
        ("service.chart.votable", "from functools import lru_cache"),
        ("service.counting.settle", "from service.ballots.reading import Reading"),
        ("service.announce.pace_words", "from service.pace.forecast import Finish"),
        ("service.pace.situation", "from service.chart.grid import Chart"),
        ("service.app", "from service.api.errors import problem"),
    ],
)
def test_a_right_arrow_is_let_through(module: str, line: str) -> None:
    assert wrong_arrows(line, module) == []


@pytest.mark.parametrize(
    "line",
    [
        *(f"import {name}" for name in sorted(WORLD)),
        "from fastapi import FastAPI",
        "from starlette.requests import Request",
        "from pydantic import BaseModel",
        "import sqlalchemy.orm as orm",
        "from os import environ",
        "from time import time",
        "open('votes.csv')",
        "x = print",
        "datetime.now(UTC)",
        "moment = field(default_factory=datetime.utcnow)",
        "date.today()",
        "file.read_text()",
        "def f():\n    import random",
    ],
)
def test_reaching_out_of_the_inside_is_seen(line: str) -> None:
    assert len(reaches_out(line, "service.chart.grid")) == 1


@pytest.mark.parametrize(
    "line",
    [
        "from datetime import UTC, datetime",
        "from zoneinfo import ZoneInfo",
        "import hashlib, json, csv, io",
        "from babel import Locale",
        "round.opens <= comment.written",
    ],
)
def test_plain_work_on_values_is_let_through(line: str) -> None:
    assert reaches_out(line, "service.chart.grid") == []
