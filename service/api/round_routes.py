"""Routes for rounds: drafted, opened, closed and announced by the host; public once opened."""

from __future__ import annotations

from typing import Any

from fastapi import APIRouter

from service.api.places import InRound
from service.api.problem_models import problems
from service.api.round_models import (
    AnnounceIn,
    CloseIn,
    PickIn,
    RoundChangeIn,
    RoundIn,
    RoundOut,
    VotableOut,
)
from service.api.shapes import moment_or_none
from service.api.tally_models import ResultOut
from service.api.wiring import AnyCaller, Now, Reading, Writing, host_only
from service.comments.times import zone_of
from service.store.announcing import announce_round
from service.store.games import game_named
from service.store.opening import open_round, votable_now
from service.store.revisions import revisions_of
from service.store.round_rules import DraftRules
from service.store.rounds import change_draft, close_round, draft_round, rules_of, take_round
from service.store.rulings import pick_page

router = APIRouter(prefix="/api/games/{game}/rounds", tags=["rounds"])

_HOST: dict[str, Any] = {"dependencies": [host_only]}
_CHANGES = problems(401, 403, 404, 409, 422)


@router.post("", summary="Draft a round", status_code=201, responses=_CHANGES, **_HOST)
def post_round(game: str, new: RoundIn, session: Writing, now: Now) -> RoundOut:
    """Drafts the next round with its rules. They may be changed until it is opened."""
    kept = game_named(session, game)
    rules = new.to_rules(zone_of(kept.zone), DraftRules())
    return RoundOut.of(kept, draft_round(session, kept, rules, now))


@router.patch("/{number}", summary="Change a draft's rules", responses=_CHANGES, **_HOST)
def patch_round(place: InRound, change: RoundChangeIn, session: Writing) -> RoundOut:
    """Changes the rules that are sent. Once the round is open, its rules are frozen."""
    game, draft = place.found(session)
    # Before its rules are read: else what another request changes meanwhile would be lost.
    take_round(session, draft)
    change_draft(session, game, draft, change.to_rules(zone_of(game.zone), rules_of(draft)))
    return RoundOut.of(game, draft)


@router.get("/{number}", summary="A round with its rules", responses=problems(401, 404, 422))
def get_round(place: InRound, session: Reading, caller: AnyCaller) -> RoundOut:
    """What everybody may know of a round; a draft is shown to the host only."""
    return RoundOut.of(*place.shown(session, caller))


@router.get(
    "/{number}/votable",
    summary="The pages that a round lets voters choose",
    responses=problems(401, 404, 422),
)
def get_votable(place: InRound, session: Reading, caller: AnyCaller) -> VotableOut:
    """The pages frozen at the opening; for a draft, to the host, those it would freeze now."""
    game, wanted = place.shown(session, caller)
    if wanted.votable is not None:
        return VotableOut(pages=wanted.votable, widened=wanted.widened, why=wanted.why, frozen=True)
    votable, _ = votable_now(session, game, wanted)
    return VotableOut(
        pages=sorted(votable.pages), widened=votable.widened, why=votable.why, frozen=False
    )


@router.post("/{number}/open", summary="Open a round", responses=_CHANGES, **_HOST)
def post_open(place: InRound, session: Writing, now: Now) -> RoundOut:
    """Opens the draft: rules and votable pages are frozen. Without `opens` it opens now."""
    game, draft = place.found(session)
    open_round(session, game, draft, now)
    return RoundOut.of(game, draft)


@router.post("/{number}/close", summary="Close a round", responses=_CHANGES, **_HOST)
def post_close(
    place: InRound, session: Writing, now: Now, close: CloseIn | None = None
) -> RoundOut:
    """Closes the round at its announced time, or, if none was announced, now or at `at`."""
    game, opened = place.found(session)
    at = moment_or_none((close or CloseIn()).at, zone_of(game.zone))
    close_round(session, opened, at, now)
    return RoundOut.of(game, opened)


@router.post("/{number}/pick", summary="The host's pick in a tie", responses=_CHANGES, **_HOST)
def post_pick(place: InRound, pick: PickIn, session: Writing, now: Now) -> RoundOut:
    """Picks one of the tied pages, where the round's chain of tie-breaks ends in the host's pick."""
    game, closed = place.found(session)
    pick_page(session, game, closed, (pick.page, pick.reason), now)
    return RoundOut.of(game, closed)


@router.post("/{number}/announce", summary="Announce a round", responses=_CHANGES, **_HOST)
def post_announce(
    place: InRound, session: Writing, now: Now, said: AnnounceIn | None = None
) -> ResultOut:
    """Announces the winner; its page is in hand from now on.

    Refused while the tie is undecided or an open look could change the winner.
    """
    game, closed = place.found(session)
    keeps = (said or AnnounceIn()).page_in_hand == "in hand"
    announce_round(session, game, closed, keeps_in_hand=keeps, now=now)
    found = revisions_of(session, closed)
    return ResultOut.of(place.game, closed, found[-1], found)
