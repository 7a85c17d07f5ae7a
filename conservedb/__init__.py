"""conservedb: what lies on this joint, since when, by whose hand, and how sure that is."""

__version__ = "0.1.0"
