"""Bringing a database to the tables of this version: an explicit step, never done by serving."""

from __future__ import annotations

from pathlib import Path

from alembic import command
from alembic.config import Config
from alembic.runtime.migration import MigrationContext
from alembic.script import ScriptDirectory
from sqlalchemy import Connection, Engine, text
from sqlalchemy.exc import DatabaseError

from service.errors import BadSetting
from service.settings import Settings
from service.store.engine import make_engine

_MIGRATIONS = Path(__file__).with_name("migrations")
# Any number will do, so long as every upgrade takes the same one.
_UPGRADE_LOCK = 7_205_311


def alembic_config(connection: Connection | None = None) -> Config:
    """Alembic's configuration, made here so that it does not depend on where one stands."""
    config = Config()
    # A per cent sign in the path would be taken for a placeholder.
    config.set_main_option("script_location", str(_MIGRATIONS).replace("%", "%%"))
    config.attributes["connection"] = connection
    return config


def upgrade(settings: Settings) -> None:
    """Bring the settings' database to the newest tables, all or nothing.

    Makes the data folder where the database is a file in it.

    Raises:
        BadSetting: the database cannot be opened, or a newer version of the service made it.
    """
    if settings.database.get_backend_name() == "sqlite":
        make_folder(settings)
    engine = make_engine(settings)
    try:
        upgrade_engine(engine)
    except DatabaseError as error:
        raise cannot_be_opened(settings, error) from error
    finally:
        engine.dispose()


def cannot_be_opened(settings: Settings, error: DatabaseError) -> BadSetting:
    """What a database that does not answer, is none or may not be written to is told as."""
    reason = str(error.orig).strip().splitlines()[0]
    return BadSetting(
        "DATABASE_URL",
        f"the database {settings.database_shown} cannot be opened ({reason})",
        "check that it runs, that it exists and that this user may write to it",
    )


def upgrade_engine(engine: Engine) -> None:
    """Bring the engine's database to the newest tables, all or nothing.

    Raises:
        BadSetting: a newer version of the service made the database.
    """
    with engine.begin() as connection:
        upgrade_on(connection)


def upgrade_on(connection: Connection) -> None:
    """The same within the transaction that is open on a connection.

    Raises:
        BadSetting: a newer version of the service made the database.
    """
    if connection.dialect.name == "postgresql":
        # Two services that start at once upgrade one after the other.
        connection.execute(text("SELECT pg_advisory_xact_lock(:lock)"), {"lock": _UPGRADE_LOCK})
    check_not_newer(connection)
    command.upgrade(alembic_config(connection), "head")


def check_not_newer(connection: Connection) -> None:
    """Whether this version knows the database's tables.

    Raises:
        BadSetting: a newer version of the service made the database.
    """
    found = revision_of(connection)
    steps = ScriptDirectory.from_config(alembic_config()).walk_revisions()
    if found is not None and found not in {step.revision for step in steps}:
        raise BadSetting(
            "DATABASE_URL",
            f"a newer version of this service made the database (its tables are {found})",
            "start that version, or name another database",
        )


def revision_of(connection: Connection) -> str | None:
    """The migration that the database was brought to last; None where it has no tables."""
    return MigrationContext.configure(connection).get_current_revision()


def newest_revision() -> str | None:
    """The migration that makes the newest tables."""
    return ScriptDirectory.from_config(alembic_config()).get_current_head()


def is_upgraded(engine: Engine) -> bool:
    """Whether the database has the newest tables."""
    with engine.connect() as connection:
        return revision_of(connection) == newest_revision()


def make_folder(settings: Settings) -> None:
    """Make the folder of the SQLite file, for its owner alone.

    Raises:
        BadSetting: the settings name no file, or its folder cannot be made.
    """
    file = settings.database.database
    if not file or file == ":memory:":
        raise BadSetting(
            "DATABASE_URL",
            "it names no file for SQLite",
            "give one, such as sqlite:///games.sqlite3",
        )
    folder = Path(file).parent
    try:
        folder.mkdir(mode=0o700, parents=True, exist_ok=True)
    except OSError as error:
        raise BadSetting(
            "DATABASE_URL",
            f"the folder {folder} cannot be made ({error.strerror})",
            "name one that this user may write to",
        ) from error
