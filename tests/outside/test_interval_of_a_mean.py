"""The pace's own estimator against published intervals of a mean, and against scipy.

- NIST/SEMATECH e-Handbook of Statistical Methods, section 1.3.5.2 "Confidence Limits for the Mean":
  heat flow data ZARR13 (section 1.4.2.8), 195 values, 95 %: 9.258242 to 9.264679. Values and limits
  were read in public copies, not on the handbook's own pages.
- Boost.Math, "Calculating confidence intervals on the mean with the Students-t distribution":
  mercury, 3 values; mean, deviation and limits were read, the three values are from memory.
"""

from __future__ import annotations

import math
import statistics
from datetime import date

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from scipy import stats

from service.pace.estimate import Pace, pace_of
from service.pace.forecast import crossings
from service.pace.stretches import Stretch
from service.pace.student import t_of, within
from service.pace.weekdays import EVEN, mean_and_variance

HEAT_FLOW = """
9.206343 9.299992 9.277895 9.305795 9.275351 9.288729 9.287239 9.260973 9.303111 9.275674 9.272561
9.288454 9.255672 9.252141 9.297670 9.266534 9.256689 9.277542 9.248205 9.252107 9.276345 9.278694
9.267144 9.246132 9.238479 9.269058 9.248239 9.257439 9.268481 9.288454 9.258452 9.286130 9.251479
9.257405 9.268343 9.291302 9.219460 9.270386 9.218808 9.241185 9.269989 9.226585 9.258556 9.286184
9.320067 9.327973 9.262963 9.248181 9.238644 9.225073 9.220878 9.271318 9.252072 9.281186 9.270624
9.294771 9.301821 9.278849 9.236680 9.233988 9.244687 9.221601 9.207325 9.258776 9.275708 9.268955
9.257269 9.264979 9.295500 9.292883 9.264188 9.280731 9.267336 9.300566 9.253089 9.261376 9.238409
9.225073 9.235526 9.239510 9.264487 9.244242 9.277542 9.310506 9.261594 9.259791 9.253089 9.245735
9.284058 9.251122 9.275385 9.254619 9.279526 9.275065 9.261952 9.275351 9.252433 9.230263 9.255150
9.268780 9.290389 9.274161 9.255707 9.261663 9.250455 9.261952 9.264041 9.264509 9.242114 9.239674
9.221553 9.241935 9.215265 9.285930 9.271559 9.266046 9.285299 9.268989 9.267987 9.246166 9.231304
9.240768 9.260506 9.274355 9.292376 9.271170 9.267018 9.308838 9.264153 9.278822 9.255244 9.229221
9.253158 9.256292 9.262602 9.219793 9.258452 9.267987 9.267987 9.248903 9.235153 9.242933 9.253453
9.262671 9.242536 9.260803 9.259825 9.253123 9.240803 9.238712 9.263676 9.243002 9.246826 9.252107
9.261663 9.247311 9.306055 9.237646 9.248937 9.256689 9.265777 9.299047 9.244814 9.287205 9.300566
9.256621 9.271318 9.275154 9.281834 9.253158 9.269024 9.282077 9.277507 9.284910 9.239840 9.268344
9.247778 9.225039 9.230750 9.270024 9.265095 9.284308 9.280697 9.263032 9.291851 9.252072 9.244031
9.283269 9.196848 9.231372 9.232963 9.234956 9.216746 9.274107 9.273776
"""
FIRST = date(2026, 1, 5)


def limits(values: list[float], confidence: float) -> tuple[float, float, float, float]:
    """Mean, deviation and both limits, by the code's own estimator."""
    rate, variance, _ = mean_and_variance([(value, 1) for value in values])
    pace = Pace(rate, variance, len(values) - 1, len(values), FIRST, EVEN.shares)
    return rate, math.sqrt(variance), *pace.limits(confidence)


def test_the_heat_flow_example_of_the_handbook() -> None:
    values = [float(value) for value in HEAT_FLOW.split()]
    assert len(values) == 195
    mean, deviation, lower, upper = limits(values, 0.95)
    # The mean is printed as 9.261460: cut, for it is 9.2614608.
    assert (math.floor(mean * 1e6), f"{deviation:.6f}") == (9_261_460, "0.022789")
    assert (f"{lower:.6f}", f"{upper:.6f}") == ("9.258242", "9.264679")
    assert f"{t_of(0.95, 194):.4f}" == "1.9723"


@pytest.mark.parametrize(
    ("confidence", "lower", "upper"),
    [
        (0.5, "37.345", "38.255"),
        (0.9, "36.174", "39.426"),
        (0.95, "35.404", "40.196"),
        (0.99, "32.274", "43.326"),
    ],
)
def test_the_mercury_example(confidence: float, lower: str, upper: str) -> None:
    mean, deviation, low, high = limits([38.9, 37.4, 37.1], confidence)
    assert (f"{mean:.1f}", f"{deviation:.6f}") == ("37.8", "0.964365")
    assert (f"{low:.3f}", f"{high:.3f}") == (lower, upper)


def test_a_stitch_log_of_ten_days() -> None:
    """Worked out beside the program, with scipy; no published source."""
    log = [120, 0, 85, 200, 150, 0, 95, 110, 130, 60]
    expected = {
        0.95: ("50.0721", "139.9279"),
        0.9: ("58.5932", "131.4068"),
        0.8: ("67.5322", "122.4678"),
    }
    for confidence, told in expected.items():
        mean, deviation, lower, upper = limits([float(each) for each in log], confidence)
        assert (mean, f"{deviation:.4f}") == (95, "62.8048")
        assert (f"{lower:.4f}", f"{upper:.4f}") == told


@given(st.sampled_from([0.5, 0.8, 0.9, 0.95, 0.99]), st.integers(1, 400))
def test_students_t_is_that_of_scipy(confidence: float, degrees: int) -> None:
    expected = float(stats.t.ppf(0.5 + confidence / 2, degrees))
    assert math.isclose(t_of(confidence, degrees), expected, rel_tol=1e-9)
    assert math.isclose(within(expected, degrees), confidence, rel_tol=1e-9)


@given(st.lists(st.integers(0, 2000), min_size=3, max_size=60), st.sampled_from([0.8, 0.95]))
def test_the_limits_of_random_logs_are_those_of_scipy(log: list[int], confidence: float) -> None:
    values = [float(each) for each in log]
    _, _, lower, upper = limits(values, confidence)
    error = statistics.stdev(values) / math.sqrt(len(values))
    if error == 0:
        assert lower == upper == values[0]
        return
    expected = stats.t.interval(confidence, len(log) - 1, statistics.fmean(values), error)
    assert math.isclose(lower, float(expected[0]), rel_tol=1e-9, abs_tol=1e-6)
    assert math.isclose(upper, float(expected[1]), rel_tol=1e-9, abs_tol=1e-6)


@given(st.lists(st.integers(20, 60), min_size=10, max_size=13), st.integers(1, 4000))
def test_the_range_is_where_scipy_s_limits_of_the_days_to_come_reach_what_is_left(
    log: list[int], left: int
) -> None:
    """A log of single days: limits of the sum of h days to come, tried at the ends that are told."""
    stretches = [Stretch(date(2026, 1, 5 + number), 1, each) for number, each in enumerate(log)]
    pace = pace_of(stretches)
    assert pace is not None
    assume(not pace.big)  # one big weekend is counted as the next biggest, which scipy knows not
    mean, deviation, many = statistics.fmean(log), statistics.stdev(log), len(log)
    t = float(stats.t.ppf(0.9, many - 1))
    low, middle, high = crossings(pace, left, 0.8)
    assert math.isclose(middle * mean, left)
    for days, sign in ((low, 1), (high, -1)):
        if days is not None:
            reach = sign * t * deviation * math.sqrt(days + days * days / many)
            assert math.isclose(mean * days + reach, left, rel_tol=1e-6)
    assert (high is None) == (mean <= t * deviation / math.sqrt(many))
