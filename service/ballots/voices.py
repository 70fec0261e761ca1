"""Whose number it is, and how it is meant: asked about, reported, quoted, on a condition, an age."""

from __future__ import annotations

from service.ballots import stands
from service.ballots.asked import (
    ANSWERED,
    ASKED_ABOUT,
    ASKING,
    LATER,
    hangs_on_an_answer,
    is_asked_later,
    lower,
    read_question,
)
from service.ballots.conditions import CONDITIONS, is_numbered, read_condition
from service.ballots.counted import MEASURED
from service.ballots.elsewhere import SOMEBODYS_AGE
from service.ballots.lexicon import NUMBER, bits_of
from service.ballots.mention import Mention
from service.ballots.scanning import DIGITS, END, SOFT, WORD
from service.ballots.scene import Scene

_AGE_REACH = 8
#: "my birthday for the page please, it's the 7th".
_AGE_REACH_BEFORE, _DAY_REACH = 6, 10
#: Words of which one must stand, or quotation marks, where a number is not the writer's own.
_REPORTING = bits_of("reported_before", "family_before")
_AGES = bits_of("ages")
_CROWDS = bits_of("crowds", "others_choose")
#: "everybody and their 3 aunts".
_CROWD_REACH = 4
_WISHES = bits_of("wishing")
_TOO = bits_of("chosen_too", "letting_choose")
VOICES = ANSWERED | LATER | ASKING | _REPORTING | _CROWDS | _AGES | CONDITIONS | _WISHES
#: So many words may stand between a wish and the page that is wished for.
_WISH_REACH = 10


def read_voices(scene: Scene, mentions: list[Mention]) -> None:
    """Lower the mentions that are not plainly the writer's own choice."""
    for at, mention in enumerate(mentions):
        if mention.standing < stands.ASKED:
            continue
        start, end = scene.sentence(mention.first)
        if scene.present & _TOO and _is_chosen_too(scene, mentions, mention):
            mention.reported = mention.family = False
            mention.standing, mention.rule = stands.CUED, "chosen as somebody else did"
        elif scene.quoted and _is_quoted_for_another(scene, mention):
            lower(mention, stands.STRUCK, "words given to somebody else")
        elif mention.standing == stands.ASKED:
            read_condition(scene, mention, end)
        elif scene.present & LATER and is_asked_later(scene, mentions, at):
            lower(mention, stands.ASKED, ASKED_ABOUT)
        elif scene.present & ANSWERED and hangs_on_an_answer(scene, mentions, at):
            mention.conditional = mention.depends = True
            lower(mention, stands.ASKED, "only if something else holds")
        elif not (scene.present & ASKING and read_question(scene, mention, start, end)):
            _read_told(scene, mentions, at, start, end)


def _is_chosen_too(scene: Scene, mentions: list[Mention], mention: Mention) -> bool:
    """As in "the parrot votes 14 and so do I", "I let my daughter pick and she says 12"."""
    if scene.begins("chosen_too", mention.after):
        return True
    only = {one.value for one in mentions if one.standing >= stands.ASKED} == {mention.value}
    unsure = mention.standing > stands.ASKED or mention.family
    return only and unsure and scene.has("letting_choose", 0, mention.first)


def doubt_the_told(scene: Scene, mentions: list[Mention]) -> None:
    """As in "42?? Everybody says 42", "14?? why 14??": asked about, or others are said to choose it."""
    told = {one.value for one in mentions if one.reported or one.rule == ASKED_ABOUT}
    for one in mentions if told else ():
        bare = stands.BARE <= one.standing <= stands.ALONE
        if bare and one.value in told and scene.is_question(one.first):
            lower(one, stands.ASKED, ASKED_ABOUT)


def _read_told(scene: Scene, mentions: list[Mention], at: int, start: int, end: int) -> None:
    """Lower a mention that somebody else's words, an age or a condition are told with."""
    mention, present = mentions[at], scene.present
    behind = mentions[at - 1].after if at else 0
    crowd = present & _CROWDS and _is_of_a_crowd(scene, mentions, at)
    if crowd or (present & _REPORTING and _is_reported(scene, mention, start, behind)):
        mention.reported = True
        lower(mention, stands.ASKED, "somebody else's, or an earlier vote")
        counted = at > 0 and mentions[at - 1].rule == MEASURED and _is_it(scene, mention, start)
        if mention.family and counted and start <= mentions[at - 1].first:
            lower(mention, stands.OTHER, MEASURED)  # "14 projects (my husband thinks it's 3)"
        elif mention.family and _tells_an_age(scene, mention):
            lower(mention, stands.OTHER, SOMEBODYS_AGE)
    elif present & _AGES and _is_an_age(scene, mention):
        lower(mention, stands.ASKED, "an age or a birthday, perhaps not a page")
    elif present & _WISHES and _is_wished_for(scene, mention, start, end):
        lower(mention, stands.ASKED, "wished for, perhaps not chosen")
    elif present & CONDITIONS:
        following = mentions[at + 1].first if at + 1 < len(mentions) else end
        read_condition(scene, mention, min(end, max(following, mention.after)))


def _is_of_a_crowd(scene: Scene, mentions: list[Mention], at: int) -> bool:
    """As in "everybody and their 3 aunts picks page 7": a number is part of who they are."""
    if not at or mentions[at - 1].standing not in {stands.OTHER, stands.UNSURE}:
        return False
    counted = mentions[at - 1].first
    crowd = scene.has("crowds", counted - _CROWD_REACH, counted)
    between = range(counted + 1, mentions[at].first)
    # "my husband of 30 years wants page 51"
    chosen = crowd or scene.has("others_choose", between.start, between.stop)
    return chosen and not any(
        scene.kinds[place] != WORD
        or scene.tokens[place].text in _OWN
        or scene.begins("own_voice", place)
        or scene.begins("being", place)
        for place in between
    )


def _is_wished_for(scene: Scene, mention: Mention, start: int, end: int) -> bool:
    """As in "If I had a vote I'd say 30", "I'd vote 8 if I were brave"."""
    if scene.is_question(mention.first):
        return False  # "and if it were 18?" suggests it
    first = max(start, mention.first - _WISH_REACH)
    for at in range(first, min(end, mention.after + _WISH_REACH)):
        step = scene.begins("wishing", at)
        if not step or scene.begins("suggesting", at) > step:
            continue
        between = (at + step, mention.first) if at < mention.first else (mention.after, at)
        if not scene.has("turning", *between):
            return True
    return False


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
    near = (max(first - 9, 0), first), (last, min(last + 7, len(tokens)))
    for start, end in near:
        at = scene.find("saying", start, end)
        if at >= 0:
            return not _says_it_oneself(scene, at)
    beside = (near[0], (last, min(last + 3, len(tokens))))
    words = {token.text for start, end in beside for token in tokens[start:end]}
    return words.isdisjoint(_SPEAKERS_SELF) and any(
        scene.has("family_before", start, end) for start, end in near
    )


def _says_it_oneself(scene: Scene, at: int) -> bool:
    """As in "I said" and "said I", not "the lady before me said"."""
    beside = scene.tokens[max(at - 2, 0) : at] + scene.tokens[at + 1 : at + 2]
    return bool({token.text for token in beside} & _SPEAKERS_SELF)


_SPEAKERS_SELF = frozenset("i we i'm i've i'd ich je yo io eu ik".split())


_OWN = frozenset({"me", "us"})


def _is_reported(scene: Scene, mention: Mention, start: int, behind: int) -> bool:
    """Whether a subject other than the writer stands close before it, or an earlier round.

    `behind` is the token after the number before it: "32 last time, 33 now" says that of the 32.
    """
    step = scene.begins("reported_after", behind) if behind > start else 0
    if step and scene.kinds[behind + step : behind + step + 1] == [SOFT]:
        behind += step
    near = max(start, behind, mention.first - 6)
    for at in range(mention.first - 1, near - 1, -1):
        if scene.begins("own_voice", at) and not _begins_report(scene, at):
            near = at + 1
            break
    step = scene.begins("choice_after", mention.after)
    words = {token.text for token in scene.tokens[mention.after : mention.after + step]}
    own = not words.isdisjoint(_OWN)
    for group in ("reported_before", "family_before"):
        if own and group == "family_before":
            break  # "2 kids asleep, 12 for me"
        at = _find_whole(scene, group, near, mention.first)
        if at > 0 and scene.begins("if_words", at - 1) and is_numbered(scene, at):
            continue  # "21, if somebody's had it then 22" is a condition
        if at >= 0 and _is_in_a_choice(scene, at):
            continue  # "it would make my day if you picked 31"
        if at >= 0 and _points_and_ends(scene, at, mention.first):
            continue  # "same as last time, 5 please"
        if at >= 0 and not _is_spoken_to(scene, group, at, mention.first):
            mention.family = group == "family_before"
            return True
    return False


def _is_in_a_choice(scene: Scene, at: int) -> bool:
    """Whether words of choice begin before token `at` and go on behind it."""
    return any(
        start + scene.begins("choice_before", start) > at + 1 for start in range(max(at - 5, 0), at)
    )


def _points_and_ends(scene: Scene, at: int, end: int) -> bool:
    """Whether words that point at an earlier vote cover token `at`, and a mark ends them."""
    for start in range(max(at - 3, 0), at):
        beyond = start + scene.begins("pointing", start)
        if at < beyond < end and scene.kinds[beyond] != WORD:
            return True
    return False


def _is_it(scene: Scene, mention: Mention, start: int) -> bool:
    """Whether "it's" stands right before the number."""
    before = scene.lexicon.group("it_is").before(scene.tokens, mention.first - 1)
    return before > 0 and not mention.cued_by_page and start < mention.first


def _tells_an_age(scene: Scene, mention: Mention) -> bool:
    """As in "The kids are 4, 7 and 11": no more than "are" and numbers stand between."""
    if mention.cued_by_page:
        return False
    at = mention.first - 1
    while at >= 0 and (
        scene.kinds[at] in {SOFT, DIGITS} or scene.signs[at] & NUMBER or scene.begins("also", at)
    ):
        at -= 1
    told = at > 0 and scene.begins("being", at) == 1
    return told and scene.lexicon.group("family_before").before(scene.tokens, at - 1) > 0


def _find_whole(scene: Scene, group: str, start: int, end: int) -> int:
    """The first token at which a phrase of the group begins that ends before `end`; -1 for none."""
    at = scene.find(group, start, end)
    while at >= 0 and at + scene.begins(group, at) > end:
        at = scene.find(group, at + 1, end)
    return at


def _begins_report(scene: Scene, at: int) -> bool:
    """As in "I was going to say": the writer's own, but no choice."""
    return any(scene.begins("reported_before", place) for place in (at, at + 1))


def _is_spoken_to(scene: Scene, group: str, at: int, end: int) -> bool:
    """As in "Hello everyone, 42 please": spoken to, not of."""
    step = scene.begins(group, at)
    beyond = at + step
    return step == 1 and beyond < end and scene.tokens[beyond].kind in {SOFT, END, "other"}


def _is_an_age(scene: Scene, mention: Mention) -> bool:
    """A bare number with "my age" or "the year I was born" beside it."""
    told = mention.standing >= stands.CUED and mention.shape != "ordinal"
    if told or mention.shape == "place":
        return False
    end = min(mention.after + _AGE_REACH, len(scene.tokens))
    behind = scene.find("ages", mention.after, end)
    if behind >= 0 and not _tells_its_own(scene, behind):
        return True
    reach = _DAY_REACH if mention.shape == "ordinal" else _AGE_REACH_BEFORE
    ahead = scene.find("ages", max(mention.first - reach, 0), mention.first)
    return ahead >= 0 and not mention.lucky


def _tells_its_own(scene: Scene, at: int) -> bool:
    """As in "17, since my birthday is the 23rd": the birthday has its own number."""
    beyond = at + scene.begins("ages", at)
    near = scene.tokens[beyond : beyond + 3]
    return bool(scene.begins("being", beyond)) or "ordinal" in {token.kind for token in near}
