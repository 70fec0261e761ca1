"""Numbers in the midst of talk: a sentence that tells something, and says nothing of choosing."""

from __future__ import annotations

from service.ballots import stands
from service.ballots.case import PAGE_SAID
from service.ballots.cues import BEGINS, IN_THE_OPEN, LUCKY, NUMBER_SAID
from service.ballots.mention import Mention
from service.ballots.placing import ON_THE_CHART
from service.ballots.scene import Scene
from service.ballots.surroundings import telling_words

#: In a comment of fewer words a page may be chosen in any words.
_TALK = 14
#: So many words that the reader does not know make a sentence tell something.
_TELLING = 3
#: Rules by which a number counts that no word of choosing stands beside.
_UNCHOSEN = frozenset({PAGE_SAID, NUMBER_SAID, IN_THE_OPEN, BEGINS, LUCKY, ON_THE_CHART})
_CHOOSING = ("voting", "suggesting")


def doubt_talk(scene: Scene, mentions: list[Mention]) -> None:
    """As in "In grandma's cookbook, page 50, it says too much butter": told, and hardly chosen."""
    if scene.word_count() < _TALK:
        return
    live = [one for one in mentions if one.standing > stands.UNSURE]
    doubted = [one for one in live if one.rule in _UNCHOSEN and _is_told(scene, one)]
    values = {one.value for one in doubted}
    if any(one.rule in _UNCHOSEN and one.value not in values for one in live if one not in doubted):
        return  # one of several that were named alike
    for one in doubted:
        one.standing, one.rule = stands.UNSURE, "in the midst of talk"


def _is_told(scene: Scene, mention: Mention) -> bool:
    """Whether its sentence tells more, and it does not begin or end the comment, as votes do."""
    start, end = scene.sentence(mention.first)
    reasons = () if mention.lucky else ("because",)
    if any(scene.has(group, start, end) for group in (*_CHOOSING, *reasons)):
        return False
    before = telling_words(scene, 0, mention.first)
    after = telling_words(scene, mention.after, len(scene.tokens))
    beside = sum(start <= at < end for at in (*before, *after))
    return beside >= _TELLING and (mention.lucky or bool(before and after))
