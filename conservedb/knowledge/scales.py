"""Round numbers for the axis of a picture and the lines of a table."""

from __future__ import annotations


def round_steps(most: float, about: int) -> tuple[int, ...]:
    """Numbers from 0 to the next round one not below `most`, about so many of them.

    They lie 1, 2 or 5 times a power of ten apart.
    """
    power = 1
    while True:
        for step in (power, 2 * power, 5 * power):
            if step * about >= most:
                last = 1
                while step * last < most:
                    last += 1
                return tuple(step * at for at in range(last + 1))
        power *= 10
