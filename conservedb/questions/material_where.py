"""Where a material lies now and ever: counts, decades of laying, and the first places."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable
from functools import lru_cache
from heapq import nsmallest

from sqlalchemy import Connection

from conservedb.knowledge.decades import decades_of
from conservedb.knowledge.layers import GONE, PRESENT, REDUCED
from conservedb.questions.basics import AsOf
from conservedb.questions.material_answers import Decade, Whereabouts
from conservedb.questions.uses import uses
from conservedb.questions.uses_answers import AgentUse, UsesLayer
from conservedb.store.keys import sort_key

MOST = 200
"""Places, and uses as an agent, that are listed; the numbers are given in full."""
_THERE = PRESENT | REDUCED


def whereabouts(connection: Connection, word: str, on: AsOf) -> Whereabouts:
    """Where what a word means lies, lay or may lie; states at the end of the day asked for.

    Raises:
        NoSuch: no material and no class bears the word, or several do.
    """
    found = uses(connection, word, on)
    possible = _once(found.layers_possible)
    certain = found.layers_certain
    decades, undated = by_decade(certain, possible)
    agents = (*found.agents_certain, *found.agents_possible)
    rows = (*certain, *found.layers_possible)
    there = sum(1 for row in certain if row.mask & _THERE)
    perhaps = sum(1 for row in possible if row.mask & _THERE)
    return Whereabouts(
        now_certain=there,
        now_possible=perhaps,
        gone_certain=sum(1 for row in certain if row.mask == GONE),
        gone_possible=len(possible) - perhaps,
        decades=decades,
        undated=undated,
        layers=tuple(nsmallest(MOST, rows, key=_place)),
        places=len(rows),
        uses=tuple(nsmallest(MOST, agents, key=_use)),
        uses_certain=len(found.agents_certain),
        uses_possible=len(found.agents_possible),
        unidentified=found.unidentified,
    )


def _once(rows: Iterable[UsesLayer]) -> list[UsesLayer]:
    """Each layer once, though it may lie at several places."""
    return list({(row.object, row.layer): row for row in rows}.values())


def by_decade(
    certain: Iterable[UsesLayer], possible: Iterable[UsesLayer]
) -> tuple[tuple[Decade, ...], int]:
    """Layers by the decade of their laying, and how many have a date that names none.

    A vague or qualified date is never sharpened: such a layer is possible wherever it may be.
    """
    sure: Counter[int] = Counter()
    perhaps: Counter[int] = Counter()
    undated = 0
    for rows, known in ((certain, True), (possible, False)):
        for row in rows:
            span = decades_of(row.laid_earliest, row.laid_latest)
            if not span:
                undated += 1
            elif known and len(span) == 1 and not row.laid_flags:
                sure[span[0]] += 1
            else:
                perhaps.update(span)
    firsts = sorted({*sure, *perhaps})
    return tuple(Decade(first, sure[first], perhaps[first]) for first in firsts), undated


_sorted = lru_cache(maxsize=65536)(sort_key)


def _place(row: UsesLayer) -> tuple[str, str, str]:
    return _sorted(row.object), _sorted(row.place), _sorted(row.layer)


def _use(use: AgentUse) -> tuple[str, int, str]:
    return _sorted(use.object), use.date.latest, use.agent
