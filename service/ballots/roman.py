"""Roman numerals: sure after a page word, to be looked at when one is all there is."""

from __future__ import annotations

import unicodedata

from service.ballots import stands
from service.ballots.beside import read_before
from service.ballots.mention import Mention
from service.ballots.numerals import LOWER, ROMANS, roman_value
from service.ballots.scanning import DIGITS, WORD
from service.ballots.scene import Scene
from service.ballots.tellings import ENGLISH

#: Numerals that are words too: "there", "saw", "us"; abbreviations.
_WORDS = frozenset({"li", "vi", "ci", "cc", "cl"})


def roman_at(scene: Scene, at: int) -> Mention | None:
    """A roman numeral: sure after a page cue, to be looked at when it is all there is."""
    token = scene.tokens[at]
    if token.kind != WORD or token.text not in ROMANS:
        return None
    value = roman_value(token.text)
    start, end = scene.span(at, at + 1)
    written = scene.text[start:end]
    before = read_before(scene, at)
    counted = at + 1 < len(scene.tokens) and scene.kinds[at + 1] == DIGITS
    kisses = set(token.text) == {"x"} and written.islower() and not scene.begins("page", at - 1)
    if kisses or _is_a_word(scene, at, written):
        return None
    if before.page and not counted:  # "63 pages x 5000 stitches"
        rule = "a roman numeral after a page word"
        mention = Mention(at, at + 1, value, "roman", stands.CUED, rule)
        mention.cued_by_page = True
        if _may_be_a_word(scene, token.text, written):
            mention.standing, mention.rule = stands.ASKED, "a roman numeral, or a word"
        return mention
    words = scene.word_count()
    chosen = before.group == "choice_before" or scene.begins("choice_after", at + 1)
    bare = words == 1 or (chosen and 1 <= value <= scene.last_page) or _is_apart(scene, at, value)
    alone = words == 1 and len(token.text) >= LOWER and set(token.text) != {"x"}
    if len(token.text) > 1 and (written.isupper() or alone) and bare:
        return Mention(at, at + 1, None, "roman", stands.PLACED, "a bare roman numeral",
                       scene.on_chart((value,)))  # fmt: skip
    return None


def _is_a_word(scene: Scene, at: int, written: str) -> bool:
    """As in "quella pagina lì", "la pagina vi piace": an accent, or more words behind a small one."""
    if any(map(unicodedata.combining, unicodedata.normalize("NFD", written))):
        return True
    goes_on = at + 1 < len(scene.kinds) and scene.kinds[at + 1] == WORD
    small = scene.tokens[at].text in _WORDS and not written.isupper()
    return small and goes_on and not scene.begins("choice_after", at + 1)


def _may_be_a_word(scene: Scene, said: str, written: str) -> bool:
    """As in "pagina li" in Italian, in small letters."""
    return said in _WORDS and not written.isupper() and scene.lexicon.codes[0] != ENGLISH


def _is_apart(scene: Scene, at: int, value: int) -> bool:
    """As in "XXI, um beijo!": a clause of its own; "XX" is kisses, and all in capitals shouts."""
    apart = scene.clause(at, at + 1) == (at, at + 1) and 1 <= value <= scene.last_page
    return apart and set(scene.tokens[at].text) != {"x"} and not scene.text.isupper()
