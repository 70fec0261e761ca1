"""tally.py on real files: what it prints, and what it says to what cannot be used."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from tests.scripts.running import run_script, sentences

ROUND = (
    "--chart", "4x3", "--zone", "Atlantic/Faroe", "--host", "Harbour Guild",
    "--opens", "2026-03-13T18:00", "--closes", "2026-03-15T18:00",
)  # fmt: skip

EXPORT = """\
author,posted,text
Harbour Guild,2026-03-13T18:00:00Z,Which page? One number each
Maren,2026-03-13T19:00:00Z,page 7 please
Tove,2026-03-13T20:00:00Z,"7, it looks calm"
Odd,2026-03-14T08:00:00Z,page 2 please
Sunniva,2026-03-14T09:00:00Z,page 2!
[red]Bo[/red],2026-03-14T10:00:00Z,3 or 4
Late Lis,2026-03-15T18:00:01Z,page 2 please
"""


@pytest.fixture
def export(tmp_path: Path) -> Path:
    path = tmp_path / "comments.csv"
    path.write_text(EXPORT, encoding="utf-8")
    return path


def test_a_count_shows_votes_causes_looks_steps_winner_and_announcement(export: Path) -> None:
    told = run_script("tally.py", export, *ROUND)
    assert (told.returncode, told.stderr) == (0, "")
    lines = told.stdout.splitlines()
    assert "   2       2   Odd; Sunniva" in lines
    assert "   7       2   Maren; Tove" in lines
    shown = told.stdout
    for words in (
        "votable: 1 to 12.",
        "Set aside (2)",
        "Late Lis",
        "Needs a look (1)",
        "[red]Bo[/red]",
        "“3”, “4”",
        "Tie-break 1: most joined edges",
        "Tie-break 2: reached first",
        "Announcement, as it would read now",
    ):
        assert words in shown
    # Page 7 had its second vote on the 13th, page 2 on the 14th.
    assert "Page 7 wins" in shown


def test_an_announcement_that_nothing_can_change_is_ready_to_paste(export: Path) -> None:
    export.write_text(EXPORT.replace("3 or 4", "lovely"), encoding="utf-8")
    assert "Announcement, ready to paste" in run_script("tally.py", export, *ROUND).stdout


def test_into_a_pipe_there_are_no_colours_and_nothing_is_cut(export: Path) -> None:
    words = "calm " * 60
    export.write_text(EXPORT + f"Nea,2026-03-14T11:00:00Z,{words}\n", encoding="utf-8")
    told = run_script("tally.py", export, *ROUND)
    assert "\x1b" not in told.stdout
    assert "…" not in told.stdout
    assert told.stdout.count("calm") == EXPORT.count("calm") - 1 + 60
    assert max(map(len, told.stdout.splitlines())) <= 400


def test_a_narrow_terminal_folds_and_cuts_nothing(export: Path) -> None:
    told = run_script("tally.py", export, *ROUND, environment={"COLUMNS": "80"})
    table = told.stdout.split("Announcement")[0].splitlines()
    assert max(map(len, table)) <= 80
    assert "…" not in told.stdout


def test_control_characters_of_a_comment_do_not_reach_the_terminal(export: Path) -> None:
    export.write_text(EXPORT + "\x1b[31mEvil\u202e,2026-03-14T11:00:00Z,lovely\n", encoding="utf-8")
    told = run_script("tally.py", export, *ROUND)
    assert told.returncode == 0
    assert "\x1b" not in told.stdout
    assert "\u202e" not in told.stdout


def test_json_is_the_same_as_data(export: Path) -> None:
    told = run_script("tally.py", export, *ROUND, "--json")
    count = json.loads(told.stdout)
    assert count["winner"] == 7
    assert count["tally"] == [{"page": 2, "votes": 2}, {"page": 7, "votes": 2}]
    assert [step["rule"] for step in count["steps"]] == ["most joined edges", "reached first"]
    assert [look["pages"] for look in count["looks"]] == [[3, 4]]
    assert count["announcement"] in run_script("tally.py", export, *ROUND).stdout


def test_pasted_text_comes_by_standard_input() -> None:
    pasted = "Maren\n2 hours ago\npage 7 please\nReply\nTove\n1 hour ago\npage 2 please\nReply\n"
    told = run_script(
        "tally.py", "-", *ROUND, "--copied-at", "2026-03-14T12:00", "--json", given=pasted.encode()
    )
    assert told.returncode == 0, told.stderr
    count = json.loads(told.stdout)
    assert count["format"] == "pasted"
    assert sorted(ballot["author"] for ballot in count["ballots"]) == ["Maren", "Tove"]


def test_every_rule_of_the_round_reaches_the_count(export: Path) -> None:
    told = run_script(
        "tally.py", export, "--zone", "Atlantic/Faroe", "--opens", "2026-03-13T18:00",
        "--design", "280x210", "--page", "70x70", "--overlap", "2", "--order", "down",
        "--start-corner", "bottom right", "--back-and-forth", "--no-page", "1,1",
        "--joined", "edge or corner", "--stitched", "1,2", "--in-hand", "3", "--previous", "3",
        "--next-from", "any stitched page", "--choices", "2", "--standing", "first",
        "--tie-break", "reached first", "--tie-break", "lowest number", "--languages", "en",
        "--columns", "text=text", "--format", "table", "--host", "Harbour Guild", "--json",
    )  # fmt: skip
    assert told.returncode == 0, told.stderr
    count = json.loads(told.stdout)
    chart, rules = count["chart"], count["rules"]
    assert (chart["columns"], chart["rows"], chart["page_count"]) == (4, 3, 11)
    assert chart["size"]["overlap"] == 2
    assert (chart["order"], chart["start"]) == ("down", "bottom right")
    assert (chart["back_and_forth"], chart["no_page"]) == (True, [[1, 1]])
    assert chart["joined"] == "edge or corner"
    assert rules["stitched"] == [1, 2, 3]
    assert (rules["choices"], rules["standing"], rules["closes"]) == (2, "first", None)
    assert rules["tie_breaks"] == ["reached first", "lowest number"]
    # Down from the bottom right, back and forth: 1 2 3 up the last column, 4 5 6 down the one
    # left of it. Joined to any of 1, 2, 3 by an edge or a corner: 4, 5 and 6.
    assert rules["votable"] == [4, 5, 6]


def options(*changes: str, without: str = "") -> tuple[str, ...]:
    """The round's options with some changed or one left out."""
    told = dict(zip(ROUND[::2], ROUND[1::2], strict=True))
    told |= dict(zip(changes[::2], changes[1::2], strict=True))
    return tuple(part for name, value in told.items() if name != without for part in (name, value))


@pytest.mark.parametrize(
    ("given", "words"),
    [
        pytest.param(options(without="--chart"), "--chart", id="no chart"),
        pytest.param(options(without="--zone"), "--zone", id="no zone"),
        pytest.param(options(without="--opens"), "--opens", id="no opening"),
        pytest.param(("--chart", "4x3"), "--zone and --opens", id="two missing"),
        pytest.param(options("--chart", "9"), "9x7", id="half a chart"),
        pytest.param(options("--chart", "0x7"), "0", id="a chart without pages"),
        pytest.param(options("--zone", "Faroe"), "Faroe", id="no such zone"),
        pytest.param(options("--opens", "soon"), "soon", id="no time"),
        pytest.param(
            options("--closes", "2026-03-12T18:00"), "not after the opening", id="closed first"
        ),
        pytest.param(options("--stitched", "1,13"), "page 13 is not on the chart", id="off chart"),
        pytest.param(options("--stitched", "one"), "as in 12,13", id="no page number"),
        pytest.param(options("--columns", "text"), "text=HEADER", id="half a column"),
        pytest.param(options("--columns", "words=text"), "words", id="no such meaning"),
        pytest.param(options("--tie-break", "the cat"), "the cat", id="no such tie-break"),
        pytest.param(options("--design", "280x210"), "--design", id="chart told twice"),
        pytest.param(options("--token", "secret"), "--server", id="a token for nobody"),
        pytest.param(options("--round", "2"), "--game", id="a round of no game"),
        pytest.param(("--game", "harbour", "--round", "1"), "FILE and --game", id="two sources"),
        pytest.param(("--colour", "red"), "--colour", id="no such option"),
    ],
)
def test_an_option_that_cannot_be_is_one_sentence(
    export: Path, given: tuple[str, ...], words: str
) -> None:
    told = run_script("tally.py", export, *given)
    assert (told.returncode, told.stdout) == (2, "")
    [sentence] = sentences(told.stderr)
    assert words in sentence


@pytest.mark.parametrize(
    ("content", "words"),
    [
        pytest.param(b"", "the file is empty", id="empty"),
        pytest.param(b"\x89PNG\r\n\x1a\n\x00\x00\x00\rIHDR", "not a table", id="a picture"),
        pytest.param(bytes(range(256)) * 8, "not a table", id="binary"),
        pytest.param(b"likes,shares\n1,2\n3,4\n", "--columns text=HEADER", id="no text column"),
    ],
)
def test_a_file_that_holds_no_comments_is_one_sentence(
    tmp_path: Path, content: bytes, words: str
) -> None:
    path = tmp_path / "export.csv"
    path.write_bytes(content)
    told = run_script("tally.py", path, *ROUND)
    assert (told.returncode, told.stdout) == (2, "")
    [sentence] = sentences(told.stderr)
    assert "export.csv" in sentence
    assert words in sentence


def test_a_file_that_is_not_there_is_one_sentence(tmp_path: Path) -> None:
    told = run_script("tally.py", tmp_path / "nowhere.csv", *ROUND)
    assert told.returncode == 2
    [sentence] = sentences(told.stderr)
    assert "nowhere.csv" in sentence


def test_no_file_and_no_game_is_one_sentence() -> None:
    told = run_script("tally.py", *ROUND)
    assert told.returncode == 2
    [sentence] = sentences(told.stderr)
    assert "FILE" in sentence


def test_a_server_that_does_not_answer_is_one_sentence_and_status_4(export: Path) -> None:
    told = run_script("tally.py", export, *ROUND, "--server", "http://127.0.0.1:9")
    assert told.returncode == 4
    [sentence] = sentences(told.stderr)
    assert "http://127.0.0.1:9 does not answer" in sentence


def test_of_very_many_voters_some_are_named_and_all_are_counted(tmp_path: Path) -> None:
    export = tmp_path / "many.csv"
    rows = [f"V{n},2026-03-14T19:{n // 60:02}:{n % 60:02}Z,12" for n in range(600)]
    rows += [f"Late {n},2026-03-14T20:00:0{n}Z,9" for n in range(3)]
    export.write_text("\n".join(["author,posted,text", *rows]), encoding="utf-8")
    told = run_script("tally.py", export, *ROUND)
    assert told.returncode == 0, told.stderr
    lines = [" ".join(line.split()) for line in told.stdout.splitlines()]
    assert "12 600 V0; V1; V2; V3; V4 and 595 more" in lines
    assert "9 3 3 voters" in lines
    whole = run_script("tally.py", export, "--all", *ROUND).stdout
    assert "Late 0; Late 1; Late 2" in whole
