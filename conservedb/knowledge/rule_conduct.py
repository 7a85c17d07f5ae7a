"""Rules about how work is done: photographs, support, spot tests.

Conduct is judged from a day that the department sets, and only for work certainly done on or
after it.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from conservedb.knowledge.joints import PARTINGS, JointEvent
from conservedb.knowledge.rule_case import Case, Dated, Finding, KnownPlace, KnownUse, Step
from conservedb.knowledge.rule_steps import step_words
from conservedb.knowledge.rule_words import dated, day_words, listed, load_words

_RESTLESS = ("moving", "failed")
_FOUND = {"moving": "moves", "failed": "has failed"}
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


def loaded_without_support_record(case: Case) -> Iterator[Finding]:
    """A loaded joint that moves, has failed, or is to be worked on, with no support recorded."""
    for place in case.joints:
        if not place.loaded:
            continue
        if case.step is not None:
            if case.step.place == place.mark and not _supported(place, None):
                yield _planned(place, step_words(case.step, case.step.temperature_c))
            continue
        restless = [word for word in place.condition if word in _RESTLESS]
        since = max((e.when.earliest for e in place.events if e.kind in _RESTLESS), default=None)
        if restless and not _supported(place, since):
            yield _unsupported(place, restless)


def _supported(place: KnownPlace, since: int | None) -> bool:
    temporary = any(layer.role == "temporary support" for layer in place.present)
    return temporary or any(since is None or one.latest >= since for one in place.supported)


def _unsupported(place: KnownPlace, restless: Sequence[str]) -> Finding:
    sure = place.condition == tuple(restless)
    found = listed([_FOUND[word] for word in restless], "or")
    found = found if sure else f"may be so that it {found}"
    sentence = f"{place.mark}: {found}; {load_words(place)}; no support is on record since."
    return _support(place, sentence, sure)


def _planned(place: KnownPlace, step: str) -> Finding:
    sentence = (
        f"{place.mark}: {step} is planned at a joint that may open; {load_words(place)}; no"
        " support is on record. A joint that lets go falls."
    )
    return _support(place, sentence, True)


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
        yield Finding(_UNTESTED, sentence, places=tuple(places))


def _tested(case: Case, mark: str, agent: str, by: int) -> bool:
    return any(
        test.place == mark and test.agents == {agent} and test.earliest <= by for test in case.tests
    )


_UNTESTED = "no-spot-test-before-solvent"
