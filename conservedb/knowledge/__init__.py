"""Pure computation: what lies where and when, and what follows. No database, no files."""
