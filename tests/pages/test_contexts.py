"""Each page's template and its context hold the same names, and what is inside is used too."""

from __future__ import annotations

import dataclasses
import importlib
import pkgutil
from collections.abc import Iterator
from pathlib import Path
from typing import Any, get_args, get_type_hints

import pytest
from jinja2 import DictLoader, Environment, meta, nodes

import service.pages
from service.pages.rendering import Context, environment

TEMPLATES = Path(service.pages.__path__[0]) / "templates"


def contexts() -> list[type[Context]]:
    """Every context that any module of the pages defines."""
    found = {
        kind
        for module in pkgutil.iter_modules(service.pages.__path__)
        for kind in vars(importlib.import_module(f"service.pages.{module.name}")).values()
        if isinstance(kind, type) and issubclass(kind, Context) and kind is not Context
    }
    return sorted(found, key=lambda kind: kind.__name__)


def templates_of(made: Environment, name: str) -> Iterator[nodes.Template]:
    """A template, with those that it extends, includes or imports from."""
    assert made.loader is not None
    tree = made.parse(made.loader.get_source(made, name)[0])
    yield tree
    for other in meta.find_referenced_templates(tree):
        assert other is not None, f"{name} names a template that cannot be known beforehand"
        yield from templates_of(made, other)


def variables_of(made: Environment, name: str) -> set[str]:
    """What a template needs to be given."""
    needed: set[str] = set()
    defined: set[str] = set(made.globals)
    for tree in templates_of(made, name):
        needed |= meta.find_undeclared_variables(tree)
        defined |= {one.target for one in tree.find_all(nodes.Import)}
    return needed - defined


def attributes_of(made: Environment, name: str) -> set[str]:
    """The names of everything that a template looks at inside of what it is given."""
    return {one.attr for tree in templates_of(made, name) for one in tree.find_all(nodes.Getattr)}


def parts_of(kind: Any) -> Iterator[type]:
    """The dataclasses inside of a type: in a tuple, in a union, in another dataclass."""
    for inside in get_args(kind):
        yield from parts_of(inside)
    if dataclasses.is_dataclass(kind) and isinstance(kind, type):
        yield kind
        for hint in get_type_hints(kind).values():
            yield from parts_of(hint)


def names(kind: type[Context]) -> str:
    return kind.__name__


@pytest.mark.parametrize("kind", contexts(), ids=names)
def test_a_template_is_given_just_what_it_needs(kind: type[Context]) -> None:
    given = {field.name for field in dataclasses.fields(kind)}
    assert variables_of(environment(), kind.template) == given


@pytest.mark.parametrize("kind", contexts(), ids=names)
def test_nothing_inside_a_context_is_left_unused(kind: type[Context]) -> None:
    used = attributes_of(environment(), kind.template)
    unused = {
        f"{part.__name__}.{field.name}"
        for hint in get_type_hints(kind).values()
        for part in parts_of(hint)
        for field in dataclasses.fields(part)
        if field.name not in used and part.__name__ != "Frame"
    }
    assert unused == set()


def test_every_template_is_a_page_or_a_part_of_one() -> None:
    made = environment()
    reached = {"base.html"}
    for kind in contexts():
        reached.add(kind.template)
        for tree in templates_of(made, kind.template):
            reached |= {str(name) for name in meta.find_referenced_templates(tree)}
    assert reached == {path.name for path in TEMPLATES.iterdir()}
    assert len(contexts()) >= 6


def test_contexts_are_frozen_and_no_two_share_a_template() -> None:
    kinds = contexts()
    assert len({kind.template for kind in kinds}) == len(kinds)
    for kind in kinds:
        assert kind.__dataclass_params__.frozen, kind  # type: ignore[attr-defined]


def test_a_name_that_is_missing_or_too_many_is_seen() -> None:
    """The same look at a template that has drifted away."""
    made = Environment(  # noqa: S701 - nothing is rendered
        loader=DictLoader(
            {
                "a": '{% extends "b" %}{% block c %}{{ title.of }}{% endblock %}',
                "b": '{% import "p" as p %}{{ frame.x }}{{ p.q(r) }}{% block c %}{% endblock %}',
                "p": "{% macro q(z) %}{{ z.inner }}{% endmacro %}",
            }
        )
    )
    assert variables_of(made, "a") == {"title", "frame", "r"}
    assert attributes_of(made, "a") >= {"of", "x", "inner"}


def test_no_template_holds_style_or_script_of_its_own() -> None:
    for path in TEMPLATES.iterdir():
        text = path.read_text("utf-8").lower()
        for inline in (
            "<style",
            " style=",
            "<script>",
            " onclick",
            "javascript:",
            "|safe",
            "http:",
        ):
            assert inline not in text, (path.name, inline)
