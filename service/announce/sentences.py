"""The sentences that announcements are made of: pages, rules, votes, ties, what was not counted."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable
from zoneinfo import ZoneInfo

from service.announce.instants import instant_in_words
from service.counting.result import CAUSES, Cause, Result, TieStep
from service.counting.round import RoundRules, Standing, TieBreak
from service.counting.wording import how_many, listed, pages_in_words, sentence

STANDING_IN_WORDS: dict[Standing, str] = {
    "latest": "You may change your mind: your latest ballot before the closing counts.",
    "first": "Your first ballot counts, a later one does not replace it.",
}
_TIE_BREAKS: dict[TieBreak, str] = {
    "most joined edges": "the page that touches most stitched pages",
    "neighbours": "the page whose joined pages have the most votes",
    "reached first": "the page that reached its votes first",
    "runoff": "a new vote among just those pages",
    "draw": "a draw that anybody can repeat",
    "lowest number": "the lowest page number",
    "host's pick": "the host's pick, with a reason",
}
#: What became of comments not counted: of one, of several.
_NOT_COUNTED: dict[Cause, tuple[str, str]] = {
    "the host's own": ("was the host's own", "were the host's own"),
    "before the opening": ("came before the opening", "came before the opening"),
    "after the closing": ("came after the closing", "came after the closing"),
    "cannot tell when": (
        "was written at a time that cannot be told",
        "were written at times that cannot be told",
    ),
    "chooses no page": ("chose no page", "chose no page"),
    "needs a look": ("is still to be looked at", "are still to be looked at"),
    "page not votable": (
        "named a page that could not be chosen",
        "named pages that could not be chosen",
    ),
    "withdrawn": ("was taken back by its writer", "were taken back by their writers"),
    "another ballot stands": (
        "gave way to another ballot of its writer",
        "gave way to other ballots of their writers",
    ),
}
#: So that a record that somebody shows can be told from the one that was announced.
RECORD_IN_WORDS = "Anybody can recount this from its record, whose SHA-256 digest is {}."


def page_ranges(pages: Iterable[int]) -> str:
    """Page numbers ascending, three or more in a row as a range: "3, 11 to 14 and 22"."""
    runs: list[list[int]] = []
    for page in sorted(pages):
        if runs and page == runs[-1][-1] + 1:
            runs[-1].append(page)
        else:
            runs.append([page])
    named: list[str] = []
    for run in runs:
        named += [f"{run[0]} to {run[-1]}"] if len(run) > 2 else [str(page) for page in run]
    return listed(named)


def choices_of(rules: RoundRules) -> int:
    """How many pages one voter may choose of those there are."""
    return min(rules.choices, len(rules.votable))


def may_choose(pages: frozenset[int], choices: int) -> str:
    """Which pages may be chosen, as a sentence."""
    lowest, highest = min(pages, default=0), max(pages, default=0)
    in_a_row = len(pages) > 2 and len(pages) == highest - lowest + 1
    if not pages:
        return "No page can be chosen."
    if len(pages) == 1:
        return f"Only page {lowest} can be chosen."
    if choices > 1:
        return f"Choose up to {choices} of these {len(pages)} pages: {page_ranges(pages)}."
    if in_a_row:
        return f"Choose any page from {lowest} to {highest}."
    return f"Choose one of these {len(pages)} pages: {page_ranges(pages)}."


def tie_rules(tie_breaks: tuple[TieBreak, ...]) -> str:
    """How a tie is broken, as a sentence."""
    if not tie_breaks:
        return "If pages tie for the most votes, there is no winner."
    rules = "; then ".join(_TIE_BREAKS[rule] for rule in tie_breaks)
    return f"If pages tie for the most votes, this decides: {rules}."


def outcome(result: Result) -> str:
    """The winner or the tie, its votes, and how many took part."""
    if not result.tally:
        return result.why
    votes = how_many(result.tally[0][1], "vote")
    voters = f"{how_many(result.figures.ballots, 'voter')} took part."
    if result.winner is not None:
        return f"Page {result.winner} wins with {votes}. {voters}"
    pages = sentence(pages_in_words(result.undecided))
    return f"{pages} have {votes} each, and there is no winner yet. {voters}"


def votes_in_lines(tally: Iterable[tuple[int, int]]) -> list[str]:
    """The votes, a line for each number of them: "3 votes each: pages 4 and 7".

    `tally` is page and votes, most votes first.
    """
    by_votes: dict[int, list[int]] = {}
    for page, votes in tally:
        by_votes.setdefault(votes, []).append(page)
    return [
        f"{how_many(votes, 'vote')} each: pages {page_ranges(pages)}"
        if len(pages) > 1
        else f"{how_many(votes, 'vote')}: page {pages[0]}"
        for votes, pages in by_votes.items()
    ]


def tie_in_words(result: Result, zone: ZoneInfo) -> Iterable[str]:
    """The tie and every step that narrowed it, line by line; nothing where there was none."""
    if not result.steps:
        return
    votes = how_many(result.tally[0][1], "vote")
    tied = f"{sentence(pages_in_words(result.steps[0].tied))} were tied with {votes} each"
    if result.winner is None:
        yield f"{tied}, and this is how far the tie-breaks came:"
    else:
        yield f"{tied}, and this is how the tie was broken:"
    for place, step in enumerate(result.steps, start=1):
        why = step.why if step.why.endswith((".", "!", "?")) else f"{step.why}."
        yield f"{place}. {why}{_when(step, result, zone)}"


def _when(step: TieStep, result: Result, zone: ZoneInfo) -> str:
    """When each tied page reached its votes, where that decided and is known exactly."""
    if step.rule != "reached first" or step.kept == step.tied:
        return ""
    told = dict(result.figures.reached)
    reached = {page: told[page] for page in step.tied}
    if not all(at.is_exact for at in reached.values()):
        return ""
    return "".join(
        f" Page {page}: {instant_in_words(at.earliest, zone)}."
        for page, at in sorted(reached.items(), key=lambda timed: (timed[1].earliest, timed[0]))
    )


def counted_in_words(result: Result) -> str:
    """How many ballots counted, and what became of the other comments."""
    many, ruled = result.figures.ballots, result.figures.ruled
    counted = f"{how_many(many, 'ballot')} counted" if many else "No ballot counted"
    said = [f"{counted}, {ruled:,} of them by a ruling of the host." if ruled else f"{counted}."]
    left_out = result.figures.left_out
    if left_out:
        named = "also named a page" if left_out == 1 else "also named pages"
        said.append(f"{how_many(left_out, 'ballot')} {named} that could not be chosen.")
    causes = Counter(dict(result.figures.set_aside))
    if causes:
        parts = [
            f"{causes[cause]:,} {_NOT_COUNTED[cause][causes[cause] > 1]}"
            for cause in CAUSES
            if causes[cause]
        ]
        comments = how_many(causes.total(), "comment")
        verb = "was" if causes.total() == 1 else "were"
        said.append(f"{comments} {verb} not counted: {listed(parts)}.")
    return " ".join(said)
