"""Comments labelled by people, read as a fair reader would.

Each file was labelled from the policy alone, by somebody who had not seen the reader. A line's
label is changed only where it was mistaken under the policy, never to please the reader.
"""

from __future__ import annotations

import json
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from service.ballots.reader import read_vote
from service.ballots.reading import Question, Reading
from service.chart.grid import Chart

FOLDER = Path(__file__).parents[1] / "corpus"
FILES = sorted(FOLDER.glob("votes*.jsonl"))
#: The policy's target: so many looks in a hundred comments may be needless.
NEEDLESS_IN_A_HUNDRED = 3


def question_of(head: dict[str, Any]) -> Question:
    chart = Chart(**head["chart"])
    return Question(chart, head["choices"], tuple(head["languages"]))


def lines() -> Iterator[tuple[str, Question, dict[str, Any]]]:
    for file in FILES:
        question = None
        for line in map(json.loads, file.read_text("utf-8").splitlines()):
            if "text" not in line:
                question = question_of(line)
                continue
            assert question is not None, "a heading stands above the comments"
            yield f"{file.stem}-{line['id']}", question, line


LINES = list(lines())


@pytest.mark.parametrize(
    ("question", "line"), [(q, line) for _, q, line in LINES], ids=[name for name, _, _ in LINES]
)
def test_no_comment_is_counted_wrong_or_lost(question: Question, line: dict[str, Any]) -> None:
    reading: Reading = read_vote(line["text"], question)
    if reading.outcome == "counts":
        assert (line["outcome"], line["pages"]) == ("counts", list(reading.pages)), reading.why
    if reading.outcome == "none":
        assert line["outcome"] == "none", reading.why


def test_few_looks_are_needless() -> None:
    needless = [
        name
        for name, question, line in LINES
        if line["outcome"] != "look" and read_vote(line["text"], question).outcome == "look"
    ]
    assert len(LINES) > 1000
    assert len(needless) * 100 <= NEEDLESS_IN_A_HUNDRED * len(LINES), needless
