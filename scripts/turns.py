"""One script at a time makes the environment; another that needs it waits for its turn.

The system itself keeps the lock and gives it back when its holder ends, however it ends: no lock
is ever left behind. Python's own library only.
"""

import os
import sys
import time
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from pathlib import Path

if sys.platform == "win32":
    import msvcrt
else:
    import fcntl

_SECONDS_BETWEEN_TRIES = 0.2


@contextmanager
def turn(lock: Path) -> Iterator[None]:
    """Holds the lock on this file, which is made where it is missing and stays; waits for it.

    Who has to wait is told so, once.

    Raises:
        SystemExit: with one sentence where the file cannot be written.
    """
    try:
        held = os.open(lock, os.O_RDWR | os.O_CREAT, 0o666)
    except OSError as trouble:
        sys.exit(f"{lock} cannot be written ({trouble.strerror}): make {lock.parent} writable.")
    try:
        told = False
        while not _taken(held):
            if not told:
                print(
                    "Another script is setting up the environment: waiting until it is done.",
                    file=sys.stderr,
                    flush=True,
                )
            told = True
            time.sleep(_SECONDS_BETWEEN_TRIES)
        yield
    finally:
        _give_back(held)


def _give_back(held: int) -> None:
    if sys.platform == "win32":
        with suppress(OSError):  # never taken
            os.lseek(held, 0, os.SEEK_SET)
            msvcrt.locking(held, msvcrt.LK_UNLCK, 1)
    os.close(held)


def _taken(held: int) -> bool:
    """Whether this process has the lock now."""
    try:
        if sys.platform == "win32":
            os.lseek(held, 0, os.SEEK_SET)
            msvcrt.locking(held, msvcrt.LK_NBLCK, 1)
        else:
            fcntl.flock(held, fcntl.LOCK_EX | fcntl.LOCK_NB)
    except (BlockingIOError, PermissionError):
        return False
    except OSError:
        return True  # a folder on a network that knows no locks: better set up than never
    return True
