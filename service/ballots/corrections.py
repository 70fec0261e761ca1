"""What the writer takes back: corrections, one page put in another's stead, what is come to."""

from __future__ import annotations

from itertools import pairwise

from service.ballots import stands
from service.ballots.elsewhere import OF_OTHERS, RULED_OUT
from service.ballots.lexicon import bits_of
from service.ballots.mentions import Mention
from service.ballots.scanning import END, WORD
from service.ballots.scene import Scene

_REPLACES = "put in another page's stead"
#: A verb of changing stands within so many words before the page that is replaced.
_REPLACING_REACH = 5
_REPLACING = bits_of("replacing")
_CORRECTING = bits_of("correction", "soft_correction")
_CONCLUDING = bits_of("concluding")
_CORRECTED = frozenset({stands.UNSURE, stands.BARE, stands.ALONE})


def correct(scene: Scene, mentions: list[Mention]) -> None:
    """Strike the mentions that the writer takes back, and raise what stands in their stead."""
    present = scene.present
    if present & _REPLACING:
        _replace(scene, mentions)
    if present & _CORRECTING:
        _correct(scene, mentions)
    if present & _CONCLUDING:
        _conclude(scene, mentions)
    _strike_again(mentions)


def _replace(scene: Scene, mentions: list[Mention]) -> None:
    """As in "swap my 35 for 53", "make that 23 a 24": one page in another's stead."""
    for left, right in pairwise(mentions):
        if left.value is None or right.value is None or not _may_be_replaced(scene, left, right):
            continue
        if not scene.has("replacing", left.first - _REPLACING_REACH, left.first):
            continue
        at = left.after + scene.begins("replaced_by", left.after)
        at += scene.begins("page", at) if at > left.after else 0
        if at == right.first > left.after:
            for one in mentions:
                if one.value == left.value and one.first < right.first:
                    one.standing, one.rule, one.maybe = stands.STRUCK, "replaced by another", ()
            right.standing, right.rule = stands.CUED, _REPLACES


def _may_be_replaced(scene: Scene, left: Mention, right: Mention) -> bool:
    """Two pages of the chart, neither of which counts or measures something."""
    both = (left, right)
    return scene.on_chart((left.value or 0,)) != () and all(
        one.standing != stands.OTHER or one.rule in OF_OTHERS for one in both
    )


def _conclude(scene: Scene, mentions: list[Mention]) -> None:
    """As in "24 would be nice, 42 nicer, so 42": what the writer comes to after all."""
    for at, last in enumerate(mentions):
        if last.standing < stands.ALONE or last.value is None:
            continue
        before = scene.lexicon.group("concluding").before(scene.tokens, last.first - 1)
        earlier = [one for one in mentions[:at] if one.standing > stands.PLACED]
        if before and any(one.value == last.value for one in earlier):
            for one in earlier:
                if one.value != last.value:
                    one.standing, one.rule = stands.STRUCK, "weighed, then another was chosen"


def _correct(scene: Scene, mentions: list[Mention]) -> None:
    """After a correction, what came before is taken back."""
    for at in range(1, len(mentions)):
        right = mentions[at]
        earlier = [one for one in mentions[:at] if one.standing >= stands.PLACED]
        if not earlier or right.standing < stands.PLACED or right.rule == _REPLACES:
            continue
        if _takes_back(scene, earlier[-1], right):
            for one in _taken_back(mentions[:at], earlier):
                one.standing, one.rule = stands.STRUCK, "taken back by a correction"
            if right.standing in _CORRECTED:
                right.standing, right.rule = stands.CUED, "the last word after a correction"


def _taken_back(before: list[Mention], earlier: list[Mention]) -> list[Mention]:
    """Those that a correction is about: "50, 51 and 52. Not 52, I meant 53" keeps two of them."""
    ruled_out = {one.value for one in before if one.rule == RULED_OUT}
    named = [one for one in earlier if one.value in ruled_out]
    return named or earlier


def _strike_again(mentions: list[Mention]) -> None:
    """As in "Fourteen is the ugly one. Then not fourteen.": ruled out wherever it stands before."""
    for at, one in enumerate(mentions):
        if one.rule == RULED_OUT and one.value is not None:
            for earlier in mentions[:at]:
                if earlier.value == one.value and stands.PLACED < earlier.standing < stands.CUED:
                    earlier.standing, earlier.rule = stands.STRUCK, "ruled out later"


def _takes_back(scene: Scene, left: Mention, right: Mention) -> bool:
    tokens, start, end = scene.tokens, left.after, right.first
    if scene.has("correction", start, end):
        return True
    at = scene.find("soft_correction", start, end)
    while at >= 0:
        rest = at + scene.begins("soft_correction", at)
        if at == start and rest < end and tokens[rest].kind == END and end - rest > 1:
            break  # "2 instead. And 24 as well": said of what stands before it
        between = tokens[rest:end]
        close = len(between) <= 5 and all(
            token.kind != WORD or token.text in scene.lexicon.plain_words for token in between
        )
        off = left.value is not None and not scene.on_chart((left.value,))
        if (close or off) and right.standing >= stands.BARE:
            return not _goes_on(scene, right)
        at = scene.find("soft_correction", at + 1, end)
    return False


def _goes_on(scene: Scene, mention: Mention) -> bool:
    """Whether more is said of it than a choice needs ("actually 14 is nice too")."""
    return scene.begins("goes_on", mention.after) > 0
