"""Counts against published worked elections.

Sources:
- The Tennessee capital example: Electowiki, "Effects of different voting systems under similar
  circumstances" (the four groups of voters, their preferences and the plurality winner). The
  totals for approval of the first two follow from the groups; that voters approve just their
  first two is an assumption from memory, not printed with the example.
- W3C Recommendation "Activity Vocabulary" (ActivityStreams 2.0, 23 May 2017), the poll in the
  section on Question, examples 191 and 192 of its test files: a question with `oneOf` two
  things, three replies, totals of 2 and 1, "by a 33% margin".
"""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

import pytest

from service.ballots.reading import Reading
from service.chart.grid import Chart
from service.comments.spans import Span
from service.counting.count import count_round
from service.counting.result import Result
from service.counting.round import ReadComment, RoundInput, RoundRules

OPENS = datetime(2026, 3, 1, 18, tzinfo=UTC)

MEMPHIS, NASHVILLE, CHATTANOOGA, KNOXVILLE = 1, 2, 3, 4
TENNESSEE = (
    (42, (MEMPHIS, NASHVILLE, CHATTANOOGA, KNOXVILLE)),
    (26, (NASHVILLE, CHATTANOOGA, KNOXVILLE, MEMPHIS)),
    (15, (CHATTANOOGA, KNOXVILLE, NASHVILLE, MEMPHIS)),
    (17, (KNOXVILLE, CHATTANOOGA, NASHVILLE, MEMPHIS)),
)


def poll(pages: int, choices: int, ballots: list[tuple[str, tuple[int, ...]]]) -> Result:
    rules = RoundRules(
        OPENS,
        OPENS + timedelta(days=1),
        frozenset(range(1, pages + 1)),
        choices=choices,
        tie_breaks=(),
    )
    comments = tuple(
        ReadComment(
            voter,
            voter,
            voter,
            Span.at(OPENS + timedelta(minutes=place)),
            Reading("counts", named, None, "a ballot"),
        )
        for place, (voter, named) in enumerate(ballots)
    )
    return count_round(RoundInput(Chart(pages, 1), rules, comments))


def tennessee(choices: int) -> Result:
    preferences = [order for voters, order in TENNESSEE for _ in range(voters)]
    return poll(
        4, choices, [(f"voter {n}", order[:choices]) for n, order in enumerate(preferences)]
    )


@pytest.mark.parametrize(
    ("choices", "votes", "winner"),
    [
        pytest.param(
            1,
            {MEMPHIS: 42, NASHVILLE: 26, CHATTANOOGA: 15, KNOXVILLE: 17},
            MEMPHIS,
            id="plurality",
        ),
        pytest.param(
            2,
            {MEMPHIS: 42, NASHVILLE: 68, CHATTANOOGA: 58, KNOXVILLE: 32},
            NASHVILLE,
            id="approval of the first two",
        ),
    ],
)
def test_the_tennessee_capital(choices: int, votes: dict[int, int], winner: int) -> None:
    result = tennessee(choices)
    assert dict(result.tally) == votes
    assert result.winner == winner
    assert len(result.ballots) == 100
    assert not result.steps


def test_the_poll_of_the_activity_vocabulary() -> None:
    arduino, raspberry_pi = 1, 2
    result = poll(2, 1, [("sally", (arduino,)), ("joe", (arduino,)), ("john", (raspberry_pi,))])
    assert result.tally == ((arduino, 2), (raspberry_pi, 1))
    assert len(result.ballots) == 3
    assert result.winner == arduino
    margin = (result.votes(arduino) - result.votes(raspberry_pi)) / len(result.ballots)
    assert f"{margin:.0%}" == "33%"


#: The same source, its table of the instant runoff: the rounds, and who was left in each.
RUNOFFS = (
    (frozenset({MEMPHIS, NASHVILLE, CHATTANOOGA, KNOXVILLE}), (42, 26, 15, 17)),
    (frozenset({MEMPHIS, NASHVILLE, KNOXVILLE}), (42, 26, 0, 32)),
    (frozenset({MEMPHIS, KNOXVILLE}), (42, 0, 0, 58)),
)


@pytest.mark.parametrize(("left", "votes"), RUNOFFS, ids=["round 1", "round 2", "round 3"])
def test_a_vote_among_fewer_pages_gives_the_rounds_of_the_instant_runoff(
    left: frozenset[int], votes: tuple[int, ...]
) -> None:
    preferences = [order for voters, order in TENNESSEE for _ in range(voters)]
    ballots = [tuple(page for page in order if page in left)[:1] for order in preferences]
    result = poll(4, 1, [(f"voter {n}", pages) for n, pages in enumerate(ballots)])
    assert tuple(result.votes(page) for page in (1, 2, 3, 4)) == votes
    assert result.winner == (KNOXVILLE if len(left) == 2 else MEMPHIS)
