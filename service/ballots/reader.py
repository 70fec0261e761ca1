"""One comment read as a vote, by the policy in reading-votes.md beside this module.

The rule behind every rule: a comment counts for a page only when any fair reader would be sure
that its writer chose that page. Where two fair readers could differ, the host looks.
"""

from __future__ import annotations

import re

from service.ballots import stands
from service.ballots.chat import is_chat
from service.ballots.choosing import weigh
from service.ballots.deciding import decide
from service.ballots.judging import judge
from service.ballots.lexicon import lexicon_of
from service.ballots.mention import Mention
from service.ballots.mentions import find_mentions
from service.ballots.normal import Plain, plain_of
from service.ballots.places import find_places
from service.ballots.quick import read_quickly
from service.ballots.reading import Question, Reading
from service.ballots.scanning import QUOTE, Token, scan
from service.ballots.scene import Scene
from service.ballots.segmenting import segment
from service.ballots.shapes import judge_shape
from service.ballots.stretched import unstretched
from service.ballots.tongue import tongue_of
from service.ballots.whole import read_whole
from service.ballots.wording import worded

#: What a comment without a vote says.
NO_PAGE = Reading("none", (), "no-page", "no page of the chart is named")

_DIGIT = re.compile("[0-9]")
#: Lines of others; ">>> 12 <<<" is the writer's own.
_QUOTED_LINE = re.compile(r"^[ \t]*>(?!.*<[ \t]*$).*$", re.MULTILINE)
_STRUCK = re.compile(r"~~.+?~~|<(?:del|s|strike)>.*?</(?:del|s|strike)>", re.DOTALL)


def read_vote(text: str, question: Question) -> Reading:
    """What the comment says as a vote: its outcome, pages, reason, and the words that decided.

    Never raises, whatever the text.
    """
    plain = plain_of(text)
    if _DIGIT.search(plain.text):
        quick = read_quickly(text, question)
        if quick is not None:
            return quick
    elif is_chat(text, plain.text, question.languages):
        return NO_PAGE
    return read_thoroughly(text, question, plain)


def read_thoroughly(text: str, question: Question, plain: Plain | None = None) -> Reading:
    """The same the long way, which every comment can go."""
    plain = plain or plain_of(text)
    own = _without_others(plain.text)
    tokens = scan(own)
    if not own.isascii():
        tokens = segment(tokens)
    scene = _scene(text, plain, own, tokens, question)
    mentions = find_mentions(scene.tokens, scene.signs, scene.lexicon)
    for mention in mentions:
        if mention.standing == stands.UNSURE:
            judge(scene, mention)
        elif mention.standing == stands.PLACED:
            judge_shape(scene, mention)
    mentions = _with_places(mentions, find_places(scene))
    if not mentions:
        return read_whole(scene, mentions) or NO_PAGE
    weigh(scene, mentions)
    return read_whole(scene, mentions) or decide(scene, mentions)


def _without_others(plain: str) -> str:
    """Quoted lines and struck-out text blanked, so that every offset stays where it was."""
    if ">" not in plain and "~~" not in plain:
        return plain
    blank = lambda found: re.sub(r"[^\n]", " ", found.group())  # noqa: E731 - used twice below
    return _STRUCK.sub(blank, _QUOTED_LINE.sub(blank, plain))


def _scene(text: str, plain: Plain, own: str, tokens: list[Token], question: Question) -> Scene:
    tongue = tongue_of(tokens, question.languages)
    lexicon = lexicon_of(tongue.codes)
    if tongue.stretched:
        tokens = unstretched(tokens, lexicon)
    if lexicon.rewords:
        tokens = worded(tokens, lexicon)
    scene = Scene(text, plain, own, tokens, lexicon, question)
    if QUOTE in scene.kinds:
        scene.quoted = _quoted(tokens)
    return scene


def _quoted(tokens: list[Token]) -> frozenset[int]:
    """The tokens between a pair of quotation marks of one kind."""
    inside: set[int] = set()
    opened: int | None = None
    for at, token in enumerate(tokens):
        if token.kind != "quote":
            continue
        if opened is None:
            opened = at
        elif tokens[opened].text == token.text:
            inside.update(range(opened + 1, at))
            opened = None
    return frozenset(inside)


def _with_places(mentions: list[Mention], places: list[Mention]) -> list[Mention]:
    """Numbers and places in the order they stand; where they overlap, the place holds."""
    if not places:
        return mentions
    longer = {at for one in mentions if one.spelled for at in range(one.first + 1, one.after)}
    places = [place for place in places if place.first not in longer]
    taken = {at for place in places for at in range(place.first, place.after)}
    kept = [one for one in mentions if not taken & set(range(one.first, one.after))]
    return sorted(kept + places, key=lambda one: one.first)
