"""An answer to look at, for both interfaces: its title, what must be said of it, its picture."""

from __future__ import annotations

from datetime import date
from typing import NamedTuple

from conservedb.dates import read as read_date
from conservedb.dates import say as say_date
from conservedb.exchange.bars import bars_of
from conservedb.exchange.pictures import About, Drawing
from conservedb.exchange.pictures_bars import bar_picture
from conservedb.exchange.pictures_curves import curve_picture
from conservedb.knowledge.decades import Count, Decades, Tally
from conservedb.knowledge.research import Research
from conservedb.knowledge.research_told import describe
from conservedb.knowledge.research_words import say
from conservedb.knowledge.survival import FEW, YEAR, Between
from conservedb.questions.survival import AtAge, LeftOut, Survival
from conservedb.questions.wording import listed

_LIMITS = (
    "The widest limits take nothing for likely: they run from the layers that are there for certain"
    " at an age to all that can be there; layers that are not as old yet widen them. A curve ends"
    " at the last age of which anything is known."
)


def counted_things(research: Research) -> str:
    """What the rows of a question are, in the plural."""
    return "layers and uses of agents" if research.rows == "layers" else research.rows


def way(by: str) -> str:
    """A way to count as words: "object kind"."""
    return by.replace("-", " ")


def remarks(found: Tally | Decades) -> tuple[str, ...]:
    """What must be known to read the bars."""
    if not found.total.total:
        return ("Nothing on record answers.",)
    said = [f"In all {_total(found.total)}, each counted once."]
    if isinstance(found, Tally):
        if found.shared:
            said.append(f"{found.shared:,} stand in several groups, and are counted in each.")
        return tuple(said)
    if found.several:
        said.append(
            f"{found.several:,} may lie in several decades, or have a date that is approximate or"
            " uncertain: these are possible in each decade and certain in none."
        )
    if found.undated.total:
        said.append(f"{found.undated.total:,} have no date, or one too wide to name a decade.")
    return tuple(said)


def _total(count: Count) -> str:
    """ "30 certain, 8 possible and 2 not identified"."""
    words = zip(count, ("certain", "possible", "not identified"), strict=True)
    return listed([f"{number:,} {word}" for number, word in words if number])


def nothing_answers(research: Research) -> str:
    """What is said instead of a chart of nothing."""
    return f"nothing on record answers: {describe(research)}"


def nothing_lasts(found: Survival, research: Research) -> str:
    """What is said instead of a curve that would rest on no layer."""
    left = _left_out(found.left_out)
    if not left:
        return nothing_answers(research)
    return (
        "no layer answers for certain, so that nothing tells how long they last (left out:"
        f" {left}): {describe(research)}"
    )


def _left_out(out: LeftOut) -> str:
    """What an estimate is without, in words; "" where it takes in all."""
    parts = (
        (out.possible, _many(out.possible, "possible answer")),
        (out.unidentified, f"{out.unidentified:,} not identified"),
        (out.agents, _many(out.agents, "use of an agent", "uses of agents")),
        (out.not_come, f"{out.not_come:,} not certainly laid by now"),
    )
    return listed([words for number, words in parts if number])


def remarks_of_survival(found: Survival) -> tuple[str, ...]:
    """What must be known to read how many are still there, by age."""
    left = _left_out(found.left_out)
    said = [
        f"It rests on {_many(found.layers, 'layer')}{f'; left out: {left}' if left else ''}.",
        "As recorded, a layer is there until its end is on record; as last seen, without such an"
        f" end, only until somebody saw it; {found.unseen:,} of them nobody saw since the laying.",
    ]
    if not found.recorded.exact:
        said.append(
            "Of what the dates leave open the estimate takes what is most likely. It has no band"
            " where dates are vague, and few layers tell little."
        )
    if found.recorded.few_from < found.recorded.horizon:
        said.append(_few(found.recorded.few_from))
    if found.qualified:
        said.append(
            f"Of {found.qualified:,} a date is approximate or uncertain; it is taken as written."
        )
    if found.chosen:
        said.append(
            f"The question asks for {listed(found.chosen)}: it chooses layers that lasted long"
            " enough for that, and so shows more of them than there were."
        )
    said.append(
        "Partly removed counts as there. What went before anybody recorded it is in no record."
    )
    return tuple(said)


class AgeSaid(NamedTuple):
    """What is known of layers at one age, in words."""

    share: str
    standing: tuple[str, ...]
    estimate: tuple[str, ...]
    with_possible: str


def said_of_age(one: AtAge) -> AgeSaid:
    """The certain share first, then what that rests on, then the estimates."""
    there, ended, unknown = one.standing
    standing = (
        *(f"{there:,} there for certain", f"{ended:,} ended for certain"),
        f"{unknown:,} not known",
    )
    estimate = [f"{_share(one.recorded)} as recorded"]
    if one.band is not None:
        estimate.append(f"95 % band {_share(one.band)}")
    estimate.append(f"{_share(one.seen)} as last seen" if one.seen else "not known as last seen")
    estimate.append(f"{_many(one.followed, 'layer')} still followed")
    possible = "" if one.with_possible is None else _share(one.with_possible)
    return AgeSaid(_share(one.standing.share), standing, tuple(estimate), possible)


def _share(between: Between) -> str:
    """ "82 %", or "79 to 85 %" where the dates leave it open."""
    low, high = f"{between.low * 100:.0f}", f"{between.high * 100:.0f}"
    return f"{high} %" if low == high else f"{low} to {high} %"


def _few(from_day: int) -> str:
    """From which age on the estimate rests on a few layers."""
    years = int(from_day / YEAR)
    when = (
        f"From {years} years of age on fewer than {FEW} layers are followed"
        if years
        else f"Fewer than {FEW} layers are followed at any age"
    )
    return f"{when}: one more or less moves the estimate far."


def bars_drawing(found: Tally | Decades, research: Research, by: str, today: date) -> Drawing:
    """The counts as a picture.

    Raises:
        DatabaseProblem: there are more bars than a picture can hold.
    """
    what = counted_things(research)
    title = f"{what[:1].upper()}{what[1:]} by {way(by)}"
    about = About(title, say(research), day_words(today), remarks(found))
    return bar_picture(bars_of(found), about, way(by), what)


def survival_drawing(found: Survival, research: Research, today: date) -> Drawing:
    """How many are still there, by age, as a picture."""
    said = (*remarks_of_survival(found), _LIMITS)
    about = About("Layers still there, by age", say(research), day_words(today), said)
    return curve_picture(found.recorded, found.seen, about)


def _many(number: int, noun: str, plural: str = "") -> str:
    return f"{number:,} {noun if number == 1 else plural or noun + 's'}"


def day_words(day: date) -> str:
    """ "14 June 1950"."""
    return say_date(read_date(day.isoformat()))
