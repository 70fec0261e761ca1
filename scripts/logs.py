"""What a running server writes about itself: plain lines for a person, or JSON for a collector.

As JSON each line is one object: time (RFC 3339, UTC), level, from, message, request_id, and of an
answered request its method, route, status, ms and who asked, as a role. The access log of the server library is left
out: it tells addresses as they were sent.
"""

import json
import logging
import sys
from datetime import UTC, datetime
from typing import Any

from service.api.request_log import request_id


class JsonLines(logging.Formatter):
    """One object of JSON a line."""

    def format(self, record: logging.LogRecord) -> str:
        """The line."""
        at = datetime.fromtimestamp(record.created, UTC).isoformat(timespec="milliseconds")
        told: dict[str, Any] = {
            "time": at.replace("+00:00", "Z"),
            "level": record.levelname.lower(),
            "from": record.name,
            "message": record.getMessage(),
        }
        if known_as := request_id.get():
            told["request_id"] = known_as
        told |= getattr(record, "told", {})
        if record.exc_info:
            told["trouble"] = self.formatException(record.exc_info)
        return json.dumps(told, ensure_ascii=False, default=str)


class Plain(logging.Formatter):
    """A line for a person, with the request's id where something went wrong in one."""

    def format(self, record: logging.LogRecord) -> str:
        """The line."""
        line = super().format(record)
        known_as = request_id.get()
        return f"{line} (request {known_as})" if known_as else line


def log_as(form: str) -> None:
    """Log to standard error from now on: "plain" (what goes wrong) or "json" (requests too)."""
    to_stderr = logging.StreamHandler(sys.stderr)
    to_stderr.setFormatter(JsonLines() if form == "json" else Plain("%(levelname)s: %(message)s"))
    logging.root.handlers = [to_stderr]
    logging.root.setLevel(logging.WARNING)
    logging.getLogger("loopstart").setLevel(logging.INFO if form == "json" else logging.WARNING)
