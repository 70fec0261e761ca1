"""A number with what stands on either side of it, as the rules that judge it see it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from service.ballots.beside import Beside
from service.ballots.mention import Mention
from service.ballots.scene import Scene
from service.ballots.stands import Standing

_SMALL = 11
#: Why a number word is no number.
SMALL_TALK = "a small number inside other talk"
THE_WORD = "the word, not the number"
PAGE_SAID = "a page word before it"


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


#: What a rule says of a number, None where it says nothing; and a rule.
Verdict = tuple[Standing, str] | None
Rule = Callable[[Case], Verdict]
