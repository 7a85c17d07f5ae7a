"""What commands that write share: opening for writing, the day, and the author."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from typing import TYPE_CHECKING, Any

from conservedb.cli.settings import Settings, tell

if TYPE_CHECKING:
    import datetime


@contextmanager
def opened(settings: Settings, *, mend: bool = True) -> Iterator[tuple[Any, datetime.date]]:
    """The database, and the day that is today for it."""
    from conservedb.store.connect import reading
    from conservedb.store.opening import open_database, today

    engine, upgraded = open_database(settings.path(), mend=mend)
    tell(upgraded)
    try:
        with reading(engine) as connection:
            day = today(connection)
        yield engine, day
    finally:
        engine.dispose()
