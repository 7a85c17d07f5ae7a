"""Pictures of an answer: the shapes add up, text is data, and no file is written over.

SVG is read with Python's own parser, PNG with Pillow: whether it reads in grey is looked at too.
"""

from __future__ import annotations

from io import BytesIO
from itertools import pairwise
from pathlib import Path
from xml.etree import ElementTree as xml

import pytest
from PIL import Image, ImageFont

from conservedb.dates import NEVER
from conservedb.exchange.bars import Bar
from conservedb.exchange.pictures import (
    INK,
    MARGIN,
    PAPER,
    WIDTH,
    About,
    Box,
    Drawing,
    Stroke,
    Words,
    dashed,
    hatched,
    room,
    write_picture,
)
from conservedb.exchange.pictures_bars import MOST, bar_picture
from conservedb.exchange.pictures_curves import (
    _BAND,
    _EDGE,
    _THICK,
    _THIN,
    _WIDEST,
    curve_picture,
)
from conservedb.exchange.pictures_png import SCALE, png
from conservedb.exchange.pictures_svg import svg
from conservedb.exchange.widths import cells, one_line, wrapped
from conservedb.knowledge.decades import Count
from conservedb.knowledge.survival import FEW, Age, Curve, days
from conservedb.store.problems import DatabaseProblem
from tests.nasty import NASTY

SVG = "{http://www.w3.org/2000/svg}"
ABOUT = About("Epoxy by decade", "material epoxy", "2 November 2026", ("A remark.",))
BARS = (Bar("1930s", Count(4, 2, 1)), Bar("1940s", Count(0, 3)), Bar("1950s", Count()))


def bars() -> Drawing:
    return bar_picture(BARS, ABOUT, "decade", "layers")


def curve() -> Drawing:
    vague = [Age(days(3), days(9), days(9)), Age(days(20), days(20), days(20))]
    there = [Age(days(30) + 1, NEVER, days(30))]
    return curve_picture(Curve([*vague, *there]), Curve(vague), ABOUT)


def texts(drawing: Drawing) -> list[str]:
    return [shape.text for shape in drawing.shapes if isinstance(shape, Words)]


def test_what_stands_around_the_bars() -> None:
    said = texts(bars())
    for words in (
        *("Epoxy by decade", "decade", "number of layers", "1930s", "4 + 2 + 1", "0 + 3", "0"),
        *("certain", "possible", "not identified", "Question: material epoxy", "A remark."),
        "As on record 2 November 2026; conservedb 0.1.0.",
    ):
        assert words in said, words
    assert bars().title == "Epoxy by decade"
    assert bars().description == (
        "layers by decade, certain + possible + not identified:"
        " 1930s: 4 + 2 + 1; 1940s: 0 + 3; 1950s: 0"
    )


def test_bars_are_as_long_as_their_numbers() -> None:
    drawing = bars()
    marks = {s.text: s.x for s in drawing.shapes if isinstance(s, Words) and s.anchor == "middle"}
    unit = (marks["8"] - marks["0"]) / 8
    solid = [s for s in drawing.shapes if isinstance(s, Box) and s.fill == INK and s.height == 16]
    assert [box.x for box in solid] == [marks["0"]]
    assert [box.width for box in solid] == pytest.approx([4 * unit])
    blank = [s for s in drawing.shapes if isinstance(s, Box) and s.line and s.height == 16]
    assert blank[-1].width == pytest.approx(unit)
    assert blank[-1].x == pytest.approx(marks["0"] + 6 * unit)  # stacked on certain and possible


def test_hatching_stays_within_its_box() -> None:
    for box in (Box(10, 20, 100, 16), Box(10, 20, 3, 40), Box(0, 0, 1, 1)):
        shapes = list(hatched(box))
        assert len(shapes) > 1 or box.width == 1
        for shape in shapes:
            assert isinstance(shape, Stroke)
            for x, y in shape.points:
                assert box.x <= x <= box.x + box.width and box.y <= y <= box.y + box.height


def test_dashes_cover_half_of_a_line() -> None:
    line = ((0.0, 0.0), (100.0, 0.0), (100.0, 50.0))
    drawn = [stroke.points for stroke in dashed(line)]
    length = sum(abs(b[0] - a[0]) + abs(b[1] - a[1]) for a, b in drawn)
    assert length == pytest.approx(75)
    assert list(dashed(((5.0, 5.0), (5.0, 5.0)))) == []


def test_a_picture_holds_no_more_bars_than_can_be_read() -> None:
    many = [Bar(str(number), Count(1)) for number in range(MOST + 1)]
    assert bar_picture(many[:-1], ABOUT, "person", "layers").height < 6000
    with pytest.raises(DatabaseProblem, match="holds 200 bars, and these are 201; ask a narrower"):
        bar_picture(many, ABOUT, "person", "layers")


@pytest.mark.parametrize("drawing", [bars(), curve()], ids=["bars", "curve"])
def test_everything_lies_on_the_paper(drawing: Drawing) -> None:
    for shape in drawing.shapes:
        if isinstance(shape, Box):
            spots = [(shape.x, shape.y), (shape.x + shape.width, shape.y + shape.height)]
        elif isinstance(shape, Words):
            back = {"start": 0, "middle": 0.5, "end": 1}[shape.anchor] * room(
                shape.text, shape.size
            )
            spots = [(shape.x - back, shape.y), (shape.x - back + room(shape.text), shape.y)]
        else:
            spots = list(shape.points)
        for x, y in spots:
            assert 0 <= x <= drawing.width and 0 <= y <= drawing.height, shape


@pytest.mark.parametrize("text", NASTY)
def test_user_text_is_data_in_an_svg(text: str) -> None:
    about = About(text, text, "today", (text,))
    drawing = bar_picture([Bar(text, Count(1))], about, "person", "layers")
    root = xml.fromstring(svg(drawing))
    assert {node.tag.removeprefix(SVG) for node in root.iter()} == {
        *("svg", "title", "desc", "rect", "polyline", "text")
    }
    for node in root.iter():
        assert set(node.attrib) <= {
            *("width", "height", "viewBox", "font-family", "role", "x", "y", "fill", "stroke"),
            *("points", "stroke-width", "font-size", "text-anchor"),
        }


def test_no_xml_breaks_on_what_xml_cannot_hold() -> None:
    for text in ("\ufffe\uffff", "\ud800", "\x00\x1b", "]]><![CDATA[", "&amp;<b>"):
        root = xml.fromstring(svg(bar_picture([Bar(text, Count(1))], ABOUT, "by", "layers")))
        labels = [node.text for node in root.iter(f"{SVG}text")]
        assert len(labels) == 11
    assert "&amp;<b>" in labels


@pytest.mark.parametrize("text", [*NASTY[:8], NASTY[12], NASTY[16], NASTY[-1]])
def test_user_text_is_data_in_a_png(text: str) -> None:
    about = About(text[:2000], text[:2000], "today")
    image = Image.open(BytesIO(png(bar_picture([Bar(text, Count(1))], about, "person", "layers"))))
    assert image.format == "PNG" and image.width == WIDTH * SCALE


def test_both_kinds_show_the_same() -> None:
    root = xml.fromstring(svg(curve()))
    assert [node.text for node in root.iter(f"{SVG}text")] == texts(curve())
    assert len(list(root.iter(f"{SVG}polyline"))) == sum(
        isinstance(shape, Stroke) for shape in curve().shapes
    )


def test_certain_and_possible_differ_in_grey() -> None:
    """Solid is dark all over; hatched is a mixture of dark and paper, blank is paper."""
    grey = Image.open(BytesIO(png(bars()))).convert("L")
    drawing = bars()
    solid = next(s for s in drawing.shapes if isinstance(s, Box) and s.fill == INK and s.x > MARGIN)

    def share_of_dark(x: float, width: float) -> float:
        y = solid.y
        corners = (x + 2, y + 2, x + width - 2, y + solid.height - 2)
        part = grey.crop(tuple(round(at * SCALE) for at in corners))  # type: ignore[arg-type]
        values = part.tobytes()
        return sum(value < 128 for value in values) / len(values)

    unit = solid.width / 4
    assert share_of_dark(solid.x, 4 * unit) == 1
    assert 0.1 < share_of_dark(solid.x + 4 * unit, 2 * unit) < 0.6
    assert share_of_dark(solid.x + 6 * unit, unit) == 0


def test_a_curve_says_what_is_certain_below() -> None:
    said = texts(curve())
    for words in (
        *("age in years", "still there", "as recorded", "as last seen", "left open by the dates"),
        *("followed so far", "there for certain", "ended for certain", "not known", "100 %"),
    ):
        assert words in said, words
    told = curve().description.removeprefix("still there as recorded, by age: ").split("; ")
    assert [one.partition(",")[0] for one in told] == [
        *("0 years: 100%", "5 years: 67% to 100%", "10 years: 67%", "15 years: 67%"),
        *("20 years: 33%", "25 years: 33%", "30 years: 33%"),
    ]
    assert told[1].endswith(", within the widest limits 67% to 100%, 3 followed")


def exact() -> Curve:
    """Twelve layers that ended after 1 to 12 years, and four that are there after 14 to 20."""
    ended = [Age(days(at), days(at), 0) for at in range(1, 13)]
    return Curve([*ended, *(Age(days(at), NEVER, 0) for at in (14, 16, 18, 20))])


MARKS = (0, 5, 10, 15, 20)


def of_axis(drawing: Drawing) -> tuple[float, float, float]:
    """Where 0 and 20 years lie, and 100 %."""
    words = {s.text: s for s in reversed(drawing.shapes) if isinstance(s, Words)}
    return words["0"].x, words["20"].x, words["100 %"].y - 4


def test_the_widest_limits_are_what_is_certain_and_what_is_possible() -> None:
    drawing, found = curve_picture(exact(), exact(), ABOUT), exact()
    boxes = [s for s in drawing.shapes if isinstance(s, Box) and s.fill == _WIDEST and s.x > MARGIN]
    left, right, top = of_axis(drawing)
    assert [boxes[0].x, boxes[-1].x + boxes[-1].width] == pytest.approx([left, right])
    for one, after in pairwise(boxes):
        assert one.x + one.width == after.x  # side by side, without a gap
    for years in (0.5, 5.5, 13, 15, 17, 19):
        x = left + (right - left) * years / 20
        (box,) = (one for one in boxes if one.x <= x < one.x + one.width)
        low, high = found.standing(days(years)).share
        assert box.y == pytest.approx(top + 300 * (1 - high))
        assert box.y + box.height == pytest.approx(top + 300 * (1 - low))
    assert found.standing(days(15)).share == (3 / 16, 4 / 16)
    assert "widest limits" in texts(drawing)


def test_a_curve_is_thin_where_few_are_followed_and_ends_where_none_is() -> None:
    drawing = curve_picture(exact(), exact(), ABOUT)
    left, right, top = of_axis(drawing)
    below = [s for s in drawing.shapes if isinstance(s, Stroke) and s.points[0][1] >= top]
    thick = [s for s in below if s.colour == INK and s.width == _THICK]
    thin = [s for s in below if s.colour == INK and s.width == _THIN]
    few = left + (right - left) * 12 / 20  # after the twelfth end four are left
    assert max(x for s in thick for x, _ in s.points) == pytest.approx(few, abs=0.2)
    assert min(x for s in thin for x, _ in s.points) == pytest.approx(few, abs=0.2)
    assert max(x for s in thin for x, _ in s.points) == pytest.approx(right, abs=0.2)
    assert f"fewer than {FEW} followed" in texts(drawing)
    words = [s for s in drawing.shapes if isinstance(s, Words)]
    (row,) = (s.y for s in words if s.text == "still followed")
    shown = [s.text for s in words if s.y == row and s.anchor == "middle"]
    assert shown == [f"{exact().followed(days(years))}" for years in MARKS]
    many = Curve([Age(days(9) + 1, NEVER, 0)] * 7)
    assert f"fewer than {FEW} followed" not in texts(curve_picture(many, many, ABOUT))


def test_the_parts_of_a_curve_differ_in_grey() -> None:
    """Paper, widest limits, band and grid are each at least 4 % of grey apart."""
    greys = [
        Image.new("RGB", (1, 1), colour).convert("L").tobytes()[0]
        for colour in (PAPER, _WIDEST, _BAND, _EDGE, INK)
    ]
    assert all(light - dark >= 0.04 * 255 for light, dark in pairwise(greys))


def test_an_exact_curve_has_a_band_and_a_vague_one_has_none() -> None:
    exact = Curve([Age(days(2), days(2), 0), Age(days(5), days(5), 0), Age(days(9), NEVER, 0)])
    assert "95 % band" in texts(curve_picture(exact, exact, ABOUT))
    assert "95 % band" not in texts(curve())


def test_a_curve_of_nothing_is_a_picture_too() -> None:
    assert xml.fromstring(svg(curve_picture(Curve([]), Curve([]), ABOUT))).tag == f"{SVG}svg"


@pytest.mark.parametrize("name", ["a.svg", "a.PNG"])
def test_a_file_is_written_once(tmp_path: Path, name: str) -> None:
    path = tmp_path / name
    write_picture(bars(), path)
    made = path.read_bytes()
    assert made == (svg if name.endswith("svg") else png)(bars())
    with pytest.raises(DatabaseProblem, match="already exists; name a new file"):
        write_picture(curve(), path)
    assert path.read_bytes() == made
    assert [one.name for one in tmp_path.iterdir()] == [name]


def test_a_file_that_cannot_be_written(tmp_path: Path) -> None:
    with pytest.raises(DatabaseProblem, match=r"no name of a picture; end it with \.svg or \.png"):
        write_picture(bars(), tmp_path / "a.gif")
    with pytest.raises(DatabaseProblem, match="cannot be written"):
        write_picture(bars(), tmp_path / "none" / "a.svg")
    assert not list(tmp_path.iterdir())


@pytest.mark.parametrize(
    "text", [*(one for one in NASTY if one.isascii()), "WILLIAM GRAHAM & SONS"]
)
def test_no_text_is_wider_than_the_room_made_for_it(text: str) -> None:
    """Held against a face that is wide among those of computers."""
    try:
        font = ImageFont.truetype("DejaVuSans.ttf", 100)
    except OSError:
        pytest.skip("this computer has no DejaVu Sans")
    line = one_line(text)[:200]
    assert font.getlength(line) <= room(line, 100) <= 1.6 * font.getlength(line)


def test_lines_are_broken_between_words() -> None:
    assert wrapped("one two three", 7) == ["one two", "three"]
    assert wrapped("abcdefgh ij", 3) == ["abc", "def", "gh", "ij"]
    assert wrapped("", 5) == [""]
    assert all(cells(line) <= 10 for text in NASTY for line in wrapped(text, 10))
