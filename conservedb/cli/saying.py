"""Parts of an answer in words, for the lines of several commands."""

from __future__ import annotations

from conservedb.cli.printing import Lines
from conservedb.dates import civil, is_known
from conservedb.questions.answers import AsOf, Deed, Reworded, Rival, Seen, Source, Warning_, When
from conservedb.questions.wording import cited, hands, reworded

_MONTHS = (
    "January", "February", "March", "April", "May", "June", "July",
    "August", "September", "October", "November", "December",
)  # fmt: skip


def day(number: int) -> str:
    """ "14 June 1950"."""
    if not is_known(number):
        return ""
    year, month, of_month = civil(number)
    return f"{of_month} {_MONTHS[month - 1]} {year if year > 0 else f'{1 - year} BC'}"


def asked(on: AsOf) -> str:
    """The day or span asked for, with its ends where it is a span."""
    if on.is_span:
        return f"{on.words} ({day(on.first)} to {day(on.last)}; states at its end)"
    return day(on.last)


def dated(when: When) -> str:
    """A date; where its words are outside the table, that is said."""
    not_understood = when.recorded and not when.edtf
    return f"{when.said} (date not established)" if not_understood else when.said


def sourced(source: Source | None) -> str:
    """A source with its citation."""
    return f"{cited(source)}: {source.citation}" if source and source.citation else cited(source)


def deed(done: Deed) -> tuple[str, ...]:
    """When, by whom, in which intervention, from what paper."""
    by = f"intervention {done.intervention}" if done.intervention else ""
    return (
        dated(done.date),
        hands(done.people) if done.intervention else "",
        f"{by}, {done.technique}" if by and done.technique else by,
        cited(done.source),
    )


def seen(look: Seen) -> tuple[str, ...]:
    """A sighting: result, date, side, people, source."""
    side = f"side {look.side}" if look.side else ""
    return (
        look.result or "result not recorded",
        dated(look.date),
        side,
        hands(look.people, ""),
        cited(look.source),
        look.note,
    )


def add_rivals(lines: Lines, rivals: tuple[Rival, ...], depth: int = 0) -> None:
    """What sources state beside each other, and which is followed."""
    for stated in rivals:
        followed = {"yes": "followed", "no": "not followed"}.get(stated.followed, "not decided")
        who = f"by {stated.decided_by}" if stated.decided_by else ""
        why = f"because {stated.reason}" if stated.reason else ""
        about = f"{stated.subject} {stated.of}".strip()
        lines.add(
            "stated",
            f"{about} {stated.field}: {stated.value or 'nothing'}".strip(),
            cited(stated.source),
            hands(stated.people, ""),
            dated(stated.date) if stated.date.recorded else "",
            " ".join(word for word in (followed, who, why) if word),
            stated.note,
            depth=depth,
        )


def add_amended(lines: Lines, amended: tuple[Reworded, ...], depth: int = 0) -> None:
    """How a record read before it was amended, by whom and why."""
    for one in amended:
        lines.add("amended", reworded(one), depth=depth)


def add_warnings(lines: Lines, warnings: tuple[Warning_, ...]) -> None:
    """Every warning on an object."""
    for caution in warnings:
        since = f"since {dated(caution.since)}" if caution.since.recorded else ""
        until = f"until {dated(caution.until)}" if caution.until.recorded else ""
        where = caution.place or caution.component
        lines.add(
            "warning",
            f"{caution.kind}: {caution.text}" if caution.kind else caution.text,
            f"at {where}" if where else "",
            since,
            until,
            cited(caution.source),
        )
