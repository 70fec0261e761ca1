"""What a comment says of the sealed designer, where the designer counts (rule 3)."""

from __future__ import annotations

from service.mystery import denials, hearsay
from service.mystery.concepts import is_common
from service.mystery.everyday import FIRST_NAMES
from service.mystery.likeness import spelt_alike
from service.mystery.names import forms_of
from service.mystery.setting import MOST_WORDS_OF_A_PERSON
from service.mystery.sighting import Finding, GuessEvidence, Seen, Sighting, State


def judge_designer(sighting: Sighting) -> Finding:
    """What the writer's own words say of the designer.

    State "other" is another designer, or one hinted at; "look" the designer misspelt, in part,
    or named without being offered.
    """
    states = [_state(sighting, seen) for seen in sighting.designers]
    evidence = tuple(
        sighting.evidence(s.mention.first, s.mention.last, f"designer, {s.stance}")
        for s in sighting.designers
    )
    for state, why in (
        ("denied", "The designer is denied."),
        ("look", "The designer is named, but not plainly offered or not spelt as sealed."),
        ("right", "The designer is right."),
    ):
        if state in states:
            return Finding(state, why, evidence)
    return _in_part(sighting) or _another(sighting) or Finding("none", "No designer is named.")


def _state(sighting: Sighting, seen: Seen) -> State:
    if seen.stance == "denied":
        return "denied"
    if seen.mention.spelling != "same":
        return "look"
    beside_title = any(title.stance != "everyday" for title in sighting.titles)
    if beside_title or sighting.rules.wants == "title and designer":
        return "right"
    too_late = len(sighting.offers_before(seen.mention.first)) >= sighting.rules.names_per_comment
    return "right" if seen.stance == "offered" and not too_late else "look"


def _in_part(sighting: Sighting) -> Finding | None:
    """A surname or a first name alone, or misspelt."""
    parts = [part for part in forms_of(sighting.rules.answer.designer) if len(part) > 2]
    for at, word in enumerate(sighting.parsed.words):
        for part in parts:
            alike = part in (word.form, word.bare) or spelt_alike(part, word.form)
            if alike and (word.capital or not is_common(word.form)):
                evidence = sighting.evidence(at, at, "part of the designer's name")
                if denials.denies(sighting.parsed.forms(sighting.parsed.clause_at(at))):
                    return Finding("denied", "The designer is denied.", (evidence,))
                return Finding("look", "Part of the designer's name.", (evidence,))
    return None


def _another(sighting: Sighting) -> Finding | None:
    """Another designer beside the title, by name or by a hint."""
    evidence: tuple[GuessEvidence, ...] = ()
    if any(seen.setting.other_designer for seen in sighting.titles):
        return Finding("other", "Another designer is named.", evidence)
    if any(seen.setting.after.startswith("by ") for seen in sighting.titles):
        return Finding("other", "Another designer may be named.", evidence)
    if not sighting.titles:
        return None
    for offer in sighting.offers:
        short = 1 <= len(offer.name) <= MOST_WORDS_OF_A_PERSON
        first_name = offer.named and offer.name[0] in FIRST_NAMES
        person = short and (first_name or not all(map(is_common, offer.name)))
        if person:
            return Finding("other", "Another designer may be named.", evidence)
    if any(
        hearsay.HINTS_AT_A_DESIGNER.search(sighting.parsed.forms(c))
        for c in sighting.parsed.clauses
    ):
        return Finding("other", "A designer is hinted at.", evidence)
    return None
