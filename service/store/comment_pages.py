"""One page of a round's comments for the host: a few comments, however many there are."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from sqlmodel import Session, col, select

from service.counting.hearing import hear
from service.counting.result import Cause
from service.counting.round import ReadComment, RoundInput, Ruling
from service.store.columns import id_of
from service.store.comment_index import CommentIndex, Shown, index_of
from service.store.comments import comment_row, stored_comments
from service.store.counting import asked_in, input_of
from service.store.readings import read_comment
from service.store.readings_kept import VoteReader, read_by
from service.store.tables import GameRow, RoundRow
from service.store.tables_comments import CommentRow, RulingRow

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
    return CommentPage(
        comments=_settled(session, (game, row), index, ids),
        before=before,
        total=total,
        many={kind: index.many(kind) for kind in ("look", "set-aside", "counts", "all")},
        earlier=_key_at(session, index, shown, max(0, before - limit)) if before else None,
        later=_key_at(session, index, shown, before + limit),
    )


def _key_at(session: Session, index: CommentIndex, shown: Shown, where: int) -> str | None:
    number = index.id_at(shown, where)
    return (
        None
        if number is None
        else session.exec(select(CommentRow.key).where(CommentRow.id == number)).one()
    )


def _settled(
    session: Session, place: tuple[GameRow, RoundRow], index: CommentIndex, ids: Sequence[int]
) -> tuple[SettledComment, ...]:
    game, row = place
    asked, rulings = asked_in(session, game, row), _rulings(session, ids)
    round_input = input_of(session, game, row)
    reader = None if row.read_by == read_by(asked.question) else VoteReader(asked.question)
    # The ids are numbers of the index itself, never words from outside.
    which = f"AND c.id IN ({', '.join(map(str, ids)) or 0})"
    found = {
        one.id: _heard(
            read_comment(one, asked, reader, rulings.get(one.id, ())),
            round_input,
            index.cause_of(one.id),
        )
        for one in stored_comments(session, id_of(row), which)
    }
    return tuple(found[number] for number in ids if number in found)


def _heard(comment: ReadComment, round_input: RoundInput, cause: Cause | None) -> SettledComment:
    heard = hear(comment, round_input.rules, round_input.chart)
    why = heard.why
    if heard.cause is None and cause is not None:
        why = _FOR_ANOTHER.get(cause, why)
    return SettledComment(comment, cause, why, heard.pages)


def _rulings(session: Session, ids: Sequence[int]) -> dict[int, tuple[Ruling, ...]]:
    """The host's rulings on these comments, oldest first."""
    found: dict[int, tuple[Ruling, ...]] = {}
    of_these = select(RulingRow).where(col(RulingRow.comment_id).in_(ids))
    for one in session.exec(of_these.order_by(col(RulingRow.id))):
        ruling = Ruling(tuple(one.pages), one.reason, one.at, one.withdraws, one.in_time)
        found[one.comment_id] = (*found.get(one.comment_id, ()), ruling)
    return found
