"""The figures of the service are in the OpenMetrics text format, version 1.0.0.

Source: the OpenMetrics specification 1.0.0 (2020), sections "Overall Structure", "MetricFamily"
and "Counter"; read by the parser of prometheus-client, which is written to it.
"""

from __future__ import annotations

import pytest
from prometheus_client import Metric
from prometheus_client.openmetrics import parser

from tests.api.asking import make_game
from tests.api.conftest import Service, running
from tests.conftest import Clock


def read(text: str) -> list[Metric]:
    return list(parser.text_string_to_metric_families(text))  # type: ignore[no-untyped-call]


@pytest.fixture
def text(sqlite: object) -> str:
    with running(sqlite, Clock()) as service:  # type: ignore[arg-type]
        return asked_of(service)


def asked_of(service: Service) -> str:
    make_game(service.host)
    for _ in range(3):
        service.viewer.get("/games/windy-island")
    service.viewer.get("/games/nobody")
    service.viewer.ask("GET", "/nowhere/at/all?voter=Wilhelmina")
    answer = service.host.get("/metrics")
    assert answer.status_code == 200
    assert answer.headers["content-type"] == (
        "application/openmetrics-text; version=1.0.0; charset=utf-8"
    )
    return answer.text


def test_it_ends_with_the_end_of_file_and_a_line_break(text: str) -> None:
    """Section "Overall Structure": the exposition must end with EOF and should with a line feed."""
    assert text.endswith("\n# EOF\n")
    assert text.count("# EOF") == 1


def test_a_parser_of_the_format_reads_every_family(text: str) -> None:
    families = {family.name: family for family in read(text)}
    assert families["loopstart_requests"].type == "counter"
    assert families["loopstart_request_seconds"].type == "histogram"
    assert families["loopstart_request_seconds"].unit == "seconds"
    assert families["loopstart_requests_running"].type == "gauge"
    assert families["loopstart"].type == "info"


def test_requests_are_counted_by_route_and_status(text: str) -> None:
    """Section "Counter": the sample of a counter has the suffix _total."""
    [family] = [f for f in read(text) if f.name == "loopstart_requests"]
    found = {
        (sample.labels["method"], sample.labels["route"], sample.labels["status"]): sample.value
        for sample in family.samples
        if sample.name == "loopstart_requests_total"
    }
    assert found["GET", "/api/games/{game}", "200"] == 3
    assert found["GET", "/api/games/{game}", "404"] == 1
    assert found["GET", "none", "404"] == 1
    assert found["POST", "/api/games", "201"] == 1


def test_no_name_is_in_the_figures(text: str) -> None:
    assert "Wilhelmina" not in text
    assert "windy-island" not in text
    assert "nowhere" not in text
