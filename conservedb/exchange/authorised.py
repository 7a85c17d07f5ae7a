"""Whether a step just written is authorised, and as planned: asked before it is kept."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from sqlalchemy import Connection, select

from conservedb.exchange.faults import Fault
from conservedb.knowledge.authority import STANDING_UNSAID
from conservedb.knowledge.authority_outcomes import TO_BE_RATIFIED
from conservedb.questions.authority import how_step_stands
from conservedb.records.treatments import intervention


@dataclass(frozen=True, slots=True)
class Standing:
    """How a step stands, in sentences and clauses.

    Attributes:
        lacks: what it lacks to be authorised.
        notices: what is only to be known.
        beside: how it differs from the planned step that it is linked to.
        explained: whether somebody says why it was begun without authorisation.
        deviation: why it is not as planned.
    """

    lacks: tuple[str, ...] = ()
    notices: tuple[str, ...] = ()
    beside: tuple[str, ...] = ()
    explained: bool = False
    deviation: str = ""


def standing(connection: Connection, owner: int, ref: str) -> Standing:
    """How the step of that ref stands; nothing where there is no such step yet.

    First aid is recorded first and ratified afterwards: that it is not ratified is a notice.
    """
    statement = select(intervention.c.id).where(
        intervention.c.object_id == owner, intervention.c.ref == ref.strip()
    )
    record = connection.execute(statement).scalar()
    if record is None:
        return Standing()
    made, found, beside = how_step_stands(connection, owner, record)
    lacks = [one for one in found.missing if one.outcome != TO_BE_RATIFIED]
    ratify = [one for one in found.missing if one.outcome == TO_BE_RATIFIED]
    lacks += [one for one in found.uncertain if STANDING_UNSAID in one.sentence]
    uncertain = [one for one in found.uncertain if one not in lacks]
    notices = [one.sentence for one in (*uncertain, *ratify)]
    if found.start is not None:
        notices.append(found.start.sentence)
    return Standing(
        tuple(one.sentence for one in lacks),
        tuple(notices),
        tuple(one.clause for one in beside if one.certain),
        bool(made.unauthorised_reason.strip() and made.unauthorised_by.strip()),
        made.deviation,
    )


def lacking(now: Standing, before: Standing) -> Iterable[Fault]:
    """A fault where a step is not as planned, or not authorised, and nobody says why.

    What it lacked before an amendment is no reason to refuse the amendment.
    """
    beside = [clause for clause in now.beside if clause not in before.beside]
    if beside and not now.deviation.strip():
        yield Fault(
            "interventions.csv",
            0,
            "",
            "",
            f"the step is not as planned ({'; '.join(beside)}), and why is not said",
            "say under deviation why it was done otherwise, or link the planned step that it"
            " carries out (planned_step), or none",
        )
    lacks = [sentence for sentence in now.lacks if sentence not in before.lacks]
    if not lacks or now.explained:
        return
    said = " ".join(lacks).rstrip(".")
    yield Fault(
        "interventions.csv",
        0,
        "",
        "",
        f"the step is not authorised ({said})",
        "have it authorised first, say whether it was planned, routine care, first aid or"
        " historic (standing), or say why it was begun all the same (unauthorised_reason)"
        " and who decided that (unauthorised_by)",
    )
