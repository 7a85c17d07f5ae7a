"""The end of the change log as this computer last saw it, kept outside the database.

A log that was cut off or written anew is whole in itself; only somebody who remembers its end can
tell. Paper does that best: the end is printed on whatever leaves the house.
"""

from __future__ import annotations

import json
import os
from collections.abc import Callable
from pathlib import Path

from conservedb.store.log import Head

STATE = "CONSERVEDB_STATE"


def state_folder() -> Path:
    """Where this account keeps what the program remembers between runs."""
    named = os.environ.get(STATE)
    if named:
        return Path(named)
    from platformdirs import user_state_path

    return user_state_path("conservedb")


def remember(identity: str, head: Head, still_there: Callable[[Head], bool]) -> None:
    """Keep the end of the log of a database; a folder that cannot be written is no obstacle.

    An end that is no longer in the chain is kept: it is the proof that the log was cut off.
    """
    known = remembered(identity)
    if known is not None and not still_there(known):
        return
    path = _path(identity)
    try:
        path.parent.mkdir(parents=True, exist_ok=True)
        partial = path.with_name(f"{path.name}.{os.getpid()}.partial")
        partial.write_text(json.dumps([head.number, head.hash]), encoding="utf-8")
        partial.replace(path)
    except OSError:
        return


def forget(identity: str) -> None:
    """Let go of the end that was seen: somebody has looked, and takes the file as it is."""
    _path(identity).unlink(missing_ok=True)


def remembered(identity: str) -> Head | None:
    """The end of the log as it was last seen here; None where it never was."""
    try:
        number, text = json.loads(_path(identity).read_text(encoding="utf-8"))
        return Head(int(number), str(text))
    except (OSError, ValueError, TypeError):
        return None


def _path(identity: str) -> Path:
    safe = "".join(c for c in identity if c.isalnum() or c == "-")
    return state_folder() / "heads" / f"{safe}.json"
