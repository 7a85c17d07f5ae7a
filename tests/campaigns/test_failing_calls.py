"""Every call to the disk fails once, and every one for good: nothing damaged, nothing by half.

The statements of one real step are sent through `apsw` over a disk that fails its first call, then
its second, and so on, until one run passes (see `test_power_cuts.py` for the way they come there).
Afterwards the step is there as a whole or not at all. Where a failure was reported although the
step is there, the program looks again before it says so (`tests/store/test_writing.py`).
"""

from __future__ import annotations

import random
import shutil
from contextlib import suppress
from pathlib import Path

import apsw
import pytest

from conservedb.store.connect import PRAGMAS, connect_sqlite, raw_of, reading
from conservedb.store.log import sets
from conservedb.store.opening import open_database
from conservedb.store.verify import verify
from tests.campaigns.failing_disk import FailingDisk
from tests.campaigns.saving import department, half_recorded, record_step
from tests.campaigns.traced import statements_of

pytestmark = pytest.mark.campaign


def sent(
    path: Path, disk: FailingDisk, statements: list[str], fails: int = 0, *, for_good: bool = False
) -> bool:
    """Send a step over the disk, which fails that call of it; whether it was acknowledged."""
    disk.start()
    database = apsw.Connection(str(path), vfs=disk.name, flags=apsw.SQLITE_OPEN_READWRITE)
    for pragma in PRAGMAS:
        database.execute(pragma).fetchall()
    database.execute("SELECT count(*) FROM change_set").fetchall()  # the schema is read by now
    disk.start(fails, for_good=for_good)
    try:
        for statement in statements:
            database.execute(statement).fetchall()
    except apsw.Error:
        return False
    else:
        return True
    finally:
        with suppress(apsw.Error):
            database.close(True)


@pytest.mark.parametrize("for_good", [False, True], ids=["once", "for good"])
def test_each_call_fails(tmp_path: Path, *, for_good: bool) -> None:
    start, path = tmp_path / "start.db", tmp_path / "failing.db"
    department(start).dispose()
    shutil.copy(start, path)
    engine, _ = open_database(path)
    with reading(engine) as connection:
        before = len(list(sets(raw_of(connection))))
    statements = statements_of(engine, lambda: record_step(engine, "step", 3))
    engine.dispose()
    shutil.copy(start, path)
    disk = FailingDisk(f"failing {random.random()}")
    assert sent(path, disk, statements)
    calls = disk.calls
    though_there = 0
    for fails in range(1, calls + 1):
        shutil.copy(start, path)
        acknowledged = sent(path, disk, statements, fails, for_good=for_good)
        raw = connect_sqlite(path)
        there = len(list(sets(raw))) - before
        assert there in (0, 1)
        assert there or not acknowledged, f"call {fails}: an acknowledged step is lost"
        assert not any(half_recorded(raw)), f"call {fails}"
        assert list(verify(raw)) == [], f"call {fails}"
        raw.close()
        though_there += there and not acknowledged
        path.with_name(f"{path.name}-journal").unlink(missing_ok=True)
    disk.unregister()
    print(
        f"{calls} calls failed {'for good' if for_good else 'once'}: none left damage or half a"
        f" step; after {though_there} the step was there although a failure was reported"
    )
    assert calls > 20
