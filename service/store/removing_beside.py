"""What else tells a voter's words or name: reasons, winners, batches, answers to their comments."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass, field

from sqlmodel import Session, col, select, update

from service.comments.versions import KnownComment, voter_in
from service.counting.pseudonyms import forgotten_as, is_forgotten
from service.store.columns import id_of
from service.store.forgotten import REMOVED
from service.store.many import in_parts
from service.store.tables import GameRow, RoundRow
from service.store.tables_comments import BatchRow, CommentRow, GuessRulingRow
from service.store.tables_mystery import GuessPickRow, WinnerRow
from service.store.winners import FORGOTTEN_WINNER


@dataclass(slots=True)
class Removed:
    """What the comments told that lost their words; `everything` of the game is to go."""

    salt_of_game: bytes
    everything: bool
    keys: set[str] = field(default_factory=set)
    voters: set[str] = field(default_factory=set)
    names: set[str] = field(default_factory=set)
    sources: set[str] = field(default_factory=set)

    def note(self, known: KnownComment, voter: str) -> None:
        """Note a comment that is about to lose its words."""
        if self.everything:
            return
        comment = known.comment
        self.keys.add(known.key)
        self.voters |= {voter, voter_in(known)}
        self.names |= {told for told in (comment.author, comment.author_id, comment.id) if told}
        if comment.id:
            self.sources.add(comment.id)


def remove_beside(
    session: Session, game: GameRow, rounds: list[RoundRow], removed: Removed
) -> None:
    """Remove what reasons, winners and batches tell of what was removed."""
    rulings = session.exec(select(GuessRulingRow).where(GuessRulingRow.game_id == id_of(game)))
    picks = session.exec(select(GuessPickRow).where(GuessPickRow.game_id == id_of(game)))
    for said in (*rulings, *picks):
        if removed.everything or said.key in removed.keys:
            said.reason = REMOVED
            session.add(said)
    for winner in session.exec(select(WinnerRow).where(WinnerRow.game_id == id_of(game))):
        if removed.everything or winner.key in removed.keys or winner.voter in removed.voters:
            _remove_winner(winner, removed.salt_of_game)
        else:  # words about another one may name this voter
            winner.announcement = _without(winner.announcement, removed.names)
            winner.reason = _without(winner.reason, removed.names)
        session.add(winner)
    ids = [id_of(row) for row in rounds]
    for batch in session.exec(select(BatchRow).where(col(BatchRow.round_id).in_(ids))):
        _remove_from_batch(batch, removed)
        session.add(batch)
    for some in in_parts(sorted(removed.sources), 500):
        answers = col(CommentRow.round_id).in_(ids) & col(CommentRow.reply_to).in_(some)
        session.exec(update(CommentRow).where(answers).values(reply_to=None))
    session.flush()


def _remove_winner(winner: WinnerRow, salt: bytes) -> None:
    if not is_forgotten(winner.voter):
        winner.voter = forgotten_as(winner.voter, salt)
        winner.announcement = _without(winner.announcement, [winner.author], FORGOTTEN_WINNER)
    winner.author = FORGOTTEN_WINNER
    winner.reason = REMOVED if winner.reason else ""
    winner.asked_for = REMOVED if winner.asked_for else ""


def _remove_from_batch(batch: BatchRow, removed: Removed) -> None:
    """Nobody can say whose the words were that could not be read: they go all."""
    batch.unreadable = [
        {"place": one["place"], "text": "", "why": REMOVED} for one in batch.unreadable
    ]
    why = _without(batch.why_taken_back, removed.names)
    batch.why_taken_back = REMOVED if why and removed.everything else why
    told = [name.casefold() for name in removed.names]
    batch.notes = [
        note
        for note in batch.notes
        if not removed.everything and not any(name in note.casefold() for name in told)
    ]


def _without(words: str, names: Iterable[str], instead: str = "somebody") -> str:
    """Words without these names, where they stand as words of their own."""
    for name in sorted(names, key=len, reverse=True):
        words = re.sub(rf"(?<!\w){re.escape(name)}(?!\w)", instead, words, flags=re.IGNORECASE)
    return words
