"""What the rules of a round must be before anybody votes by them."""

from __future__ import annotations

from service.chart.grid import Chart
from service.counting.round import STANDINGS, TIE_BREAKS, RoundRules
from service.counting.sources import check_sources
from service.counting.wording import pages_in_words
from service.errors import BadRules, BadTime, ClosesBeforeOpening


def check_rules(rules: RoundRules, chart: Chart) -> None:
    """Refuse rules that no round can be counted by.

    Raises:
        BadRules: fewer than one choice; an unknown or repeated tie-break; an unknown standing; a
            votable page off the chart.
        BadTime: an opening or closing without a zone.
        ClosesBeforeOpening: the closing is not after the opening.
        BadDraw: sources that no draw can be held by.
    """
    for at in (rules.opens, rules.closes):
        if at is not None and at.tzinfo is None:
            raise BadTime(at.isoformat(), "a time has no zone", "give it with its offset")
    if rules.closes is not None and rules.closes <= rules.opens:
        raise ClosesBeforeOpening(rules.opens.isoformat(), rules.closes.isoformat())
    if rules.choices < 1:
        raise BadRules(f"a voter may choose {rules.choices} pages", "let a voter choose 1 or more")
    if rules.standing not in STANDINGS:
        raise BadRules(
            f"{rules.standing!r} does not say which ballot stands",
            f"give one of: {', '.join(STANDINGS)}",
        )
    for rule in rules.tie_breaks:
        if rule not in TIE_BREAKS:
            raise BadRules(f"{rule!r} is no tie-break", f"give any of: {', '.join(TIE_BREAKS)}")
    if len(set(rules.tie_breaks)) != len(rules.tie_breaks):
        raise BadRules("a tie-break is named twice", "name each once, in the order to apply them")
    if not rules.votable <= set(chart.pages):
        off = sorted(rules.votable - set(chart.pages))
        raise BadRules(
            f"the votable pages hold {pages_in_words(off)}, not on the chart",
            f"name pages from 1 to {chart.page_count}",
        )
    check_sources(rules.draw.sources)
