"""What a comment says as a whole: a vote taken back, none at all, or one said by pointing."""

from __future__ import annotations

import re

from service.ballots import stands
from service.ballots.deciding import none_of
from service.ballots.lexicon import bits_of
from service.ballots.mentions import Mention, find_mentions
from service.ballots.reading import Evidence, Reading
from service.ballots.scanning import WORD, scan
from service.ballots.scene import Scene, signs_of
from service.ballots.segmenting import segment

#: A kind of page named in a longer sentence is talked about, not chosen.
_KIND_REACH = 10
#: So many other words may stand beside words that point at a page; a longer phrase always does.
_SPARE, _SPARE_AT_START, _LONG = 3, 5, 4
#: A phrase of so few words may go on otherwise ("the same recipe").
_BARE = 2
#: The last words of "same as": what follows tells the same as what.
_LIKE = frozenset("as que wie als come como som jako jak kuin than".split())
_FIRST = bits_of("first")
_KINDS = bits_of("kinds")
#: Without a word of any of these, mentions that may be meant decide; without mentions, nothing
#: does without one of those, but agreeing with a quoted vote.
_DECLINING = _KINDS | bits_of("abstaining")
_WHOLE = _DECLINING | _FIRST | bits_of("pointing", "row", "column")
_WITHDRAWN = bits_of("withdrawn")
_DOUBTFUL = bits_of("doubtful")
_QUOTED_LINE = re.compile(r"^[ \t]*>(.*)$", re.MULTILINE)


def read_whole(scene: Scene, mentions: list[Mention]) -> Reading | None:
    """The reading where the comment as a whole decides; None where its mentions do."""
    if scene.present & _WITHDRAWN and (taken_back := scene.find("withdrawn")) >= 0:
        return _withdrawn(scene, mentions, taken_back)
    live = [one for one in mentions if one.standing >= stands.PLACED]
    if not scene.present & (_DECLINING if live else _WHOLE):
        if live:
            _make_doubtful(scene, live)
        return None if live else _agreeing(scene)
    return _read_telling(scene, mentions, live)


def _read_telling(scene: Scene, mentions: list[Mention], live: list[Mention]) -> Reading | None:
    """The same where words stand that may decide for the whole comment."""
    abstains = scene.find("abstaining")
    if scene.present & _KINDS and (abstains >= 0 or live):
        kind = None if any(_may_be_named(scene, one) for one in live) else _kind(scene)
        if kind is not None:  # "any page ending in 0"
            return kind
    if abstains >= 0 and not any(one.standing >= stands.CUED for one in live):
        alone = [one for one in live if one.standing == stands.ALONE]
        placed = any(one.standing == stands.PLACED for one in live)
        if placed and scene.word_count() <= _KIND_REACH:
            return None
        if not alone:
            return none_of(scene, live, "no-page", "says that it chooses none")
        for one in alone:
            one.standing, one.rule = stands.ASKED, "beside words that choose none"
    if live:
        _make_doubtful(scene, live)
        return None
    return (
        _agreeing(scene)
        or _boasting(scene)
        or _pointing(scene, mentions)
        or _kind(scene)
        or _row(scene)
    )


def _may_be_named(scene: Scene, mention: Mention) -> bool:
    on = scene.on_chart((mention.value or 0, *mention.maybe))
    return bool(on) or mention.standing > stands.UNSURE or mention.standing == stands.PLACED


def _withdrawn(scene: Scene, mentions: list[Mention], at: int) -> Reading | None:
    """Strike what stood before it and what it names itself; a new choice may follow."""
    step = scene.begins("withdrawn", at)
    _, own = scene.clause(at, at + step)
    for one in mentions:
        near = one.first <= at + step + (1 if one.standing == stands.CUED else 2) or all(
            token.text in scene.lexicon.plain_words for token in scene.tokens[at + step : one.first]
        )  # "scrap my vote for 12"
        if one.first < at or (near and one.first < own):
            one.standing, one.rule = stands.STRUCK, "taken back"
    if any(one.standing >= stands.BARE for one in mentions):
        return None
    return none_of(scene, mentions, "withdrawn", "the writer takes the vote back")


def _make_doubtful(scene: Scene, live: list[Mention]) -> None:
    """A word that is a number in one language and something else in another, not cued."""
    if not scene.present & _DOUBTFUL:
        return
    for one in live:
        if not one.spelled or one.after - one.first != 1 or one.value is None:
            continue
        unsure = stands.ASKED < one.standing < stands.CUED
        if unsure and scene.begins("doubtful", one.first):
            one.standing, one.maybe = stands.PLACED, (one.value,)
            one.rule = "a word that is a number in one language only"


def _look(scene: Scene, first: int, after: int, pages: tuple[int, ...], why: str) -> Reading:
    start, end = scene.span(first, after)
    evidence = (Evidence(start, end, scene.text[start:end], None, why),)
    return Reading("look", pages, None, why, evidence)


def _agreeing(scene: Scene) -> Reading | None:
    """A quoted vote with nothing but agreement under it."""
    if ">" not in scene.plain.text:
        return None
    quoted = [found.group(1) for found in _QUOTED_LINE.finditer(scene.plain.text)]
    if not quoted or not scene.tokens:
        return None
    at = scene.find("agreeing")
    if at < 0:
        return None
    tokens = segment(scan("\n".join(quoted)))
    numbers = find_mentions(tokens, signs_of(tokens, scene.lexicon)[0], scene.lexicon)
    pages = scene.on_chart(tuple(one.value for one in numbers if one.value is not None))
    step = scene.begins("agreeing", at)
    return _look(scene, at, at + step, pages, "agrees with a vote it quotes")


def _boasting(scene: Scene) -> Reading | None:
    """As in "First!": perhaps a boast of being the first to comment."""
    if not scene.present & _FIRST:
        return None
    at = next(
        (
            place
            for place, token in enumerate(scene.tokens)
            if token.kind == WORD
            and (
                scene.begins("first", place)
                or scene.lexicon.before(scene.tokens, place)[0] != "fillers"
            )
        ),
        -1,
    )
    if at < 0:
        return None
    step = scene.begins("first", at)
    end = at + step
    if step and (end == len(scene.tokens) or scene.tokens[end].kind != WORD):
        return _look(scene, at, end, (1,), "may boast of being the first to comment")
    return None


def _pointing(scene: Scene, mentions: list[Mention]) -> Reading | None:
    """As in "Same as above", "my age", "I turned 70, use that": said by pointing at something."""
    at = scene.find("pointing")
    while at >= 0:
        step = scene.begins("pointing", at)
        if _points(scene, at, step, mentions):
            pointed_at = tuple(one.value for one in mentions if one.value is not None)
            pages = scene.on_chart(pointed_at) if len(pointed_at) == 1 else ()
            return _look(scene, at, at + step, pages, "points at something instead of a page")
        at = scene.find("pointing", at + 1)
    return None


def _points(scene: Scene, at: int, step: int, mentions: list[Mention]) -> bool:
    """Whether these words are what the clause says, not a part of other talk ("same recipe")."""
    tokens, end = scene.tokens, at + step
    known = scene.lexicon.plain_words
    if (
        step <= _BARE
        and tokens[end - 1].text not in _LIKE
        and end < len(tokens)
        and tokens[end].kind == WORD
        and not (tokens[end].text in known or scene.lexicon.after(tokens, end)[0])
    ):
        return False
    start, stop = scene.clause(at, end)
    is_told = any(scene.begins("being", place) for place in range(max(at - 2, start), at))
    if is_told and any(start <= one.first < at for one in mentions):
        return False  # "the 5th of May is my birthday"
    begins = scene.sentence(at)[0] == at and step > 1 and tokens[end - 1].text in _LIKE
    others = (*tokens[start:at], *tokens[end:stop])
    spare = sum(token.kind == WORD and not (begins and token.text in known) for token in others)
    if step > _LONG or spare <= (_SPARE_AT_START if begins else _SPARE) or scene.word_count() <= 5:
        return True
    numbered = len(mentions) == 1 and mentions[0].first < at
    apart = numbered and mentions[0].after <= start
    chosen = at > 0 and scene.lexicon.before(tokens, at - 1)[0] in {"choice_before", "fillers"}
    own = at > 0 and scene.begins("own_voice", at - 1)
    return (apart and spare <= 4) or (numbered and (chosen or bool(own)) and end == stop)


def _kind(scene: Scene) -> Reading | None:
    """As in "Any even page", "top row somewhere": a kind of page, not one."""
    at = scene.find("kinds")
    if at < 0:
        return None
    step = scene.begins("kinds", at)
    start, end = min(
        scene.sentence(at), scene.clause(at, at + step), key=lambda one: one[1] - one[0]
    )
    if sum(token.kind == WORD for token in scene.tokens[start:end]) > _KIND_REACH:
        return None
    return _look(scene, at, at + scene.begins("kinds", at), (), "a kind of page, not one page")


def _row(scene: Scene) -> Reading | None:
    """As in "The row along the top please": rows and columns are chosen, pages are not named."""
    for group in ("row", "column"):
        at = scene.find(group)
        if at < 0:
            continue
        start, end = scene.sentence(at)
        chosen = scene.has("choice_before", start, at) or scene.has("choice_after", at, end)
        if (chosen and end - start <= _KIND_REACH) or scene.word_count() <= 4:
            return _look(scene, at, at + 1, (), "a row or a column, not one page")
    return None
