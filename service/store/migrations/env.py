"""Run by Alembic: works on the connection it is handed, in the transaction that is open on it."""

from alembic import context
from sqlalchemy import Connection

from service.store.every_table import metadata


def run_on(connection: Connection) -> None:
    context.configure(
        connection=connection,
        target_metadata=metadata,
        # SQLite can change a table only by making it anew.
        render_as_batch=connection.dialect.name == "sqlite",
        transactional_ddl=True,
        compare_server_default=True,
    )
    with context.begin_transaction():
        context.run_migrations()


handed_over = context.config.attributes["connection"]
if not isinstance(handed_over, Connection):
    raise TypeError("migrations run on a connection: call service.store.upgrade")
run_on(handed_over)
