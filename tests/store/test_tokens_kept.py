"""Tokens: shown once, kept as a digest."""

from __future__ import annotations

import base64
from hashlib import sha256

import pytest
from sqlalchemy import text

from service.errors import AlreadyThere, NotFound
from service.store.database import Database
from service.store.tokens import (
    all_tokens,
    delete_token,
    digest_of,
    is_same_token,
    known_token,
    make_token,
)
from tests.store.handing_in import OPENS


def made(database: Database, name: str = "collector") -> str:
    with database.writing() as session:
        return make_token(session, name, "collector", OPENS)


def test_a_token_is_32_random_bytes(database: Database) -> None:
    tokens = [made(database, f"token {number}") for number in range(3)]
    assert len(set(tokens)) == 3
    assert {len(base64.urlsafe_b64decode(token + "=")) for token in tokens} == {32}


def test_only_the_digest_of_a_token_is_kept(database: Database) -> None:
    token = made(database)
    with database.reading() as session:
        kept = session.connection().execute(text("SELECT * FROM tokens")).one()
    assert kept.digest == sha256(token.encode()).hexdigest()
    assert token not in repr(kept)


def test_a_token_is_known_and_another_is_not(database: Database) -> None:
    token = made(database)
    with database.reading() as session:
        known = known_token(session, token)
        assert known is not None
        assert (known.name, known.role, known.created) == ("collector", "collector", OPENS)
        for other in (token[:-1], token + "x", token.swapcase(), "", "\x00", "\ud800"):
            assert known_token(session, other) is None


def test_a_second_token_of_one_name_is_refused(database: Database) -> None:
    token = made(database)
    with pytest.raises(AlreadyThere, match="there is a token 'collector' already"):
        made(database)
    with database.reading() as session:
        assert known_token(session, token) is not None
        assert len(all_tokens(session)) == 1


def test_a_deleted_token_is_known_no_more(database: Database) -> None:
    token = made(database)
    with database.writing() as session:
        delete_token(session, "collector")
    with database.reading() as session:
        assert known_token(session, token) is None


def test_deleting_no_token_is_refused(database: Database) -> None:
    made(database)
    with pytest.raises(NotFound, match="no token 'host'"), database.writing() as session:
        delete_token(session, "host")


def test_tokens_are_compared_whole() -> None:
    assert is_same_token("a token", "a token")
    assert not is_same_token("a token", "a toke")
    assert digest_of("abc") == "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"
