"""What the list of a round's comments shows: a few at a time, each with what decided and why."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from typing import ClassVar
from urllib.parse import quote
from zoneinfo import ZoneInfo

from sqlmodel import Session

from service.comments.times import zone_of
from service.counting.round import Ruling
from service.counting.timing import timing_of
from service.counting.wording import pages_in_words
from service.pages.desk_access import SignedIn
from service.pages.form_reading import NOTHING, Typed
from service.pages.frame import Frame
from service.pages.game_contexts import round_title
from service.pages.game_frame import GameBar, game_bar, round_address
from service.pages.marked_text import Piece, pieces_of, short_span, short_time
from service.pages.rendering import Context
from service.store.comment_index import Shown
from service.store.comment_pages import SettledComment, comment_page
from service.store.counting import counting_rules
from service.store.tables import GameRow, RoundRow

#: How many comments a page of the list shows.
AT_ONCE = 20
#: How many pages that a comment names get a button of their own.
_BUTTONS = 6
_NAMES: tuple[tuple[Shown, str], ...] = (
    ("look", "Needs a look"),
    ("set-aside", "Set aside"),
    ("counts", "Counted"),
    ("all", "All"),
)


@dataclass(frozen=True, slots=True)
class FilterShown:
    """A kind of comments with how many there are."""

    name: str
    many: int
    to: str
    is_here: bool


@dataclass(frozen=True, slots=True)
class RulingShown:
    """A ruling that was made."""

    words: str
    reason: str
    at: str


@dataclass(frozen=True, slots=True)
class CommentShown:
    """A comment: its words, what became of it and why, what can be ruled with one key."""

    key: str
    author: str
    written: str
    exact: str
    pieces: tuple[Piece, ...]
    outcome: str
    kind: str
    why: str
    reading: str
    rulings: tuple[RulingShown, ...]
    pages: tuple[int, ...]
    asks_time: bool
    next: str


@dataclass(frozen=True, slots=True)
class CommentsPage(Context):
    """Some of a round's comments."""

    template: ClassVar[str] = "comments.html"

    frame: Frame
    bar: GameBar
    title: str
    round: str
    at: str
    done: str
    last: str
    typed: Typed
    filters: tuple[FilterShown, ...]
    shown: str
    start: str
    first: int
    until: int
    total: int
    comments: tuple[CommentShown, ...]
    earlier: str
    later: str


@dataclass(frozen=True, slots=True)
class Wanted:
    """What of the list is asked for, and what was done before: the key of the comment ruled on."""

    shown: Shown
    start: str | None
    now: datetime
    ruled: str = ""


def comments_page(
    session: Session,
    desk: SignedIn,
    place: tuple[GameRow, RoundRow],
    wanted: Wanted,
    typed: Typed = NOTHING,
) -> CommentsPage:
    """The part of the list that is asked for."""
    game, row = place
    of_round = round_address(game.slug, row.number)
    at, zone = f"{of_round}/comments", zone_of(game.zone)
    found = comment_page(session, game, row, wanted.shown, (wanted.start, AT_ONCE))
    keys = [one.comment.key for one in found.comments]
    rules = counting_rules(row)
    after = [*keys[1:], found.later or ""][: len(keys)]
    return CommentsPage(
        frame=desk.frame(f"Comments of {round_title(row).lower()}", at),
        bar=game_bar(session, game, wanted.now, at, quickly=True),
        title=round_title(row),
        round=of_round,
        at=at,
        done="ruled" if wanted.ruled else "",
        last=wanted.ruled,
        typed=typed,
        filters=tuple(
            FilterShown(name, found.many[shown], f"{at}?show={shown}", shown == wanted.shown)
            for shown, name in _NAMES
        ),
        shown=wanted.shown,
        start=wanted.start or "",
        first=found.before + 1 if found.comments else 0,
        until=found.before + len(found.comments),
        total=found.total,
        comments=tuple(
            _shown(one, zone, key, asks=timing_of(one.comment.written, rules) == "cannot tell when")
            for one, key in zip(found.comments, after, strict=True)
        ),
        earlier=_page_from(at, wanted.shown, found.earlier),
        later=_page_from(at, wanted.shown, found.later),
    )


def _page_from(at: str, shown: Shown, key: str | None) -> str:
    return "" if key is None else f"{at}?show={shown}&from={quote(key)}"


def _shown(one: SettledComment, zone: ZoneInfo, after: str, *, asks: bool) -> CommentShown:
    comment = one.comment
    needs_look = one.cause in ("needs a look", "cannot tell when")
    counted = one.cause is None
    pages = tuple(dict.fromkeys((*one.pages, *comment.reading.pages)))
    outcome = f"counts for {pages_in_words(one.pages)}" if counted else f"{one.cause}"
    return CommentShown(
        key=comment.key,
        author=comment.author or "(no name)",
        written=short_span(comment.written, zone),
        exact=comment.written.earliest.isoformat(),
        pieces=pieces_of(comment.text, comment.reading.evidence),
        outcome=outcome,
        kind="counts" if counted else "look" if needs_look else "aside",
        why=one.why,
        reading="" if one.why == comment.reading.why else comment.reading.why,
        rulings=tuple(_ruling(ruling, zone) for ruling in comment.rulings),
        pages=pages[:_BUTTONS],
        asks_time=asks or one.cause == "cannot tell when",
        next=after,
    )


def _ruling(ruling: Ruling, zone: ZoneInfo) -> RulingShown:
    said = [pages_in_words(ruling.pages)] if ruling.pages else []
    if ruling.withdraws:
        said.append("takes the vote back")
    if ruling.in_time is not None:
        said.append("in time" if ruling.in_time else "not in time")
    return RulingShown(
        words=", ".join(said) or "chooses nothing",
        reason=ruling.reason,
        at=short_time(ruling.at, zone),
    )
