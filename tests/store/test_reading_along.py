"""Comments prepared beside: the same in the same order, with a helper, without, or when it ends."""

from __future__ import annotations

import marshal
import os
import subprocess
import sys
from collections.abc import Iterator
from dataclasses import replace
from datetime import timedelta
from io import BytesIO
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from service.ballots.reading import Question
from service.chart.grid import Chart
from service.comments.comment import Comment
from service.comments.links import links_of, links_of_known
from service.comments.spans import Span
from service.comments.told import comment_told, told_of
from service.comments.versions import first_known, key_of
from service.store import reading_along
from service.store.preparing import Links, Preparing, Waiting, comment_in
from service.store.reading_along import WORTH_IT, Helper, ReadingAlong
from service.store.readings_kept import VoteReader, kept_of, reading_from
from service.store.shared_links import Shared
from tests.store.handing_in import after, comment

QUESTION = Question(Chart(9, 7), 1, ("en", "fr"))
SIZE = 100
PARTS = [
    [
        told_of(comment(f"Viewer {n}", f"page {part} please" if n % 3 else f"lovely {part} {n}", n))
        for n in range(8)
    ]
    for part in range(1, 9)
]


def alongside(size: int = WORTH_IT) -> ReadingAlong:
    return ReadingAlong(VoteReader(QUESTION), size, Shared(SIZE))


@pytest.fixture
def along() -> Iterator[ReadingAlong]:
    made = alongside()
    yield made
    made.close()


def prepared_here() -> list[list[Waiting]]:
    preparing = Preparing(VoteReader(QUESTION))
    return [preparing.prepare(part) for part in PARTS]


def prepared_by(along: ReadingAlong) -> list[list[Waiting]]:
    begun = [along.begin(part) for part in PARTS]
    return [marshal.loads(along.end(part)) for part in begun]  # noqa: S302 - our own


def test_a_helper_prepares_as_this_process_does(
    along: ReadingAlong, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(reading_along, "_QUEUE", 100)
    begun = [along.begin(part) for part in PARTS]
    assert all(part.answer is not None for part in begun)
    assert [marshal.loads(along.end(part)) for part in begun] == prepared_here()  # noqa: S302
    assert along.finish()


def test_what_the_helper_has_no_time_for_is_prepared_here(along: ReadingAlong) -> None:
    begun = [along.begin(part) for part in PARTS]
    assert any(part.answer is None for part in begun)
    assert [marshal.loads(along.end(part)) for part in begun] == prepared_here()  # noqa: S302


@pytest.mark.parametrize("size", [WORTH_IT - 1, WORTH_IT])
def test_what_is_shared_is_known_whoever_prepared_it(size: int) -> None:
    shared, here = Shared(SIZE), Shared(SIZE)
    along = ReadingAlong(VoteReader(QUESTION), size, shared)
    try:
        prepared_by(along)
        assert along.finish()
    finally:
        along.close()
    for part in prepared_here():
        for links, _ in part:
            here.add(links)
    assert (shared.once, shared.more) == (here.once, here.more)
    assert any(
        map(
            shared.is_shared,
            [link for part in prepared_here() for links, _ in part for link in links],
        )
    )


def test_a_helper_that_ends_costs_nothing_but_time(
    along: ReadingAlong, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(Helper, "_hear", _ended)
    assert prepared_by(along) == prepared_here()
    # What it noted is lost with it.
    assert not along.finish()


def _ended(helper: Helper) -> bytes:
    del helper
    raise BrokenPipeError


def test_a_helper_ends_when_nobody_asks_any_more() -> None:
    told = BytesIO()
    reading_along.answer(BytesIO(b""), told)
    reading_along.answer(BytesIO(b"\0\0\0"), told)
    assert told.getvalue() == b""


def test_a_small_export_is_read_without_a_helper() -> None:
    small = alongside(WORTH_IT - 1)
    assert prepared_by(small) == prepared_here()
    assert all(small.begin(part).answer is None for part in PARTS)


def test_a_comment_is_handed_over_whole() -> None:
    wide = Span(after(-1), after(1))
    one = comment("Tove", "12", 3, id="k1")
    others = (
        replace(one, posted=wide, edited=Span.at(after(2))),
        replace(one, id=None, author_id="t", reply_to="k0", place="line 7"),
    )
    for told in (one, *others):
        assert comment_told(told_of(told)) == told
        [waiting] = Preparing(VoteReader(QUESTION)).prepare([told_of(told)])
        assert comment_in(waiting) == told
        assert waiting[1][0] == key_of(told)
        assert waiting[1][1] == (told.author_id or "tove")


AUTHORS = st.sampled_from(["Tove", "TOVE ", "Annie", ""])
COMMENTS = st.builds(
    Comment,
    author=AUTHORS,
    text=st.sampled_from(["12", "12\u200b", "1 2", "12  please", "12 please"]),
    posted=st.sampled_from(
        [Span.at(after(1)), Span.at(after(2)), Span(after(1), after(1) + timedelta(seconds=1))]
    ),
    id=st.sampled_from([None, "12", "Tove"]),
    author_id=st.sampled_from([None, "Tove", "t"]),
)


@given(COMMENTS, COMMENTS)
def test_numbers_of_links_meet_where_links_do(one: Comment, other: Comment) -> None:
    preparing = Preparing(VoteReader(QUESTION))
    [waiting] = preparing.prepare([told_of(one)])
    numbers = Links().of_waiting(waiting)
    known = first_known("key", other, after(9))
    assert len(numbers) == len(links_of(one))
    assert set(waiting[0]) == (set(numbers[:1]) if one.id else set(numbers))
    met = set(numbers) & set(Links().of_known(known))
    assert len(met) == len(set(links_of(one)) & set(links_of_known(known)))


def test_numbers_of_links_are_the_same_in_every_process() -> None:
    asked = (
        "from service.store.preparing import Links; "
        "links = Links(); "
        "print(links.of(links.called('Tøve', 'id'), 'k', '2026-03-01 18:00:00.000000', ('words',)))"
    )
    told = {
        subprocess.run(  # noqa: S603 - this program itself
            [sys.executable, "-c", asked],
            env=os.environ | {"PYTHONHASHSEED": seed},
            cwd=Path(reading_along.__file__).parents[2],
            capture_output=True,
            check=True,
        ).stdout
        for seed in ("1", "2")
    }
    assert len(told) == 1


@pytest.mark.parametrize(
    ("words", "speaks"),
    [
        ("42", True),
        ("12 or 40", True),
        ("forget my vote", True),
        ("what a lovely thread", False),
        ("I watched it 3 times since 2019", False),
    ],
)
def test_a_reading_is_kept_whole_and_chat_as_nothing(words: str, speaks: bool) -> None:  # noqa: FBT001
    kept, may_decide = VoteReader(QUESTION).read(words)
    reading = reading_from(kept)
    assert kept_of(reading) == (kept, speaks)
    assert may_decide is speaks
    assert (kept == "") is (words == "what a lovely thread")
