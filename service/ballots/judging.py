"""Each number judged by the words beside it: a choice, something else, or not to be told.

The rules are tried in order; the first that says something decides.
"""

from __future__ import annotations

from functools import cache

from service.ballots import cues, elsewhere
from service.ballots.beside import read_after, read_before
from service.ballots.case import Case, Rule
from service.ballots.mentions import Mention, Standing
from service.ballots.scene import Scene

#: The rules in their order. Most say something only where a phrase of one of these groups stands
#: on either side of the number, or one of these facts holds of it; a rule without any is always
#: asked. What is left out here is left out for speed alone.
_RULES: tuple[tuple[Rule, frozenset[str]], ...] = tuple(
    (rule, frozenset(words.split()))
    for rule, words in (
        (elsewhere.part_of_a_saying, ""),
        (elsewhere.ruled_out, "not_before not_after"),
        (elsewhere.stands_for_a_word, ""),
        (elsewhere.misheard, "spelled"),
        (elsewhere.tallied, ""),
        (elsewhere.measured, ""),
        (elsewhere.counts_a_thing, "spelled"),
        (elsewhere.too_large, ""),
        (elsewhere.told_from_another, "above below later earlier relative_before relative_after"),
        (elsewhere.reckoned, "sum_before sum_after"),
        (elsewhere.rough, "roughly_before roughly_after"),
        (cues.lucky, "lucky_before"),
        (cues.chosen, "choice_before"),
        (elsewhere.belongs, "labels other_before"),
        (elsewhere.somebody_elses, "reported_before family_before"),
        (elsewhere.in_brackets, ""),
        (elsewhere.part_of_a_name, "joined"),
        (cues.page_said, "page_said"),
        (cues.number_said, "number_said"),
        (elsewhere.said_by_something, ""),
        (elsewhere.weak_before, "weak_before"),
        (elsewhere.weak_after, "weak_after"),
        (cues.chosen_after, "reported_after choice_after"),
        (cues.in_the_open, ""),
        (elsewhere.unknown_beside, ""),
    )
)
_ORDINAL_RULES: tuple[Rule, ...] = (
    elsewhere.part_of_a_saying,
    elsewhere.written_with_o,
    elsewhere.ruled_out,
    elsewhere.measured,
    cues.ordinal_page,
    cues.ordinal_word,
    cues.ordinal_elsewhere,
)
#: Every rule, for numbers and for ordinals.
ALL_RULES: tuple[Rule, ...] = tuple(rule for rule, _ in _RULES)
ALL_RULES_OF_ORDINALS = _ORDINAL_RULES + ALL_RULES


@cache
def _rules_for(
    before: str, after: str, *, page: bool, number: bool, joined: bool, spelled: bool
) -> tuple[Rule, ...]:
    """The rules that can say something of a number with these groups and facts beside it."""
    facts = {"page_said": page, "number_said": number, "joined": joined, "spelled": spelled}
    holding = {before, after, *(fact for fact, holds in facts.items() if holds)}
    return tuple(rule for rule, needs in _RULES if not needs or not needs.isdisjoint(holding))


def rules_of(case: Case) -> tuple[Rule, ...]:
    """The rules to ask of this number, in their order."""
    before, mention = case.before, case.mention
    rules = _rules_for(
        before.group,
        case.after.group,
        page=before.page,
        number=before.number,
        joined=before.joined,
        spelled=mention.spelled,
    )
    return _ORDINAL_RULES + rules if "ordinal" in mention.shape else rules


def judge(scene: Scene, mention: Mention) -> None:
    """Set the mention's standing and the rule that decided."""
    before = read_before(scene, mention.first)
    after = read_after(scene, mention.after)
    case = Case(scene, mention, before, after)
    mention.cued_by_page = before.page
    for rule in rules_of(case):
        verdict = rule(case)
        if verdict is not None:
            mention.standing, mention.rule = verdict
            break
    if mention.value is None and mention.standing > Standing.UNSURE:
        mention.standing = Standing.PLACED
