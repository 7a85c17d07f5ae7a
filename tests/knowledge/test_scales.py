"""Round numbers for an axis."""

from __future__ import annotations

from itertools import pairwise

import pytest

from conservedb.knowledge.scales import round_steps


@pytest.mark.parametrize("most", [0, 1, 3, 6, 7, 12, 36, 99, 1234, 0.2])
def test_an_axis_has_few_round_numbers_and_room_for_all(most: float) -> None:
    marks = round_steps(most, 6)
    assert marks[0] == 0 and marks[-1] >= most and 2 <= len(marks) <= 7
    (step,) = {b - a for a, b in pairwise(marks)}
    assert str(step).rstrip("0") in ("1", "2", "5")
