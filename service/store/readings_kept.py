"""How comments read as votes, kept beside their words so that nothing is read twice.

What is kept is good for one reader and one question: `read_by` names both, and a round remembers
which its readings are of. Where it no longer fits, as after an upgrade of the program, comments
are read anew.
"""

from __future__ import annotations

import json
import unicodedata
from functools import cache, lru_cache
from hashlib import sha256
from pathlib import Path

import service.ballots
import service.chart
from service.ballots.reader import read_vote
from service.ballots.reading import Evidence, Question, Reading
from service.store.charts import chart_to_json

#: What nearly all chat is read as; it is kept as nothing.
PLAIN_TALK = Reading("none", (), "no-page", "no page of the chart is named")
#: Words up to this length repeat from comment to comment, longer ones do not.
_SHORT = 40
_MOST_REMEMBERED = 20_000
#: Made once: json.dumps would make one for each comment.
_IN_JSON = json.JSONEncoder(ensure_ascii=False, separators=(",", ":"))


@cache
def reader_digest() -> str:
    """The digest of the reader: of the sources that decide what a comment means."""
    found = sha256(unicodedata.unidata_version.encode())
    for package in (service.ballots, service.chart):
        for folder in map(Path, package.__path__):
            for path in sorted(folder.rglob("*.py")):
                found.update(path.relative_to(folder).as_posix().encode() + b"\0")
                found.update(path.read_bytes() + b"\0")
    return found.hexdigest()


def read_by(question: Question) -> str:
    """The name of a reader and a question: readings of the same name are the same."""
    asked = [chart_to_json(question.chart), question.choices, question.languages]
    return sha256((reader_digest() + json.dumps(asked, sort_keys=True)).encode()).hexdigest()[:32]


class VoteReader:
    """Reads words as votes for one question; short ones, which repeat, only once."""

    def __init__(self, question: Question) -> None:
        self.question = question
        self._known: dict[str, tuple[str, bool]] = {}

    def read(self, words: str) -> tuple[str, bool]:
        """The reading as it is kept, and whether it may decide anything (`speaks`)."""
        known = self._known.get(words)
        if known is None:
            known = kept_of(read_vote(words, self.question))
            self.remember(words, known)
        return known

    def remembered(self, words: str) -> tuple[str, bool] | None:
        """The same, where the words were read before and are remembered."""
        return self._known.get(words)

    def remember(self, words: str, kept: tuple[str, bool]) -> None:
        """Remember how words were read, if they are short enough to come again."""
        if len(words) <= _SHORT:
            if len(self._known) >= _MOST_REMEMBERED:
                self._known.clear()
            self._known[words] = kept


def kept_of(reading: Reading) -> tuple[str, bool]:
    """A reading as it is kept, and whether it may decide anything."""
    if reading == PLAIN_TALK:
        return "", False
    evidence = [[one.start, one.end, one.text, one.page, one.rule] for one in reading.evidence]
    kept = _IN_JSON.encode([reading.outcome, reading.pages, reading.reason, reading.why, evidence])
    return kept, reading.outcome != "none" or reading.reason == "withdrawn"


@lru_cache(maxsize=5_000)
def reading_from(kept: str) -> Reading:
    """The reading that was kept."""
    if not kept:
        return PLAIN_TALK
    outcome, pages, reason, why, evidence = json.loads(kept)
    return Reading(outcome, tuple(pages), reason, why, tuple(Evidence(*one) for one in evidence))
