"""What a comment says as a whole: a vote taken back, none at all, or one said by pointing."""

from __future__ import annotations

import re

from service.ballots import stands
from service.ballots.case import SMALL_TALK, THE_WORD
from service.ballots.deciding import none_of
from service.ballots.languages import LANGUAGES
from service.ballots.lexicon import bits_of
from service.ballots.mention import Mention
from service.ballots.mentions import find_mentions
from service.ballots.pointing import POINTING, look_at, read_described, read_pointing
from service.ballots.reading import Reading
from service.ballots.scanning import DIGITS, WORD, scan
from service.ballots.scene import Scene, signs_of
from service.ballots.segmenting import segment
from service.ballots.tellings import ENGLISH

#: A kind of page named in a longer sentence is talked about, not chosen.
_KIND_REACH = 10
#: "I still can't decide" says that those named are meant.
_TORN_REACH = 3
_FIRST = bits_of("first")
_KINDS = bits_of("kinds")
#: Without a word of any of these, mentions that may be meant decide; without mentions, nothing
#: does without one of those, but agreeing with a quoted vote.
_DECLINING = _KINDS | bits_of("abstaining")
_WHOLE = _DECLINING | _FIRST | POINTING | bits_of("row", "column")
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
    abstains = _abstains(scene)
    if scene.present & _KINDS and (abstains >= 0 or live):
        kind = None if any(_may_be_named(scene, one) for one in live) else _kind(scene)
        if kind is not None:  # "any page ending in 0"
            return kind
    cued = [one for one in live if one.standing >= stands.CUED]
    if abstains >= 0 and (not cued or _is_doubted(scene, cued[-1])):
        alone = [one for one in live if one.standing == stands.ALONE]
        placed = any(one.standing == stands.PLACED for one in live)
        undecided = scene.has("torn", max(abstains - 1, 0), abstains + _TORN_REACH)
        if placed and (undecided or scene.word_count() <= _KIND_REACH):
            return None
        # "No vote from me: 26 or 24 on 18 count?" names none; numbers of other things stand there.
        talk = not undecided and any(
            one.standing == stands.OTHER and one.rule not in {SMALL_TALK, THE_WORD}
            for one in mentions
        )
        named = [] if talk else [one for one in live if _is_named(scene, one)]
        if not alone and not named:
            if not live and (described := read_described(scene)):
                return described  # "a sky page please, I don't mind which"
            return none_of(scene, live, "no-page", "says that it chooses none")
        for one in alone + named:
            one.standing, one.rule = stands.ASKED, "beside words that choose none"
    if live:
        _make_doubtful(scene, live)
        return None
    return (
        _agreeing(scene)
        or _boasting(scene)
        or read_pointing(scene, mentions)
        or _kind(scene)
        or _row(scene)
    )


def _abstains(scene: Scene) -> int:
    """Where words choose none, apart from "can't decide whether that is navy or black"; -1 for nowhere."""
    at = scene.find("abstaining")
    while at >= 0 and scene.begins("wondering", at + scene.begins("abstaining", at)):
        at = scene.find("abstaining", at + 1)
    return at


def _is_doubted(scene: Scene, last: Mention) -> bool:
    """As in "30 perhaps, but I can't decide": said of the page in the same sentence."""
    _, end = scene.sentence(last.first)
    return scene.has("abstaining", last.after, end)


def _may_be_named(scene: Scene, mention: Mention) -> bool:
    on = scene.on_chart((mention.value or 0, *mention.maybe))
    return bool(on) or mention.standing > stands.UNSURE or mention.standing == stands.PLACED


def _is_named(scene: Scene, mention: Mention) -> bool:
    """A page of the chart that was named, though it may not be chosen."""
    return (
        mention.standing >= stands.ASKED
        and mention.value is not None
        and bool(scene.on_chart((mention.value,)))
    )


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
    if any(one.standing >= stands.UNSURE for one in mentions):
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
        if unsure and scene.begins("doubtful", one.first) and not _has_its_article(scene, one):
            one.standing, one.maybe = stands.PLACED, (one.value,)
            one.rule = "a word that is a number in one language only"


def _has_its_article(scene: Scene, mention: Mention) -> bool:
    """As in "la six", "die elf": an article of the comment's own language tells which is meant."""
    own = LANGUAGES.get(scene.lexicon.codes[0])
    if own is None or own.code == ENGLISH or not mention.first:
        return False
    article = (scene.tokens[mention.first - 1].text,)
    counts = scene.tokens[mention.first].text in own.numbers
    return counts and article in own.fillers and article not in LANGUAGES[ENGLISH].everyday


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
    return look_at(scene, at, at + step, pages, "agrees with a vote it quotes")


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
        return look_at(scene, at, end, (1,), "may boast of being the first to comment")
    return None


def _kind(scene: Scene) -> Reading | None:
    """As in "Any even page", "top row somewhere": a kind of page, not one."""
    at = scene.find("kinds")
    if at < 0:
        return None
    step = scene.begins("kinds", at)
    start, end = min(
        scene.sentence(at), scene.clause(at, at + step), key=lambda one: one[1] - one[0]
    )
    words = sum(token.kind == WORD for token in scene.tokens[start:end])
    if words > _KIND_REACH and not _is_wished(scene, start, at, end):
        return None
    return look_at(scene, at, at + scene.begins("kinds", at), (), "a kind of page, not one page")


def _is_wished(scene: Scene, start: int, at: int, end: int) -> bool:
    """As in "Somewhere along the left edge would be nice to tidy it up"."""
    behind = at + scene.begins("kinds", at)
    return behind < end and scene.begins("choice_after", behind) > 0 and at - start <= _KIND_REACH


def _row(scene: Scene) -> Reading | None:
    """As in "The row along the top please": rows and columns are chosen, pages are not named."""
    for group in ("row", "column"):
        at = scene.find(group)
        if at < 0:
            continue
        start, end = scene.sentence(at)
        chosen = scene.has("choice_before", start, at) or scene.has("choice_after", at, end)
        numbered = scene.kinds[at + 1 : at + 2] == [DIGITS]
        if numbered and not chosen and scene.word_count() > 1:
            continue  # "Row 12 nearly broke me"
        if (chosen and end - start <= _KIND_REACH) or scene.word_count() <= 4:
            return look_at(scene, at, at + 1, (), "a row or a column, not one page")
    return None
