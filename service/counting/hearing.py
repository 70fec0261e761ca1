"""One comment alone against the round: what it says in time, or the first cause against it."""

from __future__ import annotations

from dataclasses import dataclass

from service.chart.grid import Chart
from service.counting.result import Cause, SetAside
from service.counting.round import ReadComment, RoundRules
from service.counting.rulings import Meaning, meaning_of, ruled_in_time
from service.counting.standing import Said
from service.counting.timing import Timing, straddled, timing_of
from service.counting.wording import listed, pages_in_words, sentence

_WHY_NOT_IN_TIME: dict[Timing, str] = {
    "before the opening": "It was written before the opening.",
    "after the closing": "It was written at the closing or after it.",
}


@dataclass(frozen=True, slots=True)
class Heard:
    """A comment as the round hears it.

    `cause` is None where it speaks: it chooses `pages`, all votable, or takes back what its voter
    said before (no pages). Otherwise it is set aside for `cause`, and `pages` are those it names.
    `left_out` are pages named beside votable ones. `ruled` says that a ruling decided.
    """

    comment: ReadComment
    cause: Cause | None
    why: str
    pages: tuple[int, ...] = ()
    left_out: tuple[int, ...] = ()
    ruled: bool = False

    @property
    def said(self) -> Said:
        """What it said, for settling which comment of its voter stands."""
        return Said(self.comment.key, self.comment.written, self.pages)

    def set_aside(self, cause: Cause, why: str) -> SetAside:
        """The same comment, not counted for `cause`."""
        one = self.comment
        return SetAside(one.key, one.voter, one.author, cause, why, self.pages)


def hear(comment: ReadComment, rules: RoundRules, chart: Chart) -> Heard:
    """Hear one comment, whatever else its voter wrote.

    Raises:
        BadRuling: a ruling on it that holds cannot be.
    """
    meaning = meaning_of(comment, rules, chart)
    against = _against(comment, meaning, rules)
    if against is not None:
        cause, why = against
        return Heard(comment, cause, why, meaning.pages)
    if rules.votable.issuperset(meaning.pages) and not comment.rulings:
        return Heard(comment, None, meaning.why, meaning.pages)
    ruled = meaning.ruled or timing_of(comment.written, rules) == "cannot tell when"
    votable = tuple(page for page in meaning.pages if page in rules.votable)
    left_out = tuple(page for page in meaning.pages if page not in rules.votable)
    return Heard(comment, None, meaning.why, votable, left_out, ruled)


def _against(comment: ReadComment, meaning: Meaning, rules: RoundRules) -> tuple[Cause, str] | None:
    """The first cause that holds against the comment alone, and a sentence why."""
    if comment.is_host:
        return "the host's own", "The host wrote it."
    not_in_time = _not_in_time(comment, meaning, rules)
    if not_in_time is not None:
        return not_in_time
    if meaning.kind == "nothing":
        return "chooses no page", meaning.why
    if meaning.kind == "look":
        return "needs a look", meaning.why
    if meaning.kind == "chooses" and rules.votable.isdisjoint(meaning.pages):
        named = sentence(pages_in_words(meaning.pages))
        return "page not votable", f"{named} cannot be chosen in this round."
    return None


def _not_in_time(
    comment: ReadComment, meaning: Meaning, rules: RoundRules
) -> tuple[Cause, str] | None:
    timing = timing_of(comment.written, rules)
    if timing == "in time":
        return None
    ruling = ruled_in_time(comment)
    if timing != "cannot tell when":
        why = _WHY_NOT_IN_TIME[timing]
        if ruling is not None and ruling.in_time:
            why += " A ruling cannot change this: its time is known."
        return timing, why
    if ruling is not None:
        if ruling.in_time:
            return None
        cause: Cause = (
            "after the closing"
            if "the closing" in straddled(comment.written, rules)
            else "before the opening"
        )
        return cause, f"The host ruled it not in time: {ruling.reason.strip()}"
    if meaning.ruled and meaning.kind == "nothing":
        # The host has looked, and what chooses nothing does so at any time.
        return None
    ends = listed(straddled(comment.written, rules))
    return timing, f"It may have been written on either side of {ends}: rule whether in time."
