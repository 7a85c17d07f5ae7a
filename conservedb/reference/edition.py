"""The edition of the shipped reference tables.

An ISO day; a later one replaces an earlier one in every database that has not changed its own
records since.
"""

from __future__ import annotations

EDITION = "2026-11-25"
