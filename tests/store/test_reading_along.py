"""Words read beside: the same in the same order, with a helper, without, or when it ends."""

from __future__ import annotations

import marshal
import os
import subprocess
import sys
from collections.abc import Iterator, Sequence
from contextlib import closing, contextmanager
from dataclasses import replace
from datetime import timedelta
from io import BytesIO
from pathlib import Path
from tempfile import TemporaryFile

import pytest
from hypothesis import given
from hypothesis import strategies as st

from service.ballots.reading import Question
from service.chart.grid import Chart
from service.comments.comment import Comment
from service.comments.links import links_of, links_of_known
from service.comments.spans import Span
from service.comments.told import Told, comment_told, told_of
from service.comments.versions import first_known, key_of
from service.store import reading_along
from service.store import waiting_parts as waiting_parts_module
from service.store.preparing import Links, Waiting, comment_in
from service.store.reading_along import WORTH_IT, Helper, ReadingAlong, packed_words
from service.store.readings_kept import VoteReader, kept_of, reading_from
from service.store.waiting_parts import WaitingParts
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


@contextmanager
def waiting_parts(size: int = WORTH_IT) -> Iterator[WaitingParts]:
    with TemporaryFile() as file, closing(ReadingAlong(VoteReader(QUESTION), size)) as along:
        yield WaitingParts(file, along, SIZE)


def read_by(waiting: WaitingParts, parts: Sequence[list[Told]] = PARTS) -> list[list[Waiting]]:
    for part in parts:
        waiting.add(part)
    waiting.catch_up()
    return list(waiting.read())


def read_here_alone() -> list[list[Waiting]]:
    reader, own = VoteReader(QUESTION), Links()
    return [
        [(links, row + reader.read(row[-1])) for links, row in own.link(part)] for part in PARTS
    ]


@pytest.mark.parametrize("size", [WORTH_IT - 1, WORTH_IT])
def test_comments_wait_in_their_order_with_how_they_read(size: int) -> None:
    with waiting_parts(size) as waiting:
        assert read_by(waiting) == read_here_alone()
        assert waiting.count == sum(map(len, PARTS))
        # As where storing them has to begin anew.
        assert list(waiting.read()) == read_here_alone()


@pytest.mark.parametrize("later", [0.0, 0.5, 1.0])
def test_what_nobody_has_time_for_is_read_when_it_is_stored(
    monkeypatch: pytest.MonkeyPatch, later: float
) -> None:
    monkeypatch.setattr(waiting_parts_module, "_LATER", later)
    monkeypatch.setattr(reading_along, "_BUSY", 1)
    with waiting_parts() as waiting:
        for part in PARTS:
            waiting.add(part)
        assert waiting.unread
        waiting.catch_up()
        assert waiting.unread <= later * len(PARTS)
        assert list(waiting.read()) == read_here_alone()
        assert not waiting.unread


def test_a_helper_that_ends_costs_nothing_but_time(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(Helper, "_hear", _ended)
    monkeypatch.setattr(reading_along, "_BUSY", 1)
    with waiting_parts() as waiting:
        assert read_by(waiting) == read_here_alone()
        assert not waiting.unread


def _ended(helper: Helper) -> bytes:
    del helper
    raise BrokenPipeError


def test_a_helper_that_ends_while_comments_are_stored_costs_nothing_but_time(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setattr(waiting_parts_module, "_LATER", 1.0)
    with waiting_parts() as waiting:
        for part in PARTS:
            waiting.add(part)
        stored = waiting.read()
        found = [next(stored)]
        monkeypatch.setattr(Helper, "_hear", _ended)
        assert [*found, *stored] == read_here_alone()


def test_what_comments_share_is_known_by_their_ids_or_whole() -> None:
    one, other = (replace(comment("Tove", "12", 1, id=name)) for name in ("k1", "k2"))
    with waiting_parts(0) as waiting:
        read_by(waiting, [[told_of(one), told_of(other)], [told_of(one)]])
        shares = [
            [waiting.shared.is_shared(links[0]) for links, _ in part] for part in waiting.linked()
        ]
        assert shares == [[True, False], [True]]
        waiting.link_whole()
        [[(links, _), (others, _)], _] = waiting.linked()
        assert len(links) == len(others) == 3
        # The same author, words and time: only the ids are two.
        assert [waiting.shared.is_shared(one) for one in others] == [False, True, True]


def test_a_helper_ends_when_nobody_asks_any_more() -> None:
    told = BytesIO()
    reading_along.answer(BytesIO(b""), told)
    reading_along.answer(BytesIO(b"\0\0\0"), told)
    assert told.getvalue() == b""


def test_only_a_large_export_has_a_helper() -> None:
    for size in (WORTH_IT - 1, WORTH_IT):
        with closing(ReadingAlong(VoteReader(QUESTION), size)) as along:
            assert along.has_helper is (size == WORTH_IT)
            assert (along.ask(packed_words(["12"])) is None) is (size < WORTH_IT)
            assert marshal.loads(along.read(["12"])) == [VoteReader(QUESTION).read("12")]  # noqa: S302


def test_a_comment_is_handed_over_whole() -> None:
    wide = Span(after(-1), after(1))
    one = comment("Tove", "12", 3, id="k1")
    others = (
        replace(one, posted=wide, edited=Span.at(after(2))),
        replace(one, id=None, author_id="t", reply_to="k0", place="line 7"),
    )
    for told in (one, *others):
        assert comment_told(told_of(told)) == told
        [waiting] = Links().link([told_of(told)])
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
    [waiting] = Links().link([told_of(one)])
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
