"""A key in an object of 500 components and 2,000 layers against the same key in a small one."""

from __future__ import annotations

import statistics
import time

import pytest

from tests.tui.canned import Canned
from tests.tui.conftest import press, sitting
from tests.tui.test_scale import KEYS, Large

BUDGET = 6.0
ROUNDS = 3


async def seconds_of_a_key(answers: Canned, mark: str) -> float:
    """Processor seconds of one key, the middle of some rounds."""
    async with sitting(answers, mark=mark) as pilot:
        await press(pilot, "e")
        rounds = []
        for _ in range(ROUNDS):
            begun = time.process_time()
            await press(pilot, *KEYS)
            rounds.append((time.process_time() - begun) / len(KEYS))
        return statistics.median(rounds)


@pytest.mark.bench
async def test_keys_in_a_large_object() -> None:
    small = await seconds_of_a_key(Canned(), "J14")
    large = await seconds_of_a_key(Large(), "J250")
    print(f"a key in a large object: {large / small:.2f} x a small one ({large * 1000:.0f} ms)")
    assert large / small <= BUDGET
