"""What a host says about announcing her game: zones, lengths, and templates of her own."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime
from zoneinfo import ZoneInfo

from babel import Locale, UnknownLocaleError
from sqlmodel import Session, col, select

from service.announce.instants import ENGLISH
from service.announce.templates import Length, Occasion, check_template
from service.comments.times import zone_of
from service.errors import BadRules, NotFound
from service.store.answers import check_tells_nothing
from service.store.columns import id_of
from service.store.games import take_game
from service.store.tables import GameRow
from service.store.tables_words import AnnouncingRow, TemplateRow

#: More zones would make a sentence that nobody reads.
MOST_ZONES = 12


@dataclass(frozen=True, slots=True)
class Announcing:
    """How a game is announced: see `AnnouncingRow`."""

    zones: tuple[str, ...] = ()
    locale: str = ENGLISH
    most_characters: int | None = None
    counts_while_open: bool = False

    @property
    def also(self) -> tuple[ZoneInfo, ...]:
        """The further zones."""
        return tuple(zone_of(zone) for zone in self.zones)


def announcing_of(session: Session, game: GameRow) -> Announcing:
    """How the game is announced."""
    row = session.get(AnnouncingRow, id_of(game))
    if row is None:
        return Announcing()
    return Announcing(tuple(row.zones), row.locale, row.most_characters, row.counts_while_open)


def set_announcing(session: Session, game: GameRow, said: Announcing) -> None:
    """Keep how the game is announced.

    Raises:
        BadTime: a zone that is not known.
        BadRules: a language that is not known, too many zones, one twice.
        BadTemplate: a kept template has other forms of words than the language needs.
    """
    take_game(session, game)
    if len(said.zones) > MOST_ZONES:
        raise BadRules(f"{len(said.zones)} zones are named", f"name at most {MOST_ZONES}")
    if len(set(said.zones)) != len(said.zones):
        raise BadRules("a zone is named twice", "name each zone once")
    for zone in said.zones:
        zone_of(zone)
    locale = _known_locale(said.locale)
    for (occasion, _), template in templates_of(session, game).items():
        check_template(occasion, template.text, locale)
    row = session.get(AnnouncingRow, id_of(game)) or AnnouncingRow(
        game_id=id_of(game), zones=[], locale=ENGLISH
    )
    row.zones, row.locale = list(said.zones), locale
    row.most_characters = said.most_characters
    row.counts_while_open = said.counts_while_open
    session.add(row)
    session.flush()


def templates_of(session: Session, game: GameRow) -> Mapping[tuple[Occasion, Length], TemplateRow]:
    """The host's own templates by occasion and length."""
    of_game = select(TemplateRow).where(TemplateRow.game_id == id_of(game))
    rows: Sequence[TemplateRow] = session.exec(
        of_game.order_by(col(TemplateRow.occasion), col(TemplateRow.length))
    ).all()
    return {(row.occasion, row.length): row for row in rows}  # type: ignore[misc]  # checked when kept


def set_template(
    session: Session,
    game: GameRow,
    place: tuple[Occasion, Length],
    text: str,
    now: datetime,
) -> TemplateRow:
    """Keep a template of the host's own.

    Raises:
        BadTemplate: it cannot be filled in.
        BadRules: it would give the sealed answer away.
    """
    take_game(session, game)
    occasion, length = place
    check_template(occasion, text, announcing_of(session, game).locale)
    check_tells_nothing(session, game, text, "the template")
    row = session.get(TemplateRow, (id_of(game), occasion, length)) or TemplateRow(
        game_id=id_of(game), occasion=occasion, length=length, text="", at=now
    )
    row.text, row.at = text, now
    session.add(row)
    session.flush()
    return row


def drop_template(session: Session, game: GameRow, place: tuple[Occasion, Length]) -> None:
    """Go back to the template that is there from the start.

    Raises:
        NotFound: the host has none of her own for that.
    """
    take_game(session, game)
    row = session.get(TemplateRow, (id_of(game), *place))
    if row is None:
        raise NotFound("template of your own", f"{place[0]}, {place[1]}", "nothing is to be undone")
    session.delete(row)
    session.flush()


def _known_locale(code: str) -> str:
    try:
        return str(Locale.parse(code.replace("-", "_")))
    except (UnknownLocaleError, ValueError):
        raise BadRules(
            f"the language {code!r} is not known", "give a code of Unicode CLDR such as en_GB or fr"
        ) from None
