"""`python -m conservedb.demo` writes the SQL of the demonstration to standard output."""

import sys

from conservedb.demo.build import sql_text

sys.stdout.reconfigure(encoding="utf-8", newline="\n")  # type: ignore[union-attr]
sys.stdout.write(sql_text())
