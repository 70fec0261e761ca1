"""Mentions weighed against one another: lists, corrections, orders of preference, other voices."""

from __future__ import annotations

from dataclasses import dataclass

from service.ballots.mentions import Mention, Standing
from service.ballots.scanning import END, SOFT, WORD
from service.ballots.scene import Scene

_LIST_MARKS = frozenset({",", "/", "&", "-", "\n", "|", "+", "•", "("})


def weigh(scene: Scene, mentions: list[Mention]) -> None:
    """Change the mentions' standings by what stands between and around them."""
    _join_ranges(scene, mentions)
    _read_voices(scene, mentions)
    _link_lists(scene, mentions)
    _correct(scene, mentions)


def gap_words(scene: Scene, left: Mention, right: Mention) -> list[str]:
    """The texts of the tokens between two mentions."""
    return [token.text for token in scene.tokens[left.after : right.first]]


def _join_ranges(scene: Scene, mentions: list[Mention]) -> None:
    """ "between 30 and 40": two numbers that bound a range are no choice of either."""
    page_count = scene.question.chart.page_count
    for left, right in zip(mentions, mentions[1:], strict=False):
        if left.value is None or right.value is None:
            continue
        gap = [word for word in gap_words(scene, left, right) if word not in {"page", "pages"}]
        started = scene.has("between", left.first - 3, left.first)
        bounded = len(gap) == 1 and gap[0] in {"and", "to", "-", "through", "und", "et", "y", "e", "en", "bis", "a", "tot"}
        through = len(gap) == 1 and gap[0] in {"to", "through", "thru", "bis", "tot", "till"}
        if not bounded or not (started or (through and left.value < right.value)):
            continue
        left.standing = right.standing = Standing.OTHER
        left.rule = right.rule = "the question's own numbers said back"
        if right.value == page_count and left.value <= 1:
            continue
        fit = (left.value + 1,) if right.value - left.value == 2 else ()
        left.standing = Standing.PLACED
        left.rule, right.rule = "a range, not one page", "the end of a range"
        left.maybe = fit


def _read_voices(scene: Scene, mentions: list[Mention]) -> None:
    """Questions, conditions, other people's votes, quoted words."""
    for at, mention in enumerate(mentions):
        if mention.standing < Standing.UNSURE:
            continue
        start, end = scene.sentence(mention.first)
        if _is_quoted_for_another(scene, mention):
            mention.standing, mention.rule = Standing.STRUCK, "words given to somebody else"
        elif _is_asked(scene, mention, start):
            mention.standing, mention.rule = Standing.ASKED, "asked about, not chosen"
        elif _is_reported(scene, mention, start):
            mention.reported = True
            mention.standing, mention.rule = Standing.ASKED, "somebody else's, or an earlier vote"
        else:
            following = mentions[at + 1].first if at + 1 < len(mentions) else end
            if scene.has("condition", mention.after, max(min(end, following), mention.after)):
                mention.conditional = True
                mention.rule = "only if something else holds"


def _is_quoted_for_another(scene: Scene, mention: Mention) -> bool:
    if mention.first not in scene.quoted:
        return False
    tokens = scene.tokens
    last = mention.after
    while last < len(tokens) and last in scene.quoted:
        last += 1
    first = mention.first
    while first > 0 and first - 1 in scene.quoted:
        first -= 1
    around = tokens[max(first - 5, 0) : first] + tokens[last : last + 4]
    words = {token.text for token in around}
    return bool(words & _SAYING) and not words & {"i", "we", "i'm", "ich", "je", "yo", "io"}


_SAYING = frozenset(
    "says said say saying told goes went yelled shouted shouts asked asks writes wrote reckons "
    "sagt sagte meint dit disait dice dijo ha detto disse diz zegt zei".split()
)


def _is_asked(scene: Scene, mention: Mention, start: int) -> bool:
    if mention.lucky:
        return False
    tokens = scene.tokens
    head = start
    clause_start, _ = scene.clause(mention.first, mention.after)
    while head < mention.first and tokens[head].kind != WORD:
        head += 1
    asking = scene.lexicon.group("asking")
    starts = {head, clause_start, head + 1}
    opens = any(asking.after(tokens, place) for place in starts if place < mention.first)
    if not opens or scene.has("suggesting", start, mention.first):
        return False
    if scene.is_question(mention.first):
        return True
    return tokens[head].text in {"has", "is", "hasn't", "isn't", "anyone", "why"} and (
        mention.standing < Standing.CUED
    )


def _is_reported(scene: Scene, mention: Mention, start: int) -> bool:
    """Whether a subject other than the writer stands close before it, or an earlier round."""
    tokens = scene.tokens
    near = max(start, mention.first - 6)
    words = [token.text for token in tokens[near : mention.first]]
    for own in ("i", "i'm", "i'll", "i'd", "so", "but", "we", "me", "my vote", "im", "ill", "id"):
        if own in words:
            near += len(words) - words[::-1].index(own)
            words = [token.text for token in tokens[near : mention.first]]
    for group in ("reported_before", "family_before"):
        if scene.has(group, near, mention.first):
            mention.family = group == "family_before"
            return not _vocative(scene, group, near, mention.first)
    return False


def _vocative(scene: Scene, group: str, start: int, end: int) -> bool:
    """ "Hello everyone, 42 please": spoken to, not of."""
    at = scene.lexicon.group(group).anywhere(scene.tokens, start, end)
    step = scene.lexicon.group(group).after(scene.tokens, at)
    nxt = at + step
    return nxt >= end or scene.tokens[nxt].kind in {SOFT, END, "other"}


def _is_link(scene: Scene, left: Mention, right: Mention) -> bool:
    """Whether only list words stand between: "12 or 13", "12, 13", "12 / page 13"."""
    tokens = scene.tokens
    at = left.after
    linked = False
    while at < right.first:
        token = tokens[at]
        for group in ("either", "also"):
            step = scene.lexicon.group(group).after(tokens, at)
            if step:
                at += step
                linked = True
                break
        else:
            if token.text in _LIST_MARKS:
                linked = True
            elif not (
                token.kind in {"quote", "other"}
                or scene.lexicon.before(tokens, at)[0] in {"page", "number", "fillers"}
            ):
                return False
            at += 1
    return linked or left.after == right.first


def _link_lists(scene: Scene, mentions: list[Mention]) -> None:
    """Numbers in one list share what is said of the first or the last of them."""
    for at in range(len(mentions) - 1, 0, -1):
        left, right = mentions[at - 1], mentions[at]
        if not _is_link(scene, left, right):
            continue
        if right.standing == Standing.OTHER and right.value is not None and (
            left.standing <= Standing.UNSURE + 1 and not left.cued_by_page
        ):
            if left.standing > Standing.OTHER and left.shape in {"digits", "word"} and left.maybe == ():
                left.standing, left.rule = Standing.OTHER, right.rule
    for left, right in zip(mentions, mentions[1:], strict=False):
        if not _is_link(scene, left, right):
            continue
        if left.standing == Standing.STRUCK and right.standing in {Standing.BARE, Standing.ALONE, Standing.UNSURE}:
            gap = gap_words(scene, left, right)
            if "or" in gap or "and" in gap or "nor" in gap:
                right.standing, right.rule = Standing.STRUCK, "ruled out"
            continue
        both = (left, right)
        if all(one.standing >= Standing.ASKED and one.value is not None for one in both):
            best = max(one.standing for one in both)
            reported = left.reported or right.reported
            if left.lucky:
                right.lucky = True
            if not reported:
                left.standing = right.standing = best


def _correct(scene: Scene, mentions: list[Mention]) -> None:
    """After a correction, what came before is taken back."""
    last_struck = -1
    for at in range(1, len(mentions)):
        right = mentions[at]
        if right.standing < Standing.PLACED or right.standing == Standing.PLACED and not right.maybe:
            continue
        earlier = [one for one in mentions[:at] if one.standing >= Standing.PLACED]
        if not earlier:
            continue
        left = earlier[-1]
        if _takes_back(scene, left, right):
            last_struck = at
            for one in earlier:
                one.standing, one.rule = Standing.STRUCK, "taken back by a correction"
            if right.standing in {Standing.UNSURE, Standing.BARE, Standing.ALONE}:
                right.standing, right.rule = Standing.CUED, "the last word after a correction"
            right.reported = False
    _ = last_struck


def _takes_back(scene: Scene, left: Mention, right: Mention) -> bool:
    start, end = left.after, right.first
    strong = scene.lexicon.group("correction")
    at = strong.anywhere(scene.tokens, start, end)
    if at >= 0:
        return True
    soft = scene.lexicon.group("soft_correction")
    at = soft.anywhere(scene.tokens, start, end)
    while at >= 0:
        rest = at + soft.after(scene.tokens, at)
        between = scene.tokens[rest:end]
        if all(
            token.kind != WORD or token.text in scene.lexicon.plain_words for token in between
        ) and len(between) <= 5 and right.standing >= Standing.BARE:
            return not _goes_on(scene, right)
        at = soft.anywhere(scene.tokens, at + 1, end)
    return False


def _goes_on(scene: Scene, mention: Mention) -> bool:
    """Whether more is said of it than a choice needs ("actually 14 is nice too")."""
    tokens = scene.tokens
    at = mention.after
    return at < len(tokens) and tokens[at].text in {"is", "looks", "seems", "would", "was", "too", "also"}


@dataclass(frozen=True, slots=True)
class Order:
    """Whether the writer ranked the pages, first choice first."""

    ranked: bool
    pages: tuple[int, ...]


def order_of(scene: Scene, mentions: list[Mention]) -> Order:
    """The pages of these mentions in the writer's order, if one is stated."""
    pages = tuple(dict.fromkeys(one.value for one in mentions if one.value is not None))
    if len(pages) < 2:
        return Order(ranked=False, pages=pages)
    first = next(one for one in mentions if one.value == pages[0])
    second = next(one for one in mentions if one.value == pages[1])
    tokens = scene.tokens
    if scene.has("second", first.after, second.first):
        return Order(ranked=not first.conditional, pages=pages)
    _, end = scene.sentence(second.first)
    if second.conditional and not first.conditional and scene.has("either", first.after, second.first):
        return Order(ranked=True, pages=pages)
    _ = tokens, end
    return Order(ranked=False, pages=pages)
