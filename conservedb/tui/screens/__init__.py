"""The screens, one a file, each with its style sheet beside it."""
