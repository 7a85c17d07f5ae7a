"""conservedb find TEXT: anything whose number, mark, name or reference begins with the text.

JSON: {"text", "found": the exact first [{"kind" (object, component, place, material, person,
source), "object": number or "", "mark": mark or "", "label", "detail"}]}. Status 1 where
nothing is found.
"""

from __future__ import annotations

import click

from conservedb.cli.ending import Failed
from conservedb.cli.settings import Settings, asking, shared_options

_KINDS = {"component": "part", "place": "location"}


@click.command("find")
@click.argument("text", nargs=-1, required=True)
@shared_options
@click.pass_obj
def command(settings: Settings, text: tuple[str, ...]) -> None:
    """Find objects, parts, locations, materials, people and papers by how they begin.

    Example: conservedb find SQ.1902.7 J1
    """
    from conservedb.cli.printing import Lines, print_json, print_lines
    from conservedb.questions.find import find

    words = " ".join(text)
    with asking(settings) as (connection, _):
        found = find(connection, words)
    if not found:
        raise Failed(f"nothing on record begins with {words!r}")
    if settings.json:
        hits = [{name: getattr(hit, name) for name in hit.__slots__} for hit in found]
        print_json({"text": words, "found": hits})
        return
    lines = Lines()
    for hit in found:
        lines.add(_KINDS.get(hit.kind, hit.kind), hit.object, hit.mark, hit.label, hit.detail)
    print_lines(lines)
