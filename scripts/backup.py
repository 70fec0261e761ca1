"""Makes a backup of all games while they are served, and proves that it can be restored.

    python3 scripts/backup.py --out FOLDER
    python3 scripts/backup.py --check FOLDER/loopstart-backup-...

A backup is a folder with one SQLite file, whatever the database is. It is opened and read to the
end before it gets its name, and every table compared with the original by its digest. While an
answer is not revealed the folder's name and the first line in it say that it holds the answer.
"""

import environment

environment.enter("run")

from datetime import UTC, datetime
from pathlib import Path

from terminal import Options, finish

from service.settings import read_settings
from service.store.backing_up import Backup, back_up, check_backup


def make_options() -> Options:
    """The command line of backup.py."""
    options = Options(
        prog="backup.py",
        description="Makes a backup of all games and proves it.",
        allow_abbrev=False,
    )
    options.add_argument("--out", metavar="FOLDER", default=".", help="where to put it (here)")
    options.add_argument("--check", metavar="BACKUP", help="prove an earlier backup instead")
    return options


def show(made: Backup) -> None:
    """Prints where the backup is and what was proved."""
    rows = sum(one.rows for one in made.tables)
    print(f"Backup: {made.folder}")
    print(f"Opened and read again: {rows:,} rows, every table as it was.")
    if made.sealed:
        print(f"It holds the sealed answer of {', '.join(made.sealed)}: keep it to yourself.")


def say_nothing(table: str, rows: int) -> None:
    """A backup tells nothing while it is made."""
    del table, rows


def main() -> int:
    """Makes a backup, or proves one."""
    given = make_options().read()
    if given.check is not None:
        rows = sum(one.rows for one in check_backup(Path(given.check)))
        print(f"Restored and read: {rows:,} rows, every table as it was.")
        return 0
    show(back_up(read_settings(), Path(given.out), datetime.now(UTC), say_nothing))
    return 0


if __name__ == "__main__":
    finish(main)
