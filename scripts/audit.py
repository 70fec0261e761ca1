"""Asks whether a package of the lock file has a known vulnerability.

    python3 scripts/audit.py

Ends with 1 where one has, and names it with the versions that mend it. Where nobody can be asked, one
line says so and it ends with 0: a network that is away is no vulnerability.
"""

import environment

environment.enter("run", "test", "audit")

import json
import subprocess
import sys
import tempfile
from pathlib import Path
from typing import Any

import lockfile

#: In seconds, for all packages together.
PATIENCE = 300


def asked(lock: Path, folder: Path) -> list[dict[str, Any]]:
    """What is known of each package of a lock file; empty where nobody could be asked.

    Raises:
        SystemExit: the lock file cannot be read.
    """
    told = folder / "told.json"
    command = [
        *(sys.executable, "-m", "pip_audit", "--requirement", str(lock), "--no-deps"),
        *("--require-hashes", "--disable-pip", "--progress-spinner", "off"),
        *("--format", "json", "--output", str(told)),
    ]
    try:
        ended = subprocess.run(
            command, capture_output=True, text=True, timeout=PATIENCE, check=False
        )
    except subprocess.TimeoutExpired:
        return []
    if told.exists():
        found: list[dict[str, Any]] = json.loads(told.read_text("utf-8"))["dependencies"]
        return [each for each in found if "skip_reason" not in each]
    if "onnection" in ended.stderr or "ServiceError" in ended.stderr:
        return []
    words = ended.stderr.strip().splitlines() or ["no reason was given"]
    sys.exit(f"The audit could not read {lock} ({words[-1]}): make it again with scripts/lock.py.")


def report(known: list[dict[str, Any]], names: set[str]) -> int:
    """Prints what was found; 1 where a package has a vulnerability."""
    if not known:
        print("Audit: nobody could be asked about vulnerabilities from here, so none is known.")
        return 0
    left_out = sorted(names - {each["name"] for each in known})
    if left_out:
        print(f"Audit: nothing is known about {', '.join(left_out)}.")
    bad = [(each, one) for each in known for one in each["vulns"]]
    for each, one in bad:
        mended = ", ".join(one["fix_versions"]) or "none yet"
        print(f"{each['name']} {each['version']}: {one['id']}; mended in: {mended}.")
    print(f"Audit: {len(known)} packages, {len(bad)} known vulnerabilities.")
    return 1 if bad else 0


def main() -> int:
    """Asks about the lock file of this project."""
    lock = lockfile.LOCK
    names = {pin["name"] for pin in lockfile.PIN.finditer(lock.read_text("utf-8"))}
    with tempfile.TemporaryDirectory() as folder:
        return report(asked(lock, Path(folder)), names)


if __name__ == "__main__":
    environment.use_utf8()
    sys.exit(main())
