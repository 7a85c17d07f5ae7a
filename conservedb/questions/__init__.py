"""Reading: one module per question a user asks; each answers with plain frozen dataclasses."""
