"""Rules by which a number is something else than a choice: a count, an age, somebody else's."""

from __future__ import annotations

from service.ballots import stands
from service.ballots.beside import read_after
from service.ballots.case import SMALL_TALK, THE_WORD, Case, Verdict
from service.ballots.counted import COUNTS_ELSE, COUNTS_FOLLOWING
from service.ballots.relations import told_from
from service.ballots.scanning import DIGITS
from service.ballots.surroundings import (
    counts_what_follows,
    in_a_saying,
    is_a_makers_code,
    is_in_brackets,
    is_of_own_piece,
    word_at,
)
from service.ballots.tellings import ENGLISH

RULED_OUT = "ruled out"
BELONGS = "belongs to the words before it"
NAMES_ELSE = "counts or names something else"
OF_OTHERS = frozenset(
    {"how many others voted", "how others voted", "the end of a range", "part of a sum"}
)
SOMEBODYS_AGE = "somebody's age, or how many they are"
#: In a comment of more words "more than 40" talks of something.
_FEW = 8
_ALL = frozenset({"all", "both"})
#: What "too" sounds like.
TOO = 2
#: Beside a number and "today" these tell of a birthday in any language.
_CAKES = frozenset("🎂🥳🎈🎁🍰")
_TOLD_FROM = frozenset({"above", "below", "later", "earlier", "relative_before"})


def ruled_out(case: Case) -> Verdict:
    """As in "not 13", "anything but 13"."""
    if case.before.group == "not_before" or case.after.group == "not_after":
        return stands.STRUCK, RULED_OUT
    return None


def part_of_a_saying(case: Case) -> Verdict:
    """As in "three cheers for", "forty winks"."""
    return (stands.OTHER, "part of a saying") if in_a_saying(case.scene, case.mention) else None


def written_with_o(case: Case) -> Verdict:
    """As in "2O": a capital O for a nought, not the end of an ordinal."""
    scene, token = case.scene, case.scene.tokens[case.mention.first]
    if token.kind == "ordinal" and token.text.endswith("o") and len(scene.kinds) == 1:
        case.mention.maybe = (case.value, case.value * 10)  # "3o" is an ordinal, or a slip
        return stands.ASKED, "letters that look like digits"
    start, end = scene.span(case.mention.first, case.mention.first + 1)
    if token.kind != "ordinal" or not scene.text[start:end].endswith("O"):
        return None
    case.mention.value = case.value * 10
    return stands.ASKED, "letters that look like digits"


def misheard(case: Case) -> Verdict:
    """As in "Forty to please": voice typing may have hidden a second digit."""
    scene, value = case.scene, case.value
    if not case.mention.spelled or not 20 <= value < 100 or value % 10:
        return None
    hidden = scene.lexicon.homophones.get(word_at(scene, case.mention.after))
    if hidden is None:
        return None
    beyond = read_after(scene, case.mention.after + 1)
    if beyond.group not in {"", "choice_after"} or (beyond.phrase >= 0 and not beyond.group):
        return None
    case.mention.maybe = (value, value + hidden)
    return stands.PLACED, "a word that sounds like a number may belong to it"


def stands_for_a_word(case: Case) -> Verdict:
    """As in "thx 4 the video", "luv 2 watch": a digit written for the word it sounds like."""
    scene, mention = case.scene, case.mention
    if mention.shape != "digits" or case.value not in scene.lexicon.homophones.values():
        return None
    if case.cued or "choice" in case.before.group or case.after.group == "choice_after":
        return None
    word = word_at(scene, mention.first - 1) or scene.begins("digit_words", mention.first - 1)
    spoken = word and scene.begins("sounded_after", mention.after)
    if spoken or _is_written_for_too(case):
        return stands.OTHER, "stands for a word"
    return None


def _is_written_for_too(case: Case) -> bool:
    """As in "2 cute!!", "this is 2 funny"; "2 good luck" may be a vote and a wish."""
    scene, behind = case.scene, case.mention.after
    step = scene.begins("sounded_too", behind) if case.value == TOO else 0
    if not step or scene.lexicon.after(scene.tokens, behind)[1] > step:
        return False
    ends = not word_at(scene, behind + step) and scene.kinds[behind + step : behind + step + 1] != [
        DIGITS
    ]
    return (
        ends
        or bool(word_at(scene, case.mention.first - 1))
        or scene.has("digit_words", 0, len(scene.tokens))
    )


def turned_today(case: Case) -> Verdict:
    """As in "27 today!!! 🎂": an age that is reached, told like a page alone."""
    scene = case.scene
    step = scene.begins("today", case.mention.after)
    if not step or case.cued or case.before.group or word_at(scene, case.mention.after + step):
        return None
    first, _ = scene.sentence(case.mention.first)
    # English says it without a cake as well.
    said = scene.lexicon.codes[0] == ENGLISH and first == case.mention.first and case.value > 1
    told = said or _CAKES & {token.text for token in scene.tokens}
    return (stands.ASKED, "an age or a birthday, perhaps not a page") if told else None


def told_from_another(case: Case) -> Verdict:
    """As in "the one under 12": a page told from another."""
    group = case.before.group if case.before.group in _TOLD_FROM else ""
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
    return stands.PLACED, "told from another page"


def reckoned(case: Case) -> Verdict:
    """As in "half of 80", "7 squared": a sum, which the host may work out."""
    if case.before.group == "sum_before" or case.after.group == "sum_after":
        return stands.PLACED, "a sum, not a page"
    return None


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
    if case.before.group in {"other_before", "labels"}:
        start, _ = case.scene.sentence(case.mention.first)
        if start == case.before.phrase and case.scene.begins("asking", start) and case.value > 3:
            return stands.UNSURE, "asked about, not chosen"
        return stands.OTHER, BELONGS
    return None


def named_only(case: Case) -> Verdict:
    """As in "I agree with 12", "imagine if you did 12": named, and not plainly chosen."""
    return (
        (stands.ASKED, "named, perhaps not chosen") if case.before.group == "named_before" else None
    )


def somebody_elses(case: Case) -> Verdict:
    """As in "everyone says 42", "my husband wants 42"."""
    group = case.before.group
    if group not in {"reported_before", "family_before"}:
        return None
    if group == "family_before" and not case.cued:
        return stands.OTHER, SOMEBODYS_AGE
    case.mention.reported = True
    case.mention.family = group == "family_before"
    return stands.ASKED, "somebody else's"


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
        return stands.UNSURE, "may be a choice"
    start, _ = case.scene.sentence(case.mention.first)
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
    word = word_at(case.scene, case.mention.after)
    may_be = word in {"page", "vote", "part", "point", "to", "over"}
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
    if case.is_small_word:
        return stands.OTHER, SMALL_TALK
    if case.value == 1 and not case.after.clear and case.before.group != "choice_before":
        return stands.OTHER, COUNTS_FOLLOWING
    if is_a_makers_code(case.scene, case.mention):
        return stands.OTHER, "the number of a maker's code"
    if counts_what_follows(case.scene, case.after) and case.value != 1:
        sure = case.scene.word_count() > 4
        return stands.OTHER if sure else stands.UNSURE, "counts what follows"
    return stands.UNSURE, "beside words that say nothing the reader knows"
