"""The record of a count: what it holds, what it keeps to itself, and that it is always the same."""

from __future__ import annotations

import hashlib
import json
from collections.abc import Iterator
from dataclasses import replace
from datetime import timedelta, timezone
from random import Random
from typing import Any

import pytest
import rfc8785
from hypothesis import given, settings
from hypothesis import strategies as st

from service.counting.count import count_round
from service.counting.record import make_record
from service.counting.round import RoundInput, Ruling
from service.errors import BadRules
from tests.counting.records import (
    ABOUT,
    EVERY_KIND,
    OWN,
    SALT,
    drawn_round,
    full_round,
    record_of,
    rounds_to_record,
)
from tests.counting.rounds import hour, vote

KINDS = pytest.mark.parametrize("kind", EVERY_KIND)


@KINDS
def test_a_record_is_canonical_and_its_digest_is_of_all_the_rest(kind: str) -> None:
    made = make_record(ABOUT, EVERY_KIND[kind])
    record = json.loads(made.text)
    assert rfc8785.dumps(record).decode() == made.text
    assert record.pop("digest") == made.digest
    assert hashlib.sha256(rfc8785.dumps(record)).hexdigest() == made.digest


@settings(max_examples=60, deadline=None)
@given(rounds_to_record(), st.randoms(use_true_random=False))
def test_the_order_in_which_comments_come_changes_no_byte(
    given: RoundInput, random: Random
) -> None:
    shuffled = list(given.comments)
    random.shuffle(shuffled)
    other = make_record(ABOUT, replace(given, comments=tuple(shuffled)))
    assert other == make_record(ABOUT, given)


@settings(max_examples=100, deadline=None)
@given(rounds_to_record())
def test_a_record_tells_what_the_count_told(given: RoundInput) -> None:
    result, record = count_round(given), record_of(given)
    assert record["result"]["winner"] == result.winner
    assert record["result"]["undecided"] == list(result.undecided)
    assert [step["kept"] for step in record["result"]["steps"]] == [
        list(step.kept) for step in result.steps
    ]
    told = [(one["outcome"], one["pages"]) for one in record["comments"]]
    causes = {one.key: (one.cause, list(one.pages)) for one in result.set_aside}
    causes |= {one.key: ("counts", list(one.pages)) for one in result.ballots}  # type: ignore[misc]
    ordered = sorted(
        given.comments, key=lambda one: (one.written.earliest, one.written.latest, one.key)
    )
    assert told == [causes[one.key] for one in ordered]


def test_a_record_names_nobody_and_quotes_nothing() -> None:
    spoken = replace(
        full_round(),
        comments=tuple(
            replace(
                one,
                author=f"Author {one.voter}",
                reading=one.reading._replace(why="she wrote a secret"),
                rulings=tuple(replace(it, reason="as Maren told me") for it in one.rulings),
            )
            for one in full_round().comments
        ),
    )
    text = make_record(ABOUT, spoken).text.casefold()
    hidden = ["author", "secret", "maren", "told me", "édith", '"mo"', '"gus"']
    assert not [word for word in hidden if word in text]


def test_voters_are_told_by_the_sha_256_of_salt_and_voter() -> None:
    record = record_of(full_round())
    mo = hashlib.sha256(SALT + b"mo").hexdigest()
    assert [one["pages"] for one in record["comments"] if one["voter"] == mo] == [[3]]
    # The name is told as names are compared: without case, spaces drawn together.
    edith = hashlib.sha256(SALT + "édith ask".encode()).hexdigest()
    assert [one["name"] for one in record["comments"] if one["pages"] == [12]][-1] == edith


def test_the_own_value_is_told_only_where_it_drew() -> None:
    assert record_of(drawn_round(sources=()))["draw"]["value"] == OWN.hex()
    outside = record_of(EVERY_KIND["a draw by outside sources"])
    assert outside["draw"]["value"] is None
    assert outside["draw"]["key"] == "4.8.19.5/77./"
    alone = drawn_round(sources=())
    clear = replace(alone, comments=(*alone.comments, vote("z", 3, 9, voter="zoe")))
    assert record_of(clear)["draw"]["value"] is None
    assert OWN.hex() not in make_record(ABOUT, clear).text


def test_another_revision_names_the_one_before_and_its_reason() -> None:
    first = make_record(ABOUT, full_round())
    again = replace(
        ABOUT, revision=2, reason="a late export", before=first.digest, announced=hour(70)
    )
    record = record_of(full_round(), again)
    assert record["revision"] == {
        "number": 2,
        "announced": "2026-03-04T16:00:00Z",
        "reason": "a late export",
        "before": first.digest,
    }
    assert record["digest"] != first.digest


def test_times_are_told_in_utc_whatever_zone_they_are_given_in() -> None:
    zone = timezone(timedelta(hours=1))
    given = full_round()
    moved = replace(
        given,
        rules=replace(given.rules, opens=given.rules.opens.astimezone(zone)),
        comments=tuple(
            replace(
                one, rulings=tuple(replace(it, at=it.at.astimezone(zone)) for it in one.rulings)
            )
            for one in given.comments
        ),
    )
    local = replace(ABOUT, announced=ABOUT.announced.astimezone(zone))
    assert make_record(local, moved) == make_record(ABOUT, given)


def test_words_with_half_a_character_are_refused() -> None:
    with pytest.raises(BadRules, match="holds a broken character"):
        make_record(replace(ABOUT, name="\ud800"), full_round())


def everything_in(value: Any) -> Iterator[Any]:
    yield value
    for part in (
        value.values() if isinstance(value, dict) else value if isinstance(value, list) else ()
    ):
        yield from everything_in(part)


@KINDS
def test_a_record_holds_no_number_that_is_not_whole(kind: str) -> None:
    assert not [it for it in everything_in(record_of(EVERY_KIND[kind])) if isinstance(it, float)]


def test_a_ruling_that_was_followed_stays_in_the_record() -> None:
    rulings = [one["rulings"] for one in record_of(full_round())["comments"] if one["rulings"]]
    assert [len(some) for some in rulings] == [2, 1, 1]
    assert isinstance(full_round().comments[7].rulings[0], Ruling)
