"""The rules of a round as the host drafts them, and what they must hold before it opens."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, datetime

from service.chart.grid import Chart
from service.counting.round import RoundRules, Standing, TieBreak
from service.counting.rules import check_rules
from service.counting.sources import DrawSource, check_sources
from service.errors import BadDraw, BadRules, ClosesBeforeOpening, PageNotOnChart

#: The tie-breaks that always name one page. A chain ends with one, or a tie could stay for ever:
#: the rules are frozen once voting began.
DECIDING: frozenset[TieBreak] = frozenset({"draw", "lowest number", "host's pick"})
_BEFORE_ALL = datetime.min.replace(tzinfo=UTC)


@dataclass(frozen=True, slots=True)
class DraftRules:
    """What the host says of a round before it opens.

    `opens` None: when she opens it. `closes` None: when she closes it. `previous` is the page
    chosen last, where it is not the one that the game's own rounds and pages tell. `sources` are
    those of the draw; none for the round's own value.
    """

    opens: datetime | None = None
    closes: datetime | None = None
    choices: int = 1
    standing: Standing = "latest"
    tie_breaks: tuple[TieBreak, ...] = ("most joined edges", "reached first", "lowest number")
    previous: int | None = None
    sources: tuple[DrawSource, ...] = ()


def check_draft(rules: DraftRules, chart: Chart) -> None:
    """Whether a round can be played by these rules to its end.

    Raises:
        BadRules: choices, standing or tie-breaks that cannot be, or may leave a tie for ever.
        ClosesBeforeOpening: the closing is not after the opening.
        PageNotOnChart: the page chosen last is not on the chart.
        BadDraw: sources that no draw can be held by, or that this round's chain never draws by.
    """
    check_rules(
        RoundRules(
            opens=rules.opens or _BEFORE_ALL,
            closes=rules.closes,
            votable=frozenset(),
            choices=rules.choices,
            standing=rules.standing,
            tie_breaks=rules.tie_breaks,
        ),
        chart,
    )
    if rules.choices > chart.page_count:
        raise BadRules(
            f"a voter may choose {rules.choices} pages of a chart of {chart.page_count}",
            f"give choices from 1 to {chart.page_count}",
        )
    if not rules.tie_breaks or rules.tie_breaks[-1] not in DECIDING:
        ends = f"ends with {rules.tie_breaks[-1]!r}" if rules.tie_breaks else "is empty"
        raise BadRules(
            f"the chain of tie-breaks {ends} and may leave a tie",
            "end it with 'draw', 'lowest number' or \"host's pick\"",
        )
    _check_sources_fit(rules)
    if rules.previous is not None and rules.previous not in chart.pages:
        raise PageNotOnChart(rules.previous, chart.page_count)


def _check_sources_fit(rules: DraftRules) -> None:
    if not rules.sources:
        return
    chain = rules.tie_breaks
    if "draw" not in chain:
        raise BadDraw("sources are named but no tie-break is a draw", "add 'draw' to the chain")
    if "runoff" in chain and chain.index("runoff") < chain.index("draw"):
        raise BadDraw(
            "the draw follows the runoff, so it is held there",
            "name its sources when the runoff is drafted",
        )
    check_sources(rules.sources, rules.closes)


def check_times(opens: datetime, closes: datetime | None) -> None:
    """Whether a round can last from `opens` to `closes`.

    Raises:
        ClosesBeforeOpening: the closing is not after the opening.
    """
    if closes is not None and closes <= opens:
        raise ClosesBeforeOpening(opens.isoformat(), closes.isoformat())
