"""What an answer looks like, as lines of text: bars, and how long the layers last.

Each ends with the command that draws the same into a file.
"""

from __future__ import annotations

import shlex
from collections.abc import Iterable, Iterator
from typing import TYPE_CHECKING

from conservedb.exchange.bars import bar_lines, bars_of
from conservedb.exchange.looking import remarks, remarks_of_survival, said_of_age
from conservedb.exchange.widths import wrapped
from conservedb.knowledge.research_words import say

if TYPE_CHECKING:
    from conservedb.knowledge.decades import Decades, Tally
    from conservedb.questions.survival import AtAge, Survival
    from conservedb.tui.researching import Asked

_MARGIN = "  "


def lines_of_bars(found: Tally | Decades, asked: Asked, by: str, width: int) -> tuple[str, ...]:
    """The bars, what must be known to read them, and the command that draws them."""
    said = (*remarks(found), _command(asked, f"--by {by}"))
    return (*bar_lines(bars_of(found), width), *_paragraphs(said, width))


def lines_of_survival(found: Survival, asked: Asked, width: int) -> tuple[str, ...]:
    """How many layers are still there by age, what that rests on, and the command for it."""
    said = (*remarks_of_survival(found), _command(asked, "--survival"))
    ages = [line for one in found.ages for line in _age(one, width)]
    return (*(ages or ["No age can be told."]), *_paragraphs(said, width))


def _command(asked: Asked, how: str) -> str:
    """How the picture gets into a file; a command knows no day but today."""
    today = ", as of today" if asked.on is not None else ""
    question = shlex.quote(say(asked.research))
    return f"As a picture in a file{today}: conservedb look {how} --picture FILE.svg {question}"


def _paragraphs(said: Iterable[str], width: int) -> Iterator[str]:
    for sentence in said:
        yield ""
        yield from wrapped(sentence, width)


def _age(one: AtAge, width: int) -> Iterator[str]:
    said = said_of_age(one)
    told = [", ".join(said.standing), f"estimated: {', '.join(said.estimate)}"]
    if said.with_possible:
        told.append(f"with the possible answers too: {said.with_possible}")
    yield f"after {one.years} years: {said.share} still there"
    for sentence in told:
        yield from (f"{_MARGIN}{line}" for line in wrapped(sentence, width - len(_MARGIN)))
