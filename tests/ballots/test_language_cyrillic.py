"""Russian and Ukrainian comments, as people write them, read as any fair reader would."""

from __future__ import annotations

import pytest

from tests.ballots.heard import heard

RUSSIAN = {
    "a vote for": ("голосую за 42", "counts 42"),
    "a page word cut short": ("стр. 17 пож", "counts 17"),
    "begin with a page": ("Начните с 8 страницы, пожалуйста 🙏", "counts 8"),
    "an ordinal ending": ("42-ю давайте", "counts 42"),
    "a number of the voice": ("мой голос за номер 51", "counts 51"),
    "an ordinal with a page word": ("Выбираю сорок вторую страницу!", "counts 42"),
    "a bare number word": ("Двадцать семь", "counts 27"),
    "a greeting from home": ("пятьдесят шесть, привет из Карелии", "counts 56"),
    "an ordinal in one word": ("Четырнадцатая страница пожалуйста", "counts 14"),
    "the number sign": ("№33 спасибо!", "counts 33"),
    "which one in a word": ("Хочу тридцать первую", "counts 31"),
    "the last page": ("последнюю страницу, люблю начинать с конца", "counts 63"),
    "a corner": ("правый верхний угол", "counts 9"),
    "a little corner": ("левый нижний уголок, пожалуйста", "counts 55"),
    "the very middle": ("страница в самой середине", "counts 32"),
    "a correction": ("12, ой нет, 21", "counts 21"),
    "one ruled out": ("только не 13! давайте 44", "counts 44"),
    "an age beside": ("мне 38 лет, мой выбор 5", "counts 5"),
    "a lucky number": ("Моё счастливое число 7", "counts 7"),
    "other counts beside": (
        "Смотрю вас 3 года, шью уже 2 процесса. Мой номер 60",
        "counts 60",
    ),
    "in Latin letters": ("stranitsa 42 pozhaluista", "counts 42"),
    "a number word in Latin letters": ("sorok dva, spasibo za video", "counts 42"),
    "if possible": ("если можно, 19", "counts 19"),
    "let it be": ("Пусть будет 25 🎲", "counts 25"),
    "I think": ("Думаю, 36", "counts 36"),
    "shouted": ("ВОСЕМНАДЦАТЬ!!!", "counts 18"),
    "which one alone": ("шестьдесят третью", "counts 63"),
    "the first page": ("первая страница", "counts 1"),
    "how about": ("А давайте 48?", "counts 48"),
    "a second choice": ("12, а если занята, то 13", "counts 12"),
    "yo with and without dots": ("четвёртую страницу", "counts 4"),
    "either of two": ("12 или 13", "look 12 13"),
    "two at once": ("12 и 40 пожалуйста", "look 12 40"),
    "a question": ("а 42 уже занята?", "look 42"),
    "a range": ("от 30 до 40", "look"),
    "pointing": ("то же самое, что и выше", "look"),
    "the husband's": ("муж говорит 15", "look 15"),
    "a kind": ("любую чётную", "look"),
    "below a page": ("страница под 12", "look 21"),
    "about there": ("где-то около 40", "look 40"),
    "a boast": ("Первая! 😄", "look 1"),
    "years of stitching": (
        "Вышиваю уже 20 лет, а такой красоты не видела",
        "none no-page",
    ),
    "an age": ("Мне 62 года", "none no-page"),
    "fabric and thread": ("на канве 18 каунт в 2 нити", "none no-page"),
    "left to the host": ("что угодно, на ваш выбор", "none no-page"),
    "all but one": ("кроме 13", "none no-page"),
    "taken back": ("не учитывайте мой голос", "none withdrawn"),
    "no such page": ("страница 99 пожалуйста", "none off-chart"),
    "a clock": ("Смотрела в 23:40, уснула", "none no-page"),
    "skeins and kits": ("купила 3 набора и 5 мотков мулине", "none no-page"),
    "the weather": ("в прошлом году у нас выпало 2 метра снега", "none no-page"),
}
UKRAINIAN = {
    "a page and please": ("Сторінка 42, будь ласка", "counts 42"),
    "a vote for": ("голосую за 17", "counts 17"),
    "an apostrophe": ("п'ятдесят шість, дякую!", "counts 56"),
    "a curly apostrophe": ("п’ятнадцять", "counts 15"),
    "an ordinal with a page word": ("двадцять дев'ята сторінка", "counts 29"),
    "a page word cut short": ("стор. 8 будь ласка", "counts 8"),
    "begin with": ("Почніть з 33", "counts 33"),
    "my choice and a greeting": ("мій вибір 61, вітання з Полтави", "counts 61"),
    "let it be": ("нехай буде сорок", "counts 40"),
    "which one": ("тридцять другу будь ласка", "counts 32"),
    "a corner": ("правий нижній кут", "counts 63"),
    "the last page": ("остання сторінка", "counts 63"),
    "a correction": ("ні, не 12, краще 21", "counts 21"),
    "an age beside": ("мені 45 років, обираю 9", "counts 9"),
    "a bare number word": ("шістдесят три", "counts 63"),
    "the apostrophe left out": ("девятнадцять", "counts 19"),
    "either of two": ("12 чи 13", "look 12 13"),
    "a question": ("42 вже зайнята?", "look 42"),
    "a range": ("між 20 і 30", "look"),
    "years of stitching": ("вишиваю вже 15 років", "none no-page"),
    "left to the host": ("оберіть самі", "none no-page"),
    "taken back": ("заберіть мій голос назад", "none withdrawn"),
    "no such page": ("сторінка 80", "none off-chart"),
    "cats": ("маю 3 коти і 2 собаки", "none no-page"),
}


@pytest.mark.parametrize(("text", "said"), RUSSIAN.values(), ids=RUSSIAN)
def test_a_russian_comment_is_read(text: str, said: str) -> None:
    assert heard(text) == said


@pytest.mark.parametrize(("text", "said"), UKRAINIAN.values(), ids=UKRAINIAN)
def test_a_ukrainian_comment_is_read(text: str, said: str) -> None:
    assert heard(text) == said


def test_a_plain_russian_comment_is_read_in_an_english_round() -> None:
    assert heard("тридцать восемь, спасибо", languages=("en",)) == "counts 38"
