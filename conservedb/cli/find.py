"""conservedb find TEXT: records with every word of the text, or several of one object together.

JSON: {"text": what was looked for, of a long one the first 60 characters, "found": those called
exactly so first [{"kind" (a key of `questions.find_answers.KIND_WORDS`), "object": number or "",
"mark": mark or "", "label", "detail", "sentence": where the words stand, or "" where that is the
label, "spans": [[first, after the last character of a word, in the sentence or the label]],
"used": how much there is of a material, in words, else ""}], "counts": [{"kind", "total", "more":
whether there are more than that}], "near": [text that finds something, where this finds nothing],
"remark": sentence or ""}. Status 1 where nothing is found, with "error" beside "near".
"""

from __future__ import annotations

import shlex
from typing import TYPE_CHECKING, Any

import click

from conservedb.cli.ending import Failed
from conservedb.cli.settings import Settings, asking, shared_options

if TYPE_CHECKING:
    from conservedb.cli.printing import Lines
    from conservedb.questions.answers import Hit
    from conservedb.questions.find_answers import FoundAnswer


@click.command("find")
@click.argument("text", nargs=-1, required=True)
@click.option(
    "--most",
    default=8,
    show_default=True,
    type=click.IntRange(1, 60),
    help="How many records of a kind to show; all are counted.",
)
@shared_options
@click.pass_obj
def command(settings: Settings, text: tuple[str, ...], most: int) -> None:
    """Find records by their words: numbers, marks, names, notes, materials, people, papers.

    Every word must begin a word of the same record, in any order; where no record has them all,
    several of one object may have them together: an object with a location, a material, a role or
    a person. The number of an object before or after the rest looks at that object first; "joint
    14" finds the mark J14. A date finds what was done then, or perhaps then.

    Example: conservedb find SQ.1902.7 J1
    """
    from conservedb.cli.printing import print_json, print_lines
    from conservedb.questions.find import find

    words = " ".join(text)
    with asking(settings) as (connection, _):
        answer = find(connection, words, most)
    if not answer.groups:
        raise _nothing(words, answer)
    if settings.json:
        print_json(_json(words, answer))
    else:
        print_lines(_lines(answer))


def _nothing(words: str, answer: FoundAnswer) -> Failed:
    """Why there is no answer, and what finds something."""
    from conservedb.questions.display import shortened

    said = f"nothing on record has all of {shortened(words)!r}"
    if answer.remark:
        said += f": {answer.remark}"
    if answer.near:
        said += f"; did you mean: {' or '.join(map(repr, answer.near))}"
    return Failed(said, more={"near": list(answer.near)})


def _json(words: str, answer: FoundAnswer) -> dict[str, Any]:
    from conservedb.questions.display import shortened

    return {
        "text": shortened(words),
        "found": [{name: getattr(hit, name) for name in hit.__slots__} for hit in answer.hits],
        "counts": [
            {"kind": group.kind, "total": group.total, "more": group.more}
            for group in answer.groups
        ],
        "near": list(answer.near),
        "remark": answer.remark,
    }


def _lines(answer: FoundAnswer) -> Lines:
    from conservedb.cli.printing import Lines
    from conservedb.questions.find_answers import KIND_WORDS

    lines = Lines()
    lines.add("note", answer.remark)
    for group in answer.groups:
        one, heading = KIND_WORDS[group.kind]
        shown = len(group.hits)
        count = group.said if shown == group.total else f"{shown} of {group.said}"
        lines.gap()
        lines.add(heading, count)
        for hit in group.hits:
            detail = "" if hit.detail == hit.sentence else hit.detail
            lines.add(one, hit.object, hit.mark, hit.label, detail, depth=1)
            lines.add("words", _marked(hit), depth=2)
            if hit.used:
                asked = f"where: conservedb uses {shlex.quote(hit.detail)}"
                lines.add("used", hit.used, asked, depth=2)
    return lines


def _marked(hit: Hit) -> str:
    """The sentence in which the words stand, each between guillemets."""
    said, at = "", 0
    for first, last in hit.spans if hit.sentence else ():
        said += f"{hit.sentence[at:first]}«{hit.sentence[first:last]}»"
        at = last
    return said + hit.sentence[at:]
