"""A chart as JSON for a row, and back."""

from __future__ import annotations

from dataclasses import asdict
from typing import Any

from service.chart.grid import Cell, Chart, DesignSize


def chart_to_json(chart: Chart) -> dict[str, Any]:
    """The chart as a row keeps it: cells without a page as [column, row], in order."""
    return {
        "columns": chart.columns,
        "rows": chart.rows,
        "order": chart.order,
        "start": chart.start,
        "back_and_forth": chart.back_and_forth,
        "no_page": [[cell.column, cell.row] for cell in sorted(chart.no_page)],
        "joined": chart.joined,
        "size": None if chart.size is None else asdict(chart.size),
    }


def chart_from_json(kept: dict[str, Any]) -> Chart:
    """The chart that `chart_to_json` kept."""
    size = kept["size"]
    return Chart(
        columns=kept["columns"],
        rows=kept["rows"],
        order=kept["order"],
        start=kept["start"],
        back_and_forth=kept["back_and_forth"],
        no_page=frozenset(Cell(column, row) for column, row in kept["no_page"]),
        joined=kept["joined"],
        size=None if size is None else DesignSize(**size),
    )
