"""What seemed to share something with another comment, in parts: alone, or with those it shares with."""

from __future__ import annotations

import pytest

from service.store.leftovers import Leftovers
from service.store.preparing import Waiting


def waiting(key: str, *links: int) -> Waiting:
    return links, (key,)


TWINS = waiting("a", 1, 2), waiting("b", 2, 3)
ALONE = waiting("c", 4, 5)
OF_A_KNOWN_ONE = waiting("d", 6)


@pytest.mark.parametrize("at_once", [100, 2, 1])
def test_what_shares_nothing_with_any_other_is_alone(at_once: int) -> None:
    left = Leftovers(at_once)
    left.add((6,), 17)
    left.add((7,), 18)
    for one in (*TWINS, ALONE, OF_A_KNOWN_ONE):
        left.add(one[0], one)
    parts = list(left.parts())
    left.close()
    assert [one for part in parts for one in part.alone] == [ALONE]
    assert [one for part in parts for one in part.known] == [17]
    together = [sorted(key for _, (key,) in part.waiting) for part in parts]
    assert sorted(key for keys in together for key in keys) == ["a", "b", "d"]
    assert any({"a", "b"} <= set(keys) for keys in together)
    [with_known] = [part for part in parts if part.known]
    assert OF_A_KNOWN_ONE in with_known.waiting


def test_where_nothing_is_left_there_is_no_part() -> None:
    assert list(Leftovers().parts()) == []
