"""What commands that write share: opening for writing, the day, and the author."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from typing import TYPE_CHECKING, Any

from conservedb.cli.settings import Settings, tell

if TYPE_CHECKING:
    import datetime


@contextmanager
def opened(
    settings: Settings, *, mend: bool = True, write: bool = True
) -> Iterator[tuple[Any, datetime.date]]:
    """The database, and the day that is today for it.

    Args:
        mend: make triggers anew that another program has changed or taken away.
        write: refuse at once where the database may only be read.
    """
    from conservedb.store.connect import ensure_writable, reading
    from conservedb.store.opening import open_database, today

    engine, upgraded = open_database(settings.path(), mend=mend)
    tell(upgraded)
    try:
        if write:
            ensure_writable(engine)
        with reading(engine) as connection:
            day = today(connection)
        yield engine, day
    finally:
        engine.dispose()
