"""Writing: what must be worked out and checked whenever records change."""
