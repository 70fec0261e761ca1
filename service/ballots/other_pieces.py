"""Pages of other pieces: of a chart that has another number of pages, of a book, a magazine."""

from __future__ import annotations

from service.ballots import stands
from service.ballots.lexicon import bits_of
from service.ballots.mention import Mention
from service.ballots.scene import Scene
from service.ballots.surroundings import telling_words

PRINTED = bits_of("printed")
_SPEAKING_OF_VOTES = ("voting", "choice_before", "choice_after", "suggesting")


def doubt_other_pieces(scene: Scene, mentions: list[Mention]) -> None:
    """As in "My chart has 96 pages. Page one starts on Monday": a page of that, or of this one.

    Where a page is named and nothing else is said with it, it may be the vote of one who talks.
    """
    counted = any(_counts_pages(scene, one) for one in mentions)
    if not (counted or (scene.present & PRINTED and scene.has("printed", 0, len(scene.tokens)))):
        return
    for one in mentions:
        if counted and one.standing == stands.UNSURE and _is_no_vote(scene, one):
            one.standing, one.rule = stands.OTHER, "a page of something else"
        elif one.standing == stands.CUED and one.cued_by_page and _is_talked_about(scene, one):
            one.standing, one.rule = stands.UNSURE, "a page, perhaps of something else"


def _counts_pages(scene: Scene, mention: Mention) -> bool:
    """Whether it says how many pages something has that is not this chart."""
    counted = mention.standing == stands.OTHER and (mention.value or 0) > 1
    other = counted and mention.value != scene.last_page
    return other and scene.begins("page", mention.after) > 0


def _is_no_vote(scene: Scene, mention: Mention) -> bool:
    """Whether a page is told of in a comment that speaks of no vote."""
    apart = mention.cued_by_page and not scene.begins("choice_after", mention.after)
    return apart and not scene.has("voting", 0, len(scene.tokens))


def _is_talked_about(scene: Scene, mention: Mention) -> bool:
    """Whether its sentence says more than that page, and nothing of choosing."""
    start, end = scene.sentence(mention.first)
    if any(scene.has(group, start, end) for group in _SPEAKING_OF_VOTES):
        return False
    beside = ((start, mention.first), (mention.after, end))
    return any(telling_words(scene, *part) for part in beside)
