"""The program `conservedb`: finds the command, loads only that, and ends with its status."""

from __future__ import annotations

import os
import sys
from collections.abc import Sequence
from importlib import import_module
from pathlib import Path

import click

import conservedb
from conservedb.cli.ending import DONE, STOPPED, Failed, failure_of, leave_quietly, tell
from conservedb.cli.settings import Interface, Settings, shared_options

COMMANDS = {
    "object": ("object", "An object on a day: its parts, its places, its warnings."),
    "place": ("place", "What lies at a place on a day, and how sure that is."),
    "history": ("history", "Everything that happened to an object, a part or a place."),
    "treatment": ("treatment", "The treatments of an object: plans, leave, steps, next check."),
    "reverse": ("reverse", "How a layer may come off, and what that does to its neighbours."),
    "material": ("material", "How a material behaves, by whom that is said, and where it lies."),
    "check": ("check", "What the recorded rules of the trade say of an object or a step."),
    "whatif": ("whatif", "Which joints may creep or soften at a temperature."),
    "uses": ("uses", "Where a material or class lies, lay or may lie."),
    "ask": ("ask", "Ask for layers, places, interventions or objects by many conditions."),
    "look": ("look", "What answers a question as bars, by decade, or how long it lasts."),
    "find": ("find", "Find anything by words in its number, mark, name or notes."),
    "sql": ("sql", "Put a question in SQL; it can only read."),
    "record": ("record", "Record a step, a removal, or one of anything."),
    "amend": ("amend", "Change fields of a record, with the reason."),
    "sheet": ("sheet", "Print a sheet for work at the bench, and type it back."),
    "withdraw": ("withdraw", "Take a record out of every answer; the log keeps it."),
    "merge": ("merge", "Make one of two people, materials or sources that are one."),
    "reidentify": ("reidentify", "Say that a layer is another material than was thought."),
    "split": ("parts:split", "Record that a part broke into fragments."),
    "retire": ("parts:retire", "Record that a part was taken out for good."),
    "replace": ("parts:replace", "Record that a new part stands in the place of an old one."),
    "undo": ("undo", "Take back what you wrote last, or a change set."),
    "redo": ("undo:redo", "Put in force again what was taken back."),
    "log": ("log", "Who changed what, when and why."),
    "verify": ("verify", "Hold the file against its log."),
    "who": ("who", "Say who you are; everything you write is kept under that name."),
    "new": ("new", "Make a new, empty database."),
    "import": ("import_", "Take a folder of CSV tables in."),
    "export": ("export", "Write everything out as CSV tables."),
    "demo": ("demo", "Look around an invented department."),
}
"""Command -> its module in `conservedb.cli`, and a line of help.

The module has it as `command`, or under the name behind a colon.
"""


class Commands(click.Group):
    """A group whose commands are imported when they are called, and not before."""

    def list_commands(self, ctx: click.Context) -> list[str]:
        """The names of the commands, in the order of the help."""
        return list(COMMANDS)

    def get_command(self, ctx: click.Context, cmd_name: str) -> click.Command | None:
        """The command of that name."""
        if cmd_name not in COMMANDS:
            return None
        module, _, name = COMMANDS[cmd_name][0].partition(":")
        command: click.Command = getattr(
            import_module(f"conservedb.cli.{module}"), name or "command"
        )
        return command

    def resolve_command(
        self, ctx: click.Context, args: list[str]
    ) -> tuple[str | None, click.Command | None, list[str]]:
        """The command that was typed; what comes nearest is offered where there is none."""
        if args[0] not in COMMANDS:
            from difflib import get_close_matches

            close = get_close_matches(args[0], COMMANDS)
            hint = f"; did you mean {' or '.join(close)}?" if close else "."
            ctx.fail(f"There is no command {args[0]!r}{hint}")
        return super().resolve_command(ctx, args)

    def format_commands(self, ctx: click.Context, formatter: click.HelpFormatter) -> None:
        """The list of commands in the help, without loading any."""
        with formatter.section("Commands"):
            formatter.write_dl([(name, words) for name, (_, words) in COMMANDS.items()])


@click.group(
    cls=Commands,
    invoke_without_command=True,
    context_settings={"help_option_names": ["-h", "--help"]},
    epilog='Example: conservedb place SQ.1902.7 J14 --on "14 June 1950"',
)
@shared_options
@click.version_option(conservedb.__version__, prog_name="conservedb")
@click.pass_context
def program(context: click.Context) -> int:
    """Treatment history of objects: what lies on this joint, since when, by whose hand.

    Without a command the terminal interface opens.
    """
    if context.invoked_subcommand is not None:
        return DONE
    settings = context.ensure_object(Settings)
    if settings.interface is None or settings.json or not sys.stdout.isatty():
        click.echo(context.get_help())
        return DONE
    return settings.interface(settings.path())


def run(arguments: Sequence[str] | None = None, interface: Interface | None = None) -> int:
    """Run the program and return its exit status.

    Args:
        arguments: as typed, without the program's name; those of the process by default.
        interface: opens the terminal interface on a database file.
    """
    given = list(sys.argv[1:] if arguments is None else arguments)
    _speak_unicode()
    status = DONE
    try:
        ended = program.main(
            given, prog_name="conservedb", standalone_mode=False, obj=Settings(interface)
        )
        status = ended if isinstance(ended, int) else DONE
        sys.stdout.flush()
        return status
    except (KeyboardInterrupt, click.Abort):
        if "--json" in given:
            tell(Failed("stopped; what was not finished was not kept", STOPPED), as_json=True)
        return STOPPED
    except BrokenPipeError:
        leave_quietly()
        return status
    except Exception as problem:
        failed = failure_of(problem)
        if failed is None:
            raise
        tell(failed, "--json" in given)
        return failed.status


def _speak_unicode() -> None:
    """Write UTF-8 into files and pipes; on a terminal that lacks a character, its number."""
    if sys.stdout is None:  # closed by whoever started us
        sys.stdout = Path(os.devnull).open("w", encoding="utf-8")  # noqa: SIM115 (for good)
    for stream in (sys.stdout, sys.stderr):
        if hasattr(stream, "reconfigure"):
            stream.reconfigure(errors="backslashreplace")
            if not stream.isatty():
                stream.reconfigure(encoding="utf-8")
