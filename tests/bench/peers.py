"""The same question on the same data from a cold shell: this program, and what else there is.

"In which objects may layers of a class, or of one below it, have lain on a day, and how many?"
Everybody else gets one flat CSV file with a row for each layer, exported beforehand and joined
already. Run as a script it prints a table, with ratios to the `sqlite3` shell:

    python -m tests.bench.peers 100000
"""

from __future__ import annotations

import csv
import importlib.util
import json
import os
import shutil
import statistics
import subprocess
import sys
import time
from collections.abc import Callable
from pathlib import Path
from typing import NamedTuple

import conservedb
from conservedb.dates import from_iso
from conservedb.store.connect import connect_sqlite
from tests.bench.fill import filled

CLASS, DAY = "class1", "1990-06-30"
"""A third of all classes lie below this one."""
NUMBER = from_iso(DAY)
ROUNDS = 5
Counts = dict[str, int]

BELOW = f"""WITH RECURSIVE below(key) AS (
  SELECT '{CLASS}' UNION ALL SELECT c.key FROM {{classes}} c JOIN below b ON c.parent = b.key)
"""
FLAT = f"""{BELOW}SELECT object, count(*) AS layers FROM {{layers}} WHERE class IN (SELECT key FROM
below) AND came_first_number <= {NUMBER} AND {NUMBER} < gone_last_number GROUP BY object"""
TABLES = f"""WITH RECURSIVE below(id) AS (SELECT id FROM material_class WHERE key = '{CLASS}'
  UNION ALL SELECT c.id FROM material_class c JOIN below b ON c.parent_id = b.id)
SELECT o.number AS object, count(*) AS layers FROM layer l JOIN object o ON o.id = l.object_id
WHERE l.id IN (
  SELECT id FROM layer WHERE material_id IN
    (SELECT id FROM material WHERE class_id IN (SELECT id FROM below))
  UNION ALL SELECT id FROM layer WHERE material_class_id IN (SELECT id FROM below))
AND l.came_from <= {NUMBER} AND {NUMBER} < l.gone_to GROUP BY o.number"""
PANDAS = f"""
import json, pandas
classes = pandas.read_csv({{classes!r}})
below, new = set(), {{{{'{CLASS}'}}}}
while new:
    below |= new
    new = set(classes.key[classes.parent.isin(new)]) - below
rows = pandas.read_csv({{layers!r}})
rows = rows[rows['class'].isin(below) & (rows.came_first_number <= {NUMBER})
            & (rows.gone_last_number > {NUMBER})]
print(json.dumps(rows.groupby('object').size().to_dict()))
"""
DUCKDB = """
import duckdb, json
print(json.dumps(dict(duckdb.sql({sql!r}).fetchall())))
"""
EXPORTED = (
    *("object", "place", "ref", "intervention", "material", "material_name", "class", "role"),
    *("stack", "side", "zone", "coverage", "identified", "came_first_day", "came_first_number"),
    *("came_last_day", "came_last_number", "reduced_first_number", "reduced_last_number"),
    *("gone_first_number", "gone_last_day", "gone_last_number", "source", "note"),
)


class Peer(NamedTuple):
    """A way to ask: its name, what is run, and how its answer is read."""

    name: str
    command: tuple[str, ...]
    read: Callable[[str], Counts]


def exported(database: Path) -> tuple[Path, Path]:
    """Flat CSV files of the layers and of the tree of classes, beside the database."""
    raw = connect_sqlite(database)
    files = []
    for view, columns in (("v_layers", EXPORTED), ("v_classes", ("key", "parent"))):
        path = database.with_suffix(f".{view}.csv")
        files.append(path)
        if path.exists():
            continue
        rows = raw.execute(f"SELECT {', '.join(columns)} FROM {view}")
        with path.open("w", newline="", encoding="utf-8") as file:
            writer = csv.writer(file)
            writer.writerow(columns)
            writer.writerows(rows)
    raw.close()
    return files[0], files[1]


def _of_shell(out: str) -> Counts:
    return {number: int(count) for number, count in csv.reader(out.splitlines())}


def _of_sql(out: str) -> Counts:
    return dict(json.loads(out)["rows"])


def peers(database: Path, layers: Path, classes: Path) -> list[Peer]:
    """Everybody who is to be asked, the floor first."""
    views = FLAT.format(classes="v_classes", layers="v_layers")
    files = FLAT.format(classes=f"read_csv('{classes}')", layers=f"read_csv('{layers}')")
    ours = (sys.executable, "-m", "conservedb", "--db", str(database), "sql", "--json")
    shell = ("sqlite3", "-readonly", "-csv", str(database))
    pandas = PANDAS.format(classes=str(classes), layers=str(layers))
    return [
        Peer("sqlite3 shell, tables", (*shell, TABLES), _of_shell),
        Peer("sqlite3 shell, views", (*shell, views), _of_shell),
        Peer("conservedb sql, tables", (*ours, "--limit", "1000000", TABLES), _of_sql),
        Peer("conservedb sql, views", (*ours, "--limit", "1000000", views), _of_sql),
        Peer("DuckDB on CSV", (sys.executable, "-c", DUCKDB.format(sql=files)), json.loads),
        Peer("pandas on CSV", (sys.executable, "-c", pandas), json.loads),
    ]


def missing(peer: Peer) -> str:
    """What a peer needs and this computer does not have; "" where it has all."""
    for word, name in (("DuckDB", "duckdb"), ("pandas", "pandas")):
        if peer.name.startswith(word) and importlib.util.find_spec(name) is None:
            return f"{name} is not installed"
    return "" if shutil.which(peer.command[0]) else f"{peer.command[0]} is not installed"


def timed(command: tuple[str, ...]) -> tuple[float, str]:
    """Seconds from the shell to the end of the whole answer, and the answer."""
    here = str(Path(conservedb.__file__).parent.parent)
    started = time.perf_counter()
    done = subprocess.run(
        command, capture_output=True, text=True, check=True, env={**os.environ, "PYTHONPATH": here}
    )
    return time.perf_counter() - started, done.stdout


def compare(layers: int) -> None:
    """Ask everybody and print the table."""
    database, found = filled(layers)
    asked = peers(database, *exported(database))
    print(f"{found} layers; {CLASS} on {DAY}; median of {ROUNDS} cold processes, files in memory")
    print(f"{'':28}{'ms':>8}{'x shell':>9}  answer")
    floor, right = 0.0, Counts()
    for peer in asked:
        absent = missing(peer)
        if absent:
            print(f"{peer.name:28}{'':>17}  {absent}")
            continue
        runs = [timed(peer.command) for _ in range(ROUNDS)]
        seconds = statistics.median(taken for taken, _ in runs)
        counts = peer.read(runs[0][1])
        floor, right = floor or seconds, right or counts
        same = f"{sum(counts.values())} layers in {len(counts)} objects"
        told = same if counts == right else f"{same}, which differs"
        print(f"{peer.name:28}{seconds * 1000:8.0f}{seconds / floor:9.1f}  {told}")


if __name__ == "__main__":
    compare(int(sys.argv[1]))
