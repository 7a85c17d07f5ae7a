"""The contributors' guide says what each command's JSON holds, in the words of its module."""

from __future__ import annotations

from importlib import import_module
from pathlib import Path

import pytest

from conservedb.cli.app import COMMANDS

GUIDE = Path(__file__).parents[2] / "DEVELOPERS.md"
MODULES = (
    "json_shapes",
    "place_json",
    *(m.partition(":")[0] for m, _ in COMMANDS.values() if m != "place"),
)


def documented(module: str) -> str:
    """The module's account of its JSON, as it stands in the guide."""
    return (import_module(f"conservedb.cli.{module}").__doc__ or "").strip()


@pytest.mark.parametrize("module", MODULES)
def test_the_guide_documents_the_json(module: str) -> None:
    assert documented(module) in GUIDE.read_text(encoding="utf-8")


@pytest.mark.parametrize("command", COMMANDS)
def test_the_readme_or_the_guide_names_every_command(command: str) -> None:
    texts = GUIDE.read_text(encoding="utf-8") + (GUIDE.parent / "README.md").read_text("utf-8")
    assert f"conservedb {command}" in texts
