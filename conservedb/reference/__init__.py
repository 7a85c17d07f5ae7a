"""Shipped tables with their sources."""
