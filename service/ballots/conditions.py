"""Pages that hang on something else: "21 if nobody has it", "unless", "if you haven't done it"."""

from __future__ import annotations

from service.ballots import stands
from service.ballots.inexact import before_cues
from service.ballots.lexicon import bits_of
from service.ballots.mention import Mention
from service.ballots.scanning import DIGITS
from service.ballots.scene import Scene

#: Groups of words by which an "if" asks, and sets no condition.
_POLITE = ("suggesting", "fillers", "choice_after", "neutral_after", "not_after", "stopgap")
#: Words without one of which nothing hangs on anything.
CONDITIONS = bits_of("depends", "condition", "if_words")


def read_condition(scene: Scene, mention: Mention, end: int) -> None:
    """As in "If nobody has it", "unless": what follows a page makes it hang on something else."""
    if not scene.present & CONDITIONS:
        return
    if scene.has("depends", mention.after, end):
        mention.conditional = mention.depends = True
    elif (at := scene.find("condition", mention.after, end)) >= 0 and not _is_polite(scene, at):
        # "21, and if somebody's had it then 22": what follows the "and" is said of the other.
        others = scene.begins("also", at - 1) and at - 1 > mention.after
        mention.conditional = not (others or scene.begins("either", mention.after))
    elif end > mention.after and (
        _is_behind_an_if(scene, mention) or scene.begins("if_words", mention.after)
    ):
        mention.conditional = (
            scene.has("condition", mention.after, end)
            or _hangs_on_another(scene, mention)
            or _goes_on_with_an_if(scene, mention.after)
        )
    elif _is_led_by_a_condition(scene, mention) or _goes_on_with_an_if(scene, mention.after):
        mention.conditional = True
    if mention.conditional:
        mention.rule = "only if something else holds"
        if mention.standing > stands.ASKED:
            mention.standing = max(mention.standing, stands.BARE)


def _is_polite(scene: Scene, at: int) -> bool:
    """As in "11 please if there's room": a longer phrase asks, and sets no condition."""
    conceded = at > 0 and scene.begins("neutral_after", at - 1) > 1  # "anche se", "auch wenn"
    return conceded or scene.begins("suggesting", at) > scene.begins("condition", at)


def _is_behind_an_if(scene: Scene, mention: Mention) -> bool:
    """Whether "if" stands right before it, and no wish: "I'd love it if 45 came up"."""
    at = before_cues(scene, mention.first)
    if at < 0 or not scene.begins("if_words", at):
        return False
    return scene.lexicon.before(scene.tokens, at)[0] != "choice_before"


def _goes_on_with_an_if(scene: Scene, at: int) -> bool:
    """As in "24 if it's trailing": whatever the "if" begins, unless it is said out of politeness."""
    step = scene.begins("if_words", at)
    polite = (scene.begins(group, at) for group in _POLITE)
    return step > 0 and not any(said > step for said in polite)


def _is_led_by_a_condition(scene: Scene, mention: Mention) -> bool:
    """As in "If you haven't done it yet, 47": nothing but the condition stands before it."""
    start, _ = scene.sentence(mention.first)
    led = start == 0 and (scene.begins("condition", 0) > 0 or _is_if_then(scene, mention))
    return led and not is_numbered(scene, mention.first, but=mention.value)


def _is_if_then(scene: Scene, mention: Mention) -> bool:
    """As in "If the roses win then put me on 10": whatever the "if" says."""
    return _goes_on_with_an_if(scene, 0) and scene.has("answered", 1, mention.first)


def _hangs_on_another(scene: Scene, mention: Mention) -> bool:
    """As in "64 if 80 is gone", "if 42 is winning": a number stands right at the "if"."""
    tokens = scene.tokens
    if _is_behind_an_if(scene, mention):
        return True
    beyond = mention.after + 1
    return beyond < len(tokens) and tokens[beyond].kind == DIGITS


def is_numbered(scene: Scene, end: int, *, but: int | None = None) -> bool:
    """Whether a number stands before token `end`, apart from that one."""
    told = str(but)  # "if nobody goes for 12 then I'll have 12"
    numbers = scene.lexicon.numbers
    return any(
        token.text != told and (token.kind == DIGITS or token.text in numbers)
        for token in scene.tokens[:end]
    )
