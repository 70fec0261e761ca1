"""What holds for every round, whatever its comments."""

from __future__ import annotations

from dataclasses import replace
from random import Random

from hypothesis import given, settings
from hypothesis import strategies as st

from service.comments.spans import Span
from service.counting.count import count_round
from service.counting.round import TIE_BREAKS, ReadComment, RoundInput, RoundRules
from tests.counting.rounds import CHART, CLOSES, OPENS, comment, hour, reading, ruling, span, vote

LAW = settings(max_examples=200, deadline=None)

times = st.one_of(
    st.integers(-4, 54).map(lambda at: Span.at(hour(at))),
    st.tuples(st.integers(-4, 54), st.integers(0, 20)).map(lambda at: span(at[0], sum(at))),
)
pages = st.lists(st.integers(1, 13), min_size=1, max_size=3, unique=True)
readings = st.one_of(
    pages.map(lambda named: reading("counts", *named)),
    pages.map(lambda named: reading("counts", named[0])),
    pages.map(lambda named: reading("look", *named)),
    st.sampled_from([reading("none"), reading("none", reason="withdrawn")]),
)
rulings = st.lists(
    st.one_of(
        st.integers(1, 12).map(ruling),
        st.sampled_from(
            [ruling(), ruling(withdraws=True), ruling(in_time=True), ruling(in_time=False)]
        ),
    ),
    max_size=2,
)


@st.composite
def read_comments(draw: st.DrawFn) -> tuple[ReadComment, ...]:
    drawn = draw(
        st.lists(
            st.tuples(st.sampled_from(["mo", "jo", "lu", "bo", "al"]), readings, times, rulings),
            max_size=12,
        )
    )
    return tuple(
        replace(
            comment(f"c{place}", read, 0, *held, voter=voter, is_host=voter == "al"),
            written=written,
        )
        for place, (voter, read, written, held) in enumerate(drawn)
    )


@st.composite
def rounds(draw: st.DrawFn) -> RoundInput:
    rules = RoundRules(
        OPENS,
        draw(st.sampled_from([CLOSES, CLOSES, None])),
        draw(st.frozensets(st.integers(1, 12), min_size=5) | st.frozensets(st.integers(1, 12))),
        stitched=draw(st.frozensets(st.integers(1, 12), max_size=4)),
        choices=draw(st.integers(1, 3)),
        standing=draw(st.sampled_from(["latest", "first"])),
        tie_breaks=tuple(draw(st.lists(st.sampled_from(TIE_BREAKS), unique=True))),
    )
    pick = draw(st.none() | st.tuples(st.integers(1, 12), st.just("so")))
    return RoundInput(CHART, rules, draw(read_comments()), pick)


@LAW
@given(rounds(), st.randoms(use_true_random=False))
def test_the_order_of_comments_never_matters(given: RoundInput, random: Random) -> None:
    shuffled = list(given.comments)
    random.shuffle(shuffled)
    assert count_round(replace(given, comments=tuple(shuffled))) == count_round(given)


@LAW
@given(rounds())
def test_counted_and_set_aside_are_all_comments_each_once(given: RoundInput) -> None:
    result = count_round(given)
    keys = [ballot.key for ballot in result.ballots]
    keys += [aside.key for aside in result.set_aside]
    assert sorted(keys) == sorted(one.key for one in given.comments)


@LAW
@given(rounds())
def test_counting_twice_gives_the_same(given: RoundInput) -> None:
    assert count_round(given) == count_round(given)


@LAW
@given(rounds())
def test_no_voter_has_two_ballots_and_each_names_votable_pages_up_to_the_choices(
    given: RoundInput,
) -> None:
    result = count_round(given)
    voters = [ballot.voter for ballot in result.ballots]
    assert len(set(voters)) == len(voters)
    for ballot in result.ballots:
        assert 1 <= len(ballot.pages) <= given.rules.choices
        assert len(set(ballot.pages)) == len(ballot.pages)
        assert given.rules.votable.issuperset(ballot.pages)


@LAW
@given(rounds())
def test_the_votes_of_the_tally_are_the_pages_on_the_ballots(given: RoundInput) -> None:
    result = count_round(given)
    for page in CHART.pages:
        assert result.votes(page) == sum(page in ballot.pages for ballot in result.ballots)


@LAW
@given(rounds())
def test_every_chain_ends_with_a_winner_or_says_who_is_undecided(given: RoundInput) -> None:
    result = count_round(given)
    most = max((votes for _, votes in result.tally), default=0)
    leading = tuple(sorted(page for page, votes in result.tally if votes == most))
    if result.winner is not None:
        assert result.winner in leading
        assert not result.undecided
        assert f"Page {result.winner} wins" in result.why
    else:
        assert set(result.undecided) <= set(leading)
        assert bool(result.undecided) == bool(leading)
        assert "tied" in result.why or "no winner" in result.why
    tied = leading
    for step in result.steps:
        assert step.tied == tied
        assert step.kept
        assert set(step.kept) <= set(tied)
        tied = step.kept


@LAW
@given(rounds(), times)
def test_adding_a_vote_of_a_new_voter_for_the_winner_never_makes_it_lose(
    given: RoundInput, at: Span
) -> None:
    winner = count_round(given).winner
    if winner is None:
        return
    added = replace(vote("added", winner, voter="new"), written=at)
    assert count_round(replace(given, comments=(*given.comments, added))).winner == winner


@LAW
@given(rounds(), times, st.sampled_from(["mo", "jo", "lu", "bo"]))
def test_naming_the_winner_again_never_makes_it_lose_where_the_latest_stands(
    given: RoundInput, at: Span, voter: str
) -> None:
    given = replace(given, rules=replace(given.rules, standing="latest"))
    winner = count_round(given).winner
    if winner is None:
        return
    added = replace(vote("added", winner, voter=voter), written=at)
    again = count_round(replace(given, comments=(*given.comments, added)))
    if "added" in (look.key for look in again.looks):
        return  # Which of this voter's comments is the latest cannot be told: the host decides.
    assert again.winner == winner


@LAW
@given(rounds())
def test_comments_set_aside_on_their_own_account_leave_the_rest_as_it_is(
    given: RoundInput,
) -> None:
    result = count_round(given)
    alone = {"the host's own", "before the opening", "after the closing", "needs a look"}
    gone = {one.key for one in result.set_aside if one.cause in {*alone, "page not votable"}}
    kept = tuple(one for one in given.comments if one.key not in gone)
    without = count_round(replace(given, comments=kept))
    assert without.ballots == result.ballots
    assert without.why == result.why
