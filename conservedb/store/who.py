"""Who is at the keyboard: set once for each account of a computer, and shown always."""

from __future__ import annotations

import getpass
import os
from pathlib import Path

VARIABLE = "CONSERVEDB_WHO"
ACCOUNT = "account "
"""Stands before the name of a computer account where nobody has said who they are."""


def name_file() -> Path:
    """Where the name is kept."""
    from platformdirs import user_config_path

    return user_config_path("conservedb") / "who"


def own_name() -> str:
    """The name that was set, in the environment or once for this account; "" where none was."""
    named = os.environ.get(VARIABLE, "").strip()
    if named:
        return named
    try:
        return name_file().read_text(encoding="utf-8").strip()
    except (FileNotFoundError, UnicodeDecodeError):
        return ""


def who() -> str:
    """The name to write under: the one that was set, else that of the computer account."""
    named = own_name()
    if named:
        return named
    try:
        return ACCOUNT + getpass.getuser()
    except (KeyError, OSError):
        return ACCOUNT + "unknown"


def set_name(name: str) -> str:
    """Keep a name for this account and return it, in one line.

    Raises:
        ValueError: the name is empty or holds characters that are not text.
    """
    line = " ".join(name.split())
    if not line:
        raise ValueError("the name is empty; write your full name")
    if not line.isprintable():
        raise ValueError("the name holds control characters; write your full name in letters")
    path = name_file()
    path.parent.mkdir(parents=True, exist_ok=True)
    path.write_text(line + "\n", encoding="utf-8")
    return line
