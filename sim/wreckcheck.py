"""Whether a plan's wreck and start make sense together with its car."""

from __future__ import annotations

from sim.plan import Crush, Ease, Plan
from sim.problems import PlanError


def check_wreck(plan: Plan) -> None:
    """Say the first thing that is wrong with a plan's wreck or start, if any.

    Raises
    ------
    PlanError
        Naming the field, its value and the remedy.
    """
    if plan.wreck and plan.start:
        raise PlanError("start", "stands beside a wreck, which makes a start of its own; keep one of the two")
    for index, move in enumerate(plan.wreck):
        if not isinstance(move, Crush | Ease):
            kind = str(move.__struct_config__.tag)
            raise PlanError(
                f"wreck[{index}].move",
                f"is {kind!r}; a car is wrecked by 'crush' and 'ease': put the rest under moves",
            )
    if (plan.wreck or plan.start) and (plan.car.latch == "jammed" or plan.car.latch_wedge_n > 0.0):
        raise PlanError(
            "car.latch",
            "is wedged by a number, but a wreck wedges it by its own forces; use latch = 'full', or 'open' "
            "for a handle that is pulled, and latch_wedge_n = 0",
        )
