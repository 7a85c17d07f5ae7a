"""Whether a plan was changed after it was authorised: the change log knows.

Who signs a plan signs it as it then stood; leave given for other words is no leave for these.
"""

from __future__ import annotations

from sqlalchemy import Connection, text

_SINCE = text(
    """
WITH given(first, plan) AS (
  SELECT (SELECT min(set_id) FROM change
          WHERE table_name = 'authorisation' AND record_id = :decision),
         (SELECT plan_id FROM authorisation WHERE id = :decision)
),
touched(number) AS (
  SELECT set_id FROM change
  WHERE table_name IN ('plan', 'plan_aim', 'plan_person')
  AND record_id = (SELECT plan FROM given)
  UNION
  SELECT set_id FROM change
  WHERE table_name IN ('planned_step', 'planned_step_component', 'planned_step_place')
  AND record_id IN (SELECT id FROM planned_step WHERE plan_id = (SELECT plan FROM given))
)
SELECT id, who, at, coalesce(undoes_id, 0) AS undoes, (SELECT first FROM given) AS first
FROM change_set
WHERE id IN (SELECT number FROM touched) AND id > (SELECT first FROM given)
AND hash IS NOT NULL AND kind NOT IN ('upgraded', 'found')
ORDER BY id DESC
"""
)


def rewritten(connection: Connection, decision: int) -> str:
    """Who changed the plan since a decision on it was written down, in words; "" where nobody did.

    What was changed and taken back again since counts for nothing.
    """
    from conservedb.store.connect import raw_of
    from conservedb.store.log import taken_back

    found = connection.execute(_SINCE, {"decision": decision}).all()
    if not found:
        return ""
    gone = taken_back(raw_of(connection))
    for row in found:
        if row.id not in gone and row.undoes <= row.first:
            return (
                f"the plan was changed after that, by {row.who} on {row.at[:10]} (change set"
                f" {row.id})"
            )
    return ""
