"""Opening, making, upgrading and backing up a database, and what differs per database."""
