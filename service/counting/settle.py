"""Comments settled into ballots: each counts, or is set aside by the first cause that holds."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable
from datetime import datetime

from service.comments.spans import Span
from service.counting.hearing import Heard, hear
from service.counting.result import Ballot, SetAside
from service.counting.round import RoundInput, Standing
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
    rules = round_input.rules
    all_heard = [hear(comment, rules, round_input.chart) for comment in round_input.comments]
    ballots: list[tuple[Heard, Ballot]] = []
    aside: list[tuple[Heard, SetAside]] = []
    voters: dict[str, list[Heard]] = defaultdict(list)
    for heard in all_heard:
        if heard.cause is None:
            voters[heard.comment.voter].append(heard)
        else:
            aside.append((heard, heard.set_aside(heard.cause, heard.why)))
    for of_one_voter in voters.values():
        for heard, outcome in _settle_voter(of_one_voter, rules.standing):
            if isinstance(outcome, Ballot):
                ballots.append((heard, outcome))
            else:
                aside.append((heard, outcome))
    ballots.sort(key=lambda pair: _order(pair[0]))
    aside.sort(key=lambda pair: _order(pair[0]))
    return tuple(ballot for _, ballot in ballots), tuple(one for _, one in aside)


def _order(heard: Heard) -> tuple[datetime, datetime, str]:
    written = heard.comment.written
    return written.earliest, written.latest, heard.comment.key


def _settle_voter(
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
