"""Forgetting on request: a voter's words and name, or all of a game's after its end.

What a recount needs stays: of each comment its times, its key, what it was read as, the rulings
without their reasons, and its voter under the pseudonym that the record has. The voter stays one
voter in the round, and in the game's guesses. Words, names and ids are gone.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime

from sqlmodel import Session, select

from service.comments.versions import name_of
from service.counting.pseudonyms import is_forgotten, pseudonym_of
from service.counting.receipt import is_meant
from service.errors import BadInput, NotFound, WrongState
from service.store.columns import id_of
from service.store.games import take_game
from service.store.many import rows_of
from service.store.readings import Hosts
from service.store.removing import Removal, remove_from_rounds, salted
from service.store.rounds import take_opened_rounds
from service.store.tables import GameRow, RoundRow
from service.store.tables_forgotten import ForgottenGameRow, ForgottenVoterRow
from service.store.window import guessing_state

#: A voter, an author's name and an author's id, as a comment has them.
Who = tuple[str, str, str | None]


@dataclass(frozen=True, slots=True)
class Forgot:
    """How many comments lost their words, and in which rounds."""

    comments: int
    rounds: tuple[int, ...]


def forget_voter(session: Session, game: GameRow, who: str, now: datetime) -> Forgot:
    """Forget what a voter wrote in a game; `who` is the author's name or id.

    In the rounds that are opened nothing of that voter is taken in again; the ballot stays.

    Raises:
        NotFound: nobody of that name or id wrote in this game.
        BadInput: several voters have that name, or it is the host's own.
    """
    take_game(session, game)
    rounds = take_opened_rounds(session, game)
    everybody = {one for row in rounds for one in _authors(session, row)}
    meant = _meant(who, everybody)
    if not meant:
        if any(_is_known(session, row, who) for row in rounds):
            return Forgot(0, ())
        raise NotFound("voter", who, f"write the name or id as the comments of {game.slug} have it")
    _check_not_host(game, rounds, meant)
    for row in rounds:
        _keep_forgotten(session, row, meant, everybody - meant, now)
    done = remove_from_rounds(session, game, rounds, Removal(frozenset(meant)))
    return Forgot(sum(done.values()), tuple(number for number, many in done.items() if many))


def forget_everybody(session: Session, game: GameRow, now: datetime) -> Forgot:
    """Forget what everybody wrote in a game that is over; from then on it takes no comments.

    Raises:
        WrongState: a round is not announced yet, guessing is open, or the answer not revealed.
    """
    take_game(session, game)
    rounds = take_opened_rounds(session, game)
    _check_over(game, rounds, now)
    done = remove_from_rounds(session, game, rounds, Removal(None))
    if session.get(ForgottenGameRow, id_of(game)) is None:
        session.add(ForgottenGameRow(game_id=id_of(game), at=now))
        session.flush()
    return Forgot(sum(done.values()), tuple(number for number, many in done.items() if many))


def _authors(session: Session, row: RoundRow) -> Iterator[Who]:
    asked = "SELECT DISTINCT voter, author, author_id FROM comments WHERE round_id = :round"
    for voter, author, author_id in rows_of(session, asked, {"round": id_of(row)}):
        if not is_forgotten(voter):
            yield voter, author, author_id


def _meant(who: str, everybody: set[Who]) -> set[Who]:
    """The authors that `who` names, with what else they wrote under the same id.

    Raises:
        BadInput: several voters have that name.
    """
    plain = who.strip()
    by_id = {one for one in everybody if one[2] == plain}
    if by_id:
        return by_id
    named = {one for one in everybody if is_meant(who, one[0], one[1])}
    ids = {one[2] for one in named if one[2]}
    if len(ids) > 1:
        raise BadInput(
            f"{len(ids)} voters have the name {plain!r}",
            "give the author's id of the one who is to be forgotten",
        )
    return named | {one for one in everybody if one[2] in ids}


def _is_known(session: Session, row: RoundRow, who: str) -> bool:
    """Whether `who` was forgotten in the round before."""
    digests = {pseudonym_of(each, salted(session, row)) for each in (who.strip(), name_of(who))}
    of_round = select(ForgottenVoterRow.digest).where(ForgottenVoterRow.round_id == id_of(row))
    known = session.exec(of_round).all()
    return not digests.isdisjoint(known)


def _check_not_host(game: GameRow, rounds: list[RoundRow], meant: set[Who]) -> None:
    hosts = Hosts.of([*game.hosts, *(name for row in rounds for name in row.hosts or ())])
    if any(hosts.are(author_id, author) for _, author, author_id in meant):
        raise BadInput(
            "that is the host's own name", "have the whole game forgotten once it is over"
        )


def _check_over(game: GameRow, rounds: list[RoundRow], now: datetime) -> None:
    thing, wish = f"game {game.slug}", "forgotten"
    for row in rounds:
        if row.state != "announced":
            raise WrongState(thing, "not over", wish, f"announce round {row.number} first")
    if guessing_state(game, now) == "open":
        raise WrongState(thing, "not over", wish, "end the guessing first")
    if game.seal is not None and game.revealed is None:
        raise WrongState(thing, "not over", wish, "reveal the answer first")


def _keep_forgotten(
    session: Session, row: RoundRow, meant: set[Who], others: set[Who], now: datetime
) -> None:
    """Note by digests whose comments the round does not take in again."""
    salt = salted(session, row)
    names = {name_of(author) for _, author, _ in meant} - {""}
    # Where somebody else has the name, an export without ids cannot tell who it is.
    names -= {name_of(author) for _, author, _ in others}
    ids = {author_id for _, _, author_id in meant if author_id}
    # Who has neither is a voter of one comment, called by its key.
    voters = ids or ({voter for voter, _, _ in meant} if not names else set())
    told = {(False, pseudonym_of(one, salt)) for one in voters}
    told |= {(True, pseudonym_of(one, salt)) for one in names}
    of_round = select(ForgottenVoterRow).where(ForgottenVoterRow.round_id == id_of(row))
    known = {(one.is_name, one.digest) for one in session.exec(of_round)}
    for is_name, digest in sorted(told - known):
        session.add(
            ForgottenVoterRow(
                round_id=id_of(row),
                digest=digest,
                is_name=is_name,
                name_alone=is_name and not ids,
                at=now,
            )
        )
    session.flush()
