"""Runs everything that must hold before a change is taken: style, types, tests.

    python3 scripts/test.py                    all of it
    python3 scripts/test.py tests/chart -x     only pytest, with these arguments

With LOOPSTART_TEST_REQUIRE_ALL=1 in the environment a skipped test is a failure.
"""

import environment

environment.enter("run", "test")

import subprocess
import sys
import time

import lockfile

#: The quick ones first, so that a slip shows early.
STEPS = (
    ("style", ("ruff", "check", ".")),
    ("layout", ("ruff", "format", "--check", ".")),
    ("types", ("mypy",)),
    ("tests", ("pytest", "--numprocesses=auto", "--dist=loadfile")),
)


def run(name: str, command: tuple[str, ...]) -> tuple[int, float]:
    """Runs one step; its exit status and how many seconds it took."""
    print(f"== {name}: {' '.join(command)}", flush=True)
    began = time.monotonic()
    told = subprocess.run([sys.executable, "-m", *command], cwd=lockfile.ROOT, check=False)
    return told.returncode, time.monotonic() - began


def main(arguments: list[str]) -> int:
    """Runs all steps and sums up; with arguments only pytest. 1 where a step failed."""
    if arguments:
        return run("tests", ("pytest", *arguments))[0]
    found = {name: run(name, command) for name, command in STEPS}
    print()
    for name, (status, seconds) in found.items():
        print(f"{name:<7} {'failed' if status else 'passed'} in {seconds:.1f} s")
    return 1 if any(status for status, _ in found.values()) else 0


if __name__ == "__main__":
    try:
        sys.exit(main(sys.argv[1:]))
    except KeyboardInterrupt:
        sys.exit(130)
