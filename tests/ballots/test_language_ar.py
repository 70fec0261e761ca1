"""Arabic comments, as people write them, read as any fair reader would."""

from __future__ import annotations

import pytest

from tests.ballots.heard import heard

ARABIC = {
    "a page and please": ("صفحة 42 من فضلك", "counts 42"),
    "digits of the script": ("الصفحة ٤٢ لو سمحت", "counts 42"),
    "a vote for": ("أصوت للصفحة 17", "counts 17"),
    "I choose a number": ("اختار رقم ٣٣", "counts 33"),
    "a number word": ("اثنان وأربعون", "counts 42"),
    "as it is spoken": ("سبعة وعشرين من فضلك", "counts 27"),
    "the other gender": ("ثلاث وستون", "counts 63"),
    "the last letter as it is typed": ("خمسه وثلاثين", "counts 35"),
    "thanks": ("١٩ شكرا على الفيديو", "counts 19"),
    "the last page": ("الصفحة الأخيرة", "counts 63"),
    "the first page": ("الصفحة الأولى", "counts 1"),
    "a corner": ("الزاوية اليمنى العليا", "counts 9"),
    "a corner unsaid": ("أعلى اليسار", "counts 1"),
    "begin with": ("ابدئي من 8", "counts 8"),
    "a favourite": ("رقمي المفضل 7", "counts 7"),
    "one ruled out": ("ليس ١٣، بل ٣١", "counts 31"),
    "a correction": ("12 لا لا 21", "counts 21"),
    "an age beside": ("عمري 38 سنة واختياري 5", "counts 5"),
    "vowel points": ("الصَّفحَة ٤٢", "counts 42"),
    "an ordinal": ("الصفحة الثانية عشرة", "counts 12"),
    "which one alone": ("الثانية والأربعون لو سمحتي", "counts 42"),
    "a greeting from home": ("تحياتي من تونس، 24", "counts 24"),
    "a stretched letter": ("خلينا نبدأ بـ 15", "counts 15"),
    "how about": ("ما رأيكم ب 48؟", "counts 48"),
    "a number in words": ("رقم واحد وخمسين", "counts 51"),
    "eleven": ("احدى عشر", "counts 11"),
    "twelve as in Cairo": ("اتناشر", "counts 12"),
    "wanting": ("عايزة صفحة 29 بليز", "counts 29"),
    "in Latin letters": ("safha 42 men fadlik", "counts 42"),
    "my vote": ("صوتي ل 36", "counts 36"),
    "the middle": ("الوسط", "counts 32"),
    "either of two": ("12 أو 13", "look 12 13"),
    "a question": ("هل 42 محجوزة؟", "look 42"),
    "a range": ("بين 20 و 30", "look"),
    "pointing": ("نفس اختيار اللي فوق", "look"),
    "the husband's": ("زوجي يقول 15", "look 15"),
    "about there": ("حوالي 40", "look 40"),
    "years of stitching": ("أطرز منذ 20 سنة وما شفت أجمل من هذا", "none no-page"),
    "left to the host": ("اختاري أنت", "none no-page"),
    "any page": ("أي صفحة", "none no-page"),
    "taken back": ("الغي صوتي", "none withdrawn"),
    "no such page": ("صفحة 99", "none off-chart"),
    "cats and pieces": ("عندي 3 قطط و5 مشاريع", "none no-page"),
    "all but one": ("كل شيء إلا 13", "none no-page"),
    "the hour": ("الساعة 9 مساء مع الشاي", "none no-page"),
}


@pytest.mark.parametrize(("text", "said"), ARABIC.values(), ids=ARABIC)
def test_an_arabic_comment_is_read(text: str, said: str) -> None:
    assert heard(text) == said
