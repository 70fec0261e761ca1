"""The demo's results follow from the hand readings, by a small count that shares no code."""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass
from datetime import datetime
from typing import Any

import pytest

COLUMNS, ROWS = 9, 7
BOTH = [(number, when) for number in (1, 2, 3) for when in ("before_rulings", "after_rulings")]

Json = dict[str, Any]
Span = tuple[datetime, datetime]


@dataclass
class Told:
    """One comment as a person read it, with what the host ruled; the cause is worked out here."""

    place: int
    voter: str
    written: Span
    outcome: str
    reason: str | None
    pages: list[int]
    is_host: bool
    in_time: bool | None = None
    cause: str | None = None

    @property
    def page(self) -> int:
        return self.pages[0]


def _instant(text: str) -> datetime:
    return datetime.fromisoformat(text)


def _told(game: Json, expected: Json, number: int, when: str) -> list[Told]:
    hosts = set(game["game"]["hosts"])
    rulings = {one["place"]: one for one in game["rounds"][number - 1]["rulings"]}
    told = []
    for it in expected["rounds"][number - 1]["comments"]:
        one = Told(
            place=it["place"],
            voter=it["voter"],
            written=(_instant(it["written"][0]), _instant(it["written"][1])),
            outcome=it["reading"]["outcome"],
            reason=it["reading"]["reason"],
            pages=it["reading"]["pages"],
            is_host=bool({it["author"], it["voter"]} & hosts),
        )
        ruling = rulings.get(one.place)
        if ruling and when == "after_rulings":
            one.pages, one.in_time = ruling["pages"], ruling.get("in_time")
            one.outcome = "counts" if one.pages else "none"
        told.append(one)
    return told


def _cause_alone(one: Told, opens: datetime, closes: datetime, votable: list[int]) -> str | None:
    """The first cause that holds of a comment by itself, in the order in which they are asked."""
    earliest, latest = one.written
    straddles = earliest < opens <= latest or earliest < closes <= latest
    causes = [
        ("the host's own", one.is_host),
        ("before the opening", latest < opens),
        ("after the closing", earliest >= closes or (straddles and one.in_time is False)),
        ("cannot tell when", straddles and one.in_time is None),
        ("chooses no page", one.outcome == "none"),
        ("needs a look", one.outcome == "look"),
        ("page not votable", one.outcome == "counts" and one.page not in votable),
    ]
    return next((cause for cause, holds in causes if holds), None)


def _settled(game: Json, expected: Json, number: int, when: str) -> list[Told]:
    """Each comment with its cause; the ballots that stand have none."""
    rules = expected["rounds"][number - 1]
    told = _told(game, expected, number, when)
    for one in told:
        one.cause = _cause_alone(
            one, _instant(rules["opens"]), _instant(rules["closes"]), rules["votable"]
        )
    for voter in {one.voter for one in told}:
        own = sorted((it for it in told if it.voter == voter), key=lambda it: it.written)
        ballots = [it for it in own if it.cause is None]
        backs = [it for it in own if it.reason == "withdrawn" and it.cause == "chooses no page"]
        for it in ballots:
            if any(back.written[0] > it.written[1] for back in backs):
                it.cause = "withdrawn"
            elif it is not ballots[-1]:
                assert it.written[1] < ballots[-1].written[0], "nobody could tell which stands"
                it.cause = "another ballot stands"
    return told


def _joined(page: int) -> set[int]:
    row, column = divmod(page - 1, COLUMNS)
    around = [(row - 1, column), (row + 1, column), (row, column - 1), (row, column + 1)]
    return {r * COLUMNS + c + 1 for r, c in around if 0 <= r < ROWS and 0 <= c < COLUMNS}


def _votable(stitched: list[int]) -> list[int]:
    if not stitched:
        return list(range(1, COLUMNS * ROWS + 1))
    return sorted(set().union(*(_joined(page) for page in stitched)) - set(stitched))


def _looked_at(rule: str, page: int, ballots: list[Told], stitched: list[int]) -> Span | int:
    """What a tie-break looks at: the page that has the least of it is kept."""
    if rule == "most joined edges":
        return -len(_joined(page) & set(stitched))
    if rule == "reached first":
        mine = [it.written for it in ballots if it.page == page]
        return max(earliest for earliest, _ in mine), max(latest for _, latest in mine)
    assert rule == "lowest number"
    return page


def _kept(rule: str, tied: list[int], ballots: list[Told], stitched: list[int]) -> list[int]:
    values = {page: _looked_at(rule, page, ballots, stitched) for page in tied}
    spans = {page: value for page, value in values.items() if not isinstance(value, int)}
    if spans:
        surely = min(latest for _, latest in spans.values())
        return [page for page, (earliest, _) in spans.items() if earliest <= surely]
    figures = {page: value for page, value in values.items() if isinstance(value, int)}
    return [page for page in tied if figures[page] == min(figures.values())]


@pytest.mark.parametrize(("number", "when"), BOTH)
def test_each_comment_is_set_aside_by_the_cause_that_is_told(
    demo_game: Json, demo_expected: Json, number: int, when: str
) -> None:
    settled = _settled(demo_game, demo_expected, number, when)
    field = "cause" if when == "after_rulings" else "cause_before_rulings"
    told = [(it["place"], it[field]) for it in demo_expected["rounds"][number - 1]["comments"]]
    assert [(one.place, one.cause) for one in settled] == told


@pytest.mark.parametrize(("number", "when"), BOTH)
def test_the_tally_adds_up(demo_game: Json, demo_expected: Json, number: int, when: str) -> None:
    settled = _settled(demo_game, demo_expected, number, when)
    result = demo_expected["rounds"][number - 1][when]
    votes = Counter(one.page for one in settled if one.cause is None)
    ordered = sorted(votes.items(), key=lambda pair: (-pair[1], pair[0]))
    assert result["tally"] == [{"page": page, "votes": count} for page, count in ordered]
    assert result["ballots"] == sum(votes.values())
    voters = [one.voter for one in settled if one.cause is None]
    assert len(voters) == len(set(voters))
    looks = [one.place for one in settled if one.cause in {"needs a look", "cannot tell when"}]
    assert result["looks"] == looks


@pytest.mark.parametrize(("number", "when"), BOTH)
def test_the_tie_breaks_leave_the_winner(
    demo_game: Json, demo_expected: Json, number: int, when: str
) -> None:
    settled = _settled(demo_game, demo_expected, number, when)
    result = demo_expected["rounds"][number - 1][when]
    stitched = demo_expected["rounds"][number - 1]["stitched"]
    ballots = [one for one in settled if one.cause is None]
    most = result["tally"][0]["votes"]
    tied = [line["page"] for line in result["tally"] if line["votes"] == most]
    steps = []
    for rule in demo_game["rounds"][number - 1]["tie_breaks"]:
        if len(tied) > 1:
            kept = _kept(rule, tied, ballots, stitched)
            steps.append((rule, tied, kept))
            tied = kept
    assert [(one["rule"], one["tied"], one["kept"]) for one in result["steps"]] == steps
    assert tied == [result["winner"]]


@pytest.mark.parametrize(("number", "when"), BOTH)
def test_each_step_tells_what_it_looked_at(
    demo_game: Json, demo_expected: Json, number: int, when: str
) -> None:
    ballots = [one for one in _settled(demo_game, demo_expected, number, when) if one.cause is None]
    told = demo_expected["rounds"][number - 1]
    for step in told[when]["steps"]:
        assert sorted(step["values"]) == [str(page) for page in step["tied"]]
        for page in step["tied"]:
            value = _looked_at(step["rule"], page, ballots, told["stitched"])
            if isinstance(value, int):
                assert step["values"][str(page)] == str(abs(value))
            else:
                ends = step["values"][str(page)].split(" to ")
                assert (_instant(ends[0]), _instant(ends[-1])) == value


@pytest.mark.parametrize("number", [1, 2, 3])
def test_the_votable_pages_follow_from_those_stitched_or_in_hand(
    demo_game: Json, demo_expected: Json, number: int
) -> None:
    told = demo_expected["rounds"][number - 1]
    taken = [it["page"] for rules in demo_game["rounds"][:number] for it in rules["pages_before"]]
    assert told["stitched"] == sorted(taken)
    assert told["votable"] == _votable(told["stitched"])
    after = sorted([*told["stitched"], told["after_rulings"]["winner"]])
    assert told["next"] == {"stitched": after, "votable": _votable(after)}


def test_each_chosen_page_is_stitched_before_the_next_round(
    demo_game: Json, demo_expected: Json
) -> None:
    for chosen, rules in zip(demo_expected["rounds"], demo_game["rounds"][1:], strict=False):
        states = {it["page"]: it["state"] for it in rules["pages_before"]}
        assert states[chosen["after_rulings"]["winner"]] == "stitched"


def test_the_look_left_open_in_round_2_cannot_change_the_winner(demo_expected: Json) -> None:
    result = demo_expected["rounds"][1]["after_rulings"]
    first, second = (line["votes"] for line in result["tally"][:2])
    assert len(result["looks"]) == 1
    assert second + len(result["looks"]) < first
    assert result["looks_can_change"] is False


@pytest.mark.parametrize("number", [1, 3])
def test_no_look_is_left_open_where_the_top_is_tied(demo_expected: Json, number: int) -> None:
    told = demo_expected["rounds"][number - 1]
    assert told["after_rulings"]["looks"] == []
    assert told["after_rulings"]["steps"]
    assert told["before_rulings"]["looks_can_change"] is True


def test_the_rulings_of_round_1_change_its_winner(demo_expected: Json) -> None:
    told = demo_expected["rounds"][0]
    assert (told["before_rulings"]["winner"], told["after_rulings"]["winner"]) == (32, 41)
