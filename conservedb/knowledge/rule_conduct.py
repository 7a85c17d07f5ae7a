"""Rules about how work is done: photographs, support, spot tests.

Conduct is judged from a day that the department sets, and only for work certainly done on or
after it.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import NamedTuple

from conservedb.knowledge.joints import PARTINGS, JointEvent
from conservedb.knowledge.rule_case import Case, Dated, Finding, KnownPlace, KnownUse, Step
from conservedb.knowledge.rule_step_words import step_words
from conservedb.knowledge.rule_words import dated, day_words, listed, load_words

_RESTLESS = ("moving", "failed")
_FOUND = {"moving": "moves", "failed": "has failed"}
_SINCE = {"closed": "the closing", "moving": "it was found moving", "failed": "it failed"}
_NONE = "no support is on record"
_DISSOLVING = ("clean", "take apart", "remove earlier work", "integrate", "other")


def closed_without_photograph(case: Case) -> Iterator[Finding]:
    """A joint closed with no photograph on record of the faces that it hides."""
    start = case.settled.conduct_from
    if start is None:
        return
    for place in case.joints:
        for event in place.events:
            if event.kind == "closed" and start <= event.when.earliest <= case.day:
                yield from _unseen_faces(place, event)


def _unseen_faces(place: KnownPlace, closing: JointEvent) -> Iterator[Finding]:
    opened = [
        event.when.earliest
        for event in place.events
        if event.kind in PARTINGS and event.when.earliest <= closing.when.earliest
    ]
    since = max(opened, default=None)
    may_show = [
        photograph
        for photograph in place.photographs
        if photograph.earliest <= closing.when.latest
        and (since is None or photograph.latest >= since)
    ]
    if any(_surely_between(one, since, closing.when.latest) for one in may_show):
        return
    between = f"between {day_words(since)} and then" if since is not None else "before then"
    on = day_words(closing.when.latest)
    missing: tuple[str, ...] = ()
    if may_show:
        missing = (f"whether {listed([one.ref for one in may_show])} was taken {between}",)
    sentence = (
        f"{place.mark}: closed by {on}; no photograph dated {between} is cited for it, so what"
        " lay on its faces is hidden and not shown."
    )
    yield Finding(
        "closed-without-photograph",
        sentence,
        places=(place.mark,),
        missing=missing,
        load_kg=place.load_kg,
    )


def _surely_between(photograph: Dated, since: int | None, until: int) -> bool:
    after = since is None or photograph.earliest >= since
    return after and photograph.latest <= until


# -- support ------------------------------------------------------------------------------


class _Put(NamedTuple):
    """A support as it is recorded; `sure` where it and its date are."""

    words: str
    mark: str
    came: tuple[int, int]
    sure: bool


def loaded_without_support_record(case: Case) -> Iterator[Finding]:
    """A loaded joint that moves, has failed, or is to be worked on, with no support recorded."""
    for place in case.joints:
        if not place.loaded:
            continue
        if case.step is not None:
            if case.step.place == place.mark:
                yield from _planned(case, place, step_words(case.step, case.step.temperature_c))
            continue
        restless = [word for word in place.condition if word in _RESTLESS]
        if restless:
            yield from _unsupported(case, place, restless)


def _unsupported(case: Case, place: KnownPlace, restless: Sequence[str]) -> Iterator[Finding]:
    sure = place.condition == tuple(restless)
    found = listed([_FOUND[word] for word in restless], "or")
    found = found if sure else f"may be so that it {found}"
    why = _no_support(case, place)
    if why:
        why = "no support is on record since" if why == _NONE else why
        yield _support(place, f"{place.mark}: {found}; {load_words(place)}; {why}.", sure)


def _planned(case: Case, place: KnownPlace, step: str) -> Iterator[Finding]:
    why = _no_support(case, place)
    if why:
        sentence = (
            f"{place.mark}: {step} is planned at a joint that may open; {load_words(place)}; {why}."
            " A joint that lets go falls."
        )
        yield _support(place, sentence, True)


def _no_support(case: Case, place: KnownPlace) -> str:
    """Why no support is held to stand at a place; "" where one was certainly put in since."""
    put = [one for one in _put(place) if one.came[0] <= case.day]
    doubts = [_doubt(case, place, one) for one in put]
    if "" in doubts:
        return ""
    return f"support is recorded {listed(doubts)}: not known to stand" if doubts else _NONE


def _put(place: KnownPlace) -> Iterator[_Put]:
    for one in place.supported:
        days = (one.date.earliest, one.date.latest)
        yield _Put(f"{one.ref}, {dated(one.date)}", one.mark, days, not one.date.flags)
    for layer in place.present:
        if layer.role == "temporary support":
            sure = layer.there == "certain" and not layer.reduced
            yield _Put(f"{layer.ref}, {dated(layer.date)}", place.mark, layer.came, sure)


def _doubt(case: Case, place: KnownPlace, put: _Put) -> str:
    """Why a support is not known to stand at a place, "" where by the record it does.

    What was put in before a joint was last closed, or found restless, may have been taken out.
    """
    if put.mark != place.mark:
        another = "another place, " if put.mark in case.places else ""
        return f"for {another}{put.mark} ({put.words})"
    events = [one for one in place.events if one.kind != "opened" and one.when.earliest <= case.day]
    if not events or (case.step is not None and "closed" not in {one.kind for one in events}):
        return f"with no closing on record ({put.words})"
    last = max(events, key=lambda one: one.when.latest)
    what = _SINCE.get(last.kind, "what happened there last")
    if put.came[1] < last.when.earliest:
        return f"before {what} ({put.words})"
    sure = put.sure and not any(one.when.flags for one in events)
    if sure and last.when.latest <= put.came[0] and put.came[1] <= case.day:
        return ""
    return f"but not certainly there since {what} ({put.words})"


def _support(place: KnownPlace, sentence: str, sure: bool) -> Finding:
    missing = [f"what {place.mark} carries"] if place.load_kg is None else []
    missing.append(f"whether {place.mark} is supported")
    return Finding(
        "loaded-without-support-record",
        sentence,
        places=(place.mark,),
        missing=tuple(missing),
        certain=sure,
        load_kg=place.load_kg,
    )


# -- spot tests ---------------------------------------------------------------------------


def no_spot_test_before_solvent(case: Case) -> Iterator[Finding]:
    """An organic solvent used, or planned, at a place where no spot test with it is on record."""
    start = case.settled.conduct_from
    if start is None:
        return
    if case.step is not None:
        yield from _untried(case, case.step, start)
        return
    for use in case.uses:
        judged = use.kind in _DISSOLVING and start <= use.date.earliest <= case.day
        if judged and use.agent.has("organic solvent"):
            yield from _untested(case, use)


def _untried(case: Case, step: Step, start: int) -> Iterator[Finding]:
    if case.day < start or not step.agent.has("organic solvent"):
        return
    if not _tested(case, step.place, step.agent.key, case.day):
        sentence = (
            f"{step_words(step, step.temperature_c)} is planned at {step.place}; no spot test"
            " with it is on record there."
        )
        yield Finding(_UNTESTED, sentence, places=(step.place,))


def _untested(case: Case, use: KnownUse) -> Iterator[Finding]:
    agent = use.agent
    places = [m for m in use.places if not _tested(case, m, agent.key, use.date.latest)]
    if places:
        sentence = (
            f"{listed(places)}: {agent.name} was used in {use.ref}, {dated(use.date)}; no spot"
            " test with it by then is on record there."
        )
        yield Finding(_UNTESTED, sentence, places=tuple(places), interventions=(use.ref,))


def _tested(case: Case, mark: str, agent: str, by: int) -> bool:
    return any(
        test.place == mark and test.agents == {agent} and test.earliest <= by for test in case.tests
    )


_UNTESTED = "no-spot-test-before-solvent"
