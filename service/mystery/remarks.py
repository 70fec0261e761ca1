"""Whether a title's words are everyday talk and no name (rule 8)."""

from __future__ import annotations

import re

from service.mystery import cues
from service.mystery.clauses import Parsed
from service.mystery.concepts import is_common
from service.mystery.setting import Setting
from service.mystery.talk import (
    EXCLAMATIONS,
    FIRST_PERSON,
    GUESS_WORDS,
    MOANS,
    NAMING_TALK,
    OPENERS,
    PIECE_TALK,
    REMARK_WORDS,
    RUN_ON,
    SAYINGS,
    SMALL_WORDS,
)

#: A comment of more words is no mere shout.
MOST_WORDS_OF_A_SHOUT = 6

_POSSESSIVES = frozenset("my our your his her their".split())
#: Of the words that speak of naming, those that behind a name mostly speak of other things.
_ALSO_OTHERWISE = frozenset(
    "close right next do being back arm stick stand sign see read hear heart want wish love".split()
)
_SEEN = re.compile(r"\bcan (?:see|spot|count)$")
#: What is ordered with these may be a name, or tea.
_ORDERS = frozenset(("please", "pls", "plz"))
#: "I have to be home by six to ...", "need warm socks and ...".
_NEEDS = re.compile(
    r"\b(?:i|we|ive|weve|im|were) (?:\w+ )?(?:have|need|want|got|had|ought|going|promised|trying) to (?:be|get)$"
    r"|(?:^|\bi |\bwe )(?:really |just |so |desperately )?(?:need|needed|fancy|fancied|bring|buy|bought|wore|wearing)$"
)
#: "supper's on and the potatoes are ...".
_AND_TELLS = re.compile(
    r"^and (?:the|my|our|his|her|their) \w+ (?:is|are|was|were|has|have|needs?)\b"
)
_POINTS = re.compile(r"\b(?:is|was|are) (?:that|this|those|these)$")
#: What a stitcher asks about with the name of a colour.
_THREADS = frozenset(
    "thread threads floss silk skein skeins colour colours color colors shade".split()
)
_CONNECTS = frozenset(
    "and but or with without from as for if unless until till rather at in by though because so than".split()
)
NOW = frozenset("now here today again tonight already tomorrow yesterday".split())


def is_remark(title: tuple[str, ...]) -> bool:
    """Whether a title is also what people say of their day ("washing day again")."""
    return not REMARK_WORDS.isdisjoint(title) and all(map(is_common, title))


def _others(parsed: Parsed, setting: Setting) -> list[str]:
    return [word.form for word in parsed.others(setting.mention)]


def may_be_remark(parsed: Parsed, setting: Setting, before: str) -> bool:
    """Whether what looks like an offer may be a remark or an exclamation: the host looks."""
    title = setting.title
    if len(title) == 1 and title[0] in EXCLAMATIONS and not before:
        return setting.mention.first == 0 and (setting.end == "!" or len(parsed.clauses) > 1)
    if not setting.in_lower_case or setting.signed:
        return False
    if _may_be_thing(parsed, setting, before):
        return True
    if not is_remark(title):
        return False
    if before:
        return bool(cues.REMARK_CUE.search(before)) or all(w in OPENERS for w in before.split())
    if all(w in SAYINGS for w in title) or any(w.form in MOANS for w in parsed.words):
        return True
    rest = _others(parsed, setting)
    return not FIRST_PERSON.isdisjoint(rest) and PIECE_TALK.isdisjoint(rest)


def _may_be_thing(parsed: Parsed, setting: Setting, before: str) -> bool:
    """Whether a title in lower case may be a thing that is pointed at, ordered or told of."""
    single = len(setting.title) == 1
    if single and _POINTS.search(before):
        return True  # "is that the lantern"
    if before:
        return False
    several = len(parsed.clauses) > 1
    if several and setting.after in _ORDERS:
        return True  # "second helpings please, ..."
    listed = single and setting.end == "," and len(parsed.clauses) > 2
    if listed and not any(clause.end == "?" for clause in parsed.clauses):
        return True  # "lantern, cottage, snow": what the picture shows
    return setting.end == "," and _tells_of_days(parsed, setting)


def _tells_of_days(parsed: Parsed, setting: Setting) -> bool:
    """Whether what follows in the sentence tells of days and weeks, not of the piece."""
    rest = [word.form for word in parsed.words[setting.mention.last + 1 :]]
    piece = not (NAMING_TALK | PIECE_TALK).isdisjoint(rest)
    return not piece and bool(cues.DAYS.search(setting.following))


def is_everyday(parsed: Parsed, setting: Setting, before: str, *, after_allows: bool) -> bool:
    """Whether the words plainly stand in talk about something else.

    `after_allows` says that what follows would also follow an offered name.
    """
    if not setting.in_lower_case:
        return False
    if _is_plain_remark(parsed, setting, before):
        return True
    if setting.article in ("a", "an") and setting.after and not after_allows:
        return True
    if _POINTS.search(before) and not _THREADS.isdisjoint(_others(parsed, setting)):
        return True  # "is that the saffron or the mustard floss"
    cued = cues.STRONG_CUE.search(before) or cues.DEFINITE_CUE.search(before)
    return not (cued and setting.before) and _is_talk(setting, before, after_allows=after_allows)


def _is_talk(setting: Setting, before: str, *, after_allows: bool) -> bool:
    """Whether the words around a title in lower case speak of the writer's or another's life."""
    left = before.split()
    goes_on = bool(setting.after) and not after_allows
    if goes_on and _tells_of_a_need(setting, before):
        return True
    told = _before_tells(setting, before)
    if told is not None:
        return told
    if len(setting.mention.name.words) == 1:
        pointed = setting.article or (left and left[-1] in SMALL_WORDS)
        return bool(_chatty(left) and pointed) or goes_on
    if _speaks_of_names(setting, left) or not RUN_ON.isdisjoint(setting.after.split()[:1]):
        return False
    return _after_tells(setting, left, goes_on=goes_on)


def _tells_of_a_need(setting: Setting, before: str) -> bool:
    """Whether somebody must be somewhere or wants some things, and what follows goes on with it."""
    right = frozenset(setting.after.split()) - _ALSO_OTHERWISE
    if not PIECE_TALK.isdisjoint(right) or not NAMING_TALK.isdisjoint(right):
        return False
    needed = bool(before) and not setting.article and bool(_NEEDS.search(before))
    return needed or (not before and bool(_AND_TELLS.match(setting.after)))


def _chatty(left: list[str]) -> list[str]:
    """The words before a title that are no guess words."""
    return [word for word in left if word not in GUESS_WORDS]


def _speaks_of_names(setting: Setting, left: list[str]) -> bool:
    """Whether the clause speaks of naming or owning pieces, so that the title may be the name."""
    if all(word in SAYINGS for word in setting.title):
        return False
    right = (word for word in setting.after.split() if word not in _ALSO_OTHERWISE)
    return not NAMING_TALK.isdisjoint((*left, *right))


def _before_tells(setting: Setting, before: str) -> bool | None:
    """Whether what stands before a title makes it talk, or plainly not; None where it does not say."""
    left = before.split()
    chatty = _chatty(left)
    if (chatty and setting.article in ("a", "an")) or (setting.after and _SEEN.search(before)):
        return True
    if left[-1:] in (["is"], ["be"]):
        return False
    if left == ["no"] and not setting.article:
        return True  # "no second helpings for me"
    persons = not FIRST_PERSON.isdisjoint(left)
    placed = cues.EVERYDAY_BEFORE.search(f"{before} {setting.article}".strip())
    if chatty and (persons or placed) and not _speaks_of_names(setting, left):
        return True
    return True if left and left[-1] in _POSSESSIVES else None


def _after_tells(setting: Setting, left: list[str], *, goes_on: bool) -> bool:
    """Whether what stands behind a title makes it talk."""
    right = setting.after.split()
    if right and not FIRST_PERSON.isdisjoint(left):
        return goes_on
    told_of = right[:1] in (["is"], ["are"]) and len(right) > 2
    long_enough = told_of or (len(right) > 3 and right[0] not in _CONNECTS)
    if goes_on and ((not left and long_enough) or len(_chatty(left)) > 1):
        return True
    return len(right) > 1 and bool(cues.EVERYDAY_AFTER.search(setting.after))


def _is_plain_remark(parsed: Parsed, setting: Setting, before: str) -> bool:
    """Whether a remark about the day is plainly one: "... now", or a saying amid talk of people."""
    if setting.mention.name.joined in EXCLAMATIONS:
        return not before and setting.end == "," and len(parsed.words) > 2
    if not is_remark(setting.title):
        return False
    if before:
        return (
            bool(cues.REMARK_CUE.search(before))
            and setting.after.split()[:1] != []
            and setting.after.split()[0] in NOW
        )
    if setting.after:
        now = setting.after.split()[0] in NOW
        return now and len(parsed.words) > MOST_WORDS_OF_A_SHOUT
    saying = all(w in SAYINGS for w in setting.title)
    return saying and not FIRST_PERSON.isdisjoint(_others(parsed, setting))
