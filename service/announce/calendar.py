"""The closing of a round as a calendar file (RFC 5545), for viewers' own calendars."""

from __future__ import annotations

import hashlib
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta

from icalendar import Alarm, Calendar, Event

_PRODUCT = "-//Loopstart//Loopstart//EN"


@dataclass(frozen=True, slots=True)
class Closing:
    """When a round's voting closes: `title` and `details` in words, `told` since when it is known.

    `game` is its short name and `made` when the game was made: with the round's number they tell
    this closing from every other, here and in anybody's calendar.
    """

    game: str
    made: datetime
    round: int
    title: str
    details: str
    told: datetime
    closes: datetime

    @property
    def uid(self) -> str:
        """What names this event for ever (RFC 5545, section 3.8.4.7).

        A digest, as RFC 7986, section 5.3, asks for no name of a computer in it.
        """
        named = f"{self.game}\n{self.made.astimezone(UTC).isoformat()}\n{self.round}\nclosing"
        return hashlib.sha256(named.encode()).hexdigest()[:32]


def calendar_of(closing: Closing, *, alarm: timedelta | None = None) -> bytes:
    """The calendar file. `alarm` reminds that long before the closing.

    Times are in UTC, which every calendar shows in its owner's own zone, so no zone need be
    described. The same closing gives the same bytes.
    """
    event = Event()
    event.add("uid", closing.uid)
    event.add("dtstamp", closing.told.astimezone(UTC))
    # Without an end it ends when it starts (section 3.6.1): a closing takes no time.
    event.add("dtstart", closing.closes.astimezone(UTC))
    event.add("summary", closing.title)
    event.add("description", closing.details)
    event.add("transp", "TRANSPARENT")
    if alarm is not None:
        reminder = Alarm()
        reminder.add("action", "DISPLAY")
        reminder.add("trigger", -alarm)
        reminder.add("description", closing.title)
        event.add_component(reminder)
    calendar = Calendar()
    calendar.add("prodid", _PRODUCT)
    calendar.add("version", "2.0")
    calendar.add("method", "PUBLISH")
    calendar.add_component(event)
    return bytes(calendar.to_ical())
