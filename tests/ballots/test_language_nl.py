"""Dutch comments, as people write them under a video, read as any fair reader would."""

from __future__ import annotations

import pytest

from service.ballots.reader import read_vote
from service.ballots.reading import Question
from service.chart.grid import Chart

#: Nine pages across, seven down: 1 is top left, 9 top right, 55 bottom left, 63 bottom right.
ROUND = Question(Chart(9, 7), languages=("en", "fr", "de", "es", "it", "pt", "nl"))

COUNTS = {
    "a number with please": ("42 graag", 42),
    "do me": ("Doe mij maar pagina 18", 18),
    "a page word": ("Bladzijde 7 alsjeblieft", 7),
    "a vote": ("ik stem op 33", 33),
    "a page word shortened": ("blz. 29 aub", 29),
    "a number word shortened": ("nr 14 svp", 14),
    "the page word glued on": ("pagina51 graag", 51),
    "start with": ("Begin maar met de 9", 9),
    "a little number": ("nummertje 37 lijkt me leuk", 37),
    "asked for nicely": ("mag ik de 26?", 26),
    "what do you think of": ("Wat dacht je van 61?", 61),
    "for me": ("goedemorgen! de 19 voor mij", 19),
    "chosen": ("ik kies de 45", 45),
    "my vote goes to": ("Mijn stem gaat naar 11", 11),
    "it becomes": ("voor mij wordt het 38 deze keer", 38),
    "in one word": ("vierenveertig!", 44),
    "in three words": ("drie en vijftig dan maar", 53),
    "after greetings": ("eenentwintig, groetjes uit het noorden", 21),
    "a diaeresis": ("tweeëntwintig", 22),
    "a diaeresis dropped": ("tweeenzestig alsjeblieft", 62),
    "a round number in a word": ("zestig", 60),
    "an ordinal": ("de 12e pagina", 12),
    "an ordinal in a word": ("twaalfde bladzijde graag", 12),
    "the last page": ("de laatste bladzijde natuurlijk", 63),
    "the first page": ("gewoon met de eerste pagina beginnen", 1),
    "a corner in one word": ("linksboven graag", 1),
    "a corner, named": ("rechtsonder in de hoek", 63),
    "a corner, the other way round": ("de hoek linksonder", 55),
    "a corner in two words": ("rechts boven aub", 9),
    "the middle": ("het midden!", 32),
    "an age beside it": ("Ik ben 58 en ga voor 23", 23),
    "a birthday beside it": ("17, want mijn dochter is op 3 mei jarig", 17),
    "weeks beside it": ("nog 2 weken tot de vakantie, dus 51", 51),
    "a lucky number": ("mijn geluksgetal is 13", 13),
    "corrected": ("12... nee wacht, toch 14", 14),
    "meant and not meant": ("ik bedoelde 31, niet 13", 31),
    "ruled out first": ("niet 13 maar 14", 14),
    "instead of": ("EDIT: 30 in plaats van 20", 30),
    "another if it is gone": ("8, en als die al bezet is 44", 8),
    "first and second choice": ("eerste keus 12, tweede keus 40", 12),
    "otherwise": ("27, anders 28", 27),
    "praise of the last page": ("31 was mooi, nu graag 32", 32),
    "one of two after all": ("14 of 15, maar liever 14", 14),
    "a husband overruled": ("mijn man zegt 16, maar ik neem 20", 20),
    "together with her daughter": ("Mijn dochter en ik nemen 42", 42),
    "changed from one to another": ("Ik verander mijn stem van 54 naar 44", 44),
    "asked formally": ("Zou u met 17 kunnen beginnen?", 17),
    "as they say in Flanders": ("amai hoe schoon! 44 aub", 44),
    "one": ("pagina één graag", 1),
    "one number mistyped": ("20, nee 21", 21),
}  # fmt: skip

LOOKS = {
    "one or the other": ("12 of 13", {12, 13}),
    "both": ("de 5 en de 6", {5, 6}),
    "a question": ("is 42 al bezet?", {42}),
    "why all of them": ("waarom kiest iedereen 42?", {42}),
    "a grumble": ("iedereen kiest 42", {42}),
    "about there": ("ergens rond de 40", {40}),
    "a range": ("tussen 30 en 40", set()),
    "pointing": ("zelfde als hierboven", set()),
    "an age not told": ("mijn leeftijd", set()),
    "a kind": ("een even pagina", set()),
    "below another": ("die onder 12", {21}),
    "beside another": ("rechts van 20", {21}),
    "her husband's": ("mijn man zegt 16", {16}),
    "agreement": ("ik ben het eens met 12", {12}),
    "if it is free": ("25 als die nog vrij is", {25}),
    "a boast": ("Eerste!", {1}),
    "a bare word of two languages": ("elf", {11}),
    "a doubt at the end": ("24, of toch 25", {24, 25}),
    "a condition before it": ("als 12 nog vrij is dan die", {12}),
    "a product": ("6 keer 7", {42}),
    "somewhere in the middle": ("iets uit het midden", {32}),
    "somebody has perhaps said it": ("Heeft iemand al 42 gezegd?", {42}),
}

NONE = {
    "years of stitching": ("Ik borduur al 30 jaar en geniet van je video's", "no-page"),
    "fabric and thread": ("borduur je op 16 ct aida met 2 draadjes?", "no-page"),
    "cups": ("vandaag al 3 kopjes koffie op", "no-page"),
    "left to the host": ("kies jij maar", "no-page"),
    "surprise": ("verras me", "no-page"),
    "all but one": ("alles behalve 13", "no-page"),
    "all pages": ("63 pagina's, wat een project!", "no-page"),
    "a date": ("op 4 mei ga ik naar zee", "no-page"),
    "a time": ("om 7 uur opgestaan voor je video", "no-page"),
    "an episode": ("ik kijk al sinds aflevering 12", "no-page"),
    "shops": ("Er zijn hier op het eiland maar 2 winkels met garen", "no-page"),
    "chat": ("wat een prachtig blauw, ik word er stil van", "no-page"),
    "off the chart": ("pagina 99 graag", "off-chart"),
    "off the chart in a word": ("vierenzestig", "off-chart"),
    "not to be counted": ("tel mijn stem maar niet mee", "withdrawn"),
    "taken back": ("ik trek mijn stem in", "withdrawn"),
    "struck with its number": ("Schrap mijn 54 maar", "withdrawn"),
    "two ruled out": ("niet 13 of 14", "no-page"),
    "one of their own": ("een mooie video, wat een geduld", "no-page"),
}


@pytest.mark.parametrize(("text", "page"), COUNTS.values(), ids=COUNTS)
def test_a_dutch_choice_counts(text: str, page: int) -> None:
    reading = read_vote(text, ROUND)
    assert (reading.outcome, reading.pages) == ("counts", (page,)), reading.why


@pytest.mark.parametrize(("text", "pages"), LOOKS.values(), ids=LOOKS)
def test_a_dutch_comment_that_may_choose_is_looked_at(text: str, pages: set[int]) -> None:
    reading = read_vote(text, ROUND)
    assert (reading.outcome, set(reading.pages)) == ("look", pages), reading.why


@pytest.mark.parametrize(("text", "reason"), NONE.values(), ids=NONE)
def test_a_dutch_comment_that_chooses_nothing_is_none(text: str, reason: str) -> None:
    reading = read_vote(text, ROUND)
    assert (reading.outcome, reading.pages, reading.reason) == ("none", (), reason), reading.why


def test_dutch_is_read_in_an_english_round_when_it_is_plain() -> None:
    english = Question(Chart(9, 7))
    assert read_vote("drieëndertig graag, groetjes", english).pages == (33,)
    assert read_vote("ik neem de bladzijde rechtsboven", english).pages == (9,)
