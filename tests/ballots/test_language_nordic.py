"""Swedish, Danish, Norwegian and Finnish comments in a round that has none of them switched on."""

from __future__ import annotations

import pytest

from tests.ballots.heard import heard

SWEDISH = {
    "a vote": ("Jag röstar på 42", "counts 42"),
    "a number in a word": ("fyrtiotvå tack", "counts 42"),
    "a word and greetings": ("tjugoett, hälsningar från skärgården", "counts 21"),
    "a word in two": ("femtio sex, snälla", "counts 56"),
    "dots and rings dropped": ("attiotva? nej fyrtioatta tack", "counts 48"),
    "a number word": ("nummer 17 tack", "counts 17"),
    "a page": ("Jag väljer sidan 8", "counts 8"),
    "a page shortened": ("s. 29 snälla!", "counts 29"),
    "six": ("Hej! Sidan sex, tack så mycket", "counts 6"),
    "a proposal": ("Kan vi börja med 26?", "counts 26"),
    "the last page": ("sista sidan tack", "counts 63"),
    "a corner": ("övre vänstra hörnet", "counts 1"),
    "a corner, told longer": ("uppe till höger, tack", "counts 9"),
    "the middle": ("sidan i mitten", "counts 32"),
    "an age beside it": ("Jag är 58 och väljer 23", "counts 23"),
    "a correction": ("12, nej förresten 14", "counts 14"),
    "ruled out first": ("inte 13, utan 14", "counts 14"),
    "a lucky number": ("mitt lyckotal är 7", "counts 7"),
    "one or the other": ("jag tvekar, 12 eller 13", "look 12 13"),
    "a question": ("är 42 redan upptagen?", "look 42"),
    "everybody": ("alla väljer 42", "look 42"),
    "about there": ("runt 40 kanske, det blir bra", "look 40"),
    "praise of the last page": ("Sida 31 blev jättefin! Fortsätt med 32", "counts 32"),
    "a range": ("mellan 30 och 40", "look"),
    "a date": ("vi syns den 4 maj", "none no-page"),
    "years of stitching": ("Jag har broderat i 30 år och älskar era videor", "none no-page"),
    "hours": ("jag stod i kö i 2 timmar för det garnet", "none no-page"),
    "all but one": ("allt utom 13", "none no-page"),
    "taken back": ("räkna inte min röst", "none withdrawn"),
    "off the chart": ("sida 99 tack", "none off-chart"),
    "off the chart in a word": ("sjuttiofyra", "none off-chart"),
}

DANISH = {
    "sixty as Danes say it": ("side tres", "counts 60"),
    "fifty-two as Danes say it": ("tooghalvtreds, tak", "counts 52"),
    "in three words": ("to og fyrre tak", "counts 42"),
    "a word and greetings": ("enogtyve, hilsen fra Jylland", "counts 21"),
    "a vote": ("Jeg stemmer på 42", "counts 42"),
    "a number word": ("nummer 17 tak", "counts 17"),
    "a page": ("Jeg vælger side 8", "counts 8"),
    "four": ("Side fire, tak for en dejlig video", "counts 4"),
    "two": ("jeg tager nummer to", "counts 2"),
    "a proposal": ("må vi starte med 26?", "counts 26"),
    "the last page": ("sidste side tak", "counts 63"),
    "a corner": ("øverste højre hjørne", "counts 9"),
    "a corner, told longer": ("nederst til venstre, tak", "counts 55"),
    "the middle": ("siden i midten, tak", "counts 32"),
    "an age beside it": ("Jeg er 58 og vælger 23", "counts 23"),
    "a correction": ("12, nej vent, 14", "counts 14"),
    "ruled out first": ("ikke 13, men 14", "counts 14"),
    "a lucky number": ("mit lykketal er 7", "counts 7"),
    "one or the other": ("jeg kan ikke vælge, 12 eller 13", "look 12 13"),
    "a question": ("er 42 allerede taget?", "look 42"),
    "everybody": ("alle vælger 42", "look 42"),
    "years of stitching": ("Jeg har broderet i 30 år", "none no-page"),
    "cups of coffee": ("to kopper kaffe til mig i dag", "none no-page"),
    "cats": ("fire katte har jeg", "none no-page"),
    "a husband overruled": ("min mand siger 16 men jeg tager 20", "counts 20"),
    "an ordinal with a full stop": ("4. side tak", "counts 4"),
    "all but one": ("alt undtagen 13", "none no-page"),
    "taken back": ("tæl ikke min stemme", "none withdrawn"),
    "off the chart in a word": ("fireogtres", "none off-chart"),
}

NORWEGIAN = {
    "a vote": ("Jeg stemmer på 42", "counts 42"),
    "a number in a word": ("førtito takk", "counts 42"),
    "the old way of counting": ("to og førti, takk", "counts 42"),
    "a word and greetings": ("tjueén, hilsen fra Lofoten", "counts 21"),
    "seven, as it is said today": ("side femtisju takk", "counts 57"),
    "a number word": ("nummer 17 takk", "counts 17"),
    "a page": ("jeg velger side 8", "counts 8"),
    "a proposal": ("kan vi begynne med 26?", "counts 26"),
    "the last page": ("siste side takk", "counts 63"),
    "a corner": ("øverste venstre hjørne", "counts 1"),
    "a corner, told longer": ("nede til høyre, takk", "counts 63"),
    "a correction": ("12, nei vent, 14", "counts 14"),
    "ruled out first": ("ikke 13, men 14", "counts 14"),
    "a lucky number": ("lykketallet mitt er 7", "counts 7"),
    "an age beside it": ("Jeg er 58 år og velger 23", "counts 23"),
    "one or the other": ("jeg klarer ikke velge, 12 eller 13", "look 12 13"),
    "a question": ("er 42 allerede tatt?", "look 42"),
    "everybody": ("alle velger 42", "look 42"),
    "years of stitching": ("Jeg har brodert i 30 år", "none no-page"),
    "all but one": ("alt unntatt 13", "none no-page"),
    "taken back": ("ikke tell stemmen min", "none withdrawn"),
    "off the chart in a word": ("syttifire", "none off-chart"),
}

FINNISH = {
    "a vote": ("Äänestän 42", "counts 42"),
    "a page": ("sivu 17 kiitos", "counts 17"),
    "a number in a word": ("neljäkymmentäkaksi", "counts 42"),
    "as it is spoken": ("kakskytviis, terveisiä saaristosta", "counts 25"),
    "a round number": ("kolmekymmentä kiitos", "counts 30"),
    "chosen": ("Valitsen sivun 8", "counts 8"),
    "a number word": ("numero 26, kiitos", "counts 26"),
    "begin": ("aloita sivusta 9", "counts 9"),
    "the last page": ("viimeinen sivu", "counts 63"),
    "a corner": ("vasen yläkulma", "counts 1"),
    "another corner": ("oikea alakulma kiitos", "counts 63"),
    "the middle": ("keskimmäinen sivu kiitos", "counts 32"),
    "an age beside it": ("Olen 58 ja valitsen 23", "counts 23"),
    "ruled out first": ("ei 13 vaan 14", "counts 14"),
    "a correction": ("12, eikun 14", "counts 14"),
    "a lucky number": ("onnennumeroni on 7", "counts 7"),
    "one or the other": ("12 tai 13", "look 12 13"),
    "a question": ("onko 42 varattu?", "look 42"),
    "everybody": ("kaikki valitsevat 42", "look 42"),
    "years of stitching": ("olen kirjonut 30 vuotta", "none no-page"),
    "a range": ("30 ja 40 väliltä", "look"),
    "a date": ("nähdään 4. toukokuuta", "none no-page"),
    "all but one": ("kaikki paitsi 13", "none no-page"),
    "taken back": ("älä laske ääntäni", "none withdrawn"),
    "off the chart": ("sivu 99", "none off-chart"),
}

ENGLISH = {
    "to": ("to the moon with you! 42", "counts 42"),
    "fire": ("My fire is out and the tea is cold. 42", "counts 42"),
    "sex": ("is it the same sex as the other kitten? 42 please", "counts 42"),
    "ti": ("do re mi fa so la ti! 42", "counts 42"),
    "men": ("42 men in boats went past, 14 please", "counts 14"),
    "side": ("I like the left side best but I'll say 42", "counts 42"),
    "a foreign thank-you": ("42 please, and tusen takk for the lovely video", "counts 42"),
}


@pytest.mark.parametrize(("text", "outcome"), SWEDISH.values(), ids=SWEDISH)
def test_a_swedish_comment_is_read(text: str, outcome: str) -> None:
    assert heard(text) == outcome


@pytest.mark.parametrize(("text", "outcome"), DANISH.values(), ids=DANISH)
def test_a_danish_comment_is_read(text: str, outcome: str) -> None:
    assert heard(text) == outcome


@pytest.mark.parametrize(("text", "outcome"), NORWEGIAN.values(), ids=NORWEGIAN)
def test_a_norwegian_comment_is_read(text: str, outcome: str) -> None:
    assert heard(text) == outcome


@pytest.mark.parametrize(("text", "outcome"), FINNISH.values(), ids=FINNISH)
def test_a_finnish_comment_is_read(text: str, outcome: str) -> None:
    assert heard(text) == outcome


@pytest.mark.parametrize(("text", "outcome"), ENGLISH.values(), ids=ENGLISH)
def test_a_nordic_number_word_is_no_number_in_english(text: str, outcome: str) -> None:
    assert heard(text) == outcome
    assert heard(text, languages=("en",)) == outcome


@pytest.mark.parametrize("word", ["to", "fire", "en", "ti", "sex", "fem"])
def test_a_bare_word_that_is_mostly_something_else_never_counts(word: str) -> None:
    assert not heard(word).startswith("counts")


@pytest.mark.parametrize("text", ["fyrtiotvå tack", "to og fyrre tak", "førtito takk"])
def test_they_are_read_in_an_english_round_too(text: str) -> None:
    assert heard(text, languages=("en",)) == "counts 42"
