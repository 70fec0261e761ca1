"""Each number judged by the words beside it: a choice, something else, or not to be told.

The rules are tried in order; the first that says something decides.
"""

from __future__ import annotations

from functools import lru_cache, reduce
from operator import or_

from service.ballots import counted, cues, elsewhere, inexact, sounds, stands
from service.ballots.beside import read_after, read_before
from service.ballots.case import Case, Rule
from service.ballots.counted import LARGEST
from service.ballots.lexicon import bits_of
from service.ballots.mention import Mention
from service.ballots.scene import Scene

#: The rules in their order, with what makes it worth while to ask each: a phrase of one of these
#: groups on either side of the number, or one of these facts of it; or, behind the bar, a phrase
#: of one of these groups, or one of these words, anywhere in the comment. A rule without any is
#: always asked. What is left out here is left out for speed alone.
_RULES: tuple[tuple[Rule, str], ...] = (
    (elsewhere.part_of_a_saying, "| sayings"),
    (inexact.may_be_a_saying, "| maybe_sayings"),
    (inexact.beyond_any_chart, "| huge"),
    (inexact.vaguely_told, "| vague_after"),
    (inexact.turned_round, "| reversed_after"),
    (elsewhere.ruled_out, "not_before not_after"),
    (sounds.stands_for_a_word, "before_a_sounded | sounded_before"),
    (elsewhere.turned_today, "| today"),
    (sounds.misheard, "spelled"),
    (inexact.own_number, "| own_numbers"),
    (inexact.sided_with, "| sided_with"),
    (counted.tallied, "tally_before | =for"),
    (counted.pages_said_back, "| counting_pages"),
    (counted.measured, "other_after behind_a_unit | months minus sized_by =over"),
    (inexact.grumbled_at, "| grumbling mocking"),
    (inexact.expected_count, "| expected"),
    (counted.part_of_so_many, "| part_of"),
    (counted.counts_a_thing, "spelled"),
    (counted.too_large, "large"),
    (elsewhere.told_from_another, "above below later earlier relative_before relative_after"),
    (elsewhere.reckoned, "sum_before sum_after"),
    (elsewhere.rough, "roughly_before roughly_after"),
    (cues.lucky, "lucky_before"),
    (elsewhere.rated, "| rated"),
    (cues.chosen, "choice_before"),
    (elsewhere.belongs, "labels other_before"),
    (elsewhere.named_only, "named_before"),
    (elsewhere.somebody_elses, "reported_before family_before"),
    (elsewhere.in_brackets, "| =("),
    (elsewhere.part_of_a_name, "joined"),
    (cues.page_said, "page_said"),
    (cues.number_said, "number_said"),
    (elsewhere.said_by_something, "| saying"),
    (elsewhere.weak_before, "weak_before"),
    (elsewhere.weak_after, "weak_after"),
    (cues.chosen_after, "reported_after choice_after"),
    (cues.in_the_open, "open"),
    (elsewhere.unknown_beside, ""),
)
_ORDINAL_RULES: tuple[Rule, ...] = (
    elsewhere.part_of_a_saying,
    inexact.written_with_o,
    elsewhere.ruled_out,
    counted.measured,
    cues.ordinal_owned,
    cues.ordinal_page,
    cues.ordinal_word,
    cues.ordinal_elsewhere,
)
#: Every rule, for numbers and for ordinals.
ALL_RULES: tuple[Rule, ...] = tuple(rule for rule, _ in _RULES)
ALL_RULES_OF_ORDINALS = _ORDINAL_RULES + ALL_RULES


def _needs() -> tuple[dict[str, int], list[tuple[int, int]], int]:
    """The needs of the rules, a rule a bit: beside the number, anywhere, and those of none."""
    beside: dict[str, int] = {}
    anywhere: list[tuple[int, int]] = []
    always = 0
    for place, (_rule, needs) in enumerate(_RULES):
        names, _, elsewhere_named = needs.partition("|")
        for name in names.split():
            beside[name] = beside.get(name, 0) | 1 << place
        if elsewhere_named:
            anywhere.append((bits_of(*elsewhere_named.split()), 1 << place))
        always |= 0 if needs else 1 << place
    return beside, anywhere, always


_BESIDE, _ANYWHERE, _ALWAYS = _needs()
_WATCHED = reduce(or_, (bits for bits, _rule in _ANYWHERE))
_UNIT, _SOUNDED = bits_of("other_after"), bits_of("sounded_after", "sounded_too")


@lru_cache(maxsize=4096)
def _rules_among(bits: int) -> tuple[Rule, ...]:
    return tuple(rule for place, (rule, _) in enumerate(_RULES) if bits >> place & 1)


@lru_cache(maxsize=4096)
def _asked_anywhere(present: int) -> int:
    return sum(rule for bits, rule in _ANYWHERE if bits & present)


def rules_of(case: Case) -> tuple[Rule, ...]:
    """The rules to ask of this number, in their order."""
    scene, mention, before, after = case.scene, case.mention, case.before, case.after
    bits = _ALWAYS | _BESIDE.get(before.group, 0) | _BESIDE.get(after.group, 0)
    if watched := scene.present & _WATCHED:
        bits |= _asked_anywhere(watched)
    if before.page:
        bits |= _BESIDE["page_said"]
    if before.number:
        bits |= _BESIDE["number_said"]
    if before.joined:
        bits |= _BESIDE["joined"]
    if before.clear and after.clear:
        bits |= _BESIDE["open"]
    if mention.spelled:
        bits |= _BESIDE["spelled"]
    if mention.value is None or mention.value > LARGEST:
        bits |= _BESIDE["large"]
    at = mention.first - 1
    if at >= 0 and (scene.signs[at] & _UNIT or scene.kinds[at] == "mixed"):
        bits |= _BESIDE["behind_a_unit"]
    if mention.after < len(scene.signs) and scene.signs[mention.after] & _SOUNDED:
        bits |= _BESIDE["before_a_sounded"]
    rules = _rules_among(bits)
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
    if mention.value is None and mention.standing > stands.UNSURE:
        mention.standing = stands.PLACED
