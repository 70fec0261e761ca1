"""Makes `.venv` in the project's folder and installs sections of the lock file into it.

A note in it says what was installed, so that a second start installs nothing and an environment
that was left half-made is made again. Only one script at a time does this. Python's own library
only.
"""

import importlib.util
import json
import os
import re
import subprocess
import sys
from collections.abc import Iterable
from pathlib import Path

import lockfile
import turns

VENV = lockfile.ROOT / ".venv"
PYTHON = VENV / ("Scripts/python.exe" if os.name == "nt" else "bin/python")
STAMP = VENV / "loopstart.json"
LOG = VENV / "install.log"
#: Beside the environment, which may be cleared.
TURN = lockfile.ROOT / ".venv.lock"
OLDEST = (3, 11)
#: Who needs each section of the lock file.
NEEDED_BY = {"run": "running needs", "test": "the tests need", "audit": "the audit needs"}
#: How pip begins the line after which it changes the environment.
PUTTING_IN_PLACE = "Installing collected packages"

#: pip's words and what they mean for the person in front of the terminal; the first found holds.
PIP_TROUBLE = (
    (r"No space left|Errno 28", "the disk is full", "make room"),
    (
        r"CERTIFICATE_VERIFY_FAILED|SSLError",
        "the connection's certificate is not trusted on this computer",
        "check its clock and the network's proxy",
    ),
    (
        r"DO NOT MATCH THE HASHES",
        "a package that came is not the one that the lock file names",
        "try another network",
    ),
    (
        r"(?i)new connection|connection \w+|getaddrinfo|name resolution|unreachable|timed out|proxy",
        "there is no connection to the package index",
        "connect to the internet",
    ),
    (r"Permission denied|Errno 13", f"{VENV} may not be written to", "make it writable"),
    (
        r"No matching distribution",
        "a package has no ready-made form for this system and this Python",
        "use a common Python of 64 bits, 3.11 or newer",
    ),
)


def version_in_short(version: tuple[object, ...]) -> str:
    """A Python version as the note keeps it, such as "3.11"."""
    return f"{version[0]}.{version[1]}"


def read_stamp() -> dict[str, str]:
    """The note in .venv: its Python, the digest of each section in it.

    "making" is in it while the whole is unfinished, "adding" while only what the tests need is.
    Empty where there is none, as in an environment that somebody made by hand.
    """
    try:
        told = json.loads(STAMP.read_text(encoding="utf-8"))
    except (OSError, ValueError):
        return {}
    return told if isinstance(told, dict) else {}


def is_ready(sections: Iterable[str], python: str | None = None) -> bool:
    """Whether .venv holds these sections as the lock file has them now.

    `python` is the version that .venv is known to run, where it is known.
    """
    stamp = read_stamp()
    if not stamp or "making" in stamp or not _home_stands():
        return False
    if python is not None and stamp.get("python") != python:
        return False
    return all(stamp.get(name) == lockfile.digest(name) for name in sections)


def make(sections: Iterable[str]) -> None:
    """Makes .venv where it does not stand and installs the sections into it, in its turn.

    Raises:
        SystemExit: with one sentence saying what is missing.
    """
    with turns.turn(TURN):
        stamp = read_stamp()  # only now: another script may just have done it all
        found = _version_of_venv()
        if found is None or "making" in stamp or stamp.get("python", found) != found:
            _make_venv()
            stamp, found = {}, version_in_short(sys.version_info)
        stamp["python"] = found
        for name in sections:
            wanted = lockfile.digest(name)
            if stamp.get(name) != wanted:
                _install(name, stamp)
                if stamp.get("adding") == name:
                    del stamp["adding"]
                stamp[name] = wanted
        _write_stamp(stamp)


def _home_stands() -> bool:
    """Whether the Python that .venv was made from is still on this computer."""
    try:
        told = (VENV / "pyvenv.cfg").read_text(encoding="utf-8", errors="replace")
    except OSError:
        return False
    home = re.search(r"^home *= *(.+)$", told, re.MULTILINE)
    return home is not None and Path(home[1].strip()).is_dir() and PYTHON.exists()


def _version_of_venv() -> str | None:
    """The version of the Python in .venv; None where it cannot serve (broken, old, no pip)."""
    if not _home_stands():
        return None
    asked = "import pip, sys; print(*sys.version_info[:2])"
    try:
        told = subprocess.run(
            [PYTHON, "-I", "-c", asked], capture_output=True, text=True, check=False
        )
    except OSError:
        return None
    version = tuple(int(part) for part in told.stdout.split() if part.isdigit())
    if told.returncode or version < OLDEST:
        return None
    return version_in_short(version)


def _make_venv() -> None:
    missing = [name for name in ("venv", "ensurepip") if importlib.util.find_spec(name) is None]
    if missing:
        sys.exit(
            f"This Python cannot make an environment, its module {missing[0]} is missing: install "
            "it (on Debian and Ubuntu: sudo apt install python3-venv) and start again."
        )
    _say(f"Making the environment in {VENV}, only this once.")
    command = [sys.executable, "-I", "-m", "venv", "--clear", str(VENV)]
    told = subprocess.run(command, capture_output=True, text=True, errors="replace", check=False)
    if told.returncode:
        words = (told.stdout + told.stderr).strip().splitlines() or ["no reason was given"]
        sys.exit(
            f"The environment {VENV} could not be made ({words[-1].strip()}): delete that folder "
            "if it is there, see that its parent can be written to, and start again."
        )


def _install(name: str, stamp: dict[str, str]) -> None:
    """Installs one section with pip and says how far it is; pip's own words go into the log.

    `stamp` is what the note says before: noted as unfinished meanwhile, so that a process that is
    stopped in between is seen next time. What the tests need is only added to what stands: another
    script may run in there, so that this alone is then done again.
    """
    if name == "run" or "run" not in stamp:
        _write_stamp(stamp | {"making": name})
    else:
        _write_stamp(
            {each: told for each, told in stamp.items() if each != name} | {"adding": name}
        )
    requirements = VENV / f"{name}.txt"
    requirements.write_text(lockfile.section(name), encoding="utf-8")
    _say(f"Installing what {NEEDED_BY[name]}:")
    status = _pip(requirements)
    if status == 0 and stamp.get("adding") == name:
        # pip passes over what it was stopped in, whose metadata stands already.
        status = _pip(requirements, "--ignore-installed")
    if status:
        words = LOG.read_text(encoding="utf-8")
        if PUTTING_IN_PLACE not in words:
            _write_stamp(stamp)  # pip fetches everything first: nothing was touched
        sys.exit(_why_not(words))


def _pip(requirements: Path, *options: str) -> int:
    """Lets pip install these requirements; its exit status."""
    command = [str(PYTHON), "-I", "-m", "pip", "install", "--no-deps", "--require-hashes"]
    command += ["--only-binary", ":all:", "--no-input", "--disable-pip-version-check"]
    command += ["--retries", "2", "--progress-bar", "off", *options, "-r", str(requirements)]
    total = len(lockfile.PIN.findall(requirements.read_text(encoding="utf-8")))
    with (
        LOG.open("w", encoding="utf-8") as log,
        subprocess.Popen(
            command,
            stdout=subprocess.PIPE,
            stderr=subprocess.STDOUT,
            encoding="utf-8",
            errors="replace",
            env=os.environ | {"PIP_USER": "0"},  # a person's own habit would fail in here
        ) as pip,
    ):
        seen = 0
        for line in pip.stdout or ():
            log.write(line)
            seen += line.startswith(("Collecting", "Requirement already"))
            _tell_progress(line, seen, total)
    return pip.returncode


def _tell_progress(line: str, seen: int, total: int) -> None:
    """Says how far the installing is: each package on a terminal, every tenth elsewhere."""
    if line.startswith("Collecting") and (sys.stderr.isatty() or seen % 10 == 0):
        _say(f"  {seen} of {total}: {line.split()[1]}")
    elif line.startswith(PUTTING_IN_PLACE):
        _say("  putting them in place")


def _why_not(words: str) -> str:
    """The one sentence for what pip said."""
    known = (rest for pattern, *rest in PIP_TROUBLE if re.search(pattern, words))
    what, todo = next(known, ["pip failed", "look at the details"])
    return (
        f"What Loopstart needs could not be installed, {what}: {todo} and start again "
        f"(details: {LOG})."
    )


def _write_stamp(stamp: dict[str, str]) -> None:
    try:
        STAMP.write_text(json.dumps(stamp, indent=1) + "\n", encoding="utf-8")
    except OSError as trouble:
        sys.exit(f"{STAMP} cannot be written ({trouble.strerror}): make {VENV} writable.")


def _say(words: str) -> None:
    print(words, file=sys.stderr, flush=True)
