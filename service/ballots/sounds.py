"""Numbers that stand for the words they sound like: "forty to", "thx 4 the video", "me two"."""

from __future__ import annotations

from service.ballots import stands
from service.ballots.beside import read_after
from service.ballots.case import Case, Verdict
from service.ballots.scanning import DIGITS
from service.ballots.surroundings import word_at

#: What "too" sounds like.
TOO = 2
_MUCH = frozenset({"much", "many"})
#: Written for "to" and "for".
_LETTERS = frozenset({"2", "4"})


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
    if case.cued or "choice" in case.before.group or case.after.group == "choice_after":
        return None
    if case.value == TOO and _is_said_for_too(case):
        return stands.OTHER, "stands for a word"
    if mention.shape != "digits" or case.value not in scene.lexicon.homophones.values():
        return None
    word = word_at(scene, mention.first - 1) or scene.begins("digit_words", mention.first - 1)
    spoken = word and scene.begins("sounded_after", mention.after)
    if spoken or _is_written_for_too(case):
        return stands.OTHER, "stands for a word"
    return None


def _is_said_for_too(case: Case) -> bool:
    """As in "me two!!": those words and no others make up the clause."""
    scene, mention = case.scene, case.mention
    start, end = scene.clause(mention.first, mention.after)
    step = scene.lexicon.group("sounded_before").before(scene.tokens, mention.first - 1)
    return step > 0 and start == mention.first - step and end == mention.after


def _is_written_for_too(case: Case) -> bool:
    """As in "2 cute!!", "this is 2 funny"; "2 good luck" may be a vote and a wish."""
    scene, behind = case.scene, case.mention.after
    step = scene.begins("sounded_too", behind) if case.value == TOO else 0
    if not step or scene.lexicon.after(scene.tokens, behind)[1] > step:
        return False
    numbered = scene.kinds[behind + step : behind + step + 1] == [DIGITS]
    # "2 excited 2 sleep"
    ends = (
        scene.tokens[behind + step].text in _LETTERS
        if numbered
        else not word_at(scene, behind + step)
    )
    return (
        ends
        or word_at(scene, behind) in _MUCH
        or bool(word_at(scene, case.mention.first - 1))
        or scene.has("digit_words", 0, len(scene.tokens))
    )
