"""A stored round made into what counting takes, and counted."""

from __future__ import annotations

from collections import defaultdict

from sqlmodel import Session, col, select

from service.ballots.reading import Question
from service.counting.round import RoundInput, RoundRules, Ruling, Runoff
from service.errors import WrongState
from service.store.columns import id_of
from service.store.comments import known_comments
from service.store.draw_sources import draw_rules_of
from service.store.draws import drawn_so_far
from service.store.games import chart_of
from service.store.readings import Asked, Counted, Hosts, count, read_comments
from service.store.rounds import name_of, rules_of
from service.store.tables import GameRow, RoundRow
from service.store.tables_comments import CommentRow, PickRow, RulingRow
from service.store.tables_counting import RevisionRow


def count_stored(session: Session, game: GameRow, row: RoundRow) -> Counted:
    """The count of a stored round as it stands; before the closing, of all comments so far.

    Raises:
        WrongState: the round is a draft.
    """
    rules = counting_rules(row)
    chart = chart_of(game)
    question = Question(chart, rules.choices, tuple(row.languages or ()))
    hosts = game.hosts if row.hosts is None else row.hosts
    asked = Asked(question, Hosts.of(hosts), rules.closes)
    read, texts = read_comments(known_comments(session, row), asked, _rulings(session, row))
    given = RoundInput(
        chart,
        rules,
        read,
        host_pick=_pick(session, row),
        runoff=_runoff(session, row),
        drawn=drawn_so_far(session, row),
        salt=None if row.salt is None else bytes.fromhex(row.salt),
    )
    return count(given, texts)


def counting_rules(row: RoundRow) -> RoundRules:
    """The rules that were frozen when the round opened.

    Raises:
        WrongState: the round is a draft.
    """
    if row.opens is None or row.votable is None or row.stitched is None:
        raise WrongState(name_of(row), "a draft", "counted", "open it first")
    rules = rules_of(row)
    return RoundRules(
        opens=row.opens,
        # While the round is open its announced closing is still a rule: later comments are late.
        closes=row.closes,
        votable=frozenset(row.votable),
        stitched=frozenset(row.stitched),
        choices=rules.choices,
        standing=rules.standing,
        tie_breaks=rules.tie_breaks,
        draw=draw_rules_of(row),
    )


def _rulings(session: Session, row: RoundRow) -> dict[str, tuple[Ruling, ...]]:
    """The host's rulings by the keys of their comments, oldest first."""
    found: dict[str, list[Ruling]] = defaultdict(list)
    joined = (
        select(CommentRow.key, RulingRow)
        .join(RulingRow, col(RulingRow.comment_id) == col(CommentRow.id))
        .where(col(CommentRow.round_id) == id_of(row))
        .order_by(col(RulingRow.id))
    )
    for key, ruled in session.exec(joined):
        found[key].append(
            Ruling(tuple(ruled.pages), ruled.reason, ruled.at, ruled.withdraws, ruled.in_time)
        )
    return {key: tuple(rulings) for key, rulings in found.items()}


def _pick(session: Session, row: RoundRow) -> tuple[int, str] | None:
    """The host's pick that holds: the last one."""
    of_round = select(PickRow).where(PickRow.round_id == id_of(row))
    picked = session.exec(of_round.order_by(col(PickRow.id).desc())).first()
    return None if picked is None else (picked.page, picked.reason)


def _runoff(session: Session, row: RoundRow) -> Runoff | None:
    """The last runoff of the round that was announced, as its newest revision has it."""
    of_round = select(RoundRow).where(
        RoundRow.game_id == row.game_id,
        RoundRow.runoff_of == row.number,
        RoundRow.state == "announced",
    )
    held = session.exec(of_round.order_by(col(RoundRow.number).desc())).first()
    if held is None or held.result is None:
        return None
    of_held = select(RevisionRow.digest).where(RevisionRow.round_id == id_of(held))
    digest = session.exec(of_held.order_by(col(RevisionRow.number).desc())).first()
    return Runoff(
        round=held.number,
        pages=tuple(held.votable or ()),
        winner=held.result["winner"],
        votes=tuple((one["page"], one["votes"]) for one in held.result["tally"]),
        digest=digest or "",
    )
