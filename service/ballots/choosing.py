"""Mentions weighed against one another: corrections and orders of preference."""

from __future__ import annotations

from dataclasses import dataclass

from service.ballots import stands
from service.ballots.case import SMALL_TALK, THE_WORD
from service.ballots.corrections import correct
from service.ballots.counted import COUNTED
from service.ballots.cues import NUMBER_OF_ELSE, NUMBER_SAID
from service.ballots.elsewhere import BELONGS, MAY_BE, NAMES_ELSE, SOMEBODYS_AGE
from service.ballots.in_talk import doubt_talk
from service.ballots.lexicon import bits_of
from service.ballots.lists import back_to_the_question, join_ranges, link_lists
from service.ballots.mention import Mention
from service.ballots.numbered import read_numbering
from service.ballots.other_pieces import doubt_other_pieces
from service.ballots.progress import FOLLOWING, tell_progress
from service.ballots.scanning import SOFT, WORD
from service.ballots.scene import Scene
from service.ballots.sums import add_up, join_sums
from service.ballots.voices import VOICES, doubt_the_told, read_voices

#: Rules by which a number word is no number: they make no talk of numbers.
_JUST_WORDS = frozenset({SMALL_TALK, THE_WORD, "an ordinal without a page word"})
_UNDECIDED = frozenset({stands.UNSURE, stands.BARE})
_WEAKLY_OTHER = frozenset({BELONGS, SMALL_TALK, NAMES_ELSE})
_SPEAKING_OF_VOTES = ("voting", "page", "suggesting")
#: A comment of fewer words may be a vote in any words.
_TALK = 7
#: What is chosen in the next sentence is told in so few words.
_FEW = 3
#: In talk of other counts so small a number is hardly a page by itself.
_SMALL = 12


#: Words without one of which nothing of this kind is said.
_SUMS = bits_of("times", "plus", "minus", "divided_by", "less_than")
_SAID_BACK = bits_of("question_before", "being")
_AFFIRMING = bits_of("affirming")
_RANKS = bits_of("first_choice", "second_choice", "third_choice")


def weigh(scene: Scene, mentions: list[Mention]) -> None:
    """Change the mentions' standings by what stands between and around them."""
    present = scene.present
    several = len(mentions) > 1  # what sets numbers against one another needs two
    if several:
        read_numbering(scene, mentions)
        join_ranges(scene, mentions)
        if present & _SUMS:
            join_sums(scene, mentions)
    if present & _SAID_BACK:
        back_to_the_question(scene, mentions)
    if present & VOICES or scene.quoted:
        read_voices(scene, mentions)
    if several:
        doubt_the_told(scene, mentions)
        link_lists(scene, mentions)
    _raise_called(scene, mentions)
    doubt_other_pieces(scene, mentions)
    if several:
        if present & FOLLOWING:
            tell_progress(scene, mentions)
        add_up(mentions)
        _doubt_numbers_of_else(mentions)
        rules = {one.rule for one in mentions if one.standing == stands.OTHER}
        if not rules.isdisjoint(_TOLD_BEFORE):
            _doubt_repeats(scene, mentions)
        correct(scene, mentions)
        _set_aside_talk(scene, mentions)
    else:
        _affirm(scene, mentions[0])
    doubt_talk(scene, mentions)


def _affirm(scene: Scene, mention: Mention) -> None:
    """As in "Sweet sixteen! That's the page I'd start with": said in few words, then chosen."""
    unsure = mention.standing == stands.UNSURE and mention.value is not None
    if not (scene.present & _AFFIRMING and unsure):
        return
    start, end = scene.sentence(mention.first)
    few = start == 0 and scene.kinds[:end].count(WORD) <= _FEW
    but = scene.find("affirming", mention.after, end)
    against = but >= 0 and scene.begins("turning", but)  # "18 may be done but that's my vote"
    if against or (few and scene.begins("affirming", end + 1)):
        mention.standing, mention.rule = stands.CUED, "chosen behind it"


def _raise_called(scene: Scene, mentions: list[Mention]) -> None:
    """As in "110 for me, 95 as reserve": called a first or second choice, so it is one."""
    ranking = scene.present & _RANKS
    for one in mentions:
        if not (ranking or one.rank):
            continue
        called = one.standing in _UNDECIDED or one.rule in _WEAKLY_OTHER
        if called and _rank(scene, one):
            one.standing, one.rule = stands.ALONE, "called a first or second choice"


#: Rules by which a number is something that may be told again.
_TOLD_BEFORE = frozenset({BELONGS, SOMEBODYS_AGE}) | COUNTED


def _doubt_repeats(scene: Scene, mentions: list[Mention]) -> None:
    """As in "She was 27. Twenty seven.": said again, it may still be the age."""
    told = set[int | None]()
    measured = set[int | None]()
    for at, one in enumerate(mentions):
        measured |= _measured_next(mentions[at : at + 2])
        if _is_somebodys(one) and one.value != scene.last_page:  # "it stops at 154? 154 then"
            told.add(one.value)
        again = one.value in told or (one.value in measured and _is_an_echo(scene, one))
        bare = stands.BARE <= one.standing <= stands.ALONE
        if again and bare and not _is_concluded(scene, one):
            one.standing, one.rule = stands.UNSURE, "told before as something else"
        if one.standing == stands.OTHER and one.rule in COUNTED:
            measured.add(one.value)


def _measured_next(pair: list[Mention]) -> set[int | None]:
    """As in "Eleven. ELEVEN times.": what is counted right behind it."""
    counted = pair[-1].standing == stands.OTHER and pair[-1].rule in COUNTED
    beside = len(pair) > 1 and pair[1].first - pair[0].after <= 1
    return {pair[1].value} if counted and beside else set()


def _is_concluded(scene: Scene, mention: Mention) -> bool:
    """As in "I live at 28 so obviously 28", "43 because my sister is 43"."""
    if mention.first == 0:
        return scene.begins("because", mention.after) > 0
    at = mention.first - 1
    while at > 0 and scene.lexicon.before(scene.tokens, at)[0] == "fillers":
        at -= 1
    return scene.begins("own_voice", at) > 0


def _doubt_numbers_of_else(mentions: list[Mention]) -> None:
    """As in "Attempt number 4 at knots. Number 4!!": still the number of the same thing."""
    named = {one.value for one in mentions if one.rule == NUMBER_OF_ELSE}
    for one in mentions if named else ():
        if one.value in named and one.rule == NUMBER_SAID:
            one.standing, one.rule = stands.UNSURE, NUMBER_OF_ELSE


def _is_somebodys(mention: Mention) -> bool:
    return mention.standing == stands.OTHER and mention.rule in {BELONGS, SOMEBODYS_AGE}


def _is_an_echo(scene: Scene, mention: Mention) -> bool:
    """As in "9 euros for a coffee, NINE": nothing else stands in its clause."""
    start, end = scene.clause(mention.first, mention.after)
    beside = (*scene.tokens[start : mention.first], *scene.tokens[mention.after : end])
    bare = all(token.text in scene.lexicon.plain_words for token in beside)
    return bare and scene.tokens[mention.first - 1].text != ":"


def _set_aside_talk(scene: Scene, mentions: list[Mention]) -> None:
    """As in "planted 60 cloves, 58 came up": among other counts, and nothing speaks of voting."""
    counted = [
        one for one in mentions if one.standing == stands.OTHER and one.rule not in _JUST_WORDS
    ]
    if not counted or scene.word_count() < _TALK or not scene.lexicon.group("voting").firsts:
        return
    live = [one for one in mentions if one.standing >= stands.PLACED]
    if not live or not {one.standing for one in live} <= _UNDECIDED:
        return
    if any(scene.has(group, 0, len(scene.tokens)) for group in _SPEAKING_OF_VOTES):
        return
    sentences = {scene.sentence(one.first) for one in counted}
    # The last word of a comment is often its vote.
    ends = bool(live) and live[-1].after >= len(scene.tokens)
    sure = not ends and all(
        one.rule != MAY_BE
        and one.standing == stands.UNSURE
        and scene.sentence(one.first) in sentences
        for one in live
    )
    unsure = any(one.standing == stands.UNSURE or (one.value or 0) <= _SMALL for one in live)
    for one in live:
        if sure:
            one.standing, one.rule = stands.OTHER, "among numbers that count other things"
        elif one.standing == stands.BARE and not one.lucky and unsure:
            one.standing, one.rule = stands.UNSURE, "among numbers that count other things"


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
    ranks = {one.first: _rank(scene, one) for one in mentions}
    if len(set(ranks.values()) - {0}) == len(mentions):
        placed = sorted(mentions, key=lambda one: ranks[one.first])
        return Order(ranked=True, pages=tuple(one.value for one in placed if one.value is not None))
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
    replaces = scene.has("condition", first.after, second.first)  # "17 or, if that's gone, 40"
    # "22, and 33 if that's gone"
    behind = scene.begins("if_words", second.after) and scene.begins("second", second.after)
    stands_in = (second.conditional or replaces or behind) and not first.conditional
    joined = any(scene.has(group, first.after, second.first) for group in ("either", "also"))
    return Order(ranked=bool(stands_in) and joined, pages=pages)


def _rank(scene: Scene, mention: Mention) -> int:
    """1 for a page called the first choice, 2 for one called the second, 0 for neither."""
    if mention.rank:
        return mention.rank
    if not scene.present & _RANKS:
        return 0
    tokens = scene.tokens
    at = mention.first - 1
    while at >= 0 and (
        tokens[at].kind == SOFT or scene.lexicon.before(tokens, at)[0] in {"fillers", "page"}
    ):
        at -= 1
    ends = {at, mention.first - 1}
    for rank, group in ((1, "first_choice"), (2, "second_choice"), (3, "third_choice")):
        words = scene.lexicon.group(group)
        if any(words.before(tokens, end) for end in ends) or words.after(tokens, mention.after):
            return rank
    return 0
