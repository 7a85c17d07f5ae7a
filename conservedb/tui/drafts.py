"""What was typed and is not saved yet, kept in a file per form in case the terminal dies.

Each form that is open writes a file of its own, named after its key, itself and its process: the
same form in two windows makes two drafts. The draft of a window that is still open is its own.
"""

from __future__ import annotations

import contextlib
import datetime
import hashlib
import json
import os
import secrets
from collections.abc import Mapping
from dataclasses import asdict, dataclass
from pathlib import Path
from threading import Lock

from conservedb.tui.running import runs_elsewhere, this_process

STATE = "CONSERVEDB_STATE"  # the environment variable that names another folder
SHAPE = 1


@dataclass(frozen=True, slots=True)
class Draft:
    """What was typed into a form.

    Attributes:
        key: of the form it belongs to.
        kind: of that form.
        title: of that form.
        subtitle: of that form.
        at: local time, as 2026-11-02T14:05:09.
        version: of the record as it was shown.
        values: field to what it held: all of a new record, of one that is amended only those that
            differ from what was shown.
        shown: the same fields as they were shown.
    """

    key: str
    kind: str
    title: str
    subtitle: str
    at: str
    version: int
    values: dict[str, str]
    shown: dict[str, str]

    @property
    def typed(self) -> dict[str, str]:
        """What differs from what was shown."""
        return {name: text for name, text in self.values.items() if text != self.shown.get(name)}

    @property
    def clock(self) -> str:
        """The time of day, and the day if it was not today."""
        day, _, time = self.at.partition("T")
        return time[:5] if day == datetime.date.today().isoformat() else f"{day}, {time[:5]}"


def now() -> str:
    """The local time for a draft."""
    return datetime.datetime.now().isoformat(timespec="seconds")


def state_folder() -> Path:
    """Where drafts lie."""
    named = os.environ.get(STATE)
    if named:
        return Path(named) / "drafts"
    from platformdirs import user_state_path

    return user_state_path("conservedb") / "drafts"


class Drafts:
    """A folder of drafts, for one form that is open.

    Calls may come from threads; an older one never undoes a newer.
    """

    def __init__(self, folder: Path | None = None) -> None:
        self.folder = folder or state_folder()
        self._own = f"{secrets.token_hex(8)}.{this_process()}"
        self._lock = Lock()
        self._turns: dict[str, int] = {}
        self._next = 0

    def turn(self) -> int:
        """A number for what is to be kept or dropped; the highest one counts."""
        with self._lock:
            self._next += 1
            return self._next

    def keep(self, draft: Draft, turn: int | None = None) -> None:
        """Write a draft beside the old one, then in its place.

        Raises:
            OSError: the folder cannot be written.
        """
        turn = self.turn() if turn is None else turn
        with self._lock:
            if turn < self._turns.get(draft.key, 0):
                return
            self._turns[draft.key] = turn
            self._write(self._path(draft.key), json.dumps({"shape": SHAPE, **asdict(draft)}))

    def drop(self, key: str, turn: int | None = None) -> None:
        """The form was saved, or its draft thrown away; those of other windows stay."""
        turn = self.turn() if turn is None else turn
        with self._lock:
            if turn < self._turns.get(key, 0):
                return
            self._turns[key] = turn
            with contextlib.suppress(OSError):  # what a killed program left beside it goes too
                for one in (self._path(key), *self._left(f"{_digest(key)}.*.tmp")):
                    one.unlink(missing_ok=True)

    def take(self, key: str) -> Draft | None:
        """The newest draft of a form that no other window has; from now on it is this one's."""
        with self._lock:
            for path, draft in self._found(f"{_digest(key)}*.json"):
                if draft.key != key:
                    continue
                try:
                    path.replace(self._path(key))
                except FileNotFoundError:
                    continue  # another window was quicker
                except OSError:
                    pass  # it cannot be moved, but it was read
                return draft
        return None

    def drafts(self) -> tuple[Draft, ...]:
        """All drafts but those of other windows that are open, newest first."""
        return tuple(draft for _, draft in self._found("*.json"))

    def _found(self, pattern: str) -> list[tuple[Path, Draft]]:
        read = ((path, self._read(path)) for path in self._left(pattern))
        found = [(path, draft) for path, draft in read if draft is not None]
        return sorted(found, key=lambda one: one[1].at, reverse=True)

    def _left(self, pattern: str) -> list[Path]:
        """Files that belong to no other window that is open."""
        return [path for path in sorted(self.folder.glob(pattern)) if not _is_elsewhere(path)]

    def _path(self, key: str) -> Path:
        return self.folder / f"{_digest(key)}.{self._own}.json"

    def _read(self, path: Path) -> Draft | None:
        """A draft; a file that is none is set aside under another name."""
        try:
            return _draft_of(path.read_bytes())
        except OSError:
            return None
        except (ValueError, KeyError, TypeError, AttributeError, RecursionError):
            with contextlib.suppress(OSError):
                path.replace(path.with_suffix(".damaged"))
            return None

    def _write(self, path: Path, text: str) -> None:
        self.folder.mkdir(parents=True, exist_ok=True, mode=0o700)
        beside = path.with_suffix(".tmp")
        handle = os.open(beside, os.O_CREAT | os.O_TRUNC | os.O_WRONLY, 0o600)
        with os.fdopen(handle, "w", encoding="ascii") as file:
            file.write(text)
            file.flush()
            os.fsync(file.fileno())
        beside.replace(path)


def _digest(key: str) -> str:
    """A key may be any text, so that its digest names the file."""
    return hashlib.sha256(key.encode("utf-8", "surrogatepass")).hexdigest()[:32]


def _is_elsewhere(path: Path) -> bool:
    """Whether a file is that of another window; those of before there were such have one word."""
    words = path.name.split(".")
    return len(words) == 4 and runs_elsewhere(words[2])


def _draft_of(data: bytes) -> Draft:
    """A draft from its file.

    Raises:
        ValueError, KeyError, TypeError, AttributeError, RecursionError: it is none.
    """
    read = json.loads(data)
    if read["shape"] != SHAPE:
        raise ValueError("another shape")
    words = {name: _text(read[name]) for name in ("key", "kind", "title", "subtitle", "at")}
    return Draft(
        **words,
        version=int(read["version"]),
        values=_texts(read["values"]),
        shown=_texts(read["shown"]),
    )


def _texts(value: Mapping[str, str]) -> dict[str, str]:
    return {_text(name): _text(text) for name, text in value.items()}


def _text(value: object) -> str:
    if not isinstance(value, str):
        raise TypeError("no text")
    return value
