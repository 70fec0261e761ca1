"""What the writer takes back: corrections, one page put in another's stead, what is come to."""

from __future__ import annotations

from itertools import pairwise

from service.ballots import stands
from service.ballots.cues import CHOSEN_AFTER, CHOSEN_BEFORE
from service.ballots.elsewhere import NAMES_ELSE, OF_OTHERS, RULED_OUT
from service.ballots.lexicon import bits_of
from service.ballots.mention import Mention
from service.ballots.scanning import END, WORD
from service.ballots.scene import Scene

_REPLACES = "put in another page's stead"
#: A verb of changing stands within so many words before the page that is replaced.
_REPLACING_REACH = 5
_REPLACING = bits_of("replacing")
_CORRECTING = bits_of("correction", "soft_correction")
_CONDITIONS = bits_of("if_words")
_CONCLUDING = bits_of("concluding")
#: Rules by which a number beside a verb of changing may yet be a page: "12 in 14 ändern".
_MAY_BE = OF_OTHERS | {NAMES_ELSE}
_WINNING, _TURNING = bits_of("winning"), bits_of("turning")
_PREFERRED = bits_of("preferred_after", "settled_after")
_EQUALLY = bits_of("equally")
#: "... but I like 30 just as much".
_EQUALLY_REACH = 4
#: What speaks for a page stands so few words before it.
_SPEAKER = 3
#: "... but 14 is my vote".
_VOTES_REACH = 4
#: One of two pages named is chosen when it is named once more.
_TWO = 2
_CORRECTED = frozenset({stands.UNSURE, stands.BARE, stands.ALONE})


def correct(scene: Scene, mentions: list[Mention]) -> None:
    """Strike the mentions that the writer takes back, and raise what stands in their stead."""
    present = scene.present
    if present & _EQUALLY and _level(scene, mentions):
        return
    if present & _CONDITIONS:
        _stand_in(scene, mentions)
    if present & _REPLACING:
        _replace(scene, mentions)
    if present & _CORRECTING or "*" in scene.own:
        _correct(scene, mentions)
    if present & _CONCLUDING:
        _conclude(scene, mentions)
    if present & _PREFERRED or len(mentions) > _TWO:
        _prefer(scene, mentions)
    if present & _WINNING:
        _let_win(scene, mentions)
    if present & _TURNING:
        _set_against(scene, mentions)
    _strike_again(mentions)


def _let_win(scene: Scene, mentions: list[Mention]) -> None:
    """As in "My heart says 12, my head says 21. Heart wins"."""
    live = [one for one in mentions if one.standing >= stands.ASKED and one.value is not None]
    at = scene.find("winning", live[-1].after) if len(live) > 1 else -1
    winner = scene.tokens[at - 1].text if at > 0 and scene.kinds[at - 1] == WORD else ""
    if not winner or winner in scene.lexicon.plain_words:
        return
    spoken = [
        one
        for one in live
        if winner
        in {token.text for token in scene.tokens[max(one.first - _SPEAKER, 0) : one.first]}
    ]
    if len({one.value for one in spoken}) == 1:
        for one in live:
            won = one.value == spoken[0].value
            one.reported = False
            one.standing, one.rule = (
                (stands.CUED if won else stands.STRUCK),
                "what spoke for it wins",
            )


def _set_against(scene: Scene, mentions: list[Mention]) -> None:
    """As in "12 is stuck in my head but my vote goes to 13"."""
    for left, right in pairwise(mentions):
        at = scene.find("turning", left.after, right.first)
        liked = left.standing == stands.CUED and left.rule == CHOSEN_AFTER  # "12 is mooi maar"
        bare = stands.UNSURE <= left.standing <= stands.ALONE or liked
        bare = bare and not left.cued_by_page
        if at < 0 or not bare or right.standing != stands.CUED or left.value == right.value:
            continue
        start, _ = scene.sentence(right.first)
        if start <= left.first and scene.has("voting", at, right.after + _VOTES_REACH):
            left.standing, left.rule = stands.STRUCK, "set against the vote"


def _replace(scene: Scene, mentions: list[Mention]) -> None:
    """As in "swap my 35 for 53", "make that 23 a 24": one page in another's stead."""
    for left, right in pairwise(mentions):
        if left.value is None or right.value is None or not _may_be_replaced(scene, left, right):
            continue
        ahead = scene.has("replacing", left.first - _REPLACING_REACH, left.first)
        if not ahead and not scene.begins("replacing", right.after):  # "12 in 14 ändern"
            continue
        at = left.after + scene.begins("replaced_by", left.after)
        at += scene.begins("page", at) if at > left.after else 0
        if at == right.first > left.after:
            for one in mentions:
                if one.value == left.value and one.first < right.first:
                    one.standing, one.rule, one.maybe = stands.STRUCK, "replaced by another", ()
            right.standing, right.rule = stands.CUED, _REPLACES


def _stand_in(scene: Scene, mentions: list[Mention]) -> None:
    """As in "6 please, or 15 if 6 has gone": a page chosen is named again in a condition."""
    for at, again in enumerate(mentions):
        if not _is_conditioned(scene, again):
            continue
        first = [one for one in mentions if one is not again and one.value == again.value]
        first = [one for one in first if one.standing >= stands.BARE]
        # "15 if 6 has gone", or "if 6 has gone then 15".
        beside = [mentions[near] for near in (at - 1, at + 1) if 0 <= near < len(mentions)]
        other = next((one for one in beside if _may_stand_in(scene, one, again)), None)
        if not first or other is None:
            continue
        again.standing, again.rule = stands.STRUCK, "the condition of another page"
        for rank, one in enumerate((first[0], other), start=1):
            one.rank, one.conditional, one.depends = rank, False, False
            one.standing = max(one.standing, stands.ALONE)


def _may_stand_in(scene: Scene, mention: Mention, again: Mention) -> bool:
    """Whether it is another page, told in the same sentence."""
    start, end = scene.sentence(again.first)
    other = mention.value is not None and mention.value != again.value
    return other and start <= mention.first < end and mention.standing >= stands.ASKED


def _is_conditioned(scene: Scene, mention: Mention) -> bool:
    """Whether an "if" stands right before it, apart from its article and page word."""
    plain = scene.lexicon.group("fillers").firsts | scene.lexicon.group("page").firsts
    at = mention.first - 1
    while at > 0 and not scene.begins("if_words", at) and scene.tokens[at].text in plain:
        at -= 1
    return mention.value is not None and at >= 0 and scene.begins("if_words", at) > 0


def _may_be_replaced(scene: Scene, left: Mention, right: Mention) -> bool:
    """Two pages of the chart, neither of which counts or measures something."""
    both = (left, right)
    return scene.on_chart((left.value or 0,)) != () and all(
        one.standing != stands.OTHER or one.rule in _MAY_BE for one in both
    )


def _conclude(scene: Scene, mentions: list[Mention]) -> None:
    """As in "24 would be nice, 42 nicer, so 42": what the writer comes to after all."""
    for at, last in enumerate(mentions):
        if last.standing < stands.ALONE or last.value is None:
            continue
        before = scene.lexicon.group("concluding").before(scene.tokens, last.first - 1)
        earlier = [one for one in mentions[:at] if one.standing > stands.PLACED]
        if before and any(one.value == last.value for one in earlier):
            for one in earlier:
                if one.value != last.value:
                    one.standing, one.rule = stands.STRUCK, "weighed, then another was chosen"


def _prefer(scene: Scene, mentions: list[Mention]) -> None:
    """As in "33 or 44, but 44 is the one I really want": one of those named is chosen after all."""
    for at, last in enumerate(mentions):
        named = [one for one in mentions[:at] if one.standing >= stands.ASKED]
        values = {one.value for one in named}
        if last.value not in values or len(values) < _TWO or last.standing < stands.ASKED:
            continue
        preferred = scene.begins("preferred_after", last.after) > 0
        against = preferred and scene.has("turning", named[-1].after, last.first)
        settled = scene.begins("settled_after", last.after) > 0
        if against or settled or (last is mentions[-1] and _is_gone_with(named, last)):
            for one in named:
                if one.value != last.value:
                    one.standing, one.rule = stands.STRUCK, "weighed, then another was chosen"
            last.standing, last.rule = stands.CUED, "preferred to the others"


def _is_gone_with(named: list[Mention], last: Mention) -> bool:
    """As in "I was looking at 12, 25 and 38, and I'm going with 38": chosen where none was before."""
    chosen = last.standing == stands.CUED and last.rule == CHOSEN_BEFORE and not last.reported
    return chosen and all(one.standing < stands.CUED for one in named if one.value != last.value)


def _level(scene: Scene, mentions: list[Mention]) -> bool:
    """As in "I voted 20 but I like 30 just as much": both may be meant; whether any are."""
    live = [one for one in mentions if one.standing >= stands.ASKED and one.value is not None]
    for left, right in pairwise(live):
        start, end = scene.sentence(right.first)
        told = scene.has("equally", left.after, min(right.after + _EQUALLY_REACH, end))
        if told and start <= left.first and left.value != right.value:
            for one in (left, right):
                one.standing, one.rule, one.lucky = stands.CUED, "liked as much as another", False
                one.rank, one.depends = 0, True
            return True
    return False


def _correct(scene: Scene, mentions: list[Mention]) -> None:
    """After a correction, what came before is taken back."""
    for at in range(1, len(mentions)):
        right = mentions[at]
        earlier = [one for one in mentions[:at] if one.standing >= stands.PLACED]
        if not earlier or right.standing < stands.PLACED or right.rule == _REPLACES:
            continue
        if _takes_back(scene, earlier[-1], right):
            for one in _taken_back(mentions[:at], earlier):
                one.standing, one.rule = stands.STRUCK, "taken back by a correction"
            if right.standing in _CORRECTED:
                right.standing, right.rule = stands.CUED, "the last word after a correction"


def _taken_back(before: list[Mention], earlier: list[Mention]) -> list[Mention]:
    """Those that a correction is about: "50, 51 and 52. Not 52, I meant 53" keeps two of them."""
    ruled_out = {one.value for one in before if one.rule == RULED_OUT}
    named = [one for one in earlier if one.value in ruled_out]
    return named or earlier


def _strike_again(mentions: list[Mention]) -> None:
    """As in "Fourteen is the ugly one. Then not fourteen.": ruled out wherever it stands before."""
    for at, one in enumerate(mentions):
        if one.rule == RULED_OUT and one.value is not None:
            for other in mentions:
                before = other in mentions[:at] and stands.PLACED < other.standing < stands.CUED
                again = other.reported and other.standing == stands.ASKED
                if other.value == one.value and (before or again):
                    other.standing, other.rule = stands.STRUCK, "ruled out elsewhere"


def _takes_back(scene: Scene, left: Mention, right: Mention) -> bool:
    tokens, start, end = scene.tokens, left.after, right.first
    if scene.has("correction", start, end) or _is_starred(scene, right):
        return True
    at = scene.find("soft_correction", start, end)
    while at >= 0:
        rest = at + scene.begins("soft_correction", at)
        if at == start and rest < end and tokens[rest].kind == END and end - rest > 1:
            break  # "2 instead. And 24 as well": said of what stands before it
        between = tokens[rest:end]
        close = len(between) <= 5 and all(
            token.kind != WORD or token.text in scene.lexicon.plain_words for token in between
        )
        off = left.value is not None and not scene.on_chart((left.value,))
        if (close or off) and right.standing >= stands.BARE:
            return not _goes_on(scene, right)
        at = scene.find("soft_correction", at + 1, end)
    return False


def _is_starred(scene: Scene, mention: Mention) -> bool:
    """As in "27", then "*28" on a line of its own: how chat mends a slip."""
    tokens, star = scene.tokens, mention.first - 1
    if star < 1 or tokens[star].text != "*" or not tokens[mention.first].glued:
        return False
    return tokens[star - 1].kind == END and "\n" in tokens[star - 1].text


def _goes_on(scene: Scene, mention: Mention) -> bool:
    """Whether more is said of it than a choice needs ("actually 14 is nice too")."""
    return scene.begins("goes_on", mention.after) > 0
