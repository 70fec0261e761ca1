"""The round that is open or was announced, made ready for the board."""

from __future__ import annotations

from datetime import datetime
from typing import Any

from sqlmodel import Session

from service.announce.draw_words import draw_words
from service.announce.sentences import (
    STANDING_IN_WORDS,
    choices_of,
    may_choose,
    tie_rules,
    votes_in_lines,
)
from service.comments.times import zone_of
from service.counting.round import RoundRules
from service.counting.wording import how_many, pages_in_words, sentence
from service.pages.board_contexts import PastRound, RevisionShown, RoundNow
from service.pages.examples import examples_of
from service.pages.times import closing, moment, moment_or_none
from service.store.announcing_settings import announcing_of
from service.store.counting import counting_rules, question_of
from service.store.pictures import counts_are_shown, tally_shown
from service.store.revisions import revisions_told
from service.store.tables import GameRow, RoundRow


def round_now(session: Session, game: GameRow, row: RoundRow, now: datetime) -> RoundNow:
    """The open round, or the one whose result is still to come."""
    zone, rules = zone_of(game.zone), counting_rules(row)
    shown = counts_are_shown(session, game, row)
    also = announcing_of(session, game).also
    address = f"/api/games/{game.slug}/rounds/{row.number}"
    return RoundNow(
        number=row.number,
        runoff_of=row.runoff_of,
        is_open=row.state == "open",
        opens=moment_or_none(row.opens, zone),
        closing=None if row.closes is None else closing(row.closes, zone, also, now),
        choose=may_choose(rules.votable, choices_of(rules)),
        why=row.why,
        standing=_standing(rules),
        ties=tie_rules(rules.tie_breaks),
        draw=draw_words(rules, zone),
        votes=tuple(votes_in_lines(tally_shown(session, game, row))) if shown else None,
        calendar=f"{address}/closing.ics" if row.closes is not None else "",
        examples=examples_of(question_of(game, row), tuple(sorted(rules.votable))),
    )


def past_round(session: Session, game: GameRow, row: RoundRow) -> PastRound:
    """A round with its announced result."""
    result: dict[str, Any] = row.result or {}
    address = f"/api/games/{game.slug}/rounds/{row.number}"
    winner = result.get("winner")
    revisions = _revisions(session, game, row, address)
    has_draw = any(step["rule"] == "draw" for step in result["steps"])
    return PastRound(
        number=row.number,
        headline="no page was chosen" if winner is None else f"page {winner}",
        why=result["why"],
        counted=_counted(result),
        votes=tuple(votes_in_lines((one["page"], one["votes"]) for one in result["tally"])),
        steps=tuple(_step(step) for step in result["steps"]),
        draw=f"{address}/draw" if has_draw else "",
        revisions=revisions,
        pictures=address,
        has_days=bool(revisions and revisions[-1].record),
    )


def _revisions(
    session: Session, game: GameRow, row: RoundRow, address: str
) -> tuple[RevisionShown, ...]:
    """Every announcement of the result, oldest first."""
    zone = zone_of(game.zone)
    return tuple(
        RevisionShown(
            number=told.number,
            announced=moment(told.announced, zone),
            reason=told.reason or "",
            digest=told.digest or "",
            record=f"{address}/record?revision={told.number}" if told.digest else "",
        )
        for told in revisions_told(session, row)
    )


def _standing(rules: RoundRules) -> str:
    return STANDING_IN_WORDS[rules.standing]


def _counted(result: dict[str, Any]) -> str:
    """How much was counted, without anybody's name."""
    ballots = how_many(result["ballots"], "ballot")
    looks = result["looks"]
    left = f" {sentence(str(result['looks_why']))}" if looks else ""
    return f"{ballots} of {how_many(result['comments'], 'comment')}.{left}"


def _step(step: dict[str, Any]) -> str:
    """One tie-break in words: what was tied, what it looked at, what it kept."""
    why = str(step["why"])
    ended = why if why.endswith((".", "!", "?")) else f"{why}."
    return f"{sentence(pages_in_words(step['tied']))} were tied, so “{step['rule']}”: {ended}"
