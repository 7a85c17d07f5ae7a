"""The views for those who ask in SQL; their names and columns stay as they are.

They are derived objects like the triggers. People's own questions should ask them and not the
tables, which change with the schema.
"""

from __future__ import annotations

from conservedb.store import views_of_lists as lists
from conservedb.store import views_of_objects as objects
from conservedb.store import views_of_work as work
from conservedb.store.view_of_history import HISTORY
from conservedb.store.view_of_statements import STATED
from conservedb.store.view_shape import View

VIEWS: tuple[View, ...] = (
    objects.OBJECTS,
    objects.COMPONENTS,
    objects.PLACES,
    objects.JOINT_EVENTS,
    objects.LAYERS,
    objects.LAYER_SIDES,
    objects.REMOVALS,
    objects.SIGHTINGS,
    HISTORY,
    work.TREATMENTS,
    work.INTERVENTIONS,
    work.AGENTS,
    work.OBSERVATIONS,
    work.READINGS,
    work.SAMPLES,
    lists.CLASSES,
    lists.MATERIALS,
    lists.PEOPLE,
    lists.SOURCES,
    STATED,
    lists.RULES,
    lists.QUESTIONS,
    lists.CHANGES,
)


def statements() -> list[str]:
    """The SQL of every view."""
    return [view.statement for view in VIEWS]
