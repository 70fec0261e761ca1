"""The comments of a count made into JSON for the host."""

from __future__ import annotations

from collections.abc import Iterable

from service.api.comment_models import CommentOut, ReadingOut, RulingOut
from service.api.shapes import SpanOut
from service.counting.result import Ballot, SetAside
from service.store.readings import Counted


def outcomes_of(counted: Counted) -> list[Ballot | SetAside]:
    """Every comment once as a ballot or set aside, oldest first."""
    outcomes: dict[str, Ballot | SetAside] = {}
    outcomes |= {ballot.key: ballot for ballot in counted.result.ballots}
    outcomes |= {aside.key: aside for aside in counted.result.set_aside}
    written = sorted(
        counted.round_input.comments,
        key=lambda one: (one.written.earliest, one.written.latest, one.key),
    )
    return [outcomes[one.key] for one in written]


def comments_out(counted: Counted, shown: Iterable[Ballot | SetAside]) -> list[CommentOut]:
    """Those comments with how each was read, ruled and settled."""
    comments = {one.key: one for one in counted.round_input.comments}
    out = []
    for outcome in shown:
        comment = comments[outcome.key]
        aside = outcome if isinstance(outcome, SetAside) else None
        out.append(
            CommentOut(
                key=comment.key,
                author=comment.author,
                text=counted.texts[comment.key],
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
        )
    return out
