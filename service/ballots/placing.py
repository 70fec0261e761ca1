"""A place on the chart judged by the words around it: chosen, talked about, or of something else."""

from __future__ import annotations

from service.ballots import stands
from service.ballots.beside import Beside, read_after, read_before
from service.ballots.elsewhere import TOLD_FROM
from service.ballots.lexicon import bits_of
from service.ballots.mention import Mention
from service.ballots.relations import told_from
from service.ballots.scanning import WORD
from service.ballots.scene import Scene
from service.ballots.stands import Standing
from service.ballots.surroundings import in_a_saying, is_alone

TALKED_ABOUT = "a place, perhaps only talked about"
ON_THE_CHART = "a place on the chart"
#: In a comment of more words than this a place in passing is no choice.
_TALK = 12
_TELLING = bits_of("above", "below", "later", "earlier", "relative_before")
_UP_TO = bits_of("up_to")
#: Words that tell what was done are more than a preposition.
_LONG = 3
#: What else such a clause may say: "down somewhere".
_LITTLE = 2
#: In one of so few words a place is hardly in passing.
_BRIEF = 5


def judge_place(scene: Scene, mention: Mention, *, named: bool) -> Mention:
    """Judge a place by the words around it; `named`: a page word is part of it."""
    mention.after += scene.begins("whole_chart", mention.after)
    before = read_before(scene, mention.first)
    after = read_after(scene, mention.after)
    mention.cued_by_page = named
    mention.standing, mention.rule = _set_apart(scene, mention, before, after) or _judged(
        scene, mention, before, after
    )
    if mention.value is None and mention.standing > stands.PLACED:
        meant = mention.standing > stands.UNSURE or scene.word_count() <= _BRIEF
        meant = meant or (before.group == "" and _says_little_else(scene, mention))
        mention.standing = stands.PLACED if meant else stands.OTHER
    return mention


def _says_little_else(scene: Scene, mention: Mention) -> bool:
    """As in "third row down somewhere, I've had some wine": a clause of its own, or nearly."""
    start, end = scene.clause(mention.first, mention.after)
    return mention.first == start == 0 and end - mention.after <= _LITTLE


def _set_apart(
    scene: Scene, mention: Mention, before: Beside, after: Beside
) -> tuple[Standing, str] | None:
    """What makes a place no page of its own: ruled out, part of something else, only near it."""
    pages = mention.maybe or ((mention.value,) if mention.value else ())
    if before.group == "not_before" or after.group == "not_after":
        return stands.STRUCK, "ruled out"
    if in_a_saying(scene, mention):
        return stands.OTHER, "part of a saying"
    if _of_something_else(scene, mention):
        corner = mention.value is not None and scene.word_count() <= _TALK
        doubted = corner and not mention.cued_by_page
        return stands.UNSURE if doubted else stands.OTHER, "a place of something else"
    if told := _told_from(scene, mention.first):
        chart = scene.question.chart
        near = [beside for page in pages for beside in told_from(chart, page, told)]
        mention.maybe = tuple(dict.fromkeys(near))
        return stands.PLACED, "told from a place, not named"
    near_it = before.group == "roughly_before" and not _stands_behind(
        scene, mention.first, "choice_before"
    )
    if near_it or after.group == "roughly_after":
        mention.maybe = pages
        return stands.PLACED, "about there, not an exact page"
    return None


def _judged(scene: Scene, mention: Mention, before: Beside, after: Beside) -> tuple[Standing, str]:
    """Whether a place that may be a page is chosen, or talked about."""
    named = mention.cued_by_page
    if _is_talked_about(scene, mention) or (before.group == "between" and before.at >= 0):
        return stands.UNSURE, TALKED_ABOUT  # "numbered from the top left"
    if scene.present & _UP_TO and _stands_behind(scene, mention.first, "up_to"):
        return stands.UNSURE, TALKED_ABOUT
    if _is_chosen(scene, mention, before, after):
        return stands.CUED, "a place on the chart, chosen"
    if before.group in {"other_before", "weak_before"} and not is_alone(scene, mention):
        start, _ = scene.sentence(mention.first)
        paged = scene.has("page", start, mention.first)  # "the page right in the corner top right"
        talk = scene.word_count() > _TALK and not paged
        return stands.OTHER if talk else stands.UNSURE, TALKED_ABOUT
    if is_alone(scene, mention) or (named and (before.clear or before.group == "")):
        return stands.CUED if named else stands.ALONE, ON_THE_CHART
    return stands.UNSURE, TALKED_ABOUT


def _is_chosen(scene: Scene, mention: Mention, before: Beside, after: Beside) -> bool:
    """Whether words of choice stand beside it: "start on the very first page", "start on the" too."""
    if before.group == "choice_before" or before.page or after.group == "choice_after":
        return True
    if before.group == "other_before" and mention.first - before.at > _LONG:
        return False  # "j'ai commencé par le coin": told, and not to be begun with
    apart = before.group in {"other_before", "weak_before", "between", "roughly_before"}
    return apart and _stands_behind(scene, mention.first, "choice_before")


def _told_from(scene: Scene, first: int) -> str:
    """As in "just left of the centre": the group of words that tell a page from this place."""
    if not scene.present & _TELLING:
        return ""
    return next((group for group in TOLD_FROM if _stands_behind(scene, first, group)), "")


def _stands_behind(scene: Scene, first: int, group: str) -> bool:
    """Whether a phrase of the group stands before `first`, with articles between or none."""
    articles = scene.lexicon.group("fillers").firsts
    phrases, at = scene.lexicon.group(group), first - 1
    if phrases.before(scene.tokens, first) > 1:  # "à gauche du centre": "du" is part of both
        return True
    while at >= 0 and scene.kinds[at] == WORD:
        if phrases.before(scene.tokens, at):
            return True
        if scene.tokens[at].text not in articles:
            return False
        at -= 1
    return False


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
