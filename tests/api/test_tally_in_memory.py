"""A stored round of many comments is counted without holding more of them than are listed."""

from __future__ import annotations

import gc
from typing import Any

import pytest

from service.api.counted_out import tally_out
from service.comments.versions import KnownComment
from service.counting.round import ReadComment
from service.store.tables_comments import CommentRow, VersionRow
from tests.api.asking import ROUND, done, open_round, votes
from tests.api.conftest import Service

HELD = (ReadComment, KnownComment, CommentRow, VersionRow)


def held() -> dict[str, int]:
    gc.collect()
    kinds = [type(one) for one in gc.get_objects()]
    return {kind.__name__: kinds.count(kind) for kind in HELD}


def test_a_tally_holds_what_it_lists_and_lets_go_of_all(
    service: Service, monkeypatch: pytest.MonkeyPatch
) -> None:
    open_round(service)
    words = [("13 please", "12 or 40", "is it 2 strands?")[place % 3] for place in range(300)]
    done(service.host.hand_in(f"{ROUND}/batches", votes(*words)), 201)
    before = held()
    while_counted: list[dict[str, int]] = []

    def watched(*given: Any) -> Any:
        while_counted.append(held())
        answer = tally_out(*given)
        while_counted.append(held())
        return answer

    monkeypatch.setattr("service.api.tally_routes.tally_out", watched)
    tally = done(service.host.get(f"{ROUND}/tally", most=10))
    assert (tally["comments"], tally["figures"]["ballots"], tally["figures"]["looks"]) == (
        300,
        100,
        100,
    )
    assert [len(tally[name]) for name in ("ballots", "looks", "set_aside")] == [10, 10, 20]
    for now in while_counted:
        more = {kind: many - before[kind] for kind, many in now.items()}
        # Ten of each are listed: ballots, looks and others; all the rest is gone.
        assert more == {"ReadComment": 30, "KnownComment": 0, "CommentRow": 0, "VersionRow": 0}
    assert held() == before
