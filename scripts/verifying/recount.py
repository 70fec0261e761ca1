"""A record counted anew, and what of it does not come out the same."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from typing import Any

from verifying.canonical import sha256
from verifying.form import moment
from verifying.lots import key_string, lots_of, order_of, troubles_of_draw
from verifying.pages import Pages
from verifying.settling import Outcome, settled
from verifying.ties import RULES, Tie, steps_of
from verifying.trouble import Trouble, differences

LOOKS = ("cannot tell when", "needs a look")
MOST_CELLS = 10_000


def troubles_of_rules(record: dict[str, Any]) -> Iterator[Trouble]:
    """What in the rules, the chart and the host's acts cannot be, so that nothing can be counted."""
    rules, chart = record["rules"], record["chart"]
    if chart["columns"] * chart["rows"] > MOST_CELLS:
        yield Trouble("chart", f"it has more than {MOST_CELLS} cells.")
        return
    pages = Pages(chart)
    for name in ("votable", "stitched"):
        if rules[name] != sorted(set(rules[name])):
            yield Trouble(f"rules.{name}", "its pages are not each there once, ascending.")
        yield from _off_chart(rules[name], pages, f"rules.{name}")
    for rule in rules["tie_breaks"]:
        if rule not in RULES or rules["tie_breaks"].count(rule) > 1:
            yield Trouble("rules.tie_breaks", f"{rule!r} is no tie-break, or is there twice.")
    if rules["closes"] is not None and moment(rules["closes"]) <= moment(rules["opens"]):
        yield Trouble("rules.closes", "it is not after the opening.")
    if ("draw" in rules["tie_breaks"]) != (record["draw"] is not None):
        yield Trouble("draw", "it is there without a draw among the tie-breaks, or missing.")
    if record["draw"] is not None:
        yield from troubles_of_draw(record["draw"])
    for place, comment in enumerate(record["comments"]):
        yield from _of_comment(comment, rules, pages, f"comments[{place}]")
    yield from _of_runoff(record)


def _of_comment(
    comment: dict[str, Any], rules: dict[str, Any], pages: Pages, path: str
) -> Iterator[Trouble]:
    written = comment["written"]
    if moment(written["latest"]) < moment(written["earliest"]):
        yield Trouble(f"{path}.written", "its span ends before it begins.")
    before = None
    for turn, ruling in enumerate(comment["rulings"]):
        inner = f"{path}.rulings[{turn}]"
        named = ruling["pages"]
        yield from _off_chart(named, pages, f"{inner}.pages")
        if len(set(named)) != len(named) or len(named) > rules["choices"]:
            yield Trouble(f"{inner}.pages", "it names a page twice, or more than may be chosen.")
        if named and ruling["withdraws"]:
            yield Trouble(f"{inner}.withdraws", "it both chooses and takes back.")
        if before is not None and moment(ruling["at"]) < before:
            yield Trouble(f"{inner}.at", "it comes before the ruling that it follows.")
        before = moment(ruling["at"])


def _off_chart(named: list[int], pages: Pages, path: str) -> Iterator[Trouble]:
    off = [page for page in named if page not in pages]
    if off:
        yield Trouble(path, f"page {off[0]} is not on the chart.")


def _of_runoff(record: dict[str, Any]) -> Iterator[Trouble]:
    held = record["runoff"]
    if held is None:
        return
    votes = {one["page"]: one["votes"] for one in held["votes"]}
    most = max(votes.values(), default=0)
    winner = held["winner"]
    if votes if winner is None else winner not in held["pages"] or votes.get(winner, 0) < most:
        yield Trouble("runoff.winner", "it is none of the pages with the most votes in the runoff.")
    if not set(votes) <= set(held["pages"]):
        yield Trouble("runoff.votes", "there are votes for pages that were not in the runoff.")


def recounted(record: dict[str, Any]) -> tuple[list[Outcome], dict[str, Any]]:
    """The outcome of every comment, and the result that follows."""
    outcomes = settled(record)
    ballots = [one for one in outcomes if one.outcome == "counts"]
    votes = Counter(page for one in ballots for page in one.pages)
    tally = sorted(votes.items(), key=lambda counted: (-counted[1], counted[0]))
    leading = sorted(page for page, many in tally if many == tally[0][1])
    digest = _ballots_digest(record, outcomes)
    tie = Tie(leading, record, Pages(record["chart"]), ballots, votes, digest)
    steps = steps_of(tie) if len(leading) > 1 else []
    left = steps[-1]["kept"] if steps else leading
    causes = Counter(one.outcome for one in outcomes if one.outcome != "counts")
    return outcomes, {
        "comments": len(outcomes),
        "ballots": len(ballots),
        "ballots_digest": digest,
        "set_aside": dict(causes),
        "looks": sum(causes[cause] for cause in LOOKS),
        "tally": [{"page": page, "votes": many} for page, many in tally],
        "steps": steps,
        "winner": left[0] if len(left) == 1 else None,
        "undecided": left if len(left) > 1 else [],
    }


def troubles_of_recount(record: dict[str, Any]) -> Iterator[Trouble]:
    """Where counting anew gives something else than the record tells."""
    outcomes, result = recounted(record)
    for place, made in enumerate(outcomes):
        told, path = record["comments"][place], f"comments[{place}]"
        yield from differences(made.outcome, told["outcome"], f"{path}.outcome")
        yield from differences(list(made.pages), told["pages"], f"{path}.pages")
    yield from differences(result, record["result"], "result")
    if record["draw"] is not None:
        yield from _of_draw(record, result)


def _of_draw(record: dict[str, Any], result: dict[str, Any]) -> Iterator[Trouble]:
    """The key and the order of the draw, where it was held."""
    key = order = None
    drawn = [step for step in result["steps"] if step["rule"] == "draw" and len(step["kept"]) == 1]
    lots = lots_of(record, result["ballots_digest"])
    if drawn and lots is not None:
        key = key_string(lots)
        order = order_of(key, drawn[0]["tied"])
    yield from differences(key, record["draw"]["key"], "draw.key")
    yield from differences(order, record["draw"]["order"], "draw.order")


def _ballots_digest(record: dict[str, Any], outcomes: list[Outcome]) -> str:
    """SHA-256 of the ballots: each voter's pseudonym with the pages ascending, all sorted."""
    voters = [comment["voter"] for comment in record["comments"]]
    return sha256(
        sorted(
            [voters[place], sorted(one.pages)]
            for place, one in enumerate(outcomes)
            if one.outcome == "counts"
        )
    )
