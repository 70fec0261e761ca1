"""What the words of a round show: ready to be copied, with pictures beside them."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from typing import ClassVar

from sqlmodel import Session

from service.announce.map_picture import Look, Shape, picture_in_words
from service.counting.wording import sentence
from service.pages.desk_access import SignedIn
from service.pages.frame import Frame
from service.pages.game_contexts import round_title
from service.pages.game_frame import GameBar, game_bar, round_address
from service.pages.rendering import Context
from service.pages.round_contexts import DONE
from service.store.announcing_settings import announcing_of
from service.store.pictures import map_of_round
from service.store.round_announcements import RoundWords, round_announcements
from service.store.tables import GameRow, RoundRow


@dataclass(frozen=True, slots=True)
class WordsShown:
    """Words for an occasion, with their length; `note` says what to mind."""

    title: str
    text: str
    stopped: str
    characters: str
    note: str


@dataclass(frozen=True, slots=True)
class PictureShown:
    """A picture with its alternative text."""

    name: str
    address: str
    words: str


@dataclass(frozen=True, slots=True)
class WordsPage(Context):
    """The words of a round, ready to be copied."""

    template: ClassVar[str] = "words.html"

    frame: Frame
    bar: GameBar
    title: str
    round: str
    done: str
    words: tuple[WordsShown, ...]
    pictures: tuple[PictureShown, ...]


def words_page(
    session: Session,
    desk: SignedIn,
    place: tuple[GameRow, RoundRow],
    told: tuple[datetime, str],
) -> WordsPage:
    """The words that can be pasted by now; `told` are the time, and what was done before."""
    (game, row), (now, done) = place, told
    of_round = round_address(game.slug, row.number)
    most = announcing_of(session, game).most_characters
    return WordsPage(
        frame=desk.frame(f"Words of {round_title(row).lower()}", f"{of_round}/words"),
        bar=game_bar(session, game, now, f"{of_round}/words"),
        title=round_title(row),
        round=of_round,
        done=DONE.get(done, ""),
        words=tuple(_words(one, most) for one in round_announcements(session, game, row, now)),
        pictures=_pictures(session, game, row),
    )


def _words(one: RoundWords, most: int | None) -> WordsShown:
    many = len(one.text)
    notes = []
    if most is not None and many > most:
        notes.append(f"It is longer than the {most:,} characters that your place takes.")
    if one.outdated:
        notes.append("It tells the count as it is now, which is not the announced one.")
    if one.is_own:
        notes.append("It is made of your own template.")
    length = "in full" if one.length == "full" else "in short"
    return WordsShown(
        title=f"{sentence(one.occasion)}, {length}",
        text=one.text,
        stopped=one.stopped,
        characters=f"{many:,} characters",
        note=" ".join(notes),
    )


def _pictures(session: Session, game: GameRow, row: RoundRow) -> tuple[PictureShown, ...]:
    """Pictures for a post; a draft has none that everybody may see."""
    if row.state == "draft":
        return ()
    at = f"/api/games/{game.slug}/rounds/{row.number}/map.png"
    shown = map_of_round(session, game, row)
    return tuple(
        PictureShown(name, f"{at}?shape={shape}", picture_in_words(shown, Look(shape=shape)))
        for name, shape in _SHAPES
    )


_SHAPES: tuple[tuple[str, Shape], ...] = (
    ("Square post", "square"),
    ("Wide post", "wide"),
    ("Video", "video"),
)
