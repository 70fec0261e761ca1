"""Which names a comment offers besides the sealed one, clause by clause."""

from __future__ import annotations

from dataclasses import dataclass

from service.mystery import cues, denials, hearsay
from service.mystery.clauses import Clause, Parsed, is_quoted
from service.mystery.compare import Mention
from service.mystery.everyday import stems_of
from service.mystery.names import ARTICLES, Word
from service.mystery.talk import (
    CHAT,
    FIRST_PERSON,
    GUESS_WORDS,
    GUESS_WORDS_ABROAD,
    OPENERS,
    SMALL_WORDS,
)

#: A bare phrase of more words is hardly a name.
MOST_WORDS_OF_A_NAME = 6
#: Before the sealed designer these make what stands before them a name.
_BY = frozenset("by von de par di av af door".split())
#: Capitals of these are those of a sentence.
_OPENS_TALK = frozenset(
    "im ive id were weve wed youve theyve thats its watching loving looking seeing stitching waiting thinking hoping sorry dear thanks thank".split()
)
#: A clause that holds one of these greets or thanks.
GREETS = frozenset(
    "hi hello hey from greetings love happy merry good dear thanks thank hugs cheers guten bonjour hola ciao".split()
)


@dataclass(frozen=True, slots=True)
class Offer:
    """A clause that may offer a name.

    `sure` says that it plainly does, `denied` that it refuses the name, `told` that the name is
    somebody else's or an earlier try, `named` that its capitals show a name. `words` are the
    clause's words as compared; `name` those left when guess words are taken off.
    """

    clause: Clause
    words: tuple[str, ...]
    name: tuple[str, ...]
    sure: bool
    denied: bool
    named: bool
    told: bool


def _core(forms: list[str]) -> tuple[list[str], list[str]]:
    """The guess words a clause opens with, and the rest without a tail."""
    start = 0
    while start < len(forms) and (
        forms[start] in OPENERS or forms[start] in GUESS_WORDS or forms[start] in GUESS_WORDS_ABROAD
    ):
        start += 1
    end = len(forms)
    for at in range(start + 1, len(forms)):
        if forms[at] in ("by", "von", "de", "par"):
            end = at
            break
    for at in range(start, end):
        if cues.TAIL.match(" ".join(forms[at:end])):
            end = at
    return forms[:start], forms[start:end]


def _capitals(parsed: Parsed, words: list[Word]) -> int:
    """How many telling words of these are capitalised, where capitals tell something."""
    if all(w.shout for w in parsed.words if len(w.form) > 1):
        return 0
    return sum(w.capital and w.form not in SMALL_WORDS and w.form not in _OPENS_TALK for w in words)


def _offer_of(parsed: Parsed, clause: Clause, designers: frozenset[int]) -> Offer | None:
    words = [
        w
        for at, w in enumerate(parsed.words[clause.first : clause.last + 1], clause.first)
        if not w.handle and at not in designers
    ]
    forms = [w.form for w in words]
    text = " ".join(forms)
    lead, core = _core(forms)
    staked = "bet" in lead[-2:-1] and lead[-1] in ("the", "my", "a")  # "I'd bet the cat"
    if not words or not core or staked or all(w in ARTICLES or w.isdigit() for w in core):
        return None
    asks = denials.ASKS_IN_THE_NEGATIVE.match(" ".join(lead))
    denied = not asks and denials.denies(text)
    others = hearsay.OTHERS.search(hearsay.OWN_CLAIM.sub("", text))
    told = bool(hearsay.PAST_TRY.search(text) or others)
    opening = " ".join(lead)
    cued = bool(opening) and bool(cues.STRONG_CUE.search(opening) or cues.WEAK_CUE.search(opening))
    chatty = any(not CHAT.isdisjoint(stems_of(w)) for w in core)
    start, end = parsed.span(clause.first, clause.last)
    greets = not GREETS.isdisjoint(forms)
    named = not greets and _capitals(parsed, words) > 1
    sure = named or is_quoted(parsed.text, start, end) or (cued and not chatty)
    of_writer = not cued and not FIRST_PERSON.isdisjoint(lead)
    signed = len(words) < clause.last - clause.first + 1 and _BY.isdisjoint(forms)
    short = not (signed or chatty or greets or of_writer) and len(core) <= MOST_WORDS_OF_A_NAME
    asked = clause.end == "?" and len(forms) <= 4 and forms[0] in {*ARTICLES, "my"}
    if not (sure or short or asked):
        return None
    return Offer(clause, tuple(forms), tuple(core), sure, denied, named, told)


def offers_of(
    parsed: Parsed, titles: tuple[Mention, ...], designers: tuple[Mention, ...]
) -> tuple[Offer, ...]:
    """The clauses without a title's mention that offer, or may offer, a name, in order.

    The words of the sealed designer are no part of what a clause offers.
    """
    taken = {at for m in titles for at in range(m.first, m.last + 1)}
    masked = frozenset(at for m in designers for at in range(m.first, m.last + 1))
    offers = []
    for clause in parsed.clauses:
        leads = clause.end == ":" and clause.last + 1 in taken | masked
        if not leads and taken.isdisjoint(range(clause.first, clause.last + 1)):
            offer = _offer_of(parsed, clause, masked)
            if offer:
                offers.append(offer)
    return tuple(offers)


def asked_or_guessed(parsed: Parsed, clause: Clause) -> tuple[str, ...]:
    """The words of a clause that is put as a question or opens with guess words, else none."""
    forms = tuple(w.form for w in parsed.words[clause.first : clause.last + 1] if not w.handle)
    opening = " ".join(_core(list(forms))[0])
    guessed = clause.end == "?" or (opening and cues.STRONG_CUE.search(opening))
    return forms if guessed and not denials.denies(" ".join(forms)) else ()
