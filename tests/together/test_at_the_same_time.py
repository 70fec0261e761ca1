"""Several clients at once: nothing is lost or counted twice, nobody waits for ever.

Random schedules are played on a real server with clients over HTTP, while a script works on the
database itself. LOOPSTART_TEST_SCHEDULES says how many on each database; each has a seed that is
printed where it fails, and LOOPSTART_TEST_SEED begins with that.
"""

from __future__ import annotations

import os
import threading
import time
from collections.abc import Iterator

import pytest

from service.settings import Settings
from tests.together.clients import AsScript, Client, Done, OverHttp
from tests.together.holding import (
    ask,
    begin,
    check_answers,
    check_as_if_one_after_the_other,
    check_batches,
    check_in_or_late,
    check_nothing_lost,
)
from tests.together.schedules import CLOSES, Schedule, first_export, schedule_of
from tests.together.serving import Served, served

SCHEDULES = int(os.environ.get("LOOPSTART_TEST_SCHEDULES", "4"))
#: Processes that run tests beside one another must name them alike, so a seed is no test's name.
SEED = int(os.environ.get("LOOPSTART_TEST_SEED", str(time.time_ns() % 1_000_000)))
OVER_HTTP = 4


@pytest.fixture(
    scope="module", params=["sqlite", pytest.param("postgres", marks=pytest.mark.postgres)]
)
def server(
    request: pytest.FixtureRequest, tmp_path_factory: pytest.TempPathFactory
) -> Iterator[Served]:
    if request.param == "sqlite":
        folder = str(tmp_path_factory.mktemp("together"))
        with served({"LOOPSTART_DATA_FOLDER": folder}) as one:
            yield one
        return
    settings: Settings = request.getfixturevalue("module_postgres")
    with served({"DATABASE_URL": settings.database_url}, "--workers", "2") as several:
        yield several


@pytest.fixture(scope="module")
def clients(server: Served) -> Iterator[list[Client]]:
    made: list[Client] = [OverHttp(server.url, server.token) for _ in range(OVER_HTTP)]
    made.append(AsScript(server.environment))
    yield made
    for one in made:
        one.close()


@pytest.mark.parametrize("place", range(SCHEDULES))
def test_whatever_is_done_at_once_comes_to_what_is_done_one_after_the_other(
    place: int, clients: list[Client]
) -> None:
    seed = SEED + place
    print(f"LOOPSTART_TEST_SEED={seed}")  # noqa: T201 - shown where it fails
    host, slug = clients[0], f"game-{seed}"
    looks = begin(host, slug, first_export())
    plan = schedule_of(seed, slug, len(clients), looks)
    done = play(plan, clients)
    check_answers(done)
    done += settle(host, plan, done)
    check_batches(host, plan, done)
    check_nothing_lost(host, plan, done)
    check_in_or_late(host, plan, done)
    exports = {one.act.kind: one.act for one in done if one.act.kind.startswith("export")}
    check_as_if_one_after_the_other(host, plan, [exports[kind] for kind in sorted(exports)])


def play(plan: Schedule, clients: list[Client]) -> list[Done]:
    """Have every client do its acts, all at the same time."""
    done: list[Done] = []
    troubles: list[Exception] = []
    start = threading.Barrier(len(clients))

    def work(client: Client, place: int) -> None:
        try:
            start.wait(60)
            for act in plan.acts[place]:
                time.sleep(act.pause)
                done.append(client.do(act))
        except Exception as trouble:  # noqa: BLE001 - it is told below, whatever it is
            troubles.append(trouble)

    threads = [
        threading.Thread(target=work, args=(client, place)) for place, client in enumerate(clients)
    ]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert troubles == []
    return done


def settle(host: Client, plan: Schedule, done: list[Done]) -> list[Done]:
    """Close and announce, where nobody could; the acts that did."""
    kinds = {one.act.kind for one in done if one.is_kept}
    by_kind = {act.kind: act for acts in plan.acts for act in acts}
    if "close" not in kinds:
        ask(host, "POST", f"{plan.round}/close", {"at": CLOSES})
    if "announce" in kinds:
        return []
    last = host.do(by_kind["announce"])
    assert last.is_kept, last
    return [last]
