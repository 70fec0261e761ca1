"""Several numbers in one comment: which of them is chosen, in what order, and which only helps."""

from __future__ import annotations

import pytest

from service.ballots.reader import read_vote
from service.ballots.reading import Question
from service.chart.grid import Chart

CHART = Chart(9, 7)


def heard(text: str, choices: int = 1) -> str:
    reading = read_vote(text, Question(CHART, choices))
    pages = " ".join(map(str, reading.pages))
    return f"{reading.outcome} {pages or reading.reason or ''}".strip()


SUMS = {
    "five times five": "look 25",
    "nine less than thirty": "look 21",
    "60 divided by 4": "look 15",
    "7 plus 8, I did maths at school": "look 15",
    "We did it 3 times 2 summers ago and never again since then": "none no-page",
}
NUMBERED = {
    "1st: 33, 2nd: 8": "counts 33 8",
    "1) 33\n2) 8": "counts 33 8",
    "2nd: 8, 1st: 33": "counts 33 8",
    "33 first, 8 second": "counts 33 8",
    "8 is my second, 33 my first": "counts 33 8",
    "my two: 33 and 8": "counts 33 8",
    "1. love the lamp\n2. love the cat\n3. page 33": "counts 33",
}
TAKEN_BACK = {
    "swap my 12 for 21": "counts 21",
    "could you change my 12 to 21, ta": "counts 21",
    "moved my vote from 12 to 21": "counts 21",
    "12 looks nice, 21 looks nicer, so 21": "counts 21",
    "Not 12 or 21 please": "none no-page",
    "Twelve is dull. Not twelve. Thirty.": "counts 30",
    "640, sorry, sticky key, 40": "counts 40",
}
ASKED = {
    "21, or is that taken?": "look 21",
    "was 21 done already?": "look 21",
    "who knows what is on page 21, any idea": "look 21",
    "I agree with the lady who said 21": "look 21",
    "I'm with Bertrand, 21": "look 21",
    'The man next door wrote "21 please" on a card': "none no-page",
    "What count is that? 16 or 18?": "none no-page",
}
TOLD_BEFORE = {
    "I am 47, so that is my vote": "look 47",
    "We keep 5 hens and 9 ducks, so 14": "look 14",
    "If I had a vote I would say 30": "look 30",
    "The one with the owl please": "look",
    "My uncle's shoe size": "look",
    "row 3 column 6": "look 24",
    "one one three": "look 1 3",
    "20+20+1": "look 41",
    "It's 30 here and far too hot for wool": "none no-page",
    "The kids are 4, 7 and 11 now": "none no-page",
    "It was 2 for 1 at the market on Friday": "none no-page",
    "My frame is 24 by 18 inches": "none no-page",
    "6 please, or 15 if 6 has gone": "counts 6",
    "27\n*28": "counts 28",
    "8 because there are 8 of us": "counts 8",
}
OTHER = {
    "I am 5 foot 2 and cannot reach the top of the frame": "none no-page",
    "thx 4 the video": "none no-page",
    "we paid 9 crowns for soup in that harbour, NINE": "look 9",
    "number one in every harbour and still not tired of it": "look 1",
    "Lost 3-1 at home again, at least there is stitching": "none no-page",
    "Sowed 60 beans, 58 sprouted, rabbits had the rest by Sunday": "none no-page",
    "page 4 of 20 of the sampler on my own frame is done": "none no-page",
}
TWO = {
    "50 and 51. Sorry, not 51, I meant 53": "counts 50 53",
    "33 for me, 8 as reserve": "counts 33 8",
    "21, and if somebody's had it then 22": "counts 21 22",
    "bottom left and top right": "counts 55 9",
    "20, 30 or anything in the forties": "look 20 30",
}


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        *SUMS.items(),
        *TAKEN_BACK.items(),
        *ASKED.items(),
        *OTHER.items(),
        *TOLD_BEFORE.items(),
    ],
)
def test_one_choice_is_found_among_several_numbers(text: str, expected: str) -> None:
    assert heard(text) == expected


@pytest.mark.parametrize(("text", "expected"), [*NUMBERED.items(), *TWO.items()])
def test_two_choices_keep_the_order_that_is_told(text: str, expected: str) -> None:
    assert heard(text, choices=2) == expected
