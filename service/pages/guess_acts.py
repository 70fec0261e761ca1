"""What the forms of the guesses' page share: where they lead, and the page with what was typed."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from datetime import datetime
from typing import Annotated

from fastapi import Depends
from fastapi.responses import Response
from sqlmodel import Session
from starlette.datastructures import FormData

from service.api.wiring import Now, Parts, Wiring
from service.pages.acting import acted, shown_again
from service.pages.desk_access import Desk, DeskForm, SignedIn
from service.pages.form_reading import Faults, typed_in, words_of
from service.pages.game_frame import desk_address, went_well
from service.pages.guesses_contexts import GuessesPage, WantedGuesses, guesses_page
from service.store.games import game_named
from service.store.tables import GameRow

#: Where errors are told that a form has one field for.
PLACES: Mapping[str, tuple[str, ...]] = {
    "BadRules": ("at",),
    "ClosesBeforeOpening": ("at",),
}


@dataclass(frozen=True, slots=True)
class GuessForm:
    """A form of the guesses' page as it was sent."""

    slug: str
    desk: SignedIn
    form: FormData
    parts: Wiring
    now: datetime

    @property
    def words(self) -> dict[str, str]:
        """Its fields."""
        return words_of(self.form)

    def do(
        self,
        name: str,
        act: Callable[[Session, GameRow], None],
        done: tuple[str, str],
        places: Mapping[str, tuple[str, ...]] = PLACES,
    ) -> Response:
        """Do what the form `name` asks; `done` says what was, and at which part of the page."""

        def whole(session: Session) -> Response:
            act(session, game_named(session, self.slug))
            show = self.words.get("show", "")
            query = f"?show={show}" if show in ("look", "right", "all") else ""
            said, part = done
            return went_well(f"{desk_address(self.slug)}/guesses{query}#{part}", said)

        return acted(self.parts, whole, self._again(name), self.words, places)

    def refuse(self, name: str, faults: Faults) -> Response:
        """The page with the form `name` as it was sent."""
        return shown_again(self.parts, self._again(name), faults)

    def _again(self, name: str) -> Callable[[Session, Faults], GuessesPage]:
        def again(session: Session, faults: Faults) -> GuessesPage:
            typed = typed_in(self.form, name, faults)
            wanted = WantedGuesses(self.now, self.words.get("show") or "decides")
            return guesses_page(session, self.desk, game_named(session, self.slug), wanted, typed)

        return again


def _guess_form(slug: str, desk: Desk, form: DeskForm, parts: Parts, now: Now) -> GuessForm:
    return GuessForm(slug, desk, form, parts, now)


SentGuessForm = Annotated[GuessForm, Depends(_guess_form)]
