"""Every operation of the OpenAPI document: who may, what it is called, what it looks like."""

from __future__ import annotations

import re
from typing import Any

import pytest
from pydantic import BaseModel

from service.api.shapes import In, Out
from tests.api.asking import assert_problem, done, open_round
from tests.api.conftest import Service

Json = Any
METHODS = {"get", "put", "post", "delete", "patch"}
#: What a viewer without a token may ask. Whatever is added to this list is public for ever.
PUBLIC = {
    ("get", "/api/health"),
    ("get", "/api/ready"),
    ("get", "/api/problems"),
    ("get", "/api/problems/{kind}"),
    ("get", "/api/games/{game}"),
    ("get", "/api/games/{game}/mystery"),
    ("get", "/api/games/{game}/mystery/reveal"),
    ("get", "/api/games/{game}/progress"),
    ("get", "/api/games/{game}/rounds/{number}"),
    ("get", "/api/games/{game}/rounds/{number}/votable"),
    ("get", "/api/games/{game}/rounds/{number}/result"),
    ("get", "/api/games/{game}/rounds/{number}/revisions"),
    ("get", "/api/games/{game}/rounds/{number}/record"),
    ("get", "/api/games/{game}/rounds/{number}/draw"),
    ("get", "/api/games/{game}/map.{ending}"),
    ("get", "/api/games/{game}/pictures"),
    ("get", "/api/games/{game}/rounds/{number}/map.{ending}"),
    ("get", "/api/games/{game}/rounds/{number}/pictures"),
    ("get", "/api/games/{game}/rounds/{number}/votes-by-day.{ending}"),
    ("get", "/api/games/{game}/rounds/{number}/tally.{ending}"),
    ("get", "/api/games/{game}/rounds/{number}/closing.ics"),
}
COLLECTORS = {
    ("post", "/api/games/{game}/rounds/{number}/batches"),
    ("get", "/api/progress/{watch}"),
}
FILLED = {
    "game": "windy-island",
    "slug": "windy-island",
    "batch": "1",
    "step": "chart",
    "length": "full",
    "number": "1",
    "kind": "not-found",
    "page": "1",
    "key": "c0",
    "name": "nobody",
    "ending": "svg",
    "occasion": "opening",
    "watch": "some-request",
    "digest": "0",
}


def operations(service: Service) -> dict[tuple[str, str], Json]:
    document = done(service.viewer.ask("GET", "/openapi.json"))
    return {
        (method, path): operation
        for path, methods in document["paths"].items()
        for method, operation in methods.items()
        if method in METHODS
    }


def address(path: str) -> str:
    return re.sub(r"{(\w+)}", lambda name: FILLED[name[1]], path)


def played(service: Service) -> None:
    """A game played and revealed, so that every public address has something."""
    open_round(service, closes="2026-03-01T19:00")
    done(service.host.post("/games/windy-island/rounds/1/close"))
    done(service.host.post("/games/windy-island/rounds/1/announce"))
    done(service.host.post("/games/windy-island/guesses/end"))
    done(service.host.post("/games/windy-island/mystery/reveal"))


def test_the_document_lists_what_it_should(service: Service) -> None:
    listed = set(operations(service))
    assert listed >= PUBLIC | COLLECTORS
    assert len(listed) >= 29


def test_public_operations_answer_without_a_token(service: Service) -> None:
    played(service)
    for method, path in sorted(PUBLIC):
        answer = service.viewer.ask(method.upper(), address(path))
        assert answer.status_code == 200, (path, answer.text)


def test_all_others_refuse_without_a_token(service: Service) -> None:
    for method, path in sorted(set(operations(service)) - PUBLIC):
        answer = service.viewer.ask(method.upper(), address(path))
        # A body that is missing is told only to those who may send one.
        assert_problem(answer, 401, "this request carries no token")
        assert answer.headers["www-authenticate"] == "Bearer"


def test_all_others_refuse_a_token_that_is_not_known(service: Service) -> None:
    stranger = service.caller("a token that nobody gave out")
    for method, path in sorted(set(operations(service)) - PUBLIC):
        answer = stranger.ask(method.upper(), address(path))
        assert_problem(answer, 401, "is not known here")
        assert answer.headers["www-authenticate"] == "Bearer"


def test_a_collector_may_hand_in_and_nothing_else(service: Service) -> None:
    collector = service.collector()
    for method, path in sorted(set(operations(service)) - PUBLIC - COLLECTORS):
        assert_problem(collector.ask(method.upper(), address(path)), 403, "needs a host's")
    for method, path in sorted(COLLECTORS):
        answer = collector.ask(method.upper(), address(path))
        assert answer.status_code not in {401, 403}, path


def test_a_wrong_token_is_refused_on_public_rounds_too(service: Service) -> None:
    played(service)
    stranger = service.caller("a token that nobody gave out")
    assert_problem(stranger.get("/games/windy-island/rounds/1"), 401, "is not known here")


@pytest.mark.parametrize(
    "header",
    ["", "Bearer", "Bearer ", "Basic aG9zdDpob3N0", "Token x", "x"],
    ids=["empty", "no token", "a blank", "another scheme", "no scheme known", "one word"],
)
def test_a_header_without_a_bearer_token_is_no_token(service: Service, header: str) -> None:
    answer = service.viewer.ask("GET", "/api/games", headers={"Authorization": header})
    assert_problem(answer, 401, "carries no token")


def test_every_operation_says_what_it_does(service: Service) -> None:
    for (method, path), operation in operations(service).items():
        assert len(operation["summary"]) > 8, path
        assert operation["description"].endswith("."), path
        assert operation["tags"], path
        assert ("security" in operation) == ((method, path) not in PUBLIC or "number" in path), path


def test_every_operation_shows_an_example(service: Service) -> None:
    document = done(service.viewer.ask("GET", "/openapi.json"))
    for (_, path), operation in operations(service).items():
        shown = []
        if "requestBody" in operation:
            shown += [media["schema"] for media in operation["requestBody"]["content"].values()]
        for status, answer in operation["responses"].items():
            assert status == "204" or answer["content"], path
            shown += [media["schema"] for media in answer.get("content", {}).values()]
        for schema in shown:
            assert has_example(document, schema), (path, schema)


def has_example(document: Json, schema: Json) -> bool:
    """Whether a schema, or one of those that it is made of, shows an example."""
    if "$ref" in schema:
        return has_example(document, document["components"]["schemas"][schema["$ref"][21:]])
    parts = [
        *schema.get("anyOf", []),
        *schema.get("properties", {}).values(),
        *([schema["items"]] if "items" in schema else []),
        *([schema["contentSchema"]] if "contentSchema" in schema else []),
    ]
    return bool(schema.get("examples")) or any(has_example(document, part) for part in parts)


def test_every_example_fits_its_own_shape(service: Service) -> None:
    """The examples are data that the service itself would take or give."""

    def shapes(parent: type[BaseModel]) -> list[type[BaseModel]]:
        return [each for child in parent.__subclasses__() for each in (child, *shapes(child))]

    checked = 0
    assert service.app.openapi()["info"]["title"] == "Loopstart"
    for shape in [*shapes(In), *shapes(Out)]:
        extra = shape.model_config.get("json_schema_extra") or {}
        assert isinstance(extra, dict)
        for example in extra.get("examples", []):  # type: ignore[union-attr]
            shape.model_validate(example)
            checked += 1
    assert checked > 20


def test_the_problems_each_operation_may_answer_are_declared(service: Service) -> None:
    for (method, path), operation in operations(service).items():
        declared = set(operation["responses"])
        if (method, path) not in PUBLIC:
            assert "401" in declared, path
        if (method, path) not in PUBLIC | COLLECTORS:
            assert "403" in declared, path
        for status, answer in operation["responses"].items():
            if int(status) >= 400:
                assert list(answer["content"]) == ["application/problem+json"], (path, status)
