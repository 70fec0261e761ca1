"""Rules by which a number is something else than a choice: a count, an age, somebody else's."""

from __future__ import annotations

import math
from collections.abc import Callable

from service.ballots import stands
from service.ballots.asked import ASKED_ABOUT, is_asked_of, opening_of
from service.ballots.case import SMALL_TALK, THE_WORD, Case, Verdict
from service.ballots.counted import COUNTS_ELSE, COUNTS_FOLLOWING
from service.ballots.relations import told_from
from service.ballots.scanning import DIGITS, SOFT, WORD
from service.ballots.surroundings import (
    counts_what_follows,
    in_a_saying,
    is_a_makers_code,
    is_in_brackets,
    is_of_own_piece,
    rules_out_the_next,
    word_at,
)
from service.ballots.tellings import ENGLISH

SAYING = "part of a saying"
MAY_BE = "may be a choice, said in passing"
RULED_OUT = "ruled out"
BELONGS = "belongs to the words before it"
NAMES_ELSE = "counts or names something else"
OF_OTHERS = frozenset(
    {"how many others voted", "how others voted", "the end of a range", "part of a sum"}
)
SOMEBODYS_AGE = "somebody's age, or how many they are"
#: In a comment of more words "more than 40" talks of something.
_FEW = 8
#: Marks are given out of so many.
_HIGHEST_MARK = 10
#: In so few words "over 50" tells a kind of page.
_UPWARDS_WORDS = 3
#: Words behind a number that may belong to a choice: "14 on Monday".
_MAY_FOLLOW = frozenset("page vote part point to over on next this".split())
#: Before two numbers, and behind several: they count none.
_BOTH = frozenset("both beide beiden entrambe entrambi ambas ambos".split())
_ALL = frozenset({"all", "both"})
#: Among so many words dozens are no page.
_DOZEN_TALK = 4
#: Beside a number and "today" these tell of a birthday in any language.
_CAKES = frozenset("🎂🥳🎈🎁🍰")
TOLD_FROM = ("above", "below", "later", "earlier", "relative_before")


def ruled_out(case: Case) -> Verdict:
    """As in "not 13", "anything but 13"."""
    if rules_out_the_next(case.scene, case.mention.after) and case.before.group != "not_before":
        unsure = case.after.group == "not_after"  # "25 no 52"
        return (stands.ASKED, "one of two pages is ruled out") if unsure else None
    if case.before.group == "not_before" or case.after.group == "not_after":
        return _upwards(case) or (stands.STRUCK, RULED_OUT)
    return None


def _upwards(case: Case) -> Verdict:
    """As in "over 50 please"; "33 over 32" rules one out, and more words talk."""
    at = case.before.phrase
    over = case.before.group == "not_before" and at == 0 and word_at(case.scene, at) == "over"
    if not over or case.scene.word_count() > _UPWARDS_WORDS:
        return None
    case.mention.maybe = ()
    return stands.PLACED, "a range, not one page"


def part_of_a_saying(case: Case) -> Verdict:
    """As in "three cheers for", "forty winks"."""
    return (stands.OTHER, SAYING) if in_a_saying(case.scene, case.mention) else None


def turned_today(case: Case) -> Verdict:
    """As in "27 today!!! 🎂": an age that is reached, told like a page alone."""
    scene = case.scene
    step = scene.begins("today", case.mention.after)
    behind = case.mention.after + step
    goes_on = scene.kinds[behind : behind + 1] in ([WORD], [SOFT])
    if not step or case.cued or case.before.group or goes_on:
        return None
    first, _ = scene.sentence(case.mention.first)
    # English says it without a cake as well.
    said = scene.lexicon.codes[0] == ENGLISH and first == case.mention.first and case.value > 1
    told = said or _CAKES & {token.text for token in scene.tokens}
    return (stands.ASKED, "an age or a birthday, perhaps not a page") if told else None


def told_from_another(case: Case) -> Verdict:
    """As in "the one under 12": a page told from another."""
    group = case.before.group if case.before.group in TOLD_FROM else ""
    if not group and case.after.group == "relative_after":
        group = "relative_before"
        case.mention.maybe = ()
        return stands.PLACED, "told from a place, not named"
    if not group:
        return None
    if not case.after.clear:
        return stands.OTHER, "part of other talk"
    chart = case.scene.question.chart
    case.mention.maybe = told_from(chart, case.value, group)
    if group in {"above", "below"} and case.scene.has(
        "any_of", case.before.phrase - 3, case.before.phrase
    ):
        only = case.value + 1 if group == "above" else case.value - 1
        end = only in {1, case.scene.last_page} and (only == 1) == (group == "below")
        case.mention.maybe = (only,) if end else ()
        return stands.PLACED, "a range, not one page"
    return stands.PLACED, "told from another page"


def reckoned(case: Case) -> Verdict:
    """As in "half of 80", "7 squared": a sum, which the host may work out."""
    if case.before.group == "sum_before" or case.after.group == "sum_after":
        case.mention.maybe = _reckon(case) or case.mention.maybe
        return stands.PLACED, "a sum, not a page"
    return None


def _reckon(case: Case) -> tuple[int, ...]:
    """What a sum of one number comes to, where that is whole."""
    scene, value = case.scene, case.value
    near = case.before.phrase if case.before.group == "sum_before" else case.mention.after
    for group, reckon in _RECKONED:
        step = scene.begins(group, near)
        if step:
            found = reckon(value)
            return (int(found),) if found == int(found) else ()
    return ()


_RECKONED: tuple[tuple[str, Callable[[int], float]], ...] = (
    ("halving", lambda value: value / 2),
    ("doubling", lambda value: value * 2.0),
    ("rooting", math.sqrt),
    ("squaring", lambda value: float(value * value)),
)


def rough(case: Case) -> Verdict:
    """As in "around 40"."""
    if case.before.group == "roughly_before" or case.after.group == "roughly_after":
        compared = case.scene.lexicon.group("comparing")
        than = compared.before(case.scene.tokens, case.mention.first - 1) > 0
        if than and case.scene.word_count() > _FEW:
            return stands.OTHER, "compared with something"
        # "about the 28th" tells of something, "about 28" tells a page.
        chosen = case.cued or case.after.group in {"choice_after", "roughly_after"}
        apart = case.before.group and case.before.at + 2 < case.mention.first and not chosen
        if apart and word_at(case.scene, case.mention.first - 1) in {"the", "my", "your"}:
            return stands.OTHER, "what something is about"
        case.mention.maybe = (case.value,)
        return stands.PLACED, "about there, not an exact page"
    return None


def belongs(case: Case) -> Verdict:
    """As in "aged 42", "thread 310": the words before it own the number."""
    if case.before.group == "labels" and case.scene.begins("age_labels", case.before.phrase):
        case.mention.maybe = (case.value,)
        return stands.ASKED, "an age or a birthday, perhaps not a page"
    if case.before.group == "other_before" and is_of_own_piece(case.scene, case.mention):
        return stands.OTHER, BELONGS
    if case.before.group == "other_before" and _is_one_of_two(case):
        return None
    if case.before.group in {"other_before", "labels"}:
        start, _ = case.scene.sentence(case.mention.first)
        if start == case.before.phrase and case.scene.begins("asking", start) and case.value > 3:
            return stands.UNSURE, ASKED_ABOUT
        return stands.OTHER, BELONGS
    return None


def rated(case: Case) -> Verdict:
    """As in "that's a 10 from me": a mark, or a page."""
    phrase = case.scene.lexicon.group("rated").before(case.scene.tokens, case.mention.first - 1)
    known = case.cued or case.before.group == "other_before"
    if phrase and case.value <= _HIGHEST_MARK and not known:
        return stands.ASKED, "a mark, or a page"
    return None


def _is_one_of_two(case: Case) -> bool:
    """As in "I love both 11 and 40"."""
    scene, behind = case.scene, case.mention.after
    joined = scene.begins("also", behind) == 1 and scene.kinds[behind + 1 : behind + 2] == [DIGITS]
    return joined and word_at(scene, case.before.phrase) in _BOTH


def named_only(case: Case) -> Verdict:
    """As in "I agree with 12", "imagine if you did 12": named, and not plainly chosen."""
    if case.before.group != "named_before":
        return None
    if case.value == 1 and case.mention.spelled and not case.cued:
        return stands.OTHER, THE_WORD  # "agree with this one"
    return stands.ASKED, "named, perhaps not chosen"


def somebody_elses(case: Case) -> Verdict:
    """As in "everyone says 42", "my husband wants 42"."""
    group = case.before.group
    if group not in {"reported_before", "family_before"}:
        return None
    if group == "family_before" and not case.cued and not _says_or_chooses(case):
        return stands.OTHER, SOMEBODYS_AGE
    case.mention.reported = True
    case.mention.family = group == "family_before"
    return stands.ASKED, "somebody else's"


def _says_or_chooses(case: Case) -> bool:
    """As in "ze wil 44": what she wants, not how old she is."""
    lexicon, tokens, at = case.scene.lexicon, case.scene.tokens, case.mention.first - 1
    return any(lexicon.group(group).before(tokens, at) for group in ("choice_before", "saying"))


def in_brackets(case: Case) -> Verdict:
    """As in "my mum (86)"."""
    if is_in_brackets(case.scene, case.mention) and not case.cued:
        return stands.OTHER, "told in passing, such as an age"
    return None


def part_of_a_name(case: Case) -> Verdict:
    """As in "Hatch-22": joined to an unknown word by a hyphen."""
    if case.before.joined and not case.before.clear and not case.cued:
        return stands.OTHER, "part of a name"
    return None


def said_by_something(case: Case) -> Verdict:
    """As in "the leaflet says 1": who or what says it is not the writer."""
    scene, at = case.scene, case.mention.first - 1
    step = scene.lexicon.group("saying").before(scene.tokens, at)
    if not step or case.before.group or case.cued or case.after.group == "choice_after":
        return None
    subject = word_at(scene, at - step)
    if not subject or scene.begins("own_voice", at - step):
        return None
    return stands.UNSURE, "said by somebody or something"


def weak_before(case: Case) -> Verdict:
    """After a bare preposition or "have": mostly something else, a choice if said so."""
    if case.before.group != "weak_before":
        return None
    if case.mention.spelled and case.value == 1 and not case.cued:
        return stands.OTHER, THE_WORD
    if case.after.group == "choice_after":
        begun = case.scene.begins("begun_after", case.mention.after)
        return (stands.CUED, "words of choice around it") if begun else (stands.UNSURE, MAY_BE)
    start = opening_of(case.scene, case.mention)
    asked = not case.is_small_word and case.scene.begins("asking", start)
    if asked and case.scene.begins("asking", case.before.phrase):
        return stands.UNSURE, "asked about"
    if not case.after.clear or case.after.group == "weak_after" or case.is_small_word:
        return stands.OTHER, NAMES_ELSE
    return stands.UNSURE, "may belong to the words before it"


def weak_after(case: Case) -> Verdict:
    """As in "62 to go": counted unless it is plainly chosen."""
    if case.after.group != "weak_after" or _is_all_of_several(case):
        return None
    if case.before.clear and not case.is_small_word and is_asked_of(case.scene, case.mention):
        return stands.ASKED, ASKED_ABOUT
    word = word_at(case.scene, case.mention.after)
    may_be = word in _MAY_FOLLOW
    if case.before.clear and may_be and not case.is_small_word:
        return stands.UNSURE, "may be a choice"
    return stands.OTHER, COUNTS_ELSE


def _is_all_of_several(case: Case) -> bool:
    """As in "20 and 40 and 60 all look lovely"."""
    scene, at = case.scene, case.mention.first - 1
    listed = at > 0 and scene.kinds[at - 1] == DIGITS and scene.begins("also", at) > 0
    return listed and word_at(scene, case.mention.after) in _ALL


def unknown_beside(case: Case) -> Verdict:
    """Beside words that the reader does not know, a number is looked at."""
    rough = case.mention.shape == "vague" and case.scene.word_count() > _DOZEN_TALK
    if case.is_small_word or rough:
        return stands.OTHER, SMALL_TALK
    if case.value == 1 and not case.after.clear and case.before.group != "choice_before":
        return stands.OTHER, COUNTS_FOLLOWING
    if is_a_makers_code(case.scene, case.mention):
        return stands.OTHER, "the number of a maker's code"
    if counts_what_follows(case.scene, case.after) and case.value != 1:
        sure = case.scene.word_count() > 4
        return stands.OTHER if sure else stands.UNSURE, "counts what follows"
    return stands.UNSURE, "beside words that say nothing the reader knows"
