"""The words on a round that a host can paste just now, each checked before it is ready."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from sqlmodel import Session

from service.announce.instants import ENGLISH
from service.announce.templates import DEFAULTS, LENGTHS, Length, Occasion, Values, fill
from service.announce.words import (
    Heading,
    next_round_values,
    next_round_words,
    opening_values,
    reminder_values,
    result_values,
    tie_values,
)
from service.chart.votable import Votable, votable_pages
from service.comments.times import zone_of
from service.errors import BadRules, BadTemplate
from service.store.announcing_settings import Announcing, announcing_of, templates_of
from service.store.answers import check_tells_nothing
from service.store.counting import count_stored, counting_rules
from service.store.games import chart_of, page_states
from service.store.opening import votable_now
from service.store.readings import Counted
from service.store.revisions import public_result, revisions_of
from service.store.rounds import next_number
from service.store.tables import GameRow, RoundRow


@dataclass(frozen=True, slots=True)
class RoundWords:
    """Words for an occasion; `stopped` says why they are not ready, `is_own` whose template it is.

    `outdated` says that they tell the count as it is now, which is no longer the announced one.
    """

    occasion: Occasion
    length: Length
    text: str = ""
    stopped: str = ""
    is_own: bool = False
    outdated: bool = False


@dataclass(frozen=True, slots=True)
class _Ready:
    """What fills one occasion, by the locale of the words, and what of it is the host's own."""

    occasion: Occasion
    values: Mapping[str, Values]
    of_host: Mapping[str, str]
    outdated: bool = False


def round_announcements(
    session: Session, game: GameRow, row: RoundRow, now: datetime
) -> tuple[RoundWords, ...]:
    """All that can be said of the round by now, each in full and in short, in the game's order."""
    said = announcing_of(session, game)
    return tuple(
        _checked(session, game, said, ready, length)
        for ready in _ready(session, game, row, (said, now))
        for length in LENGTHS
    )


def _checked(
    session: Session, game: GameRow, said: Announcing, ready: _Ready, length: Length
) -> RoundWords:
    """The words, unless what the host has put into them gives the answer away."""
    occasion = ready.occasion
    own = templates_of(session, game).get((occasion, length))
    template, locale = DEFAULTS[length][occasion], ENGLISH
    of_host = {"the game's name": game.name, **ready.of_host}
    if own is not None:
        template, locale = own.text, said.locale
        of_host["your template"] = own.text
    try:
        for what, words in of_host.items():
            check_tells_nothing(session, game, words, what)
        text = fill(template, ready.values[locale], locale)
    except (BadRules, BadTemplate) as why:
        return RoundWords(occasion, length, stopped=str(why), is_own=own is not None)
    return RoundWords(occasion, length, text, is_own=own is not None, outdated=ready.outdated)


def _ready(
    session: Session, game: GameRow, row: RoundRow, told: tuple[Announcing, datetime]
) -> Iterator[_Ready]:
    said, now = told
    headings = {
        locale: Heading(game.name, row.number, zone_of(game.zone), said.also, locale)
        for locale in {ENGLISH, said.locale}
    }
    if row.state == "draft":
        votable, _ = votable_now(session, game, row)
        yield _next_round(headings, votable, row)
        return
    rules = counting_rules(row)
    sources = {
        f"the name of the draw's source {place}": source.name
        for place, source in enumerate(rules.draw.sources, start=1)
    }
    if row.state == "open":
        yield from _ready_while_open(headings, row, now, sources)
        return
    counted = count_stored(session, game, row, most=0)
    if counted.result.undecided:
        tied = {
            one: tie_values(told_of, counted.result, rules) for one, told_of in headings.items()
        }
        yield _Ready("tie", tied, sources)
    elif row.state == "announced" or not counted.change.possible:
        yield _result(session, game, row, (counted, headings))
    if row.state == "announced" and counted.result.winner is not None:
        coming = {
            one: Heading(game.name, next_number(session, game), told_of.zone, said.also, one)
            for one, told_of in headings.items()
        }
        votable = _votable_next(game, page_states(session, game).taken, counted.result.winner)
        yield _next_round(coming, votable, None)


def _ready_while_open(
    headings: Mapping[str, Heading], row: RoundRow, now: datetime, sources: Mapping[str, str]
) -> Iterator[_Ready]:
    """The opening, and a reminder while there is time."""
    rules = counting_rules(row)
    opened = {
        one: opening_values(heading, rules, why_these=row.why) for one, heading in headings.items()
    }
    yield _Ready("opening", opened, sources)
    if rules.closes is None or now < rules.closes:
        left = {
            one: reminder_values(heading, rules, now, why_these=row.why)
            for one, heading in headings.items()
        }
        yield _Ready("reminder", left, sources)


def _result(
    session: Session,
    game: GameRow,
    row: RoundRow,
    told: tuple[Counted, Mapping[str, Heading]],
) -> _Ready:
    """The result, with the digest of its record where the count is still what was announced."""
    counted, headings = told
    found = revisions_of(session, row)
    outdated = bool(found) and not _is_same(public_result(counted, ""), found[-1].result)
    digest = (found[-1].digest or "") if found and not outdated else ""
    then = ""
    winner = counted.result.winner
    if winner is not None:
        votable = _votable_next(game, page_states(session, game).taken | {winner}, winner)
        heading = headings[ENGLISH]
        coming = Heading(game.name, next_number(session, game), heading.zone, heading.also)
        then = next_round_words(coming, votable, opens=None, closes=None)
    values = {
        one: result_values(heading, counted.result, change=counted.change, then=then, digest=digest)
        for one, heading in headings.items()
    }
    pick = counted.round_input.host_pick
    of_host = {} if pick is None else {f"the reason for the pick of page {pick[0]}": pick[1]}
    return _Ready("result", values, of_host, outdated)


def _next_round(
    headings: Mapping[str, Heading], votable: Votable, draft: RoundRow | None
) -> _Ready:
    opens, closes = (None, None) if draft is None else (draft.opens, draft.closes)
    values = {
        one: next_round_values(heading, votable, opens=opens, closes=closes)
        for one, heading in headings.items()
    }
    return _Ready("next round", values, {})


def _votable_next(game: GameRow, taken: frozenset[int], winner: int) -> Votable:
    return votable_pages(
        chart_of(game),
        taken,
        game.next_from,  # type: ignore[arg-type]  # checked when it was kept
        winner,
    )


def _is_same(now: dict[str, Any], announced: dict[str, Any]) -> bool:
    """Whether a count tells no other result than the announced one."""
    told = ("winner", "tally", "steps", "ballots", "set_aside")
    return all(now[name] == announced.get(name) for name in told)
