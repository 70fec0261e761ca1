"""verify.py: a record verifies, and any single change to it does not and is named."""

from __future__ import annotations

import ast
import copy
import json
import subprocess
import sys
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from verifying.canonical import canonical
from verifying.located import digest_of, marks_of
from verifying.report import Report, check

from service.counting.round import RoundInput
from tests.counting.records import ABOUT, EVERY_KIND, Json, full_round, record_of, rounds_to_record
from tests.counting.rounds import hour
from tests.scripts.running import ROOT, run_script

KINDS = pytest.mark.parametrize("kind", EVERY_KIND)
Step = str | int


def fields(report: Report) -> list[str]:
    return [trouble.field for trouble in report.troubles]


@KINDS
def test_a_record_verifies(kind: str) -> None:
    report = check(record_of(EVERY_KIND[kind]))
    assert fields(report) == []
    assert len(report.checks) > 4


@settings(max_examples=150, deadline=None)
@given(rounds_to_record())
def test_the_record_of_any_round_verifies(given: RoundInput) -> None:
    assert fields(check(record_of(given))) == []


def leaves(value: Any, steps: tuple[Step, ...] = ()) -> Iterator[tuple[Step, ...]]:
    """Every place in a record that holds no other: a text, a number, null, an empty list."""
    inner: Any = ()
    if isinstance(value, dict):
        inner = value.items()
    elif isinstance(value, list):
        inner = enumerate(value)
    for step, part in inner:
        yield from leaves(part, (*steps, step))
    if not inner or not value:
        yield steps


def path_of(steps: tuple[Step, ...], record: Json) -> str:
    """The path of the field that holds this place: a list without objects is one field."""
    path, value = "", record
    for step in steps:
        is_plain = isinstance(value, list) and not any(isinstance(it, dict) for it in value)
        if is_plain and not path.startswith("marks.rows"):
            return path
        path = f"{path}[{step}]" if isinstance(step, int) else f"{path}.{step}".lstrip(".")
        value = value[step]  # type: ignore[index]
    return path


def others(value: Any) -> list[Any]:
    """What may stand instead of a value: alike, and of another kind."""
    if isinstance(value, bool):
        return [not value, None]
    if isinstance(value, int):
        return [value + 1, str(value)]
    if value is None:
        return ["2026-03-01T18:00:00Z", 3, True]
    if isinstance(value, str):
        turned = value[:-1] + ("0" if value[-1:] != "0" else "1")
        return [turned, value + " ", ""] if value else ["words", None]
    return [[3], None]


def altered(record: Json, steps: tuple[Step, ...], new: Any) -> Json:
    changed = copy.deepcopy(record)
    inner: Any = changed
    for step in steps[:-1]:
        inner = inner[step]
    inner[steps[-1]] = new
    return changed


#: Of the other kinds only what is not the same in all.
WHOLE = ("a chain that counts", "nobody voted")


def _is_of_this_kind(steps: tuple[Step, ...]) -> bool:
    return steps[0] in {"pick", "runoff", "draw", "result", "digest"} or steps[1:] == ("whole",)


@KINDS
def test_any_single_change_is_seen_and_its_field_is_named(kind: str) -> None:
    record = record_of(EVERY_KIND[kind])
    places = [steps for steps in leaves(record) if kind in WHOLE or _is_of_this_kind(steps)]
    assert len(places) > 20
    for steps in places:
        inner: Any = record
        for step in steps:
            inner = inner[step]
        for new in others(inner):
            found = fields(check(altered(record, steps, new)))
            assert found, (steps, new)
            assert path_of(steps, record) in found or found[0].startswith(path_of(steps, record)), (
                steps,
                new,
                found,
            )


@KINDS
def test_a_field_that_is_taken_out_or_put_in_is_named(kind: str) -> None:
    record = record_of(EVERY_KIND[kind])
    for steps in leaves(record):
        if not isinstance(steps[-1], str) or not (kind in WHOLE or _is_of_this_kind(steps)):
            continue
        path = path_of(steps, record)
        without = copy.deepcopy(record)
        inner: Any = without
        for step in steps[:-1]:
            inner = inner[step]
        kept = inner.pop(steps[-1])
        assert path in fields(check(without)), path
        inner |= {steps[-1]: kept, "more": None}
        beside = f"{path_of(steps[:-1], record)}.more".lstrip(".")
        assert beside in fields(check(without)), beside


def test_a_comment_that_is_taken_out_or_put_in_twice_is_seen() -> None:
    record = record_of(full_round())
    assert fields(check(record | {"comments": record["comments"][1:]})) == ["comments"]
    again = [*record["comments"], record["comments"][-1]]
    assert fields(check(record | {"comments": again})) == ["comments"]


def resealed(record: Json) -> Json:
    """A forger's record: altered, with all marks and the digest made anew."""
    record["marks"] = marks_of(record)
    record["digest"] = digest_of(record)
    return record


FORGED: dict[str, tuple[tuple[Step, ...], Any, str]] = {
    "another winner": (("result", "winner"), 12, "result.winner"),
    "a vote more": (("result", "tally", 0, "votes"), 9, "result.tally[0].votes"),
    "another ballot": (("comments", 0, "pages"), [7], "comments[0].pages"),
    "a reading": (("comments", 0, "reading", "pages"), [7], "comments[0].pages"),
    "a late one let in": (("comments", 12, "outcome"), "counts", "comments[12].outcome"),
    "a page kept": (("result", "steps", 0, "kept"), [12], "result.steps[0].kept"),
    "what a rule looked at": (
        ("result", "steps", 0, "values", 0, "value"),
        "3",
        "result.steps[0].values[0].value",
    ),
    "the ballots' digest": (("result", "ballots_digest"), "00" * 32, "result.ballots_digest"),
    "a page off the chart": (("rules", "votable"), [1, 99], "rules.votable"),
    "a chain": (("rules", "tie_breaks"), ["lowest number"], "result.steps"),
    "another chart": (("chart", "columns"), 2, "rules.votable"),
    "announced early": (
        ("revision", "announced"),
        "2026-03-02T00:00:00Z",
        "revision.announced",
    ),
    "a second without a first": (("revision", "number"), 2, "revision.reason"),
}


@pytest.mark.parametrize(("steps", "new", "field"), FORGED.values(), ids=FORGED.keys())
def test_a_forger_who_makes_marks_and_digest_anew_is_found_by_the_recount(
    steps: tuple[Step, ...], new: Any, field: str
) -> None:
    record = record_of(full_round())
    found = fields(check(resealed(altered(record, steps, new))))
    assert field in found


DRAWS: dict[str, tuple[str, tuple[Step, ...], Any, str]] = {
    "another value": ("a draw by the own value", ("draw", "value"), "00" * 32, "draw.value"),
    "another order": (
        "a draw by outside sources",
        ("draw", "order"),
        [12, 7, 3],
        "draw.order",
    ),
    "other numbers": (
        "a draw by outside sources",
        ("draw", "sources", 1, "numbers"),
        ["78"],
        "draw.key",
    ),
    "no number": (
        "a draw by outside sources",
        ("draw", "sources", 1, "numbers"),
        ["007"],
        "draw.sources[1].numbers",
    ),
    "left out against the rules": (
        "a draw by outside sources",
        ("draw", "sources", 1, "left_out"),
        "it was late",
        "draw.sources[1].left_out",
    ),
    "another runoff": ("a runoff", ("runoff", "winner"), 3, "runoff.winner"),
    "another pick": ("a pick", ("pick", "page"), 3, "result.winner"),
}


@pytest.mark.parametrize(("kind", "steps", "new", "field"), DRAWS.values(), ids=DRAWS.keys())
def test_a_forged_draw_runoff_or_pick_is_found(
    kind: str, steps: tuple[Step, ...], new: Any, field: str
) -> None:
    forged = resealed(altered(record_of(EVERY_KIND[kind]), steps, new))
    assert field in fields(check(forged))


@settings(max_examples=60, deadline=None)
@given(rounds_to_record(), st.data())
def test_any_change_to_any_record_is_seen(given: RoundInput, data: st.DataObject) -> None:
    record = record_of(given)
    steps = data.draw(st.sampled_from(list(leaves(record))))
    inner: Any = record
    for step in steps:
        inner = inner[step]
    new = data.draw(st.sampled_from(others(inner)))
    assert not check(altered(record, steps, new)).fits


def test_the_announced_digest_is_compared() -> None:
    record = record_of(full_round())
    assert check(record, record["digest"].upper()).fits
    assert fields(check(record, "00" * 32)) == ["digest"]


@pytest.mark.parametrize("value", [None, [], {}, {"format": "another"}, "text", 3])
def test_what_is_no_record_says_so(value: Any) -> None:
    assert fields(check(value)) == ["format"]


def saved(folder: Path, record: Json, name: str = "record.json") -> str:
    file = folder / name
    file.write_bytes(canonical(record))
    return str(file)


def test_the_script_says_in_words_what_it_checked(tmp_path: Path) -> None:
    told = run_script("verify.py", saved(tmp_path, record_of(full_round())))
    assert (told.returncode, told.stderr) == (0, "")
    for words in ("Round 2 of The windy island's mystery", "Digest: SHA-256", "Tally: page",
                  "Tie-break most joined edges", "Winner: page 3", "Everything fits."):  # fmt: skip
        assert words in told.stdout


def test_the_script_names_what_does_not_fit(tmp_path: Path) -> None:
    record = record_of(full_round())
    record["result"]["winner"] = 12
    told = run_script("verify.py", saved(tmp_path, record))
    assert told.returncode == 1
    assert "DOES NOT FIT  result.winner" in told.stdout
    assert "Everything fits" not in told.stdout


def test_words_of_a_record_cannot_steer_the_terminal(tmp_path: Path) -> None:
    record = record_of(full_round(), replace(ABOUT, name="Red \x1b[31m \u202eisland"))
    told = run_script("verify.py", saved(tmp_path, record))
    assert told.returncode == 0
    assert "Red \ufffd[31m \ufffdisland" in told.stdout


@pytest.mark.parametrize(
    ("steps", "new"),
    [
        (("draw", "sources", 1, "numbers"), ["9" * 5000]),
        (("draw", "value"), "ab" * 5000),
        (("chart", "columns"), 10**12),
        (("rules", "opens"), "0000-01-01T00:00:00Z"),
    ],
)
def test_a_hostile_record_is_refused_without_harm(steps: tuple[Step, ...], new: Any) -> None:
    record = altered(record_of(EVERY_KIND["a draw by outside sources"]), steps, new)
    assert not check(resealed(record)).fits


def test_a_viewer_finds_their_own_ballot(tmp_path: Path) -> None:
    file = saved(tmp_path, record_of(full_round()))
    told = run_script("verify.py", file, "--voter", "éDITH Ask").stdout
    assert "written 2026-03-02T02:00:00Z: counts for page 12." in told
    told = run_script("verify.py", file, "--voter", "gus").stdout
    assert "set aside, after the closing (it names page 9)." in told
    assert (
        "No comment of Nobody is in this record"
        in run_script("verify.py", file, "--voter", "Nobody").stdout
    )


def test_the_runoff_s_record_is_checked_with_the_first(tmp_path: Path) -> None:
    runoff = full_round("lowest number", votable=frozenset({3, 7, 12}), stitched=frozenset())
    second = record_of(runoff, replace(ABOUT, round=3, runoff_of=2, announced=hour(90)))
    assert second["result"]["winner"] == 3
    first = copy.deepcopy(record_of(EVERY_KIND["a runoff"]))
    first["runoff"] |= {
        "winner": 3, "digest": second["digest"], "votes": second["result"]["tally"],
    }  # fmt: skip
    first["result"]["winner"] = 3
    step = first["result"]["steps"][0]
    step["kept"] = [3]
    for value in step["values"]:
        value["value"] = next(
            str(one["votes"]) for one in second["result"]["tally"] if one["page"] == value["page"]
        )
    one = saved(tmp_path, resealed(first), "first.json")
    told = run_script("verify.py", one, "--runoff", saved(tmp_path, second, "second.json"))
    assert told.returncode == 0, told.stdout
    assert "The runoff's record was recounted too" in told.stdout
    other = record_of(runoff, replace(ABOUT, round=4, runoff_of=2, announced=hour(90)))
    told = run_script("verify.py", one, "--runoff", saved(tmp_path, other, "other.json"))
    assert told.returncode == 1
    assert "DOES NOT FIT  runoff.round" in told.stdout


@pytest.mark.parametrize(
    ("content", "says"),
    [
        (b"\xff\xfe", "this is no JSON"),
        (b"{", "this is no JSON"),
        (b'{"a": 1, "a": 2}', "is there twice"),
        (b"[" * 100_000, "this is no JSON"),
    ],
    ids=["no text", "cut off", "a name twice", "too deep"],
)
def test_a_file_that_is_no_record_is_one_sentence(
    tmp_path: Path, content: bytes, says: str
) -> None:
    file = tmp_path / "record.json"
    file.write_bytes(content)
    told = run_script("verify.py", file)
    assert told.returncode == 2
    assert says in told.stderr
    assert len(told.stderr.splitlines()) == 1


def test_a_file_that_is_not_there_is_one_sentence() -> None:
    told = run_script("verify.py", "nowhere.json")
    assert (told.returncode, len(told.stderr.splitlines())) == (2, 1)


def modules() -> list[Path]:
    return [ROOT / "scripts" / "verify.py", *sorted((ROOT / "scripts" / "verifying").glob("*.py"))]


def test_nothing_but_the_standard_library_is_imported() -> None:
    known = {*sys.stdlib_module_names, "verifying", "__future__"}
    for path in modules():
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(node, ast.Import):
                names = [alias.name for alias in node.names]
            elif isinstance(node, ast.ImportFrom):
                names = [node.module or ""]
            else:
                continue
            assert {name.split(".")[0] for name in names} <= known, path


def test_python_3_9_can_read_every_module_and_3_7_the_first() -> None:
    for path in modules():
        ast.parse(path.read_text(encoding="utf-8"), feature_version=(3, 9))
    ast.parse(modules()[0].read_text(encoding="utf-8"), feature_version=(3, 7))


def test_it_runs_where_no_package_is_installed(tmp_path: Path) -> None:
    """Without site-packages and without the project on the path."""
    file = saved(tmp_path, record_of(full_round()))
    told = subprocess.run(  # noqa: S603 - the project's own script
        [sys.executable, "-E", "-s", "-S", str(modules()[0]), file],
        capture_output=True,
        cwd=tmp_path,
        check=False,
    )
    assert told.returncode == 0, told.stderr


def test_the_record_of_a_file_is_the_same_after_json_writes_it_otherwise(tmp_path: Path) -> None:
    file = tmp_path / "record.json"
    file.write_text("\ufeff" + json.dumps(record_of(full_round()), indent=2), encoding="utf-8")
    assert run_script("verify.py", file).returncode == 0
