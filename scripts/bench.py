r"""Measures how fast Loopstart is, against something plain that is measured in the same run.

    python3 scripts/bench.py reading [FILE ...] [--rounds N] [--sample N]
    python3 scripts/bench.py intake [--rows N]
    python3 scripts/bench.py pace [--logs N] [--start N]
    python3 scripts/bench.py pages [--rows N] [--asked N]
    python3 scripts/bench.py load [--rows N] [--minutes N] [--database KIND]
    python3 scripts/bench.py closing [--rows N ...] [--database KIND]

`reading` reads a mix of the corpora (JSON Lines as for score.py; all of tests/corpus if none is
named) as a round's thread holds it, votes and guesses alike, each comment once. A comment of a
corpus of votes is read with the question above it, one of guesses with a question of an English
round. It tells microseconds per comment, for all of them, for the corpora of votes alone, and for
chat alone, which is every comment with nothing numeric or placing in it. Seconds differ from
computer to computer, so it also tells how many times as long reading takes as the least that any
reader must do: `re.findall(r"\d+", text)` over the same texts in the same run. The reader keeps no
comment, but what it found out of a word; that is forgotten before every time, so each figure is that
of comments seen for the first time by a process that has loaded its languages and read nothing yet.

`intake` takes a CSV of a million made-up comments through reading, storing and settling, and tells
how many times as long that takes as the least that must be done with the same rows: csv.DictReader,
re.findall, and one executemany of sqlite3. How the rows are made: bench_intake.py.

`pace` counts in how many of 100 made-up stitch logs the forecast's range holds the day on which the
page is truly finished (`bench_pace.py`).

`pages` stores 100,000 made-up comments in an open round, asks for pages over and over, and tells how
many times as long each takes as a bare FastAPI route that answers with a small JSON, asked in turns
in the same run. What is measured, and the most that it may take: bench_pages.py.

`load` has 50 clients hand in single comments and 500 look at the board, during an import of 100,000,
beside a bare FastAPI app with one insert (bench_load.py). `closing` closes and announces rounds of up
to a million comments (bench_closing.py). Both take SQLite and PostgreSQL in turns.

A new measure is a function and a line in MEASURES. It measures the inside, so it calls it directly.
"""

import environment

environment.enter("run")

import argparse
import gc
import re
import statistics
import sys
import time
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from pathlib import Path

from bench_closing import add_closing, closing
from bench_intake import add_intake, intake
from bench_load import add_load, load
from bench_pace import add_pace, pace
from bench_pages import add_pages, pages
from score import lines_of, question_of
from terminal import Options, finish

from service.ballots.met import forget
from service.ballots.reader import read_vote
from service.ballots.reading import Question
from service.chart.grid import Chart
from service.errors import BadInput

CORPUS = Path(__file__).resolve().parent.parent / "tests" / "corpus"
ROUNDS = 9
#: A pair is timed this often within a round and the best of each taken: another program that
#: wants the processor for a moment makes a time longer, nothing makes it shorter.
TIMES_A_ROUND = 2
#: The floor takes so little time that it is run this often for one time.
FLOOR_RUNS = 10

#: What a guess is read with, which belongs to a game and not to a round.
IN_A_THREAD = Question(Chart(9, 7))

Comment = tuple[str, Question]


@dataclass(frozen=True)
class Pace:
    """Microseconds per comment of the reader and of the floor, one of each for every round."""

    reader: list[float]
    floor: list[float]

    def told(self) -> str:
        """The figures in a line: medians, and the best of the pairs."""
        ratios = [one / other for one, other in zip(self.reader, self.floor, strict=True)]
        return (
            f"{statistics.median(self.reader):.1f} µs per comment (best {min(self.reader):.1f}), "
            f"floor {statistics.median(self.floor):.2f} µs, "
            f"ratio {statistics.median(ratios):.1f} (best pair {min(ratios):.1f})"
        )


def comments_of(paths: Iterable[Path]) -> list[Comment]:
    """The comments of corpora, each once and with the question that stands above it.

    Raises:
        BadInput: a file is no corpus of votes or guesses.
    """
    found: dict[Comment, None] = {}
    for path in paths:
        question: Question | None = None
        for place, told in lines_of(path):
            try:
                if "text" not in told:
                    question = IN_A_THREAD if "answer" in told else question_of(told)
                    continue
            except (KeyError, TypeError) as trouble:
                raise BadInput(f"{place}: {trouble} is missing or unusable", "add it") from None
            text = told["text"]
            if question is None or not isinstance(text, str):
                raise BadInput(
                    f"{place}: no heading stands above it, or the text is no text",
                    "begin with the round, and write one comment on each line",
                )
            found[text, question] = None
    if not found:
        raise BadInput(
            "there is no comment to read", "name a corpus of votes or guesses, JSON Lines"
        )
    return list(found)


def sample(comments: list[Comment], most: int) -> list[Comment]:
    """At most so many of the comments, evenly spread over all of them."""
    if most >= len(comments):
        return comments
    return [comments[place * len(comments) // most] for place in range(most)]


def says_nothing(comment: Comment) -> bool:
    """Whether nothing numeric and no place is in it: no digit, and no word was read as either."""
    text, question = comment
    reading = read_vote(text, question)
    numeric = any(character.isnumeric() for character in text)
    return reading.outcome == "none" and not reading.evidence and not numeric


def time_reader(comments: list[Comment]) -> float:
    """Microseconds per comment of reading all of them once, as the first ones."""
    forget()
    began = time.perf_counter()
    for text, question in comments:
        read_vote(text, question)
    return (time.perf_counter() - began) / len(comments) * 1e6


def time_floor(comments: list[Comment]) -> float:
    """Microseconds per comment of looking for digits alone."""
    began = time.perf_counter()
    for _ in range(FLOOR_RUNS):
        for text, _question in comments:
            re.findall(r"\d+", text)
    return (time.perf_counter() - began) / len(comments) / FLOOR_RUNS * 1e6


def one_round(comments: list[Comment]) -> tuple[float, float]:
    """The best times of the reader and of the floor, measured in turns."""
    gc.collect()
    pairs = [(time_reader(comments), time_floor(comments)) for _ in range(TIMES_A_ROUND)]
    return min(reader for reader, _ in pairs), min(floor for _, floor in pairs)


def measure(name: str, comments: list[Comment], rounds: int) -> Pace:
    """The pace over all rounds; says each round when it is done."""
    pace = Pace([], [])
    for number in range(1, rounds + 1):
        reader, floor = one_round(comments)
        pace.reader.append(reader)
        pace.floor.append(floor)
        progress(f"  {name}, round {number} of {rounds}: {reader:.1f} µs, {reader / floor:.1f}")
    return pace


def progress(words: str) -> None:
    """Says how far it is, beside the figures."""
    print(words, file=sys.stderr, flush=True)


def add_reading(options: argparse.ArgumentParser) -> None:
    """The options of `reading`."""
    options.add_argument(
        "files", nargs="*", type=Path, metavar="FILE", help="corpora (all of tests/corpus)"
    )
    options.add_argument(
        "--rounds", type=at_least_one, default=ROUNDS, metavar="N", help=f"rounds ({ROUNDS})"
    )
    options.add_argument(
        "--sample", type=at_least_one, metavar="N", help="only so many comments, evenly spread"
    )


def at_least_one(text: str) -> int:
    """A number of rounds or comments."""
    if not text.isdecimal() or int(text) < 1:
        raise argparse.ArgumentTypeError(f"{text!r} is no number of 1 or more")
    return int(text)


def reading(given: argparse.Namespace) -> None:
    """Prints the pace of reading: of all comments, of the votes' corpora, and of chat."""
    comments = comments_of(given.files or sorted(CORPUS.glob("*.jsonl")))
    if given.sample:
        comments = sample(comments, given.sample)
    parts = {
        "reading": comments,
        "corpora of votes": [comment for comment in comments if comment[1] is not IN_A_THREAD],
        # This also loads the words of the languages, which happens once in a process.
        "chat": [comment for comment in comments if says_nothing(comment)],
    }
    progress(f"Reading {len(comments)} comments, {given.rounds} rounds.")
    for name, part in parts.items():
        if part:
            pace = measure(name, part, given.rounds)
            print(f"{name}, {len(part)} comments: {pace.told()}")


@dataclass(frozen=True)
class Measure:
    """One sub-command: what it measures, its options, and how it is run."""

    says: str
    add_options: Callable[[argparse.ArgumentParser], None]
    run: Callable[[argparse.Namespace], None]


MEASURES = {
    "reading": Measure("comments read as votes", add_reading, reading),
    "intake": Measure("an export read, stored and settled", add_intake, intake),
    "pace": Measure("how often the forecast's range holds", add_pace, pace),
    "pages": Measure("pages while very many comments are stored", add_pages, pages),
    "load": Measure("comments, views and an import at the same time", add_load, load),
    "closing": Measure("closing and announcing very many comments", add_closing, closing),
}


def make_options() -> Options:
    """The command line of bench.py."""
    options = Options(
        prog="bench.py", description="Measures how fast Loopstart is.", allow_abbrev=False
    )
    commands = options.add_subparsers(dest="measure", metavar="MEASURE", required=True)
    for name, one in MEASURES.items():
        one.add_options(
            commands.add_parser(name, help=one.says, description=f"Measures {one.says}.")
        )
    return options


def main() -> int:
    """Measures what the command line names."""
    given = make_options().read()
    MEASURES[given.measure].run(given)
    return 0


if __name__ == "__main__":
    finish(main)
