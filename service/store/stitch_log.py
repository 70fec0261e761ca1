"""The stitch log of a game: entries are added and correct one another, none is overwritten."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, replace
from datetime import date, datetime

from sqlmodel import Session, col, select

from service.chart.stitches import PageTold, stitches_on
from service.comments.times import zone_of
from service.errors import BadLog, PageNotOnChart
from service.pace.entry import Details, Entry, check_entry
from service.pace.settled import SettledLog, settle_log
from service.pace.standing import check_handed_in
from service.pace.table import entries_of
from service.store.columns import id_of
from service.store.games import PageStates, chart_of, page_states, take_game
from service.store.pace_plans import PacePlan, keep_page_stitches, keep_plan, told_stitches
from service.store.tables import GameRow
from service.store.tables_pace import LogEntryRow


@dataclass(frozen=True, slots=True)
class TakenIn:
    """What a table brought: the entries that are new, and how many rows were in the log already."""

    new: tuple[Entry, ...]
    known: int


def today_of(game: GameRow, now: datetime) -> date:
    """The day in the game's zone."""
    return now.astimezone(zone_of(game.zone)).date()


def log_rows(session: Session, game: GameRow) -> Sequence[LogEntryRow]:
    """All entries of the log, those that were corrected too, by their numbers."""
    of_game = select(LogEntryRow).where(LogEntryRow.game_id == id_of(game))
    return session.exec(of_game.order_by(col(LogEntryRow.number))).all()


def log_of(session: Session, game: GameRow) -> tuple[Entry, ...]:
    """The same as values."""
    return tuple(entry_of(row) for row in log_rows(session, game))


def entry_of(row: LogEntryRow) -> Entry:
    """The entry that a row keeps."""
    return Entry(
        number=row.number,
        day=row.day,
        how=row.how,  # type: ignore[arg-type]  # checked when it was kept
        amount=row.amount,
        page=row.page,
        piece=row.piece,
        details=Details(row.fractional, row.backstitch, row.beads),
        first=row.first,
        corrects=row.corrects,
        taken_back=row.taken_back,
        note=row.note,
    )


def settled(session: Session, game: GameRow, entries: Iterable[Entry]) -> SettledLog:
    """The entries settled with the stitches of the game's pages.

    Raises:
        BadLog: they contradict one another, or what the pages have.
    """
    chart, told = chart_of(game), told_stitches(session, game)
    entries = tuple(entries)
    pages = {entry.page for entry in entries if entry.page is not None}
    return settle_log(entries, {page: stitches_on(chart, told, page) for page in pages})


def add_entries(
    session: Session, game: GameRow, entries: Sequence[Entry], now: datetime
) -> tuple[Entry, ...]:
    """Add entries to the log, all or none; they are numbered on from its last.

    Raises:
        BadLog: one cannot be, contradicts the log, or is of a page that is not in hand.
        PageNotOnChart: the chart has no such page.
    """
    take_game(session, game)
    kept = log_of(session, game)
    states = page_states(session, game)
    numbered = [
        replace(entry, number=number)
        for number, entry in enumerate(entries, start=_next_number(kept))
    ]
    return _add(session, game, (kept, numbered), now, lambda entry: _check_in_hand(entry, states))


def take_in_table(session: Session, game: GameRow, text: str, now: datetime) -> TakenIn:
    """Take a table of the log in, all or nothing. Rows that are in the log already are passed over.

    A table may hold the history of the game, so pages that are stitched by now may be in it.

    Raises:
        BadLog: a row cannot be, contradicts the log, or is of a page not in hand or stitched.
        PageNotOnChart: the chart has no such page.
    """
    take_game(session, game)
    kept = log_of(session, game)
    states = page_states(session, game)
    entries = entries_of(text, _next_number(kept))
    new = _new_of(entries, kept)
    added = _add(session, game, (kept, new), now, lambda entry: _check_begun(entry, states))
    return TakenIn(added, len(entries) - len(added))


def correct_entry(
    session: Session, game: GameRow, entry: Entry, now: datetime
) -> tuple[Entry, ...]:
    """Add an entry that stands for the one it `corrects`; that one stays in the log.

    Raises:
        BadLog: there is none to correct, or the log would contradict itself.
        PageNotOnChart: the chart has no such page.
    """
    take_game(session, game)
    kept = log_of(session, game)
    wrong = next((one for one in kept if one.number == entry.corrects), None)
    states = page_states(session, game)

    def check(corrected: Entry) -> None:
        if wrong is None or corrected.page != wrong.page:
            _check_in_hand(corrected, states)

    corrected = replace(entry, number=_next_number(kept))
    return _add(session, game, (kept, [corrected]), now, check)


def change_plan(session: Session, game: GameRow, plan: PacePlan) -> None:
    """Keep a plan, if the log fits the stitches of a page that it tells.

    Raises:
        BadChart, BadLog: it cannot be, or more is logged.
    """
    keep_plan(session, game, plan)
    settled(session, game, log_of(session, game))


def tell_page_stitches(session: Session, game: GameRow, page: int, told: PageTold) -> None:
    """Keep the stitches of a page as told by hand, if the log fits them.

    Raises:
        BadChart, BadLog, PageNotOnChart: they cannot be, or more is logged.
    """
    keep_page_stitches(session, game, page, told)
    settled(session, game, log_of(session, game))


def _add(
    session: Session,
    game: GameRow,
    log: tuple[Sequence[Entry], Sequence[Entry]],
    now: datetime,
    check_page: Callable[[Entry], None],
) -> tuple[Entry, ...]:
    """Keep the new entries of (kept, new), once all of them are found fit."""
    kept, new = log
    chart = chart_of(game)
    for entry in new:
        if entry.page is not None and entry.page not in chart.pages:
            raise PageNotOnChart(entry.page, chart.page_count)
        check_entry(entry, today_of(game, now))
        if not entry.taken_back:
            check_page(entry)
    check_handed_in(new)
    settled(session, game, (*kept, *new))
    for entry in new:
        session.add(_row(game, entry, now))
    session.flush()
    return tuple(new)


def _row(game: GameRow, entry: Entry, now: datetime) -> LogEntryRow:
    return LogEntryRow(
        game_id=id_of(game),
        number=entry.number,
        day=entry.day,
        how=entry.how,
        amount=entry.amount,
        page=entry.page,
        piece=entry.piece,
        fractional=entry.details.fractional,
        backstitch=entry.details.backstitch,
        beads=entry.details.beads,
        first=entry.first,
        corrects=entry.corrects,
        taken_back=entry.taken_back,
        note=entry.note,
        at=now,
    )


def _next_number(kept: Sequence[Entry]) -> int:
    return kept[-1].number + 1 if kept else 1


def _new_of(entries: Sequence[Entry], kept: Sequence[Entry]) -> list[Entry]:
    """Those that are not in the log yet, numbered on from its last."""
    known = {replace(entry, number=0): entry.number for entry in kept}
    numbers: dict[int, int] = {}
    new: list[Entry] = []
    for entry in entries:
        corrects = None if entry.corrects is None else numbers[entry.corrects]
        same = known.pop(replace(entry, number=0, corrects=corrects), None)
        number = _next_number(kept) + len(new) if same is None else same
        numbers[entry.number] = number
        if same is None:
            new.append(replace(entry, number=number, corrects=corrects))
    return new


def _check_in_hand(entry: Entry, states: PageStates) -> None:
    """Whether the entry's page is in hand; details may still come to one that is stitched."""
    if entry.page is None or entry.page in states.in_hand:
        return
    if entry.page in states.stitched and not entry.amount and entry.details.any:
        return
    state = "stitched" if entry.page in states.stitched else "unstitched"
    in_hand = ", ".join(str(page) for page in states.in_hand) or "none"
    raise BadLog(
        f"{entry.where} cannot be logged, since that page is {state} and not in hand",
        f"log a page in hand ({in_hand}), or put this one in hand first",
    )


def _check_begun(entry: Entry, states: PageStates) -> None:
    if entry.page not in states.stitched:
        _check_in_hand(entry, states)
