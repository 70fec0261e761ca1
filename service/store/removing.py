"""Words, names and ids taken out of the rows that hold them; what a recount needs is left."""

from __future__ import annotations

import json
import secrets
from dataclasses import dataclass
from datetime import UTC, datetime
from typing import Any

from sqlmodel import Session, col, select, update

from service.comments.versions import name_of, voter_in
from service.counting.pseudonyms import forgotten_as
from service.store.answers import KeptAnswer, kept_answer
from service.store.columns import id_of
from service.store.comments import StoredComment, stored_comments
from service.store.counting import question_of
from service.store.deleted import completes
from service.store.forgotten import REMOVED
from service.store.guesses import readings_of
from service.store.many import AT_ONCE, in_parts
from service.store.opening import SALT_BYTES
from service.store.passing import drop_waiting_of
from service.store.readings import Hosts, gone_of
from service.store.readings_kept import VoteReader, read_by
from service.store.removing_beside import Removed, remove_beside
from service.store.rereading import read_anew
from service.store.rounds import all_rounds
from service.store.tables import GameRow, RoundRow
from service.store.tables_comments import CommentRow, RulingRow, VersionRow
from service.store.tables_forgotten import KeptGuessRow

#: Until when a comment counts as shown whose words were forgotten while it stood: no complete
#: batch that comes later can tell of it.
_FOR_EVER = datetime(9999, 12, 31, tzinfo=UTC)


@dataclass(frozen=True, slots=True)
class Removal:
    """Whose words are removed: those of these voters, names and ids; everybody's for None."""

    authors: frozenset[tuple[str, str, str | None]] | None

    def takes(self, one: StoredComment) -> bool:
        """Whether a comment is among them."""
        comment = one.known.comment
        who = (one.voter, comment.author, comment.author_id)
        return not one.is_forgotten and (self.authors is None or who in self.authors)


@dataclass(frozen=True, slots=True)
class _Round:
    """What is known of a round while its comments are gone through."""

    salt: bytes
    of_game: bytes
    hosts: Hosts
    complete: tuple[datetime, ...]
    answer: KeptAnswer | None


def salted(session: Session, row: RoundRow) -> bytes:
    """The round's public salt; rounds that were opened before there was one are given it."""
    if row.salt is None:
        row.salt = secrets.token_hex(SALT_BYTES)
        session.add(row)
        session.flush()
    return bytes.fromhex(row.salt)


def remove_from_rounds(
    session: Session, game: GameRow, rounds: list[RoundRow], removal: Removal
) -> dict[int, int]:
    """Remove words, names and ids; how many comments of each round lost them."""
    answer = None if game.seal is None else kept_answer(session, game)
    of_game = _salt_of_game(session, game)
    removed = Removed(of_game, everything=removal.authors is None)
    done: dict[int, int] = {}
    for row in rounds:
        hosts = Hosts.of(game.hosts if row.hosts is None else row.hosts)
        complete = tuple(completes(session, row))
        of_round = _Round(salted(session, row), of_game, hosts, complete, answer)
        reader = VoteReader(question_of(game, row))
        if row.read_by != read_by(reader.question):
            read_anew(session, row, reader)
        done[row.number] = 0
        for part in in_parts(_found(session, row, removal), AT_ONCE):
            _remove(session, part, of_round, removed)
            done[row.number] += len(part)
    remove_beside(session, game, rounds, removed)
    drop_waiting_of(session, game)
    session.expire_all()
    return done


def _salt_of_game(session: Session, game: GameRow) -> bytes:
    """The salt by which a forgotten voter stays one in all rounds: that of the first opened."""
    for row in all_rounds(session, game):
        if row.state != "draft":
            return salted(session, row)
    return b""


def _found(session: Session, row: RoundRow, removal: Removal) -> list[StoredComment]:
    # All at once: what is removed must not be read again by the same query.
    return [one for one in stored_comments(session, id_of(row)) if removal.takes(one)]


def _remove(
    session: Session, part: list[StoredComment], of_round: _Round, removed: Removed
) -> None:
    for one in part:
        removed.note(one.known, one.voter)
        _keep_guesses(session, one, of_round)
    session.flush()
    session.exec(update(CommentRow), params=[_without_words(one, of_round) for one in part])
    ids = [one.id for one in part]
    for some in in_parts(ids, 500):
        of_some = col(RulingRow.comment_id).in_(some)
        session.exec(update(RulingRow).where(of_some).values(reason=REMOVED))
    with_older = [one.id for one in part if len(one.known.versions) > 1]
    for some in in_parts(with_older, 500):
        _remove_older(session, some)


def _keep_guesses(session: Session, one: StoredComment, of_round: _Round) -> None:
    """Keep how its words read against the sealed answer, where they are a guess."""
    if of_round.answer is None:
        return
    for number, (_, reading) in enumerate(readings_of(one.known, of_round.answer), start=1):
        if reading.outcome != "none":
            row = KeptGuessRow(comment_id=one.id, number=number, outcome=reading.outcome)
            session.add(row)


def _without_words(one: StoredComment, of_round: _Round) -> dict[str, Any]:
    comment, newest = one.known.comment, one.known.versions[-1]
    name = name_of(comment.author)
    is_host = of_round.hosts.wrote(comment)
    values: dict[str, Any] = {
        "id": one.id,
        "voter": forgotten_as(one.voter, of_round.salt),
        "source_id": None,
        "reply_to": None,
        "place": "",
        "text": "",
        "reading": without_words(one.readings[-1]),
    }
    if not is_host:  # the host's own names are the game's, which keeps them
        values["author"] = forgotten_as(name, of_round.salt) if name else ""
        values["author_id"] = forgotten_as(voter_in(one.known), of_round.of_game)
    if gone_of(one.known, of_round.complete) is None:
        values["seen_earliest"] = newest.seen and newest.seen.earliest
        values["seen_latest"] = _FOR_EVER
    return values


def _remove_older(session: Session, ids: list[int]) -> None:
    of_these = select(VersionRow).where(col(VersionRow.comment_id).in_(ids))
    params = [
        {"id": id_of(one), "text": "", "reading": without_words(one.reading)}
        for one in session.exec(of_these)
    ]
    if params:
        session.exec(update(VersionRow), params=params)


def without_words(kept: str | None) -> str | None:
    """A kept reading (readings_kept.py) without the words that it quotes."""
    if not kept:
        return kept
    outcome, pages, reason, *_ = json.loads(kept)
    return json.dumps([outcome, pages, reason, f"Its words were {REMOVED}.", []])
