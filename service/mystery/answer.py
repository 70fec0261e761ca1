"""The sealed answer, and what the game asks for of it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal, get_args

from service.errors import BadRules
from service.mystery.names import fold

Wants = Literal["title", "title and designer", "title or designer"]
WANTS: tuple[Wants, ...] = get_args(Wants)


@dataclass(frozen=True, slots=True)
class Answer:
    """What the piece is: its title, its designer if one is told, other names that also count.

    Raises:
        BadRules: a title or an alias that holds neither a letter nor a digit.
    """

    title: str
    designer: str = ""
    aliases: tuple[str, ...] = ()

    def __post_init__(self) -> None:
        for what, name in (("title", self.title), *(("alias", alias) for alias in self.aliases)):
            if not fold(name):
                raise BadRules(
                    f"the answer's {what} {name!r} holds no letter and no digit",
                    "give the name as viewers would write it",
                )


@dataclass(frozen=True, slots=True)
class GuessRules:
    """How guesses of a game are judged: the answer, what counts as naming it, names a comment.

    `names_per_comment` is how many names one comment may offer, read in order.

    Raises:
        BadRules: an unknown `wants`, fewer than one name a comment, or a designer wanted and
            none given.
    """

    answer: Answer
    wants: Wants = "title"
    names_per_comment: int = 1

    def __post_init__(self) -> None:
        if self.wants not in WANTS:
            raise BadRules(
                f"the game asks for {self.wants!r}, which is none of {', '.join(WANTS)}",
                "choose one of these",
            )
        if self.names_per_comment < 1:
            raise BadRules(
                f"a comment may offer {self.names_per_comment} names", "allow one name or more"
            )
        if self.wants != "title" and not fold(self.answer.designer):
            raise BadRules(
                f"the game asks for {self.wants!r} and the answer has no designer",
                "give the designer, or ask for the title",
            )
