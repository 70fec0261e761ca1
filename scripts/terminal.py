"""What every script does in the terminal: read its options, end with one sentence and a status.

| status | means |
|---|---|
| 0 | done |
| 1 | something failed that is nobody's mistake |
| 2 | the command line or what was handed in cannot be used |
| 3 | the token is missing, wrong or too weak |
| 4 | the server does not answer |
| 130 | stopped with Ctrl-C |
"""

import argparse
import os
import sys
from collections.abc import Callable
from pathlib import Path
from typing import BinaryIO, NoReturn

from service.errors import (
    AccessRefused,
    AlreadyThere,
    BadExport,
    BadInput,
    BadSetting,
    LoopstartError,
    NotFound,
    ProblemAnswered,
    ServerUnreachable,
    WrongState,
)

FAILED, CANNOT_BE_USED, REFUSED, UNREACHABLE, STOPPED = 1, 2, 3, 4, 130


class Options(argparse.ArgumentParser):
    """A command line whose mistakes are told in one sentence."""

    def add_server(self) -> None:
        """The two options that name a running server instead of the service in this process."""
        group = self.add_argument_group("a running server")
        group.add_argument(
            "--server", metavar="URL", help="ask it instead of the games on this computer"
        )
        group.add_argument("--token", metavar="T", help="the token to send to it")

    def read(self) -> argparse.Namespace:
        """The options as they were given.

        A token may begin with a hyphen, which would be taken for an option.
        """
        words = sys.argv[1:]
        for place in range(len(words) - 2, -1, -1):
            if words[place] == "--token":
                words[place : place + 2] = [f"--token={words[place + 1]}"]
        return self.parse_args(words)

    def error(self, message: str) -> NoReturn:
        """Ends the script: status 2."""
        told = message[0].upper() + message[1:]
        self.exit(CANNOT_BE_USED, f"{told}: see --help.\n")


def read_file(name: str) -> bytes:
    """A file's bytes.

    Raises:
        BadExport: there is no such file, or it cannot be read.
    """
    try:
        return Path(name).read_bytes()
    except (OSError, ValueError) as trouble:
        raise _unreadable(name, trouble) from None


def open_file(name: str) -> BinaryIO:
    """A file's bytes, opened to be read.

    Raises:
        BadExport: there is no such file, or it cannot be read.
    """
    try:
        return Path(name).open("rb")
    except (OSError, ValueError) as trouble:
        raise _unreadable(name, trouble) from None


def _unreadable(name: str, trouble: Exception) -> BadExport:
    why = getattr(trouble, "strerror", None) or "its name cannot be one"
    return BadExport(name, f"this file cannot be read ({why})", "check the name and the folder")


def status_of(trouble: LoopstartError) -> int:
    """The exit status for an error."""
    if isinstance(trouble, AccessRefused):
        return REFUSED
    if isinstance(trouble, ServerUnreachable):
        return UNREACHABLE
    if isinstance(trouble, ProblemAnswered):
        return CANNOT_BE_USED if 400 <= trouble.status < 500 else FAILED
    mistakes = (BadInput, BadSetting, NotFound, AlreadyThere, WrongState)
    return CANNOT_BE_USED if isinstance(trouble, mistakes) else FAILED


def finish(main: Callable[[], int]) -> NoReturn:
    """Runs a script to its end and leaves with its status; no error shows a traceback."""
    try:
        status = main()
        sys.stdout.flush()
    except LoopstartError as trouble:
        print(trouble, file=sys.stderr)
        status = status_of(trouble)
    except KeyboardInterrupt:
        status = STOPPED
    except BrokenPipeError:
        # The reader of a pipe has had enough; Python would complain about it once more at the end.
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        status = 0
    sys.exit(status)
