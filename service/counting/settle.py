"""Comments settled into ballots: each counts, or is set aside by the first cause that holds."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Iterator
from datetime import datetime

from service.comments.spans import Span
from service.counting.hearing import Heard, hear
from service.counting.result import Ballot, SetAside
from service.counting.round import ReadComment, RoundInput, Standing
from service.counting.standing import given_since, what_stands

Since = tuple[tuple[int, Span], ...]

_UNCLEAR = (
    "It cannot be told whether it came before or after another comment of this voter, and that "
    "decides what stands: rule which of them chooses nothing."
)
_ANOTHER_STANDS: dict[Standing, str] = {
    "latest": "This voter wrote a later ballot.",
    "first": "This voter's first ballot stands.",
}


def settle(round_input: RoundInput) -> tuple[tuple[Ballot, ...], tuple[SetAside, ...]]:
    """Every comment of the round once, oldest first: a ballot, or set aside and why.

    The causes in their order: the host's own; before the opening; after the closing; cannot tell
    when; chooses no page; needs a look; page not votable; withdrawn, or another ballot of the
    same voter stands. Only ballots that remain then replace one another, so chat and a page that
    cannot be chosen never cost a voter the ballot before. Two comments of one voter whose order
    cannot be told, where it decides, are both left to the host. The order in which the comments
    are handed in never matters.

    Raises:
        BadRuling: a ruling that holds cannot be.
    """
    ballots: list[tuple[Heard, Ballot]] = []
    aside: list[tuple[Heard, SetAside]] = []
    for of_one_voter in by_voter(round_input.comments):
        for heard, outcome in settle_voter(of_one_voter, round_input):
            if isinstance(outcome, Ballot):
                ballots.append((heard, outcome))
            else:
                aside.append((heard, outcome))
    ballots.sort(key=lambda pair: order_of(pair[0]))
    aside.sort(key=lambda pair: order_of(pair[0]))
    return tuple(ballot for _, ballot in ballots), tuple(one for _, one in aside)


def by_voter(comments: Iterable[ReadComment]) -> Iterable[list[ReadComment]]:
    """The comments of each voter."""
    voters: dict[str, list[ReadComment]] = defaultdict(list)
    for comment in comments:
        voters[comment.voter].append(comment)
    return voters.values()


def settle_voter(
    of_one_voter: Iterable[ReadComment], round_input: RoundInput
) -> Iterator[tuple[Heard, Ballot | SetAside]]:
    """Every comment of one voter once, as the round hears it and what became of it.

    `round_input` has the rules and the chart; its comments are not looked at. Raises as `settle`.
    """
    speaking: list[Heard] = []
    for comment in of_one_voter:
        heard = hear(comment, round_input.rules, round_input.chart)
        if heard.cause is None:
            speaking.append(heard)
        else:
            yield heard, heard.set_aside(heard.cause, heard.why)
    if speaking:
        yield from _settle_speaking(speaking, round_input.rules.standing)


def order_of(heard: Heard) -> tuple[datetime, datetime, str]:
    """Where a comment comes among others: oldest first."""
    written = heard.comment.written
    return written.earliest, written.latest, heard.comment.key


def _settle_speaking(
    of_one_voter: list[Heard], standing: Standing
) -> Iterable[tuple[Heard, Ballot | SetAside]]:
    said = [heard.said for heard in of_one_voter]
    stands = what_stands(said, standing)
    unclear = {one.key for one in stands.unclear}
    last_back = max((one.written.earliest for one in said if one.takes_back), default=None)
    for heard, one in zip(of_one_voter, said, strict=True):
        if one == stands.ballot:
            since = ((page, given_since(page, said, standing)) for page in one.pages)
            yield heard, _ballot(heard, tuple(at for at in since if at[1] != one.written))
        elif one.key in unclear:
            yield heard, heard.set_aside("cannot tell when", _UNCLEAR)
        elif one.takes_back:
            yield heard, heard.set_aside("chooses no page", heard.why)
        elif last_back is not None and last_back > one.written.latest:
            yield heard, heard.set_aside("withdrawn", "This voter took it back.")
        else:
            yield heard, heard.set_aside("another ballot stands", _ANOTHER_STANDS[standing])


def _ballot(heard: Heard, since: Since) -> Ballot:
    one = heard.comment
    return Ballot(
        one.voter,
        one.author,
        one.key,
        heard.pages,
        one.written,
        heard.ruled,
        heard.left_out,
        since,
    )
