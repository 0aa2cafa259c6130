"""A twin: the open plan on a duplicate of its car with one field changed, or why there is none."""

from __future__ import annotations

import msgspec

from sim.plan import Plan
from sim.problems import PlanError
from sim.units import Units
from sim.wreckcheck import check_wreck
from ui.state import side_fields
from ui.state.car_fields import FIELDS, changed

PERSON = "occupant"
"""Fields that begin so are about who sits inside."""
HANDLE = ("latch", "handle_n")
"""Fields that may be changed on a saved start: a handle is pulled after the wreck, by whoever comes to it."""


def twin_of(plan: Plan, name: str, value: object, units: Units = Units.METRIC) -> Plan:
    """Return the plan on a car with one field changed, and what has to go with it.

    Parameters
    ----------
    name : of the field, as the form of the car names it, of the door or of side and person
    value : what it is on the twin;  units : what a refusal is written in

    Raises
    ------
    PlanError
        When the car would make no sense, nothing would differ, or the plan begins with a saved start that is
        true for its own car alone.
    """
    if name in side_fields.BY_NAME:
        car, words = side_fields.changed(plan.car, name, value, units), side_fields.BY_NAME[name].words
    else:
        car = changed(plan.car, name, value)
        side_fields.check_fit(car, name, units)
        words = next((field.words for field in FIELDS if field.name == name), name)
    twin = plan.with_car(car)
    if twin.car == plan.car:
        raise PlanError(words, "is the same on this car; a twin differs in one thing")
    person = name.startswith(PERSON)  # no metal feels who sits inside: a start serves any person
    if plan.start and not person and not set(apart(plan, twin)) <= set(HANDLE):
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
