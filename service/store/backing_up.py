"""Backups: one moment of a database as a folder that can be used as a data folder, and proved.

A backup is a SQLite file whatever the database is, since a file can be opened and read to the end
right away: that proves that it restores. To PostgreSQL it goes back as any SQLite file does.
"""

from __future__ import annotations

import json
import shutil
import sqlite3
import tempfile
from collections.abc import Iterator
from contextlib import closing, contextmanager
from dataclasses import asdict, dataclass
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

from sqlalchemy import Connection
from sqlalchemy.exc import DatabaseError
from sqlmodel import Session, col, select

from service.errors import AlreadyThere, BadInput, LoopstartError
from service.settings import DATABASE_FILE, Settings
from service.store.database import Database
from service.store.digests import TableDigest, check_same, digests_of
from service.store.engine import make_engine
from service.store.moving import Tell, copy_all, readable
from service.store.tables import AnswerRow, GameRow
from service.store.upgrade import newest_revision, upgrade

#: Stands in the name of what holds an answer that is not revealed.
MARK = "holds-the-answer"
READ_ME, DIGESTS = "READ-ME-FIRST.txt", "digests.json"
_TODO = "make room there, or name another folder"


@dataclass(frozen=True, slots=True)
class Backup:
    """A backup that was proved: its folder, what is in it, the games whose answer it holds."""

    folder: Path
    tables: tuple[TableDigest, ...]
    sealed: tuple[str, ...]


def back_up(settings: Settings, into: Path, now: datetime, tell: Tell) -> Backup:
    """Write a backup into a new folder within `into`, whole or not at all; others may go on.

    Raises:
        BadSetting: the database is not of this version, or cannot be opened.
        AlreadyThere: there is a backup of that second.
        BadInput: it cannot be written there.
        CopyDiffers: the copy is not what was copied.
    """
    database = Database(settings)
    try:
        with readable(), database.reading() as session:
            connection = session.connection()
            tables, sealed = digests_of(connection), _sealed_games(session)
            folder = into / _name_of(now, sealed)
            with _new_folder(folder) as part:
                _copy(connection, part / DATABASE_FILE, tell)
                _tidy(part / DATABASE_FILE)
                check_same(tables, _digests_in(part))
                _describe(part, tables, sealed, now)
    finally:
        database.dispose()
    return Backup(folder, tables, sealed)


def check_backup(folder: Path) -> tuple[TableDigest, ...]:
    """Restore a backup into a folder that is gone afterwards, and read all of it.

    Raises:
        BadInput: this is no backup.
        BadSetting: its file cannot be opened, or is of a newer version.
        CopyDiffers: a table is not what it was when the backup was made.
    """
    told = _told_in(folder)
    with tempfile.TemporaryDirectory(prefix="loopstart-restored-") as name:
        restored = Path(name)
        shutil.copy(folder / DATABASE_FILE, restored)
        upgrade(Settings(data_folder=restored, database_url=""))
        _check_whole(restored / DATABASE_FILE)
        found = _digests_in(restored)
    if told["tables_of"] == newest_revision():
        check_same(tuple(TableDigest(**one) for one in told["tables"]), found)
    return found


def _sealed_games(session: Session) -> tuple[str, ...]:
    """The games whose answer is kept and not revealed."""
    joined = select(GameRow.slug).join(AnswerRow).where(col(GameRow.revealed).is_(None))
    return tuple(session.exec(joined.order_by(col(GameRow.slug))))


def _name_of(now: datetime, sealed: tuple[str, ...]) -> str:
    at = now.astimezone(UTC).strftime("%Y-%m-%dT%H%M%SZ")
    return f"loopstart-backup-{at}" + (f"-{MARK}" if sealed else "")


@contextmanager
def _new_folder(folder: Path) -> Iterator[Path]:
    """A folder under another name, which it gets only once all is in it."""
    part = folder.with_name(f".{folder.name}.part")
    if folder.exists():
        raise AlreadyThere("backup", str(folder), "wait a second, or name another folder")
    try:
        part.mkdir(mode=0o700, parents=True)
        yield part
        part.rename(folder)
    except LoopstartError:
        raise
    except (OSError, sqlite3.Error, DatabaseError) as error:
        why = getattr(error, "strerror", None) or str(getattr(error, "orig", error))
        raise BadInput(f"no backup can be written to {folder.parent} ({why})", _TODO) from error
    finally:
        shutil.rmtree(part, ignore_errors=True)


def _copy(source: Connection, file: Path, tell: Tell) -> None:
    file.touch(mode=0o600)
    if source.dialect.name == "sqlite":
        driver: Any = source.connection.driver_connection
        with closing(sqlite3.connect(file)) as copy:
            # All at once: it copies the moment that this transaction sees, while others write.
            driver.backup(copy)
        return
    engine = make_engine(Settings(data_folder=file.parent, database_url=""))
    try:
        with engine.begin() as connection:
            copy_all(source, connection, tell)
    finally:
        engine.dispose()


def _tidy(file: Path) -> None:
    """One file and nothing beside it, without what was deleted, which SQLite would leave in it."""
    with closing(sqlite3.connect(file, isolation_level=None)) as copy:
        copy.execute("PRAGMA journal_mode = DELETE").close()
        copy.execute("VACUUM").close()
    _check_whole(file)


def _check_whole(file: Path) -> None:
    with closing(sqlite3.connect(file)) as copy:
        try:
            found = [row[0] for row in copy.execute("PRAGMA integrity_check")]
            found += [f"table {row[0]}" for row in copy.execute("PRAGMA foreign_key_check")]
        except sqlite3.DatabaseError as error:
            found = [str(error)]
    if found != ["ok"]:
        raise BadInput(f"the copy {file.name} is broken ({found[0]})", "check the disk, copy again")


def _digests_in(folder: Path) -> tuple[TableDigest, ...]:
    """The digests of the backup in a folder, read as the service reads its own data folder."""
    database = Database(Settings(data_folder=folder, database_url=""))
    try:
        with database.reading() as session:
            return digests_of(session.connection())
    finally:
        database.dispose()
        with closing(sqlite3.connect(folder / DATABASE_FILE)) as copy:
            copy.execute("PRAGMA journal_mode = DELETE").close()


def _describe(
    part: Path, tables: tuple[TableDigest, ...], sealed: tuple[str, ...], now: datetime
) -> None:
    first = "This backup holds comments with their authors' names: keep it to yourself."
    if sealed:
        first = (
            f"This backup holds the sealed answer of {', '.join(sealed)}, and comments with their "
            "authors' names: keep it to yourself."
        )
    lines = [
        first,
        "",
        f"Made by Loopstart on {now.astimezone(UTC):%Y-%m-%d %H:%M:%S} UTC.",
        f"To use it, put {DATABASE_FILE} into Loopstart's data folder while Loopstart is stopped,",
        "or copy it into an empty PostgreSQL database with scripts/move.py.",
        "What viewers had forgotten after it was made is still in it: delete it when it is not",
        "needed any more.",
    ]
    (part / READ_ME).write_text("\n".join(lines) + "\n", "utf-8")
    told = {"tables_of": newest_revision(), "tables": [asdict(one) for one in tables]}
    (part / DIGESTS).write_text(json.dumps(told, indent=1) + "\n", "utf-8")


def _told_in(folder: Path) -> dict[str, Any]:
    try:
        told = json.loads((folder / DIGESTS).read_text("utf-8"))
        return {"tables_of": told["tables_of"], "tables": list(told["tables"])}
    except (OSError, ValueError, KeyError, TypeError) as error:
        raise BadInput(
            f"{folder} is no backup", f"name a folder that has {DIGESTS} in it"
        ) from error
