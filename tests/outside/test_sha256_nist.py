"""SHA-256 as records, seals and commitments use it, against NIST's own examples.

FIPS 180-4 with the example "SHA-256" of NIST's Cryptographic Standards and Guidelines; the long
ones are in RFC 6234 section 8.5 too.
"""

from __future__ import annotations

import hashlib

import pytest
from verifying.canonical import sha256

from service.counting.pseudonyms import pseudonym_of
from service.counting.sources import commitment_of

EXAMPLES = {
    b"": "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855",
    b"abc": "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
    b"abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq": (
        "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1"
    ),
    b"a" * 1_000_000: "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0",
    b"01234567" * 80: "594847328451bdfa85056225462cc1d867d877fb388df0ce35f25ab5562bfbb5",
}
NAMES = ["empty", "abc", "56 bytes", "a million", "640 bytes"]


@pytest.mark.parametrize(("message", "digest"), EXAMPLES.items(), ids=NAMES)
def test_what_commits_to_a_value_is_sha_256_of_it(message: bytes, digest: str) -> None:
    assert commitment_of(message) == digest


@pytest.mark.parametrize(("message", "digest"), EXAMPLES.items(), ids=NAMES)
def test_a_pseudonym_is_sha_256_of_salt_and_voter(message: bytes, digest: str) -> None:
    for cut in (0, 1, len(message)):
        assert pseudonym_of(message[cut:].decode(), message[:cut]) == digest


def test_verify_s_own_digest_is_sha_256_of_the_canonical_form() -> None:
    assert sha256("abc") == hashlib.sha256(b'"abc"').hexdigest()
