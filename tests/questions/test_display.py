"""Signs of direction turn no line round: not in a terminal, not in a picture; in data they stay."""

from __future__ import annotations

import json
import sys
from unicodedata import bidirectional
from xml.etree import ElementTree as xml

import pytest

from conservedb.cli.printing import Lines
from conservedb.exchange.bars import Bar, bar_lines
from conservedb.exchange.pictures import About
from conservedb.exchange.pictures_bars import bar_picture
from conservedb.exchange.pictures_svg import svg
from conservedb.exchange.widths import fitted, wrapped
from conservedb.knowledge.decades import Count
from conservedb.questions.display import escape_json, show

CLASSES = {"LRE", "RLE", "LRO", "RLO", "PDF", "LRI", "RLI", "FSI", "PDI"}
"""Of the bidirectional algorithm: Unicode Standard Annex 9, table 4; from Python's own tables."""
MARKS = "\u061c\u200e\u200f"
"""Unicode's PropList.txt calls these three Bidi_Control too."""
CONTROLS = [one for one in map(chr, range(sys.maxunicode)) if bidirectional(one) in CLASSES]


def test_these_are_all() -> None:
    assert len([*CONTROLS, *MARKS]) == 12  # PropList.txt, Bidi_Control


@pytest.mark.parametrize("sign", [*CONTROLS, *MARKS], ids=ascii)
def test_a_sign_of_direction_is_shown_and_not_obeyed(sign: str) -> None:
    text, seen = f"a{sign}b", f"a<{ord(sign):04x}>b"
    assert show(text) == seen
    lines = Lines()
    lines.add(text, text)
    assert list(lines) == [f"{seen}: {seen}"]
    assert next(bar_lines([Bar(text, Count(1))])).startswith(seen)
    assert (fitted(text, 40), wrapped(text, 40)) == (seen, [seen])
    about = About(text, text, "today", (text,))
    drawn = svg(bar_picture([Bar(text, Count(1))], about, "person", "layers"))
    assert sign not in drawn.decode()
    said = [node.text for node in xml.fromstring(drawn).iter() if node.text]
    assert sum(seen in text for text in said) >= 5  # title, title for readers, label, remarks


@pytest.mark.parametrize("sign", [*CONTROLS, *MARKS, "\u180e", "\u206e", "\ufff9"], ids=ascii)
def test_in_json_it_stays_data(sign: str) -> None:
    written = escape_json(json.dumps([f"a{sign}b"], ensure_ascii=False))
    assert sign not in written and json.loads(written) == [f"a{sign}b"]
    assert sign not in show(sign)
