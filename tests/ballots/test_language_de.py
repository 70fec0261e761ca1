"""German comments, as people write them under a video, read as any fair reader would."""

from __future__ import annotations

import pytest

from service.ballots.reader import read_vote
from service.ballots.reading import Question
from service.chart.grid import Chart

#: Nine pages across, seven down: 1 is top left, 9 top right, 55 bottom left, 63 bottom right.
ROUND = Question(Chart(9, 7), languages=("en", "fr", "de", "es", "it", "pt", "nl"))

COUNTS = {
    "a number with please": ("42 bitte", 42),
    "taken with its article": ("Ich nehme die 18", 18),
    "a page word": ("Seite 7 wäre toll", 7),
    "my vote goes to": ("Meine Stimme geht an die 33", 33),
    "a page word shortened": ("S. 29, danke dir!", 29),
    "a number word shortened": ("Nr. 14", 14),
    "the page word glued on": ("seite51 bitte bitte", 51),
    "a verb in two parts": ("Fang doch mit der 9 an", 9),
    "a hope": ("Ich hätte so gerne die 52 🙏", 52),
    "a tip": ("ich tippe auf 37", 37),
    "asked for nicely": ("Kann ich die 26 haben?", 26),
    "how about": ("Wie wär's mit 61?", 61),
    "for me": ("Moin! 19 für mich", 19),
    "it becomes": ("Bei mir wird es heute die 45", 45),
    "shouted": ("GANZ KLAR DIE 11", 11),
    "in one word": ("Zweiundvierzig!! 🧵", 42),
    "in three words": ("fünf und dreißig bitte", 35),
    "umlauts written out": ("dreiundfuenfzig, wie immer", 53),
    "after greetings": ("Hallo aus dem Norden, ich hätte gern die einundzwanzig", 21),
    "a round number in a word": ("sechzig", 60),
    "two, as said on the telephone": ("Seite zwoundzwanzig", 22),
    "an ordinal with a full stop": ("die 12. Seite", 12),
    "an ordinal in a word": ("zwölfte Seite, bitte", 12),
    "the last page": ("Die letzte Seite natürlich", 63),
    "the first page": ("Ganz klassisch mit der ersten Seite anfangen", 1),
    "a corner": ("oben links bitte", 1),
    "a corner, named": ("Unten rechts in der Ecke", 63),
    "a corner, the other way round": ("Ecke links unten", 55),
    "the middle": ("die Seite in der Mitte, bitte", 32),
    "the middle alone": ("Mitte!", 32),
    "a birthday beside it": ("17, weil meine Tochter am 3. Mai Geburtstag hat", 17),
    "an age beside it": ("Ich bin 58 und nehme die 23", 23),
    "years beside it": ("Ich sticke seit 40 Jahren, für mich die 8", 8),
    "weeks beside it": ("nur noch 2 Wochen bis zum Urlaub, daher die 51", 51),
    "a lucky number": ("meine Glückszahl ist die 13", 13),
    "corrected": ("12... ach nein, doch die 14", 14),
    "meant and not meant": ("Ich meinte 31, nicht 13", 31),
    "ruled out first": ("nicht die 13, lieber die 14", 14),
    "off the chart first": ("die 999 – Quatsch, die 9", 9),
    "instead of": ("ÄNDERUNG: 30 statt 20", 30),
    "another if it is gone": ("die 8, und falls die weg ist die 44", 8),
    "first and second choice": ("Erste Wahl 12, zweite Wahl 40", 12),
    "otherwise": ("27, sonst 28", 27),
    "one of two after all": ("14 oder 15, aber eher 14", 14),
    "praise of the last page": ("31 war toll, jetzt bitte 32", 32),
    "a husband overruled": ("mein Mann sagt 16, aber ich nehme die 20", 20),
    "together with her daughter": ("Meine Tochter und ich nehmen die 42", 42),
    "nobody has said it": ("48 hat noch keiner gesagt, also 48", 48),
    "in dialect": ("Griaß eich, i nimm de 44", 44),
    "in Swiss German": ("Grüezi mitenand, 44 bitte", 44),
    "asked formally": ("Könnten Sie mit der 17 anfangen?", 17),
    "one number mistyped": ("54, Entschuldigung, 44", 44),
    "a twelve": ("die 12er Seite", 12),
}  # fmt: skip

LOOKS = {
    "one or the other": ("12 oder 13", {12, 13}),
    "both": ("die 5 und die 6", {5, 6}),
    "a question": ("Ist die 42 schon weg?", {42}),
    "why all of them": ("Warum nehmen alle die 42?", {42}),
    "a grumble": ("alle nehmen die 42...", {42}),
    "about there": ("so um die 40 herum", {40}),
    "a range": ("zwischen 30 und 40", set()),
    "pointing": ("wie oben", set()),
    "an age not told": ("mein Alter", set()),
    "a kind": ("eine gerade Seite", set()),
    "below another": ("die unter der 12", {21}),
    "beside another": ("rechts neben der 20", {21}),
    "her husband's": ("mein Mann sagt 16", {16}),
    "agreement": ("Ich schließe mich der 12 an", {12}),
    "if it is free": ("ich wähl die 20, wenn sie noch frei ist", {20}),
    "a boast": ("Erste!", {1}),
    "a bare word of two languages": ("elf", {11}),
    "a doubt at the end": ("24 oder doch 25", {24, 25}),
    "a condition before it": ("wenn die 12 noch frei ist, dann die", {12}),
    "a product": ("7 mal 6", {42}),
    "somewhere in the middle": ("irgendeine aus der Mitte", {32}),
    "any corner": ("Hauptsache eine Ecke!", {1, 9, 55, 63}),
    "in the forties": ("irgendwas in den Vierzigern", set()),
    "somebody has perhaps said it": ("Hat jemand schon 42 gesagt?", {42}),
}

NONE = {
    "years of stitching": ("Ich sticke seit 30 Jahren und liebe deine Videos", "no-page"),
    "fabric and thread": ("Stickst du das auf 16 ct Aida mit 2 Fäden?", "no-page"),
    "cups": ("Habe heute schon 3 Tassen Kaffee getrunken", "no-page"),
    "left to the host": ("Such du aus!", "no-page"),
    "surprise": ("keine Ahnung, überrasch mich", "no-page"),
    "all but one": ("Alles außer 13", "no-page"),
    "all pages": ("63 Seiten, Wahnsinn!", "no-page"),
    "a date": ("Wir sehen uns am 4. Mai auf dem Markt", "no-page"),
    "a date that begins": ("Der 12. Mai ist mein letzter Arbeitstag, dann wird gestickt", "no-page"),
    "a time": ("Um 7 Uhr aufgestanden, nur für dein Video", "no-page"),
    "an episode": ("Bin seit Folge 12 dabei", "no-page"),
    "a thread": ("Garn 310 ist mir gestern ausgegangen", "no-page"),
    "chat": ("Was für ein wunderschönes Blau, ich bin ganz verliebt", "no-page"),
    "off the chart": ("Seite 99 bitte", "off-chart"),
    "off the chart in a word": ("vierundsechzig", "off-chart"),
    "not to be counted": ("bitte meine Stimme nicht zählen", "withdrawn"),
    "taken back": ("Ich ziehe meine Stimme zurück", "withdrawn"),
    "struck with its number": ("Meine 54 bitte streichen", "withdrawn"),
    "threads over threads": ("Stickt ihr mit 2 Fäden über 1?", "no-page"),
    "two ruled out": ("nicht die 13 oder 14", "no-page"),
}  # fmt: skip


@pytest.mark.parametrize(("text", "page"), COUNTS.values(), ids=COUNTS)
def test_a_german_choice_counts(text: str, page: int) -> None:
    reading = read_vote(text, ROUND)
    assert (reading.outcome, reading.pages) == ("counts", (page,)), reading.why


@pytest.mark.parametrize(("text", "pages"), LOOKS.values(), ids=LOOKS)
def test_a_german_comment_that_may_choose_is_looked_at(text: str, pages: set[int]) -> None:
    reading = read_vote(text, ROUND)
    assert (reading.outcome, set(reading.pages)) == ("look", pages), reading.why


@pytest.mark.parametrize(("text", "reason"), NONE.values(), ids=NONE)
def test_a_german_comment_that_chooses_nothing_is_none(text: str, reason: str) -> None:
    reading = read_vote(text, ROUND)
    assert (reading.outcome, reading.pages, reading.reason) == ("none", (), reason), reading.why


def test_german_is_read_in_an_english_round_when_it_is_plain() -> None:
    english = Question(Chart(9, 7))
    assert read_vote("dreiunddreißig bitte, liebe Grüße", english).pages == (33,)
    assert read_vote("Ich nehme die Seite oben rechts", english).pages == (9,)
