"""Alembic's entry: run on the connection, and in the transaction, that conservedb hands over."""

from __future__ import annotations

from alembic import context

from conservedb.records.every import metadata

connection = context.config.attributes.get("connection")
if connection is None:  # a developer runs `alembic revision --autogenerate`
    from sqlalchemy import create_engine

    connection = create_engine("sqlite:///" + context.get_x_argument(True)["db"]).connect()

context.configure(
    connection=connection,
    target_metadata=metadata,
    transactional_ddl=False,
    include_name=lambda name, kind, _: kind != "table" or name in metadata.tables,
)
context.run_migrations()
