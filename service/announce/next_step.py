"""What a host should do now in her game, and by when: one thing at a time."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Literal

from service.counting.round import TieBreak
from service.counting.wording import how_many, pages_in_words

RoundState = Literal["draft", "open", "closed", "announced"]
GuessingNow = Literal["not open", "open", "ended"]
ClaimNow = Literal["none", "to be claimed", "unclaimed", "asked for", "sent", "passed on"]
#: Where on the desk the thing is done.
Place = Literal[
    "game", "new round", "round", "hand in", "looks", "words", "guesses", "prize", "answer"
]
#: How long before the closing a reminder is worth posting.
_REMINDER = timedelta(hours=24)


@dataclass(frozen=True, slots=True)
class RoundNow:
    """A round as it stands. `planned` is when a draft is to be opened, if that was said.

    `batches` are the exports handed in; `covers` says that one was copied after the closing.
    `looks` need the host's look, `can_change` says whether they could change the result. `waits`
    is the tie-break that waits for an act of hers, among `tied`. `runoff` is the runoff that is
    held of it and is not announced yet.
    """

    number: int
    state: RoundState
    planned: datetime | None = None
    closes: datetime | None = None
    batches: int = 0
    covers: bool = False
    looks: int = 0
    can_change: bool = False
    waits: TieBreak | None = None
    tied: tuple[int, ...] = ()
    winner: int | None = None


@dataclass(frozen=True, slots=True)
class GameNow:
    """A game as it stands. `round` is the one that the host is at, None between two.

    `rounds` is how many were announced, `pages_left` how many pages are unstitched. `right` says
    that somebody has named the piece, as far as the guesses were read.
    """

    round: RoundNow | None
    rounds: int
    pages_left: int
    in_hand: tuple[int, ...] = ()
    sealed: bool = True
    revealed: bool = False
    guessing: GuessingNow = "not open"
    right: bool = False
    winner: bool = False
    claim: ClaimNow = "none"
    claim_by: datetime | None = None


@dataclass(frozen=True, slots=True)
class NextStep:
    """The thing to do, why, and where; `by` is None where it has all the time.

    `overdue` says that its time is over.
    """

    what: str
    why: str
    place: Place
    by: datetime | None = None
    overdue: bool = False


def what_next(game: GameNow, now: datetime) -> NextStep:
    """The one thing that comes first."""
    for rule in _RULES:
        step = rule(game, now)
        if step is not None:
            return step
    return NextStep(
        "Nothing is left to do",
        "The piece is stitched, and its name is told. Thank your viewers.",
        "game",
    )


def _closing_is_over(game: GameNow, now: datetime) -> NextStep | None:
    one = game.round
    if one is None or one.state != "open" or one.closes is None or now < one.closes:
        return None
    return NextStep(
        f"Close round {one.number}",
        "Its voting has ended. Close it, then hand in the comments once more.",
        "round",
        one.closes,
        overdue=True,
    )


def _closed(game: GameNow, now: datetime) -> NextStep | None:
    del now
    one = game.round
    if one is None or one.state != "closed":
        return None
    if not one.covers:
        return NextStep(
            f"Hand in the comments of round {one.number}",
            "No export reaches past its closing yet, so votes may still be missing.",
            "hand in",
        )
    if one.looks and one.can_change:
        many = how_many(one.looks, "comment")
        return NextStep(
            f"Look at {many} of round {one.number}",
            "Only you can say what they mean, and they could change the result.",
            "looks",
        )
    return _decided(one)


def _decided(one: RoundNow) -> NextStep:
    if one.waits is not None:
        tied = pages_in_words(one.tied)
        what = {
            "draw": f"Give the numbers of the draw of round {one.number}",
            "runoff": f"Hold the runoff of round {one.number}",
            "host's pick": f"Pick a page in round {one.number}",
        }.get(one.waits, f"Break the tie of round {one.number}")
        verb = "is" if len(one.tied) == 1 else "are"
        return NextStep(what, f"{tied[:1].upper()}{tied[1:]} {verb} tied.", "round")
    if one.winner is None:
        return NextStep(
            f"Announce round {one.number}",
            "Nobody chose a page. Announce it so, and open another round.",
            "round",
        )
    rest = ""
    if one.looks:
        needs = "needs" if one.looks == 1 else "need"
        rest = f" {how_many(one.looks, 'comment')} still {needs} a look, and cannot change it."
    return NextStep(f"Announce round {one.number}", f"Page {one.winner} has won.{rest}", "round")


def _prize(game: GameNow, now: datetime) -> NextStep | None:
    if game.claim == "asked for":
        why = "The winner has said what they would like."
        return NextStep("Send the prize", why, "prize")
    if game.claim == "unclaimed":
        why = "It was not claimed in time, so it goes to the next right guesser."
        return NextStep("Pass the prize on", why, "prize", game.claim_by, overdue=True)
    if game.right and not game.winner and not game.revealed:
        why = "Somebody has named the piece. See who was first before you say anything."
        return NextStep("See who named the piece first", why, "guesses")
    del now
    return None


def _unsealed(game: GameNow, now: datetime) -> NextStep | None:
    del now
    if game.sealed or game.rounds or (game.round is not None and game.round.state != "draft"):
        return None
    why = "The seal shows later that the answer was there from the first day."
    return NextStep("Seal the answer", why, "answer")


def _open(game: GameNow, now: datetime) -> NextStep | None:
    one = game.round
    if one is None or one.state != "open":
        return None
    if one.closes is None:
        why = "You close it yourself, as you announced. Hand in comments whenever you like."
        return NextStep(f"Let round {one.number} run, and close it when it is time", why, "round")
    if one.closes - now <= _REMINDER:
        why = "The voting ends soon. The words of a reminder are ready to be copied."
        return NextStep(f"Remind your viewers of round {one.number}", why, "words", one.closes)
    why = "People are voting. Hand in comments whenever you like, to see how it stands."
    return NextStep(f"Let round {one.number} run", why, "hand in", one.closes)


def _draft(game: GameNow, now: datetime) -> NextStep | None:
    one = game.round
    if one is None or one.state != "draft":
        return None
    late = one.planned is not None and one.planned <= now
    why = "It is drafted. Check its rules: they stay as they are once it is open."
    return NextStep(f"Open round {one.number}", why, "round", one.planned, overdue=late)


def _reveal(game: GameNow, now: datetime) -> NextStep | None:
    """Once guessing is over and nobody waits for a prize, only the name is left to tell."""
    del now
    if not game.sealed or game.revealed or game.guessing != "ended":
        return None
    if game.claim == "to be claimed":
        return None
    why = "Guessing has ended. The reveal publishes the answer, and everybody can check the seal."
    return NextStep("Reveal the answer", why, "guesses")


def _no_round(game: GameNow, now: datetime) -> NextStep | None:
    del now
    if game.round is not None or not game.pages_left:
        return None
    if not game.rounds:
        why = "Say when it closes and how a tie is broken; nothing is public yet."
        return NextStep("Draft the first round", why, "new round")
    why = "No page is in hand."
    if game.in_hand:
        pages = pages_in_words(game.in_hand)
        verb = "is" if len(game.in_hand) == 1 else "are"
        why = (
            f"{pages[:1].upper()}{pages[1:]} {verb} in hand. The next vote should end before that."
        )
    return NextStep("Draft the next round", why, "new round")


def _guessing(game: GameNow, now: datetime) -> NextStep | None:
    del now
    if not game.sealed or game.revealed:
        return None
    if game.guessing == "open":
        why = "Every page is stitched. End the guessing, or announce who named the piece first."
        return NextStep("End the guessing", why, "guesses")
    if game.claim == "to be claimed":
        why = "The winner may claim it until then."
        return NextStep("Wait for the prize to be claimed", why, "prize", game.claim_by)
    return NextStep("Reveal the answer", "Every page is stitched.", "guesses")


_RULES: tuple[Callable[[GameNow, datetime], NextStep | None], ...] = (
    _closing_is_over,
    _closed,
    _prize,
    _unsealed,
    _open,
    _draft,
    _reveal,
    _no_round,
    _guessing,
)
