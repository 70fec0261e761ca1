"""verify.py: a reveal opens its seals, and any change to what was sealed is named."""

from __future__ import annotations

import ast
import copy
import hashlib
import json
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from verifying.reveal import check_reveal, is_reveal, sha256_of

from service.api.mystery_models import REVEAL_FORMAT
from service.mystery.answer import Answer
from service.mystery.notes import AliasNote, seal_of_note
from service.mystery.seal import seal_of
from tests.scripts.running import ROOT, run_script

Json = Any
SALT = bytes(range(32))
ANSWER = Answer("The Night Ferry “é”\t/\\ \u2028 😀", "Maud Ferrisk", ("Last Boat Over",))
NOTED = AliasNote(1, "Late Boat", datetime(2026, 3, 9, 18, tzinfo=UTC), bytes(range(32, 64)))


def reveal_of(answer: Answer = ANSWER, salt: bytes = SALT) -> Json:
    """A reveal as the service gives it, with one noted alias."""
    seal = seal_of(answer, salt)
    return {
        "format": REVEAL_FORMAT,
        "game": "gustray",
        "name": "The piece in the drawer",
        "seal": seal,
        "sealed": "2026-03-01T10:00:00Z",
        "revealed": "2026-04-12T20:00:00Z",
        "answer": {
            "title": answer.title,
            "designer": answer.designer,
            "aliases": list(answer.aliases),
        },
        "salt": salt.hex(),
        "alias_notes": [
            {
                "number": 1,
                "at": "2026-03-09T18:00:00Z",
                "alias": NOTED.alias,
                "salt": NOTED.salt.hex(),
                "seal": seal_of_note(NOTED, seal),
            }
        ],
    }


def test_a_reveal_opens_its_seals() -> None:
    reveal = reveal_of()
    assert is_reveal(reveal)
    assert not is_reveal({"format": "loopstart record 1"})
    report = check_reveal(reveal, f" {reveal['seal'].upper()}\n")
    assert report.troubles == ()
    assert any("shown beforehand" in told for told in report.checks)


@given(
    st.text(st.characters(exclude_categories=["Cs"])),
    st.lists(st.text(st.characters(exclude_categories=["Cs"])), max_size=3),
    st.binary(min_size=32, max_size=32),
)
def test_both_ways_to_a_seal_agree_on_any_answer(words: str, more: list[str], salt: bytes) -> None:
    answer = Answer(f"a{words}", words, tuple(f"b{alias}" for alias in more))
    assert check_reveal(reveal_of(answer, salt)).troubles == ()


CHANGES: list[Any] = [
    (("answer", "title"), "The Night Ferry", "seal"),
    (("answer", "designer"), "", "seal"),
    (("answer", "aliases"), [], "seal"),
    (("answer", "aliases"), [7], "answer/aliases"),
    (("salt",), "00" * 32, "seal"),
    (("salt",), "00", "salt"),
    (("seal",), "AB" * 32, "seal"),
    (("seal",), "ab" * 32, "seal"),
    (("answer",), "The Night Ferry", "answer"),
    (("alias_notes", 0, "alias"), "Boat", "alias_notes/0/seal"),
    (("alias_notes", 0, "at"), "2026-03-01T18:00:00Z", "alias_notes/0/seal"),
    (("alias_notes", 0, "number"), 2, "alias_notes/0/number"),
    (("alias_notes", 0, "salt"), "00" * 32, "alias_notes/0/seal"),
    (("alias_notes", 0, "seal"), "ab" * 32, "alias_notes/0/seal"),
    (("alias_notes", 0), "a note", "alias_notes/0"),
]


@pytest.mark.parametrize(("where", "to", "named"), CHANGES)
def test_a_change_to_what_was_sealed_is_named(where: Json, to: Json, named: str) -> None:
    reveal = copy.deepcopy(reveal_of())
    place = reveal
    for step in where[:-1]:
        place = place[step]
    place[where[-1]] = to
    troubles = check_reveal(reveal).troubles
    assert troubles
    assert troubles[0].startswith(f"{named}: ")
    assert all(trouble.endswith(".") for trouble in troubles)


@pytest.mark.parametrize("name", ["name", "seal", "salt", "answer", "alias_notes"])
def test_a_missing_field_is_named(name: str) -> None:
    reveal = reveal_of()
    del reveal[name]
    assert check_reveal(reveal).troubles == (f"{name}: this is missing.",)


def test_another_seal_than_the_one_shown_beforehand_is_told() -> None:
    [trouble] = check_reveal(reveal_of(), "ab" * 32).troubles
    assert "not the one shown beforehand" in trouble


def test_the_digest_of_canonical_json_is_the_published_one() -> None:
    """RFC 8785, section 3.2.2 prints this string and its canonical form in section 3.2.3."""
    string = '\u20ac$\u000f\nA\'B"\\\\"/'
    printed = b'{"string":"\xe2\x82\xac$\\u000f\\nA\'B\\"\\\\\\\\\\"/"}'
    assert sha256_of({"string": string}) == hashlib.sha256(printed).hexdigest()


def test_a_reveal_is_checked_from_the_command_line(tmp_path: Path) -> None:
    reveal = reveal_of()
    file = tmp_path / "reveal.json"
    file.write_text(json.dumps(reveal), "utf-8")
    told = run_script("verify.py", file, "--seal", reveal["seal"])
    assert (told.returncode, told.stderr) == (0, "")
    assert told.stdout.startswith("The reveal of The piece in the drawer: The Night Ferry")
    assert "Everything fits." in told.stdout
    other = run_script("verify.py", "-", "--seal", "ab" * 32, given=file.read_bytes())
    assert other.returncode == 1
    assert "not the one shown beforehand" in other.stdout


def test_what_is_no_json_is_refused_with_a_sentence() -> None:
    told = run_script("verify.py", "-", given=b"no JSON")
    assert told.returncode == 2
    assert len(told.stderr.splitlines()) == 1


@pytest.mark.parametrize("content", [b"[]", b'{"format": "another"}'])
def test_what_is_neither_record_nor_reveal_does_not_fit(content: bytes) -> None:
    told = run_script("verify.py", "-", given=content)
    assert told.returncode == 1
    assert "does not fit: do not trust it" in told.stdout


def test_the_check_imports_nothing_but_the_standard_library() -> None:
    for name in ("verifying/reveal.py",):
        tree = ast.parse((ROOT / "scripts" / name).read_text("utf-8"))
        imports = [node for node in ast.walk(tree) if isinstance(node, ast.Import | ast.ImportFrom)]
        named = {getattr(node, "module", None) or node.names[0].name for node in imports}
        assert named <= {
            *(
                "__future__",
                "argparse",
                "collections.abc",
                "dataclasses",
                "hashlib",
                "json",
                "pathlib",
                "re",
                "sys",
            ),
            *("typing", "verifying.reveal"),
        }
