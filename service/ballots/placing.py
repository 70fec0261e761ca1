"""A place on the chart judged by the words around it: chosen, talked about, or of something else."""

from __future__ import annotations

from service.ballots import stands
from service.ballots.beside import read_after, read_before
from service.ballots.mention import Mention
from service.ballots.scanning import WORD
from service.ballots.scene import Scene
from service.ballots.surroundings import in_a_saying, is_alone

#: In a comment of more words than this a place in passing is no choice.
_TALK = 12
#: In one of so few words a place is hardly in passing.
_BRIEF = 5


def judge_place(scene: Scene, mention: Mention, *, named: bool) -> Mention:
    """Judge a place by the words around it; `named`: a page word is part of it."""
    mention.after += scene.begins("whole_chart", mention.after)
    before = read_before(scene, mention.first)
    after = read_after(scene, mention.after)
    mention.cued_by_page = named
    if before.group == "not_before" or after.group == "not_after":
        mention.standing, mention.rule = stands.STRUCK, "ruled out"
    elif in_a_saying(scene, mention):
        mention.standing, mention.rule = stands.OTHER, "part of a saying"
    elif _of_something_else(scene, mention):
        corner = mention.value is not None and scene.word_count() <= _TALK and not named
        mention.standing = stands.UNSURE if corner else stands.OTHER
        mention.rule = "a place of something else"
    elif before.group == "roughly_before":
        mention.maybe = mention.maybe or ((mention.value,) if mention.value else ())
        mention.standing, mention.rule = stands.PLACED, "about there, not an exact page"
    elif _is_talked_about(scene, mention) or (before.group == "between" and before.at >= 0):
        # "numbered from the top left"
        mention.standing, mention.rule = stands.UNSURE, "a place, perhaps only talked about"
    elif before.group == "choice_before" or before.page or after.group == "choice_after":
        mention.standing, mention.rule = stands.CUED, "a place on the chart, chosen"
    elif before.group in {"other_before", "weak_before"} and not is_alone(scene, mention):
        talk = scene.word_count() > _TALK
        mention.standing = stands.OTHER if talk else stands.UNSURE
        mention.rule = "a place, perhaps only talked about"
    elif is_alone(scene, mention) or (named and (before.clear or before.group == "")):
        standing = stands.CUED if named else stands.ALONE
        mention.standing, mention.rule = standing, "a place on the chart"
    else:
        mention.standing, mention.rule = stands.UNSURE, "a place, perhaps only talked about"
    if mention.value is None and mention.standing > stands.PLACED:
        meant = mention.standing > stands.UNSURE or scene.word_count() <= _BRIEF
        mention.standing = stands.PLACED if meant else stands.OTHER
    return mention


def _is_talked_about(scene: Scene, mention: Mention) -> bool:
    """As in "The middle looks so intricate": more is said of it than that it looks good."""
    step = scene.begins("goes_on", mention.after)
    behind = scene.tokens[mention.after + step : mention.after + step + 1]
    talked = bool(step and behind) and behind[0].kind == WORD
    if scene.begins("suggesting", mention.after):
        return False  # "the last page would make sense"
    return talked and scene.begins("choice_after", mention.after) <= step


def _of_something_else(scene: Scene, mention: Mention) -> bool:
    """As in "The corner of my chart", "the last page of the book" are of something else."""
    step = scene.begins("part_of", mention.after)
    behind = scene.tokens[mention.after + step : mention.after + step + 1]
    # "The last page of 63" is the chart's.
    return bool(step and behind) and behind[0].text != str(scene.last_page)
