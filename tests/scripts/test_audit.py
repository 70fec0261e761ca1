"""audit.py fails where a package has a known vulnerability, and only there."""

from __future__ import annotations

import json
import subprocess
import tomllib
from pathlib import Path
from typing import Any

import audit
import lockfile
import pytest

from tests.scripts.running import ROOT

BAD = {"name": "oldwool", "version": "1.0", "vulns": [{"id": "X-1", "fix_versions": ["1.1"]}]}
GOOD = {"name": "newwool", "version": "2.0", "vulns": []}
UNASKED = {"name": "hidden", "skip_reason": "not found"}


def told_by(
    monkeypatch: pytest.MonkeyPatch, folder: Path, found: list[Any] | None, stderr: str = ""
) -> list[dict[str, Any]]:
    """What audit.py takes from an auditing program that tells this."""

    def run(command: list[str], **_: object) -> subprocess.CompletedProcess[str]:
        assert command[1:4] == ["-m", "pip_audit", "--requirement"]
        if found is not None:
            told = Path(command[command.index("--output") + 1])
            told.write_text(json.dumps({"dependencies": found}), "utf-8")
        return subprocess.CompletedProcess(command, 1, "", stderr)

    monkeypatch.setattr(subprocess, "run", run)
    return audit.asked(lockfile.LOCK, folder)


def test_a_known_vulnerability_fails_and_is_named(
    monkeypatch: pytest.MonkeyPatch, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    known = told_by(monkeypatch, tmp_path, [BAD, GOOD])
    assert audit.report(known, {"oldwool", "newwool"}) == 1
    assert capsys.readouterr().out.splitlines() == [
        "oldwool 1.0: X-1; mended in: 1.1.",
        "Audit: 2 packages, 1 known vulnerabilities.",
    ]


def test_without_one_all_is_well_and_what_nobody_knows_is_named(
    monkeypatch: pytest.MonkeyPatch, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    known = told_by(monkeypatch, tmp_path, [GOOD, UNASKED])
    assert audit.report(known, {"newwool", "hidden"}) == 0
    assert capsys.readouterr().out.splitlines() == [
        "Audit: nothing is known about hidden.",
        "Audit: 1 packages, 0 known vulnerabilities.",
    ]


@pytest.mark.parametrize(
    ("found", "stderr"),
    [
        ([UNASKED], ""),
        (None, "requests.exceptions.ConnectionError: Failed to resolve"),
        (None, "pip_audit._service.interface.ServiceError: 502"),
    ],
    ids=["nothing known", "no network", "an index that fails"],
)
def test_where_nobody_can_be_asked_one_line_says_so_and_it_goes_on(
    monkeypatch: pytest.MonkeyPatch,
    tmp_path: Path,
    capsys: pytest.CaptureFixture[str],
    found: list[Any] | None,
    stderr: str,
) -> None:
    assert audit.report(told_by(monkeypatch, tmp_path, found, stderr), {"newwool"}) == 0
    [line] = capsys.readouterr().out.splitlines()
    assert line.startswith("Audit: nobody could be asked")


def test_a_lock_file_that_cannot_be_read_is_no_clean_one(
    monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    with pytest.raises(SystemExit, match="could not read"):
        told_by(monkeypatch, tmp_path, None, "ERROR: Invalid requirement")


def test_ci_asks_and_newcomers_need_not_install_what_asks() -> None:
    assert "python3 scripts/audit.py" in (ROOT / ".ci" / "run").read_text("utf-8")
    asked = tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))["dependency-groups"]
    assert any(each.startswith("pip-audit") for each in asked["audit"])
    names = {
        section: {pin["name"] for pin in lockfile.PIN.finditer(lockfile.section(section))}
        for section in ("run", "test", "audit")
    }
    assert "pip-audit" in names["audit"]
    assert not names["audit"] & (names["run"] | names["test"])
