"""Everything seen in one comment before it is judged: names, stances, other offers."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from service.mystery.answer import GuessRules
from service.mystery.clauses import Clause, Parsed, clauses_of
from service.mystery.compare import Mention, find_mentions
from service.mystery.concepts import is_common
from service.mystery.names import words_of
from service.mystery.offers import GREETS, Offer, offers_of
from service.mystery.setting import MOST_WORDS_OF_A_PERSON, Setting, setting_of
from service.mystery.spellings import designers_of, titles_of
from service.mystery.stances import Stance, stance_of
from service.mystery.talk import OPENERS

#: A comment that repeats a name more often says nothing new.
MOST_JUDGED = 40

#: What a comment says of the title or the designer, before both are weighed together.
State = Literal["right", "look", "denied", "other", "none"]


@dataclass(frozen=True, slots=True)
class GuessEvidence:
    """The words something was read from: `text` is the comment's own [start:end].

    `rule` says in a few words which rule decided, for the host to read.
    """

    start: int
    end: int
    text: str
    rule: str


@dataclass(frozen=True, slots=True)
class Finding:
    """What is found of the title or the designer, why, and where.

    `adopted` says that another viewer's whole guess may be meant, title and designer.
    """

    state: State
    why: str
    evidence: tuple[GuessEvidence, ...] = ()
    adopted: bool = False


@dataclass(frozen=True, slots=True)
class Seen:
    """A mention of the sealed answer with its setting and how the comment speaks of it."""

    mention: Mention
    setting: Setting
    stance: Stance


@dataclass(frozen=True, slots=True)
class Sighting:
    """One comment against one answer: the writer's own words, and what is seen in them."""

    parsed: Parsed
    rules: GuessRules
    titles: tuple[Seen, ...]
    designers: tuple[Seen, ...]
    offers: tuple[Offer, ...]

    def evidence(self, first: int, last: int, rule: str) -> GuessEvidence:
        """The words first to last (both included) as evidence for a rule."""
        start, end = self.parsed.span(first, last)
        return GuessEvidence(start, end, self.parsed.text[start:end], rule)

    def offers_before(self, word: int) -> tuple[Offer, ...]:
        """Names offered, and not denied, before this word.

        A bare phrase in a sentence of talk ("still in plaster, still watching") offers nothing.
        """
        offered = {offer.clause for offer in self.offers}
        here = self.parsed.clause_at(word).sentence
        talk = {
            clause.sentence
            for clause in self.parsed.clauses
            if clause not in offered and clause.sentence < here and not self._greets(clause)
        }
        return tuple(
            offer
            for offer in self.offers
            if offer.clause.last < word
            and not offer.denied
            and not offer.told
            and not self._is_designer(offer)
            and (offer.sure or offer.clause.end in ("?", "or") or offer.clause.sentence not in talk)
        )

    def _is_designer(self, offer: Offer) -> bool:
        """Whether it is a person behind another name, where title and designer are asked for."""
        if self.rules.wants != "title and designer" or not offer.named:
            return False
        before = (o for o in self.offers if o.clause.last + 1 == offer.clause.first)
        titled = any(o.clause.end == "," for o in before)
        return (
            titled
            and len(offer.words) <= MOST_WORDS_OF_A_PERSON
            and not all(map(is_common, offer.words))
        )

    def _greets(self, clause: Clause) -> bool:
        words = self.parsed.forms(clause).split()
        return not GREETS.isdisjoint(words) or all(word in OPENERS for word in words)


def sighting_of(own: str, rules: GuessRules) -> Sighting:
    """What is seen of the answer in the writer's own words."""
    words = words_of(own)
    titles = find_mentions(words, titles_of(rules.answer))
    of_titles = {at for m in titles for at in range(m.first, m.last + 1)}
    designers = tuple(
        d
        for d in find_mentions(words, designers_of(rules.answer))
        if of_titles.isdisjoint(range(d.first, d.last + 1))
    )
    parsed = Parsed(own, words, clauses_of(own, words, (*titles, *designers)))

    def seen(mention: Mention, beside: tuple[Mention, ...]) -> Seen:
        setting = setting_of(parsed, mention, beside)
        return Seen(mention, setting, stance_of(parsed, setting))

    return Sighting(
        parsed,
        rules,
        tuple(seen(mention, designers) for mention in titles[:MOST_JUDGED]),
        tuple(seen(mention, titles) for mention in designers[:MOST_JUDGED]),
        offers_of(parsed, titles, designers),
    )
