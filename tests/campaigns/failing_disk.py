"""A disk on which one call fails, or every call from one on."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any, TypeVar

import apsw

T = TypeVar("T")


class FailingDisk(apsw.VFS):
    """A layer over the real disk, for apsw, that counts the calls and fails some.

    Attributes:
        calls: how many there were.
        fails: the number of the call that fails, from 1; 0 for none.
        for_good: whether every later one fails too.
    """

    def __init__(self, name: str) -> None:
        super().__init__(name, "")
        self.name = name
        self.start()

    def start(self, fails: int = 0, *, for_good: bool = False) -> None:
        """Count anew."""
        self.calls, self.fails, self.for_good = 0, fails, for_good

    def counted(self, error: type[apsw.Error], call: Callable[[], T]) -> T:
        """Do a call, or fail it as a disk would."""
        self.calls += 1
        if self.fails and (self.calls == self.fails or (self.for_good and self.calls > self.fails)):
            raise error("the disk failed")
        return call()

    def xOpen(self, name: Any, flags: list[int]) -> apsw.VFSFile:
        return self.counted(apsw.CantOpenError, lambda: _FailingFile(self, name, flags))

    def xDelete(self, filename: str, syncdir: bool) -> None:
        self.counted(apsw.IOError, lambda: super(FailingDisk, self).xDelete(filename, syncdir))


class _FailingFile(apsw.VFSFile):
    def __init__(self, disk: FailingDisk, name: Any, flags: list[int]) -> None:
        super().__init__("", name, flags)
        self.disk = disk

    def xRead(self, amount: int, offset: int) -> bytes:
        return self.disk.counted(
            apsw.IOError, lambda: super(_FailingFile, self).xRead(amount, offset)
        )

    def xWrite(self, data: bytes, offset: int) -> None:
        self.disk.counted(apsw.FullError, lambda: super(_FailingFile, self).xWrite(data, offset))

    def xTruncate(self, newsize: int) -> None:
        self.disk.counted(apsw.IOError, lambda: super(_FailingFile, self).xTruncate(newsize))

    def xSync(self, flags: int) -> None:
        self.disk.counted(apsw.IOError, lambda: super(_FailingFile, self).xSync(flags))
