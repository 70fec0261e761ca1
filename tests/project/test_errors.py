"""The tree of errors: drawn as it is, used by the inside alone, one sentence each."""

from __future__ import annotations

import ast
import builtins
import inspect
import re
from collections.abc import Iterator
from pathlib import Path

import pytest

from service import errors
from service.errors import LoopstartError

ROOT = Path(__file__).parents[2]
INSIDE = ("chart", "comments", "ballots", "counting", "mystery", "pace", "announce")

#: Parents that only gather their children and are never raised themselves.
GATHERING = {errors.LoopstartError, errors.AccessRefused}

#: What errors are made with here, by the type of what they take.
SAMPLES: dict[str, object] = {"str": "round 2", "int": 63, "tuple[str, ...]": ("when", "who")}
#: An answer's own sentence is passed on whole.
WHOLE_SENTENCES = {"detail": "round 2 is open and cannot be opened: close it first."}

#: Words that nobody needs apart from the message they are in.
ONLY_IN_THE_MESSAGE = {"why", "detail"}


def made(kind: type[LoopstartError], *, with_defaults: bool) -> LoopstartError:
    """An error of that kind; what may be left out is left out, or given too."""
    taken = [
        (name, taken)
        for name, taken in inspect.signature(kind).parameters.items()
        if with_defaults or taken.default is inspect.Parameter.empty
    ]
    given = {
        name: WHOLE_SENTENCES.get(name, SAMPLES[str(taken.annotation)]) for name, taken in taken
    }
    return kind(**given)


def kinds() -> list[type[LoopstartError]]:
    """Every error that can be raised."""
    found = [getattr(errors, name) for name in real_tree()]
    return [kind for kind in found if kind not in GATHERING]


def drawn_tree(docstring: str) -> dict[str, str | None]:
    """Each class drawn in the docstring with the parent it is drawn under."""
    parents: dict[str, str | None] = {}
    above: list[tuple[int, str]] = []
    for line in docstring.splitlines():
        found = re.match(r"[ │]{4,}?(?:[├└]── )?(?=[A-Z])(\w+)", line)
        if found is None:
            continue
        depth, name = found.start(1), found[1]
        above = [(column, parent) for column, parent in above if column < depth]
        parents[name] = above[-1][1] if above else None
        above.append((depth, name))
    return parents


def real_tree() -> dict[str, str | None]:
    """Each class of the module with its parent; None for the one that comes from Python's."""
    classes = [
        found
        for _, found in inspect.getmembers(errors, inspect.isclass)
        if issubclass(found, BaseException) and found.__module__ == errors.__name__
    ]
    names = {found.__name__ for found in classes}
    return {
        found.__name__: parent if (parent := found.__bases__[0].__name__) in names else None
        for found in classes
    }


def is_one_sentence(message: str) -> bool:
    """Whether it ends in one full stop and none is inside."""
    return bool(re.fullmatch(r"\S(?:(?![.!?;]\s)[^\n])*[^\s.!?:]\.", message))


def strange_raises(source: str, module: str) -> list[str]:
    """What a module raises at its callers that is not an error of the tree.

    A bare `raise` passes one on. What a private function raises is the module's own business.
    """
    known = set(real_tree())

    def look(node: ast.AST) -> Iterator[str]:
        for child in ast.iter_child_nodes(node):
            if isinstance(child, ast.FunctionDef) and child.name.startswith("_"):
                continue
            if isinstance(child, ast.Raise) and child.exc is not None:
                raised = child.exc.func if isinstance(child.exc, ast.Call) else child.exc
                name = ast.unparse(raised).rpartition(".")[2]
                if name not in known:
                    yield f"{module}, line {child.lineno}: raises {name}"
            yield from look(child)

    return list(look(ast.parse(source)))


def strange_classes(source: str, module: str) -> list[str]:
    """Classes of errors that grow outside the tree."""
    python = {
        name
        for name, found in vars(builtins).items()
        if isinstance(found, type) and issubclass(found, BaseException)
    }
    return [
        f"{module}, line {node.lineno}: {node.name}"
        for node in ast.walk(ast.parse(source))
        if isinstance(node, ast.ClassDef)
        and {ast.unparse(base).rpartition(".")[2] for base in node.bases}
        & (python | set(real_tree()))
    ]


def last_words(node: ast.expr) -> str:
    """The end of a text as it is written in the source; nothing for what is no text."""
    if isinstance(node, ast.JoinedStr) and node.values:
        return last_words(node.values[-1])
    return node.value if isinstance(node, ast.Constant) and isinstance(node.value, str) else ""


def double_stops(source: str, module: str) -> Iterator[str]:
    """Parts of messages that bring a full stop of their own, where the error adds one."""
    known = set(real_tree())
    for node in ast.walk(ast.parse(source)):
        if isinstance(node, ast.Call) and ast.unparse(node.func).rpartition(".")[2] in known:
            given = [*node.args, *(keyword.value for keyword in node.keywords)]
            yield from (
                f"{module}, line {part.lineno}: {last_words(part)[-60:]}"
                for part in given
                if last_words(part).rstrip().endswith((".", "!", ":"))
            )


def sources(*parts: str) -> list[tuple[str, str]]:
    paths = [path for part in parts for path in sorted((ROOT / "service" / part).rglob("*.py"))]
    return [
        (path.relative_to(ROOT).as_posix(), path.read_text(encoding="utf-8"))
        for path in paths
        if path.name != "errors.py" or path.parent.name != "service"
    ]


def test_the_tree_is_drawn_as_it_is() -> None:
    drawn = drawn_tree(errors.__doc__ or "")
    assert drawn == real_tree()
    assert drawn["LoopstartError"] is None
    assert (drawn["EmptyExport"], drawn["TokenWrong"]) == ("BadExport", "AccessRefused")


@pytest.mark.parametrize("with_defaults", [False, True], ids=["at least", "everything"])
@pytest.mark.parametrize("kind", kinds(), ids=lambda kind: kind.__name__)
def test_every_message_is_one_sentence_with_a_full_stop(
    kind: type[LoopstartError], *, with_defaults: bool
) -> None:
    message = str(made(kind, with_defaults=with_defaults))
    assert is_one_sentence(message), message


@pytest.mark.parametrize("kind", kinds(), ids=lambda kind: kind.__name__)
def test_every_error_holds_what_it_was_made_with(kind: type[LoopstartError]) -> None:
    taken = set(inspect.signature(kind).parameters)
    assert taken <= set(vars(made(kind, with_defaults=True))) | ONLY_IN_THE_MESSAGE


def test_the_inside_raises_nothing_but_the_tree() -> None:
    assert [wrong for name, text in sources(*INSIDE) for wrong in strange_raises(text, name)] == []


def test_no_error_grows_outside_the_tree() -> None:
    assert [wrong for name, text in sources("") for wrong in strange_classes(text, name)] == []


def test_no_part_of_a_message_brings_its_own_full_stop() -> None:
    assert [wrong for name, text in sources("") for wrong in double_stops(text, name)] == []


def test_a_wrong_drawing_is_seen() -> None:
    drawn = errors.__doc__ or ""
    assert drawn_tree(drawn.replace("│   ├── BadChart", "├── BadChart")) != real_tree()
    assert drawn_tree(drawn.replace("    ├── BadSetting\n", "")) != real_tree()
    assert drawn_tree(drawn.replace("BadSetting", "BadWish")) != real_tree()


@pytest.mark.parametrize(
    "message",
    [
        "no full stop",
        "two. Sentences.",
        "two full stops..",
        "a question? Yes.",
        "ends with a space. ",
        "two\nlines.",
        "nothing to do: .",
        "",
    ],
)
def test_a_message_that_is_not_one_sentence_is_seen(message: str) -> None:
    assert not is_one_sentence(message)


@pytest.mark.parametrize(
    "line",
    [
        "raise ValueError('no')",
        "raise KeyError",
        "def f():\n    raise errors.Odd('no') from None",
        "class A:\n    def f(self):\n        if self:\n            raise TypeError('no')",
    ],
)
def test_raising_anything_else_is_seen(line: str) -> None:
    assert len(strange_raises(line, "grid.py")) == 1


def test_raising_an_error_of_the_tree_or_passing_one_on_is_let_through() -> None:
    source = "try:\n    f()\nexcept BadChart:\n    raise\nraise errors.BadChart('a', 'b') from None"
    assert strange_raises(source, "grid.py") == []


def test_what_a_private_function_raises_is_the_modules_own_business() -> None:
    source = "def _column(text):\n    raise ValueError(text)"
    assert strange_raises(source, "grid.py") == []
    assert strange_raises(source.replace("_column", "column"), "grid.py")


@pytest.mark.parametrize("base", ["Exception", "ValueError", "BadInput", "errors.NotFound"])
def test_a_class_outside_the_tree_is_seen(base: str) -> None:
    assert strange_classes(f"class Odd({base}):\n    pass", "grid.py") == ["grid.py, line 1: Odd"]


@pytest.mark.parametrize(
    "call",
    ["BadChart('a', 'do b.')", "BadChart(f'{a} is b.', 'c')", "BadChart('a', todo=f'do {b}!')"],
)
def test_a_full_stop_of_its_own_is_seen(call: str) -> None:
    assert len(list(double_stops(f"raise {call}", "grid.py"))) == 1
