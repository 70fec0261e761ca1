"""What was forgotten stays so: which comments of an export are not taken in again."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from sqlmodel import Session, select

from service.comments.versions import name_of
from service.counting.pseudonyms import FORGOTTEN, pseudonym_of
from service.errors import WrongState
from service.mystery.guess import GUESS_OUTCOMES, GuessReading
from service.store.columns import id_of
from service.store.many import rows_of
from service.store.preparing import Waiting
from service.store.rounds import name_of as name_of_round
from service.store.tables import GameRow, RoundRow
from service.store.tables_forgotten import ForgottenGameRow, ForgottenVoterRow

#: Stands where a sentence quoted words that were forgotten.
REMOVED = "removed on request"


@dataclass(slots=True)
class Forgotten:
    """The comments and voters that a round has forgotten; knows them only by digests."""

    salt: bytes
    keys: frozenset[str]
    voters: Mapping[tuple[bool, str], ForgottenVoterRow]
    _known: dict[tuple[str, str | None], bool] = field(default_factory=dict)

    def __bool__(self) -> bool:
        """Whether it has forgotten anything."""
        return bool(self.voters)

    def has(self, waiting: Waiting) -> bool:
        """Whether a comment of an export was forgotten or is a forgotten voter's."""
        key, _, *who_wrote = waiting[1][:4]
        if key in self.keys:
            return True
        who = (who_wrote[0], who_wrote[1])
        known = self._known.get(who)
        if known is None:
            known = self._known[who] = self._is_voters(*who)
        return known

    def _is_voters(self, author: str, author_id: str | None) -> bool:
        if author_id and (False, pseudonym_of(author_id, self.salt)) in self.voters:
            return True
        name = name_of(author)
        known = self.voters.get((True, pseudonym_of(name, self.salt))) if name else None
        return known is not None and (known.name_alone or not author_id)


def forgotten_in(session: Session, row: RoundRow) -> Forgotten:
    """What the round has forgotten."""
    of_round = select(ForgottenVoterRow).where(ForgottenVoterRow.round_id == id_of(row))
    voters = {(one.is_name, one.digest): one for one in session.exec(of_round)}
    keys: set[str] = set()
    if voters:  # else nobody was forgotten, and a large round need not be gone through
        asked = "SELECT key FROM comments WHERE round_id = :round AND voter LIKE :mark"
        given = {"round": id_of(row), "mark": f"{FORGOTTEN}%"}
        keys = {_of_export(key) for (key,) in rows_of(session, asked, given)}
    return Forgotten(bytes.fromhex(row.salt or ""), frozenset(keys), voters)


def check_not_forgotten(session: Session, row: RoundRow) -> None:
    """Whether the round's game still takes comments.

    Raises:
        WrongState: its comments were forgotten.
    """
    if session.get(ForgottenGameRow, row.game_id) is not None:
        todo = "what viewers wrote in this game was removed for good"
        raise WrongState(name_of_round(row), "forgotten", "given comments", todo)


def kept_guesses(session: Session, game: GameRow) -> dict[int, dict[int, GuessReading]]:
    """How forgotten words of a game were read as guesses, by comment and number."""
    asked = (
        "SELECT g.comment_id, g.number, g.outcome FROM kept_guesses g "
        "JOIN comments c ON c.id = g.comment_id JOIN rounds r ON r.id = c.round_id "
        "WHERE r.game_id = :game"
    )
    found: dict[int, dict[int, GuessReading]] = {}
    for comment_id, number, outcome in rows_of(session, asked, {"game": id_of(game)}):
        [known] = [one for one in GUESS_OUTCOMES if one == outcome]
        found.setdefault(comment_id, {})[number] = GuessReading(known, f"Its words were {REMOVED}.")
    return found


def _of_export(key: str) -> str:
    """The key as an export gives it, without what tells apart comments of the same key."""
    return key.partition("-")[0]
