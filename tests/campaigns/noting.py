"""An editor who adds tags to the note of a place, and thinks between reading and saving.

    python -m tests.campaigns.noting DATABASE NAME TAGS

Prints "kept TAG" or "clash TAG" for each.
"""

from __future__ import annotations

import random
import sys
import time
from pathlib import Path

from conservedb.exchange.amending import amend, shown
from conservedb.store.connect import reading
from conservedb.store.log import Author
from conservedb.store.opening import open_database
from tests.campaigns.saving import OBJECT, PLACES
from tests.conftest import TODAY

THINKING = 0.15


def _note(path: Path, name: str, tags: int) -> None:
    engine, _ = open_database(path)
    chance = random.Random(name)
    author = Author(name, "amended", "another tag")
    for number in range(tags):
        with reading(engine) as connection:
            seen = shown(connection, "places", OBJECT, PLACES[0])
        time.sleep(chance.uniform(0, THINKING))
        tag = f"{name}-{number}"
        cells = {"note": f"{seen.cells['note']} {tag}".strip()}
        done = amend(engine, "places", OBJECT, PLACES[0], cells, author, TODAY, seen)
        assert not done.faults
        print("clash" if done.clashes else "kept", tag, flush=True)


if __name__ == "__main__":
    _note(Path(sys.argv[1]), sys.argv[2], int(sys.argv[3]))
