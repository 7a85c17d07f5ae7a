"""What an agent is made of: "acetone", or in per cent by volume "acetone 50; ethanol 50"."""

from __future__ import annotations

import math
import re
from dataclasses import dataclass

from conservedb.exchange import cells
from conservedb.exchange.columns import Keys, Values
from conservedb.exchange.faults import CellProblem
from conservedb.exchange.lists import ListColumn

_PART = re.compile(r"(?s)(?P<name>.*\S)\s+(?P<share>[+-]?[\d.,]\S*?)\s*%?")
_TOLERANCE = 0.5
"""How far the rounded shares of a published blend may be from 100 per cent."""
_REMEDY = "write each part with its per cent by volume, such as: acetone 50; ethanol 50"


@dataclass(frozen=True)
class Mixture(ListColumn):
    """A list of materials with shares; a single liquid has none."""

    def parse(self, cell: str, keys: Keys) -> list[Values]:
        """(material, share) of each part.

        Raises:
            CellProblem: an unknown material, a share missing or doubled, a sum that is not 100.
        """
        items = cells.split_list(cell)
        if len(items) == 1:
            whole = keys.known_material(cells.unescape(items[0]))
            if whole is not None:
                return [(whole, None)]
        parts = [self.parse_one(item, keys) for item in items]
        for place, (material, share) in enumerate(parts):
            name = cells.unescape(items[place])
            if share is None:
                raise CellProblem("has no share", _REMEDY, self.name, name)
            if material in [other for other, _ in parts[:place]]:
                raise CellProblem("stands twice", "name each liquid once", self.name, name)
        total = math.fsum(share for _, share in parts)
        if parts and abs(total - 100) > _TOLERANCE:
            shown = cells.show_number(round(total, 2))
            raise CellProblem(f"the shares sum to {shown} per cent, not to 100", _REMEDY)
        return [(parts[0][0], None)] if len(parts) == 1 else parts


def mixture(table: str, owner: str) -> Mixture:
    """The column `agent`, kept as rows of a table of parts."""
    return Mixture(
        "agent", table, owner, ("material_id", "share"), _parse, _show, False, "", "materials", True
    )


def _parse(item: str, keys: Keys) -> Values:
    match = _PART.fullmatch(item)
    if match is not None:
        named = cells.unescape(match["name"])
        material = keys.known_material(named)
        if material is not None:
            return (material, _share(match["share"]))
        if keys.known_material(cells.unescape(item)) is None:
            keys.find("materials", named)  # tells what is wrong with the name
    return (keys.find("materials", cells.unescape(item)), None)


def _share(text: str) -> float:
    share = cells.number(text)
    if not 0 < share <= 100:
        raise CellProblem("is no share in per cent", _REMEDY)
    return share


def _show(part: Values, keys: Keys) -> str:
    name = cells.escape(keys.name_of("materials", part[0]))
    return name if part[1] is None else f"{name} {cells.show_number(part[1])}"
