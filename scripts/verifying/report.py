"""What was checked of a record, in words, and what does not fit."""

from __future__ import annotations

import unicodedata
from dataclasses import dataclass
from typing import Any

from verifying.form import FORMAT, moment, troubles_of_form
from verifying.located import digest_of, troubles_of_marks
from verifying.recount import recounted, troubles_of_recount, troubles_of_rules
from verifying.trouble import Trouble


@dataclass(frozen=True)
class Report:
    """What a record is of, what was checked, and what does not fit."""

    heading: str
    checks: tuple[str, ...]
    troubles: tuple[Trouble, ...]

    @property
    def fits(self) -> bool:
        """Whether everything fits."""
        return not self.troubles

    def with_runoff(self, record: dict[str, Any], second: dict[str, Any], other: Report) -> Report:
        """This report with that of the runoff's record, and whether the two belong together."""
        troubles = [
            *self.troubles,
            *(Trouble(f"the runoff's {it.field}", it.why) for it in other.troubles),
        ]
        if not troubles:
            troubles += _of_pair(record, second)
        told = ("The runoff's record was recounted too, and is the one that this one names.",)
        return Report(self.heading, self.checks + told, tuple(troubles))


def check(record: Any, digest: str | None = None) -> Report:
    """Check a record; `digest` is the one that was announced.

    Each check needs what the one before it found to be whole, so the first that fails ends it.

    Raises:
        NotCanonical: the record holds what no record can.
    """
    if not isinstance(record, dict) or record.get("format") != FORMAT:
        heading = "This is no record that this program knows."
        why = f"it should be {FORMAT!r}, as records of this version have it."
        return Report(heading, (), (Trouble("format", why),))
    found = tuple(troubles_of_form(record))
    if found:
        return Report("A record of which not every field is as it must be.", (), found)
    heading = _heading(record)
    found = tuple(troubles_of_marks(record))
    if not found and digest is not None and digest.strip().lower() != record["digest"]:
        why = f"it is {record['digest']}, which is not the announced one."
        found = (Trouble("digest", why),)
    found = found or tuple(troubles_of_rules(record)) or tuple(_of_revision(record))
    found = found or tuple(troubles_of_recount(record))
    return Report(heading, () if found else tuple(_checks(record, announced=digest)), found)


def show(report: Report, most: int) -> None:
    """Print a report; of many troubles the first."""
    print(plain(report.heading))
    print()
    for line in report.checks if report.fits else ():
        print(f"- {plain(line)}")
    for trouble in report.troubles[:most]:
        print(f"DOES NOT FIT  {plain(str(trouble))}")
    if len(report.troubles) > most:
        print(f"and {len(report.troubles) - most} more.")
    print()
    print("Everything fits." if report.fits else "This record does not fit: do not trust it.")


def plain(words: str) -> str:
    """Words of a record as one line: nothing in them may steer the terminal."""
    return "".join(
        "\ufffd" if unicodedata.category(sign) in ("Cc", "Cf", "Zl", "Zp") else sign
        for sign in words
    )


def _of_revision(record: dict[str, Any]) -> list[Trouble]:
    revision, found = record["revision"], []
    # A later one may have none before it that has a digest: records were not always kept.
    if revision["number"] == 1 and revision["before"] is not None:
        found.append(Trouble("revision.before", "the first revision has none before it."))
    if revision["number"] > 1 and not (revision["reason"] or "").strip():
        found.append(Trouble("revision.reason", "a later revision says why it was made."))
    closes = record["rules"]["closes"]
    if closes is None or moment(revision["announced"]) < moment(closes):
        found.append(Trouble("revision.announced", "it was announced before the voting ended."))
    return found


def _of_pair(record: dict[str, Any], second: dict[str, Any]) -> list[Trouble]:
    """Whether the second record is that of the runoff which the first one names."""
    held = record["runoff"]
    if held is None:
        return [Trouble("runoff", "this round had none.")]
    pairs = (
        ("runoff.digest", held["digest"], second["digest"]),
        ("runoff.round", held["round"], second["round"]),
        ("runoff.pages", held["pages"], second["rules"]["votable"]),
        ("runoff.winner", held["winner"], second["result"]["winner"]),
        ("runoff.votes", held["votes"], second["result"]["tally"]),
        ("round", record["round"], second["runoff_of"]),
    )
    return [
        Trouble(field, f"it is {told!r}, but the runoff's record says {other!r}.")
        for field, told, other in pairs
        if told != other
    ]


def _heading(record: dict[str, Any]) -> str:
    revision = record["revision"]
    words = f"Round {record['round']} of {record['game']['name']} ({record['game']['slug']})"
    if record["runoff_of"] is not None:
        words += f", the runoff of round {record['runoff_of']}"
    words += f", revision {revision['number']}, announced {revision['announced']}."
    if revision["reason"]:
        words += f" It was counted again because: {revision['reason']}"
    return words


def _checks(record: dict[str, Any], announced: str | None) -> list[str]:
    """What was checked, once everything fits."""
    _, result = recounted(record)
    same = "is the announced one" if announced else "should be compared with the announced one"
    causes = ", ".join(f"{many} {cause}" for cause, many in sorted(result["set_aside"].items()))
    votes = ", ".join(f"page {one['page']}: {one['votes']}" for one in result["tally"])
    lines = [
        "Form: every field is there, and no other.",
        f"Digest: SHA-256 {digest_of(record)} is that of all the rest; it {same}.",
        f"Settling: {result['ballots']} of {result['comments']} comments count; set aside: {causes or 'none'}.",
        f"Tally: {votes or 'no votes'}.",
        *(_step_in_words(step) for step in result["steps"]),
    ]
    if record["draw"] is not None and record["draw"]["key"] is not None:
        lines.append(
            f"Draw: the key {record['draw']['key']} draws pages {record['draw']['order']}."
        )
        if record["draw"]["value"] is not None:
            lines.append("Draw: the round's own value has the SHA-256 told at the opening.")
    winner = result["winner"]
    lines.append(f"Winner: page {winner}." if winner is not None else "Winner: none.")
    if result["looks"]:
        lines.append(
            f"Not checked: whether the {result['looks']} comments that still needed a look could "
            "have changed the winner."
        )
    lines.append("Not checked: how words were read, since a record holds no words.")
    return lines


def _step_in_words(step: dict[str, Any]) -> str:
    values = ", ".join(f"page {one['page']}: {one['value']}" for one in step["values"])
    looked = f" ({values})" if values else ""
    return f"Tie-break {step['rule']}: of pages {step['tied']} kept {step['kept']}{looked}."
