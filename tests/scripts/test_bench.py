"""bench.py measures on real comments and says plainly what it measured; how fast is not tested."""

from __future__ import annotations

import json
import re
from pathlib import Path

import bench
import pytest

from tests.scripts.running import run_script, sentences

HEADING = {"chart": {"columns": 9, "rows": 7}, "choices": 1, "languages": ["en"]}
SMALL = ("--rounds", "2", "--sample", "40")
FIGURES = re.compile(
    r"\d+\.\d µs per comment \(best \d+\.\d\), floor \d+\.\d\d µs, "
    r"ratio \d+\.\d \(best pair \d+\.\d\)"
)


def write_corpus(folder: Path, *lines: object) -> Path:
    path = folder / "corpus.jsonl"
    path.write_text("".join(json.dumps(line) + "\n" for line in lines), encoding="utf-8")
    return path


INTAKE = re.compile(
    r"intake, 400 rows: \d+\.\d s \(\d+\.\d µs a row; reading and staging \d+\.\d s, storing \d+\.\d s, "
    r"settling \d+\.\d s\), floor \d+\.\d s \(\d+\.\d\d µs\), ratio \d+\.\d; "
    r"processors worked \d+\.\d s here and \d+\.\d s beside; "
    r"memory at most \d+ MB here and \d+ MB beside"
)
PAGE = re.compile(
    r"[a-z' ]+, 300 comments stored, \d+ kB: \d+\.\d\d ms \(99 of 100 within \d+\.\d\d, "
    r"the first \d+\), bare route \d+\.\d\d ms, ratio \d+\.\d \(at most \d+\)"
)


def test_pages_are_measured_against_a_bare_route() -> None:
    told = run_script("bench.py", "pages", "--rows", "300", "--asked", "20")
    assert told.returncode == 0, told.stderr
    lines = told.stdout.splitlines()
    measured = ["board", "overlay", "list of games", "the desk's comments", "those that count"]
    assert [line.partition(",")[0] for line in lines] == measured
    for line in lines:
        assert PAGE.fullmatch(line), line


SPAN = (
    r"\d+ comments a second \(half within \d+ ms, 99 of 100 \d+\), "
    r"\d+ views a second \(half within \d+ ms, 99 of 100 \d+\)"
)


def test_load_is_measured_beside_a_bare_app_and_nothing_is_lost() -> None:
    clients = ("--writers", "3", "--viewers", "4", "--rows", "200", "--seconds", "3")
    told = run_script("bench.py", "load", *clients, "--database", "SQLite")
    assert told.returncode == 0, told.stderr
    before, after, alone, imported, *rest = told.stdout.splitlines()
    assert re.fullmatch(f"SQLite, bare before: {SPAN}", before)
    assert re.fullmatch(f"SQLite, bare after: {SPAN}", after)
    ratio = r"; ratio \d+\.\d\d \(at least 0\.5\)"
    assert re.fullmatch(f"SQLite, alone: {SPAN}{ratio}", alone)
    assert re.fullmatch(rf"SQLite, import \(\d+ s\): {SPAN}{ratio}", imported)
    assert rest[-1] == "SQLite, 3 writers, 4 viewers, 200 imported: no error"


def test_closing_is_measured_at_each_size() -> None:
    told = run_script("bench.py", "closing", "--rows", "300", "600", "--database", "SQLite")
    assert told.returncode == 0, told.stderr
    lines = told.stdout.splitlines()
    assert [line.partition(" comments: closed in ")[0] for line in lines] == [
        "SQLite, 300",
        "SQLite, 600",
    ]
    for line in lines:
        assert re.search(r"\d+ µs a comment, \d+\.\d\d times that of the smallest", line)
        assert re.search(r"memory at most \d+ MB, \d+ of it for this$", line)


def test_reading_tells_its_pace_and_its_ratio_to_the_floor() -> None:
    told = run_script("bench.py", "reading", *SMALL)
    assert told.returncode == 0, told.stderr
    every, votes, chat = told.stdout.splitlines()
    assert every.startswith("reading, 40 comments: ")
    assert votes.startswith("corpora of votes, ")
    assert chat.startswith("chat, ")
    for line in (every, votes, chat):
        assert FIGURES.fullmatch(line.partition(": ")[2])


def test_each_round_is_told_while_it_runs() -> None:
    told = run_script("bench.py", "reading", *SMALL)
    assert "reading, round 1 of 2" in told.stderr
    assert "chat, round 2 of 2" in told.stderr
    assert "round" not in told.stdout


def test_the_comments_that_say_nothing_are_those_without_number_and_place(tmp_path: Path) -> None:
    texts = {
        "what a lovely wind today": True,
        "lovely, see you on the 14th": False,
        "my sister has two cats": False,
        "page 12 please": False,
        "the top left corner please": False,
        "🔟": False,
    }
    corpus = write_corpus(tmp_path, HEADING, *({"text": text} for text in texts))
    comments = bench.comments_of([corpus])
    assert {text: bench.says_nothing((text, question)) for text, question in comments} == texts


def test_each_comment_is_read_with_the_question_above_it(tmp_path: Path) -> None:
    other = {**HEADING, "chart": {"columns": 20, "rows": 10}, "languages": ["nl"]}
    corpus = write_corpus(tmp_path, HEADING, {"text": "1"}, {"text": "2"}, other, {"text": "3"})
    asked = [
        (text, one.chart.page_count, one.languages) for text, one in bench.comments_of([corpus])
    ]
    assert asked == [("1", 63, ("en",)), ("2", 63, ("en",)), ("3", 200, ("nl",))]


def test_guesses_are_read_as_a_thread_holds_them_and_each_comment_once(tmp_path: Path) -> None:
    game = {"game": "one", "answer": {"title": "The Lost Lighthouse"}}
    votes = write_corpus(tmp_path, HEADING, {"text": "1"}, {"text": "1"}, game, {"text": "lights"})
    comments = bench.comments_of([votes])
    assert [text for text, _ in comments] == ["1", "lights"]
    assert [question is bench.IN_A_THREAD for _, question in comments] == [False, True]


@pytest.mark.parametrize(
    ("most", "chosen"), [(1, "a"), (2, "ad"), (3, "ace"), (6, "abcdef"), (9, "abcdef")]
)
def test_a_sample_is_spread_over_all_comments(tmp_path: Path, most: int, chosen: str) -> None:
    corpus = write_corpus(tmp_path, HEADING, *({"text": letter} for letter in "abcdef"))
    comments = bench.comments_of([corpus])
    assert "".join(text for text, _ in bench.sample(comments, most)) == chosen


def test_medians_and_the_best_of_the_pairs_are_told() -> None:
    pace = bench.Pace(reader=[30.0, 10.0, 80.0], floor=[3.0, 2.0, 4.0])
    assert pace.told() == (
        "30.0 µs per comment (best 10.0), floor 3.00 µs, ratio 10.0 (best pair 5.0)"
    )


@pytest.mark.parametrize(
    ("words", "said"),
    [
        pytest.param((), "MEASURE", id="no measure"),
        pytest.param(("knitting",), "'knitting'", id="no such measure"),
        pytest.param(("reading", "--rounds", "0"), "'0' is no number of 1 or more", id="no round"),
        pytest.param(("reading", "--sample", "x"), "'x' is no number of 1 or more", id="no number"),
        pytest.param(("reading", "no-such.jsonl"), "no-such.jsonl cannot be read", id="no file"),
    ],
)
def test_a_measure_that_cannot_be_is_one_sentence(words: tuple[str, ...], said: str) -> None:
    told = run_script("bench.py", *words)
    assert (told.returncode, told.stdout) == (2, "")
    [sentence] = sentences(told.stderr)
    assert said in sentence


@pytest.mark.parametrize(
    ("lines", "said"),
    [
        pytest.param([HEADING], "no comment", id="a heading alone"),
        pytest.param([{"text": "12"}], "no heading stands above", id="no heading"),
        pytest.param([HEADING, {"text": 12}], "line 2", id="a text that is none"),
        pytest.param([{"game": "one"}], "'chart' is missing", id="neither votes nor guesses"),
    ],
)
def test_a_file_that_is_no_corpus_of_votes_is_one_sentence(
    tmp_path: Path, lines: list[object], said: str
) -> None:
    told = run_script("bench.py", "reading", write_corpus(tmp_path, *lines))
    assert (told.returncode, told.stdout) == (2, "")
    [sentence] = sentences(told.stderr)
    assert said in sentence


def test_intake_tells_its_ratio_to_the_floor_and_what_it_took() -> None:
    told = run_script("bench.py", "intake", "--rows", "400")
    assert told.returncode == 0, told.stderr
    assert INTAKE.fullmatch(told.stdout.strip())
    assert "400 rows" in told.stderr
