"""What a killed process left beside a file goes with the next writing; nothing else does."""

from __future__ import annotations

import os
import signal
import subprocess
import sys
from pathlib import Path

import pytest

from conservedb.exchange import new_files
from conservedb.exchange.new_files import new_file
from conservedb.store.problems import DatabaseProblem

WRITING = """
import sys, time
from pathlib import Path
from conservedb.exchange.answers_out import About, write_answer

def rows():
    for at in range(10):
        yield (at,)
    print("begun", flush=True)
    time.sleep(60)

about = About(*"abcdefg")
write_answer(Path(sys.argv[1]), sys.argv[2], about, ("a",), rows())
"""


def killed(path: Path, form: str, *, kill: bool = True) -> subprocess.Popen[str]:
    """A process that was writing `path` when it was killed, or that writes still."""
    process = subprocess.Popen(
        [sys.executable, "-c", WRITING, str(path), form], stdout=subprocess.PIPE, text=True
    )
    assert process.stdout is not None and process.stdout.readline() == "begun\n"
    if kill:
        process.send_signal(signal.SIGKILL)
        process.wait()
    return process


def write(path: Path, text: str = "new") -> None:
    with new_file(path) as partial:
        partial.write_text(text, encoding="utf-8")


@pytest.mark.skipif(os.name == "nt", reason="there a folder that was left stays")
@pytest.mark.parametrize("form", ["csv", "xlsx"])
def test_what_a_killed_process_left_is_swept_away(tmp_path: Path, form: str) -> None:
    path = tmp_path / f"answer.{form}"
    killed(path, form)
    left = [one.name for one in tmp_path.iterdir()]
    assert left and path.name not in left
    write(tmp_path / "other.csv")  # another place: nothing of ours is touched
    assert set(left) < {one.name for one in tmp_path.iterdir()}
    write(path)
    assert {one.name for one in tmp_path.iterdir()} == {path.name, "other.csv"}


@pytest.mark.skipif(os.name == "nt", reason="signals")
def test_what_a_process_writes_still_is_left_alone(tmp_path: Path) -> None:
    path = tmp_path / "answer.csv"
    process = killed(path, "csv", kill=False)
    try:
        (theirs,) = tmp_path.iterdir()
        write(path)
        assert theirs.exists()
    finally:
        process.kill()
        process.wait()


def test_only_files_that_are_ours_are_swept_away(tmp_path: Path) -> None:
    dead = subprocess.Popen([sys.executable, "-c", ""])
    dead.wait()
    here = f"{new_files._HERE}-{dead.pid}"
    elsewhere = f"{'0' * 8}-{dead.pid}"
    kept = (
        "a.csv.partial",
        f"a.csv.{elsewhere}.partial",  # of another computer, in a shared folder
        f"a.csv.{here}.partial.txt",
        f"a.csv.{here}.partial.abcd_123",  # named as a folder of ours, but a file
        f"b.csv.{here}.partial",
        f"xa.csv.{here}.partial",
        f"a-csv.{here}.partial",
        f"a.csv.{new_files._HERE}-{os.getppid()}.partial",
        f"a.csv.{new_files._HERE}-{'9' * 30}.partial",
    )
    for name in (*kept, f"a.csv.{here}.partial"):
        (tmp_path / name).write_text("x", encoding="utf-8")
    outside = tmp_path / "outside"
    outside.mkdir()
    (outside / "mine").touch()
    folder = f"a.csv.{here}.partial.12345678"
    if os.name != "nt":
        (tmp_path / folder).symlink_to(outside)
    write(tmp_path / "a.csv")
    found = {one.name for one in tmp_path.iterdir()}
    assert found - {folder} == {*kept, "a.csv", "outside"}
    assert (outside / "mine").exists()


def test_nothing_is_written_over_and_a_failure_leaves_nothing(tmp_path: Path) -> None:
    path = tmp_path / "a.csv"
    with pytest.raises(RuntimeError), new_file(path) as partial:
        partial.write_text("half", encoding="utf-8")
        raise RuntimeError
    assert not list(tmp_path.iterdir())

    def meanwhile() -> None:
        with new_file(path) as partial:
            partial.write_text("late", encoding="utf-8")
            path.write_text("first", encoding="utf-8")

    with pytest.raises(DatabaseProblem, match="already exists; name a new file"):
        meanwhile()
    assert path.read_text(encoding="utf-8") == "first"
    assert [one.name for one in tmp_path.iterdir()] == ["a.csv"]
    with pytest.raises(DatabaseProblem, match="cannot be written"):
        write(tmp_path / "none" / "a.csv")
