"""A number in a comment, and how it stands: what the reader weighs."""

from __future__ import annotations

from dataclasses import dataclass

from service.ballots import stands
from service.ballots.stands import Standing


@dataclass(slots=True, eq=False)
class Mention:
    """A number in the comment: tokens [first:after], the values it may mean, how it stands.

    `rule` says in words what decided. `value` is the page meant where it is one, `maybe` every
    page it may mean where it is not sure.
    """

    first: int
    after: int
    value: int | None
    shape: str
    standing: Standing = stands.UNSURE
    rule: str = ""
    maybe: tuple[int, ...] = ()
    spelled: bool = False
    cued_by_page: bool = False
    #: Of these the host is shown the page, but it never counts by itself.
    reported: bool = False
    family: bool = False
    lucky: bool = False
    #: Its place in the order that the writer numbers; 0 where nothing is numbered.
    rank: int = 0
    conditional: bool = False
    #: The condition is about the page itself or unknown: no order follows from it.
    depends: bool = False


def whole_of(digits: str) -> int:
    """The value of a run of digits; beyond nine digits only its being too large matters."""
    return int(digits) if len(digits) < 10 else 10**9
