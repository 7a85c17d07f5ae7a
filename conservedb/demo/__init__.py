"""The demonstration: an invented fountain and its neighbours, as CSV tables and as SQL."""
