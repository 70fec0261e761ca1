"""A stored round made into what counting takes, and counted."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace
from itertools import groupby
from typing import Any

from sqlmodel import Session, col, select

from service.ballots.reading import Question
from service.comments.spans import Span
from service.counting.receipt import is_meant
from service.counting.result import Ballot, SetAside
from service.counting.round import ReadComment, RoundInput, RoundRules, Ruling, Runoff
from service.counting.running import Listed, RunningCount
from service.counting.settle import settle_voter
from service.errors import NotFound, WrongState
from service.store.columns import id_of
from service.store.comments import comment_row, comments_by_id, stored_comments
from service.store.deleted import completes
from service.store.draw_sources import draw_rules_of
from service.store.draws import drawn_so_far
from service.store.games import chart_of
from service.store.many import as_time, in_parts, rows_of
from service.store.readings import Asked, Counted, Hosts, Rulings, read_comment
from service.store.readings_kept import VoteReader, read_by, reading_from
from service.store.rounds import name_of, rules_of
from service.store.silent import WRITTEN, count_silent, list_silent
from service.store.tables import GameRow, RoundRow
from service.store.tables_comments import CommentRow, PickRow, RulingRow
from service.store.tables_counting import RevisionRow

#: The comments that decide something or may, each voter's together.
_SPEAKING = """
    AND (c.speaks OR c.id IN (SELECT comment_id FROM rulings)) ORDER BY c.voter, c.id
"""
_OF_ROUND = f"FROM comments c WHERE c.round_id = :round {_SPEAKING}"
_COLUMNS = (
    f"SELECT c.id, c.key, c.voter, c.author, c.author_id, {WRITTEN}, c.reading, c.text, c.older "
)
_SPEAKING_ONLY = f"{_COLUMNS} {_OF_ROUND}"
# The plus keeps SQLite from going through the whole round for a few ids of it.
_BY_ID = f"{_COLUMNS} FROM comments c WHERE +c.round_id = :round AND c.id IN"


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
    for of_one_voter in voters_of(session, row, asked, is_kept=is_kept):
        running.add(of_one_voter)
    if is_kept:
        count_silent(session, id_of(row), asked, round_input.rules, running)
        if most != 0:
            list_silent(session, id_of(row), asked, running, most)
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


def whole_round(session: Session, game: GameRow, row: RoundRow) -> RoundInput:
    """All that the round is counted by, with every comment: for what tells of each of them.

    Raises:
        WrongState: the round is a draft.
    """
    given = input_of(session, game, row)
    return replace(given, comments=tuple(read_comments(session, game, row, "ORDER BY c.id")))


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
    asked, rulings = asked_in(session, game, row), _rulings(session, row)
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


def voters_of(
    session: Session, row: RoundRow, asked: Asked, *, is_kept: bool
) -> Iterator[list[ReadComment]]:
    """The comments of one voter after the other.

    Where the readings that are kept are good, those that decide nothing are left out; else all
    are read anew.
    """
    rulings = _rulings(session, row)
    if is_kept and not asked.complete:
        comments = _as_kept(session, row, asked, rulings)
    else:
        reader = None if is_kept else VoteReader(asked.question)
        which = _SPEAKING if is_kept else "ORDER BY c.voter, c.id"
        comments = (
            read_comment(one, asked, reader, rulings.get(one.known.key, ()))
            for one in stored_comments(session, id_of(row), which)
        )
    for _, of_one_voter in groupby(comments, key=lambda one: one.voter):
        yield list(of_one_voter)


def _as_kept(
    session: Session, row: RoundRow, asked: Asked, rulings: Rulings
) -> Iterator[ReadComment]:
    """The comments that may decide something, by what is kept of them alone.

    Only of those that had other words before is all of it needed, to tell which stood.
    """
    for part in in_parts(rows_of(session, _SPEAKING_ONLY, _of(row))):
        ids = [one[0] for one in part if one[-1]]
        edited = {
            one.known.key: read_comment(one, asked, None, rulings.get(one.known.key, ()))
            for one in comments_by_id(session, id_of(row), ids)
        }
        for one in part:
            yield edited[one[1]] if one[-1] else _as_it_is(one, asked, rulings.get(one[1], ()))


def _as_it_is(one: Any, asked: Asked, ruled: tuple[Ruling, ...]) -> ReadComment:
    """A comment by its row alone: it never had other words, and its reading is good."""
    _, key, voter, author, author_id, earliest, latest, reading, words, _ = one
    first = as_time(earliest)
    written = Span(first, first if latest == earliest else as_time(latest))
    is_host = asked.hosts.are(author_id, author)
    return ReadComment(key, voter, author, written, reading_from(reading), is_host, ruled, words)


def comments_as_kept(
    session: Session,
    row: RoundRow,
    asked: Asked,
    ids: Sequence[int],
    rulings: Mapping[int, tuple[Ruling, ...]],
) -> Iterator[tuple[int, ReadComment]]:
    """The comments of these ids, where the readings that are kept are good; rulings are by id."""
    listed = ", ".join(map(str, ids)) or "0"
    others: list[int] = []
    for one in rows_of(session, f"{_BY_ID} ({listed})", _of(row)):
        if one[-1] or asked.complete or one[7] is None:
            others.append(one[0])
        else:
            yield one[0], _as_it_is(one, asked, rulings.get(one[0], ()))
    for stored in comments_by_id(session, id_of(row), others):
        yield stored.id, read_comment(stored, asked, None, rulings.get(stored.id, ()))


def _of(row: RoundRow) -> dict[str, object]:
    return {"round": id_of(row)}


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


def _rulings(session: Session, row: RoundRow) -> Rulings:
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
