"""Who named the piece first, as far as the comments' times can prove it."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime

from service.comments.spans import Answer as Compared
from service.mystery.judged import JudgedGuess, to_the_second
from service.mystery.window import SettledGuess


@dataclass(frozen=True, slots=True)
class FirstRight:
    """The first right guess: `key` where it is proved or the host has ruled, else None.

    `tied` are the keys of right guesses that cannot be told apart, `looks_before` those of
    comments that may be right, or in time, and may stand before the first; the host settles them.
    """

    key: str | None
    tied: tuple[str, ...]
    looks_before: tuple[str, ...]
    why: str


def first_right(
    settled: Iterable[SettledGuess],
    *,
    picked: str | None = None,
    without: frozenset[str] = frozenset(),
) -> FirstRight:
    """The earliest right guess that counts, as far as it can be proved.

    Several right guesses of one voter are that voter's. A right guess of which it cannot be told
    whether it counts is named in `looks_before`, never as the first. Of guesses that cannot be
    told apart the one that the host `picked` is the first. `without` are voters who are passed
    over, as for a prize that was not claimed.
    """
    ours = [each for each in settled if each.guess.voter not in without]
    right = [s.guess for s in ours if s.guess.outcome == "right" and s.standing == "counts"]
    open_ = [s.guess for s in ours if _is_open(s)]
    earliest = sorted((g for g in right if not any(_before(h, g) for h in right)), key=_order)
    looks = sorted((g for g in open_ if not any(_before(e, g) for e in earliest)), key=_order)
    one_voter = len({g.voter for g in earliest}) == 1
    key = earliest[0].key if one_voter else None
    if key is None and picked in {g.key for g in earliest}:
        key = picked
    tied = () if one_voter else tuple(g.key for g in earliest)
    why = _why(earliest, looks, key=key, ruled=not one_voter)
    return FirstRight(key, tied, tuple(g.key for g in looks), why)


def _is_open(settled: SettledGuess) -> bool:
    """Whether the host still has to say what it is, or whether it counts."""
    if settled.standing == "set aside":
        return False
    outcome = settled.guess.outcome
    return outcome == "look" or (outcome == "right" and settled.standing == "cannot tell")


def _before(one: JudgedGuess, other: JudgedGuess) -> bool:
    ours, theirs = to_the_second(one.written), to_the_second(other.written)
    return ours.is_before(theirs) is Compared.YES


def _order(guess: JudgedGuess) -> tuple[datetime, datetime, str]:
    return (guess.written.earliest, guess.written.latest, guess.key)


def _why(
    earliest: list[JudgedGuess], looks: list[JudgedGuess], *, key: str | None, ruled: bool
) -> str:
    """A sentence or two for the host."""
    if not earliest:
        first = "No guess is right so far."
    elif key is not None:
        [author] = {g.author for g in earliest if g.key == key}
        by_ruling = ", by the host's ruling" if ruled else ""
        first = f"The first right guess is {author}'s{by_ruling}."
    else:
        first = _told_apart_by(earliest)
    if not looks:
        return first
    many = len(looks) > 1
    before = "may stand before it" if earliest else "may be right"
    return (
        f"{first} {len(looks)} comment{'s' if many else ''} that "
        f"{'need' if many else 'needs'} a look {before}."
    )


def _told_apart_by(tied: list[JudgedGuess]) -> str:
    """That right guesses cannot be told apart, and what would settle it."""
    names = " and ".join(dict.fromkeys(g.author for g in tied))
    seconds = {g.written.earliest.replace(microsecond=0) for g in tied}
    exact = all(g.written.is_exact for g in tied)
    if exact and len(seconds) == 1:
        why = "cannot be told apart: they were written in the same second"
        return (
            f"The right guesses of {names} {why}. An export with fractions of a second would "
            "settle it, or the host's ruling."
        )
    return (
        f"The right guesses of {names} cannot be told apart by their times: "
        "an export with exact times would settle it, or the host's ruling."
    )
