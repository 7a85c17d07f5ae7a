"""conservedb who [NAME]: who writes on this computer; set once, shown always.

JSON: {"who": name that is written under, "set": true where it was set, false where it is the
computer account}.
"""

from __future__ import annotations

import click

from conservedb.cli.ending import DONE, MISUSED, Failed
from conservedb.cli.printing import Lines, print_json, print_lines
from conservedb.cli.settings import Settings, shared_options


@click.command("who")
@click.argument("name", nargs=-1)
@shared_options
@click.pass_obj
def command(settings: Settings, name: tuple[str, ...]) -> int:
    """Say who you are, by your full name; without NAME: show who that is.

    Everything you write is kept under this name. Example: conservedb who Ida Holm
    """
    from conservedb.store.who import own_name, set_name, who

    if name:
        try:
            set_name(" ".join(name))
        except ValueError as problem:
            raise Failed(str(problem), MISUSED) from problem
    known = bool(own_name())
    if settings.json:
        print_json({"who": who(), "set": known})
        return DONE
    lines = Lines()
    lines.add("you write as", who())
    if not known:
        lines.add("note", "this is the computer account; say who you are: conservedb who YOUR NAME")
    print_lines(lines)
    return DONE
