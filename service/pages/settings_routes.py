"""Routes of a game's settings."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated, Any

from fastapi import APIRouter, Depends
from fastapi.responses import Response
from sqlmodel import Session

from service.announce.templates import LENGTHS, OCCASIONS, Length, Occasion
from service.api.game_models import GameChangeIn
from service.api.wiring import Now, Parts, Reading
from service.api.words_models import AnnouncingIn, TemplateIn
from service.errors import NotFound
from service.pages.acting import acted, shown_again
from service.pages.desk_access import Desk, DeskForm
from service.pages.form_reading import (
    Faults,
    lines_in,
    lists_of,
    read_as,
    said,
    typed_in,
    words_of,
)
from service.pages.game_frame import desk_address, went_well
from service.pages.rendering import answer_page
from service.pages.settings_contexts import SettingsPage, settings_page
from service.store.announcing_settings import drop_template, set_announcing, set_template
from service.store.answers import check_tells_nothing
from service.store.games import change_game, game_named

router = APIRouter(prefix="/desk/games/{slug}/settings", include_in_schema=False)


@router.get("")
def get_settings(slug: str, desk: Desk, session: Reading, now: Now, done: str = "") -> Response:
    """The settings as they are."""
    return answer_page(settings_page(session, desk, game_named(session, slug), (now, done)))


@router.post("/game")
def post_game(slug: str, desk: Desk, form: DeskForm, parts: Parts, now: Now) -> Response:
    """Changes what may change of a game."""
    words = words_of(form)

    def again(session: Session, faults: Faults) -> SettingsPage:
        typed = typed_in(form, "game", faults)
        return settings_page(session, desk, game_named(session, slug), (now, ""), typed)

    raw = {
        "name": words.get("name", "").strip(),
        "hosts": lines_in(words.get("hosts", "")),
        "languages": list(lists_of(form).get("languages", ())),
    }
    given, faults = read_as(GameChangeIn, raw)
    if given is None:
        return shown_again(parts, again, faults)

    def change(session: Session) -> Response:
        game = game_named(session, slug)
        change_game(session, game, {name: getattr(given, name) for name in raw})
        check_tells_nothing(session, game, game.name, "the game's name")
        return went_well(f"{desk_address(slug)}/settings", "changed")

    return acted(parts, change, again, words, {"BadRules": ("name",)})


@router.post("/announcing")
def post_announcing(slug: str, desk: Desk, form: DeskForm, parts: Parts, now: Now) -> Response:
    """Says how the game is announced."""
    words = words_of(form)

    def again(session: Session, faults: Faults) -> SettingsPage:
        typed = typed_in(form, "announcing", faults)
        return settings_page(session, desk, game_named(session, slug), (now, ""), typed)

    raw: dict[str, Any] = said(words, "locale", "most_characters")
    raw["zones"] = lines_in(words.get("zones", ""))
    raw["counts_while_open"] = words.get("counts_while_open") == "yes"
    given, faults = read_as(AnnouncingIn, raw)
    if given is None:
        return shown_again(parts, again, faults)

    def keep(session: Session) -> Response:
        set_announcing(session, game_named(session, slug), given.to_announcing())
        return went_well(f"{desk_address(slug)}/settings#announcing", "announcing")

    places = {"BadTime": ("zones",), "BadRules": ("locale",), "BadTemplate": ("locale",)}
    return acted(parts, keep, again, words, places)


@dataclass(frozen=True, slots=True)
class _Template:
    """A template that an address names."""

    slug: str
    occasion: Occasion
    length: Length

    @property
    def form(self) -> str:
        """What its form is called on the page."""
        return f"{self.occasion.replace(' ', '-')}-{self.length}"

    @property
    def address(self) -> str:
        """Where it stands on the page."""
        return f"{desk_address(self.slug)}/settings#{self.form}"


def _template(slug: str, occasion: str, length: str) -> _Template:
    for known in OCCASIONS:
        for short in LENGTHS:
            if (known, short) == (occasion, length):
                return _Template(slug, known, short)
    raise NotFound("template", f"{occasion}, {length}"[:60], "choose one under Settings")


@router.post("/templates/{occasion}/{length}")
def post_template(
    desk: Desk,
    form: DeskForm,
    template: Annotated[_Template, Depends(_template)],
    parts: Parts,
    now: Now,
) -> Response:
    """Keeps a template of the host's own, or goes back to the one that was there."""
    words, place = words_of(form), (template.occasion, template.length)

    def again(session: Session, faults: Faults) -> SettingsPage:
        typed = typed_in(form, template.form, faults)
        game = game_named(session, template.slug)
        return settings_page(session, desk, game, (now, ""), typed)

    if words.get("do") == "drop":

        def drop(session: Session) -> Response:
            drop_template(session, game_named(session, template.slug), place)
            return went_well(template.address, "dropped")

        return acted(parts, drop, again, words)
    # A browser sends line breaks as two signs.
    given, faults = read_as(TemplateIn, {"text": words.get("text", "").replace("\r\n", "\n")})
    if given is None:
        return shown_again(parts, again, faults)

    def keep(session: Session) -> Response:
        set_template(session, game_named(session, template.slug), place, given.text, now)
        return went_well(template.address, "template")

    return acted(parts, keep, again, words, {"BadTemplate": ("text",), "BadRules": ("text",)})
