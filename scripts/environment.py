"""Runs a script in the environment that the lock file names, and makes that where it is missing.

A script begins with `import environment` and `environment.enter("run")`, before it imports
anything that is not Python's own. The first time this makes `.venv` in the project's folder,
installs one section of the lock file into it and runs the script again in there; from then on it
only compares the lock file with what was installed.

Python's own library only. Old Pythons read this file too: it must stay readable for them.
"""

import sys

if sys.version_info < (3, 11):  # noqa: UP036 - who comes with less gets a sentence, no traceback
    sys.exit(
        "Loopstart needs Python 3.11 or newer and this is Python {}.{}: install a newer one and "
        "start again with it.".format(*sys.version_info[:2])
    )

import os
import subprocess
from pathlib import Path

import install
import lockfile


def enter(*sections: str) -> None:
    """Returns once this Python has everything in these sections of the lock file.

    Elsewhere it makes the environment and runs the calling script again in it. Where the caller
    was imported, by a test say, it only makes the project importable.

    Raises:
        SystemExit: with one sentence where the environment cannot be made.
    """
    use_utf8()
    if str(lockfile.ROOT) not in sys.path:
        sys.path.insert(0, str(lockfile.ROOT))
    if not _called_as_script() or _suits(sections):
        return
    if _in_venv() or not install.is_ready(sections):
        try:
            install.make(sections)
        except KeyboardInterrupt:
            sys.exit(130)
    _run_again()


def use_utf8() -> None:
    """Prints in UTF-8: comments are in any script, and no terminal's encoding may end a program."""
    for stream in (sys.stdin, sys.stdout, sys.stderr):
        if hasattr(stream, "reconfigure"):
            stream.reconfigure(encoding="utf-8", errors="backslashreplace")


def _called_as_script() -> bool:
    main = getattr(sys.modules["__main__"], "__file__", None)
    return main is not None and Path(main).resolve().parent == lockfile.ROOT / "scripts"


def _in_venv() -> bool:
    return install.VENV.exists() and Path(sys.prefix).resolve() == install.VENV.resolve()


def _suits(sections: tuple[str, ...]) -> bool:
    """Whether this very Python has the sections: in .venv as noted there, elsewhere by looking."""
    if _in_venv() and install.read_stamp():
        return install.is_ready(sections, python=install.version_in_short(sys.version_info))
    return all(lockfile.is_installed(name) for name in sections)


def _run_again() -> None:
    """Runs the same command in .venv; does not return."""
    command = [str(install.PYTHON), *sys.orig_argv[1:]]
    sys.stdout.flush()
    sys.stderr.flush()
    if os.name != "nt":
        os.execv(command[0], command)  # noqa: S606 - no shell is wanted
    # Windows would give the terminal back at once if this process were replaced.
    with subprocess.Popen(command) as script:
        while True:
            try:
                sys.exit(script.wait())
            except KeyboardInterrupt:
                continue
