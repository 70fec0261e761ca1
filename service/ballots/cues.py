"""Rules by which a number is a choice: cued, favoured, ordered, or standing in the open."""

from __future__ import annotations

from service.ballots import stands
from service.ballots.case import PAGE_SAID, SMALL_TALK, THE_WORD, Case, Verdict
from service.ballots.lexicon import bits_of
from service.ballots.scanning import DIGITS, WORD
from service.ballots.surroundings import (
    counts_what_follows,
    is_alone,
    is_of_ones_own,
    is_of_own_piece,
    says_where_the_writer_is,
    word_at,
)

NUMBER_OF_ELSE, NUMBER_SAID = "may be the number of something else", "a number word before it"
CHOSEN_AFTER = "words of choice after it"
CHOSEN_BEFORE = "words of choice before it"
IN_THE_OPEN, BEGINS = "nothing says that it is something else", "begins what is said"
LUCKY = "a favourite or lucky number"
DONE = "a page that is done, perhaps of the writer's own piece"
OWN_PIECE = "a page of the writer's own piece"
SAID_BY = "foretold or reported, perhaps not chosen"
PRAISED = "praised as well as another"
_AS_WELL = frozenset({"too", "well"})
_WEATHER = bits_of("weather")
#: In a comment of more words the weather is talked about.
_FEW = 4
#: Ordinals up to this tell ranks and turns: "my 2nd choice".
_RANKS = 3


def lucky(case: Case) -> Verdict:
    """As in "my lucky number is 7": offered unless something else is chosen."""
    if case.before.group == "lucky_before" and not case.before.page:
        case.mention.lucky = True
        return stands.BARE, LUCKY
    return None


def chosen(case: Case) -> Verdict:
    """After words of choice: chosen, unless what follows says it counts something."""
    if case.before.group != "choice_before":
        return None
    if case.after.group == "reported_after":
        case.mention.reported = True
        return stands.ASKED, SAID_BY
    if case.value == 1 and case.mention.spelled and not case.cued and not _is_a_number(case):
        return stands.OTHER, THE_WORD
    if case.before.page and is_of_ones_own(case.scene, case.mention):
        own = case.mention.after + case.scene.begins("own_piece", case.mention.after)
        wished = case.scene.has("choice_after", own, case.scene.sentence(own)[1])
        return stands.UNSURE if wished else stands.OTHER, OWN_PIECE
    return _told_as_a_count(case) or _sure_of(case)


def _told_as_a_count(case: Case) -> Verdict:
    """As in "It's 30 here", "I need 6 more skeins": words of choice that are none."""
    if case.scene.present & _WEATHER and _is_the_weather(case):
        few = case.scene.word_count() <= _FEW
        return stands.UNSURE if few else stands.OTHER, "perhaps how warm it is"
    more = case.after.group == "weak_after" and not case.cued
    if more and counts_what_follows(case.scene, case.after):
        return stands.OTHER, "counts what follows"
    return None


def _sure_of(case: Case) -> Verdict:
    """How sure a choice is by what follows it."""
    if case.before.page or case.after.clear:
        if _is_a_time(case):
            return stands.UNSURE, "may be a time of day"
        return stands.CUED, CHOSEN_BEFORE
    if case.is_small_word and not case.cued:
        return stands.OTHER, "counts what follows"
    if counts_what_follows(case.scene, case.after):
        return stands.OTHER if case.scene.word_count() > 12 else stands.UNSURE, (
            "may count what follows"
        )
    return stands.UNSURE, "may count what follows"


def _is_the_weather(case: Case) -> bool:
    """As in "It's 30 here and far too hot for wool"."""
    scene, mention = case.scene, case.mention
    told = scene.lexicon.group("it_is").before(scene.tokens, mention.first - 1)
    return bool(told) and scene.begins("weather", mention.after) > 0


def _is_a_time(case: Case) -> bool:
    """As in "Please start at 9, the children are asleep by then"."""
    scene, at = case.scene, case.mention.first - 1
    clock = scene.lexicon.group("clock_before").before(scene.tokens, at) > 0
    return clock and case.value <= 12 and not case.cued and case.scene.word_count() > 6


def _is_a_number(case: Case) -> bool:
    """Whether a spelled "one" is the number: right behind its cue, nothing behind it."""
    scene = case.scene
    direct = case.before.at + 1 + (case.before.phrase >= 0) <= case.mention.first
    previous = word_at(scene, case.mention.first - 1)
    group = scene.lexicon.before(scene.tokens, case.mention.first - 1)[0] if previous else ""
    # "one page" counts pages where pages are many with an -s; a Japanese 一ページ names one.
    counts = case.after.page and scene.lexicon.plural_s
    follows = not counts and (case.after.group == "choice_after" or case.after.phrase < 0)
    return (
        direct and group in {"", "page", "number", "choice_before"} and follows and case.after.clear
    )


def page_said(case: Case) -> Verdict:
    """After "page": a choice, unless it is a page of the writer's own piece."""
    if not case.before.page:
        return None
    own = is_of_own_piece(case.scene, case.mention)
    owner = word_at(case.scene, case.before.at)
    asking = case.scene.lexicon.group("asking").firsts
    possessed = owner.endswith("'s") and owner not in asking
    here = case.before.group == "weak_before"
    if own or possessed or (here and says_where_the_writer_is(case.scene, case.before)):
        return stands.OTHER, OWN_PIECE
    if case.after.group == "reported_after":
        case.mention.reported = True
        return stands.ASKED, SAID_BY
    if case.scene.begins("finished", case.mention.after) and case.before.group != "choice_before":
        return stands.ASKED, DONE
    if here and case.after.group != "choice_after" and not _votes(case):
        return stands.UNSURE, "a page, perhaps only talked about"
    return stands.CUED, PAGE_SAID


def _votes(case: Case) -> bool:
    """Whether the comment speaks of voting, or asks, as in "I have to pick the owl on page 71"."""
    return case.scene.has("voting", 0, len(case.scene.tokens))


def number_said(case: Case) -> Verdict:
    """After "number" or "#": a choice, unless it is a rank or the number of something."""
    if not case.before.number:
        return None
    if not case.after.clear:
        standing = stands.OTHER if case.value == 1 else stands.UNSURE
        return standing, NUMBER_OF_ELSE
    if _names_something(case) or _is_a_rank(case):
        return stands.UNSURE, NUMBER_OF_ELSE
    if case.before.group == "weak_before" and case.after.group != "choice_after":
        here = says_where_the_writer_is(case.scene, case.before)
        return stands.OTHER if here else stands.UNSURE, NUMBER_OF_ELSE
    if case.after.group == "reported_after":
        case.mention.reported = True
        return stands.ASKED, SAID_BY
    if case.after.group == "weak_after":
        return stands.OTHER, "the number of something else"
    return stands.CUED, NUMBER_SAID


def _is_a_rank(case: Case) -> bool:
    """As in "number one in four countries": the best of something, where more is said of it."""
    behind = case.scene.begins("weak_before", case.mention.after)
    if case.value == 1 and not case.before.crossed and not case.after.group:
        owner = case.scene.lexicon.group("owning").before(case.scene.tokens, case.mention.first - 2)
        if owner and not case.scene.kinds[case.mention.after :].count(WORD):
            return True  # "you are my number 1"
    return case.value == 1 and behind > 0 and case.after.group != "choice_after"


def _names_something(case: Case) -> bool:
    """As in "Brumelle No. 5", "op. 23 no. 5": a name or a number stands before the number word."""
    scene, at = case.scene, case.before.at
    if case.before.group or case.before.crossed or at < 0:
        return False
    token = scene.tokens[at]
    if token.kind != WORD:
        return token.kind == DIGITS
    known = scene.lexicon.before(scene.tokens, at)[0] or token.text in scene.lexicon.plain_words
    return not known and not token.text.endswith("ing")


def chosen_after(case: Case) -> Verdict:
    """As in "42 please", "42 gets my vote"; a forecast ("42 will win") is none."""
    if case.after.group == "reported_after":
        if case.value == 1 and case.mention.spelled and not case.cued and case.mention.first:
            return stands.OTHER, THE_WORD  # "my last one took a year"
        case.mention.reported = True
        case.mention.family = case.scene.begins("family_before", case.after.at) > 0
        too = case.scene.tokens[case.after.at - 1].text in _AS_WELL
        return stands.ASKED, PRAISED if too else SAID_BY
    if case.after.group != "choice_after":
        return None
    if case.mention.spelled and case.value == 1 and not _is_a_number(case):
        return stands.OTHER, THE_WORD
    if case.value > case.scene.last_page and case.scene.begins("goes_on", case.mention.after):
        return stands.BARE, IN_THE_OPEN  # "310 looks the most used"
    # A small number word in the middle of talk is no number even before "please".
    if case.before.clear or not case.is_small_word:
        return stands.CUED, CHOSEN_AFTER
    return None


def in_the_open(case: Case) -> Verdict:
    """Nothing beside it decides: alone in its clause, or the only thing said."""
    if not (case.before.clear and case.after.clear):
        return None
    counted = case.mention.first > 0 and case.scene.kinds[case.mention.first - 1] == "ordinal"
    word = counted or not _is_a_number(case)  # "the 33rd one"
    if case.mention.spelled and case.value == 1 and word:
        return stands.OTHER, THE_WORD
    if is_alone(case.scene, case.mention) or _gives_a_reason(case):
        return stands.ALONE, "stands by itself"
    if not case.is_small_word:
        return stands.BARE, IN_THE_OPEN
    if case.before.at < 0 or case.scene.tokens[case.before.at].kind != WORD:
        return stands.BARE, BEGINS
    return stands.UNSURE, SMALL_TALK


def _gives_a_reason(case: Case) -> bool:
    """As in "8 because there's 8 of us": it begins the comment, and why follows."""
    behind = case.scene.begins("because", case.mention.after) > 0
    return behind and case.mention.first == 0 and not case.mention.spelled


def ordinal_owned(case: Case) -> Verdict:
    """As in "It's my 40th on Saturday": a birthday, unless a page word or a wish follows."""
    scene, mention = case.scene, case.mention
    owned = scene.lexicon.group("owning").before(scene.tokens, mention.first - 1)
    page = case.cued or case.after.page or case.after.group == "choice_after"
    if owned and not page and case.value > _RANKS and mention.shape == "ordinal":
        return stands.OTHER, "a birthday or an anniversary"
    return None


def ordinal_page(case: Case) -> Verdict:
    """As in "42nd page", "the twelfth page"."""
    if not (case.after.page or case.before.page):
        return None
    if case.after.page:
        case.mention.after = max(case.mention.after, case.after.at + 1)
        case.mention.cued_by_page = True
    own = case.before.group in {"weak_before", "other_before"}
    if own or is_of_own_piece(case.scene, case.mention):
        return stands.OTHER, OWN_PIECE
    return stands.CUED, "an ordinal with a page word"


def ordinal_word(case: Case) -> Verdict:
    """As in "the twelfth": a page only with a page word beside it."""
    if case.mention.shape != "ordinal word":
        return None
    chosen = case.before.group == "choice_before" or case.after.group == "choice_after"
    if case.value > 3 and (chosen or is_alone(case.scene, case.mention)):
        case.mention.maybe = (case.value,)
        return stands.ASKED, "an ordinal without a page word"
    return stands.OTHER, "an ordinal without a page word"


def ordinal_elsewhere(case: Case) -> Verdict:
    """As in "on the 14th", "2nd cup of tea": a date, a rank or a turn."""
    beside = case.before.group in {"weak_before", "other_before", "roughly_before"}
    if beside or not case.after.clear or not case.before.clear:
        return stands.OTHER, "a date, a rank or a turn"
    if 1 < case.value <= _RANKS and case.mention.shape == "ordinal" and not case.scene.word_count():
        return stands.ASKED, "a page, or a boast of being early"
    follows = word_at(case.scene, case.mention.after) and case.after.group != "choice_after"
    if case.value <= _RANKS and (follows or not is_alone(case.scene, case.mention)):
        return stands.OTHER, "a rank or a turn"
    if case.value <= _RANKS and not case.cued and not case.after.group:
        return stands.ASKED, "may boast of being among the first to comment"
    return None
