"""A picture as PNG, drawn by Pillow.

The letters are those of a font of the computer with as many writings as can be; without any, those
that Pillow brings along. A letter that the font lacks comes out as an empty box; SVG leaves the
choice of fonts to whoever shows it.
"""

from __future__ import annotations

from contextlib import suppress
from functools import cache
from io import BytesIO
from typing import Any, assert_never

from conservedb.exchange.pictures import PAPER, Box, Drawing, Shape, Stroke, Words
from conservedb.questions.display import show

SCALE = 2
"""Dots for each unit of the layout: enough for print at the width of a page."""
FONTS = ("DejaVuSans.ttf", "NotoSans-Regular.ttf", "arial.ttf", "Arial.ttf")
_ANCHORS = {"start": "ls", "middle": "ms", "end": "rs"}


def png(drawing: Drawing) -> bytes:
    """The drawing as a PNG file."""
    from PIL import Image, ImageDraw

    size = round(drawing.width * SCALE), round(drawing.height * SCALE)
    image = Image.new("RGB", size, PAPER)
    pen = ImageDraw.Draw(image)
    for shape in drawing.shapes:
        _draw(pen, shape)
    made = BytesIO()
    image.save(made, "PNG", optimize=True)
    return made.getvalue()


def _draw(pen: Any, shape: Shape) -> None:  # noqa: ANN401 (Pillow is imported when needed)
    match shape:
        case Box(x, y, width, height, fill, line):
            if width * SCALE >= 1 and height * SCALE >= 1:
                corners = [x * SCALE, y * SCALE, (x + width) * SCALE - 1, (y + height) * SCALE - 1]
                pen.rectangle(corners, fill=fill or None, outline=line or None, width=SCALE)
        case Stroke(points, colour, width):
            dots = [(x * SCALE, y * SCALE) for x, y in points]
            pen.line(dots, fill=colour, width=max(round(width * SCALE), 1))
        case Words(x, y, text, size, anchor, colour):
            letters = _letters(size * SCALE)
            at = x * SCALE, y * SCALE
            pen.text(at, show(text), fill=colour, font=letters, anchor=_ANCHORS[anchor])
        case _:
            assert_never(shape)


@cache
def _letters(size: int) -> Any:  # noqa: ANN401 (a font of Pillow's)
    from PIL import ImageFont

    for font in FONTS:
        with suppress(OSError):
            return ImageFont.truetype(font, size)
    return ImageFont.load_default(size)
