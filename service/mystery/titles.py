"""What a comment says of the sealed title (rules 1 to 8 of reading-guesses.md)."""

from __future__ import annotations

import re

from service.mystery import cues, denials, hearsay
from service.mystery.clauses import Clause
from service.mystery.offers import MOST_WORDS_OF_A_NAME, asked_or_guessed
from service.mystery.parts import is_in_another_tongue, part_of_title, rare_words, telling_titles
from service.mystery.remarks import NOW
from service.mystery.sighting import Finding, GuessEvidence, Seen, Sighting
from service.mystery.stances import Stance
from service.mystery.talk import CHAT, FIRST_PERSON, OPENERS

#: A comment of more words is chat, if it holds no plain offer.
MOST_WORDS_OF_A_BARE_OFFER = 8

_WHY: dict[Stance, str] = {
    "offered": "It nearly names the piece: the spelling is not quite the sealed one.",
    "taken back": "It names the piece, but with a doubt, a condition or as a thing of the past.",
    "others": "It names the piece as somebody else's guess, or agrees with somebody.",
    "longer": "The title stands in it inside a longer name or sentence.",
    "unsure": "It holds the title, and whether it is offered as a name is not plain.",
}
_NAMED_SO = re.compile(r"\b(?:my|our|her|his) \w+s? (?:name is|is called|called|is named|named)$")
_AGREES = "It agrees with somebody else's guess."


def judge_title(sighting: Sighting) -> Finding:
    """What the writer's own words say of the title."""
    offered = [s for s in sighting.titles if s.stance == "offered" and s.mention.spelling != "near"]
    if offered:
        return _offered(sighting, offered[0])
    for seen in sighting.titles:
        if seen.stance not in ("denied", "everyday"):
            adopted = seen.stance == "others"
            return Finding("look", _WHY[seen.stance], (_at(sighting, seen),), adopted)
    return _part(sighting) or _rare(sighting) or _initials(sighting) or _without_title(sighting)


def _at(sighting: Sighting, seen: Seen) -> GuessEvidence:
    return sighting.evidence(seen.mention.first, seen.mention.last, f"title, {seen.stance}")


def _speaks_against(seen: Seen) -> bool:
    """Whether a mention elsewhere in the comment makes an offer doubtful."""
    anothers = _NAMED_SO.search(seen.setting.before)  # "my daughter's name is ..."
    return seen.stance in ("denied", "taken back", "others") or bool(anothers)


def _offered(sighting: Sighting, first: Seen) -> Finding:
    """An offered title is right unless it comes too late, or something beside it speaks against it."""
    evidence = (_at(sighting, first),)
    if any(map(_speaks_against, sighting.titles)):
        return Finding(
            "look", "It names the piece, and elsewhere speaks of it otherwise.", evidence
        )
    earlier = sighting.offers_before(first.mention.first)
    if cues.STRONG_CUE.search(first.setting.before):
        # Who writes "I think it's ..." has hardly offered a name in passing before.
        earlier = tuple(o for o in earlier if o.sure or o.clause.end in ("?", "or"))
    if len(earlier) >= sighting.rules.names_per_comment:
        more = tuple(
            sighting.evidence(o.clause.first, o.clause.last, "an earlier name") for o in earlier
        )
        why = "It names the piece, but only after as many other names as a comment may offer."
        return Finding("look", why, (*more, *evidence))
    for clause in sighting.parsed.clauses:
        if clause.last < first.mention.first and hearsay.agrees(sighting.parsed.forms(clause)):
            return Finding("look", _AGREES, evidence, adopted=True)
    return Finding("right", "It names the piece.", evidence)


def _short(sighting: Sighting, clause: Clause) -> tuple[str, ...]:
    """The words of a short clause that says nothing of persons, else none."""
    text = sighting.parsed.forms(clause)
    words = tuple(text.split())
    titles = telling_titles(sighting.rules.answer)
    now = any(word in NOW and all(word not in t.words for t in titles) for word in words)
    short = len(words) <= MOST_WORDS_OF_A_NAME and FIRST_PERSON.isdisjoint(words) and not now
    return words if short and not denials.denies(text) else ()


def _whole_comment(sighting: Sighting) -> list[tuple[Clause, tuple[str, ...]]]:
    """A short comment's words as one phrase ("ferry, at night, something like that")."""
    texts = [sighting.parsed.forms(clause) for clause in sighting.parsed.clauses]
    words = tuple(" ".join(texts).split())
    personal = not FIRST_PERSON.isdisjoint(words) or any(map(denials.denies, texts))
    if sighting.titles or personal or not 0 < len(words) <= MOST_WORDS_OF_A_BARE_OFFER:
        return []
    first, last = sighting.parsed.clauses[0], sighting.parsed.clauses[-1]
    return [(Clause(first.first, last.last, 0, ""), words)]


def _initials(sighting: Sighting) -> Finding | None:
    """The title's first letters in capitals ("TNF")."""
    for at, word in enumerate(sighting.parsed.words):
        alone = word.shout or len(sighting.parsed.words) == 1
        letters = alone and word.form not in CHAT and word.form not in OPENERS
        if letters and any(word.form in t.initials for t in telling_titles(sighting.rules.answer)):
            evidence = sighting.evidence(at, at, "the title's first letters")
            return Finding("look", "It gives the title's first letters.", (evidence,))
    return None


def _part(sighting: Sighting) -> Finding | None:
    """A phrase offered as a name that holds part of the title or renders it otherwise."""
    answer = sighting.rules.answer
    taken = {at for s in sighting.titles for at in range(s.mention.first, s.mention.last + 1)}
    phrases = [(o.clause, o.words) for o in sighting.offers if not o.denied]
    for clause in sighting.parsed.clauses:
        if taken.isdisjoint(range(clause.first, clause.last + 1)):
            phrases.append((clause, asked_or_guessed(sighting.parsed, clause)))
            phrases.append((clause, _short(sighting, clause)))
    phrases += _whole_comment(sighting)
    bare = sighting.offers[0] if len(sighting.parsed.clauses) == 1 and sighting.offers else None
    if bare and not bare.denied and is_in_another_tongue(answer, bare.name):
        evidence = sighting.evidence(bare.clause.first, bare.clause.last, "in another language")
        return Finding("look", "It may name the piece in another language.", (evidence,))
    for clause, words in phrases:
        why = part_of_title(answer, words)
        if why:
            evidence = sighting.evidence(clause.first, clause.last, why)
            return Finding("look", f"It offers {why}.", (evidence,))
    return None


def _rare(sighting: Sighting) -> Finding | None:
    """A rare word of the title, anywhere but in everyday talk or inside another long name."""
    rare = rare_words(sighting.rules.answer)
    taken = {at for s in sighting.titles for at in range(s.mention.first, s.mention.last + 1)}
    for clause in sighting.parsed.clauses:
        text = sighting.parsed.forms(clause)
        talk = not FIRST_PERSON.isdisjoint(text.split()) and not asked_or_guessed(
            sighting.parsed, clause
        )
        if denials.denies(text):
            continue
        if rare.all_in(text.split()) and taken.isdisjoint(range(clause.first, clause.last + 1)):
            evidence = sighting.evidence(
                clause.first, clause.last, "all telling words of the title"
            )
            return Finding("look", "It holds all telling words of the title.", (evidence,))
        for at in range(clause.first, clause.last + 1):
            word = sighting.parsed.words[at]
            if at not in taken and rare.has(word.form) and (word.capital or not talk):
                evidence = sighting.evidence(at, at, "an uncommon word of the title")
                return Finding("look", "It holds an uncommon word of the title.", (evidence,))
    return None


def _without_title(sighting: Sighting) -> Finding:
    """A comment that holds nothing of the title, or denies it."""
    denied = tuple(_at(sighting, s) for s in sighting.titles if s.stance == "denied")
    if denied:
        return Finding("denied", "It says that the piece is not this one.", denied)
    agreeing = [c for c in sighting.parsed.clauses if hearsay.agrees(sighting.parsed.forms(c))]
    others = [
        o for o in sighting.offers if not o.denied and not o.told and o.clause not in agreeing
    ]
    plain = [o for o in others if o.sure]
    if agreeing and not any(o.named for o in plain):
        evidence = tuple(
            sighting.evidence(c.first, c.last, "agrees with another") for c in agreeing
        )
        return Finding("look", _AGREES, evidence, adopted=True)
    if not plain and len(sighting.parsed.words) <= MOST_WORDS_OF_A_BARE_OFFER:
        plain = others
    if plain:
        evidence = tuple(
            sighting.evidence(o.clause.first, o.clause.last, "another name") for o in plain
        )
        return Finding("other", "It offers another name.", evidence)
    return Finding("none", "It offers no name.")
