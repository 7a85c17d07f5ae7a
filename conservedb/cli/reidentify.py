"""conservedb reidentify NUMBER LAYER MATERIAL --source REF --reason WHY: another matter after all.

JSON: {"reidentified": [refs of the layers, with their objects], "change_set": number}.
"""

from __future__ import annotations

import click

from conservedb.cli.mended import reason_option, report
from conservedb.cli.settings import Settings, shared_options, who_option
from conservedb.cli.writing import opened


@click.command("reidentify")
@click.argument("number")
@click.argument("layer")
@click.argument("material")
@click.option("--source", required=True, metavar="REF", help="The paper that says so.")
@click.option("--identified", default="analysed", show_default=True, help="How it is known.")
@click.option(
    "--everywhere",
    is_flag=True,
    help="All layers of all objects on record as the material of this one.",
)
@reason_option
@who_option
@shared_options
@click.pass_obj
def command(
    settings: Settings,
    number: str,
    layer: str,
    material: str,
    source: str,
    identified: str,
    everywhere: bool,
    reason: str,
) -> int:
    """Say that LAYER of object NUMBER is MATERIAL, which is not what was thought before.

    Both stay: the former material as a statement that is not followed, the new one as a statement
    that is, with its source and you as the one who decided. Words of old papers stay as found.
    Example: conservedb reidentify SQ.1902.7 L12 shellac --source LAB-3 --reason "FTIR"
    """
    from conservedb.exchange.mending import Analysis, reidentify
    from conservedb.store.log import Author

    if not source.strip():
        raise click.BadParameter("is empty; name the paper that says so", param_hint="--source")
    found = Analysis(material, source, identified)
    with opened(settings) as (engine, today):
        author = Author(settings.who(), "reidentified", reason)
        written, layers = reidentify(
            engine, number, layer, found, author, today, everywhere=everywhere
        )
    return report(settings, written, "reidentified", layers)
