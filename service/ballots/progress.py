"""How far the writer is with an own piece, told over several pages: "I did page 5, then 6"."""

from __future__ import annotations

from itertools import pairwise

from service.ballots import stands
from service.ballots.cues import DONE, OWN_PIECE
from service.ballots.elsewhere import BELONGS
from service.ballots.lexicon import bits_of
from service.ballots.mention import Mention
from service.ballots.scanning import SOFT
from service.ballots.scene import Scene
from service.ballots.surroundings import is_of_own_piece

#: Without a word of this, no page follows on another.
FOLLOWING = bits_of("second")
_BETWEEN = frozenset({"fillers", "page", "number"})


def tell_progress(scene: Scene, mentions: list[Mention]) -> None:
    """A page that follows on one of the writer's own piece is of that piece too."""
    for at, (left, right) in enumerate(pairwise(mentions)):
        if not _is_own(left) or not stands.UNSURE <= right.standing <= stands.CUED:
            continue
        if not _follows(scene, left, right):
            continue
        goes_on = any(_is_own(one) or is_of_own_piece(scene, one) for one in mentions[at + 2 :])
        right.standing = stands.OTHER if goes_on or right.standing < stands.ALONE else stands.ASKED
        right.rule = OWN_PIECE
        if goes_on:
            left.standing, left.rule = stands.OTHER, OWN_PIECE


def _is_own(mention: Mention) -> bool:
    """Whether it is a page of the writer's own piece."""
    told = mention.rule == OWN_PIECE or (mention.rule == BELONGS and mention.cued_by_page)
    return mention.rule == DONE or (told and mention.standing == stands.OTHER)


def _follows(scene: Scene, left: Mention, right: Mention) -> bool:
    """Whether "then" leads from the one to the other, and nothing chooses."""
    start, end = scene.sentence(right.first)
    if not start <= left.first < end or scene.begins("choice_after", right.after):
        return False
    if any(
        scene.has(group, left.after, right.first) for group in ("voting", "suggesting", "turning")
    ):
        return False
    at = right.first - 1
    while at > left.after and (
        scene.kinds[at] == SOFT
        or scene.begins("page", at)
        or (
            scene.lexicon.before(scene.tokens, at)[0] in _BETWEEN and not scene.begins("second", at)
        )
    ):
        at -= 1
    return scene.lexicon.group("second").before(scene.tokens, at) > 0
