"""Batches over the API: whole, once, within the limit, or refused with one sentence."""

from __future__ import annotations

import json
import zlib
from typing import Any

import pytest

from service.settings import Settings
from tests.api.asking import (
    PATH,
    QUESTION,
    ROUND,
    assert_problem,
    csv,
    done,
    everything_kept,
    make_game,
    open_round,
    votes,
)
from tests.api.conftest import Service, running
from tests.conftest import Clock

Json = Any
BATCHES = f"{ROUND}/batches"
#: The smallest PNG there is begins like every other (common practice: the signature bytes).
PICTURE = b"\x89PNG\r\n\x1a\n\x00\x00\x00\rIHDR\x00\x00\x00\x01\x00\x00\x00\x01\x08"


def test_a_collector_hands_in_comments(service: Service) -> None:
    open_round(service)
    report = done(service.collector().hand_in(BATCHES, votes("13", "21")), 201)
    assert report == {
        "batch": 1,
        "name": "comments.csv",
        "format": "table",
        "handed_in": "2026-03-01T20:00:00Z",
        "new": 2,
        "edited": 0,
        "unchanged": 0,
        "gone": 0,
        "repeated": False,
        "complete": False,
        "first": "2026-03-01T19:00:00Z",
        "last": report["last"],
        "copied_at": "2026-03-01T20:00:00Z",
        "past_closing": None,
        "unreadable_count": 0,
        "unreadable": [],
        "mapping": {"author": "Name", "posted": "Time", "text": "Comment"},
        "notes": report["notes"],
        "taken_back": None,
        "why_taken_back": "",
    }
    assert done(service.host.get(BATCHES)) == [report]


def test_the_same_batch_twice_changes_nothing(either_service: Service) -> None:
    service = either_service
    open_round(service)
    first = done(service.host.hand_in(BATCHES, votes("13", "21", "12 or 40")), 201)
    tally = done(service.host.get(f"{ROUND}/tally"))
    rounds_aside = {"rounds"}
    before = {
        name: rows for name, rows in everything_kept(service).items() if name not in rounds_aside
    }
    service.clock.go_on(hours=5)
    again = done(service.host.hand_in(BATCHES, votes("13", "21", "12 or 40")), 201)
    assert again == first | {"new": 0, "unchanged": 3, "repeated": True}
    after = {
        name: rows for name, rows in everything_kept(service).items() if name not in rounds_aside
    }
    assert after == before
    assert done(service.host.get(f"{ROUND}/tally")) == tally


def test_a_vote_that_was_edited_counts_as_it_stands(service: Service) -> None:
    open_round(service)
    header = "Id,Name,Time,Edited,Comment\r\n"
    before = header + "a1,Maren,2026-03-01T19:00:00Z,,13\r\n"
    after = header + "a1,Maren,2026-03-01T19:00:00Z,2026-03-01T19:30:00Z,14\r\n"
    done(service.host.hand_in(BATCHES, before), 201)
    service.clock.go_on(hours=1)
    report = done(service.host.hand_in(BATCHES, after), 201)
    assert (report["new"], report["edited"], report["unchanged"]) == (0, 1, 0)
    assert done(service.host.get(f"{ROUND}/tally"))["tally"] == [{"page": 14, "votes": 1}]


def test_columns_may_be_named(service: Service) -> None:
    open_round(service)
    export = "wer;wann;was\r\nMaren;2026-03-01T19:00:00Z;13\r\n"
    columns = json.dumps({"author": "wer", "posted": "wann", "text": "was"})
    report = done(service.host.hand_in(BATCHES, export, columns=columns), 201)
    assert report["mapping"] == {"author": "wer", "posted": "wann", "text": "was"}


def test_where_the_comments_stand_may_be_told(service: Service) -> None:
    open_round(service)
    service.clock.go_on(hours=1)
    export = json.dumps({"x": [{"say": [{"it": "13"}], "nick": "Maren"}], "y": [{"text": "14"}]})
    columns = json.dumps({"text": "/say/0/it", "author": "nick"})
    report = done(service.host.hand_in(BATCHES, export, "x.json", columns=columns, at="/x"), 201)
    assert report["mapping"] == {"author": "nick", "text": "/say/0/it"}
    [comment] = done(service.host.get(f"{ROUND}/comments"))
    assert (comment["author"], comment["text"]) == ("Maren", "13")


def test_a_time_of_copying_may_be_told(service: Service) -> None:
    open_round(service)
    service.clock.go_on(hours=5)
    pasted = "Maren\n2 hours ago\npage 13 please\nReply\n"
    fields = {"copied_at": "2026-03-01T21:30", "format": "pasted"}
    report = done(service.host.hand_in(BATCHES, pasted, "page.txt", **fields), 201)
    assert (report["format"], report["new"]) == ("pasted", 1)
    [comment] = done(service.host.get(f"{ROUND}/comments"))
    # At least 2 and less than 3 hours before the copying, the earlier end left out.
    assert comment["written"]["latest"] == "2026-03-01T19:30:00Z"
    assert comment["written"]["earliest"].startswith("2026-03-01T18:30:00")


BAD_EXPORTS: list[Any] = [
    pytest.param(b"", {}, "the file is empty", id="an empty file"),
    pytest.param(b"\r\n \r\n", {}, "", id="a blank file"),
    pytest.param(PICTURE, {}, "PNG", id="a picture"),
    pytest.param(b"PK\x03\x04" + zlib.compress(b"x" * 99), {}, "archive|ZIP|zip", id="an archive"),
    pytest.param(b"a,b\r\n1,2\r\n", {}, "no column holds the comments' text", id="no text column"),
    pytest.param(
        b"Name,Comment\r\nA,13\r\n",
        {"columns": '{"text": "Words"}'},
        "Words",
        id="a column that is not there",
    ),
    pytest.param(b"x", {"columns": "text=Words"}, "#/columns", id="columns that are no JSON"),
    pytest.param(b"x", {"columns": '{"words": "x"}'}, "#/columns/words", id="an unknown meaning"),
    pytest.param(b"x", {"format": "film"}, "#/format", id="an unknown format"),
    pytest.param(b"x", {"copied_at": "yesterday-ish"}, "no point in time", id="no time"),
    pytest.param(
        b"x", {"copied_at": "2026-03-02T18:06"}, "still to come", id="a time that is still to come"
    ),
    pytest.param(b'{"a": []}', {"at": "/b"}, "nothing stands at '/b'", id="no such place"),
]


@pytest.mark.parametrize(("content", "fields", "says"), BAD_EXPORTS)
def test_an_export_that_cannot_be_read_changes_nothing(
    service: Service, content: bytes, fields: dict[str, str], says: str
) -> None:
    open_round(service)
    done(service.host.hand_in(BATCHES, votes("13")), 201)
    before = everything_kept(service)
    assert_problem(service.host.hand_in(BATCHES, content, **fields), 422, says)
    assert everything_kept(service) == before


def test_a_batch_without_a_file_is_refused(service: Service) -> None:
    open_round(service)
    answer = service.host.ask("POST", f"/api{BATCHES}", data={"format": "table"})
    assert_problem(answer, 422, "#/file")


def test_a_draft_takes_no_comments(service: Service) -> None:
    make_game(service.host)
    done(service.host.post(f"{PATH}/rounds", {}), 201)
    before = everything_kept(service)
    assert_problem(service.host.hand_in(BATCHES, votes("13")), 409, "open it first")
    assert everything_kept(service) == before


@pytest.fixture
def small_service(sqlite: Settings, clock: Clock) -> Any:
    """A service that takes one megabyte at most."""
    with running(sqlite.model_copy(update={"upload_limit": 1}), clock) as made:
        yield made


@pytest.mark.parametrize("address", [BATCHES, "/tally"])
def test_a_larger_export_than_the_limit_is_refused(small_service: Service, address: str) -> None:
    open_round(small_service)
    before = everything_kept(small_service)
    large = votes("13") + "x" * 1_200_000
    answer = small_service.host.hand_in(address, large, question=json.dumps(QUESTION))
    problem = assert_problem(answer, 413, "larger than 1 MB: hand it in in parts")
    assert (problem["type"], problem["limit"]) == ("/api/problems/export-too-large", 1)
    assert everything_kept(small_service) == before


def test_a_told_length_beyond_the_limit_is_refused_before_anything_is_sent(
    small_service: Service,
) -> None:
    sent = 0

    async def pieces() -> Any:
        nonlocal sent
        sent += 1
        yield b"x"

    headers = {"content-type": "multipart/form-data; boundary=edge", "content-length": "2000000"}
    answer = small_service.host.ask("POST", "/api/tally", content=pieces(), headers=headers)
    assert_problem(answer, 413, "larger than 1 MB")
    assert sent == 0


def test_the_limit_holds_without_a_told_length(small_service: Service) -> None:
    """A body sent in pieces names no length: it is cut off once it is too large."""
    open_round(small_service)
    sent = 0

    async def pieces() -> Any:
        nonlocal sent
        yield b'--edge\r\nContent-Disposition: form-data; name="file"; filename="x.csv"\r\n\r\n'
        for _ in range(100):
            sent += 100_000
            yield b"x" * 100_000

    answer = small_service.host.ask(
        "POST",
        f"/api{BATCHES}",
        content=pieces(),
        headers={"content-type": "multipart/form-data; boundary=edge"},
    )
    problem = assert_problem(answer, 413, "larger than 1 MB")
    assert problem["limit"] == 1


def test_an_export_up_to_the_limit_is_taken(small_service: Service) -> None:
    open_round(small_service)
    words = votes(*["13, because it is so very blue " * 10] * 2_800)
    assert 900_000 < len(words) < 1_000_000
    assert done(small_service.host.hand_in(BATCHES, words), 201)["new"] == 2_800


ODD_TEXTS = [
    pytest.param("13 \x00 please", id="a NUL"),
    pytest.param("13 🧵👩‍👩‍👧", id="beyond the first plane"),
    pytest.param("\u202e13\u202c", id="turned about"),
    pytest.param("13" + "̈" * 50, id="many marks"),
]


@pytest.mark.parametrize("text", ODD_TEXTS)
def test_any_text_goes_in_and_comes_out(either_service: Service, text: str) -> None:
    service = either_service
    open_round(service)
    lines = json.dumps([{"author": "Åse", "text": text, "published": "2026-03-01T19:00:00Z"}])
    done(service.host.hand_in(BATCHES, lines, "c.json"), 201)
    again = done(service.host.hand_in(BATCHES, lines + " ", "c.json"), 201)
    assert (again["new"], again["edited"], again["unchanged"]) == (0, 0, 1)
    [comment] = done(service.host.get(f"{ROUND}/comments"))
    assert comment["text"] == text.replace("\x00", "\ufffd")
    for evidence in comment["reading"]["evidence"]:
        assert comment["text"][evidence["start"] : evidence["end"]] == evidence["text"]


def test_half_a_surrogate_pair_in_an_export_is_kept_as_a_mark(either_service: Service) -> None:
    service = either_service
    open_round(service)
    half = '[{"author": "\\ud83e", "text": "13 \\udd75", "published": "2026-03-01T19:00:00Z"}]'
    done(service.host.hand_in(BATCHES, half, "c.json"), 201)
    [comment] = done(service.host.get(f"{ROUND}/comments"))
    assert (comment["author"], comment["text"]) == ("\ufffd", "13 \ufffd")


def test_comments_of_a_batch_may_come_in_any_order(service: Service) -> None:
    rows = [
        ("Maren", "2026-03-01T19:00:00Z", "13"),
        ("Maren", "2026-03-01T19:30:00Z", "14"),
        ("Tove", "2026-03-01T19:10:00Z", "21"),
    ]
    open_round(service)
    done(service.host.hand_in(BATCHES, csv(*reversed(rows))), 201)
    backwards = done(service.host.get(f"{ROUND}/tally"))
    stateless = done(service.host.count(csv(*rows), QUESTION))
    assert backwards["tally"] == stateless["tally"]
    assert [each["key"] for each in backwards["ballots"]] == [
        each["key"] for each in stateless["ballots"]
    ]


def test_very_many_batches_are_listed_some_at_a_time(service: Service) -> None:
    open_round(service)
    for number in range(1, 8):
        done(service.host.hand_in(BATCHES, votes(*["13"] * number)), 201)
    listed = done(service.host.get(BATCHES, limit=3, offset=2))
    assert [batch["batch"] for batch in listed] == [3, 4, 5]
    assert [batch["batch"] for batch in done(service.host.get(BATCHES))] == list(range(1, 8))
    assert_problem(service.host.get(BATCHES, limit=0), 422, "limit")
