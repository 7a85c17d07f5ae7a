"""What a step laid, took off and used, and what was decided, in the words of a treatment."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from conservedb.questions.asking import Row
from conservedb.questions.basics import When
from conservedb.questions.treatment_answers import DecisionEntry
from conservedb.questions.wording import counted, listed


def state(begun: When, ended: When) -> str:
    """Begun, ended, or neither on record."""
    first = f"begun {begun.said}" if begun.recorded else "no day of beginning on record"
    last = f"ended {ended.said}" if ended.recorded else "no end on record"
    return f"{first}, {last}"


def recorded_over(number: int | None) -> str:
    """That one record stands for many parts or places, "" where it does not."""
    return f"recorded over {number} at once" if number is not None else ""


def laid_details(row: Row) -> Iterator[str]:
    """How a layer was laid, as far as it is recorded."""
    how = [row.concentration] if row.concentration else []
    how += [f"carrier {row.carrier}"] if row.carrier else []
    how += [f"at {row.temperature_c:g} °C"] if row.temperature_c is not None else []
    how += [f"from {row.treated_from}"] if row.treated_from else []
    how += [counted(row.cycles, "cycle")] if row.cycles is not None else []
    how += [f"uptake {row.uptake_g:g} g"] if row.uptake_g is not None else []
    if row.depth_mm is not None or row.depth_known:
        depth = f"{row.depth_mm:g} mm" if row.depth_mm is not None else "not recorded"
        how.append(f"depth {depth}, {row.depth_known or 'how that is known, not recorded'}")
    how += [recorded_over(row.recorded_over)] if row.recorded_over is not None else []
    if how:
        yield ", ".join(how)
    yield from _batch(row)


def used_details(row: Row) -> Iterator[str]:
    """From which batch an agent came."""
    yield from _batch(row)


def _batch(row: Row) -> Iterator[str]:
    if row.batch:
        yield f"batch {row.batch}{f', lot {row.lot}' if row.lot else ''}"


def removed_details(row: Row) -> Iterator[str]:
    """What was kept of what came off, and what is left on the object."""
    if row.kept_what or row.kept_where:
        where = row.kept_where or "where, not recorded"
        yield f"kept: {row.kept_what or 'what, not recorded'}; {where}"
    if row.residue_side or row.residue:
        side = f"residue on {row.residue_side}" if row.residue_side in ("A", "B") else ""
        side = side or (f"residue: {row.residue_side}" if row.residue_side else "residue")
        yield f"{side}{f', {row.residue}' if row.residue else ''}"


def decision_words(one: DecisionEntry) -> str:
    """ "authorised 12 October 2026 by Rosalind Thaxter as curator, for PS2 and PS3"."""
    who = one.person or "somebody not named"
    capacity = one.capacity or "capacity not recorded"
    about = listed(one.steps) or one.scope
    limit = f", for {about}" if about else ""
    day = one.date.said if one.date.recorded else "on a day not recorded"
    return f"{one.decision or 'decision not recorded'} {day} by {who} as {capacity}{limit}"


def authorised_words(versions: Sequence[int], decisions: Sequence[DecisionEntry]) -> str:
    """What was decided on the newest version of a plan; a recital, not a judgement."""
    if not versions:
        return "none on record"
    newest = max(versions)
    own = [decision_words(one) for one in decisions if one.version == newest]
    return f"version {newest}: {'; '.join(own) or 'no decision on record'}"
