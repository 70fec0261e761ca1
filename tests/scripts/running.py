"""Runs the project's scripts as a person does: as processes of their own, on real files."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]

#: What a terminal may say of itself; and a script keeps what it compiles, as it would for a person.
LEFT_OUT = {"COLUMNS", "PYTHONDONTWRITEBYTECODE"}


def run_script(
    name: str,
    *arguments: str | Path,
    given: bytes = b"",
    cwd: Path | None = None,
    environment: dict[str, str] | None = None,
) -> subprocess.CompletedProcess[str]:
    """Runs scripts/`name` with these arguments and `given` on standard input."""
    return run_python(
        ROOT / "scripts" / name, *arguments, given=given, cwd=cwd, environment=environment
    )


def run_python(
    *arguments: str | Path,
    given: bytes = b"",
    cwd: Path | None = None,
    environment: dict[str, str] | None = None,
) -> subprocess.CompletedProcess[str]:
    """Runs this very Python with these arguments."""
    inherited = {name: value for name, value in os.environ.items() if name not in LEFT_OUT}
    told = subprocess.run(  # noqa: S603 - the project's own scripts
        [sys.executable, *map(str, arguments)],
        input=given,
        capture_output=True,
        cwd=cwd,
        env=inherited | (environment or {}),
        timeout=240,
        check=False,
    )
    return subprocess.CompletedProcess(
        told.args, told.returncode, told.stdout.decode(), told.stderr.decode()
    )


def sentences(words: str) -> list[str]:
    """The lines of what was said, none empty; a clear refusal is exactly one."""
    return [line for line in words.splitlines() if line.strip()]
