"""Rules by which a number is not quite the page it names: vague, turned round, a grumble, a count."""

from __future__ import annotations

from service.ballots import stands
from service.ballots.case import PAGE_SAID, Case, Verdict
from service.ballots.counted import MEASURED
from service.ballots.scanning import SOFT, WORD
from service.ballots.scene import Scene
from service.ballots.surroundings import is_number

#: A saying begins at most so many words before its number.
_REACH = 4
#: What many thousands or millions at least multiply.
_THOUSAND = 1000
_CUES = frozenset({"fillers", "page", "number"})


def may_be_a_saying(case: Case) -> Verdict:
    """As in "give me five!": a saying, or a page."""
    scene, first = case.scene, case.mention.first
    if case.cued or case.after.group == "choice_after":
        return None
    for at in range(max(first - _REACH, 0), first + 1):
        if at + scene.begins("maybe_sayings", at) > first:
            return stands.ASKED, "a saying, or a page"
    return None


def beyond_any_chart(case: Case) -> Verdict:
    """As in "page one million", "page 5 thousand": never the number before it alone."""
    scene, mention = case.scene, case.mention
    step = scene.begins("huge", mention.after)
    if not step or mention.value is None:
        return None
    mention.value *= _THOUSAND
    mention.after += step
    return (stands.CUED, PAGE_SAID) if case.before.page else (stands.OTHER, MEASURED)


def vaguely_told(case: Case) -> Verdict:
    """As in "page fifty something", "forty-odd": some page above it."""
    scene, at = case.scene, case.mention.after
    at += at < len(scene.tokens) and scene.tokens[at].text == "-"
    step = scene.begins("vague_after", at)
    told = case.before.group in {"other_before", "not_before"} and not case.cued
    if not step or told or not case.value or case.value % 10:
        return None
    behind = at + step
    goes_on = scene.kinds[behind : behind + 1] == [WORD] and not scene.begins(
        "choice_after", behind
    )
    if goes_on:  # "forty-odd stitches", "page fifty something tells me"
        return (stands.ASKED, "perhaps not an exact page") if case.before.page else None
    case.mention.maybe = ()
    return stands.PLACED, "a kind of page, not one page"


def turned_round(case: Case) -> Verdict:
    """As in "page 16 but backwards": it, or 61."""
    scene, at = case.scene, case.mention.after
    while at < len(scene.tokens) and (scene.kinds[at] == SOFT or scene.begins("turning", at) == 1):
        at += 1
    step = scene.begins("reversed_after", at)
    behind = at + step
    goes_on = scene.kinds[behind : behind + 1] == [WORD]
    if not step or case.value <= 0 or (goes_on and not scene.begins("choice_after", behind)):
        return None
    case.mention.maybe = (case.value, int(str(case.value)[::-1]))
    return stands.ASKED, "a number to be turned round"


def grumbled_at(case: Case) -> Verdict:
    """As in "so tired of 13 winning these", "sick of page 21": what others choose."""
    scene, mention = case.scene, case.mention
    again = scene.begins("again", mention.after)
    wished = scene.begins("choice_after", mention.after + again) > 0
    mocking = scene.has("mocking", 0, len(scene.tokens))
    scoffed = scene.begins("scoffing", 0) > 0 and mention.first < scene.sentence(0)[1]
    mocked = mocking and ((again and not wished) or scoffed)
    tired = scene.lexicon.group("grumbling")
    if not mocked and not tired.before(scene.tokens, before_cues(scene, mention.first)):
        return None
    ends = scene.kinds[mention.after : mention.after + 1] != [WORD]
    if not (mocked or case.before.page or ends or scene.begins("popular_after", mention.after)):
        return None
    mention.reported = True
    return stands.ASKED, "a grumble at what others choose"


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


def expected_count(case: Case) -> Verdict:
    """As in "37 stitches where there should be 36": how many there should have been."""
    scene, first = case.scene, case.mention.first
    step = scene.lexicon.group("expected").before(scene.tokens, first - 1)
    if not step or case.cued:
        return None
    start, _ = scene.sentence(first)
    before = range(start, first - step)
    numbered = any(is_number(scene, at) for at in before)
    counted = numbered and scene.has("other_after", start, first - step)
    return (stands.OTHER, MEASURED) if counted else None


def own_number(case: Case) -> Verdict:
    """As in "My jersey number, it was 23": the writer's own, perhaps not a page."""
    scene, first = case.scene, case.mention.first
    at = scene.find("own_numbers", max(first - 2 * _REACH, 0), first)
    if at < 0 or case.cued:
        return None
    between = range(at + scene.begins("own_numbers", at), first)
    known = scene.lexicon.plain_words
    told = any(scene.kinds[place] == SOFT for place in between) and any(
        scene.begins(group, place) for place in between for group in ("it_is", "being")
    )
    plain = all(
        scene.kinds[place] == SOFT
        or scene.tokens[place].text in known
        or scene.begins("being", place)
        for place in between
    )
    if not (told and plain):
        return None
    case.mention.maybe = (case.value,)
    return stands.ASKED, "a number of the writer's own, perhaps not a page"


def sided_with(case: Case) -> Verdict:
    """As in "I'm with the 37 people": those who chose it, not how many they are."""
    scene, mention = case.scene, case.mention
    if not scene.begins("sided_with", mention.after):
        return None
    if not scene.lexicon.group("siding").before(scene.tokens, mention.first - 1):
        return None
    mention.reported = True
    return stands.ASKED, "agrees with those who chose it"


def before_cues(scene: Scene, first: int) -> int:
    """The last token before the cues, articles and the like that stand right before `first`."""
    at = first - 1
    while at >= 0:
        group, count = scene.lexicon.before(scene.tokens, at)
        if group not in _CUES and scene.tokens[at].text != "#":
            break
        at -= count or 1
    return at
