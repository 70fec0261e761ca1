"""Hindi comments, in both scripts, as people write them, read as any fair reader would."""

from __future__ import annotations

import pytest

from tests.ballots.heard import heard

HINDI = {
    "a page and please": ("पेज 42 कृपया", "counts 42"),
    "digits of the script": ("पृष्ठ ४२", "counts 42"),
    "my vote": ("मेरा वोट 17 को", "counts 17"),
    "a number word": ("बयालीस", "counts 42"),
    "a number and please": ("सत्ताईस नंबर प्लीज", "counts 27"),
    "I choose": ("मैं तैंतीस चुनती हूँ", "counts 33"),
    "the page's number": ("पन्ना नंबर 8", "counts 8"),
    "do it": ("५१ कर दीजिए", "counts 51"),
    "please": ("पैंतीस कृपया", "counts 35"),
    "as the north spells it": ("तिरसठ", "counts 63"),
    "thanks to a sister": ("छप्पन, धन्यवाद दीदी", "counts 56"),
    "the last page": ("आखिरी पेज", "counts 63"),
    "the first page": ("पहला पन्ना", "counts 1"),
    "a corner": ("ऊपर दायाँ कोना", "counts 9"),
    "one ruled out": ("13 नहीं, 31", "counts 31"),
    "a correction": ("12... नहीं नहीं 21", "counts 21"),
    "an age beside": ("मेरी उम्र 38 साल है, मेरा चुनाव 5", "counts 5"),
    "a lucky number": ("मेरा लकी नंबर 7 है", "counts 7"),
    "an ordinal": ("बारहवाँ पेज", "counts 12"),
    "begin with": ("36 से शुरू कीजिए", "counts 36"),
    "a greeting": ("नमस्ते! 24", "counts 24"),
    "how about": ("48 कैसा रहेगा?", "counts 48"),
    "in Latin letters": ("page 42 kripya", "counts 42"),
    "a number word in Latin letters": ("bayalis number please didi", "counts 42"),
    "a vote in Latin letters": ("mera vote 19 ko", "counts 19"),
    "that one in Latin letters": ("pachpan wala kar do", "counts 55"),
    "the middle page": ("बीच वाला पेज", "counts 32"),
    "make that page": ("१५ वाला पेज बनाइए", "counts 15"),
    "either of two": ("12 या 13", "look 12 13"),
    "a question": ("क्या 42 ले लिया गया?", "look 42"),
    "a range": ("20 से 30 के बीच", "look"),
    "the husband's": ("मेरे पति 15 कह रहे हैं", "look 15"),
    "about there": ("करीब 40", "look 40"),
    "pointing": ("जो ऊपर वाले ने कहा", "look"),
    "years of stitching": ("20 साल से कढ़ाई कर रही हूँ", "none no-page"),
    "any page": ("कोई भी पेज", "none no-page"),
    "left to the host": ("आप ही चुनिए", "none no-page"),
    "taken back": ("मेरा वोट मत गिनिए", "none withdrawn"),
    "no such page": ("पेज 99", "none off-chart"),
    "children": ("मेरे 3 बच्चे हैं", "none no-page"),
    "all but one": ("13 छोड़कर कोई भी", "none no-page"),
    "the hour": ("रात 9 बजे चाय के साथ देखा", "none no-page"),
}


@pytest.mark.parametrize(("text", "said"), HINDI.values(), ids=HINDI)
def test_a_hindi_comment_is_read(text: str, said: str) -> None:
    assert heard(text) == said
