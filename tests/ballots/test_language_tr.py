"""Turkish comments in a round that has not switched Turkish on."""

from __future__ import annotations

import pytest

from tests.ballots.heard import heard

TURKISH = {
    "a number with please": ("42 lütfen", "counts 42"),
    "my vote to": ("oyum 42'ye", "counts 42"),
    "my vote to, without the mark": ("benim oyum 42ye", "counts 42"),
    "an ordinal with a full stop": ("42. sayfa", "counts 42"),
    "a number in two words": ("kırk iki", "counts 42"),
    "a number in one word": ("otuzbeş lütfen", "counts 35"),
    "words and good wishes": ("yirmi bir, kolay gelsin", "counts 21"),
    "dots dropped": ("elli alti olsun", "counts 56"),
    "a page": ("sayfa 17 olsun", "counts 17"),
    "a number word behind it": ("8 numara", "counts 8"),
    "I say": ("26 diyorum", "counts 26"),
    "chosen": ("ben 31'i seçiyorum", "counts 31"),
    "begin": ("9 ile başla", "counts 9"),
    "the last page": ("son sayfa", "counts 63"),
    "a corner": ("sol üst köşe", "counts 1"),
    "another corner": ("sağ alt köşe lütfen", "counts 63"),
    "the middle": ("ortadaki sayfa lütfen", "counts 32"),
    "an age beside it": ("58 yaşındayım, 23 seçiyorum", "counts 23"),
    "ruled out first": ("12 değil 14", "counts 14"),
    "a correction": ("12, yok yok 14 olsun", "counts 14"),
    "a lucky number": ("uğurlu sayım 7", "counts 7"),
    "one or the other": ("12 veya 13", "look 12 13"),
    "a question": ("42 alındı mı?", "look 42"),
    "everybody": ("herkes 42 diyor", "look 42"),
    "a range": ("30 ile 40 arası", "look"),
    "a husband overruled": ("eşim 16 diyor ama ben 20 diyorum", "counts 20"),
    "years of stitching": ("30 yıldır nakış işliyorum, çok güzel", "none no-page"),
    "cups of tea": ("bugün 3 bardak çay içtim", "none no-page"),
    "all but one": ("13 hariç hepsi", "none no-page"),
    "taken back": ("oyumu saymayın", "none withdrawn"),
    "off the chart": ("sayfa 99 lütfen", "none off-chart"),
}

ENGLISH = {
    "on": ("I'm on my second tea, 42 please", "counts 42"),
    "names": ("Kirk and Elli from the choir say hello, 42 please", "counts 42"),
    "bin": ("the bin lorry woke me. 42", "counts 42"),
}


@pytest.mark.parametrize(("text", "outcome"), TURKISH.values(), ids=TURKISH)
def test_a_turkish_comment_is_read(text: str, outcome: str) -> None:
    assert heard(text) == outcome


@pytest.mark.parametrize(("text", "outcome"), ENGLISH.values(), ids=ENGLISH)
def test_a_turkish_number_word_is_no_number_in_english(text: str, outcome: str) -> None:
    assert heard(text) == outcome
    assert heard(text, languages=("en",)) == outcome


@pytest.mark.parametrize("text", ["kırk iki", "42. sayfa lütfen"])
def test_turkish_is_read_in_an_english_round_too(text: str) -> None:
    assert heard(text, languages=("en",)) == "counts 42"
