"""One page of a round's comments for the host: a few comments, however many there are."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from sqlmodel import Session, col, select

from service.counting.hearing import Heard, hear
from service.counting.result import Cause
from service.counting.round import ReadComment, Ruling
from service.store.columns import id_of
from service.store.comment_index import CommentIndex, Shown, index_of
from service.store.comments import comment_row, comments_by_id
from service.store.counting import counting_rules
from service.store.games import chart_of
from service.store.many import rows_of
from service.store.readings import read_comment
from service.store.readings_kept import VoteReader
from service.store.speaking import comments_as_kept
from service.store.tables import GameRow, RoundRow
from service.store.tables_comments import RulingRow

#: Why comments do not count that are set aside for others of their voter, in a word each.
_FOR_ANOTHER: Mapping[Cause, str] = {
    "another ballot stands": "Another ballot of this voter stands.",
    "withdrawn": "This voter took it back.",
    "cannot tell when": "It cannot be told which of this voter's ballots came last: rule on one.",
}


@dataclass(frozen=True, slots=True)
class SettledComment:
    """A comment and what became of it; `cause` is None where it counts."""

    comment: ReadComment
    cause: Cause | None
    why: str
    pages: tuple[int, ...]


@dataclass(frozen=True, slots=True)
class CommentPage:
    """Some comments of those shown so: `before` come before them, of `total`.

    `many` are the figures of every kind. `earlier` and `later` are the keys from which the pages
    before and after begin; None where there is none.
    """

    comments: tuple[SettledComment, ...]
    before: int
    total: int
    many: Mapping[Shown, int]
    earlier: str | None
    later: str | None


def comment_page(
    session: Session, game: GameRow, row: RoundRow, shown: Shown, start: tuple[str | None, int]
) -> CommentPage:
    """At most so many comments from the one of that key on, `start` being key and number.

    Raises:
        WrongState: the round is a draft.
        NotFound: the round has no comment of that key.
    """
    key, limit = start
    index = index_of(session, game, row)
    first = None if key is None else id_of(comment_row(session, row, key))
    before, ids = index.slice_from(shown, first, limit)
    total = index.many(shown)
    if not ids and total:
        # The last of them has been ruled on: show what is before.
        before = max(0, total - limit)
        ids = index.slice_from(shown, index.id_at(shown, before), limit)[1]
    places = (max(0, before - limit) if before else -1, before + limit)
    earlier, later = _keys_at(session, index, shown, places)
    return CommentPage(
        comments=_settled(session, (game, row), index, ids),
        before=before,
        total=total,
        many={kind: index.many(kind) for kind in ("look", "set-aside", "counts", "all")},
        earlier=earlier,
        later=later,
    )


def _keys_at(
    session: Session, index: CommentIndex, shown: Shown, places: tuple[int, int]
) -> tuple[str | None, ...]:
    """The keys of the comments that have so many before them among those shown so."""
    ids = [None if where < 0 else index.id_at(shown, where) for where in places]
    listed = ", ".join(str(one) for one in ids if one is not None)
    asked = f"SELECT id, key FROM comments WHERE id IN ({listed or 0})"  # noqa: S608 - own numbers
    keys = dict(rows_of(session, asked, {}))
    return tuple(None if one is None else keys[one] for one in ids)


def _settled(
    session: Session, place: tuple[GameRow, RoundRow], index: CommentIndex, ids: Sequence[int]
) -> tuple[SettledComment, ...]:
    game, row = place
    asked, rulings = index.asked, _rulings(session, ids)
    rules, chart = counting_rules(row), chart_of(game)
    if index.is_kept:
        comments = dict(comments_as_kept(session, row, asked, ids, rulings))
    else:
        reader = VoteReader(asked.question)
        comments = {
            one.id: read_comment(one, asked, reader, rulings.get(one.id, ()))
            for one in comments_by_id(session, id_of(row), ids)
        }
    found = {
        number: _settled_one(hear(comment, rules, chart), index.cause_of(number))
        for number, comment in comments.items()
    }
    return tuple(found[number] for number in ids if number in found)


def _settled_one(heard: Heard, cause: Cause | None) -> SettledComment:
    why = heard.why
    if heard.cause is None and cause is not None:
        why = _FOR_ANOTHER.get(cause, why)
    return SettledComment(heard.comment, cause, why, heard.pages)


def _rulings(session: Session, ids: Sequence[int]) -> dict[int, tuple[Ruling, ...]]:
    """The host's rulings on these comments, oldest first."""
    listed = ", ".join(map(str, ids))
    asked = f"SELECT id FROM rulings WHERE comment_id IN ({listed or 0})"  # noqa: S608 - the same
    numbers = [one for (one,) in rows_of(session, asked, {})]
    found: dict[int, tuple[Ruling, ...]] = {}
    if not numbers:
        return found
    of_these = select(RulingRow).where(col(RulingRow.id).in_(numbers))
    for one in session.exec(of_these.order_by(col(RulingRow.id))):
        ruling = Ruling(tuple(one.pages), one.reason, one.at, one.withdraws, one.in_time)
        found[one.comment_id] = (*found.get(one.comment_id, ()), ruling)
    return found
