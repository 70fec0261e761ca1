"""The word "last" as the talk of a hobby has it: "last week", "my last skein", told without the long way.

It names the last page only before a page word, "one" or a word of choosing, or behind one of
these. Where nothing of the kind stands beside it, the long way finds nothing either.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from itertools import chain

from service.ballots.language import Language

#: In so short a comment "last" alone may name the last page.
_SHORT = 4


@dataclass(frozen=True, slots=True)
class LastOfElse:
    """Words of some languages, as far as they tell whether "last" may name a page."""

    last: frozenset[str]
    #: What makes it a page when it follows, and what begins a choice when it stands before.
    behind: frozenset[str]
    choosing: frozenset[str]
    #: What may stand between a word of choosing and it.
    between: frozenset[str]

    def may_be_a_page(self, parts: Sequence[str], pieces: Sequence[str]) -> bool:
        """Whether "last" may name one in a comment without a page word before it.

        `parts` is what stands between spaces in it, `pieces` its words.
        """
        said = sum(piece in self.last for piece in pieces)
        places = [at for at, part in enumerate(parts) if part in self.last]
        if len(pieces) <= _SHORT or len(places) < said:
            return True
        return any(self._may_begin(parts[at + 1 :]) or self._is_asked(parts, at) for at in places)

    def _may_begin(self, behind: Sequence[str]) -> bool:
        return not behind or not behind[0].isalpha() or behind[0] in self.behind

    def _is_asked(self, parts: Sequence[str], at: int) -> bool:
        for before in reversed(parts[:at]):
            if not before.isalpha() or before in self.choosing:
                return True
            if before not in self.between:
                return False
        return False


def last_of_else(languages: Iterable[Language], watched: frozenset[str]) -> LastOfElse:
    """The same for these languages; a word that is `watched` for anything else is left out."""
    found = list(languages)
    phrases = [(each.last, each.choice_after, each.choice_before) for each in found]
    last, after, before = (list(chain.from_iterable(group)) for group in zip(*phrases, strict=True))
    fillers = [phrase for language in found for phrase in language.fillers]
    return LastOfElse(
        frozenset(phrase[0] for phrase in last if len(phrase) == 1) - watched,
        frozenset({"one"}.union(phrase[0] for phrase in after)),
        frozenset(phrase[-1] for phrase in before),
        frozenset(chain.from_iterable(fillers)),
    )
