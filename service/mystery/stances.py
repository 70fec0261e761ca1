"""How a comment speaks of a name it holds: offers it, denies it, tells it of somebody else.

Rules 5, 6, 8 and 9 of the policy (reading-guesses.md beside this file).
"""

from __future__ import annotations

import re
from typing import Literal

from service.mystery import cues, denials, hearsay, unspaced
from service.mystery.clauses import Parsed
from service.mystery.remarks import is_everyday, may_be_remark
from service.mystery.setting import Setting
from service.mystery.talk import (
    FIRST_PERSON,
    FRESH_START,
    GUESS_WORDS,
    GUESS_WORDS_ABROAD,
    OPENERS,
    PIECE_TALK,
    RUN_ON,
)

Stance = Literal["offered", "denied", "taken back", "others", "longer", "everyday", "unsure"]

#: More words behind a name than this are no mere tail (and patterns stay quick).
MOST_WORDS_OF_A_TAIL = 14
#: A denial reaches over no more guess words than this.
MOST_WORDS_DENIED_OVER = 5

_TURNS = frozenset(("but", "however", "though", "although"))
_BUT_NAMES = frozenset(
    "anything anyone anybody nothing nobody none all everything everyone".split()
)
_JOINS = frozenset(("and", "so", "then", "because", "cos"))
_OWN_STATEMENT = frozenset("i im id ill my its it maybe could is this".split())
_PLAIN_TAGS = frozenset(
    ("right", "yes", "eh", "huh", "innit", "surely", "am i right", "oder", "verdad", "vero")
)
_WORKS = frozenset("work design designs piece pattern chart one kit style".split())
_KINDS = frozenset("chart kit pattern design piece one picture".split())
_NEGATIVE_QUESTIONS = frozenset("isnt wasnt arent doesnt didnt".split())
_SUBORDINATE = re.compile(r"^(?:dass|das|que|ze|che|that|att|at|dat|zeby|hogy|ca)\b")
_AFTER_AND = frozenset(
    """
    i im ill id ive its my page pages pg thanks thank love please hello if can will then now so thats nobody noone no wont cant dont you
    """.split()
)


def stance_of(parsed: Parsed, setting: Setting) -> Stance:
    """How the comment speaks of the name in this setting."""
    before = _last_statement(setting.before)
    denial = _denial(setting, before)
    if denial:
        return denial
    after_allows = _after_allows(setting, before)
    everyday = is_everyday(parsed, setting, before, after_allows=after_allows)
    if _of_others(setting, before):
        return "others"
    if _perhaps_of_others(setting, before):
        return "everyday" if everyday else "others"
    if _taken_back(setting, before):
        return "everyday" if everyday else "taken back"
    allowed = after_allows and _before_allows(setting, before) and not _is_indefinite(setting)
    if allowed and not may_be_remark(parsed, setting, before):
        return "offered"
    if everyday:
        return "everyday"
    return "longer" if setting.named and (setting.after or setting.continued) else "unsure"


def _last_statement(before: str) -> str:
    """What stands after the last "but", or "and" that begins a statement of the writer's own."""
    words = before.replace("failing that", "otherwise").split()
    for at in range(len(words) - 1, -1, -1):
        previous = words[at - 1] if at else ""
        turned = words[at] in _TURNS and previous not in _BUT_NAMES
        own = words[at] in _JOINS and not _OWN_STATEMENT.isdisjoint(words[at + 1 : at + 2])
        if turned or own:
            return " ".join(words[at + 1 :])
    return " ".join(words)


def _denial(setting: Setting, before: str) -> Stance | None:
    """Denied, or taken back where a denial is asked, wished or may not reach the name."""
    asked = setting.end == "?"
    if unspaced.denies(before, setting.after):
        return "taken back" if asked else "denied"
    stance = None if denials.ASKS_IN_THE_NEGATIVE.match(before) else _denial_before(setting, before)
    if stance:
        return stance
    if _SUBORDINATE.match(before) and setting.earlier and denials.denies(setting.earlier[-1]):
        return "denied"
    if setting.after and denials.TAG.match(setting.after):
        # "isn't it" asks back behind a guess; behind a bare name it may deny as well.
        plain = setting.after in _PLAIN_TAGS
        return None if plain or asked or _has_cue(before) else "taken back"
    if denials.DENIED_AFTER.search(setting.after):
        return "taken back" if asked else "denied"
    return "taken back" if _doubted_behind(setting) else None


def _denial_before(setting: Setting, before: str) -> Stance | None:
    left = denials.DENIES_NOTHING.sub("", before).strip()
    found = list(denials.DENIED_BEFORE.finditer(left))
    if not found:
        return None
    if left in _NEGATIVE_QUESTIONS and setting.after:
        return "taken back"  # "isn't The Night Ferry that pink one"
    between = left[found[-1].end() :].split()
    near = len(between) <= MOST_WORDS_DENIED_OVER and all(
        w in GUESS_WORDS or w in GUESS_WORDS_ABROAD for w in between
    )
    tagged = setting.end == "?" or any(
        denials.TAG.match(words.removeprefix("or "))
        for words in (setting.after, setting.following)
        if words
    )
    # Two negatives close together may undo each other ("can't not be").
    twice = len(found) > 1 and left[found[-2].end() : found[-1].start()].count(" ") <= 2
    wished = denials.WISHES.search(before) or denials.DOUBTS.search(before)
    return "denied" if near and not (tagged or twice or wished) else "taken back"


def _has_cue(before: str) -> bool:
    return bool(cues.STRONG_CUE.search(before) or cues.DEFINITE_CUE.search(before))


def _doubted_behind(setting: Setting) -> bool:
    """Whether the clause behind a name doubts it or takes it back."""
    following = denials.DENIES_NOTHING.sub("", setting.following).strip()
    if following.startswith("not ") and setting.following_named:
        return False  # "..., not Grey Gulls"
    if setting.following_end == "?" and denials.TAG.match(setting.following):
        return False
    short = len(following.split()) <= MOST_WORDS_DENIED_OVER
    hedged = following.startswith("but") and denials.HEDGED_AFTER.match(following)
    refused = short and denials.REFUSES.search(following)
    return bool(denials.DENIED_NEXT.match(following) or refused or hedged)


def _of_others(setting: Setting, before: str) -> bool:
    """Whether the name is told of somebody else, or taken over from somebody."""
    if hearsay.OTHERS.search(hearsay.OWN_CLAIM.sub("", before)):
        return True
    if setting.said_by:
        return True
    if setting.addressed and hearsay.SAYS_YES.match(before or " ".join(setting.earlier[-1:])):
        return True
    earlier = [hearsay.OWN_CLAIM.sub("", clause) for clause in setting.earlier[-2:]]
    return (
        any(hearsay.OTHERS_BEFORE_STOP.search(clause) for clause in earlier)
        or any(hearsay.HANDED_ON.search(clause) for clause in setting.just_before)
        or any(hearsay.OTHERS_AFTER.match(words) for words in (setting.after, setting.following))
    )


def _perhaps_of_others(setting: Setting, before: str) -> bool:
    also = hearsay.ALSO_AFTER.match(setting.after)
    return bool(also or hearsay.OTHERS_PERHAPS.search(hearsay.OWN_CLAIM.sub("", before)))


def _taken_back(setting: Setting, before: str) -> bool:
    """Whether the name is told as past, wished, compared or put under a condition."""
    left = denials.CONDITION_THAT_IS_NONE.sub("", before)
    return bool(
        setting.struck
        or denials.TAKEN_BACK_BEFORE.search(denials.DENIES_NOTHING.sub("", left))
        or denials.HEDGED_AFTER.match(setting.after)
        or denials.UNSURE_NAME_NEXT.match(setting.following)
    )


def _is_indefinite(setting: Setting) -> bool:
    """Whether "a night ferry" in lower case tells of a thing, not of a name."""
    titled_so = setting.mention.name.text.casefold().startswith(("a ", "an "))
    return setting.article in ("a", "an") and not setting.named and not titled_so


def _before_allows(setting: Setting, before: str) -> bool:
    """Whether the words before a name only offer it."""
    words = before.split()
    if all(w in OPENERS or w in GUESS_WORDS_ABROAD for w in words):
        return True
    if cues.STRONG_CUE.search(before) or unspaced.leads_to_a_name(before):
        return True
    if setting.named and cues.DEFINITE_CUE.search(before):
        return True
    if setting.mention.name.of == "designer" and FIRST_PERSON.isdisjoint(words):
        return bool(cues.WEAK_CUE.search(before) or cues.DESIGNER_CUE.search(before))
    return bool(cues.WEAK_CUE.search(before)) and all(w in GUESS_WORDS for w in words)


def _after_allows(setting: Setting, before: str) -> bool:
    """Whether the words behind a name, in its clause, leave it an offered name."""
    after, words = setting.after, setting.after.split()
    if setting.continued and (setting.named or not words):
        return False
    if not words or words[0] in FRESH_START or unspaced.follows_a_name(after):
        return True
    if denials.TAG.match(after) or (len(words) <= MOST_WORDS_OF_A_TAIL and cues.is_tail(after)):
        return True
    if words[0] == "and":
        return bool(cues.TAIL.match(" ".join(words[1:]))) or words[1] in _AFTER_AND
    designer = setting.mention.name.of == "designer"
    if designer and (after in _WORKS or cues.DESIGNED_IT.match(after)):
        return True
    if after in _KINDS and cues.STRONG_CUE.search(before) and setting.article != "a":
        return True
    if setting.named and cues.KNOWN_FROM.match(after):
        return True
    if words[0] == "but":
        return True  # what takes the name back was looked for before
    told = words[1:] if words[0] in ("i", "my") else words
    return words[0] in RUN_ON and not PIECE_TALK.isdisjoint(told)
