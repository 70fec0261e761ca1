"""The prize of the first right guesser: what is offered, and what became of the claim."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from typing import Literal
from zoneinfo import ZoneInfo

from service.errors import BadRules, WrongState

ClaimState = Literal["to be claimed", "unclaimed", "asked for", "sent", "passed on"]

#: Shown wherever a prize is set up.
CAUTION = (
    "A prize for a guess may make the game a giveaway. Giveaways are regulated, differently from "
    "country to country, and by the platforms they are held on: who may take part, what must be "
    "said beforehand, taxes and customs. Find out what holds where you and your viewers are "
    "before you promise anything. This is no legal advice."
)
MOST_CLAIM_DAYS = 365


@dataclass(frozen=True, slots=True)
class Prize:
    """What is offered, where it may be chosen from, and for how many days it may be claimed.

    Raises:
        BadRules: nothing is offered, or the days are not 1 to 365.
    """

    offer: str
    choose_from: str = ""
    claim_days: int = 14

    def __post_init__(self) -> None:
        if not self.offer.strip():
            raise BadRules("the prize offers nothing", "say what the first right guesser may have")
        if not 1 <= self.claim_days <= MOST_CLAIM_DAYS:
            raise BadRules(
                f"the prize may be claimed for {self.claim_days} days",
                f"give 1 to {MOST_CLAIM_DAYS} days",
            )


@dataclass(frozen=True, slots=True)
class Claim:
    """One winner's claim: until when, what was asked for and when, when it was sent.

    `passed_on` is when the prize went to the next right guesser.
    """

    claim_by: datetime
    asked_for: str = ""
    asked_at: datetime | None = None
    sent_at: datetime | None = None
    passed_on: datetime | None = None

    def state_at(self, now: datetime) -> ClaimState:
        """How far the claim has come; "unclaimed" is one whose time is over."""
        if self.passed_on is not None:
            return "passed on"
        if self.sent_at is not None:
            return "sent"
        if self.asked_at is not None:
            return "asked for"
        return "to be claimed" if now < self.claim_by else "unclaimed"


def claim_end(announced: datetime, days: int, zone: ZoneInfo) -> datetime:
    """Until when a prize may be claimed: the same time of day, `days` later, in the game's zone.

    Where the clocks of that day skip the time, it is as much later as they skip.
    """
    local = announced.astimezone(zone).replace(microsecond=0) + timedelta(days=days)
    # Python reads a skipped time by the offset before it, which puts it after the gap.
    return local.astimezone(UTC)


def check_asked(claim: Claim, announced: datetime, asked_at: datetime, now: datetime) -> None:
    """Whether the winner can have asked for the prize at `asked_at`.

    Raises:
        WrongState: it is asked for, sent or passed on already, or was asked for too late.
        BadRules: the time is still to come, or before the winner was announced.
    """
    state = claim.state_at(now)
    if state in ("sent", "passed on"):
        raise WrongState("the prize", state, "asked for", "see the game's prize")
    if asked_at > now or asked_at < announced:
        raise BadRules(
            "the prize was asked for at a time before the winner was announced or still to come",
            "give the time at which the winner asked",
        )
    if asked_at >= claim.claim_by:
        until = claim.claim_by.isoformat().replace("+00:00", "Z")
        raise WrongState(
            "the prize",
            "unclaimed",
            "asked for",
            f"it could be claimed before {until}; pass it on, or give the time of an earlier claim",
        )


def check_sent(claim: Claim, sent_at: datetime, now: datetime) -> None:
    """Whether the prize can have been sent at `sent_at`.

    Raises:
        WrongState: it is not asked for, or was sent or passed on already.
        BadRules: the time is still to come, or before it was asked for.
    """
    state = claim.state_at(now)
    if state != "asked for" or claim.asked_at is None:
        todo = "say first what the winner asked for" if "claim" in state else "see the game's prize"
        raise WrongState("the prize", state, "sent", todo)
    if sent_at > now or sent_at < claim.asked_at:
        raise BadRules(
            "the prize was sent at a time before it was asked for or still to come",
            "give the time at which it was sent",
        )


def check_passed_on(claim: Claim, now: datetime, *, declined: bool) -> None:
    """Whether the prize can go to the next right guesser: unclaimed in time, or declined.

    Raises:
        WrongState: it can still be claimed, or is asked for, sent or passed on.
    """
    state = claim.state_at(now)
    if state == "unclaimed" or (declined and state in ("to be claimed", "asked for")):
        return
    todo = "see the game's prize"
    if state == "to be claimed":
        until = claim.claim_by.isoformat().replace("+00:00", "Z")
        todo = f"the winner may claim it until {until}; say so if the winner declined it"
    elif state == "asked for":
        todo = "send it, or say that the winner declined it"
    raise WrongState("the prize", state, "passed on", todo)
