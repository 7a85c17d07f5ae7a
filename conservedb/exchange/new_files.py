"""A new file is written beside its place and renamed: never half of one, never over another.

What a process leaves behind that was killed while it wrote is swept away by the next that writes
to the same place on the same computer.
"""

from __future__ import annotations

import os
import platform
import re
import shutil
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from pathlib import Path
from zlib import crc32

from conservedb.store.problems import DatabaseProblem

_HERE = f"{crc32(platform.node().encode()):08x}"
"""This computer: in a shared folder the number of a process says nothing to another one."""
_WINDOWS = os.name == "nt"


@contextmanager
def new_file(path: Path) -> Iterator[Path]:
    """Where to write what `path` shall hold; when all went well it bears that name, else is gone.

    Raises:
        DatabaseProblem: the file is there already, or cannot be written.
    """
    _refuse_to_overwrite(path)
    partial = path.with_name(f"{path.name}.{_HERE}-{os.getpid()}.partial")
    try:
        _sweep(path)
        yield partial
        _refuse_to_overwrite(path)  # somebody may have made it meanwhile
        partial.rename(path)
    except OSError as problem:
        raise DatabaseProblem(
            f"{path} cannot be written ({problem.strerror or problem}); choose another place"
        ) from problem
    finally:
        partial.unlink(missing_ok=True)


def _refuse_to_overwrite(path: Path) -> None:
    if path.exists():
        raise DatabaseProblem(f"{path} already exists; name a new file")


def _sweep(path: Path) -> None:
    """Remove what processes of this computer left of `path` that run no more.

    Also the folder beside it in which a workbook is put together (see `workbook`).
    """
    left = re.compile(rf"{re.escape(path.name)}\.{_HERE}-([0-9]+)\.partial(\.[a-z0-9_]{{8}})?")
    for beside in path.parent.iterdir():
        found = left.fullmatch(beside.name)
        if found and not _may_run(int(found[1])):
            with suppress(OSError):  # what cannot be removed does no harm
                _remove(beside, is_folder=bool(found[2]))


def _remove(beside: Path, *, is_folder: bool) -> None:
    if not is_folder:
        beside.unlink()
    elif not _WINDOWS and not beside.is_symlink():
        shutil.rmtree(beside)


def _may_run(process: int) -> bool:
    """Whether another process of this number runs, as far as can be told.

    On Windows nobody is asked, since the signal that only asks elsewhere stops the program there;
    but there a file that a program holds open cannot be removed, and folders are left alone.
    """
    if _WINDOWS or process == os.getpid():  # of our number: that of a process before us
        return False
    try:
        os.kill(process, 0)
    except ProcessLookupError:
        return False
    except (OSError, OverflowError):
        return True  # it runs for another user, or is no number that can be asked for
    return True
