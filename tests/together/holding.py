"""What must hold of a game after several clients worked on it at once."""

from __future__ import annotations

from collections import Counter
from hashlib import sha256
from typing import Any

from verifying.canonical import read_json
from verifying.report import check

from tests.together.clients import Act, Client, Done
from tests.together.schedules import CLOSES, EXPORTS, Schedule, game_of, own_voters

Json = Any


def ask(client: Client, method: str, path: str, body: Json = None) -> Json:
    """What an act answers that must be granted."""
    done = client.do(Act("", method, path, body))
    assert done.is_kept, done
    return done.answer


def begin(client: Client, slug: str, export: str) -> list[str]:
    """Make a game with an open round, comments, and a draft; the keys of those that need a look."""
    at = f"/api/games/{slug}"
    ask(client, "POST", "/api/games", game_of(slug))
    ask(client, "POST", f"{at}/rounds", {"opens": "2026-03-13T18:00:00Z"})
    ask(client, "POST", f"{at}/rounds/1/open")
    fields = {"copied_at": "2026-03-15T00:00:00Z"}
    first = Act("", "POST", f"{at}/rounds/1/batches", export=export, fields=fields)
    assert client.do(first).is_kept
    ask(client, "POST", f"{at}/rounds", {})
    looks = ask(client, "GET", f"{at}/rounds/1/comments?filter=look")
    return [one["key"] for one in looks]


def check_answers(done: list[Done]) -> None:
    """Each was granted, or refused for the state that it found; none failed, none waited in vain."""
    wrong = [one for one in done if one.status not in (200, 201, 409)]
    assert wrong == []
    granted = Counter(one.act.kind for one in done if one.is_kept)
    for kind in ("announce", "close", "open", "winner"):
        assert granted[kind] <= 1, (kind, granted)
    for kind in ("ruling", "template", "log", *(f"export {n}" for n in range(EXPORTS))):
        refused = [one for one in done if one.act.kind == kind and not one.is_kept]
        assert refused == []


def check_batches(client: Client, plan: Schedule, done: list[Done]) -> None:
    """Each export came in once, whoever handed it in how often; no comment was counted twice."""
    batches = ask(client, "GET", f"{plan.round}/batches")
    assert [one["batch"] for one in batches] == list(range(1, EXPORTS + 2))
    for number in range(EXPORTS):
        answers = [one.answer for one in done if one.act.kind == f"export {number}"]
        assert sum(not one["repeated"] for one in answers) == 1
    comments = ask(client, "GET", f"{plan.round}/comments")
    assert sum(one["new"] for one in batches) == len(comments)
    counting = Counter(one["author"] for one in comments if one["counts"])
    assert set(counting.values()) == {1}
    assert ask(client, "GET", f"{plan.round}/tally")["figures"]["ballots"] == len(counting)


def check_nothing_lost(client: Client, plan: Schedule, done: list[Done]) -> None:
    """Every ruling, template and entry is there once; each field of the draft is as last set."""
    comments = ask(client, "GET", f"{plan.round}/comments")
    kept = [ruling["reason"] for one in comments for ruling in one["rulings"]]
    told = [one.act.body["reason"] for one in done if one.act.kind == "ruling" and one.is_kept]
    assert sorted(kept) == sorted(told)
    log = ask(client, "GET", f"{plan.at}/pace/log")
    pieces = [one.act.body["entries"][0]["piece"] for one in done if one.act.kind == "log"]
    assert sorted(one["piece"] for one in log) == sorted(pieces)
    assert [one["number"] for one in log] == list(range(1, len(pieces) + 1))
    templates = ask(client, "GET", f"{plan.at}/templates")
    own = [one for one in templates if one["text"] == one["occasion"]]
    assert len(own) == sum(one.act.kind == "template" for one in done)
    draft = ask(client, "GET", f"{plan.at}/rounds/2")
    last: dict[str, Any] = {}
    for one in sorted(done, key=lambda one: one.began):
        if one.act.kind.startswith("draft") and one.is_kept:
            last |= one.act.body
    assert {name: draft[name] for name in last} == last


def check_in_or_late(client: Client, plan: Schedule, done: list[Done]) -> None:
    """Each export is in the first result wholly, or wholly late; what came before it is in."""
    record = ask(client, "GET", f"{plan.round}/record?revision=1")
    record = read_json(record) if isinstance(record, str) else record
    assert check(record).fits
    salt = bytes.fromhex(record["salt"])
    voters = {one["voter"] for one in record["comments"]}
    [announced] = [one for one in done if one.act.kind == "announce" and one.is_kept]
    for number in range(EXPORTS):
        names = own_voters(number)
        found = {sha256(salt + name.encode()).hexdigest() in voters for name in names}
        assert len(found) == 1, f"export {number} is in the result in part"
        first = min(
            (one for one in done if one.act.kind == f"export {number}"), key=lambda one: one.ended
        )
        begun = min(one.began for one in done if one.act.kind == f"export {number}")
        if first.ended < announced.began:
            assert found == {True}, f"export {number} was there before, and is not in the result"
        if begun > announced.ended:
            assert found == {False}, f"export {number} came after, and is in the result"


def check_as_if_one_after_the_other(client: Client, plan: Schedule, exports: list[Act]) -> None:
    """The same exports and rulings one after the other, in another game, come to the same."""
    at = f"/api/games/{plan.game}-again"
    begin(client, f"{plan.game}-again", plan.first)
    for act in exports:
        again = Act("", "POST", f"{at}/rounds/1/batches", export=act.export, fields=act.fields)
        assert client.do(again).is_kept
    comments = ask(client, "GET", f"{plan.round}/comments")
    for one in comments:
        for ruling in one["rulings"]:
            body = {"pages": ruling["pages"], "reason": ruling["reason"]}
            ask(client, "POST", f"{at}/rounds/1/comments/{one['key']}/rulings", body)
    ask(client, "POST", f"{at}/rounds/1/close", {"at": CLOSES})
    again = ask(client, "GET", f"{at}/rounds/1/comments")
    assert list(map(_without_times, comments)) == list(map(_without_times, again))


def _without_times(comment: Json) -> Json:
    return comment | {"rulings": [one | {"at": ""} for one in comment["rulings"]]}
