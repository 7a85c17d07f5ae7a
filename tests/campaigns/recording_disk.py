"""A disk that notes everything done to it, and the disks that a power cut may leave behind.

The model: what was synced is there. Of what was not yet synced, each write may be there, be lost,
or be there in some of its sectors of 512 bytes, in any order; each truncation may be there or
not; so may each file that was deleted. A later sync of any file makes earlier deletions durable
too, as on ext4 and xfs. A drive that lies about having synced is beyond it.
"""

from __future__ import annotations

import random
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

import apsw

SECTOR = 512


@dataclass(frozen=True)
class Event:
    """One thing done to a file: write, truncate, sync, delete; or "kept", a commit's success."""

    kind: str
    file: str = ""
    place: int = 0
    data: bytes = b""


class RecordingDisk(apsw.VFS):
    """A layer over the real disk, for apsw; `events` is what was done to the main files."""

    def __init__(self, name: str) -> None:
        super().__init__(name, "")
        self.name = name
        self.events: list[Event] = []

    def xOpen(self, name: Any, flags: list[int]) -> apsw.VFSFile:
        if name is None:
            return apsw.VFSFile("", name, flags)
        text = name.filename() if isinstance(name, apsw.URIFilename) else name
        return _RecordingFile(self, Path(text).name, name, flags)

    def xDelete(self, filename: str, syncdir: bool) -> None:
        super().xDelete(filename, syncdir)
        self.events.append(Event("delete", Path(filename).name))
        if syncdir:
            self.events.append(Event("sync"))


class _RecordingFile(apsw.VFSFile):
    def __init__(self, disk: RecordingDisk, called: str, name: Any, flags: list[int]) -> None:
        super().__init__("", name, flags)
        self.disk, self.called = disk, called

    def xWrite(self, data: bytes, offset: int) -> None:
        super().xWrite(data, offset)
        self.disk.events.append(Event("write", self.called, offset, bytes(data)))

    def xTruncate(self, newsize: int) -> None:
        super().xTruncate(newsize)
        self.disk.events.append(Event("truncate", self.called, newsize))

    def xSync(self, flags: int) -> None:
        super().xSync(flags)
        self.disk.events.append(Event("sync", self.called))


def played(
    path: Path, disk: RecordingDisk, pragmas: Sequence[str], sets: Sequence[Sequence[str]]
) -> None:
    """Send the statements of each set to the database, over the recording disk."""
    database = apsw.Connection(str(path), vfs=disk.name, flags=apsw.SQLITE_OPEN_READWRITE)
    for pragma in pragmas:
        database.execute(pragma).fetchall()
    for statements in sets:
        for statement in statements:
            database.execute(statement).fetchall()
        disk.events.append(Event("kept"))
    database.close()


@dataclass
class Disk:
    """The files as they are for certain, and what was done to them since, unsynced."""

    files: dict[str, bytearray]
    pending: list[Event] = field(default_factory=list)

    def take(self, event: Event) -> None:
        """Go on by one event."""
        if event.kind in ("write", "truncate", "delete"):
            self.pending.append(event)
        elif event.kind == "sync":
            later = []
            for one in self.pending:
                if one.kind == "delete" or one.file == event.file:
                    _apply(self.files, one, None)
                else:
                    later.append(one)
            self.pending = later

    def cut(self, chance: random.Random) -> dict[str, bytearray]:
        """The files after a power cut at this moment."""
        files = {name: bytearray(content) for name, content in self.files.items()}
        survives = chance.choice((0.0, 0.1, 0.5, 0.9, 1.0))
        torn = chance.choice((0.0, 0.3, 1.0))
        left, old = [], set()
        for event in self.pending:
            # where a deletion is lost, so is whatever went to a new file of that name
            if event.file in old:
                continue
            if chance.random() < survives:
                left.append(event)
            elif event.kind == "delete":
                old.add(event.file)
        if chance.random() < 0.5 and not any(event.kind == "delete" for event in left):
            chance.shuffle(left)
        for event in left:
            _apply(files, event, chance if chance.random() < torn else None)
        return files


def _apply(files: dict[str, bytearray], event: Event, torn: random.Random | None) -> None:
    """Do one event to the files; torn: only some of its sectors."""
    if event.kind == "delete":
        files.pop(event.file, None)
        return
    content = files.setdefault(event.file, bytearray())
    if event.kind == "truncate":
        del content[event.place :]
        return
    for start, piece in _sectors(event):
        if torn is None or torn.random() < 0.5:
            if len(content) < start + len(piece):
                content.extend(bytes(start + len(piece) - len(content)))
            content[start : start + len(piece)] = piece


def _sectors(event: Event) -> Iterator[tuple[int, bytes]]:
    start = event.place
    while start < event.place + len(event.data):
        end = min((start // SECTOR + 1) * SECTOR, event.place + len(event.data))
        yield start, event.data[start - event.place : end - event.place]
        start = end


def after_cuts(
    files: dict[str, bytes], events: Sequence[Event], number: int, chance: random.Random
) -> Iterator[tuple[int, dict[str, bytearray]]]:
    """So many disks after a power cut, each with how many commits were acknowledged by then."""
    moments = sorted(chance.randint(0, len(events)) for _ in range(number))
    disk, done, kept = Disk({name: bytearray(c) for name, c in files.items()}), 0, 0
    for moment in moments:
        for event in events[done:moment]:
            disk.take(event)
            kept += event.kind == "kept"
        done = moment
        yield kept, disk.cut(chance)


def written(files: dict[str, bytearray], folder: Path) -> None:
    """Put the files of a disk into a folder, and nothing else."""
    for old in folder.iterdir():
        old.unlink()
    for name, content in files.items():
        (folder / name).write_bytes(content)
