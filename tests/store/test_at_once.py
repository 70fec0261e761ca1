"""Two transactions at once on PostgreSQL, one held open while the other begins."""

from __future__ import annotations

import threading
from collections.abc import Callable, Iterator
from contextlib import contextmanager

import pytest

from service.chart.grid import Chart
from service.counting.round import Ruling
from service.errors import SignInRefused
from service.settings import Settings
from service.store.comment_index import index_of
from service.store.database import Database
from service.store.desk import make_link, use_link
from service.store.games import NewGame, make_game
from service.store.passwords import (
    Try,
    begin_by_password,
    check_password,
    set_password,
    take_try,
)
from service.store.rulings import rule_on_comment
from tests.store.conftest import NOW
from tests.store.handing_in import after, comment, delivery, handed_in, open_first_round
from tests.store.playing import found, key_of

pytestmark = pytest.mark.postgres
OLD, NEW = "gorse kettle lantern seven", "pebble harbour velvet nine"


@pytest.fixture
def database(postgres: Settings) -> Iterator[Database]:
    made = Database(postgres)
    yield made
    made.dispose()


@contextmanager
def meanwhile(act: Callable[[], None]) -> Iterator[None]:
    """Have an act begun that has to wait for this transaction, and end it after that."""
    troubles: list[Exception] = []

    def work() -> None:
        try:
            act()
        except Exception as trouble:  # noqa: BLE001 - it is told below, whatever it is
            troubles.append(trouble)

    other = threading.Thread(target=work)
    other.start()
    other.join(timeout=0.3)
    yield
    other.join(timeout=60)
    if troubles:
        raise troubles[0]


def test_a_ruling_is_listed_though_a_later_one_elsewhere_was_kept_before(
    database: Database,
) -> None:
    for slug in ("one", "other"):
        with database.writing() as session:
            make_game(session, NewGame(slug=slug, name=slug, zone="UTC", chart=Chart(9, 7)), NOW)
        open_first_round(database, slug)
        handed_in(database, slug, delivery([comment("Odd", "12 or 40"), comment("Una", "3 or 4")]))
    keys = {slug: key_of(database, slug, "12 or 40") for slug in ("one", "other")}
    with database.writing() as slow:
        rule_on_comment(slow, *found(slow, "one"), keys["one"], Ruling((12,), "so", after(2)))
        with database.writing() as quick:
            row = found(quick, "other")
            rule_on_comment(quick, *row, keys["other"], Ruling((12,), "so", after(2)))
        with database.reading() as session:
            assert index_of(session, *found(session, "one")).many("look") == 2
    with database.reading() as session:
        assert index_of(session, *found(session, "one")).many("look") == 1


def test_of_two_links_made_at_once_only_the_later_one_is_good(database: Database) -> None:
    made: list[str] = []

    def make() -> None:
        with database.writing() as session:
            made.append(make_link(session, NOW))

    with database.writing() as session:
        first = make_link(session, NOW)
        waits = meanwhile(make)
        waits.__enter__()
    waits.__exit__(None, None, None)
    with pytest.raises(SignInRefused), database.writing() as session:
        use_link(session, first, NOW)
    with database.writing() as session:
        assert use_link(session, made[0], NOW)


def test_a_first_password_set_twice_at_once_is_the_later_one(database: Database) -> None:
    def set_new() -> None:
        with database.writing() as session:
            set_password(session, NEW, NOW)

    with database.writing() as session:
        set_password(session, OLD, NOW)
        waits = meanwhile(set_new)
        waits.__enter__()
    waits.__exit__(None, None, None)
    check_password(tried(database), NEW)


def test_nobody_signs_in_by_a_password_that_is_changed_meanwhile(database: Database) -> None:
    with database.writing() as session:
        set_password(session, OLD, NOW)
    old = tried(database)

    def sign_in() -> None:
        with database.writing() as session:
            begin_by_password(session, old, NOW)

    with database.writing() as session:
        set_password(session, NEW, NOW)
        waits = meanwhile(sign_in)
        waits.__enter__()
    with pytest.raises(SignInRefused, match="changed just now"):
        waits.__exit__(None, None, None)


def tried(database: Database) -> Try:
    with database.writing() as session:
        found_try = take_try(session, NOW)
    assert isinstance(found_try, Try)
    return found_try
