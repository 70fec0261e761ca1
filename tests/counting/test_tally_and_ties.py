"""The tally, each tie-break and the chain; what the result says about them."""

from __future__ import annotations

from dataclasses import replace

import pytest

from service.chart.grid import Chart
from service.counting.acts import check_pick
from service.counting.count import count_round
from service.counting.result import Result
from service.counting.round import TIE_BREAKS, ReadComment, RoundInput, TieBreak
from service.counting.tiebreaks import RULES
from service.errors import BadRuling
from tests.counting.rounds import count, round_of, takes_back, vote

# The chart of these rounds:   1  2  3  4
#                              5  6  7  8
#                              9 10 11 12


def tie_of(*pages: int, at: float = 1) -> tuple[ReadComment, ...]:
    """One vote for each page, an hour apart from `at` on."""
    return tuple(vote(f"for {page}", page, at + place) for place, page in enumerate(pages))


def test_the_page_with_the_most_votes_wins() -> None:
    result = count(vote("a", 3), vote("b", 4), vote("c", 4))
    assert result.tally == ((4, 2), (3, 1))
    assert result.winner == 4
    assert result.steps == ()
    assert result.why == "Page 4 wins with 2 votes on 3 ballots."


def test_the_tally_lists_most_votes_first_and_then_by_page() -> None:
    result = count(*tie_of(9, 2, 7), vote("x", 7), vote("y", 12))
    assert result.tally == ((7, 2), (2, 1), (9, 1), (12, 1))


def test_a_ballot_of_several_pages_gives_each_of_them_one_vote() -> None:
    result = count(vote("a", (3, 4)), vote("b", (4, 5)), vote("c", 5), choices=2)
    assert result.tally == ((4, 2), (5, 2), (3, 1))


def test_votes_of_a_page_may_be_asked_for() -> None:
    result = count(vote("a", 3), vote("b", 3))
    assert (result.votes(3), result.votes(4)) == (2, 0)


@pytest.mark.parametrize(
    "comments",
    [
        pytest.param((), id="no comment"),
        pytest.param((vote("a", 3, 60),), id="only a late one"),
        pytest.param(
            (vote("a", 3, 1, voter="mo"), takes_back("b", 2, voter="mo")), id="taken back"
        ),
    ],
)
def test_without_a_ballot_there_is_no_winner(comments: tuple[ReadComment, ...]) -> None:
    result = count(*comments)
    assert (result.winner, result.undecided, result.tally, result.steps) == (None, (), (), ())
    assert result.why == "Nobody has chosen a page that could be chosen, so there is no winner."


def test_most_joined_edges_keeps_the_page_that_touches_most_stitched_pages() -> None:
    # 6 touches 2, 5 and 7; 3 touches 2 and 7; 9 touches 5.
    result = count(
        *tie_of(3, 6, 9), stitched=frozenset({2, 5, 7}), tie_breaks=("most joined edges",)
    )
    (step,) = result.steps
    assert (step.tied, step.kept) == ((3, 6, 9), (6,))
    assert step.values == ((3, "2"), (6, "3"), (9, "1"))
    assert step.why == "Page 6 touches 3 stitched pages, more than any other of them."
    assert result.winner == 6
    assert result.why == (
        "Page 6 wins with 1 vote on 3 ballots, after a tie with pages 3 and 9 broken by most "
        "joined edges."
    )


def test_most_joined_edges_does_not_count_corners_even_where_corners_join_pages() -> None:
    rules = replace(
        round_of().rules, stitched=frozenset({1, 11}), tie_breaks=("most joined edges",)
    )
    chart = Chart(4, 3, joined="edge or corner")
    result = count_round(RoundInput(chart, rules, tie_of(6, 10)))
    # 6 touches 1 and 11 by corners only, 10 touches 11 by an edge.
    assert result.steps[0].values == ((6, "0"), (10, "1"))
    assert result.steps[0].why == "Page 10 touches 1 stitched page, more than the other."


def test_most_joined_edges_may_keep_several_and_drop_the_rest() -> None:
    result = count(*tie_of(1, 3, 12), stitched=frozenset({2}), tie_breaks=("most joined edges",))
    assert result.steps[0].kept == (1, 3)
    assert result.steps[0].why == (
        "Pages 1 and 3 each touch 1 stitched page, more than any other of them."
    )
    assert result.undecided == (1, 3)


@pytest.mark.parametrize(
    ("pages", "stitched", "why"),
    [
        pytest.param(
            (1, 3), {2}, "Both of them touch 1 stitched page, so the tie stays.", id="two"
        ),
        pytest.param(
            (1, 3, 6), {2}, "All of them touch 1 stitched page, so the tie stays.", id="three"
        ),
        pytest.param(
            (1, 3), {}, "Neither of them touches a stitched page, so the tie stays.", id="none"
        ),
    ],
)
def test_most_joined_edges_says_where_the_tie_stays(
    pages: tuple[int, ...], stitched: set[int], why: str
) -> None:
    result = count(*tie_of(*pages), stitched=frozenset(stitched), tie_breaks=("most joined edges",))
    assert result.steps[0].why == why
    assert result.undecided == pages


def timed(**votes: float | tuple[float, float]) -> Result:
    """Votes by time: `p3_1=5` is the first vote for page 3, at hour 5."""
    comments = [vote(name, int(name[1:].split("_")[0]), at) for name, at in votes.items()]
    return count(*comments, tie_breaks=("reached first",))


def test_reached_first_keeps_the_page_whose_last_vote_came_first() -> None:
    result = timed(p3_1=1, p3_2=9, p4_1=5, p4_2=6)
    (step,) = result.steps
    assert step.kept == (4,)
    assert step.values == ((3, "2026-03-02T03:00:00Z"), (4, "2026-03-02T00:00:00Z"))
    assert step.why == "Page 4 reached that number of votes first."


def test_reached_first_decides_between_spans_that_do_not_meet() -> None:
    result = timed(p3_1=(1, 4), p4_1=(5, 9))
    assert result.winner == 3
    assert result.steps[0].values[1] == (4, "2026-03-01T23:00:00Z to 2026-03-02T03:00:00Z")


@pytest.mark.parametrize(
    "late", [(4, 9), (1, 2), (2, 3), (0, 40)], ids=["touching", "starting", "within", "around"]
)
def test_reached_first_leaves_a_tie_whose_times_cannot_be_told_apart(
    late: tuple[float, float],
) -> None:
    result = timed(p3_1=(1, 4), p4_1=late)
    assert result.undecided == (3, 4)
    assert result.steps[0].why == "Pages 3 and 4 cannot be told apart by time, so the tie stays."
    assert result.why == (
        "Pages 3 and 4 are tied with 1 vote on 2 ballots, and no tie-break of this round tells "
        "them apart: there is no winner."
    )


@pytest.mark.parametrize(
    ("one", "other"), [(4, (3, 6)), ((1, 4), (1, 4))], ids=["one exact", "the same span"]
)
def test_reached_first_calls_only_the_same_second_the_same_time(
    one: float | tuple[float, float], other: tuple[float, float]
) -> None:
    result = timed(p3_1=one, p4_1=other)
    assert result.steps[0].why == "Pages 3 and 4 cannot be told apart by time, so the tie stays."


def test_reached_first_leaves_a_tie_in_the_same_second() -> None:
    result = timed(p3_1=4, p4_1=4)
    assert result.undecided == (3, 4)
    assert result.steps[0].why == "Pages 3 and 4 reached it at the same time, so the tie stays."


def test_reached_first_drops_what_surely_came_later_and_keeps_the_rest() -> None:
    result = timed(p3_1=(1, 4), p4_1=(3, 6), p5_1=7)
    (step,) = result.steps
    assert step.kept == (3, 4)
    assert step.why == "Pages 3 and 4 cannot be told apart by time, so these stay tied."


def test_reached_first_looks_at_the_vote_that_made_the_total_only() -> None:
    # The first votes cannot be told apart, the second ones can.
    result = timed(p3_1=(1, 5), p3_2=8, p4_1=(1, 5), p4_2=7)
    assert result.winner == 4


def test_naming_the_page_again_does_not_make_it_reach_its_total_later() -> None:
    result = count(
        vote("a", 3, 1, voter="mo"),
        vote("b", 4, 2, voter="jo"),
        vote("c", 3, 9, voter="mo"),
        tie_breaks=("reached first",),
    )
    assert result.winner == 3


def test_a_voter_who_came_back_to_a_page_gives_the_vote_anew() -> None:
    result = count(
        vote("a", 3, 1, voter="mo"),
        vote("x", 5, 2, voter="mo"),
        vote("b", 4, 3, voter="jo"),
        vote("c", 3, 9, voter="mo"),
        tie_breaks=("reached first",),
    )
    assert result.winner == 4


def test_lowest_number_keeps_the_lowest() -> None:
    result = count(*tie_of(9, 4, 7), tie_breaks=("lowest number",))
    (step,) = result.steps
    assert (step.kept, step.values) == ((4,), ((4, "4"), (7, "7"), (9, "9")))
    assert step.why == "Page 4 has the lowest number."


def test_the_hosts_pick_is_waited_for() -> None:
    result = count(*tie_of(9, 4), tie_breaks=("host's pick", "lowest number"))
    assert result.winner is None
    assert result.undecided == (4, 9)
    (step,) = result.steps
    assert step.why == "The host has yet to pick: pages 4 and 9."
    assert result.why == (
        "Pages 4 and 9 are tied with 1 vote on 2 ballots, and the host has yet to pick one of them."
    )


def picked(page: int) -> Result:
    given = round_of(*tie_of(9, 4), tie_breaks=("host's pick", "lowest number"))
    return count_round(replace(given, host_pick=(page, " nearest the harbour ")))


def test_the_hosts_pick_decides_with_its_reason() -> None:
    result = picked(9)
    assert result.winner == 9
    (step,) = result.steps
    assert step.why == "The host picked page 9: nearest the harbour"
    assert step.values == ((9, "nearest the harbour"),)


def test_a_pick_that_is_not_among_the_tied_pages_is_not_taken_and_says_so() -> None:
    result = picked(5)
    assert result.undecided == (4, 9)
    assert result.steps[0].why == (
        "The host picked page 5, which is not among those tied: pick again from pages 4 and 9."
    )


def test_a_pick_is_not_asked_for_where_the_votes_or_an_earlier_rule_decide() -> None:
    given = round_of(*tie_of(9, 4), tie_breaks=("lowest number", "host's pick"))
    assert count_round(replace(given, host_pick=(9, "because"))).winner == 4
    given = round_of(*tie_of(9, 4), vote("more", 4), tie_breaks=("host's pick",))
    assert count_round(replace(given, host_pick=(9, "because"))).winner == 4


PICKS = {
    "not tied": (
        5,
        "so",
        (4, 9),
        "page 5 is not among the tied pages 4 and 9: pick one of those.",
    ),
    "no reason": (4, " ", (4, 9), "the host's pick has no reason: say in a few words why."),
    "no tie": (
        4,
        "so",
        (),
        "no tie waits for the host's pick: pick only where the count asks for it.",
    ),
}


@pytest.mark.parametrize(("page", "reason", "tied", "message"), PICKS.values(), ids=PICKS.keys())
def test_a_pick_that_cannot_be_is_refused(
    page: int, reason: str, tied: tuple[int, ...], message: str
) -> None:
    with pytest.raises(BadRuling) as refused:
        check_pick(page, reason, tied)
    assert str(refused.value) == message


def test_a_pick_among_the_tied_pages_with_a_reason_is_taken() -> None:
    check_pick(4, "nearest the harbour", (4, 9))


def test_the_chain_narrows_step_by_step_and_stops_where_one_page_is_left() -> None:
    result = count(
        *tie_of(12, 3, 1),
        stitched=frozenset({2}),
        tie_breaks=("most joined edges", "reached first", "lowest number", "host's pick"),
    )
    assert [(step.rule, step.tied, step.kept) for step in result.steps] == [
        ("most joined edges", (1, 3, 12), (1, 3)),
        ("reached first", (1, 3), (3,)),
    ]
    assert result.winner == 3
    assert result.why == (
        "Page 3 wins with 1 vote on 3 ballots, after a tie with pages 1 and 12 broken by most "
        "joined edges and reached first."
    )


def test_the_chain_follows_the_order_that_the_round_says() -> None:
    result = count(
        *tie_of(12, 3, 1), stitched=frozenset({2}), tie_breaks=("reached first", "lowest number")
    )
    assert result.winner == 12


def test_a_rule_that_narrowed_nothing_is_kept_as_a_step_but_not_said_to_have_broken_the_tie() -> (
    None
):
    result = count(*tie_of(3, 1), tie_breaks=("most joined edges", "lowest number"))
    assert [step.rule for step in result.steps] == ["most joined edges", "lowest number"]
    assert result.why == (
        "Page 1 wins with 1 vote on 2 ballots, after a tie with page 3 broken by lowest number."
    )


def test_without_a_tie_break_the_tie_stays_and_says_so() -> None:
    result = count(*tie_of(3, 1), tie_breaks=())
    assert result.undecided == (1, 3)
    assert result.why == (
        "Pages 1 and 3 are tied with 1 vote on 2 ballots, and no tie-break of this round tells "
        "them apart: there is no winner."
    )


@pytest.mark.parametrize("rule", TIE_BREAKS)
def test_every_tie_break_has_its_rule_and_names_itself(rule: TieBreak) -> None:
    result = count(*tie_of(3, 1), tie_breaks=(rule,))
    assert [step.rule for step in result.steps] == [rule]
    assert set(RULES) == set(TIE_BREAKS)
