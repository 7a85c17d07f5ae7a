"""The program's entry: `conservedb` and `python -m conservedb`."""

from __future__ import annotations

import sys
from pathlib import Path

from conservedb.cli.app import run


def _interface(path: Path) -> int:
    from conservedb.tui import run as open_interface

    return open_interface(path)


def main() -> None:
    """Run the program and end the process with its status."""
    sys.exit(run(interface=_interface))


if __name__ == "__main__":
    main()
