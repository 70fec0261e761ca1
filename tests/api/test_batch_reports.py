"""What a batch reports, what is remembered of it, and how far it is while it is taken in."""

from __future__ import annotations

import threading
from typing import Any

import pytest

from service.api.progress import ProgressHere
from service.store import keeping
from tests.api.asking import PATH, ROUND, assert_problem, done, open_round, votes
from tests.api.conftest import Service

BATCHES = f"{ROUND}/batches"
ODD_TABLE = "A,B,C\r\nMaren,2026-03-01T19:00:00Z,page 13\r\n"
COLUMNS = '{"author": "A", "posted": "B", "text": "C"}'


def test_columns_that_were_named_are_remembered_for_the_game(service: Service) -> None:
    open_round(service)
    swapped = ODD_TABLE.replace("page 13", "page 21 please").replace("A,B,C", "C,B,A")
    done(service.host.hand_in(BATCHES, ODD_TABLE, columns=COLUMNS), 201)
    report = done(service.host.hand_in(BATCHES, "A,B,C\r\nTove,2026-03-01T19:30:00Z,9\r\n"), 201)
    assert report["mapping"] == {"text": "C", "author": "A", "posted": "B"}
    assert "named for an earlier export" in " ".join(report["notes"])
    # What the caller names now goes before what is remembered, and is remembered instead.
    named = COLUMNS.replace('"A"', '"X"').replace('"C"', '"A"').replace('"X"', '"C"')
    report = done(service.host.hand_in(BATCHES, swapped, columns=named), 201)
    assert report["mapping"] == {"text": "A", "author": "C", "posted": "B"}
    report = done(service.host.hand_in(BATCHES, swapped.replace("Maren", "Odd")), 201)
    assert report["mapping"] == {"text": "A", "author": "C", "posted": "B"}


def test_a_tally_tells_what_was_said_of_each_batch_and_how_the_last_was_read(
    service: Service,
) -> None:
    open_round(service)
    broken = votes("13") + "Tove,2026-03-01T19:00:00Z,\r\n"
    [unreadable] = done(service.host.hand_in(BATCHES, broken), 201)["unreadable"]
    named = done(service.host.hand_in(BATCHES, ODD_TABLE, columns=COLUMNS), 201)
    remembered = ODD_TABLE.replace("Maren", "Odd")
    noted = done(service.host.hand_in(BATCHES, remembered), 201)["notes"]
    done(service.host.hand_in(BATCHES, votes("44").replace("viewer", "Liv")), 201)
    tally = done(service.host.get(f"{ROUND}/tally"))
    assert noted
    assert tally["notes"] == list(dict.fromkeys(named["notes"] + noted))
    assert (tally["unreadable"], tally["unreadable_count"]) == ([unreadable], 1)
    assert tally["mapping"] == {"author": "Name", "posted": "Time", "text": "Comment"}
    done(service.host.post(f"{BATCHES}/4/take-back", {"reason": "the wrong export"}))
    assert done(service.host.get(f"{ROUND}/tally"))["mapping"]["author"] == "A"


def test_another_table_is_read_as_if_nothing_were_remembered(service: Service) -> None:
    open_round(service)
    done(service.host.hand_in(BATCHES, ODD_TABLE, columns=COLUMNS), 201)
    report = done(service.host.hand_in(BATCHES, votes("13", "21")), 201)
    assert report["mapping"] == {"author": "Name", "posted": "Time", "text": "Comment"}
    assert "named for an earlier export" not in " ".join(report["notes"])


def test_a_batch_that_is_refused_has_nothing_remembered(service: Service) -> None:
    open_round(service)
    wrong = '{"text": "no such column"}'
    assert service.host.hand_in(BATCHES, ODD_TABLE, columns=wrong).status_code == 422
    report = done(service.host.hand_in(BATCHES, votes("13")), 201)
    assert "named for an earlier export" not in " ".join(report["notes"])


def test_a_complete_batch_tells_what_is_gone(either_service: Service) -> None:
    service = either_service
    open_round(service)
    first = votes("13", "21", "page 9")
    done(service.host.hand_in(BATCHES, first, copied_at="2026-03-01T19:30:00Z"), 201)
    left = "\r\n".join(first.split("\r\n")[:3]) + "\r\n"
    told = {"copied_at": "2026-03-01T19:50:00Z"}
    report = done(service.host.hand_in(BATCHES, left, **told), 201)
    assert (report["complete"], report["gone"], report["unchanged"]) == (False, 0, 2)
    report = done(service.host.hand_in(BATCHES, left, complete="true", **told), 201)
    assert (report["complete"], report["gone"], report["unchanged"]) == (True, 1, 2)
    [look] = done(service.host.get(f"{ROUND}/tally"))["looks"]
    assert (look["text"], look["pages"]) == ("page 9", [9])
    assert "deleted between 2026-03-01 19:30 UTC and 2026-03-01 19:50 UTC" in look["why"]
    # The host decides, and what she decides counts.
    ruling = {"pages": [9], "reason": "she told me that it was a slip of the finger"}
    ruled = done(service.host.post(f"{ROUND}/comments/{look['key']}/rulings", ruling), 201)
    assert ruled["counts"]


def test_a_batch_tells_whether_it_reaches_past_the_closing(service: Service) -> None:
    open_round(service, closes="2026-03-01T19:30")
    early = done(service.host.hand_in(BATCHES, votes("13"), copied_at="2026-03-01T19:20"), 201)
    assert early["past_closing"] == "no"
    service.clock.go_on(hours=4)
    assert (
        done(service.host.hand_in(BATCHES, votes("21"), copied_at="2026-03-01T20:00"), 201)[
            "past_closing"
        ]
        == "yes"
    )
    late = done(service.host.hand_in(BATCHES, votes("page 9")), 201)
    assert late["past_closing"] == "cannot tell"
    assert (late["first"], late["last"]) == ("2026-03-01T19:00:00Z", "2026-03-01T19:00:00Z")


def test_very_much_that_cannot_be_read_is_counted_and_its_beginning_listed(
    service: Service,
) -> None:
    open_round(service)
    empty = "".join(f"Viewer {n},2026-03-01T19:00:00Z,\r\n" for n in range(1200))
    report = done(service.host.hand_in(BATCHES, votes("13") + empty), 201)
    assert (report["new"], report["unreadable_count"], len(report["unreadable"])) == (1, 1200, 1000)
    assert report["unreadable"][0]["place"] == "line 3"
    assert done(service.host.get(f"{ROUND}/tally"))["unreadable_count"] == 1200


def test_who_waits_can_ask_how_far_a_batch_is(
    service: Service, monkeypatch: pytest.MonkeyPatch
) -> None:
    open_round(service)
    meanwhile: list[Any] = []
    real = keeping.keep_comments
    collector = service.collector()

    def asking(*given: Any) -> Any:
        meanwhile.append(service.app.state.wiring.progress.of("my-batch-1"))
        return real(*given)

    monkeypatch.setattr("service.store.batches.keep_comments", asking)
    path = "/progress/my-batch-1"
    assert done(collector.get(path)) == {"step": "waiting", "done": 0, "total": 0}
    done(collector.hand_in(f"{BATCHES}?watch=my-batch-1", votes("13", "21")), 201)
    assert meanwhile == [("reading", 2, 2)]
    assert done(collector.get(path)) == {"step": "done", "done": 2, "total": 2}
    assert service.viewer.get(path).status_code == 401


def test_progress_is_told_from_any_thread_and_only_so_much_is_remembered() -> None:
    progress = ProgressHere()

    def tell(name: str) -> None:
        for step in range(50):
            progress.teller(f"{name}-{step}")("reading", step, 0)

    threads = [threading.Thread(target=tell, args=(f"request-{n}",)) for n in range(4)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    names = [f"request-{n}-{step}" for n in range(4) for step in range(50)]
    known = [name for name in names if progress.of(name)[0] != "waiting"]
    assert len(known) == 100
    progress.teller(None)("reading", 1, 1)


def test_comments_are_answered_a_part_at_a_time(service: Service) -> None:
    open_round(service)
    words = [("13", "12 or 40", "lovely")[place % 3] for place in range(30)]
    done(service.host.hand_in(BATCHES, votes(*words)), 201)
    whole = done(service.host.get(f"{ROUND}/comments"))
    parts = [
        one
        for offset in range(0, 30, 7)
        for one in done(service.host.get(f"{ROUND}/comments", limit=7, offset=offset))
    ]
    assert parts == whole
    assert len(whole) == 30
    looks = done(service.host.get(f"{ROUND}/comments", filter="look", limit=4, offset=8))
    assert [one["text"] for one in looks] == ["12 or 40"] * 2


def test_a_game_shows_no_columns_to_the_public(service: Service) -> None:
    open_round(service)
    done(service.host.hand_in(BATCHES, ODD_TABLE, columns=COLUMNS), 201)
    assert "columns" not in done(service.viewer.get(PATH))


def test_a_batch_is_taken_back_with_a_reason(either_service: Service) -> None:
    service = either_service
    open_round(service)
    done(service.host.hand_in(BATCHES, votes("13", "21")), 201)
    assert service.host.post(f"{BATCHES}/1/take-back", {"reason": " "}).status_code == 422
    assert service.host.post(f"{BATCHES}/2/take-back", {"reason": "x"}).status_code == 404
    back = done(service.host.post(f"{BATCHES}/1/take-back", {"reason": "of another video"}))
    assert (back["batch"], back["why_taken_back"]) == (1, "of another video")
    assert back["taken_back"] is not None
    assert done(service.host.get(BATCHES)) == [back]
    assert done(service.host.get(f"{ROUND}/comments")) == []
    assert done(service.host.get(f"{ROUND}/tally"))["comments"] == 0
    again = service.host.post(f"{BATCHES}/1/take-back", {"reason": "again"})
    assert "taken back already" in assert_problem(again, 409)["detail"]
    assert done(service.host.hand_in(BATCHES, votes("13", "21")), 201)["new"] == 2
