"""What a round shows once it has been opened: how it stands, and what the host can do in it."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import datetime
from typing import ClassVar

from markupsafe import Markup
from sqlmodel import Session

from service.announce.map_picture import Look, draw_map
from service.announce.page_map import PageMap, map_in_words
from service.comments.times import zone_of
from service.counting.wording import how_many, sentence
from service.pages.desk_access import SignedIn
from service.pages.form_reading import NOTHING, Typed
from service.pages.frame import Frame
from service.pages.game_contexts import round_title
from service.pages.game_frame import (
    GameBar,
    TimeShown,
    game_bar,
    round_address,
    time_shown,
)
from service.pages.marked_text import short_time
from service.pages.rendering import Context, inline
from service.pages.round_outcome import Outcome, SourceShown, outcome_of_round, sources_shown
from service.store.announcing_settings import announcing_of
from service.store.batches import newest_number, some_batches
from service.store.desk_counts import count_kept
from service.store.games import page_states
from service.store.pictures import map_of_round
from service.store.revisions import revisions_of
from service.store.tables import GameRow, RoundRow
from service.store.tables_counting import RevisionRow

DONE = {
    "opened": "The round is open. The words of its opening are ready to be copied.",
    "closed": "The round is closed.",
    "picked": "Your pick is kept.",
    "told": "The draw's source is kept.",
    "announced": "The round is announced. Its words and pictures are ready.",
    "revised": "The new revision is announced; the old ones stay.",
    "kept": "The comments are kept.",
}

#: So many batches are listed, newest first, and so many of them at once: the others are unfolded.
_BATCHES_SHOWN, _BATCHES_OPEN = 50, 6


@dataclass(frozen=True, slots=True)
class BatchLine:
    """A batch in the round's list."""

    number: int
    name: str
    to: str
    words: str
    handed_in: str


@dataclass(frozen=True, slots=True)
class BatchList:
    """The round's batches, newest first: what is shown at once, unfolded, and left out."""

    newest: tuple[BatchLine, ...]
    before: tuple[BatchLine, ...]
    left_out: str


@dataclass(frozen=True, slots=True)
class RevisionLine:
    """An announced result."""

    number: int
    announced: TimeShown
    reason: str
    winner: int | None
    record: str


@dataclass(frozen=True, slots=True)
class RoundPage(Context):
    """A round that is open, closed or announced."""

    template: ClassVar[str] = "round.html"

    frame: Frame
    bar: GameBar
    title: str
    state: str
    at: str
    done: str
    typed: Typed
    opens: TimeShown | None
    closes: TimeShown | None
    closes_by_hand: bool
    may_close: bool
    rules: tuple[tuple[str, str], ...]
    why_votable: str
    picture: Markup
    in_words: str
    batches: BatchList
    outcome: Outcome
    sources: tuple[SourceShown, ...]
    in_hand: str
    revisions: tuple[RevisionLine, ...]
    is_changed: bool
    picture_files: tuple[tuple[str, str], ...]


def round_page(
    session: Session,
    desk: SignedIn,
    place: tuple[GameRow, RoundRow],
    said: tuple[datetime, str],
    typed: Typed = NOTHING,
) -> RoundPage:
    """A round as it stands; `said` are the time, and what was done."""
    (game, row), (now, done) = place, said
    at = round_address(game.slug, row.number)
    counted = count_kept(session, game, row)
    found = revisions_of(session, row)
    shown = replace(
        map_of_round(session, game, row), votes=dict(counted.result.tally), title="Pages"
    )
    outcome = outcome_of_round(row, counted)
    return RoundPage(
        frame=desk.frame(round_title(row), at),
        bar=game_bar(session, game, now, at),
        title=round_title(row),
        state=row.state,
        at=at,
        done=DONE.get(done, ""),
        typed=typed,
        **_times(session, game, row),
        closes_by_hand=row.state == "open" and row.closes is None,
        may_close=row.state == "open" and (row.closes is None or row.closes <= now),
        rules=_rules(row),
        why_votable=row.why,
        picture=drawn(shown),
        in_words=map_in_words(shown),
        batches=_batches(session, game, row, at),
        outcome=outcome,
        sources=sources_shown(session, game, row),
        in_hand=", ".join(map(str, page_states(session, game).in_hand)),
        revisions=tuple(_revision(game, row, one) for one in reversed(found)),
        is_changed=bool(found) and _differs(found[-1].result, outcome),
        picture_files=_files(game, row),
    )


def _times(session: Session, game: GameRow, row: RoundRow) -> dict[str, TimeShown | None]:
    """Opening and closing, in the host's other zones too."""
    zone, also = zone_of(game.zone), announcing_of(session, game).also
    times = (("opens", row.opens), ("closes", row.closes))
    return {name: None if at is None else time_shown(at, zone, also) for name, at in times}


def drawn(shown: PageMap) -> Markup:
    """The map for the page."""
    return inline(draw_map(shown, Look(heading=False)))


def _rules(row: RoundRow) -> tuple[tuple[str, str], ...]:
    standing = {"latest": "the latest stands", "first": "the first stands"}
    return (
        ("A voter chooses", f"up to {row.choices} pages" if row.choices > 1 else "one page"),
        ("Of several votes of one voter", standing[row.standing]),
        ("A tie is broken by", ", then ".join(row.tie_breaks)),
        ("Pages that can be chosen", how_many(len(row.votable or ()), "page")),
    )


def _batches(session: Session, game: GameRow, row: RoundRow, at: str) -> BatchList:
    lines = tuple(
        BatchLine(
            number=batch.number,
            name=batch.name,
            to=f"{at}/batches/{batch.number}",
            words="taken back"
            if batch.taken_back is not None
            else f"{batch.new:,} new, {batch.edited:,} edited, {batch.unchanged:,} known already",
            handed_in=short_time(batch.handed_in, zone_of(game.zone)),
        )
        for batch in some_batches(session, row, _BATCHES_SHOWN, newest_first=True)
    )
    left_out = _left_out(newest_number(session, row) - _BATCHES_SHOWN)
    return BatchList(lines[:_BATCHES_OPEN], lines[_BATCHES_OPEN:], left_out)


def _left_out(many: int) -> str:
    """What is said of batches that are not listed: a collector may hand in thousands."""
    if many <= 0:
        return ""
    return f"And {how_many(many, 'earlier batch', 'earlier batches')}, which the API lists."


def _revision(game: GameRow, row: RoundRow, one: RevisionRow) -> RevisionLine:
    record = f"/api/games/{game.slug}/rounds/{row.number}/record?revision={one.number}"
    return RevisionLine(
        number=one.number,
        announced=time_shown(one.announced, zone_of(game.zone)),
        reason=one.reason or "",
        winner=one.result["winner"],
        record=record,
    )


def _differs(announced: dict[str, object], outcome: Outcome) -> bool:
    """Whether the count is no longer what was announced last."""
    told = [(one.page, one.votes) for one in outcome.tally]
    kept = [(one["page"], one["votes"]) for one in announced["tally"]]  # type: ignore[attr-defined]
    return told != kept or announced["winner"] != outcome.winner


def _files(game: GameRow, row: RoundRow) -> tuple[tuple[str, str], ...]:
    """Pictures to download, by their names."""
    at = f"/api/games/{game.slug}/rounds/{row.number}"
    named = [
        ("Map for a square post", f"{at}/map.png?shape=square"),
        ("Map for a wide post", f"{at}/map.png?shape=wide"),
        ("Map for a video", f"{at}/map.png?shape=video"),
        ("Map to lay over a video", f"{at}/map.png?shape=video&plain=true"),
        ("Map as SVG", f"{at}/map.svg"),
    ]
    if row.state == "announced":
        named += [
            ("Tally as bars", f"{at}/tally.png"),
            ("Votes by day", f"{at}/votes-by-day.png"),
        ]
    if row.closes is not None:
        named.append(("Closing for a calendar", f"{at}/closing.ics"))
    return tuple((sentence(name), to) for name, to in named)
