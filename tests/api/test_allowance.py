"""What one network address may ask in a minute: laws of the allowance, without any service."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from service.api.allowance import Allowance, network_of


class Seconds:
    """A clock that goes on when it is told to."""

    def __init__(self) -> None:
        self.now = 1000.0

    def __call__(self) -> float:
        return self.now


def taken(allowance: Allowance, sender: str, wanted: int) -> int:
    return sum(allowance.take(sender) == 0 for _ in range(wanted))


def test_a_minutes_worth_may_come_at_once_and_then_comes_back_bit_by_bit() -> None:
    clock = Seconds()
    allowance = Allowance(60, clock)
    assert taken(allowance, "a", 100) == 60
    assert allowance.take("a") == 1
    clock.now += 2.5
    assert taken(allowance, "a", 100) == 2
    clock.now += 600
    assert taken(allowance, "a", 100) == 60


def test_the_seconds_to_wait_are_enough_and_no_fewer_would_be() -> None:
    clock = Seconds()
    allowance = Allowance(4, clock)
    assert taken(allowance, "a", 5) == 4
    wait = allowance.take("a")
    assert wait == 15
    clock.now += wait - 1
    assert allowance.take("a") == 1
    clock.now += 1
    assert allowance.take("a") == 0


def test_one_sender_takes_nothing_from_another() -> None:
    allowance = Allowance(3, Seconds())
    assert taken(allowance, "a", 10) == 3
    assert taken(allowance, "b", 10) == 3


def test_what_was_not_used_is_given_back_and_what_cost_more_is_charged() -> None:
    allowance = Allowance(10, Seconds())
    assert allowance.take("a") == 0
    allowance.charge("a", -1)
    assert taken(allowance, "a", 20) == 10
    allowance.charge("b", 7)
    assert taken(allowance, "b", 20) == 3


def test_nobody_owes_more_than_a_minutes_worth() -> None:
    clock = Seconds()
    allowance = Allowance(60, clock)
    allowance.charge("a", 1_000_000)
    clock.now += 62
    assert taken(allowance, "a", 10) == 2


@given(
    st.lists(st.tuples(st.floats(0, 90), st.integers(1, 40)), min_size=1, max_size=20),
    st.integers(1, 50),
)
def test_over_any_time_no_more_is_let_through_than_came_back(
    bursts: list[tuple[float, int]], per_minute: int
) -> None:
    clock = Seconds()
    allowance = Allowance(per_minute, clock)
    began, through = clock.now, 0
    for pause, wanted in bursts:
        clock.now += pause
        through += taken(allowance, "a", wanted)
        assert through <= per_minute + (clock.now - began) * per_minute / 60 + 1e-6


def test_whoever_asks_no_more_is_forgotten_after_two_minutes() -> None:
    clock = Seconds()
    allowance = Allowance(60, clock)
    allowance.take("a")
    clock.now += 119
    allowance.take("b")
    assert len(allowance) == 2
    clock.now += 2
    allowance.take("b")
    assert len(allowance) == 1


def test_only_so_many_senders_are_kept() -> None:
    allowance = Allowance(2, Seconds(), most_kept=100)
    for number in range(1000):
        allowance.take(str(number))
    assert len(allowance) <= 100
    assert taken(allowance, "999", 5) == 1  # the newest is not among those that were forgotten


@pytest.mark.parametrize(
    ("one", "other"),
    [
        ("192.0.2.1", "::ffff:192.0.2.1"),
        ("2001:db8:1:2::1", "2001:db8:1:2:ffff:ffff:ffff:ffff"),
        ("fe80::1%eth0", "fe80::2%eth1"),
    ],
)
def test_one_customers_addresses_are_one_sender(one: str, other: str) -> None:
    assert network_of(one) == network_of(other)


@pytest.mark.parametrize(
    ("one", "other"),
    [("192.0.2.1", "192.0.2.2"), ("2001:db8:1:2::1", "2001:db8:1:3::1"), ("unknown", "192.0.2.1")],
)
def test_other_addresses_are_others(one: str, other: str) -> None:
    assert network_of(one) != network_of(other)
