"""The panels that screens are put together from, one a file."""
