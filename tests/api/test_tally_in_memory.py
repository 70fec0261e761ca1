"""A stored round of many comments is counted without holding what was read of them twice."""

from __future__ import annotations

import gc
from typing import Any

import pytest

from service.api.counted_out import tally_out
from service.ballots.reading import Reading
from service.comments.versions import KnownComment
from service.store.tables_comments import CommentRow, VersionRow
from tests.api.asking import ROUND, done, open_round, votes
from tests.api.conftest import Service

HELD = (Reading, KnownComment, CommentRow, VersionRow)


def held() -> dict[str, int]:
    gc.collect()
    kinds = [type(one) for one in gc.get_objects()]
    return {kind.__name__: kinds.count(kind) for kind in HELD}


def test_a_tally_holds_one_reading_a_comment_and_lets_go_of_all(
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
    assert done(service.host.get(f"{ROUND}/tally"))["comments"] == 300
    for now in while_counted:
        more = {kind: many - before[kind] for kind, many in now.items()}
        # The rows and what was made of them are gone once their words are read.
        assert more == {"Reading": 300, "KnownComment": 0, "CommentRow": 0, "VersionRow": 0}
    assert held() == before
