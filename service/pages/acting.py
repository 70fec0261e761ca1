"""A form of the desk that does something: done, and on to a page; or shown again, nothing written."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence

from fastapi.responses import Response
from sqlmodel import Session

from service.api.wiring import Wiring
from service.pages.form_reading import REFUSED, Faults, fault_of, status_for
from service.pages.rendering import Context, answer_page

#: Does what a form asks in one transaction, and answers where to go on.
Act = Callable[[Session], Response]
#: Makes the page that the form stands in, with what is wrong.
Again = Callable[[Session, Faults], Context]


def acted(
    parts: Wiring,
    act: Act,
    again: Again,
    words: Mapping[str, str],
    places: Mapping[str, Sequence[str]] | None = None,
) -> Response:
    """What the act answers; where it is refused, the page again with the sentence at its place.

    `places` names the fields that errors are about.
    """
    try:
        with parts.database.writing() as session:
            return act(session)
    except REFUSED as error:
        return shown_again(parts, again, fault_of(error, words, places or {}), status_for(error))


def shown_again(parts: Wiring, again: Again, faults: Faults, status: int = 422) -> Response:
    """The page with its form as it was sent."""
    with parts.database.reading() as session:
        page = again(session, faults)
    return answer_page(page, status)
