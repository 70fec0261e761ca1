"""Each number judged by the words beside it: a choice, something else, or not to be told.

The rules are tried in order; the first that says something decides.
"""

from __future__ import annotations

from service.ballots import cues, elsewhere
from service.ballots.beside import read_after, read_before
from service.ballots.case import Case, Rule
from service.ballots.mentions import Mention, Standing
from service.ballots.scene import Scene

_RULES: tuple[Rule, ...] = (
    elsewhere.part_of_a_saying,
    elsewhere.ruled_out,
    elsewhere.stands_for_a_word,
    elsewhere.misheard,
    elsewhere.tallied,
    elsewhere.measured,
    elsewhere.counts_a_thing,
    elsewhere.too_large,
    elsewhere.told_from_another,
    elsewhere.reckoned,
    elsewhere.rough,
    cues.lucky,
    cues.chosen,
    elsewhere.belongs,
    elsewhere.somebody_elses,
    elsewhere.in_brackets,
    elsewhere.part_of_a_name,
    cues.page_said,
    cues.number_said,
    elsewhere.said_by_something,
    elsewhere.weak_before,
    elsewhere.weak_after,
    cues.chosen_after,
    cues.in_the_open,
    elsewhere.unknown_beside,
)
_ORDINAL_RULES: tuple[Rule, ...] = (
    elsewhere.part_of_a_saying,
    elsewhere.written_with_o,
    elsewhere.ruled_out,
    elsewhere.measured,
    cues.ordinal_page,
    cues.ordinal_word,
    cues.ordinal_elsewhere,
    *_RULES,
)


def judge(scene: Scene, mention: Mention) -> None:
    """Set the mention's standing and the rule that decided."""
    before = read_before(scene, mention.first)
    after = read_after(scene, mention.after)
    case = Case(scene, mention, before, after)
    mention.cued_by_page = before.page
    rules = _ORDINAL_RULES if "ordinal" in mention.shape else _RULES
    for rule in rules:
        verdict = rule(case)
        if verdict is not None:
            mention.standing, mention.rule = verdict
            break
    if mention.value is None and mention.standing > Standing.UNSURE:
        mention.standing = Standing.PLACED
