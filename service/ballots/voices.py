"""Whose number it is, and how it is meant: asked about, reported, quoted, on a condition, an age."""

from __future__ import annotations

from service.ballots.lexicon import bits_of
from service.ballots.mentions import Mention, Standing
from service.ballots.scanning import DIGITS, END, SOFT, WORD
from service.ballots.scene import Scene

_AGE_REACH = 8
#: Without one of these words and without quotation marks every number is the writer's own.
_ASKING = bits_of("asking")
_REPORTING = bits_of("reported_before", "family_before")
_AGES = bits_of("ages")
_CONDITIONS = bits_of("depends", "condition", "if_words")
_VOICES = _ASKING | _REPORTING | _AGES | _CONDITIONS


def read_voices(scene: Scene, mentions: list[Mention]) -> None:
    """Lower the mentions that are not plainly the writer's own choice."""
    if not scene.present & _VOICES and not scene.quoted:
        return
    for at, mention in enumerate(mentions):
        start, end = scene.sentence(mention.first)
        if mention.standing < Standing.UNSURE:
            if mention.standing == Standing.ASKED:
                _read_condition(scene, mention, end)
            continue
        if _is_quoted_for_another(scene, mention):
            _lower(mention, Standing.STRUCK, "words given to somebody else")
        elif _is_asked(scene, mention, start):
            other = scene.has("topics", start, end) and not mention.cued_by_page
            standing = Standing.OTHER if other else Standing.ASKED
            _lower(mention, standing, "asked about, not chosen")
        elif _is_reported(scene, mention, start):
            mention.reported = True
            _lower(mention, Standing.ASKED, "somebody else's, or an earlier vote")
        elif _is_an_age(scene, mention):
            _lower(mention, Standing.ASKED, "an age or a birthday, perhaps not a page")
        else:
            following = mentions[at + 1].first if at + 1 < len(mentions) else end
            _read_condition(scene, mention, min(end, max(following, mention.after)))


def _lower(mention: Mention, standing: Standing, rule: str) -> None:
    mention.standing, mention.rule = standing, rule


def _read_condition(scene: Scene, mention: Mention, end: int) -> None:
    """As in "If nobody has it", "unless": what follows a page makes it hang on something else."""
    if not scene.present & _CONDITIONS:
        return
    if scene.has("depends", mention.after, end):
        mention.conditional = mention.depends = True
    elif scene.has("condition", mention.after, end):
        mention.conditional = True
    elif end > mention.after and (
        scene.begins("if_words", mention.first - 1) or scene.begins("if_words", mention.after)
    ):
        mention.conditional = scene.has("condition", mention.after, end) or (
            _hangs_on_another(scene, mention)
        )
    if mention.conditional:
        mention.rule = "only if something else holds"
        if mention.standing > Standing.ASKED:
            mention.standing = max(mention.standing, Standing.BARE)


def _hangs_on_another(scene: Scene, mention: Mention) -> bool:
    """As in "64 if 80 is gone", "if 42 is winning": a number stands right at the "if"."""
    tokens = scene.tokens
    if mention.first and scene.begins("if_words", mention.first - 1):
        return True
    beyond = mention.after + 1
    return beyond < len(tokens) and tokens[beyond].kind == DIGITS


def _is_quoted_for_another(scene: Scene, mention: Mention) -> bool:
    """A number in quotation marks with somebody else's name or voice beside them."""
    if mention.first not in scene.quoted:
        return False
    tokens = scene.tokens
    last = mention.after
    while last < len(tokens) and last in scene.quoted:
        last += 1
    first = mention.first
    while first > 0 and first - 1 in scene.quoted:
        first -= 1
    near = (max(first - 6, 0), first), (last, min(last + 7, len(tokens)))
    words = {token.text for start, end in near for token in tokens[start:end]}
    if words & _SPEAKERS_SELF:
        return False
    return any(
        scene.has(group, start, end) for group in ("saying", "family_before") for start, end in near
    )


_SPEAKERS_SELF = frozenset("i we i'm ich je yo io eu ik".split())


def _is_asked(scene: Scene, mention: Mention, start: int) -> bool:
    """Whether its sentence asks about it ("is 42 taken?") rather than proposes it."""
    if mention.lucky or not scene.present & _ASKING:
        return False
    tokens = scene.tokens
    head = start
    while head < mention.first and tokens[head].kind != WORD:
        head += 1
    asking = scene.lexicon.group("asking")
    clause_start, _ = scene.clause(mention.first, mention.after)
    openings = {head, head + 1, clause_start}
    if not any(asking.after(tokens, place) for place in openings if place < mention.first):
        # "How many pages has it? 63?" guesses at the number of pages.
        all_pages = mention.value == scene.question.chart.page_count and start > 0
        return all_pages and scene.is_question(mention.first) and scene.has("asking", 0, start)
    if scene.has("suggesting", start, mention.first):
        return False
    if scene.is_question(mention.first):
        return True
    return mention.standing < Standing.CUED and tokens[head].text in {
        "has", "is", "hasn't", "isn't", "anyone", "why",
    }  # fmt: skip


def _is_reported(scene: Scene, mention: Mention, start: int) -> bool:
    """Whether a subject other than the writer stands close before it, or an earlier round."""
    if not scene.present & _REPORTING:
        return False
    near = max(start, mention.first - 6)
    for at in range(mention.first - 1, near - 1, -1):
        if scene.begins("own_voice", at) and not _begins_report(scene, at):
            near = at + 1
            break
    for group in ("reported_before", "family_before"):
        at = scene.find(group, near, mention.first)
        if at >= 0 and not _is_spoken_to(scene, group, at, mention.first):
            mention.family = group == "family_before"
            return True
    return False


def _begins_report(scene: Scene, at: int) -> bool:
    """As in "I was going to say": the writer's own, but no choice."""
    return any(scene.begins("reported_before", place) for place in (at, at + 1))


def _is_spoken_to(scene: Scene, group: str, at: int, end: int) -> bool:
    """As in "Hello everyone, 42 please": spoken to, not of."""
    beyond = at + scene.begins(group, at)
    return beyond < end and scene.tokens[beyond].kind in {SOFT, END, "other"}


def _is_an_age(scene: Scene, mention: Mention) -> bool:
    """A bare number with "my age" or "the year I was born" beside it."""
    if not scene.present & _AGES:
        return False
    if mention.standing >= Standing.CUED or mention.shape == "place":
        return False
    end = min(mention.after + _AGE_REACH, len(scene.tokens))
    behind = scene.find("ages", mention.after, end)
    if behind >= 0 and not _tells_its_own(scene, behind):
        return True
    ahead = scene.find("ages", max(mention.first - 6, 0), mention.first)
    return ahead >= 0 and not mention.lucky


def _tells_its_own(scene: Scene, at: int) -> bool:
    """As in "17, since my birthday is the 23rd": the birthday has its own number."""
    beyond = at + scene.begins("ages", at)
    near = scene.tokens[beyond : beyond + 3]
    return bool(scene.begins("being", beyond)) or "ordinal" in {token.kind for token in near}
