"""A picture as SVG, in plain XML: https://www.w3.org/TR/SVG11/."""

from __future__ import annotations

from typing import assert_never
from xml.etree import ElementTree as xml

from conservedb.exchange.pictures import PAPER, Box, Drawing, Shape, Stroke, Words
from conservedb.questions.display import show

_NOT_IN_XML = str.maketrans(dict.fromkeys("\ufffe\uffff", "\ufffd"))
"""What no XML may hold and `show` leaves: https://www.w3.org/TR/xml/#charsets."""


def svg(drawing: Drawing) -> bytes:
    """The drawing as an SVG file; its title and description are read aloud by screen readers."""
    width, height = _number(drawing.width), _number(drawing.height)
    root = xml.Element(
        "svg",
        {
            "xmlns": "http://www.w3.org/2000/svg",
            "width": width,
            "height": height,
            "viewBox": f"0 0 {width} {height}",
            "font-family": "sans-serif",
            "role": "img",
        },
    )
    xml.SubElement(root, "title").text = _text(drawing.title)
    xml.SubElement(root, "desc").text = _text(drawing.description)
    for shape in (Box(0, 0, drawing.width, drawing.height, PAPER), *drawing.shapes):
        _add(root, shape)
    xml.indent(root)
    made: bytes = xml.tostring(root, encoding="utf-8", xml_declaration=True)
    return made + b"\n"


def _add(root: xml.Element, shape: Shape) -> None:
    match shape:
        case Box(x, y, width, height, fill, line):
            sizes = zip(("x", "y", "width", "height"), (x, y, width, height), strict=True)
            numbers = {name: _number(size) for name, size in sizes}
            colours = {"fill": fill or "none"} | ({"stroke": line} if line else {})
            xml.SubElement(root, "rect", numbers | colours)
        case Stroke(points, colour, width):
            through = " ".join(f"{_number(x)},{_number(y)}" for x, y in points)
            drawn = {"points": through, "fill": "none", "stroke": colour}
            xml.SubElement(root, "polyline", drawn | {"stroke-width": _number(width)})
        case Words(x, y, text, size, anchor, colour):
            placed = {"x": _number(x), "y": _number(y), "font-size": str(size)}
            styled = {"text-anchor": anchor, "fill": colour}
            xml.SubElement(root, "text", placed | styled).text = _text(text)
        case _:
            assert_never(shape)


def _text(text: str) -> str:
    return show(text).translate(_NOT_IN_XML)


def _number(number: float) -> str:
    return f"{number:.2f}".rstrip("0").rstrip(".")
