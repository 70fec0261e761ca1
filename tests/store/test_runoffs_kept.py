"""Runoffs and draws in the store: how they open, what they decide, what is refused."""

from __future__ import annotations

import json
from datetime import datetime

import pytest
from verifying.report import check

from service.counting.round import Ruling, TieBreak
from service.counting.sources import DrawSource, Told, commitment_of
from service.errors import BadDraw, BadRules, ClosesBeforeOpening, WrongState
from service.mystery.answer import Answer
from service.mystery.seal import draw_value_of
from service.store.announcing import announce_round, revise_round
from service.store.answers import seal_answer
from service.store.counting import count_stored
from service.store.database import Database
from service.store.draws import tell_source
from service.store.games import game_named, page_states
from service.store.opening import open_round
from service.store.revisions import revisions_of
from service.store.round_rules import DraftRules
from service.store.rounds import change_draft, chosen_last, close_round, draft_round, rules_of
from service.store.runoffs import RunoffTimes, draft_runoff
from service.store.tables import RoundRow
from service.store.tables_counting import DrawValueRow
from tests.store.handing_in import OPENS, after, comment, delivery, handed_in, open_first_round
from tests.store.playing import announced, closed, found, kept, rule

CHAIN: tuple[TieBreak, ...] = ("runoff", "lowest number")
TIED = [comment("Maren", "13"), comment("Tove", "21"), comment("Odd", "2 or 40")]
SALT = bytes(range(32))


def tied_round(database: Database, game: str, chain: tuple[TieBreak, ...] = CHAIN) -> None:
    """Round 1, closed with pages 13 and 21 tied."""
    open_first_round(database, game, DraftRules(opens=OPENS, tie_breaks=chain))
    handed_in(database, game, delivery(TIED))
    rule(database, game, "2 or 40", Ruling((), "she only thinks aloud", after(20)))
    closed(database, game)


def drafted(database: Database, game: str, times: RunoffTimes | None = None) -> int:
    with database.writing() as session:
        row = found(session, game)
        return draft_runoff(session, *row, times or RunoffTimes(), after(50)).number


def opened(database: Database, game: str, number: int) -> None:
    with database.writing() as session:
        open_round(session, *found(session, game, number), after(51))


def played(database: Database, game: str, number: int, *words: str, announces: bool = True) -> None:
    """The round of that number from its opening to its announcement."""
    opened(database, game, number)
    said = [comment(f"viewer {place}", text, 52 + place) for place, text in enumerate(words)]
    handed_in(database, game, delivery(said, copied=60), number)
    with database.writing() as session:
        close_round(session, found(session, game, number)[1], after(62), after(63))
    if announces:
        with database.writing() as session:
            row = found(session, game, number)
            announce_round(session, *row, keeps_in_hand=False, now=after(64))


def test_a_runoff_is_a_round_among_just_the_tied_pages_by_the_rules_that_follow(
    database: Database, game: str
) -> None:
    tied_round(database, game)
    number = drafted(database, game)
    opened(database, game, number)
    row = kept(database, game, number)
    assert (row.number, row.runoff_of, row.votable) == (2, 1, [13, 21])
    assert (row.choices, row.tie_breaks, row.state) == (1, ["lowest number"], "open")
    assert row.why == "Pages 13 and 21 are tied in round 1, and this runoff is among them."


def test_announcing_the_runoff_announces_the_round_whose_tie_it_breaks(
    database: Database, game: str
) -> None:
    tied_round(database, game)
    played(database, game, drafted(database, game), "21", "21", "13", "2")
    first, second = kept(database, game, 1), kept(database, game, 2)
    assert (first.state, second.state) == ("announced", "announced")
    assert first.result is not None
    assert first.result["winner"] == 21
    [step] = first.result["steps"]
    assert step["why"] == "Page 21 won the runoff, round 2, with 2 votes."
    with database.reading() as session:
        row = game_named(session, game)
        assert page_states(session, row).in_hand == (21,)
        records = [
            json.loads(revisions_of(session, found(session, game, number)[1])[0].record or "")
            for number in (1, 2)
        ]
    assert [check(one).troubles for one in records] == [(), ()]
    report = check(records[0]).with_runoff(records[0], records[1], check(records[1]))
    assert report.troubles == ()
    assert records[0]["runoff"]["digest"] == records[1]["digest"]


def test_a_tie_in_the_runoff_is_broken_by_the_rest_of_the_chain(
    database: Database, game: str
) -> None:
    tied_round(database, game)
    played(database, game, drafted(database, game), "21", "13")
    result = kept(database, game).result
    assert result is not None
    assert result["winner"] == 13


def test_a_runoff_in_which_nobody_votes_leaves_it_to_the_rest_of_the_chain(
    database: Database, game: str
) -> None:
    tied_round(database, game)
    played(database, game, drafted(database, game))
    result = kept(database, game).result
    assert result is not None
    assert [step["rule"] for step in result["steps"]] == ["runoff", "lowest number"]
    assert result["winner"] == 13


def test_a_round_drafted_ahead_does_not_stand_in_the_runoff_s_way(
    database: Database, game: str
) -> None:
    open_first_round(database, game, DraftRules(opens=OPENS, tie_breaks=CHAIN))
    with database.writing() as session:
        ahead = draft_round(session, game_named(session, game), DraftRules(), OPENS)
        assert ahead.number == 2
    handed_in(database, game, delivery(TIED[:2]))
    closed(database, game)
    with pytest.raises(WrongState, match="announce it first"):
        opened(database, game, 2)
    number = drafted(database, game)
    assert number == 3
    played(database, game, number, "21")
    with database.reading() as session:
        assert chosen_last(session, game_named(session, game)) == 21
    opened(database, game, 2)
    assert kept(database, game, 2).previous == 21


def test_no_second_runoff_while_one_is_held(database: Database, game: str) -> None:
    tied_round(database, game)
    drafted(database, game)
    with pytest.raises(
        WrongState, match="round 1 is in a runoff and cannot be given another: go on with round 2"
    ):
        drafted(database, game)


def test_the_tied_round_waits_for_its_runoff(database: Database, game: str) -> None:
    tied_round(database, game)
    with pytest.raises(WrongState, match="a runoff is to be held among pages 13 and 21"):
        announced(database, game)


def test_a_round_without_a_tie_or_without_that_rule_has_no_runoff(
    database: Database, game: str
) -> None:
    open_first_round(database, game, DraftRules(opens=OPENS, tie_breaks=CHAIN))
    handed_in(database, game, delivery(TIED[:1]))
    with pytest.raises(WrongState, match="close it first"):
        drafted(database, game)
    closed(database, game)
    with pytest.raises(WrongState, match="without a tie that waits"):
        drafted(database, game)


def test_a_chain_without_a_runoff_has_none(database: Database, game: str) -> None:
    tied_round(database, game, ("lowest number",))
    with pytest.raises(BadRules, match="have no runoff"):
        drafted(database, game)


def test_a_look_that_could_change_the_tie_stops_the_runoff(database: Database, game: str) -> None:
    open_first_round(database, game, DraftRules(opens=OPENS, tie_breaks=CHAIN))
    handed_in(database, game, delivery(TIED))
    closed(database, game)
    with pytest.raises(WrongState, match="could change who is tied"):
        drafted(database, game)


def test_of_a_runoff_only_times_and_sources_may_be_changed(database: Database, game: str) -> None:
    tied_round(database, game)
    number = drafted(database, game)
    with database.writing() as session:
        row = found(session, game, number)
        rules = rules_of(row[1])
        later = DraftRules(**{name: getattr(rules, name) for name in rules.__slots__} | {
            "closes": after(90)})  # fmt: skip
        change_draft(session, *row, later)
    with pytest.raises(BadRules, match="whose rules it goes by"), database.writing() as session:
        change_draft(session, *found(session, game, number), DraftRules(choices=2))


def test_a_runoff_counted_again_counts_its_first_round_again(database: Database, game: str) -> None:
    tied_round(database, game)
    number = drafted(database, game)
    played(database, game, number, "21", "21", "13")
    late = [comment("Liv", "13", 53), comment("Rakul", "13", 54)]
    handed_in(database, game, delivery(late, copied=60), number)
    with database.writing() as session:
        revise_round(session, *found(session, game, number), "a late export", after(70))
    with database.reading() as session:
        first = list(revisions_of(session, found(session, game, 1)[1]))
    assert [one.result["winner"] for one in first] == [21, 13]
    assert first[1].reason == "round 2, its runoff, was counted again: a late export"


DRAWN: tuple[TieBreak, ...] = ("draw",)
LOTTERY = DrawSource("the island lottery of 4 March", after(60))


def sealed(database: Database, game: str) -> None:
    with database.writing() as session:
        answer = Answer("The Tarnished Astrolabe", "Wenna Quarmby", ())
        seal_answer(session, game_named(session, game), answer, SALT, OPENS)


def drawing(
    database: Database, game: str, *sources: DrawSource, closes: datetime | None = None
) -> None:
    rules = DraftRules(opens=OPENS, closes=closes, tie_breaks=DRAWN, sources=sources)
    open_first_round(database, game, rules)
    handed_in(database, game, delivery(TIED[:2]))


def tell(database: Database, game: str, told: Told, place: int = 1, hours: float = 61) -> None:
    with database.writing() as session:
        tell_source(session, *found(session, game), place, told, after(hours))


def test_the_own_value_comes_from_the_seal_s_salt_and_is_committed_at_the_opening(
    database: Database, game: str
) -> None:
    sealed(database, game)
    drawing(database, game)
    value = draw_value_of(SALT, game, 1)
    assert kept(database, game).commitment == commitment_of(value)
    closed(database, game)
    announced(database, game)
    with database.reading() as session:
        text = revisions_of(session, found(session, game)[1])[0].record or ""
    told = json.loads(text)
    assert check(told).troubles == ()
    assert told["draw"]["value"] == value.hex()
    assert told["result"]["winner"] in (13, 21)
    assert SALT.hex() not in text
    assert "astrolabe" not in text.casefold()


def test_a_game_without_an_answer_draws_by_a_value_of_chance(database: Database, game: str) -> None:
    drawing(database, game)
    with database.reading() as session:
        kept_value = session.get(DrawValueRow, found(session, game)[1].id)
    assert kept_value is not None
    assert len(kept_value.value) == 32
    assert kept(database, game).commitment == commitment_of(kept_value.value)


def test_before_the_closing_the_own_value_draws_nothing(database: Database, game: str) -> None:
    drawing(database, game, closes=after(48))
    with database.reading() as session:
        counted = count_stored(session, *found(session, game))
    assert counted.round_input.drawn.value is None
    assert counted.result.winner is None


def test_the_numbers_of_a_source_draw_once_they_are_told(database: Database, game: str) -> None:
    drawing(database, game, LOTTERY)
    with pytest.raises(WrongState, match="close it first"):
        tell(database, game, Told(("4",)))
    closed(database, game)
    with pytest.raises(WrongState, match="waits for the numbers of the island lottery of 4 March"):
        announced(database, game)
    tell(database, game, Told(("9", "4")))
    tell(database, game, Told(("9", "5"), "a slip of typing"), hours=62)
    announced(database, game)
    with database.reading() as session:
        told = json.loads(revisions_of(session, found(session, game)[1])[0].record or "")
    assert check(told).troubles == ()
    assert told["draw"]["key"] == "5.9./"
    assert told["draw"]["value"] is None


def test_a_cancelled_source_is_left_out_for_its_reason(database: Database, game: str) -> None:
    drawing(database, game, LOTTERY)
    closed(database, game)
    tell(database, game, Told((), "the drum broke"))
    announced(database, game)
    with database.reading() as session:
        told = json.loads(revisions_of(session, found(session, game)[1])[0].record or "")
    assert told["draw"]["sources"][0]["left_out"] == "the drum broke"
    assert told["draw"]["value"] is not None
    assert check(told).troubles == ()


@pytest.mark.parametrize("place", [0, 2])
def test_a_source_that_was_not_named_is_not_added(
    database: Database, game: str, place: int
) -> None:
    drawing(database, game, LOTTERY)
    closed(database, game)
    with pytest.raises(BadDraw, match="none is added afterwards"):
        tell(database, game, Told(("4",)), place)


def test_a_reason_about_a_source_tells_no_answer(database: Database, game: str) -> None:
    sealed(database, game)
    drawing(database, game, LOTTERY)
    closed(database, game)
    with pytest.raises(BadRules, match="gives the sealed answer"):
        tell(database, game, Told((), "the tarnished astrolabe broke"))


BAD_DRAFTS: dict[str, tuple[DraftRules, str]] = {
    "sources without a draw": (DraftRules(sources=(LOTTERY,)), "no tie-break is a draw"),
    "a draw after a runoff": (
        DraftRules(tie_breaks=("runoff", "draw"), sources=(LOTTERY,)),
        "name its sources when the runoff is drafted",
    ),
    "known before the closing": (
        DraftRules(closes=after(61), tie_breaks=DRAWN, sources=(LOTTERY,)),
        "are known before the voting ends",
    ),
}


@pytest.mark.parametrize(("rules", "says"), BAD_DRAFTS.values(), ids=BAD_DRAFTS.keys())
def test_sources_that_do_not_fit_the_rules_are_refused(
    database: Database, game: str, rules: DraftRules, says: str
) -> None:
    with pytest.raises(BadDraw, match=says), database.writing() as session:
        draft_round(session, game_named(session, game), rules, OPENS)


def test_a_chain_that_ends_in_a_runoff_is_refused(database: Database, game: str) -> None:
    rules = DraftRules(tie_breaks=("lowest number", "runoff"))
    with pytest.raises(BadRules, match="ends with 'runoff'"), database.writing() as session:
        draft_round(session, game_named(session, game), rules, OPENS)


def test_the_times_of_a_runoff_are_checked(database: Database, game: str) -> None:
    tied_round(database, game)
    with pytest.raises(ClosesBeforeOpening):
        drafted(database, game, RunoffTimes(opens=after(60), closes=after(59)))
    with database.reading() as session:
        assert isinstance(found(session, game)[1], RoundRow)
