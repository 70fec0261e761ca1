"""What is wrong with the database, told in one sentence: by the codes that it gives, not by words.

Sources: SQLite's result codes (sqlite.org, "Result and Error Codes"); PostgreSQL's SQLSTATEs
(manual, appendix A, "PostgreSQL Error Codes").
"""

from __future__ import annotations

import logging
from collections.abc import Mapping

from sqlalchemy.exc import DatabaseError, OperationalError

_log = logging.getLogger("loopstart.database")

BUSY = "the database does not answer or is busy: try again in a moment; nothing was changed."
_FULL = (
    "the disk that holds the database is full or does not work: make room and try again; nothing "
    "was changed."
)
_LOCKED_UP = (
    "the database may not be written to: let this service's user write to it and to its folder; "
    "nothing was changed."
)
_BROKEN = (
    "the database's file cannot be read: stop the service and go back to a backup; nothing was "
    "changed."
)
#: By the beginning of SQLite's name for the error, or by PostgreSQL's SQLSTATE.
_SENTENCES: Mapping[str, str] = {
    "SQLITE_FULL": _FULL,
    "SQLITE_IOERR": _FULL,
    "SQLITE_READONLY": _LOCKED_UP,
    "SQLITE_CANTOPEN": _LOCKED_UP,
    "SQLITE_PERM": _LOCKED_UP,
    "SQLITE_CORRUPT": _BROKEN,
    "SQLITE_NOTADB": _BROKEN,
    "53100": _FULL,  # disk_full
    "58030": _FULL,  # io_error
    "25006": _LOCKED_UP,  # read_only_sql_transaction
    "42501": _LOCKED_UP,  # insufficient_privilege
    "XX001": _BROKEN,  # data_corrupted
    "XX002": _BROKEN,  # index_corrupted
}


def sentence_of(error: DatabaseError) -> str | None:
    """What to tell of an error of the database; None where it is a defect of this service."""
    sentence = _by_code(error)
    if sentence is None and isinstance(error, OperationalError):
        sentence = BUSY
    if sentence is not None:
        _log.warning("%s", " ".join(str(error.orig).split()))
    return sentence


def _by_code(error: DatabaseError) -> str | None:
    orig = error.orig
    code = getattr(orig, "sqlite_errorname", None) or getattr(orig, "sqlstate", None) or ""
    return next((told for begin, told in _SENTENCES.items() if code.startswith(begin)), None)
