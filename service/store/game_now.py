"""How a stored game stands, for what its host should do next."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import datetime

from sqlmodel import Session

from service.announce.next_step import ClaimNow, GameNow, RoundNow
from service.store.batches import count_batches
from service.store.columns import id_of
from service.store.comment_index import index_of
from service.store.desk_counts import count_if_kept, count_kept, guesses_if_kept
from service.store.games import chart_of, page_states
from service.store.many import rows_of
from service.store.rounds import all_rounds
from service.store.tables import GameRow, RoundRow
from service.store.window import guessing_state
from service.store.winners import claim_of, winners_of


def game_now(session: Session, game: GameRow, now: datetime, *, quickly: bool = False) -> GameNow:
    """How the game stands. Guesses are looked at only where they have been read already.

    `quickly` goes by the comments that need a look, as long as there are any, where the round was
    not counted since the last ruling.
    """
    rounds, states = all_rounds(session, game), page_states(session, game)
    at = round_at(rounds)
    guesses = guesses_if_kept(session, game)
    winners = winners_of(session, game)
    claim = claim_of(winners[-1]) if winners else None
    state: ClaimNow = "none" if claim is None else claim.state_at(now)
    return GameNow(
        round=None if at is None else _round_now(session, game, at, quickly=quickly),
        rounds=sum(row.state == "announced" for row in rounds),
        pages_left=chart_of(game).page_count - len(states.taken),
        in_hand=states.in_hand,
        sealed=game.seal is not None,
        revealed=game.revealed is not None,
        guessing=guessing_state(game, now),
        right=guesses is not None and guesses.first.key is not None,
        winner=bool(winners),
        claim=state,
        claim_by=None if claim is None else claim.claim_by,
    )


def stand_of(session: Session, game: GameRow) -> tuple[int, int, int]:
    """What changes with whatever happens in the game: its changes and those of its rounds."""
    asked = "SELECT count(*), coalesce(sum(changes), 0) FROM rounds WHERE game_id = :game"
    [(rounds, changes)] = rows_of(session, asked, {"game": id_of(game)})
    return game.changes, int(rounds), int(changes)


def round_at(rounds: Sequence[RoundRow]) -> RoundRow | None:
    """The round that the host is at: the newest one that is not announced.

    A runoff comes after the round that it decides, so it is met first.
    """
    at = [row for row in rounds if row.state != "announced"]
    running = [row for row in at if row.state in ("open", "closed")]
    drafts_of_runoffs = [row for row in at if row.state == "draft" and row.runoff_of is not None]
    for found in (drafts_of_runoffs, running, at):
        if found:
            return found[-1]
    return None


def _round_now(session: Session, game: GameRow, row: RoundRow, *, quickly: bool) -> RoundNow:
    known = RoundNow(
        number=row.number,
        state=row.state,  # type: ignore[arg-type]  # checked when it was kept
        planned=row.opens if row.state == "draft" else None,
        closes=row.closes,
        batches=count_batches(session, row),
        # Where nobody said when it was copied, the time of handing in is all that is known.
        covers=row.closes is not None and count_batches(session, row, row.closes) > 0,
    )
    if row.state != "closed":
        return known
    counted = count_if_kept(session, game, row) if quickly else None
    if quickly and counted is None:
        looks = index_of(session, game, row).many("look")
        if looks:
            return replace(known, looks=looks, can_change=True)
    counted = counted or count_kept(session, game, row)
    waiting = next((step for step in counted.result.steps if step.waits), None)
    return replace(
        known,
        looks=counted.change.looks,
        can_change=counted.change.possible,
        waits=None if waiting is None else waiting.rule,
        tied=counted.result.undecided,
        winner=counted.result.winner,
    )
