"""From weighed mentions to what the comment says."""

from __future__ import annotations

from dataclasses import replace

from service.ballots import stands
from service.ballots.choosing import order_of
from service.ballots.cues import PRAISED, SAID_BY
from service.ballots.lexicon import bits_of
from service.ballots.mention import Mention
from service.ballots.reading import Evidence, NoneReason, Reading
from service.ballots.scene import Scene
from service.ballots.shapes import SEVERAL

BESIDE_A_KIND = "a kind of page beside the pages"
#: A number beyond so many times the chart's pages is hardly a slip for one of them.
_FAR = 2
_KINDS = bits_of("kinds")
_STOPGAPS = bits_of("second_choice", "stopgap")


def decide(scene: Scene, mentions: list[Mention]) -> Reading:
    """The reading that the standings of all mentions give."""
    return (_decide_one if len(mentions) == 1 else _decide_several)(scene, mentions)


def _decide_several(scene: Scene, mentions: list[Mention]) -> Reading:
    live = [one for one in mentions if _may_mean_a_page(scene, one)]
    if not live:
        return none_of(scene, mentions, "no-page", "no page of the chart is named")
    chosen = _surest(live)
    if not chosen and (named := _all_named(scene, live)):
        return counts(scene, named, live[0].maybe)
    if not chosen:
        return _look_at(scene, live, live[0].rule)
    off = [one for one in chosen if _is_off(scene, one)]
    on = [one for one in chosen if one not in off]
    if off and any(one.standing >= stands.ALONE for one in on):
        off = [one for one in off if not _is_far_off(scene, one, on)]
        chosen = [one for one in chosen if one in on or one in off]
    if off and not on:
        doubtful = [one for one in live if one not in chosen and _pages(scene, one)]
        if any(one.standing >= stands.BARE for one in doubtful):
            return _look_at(scene, live, "a choice that is not on the chart beside one that is")
        if all(one.standing <= stands.UNSURE for one in chosen):
            return none_of(scene, chosen, "no-page", "no page of the chart is named")
        return none_of(scene, chosen, "off-chart", "the chart has no such page")
    cued = [one for one in on if one.standing == stands.CUED]
    if cued and all(one.standing < stands.CUED for one in off):
        return _choose(scene, live, on)
    if off:
        return _look_at(scene, on, "a choice that is not on the chart beside one that is")
    return _choose(scene, live, on)


def _decide_one(scene: Scene, mentions: list[Mention]) -> Reading:
    """The same for the one mention of most comments, which nothing competes with."""
    one = mentions[0]
    if not _may_mean_a_page(scene, one):
        return none_of(scene, mentions, "no-page", "no page of the chart is named")
    if one.standing < stands.BARE:
        named = _all_named(scene, mentions)
        if named:
            return counts(scene, named, one.maybe)
        return _look_at(scene, mentions, one.rule)
    if _is_off(scene, one):
        return none_of(scene, mentions, "off-chart", "the chart has no such page")
    if scene.present & _KINDS and _is_one_of_a_kind(scene, mentions):
        return _look_at(scene, mentions, BESIDE_A_KIND)
    if one.value is None:
        return _look_at(scene, mentions, one.rule)
    if one.conditional:
        return _look_at(scene, mentions, "only if something else holds")
    return counts(scene, mentions, (one.value,))


def _all_named(scene: Scene, live: list[Mention]) -> list[Mention]:
    """As in "12/13" where a voter may name two pages: one mention of each; else none."""
    one = live[0]
    pages = tuple(dict.fromkeys(one.maybe))
    several = len(live) == 1 and one.shape == "fraction" and one.rule == SEVERAL
    fit = pages == one.maybe == _pages(scene, one) and len(pages) <= scene.question.choices
    if not (several and fit):
        return []
    return [replace(one, value=page, maybe=(), standing=stands.ALONE) for page in pages]


def _may_mean_a_page(scene: Scene, mention: Mention) -> bool:
    """A range or a kind may; a doubtful number that the chart has not may not."""
    if mention.standing <= stands.PLACED or mention.standing >= stands.BARE:
        return mention.standing >= stands.PLACED
    return bool(_pages(scene, mention))


def _pages(scene: Scene, mention: Mention) -> tuple[int, ...]:
    pages = mention.maybe
    if not pages:
        value = mention.value
        if value is None or mention.standing == stands.PLACED:
            return ()
        return (value,) if 1 <= value <= scene.last_page else ()
    return scene.on_chart(pages)


def _is_off(scene: Scene, mention: Mention) -> bool:
    value = mention.value
    return value is not None and not 1 <= value <= scene.last_page


def _is_far_off(scene: Scene, mention: Mention, on: list[Mention]) -> bool:
    """As in "22. Love the 153 with the 155": said of it, and no slip for a page of this chart."""
    if (mention.value or 0) <= _FAR * scene.last_page or mention.standing == stands.CUED:
        return False
    start, end = scene.sentence(mention.first)
    apart = not any(start <= one.first < end for one in on)
    told = scene.clause(mention.first, mention.after) != (mention.first, mention.after)
    return mention.standing <= stands.BARE or (apart and told)


def _surest(live: list[Mention]) -> list[Mention]:
    """The mentions that stand highest, those offered only as favourites behind the others."""
    plain = [one for one in live if not one.lucky and one.standing >= stands.BARE]
    pool = plain or [one for one in live if one.standing >= stands.BARE]
    if pool:
        best = max(one.standing for one in pool)
        # A number alone in its clause is as plain a choice as one with a cue, and one in the
        # open may be meant beside one alone.
        floor = stands.ALONE if best == stands.CUED else stands.BARE
        return [one for one in pool if one.standing >= floor]
    return []


def _choose(scene: Scene, live: list[Mention], chosen: list[Mention]) -> Reading:
    doubt = _doubt_of(scene, live, chosen)
    if doubt is not None:
        return doubt
    order = order_of(scene, chosen, live)
    choices = scene.question.choices
    if len(order.pages) == 1:
        return counts(scene, chosen, order.pages)
    if order.ranked:
        return counts(scene, chosen, order.pages[:choices])
    if any(one.conditional for one in chosen):
        return _look_at(scene, chosen, "only if something else holds")
    if len(order.pages) <= choices:
        return counts(scene, chosen, order.pages)
    return _look_at(scene, chosen, "several pages, and none is preferred")


def _doubt_of(scene: Scene, live: list[Mention], chosen: list[Mention]) -> Reading | None:
    """A look where other mentions throw doubt on the chosen ones."""
    competing = _competing(scene, live, chosen)
    if competing:
        return _look_at(scene, chosen + competing, competing[0].rule)
    hanging = [one for one in live if one.depends and one not in chosen]
    if hanging:
        return _look_at(scene, live, hanging[0].rule)
    if scene.present & _STOPGAPS and _is_a_stopgap(scene, live, chosen[0]):
        return _look_at(scene, live, "a second choice whose first is not plain")
    left_out = (
        [one for one in live if one not in chosen and _may_be_meant_too(scene, one)]
        if scene.question.choices > 1
        else ()
    )
    if left_out:
        return _look_at(scene, [*chosen, *left_out], left_out[0].rule)
    if scene.present & _KINDS and _is_one_of_a_kind(scene, chosen):
        return _look_at(scene, chosen, BESIDE_A_KIND)
    values = {one.value for one in chosen}
    if values == {None}:
        return _look_at(scene, live, live[0].rule)
    if len(values) == 1 and all(one.conditional for one in chosen):
        return _look_at(scene, live, "only if something else holds")
    return None


def _is_a_stopgap(scene: Scene, live: list[Mention], first: Mention) -> bool:
    """As in "... 66, otherwise 67" where the 66 could not be told to be chosen."""
    earlier = [one for one in live if one.first < first.first and one.value != first.value]
    if not earlier:
        return False
    start = earlier[-1].after
    return any(
        scene.has(group, start, first.first) or scene.begins(group, first.after)
        for group in ("second_choice", "stopgap")
    )


def _may_be_meant_too(scene: Scene, mention: Mention) -> bool:
    """Where a voter may name several pages, one that is said to be a page is not left out."""
    unsure = mention.standing in {stands.UNSURE, stands.BARE}
    known = mention.cued_by_page or bool(_pages(scene, mention))
    return unsure and known


def _is_one_of_a_kind(scene: Scene, chosen: list[Mention]) -> bool:
    """As in "20, 30 or anything in the forties": a kind of page stands beside the chosen."""
    at = scene.find("kinds", chosen[-1].after)
    if at < 0:
        return False
    between = range(chosen[-1].after, at)
    joined = any(scene.begins("either", place) for place in between)
    return joined and len(between) <= 3


def _competing(scene: Scene, live: list[Mention], chosen: list[Mention]) -> list[Mention]:
    """Votes of the writer's family beside the own one, unless set against it: both may be meant."""
    related = [one for one in live if one.family and one.reported]
    if all(one.standing < stands.CUED for one in chosen):
        # "12 is nice but 14 is nice too"
        values = {one.value for one in chosen}
        praised = [one for one in live if one.rule == PRAISED and one.value not in values]
        if praised:
            return praised
    if not related:
        return related
    last = max(one.first for one in chosen)
    first = min(one.first for one in chosen)
    values = {one.value for one in chosen}
    found = []
    for one in related:
        if one.value in values:
            continue
        between = scene.tokens[one.after : first]
        joined = one.first < first and between[:1] != [] and between[0].text != ")"
        joined = joined and any(
            scene.lexicon.group("also").firsts & {token.text} for token in between[:2]
        )
        # "8 says my sister, 18 says me": nothing sets the own against it.
        beside = one.rule == SAID_BY and one.first < first
        beside = beside and not any(
            scene.has(group, one.after, first) for group in ("own_voice", "turning")
        )
        if one.first > last or joined or beside:
            found.append(one)
    return found


def evidence_of(scene: Scene, mentions: list[Mention]) -> tuple[Evidence, ...]:
    """The original words that these mentions were read from."""
    return tuple([_evidence(scene, one) for one in mentions])


def _evidence(scene: Scene, one: Mention) -> Evidence:
    start, end = scene.span(one.first, one.after)
    pages = _pages(scene, one) if one.value is not None else ()
    return Evidence(start, end, scene.text[start:end], pages[0] if pages else None, one.rule)


def counts(scene: Scene, mentions: list[Mention], pages: tuple[int, ...]) -> Reading:
    """A sure choice of these pages."""
    meant = [one for one in mentions if one.value in pages]
    why = f"chosen: {meant[0].rule}" if meant else "chosen"
    return Reading("counts", pages, None, why, evidence_of(scene, meant))


def _look_at(scene: Scene, mentions: list[Mention], why: str) -> Reading:
    pages = tuple(dict.fromkeys(page for one in mentions for page in _pages(scene, one)))
    return Reading("look", pages, None, why, evidence_of(scene, mentions))


def none_of(scene: Scene, mentions: list[Mention], reason: NoneReason, why: str) -> Reading:
    """No page of this chart is chosen."""
    return Reading("none", (), reason, why, evidence_of(scene, mentions))
