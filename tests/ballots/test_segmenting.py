"""Words cut out of runs of Han characters, kana and Hangul, and letters of other scripts kept whole."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from service.ballots.cutting import HANGUL, RUNS, UNSPACED, cut_unspaced, words_of
from service.ballots.language import Language
from service.ballots.languages import LANGUAGES
from service.ballots.normal import plain_of
from service.ballots.reader import read_vote
from service.ballots.reading import Question
from service.ballots.scanning import Token, places_of, scan
from service.ballots.segmenting import segment
from service.chart.grid import Chart

CUT = {
    "Japanese": ("四十二番がいいです", "四十二 番 がいい です"),
    "Japanese with a word nobody knows": ("霧島番でお願いします", "霧島 番 で お願いします"),
    "a number is never parted": ("十二番目のページ", "十二 番目 の ページ"),
    "a long number is never parted": ("第一百二十页", "第 一百二十 页"),
    "the best is one word": ("一番好きです", "一番 好き です"),
    "a numeral in a word nobody knows": ("千鳥模様", "千鳥模様"),
    "Chinese": ("我投第十二页谢谢", "我 投 第 十二 页 谢谢"),
    "Chinese thirty minutes": ("三十分钟", "三十 分钟"),
    "Korean particles": ("오십육번으로해주세요", "오십육 번 으로 해주세요"),
    "Korean behind digits": ("42번이요", "42 번 이요"),
    "Korean unknown behind digits": ("42번홀릭", "42 번 홀릭"),
    "a Korean word with a number in it": ("선생님이십니다", "선생님이십니다"),
    "welcome is no fifty": ("오십시오", "오십시오"),
    "cross-stitch is no ten": ("십자수", "십자수"),
    "this time is no number two": ("이번에도", "이번에도"),
    "a long laugh": ("ㅋㅋㅋㅋㅋ42번ㅎㅎㅎ", "ㅋㅋ 42 번 ㅎㅎ"),
    "scripts side by side": ("42番please第三页", "42 番 please 第 三 页"),
}
WHOLE = {
    "Hindi vowel signs": ("पृष्ठ बयालीस", ["पृष्ठ", "बयालीस"]),
    "a Ukrainian apostrophe": ("п’ятдесят", ["п'ятдесят"]),
    "Arabic vowel points fall away": ("الصَّفْحَةُ", ["الصفحه"]),
    "Arabic letters as they are typed": ("أربعة اربعه", ["اربعه", "اربعه"]),
    "a stretched Arabic letter": ("صفحـــة", ["صفحه"]),
    "half-wide kana": ("ﾍﾟｰｼﾞ", ["ページ"]),
    "kana with its voice mark apart": ("ペーシ\u3099", ["ページ"]),
    "Korean letters apart": ("\u1107\u1165\u11ab", ["번"]),
    "waves strike nothing out": ("～～42～～", ["〜", "〜", "42", "〜", "〜"]),
}
EVIDENCE = {
    "Japanese": ("いつも楽しみです。第四十二ページで", "四十二"),
    "Korean": ("ㅋㅋㅋㅋ 이십칠번이요", "이십칠"),
    "Chinese wide digits": ("我投第１９页", "１９"),
    "half-wide kana before": ("ﾍﾟｰｼﾞ ８希望", "８"),
    "Hindi": ("पेज बयालीस कृपया", "बयालीस"),
    "Arabic with vowel points": ("الصَّفحَة ٤٢", "٤٢"),
    "Greek": ("Ψηφίζω το σαράντα δύο!", "σαράντα δύο"),
}


def words(text: str) -> list[str]:
    return [token.text for token in segment(scan(plain_of(text).text))]


def plain(text: str) -> str:
    return plain_of(text).text


@pytest.mark.parametrize(("text", "cut"), CUT.values(), ids=CUT)
def test_a_run_of_letters_is_cut_into_words(text: str, cut: str) -> None:
    assert words(text) == plain(cut).split()


@pytest.mark.parametrize(("text", "kept"), WHOLE.values(), ids=WHOLE)
def test_letters_with_their_marks_are_one_word(text: str, kept: list[str]) -> None:
    assert words(text) == kept


@pytest.mark.parametrize(("text", "spelled"), EVIDENCE.values(), ids=EVIDENCE)
def test_the_evidence_is_the_words_as_they_were_written(text: str, spelled: str) -> None:
    reading = read_vote(text, Question(Chart(9, 7)))
    assert [piece.text for piece in reading.evidence] == [spelled]
    assert text[reading.evidence[0].start : reading.evidence[0].end] == spelled


@pytest.mark.parametrize(
    "text", ["I vote for page 42, please!", "Grüße, die fünf 🙂", "", "12; 13?", "№ 7"]
)
def test_text_in_latin_letters_is_not_touched(text: str) -> None:
    tokens = scan(plain(text))
    assert segment(tokens) is tokens


@pytest.mark.parametrize(
    ("text", "asks"),
    [
        pytest.param("το 42 είναι πιασμένο;", True, id="Greek asks so"),
        pytest.param("taken 42; thanks", False, id="nobody else does"),
        pytest.param("страница 42; спасибо", False, id="Russian does not"),
    ],
)
def test_a_semicolon_asks_in_greek(text: str, asks: bool) -> None:  # noqa: FBT001 - a column
    assert ("?" in words(text)) is asks


@pytest.mark.parametrize("code", ["ja", "zh"])
def test_the_data_of_a_language_is_parted_as_its_comments_are(code: str) -> None:
    language = LANGUAGES[code]
    known = words_of(language)
    wrong = [
        phrase
        for group in Language.phrase_groups()
        for phrase in getattr(language, group)
        if all(UNSPACED.match(word) for word in phrase)
        and cut_unspaced("".join(phrase), known) != list(phrase)
    ]
    assert wrong == []


def test_every_korean_word_of_the_data_is_found_in_comments() -> None:
    language = LANGUAGES["ko"]
    wrong = {word for word in words_of(language) if HANGUL.match(word) and words(word) != [word]}
    assert wrong == set()


@pytest.mark.parametrize(("code", "frame"), [("ja", "私は{}ページです"), ("zh", "我投{}页")])
def test_every_number_word_is_cut_out_whole(code: str, frame: str) -> None:
    numerals = {word for word in LANGUAGES[code].numbers if UNSPACED.match(word)}
    wrong = {word for word in numerals if word not in words(frame.format(word))}
    # 一页 is "a page", and none of the others is cut.
    assert wrong <= {"一"}


LETTERS = st.text(alphabet="一二三十百番页のでがペー번이요십삼하a1 ;.π٤かき", max_size=40)


def spans(tokens: list[Token], text: str) -> list[int]:
    """Every offset that belongs to a token."""
    starts = places_of(tokens, text)
    return [
        at
        for start, token in zip(starts, tokens, strict=True)
        for at in range(start, start + token.size)
    ]


@settings(max_examples=200)
@given(LETTERS)
def test_the_pieces_cover_the_text_that_the_tokens_covered(text: str) -> None:
    tokens = scan(plain(text))
    covered = spans(tokens, plain(text))
    assert spans(segment(tokens), plain(text)) == covered
    # "1 1" is one token with its space.
    written = [at for at, letter in enumerate(plain(text)) if letter != " "]
    assert [at for at in covered if plain(text)[at] != " "] == written


@settings(max_examples=200)
@given(LETTERS)
def test_words_once_cut_are_not_cut_again(text: str) -> None:
    cut = [token.text for token in segment(scan(plain(text)))]
    again = [token.text for token in segment([*segment(scan(plain(text)))])]
    assert again == cut


@given(st.text(max_size=30))
def test_runs_leave_no_letter_out(text: str) -> None:
    assert "".join(RUNS.findall(text)) == text
