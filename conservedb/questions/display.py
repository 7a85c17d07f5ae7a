"""The one filter that text from records passes before it reaches a terminal."""

from __future__ import annotations

import re

UNSEEN = re.compile(
    "[\x00-\x08\x0b-\x1f\x7f-\x9f\u061c\u180e\u200b\u200e\u200f\u2028-\u202e\u2060-\u206f"
    "\ufeff\ufff9-\ufffb\ud800-\udfff\U000e0000-\U000e007f]"
)
"""A character that a terminal would obey, or that nobody sees."""

_PICTURES = {code: chr(0x2400 + code) for code in range(0x20)} | {0x7F: "\u2421"}


_LONGEST = 60


def shortened(text: str) -> str:
    """What somebody typed, cut to a length at which it can be read back to them."""
    return text if len(text) <= _LONGEST else f"{text[:_LONGEST].rstrip()}…"


def show(text: str) -> str:
    """The text with every character that a terminal would obey made visible.

    Controls (not line feed and tab), signs of direction, separators of lines and paragraphs,
    invisible joiners (not the zero width joiner), notes between lines, tags and halves of
    surrogate pairs become their picture (as ␛) or their number in angle brackets (as <202e>).
    Nothing else changes.
    """
    return UNSEEN.sub(_visible, text)


def escape_json(text: str) -> str:
    """JSON text in which the same characters are written as escapes; it means the same."""
    return UNSEEN.sub(_escaped, text)


def _visible(match: re.Match[str]) -> str:
    code = ord(match[0])
    return _PICTURES.get(code, f"<{code:04x}>")


def _escaped(match: re.Match[str]) -> str:
    units = match[0].encode("utf-16-be", "surrogatepass").hex()
    return "".join(f"\\u{units[at : at + 4]}" for at in range(0, len(units), 4))
