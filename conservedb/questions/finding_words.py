"""Observations, readings, samples, tests, plans and decisions in the words of the trade."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from conservedb.questions.asking import Row

_READ = (("wet", "wet"), ("dry", "dry"), ("next_day", "after a day"))
_MEASURED = (("temperature_c", "°C"), ("dwell_min", "min"), ("area_mm2", "mm²"))


def where(row: Row) -> str:
    """ "J14, on L14f"; "" where it is about the object as a whole."""
    marks = ", ".join(mark for mark in (row.component, row.place) if mark)
    layer = f"{row.material}, {row.layer}" if row.layer and row.material else row.layer
    return ", ".join(word for word in (marks, f"on {layer}" if layer else "") if word)


def _at(row: Row) -> str:
    said = where(row)
    return f" at {said}" if row.component or row.place else f" {said}" if said else ""


def observed(row: Row) -> str:
    """An observation: where, in what condition, and only what was seen."""
    said = ": ".join(word for word in (row.condition, row.seen) if word)
    return f"observed{_at(row)}: {said or 'what was seen is not recorded'}"


def observed_details(row: Row) -> Iterator[str]:
    """What is presumed from it, which is not what was seen; and how far it goes."""
    if row.presumed:
        yield f"presumed, not seen: {row.presumed}"
    if row.extent:
        yield f"extent: {row.extent}"


def measured(row: Row) -> str:
    """A reading of an instrument."""
    how = ", ".join(word for word in (row.instrument, row.spot) if word)
    what = f"{row.quantity or 'quantity not recorded'} {row.value:g} {row.unit}"
    return f"read{_at(row)}: {what}{f' ({how})' if how else ''}"


def sampled(row: Row) -> str:
    """A sample, or matter kept when it was removed."""
    verb = "removed matter kept" if row.kind == "removed matter" else "sample taken"
    return f"{verb}{_at(row)}: {row.what or 'what it is, not recorded'}"


def sampled_details(row: Row) -> Iterator[str]:
    """Where it is, what is left, and what came of it."""
    yield f"kept: {row.box or 'where, not recorded'}"
    if row.remainder:
        yield f"remainder: {row.remainder}"
    if row.result or row.analysed_by:
        by = f", analysed by {row.analysed_by}" if row.analysed_by else ""
        yield f"result: {row.result or 'not recorded'}{by}"


def tested(row: Row, agents: Sequence[str]) -> str:
    """A spot test: agent, use, and each reading, also those that were not made."""
    what = " + ".join(agents) or "agent not recorded"
    numbers = [
        f"{getattr(row, name):g} {unit}"
        for name, unit in _MEASURED
        if getattr(row, name) is not None
    ]
    use = ", ".join(word for word in (what, row.form, *numbers) if word)
    said = ", ".join(f"{label} {getattr(row, name) or 'not recorded'}" for name, label in _READ)
    return f"spot test{_at(row)}: {use}; {said}"


def tested_details(row: Row) -> Iterator[str]:
    """What else was seen at the test."""
    for label, value in (
        ("swab", row.swab_colour),
        ("tide-line", row.tide_line),
        ("pressure", row.pressure),
        ("magnification", row.magnification),
    ):
        if value:
            yield f"{label}: {value}"


def planned(row: Row) -> str:
    """A planned step: place in the order, kind, how, and with what."""
    what = ", ".join(word for word in (row.material, row.concentration) if word)
    what = f"{what} in {row.carrier}" if what and row.carrier else what or row.carrier
    how = "; ".join(word for word in (row.technique, what) if word)
    return f"{row.kind or 'kind not recorded'}{f': {how}' if how else ''}"


def decided(row: Row) -> str:
    """What was decided about what."""
    about = f"{row.plan}, version {row.version} of the plan" if row.plan else ""
    about = " and ".join(word for word in (row.intervention, about) if word)
    return f"{row.decision or 'decision not recorded'}: {about or 'of what, not recorded'}"
