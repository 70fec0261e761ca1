"""Rules by which a number counts or measures something: cats, hours, votes of others, stitches."""

from __future__ import annotations

from service.ballots import stands
from service.ballots.case import PAGE_SAID, Case, Verdict
from service.ballots.scanning import DIGITS, SOFT, WORD
from service.ballots.surroundings import (
    NO_THINGS,
    is_a_date,
    is_a_smaller_unit,
    is_fabric,
    rules_out_the_next,
    word_at,
)

COUNTS_FOLLOWING = "counts what follows"
COUNTS_ELSE = "counts something else"
MEASURED = "counts or measures something else"
#: Rules by which a number counts something.
COUNTED = frozenset({COUNTS_ELSE, COUNTS_FOLLOWING, MEASURED})
#: No chart has more pages; a number above is a year or a count.
LARGEST = 999


def tallied(case: Case) -> Verdict:
    """As in "6 votes for 12": how many voted for it, not a vote for it."""
    scene = case.scene
    if case.after.group == "other_after":
        return None
    first = case.before.phrase
    beyond = case.mention.after + 1
    counted_for = word_at(scene, beyond - 1) == "for" and beyond < len(scene.tokens)
    if _is_an_offer(case):
        return stands.OTHER, "an offer"
    if counted_for and scene.tokens[beyond].kind == DIGITS and not case.cued:
        return stands.OTHER, "how many others voted"
    if case.before.group != "tally_before":
        if word_at(scene, case.mention.first - 1) != "for":
            return None
        first = case.mention.first - 1
    counted = scene.tokens[first - 1].text if first > 0 else ""
    if first > 1 and scene.lexicon.before(scene.tokens, first - 2)[0] == "not_before":
        return None  # "instead of 12 I take 14"
    several = counted.isdigit() and counted != "1"
    if several or (counted in scene.lexicon.numbers and scene.lexicon.numbers[counted] > 1):
        case.mention.reported = True
        return stands.ASKED, "how others voted"
    return None


def _is_an_offer(case: Case) -> bool:
    """As in "It was 2 for 1 on hoops": so many for the price of fewer."""
    scene, mention = case.scene, case.mention
    paid = scene.kinds[mention.after + 1 : mention.after + 2] == ["money"]
    if paid and word_at(scene, mention.after) == "for":
        return not case.cued  # "2 for £5"
    for left, right in ((mention.first, mention.first + 2), (mention.first - 2, mention.first)):
        sides = [scene.tokens[at].text for at in (left, right) if 0 <= at < len(scene.tokens)]
        if word_at(scene, left + 1) == "for" and len(sides) == 2 and max(map(len, sides)) == 1:
            few = all(side.isdecimal() for side in sides) and 0 < int(sides[1]) < int(sides[0]) < 6
            return few and not case.cued and case.after.group != "choice_after"
    return False


def pages_said_back(case: Case) -> Verdict:
    """As in "63ページ！", "63 страницы": how many pages the chart has; alone it may be the last."""
    scene, behind = case.scene, case.mention.after
    step = scene.begins("counting_pages", behind)
    if (
        not step
        or case.value != scene.last_page
        or case.cued
        or case.before.group == "choice_before"
    ):
        return None
    beyond = behind + step
    while beyond < len(scene.kinds) and scene.kinds[beyond] == SOFT:
        beyond += 1
    if scene.begins("choice_after", beyond):
        return None
    others = (*scene.tokens[: case.mention.first], *scene.tokens[behind + step :])
    plain = scene.lexicon.plain_words
    alone = all(token.kind != WORD or token.text in plain for token in others)
    return stands.ASKED if alone else stands.OTHER, "the number of pages said back"


def measured(case: Case) -> Verdict:
    """As in "3 cats", "14 count", "2 over 1"."""
    if case.before.page:
        return None
    if _is_below_nought(case):
        case.mention.value = -case.value
        return stands.CUED, PAGE_SAID
    if case.after.group == "other_after":
        no_count = _is_of_the_chart(case) or rules_out_the_next(case.scene, case.mention.after)
        return None if no_count else (stands.OTHER, MEASURED)
    if is_a_date(case.scene, case.mention):
        return stands.OTHER, "a date"
    if is_fabric(case.scene, case.mention):
        return stands.OTHER, "fabric and thread"
    if is_a_smaller_unit(case.scene, case.mention) and case.after.group != "choice_after":
        return stands.OTHER, MEASURED
    if not case.cued and _is_a_length(case):
        return stands.OTHER, "a size"
    minus = case.scene.lexicon.group("minus").before(case.scene.tokens, case.mention.first - 1)
    begins = case.mention.first == 1 or case.before.phrase < 0
    return _below_nought(case) if minus and begins else None


def _below_nought(case: Case) -> Verdict:
    """As in "minus 7 degrees"; where no more is said it is a page that no chart has."""
    scene = case.scene
    plain = scene.lexicon.plain_words
    behind = scene.tokens[case.mention.after :]
    alone = all(t.text in plain if t.kind == WORD else t.kind != DIGITS for t in behind)
    if case.mention.first == 1 and alone:
        case.mention.value = -case.value
        return stands.ALONE, "below nought"
    return stands.OTHER, "below nought"


def _is_below_nought(case: Case) -> bool:
    """As in "page minus four"."""
    lexicon, tokens, first = case.scene.lexicon, case.scene.tokens, case.mention.first
    step = lexicon.group("minus").before(tokens, first - 1)
    return step > 0 and lexicon.group("page").before(tokens, first - 1 - step) > 0


def _is_of_the_chart(case: Case) -> bool:
    """As in "number 17 of the 63": of so many pages as the chart has."""
    behind = case.scene.tokens[case.after.at : case.after.at + 1]
    whole = bool(behind) and behind[0].text == str(case.scene.last_page)
    return whole and case.before.number and case.scene.begins("part_of", case.mention.after) > 0


def _is_a_length(case: Case) -> bool:
    """As in "24 by 18": how wide and how high."""
    scene, mention = case.scene, case.mention
    if scene.begins("sized_by", mention.after):
        beyond = mention.after + 1
        return beyond < len(scene.tokens) and scene.kinds[beyond] == DIGITS
    by = scene.lexicon.group("sized_by").before(scene.tokens, mention.first - 1)
    return by > 0 and mention.first > 1 and scene.kinds[mention.first - 2] == DIGITS


def part_of_so_many(case: Case) -> Verdict:
    """As in "session 5 of 8": so many of a number that is not the chart's."""
    scene, mention = case.scene, case.mention
    if case.cued or mention.spelled or case.after.group == "choice_after":
        return None
    if scene.has("replacing", 0, mention.first):
        return None  # "12 na 14": 12 for 14
    behind = mention.after + scene.begins("part_of", mention.after)
    if behind > mention.after:
        whole = scene.tokens[behind : behind + 1]
        other = int(whole[0].text[:4]) if whole and whole[0].kind == DIGITS else 0
        return (stands.OTHER, COUNTS_ELSE) if case.value <= other != scene.last_page else None
    at = mention.first - scene.lexicon.group("part_of").before(scene.tokens, mention.first - 1) - 1
    part = at >= 0 and at < mention.first - 1 and scene.kinds[at] == DIGITS
    if part and int(scene.tokens[at].text[:4]) <= case.value != scene.last_page:
        return stands.OTHER, COUNTS_ELSE
    return None


def too_large(case: Case) -> Verdict:
    """Years, likes and stitches run beyond any chart's pages."""
    bare = not case.before.page and case.before.group != "choice_before"
    if bare and case.value > LARGEST:
        return stands.OTHER, "too large for a page: a year or a count"
    return None


def counts_a_thing(case: Case) -> Verdict:
    """As in "three kisses": a small number in words before things, whatever else they may be."""
    word = word_at(case.scene, case.mention.after)
    thing = (
        case.scene.lexicon.plural_s
        and len(word) > 4
        and word.endswith("s")
        and not word.endswith("ss")
    )
    if case.is_small_word and not case.cued and thing and not case.after.group:
        return None if word in NO_THINGS else (stands.OTHER, COUNTS_FOLLOWING)
    return None
