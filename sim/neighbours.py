"""The plans next to a plan, its push a little to either side or on another lattice: whether those decide."""

from __future__ import annotations

import msgspec

from sim.cut_plan import Cut, Strip
from sim.plan import BeltPoint, CutSpread, Ease, EdgePoint, Hold, Latch, Plan, Press, Spread
from sim.ram_plan import PillarSpot

NEIGHBOUR_M = 0.010
"""How far a tip or a ram's head is moved to see whether the place decides: the width of a hem."""
COARSE_M = 0.060
"""The lattice on which a run is repeated, to see whether the lattice decides."""
DENTED_M = 0.075
"""The same for a door on `COARSE_M` itself, as a dented one is: its wreck takes minutes on a finer one."""
SIDE_M = 0.080
"""The same for a whole side on a finer one; a side as coarse as this is repeated on `COARSE_M`."""
WRECKED_M = 0.090
"""The same for a wrecked side, whose wreck would take an hour on a finer one."""
NO_PUSH = (Ease, Hold, Latch, Cut, Strip)
"""What is no push that could stand a little to one side."""
LATTICES = ("a coarser lattice", "a finer lattice")
"""What differs where the lattice does."""


def neighbours_of(plan: Plan, reach_m: float | None = None) -> tuple[tuple[str, Plan], ...]:
    """Return the plans next to a plan, each with what differs in it.

    A spread's last push moves along its edge, and all bites at that edge with it; so do all rams and tips
    between raw ends together, for what one of them does hangs on where the one before stood.  A wreck is
    solved again on another lattice; a car that begins with a saved start has none.

    Parameters
    ----------
    plan : the plan;  reach_m : how far the last push goes at most in them [m]; None is as far as the plan
    """
    pushes = [k for k, move in enumerate(plan.moves) if not isinstance(move, NO_PUSH)]
    if not pushes:
        return _other_lattice(plan)
    last = pushes[-1]
    move = plan.moves[last]
    if isinstance(move, Spread) and reach_m is not None and reach_m < move.opening_m:
        move = msgspec.structs.replace(move, opening_m=reach_m)
        plan = plan.with_move(last, move)
    if isinstance(move, Spread) and isinstance(move.door, EdgePoint | BeltPoint):
        beside = _along_the_edge(plan, move.door)
    elif isinstance(move, Press):
        beside = _rams(plan)
    else:
        beside = ()
    return beside + _other_lattice(plan)


def _along_the_edge(plan: Plan, door: EdgePoint | BeltPoint) -> tuple[tuple[str, Plan], ...]:
    """Return the plan with every bite at that edge a little to either side: the last, and those before it."""
    found = []
    for words, way in (("10 mm to one side", -NEIGHBOUR_M), ("10 mm to the other side", NEIGHBOUR_M)):
        other = plan
        for index, move in enumerate(plan.moves):
            if isinstance(move, Spread) and _same_edge(move.door, door):
                assert isinstance(move.door, EdgePoint | BeltPoint)
                at_m = round(move.door.along_m + way, 6)
                moved = msgspec.structs.replace(move.door, along_m=at_m)
                other = other.with_move(index, msgspec.structs.replace(move, door=moved))
        found.append((words, other))
    return tuple(found)


def _same_edge(one: object, other: EdgePoint | BeltPoint) -> bool:
    if isinstance(one, EdgePoint) and isinstance(other, EdgePoint):
        return (one.panel, one.edge) == (other.panel, other.edge)
    return isinstance(one, BeltPoint) and isinstance(other, BeltPoint) and one.panel == other.panel


def _rams(plan: Plan) -> tuple[tuple[str, Plan], ...]:
    """Return the plan with every ram's head lower or higher and all tips between raw ends to one side."""
    found = []
    for words, way in (("the head 10 mm lower", -NEIGHBOUR_M), ("the head 10 mm higher", NEIGHBOUR_M)):
        other = plan
        for index, move in enumerate(plan.moves):
            if isinstance(move, Press) and isinstance(move.head, PillarSpot):
                head = msgspec.structs.replace(move.head, height_m=round(move.head.height_m + way, 6))
                other = other.with_move(index, msgspec.structs.replace(move, head=head))
            elif isinstance(move, CutSpread):
                aside = msgspec.structs.replace(move, off_m=round(move.off_m + way, 6))
                other = other.with_move(index, aside)
        found.append((words, other))
    return tuple(found)


def _other_lattice(plan: Plan) -> tuple[tuple[str, Plan], ...]:
    spacing = plan.car.lattice_spacing_m
    if plan.car.extent != "side":
        other = DENTED_M if spacing == COARSE_M else COARSE_M
    elif plan.wreck:
        other = max(spacing, WRECKED_M)
    else:
        other = SIDE_M if spacing < SIDE_M else COARSE_M
    if other == spacing or plan.start:
        return ()
    words = LATTICES[0] if other > spacing else LATTICES[1]
    return ((words, plan.with_car(msgspec.structs.replace(plan.car, lattice_spacing_m=other))),)
