"""Words to paste in JSON: announcements of a round, templates, how a game is announced."""

from __future__ import annotations

from typing import Annotated

from pydantic import AfterValidator, Field

from service.announce.instants import ENGLISH
from service.announce.templates import (
    BLANKS,
    DEFAULTS,
    MOST_CHARACTERS,
    Length,
    Occasion,
)
from service.api.shapes import In, Out, example
from service.store.announcing_settings import MOST_ZONES, Announcing
from service.store.round_announcements import RoundWords
from service.store.tables_words import TemplateRow

#: Lengths that places of writing often take, in characters. Common practice, no source.
COMMON_LENGTHS = (280, 500, 2_000, 5_000)

_OWN = "Whether the template is the host's own."
_Limit = Annotated[
    int | None,
    Field(
        ge=40,
        le=100_000,
        description="The longest text that your place of writing takes, in characters (Unicode "
        f"code points). Often {', '.join(f'{one:,}' for one in COMMON_LENGTHS)}: common practice, "
        "no source.",
    ),
]


class AnnouncingIn(In):
    """How a game is announced. What is left out is as it was from the start."""

    model_config = example(
        {
            "zones": ["America/New_York", "Australia/Sydney"],
            "locale": "en_GB",
            "most_characters": 500,
            "counts_while_open": False,
        }
    )

    zones: list[Annotated[str, Field(max_length=60)]] = Field(
        default=[],
        max_length=MOST_ZONES,
        description="Further IANA time zones in which every time is told.",
    )
    locale: str = Field(
        default=ENGLISH,
        max_length=20,
        description="The language of days, dates and numbers in your own templates, by its code in "
        "Unicode CLDR. Loopstart's own sentences are English.",
    )
    most_characters: _Limit = None
    counts_while_open: bool = Field(
        default=False, description="Show the votes to everybody while a round is open."
    )

    def to_announcing(self) -> Announcing:
        """How it is kept."""
        return Announcing(
            tuple(self.zones), self.locale, self.most_characters, self.counts_while_open
        )


class AnnouncingOut(Out):
    """How a game is announced."""

    model_config = example(
        {
            "zones": ["America/New_York", "Australia/Sydney"],
            "locale": "en_GB",
            "most_characters": 500,
            "counts_while_open": False,
        }
    )

    zones: list[str]
    locale: str
    most_characters: int | None
    counts_while_open: bool

    @classmethod
    def of(cls, kept: Announcing) -> AnnouncingOut:
        """What is kept, for JSON."""
        return cls(
            zones=list(kept.zones),
            locale=kept.locale,
            most_characters=kept.most_characters,
            counts_while_open=kept.counts_while_open,
        )


def _without_nul(words: str) -> str:
    if "\x00" in words:
        raise ValueError("a NUL character cannot be kept; leave it out")
    return words


class TemplateIn(In):
    """A template of the host's own: plain text with blanks such as $round."""

    model_config = example({"text": "Round $round! $choose\n\nYou have until $closes."})

    text: Annotated[
        str, Field(min_length=1, max_length=MOST_CHARACTERS), AfterValidator(_without_nul)
    ]


class TemplateOut(Out):
    """A template, and the blanks that it may ask for."""

    model_config = example(
        {
            "occasion": "reminder",
            "length": "short",
            "text": "$heading: vote now, $left. $choose",
            "own": False,
            "blanks": ["game", "round", "heading", "left"],
        }
    )

    occasion: Occasion
    length: Length
    text: str
    own: bool = Field(description=_OWN)
    blanks: list[str] = Field(description="What is filled in; a number may choose its word.")

    @classmethod
    def of(cls, occasion: Occasion, length: Length, own: TemplateRow | None) -> TemplateOut:
        """The host's own template, or the one that is there."""
        return cls(
            occasion=occasion,
            length=length,
            text=DEFAULTS[length][occasion] if own is None else own.text,
            own=own is not None,
            blanks=list(BLANKS[occasion]),
        )


class RoundWordsOut(Out):
    """Words to paste. `stopped` says why there are none: they would give the answer away."""

    model_config = example(
        {
            "occasion": "reminder",
            "length": "short",
            "text": "The windy island's mystery, round 2: vote now, 1 day and 5 hours.",
            "stopped": "",
            "own": False,
            "outdated": False,
            "characters": 65,
            "fits": True,
        }
    )

    occasion: Occasion
    length: Length
    text: str
    stopped: str = Field(description="Empty where the announcement is ready.")
    own: bool = Field(description=_OWN)
    outdated: bool = Field(description="The count has changed since it was announced.")
    characters: int
    fits: bool = Field(description="Whether it is within the length that the host chose.")

    @classmethod
    def of(cls, told: RoundWords, most: int | None) -> RoundWordsOut:
        """The announcement for JSON; `most` is how many characters it may have."""
        return cls(
            occasion=told.occasion,
            length=told.length,
            text=told.text,
            stopped=told.stopped,
            own=told.is_own,
            outdated=told.outdated,
            characters=len(told.text),
            fits=most is None or len(told.text) <= most,
        )
