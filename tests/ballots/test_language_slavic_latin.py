"""Polish and Czech comments in a round that has neither of them switched on."""

from __future__ import annotations

import pytest

from tests.ballots.heard import heard

POLISH = {
    "a vote": ("Głosuję na 42", "counts 42"),
    "please, a page": ("poproszę stronę 17", "counts 17"),
    "a number in words": ("czterdzieści dwa", "counts 42"),
    "words and greetings": ("dwadzieścia jeden, pozdrowienia znad morza", "counts 21"),
    "accents dropped": ("piecdziesiat szesc poprosze", "counts 56"),
    "an ordinal": ("strona trzydziesta", "counts 30"),
    "an ordinal of two words": ("czterdziesta druga strona proszę", "counts 42"),
    "an ordinal, in its case": ("zacznijcie od strony dwunastej", "counts 12"),
    "a number's own noun": ("siódemka proszę", "counts 7"),
    "digits with an ending": ("biorę 8-kę", "counts 8"),
    "chosen": ("wybieram 8", "counts 8"),
    "a number word": ("nr 26 proszę", "counts 26"),
    "begin": ("zacznij od 9", "counts 9"),
    "a proposal": ("a może 61?", "counts 61"),
    "the last page": ("ostatnia strona", "counts 63"),
    "a corner": ("lewy górny róg", "counts 1"),
    "another corner": ("prawy dolny róg proszę", "counts 63"),
    "the middle": ("strona na środku, proszę", "counts 32"),
    "an age beside it": ("Mam 58 lat i wybieram 23", "counts 23"),
    "a correction": ("12, nie, jednak 14", "counts 14"),
    "ruled out first": ("nie 13, tylko 14", "counts 14"),
    "a lucky number": ("moja szczęśliwa liczba to 7", "counts 7"),
    "one or the other": ("12 albo 13", "look 12 13"),
    "a question": ("czy 42 jest już zajęta?", "look 42"),
    "everybody": ("wszyscy wybierają 42", "look 42"),
    "about there": ("gdzieś około 40", "look 40"),
    "a range": ("między 30 a 40", "look"),
    "praise of the last page": ("Strona 31 wyszła pięknie! Teraz 32", "counts 32"),
    "a husband overruled": ("mąż mówi 16, ale ja biorę 20", "counts 20"),
    "years of stitching": ("Haftuję od 30 lat, piękna praca", "none no-page"),
    "coffees": ("wypiłam dziś 3 kawy", "none no-page"),
    "all but one": ("wszystko oprócz 13", "none no-page"),
    "taken back": ("nie liczcie mojego głosu", "none withdrawn"),
    "off the chart": ("strona 99 proszę", "none off-chart"),
    "left to the host": ("wybierzcie same, wszystkie są piękne", "none no-page"),
}

CZECH = {
    "a vote": ("Hlasuju pro 42", "counts 42"),
    "please, a page": ("prosím stranu 17", "counts 17"),
    "a number in words": ("čtyřicet dva", "counts 42"),
    "the ones first": ("dvaačtyřicet prosím", "counts 42"),
    "the ones first, and greetings": ("jedenadvacet, zdravím z hor", "counts 21"),
    "accents dropped": ("padesat sest prosim", "counts 56"),
    "an ordinal": ("dvanáctá strana, prosím", "counts 12"),
    "an ordinal with a full stop": ("12. strana prosím", "counts 12"),
    "chosen": ("vybírám 8", "counts 8"),
    "a number word shortened": ("č. 26 prosím", "counts 26"),
    "begin": ("začni stránkou 9", "counts 9"),
    "the last page": ("poslední strana", "counts 63"),
    "a corner": ("levý horní roh", "counts 1"),
    "another corner": ("vpravo dole, prosím", "counts 63"),
    "a small number in a word": ("strana pět, děkuji", "counts 5"),
    "an age beside it": ("Je mi 58 a beru 23", "counts 23"),
    "a correction": ("12, ne, vlastně 14", "counts 14"),
    "ruled out first": ("ne 13, ale 14", "counts 14"),
    "a lucky number": ("moje šťastné číslo je 7", "counts 7"),
    "one or the other": ("12 nebo 13", "look 12 13"),
    "a question": ("je 42 už zabraná?", "look 42"),
    "everybody": ("všichni chtějí 42", "look 42"),
    "a range": ("mezi 30 a 40", "look"),
    "a husband overruled": ("manžel říká 16, ale já beru 20", "counts 20"),
    "forgotten": ("zapomeňte na můj hlas", "none withdrawn"),
    "years of stitching": ("Vyšívám už 30 let", "none no-page"),
    "all but one": ("všechno kromě 13", "none no-page"),
    "taken back": ("nepočítejte můj hlas", "none withdrawn"),
    "off the chart": ("strana 99 prosím", "none off-chart"),
}

ENGLISH = {
    "pet": ("42 for my pet", "counts 42"),
    "to": ("off to work now, 42", "counts 42"),
    "ten": ("ten please", "counts 10"),
    "sto": ("sto staring at me, cat. 42 please", "counts 42"),
}


@pytest.mark.parametrize(("text", "outcome"), POLISH.values(), ids=POLISH)
def test_a_polish_comment_is_read(text: str, outcome: str) -> None:
    assert heard(text) == outcome


@pytest.mark.parametrize(("text", "outcome"), CZECH.values(), ids=CZECH)
def test_a_czech_comment_is_read(text: str, outcome: str) -> None:
    assert heard(text) == outcome


@pytest.mark.parametrize(("text", "outcome"), ENGLISH.values(), ids=ENGLISH)
def test_a_slavic_word_is_no_number_in_english(text: str, outcome: str) -> None:
    assert heard(text) == outcome
    assert heard(text, languages=("en",)) == outcome


def test_this_in_polish_and_czech_is_not_ten() -> None:
    assert heard("ten wzór jest piękny, dziękuję") == "none no-page"
    assert heard("ten vzor je krásný, děkuji") == "none no-page"
