"""What the pictures of a stored game show. Counts are in them only where everybody may know them."""

from __future__ import annotations

import json
from collections.abc import Iterator, Mapping
from dataclasses import replace
from datetime import datetime
from typing import Any
from weakref import WeakKeyDictionary
from zoneinfo import ZoneInfo

from sqlalchemy import Engine
from sqlmodel import Session, col, select

from service.announce.calendar import Closing
from service.announce.captions import (
    caption_of_closed_round,
    caption_of_open_round,
    caption_of_pages,
    caption_of_result,
)
from service.announce.instants import instant_in_words
from service.announce.page_map import PageMap
from service.announce.sentences import choices_of, may_choose
from service.announce.votes_by_day import Dated, VotesByDay, dated, votes_by_day
from service.comments.spans import Span
from service.comments.times import zone_of
from service.counting.result import Ballot
from service.errors import WrongState
from service.store.announcing_settings import announcing_of
from service.store.columns import id_of
from service.store.counting import count_stored, counting_rules
from service.store.games import chart_of, page_states
from service.store.kept_counts import KeptCounts
from service.store.opening import votable_now
from service.store.revisions import record_text
from service.store.rounds import all_rounds, name_of
from service.store.tables import GameRow, RoundRow
from service.store.tables_counting import RevisionRow


def map_of_game(session: Session, game: GameRow) -> PageMap:
    """The pages as they are now, with the round that is open or was announced last."""
    chart, states = chart_of(game), page_states(session, game)
    now = PageMap(
        chart=chart,
        title=game.name,
        caption=caption_of_pages(len(states.stitched), chart.page_count),
        stitched=states.stitched,
        in_hand=frozenset(states.in_hand),
    )
    rounds = [row for row in all_rounds(session, game) if row.state != "draft"]
    if not rounds:
        return now
    row = rounds[-1]
    if row.state == "announced":
        winner = winner_shown(row)
        return replace(now, caption=caption_of_result(row.number, winner), winner=winner)
    return replace(
        now,
        caption=caption_of_round(game, row),
        votable=frozenset(row.votable or ()),
        votes=votes_shown(session, game, row),
        is_over=row.state != "open",
    )


def map_of_round(session: Session, game: GameRow, row: RoundRow) -> PageMap:
    """The pages as they were when the round opened, with what it chose; a draft's as they are."""
    shown = PageMap(chart_of(game), game.name)
    if row.state == "draft":
        states, (votable, _) = page_states(session, game), votable_now(session, game, row)
        caption = caption_of_open_round(
            row.number, len(votable.pages), row.closes, zone_of(game.zone)
        )
        return replace(
            shown,
            caption=caption.replace(" is open", " as it would open"),
            stitched=states.stitched,
            in_hand=frozenset(states.in_hand),
            votable=votable.pages,
        )
    return replace(
        shown,
        caption=caption_of_round(game, row),
        stitched=frozenset(row.stitched or ()),
        votable=frozenset(row.votable or ()),
        winner=winner_shown(row),
        votes=votes_shown(session, game, row),
        is_over=row.state != "open",
    )


def counts_are_shown(session: Session, game: GameRow, row: RoundRow) -> bool:
    """Whether everybody may know the round's counts: announced, or as the host chose."""
    return row.state == "announced" or (
        row.state in ("open", "closed") and announcing_of(session, game).counts_while_open
    )


def votes_shown(session: Session, game: GameRow, row: RoundRow) -> Mapping[int, int] | None:
    """The votes by page that everybody may know; None where nobody may yet."""
    if not counts_are_shown(session, game, row):
        return None
    return dict(tally_shown(session, game, row))


def tally_shown(session: Session, game: GameRow, row: RoundRow) -> tuple[tuple[int, int], ...]:
    """The tally that everybody may know: page and votes, most votes first.

    Raises:
        WrongState: the counts are not shown yet.
    """
    _check_shown(session, game, row)
    if row.result is not None:
        return tuple((one["page"], one["votes"]) for one in row.result["tally"])
    return _tallied(session, game, row)


def days_shown(session: Session, game: GameRow, row: RoundRow, now: datetime) -> VotesByDay:
    """The votes by day that everybody may know; of an announced round those of its record.

    Raises:
        WrongState: the counts are not shown yet.
        NotFound: the result was announced before records were kept.
    """
    _check_shown(session, game, row)
    if row.opens is None:
        raise WrongState(name_of(row), row.state, "shown by day", "open it first")
    zone = zone_of(game.zone)
    votes = (
        _announced(session, row, zone)
        if row.state == "announced"
        else _dated_so_far(session, game, row)
    )
    ends = min(row.closes or now, max(now, row.opens))
    return votes_by_day(votes, zone, row.opens, ends)


def closing_of(game: GameRow, row: RoundRow) -> Closing:
    """The round's closing, for a calendar.

    Raises:
        WrongState: no closing was announced.
    """
    if row.closes is None or row.state == "draft":
        todo = "its closing is told when the host closes it"
        raise WrongState(name_of(row), row.state, "put into a calendar", todo)
    rules = counting_rules(row)
    zone = zone_of(game.zone)
    choose = may_choose(rules.votable, choices_of(rules))
    return Closing(
        game=game.slug,
        made=game.created,
        round=row.number,
        title=f"{game.name}, round {row.number}: voting closes",
        details=f"{choose} Voting closes on {instant_in_words(row.closes, zone)}.",
        told=row.opened or row.created,
        closes=row.closes,
    )


def _check_shown(session: Session, game: GameRow, row: RoundRow) -> None:
    if not counts_are_shown(session, game, row):
        todo = "its counts are told once it is announced"
        raise WrongState(name_of(row), row.state, "shown with its counts", todo)


def title_of(game: GameRow, row: RoundRow) -> str:
    """The title of a round's pictures."""
    return f"{game.name}, round {row.number}"


def caption_of_round(game: GameRow, row: RoundRow) -> str:
    """The line below it: what stands in the round."""
    if row.state == "open":
        many = len(row.votable or ())
        return caption_of_open_round(row.number, many, row.closes, zone_of(game.zone))
    if row.state == "closed":
        return caption_of_closed_round(row.number)
    return caption_of_result(row.number, winner_shown(row))


def winner_shown(row: RoundRow) -> int | None:
    """The winner that everybody may know."""
    winner = None if row.result is None else row.result["winner"]
    return winner if isinstance(winner, int) else None


def _tallied(session: Session, game: GameRow, row: RoundRow) -> tuple[tuple[int, int], ...]:
    """The tally of a round as it stands, counted anew only where something came in since."""
    return _tallies.of(session, row, lambda: count_stored(session, game, row, most=0).result.tally)


def _dated_so_far(session: Session, game: GameRow, row: RoundRow) -> Dated:
    """The same for its votes by day, for which every ballot is needed."""

    def counted() -> Dated:
        ballots = (one.outcome for one in count_stored(session, game, row).ballots)
        return dated(ballots, zone_of(game.zone))

    return _days.of(session, row, counted)


_tallies: KeptCounts[tuple[tuple[int, int], ...]] = KeptCounts()
_days: KeptCounts[Dated] = KeptCounts()
_MOST_KEPT = 8
#: The days of announced revisions, which never change, of each database.
_REVISIONS: WeakKeyDictionary[Engine, dict[tuple[int, str], Dated]] = WeakKeyDictionary()


def _announced(session: Session, row: RoundRow, zone: ZoneInfo) -> Dated:
    """The votes of the newest revision by day. Its record, which may be large, is read once."""
    kept = _REVISIONS.setdefault(session.get_bind().engine, {})
    of_round = select(RevisionRow.id).where(RevisionRow.round_id == id_of(row))
    newest = session.exec(of_round.order_by(col(RevisionRow.number).desc())).first()
    key = (newest or 0, zone.key)
    found = kept.get(key)
    if found is None:
        found = dated(_ballots_in(record_text(session, row, None).record or ""), zone)
        _keep(kept, key, found)
    return found


def _keep(kept: dict[Any, Any], key: Any, found: Any) -> None:
    """Keep what was found and only so many others. Other threads may do the same just now."""
    kept[key] = found
    for oldest in list(kept)[:-_MOST_KEPT]:
        kept.pop(oldest, None)


def _ballots_in(record: str) -> Iterator[Ballot]:
    """The ballots that a record counts, under their pseudonyms."""
    for one in json.loads(record)["comments"]:
        if one["outcome"] == "counts":
            written = one["written"]
            span = Span(
                datetime.fromisoformat(written["earliest"]),
                datetime.fromisoformat(written["latest"]),
            )
            yield Ballot(one["voter"], "", "", tuple(one["pages"]), span)
