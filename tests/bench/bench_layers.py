"""How long one layer takes: microseconds for one call, the best of several rounds."""

from collections.abc import Callable
from functools import partial
from timeit import repeat

from conservedb.knowledge.layers import (
    Interval,
    LayerFacts,
    Removal,
    Sighting,
    bounds,
    held,
    possible,
)

ROUNDS, CALLS = 7, 20_000
CAME, TAKEN = Interval(700_000, 700_364), Interval(718_000, 718_364)
SEEN = Sighting(Interval(710_000, 710_000), "seen")
CASES = {
    "bounds, nothing taken away": LayerFacts(CAME),
    "bounds, two removals": LayerFacts(
        CAME, (Removal(Interval(715_000, 715_030), "part"), Removal(TAKEN, "all"))
    ),
    "bounds, a removal and two sightings": LayerFacts(
        CAME, (Removal(TAKEN, "all"),), (SEEN, Sighting(Interval(720_000, 720_000), "not found"))
    ),
    "bounds, a joint with a removal on one side": LayerFacts(
        CAME, (Removal(TAKEN, "all", "A"),), (), {}, two_sided=True
    ),
}


def measure() -> dict[str, float]:
    """Microseconds per call, by what is called."""
    known = bounds(CASES["bounds, two removals"]).whole
    calls: dict[str, Callable[[], object]] = {
        **{name: partial(bounds, facts) for name, facts in CASES.items()},
        "possible": partial(possible, known, 716_000),
        "held": partial(held, known, 715_000, 719_000),
    }
    return {
        name: min(repeat(call, number=CALLS, repeat=ROUNDS)) / CALLS * 1e6
        for name, call in calls.items()
    }


if __name__ == "__main__":
    for name, microseconds in measure().items():
        print(f"{name}: {microseconds:.2f} microseconds")
