"""One comment read as a guess of the sealed answer (reading-guesses.md beside this file)."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal, get_args

from service.mystery import denials, hearsay
from service.mystery.answer import GuessRules
from service.mystery.clauses import Parsed, own_and_quoted
from service.mystery.compare import find_mentions
from service.mystery.designer import judge_designer
from service.mystery.names import words_of
from service.mystery.sighting import Finding, GuessEvidence, Sighting, State, sighting_of
from service.mystery.spellings import designers_of, titles_of
from service.mystery.titles import judge_title

GuessOutcome = Literal["right", "look", "wrong", "none"]
GUESS_OUTCOMES: tuple[GuessOutcome, ...] = get_args(GuessOutcome)

_OUTCOMES: dict[State, GuessOutcome] = {
    "right": "right", "look": "look", "denied": "wrong", "other": "wrong", "none": "none",
}  # fmt: skip
_THUMBS_UP = frozenset("👍💯✅🙌👏☝👆")


@dataclass(frozen=True, slots=True)
class GuessReading:
    """What a comment says as a guess: the outcome, a sentence for the host, and the words read."""

    outcome: GuessOutcome
    why: str
    evidence: tuple[GuessEvidence, ...] = ()


def read_guess(text: str, rules: GuessRules) -> GuessReading:
    """Read one comment as a guess; never raises, whatever the text.

    Right only where any fair reader, told the answer, would say that the writer named this piece.
    """
    own, quoted = own_and_quoted(text)
    sighting = sighting_of(own, rules)
    title = judge_title(sighting)
    if quoted and title.state in ("none", "other"):
        title = _reaction(quoted, sighting) or title
    if rules.wants == "title":
        found = _title_alone(sighting, title)
    else:
        designer = judge_designer(sighting)
        weigh = _both if rules.wants == "title and designer" else _either
        found = weigh(title, designer)
    return GuessReading(_OUTCOMES[found.state], found.why, found.evidence)


def _reaction(quoted: str, sighting: Sighting) -> Finding | None:
    """What the writer says to a quoted line that names the piece; None where none does."""
    names = (*titles_of(sighting.rules.answer), *designers_of(sighting.rules.answer))
    if not find_mentions(words_of(quoted), names):
        return None
    parsed: Parsed = sighting.parsed
    said = " ".join(parsed.forms(clause) for clause in parsed.clauses)
    approves = hearsay.APPROVES.search(said) or not _THUMBS_UP.isdisjoint(parsed.text)
    if approves and not denials.denies(said):
        return Finding("look", "It agrees with a quoted guess.", adopted=True)
    return Finding("none", "The name stands in a quoted line, which is another's.")


def _title_alone(sighting: Sighting, title: Finding) -> Finding:
    """The game asks for the title: a designer alone is a wrong guess."""
    if title.state == "none" and sighting.designers:
        seen = sighting.designers[0].mention
        evidence = sighting.evidence(seen.first, seen.last, "the designer alone")
        return Finding(
            "other", "It names the designer, and the game asks for the title.", (evidence,)
        )
    return title


def _joined(state: State, why: str, title: Finding, designer: Finding) -> Finding:
    return Finding(state, why, (*title.evidence, *designer.evidence))


def _both(title: Finding, designer: Finding) -> Finding:
    """The game asks for title and designer."""
    if title.state == "right":
        if designer.state == "none":
            return _joined("other", "The title is right, the designer is missing.", title, designer)
        state: State = "right" if designer.state == "right" else "look"
        return _joined(state, f"The title is right. {designer.why}", title, designer)
    if title.state == "look":
        if designer.state == "none" and not title.adopted:
            return _joined("other", "The designer is missing.", title, designer)
        return _joined("look", f"{title.why} {designer.why}", title, designer)
    if title.state == "none" and designer.state != "none":
        return _joined("other", "It names the designer without the title.", title, designer)
    return title


def _either(title: Finding, designer: Finding) -> Finding:
    """The game asks for title or designer; one that is right and one that is wrong: look."""
    why = f"{title.why} {designer.why}"
    if title.state == "right":
        state: State = "right" if designer.state in ("right", "none") else "look"
        return _joined(state, why, title, designer)
    if title.state == "look" or designer.state == "look":
        return _joined("look", why, title, designer)
    if designer.state == "right":
        return _joined("right" if title.state == "none" else "look", why, title, designer)
    if designer.state in ("denied", "other") and title.state == "none":
        return _joined("other", designer.why, title, designer)
    return title
