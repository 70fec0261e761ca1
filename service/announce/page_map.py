"""What a map shows of a game's pages, and the same in words."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from typing import Literal, get_args

from service.announce.sentences import page_ranges
from service.chart.grid import Chart
from service.counting.wording import how_many, sentence

Sign = Literal["winner", "stitched", "in hand", "votable", "unstitched"]
SIGNS: tuple[Sign, ...] = get_args(Sign)

#: The pages told one by one with their votes in an alternative text; the rest are summed up.
MOST_TOLD = 5


@dataclass(frozen=True, slots=True)
class PageMap:
    """The pages of a chart with their states, at one moment.

    `votable` are the pages that the round may choose, `winner` the page that it chose. `votes` are
    the votes by page; None where the counts are not shown. `title` is the game's name, `caption`
    a line below it. `is_over` says that the voting has ended: pages could be chosen, and no longer
    can.
    """

    chart: Chart
    title: str
    caption: str = ""
    stitched: frozenset[int] = frozenset()
    in_hand: frozenset[int] = frozenset()
    votable: frozenset[int] = frozenset()
    winner: int | None = None
    #: Not hashed, since a dict cannot be; two maps with other votes are still not the same.
    votes: Mapping[int, int] | None = field(default=None, hash=False)
    is_over: bool = False

    def sign_of(self, page: int) -> Sign:
        """What the page is shown as, beside being the winner."""
        if page in self.in_hand:
            return "in hand"
        if page in self.stitched:
            return "stitched"
        return "votable" if page in self.votable else "unstitched"

    def pages_shown_as(self, sign: Sign) -> list[int]:
        """The pages shown so, ascending."""
        if sign == "winner":
            return [] if self.winner is None else [self.winner]
        return [page for page in self.chart.pages if self.sign_of(page) == sign]


def meaning_of(shown: PageMap, sign: Sign) -> str:
    """What a sign of this map means, in a few words."""
    return "could be chosen" if sign == "votable" and shown.is_over else _MEANINGS[sign]


def page_in_words(shown: PageMap, page: int) -> str:
    """One page: its number, its state, its votes. "Page 12, can be chosen, 5 votes"."""
    said = [f"Page {page}", meaning_of(shown, shown.sign_of(page))]
    if page == shown.winner:
        said.append(_MEANINGS["winner"])
    if shown.votes is not None and page in shown.votable:
        said.append(how_many(shown.votes.get(page, 0), "vote"))
    return ", ".join(said)


def map_in_words(shown: PageMap) -> str:
    """The alternative text of a map: its size, every state with its pages, the votes."""
    chart = shown.chart
    grid = f"{how_many(chart.columns, 'column')} and {how_many(chart.rows, 'row')}"
    return " ".join((f"A map of {how_many(chart.page_count, 'page')} in {grid}.", *_states(shown)))


_MEANINGS: dict[Sign, str] = {
    "winner": "winner of the round",
    "stitched": "stitched",
    "in hand": "in hand",
    "votable": "can be chosen",
    "unstitched": "not stitched yet",
}


def _states(shown: PageMap) -> Iterator[str]:
    if shown.winner is not None:
        yield f"Page {shown.winner} is the winner of the round."
    for sign, of_one, of_more in (
        ("stitched", "is stitched", "are stitched"),
        ("in hand", "is in hand", "are in hand"),
        ("votable", meaning_of(shown, "votable"), meaning_of(shown, "votable")),
    ):
        pages = shown.pages_shown_as(sign)  # type: ignore[arg-type]  # they are signs
        if pages:
            several = len(pages) > 1
            named = f"{'pages' if several else 'page'} {page_ranges(pages)}"
            yield f"{sentence(named)} {of_more if several else of_one}."
    rest = len(shown.pages_shown_as("unstitched"))
    if rest:
        others = " other" if rest < shown.chart.page_count else ""
        yield f"{rest:,}{others} {'page is' if rest == 1 else 'pages are'} not stitched yet."
    if shown.votes is not None:
        yield _votes(shown.votes)


def _votes(votes: Mapping[int, int]) -> str:
    given = [(page, count) for page, count in votes.items() if count]
    given.sort(key=lambda one: (-one[1], one[0]))
    if not given:
        return "No page has a vote."
    told = [f"page {page} has {how_many(count, 'vote')}" for page, count in given[:MOST_TOLD]]
    left = given[MOST_TOLD:]
    if left:
        votes_left = how_many(sum(count for _, count in left), "vote")
        told.append(f"{how_many(len(left), 'more page')} together {votes_left}")
    return f"{sentence('; '.join(told))}."
