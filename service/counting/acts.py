"""The rules for a tie that wait for an act after the voting: a runoff, a draw, the host's pick.

While the act is still to come such a rule keeps all pages, and nothing follows it.
"""

from __future__ import annotations

from service.counting.draw import drawn_order, key_string
from service.counting.result import TieStep
from service.counting.sources import Lots, lots_of
from service.counting.tie import Tie, told
from service.counting.wording import how_many, pages_in_words, sentence
from service.errors import BadRuling


def runoff(tie: Tie) -> TieStep:
    """Keep the page that won the runoff: a new round among just the tied pages.

    A runoff among other pages (it was held before the count changed) is to be held again; one in
    which nobody voted leaves the tie to the rules that follow.
    """
    held = tie.round_input.runoff
    tied = pages_in_words(tie.pages)
    if held is None:
        why = f"A runoff is to be held among {tied}."
        return TieStep("runoff", tie.pages, tie.pages, why, waits=True)
    if held.pages != tie.pages:
        why = (
            f"The runoff, round {held.round}, was held among {pages_in_words(held.pages)}, but "
            f"those tied are {tied}: it is to be held again."
        )
        return TieStep("runoff", tie.pages, tie.pages, why, waits=True)
    if held.winner is None:
        why = f"Nobody voted in the runoff, round {held.round}, so the tie stays."
        return TieStep("runoff", tie.pages, tie.pages, why)
    votes = dict(held.votes)
    counted = how_many(votes.get(held.winner, 0), "vote")
    why = f"{sentence(pages_in_words([held.winner]))} won the runoff, round {held.round}, with {counted}."
    values = told({page: votes.get(page, 0) for page in tie.pages})
    return TieStep("runoff", tie.pages, (held.winner,), why, values)


def draw(tie: Tie) -> TieStep:
    """Keep the page that is drawn first (RFC 3797) from the tied pages, ascending.

    The values are each page's turn in the whole order, so that it is known who would be next.
    """
    given = tie.round_input
    lots = lots_of(given.rules.draw, given.drawn, given.rules.closes, tie.ballots_digest)
    if lots.waits:
        why = f"{sentence(lots.waits)}, to be held among {pages_in_words(tie.pages)}."
        return TieStep("draw", tie.pages, tie.pages, why, waits=True)
    order = drawn_pages(tie.pages, lots)
    why = f"Page {order[0]} is drawn by {lots.origin}."
    turns = {page: f"drawn {turn} of {len(order)}" for turn, page in enumerate(order, start=1)}
    return TieStep("draw", tie.pages, (order[0],), why, told(turns))


def drawn_pages(pages: tuple[int, ...], lots: Lots) -> tuple[int, ...]:
    """The tied pages in the order in which those numbers draw them."""
    return tuple(pages[place - 1] for place in drawn_order(key_string(lots.numbers), len(pages)))


def hosts_pick(tie: Tie) -> TieStep:
    """Keep the page that the host picks, with her reason; all of them until she has picked.

    A pick that is not among the tied pages (it was made before the count changed) keeps them all
    too, and says so.
    """
    pick = tie.round_input.host_pick
    tied = pages_in_words(tie.pages)
    if pick is None:
        why = f"The host has yet to pick: {tied}."
        return TieStep("host's pick", tie.pages, tie.pages, why, waits=True)
    page, reason = pick
    if page not in tie.pages:
        why = f"The host picked page {page}, which is not among those tied: pick again from {tied}."
        return TieStep("host's pick", tie.pages, tie.pages, why, waits=True)
    why = f"The host picked page {page}: {reason.strip()}"
    return TieStep("host's pick", tie.pages, (page,), why, ((page, reason.strip()),))


def check_pick(page: int, reason: str, tied: tuple[int, ...]) -> None:
    """Refuse a host's pick that cannot be, where `tied` are the pages that wait for it.

    Raises:
        BadRuling: no tie waits for a pick; the page is not among the tied ones; no reason.
    """
    if not tied:
        raise BadRuling("no tie waits for the host's pick", "pick only where the count asks for it")
    if page not in tied:
        raise BadRuling(
            f"page {page} is not among the tied {pages_in_words(tied)}",
            "pick one of those",
        )
    if not reason.strip():
        raise BadRuling("the host's pick has no reason", "say in a few words why")
