"""The seal of an answer and the check of its reveal."""

from __future__ import annotations

import hashlib
import json

import pytest
from hypothesis import given
from hypothesis import strategies as st

from service.errors import BadRules
from service.mystery.answer import Answer
from service.mystery.seal import check_reveal, revealed_bytes, seal_of

SALT = bytes(range(32))
ANSWER = Answer("The Night Ferry", "Maud Ferrisk", ("Last Boat Over",))


def test_a_seal_can_be_made_again_with_other_tools() -> None:
    """The bytes are written out here by hand, keys in order, no spaces; then hashed."""
    by_hand = (
        '{"answer":{"aliases":["Last Boat Over"],"designer":"Maud Ferrisk","title":"The Night Ferry"},'
        '"salt":"000102030405060708090a0b0c0d0e0f101112131415161718191a1b1c1d1e1f"}'
    )
    assert revealed_bytes(ANSWER, SALT) == by_hand.encode()
    assert seal_of(ANSWER, SALT) == hashlib.sha256(by_hand.encode()).hexdigest()


def test_what_is_revealed_holds_salt_and_answer() -> None:
    revealed = json.loads(revealed_bytes(ANSWER, SALT))
    assert bytes.fromhex(revealed["salt"]) == SALT
    assert revealed["answer"]["title"] == "The Night Ferry"


@pytest.mark.parametrize(
    "changed",
    [
        Answer("The Night Ferries", "Maud Ferrisk", ("Last Boat Over",)),
        Answer("The night ferry", "Maud Ferrisk", ("Last Boat Over",)),
        Answer("The Night Ferry", "Maud Ferris", ("Last Boat Over",)),
        Answer("The Night Ferry", "Maud Ferrisk"),
        Answer("The Night Ferry", "Maud Ferrisk", ("Last Boat Over", "Late Boat")),
    ],
)
def test_a_changed_answer_does_not_open_the_seal(changed: Answer) -> None:
    check = check_reveal(seal_of(ANSWER, SALT), changed, SALT)
    assert not check.holds
    assert "something was changed" in check.why


def test_another_salt_does_not_open_the_seal() -> None:
    assert not check_reveal(seal_of(ANSWER, SALT), ANSWER, bytes(32)).holds


@pytest.mark.parametrize("dress", [str.upper, lambda s: f"  {s}\n", str.lower])
def test_the_seal_opens_however_its_digits_are_written(dress) -> None:  # type: ignore[no-untyped-def]
    check = check_reveal(dress(seal_of(ANSWER, SALT)), ANSWER, SALT)
    assert check.holds
    assert check.seal == seal_of(ANSWER, SALT)


@pytest.mark.parametrize("seal", ["", "no digest", "ab" * 31, "zz" * 32, "ab" * 33])
def test_a_seal_that_is_no_digest_is_told(seal: str) -> None:
    check = check_reveal(seal, ANSWER, SALT)
    assert not check.holds
    assert "64 hexadecimal digits" in check.why


@pytest.mark.parametrize("salt", [b"", bytes(31), bytes(33)])
def test_a_salt_of_another_length_is_refused(salt: bytes) -> None:
    with pytest.raises(BadRules, match="32 random bytes"):
        seal_of(ANSWER, salt)


def test_a_name_with_a_broken_character_is_refused() -> None:
    with pytest.raises(BadRules, match="broken character"):
        seal_of(Answer("Ferry \ud800"), SALT)


@given(st.binary(min_size=32, max_size=32), st.binary(min_size=32, max_size=32))
def test_every_salt_makes_its_own_seal(one: bytes, other: bytes) -> None:
    assert (seal_of(ANSWER, one) == seal_of(ANSWER, other)) == (one == other)
    assert check_reveal(seal_of(ANSWER, one), ANSWER, one).holds
