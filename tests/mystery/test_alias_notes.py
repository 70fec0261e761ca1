"""Aliases that are noted after the sealing: sealed as the answer is, and from their time on."""

from __future__ import annotations

import hashlib
from dataclasses import replace
from datetime import UTC, datetime, timedelta, timezone

import pytest

from service.comments.spans import Span
from service.errors import BadRules
from service.mystery.answer import Answer, GuessRules
from service.mystery.notes import (
    AliasNote,
    noted_bytes,
    opens_note,
    read_with_notes,
    seal_of_note,
)

NOON = datetime(2026, 3, 1, 12, 0, tzinfo=UTC)
SALT = bytes(range(32))
SEAL = "ab" * 32
NOTE = AliasNote(1, "Last Boat Over", NOON, SALT)
RULES = GuessRules(Answer("The Night Ferry", "Maud Ferrisk"))
BEFORE = Span.at(NOON - timedelta(minutes=1))
AFTER = Span.at(NOON)


def test_a_notes_seal_can_be_made_again_with_other_tools() -> None:
    """The bytes are written out here by hand, keys in order, no spaces; then hashed."""
    by_hand = (
        '{"alias":"Last Boat Over","at":"2026-03-01T12:00:00Z","number":1,'
        f'"salt":"{SALT.hex()}","seal":"{SEAL}"}}'
    )
    assert noted_bytes(NOTE, SEAL) == by_hand.encode()
    assert seal_of_note(NOTE, SEAL) == hashlib.sha256(by_hand.encode()).hexdigest()


def test_the_time_of_a_note_is_told_in_utc() -> None:
    elsewhere = replace(NOTE, at=NOON.astimezone(timezone(timedelta(hours=5))))
    assert seal_of_note(elsewhere, SEAL) == seal_of_note(NOTE, SEAL)


@pytest.mark.parametrize(
    "changed",
    [
        replace(NOTE, alias="Last Boat"),
        replace(NOTE, at=NOON - timedelta(seconds=1)),
        replace(NOTE, number=2),
        replace(NOTE, salt=bytes(32)),
    ],
)
def test_a_changed_note_does_not_open_its_seal(changed: AliasNote) -> None:
    published = seal_of_note(NOTE, SEAL)
    assert opens_note(f" {published.upper()}\n", NOTE, SEAL)
    assert not opens_note(published, changed, SEAL)
    assert not opens_note(published, NOTE, "cd" * 32)


@pytest.mark.parametrize(
    ("text", "written", "outcome"),
    [
        ("Is it Last Boat Over?", AFTER, "right"),
        ("Is it Last Boat Over?", BEFORE, "look"),
        ("Is it Last Boat Over?", Span(BEFORE.earliest, AFTER.latest), "look"),
        ("Is it The Night Ferry?", BEFORE, "right"),
        ("Is it The Herring Wharf at Sundown?", BEFORE, "wrong"),
        ("what lovely thread", BEFORE, "none"),
    ],
)
def test_an_alias_counts_from_its_note_on(text: str, written: Span, outcome: str) -> None:
    reading = read_with_notes(text, RULES, [NOTE], written)
    assert reading.outcome == outcome
    assert ("noted only later" in reading.why) == (outcome == "look")


def test_of_several_notes_those_that_stood_count() -> None:
    later = AliasNote(2, "Skerry Bell at Dusk", NOON + timedelta(days=1), SALT)
    for alias, outcome in (("Last Boat Over", "right"), ("Skerry Bell at Dusk", "look")):
        text = f"My guess: {alias}"
        assert read_with_notes(text, RULES, [NOTE, later], AFTER).outcome == outcome


@pytest.mark.parametrize(("alias", "salt"), [("!!", SALT), ("Last Boat", bytes(31))])
def test_a_note_that_cannot_be_is_refused(alias: str, salt: bytes) -> None:
    with pytest.raises(BadRules):
        AliasNote(1, alias, NOON, salt)


def test_an_alias_with_a_broken_character_is_refused() -> None:
    with pytest.raises(BadRules, match="broken character"):
        seal_of_note(replace(NOTE, alias="Boat \ud800"), SEAL)
