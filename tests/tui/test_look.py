"""Colours are readable and apart for colour-blind people; without colour nothing is lost."""

from __future__ import annotations

from itertools import combinations

import pytest

from conservedb.tui.hatching import LEGEND, drawn, hatch_of
from conservedb.tui.theme import GROUNDS, HATCHES, INKS
from tests.tui.conftest import press, screen_text, sitting

Triple = tuple[float, float, float]

# Contrast of text as asked by WCAG 2, success criterion 1.4.3 (from memory).
LEAST_CONTRAST = 4.5
LEAST_DIFFERENCE = 15.0

# Deuteranopia of full severity in linear RGB: Machado, Oliveira and Fernandes 2009 (from memory).
DEUTERANOPIA = (
    (0.367322, 0.860646, -0.227968),
    (0.280085, 0.672501, 0.047413),
    (-0.011820, 0.042940, 0.968881),
)


def linear(colour: str) -> Triple:
    """A colour such as "#62b8f0" in linear RGB (sRGB transfer curve)."""
    parts = [int(colour[i : i + 2], 16) / 255 for i in (1, 3, 5)]
    red, green, blue = (p / 12.92 if p <= 0.04045 else ((p + 0.055) / 1.055) ** 2.4 for p in parts)
    return red, green, blue


def contrast(one: str, other: str) -> float:
    """The contrast ratio of WCAG 2."""
    light, dark = sorted((luminance(linear(c)) for c in (one, other)), reverse=True)
    return (light + 0.05) / (dark + 0.05)


def luminance(colour: Triple) -> float:
    return sum(w * c for w, c in zip((0.2126, 0.7152, 0.0722), colour, strict=True))


def lab(colour: Triple) -> Triple:
    """CIE 1976 L*a*b* under D65."""
    matrix = ((0.4124, 0.3576, 0.1805), (0.2126, 0.7152, 0.0722), (0.0193, 0.1192, 0.9505))
    white = (0.9505, 1.0, 1.089)
    x, y, z = (
        cube(sum(m * c for m, c in zip(row, colour, strict=True)) / w)
        for row, w in zip(matrix, white, strict=True)
    )
    return 116 * y - 16, 500 * (x - y), 200 * (y - z)


def cube(share: float) -> float:
    return share ** (1 / 3) if share > 0.008856 else 7.787 * share + 16 / 116


def difference(one: str, other: str) -> float:
    """Distance in L*a*b* as somebody with deuteranopia sees the two."""
    seen = []
    for colour in (one, other):
        red, green, blue = (
            min(max(sum(m * c for m, c in zip(row, linear(colour), strict=True)), 0.0), 1.0)
            for row in DEUTERANOPIA
        )
        seen.append(lab((red, green, blue)))
    return float(sum((a - b) ** 2 for a, b in zip(*seen, strict=True)) ** 0.5)


def test_black_on_white_is_the_known_ratio() -> None:
    assert contrast("#000000", "#ffffff") == pytest.approx(21.0)  # WCAG 2, the largest ratio


@pytest.mark.parametrize("ink", [*INKS, *HATCHES])
@pytest.mark.parametrize("ground", GROUNDS)
def test_text_stands_out_from_its_ground(ink: str, ground: str) -> None:
    colour = {**INKS, **HATCHES}[ink]
    assert contrast(colour, GROUNDS[ground]) >= LEAST_CONTRAST


@pytest.mark.parametrize(("one", "other"), list(combinations(INKS, 2)))
def test_inks_stay_apart_without_red_and_green(one: str, other: str) -> None:
    assert difference(INKS[one], INKS[other]) >= LEAST_DIFFERENCE


def test_hatches_are_told_apart_without_colour() -> None:
    patterns = ["\n".join(drawn(hatch, 12, line) for line in (0, 1)) for hatch in LEGEND]
    assert len(set(patterns)) == len(LEGEND)
    states = [
        "\n".join(drawn(hatch_of("adhesive"), 12, line, state, cover) for line in (0, 1))
        for state, cover in (
            ("present", "whole"),
            ("reduced", "whole"),
            ("uncertain", "whole"),
            ("gone", "whole"),
            ("present", "part"),
            ("present", "spots"),
        )
    ]
    assert len(set(states)) == len(states)
    assert all(len(line) == 12 for pattern in states for line in pattern.split("\n"))


@pytest.mark.parametrize("width", range(1, 9))
@pytest.mark.parametrize("hatch", LEGEND, ids=[hatch.words for hatch in LEGEND])
@pytest.mark.parametrize("state", ["present", "reduced", "uncertain", "gone"])
def test_a_band_fills_its_width(width: int, hatch: object, state: str) -> None:
    for cover in ("whole", "part", "spots", "unknown", ""):
        for line in range(3):
            assert len(drawn(hatch, width, line, state, cover)) == width  # type: ignore[arg-type]


async def walk(*keys: str, look: str = "") -> list[str]:
    """The text of some screens, in the order in which they come."""
    texts = []
    async with sitting(mark="J14") as pilot:
        if look:
            pilot.app.theme = look
        for key in keys:
            await press(pilot, key)
            texts.append(screen_text(pilot.app))
    return texts


@pytest.mark.campaign
async def test_without_colour_every_screen_reads_the_same(monkeypatch: pytest.MonkeyPatch) -> None:
    keys = ("tab", "g", "l", "escape", "o", "down", "down", "down", "m")
    coloured = await walk(*keys)
    monkeypatch.setenv("NO_COLOR", "1")
    assert await walk(*keys) == coloured


@pytest.mark.campaign
async def test_in_the_palette_of_the_terminal_screens_read_the_same() -> None:
    keys = ("tab", "left_square_bracket", "o", "down", "down", "down", "m")
    own = await walk(*keys)
    for look in ("ansi-dark", "ansi-light"):
        assert await walk(*keys, look=look) == own
