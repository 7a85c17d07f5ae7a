"""Whether a step just written is authorised: asked before it is kept."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from sqlalchemy import Connection, select

from conservedb.exchange.faults import Fault
from conservedb.knowledge.authority import STANDING_UNSAID
from conservedb.knowledge.authority_outcomes import TO_BE_RATIFIED
from conservedb.questions.authority import authority_of_step
from conservedb.records.treatments import intervention


@dataclass(frozen=True, slots=True)
class Standing:
    """Sentences on what authorises a step: what it lacks, and what is only to be known."""

    lacks: tuple[str, ...] = ()
    notices: tuple[str, ...] = ()


def standing(connection: Connection, owner: int, ref: str) -> Standing:
    """What the step of that ref lacks; nothing where there is no such step yet.

    First aid is recorded first and ratified afterwards: that it is not ratified is a notice.
    """
    statement = select(intervention.c.id).where(
        intervention.c.object_id == owner, intervention.c.ref == ref.strip()
    )
    record = connection.execute(statement).scalar()
    if record is None:
        return Standing()
    found = authority_of_step(connection, owner, record)
    lacks = [one for one in found.missing if one.outcome != TO_BE_RATIFIED]
    ratify = [one for one in found.missing if one.outcome == TO_BE_RATIFIED]
    lacks += [one for one in found.uncertain if STANDING_UNSAID in one.sentence]
    uncertain = [one for one in found.uncertain if one not in lacks]
    notices = [one.sentence for one in (*uncertain, *ratify)]
    if found.start is not None:
        notices.append(found.start.sentence)
    return Standing(tuple(one.sentence for one in lacks), tuple(notices))


def lacking(now: Standing, before: Standing, cells: Mapping[str, str]) -> Iterable[Fault]:
    """A fault where a step is not authorised and nobody says why it was begun.

    What it lacked before an amendment is no reason to refuse the amendment.
    """
    lacks = [sentence for sentence in now.lacks if sentence not in before.lacks]
    explained = all(
        cells.get(name, "").strip() for name in ("unauthorised_reason", "unauthorised_by")
    )
    if not lacks or explained:
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
