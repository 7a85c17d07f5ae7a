"""What can be wrong with a database file, said in one sentence."""

from __future__ import annotations


class DatabaseProblem(Exception):
    """The database cannot be used; the message says what is wrong and what to do."""
