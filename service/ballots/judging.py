"""Each number judged by the words beside it: a choice, something else, or not to be told.

The rules are tried in order; the first that says something decides.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from service.ballots.beside import Beside, read_after, read_before
from service.ballots.mentions import Mention, Standing
from service.ballots.relations import told_from
from service.ballots.scanning import DIGITS, WORD
from service.ballots.scene import Scene
from service.ballots.surroundings import (
    counts_what_follows,
    is_alone,
    is_fabric,
    is_in_brackets,
    is_of_own_piece,
    says_where_the_writer_is,
    word_at,
)

_TOLD_FROM = frozenset({"above", "below", "later", "earlier", "relative_before"})
_SMALL = 11


@dataclass(slots=True)
class Case:
    """A number with what stands on either side of it."""

    scene: Scene
    mention: Mention
    before: Beside
    after: Beside

    @property
    def value(self) -> int:
        """The number itself; 0 where the mention has none."""
        if self.mention.value is None and self.mention.maybe:
            return self.mention.maybe[0]
        return self.mention.value or 0

    @property
    def cued(self) -> bool:
        """Whether a page word or a number word stands before it."""
        return self.before.page or self.before.number

    @property
    def is_small_word(self) -> bool:
        """Number words up to ten are part of much other talk."""
        return self.mention.spelled and self.value < _SMALL


Verdict = tuple[Standing, str] | None
Rule = Callable[[Case], Verdict]


def judge(scene: Scene, mention: Mention) -> None:
    """Set the mention's standing and the rule that decided."""
    before = read_before(scene, mention.first)
    after = read_after(scene, mention.after)
    case = Case(scene, mention, before, after)
    mention.cued_by_page = before.page
    rules = _ORDINAL_RULES if "ordinal" in mention.shape else _RULES
    for rule in rules:
        verdict = rule(case)
        if verdict is not None:
            mention.standing, mention.rule = verdict
            break
    if mention.value is None and mention.standing > Standing.UNSURE:
        mention.standing = Standing.PLACED


def _ruled_out(case: Case) -> Verdict:
    if case.before.group == "not_before" or case.after.group == "not_after":
        return Standing.STRUCK, "ruled out"
    return None


def _misheard(case: Case) -> Verdict:
    """ "Forty to please": voice typing may have hidden a second digit."""
    scene, value = case.scene, case.value
    if not case.mention.spelled or not 20 <= value < 100 or value % 10:
        return None
    hidden = scene.lexicon.homophones.get(word_at(scene, case.mention.after))
    if hidden is None:
        return None
    beyond = read_after(scene, case.mention.after + 1)
    if beyond.group not in {"", "choice_after"} or beyond.phrase >= 0 and not beyond.group:
        return None
    case.mention.maybe = (value, value + hidden)
    return Standing.PLACED, "a word that sounds like a number may belong to it"


def _tallied(case: Case) -> Verdict:
    """ "6 votes for 12": how many voted for it, not a vote for it."""
    scene = case.scene
    first = case.before.phrase
    beyond = case.mention.after + 1
    if word_at(scene, beyond - 1) == "for" and beyond < len(scene.tokens):
        if scene.tokens[beyond].kind == DIGITS and not case.cued:
            return Standing.OTHER, "how many others voted"
    if case.before.group not in {"tally_before", "choice_before"}:
        if word_at(scene, case.mention.first - 1) != "for":
            return None
        first = case.mention.first - 1
    counted = scene.tokens[first - 1].text if first > 0 else ""
    several = counted.isdigit() and counted != "1"
    if several or (counted in scene.lexicon.numbers and scene.lexicon.numbers[counted] > 1):
        case.mention.reported = True
        return Standing.ASKED, "how others voted"
    return None


def _measured(case: Case) -> Verdict:
    if case.before.page:
        return None
    if case.after.group == "other_after":
        return Standing.OTHER, "counts or measures something else"
    if is_fabric(case.scene, case.mention):
        return Standing.OTHER, "fabric and thread"
    return None


def _too_large(case: Case) -> Verdict:
    """Years, likes and stitches run beyond any chart's pages."""
    bare = not case.before.page and case.before.group != "choice_before"
    if bare and (case.value > 999 or 1900 <= case.value < 2100):
        return Standing.OTHER, "too large for a page: a year or a count"
    return None


def _told_from_another(case: Case) -> Verdict:
    group = case.before.group if case.before.group in _TOLD_FROM else ""
    if not group and case.after.group == "relative_after":
        group = "relative_before"
        case.mention.maybe = ()
        return Standing.PLACED, "told from a place, not named"
    if not group:
        return None
    if not case.after.open:
        return Standing.OTHER, "part of other talk"
    chart = case.scene.question.chart
    case.mention.maybe = told_from(chart, case.value, group)
    return Standing.PLACED, "told from another page"


def _rough(case: Case) -> Verdict:
    if case.before.group == "roughly_before" or case.after.group == "roughly_after":
        if case.before.group and case.before.at + 2 < case.mention.first and not case.cued:
            # "about the 28th" tells of something, "about 28" tells a page.
            if word_at(case.scene, case.mention.first - 1) in {"the", "my", "your"}:
                return Standing.OTHER, "what something is about"
        case.mention.maybe = (case.value,)
        return Standing.PLACED, "about there, not an exact page"
    return None


def _lucky(case: Case) -> Verdict:
    if case.before.group == "lucky_before" and not case.before.page:
        case.mention.lucky = True
        return Standing.BARE, "a favourite or lucky number"
    return None


def _chosen(case: Case) -> Verdict:
    """After words of choice: chosen, unless what follows says it counts something."""
    if case.before.group != "choice_before":
        return None
    if case.after.group == "reported_after":
        case.mention.reported = True
        return Standing.ASKED, "foretold or reported, perhaps not chosen"
    if case.value == 1 and case.mention.spelled and not case.cued and not _is_a_number(case):
        return Standing.OTHER, "the word, not the number"
    if case.before.page or case.after.open:
        if _is_a_time(case):
            return Standing.UNSURE, "may be a time of day"
        return Standing.CUED, "words of choice before it"
    if case.is_small_word and not case.cued:
        return Standing.OTHER, "counts what follows"
    if counts_what_follows(case.scene, case.after):
        return Standing.OTHER if case.scene.word_count() > 12 else Standing.UNSURE, (
            "may count what follows"
        )
    return Standing.UNSURE, "may count what follows"


def _is_a_time(case: Case) -> bool:
    """ "Please start at 9, the children are asleep by then"."""
    last = word_at(case.scene, case.mention.first - 1)
    return last == "at" and case.value <= 12 and not case.cued and case.scene.word_count() > 6


def _is_a_number(case: Case) -> bool:
    """Whether a spelled "one" is the number: right behind its cue, nothing behind it."""
    scene = case.scene
    direct = case.before.at + 1 + (case.before.phrase >= 0) <= case.mention.first
    previous = word_at(scene, case.mention.first - 1)
    group = scene.lexicon.before(scene.tokens, case.mention.first - 1)[0] if previous else ""
    follows = case.after.group == "choice_after" or case.after.phrase < 0
    return direct and group in {"", "page", "number", "choice_before"} and follows and case.after.open


def _belongs(case: Case) -> Verdict:
    if case.before.crossed and word_at(case.scene, case.before.phrase) in {"age", "birthday"}:
        case.mention.maybe = (case.value,)
        return Standing.ASKED, "an age or a birthday, perhaps not a page"
    if case.before.group == "other_before":
        return Standing.OTHER, "belongs to the words before it"
    return None


def _somebody_elses(case: Case) -> Verdict:
    group = case.before.group
    if group not in {"reported_before", "family_before"}:
        return None
    if group == "family_before" and not case.cued:
        return Standing.OTHER, "somebody's age, or how many they are"
    case.mention.reported = True
    case.mention.family = group == "family_before"
    return Standing.ASKED, "somebody else's"


def _in_brackets(case: Case) -> Verdict:
    if is_in_brackets(case.scene, case.mention) and not case.cued:
        return Standing.OTHER, "told in passing, such as an age"
    return None


def _page_said(case: Case) -> Verdict:
    """After "page": a choice, unless it is a page of the writer's own piece."""
    if not case.before.page:
        return None
    own = is_of_own_piece(case.scene, case.mention)
    owner = word_at(case.scene, case.before.at)
    asking = case.scene.lexicon.group("asking").firsts
    possessed = owner.endswith("'s") and owner not in asking
    here = case.before.group == "weak_before"
    if own or possessed or (here and says_where_the_writer_is(case.scene, case.before)):
        return Standing.OTHER, "a page of the writer's own piece"
    if case.after.group == "reported_after":
        case.mention.reported = True
        return Standing.ASKED, "foretold or reported, perhaps not chosen"
    if here and case.after.group != "choice_after":
        return Standing.UNSURE, "a page, perhaps only talked about"
    return Standing.CUED, "a page word before it"


def _number_said(case: Case) -> Verdict:
    """After "number" or "#": a choice, unless it is a rank or the number of something."""
    if not case.before.number:
        return None
    if not case.after.open:
        standing = Standing.OTHER if case.value == 1 else Standing.UNSURE
        return standing, "may be the number of something else"
    if case.before.group == "weak_before" and case.after.group != "choice_after":
        here = says_where_the_writer_is(case.scene, case.before)
        return Standing.OTHER if here else Standing.UNSURE, "may be the number of something else"
    if case.after.group == "reported_after":
        case.mention.reported = True
        return Standing.ASKED, "foretold or reported, perhaps not chosen"
    if case.after.group == "weak_after":
        return Standing.OTHER, "the number of something else"
    return Standing.CUED, "a number word before it"


def _weak_before(case: Case) -> Verdict:
    """After a bare preposition or "have": mostly something else, a choice if said so."""
    if case.before.group != "weak_before":
        return None
    if case.after.group == "choice_after":
        return Standing.UNSURE, "may be a choice"
    if not case.after.open or case.after.group == "weak_after" or case.is_small_word:
        return Standing.OTHER, "counts or names something else"
    return Standing.UNSURE, "may belong to the words before it"


def _weak_after(case: Case) -> Verdict:
    if case.after.group != "weak_after":
        return None
    word = word_at(case.scene, case.mention.after)
    if case.before.open and word in {"page", "vote", "part", "point", "to", "over"}:
        if not case.is_small_word:
            return Standing.UNSURE, "may be a choice"
    return Standing.OTHER, "counts something else"


def _chosen_after(case: Case) -> Verdict:
    if case.after.group == "reported_after":
        case.mention.reported = True
        return Standing.ASKED, "foretold or reported, perhaps not chosen"
    if case.after.group != "choice_after":
        return None
    if case.mention.spelled and case.value == 1 and not _is_a_number(case):
        return Standing.OTHER, "the word, not the number"
    # A small number word in the middle of talk is no number even before "please".
    if case.before.open or not case.is_small_word:
        return Standing.CUED, "words of choice after it"
    return None


def _in_the_open(case: Case) -> Verdict:
    if not (case.before.open and case.after.open):
        return None
    if case.mention.spelled and case.value == 1 and not _is_a_number(case):
        return Standing.OTHER, "the word, not the number"
    if is_alone(case.scene, case.mention):
        return Standing.ALONE, "stands by itself"
    if not case.is_small_word:
        return Standing.BARE, "nothing says that it is something else"
    if case.before.at < 0 or case.scene.tokens[case.before.at].kind != WORD:
        return Standing.BARE, "begins what is said"
    return Standing.UNSURE, "a small number inside other talk"


def _unknown_beside(case: Case) -> Verdict:
    if case.is_small_word:
        return Standing.OTHER, "a small number inside other talk"
    if counts_what_follows(case.scene, case.after) and case.value != 1:
        sure = case.scene.word_count() > 4
        return Standing.OTHER if sure else Standing.UNSURE, "counts what follows"
    return Standing.UNSURE, "beside words that say nothing the reader knows"


def _ordinal_page(case: Case) -> Verdict:
    if not (case.after.page or case.before.page):
        return None
    if case.after.page:
        case.mention.after = max(case.mention.after, case.after.at + 1)
        case.mention.cued_by_page = True
    own = case.before.group in {"weak_before", "other_before"}
    if own or is_of_own_piece(case.scene, case.mention):
        return Standing.OTHER, "a page of the writer's own piece"
    return Standing.CUED, "an ordinal with a page word"


def _ordinal_word(case: Case) -> Verdict:
    if case.mention.shape != "ordinal word":
        return None
    chosen = "choice_before" == case.before.group or case.after.group == "choice_after"
    if case.value > 3 and (chosen or is_alone(case.scene, case.mention)):
        case.mention.maybe = (case.value,)
        return Standing.ASKED, "an ordinal without a page word"
    return Standing.OTHER, "an ordinal without a page word"


def _ordinal_elsewhere(case: Case) -> Verdict:
    beside = case.before.group in {"weak_before", "other_before", "roughly_before"}
    if beside or not case.after.open:
        return Standing.OTHER, "a date, a rank or a turn"
    if case.value <= 3 and not is_alone(case.scene, case.mention):
        return Standing.OTHER, "a rank or a turn"
    return None


_RULES: tuple[Rule, ...] = (
    _ruled_out, _misheard, _tallied, _measured, _too_large, _told_from_another, _rough, _lucky,
    _chosen, _belongs, _somebody_elses, _in_brackets, _page_said, _number_said, _weak_before,
    _weak_after, _chosen_after, _in_the_open, _unknown_beside,
)  # fmt: skip
_ORDINAL_RULES: tuple[Rule, ...] = (
    _ruled_out, _ordinal_page, _ordinal_word, _ordinal_elsewhere, *_RULES,
)  # fmt: skip
