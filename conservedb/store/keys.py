"""Folded text for finding and natural keys for sorting, made in Python and stored."""

from __future__ import annotations

import re
import unicodedata

_DIGITS = re.compile(r"\d+")


def fold(text: str) -> str:
    """Text without case, accents or outer blanks, so that "Müller" is found as "muller"."""
    if text.isascii():
        return text.strip().lower()
    plain = unicodedata.normalize("NFKD", text.casefold())
    return "".join(c for c in plain if not unicodedata.combining(c)).strip()


def sort_key(text: str) -> str:
    """Folded text whose numbers sort by size: "1998.2" comes before "1998.10"."""
    return _DIGITS.sub(_by_size, fold(text))


def _by_size(match: re.Match[str]) -> str:
    digits = match.group().lstrip("0") or "0"
    return f"{len(digits):03d}{digits}"
