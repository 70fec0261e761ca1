"""What viewers say in many ways, language by language, read as any fair reader would.

Each line of the files in `ways/` holds a fair reading and a comment, parted by a stroke.
"""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.ballots.heard import heard

FILES = sorted((Path(__file__).parent / "ways").glob("*.txt"))
SAID = [
    (file.stem, *line.split(" | ", 1))
    for file in FILES
    for line in file.read_text("utf-8").splitlines()
]


@pytest.mark.parametrize(
    ("fair", "text"),
    [(fair, text) for _, fair, text in SAID],
    ids=[f"{name}: {text}" for name, _, text in SAID],
)
def test_a_comment_is_read_as_a_fair_reader_would(fair: str, text: str) -> None:
    said = heard(text).split()
    assert [said[0], *sorted(said[1:])] == [fair.split(maxsplit=1)[0], *sorted(fair.split()[1:])]


def test_every_language_is_tried() -> None:
    assert len(FILES) == 23
    assert len(SAID) > 1600
