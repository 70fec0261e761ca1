"""The comments of a count made into JSON for the host."""

from __future__ import annotations

from service.api.comment_models import CommentOut, ReadingOut, RulingOut
from service.api.shapes import SpanOut
from service.counting.pseudonyms import shown_name
from service.counting.result import Ballot, SetAside
from service.counting.round import ReadComment
from service.counting.running import Listed, written_order
from service.store.readings import Counted

ListedComment = Listed[Ballot] | Listed[SetAside]


def listed(counted: Counted) -> list[ListedComment]:
    """Every comment that is listed once, with what became of it, oldest first."""
    found: list[ListedComment] = [*counted.ballots, *counted.set_aside]
    return sorted(found, key=lambda one: written_order(one.comment))


def comment_out(comment: ReadComment, outcome: Ballot | SetAside) -> CommentOut:
    """A comment with how it was read, ruled and settled."""
    aside = outcome if isinstance(outcome, SetAside) else None
    return CommentOut(
        key=comment.key,
        author=shown_name(comment.author),
        text=comment.text,
        written=SpanOut.of(comment.written),
        is_host=comment.is_host,
        reading=ReadingOut.of(comment.reading),
        rulings=[RulingOut.of(ruling) for ruling in comment.rulings],
        counts=aside is None,
        needs_look=aside is not None and aside.needs_look,
        cause=aside and aside.cause,
        why=comment.reading.why if aside is None else aside.why,
        pages=list(outcome.pages),
    )
