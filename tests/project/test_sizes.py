"""Modules and functions small enough to be read at one sitting."""

from __future__ import annotations

import ast
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
MODULE_LINES = 300
TEST_LINES = 400
FUNCTION_LINES = 40


def python_files(*folders: str) -> list[Path]:
    return sorted(path for folder in folders for path in (ROOT / folder).rglob("*.py"))


def too_long(name: str, source: str, lines: int) -> list[str]:
    """The module itself, where it has more than `lines`."""
    found = len(source.splitlines())
    return [f"{name} has {found} lines"] if found > lines else []


def long_functions(name: str, source: str) -> list[str]:
    """The functions longer than allowed, from `def` to the end, docstring included."""
    found = []
    for node in ast.walk(ast.parse(source)):
        if isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef):
            lines = (node.end_lineno or node.lineno) - node.lineno + 1
            if lines > FUNCTION_LINES:
                found.append(f"{name}, {node.name} has {lines} lines")
    return found


def named_sources(*folders: str) -> list[tuple[str, str]]:
    return [
        (path.relative_to(ROOT).as_posix(), path.read_text(encoding="utf-8"))
        for path in python_files(*folders)
    ]


def test_no_module_has_more_than_300_lines() -> None:
    sources = named_sources("service", "scripts", "demo")
    assert len(sources) > 10
    assert [wrong for each in sources for wrong in too_long(*each, MODULE_LINES)] == []


def test_no_module_of_tests_has_more_than_400_lines() -> None:
    sources = named_sources("tests")
    assert len(sources) > 5
    assert [wrong for each in sources for wrong in too_long(*each, TEST_LINES)] == []


def test_no_function_has_more_than_40_lines() -> None:
    sources = named_sources("service", "scripts", "demo")
    assert [wrong for each in sources for wrong in long_functions(*each)] == []


def test_a_module_one_line_too_long_is_seen() -> None:
    assert too_long("grid.py", "x = 1\n" * 300, MODULE_LINES) == []
    assert too_long("grid.py", "x = 1\n" * 301, MODULE_LINES) == ["grid.py has 301 lines"]


@pytest.mark.parametrize("kind", ["def", "async def"])
def test_a_function_one_line_too_long_is_seen_wherever_it_is(kind: str) -> None:
    body = '    """Says\n\n    why.\n    """\n' + "    x = 1\n" * 35
    assert long_functions("grid.py", f"@first\n@second\n{kind} pages():\n{body}") == []
    longer = f"{kind} pages():\n{body}    y = 2\n"
    assert long_functions("grid.py", longer) == ["grid.py, pages has 41 lines"]
    within = "class Chart:\n" + "".join(f"    {line}\n" for line in longer.splitlines())
    assert long_functions("grid.py", within) == ["grid.py, pages has 41 lines"]
