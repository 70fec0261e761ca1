"""The pace in words: the update post, the finish, the opening, what it takes."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

import pytest

from service.announce.pace_words import (
    UpdatePost,
    finish_words,
    needed_words,
    often_in_words,
    opening_day_words,
    pace_words,
    percent_in_words,
    update_words,
)
from service.chart.stitches import PageTold
from service.pace.entry import Details
from service.pace.estimate import Pace
from service.pace.forecast import Finish, NotEnough
from service.pace.progress import ChartProgress, PageProgress, PieceTotal, Since
from service.pace.rounds import Needed, Opening

NONE = Details()
FINISH = Finish(date(2026, 3, 27), date(2026, 3, 28), date(2026, 3, 30))
POST = UpdatePost(
    game="The harbour mystery",
    pages=(PageProgress(41, 3_412, 4_900),),
    chart=ChartProgress(0, 63, 3_412, 308_700),
    since=Since(
        date(2026, 3, 12),
        date(2026, 3, 25),
        (
            PieceTotal("", 3_412, NONE),
            PieceTotal("Basket", 0, NONE),
            PieceTotal("The winter runner", 1_260, NONE),
        ),
    ),
    finish=FINISH,
    confidence=0.8,
)


def test_the_paragraph_of_an_update_post() -> None:
    assert update_words(POST) == (
        "The harbour mystery: page 41 has 3,412 of 4,900 stitches, 69.6 %. The whole chart is at "
        "1.1 %. From Thursday 12 March to Wednesday 25 March 2026: 3,412 stitches on the mystery, "
        "1,260 on “The winter runner”, 4,672 in all; the mystery had 73 % of them, 244 a day. Page 41 "
        "should be finished around Saturday 28 March 2026; 8 times in 10 it is from Friday 27 March "
        "to Monday 30 March 2026."
    )


def test_a_post_without_other_pieces_or_a_forecast_says_less() -> None:
    alone = Since(date(2026, 3, 25), date(2026, 3, 25), (PieceTotal("", 1, NONE),))
    post = replace(POST, since=alone, finish=NotEnough("Nothing is logged."))
    words = update_words(post)
    assert words.endswith("On Wednesday 25 March 2026: 1 stitch on the mystery, 1 a day.")
    assert "finished" not in words


def test_a_post_of_days_without_stitches_says_so() -> None:
    idle = Since(date(2026, 3, 12), date(2026, 3, 25), (PieceTotal("", 0, NONE),))
    words = update_words(replace(POST, since=idle, finish=None))
    assert words.endswith("Nothing was stitched from Thursday 12 March to Wednesday 25 March 2026.")


def test_crosses_done_and_details_to_come_are_told() -> None:
    told = PageProgress(40, 4_900, 4_900, Details(backstitch=9), PageTold(backstitch=60, beads=8))
    words = update_words(replace(POST, details=(told,)))
    assert "page 40 has all its crosses, with backstitch and beads to come" in words
    done = update_words(replace(POST, pages=(PageProgress(41, 4_900, 4_900),)))
    assert "page 41 has all its 4,900 stitches" in done
    assert "finished" not in done


@pytest.mark.parametrize(
    ("finish", "words"),
    [
        (FINISH, "around Saturday 28 March 2026; 8 times in 10 it is from Friday 27 March to"),
        (replace(FINISH, latest=None), "hardly before Friday 27 March 2026, and no latest day can"),
        (Finish(*[date(2026, 3, 28)] * 3), "Page 41 should be finished on Saturday 28 March 2026."),
        (
            replace(FINISH, latest=date(2027, 1, 2)),
            "from Friday 27 March 2026 to Saturday 2 January 2027",
        ),
    ],
)
def test_a_finish_in_words(finish: Finish, words: str) -> None:
    assert words in finish_words("page 41", finish, 0.8)


@pytest.mark.parametrize(
    ("percent", "words"),
    [(0, "0 %"), (69.63, "69.6 %"), (99.99, "99.9 %"), (100, "100 %"), (12.3, "12.3 %")],
)
def test_only_what_is_done_is_100_percent(percent: float, words: str) -> None:
    assert percent_in_words(percent) == words


def test_a_confidence_in_words() -> None:
    assert [often_in_words(each) for each in (0.8, 0.5, 0.95)] == [
        "8 times in 10",
        "5 times in 10",
        "95 times in 100",
    ]


def test_the_opening_of_the_next_round_in_words() -> None:
    opening = Opening(date(2026, 3, 20), date(2026, 3, 24), date(2026, 3, 22), too_late=False)
    assert opening_day_words(opening) == (
        "Open the next round on Friday 20 March 2026, or at the latest on Tuesday 24 March 2026. "
        "Opened on the first of these days it closes on Sunday 22 March 2026."
    )
    only = replace(opening, latest=date(2026, 3, 20))
    assert opening_day_words(only) == (
        "Open the next round on Friday 20 March 2026. Opened then it closes on Sunday 22 March 2026."
    )
    late = replace(opening, latest=date(2026, 3, 18), too_late=True)
    assert "should have opened by Wednesday 18 March 2026" in opening_day_words(late)


def test_the_pace_in_words_says_what_is_to_be_minded() -> None:
    pace = Pace(341.5, 900, 9, 10, date(2026, 3, 16), (1.0,) * 7, big=True)
    words = pace_words(pace)
    assert "342 stitches a day" in words
    assert "from 10 days since Monday 16 March 2026" in words
    assert "One big weekend" in words
    assert "rough" in words
    assert "rough" not in pace_words(replace(pace, days=21, big=False))


def test_what_it_takes_in_words() -> None:
    told = Needed(date(2026, 3, 29), 1_488, 5, 297.6, 0.871)
    assert needed_words("page 41", told) == (
        "To finish page 41 by Sunday 29 March 2026 takes 298 stitches a day (1,488 in 5 days), "
        "0.9 times the pace of the last weeks."
    )
    assert needed_words("page 41", replace(told, times_the_pace=None)).endswith(
        "(1,488 in 5 days)."
    )
    assert needed_words("page 41", replace(told, stitches=0)) == "Page 41 has no stitches left."
