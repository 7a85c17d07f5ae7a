"""The JSON of `conservedb look`, as it stands in that command's docstring."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

from conservedb.dates import NEVER
from conservedb.knowledge.decades import Count, Decade, Decades, LabelledDecades, Tally
from conservedb.knowledge.survival import Between, Jump
from conservedb.questions.survival import AtAge, Survival

Json = dict[str, Any]


def counted(found: Tally | Decades) -> Json:
    """Bars."""
    return _decades(found) if isinstance(found, Decades) else _tally(found)


def materials(found: Iterable[LabelledDecades]) -> Json:
    """A table of materials by decade."""
    return {"materials": [{"material": one.label, **_decades(one.decades)} for one in found]}


def survival(found: Survival) -> Json:
    """How many are still there, by age."""
    return {
        "layers": found.layers,
        "qualified": found.qualified,
        "unseen": found.unseen,
        "left_out": {name: getattr(found.left_out, name) for name in found.left_out.__slots__},
        "chosen": list(found.chosen),
        "exact": found.recorded.exact,
        "ages": [_at_age(one) for one in found.ages],
        "jumps": [_jump(jump) for jump in found.recorded.jumps],
    }


def _tally(found: Tally) -> Json:
    return {
        "groups": [{"label": label, **_count(counts)} for label, counts in found.groups],
        "shared": found.shared,
        "total": _count(found.total),
    }


def _decades(found: Decades) -> Json:
    return {
        "decades": [_decade(one) for one in found.decades],
        "undated": _count(found.undated),
        "several": found.several,
        "total": _count(found.total),
    }


def _decade(one: Decade) -> Json:
    return {"first": one.first, "label": one.label, **_count(one.counts)}


def _count(counts: Count) -> Json:
    return counts._asdict()


def _at_age(one: AtAge) -> Json:
    return {
        "years": one.years,
        "recorded": _share(one.recorded),
        "seen": _share(one.seen),
        "with_possible": _share(one.with_possible),
        "band": _share(one.band),
        "soonest": _share(one.soonest),
        "last": _share(one.last),
        **one.standing._asdict(),
        "followed": one.followed,
    }


def _share(between: Between | None) -> Json | None:
    return between and {"low": round(between.low, 6), "high": round(between.high, 6)}


def _jump(jump: Jump) -> Json:
    return {
        "first_day": jump.first,
        "last_day": None if jump.last == NEVER else jump.last,
        "share": round(jump.share, 6),
    }
