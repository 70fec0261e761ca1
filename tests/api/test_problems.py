"""Every refusal is problem details: one shape, one sentence, the right status.

Source of shape and media type: RFC 9457 (July 2023), section 3; of JSON Pointers in `errors`: its
second example and RFC 6901 (April 2013), section 6 (URI fragments).
"""

from __future__ import annotations

import sqlite3

import httpx
import pytest
from fastapi import APIRouter
from sqlalchemy import event
from sqlalchemy.exc import OperationalError

from service.api.problems import STATUSES, address_of, status_of, title_of
from service.errors import (
    AccessRefused,
    BadChart,
    BadInput,
    BinaryExport,
    ExportTooLarge,
    LoopstartError,
    NotFound,
    PageNotOnChart,
    TokenTooWeak,
    WrongState,
)
from tests.api.asking import QUESTION, assert_problem, done, make_game
from tests.api.conftest import Service


def below(parent: type[LoopstartError]) -> list[type[LoopstartError]]:
    return [kind for child in parent.__subclasses__() for kind in (child, *below(child))]


EXPECTED = [
    (BadInput, 422),
    (BadChart, 422),
    (PageNotOnChart, 422),
    (BinaryExport, 422),
    (ExportTooLarge, 413),
    (WrongState, 409),
    (NotFound, 404),
    (AccessRefused, 401),
    (TokenTooWeak, 403),
]


@pytest.mark.parametrize(("kind", "status"), EXPECTED, ids=[kind.__name__ for kind, _ in EXPECTED])
def test_each_error_has_its_status(kind: type[LoopstartError], status: int) -> None:
    assert status_of(kind) == status


def test_no_error_of_the_tree_is_a_failure_of_the_service() -> None:
    assert STATUSES[LoopstartError] == 500
    assert [kind for kind in below(LoopstartError) if status_of(kind) == 500] == []


def test_a_problem_holds_the_errors_data(service: Service) -> None:
    make_game(service.host)
    problem = assert_problem(
        service.host.put("/games/windy-island/pages/99", {"state": "stitched"}),
        422,
        "page 99 is not on the chart: name a page from 1 to 63",
    )
    assert (problem["title"], problem["type"]) == (
        "Page not on chart",
        "/api/problems/page-not-on-chart",
    )
    assert (problem["page"], problem["page_count"]) == (99, 63)


def test_every_type_of_problem_is_explained_where_it_says(service: Service) -> None:
    kinds = below(LoopstartError)
    assert len(kinds) > 15
    listed = {each["type"]: each for each in done(service.viewer.get("/problems"))}
    for kind in kinds:
        told = service.viewer.ask("GET", address_of(kind)).json()
        assert told == listed[address_of(kind)]
        assert (told["title"], told["status"]) == (title_of(kind), status_of(kind))
        assert len(told["meaning"].split()) > 3
    assert_problem(service.viewer.get("/problems/no-such-kind"), 404, "no kind of problem")


def test_an_unknown_address_is_a_problem(service: Service) -> None:
    problem = assert_problem(service.viewer.get("/nowhere"), 404, "nothing at this address")
    assert (problem["type"], problem["title"]) == ("about:blank", "Not Found")
    assert_problem(service.viewer.ask("GET", "/elsewhere%20and%2Fmore"), 404)


def test_a_method_that_cannot_be_is_a_problem(service: Service) -> None:
    answer = service.viewer.delete("/health")
    assert_problem(answer, 405, "DELETE cannot be used at this address: use GET")
    assert answer.headers["allow"] == "GET"
    # RFC 9110 (June 2022), section 10.2.1: Allow lists all the methods that can be used.
    answer = service.host.put("/games", {})
    assert_problem(answer, 405, "PUT cannot be used at this address: use GET or POST")
    assert answer.headers["allow"] == "GET, POST"
    answer = service.host.post("/games/windy-island")
    assert_problem(answer, 405, "POST cannot be used at this address: use GET or PATCH")
    answer = service.viewer.ask("POST", "/static-offline-docs/any")
    assert_problem(answer, 405, "POST cannot be used at this address: use GET.")


INVALID = [
    pytest.param({}, "#/chart", "this is missing", id="missing"),
    pytest.param({"chart": 3}, "#/chart", "", id="no object"),
    pytest.param({"chart": {"columns": "nine"}}, "#/chart/columns", "integer", id="no number"),
    pytest.param({"chart": {"colums": 9}}, "#/chart/colums", "no such name", id="a slip"),
    pytest.param({"chart": {"order": "up"}}, "#/chart/order", "'across' or 'down'", id="a choice"),
    pytest.param({"chart": {"a/b~c": 1}}, "#/chart/a~1b~0c", "no such name", id="escaped"),
    pytest.param(
        {"chart": {"no_page": [[1, 2], [3]]}}, "#/chart/no_page/1/1", "missing", id="deep"
    ),
]


@pytest.mark.parametrize(("sent", "pointer", "says"), INVALID)
def test_what_is_not_valid_is_pointed_at(
    service: Service, sent: object, pointer: str, says: str
) -> None:
    body = {"text": "42", "chart": {"columns": 9, "rows": 7}} | {"chart": None} | dict(sent)  # type: ignore[call-overload]
    if not sent:
        del body["chart"]
    problem = assert_problem(service.host.post("/read", body), 422, pointer)
    [error] = [each for each in problem["errors"] if each["pointer"] == pointer]
    assert says in error["detail"]


def test_a_parameter_that_is_not_valid_is_named(service: Service) -> None:
    problem = assert_problem(service.viewer.get("/games/windy-island/rounds/nil"), 422, "number")
    assert problem["errors"][0]["parameter"] == "number"


def test_what_is_no_json_is_a_problem(service: Service) -> None:
    answer = service.host.ask(
        "POST", "/api/read", content=b"{oh", headers={"content-type": "application/json"}
    )
    assert_problem(answer, 422, "this is no JSON")


def test_the_question_in_a_form_is_pointed_into(service: Service) -> None:
    question = QUESTION | {"stitched": [1, "two"]}
    problem = assert_problem(service.host.count("x", question), 422, "#/question/stitched/1")
    assert problem["errors"][0]["pointer"] == "#/question/stitched/1"


def test_a_form_that_is_cut_off_is_a_problem(service: Service) -> None:
    answer = service.host.ask(
        "POST",
        "/api/tally",
        content=b"--edge\r\nContent-Disposition: form-data; name=",
        headers={"content-type": "multipart/form-data; boundary=edge"},
    )
    assert answer.status_code in {400, 422}
    assert_problem(answer, answer.status_code)


def test_half_a_surrogate_pair_is_refused_in_words(service: Service) -> None:
    answer = service.host.ask(
        "POST",
        "/api/tokens",
        content=b'{"name": "\\ud800", "role": "host"}',
        headers={"content-type": "application/json"},
    )
    assert_problem(answer, 422, "#/name")


def test_a_failure_tells_nothing_of_what_failed(service: Service) -> None:
    """What goes wrong inside is for the server's log; the caller learns that nothing changed."""
    router = APIRouter()

    @router.get("/api/fails")
    def fail() -> None:
        raise RuntimeError("the answer is The Lamp Room")

    service.app.include_router(router)
    answer = service.viewer.get("/fails")
    problem = assert_problem(answer, 500, "failed and changed nothing")
    assert problem.keys() == {"type", "title", "status", "detail", "instance"}
    assert "Lamp" not in answer.text


def test_a_busy_database_is_a_problem_of_its_own(
    service: Service, monkeypatch: pytest.MonkeyPatch
) -> None:
    def busy(*_: object) -> None:
        raise OperationalError("INSERT", {}, sqlite3.OperationalError("database is locked"))

    monkeypatch.setattr("service.api.token_routes.make_token", busy)
    answer = service.host.post("/tokens", {"name": "a", "role": "host"})
    assert_problem(answer, 503, "does not answer or is busy")


def test_nobody_is_told_of_what_then_was_not_kept(service: Service) -> None:
    """The transaction ends before the answer is sent: a full disk is no success."""
    engine = service.app.state.wiring.database.engine

    def full(_: object) -> None:
        raise OperationalError("COMMIT", {}, sqlite3.OperationalError("database or disk is full"))

    event.listen(engine, "commit", full)
    answer = service.host.post("/tokens", {"name": "a", "role": "host"})
    event.remove(engine, "commit", full)
    assert_problem(answer, 503, "nothing was changed")
    assert done(service.host.get("/tokens")) == []


def test_a_database_that_is_not_set_up_is_a_problem(service: Service) -> None:
    settings = service.app.state.wiring.settings
    (settings.data_folder / "loopstart.sqlite3").unlink()
    answer = service.viewer.get("/games/windy-island")
    assert_problem(answer, 503, "not set up for this version")
    assert done(service.viewer.get("/health"))["status"] == "not set up"


def test_problems_carry_no_byte_that_ascii_has_not(service: Service) -> None:
    answer: httpx.Response = service.viewer.get("/games/åse's-spil")
    assert answer.content.isascii()
    assert_problem(answer, 404, 'no game "åse\'s-spil"')
