"""When an export was copied: told by the caller, else taken as now, and never still to come."""

from __future__ import annotations

from datetime import datetime, timedelta, tzinfo

from service.comments.times import read_moment
from service.errors import BadTime

#: How far the clocks of two computers may be apart.
_CLOCKS_APART = timedelta(minutes=5)


def time_of_copying(told: str | None, zone: tzinfo, now: datetime) -> datetime:
    """The instant of copying in UTC. `now` is aware; `told` is RFC 3339 or local in `zone`.

    Raises BadTime where it is no time, or one that is still to come: every "3 days ago" would be
    told from it. A few minutes ahead of this computer's clock are taken as now.
    """
    if told is None:
        return now
    copied_at = read_moment(told, zone)
    if copied_at > now + _CLOCKS_APART:
        raise BadTime(
            told,
            "the time of copying is still to come",
            "give the time at which the page was copied, or leave it out for now",
        )
    return min(copied_at, now)
