"""The words on a round through the API: what can be pasted when, in which template, how long."""

from __future__ import annotations

from typing import Any

import pytest

from tests.api.asking import PATH, ROUND, assert_problem, done, everything_kept, open_round, votes
from tests.api.conftest import Service

Json = Any
CLOSES = {"closes": "2026-03-01T21:00"}


def words(service: Service, **query: Any) -> dict[tuple[str, str], Json]:
    found = done(service.host.get(f"{ROUND}/announcements", **query))
    return {(one["occasion"], one["length"]): one for one in found}


def occasions(service: Service) -> list[str]:
    return list(dict.fromkeys(occasion for occasion, _ in words(service)))


def closed(service: Service, *said: str, **rules: Json) -> None:
    open_round(service, **CLOSES, **rules)
    done(service.host.hand_in(f"{ROUND}/batches", votes(*said)), 201)
    service.clock.go_on(hours=2)
    done(service.host.post(f"{ROUND}/close"))


def test_each_state_of_a_round_has_its_words(either_service: Service) -> None:
    service = either_service
    closed(service, "12", "12", "13")
    assert occasions(service) == ["result"]
    before = words(service)[("result", "full")]
    done(service.host.post(f"{ROUND}/announce"))
    assert occasions(service) == ["result", "next round"]
    after = words(service)[("result", "full")]
    assert after["text"].startswith(before["text"])
    announced = done(service.viewer.get(f"{ROUND}/result"))["announcement"]
    assert after["text"] == announced
    short = words(service)[("result", "short")]["text"]
    assert short == (
        "The windy island's mystery, round 1: page 12 is next. Page 12 wins with 2 votes. 3 voters "
        "took part."
    )
    coming = words(service)[("next round", "short")]["text"]
    assert coming.startswith(
        "The windy island's mystery, round 2 comes next. Choose one of these 4"
    )


def test_an_open_round_has_an_opening_and_a_reminder(service: Service) -> None:
    opened = open_round(service, **CLOSES)
    assert occasions(service) == ["opening", "reminder"]
    assert words(service)[("opening", "full")]["text"] == opened["announcement"]
    assert "vote now, 1 hour." in words(service)[("reminder", "short")]["text"]
    service.clock.go_on(hours=2)
    assert occasions(service) == ["opening"]


def test_a_draft_is_told_as_the_next_round(service: Service) -> None:
    closed(service, "12")
    done(service.host.post(f"{ROUND}/announce"))
    done(service.host.post(f"{PATH}/rounds", {"opens": "2026-03-05T18:00"}), 201)
    found = done(service.host.get(f"{PATH}/rounds/2/announcements"))
    assert [one["occasion"] for one in found] == ["next round"] * 2
    assert "round 2 opens on Thursday 5 March 2026 at 18:00 Faroe time" in found[0]["text"]


def test_an_open_tie_is_told_and_what_decides_it(service: Service) -> None:
    closed(service, "12", "40", tie_breaks=["host's pick"])
    assert occasions(service) == ["tie"]
    said = words(service)[("tie", "full")]["text"]
    assert "a tie between pages 12 and 40." in said
    assert "What follows decides: the host's pick, with a reason." in said


def test_a_count_that_changed_since_is_marked(service: Service) -> None:
    closed(service, "12", "12", "13")
    done(service.host.post(f"{ROUND}/announce"))
    assert words(service)[("result", "full")]["outdated"] is False
    late = "Name,Time,Comment\r\nlate,2026-03-01T19:30:00Z,12\r\n"
    done(service.host.hand_in(f"{ROUND}/batches", late), 201)
    marked = words(service)[("result", "full")]
    assert marked["outdated"] is True
    assert "SHA-256" not in marked["text"]


def test_the_host_chooses_zones_and_length(service: Service) -> None:
    open_round(service, **CLOSES)
    said = {"zones": ["America/New_York"], "most_characters": 100}
    kept = done(service.host.put(f"{PATH}/announcing", said))
    assert kept == said | {"locale": "en_GB", "counts_while_open": False}
    assert done(service.host.get(f"{PATH}/announcing")) == kept
    found = words(service)
    opening = found[("opening", "full")]
    assert "Sunday 16:00 New York time" in opening["text"]
    assert opening["characters"] == len(opening["text"])
    assert (opening["fits"], found[("reminder", "short")]["fits"]) == (False, True)
    assert words(service, limit=10_000)[("opening", "full")]["fits"] is True


@pytest.mark.parametrize(
    ("said", "says"),
    [
        ({"zones": ["Nowhere/Town"]}, "no such time zone"),
        ({"zones": ["UTC", "UTC"]}, "a zone is named twice"),
        ({"locale": "xx-klingon"}, "the language 'xx-klingon' is not known"),
        ({"most_characters": 3}, ""),
        ({"colour": "red"}, ""),
    ],
)
def test_what_cannot_be_said_of_announcing_is_refused(
    service: Service, said: Json, says: str
) -> None:
    open_round(service)
    before = everything_kept(service)
    assert_problem(service.host.put(f"{PATH}/announcing", said), 422, says)
    assert everything_kept(service) == before


def test_a_template_of_the_hosts_own_is_used(either_service: Service) -> None:
    service = either_service
    open_round(service, **CLOSES)
    own = {"text": "Runde $round: $page_count ${page_count|Seite|Seiten}, bis $closes"}
    done(service.host.put(f"{PATH}/announcing", {"locale": "de"}))
    kept = done(service.host.put(f"{PATH}/templates/opening?length=short", own))
    assert kept["own"] is True
    found = words(service)
    short = found[("opening", "short")]
    assert short["own"] is True
    assert short["text"].startswith("Runde 1: 63 Seiten, bis Sonntag, 1. März 2026, 21:00 ")
    # Those that are there from the start stay English, dates and all.
    assert found[("opening", "full")]["own"] is False
    assert "Voting closes on Sunday 1 March 2026 at 21:00" in found[("opening", "full")]["text"]
    listed = done(service.host.get(f"{PATH}/templates"))
    assert [one["text"] for one in listed if one["own"]] == [own["text"]]
    assert len(listed) == 10
    answer = service.host.delete(f"{PATH}/templates/opening?length=short")
    assert answer.status_code == 204
    assert words(service)[("opening", "short")]["own"] is False
    again = service.host.delete(f"{PATH}/templates/opening?length=short")
    assert_problem(again, 404, "template of your own")


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("$closses", "the template asks for \\$closses, which nothing fills in here"),
        ("5 $ a piece", "is no blank to fill in"),
        ("Is it the Tarnished Astrolabe?", "the template gives the sealed answer"),
        ("", ""),
        ("a\x00b", "NUL"),
    ],
)
def test_a_template_that_cannot_be_used_is_refused(service: Service, text: str, says: str) -> None:
    open_round(service)
    before = everything_kept(service)
    answer = service.host.put(f"{PATH}/templates/opening", {"text": text})
    assert_problem(answer, 422, says)
    assert everything_kept(service) == before
    assert_problem(service.host.put(f"{PATH}/templates/party", {"text": "x"}), 422)


def test_a_template_must_fit_the_language_that_is_named_later(service: Service) -> None:
    open_round(service)
    done(service.host.put(f"{PATH}/templates/opening", {"text": "${page_count|page|pages}"}))
    refused = service.host.put(f"{PATH}/announcing", {"locale": "pl"})
    assert_problem(refused, 422, "give 4, for one, few, many, other")


def test_words_that_would_tell_the_answer_are_stopped(service: Service) -> None:
    """An alias noted later may make a kept template tell."""
    open_round(service, **CLOSES)
    own = {"text": "Sail to Uttermarch! $closing"}
    done(service.host.put(f"{PATH}/templates/reminder", own))
    done(service.host.post(f"{PATH}/mystery/aliases", {"alias": "Gnomon of Uttermarch"}), 201)
    found = words(service)
    stopped = found[("reminder", "full")]
    assert stopped["text"] == ""
    assert stopped["stopped"].startswith("your template gives the sealed answer")
    assert found[("opening", "full")]["stopped"] == ""


def test_words_and_templates_are_the_hosts_alone(service: Service) -> None:
    open_round(service)
    for path in (f"{ROUND}/announcements", f"{PATH}/templates", f"{PATH}/announcing"):
        assert_problem(service.viewer.get(path), 401)
        assert_problem(service.collector(path).get(path), 403)


def test_the_mystery_is_announced_in_the_same_zones(service: Service) -> None:
    open_round(service)
    done(service.host.put(f"{PATH}/announcing", {"zones": ["Asia/Tokyo"]}))
    [opening] = done(service.host.get(f"{PATH}/mystery/announcements"))
    assert "Monday 2 March at 03:00 Tokyo time" in opening["text"]
    done(service.host.post(f"{PATH}/guesses/end"))
    ended = done(service.host.get(f"{PATH}/mystery/announcements"))[-1]
    assert ended["occasion"] == "end of guessing"
    assert "05:00 Tokyo time" in ended["text"]
