"""Who is at the keyboard, as every screen shows it."""

from __future__ import annotations

from textual.app import App
from textual.content import Content

from conservedb.tui.text import QUIET, joined, plain


def you(app: App[None]) -> Content:
    """ "you: Ida Holm"; nothing where nothing can be recorded."""
    desk = getattr(app, "desk", None)
    if desk is None:
        return plain("")
    return plain(f"you: {desk.who}" if desk.who else "you: nobody named yet", QUIET)


def with_you(app: App[None], content: Content) -> Content:
    """Something at the right end of a heading, after who is at the keyboard."""
    who = you(app)
    return joined((who, content), "   ") if who.cell_length else content
