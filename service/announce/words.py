"""Announcements in plain text, ready to paste: opening, reminder, result, tie, next round.

Each is a template filled in: the host's own, or the one that is there. No announcement tells who
voted for what, nor any voter's name.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from zoneinfo import ZoneInfo

from service.announce.draw_words import draw_words
from service.announce.instants import ENGLISH, instant_in_words, time_left
from service.announce.sentences import (
    RECORD_IN_WORDS,
    STANDING_IN_WORDS,
    choices_of,
    counted_in_words,
    may_choose,
    outcome,
    page_ranges,
    tie_in_words,
    tie_rules,
    votes_in_lines,
)
from service.announce.templates import DEFAULTS, Values, fill
from service.chart.votable import Votable
from service.counting.changes import Change
from service.counting.result import Result
from service.counting.round import RoundRules
from service.counting.wording import listed, pages_in_words

_ENGLISH = DEFAULTS["full"]


@dataclass(frozen=True, slots=True)
class Heading:
    """What an announcement is about: the game's name, the round, the game's zone for times.

    `also` are further zones that every time is told in. `locale` names days and numbers; the
    sentences stay English, whatever it is.
    """

    game: str
    round: int
    zone: ZoneInfo
    also: tuple[ZoneInfo, ...] = ()
    locale: str = ENGLISH

    @property
    def words(self) -> str:
        """The game and the round, as an announcement begins."""
        return f"{self.game}, round {self.round}"

    def instant(self, at: datetime) -> str:
        """An instant as this announcement tells it."""
        return instant_in_words(at, self.zone, self.also, self.locale)

    def values(self, **more: str | int) -> dict[str, str | int]:
        """What fills the blanks: those of every announcement, and `more`."""
        return {"game": self.game, "round": self.round, "heading": self.words, **more}


def opening_values(
    heading: Heading, rules: RoundRules, *, why_these: str = "", until: str = ""
) -> Values:
    """What fills an opening: the pages, how to vote, the closing, and how a tie is broken.

    `why_these` is a sentence saying why just these pages may be chosen. `until` says when the
    round closes where no time is set, as in "when the next video goes up".
    """
    choices = choices_of(rules)
    how = "Write the page's number in a comment."
    if choices > 1:
        how = "Write the pages' numbers in a comment; each of them gets one vote."
    closes = until.strip() or "when it is announced"
    if rules.closes is not None:
        closes = heading.instant(rules.closes)
    closing = f"Voting closes {'on ' if rules.closes is not None else ''}{closes}."
    return heading.values(
        pages=page_ranges(rules.votable),
        page_count=len(rules.votable),
        choices=choices,
        choose=may_choose(rules.votable, choices),
        why=why_these.strip(),
        how=f"{how} {STANDING_IN_WORDS[rules.standing]}",
        opens=heading.instant(rules.opens),
        closes=closes,
        closing=closing,
        ties=tie_rules(rules.tie_breaks),
        draw=draw_words(rules, heading.zone),
    )


def reminder_values(
    heading: Heading, rules: RoundRules, now: datetime, *, why_these: str = "", until: str = ""
) -> Values:
    """What fills a reminder: what fills an opening, and how much time is left from `now` on."""
    opening = dict(opening_values(heading, rules, why_these=why_these, until=until))
    for name in ("opens", "ties", "draw"):
        del opening[name]
    left = until.strip() or "until it is announced"
    if rules.closes is not None:
        left = time_left(now, rules.closes)
    return opening | {"left": left}


def result_values(
    heading: Heading,
    result: Result,
    *,
    change: Change | None = None,
    then: str = "",
    digest: str = "",
) -> Values:
    """What fills a result: winner, votes, how a tie was broken, what counted and what not.

    `change` says whether comments still to be looked at could change it. `then` is what comes
    next, as from `next_round_words`. `digest` is that of the record, where there is one.
    """
    return heading.values(
        winner="" if result.winner is None else str(result.winner),
        winner_votes=0 if result.winner is None else result.votes(result.winner),
        voters=result.figures.ballots,
        headline=_headline(result),
        outcome=outcome(result),
        votes="\n".join(votes_in_lines(result.tally)),
        steps="\n".join(tie_in_words(result, heading.zone)),
        counted=counted_in_words(result),
        looks=change.why if change is not None and change.looks else "",
        next=then.strip(),
        record=RECORD_IN_WORDS.format(digest) if digest else "",
        digest=digest,
    )


def tie_values(heading: Heading, result: Result, rules: RoundRules) -> Values:
    """What fills the words on a tie that is still open: the pages, their votes, what decides."""
    tried = {step.rule for step in result.steps if not step.waits}
    left = tuple(rule for rule in rules.tie_breaks if rule not in tried)
    decides = tie_rules(left) if left else ""
    values = dict(result_values(heading, result))
    for name in ("winner", "winner_votes", "looks", "next", "record", "digest"):
        del values[name]
    return values | {
        "tied": listed(str(page) for page in result.undecided),
        "tied_count": len(result.undecided),
        "tied_votes": result.tally[0][1] if result.tally else 0,
        "decides": decides.replace("If pages tie for the most votes, this", "What follows"),
    }


def next_round_values(
    heading: Heading, votable: Votable, *, opens: datetime | None, closes: datetime | None
) -> Values:
    """What fills the words on the round to come: its pages and times, as far as they are known.

    `heading` names the round to come. Without a page left there is none, and that is said.
    """
    begins = f"opens on {heading.instant(opens)}." if opens else "comes next."
    values = heading.values(
        pages=page_ranges(votable.pages),
        page_count=len(votable.pages),
        choose=may_choose(votable.pages, 1) if votable.pages else "",
        why=votable.why,
        opens=heading.instant(opens) if opens else "",
        begins=begins if votable.pages else "there is no further round.",
        closes=heading.instant(closes) if closes else "",
        closing=f"Voting closes on {heading.instant(closes)}." if closes else "",
    )
    return values if votable.pages else values | {"heading": f"{heading.game}:", "closing": ""}


def opening_words(
    heading: Heading, rules: RoundRules, *, why_these: str = "", until: str = ""
) -> str:
    """The opening of a round in full."""
    values = opening_values(heading, rules, why_these=why_these, until=until)
    return fill(_ENGLISH["opening"], values)


def result_words(
    heading: Heading,
    result: Result,
    *,
    change: Change | None = None,
    then: str = "",
    digest: str = "",
) -> str:
    """The result in full."""
    values = result_values(heading, result, change=change, then=then, digest=digest)
    return fill(_ENGLISH["result"], values)


def next_round_words(
    heading: Heading, votable: Votable, *, opens: datetime | None, closes: datetime | None
) -> str:
    """The round to come, in full."""
    return fill(
        _ENGLISH["next round"], next_round_values(heading, votable, opens=opens, closes=closes)
    )


def _headline(result: Result) -> str:
    if result.winner is not None:
        return f"page {result.winner} is next."
    if result.undecided:
        return f"a tie between {pages_in_words(result.undecided)}."
    return "no page was chosen."
