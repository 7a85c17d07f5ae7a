"""Whether the program that began a file still runs, so that its file is left alone."""

from __future__ import annotations

import os
from pathlib import Path

WINDOWS = os.name == "nt"


def this_process() -> str:
    """A name for this process: its number, and when it began, since numbers are used again."""
    return f"{os.getpid()}-{_began(os.getpid())}"


def runs_elsewhere(process: str) -> bool:
    """Whether a process of this name runs that is not this one.

    On Windows nobody is asked: the signal that only asks elsewhere would stop the program there.
    """
    number, _, began = process.partition("-")
    if process == this_process() or WINDOWS or not number.isdecimal() or int(number) == 0:
        return False
    try:
        os.kill(int(number), 0)
    except PermissionError:
        pass  # it runs, for another user
    except (OSError, OverflowError):
        return False
    return _began(int(number)) == began


def _began(number: int) -> str:
    """Ticks of the system's clock when a process began; "" where the system does not tell."""
    try:
        told = Path(f"/proc/{number}/stat").read_bytes()
    except OSError:
        return ""
    words = told.rpartition(b")")[2].split()  # after the name of the program, which may be any
    ended = words[0] in (b"Z", b"X")
    return "ended" if ended else words[19].decode("ascii")
