"""Contexts into HTML: a template gets the fields of its page's context, and nothing else.

A context is a frozen dataclass, made by a plain function from what the store keeps. Its class says
which template it is for. A test holds that the template's variables and the fields are the same.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, fields
from functools import cache
from pathlib import Path
from typing import ClassVar

from fastapi.responses import HTMLResponse
from jinja2 import Environment, FileSystemLoader, StrictUndefined
from markupsafe import Markup

from service.pages.statics import static_address

_TEMPLATES = Path(__file__).with_name("templates")
#: Of pages that are one person's, or of one moment.
NOT_KEPT = {"Cache-Control": "no-store"}


@dataclass(frozen=True, slots=True)
class Context:
    """The parent of all contexts."""

    template: ClassVar[str]


@cache
def environment() -> Environment:
    """What templates are rendered in: all text is escaped, and a name that is not there an error."""
    made = Environment(
        loader=FileSystemLoader(_TEMPLATES),
        autoescape=True,
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
    )
    made.globals["static"] = static_address
    return made


def html_of(context: Context) -> str:
    """The page as HTML."""
    values = {field.name: getattr(context, field.name) for field in fields(context)}
    return environment().get_template(context.template).render(values)


def inline(svg: str) -> Markup:
    """A picture to stand in a page: this house's own, its words escaped where it was drawn."""
    return Markup(svg)  # noqa: S704


def answer_page(
    context: Context, status: int = 200, headers: Mapping[str, str] = NOT_KEPT
) -> HTMLResponse:
    """The page as an answer; nobody keeps it, unless the headers say otherwise."""
    return HTMLResponse(html_of(context), status, headers)
