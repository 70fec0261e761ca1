"""What the settings of a game show: its name and names, how it is announced, its templates."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from typing import ClassVar

from sqlmodel import Session

from service.announce.templates import BLANKS, DEFAULTS, LENGTHS, OCCASIONS, Length, Occasion
from service.ballots.languages import LANGUAGES
from service.counting.wording import sentence
from service.pages.desk_access import SignedIn
from service.pages.form_reading import NOTHING, Typed
from service.pages.frame import Frame
from service.pages.game_frame import GameBar, desk_address, game_bar
from service.pages.languages_named import language_name
from service.pages.rendering import Context
from service.pages.setup_form import zones
from service.store.announcing_settings import announcing_of, templates_of
from service.store.tables import GameRow
from service.store.tables_words import TemplateRow

DONE = {
    "changed": "The game's settings are kept.",
    "announcing": "It is kept how the game is announced.",
    "template": "The template is kept.",
    "dropped": "The template is the one that was there from the start.",
}


@dataclass(frozen=True, slots=True)
class TemplateShown:
    """A template with its blanks."""

    occasion: str
    length: str
    form: str
    title: str
    text: str
    is_own: bool
    blanks: str


@dataclass(frozen=True, slots=True)
class SettingsPage(Context):
    """What may be changed of a game while it is played."""

    template: ClassVar[str] = "settings.html"

    frame: Frame
    bar: GameBar
    done: str
    typed: Typed
    name: str
    hosts: str
    chosen: tuple[str, ...]
    languages: tuple[tuple[str, str], ...]
    also: str
    zones: tuple[str, ...]
    locale: str
    most: str
    shows_counts: bool
    templates: tuple[TemplateShown, ...]


def settings_page(
    session: Session,
    desk: SignedIn,
    game: GameRow,
    told: tuple[datetime, str],
    typed: Typed = NOTHING,
) -> SettingsPage:
    """The settings as they are; `told` are the time, and what was done."""
    now, done = told
    at = f"{desk_address(game.slug)}/settings"
    said, own = announcing_of(session, game), templates_of(session, game)
    return SettingsPage(
        frame=desk.frame("Settings", at),
        bar=game_bar(session, game, now, at),
        done=DONE.get(done, ""),
        typed=typed,
        name=game.name,
        hosts="\n".join(game.hosts),
        chosen=tuple(game.languages),
        languages=tuple((code, language_name(code)) for code in sorted(LANGUAGES)),
        also="\n".join(said.zones),
        zones=tuple(zones()),
        locale=said.locale,
        most="" if said.most_characters is None else str(said.most_characters),
        shows_counts=said.counts_while_open,
        templates=tuple(
            _template(occasion, length, own.get((occasion, length)))
            for occasion in OCCASIONS
            for length in LENGTHS
        ),
    )


def _template(occasion: Occasion, length: Length, kept: TemplateRow | None) -> TemplateShown:
    return TemplateShown(
        occasion=occasion,
        length=length,
        form=f"{occasion.replace(' ', '-')}-{length}",
        title=f"{sentence(occasion)}, {'in full' if length == 'full' else 'in short'}",
        text=DEFAULTS[length][occasion] if kept is None else kept.text,
        is_own=kept is not None,
        blanks=", ".join(f"${name}" for name in sorted(BLANKS[occasion])),
    )
