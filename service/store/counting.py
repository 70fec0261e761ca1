"""A stored round made into what counting takes, and counted."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from sqlmodel import Session, col, select

from service.ballots.reading import Question
from service.counting.receipt import is_meant
from service.counting.result import Ballot, SetAside
from service.counting.round import ReadComment, RoundInput, RoundRules, Runoff
from service.counting.running import Listed, RunningCount
from service.counting.settle import settle_voter
from service.errors import NotFound, WrongState
from service.store.columns import id_of
from service.store.comments import comment_row, stored_comments
from service.store.deleted import completes
from service.store.draw_sources import draw_rules_of
from service.store.draws import drawn_so_far
from service.store.games import chart_of
from service.store.many import in_round, rows_of
from service.store.plain_voters import count_speaking
from service.store.readings import Asked, Counted, Hosts, read_comment
from service.store.readings_kept import VoteReader, read_by
from service.store.rounds import name_of, rules_of
from service.store.silent import count_silent, list_silent
from service.store.speaking import rulings_of, voters_of
from service.store.tables import GameRow, RoundRow
from service.store.tables_comments import PickRow
from service.store.tables_counting import RevisionRow


def count_stored(
    session: Session, game: GameRow, row: RoundRow, most: int | None = None
) -> Counted:
    """The count of a stored round as it stands; before the closing, of all comments so far.

    It lists at most so many ballots, looks and other comments set aside.

    Raises:
        WrongState: the round is a draft.
    """
    round_input = input_of(session, game, row)
    running = RunningCount(round_input, most)
    asked = asked_in(session, game, row)
    is_kept = row.read_by == read_by(asked.question)
    within = in_round(session, id_of(row))
    if is_kept and most is not None and not asked.complete:
        count_speaking(session, row, asked, within, running)
    else:
        for of_one_voter in voters_of(session, row, asked, is_kept=is_kept):
            running.add(of_one_voter)
    if is_kept:
        count_silent(session, within, asked, running)
        if most != 0:
            list_silent(session, within, asked, running, most)
    result = running.result()
    return Counted(
        round_input,
        result,
        running.change(result),
        tuple(running.listed_ballots()),
        tuple(running.listed_aside()),
    )


def outcome_of(
    session: Session, game: GameRow, row: RoundRow, key: str
) -> Listed[Ballot] | Listed[SetAside]:
    """What becomes of one comment: its voter's comments alone decide that.

    Raises:
        NotFound: the round has no comment of that key.
    """
    voter = comment_row(session, row, key).voter
    of_voter = list(read_comments(session, game, row, "AND c.voter = :voter", voter=voter))
    for heard, outcome in settle_voter(of_voter, input_of(session, game, row)):
        if outcome.key == key:
            if isinstance(outcome, Ballot):
                return Listed(heard.comment, outcome)
            return Listed(heard.comment, outcome)
    raise NotFound("comment", key, f"see the keys in the comments of round {row.number}")


def of_voters(session: Session, game: GameRow, row: RoundRow, who: str) -> RoundInput:
    """The same with the comments of the voters of that author's id or name alone.

    Raises:
        WrongState: the round is a draft.
    """
    asked = "SELECT DISTINCT voter, author FROM comments WHERE round_id = :round"
    meant = {
        voter
        for voter, author in rows_of(session, asked, {"round": id_of(row)})
        if is_meant(who, voter, author)
    }
    given = input_of(session, game, row)
    comments: list[ReadComment] = []
    for voter in sorted(meant):
        comments += read_comments(session, game, row, "AND c.voter = :voter", voter=voter)
    return replace(given, comments=tuple(comments))


def read_comments(
    session: Session, game: GameRow, row: RoundRow, which: str, **given: object
) -> Iterator[ReadComment]:
    """Comments of the round, by the readings that are kept where they are good.

    `which` goes on with the query, such as "AND c.voter = :voter".
    """
    asked, rulings = asked_in(session, game, row), rulings_of(session, row)
    reader = None if row.read_by == read_by(asked.question) else VoteReader(asked.question)
    for one in stored_comments(session, id_of(row), which, **given):
        yield read_comment(one, asked, reader, rulings.get(one.known.key, ()))


def input_of(session: Session, game: GameRow, row: RoundRow) -> RoundInput:
    """All that the round is counted by, but its comments."""
    return RoundInput(
        chart_of(game),
        counting_rules(row),
        (),
        host_pick=_pick(session, row),
        runoff=_runoff(session, row),
        drawn=drawn_so_far(session, row),
        salt=None if row.salt is None else bytes.fromhex(row.salt),
    )


def asked_in(session: Session, game: GameRow, row: RoundRow) -> Asked:
    """How the round's comments are to be heard."""
    complete = tuple(completes(session, row))
    # Who the host is was frozen at the opening; rounds opened before that was so go by the game.
    hosts = game.hosts if row.hosts is None else row.hosts
    return Asked(question_of(game, row), Hosts.of(hosts), row.closes, complete)


def question_of(game: GameRow, row: RoundRow) -> Question:
    """What the round asks; frozen from its opening on."""
    return Question(chart_of(game), row.choices, tuple(row.languages or ()))


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
