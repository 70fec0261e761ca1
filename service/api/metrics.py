"""Figures of the running service for those who watch it, in the OpenMetrics text format.

They tell how much was asked and how long it took, by method, route and status: no address as it was
sent, no name and no word.
"""

from __future__ import annotations

import prometheus_client as figures
from fastapi import Response
from prometheus_client.openmetrics import exposition

#: In seconds. An import of a million comments takes minutes.
_LIMITS = (0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 2.5, 5, 10, 60, 600)


class OpenMetrics(Response):
    """An answer in the OpenMetrics text format."""

    media_type = exposition.CONTENT_TYPE_LATEST


class Metrics:
    """What one process counts of itself; where several serve, each has its own."""

    def __init__(self, version: str) -> None:
        self._registry = figures.CollectorRegistry()
        self._requests = figures.Counter(
            "loopstart_requests",
            "Requests answered.",
            ("method", "route", "status"),
            registry=self._registry,
        )
        self._seconds = figures.Histogram(
            "loopstart_request_seconds",
            "How long answers took.",
            ("method", "route"),
            unit="seconds",
            buckets=_LIMITS,
            registry=self._registry,
        )
        self.running = figures.Gauge(
            "loopstart_requests_running", "Requests being answered.", registry=self._registry
        )
        about = figures.Info("loopstart", "The running service.", registry=self._registry)
        about.info({"version": version})
        figures.ProcessCollector(registry=self._registry)

    def answered(self, method: str, route: str, status: int, seconds: float) -> None:
        """Count an answered request; `route` is the address as the API document has it."""
        self._requests.labels(method, route, str(status)).inc()
        self._seconds.labels(method, route).observe(seconds)

    def text(self) -> bytes:
        """All figures in the OpenMetrics text format, version 1.0.0."""
        text: bytes = exposition.generate_latest(self._registry)  # type: ignore[no-untyped-call]
        return text
