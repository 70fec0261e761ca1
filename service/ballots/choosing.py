"""Mentions weighed against one another: corrections and orders of preference."""

from __future__ import annotations

from dataclasses import dataclass

from service.ballots.elsewhere import BELONGS, SOMEBODYS_AGE
from service.ballots.lists import back_to_the_question, join_ranges, link_lists
from service.ballots.mentions import Mention, Standing
from service.ballots.scanning import SOFT, WORD
from service.ballots.scene import Scene
from service.ballots.voices import read_voices

_CORRECTED = frozenset({Standing.UNSURE, Standing.BARE, Standing.ALONE})


def weigh(scene: Scene, mentions: list[Mention]) -> None:
    """Change the mentions' standings by what stands between and around them."""
    several = len(mentions) > 1
    if several:
        join_ranges(scene, mentions)
    back_to_the_question(scene, mentions)
    read_voices(scene, mentions)
    if several:
        link_lists(scene, mentions)
        _doubt_repeats(scene, mentions)
        _correct(scene, mentions)


def _doubt_repeats(scene: Scene, mentions: list[Mention]) -> None:
    """As in "She was 27. Twenty seven.": said again, it may still be the age."""
    elsewhere = {
        one.value
        for one in mentions
        if one.standing == Standing.OTHER and one.rule in {BELONGS, SOMEBODYS_AGE}
    }
    for one in mentions if elsewhere else ():
        if one.value not in elsewhere or not Standing.BARE <= one.standing <= Standing.ALONE:
            continue
        if not (one.first > 0 and scene.begins("own_voice", one.first - 1)):
            one.standing, one.rule = Standing.UNSURE, "told before as something else"


def _correct(scene: Scene, mentions: list[Mention]) -> None:
    """After a correction, what came before is taken back."""
    for at in range(1, len(mentions)):
        right = mentions[at]
        earlier = [one for one in mentions[:at] if one.standing >= Standing.PLACED]
        if not earlier or right.standing < Standing.PLACED:
            continue
        if _takes_back(scene, earlier[-1], right):
            for one in earlier:
                one.standing, one.rule = Standing.STRUCK, "taken back by a correction"
            if right.standing in _CORRECTED:
                right.standing, right.rule = Standing.CUED, "the last word after a correction"


def _takes_back(scene: Scene, left: Mention, right: Mention) -> bool:
    tokens, start, end = scene.tokens, left.after, right.first
    if scene.has("correction", start, end):
        return True
    at = scene.find("soft_correction", start, end)
    while at >= 0:
        rest = at + scene.begins("soft_correction", at)
        between = tokens[rest:end]
        close = len(between) <= 5 and all(
            token.kind != WORD or token.text in scene.lexicon.plain_words for token in between
        )
        if close and right.standing >= Standing.BARE:
            return not _goes_on(scene, right)
        at = scene.find("soft_correction", at + 1, end)
    return False


def _goes_on(scene: Scene, mention: Mention) -> bool:
    """Whether more is said of it than a choice needs ("actually 14 is nice too")."""
    return scene.begins("goes_on", mention.after) > 0


@dataclass(frozen=True, slots=True)
class Order:
    """The pages named, in the order they were; `ranked`: the writer says it is the order."""

    ranked: bool
    pages: tuple[int, ...]


def order_of(scene: Scene, mentions: list[Mention], live: list[Mention]) -> Order:
    """The pages of these mentions in the writer's order, if one is stated.

    `live` are all that may mean a page: a condition on any of them leaves the order open.
    """
    pages = tuple(dict.fromkeys(one.value for one in mentions if one.value is not None))
    if len(pages) < 2:
        return Order(ranked=False, pages=pages)
    first = next(one for one in mentions if one.value == pages[0])
    second = next(one for one in mentions if one.value == pages[1])
    hangs = any(one.conditional and one.value == pages[0] for one in live)
    if hangs or any(one.depends for one in live):
        return Order(ranked=False, pages=pages)
    if scene.has("ranked", first.first, len(scene.tokens)):
        return Order(ranked=True, pages=pages)
    places = {one.value: _rank(scene, one) for one in (second, first)}
    if set(places.values()) != {0}:
        backup = places[pages[0]] > places[pages[1]] > 0 or places[pages[0]] == 2
        swapped = (pages[1], pages[0], *pages[2:]) if backup else pages
        return Order(ranked=not first.conditional, pages=swapped)
    if scene.has("second", first.after, second.first):
        return Order(ranked=not first.conditional, pages=pages)
    stands_in = second.conditional and not first.conditional
    return Order(ranked=stands_in and scene.has("either", first.after, second.first), pages=pages)


def _rank(scene: Scene, mention: Mention) -> int:
    """1 for a page called the first choice, 2 for one called the second, 0 for neither."""
    tokens = scene.tokens
    at = mention.first - 1
    while at >= 0 and (
        tokens[at].kind == SOFT or scene.lexicon.before(tokens, at)[0] in {"fillers", "page"}
    ):
        at -= 1
    for rank, group in ((1, "first_choice"), (2, "second_choice")):
        words = scene.lexicon.group(group)
        if words.before(tokens, at) or words.after(tokens, mention.after):
            return rank
    return 0
