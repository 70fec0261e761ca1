"""Roman numerals: sure after a page word, to be looked at when one is all there is."""

from __future__ import annotations

from service.ballots import stands
from service.ballots.beside import read_before
from service.ballots.mention import Mention
from service.ballots.numerals import LOWER, ROMANS, roman_value
from service.ballots.scanning import DIGITS, WORD
from service.ballots.scene import Scene


def roman_at(scene: Scene, at: int) -> Mention | None:
    """A roman numeral: sure after a page cue, to be looked at when it is all there is."""
    token = scene.tokens[at]
    if token.kind != WORD or token.text not in ROMANS:
        return None
    value = roman_value(token.text)
    before = read_before(scene, at)
    counted = at + 1 < len(scene.tokens) and scene.kinds[at + 1] == DIGITS
    if before.page and not counted:  # "63 pages x 5000 stitches"
        mention = Mention(
            at, at + 1, value, "roman", stands.CUED, "a roman numeral after a page word"
        )
        mention.cued_by_page = True
        return mention
    start, end = scene.span(at, at + 1)
    written = scene.text[start:end]
    words = scene.word_count()
    chosen = before.group == "choice_before" or scene.begins("choice_after", at + 1)
    bare = words == 1 or (chosen and 1 <= value <= scene.last_page) or _is_apart(scene, at, value)
    alone = words == 1 and len(token.text) >= LOWER and set(token.text) != {"x"}
    if len(token.text) > 1 and (written.isupper() or alone) and bare:
        return Mention(at, at + 1, None, "roman", stands.PLACED, "a bare roman numeral",
                       scene.on_chart((value,)))  # fmt: skip
    return None


def _is_apart(scene: Scene, at: int, value: int) -> bool:
    """As in "XXI, um beijo!": a clause of its own; "XX" is kisses, and all in capitals shouts."""
    apart = scene.clause(at, at + 1) == (at, at + 1) and 1 <= value <= scene.last_page
    return apart and set(scene.tokens[at].text) != {"x"} and not scene.text.isupper()
