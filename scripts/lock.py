"""Makes requirements.lock from pyproject.toml: exact versions with hashes, for every system.

    python3 scripts/lock.py            keeps the locked versions where they still fit
    python3 scripts/lock.py --upgrade  takes the newest

Needs the program uv, which no user needs. Python's own library only.
"""

import argparse
import os
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

import environment
import lockfile

OLDEST_PYTHON = "3.11"
OLDEST_MACOS = "14.0"
#: Asked for by num2words for its command line alone, and it has no wheel; nothing here uses that.
LEFT_OUT = "docopt"
#: Where every package must have a wheel, so that nobody needs a compiler.
PLATFORMS = (
    "x86_64-unknown-linux-gnu",
    "aarch64-unknown-linux-gnu",
    "aarch64-apple-darwin",
    "x86_64-apple-darwin",
    "x86_64-pc-windows-msvc",
)
HEAD = f"""\
# The exact packages of Loopstart, with the hashes of their files. Made by scripts/lock.py from
# pyproject.toml; not edited by hand.
#
# It is installed with pip's --no-deps: {LEFT_OUT} is left out on purpose. num2words asks for it, but
# only for its command line, which Loopstart does not use, and it comes as source only, while
# everything here must install without running a stranger's build.
"""


def uv(*arguments: str) -> str:
    """What uv prints for these arguments.

    Raises:
        SystemExit: uv is not there or refuses, with its last words.
    """
    program = shutil.which("uv")
    if program is None:
        sys.exit("The program uv is missing: install it, put it on the PATH, and start again.")
    told = subprocess.run(
        [program, *arguments],
        cwd=lockfile.ROOT,
        env=os.environ | {"MACOSX_DEPLOYMENT_TARGET": OLDEST_MACOS},
        capture_output=True,
        text=True,
        check=False,
    )
    if told.returncode:
        sys.exit(f"uv could not make the lock file: {' '.join(told.stderr.split())}")
    return told.stdout


def compiled(earlier: str, folder: Path, *arguments: str) -> str:
    """The packages with hashes; `earlier` are the versions to keep where they still fit."""
    kept, left_out = folder / "kept.txt", folder / "left-out.txt"
    kept.write_text(earlier, encoding="utf-8")
    left_out.write_text(LEFT_OUT + "\n", encoding="utf-8")
    uv(
        "pip", "compile", "pyproject.toml", "--universal", "--generate-hashes", "--quiet",
        "--python-version", OLDEST_PYTHON, "--only-binary", ":all:",
        "--no-header", "--no-annotate", "--no-emit-index-url", "--no-emit-find-links",
        "--excludes", str(left_out), "--output-file", str(kept), *arguments,
    )  # fmt: skip
    return kept.read_text(encoding="utf-8")


def only_new(everything: str, known: str) -> str:
    """The requirements of `everything` whose packages `known` does not name."""
    names = {pin["name"] for pin in lockfile.PIN.finditer(known)}
    starts = [pin.start() for pin in lockfile.PIN.finditer(everything)]
    blocks = [
        everything[start:end]
        for start, end in zip(starts, [*starts[1:], len(everything)], strict=True)
    ]
    return "".join(block for block in blocks if block.split("==")[0] not in names)


def check_wheels(requirements: str, folder: Path) -> None:
    """Ends with a sentence where a package has no wheel for one of the systems."""
    asked = folder / "asked.txt"
    asked.write_text(requirements, encoding="utf-8")
    for platform in PLATFORMS:
        uv(
            "pip", "compile", str(asked), "--no-deps", "--only-binary", ":all:", "--quiet",
            "--python-version", OLDEST_PYTHON, "--python-platform", platform,
        )  # fmt: skip
        print(f"Every package has a wheel for {platform}, Python {OLDEST_PYTHON}.")


def main() -> int:
    """Writes the lock file; the old one stays where anything fails."""
    parser = argparse.ArgumentParser(description="Makes requirements.lock.")
    parser.add_argument("--upgrade", action="store_true", help="take the newest versions")
    options = parser.parse_args()
    earlier = ""
    if lockfile.LOCK.exists() and not options.upgrade:
        earlier = lockfile.LOCK.read_text(encoding="utf-8")
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        everything = compiled(earlier, folder, "--group", "test", "--group", "audit")
        tested = compiled(everything, folder, "--group", "test")
        run = compiled(everything, folder)
        check_wheels(everything, folder)
    test, audit = only_new(tested, run), only_new(everything, tested)
    lockfile.LOCK.write_text(
        f"{HEAD}\n# section run: what running needs\n{run}\n"
        f"# section test: what only the tests need\n{test}\n"
        f"# section audit: what only scripts/audit.py needs besides\n{audit}",
        encoding="utf-8",
        newline="\n",
    )
    counts = [len(lockfile.PIN.findall(part)) for part in (run, test, audit)]
    print(
        f"{lockfile.LOCK} holds {counts[0]} packages for running, {counts[1]} for the tests, "
        f"{counts[2]} for the audit."
    )
    return 0


if __name__ == "__main__":
    environment.use_utf8()
    sys.exit(main())
