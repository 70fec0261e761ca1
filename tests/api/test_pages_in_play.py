"""What the host may say of pages while a round goes on."""

from __future__ import annotations

import pytest

from tests.api.asking import (
    PATH,
    ROUND,
    assert_problem,
    done,
    everything_kept,
    make_game,
    open_round,
    votes,
)
from tests.api.conftest import Service


def test_a_page_that_was_stitched_meanwhile_is_not_announced_as_the_next(service: Service) -> None:
    make_game(service.host)
    done(service.host.put(f"{PATH}/pages/12", {"state": "in hand"}))
    done(service.host.post(f"{PATH}/rounds", {}), 201)
    done(service.host.post(f"{ROUND}/open"))
    service.clock.go_on(hours=2)
    done(service.host.hand_in(f"{ROUND}/batches", votes("3")), 201)
    done(service.host.post(f"{ROUND}/close"))
    done(service.host.put(f"{PATH}/pages/2", {"state": "stitched"}))
    words = done(service.host.post(f"{ROUND}/announce"))["announcement"]
    # Page 3 touches 2 and 4 beside and 12 below.
    assert "Only page 4 can be chosen." in words


@pytest.mark.parametrize("state", ["stitched", "in hand"])
def test_a_page_that_is_voted_on_is_not_stitched_meanwhile(service: Service, state: str) -> None:
    """It could win, and would be in hand once more although it is stitched."""
    open_round(service)
    done(service.host.hand_in(f"{ROUND}/batches", votes("4")), 201)
    says = r"page 4 is one of the pages that round 1 may choose and cannot be .*: announce round 1"
    before = everything_kept(service)
    assert_problem(service.host.put(f"{PATH}/pages/4", {"state": state}), 409, says)
    assert everything_kept(service) == before
    done(service.host.put(f"{PATH}/pages/4", {"state": "unstitched"}))
    done(service.host.post(f"{ROUND}/close"))
    assert_problem(
        service.host.put(f"{PATH}/pages/5", {"state": state}), 409, says.replace("4", "5")
    )
    done(service.host.post(f"{ROUND}/announce"))
    for page in (4, 5):
        done(service.host.put(f"{PATH}/pages/{page}", {"state": state}))
