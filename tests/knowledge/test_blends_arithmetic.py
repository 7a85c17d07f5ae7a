"""Every window that the search finds holds by the plain arithmetic, which takes no short cut."""

from __future__ import annotations

from random import Random

import pytest

from conservedb.knowledge.behaviour import Hansen, Part, Solvent, Sphere
from conservedb.knowledge.blends import search
from conservedb.knowledge.solvents import agent_parameters, red_range


def _random_table(random: Random) -> list[Solvent]:
    def at() -> Hansen:
        return Hansen(random.uniform(14, 20), random.uniform(0, 18), random.uniform(0, 22))

    return [
        Solvent(
            f"liquid-{place}",
            f"liquid {place}",
            tuple(at() for _ in range(random.choice((1, 1, 2, 3)))),
            boiling_c=random.choice((None, random.uniform(40, 240))),
        )
        for place in range(6)
    ]


def _sphere(random: Random) -> Sphere:
    at = Hansen(random.uniform(15, 21), random.uniform(2, 14), random.uniform(2, 16))
    return Sphere(at, random.uniform(4, 12))


@pytest.mark.parametrize("seed", range(40))
def test_every_window_holds_by_the_plain_arithmetic(seed: int) -> None:
    random = Random(seed)
    liquids = _random_table(random)
    by_key = {one.key: one for one in liquids}
    target = [_sphere(random) for _ in range(random.choice((1, 2)))]
    beside = [_sphere(random) for _ in range(2)]
    for window in search(target, [[beside[0]], [beside[1]]], liquids):
        first, second = (part.solvent for part in window.parts)
        red = red_range(target, agent_parameters(window.parts, by_key))
        assert red == pytest.approx(window.red, abs=1e-9)
        for share in range(window.low, window.high + 1, 5):
            parts = [Part(first, share), Part(second, 100 - share)]
            at = agent_parameters(parts, by_key)
            span, harm = red_range(target, at), red_range(beside, at)
            assert span is not None
            assert harm is not None
            assert span[0] < 1
            assert span[1] < 1 or not window.spheres.startswith("by every")
            assert harm[0] >= 1 or window.neighbours == "attacked"
            assert harm[0] >= 1.2 or window.neighbours in ("attacked", "swells")
            assert harm[0] > 2 or window.neighbours != "no effect expected"
