"""Measures how well comments are read, against what a fair reader says.

    python3 scripts/score.py votes FILE [--out FILE]
    python3 scripts/score.py guesses FILE [--out FILE]

FILE is JSON Lines. A line without `text` is a heading and holds for the lines below it: for votes
the round (`chart`, `choices`, `languages`), for guesses the game (`answer`, `wants`,
`names_per_comment`). Every other line is a comment: `id`, `text` and what a fair reader says
(`outcome`, for votes also `pages` and `reason`). The words of the figures are those at the end of
the reading policies. It measures the reader itself, so it calls it directly.
"""

import environment

environment.enter("run")

import json
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from terminal import Options, finish

from service.ballots.reader import read_vote
from service.ballots.reading import Question
from service.chart.grid import Cell, Chart, DesignSize, chart_of_design
from service.errors import BadInput, EmptyExport
from service.mystery.answer import Answer, GuessRules
from service.mystery.guess import read_guess

Line = dict[str, Any]
Read = Callable[[str], Line]

SIZE_NAMES = ("stitches_wide", "stitches_high", "page_wide", "page_high", "overlap")
GRID_NAMES = ("order", "start", "back_and_forth", "joined")


@dataclass(frozen=True)
class Kind:
    """One kind of corpus: how a heading gives a reader, and what each outcome pair is called."""

    heading: Callable[[Line], Read]
    judge: Callable[[Line, Line], str]
    verdicts: tuple[str, ...]
    notes: tuple[str, ...]
    outcomes: tuple[str, ...]


def chart_of(told: Line) -> Chart:
    """The chart that a heading tells, by columns and rows or by stitches."""
    more = {name: told[name] for name in GRID_NAMES if name in told}
    more["no_page"] = frozenset(Cell(column, row) for column, row in told.get("no_page", []))
    if "columns" in told:
        return Chart(told["columns"], told["rows"], **more)
    size = DesignSize(**{name: told[name] for name in SIZE_NAMES if name in told})
    return chart_of_design(size, **more)


def question_of(told: Line) -> Question:
    """What the round asks that the heading tells."""
    return Question(
        chart_of(told["chart"]), told.get("choices", 1), tuple(told.get("languages", ["en"]))
    )


def vote_heading(told: Line) -> Read:
    """A reader of votes for the round that the heading tells."""
    question = question_of(told)

    def read(text: str) -> Line:
        reading = read_vote(text, question)
        return {
            "outcome": reading.outcome,
            "pages": list(reading.pages),
            "reason": reading.reason,
            "why": reading.why,
        }

    return read


def guess_heading(told: Line) -> Read:
    """A reader of guesses for the game that the heading tells."""
    answer = told["answer"]
    rules = GuessRules(
        Answer(answer["title"], answer.get("designer", ""), tuple(answer.get("aliases", []))),
        told.get("wants", "title"),
        told.get("names_per_comment", 1),
    )

    def read(text: str) -> Line:
        reading = read_guess(text, rules)
        return {"outcome": reading.outcome, "reason": reading.why, "why": reading.why}

    return read


def judge_vote(fair: Line, read: Line) -> str:
    """What the difference between a fair reader and the reader is called; "" where there is none."""
    said, should = read["outcome"], fair["outcome"]
    same_pages = read["pages"] == fair.get("pages", [])
    if said == "counts":
        return "" if should == "counts" and same_pages else "wrong"
    if said == "none" and should != "none":
        return "lost"
    if said == "look" and should != "look":
        return "needless"
    if said == "look":
        return "" if sorted(read["pages"]) == sorted(fair.get("pages", [])) else "other pages"
    return "" if read["reason"] == fair.get("reason") else "other reason"


def judge_guess(fair: Line, read: Line) -> str:
    """What the difference between a fair reader and the reader is called; "" where there is none."""
    said, should = read["outcome"], fair["outcome"]
    if said == should:
        return ""
    if said == "right":
        return "wrong winner"
    if said == "look":
        return "needless"
    return "lost" if should in {"right", "look"} else "wrong for none"


KINDS = {
    "votes": Kind(
        vote_heading,
        judge_vote,
        ("wrong", "lost", "needless"),
        ("other reason", "other pages"),
        ("counts", "look", "none"),
    ),
    "guesses": Kind(
        guess_heading,
        judge_guess,
        ("wrong winner", "lost", "needless"),
        ("wrong for none",),
        ("right", "look", "wrong", "none"),
    ),
}
NOTES = {
    "other reason": "none for another reason",
    "other pages": "a look with other pages",
    "wrong for none": "wrong and none mistaken for each other",
}


def lines_of(path: Path) -> Iterator[tuple[str, Line]]:
    """Each line of the file as JSON, with its place for messages.

    Raises:
        BadInput: the file cannot be opened, is empty, or a line is no JSON object.
    """
    try:
        text = path.read_text(encoding="utf-8-sig")
    except (OSError, UnicodeDecodeError) as trouble:
        why = getattr(trouble, "strerror", None) or "it is not text in UTF-8"
        raise BadInput(f"{path} cannot be read ({why})", "name a corpus in JSON Lines") from None
    if not text.strip():
        raise EmptyExport(str(path))
    for number, line in enumerate(text.split("\n"), start=1):
        if not line.strip():
            continue
        try:
            told = json.loads(line)
        except ValueError:
            told = None
        if not isinstance(told, dict):
            raise BadInput(f"{path}, line {number}: no JSON object", "put one object on each line")
        yield f"{path}, line {number}", told


def score(kind: Kind, path: Path) -> Iterator[tuple[Line, Line, str]]:
    """Each comment of the corpus, how it was read, and what the difference is called.

    Raises:
        BadInput: a heading or a comment lacks what it must say.
    """
    read: Read | None = None
    for place, told in lines_of(path):
        try:
            if "text" not in told:
                read = kind.heading(told)
                continue
            text, outcome = told["text"], told["outcome"]
        except (KeyError, TypeError) as trouble:
            raise BadInput(f"{place}: {trouble} is missing or unusable", "add it") from None
        if not isinstance(text, str) or outcome not in kind.outcomes:
            raise BadInput(
                f"{place}: the outcome {outcome!r} is none of {', '.join(kind.outcomes)}, or the "
                "text is no text",
                "correct the line",
            )
        if read is None:
            raise BadInput(f"{place}: no heading stands above it", "begin with the round or game")
        said = read(text)
        yield told, said, kind.judge(told, said)


def told_briefly(outcome: Line) -> str:
    """An outcome in a few words: "counts 12, 13" or "none (withdrawn)"."""
    pages = ", ".join(str(page) for page in outcome.get("pages", []))
    reason = outcome.get("reason") if outcome["outcome"] == "none" and "pages" in outcome else None
    return f"{outcome['outcome']}{' ' + pages if pages else ''}{f' ({reason})' if reason else ''}"


def report(kind: Kind, scored: list[tuple[Line, Line, str]]) -> None:
    """Prints every difference, then the figures; the summary is the last line."""
    found = dict.fromkeys((*kind.verdicts, *kind.notes), 0)
    for name in found:
        for fair, said, verdict in scored:
            if verdict != name:
                continue
            found[name] += 1
            print(f"{name}: {fair.get('id', '?')}  fair reader: {told_briefly(fair)}", end="")
            print(f"  read: {told_briefly(said)}")
            print(f"    {json.dumps(fair['text'], ensure_ascii=False)}")
            print(f"    {said['why']}")
    for name in kind.notes:
        print(f"for information: {NOTES[name]}: {found[name]}")
    counted = " ".join(f"{name} {found[name]}" for name in kind.verdicts)
    print(f"{counted} of {len(scored)}")


def write_out(path: Path, scored: list[tuple[Line, Line, str]]) -> None:
    """Writes how every comment was read, one JSON object a line."""
    names = ("outcome", "pages", "reason")
    rows = [
        {"id": fair.get("id"), **{name: said[name] for name in names if name in said}}
        for fair, said, _ in scored
    ]
    text = "".join(json.dumps(row, ensure_ascii=False) + "\n" for row in rows)
    try:
        path.write_text(text, encoding="utf-8")
    except OSError as trouble:
        raise BadInput(f"{path} cannot be written ({trouble.strerror})", "name another") from None


def main() -> int:
    """Scores the corpus named on the command line; 2 for input that cannot be used."""
    options = Options(prog="score.py", description="Measures how well comments are read.")
    options.add_argument("kind", choices=sorted(KINDS), help="what the corpus holds")
    options.add_argument("file", type=Path, help="the corpus, JSON Lines")
    options.add_argument("--out", type=Path, help="write how each comment was read, JSON Lines")
    given = options.read()
    kind = KINDS[given.kind]
    scored = list(score(kind, given.file))
    if given.out:
        write_out(given.out, scored)
    report(kind, scored)
    return 0


if __name__ == "__main__":
    finish(main)
