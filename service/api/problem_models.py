"""Problem details in JSON, and how each route declares those it may answer."""

from __future__ import annotations

from http import HTTPStatus
from typing import Any

from fastapi import FastAPI
from pydantic import ConfigDict

from service.api.problems import MEDIA_TYPE
from service.api.shapes import Out, example

#: What any route that takes a body may answer, whatever it is sent for.
_WITH_BODY = {
    400: "The body is no text.",
    408: "The body came too slowly.",
    413: "The body is too large.",
}


class ProblemPlaceOut(Out):
    """What is wrong with one place of the request."""

    detail: str
    pointer: str | None = None
    parameter: str | None = None


class ProblemOut(Out):
    """Problem details (RFC 9457): `detail` says what is wrong, where, and what to do.

    Further members hold the problem's data, such as `page` and `page_count`.
    """

    model_config = ConfigDict(extra="allow") | example(
        {
            "type": "/api/problems/page-not-on-chart",
            "title": "Page not on chart",
            "status": 422,
            "detail": "page 99 is not on the chart: name a page from 1 to 63.",
            "instance": "/api/games/windy-island/pages/99",
            "page": 99,
            "page_count": 63,
        }
    )

    type: str
    title: str
    status: int
    detail: str
    instance: str
    errors: list[ProblemPlaceOut] | None = None


class ProblemKindOut(Out):
    """A kind of problem: what its `type` means."""

    model_config = example(
        {
            "type": "/api/problems/wrong-state",
            "title": "Wrong state",
            "status": 409,
            "meaning": "`thing` is `state`, so `wish` cannot be; `todo` says what can.",
        }
    )

    type: str
    title: str
    status: int
    meaning: str


def problems(*statuses: int) -> dict[int | str, dict[str, Any]]:
    """The declaration of the problems that a route may answer, by status."""
    return {
        status: {"model": ProblemOut, "description": HTTPStatus(status).phrase}
        for status in statuses
    }


def problems_anywhere() -> dict[int | str, dict[str, Any]]:
    """The declaration of those that any route may answer: too many requests, no way to answer."""
    seconds = {"type": "integer", "minimum": 1, "examples": [3]}
    return {
        429: {
            "model": ProblemOut,
            "description": "More requests than LOOPSTART_RATE_LIMIT came from this address.",
            "headers": {"Retry-After": {"description": "The seconds to wait.", "schema": seconds}},
        },
        431: {"model": ProblemOut, "description": "More than 32 KB of address and headers."},
        503: {
            "model": ProblemOut,
            "description": "More requests at once than LOOPSTART_AT_ONCE, or no database. Where "
            "waiting helps, `Retry-After` tells the seconds.",
        },
    }


def _problem(status: int) -> dict[str, Any]:
    """The same, as the document has it."""
    shape = {"$ref": f"#/components/schemas/{ProblemOut.__name__}"}
    description = HTTPStatus(status).phrase
    return {"description": description, "content": {MEDIA_TYPE: {"schema": shape}}}


def describe_problems(app: FastAPI) -> None:
    """Let the app's OpenAPI document give problems their own media type.

    The framework describes them as what the route answers otherwise.
    """
    undescribed = app.openapi

    def described() -> dict[str, Any]:
        fresh = app.openapi_schema is None
        document = undescribed()
        if fresh:
            for methods in document["paths"].values():
                for operation in methods.values():
                    _describe(operation)
        return document

    app.openapi = described  # type: ignore[method-assign]


def _describe(operation: dict[str, Any]) -> None:
    """Say of an operation what is so of all that are like it."""
    responses = operation["responses"]
    signed = "security" in operation
    if signed and "403" not in responses:
        # A token only shows more: nobody needs one.
        operation["security"].insert(0, {})
    if "requestBody" in operation:
        _add_bodies(responses)
    _rename(responses)


def _add_bodies(responses: dict[str, Any]) -> None:
    """What any route that takes a body may answer; see body_limit.py."""
    for status, description in _WITH_BODY.items():
        responses.setdefault(str(status), _problem(status) | {"description": description})


def _rename(responses: dict[str, Any]) -> None:
    for status, answer in responses.items():
        if int(status) >= 400:
            # Described as what the route answers where all is well: JSON, or a table.
            [described] = answer["content"].values()
            answer["content"] = {MEDIA_TYPE: described}
