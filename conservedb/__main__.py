"""The program's entry: `conservedb` and `python -m conservedb`."""

from __future__ import annotations

import gc
import sys
from pathlib import Path

# Imports make many objects that all stay: looking for garbage among them so often takes a
# fifth of the time that a command needs.
gc.set_threshold(100_000, 20, 50)

from conservedb.cli.app import run  # noqa: E402


def _interface(path: Path) -> int:
    from conservedb.tui import run as open_interface

    return open_interface(path)


def main() -> None:
    """Run the program and end the process with its status."""
    status = run(interface=_interface)
    gc.freeze()  # what is left is for the operating system to take back
    sys.exit(status)


if __name__ == "__main__":
    main()
