"""Numbers side by side: ranges, lists, and what is said of one that holds for the other."""

from __future__ import annotations

from itertools import pairwise

from service.ballots import stands
from service.ballots.asked import ASKED_ABOUT
from service.ballots.case import SMALL_TALK, THE_WORD
from service.ballots.counted import COUNTED, COUNTS_ELSE
from service.ballots.elsewhere import BELONGS, SAYING, SOMEBODYS_AGE
from service.ballots.lexicon import bits_of
from service.ballots.mention import Mention
from service.ballots.numbered import PLACE
from service.ballots.scanning import END, SOFT
from service.ballots.scene import Scene
from service.ballots.surroundings import is_of_own_piece

_LIST_MARKS = frozenset({",", "/", "&", "-", "\n", "|", "+", "•", "(", ".", ". ", "=", "*"})
#: Rules by which a number word is no number at all: they say nothing of its neighbour.
_JUST_WORDS = frozenset({SMALL_TALK, THE_WORD, PLACE, SAYING})
#: "15 min, then 25": what follows is measured alike.
_THEN = frozenset({",", "then", "and", "plus"})
#: Between two numbers of a list, marks that say nothing, and groups of words that do not part it.
_QUIET = frozenset({"quote", "other"})
_CUES = frozenset({"page", "number", "fillers"})
#: Whose ages they are is told so few words before them.
_AGES_REACH = 4
#: What goes on counting is no more than this.
_SMALL = 12
_MINUTES = bits_of("minutes_to")
_JOINING = bits_of("either", "also")
_OPEN_ENDED = frozenset({"digits", "word", "ordinal"})


def join_ranges(scene: Scene, mentions: list[Mention]) -> None:
    """As in "Between 30 and 40": two numbers that bound a range are no choice of either."""
    timed = scene.present & _MINUTES
    for left, right in pairwise(mentions):
        if timed and _tell_the_time(scene, left, right):
            left.standing = right.standing = stands.OTHER
            left.rule = right.rule = "a time of day"
            continue
        if left.value is None or right.value is None or not _bound_a_range(scene, left, right):
            continue
        if _is_torn(scene, left):
            left.standing = right.standing = stands.ASKED
            left.rule = right.rule = "torn between two pages"
            continue
        left.standing = right.standing = stands.OTHER
        left.rule = right.rule = "the question's own numbers said back"
        if right.value >= scene.last_page and left.value <= 1:
            continue
        if is_of_own_piece(scene, right):
            left.rule = right.rule = "pages of the writer's own piece"
            continue
        left.standing = stands.PLACED
        left.rule, right.rule = "a range, not one page", "the end of a range"
        apart = right.value - left.value
        left.maybe = ((left.value, right.value), (left.value + 1,))[apart - 1] if apart < 3 else ()


def _tell_the_time(scene: Scene, left: Mention, right: Mention) -> bool:
    """As in "it's 20 to 8": minutes before or after an hour."""
    minutes, hour = left.value or 0, right.value or 0
    between = scene.begins("minutes_to", left.after) if left.after < right.first else 0
    joined = bool(between) and left.after + between == right.first
    return joined and minutes in {5, 10, 20, 25} and 1 <= hour <= 12 and hour < minutes


def _bound_a_range(scene: Scene, left: Mention, right: Mention) -> bool:
    if (left.value or 0) >= (right.value or 0) or left.after == right.first:
        return False
    if (left.shape == "ordinal word") != (right.shape == "ordinal word"):
        return False
    if [token.text for token in scene.tokens[left.after : right.first : 2]] == ["<", "<"]:
        return True  # "98 < n < 102"
    group = scene.lexicon.group
    through, also = group("through").firsts, group("also").firsts
    pages, articles = group("page").firsts, group("fillers").firsts
    joining = ""
    for token in scene.tokens[left.after : right.first]:
        word = token.text
        if word in pages or (word in articles and word not in through and word not in also):
            continue
        if joining or not (word in through or word == "-" or word in also):
            return False
        joining = word
    if not joining:
        return False
    apart = joining not in through or _is_told_apart(left, right)
    return not apart or scene.has("between", left.first - 3, left.first)


def _is_torn(scene: Scene, left: Mention) -> bool:
    """As in "50/50 between 11 and 22": two pages, not what lies between."""
    near = range(max(left.first - 3, 0), left.first)
    at = next((at for at in near if scene.begins("between", at)), -1)
    if at < 1:
        return False
    halves = scene.tokens[at - 1].text in {"50/50", "50:50"}
    return halves or scene.has("torn", at - 4, at)


def _is_told_apart(left: Mention, right: Mention) -> bool:
    """A cue of its own on both sides makes two choices, not a range."""
    return left.cued_by_page and right.cued_by_page


def back_to_the_question(scene: Scene, mentions: list[Mention]) -> None:
    """As in "Out of 63", "it only goes to 63": the number of pages said back."""
    for mention in mentions:
        if (
            mention.value == scene.last_page
            and stands.UNSURE <= mention.standing <= stands.ALONE
            and scene.lexicon.group("question_before").before(scene.tokens, mention.first - 1)
        ):
            mention.standing, mention.rule = stands.OTHER, "the number of pages said back"
        elif mention.value == scene.last_page and mention.standing == stands.BARE:
            at = mention.first - 1
            if scene.begins("being", mention.after) or (at >= 0 and scene.begins("being", at) == 1):
                # "63 is madness", "9 by 7 is 63"
                mention.standing, mention.rule = stands.ASKED, "perhaps the number of pages"


def is_link(scene: Scene, left: Mention, right: Mention) -> str:
    """How two mentions are joined: "or", "and", "," for list marks, "" for not at all."""
    tokens = scene.tokens
    at, how = left.after, "," if left.after == right.first else ""
    if left.standing == stands.OTHER and at < right.first:
        group, count = scene.lexicon.after(tokens, at)
        at += count if group == "other_after" else 0
        how = "," if at == right.first else how
        while at < right.first and tokens[at].text in _THEN:
            how, at = "and", at + 1
    signs = scene.signs
    while at < right.first:
        token = tokens[at]
        joining = signs[at] & _JOINING
        either = joining and scene.begins("either", at)
        also = joining and scene.begins("also", at)
        if either or also:
            how = "or" if either else "and"
            at += either or also
            continue
        line = token.kind == END and token.text[0] == "\n"
        ends = token.kind == END and not line
        if ends and not scene.begins("either", at + 1):
            return ""
        if ends or line or token.text in _LIST_MARKS:
            how = how or ","
        elif token.kind not in _QUIET and scene.lexicon.before(tokens, at)[0] not in _CUES:
            return ""
        at += 1
    return how


def link_lists(scene: Scene, mentions: list[Mention]) -> None:
    """Numbers in one list share what is said of the first or the last of them."""
    pairs = [
        (left, right, how)
        for left, right in pairwise(mentions)
        if (how := is_link(scene, left, right))
    ]
    _share_ages(scene, pairs)
    _go_on_counting(scene, mentions)
    counted: Mention | None = None
    for left, right, how in reversed(pairs):
        plain = right.value is not None and right.rule not in _JUST_WORDS
        # "25, 30 or 45 dollars": the list has an end, so its commas join as well.
        joined = how != "," or (right is counted and left.standing <= stands.BARE)
        if right.standing == stands.OTHER and plain and joined:
            _share_other(left, right)
            counted = left
    for left, right, how in pairs:
        if left.standing == stands.OTHER and left.rule in _JUST_WORDS:
            continue
        if (
            left.standing == stands.OTHER
            and right.standing <= stands.BARE
            and right.rule != ASKED_ABOUT
        ):
            unknown = how == "," and right.standing == stands.UNSURE
            if how != "," or unknown:
                _share_other(right, left)
        elif left.standing == stands.STRUCK and left.rule == "ruled out":
            # "Not 6 or 7 please" rules out both; "not 6, 7 please" chooses 7.
            if how == "or" or (how == "and" and right.standing < stands.CUED):
                right.standing, right.rule = stands.STRUCK, "ruled out"
        else:
            if right.rule == COUNTS_ELSE and how == "," and left.standing >= stands.ALONE:
                right.standing, right.rule = left.standing, left.rule  # "25, 26, 27 all in a line"
            _share_choice(scene, left, right)


def _go_on_counting(scene: Scene, mentions: list[Mention]) -> None:
    """As in "1 cat on my lap, 1 on the keyboard": what is counted goes without saying."""
    for left, right in pairwise(mentions):
        small = right.value is not None and right.value <= _SMALL
        if left.standing != stands.OTHER or left.rule not in COUNTED or not small:
            continue
        start, end = scene.sentence(right.first)
        begins = right.first > left.after and (
            scene.kinds[right.first - 1] == SOFT or scene.begins("also", right.first - 1) > 0
        )
        if not (begins and start <= left.first and right.after < end) or right.cued_by_page:
            continue
        placed = scene.begins("weak_before", right.after) or scene.begins("part_of", right.after)
        told = placed > 0 or right.standing == stands.UNSURE
        told = told and scene.lexicon.after(scene.tokens, right.after)[1] <= 1
        few = (right.value or 0) <= (left.value or 0)
        told = told or (few and _says_what_it_is(scene, right, end))
        of_them = right.family and few  # "3 kids, 2 asleep"
        most = stands.CUED if placed else stands.ALONE
        if stands.ASKED <= right.standing <= most and (told or of_them):
            right.standing, right.rule = stands.OTHER, left.rule


def _says_what_it_is(scene: Scene, mention: Mention, end: int) -> bool:
    """As in "3 projects, 1 is very big", and not "1 is my vote"."""
    being = scene.begins("being", mention.after)
    return being > 0 and not any(
        scene.has(group, mention.after, end) for group in ("voting", "choice_after")
    )


def _share_ages(scene: Scene, pairs: list[tuple[Mention, Mention, str]]) -> None:
    """As in "The kids are 4, 7 and 11": one list of ages."""
    for (left, right, how), (_, last, then) in pairwise(pairs):
        near = scene.has("family_before", left.first - _AGES_REACH, left.first)
        ages = left.rule == SOMEBODYS_AGE or (left.rule == BELONGS and near)
        if ages and how in {",", "and"} and then == "and":
            _share_other(right, left)
            _share_other(last, left)


def _share_other(one: Mention, other: Mention) -> None:
    """As in "14 or 16 count": what the one counts, the other counts too."""
    plain = one.shape in _OPEN_ENDED and not one.cued_by_page and other.value is not None
    apart = other.first - one.after > 1 and one.standing == stands.ALONE
    if plain and not apart and stands.ASKED <= one.standing <= stands.ALONE:
        one.standing, one.rule = stands.OTHER, other.rule


def _share_choice(scene: Scene, left: Mention, right: Mention) -> None:
    both = (left, right)
    if any(one.standing < stands.ASKED or one.value is None for one in both):
        return
    if left.reported != right.reported and scene.has("turning", left.after, right.first):
        return  # "eerst wilde ik 3, maar toch 40"
    if left.lucky:
        right.lucky = True
    if left.reported or right.reported:
        left.reported = right.reported = True
        left.standing = right.standing = min(left.standing, right.standing)
    elif min(left.standing, right.standing) > stands.ASKED:
        left.standing = right.standing = max(left.standing, right.standing)
