"""Figures of the running service for those who watch it, in the OpenMetrics text format.

They tell how much was asked and how long it took, by method, route and status: no address as it was
sent, no name and no word.
"""

from __future__ import annotations

from pathlib import Path

import prometheus_client as figures
from fastapi import Response
from prometheus_client.multiprocess import MultiProcessCollector
from prometheus_client.openmetrics import exposition

#: In seconds. An import of a million comments takes minutes.
_LIMITS = (0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 2.5, 5, 10, 60, 600)


class OpenMetrics(Response):
    """An answer in the OpenMetrics text format."""

    media_type = exposition.CONTENT_TYPE_LATEST


class Metrics:
    """What a process counts of itself.

    Where several serve, they count into files in `folder`, and each tells the sum of all. The figures'
    library must have been told of that folder as well, before it is imported (scripts/workers.py).
    """

    def __init__(self, version: str, folder: Path | None = None) -> None:
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
            "loopstart_requests_running",
            "Requests being answered.",
            registry=self._registry,
            multiprocess_mode="livesum",
        )
        about = figures.Info("loopstart", "The running service.", registry=None)
        about.info({"version": version})
        self._told = self._registry
        if folder is not None:
            self._told = figures.CollectorRegistry()
            MultiProcessCollector(self._told, str(folder))  # type: ignore[no-untyped-call]
        else:
            figures.ProcessCollector(registry=self._registry)
        self._told.register(about)

    def answered(self, method: str, route: str, status: int, seconds: float) -> None:
        """Count an answered request; `route` is the address as the API document has it."""
        self._requests.labels(method, route, str(status)).inc()
        self._seconds.labels(method, route).observe(seconds)

    def text(self) -> bytes:
        """All figures in the OpenMetrics text format, version 1.0.0."""
        text: bytes = exposition.generate_latest(self._told)  # type: ignore[no-untyped-call]
        return text
