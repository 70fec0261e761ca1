"""What the OpenAPI document says of types, tokens and answers is so: each kind was found by fuzzing."""

from __future__ import annotations

from typing import Any

import pytest

from tests.api.asking import PATH, ROUND, assert_problem, done, make_game, open_round
from tests.api.conftest import Service
from tests.api.test_every_route import PUBLIC, address, operations

Json = Any
CHART: Json = {"columns": 9, "rows": 7}


def test_a_body_that_is_no_text_gets_an_answer_that_is_documented(service: Service) -> None:
    headers = {"Content-Type": "application/json"}
    asked = 0
    for (method, path), operation in operations(service).items():
        if "application/json" in operation.get("requestBody", {}).get("content", {}):
            sent = service.host.ask(
                method.upper(), address(path), content=b"\xff\xfe\x80", headers=headers
            )
            assert_problem(sent, 400, "check that it was sent whole")
            assert "400" in operation["responses"], path
            asked += 1
    assert asked > 25


def test_whatever_takes_a_body_documents_that_it_may_be_too_large(service: Service) -> None:
    bodies = [one for one in operations(service).values() if "requestBody" in one]
    assert len(bodies) > 25
    assert all("413" in one["responses"] for one in bodies)


def test_everything_documents_that_too_many_may_ask_or_the_database_be_away(
    service: Service,
) -> None:
    for (_, path), one in operations(service).items():
        assert {"429", "503"} <= one["responses"].keys(), path


def test_where_a_token_only_shows_more_the_document_asks_for_none(service: Service) -> None:
    open_round(service)
    free = 0
    for (method, path), operation in operations(service).items():
        security = operation.get("security", [{}])
        assert ({} in security) == ((method, path) in PUBLIC), path
        if {} in security and "number" in path:
            assert service.viewer.ask(method.upper(), address(path)).status_code in {200, 404, 409}
            free += 1
    assert free > 8


@pytest.mark.parametrize(
    ("method", "path", "body", "pointer"),
    [
        ("PUT", f"{PATH}/pace/plan", {"round_days": False}, "#/round_days"),
        ("PUT", f"{PATH}/pace/plan", {"every": "4900"}, "#/every"),
        ("PUT", f"{PATH}/pace/pages/1", {"crosses": 4100, "beads": True}, "#/beads"),
        ("PUT", f"{PATH}/announcing", {"counts_while_open": 0}, "#/counts_while_open"),
        ("PUT", f"{PATH}/announcing", {"counts_while_open": "yes"}, "#/counts_while_open"),
        ("POST", "/read", {"text": "12", "chart": CHART | {"back_and_forth": 0}}, "#/chart/"),
        ("POST", "/read", {"text": "12", "chart": CHART | {"columns": "9"}}, "#/chart/columns"),
        ("POST", "/read", {"text": "12", "chart": CHART | {"no_page": [[9, "7"]]}}, "#/chart/"),
        ("POST", f"{PATH}/rounds", {"choices": True}, "#/choices"),
        ("POST", f"{PATH}/pace/log", {"entries": [{"day": 1772323200}]}, "#/entries/0/day"),
        ("POST", f"{PATH}/pace/log", {"entries": [{"day": "1772323200"}]}, "#/entries/0/day"),
    ],
)
def test_a_value_of_another_type_is_refused(
    service: Service, method: str, path: str, body: Json, pointer: str
) -> None:
    make_game(service.host)
    refused = service.host.ask(method, f"/api{path}", json=body)
    assert_problem(refused, 422, f"the request is not valid at {pointer}")


def test_days_and_cells_are_taken_as_the_document_writes_them(service: Service) -> None:
    make_game(service.host)
    read = {"text": "12", "chart": CHART | {"no_page": [[9, 7]]}}
    assert done(service.host.post("/read", read))["pages"] == [12]
    done(service.host.put(f"{PATH}/pages/41", {"state": "in hand"}))
    entry = {"day": "2026-03-01", "page": 41, "percent": 10.5, "how": "percent"}
    done(service.host.put(f"{PATH}/pace/plan", {"every": 4_900}))
    done(service.host.post(f"{PATH}/pace/log", {"entries": [entry]}), 201)
    assert done(service.host.get(f"{PATH}/pace", today="2026-03-01"))
    refused = service.host.get(f"{PATH}/pace", today="1772323200")
    assert_problem(refused, 422, "write a day as in 2026-03-16")


def test_a_round_is_drafted_with_a_number_and_not_with_its_words(service: Service) -> None:
    make_game(service.host)
    assert_problem(service.host.post(f"{PATH}/rounds", {"choices": "2"}), 422, "#/choices")
    done(service.host.post(f"{PATH}/rounds", {"choices": 2}), 201)
    assert done(service.host.get("/games/windy-island/rounds/1"))["choices"] == 2
    assert_problem(service.host.patch(ROUND, {"choices": 1.5}), 422, "#/choices")
