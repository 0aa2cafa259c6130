"""A twin: the open plan on a duplicate of its car with one field changed, or why there is none."""

from __future__ import annotations

import msgspec

from sim.plan import Plan
from sim.problems import PlanError
from sim.wreckcheck import check_wreck
from ui.state.car_fields import FIELDS, changed

HANDLE = ("latch", "handle_n")
"""Fields that may be changed on a saved start: a handle is pulled after the wreck, by whoever comes to it."""


def twin_of(plan: Plan, name: str, value: object) -> Plan:
    """Return the plan on a car with one field changed, and what has to go with it.

    Parameters
    ----------
    name : of the field, as the form of the car names it;  value : what it is on the twin

    Raises
    ------
    PlanError
        When the car would make no sense, nothing would differ, or the plan begins with a saved start that is
        true for its own car alone.
    """
    twin = plan.with_car(changed(plan.car, name, value))
    words = next((field.words for field in FIELDS if field.name == name), name)
    if twin.car == plan.car:
        raise PlanError(words, "is the same on this car; a twin differs in one thing")
    if plan.start and not set(apart(plan, twin)) <= set(HANDLE):
        raise PlanError(
            words,
            "cannot be another on a saved start, which is true for its own car alone; "
            "put the wreck before the plan instead, and it is worked out on the twin as well",
        )
    check_wreck(twin)
    return twin


def apart(first: Plan, second: Plan) -> tuple[str, ...]:
    """Return the names of the car's fields in which two plans differ."""
    names = (field.name for field in msgspec.structs.fields(type(first.car)))
    return tuple(name for name in names if getattr(first.car, name) != getattr(second.car, name))
