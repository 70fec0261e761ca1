"""Which entries of the log stand: those that no later entry corrects or takes back."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from service.errors import BadLog
from service.pace.entry import OVER_DAYS, Entry


@dataclass(frozen=True, slots=True)
class Standing:
    """An entry that stands, in the `place` of the first one that it goes back to."""

    place: int
    entry: Entry


def standing_entries(entries: Iterable[Entry]) -> tuple[Standing, ...]:
    """The entries that stand, by day, then by place. `entries` come in the order of their numbers.

    Raises:
        BadLog: an entry corrects one that is not there, or that another has corrected already.
    """
    places: dict[int, int] = {}
    standing: dict[int, Entry] = {}
    corrected_by: dict[int, int] = {}
    for entry in entries:
        place = entry.number
        if entry.corrects is not None:
            _check_corrects(entry, places, corrected_by)
            place = places[entry.corrects]
            corrected_by[entry.corrects] = entry.number
        places[entry.number] = place
        standing.pop(place, None)
        if not entry.taken_back:
            standing[place] = entry
    by_day = sorted(standing.items(), key=lambda one: (one[1].day, one[0]))
    return tuple(Standing(place, entry) for place, entry in by_day)


def _check_corrects(entry: Entry, places: dict[int, int], corrected_by: dict[int, int]) -> None:
    wrong = entry.corrects
    if wrong is None or wrong not in places:
        raise BadLog(f"the log has no entry {wrong} to correct", "look for its number in the log")
    if wrong in corrected_by:
        raise BadLog(
            f"entry {wrong} was corrected by entry {corrected_by[wrong]}",
            f"correct entry {corrected_by[wrong]}, or log anew what was taken back",
        )


def check_order(standing: Sequence[Standing]) -> None:
    """Whether the days of each page and piece are in order.

    An entry that tells of all days since the one before it must come later than every entry logged
    before it, and earlier than those logged after it. A single day may be filled in later.

    Raises:
        BadLog: days out of order, or two entries of one page on one day.
    """
    by_thing: dict[tuple[int | None, str], list[Standing]] = {}
    for one in standing:
        if not one.entry.is_rest:
            by_thing.setdefault((one.entry.page, one.entry.piece), []).append(one)
    for of_thing in by_thing.values():
        _check_thing(sorted(of_thing, key=lambda one: one.place))


def _check_thing(in_place: Sequence[Standing]) -> None:
    """One page or piece, its entries in the order in which they were logged."""
    days: dict[object, Entry] = {}
    latest: Entry | None = None
    over_days: Entry | None = None
    for one in in_place:
        entry = one.entry
        if entry.day in days:
            raise BadLog(
                f"{entry.where} is the second of that day (entry {days[entry.day].number} is there)",
                "correct that entry instead",
            )
        before = latest if entry.how in OVER_DAYS else over_days
        if before is not None and entry.day < before.day:
            raise BadLog(
                f"{entry.where} is out of order: the log already tells of {before.day} "
                f"(entry {before.number})",
                "put the days in order, or correct that entry",
            )
        days[entry.day] = entry
        latest = entry if latest is None or entry.day > latest.day else latest
        over_days = entry if entry.how in OVER_DAYS else over_days


def check_handed_in(entries: Sequence[Entry]) -> None:
    """Whether entries handed in together come in the order of their days, each page and piece.

    Raises:
        BadLog: one is of an earlier day than one before it.
    """
    latest: dict[tuple[int | None, str, bool], Entry] = {}
    for entry in entries:
        if entry.corrects is not None:
            continue
        thing = (entry.page, entry.piece, entry.is_rest)
        before = latest.get(thing)
        if before is not None and entry.day < before.day:
            raise BadLog(
                f"{entry.where} stands after that of {before.day}, so the days are out of order",
                "put the days in order",
            )
        latest[thing] = entry
