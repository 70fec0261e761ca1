"""The odds of a tie in JSON: exactly, and as a share of one."""

from __future__ import annotations

from fractions import Fraction

from pydantic import Field

from service.api.shapes import Out, example
from service.counting.chain_odds import TieOdds
from service.counting.round import TieBreak

_HALF = {"exact": "1/2", "share": 0.5}


class ChanceOut(Out):
    """A chance: as a fraction to the last digit, and rounded."""

    exact: str
    share: float

    @classmethod
    def of(cls, chance: Fraction | None) -> ChanceOut | None:
        """The chance for JSON; null where it cannot be computed."""
        return None if chance is None else cls(exact=str(chance), share=float(chance))


class SizeOut(Out):
    """The chance that just so many pages tie."""

    pages: int
    chance: ChanceOut


class RuleOddsOut(Out):
    """How often, of all rounds, a tie comes to a rule and how often the rule decides it."""

    rule: TieBreak
    reaches: ChanceOut | None
    decides: ChanceOut | None
    again: ChanceOut | None = Field(description="Of a runoff: how often it ties as well.")
    why: str


class OddsOut(Out):
    """The odds that a round ends in a tie, with each voter choosing one page, all alike."""

    model_config = example(
        {
            "voters": 2,
            "pages": 2,
            "tie": _HALF,
            "sizes": [{"pages": 2, "chance": _HALF}],
            "rules": [
                {
                    "rule": "lowest number",
                    "reaches": _HALF,
                    "decides": _HALF,
                    "again": None,
                    "why": "It decides every tie that comes to it.",
                }
            ],
            "why": "With 2 voters spread evenly over 2 pages, 50 of 100 rounds end in a tie.",
        }
    )

    voters: int
    pages: int
    tie: ChanceOut | None = Field(description="Null where it cannot be computed.")
    sizes: list[SizeOut]
    rules: list[RuleOddsOut]
    why: str

    @classmethod
    def of(cls, odds: TieOdds) -> OddsOut:
        """The odds for JSON."""
        return cls(
            voters=odds.voters,
            pages=odds.pages,
            tie=ChanceOut.of(odds.tie),
            sizes=[
                SizeOut(pages=pages, chance=ChanceOut(exact=str(chance), share=float(chance)))
                for pages, chance in odds.sizes
            ],
            rules=[
                RuleOddsOut(
                    rule=rule.rule,
                    reaches=ChanceOut.of(rule.reaches),
                    decides=ChanceOut.of(rule.decides),
                    again=ChanceOut.of(rule.again),
                    why=rule.why,
                )
                for rule in odds.rules
            ],
            why=odds.why,
        )
