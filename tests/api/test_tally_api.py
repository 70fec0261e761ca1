"""Counting an export that is not stored, and reading one text: nothing is kept."""

from __future__ import annotations

from datetime import UTC, datetime
from typing import Any

import pytest

from service.settings import Settings
from tests.api.asking import QUESTION, assert_problem, csv, done, everything_kept, votes
from tests.api.conftest import Service, running
from tests.conftest import Clock

Json = Any
EXPORT = csv(
    ("Maren", "2026-03-01T18:00:00Z", "13 please"),
    ("Tove", "2026-03-01T19:00:00Z", "page 21"),
    ("Odd", "2026-03-02T12:00:00Z", "12 or 40"),
    ("maren", "2026-03-03T10:00:00Z", "21 after all"),
    ("Island Guild", "2026-03-03T11:00:00Z", "7"),
    ("Elin", "2026-03-04T18:00:00Z", "9"),
    ("Pia", "2026-03-01T17:59:59Z", "9"),
    ("Rolf", "2026-03-02T13:00:00Z", "What lovely thread!"),
)


def counted(service: Service, export: str = EXPORT, **other: Json) -> Json:
    """The count of an export that was copied ten days after the opening, and is handed in then."""
    service.clock.now = datetime(2026, 3, 11, 18, 0, tzinfo=UTC)
    other = {"copied_at": "2026-03-11T18:00"} | other
    return done(service.host.count(export, QUESTION | {"hosts": ["island guild"]} | other))


def test_an_export_is_counted(service: Service) -> None:
    """Maren changed her mind; Elin wrote at the closing, which is late; Pia before the opening."""
    tally = counted(service)
    assert (tally["game"], tally["round"], tally["comments"]) == (None, None, 8)
    assert tally["tally"] == [{"page": 21, "votes": 2}]
    assert [(each["author"], each["pages"], each["text"]) for each in tally["ballots"]] == [
        ("Tove", [21], "page 21"),
        ("maren", [21], "21 after all"),
    ]
    assert {each["author"]: each["cause"] for each in tally["set_aside"]} == {
        "Maren": "another ballot stands",
        "Odd": "needs a look",
        "Island Guild": "the host's own",
        "Elin": "after the closing",
        "Pia": "before the opening",
        "Rolf": "chooses no page",
    }
    assert [each["author"] for each in tally["looks"]] == ["Odd"]
    assert (tally["winner"], tally["can_change"]) == (21, False)
    assert tally["announcement"].startswith("The vote: page 21 is next.")


def test_what_needs_a_look_shows_the_words_it_was_read_from(service: Service) -> None:
    [look] = counted(service)["looks"]
    assert look["text"] == "12 or 40"
    assert [(each["text"], each["page"]) for each in look["evidence"]] == [("12", 12), ("40", 40)]
    assert look["written"] == {
        "earliest": "2026-03-02T12:00:00Z",
        "latest": "2026-03-02T12:00:00Z",
    }


def test_the_announcement_names_no_voter(service: Service) -> None:
    words = counted(service)["announcement"]
    assert not [name for name in ("Maren", "maren", "Tove", "Odd", "Elin") if name in words]


def test_without_a_closing_it_is_the_count_so_far(service: Service) -> None:
    tally = counted(service, closes=None)
    assert tally["rules"]["closes"] is None
    assert {"page": 9, "votes": 1} in tally["tally"]


def test_the_votable_pages_follow_from_what_is_stitched(service: Service) -> None:
    tally = counted(service, votes("22", "40"), stitched=[12, 21], previous=21)
    assert tally["rules"]["votable"] == [20, 22, 30]
    assert [each["cause"] for each in tally["set_aside"]] == ["page not votable"]


def test_the_votable_pages_may_be_given(service: Service) -> None:
    tally = counted(service, votes("22", "40"), stitched=[12], votable=[40])
    assert tally["tally"] == [{"page": 40, "votes": 1}]


def test_a_tie_is_shown_step_by_step(service: Service) -> None:
    tally = counted(
        service, votes("13", "3"), stitched=[12, 22], tie_breaks=["most joined edges"],
        next_from="any stitched page",
    )  # fmt: skip
    [step] = tally["steps"]
    # On 9 columns, page 13 touches 12 and 22; page 3 touches 12 alone.
    assert (step["rule"], step["tied"], step["kept"]) == ("most joined edges", [3, 13], [13])
    assert dict(step["values"]) == {3: "1", 13: "2"}
    assert tally["winner"] == 13


def test_a_chain_that_may_leave_a_tie_is_counted_as_far_as_it_goes(service: Service) -> None:
    tally = counted(service, votes("13", "3"), tie_breaks=[])
    assert (tally["winner"], tally["undecided"]) == (None, [3, 13])


def test_comments_pasted_from_a_page_need_the_time_of_copying(service: Service) -> None:
    pasted = "Maren\n3 days ago\n13 please\nReply\n\nTove\n2 days ago\npage 21\nReply\n"
    tally = counted(service, pasted, copied_at="2026-03-05T18:00", format="pasted")
    assert tally["format"] == "pasted"
    # "3 days ago" is at least 3 and less than 4 days before the copying: from just after the
    # opening on. "2 days ago" begins on the 2nd at 18:00.
    assert [each["author"] for each in tally["ballots"]] == ["Maren", "Tove"]
    assert tally["ballots"][0]["written"]["latest"] == "2026-03-02T18:00:00Z"


def test_nothing_is_kept(service: Service) -> None:
    before = everything_kept(service)
    counted(service)
    assert everything_kept(service) == before


def test_counting_needs_no_database_at_all(empty_sqlite: Settings, clock: Clock) -> None:
    with running(empty_sqlite, clock) as service:
        assert counted(service)["winner"] == 21
        done(service.host.post("/read", {"text": "42", "chart": {"columns": 9, "rows": 7}}))
    assert list(empty_sqlite.data_folder.iterdir()) == []


def test_the_order_of_the_comments_never_matters(service: Service) -> None:
    head, *rows = EXPORT.splitlines()
    backwards = "\n".join([head, *reversed(rows)]) + "\n"
    one, other = counted(service), counted(service, backwards)
    assert one == other


BAD_QUESTIONS: list[Any] = [
    pytest.param({"chart": {"columns": 9, "rows": 0}}, "has 0 rows", id="a page count of 0"),
    pytest.param({"zone": "Moon/Base"}, "no such time zone", id="no zone"),
    pytest.param({"closes": "2026-03-01T17:00"}, "is not after the opening", id="backwards"),
    pytest.param({"stitched": [64]}, "page 64 is not on the chart", id="a page off the chart"),
    pytest.param({"votable": [64]}, "not on the chart", id="a votable page off the chart"),
    pytest.param({"choices": 0}, "0 pages", id="no choice"),
    pytest.param({"tie_breaks": ["coin"]}, "#/question/tie_breaks/0", id="no tie-break"),
    pytest.param({"opens": "noonish"}, "no point in time", id="no time"),
    pytest.param({"columns": {"text": ""}}, "#/question/columns/text", id="no header"),
    pytest.param({"colour": "red"}, "#/question/colour", id="an unknown name"),
]


@pytest.mark.parametrize(("other", "says"), BAD_QUESTIONS)
def test_a_question_that_cannot_be_is_refused(service: Service, other: Json, says: str) -> None:
    assert_problem(service.host.count(EXPORT, QUESTION | other), 422, says)


def test_a_question_that_is_no_json_is_refused(service: Service) -> None:
    answer = service.host.hand_in("/tally", EXPORT, question="{chart")
    assert_problem(answer, 422, "#/question")


BAD_EXPORTS: list[Any] = [
    pytest.param(b"", "mine.csv: the file is empty", "/api/problems/empty-export", id="empty"),
    pytest.param(
        b"\x89PNG\r\n\x1a\n\0\0\0\rIHDR", "PNG", "/api/problems/binary-export", id="binary"
    ),
    pytest.param(b"a,b\n1,2\n", "columns seen: a, b", "/api/problems/no-text-column", id="no text"),
]


@pytest.mark.parametrize(("content", "says", "kind"), BAD_EXPORTS)
def test_an_export_that_cannot_be_read_is_refused(
    service: Service, content: bytes, says: str, kind: str
) -> None:
    problem = assert_problem(service.host.count(content, QUESTION, "mine.csv"), 422, says)
    assert (problem["type"], problem["name"]) == (kind, "mine.csv")


def test_the_example_of_one_text_is_what_its_reading_answers(service: Service) -> None:
    shapes = service.app.openapi()["components"]["schemas"]
    [asked], [shown] = (shapes[name]["examples"] for name in ("ReadIn", "ReadingOut"))
    answered = done(service.host.post("/read", asked))
    for name in ("outcome", "pages", "reason"):
        assert answered[name] == shown.get(name)  # null is left out there
    for one, other in zip(answered["evidence"], shown["evidence"], strict=True):
        assert one | {"rule": ""} == other | {"rule": ""}


def test_one_text_is_read(service: Service) -> None:
    asked = {"text": "12 or 40", "chart": {"columns": 9, "rows": 7}}
    reading = done(service.host.post("/read", asked))
    assert (reading["outcome"], reading["pages"], reading["reason"]) == ("look", [12, 40], None)
    spans = [(one["start"], one["end"], one["text"], one["page"]) for one in reading["evidence"]]
    assert spans == [(0, 2, "12", 12), (6, 8, "40", 40)]
    assert reading["why"]
    assert all(one["rule"] for one in reading["evidence"])
    approved = done(service.host.post("/read", asked | {"choices": 2}))
    assert (approved["outcome"], approved["pages"]) == ("counts", [12, 40])
    thanks = done(service.host.post("/read", asked | {"text": "thank you!"}))
    assert (thanks["evidence"], thanks["pages"]) == ([], [])
    assert (thanks["outcome"], thanks["reason"]) == ("none", "no-page")
