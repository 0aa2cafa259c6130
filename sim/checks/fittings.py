"""Latch and hinges hold what the regulation asks, on the door itself.

The force is read from the reaction of the fitting, pulled along the regulation's direction until it lets go.

References
----------
[un-regulation-2010] and the global technical regulation of the same text: fully latched 11 000 N across the
latch face and 9 000 N along the fork's opening, 4 500 N in either direction when half latched; hinge system
11 000 N along the car and 9 000 N across, a single hinge carries its share.
"""

from __future__ import annotations

from functools import lru_cache
from typing import Literal

import numpy as np

from sim.checks import specimens
from sim.checks.row import Row
from sim.door_model import DoorModel, build_model
from sim.increment import Stepper
from sim.ledger import Ledger
from sim.network import Drive
from sim.plan import Car

Way = Literal["along", "across"]
LatchState = Literal["full", "half"]
# along the car is across the latch face; across the car is along the fork's opening
UNIT = {"along": (1.0, 0.0, 0.0), "across": (0.0, 1.0, 0.0)}
FLOOR_N: dict[tuple[LatchState, str, Way], float] = {
    ("full", "latch", "along"): 11.0e3,
    ("full", "latch", "across"): 9.0e3,
    ("half", "latch", "along"): 4.5e3,
    ("half", "latch", "across"): 4.5e3,
    ("full", "upper hinge", "along"): 5.5e3,
    ("full", "upper hinge", "across"): 4.5e3,
    ("full", "lower hinge", "along"): 5.5e3,
    ("full", "lower hinge", "across"): 4.5e3,
}
SPACING_M = 0.06


@lru_cache
def _model(latch: LatchState, ratio: float) -> DoorModel:
    return build_model(
        Car(latch=latch, latch_strength_ratio=ratio, hinge_strength_ratio=ratio, lattice_spacing_m=SPACING_M)
    )


@lru_cache
def held_n(latch: LatchState, name: str, way: Way, ratio: float, sign: float = 1.0) -> float:
    """Return the fitting's reaction against the pull at the moment it lets go [N]."""
    model = _model(latch, ratio)
    index = [tie.name for tie in model.structure.ties].index(name)
    tie = model.structure.ties[index]
    direction = sign * np.array(UNIT[way])
    # the pull takes hold of the fitting itself
    start = float(direction @ (tie.weights @ model.start.points[tie.nodes]))
    drive = Drive(tie.nodes, tie.weights, direction, start, stiffness_n_per_m=1.0e9)
    stepper = Stepper(model.network.with_drives([drive]), specimens.never)
    point = stepper.first_point(model.start, Ledger())
    limit_m = float(np.abs(direction) @ tie.limit_n) / tie.stiffness_n_per_m
    # in one go to just below, then in steps of half a per cent
    for share in (0.5, 0.95, *np.arange(0.96, 1.2, 0.005)):
        point = stepper.advance(point, float(share) * limit_m)
        if point.freed:
            break
    if stepper.tally.failed or [freed.name for freed in point.freed] != [name]:
        raise specimens.NotSolvedError(f"the pull on the {name} did not end with that fitting alone")
    return float(-direction @ point.freed[0].reaction_n)


def fitting(latch: LatchState, name: str, way: Way, sign: float = 1.0) -> Row:
    """Return what a fitting set to the floor holds before it lets go."""
    word = {"full": " fully latched", "half": " half latched"}[latch] if name == "latch" else ""
    other = " the other way" if sign < 0.0 else ""
    # 1 %, the case's figure: it must still hold at 0.99 of the floor, and it lets go at the value set
    return Row(
        f"{name}{word} pulled {way} the car{other}: lets go",
        "un-regulation-2010",
        FLOOR_N[latch, name, way] / 1e3,
        held_n(latch, name, way, 1.0, sign) / 1e3,
        "kN",
        0.01,
        spacing="60 mm door",
    )


def untouched_latch(way: Way) -> Row:
    """Return what the latch of the ready car holds: never below the floor."""
    return Row(
        f"latch of the ready car pulled {way} the car: holds",
        "un-regulation-2010",
        FLOOR_N["full", "latch", way] / 1e3,
        held_n("full", "latch", way, Car().latch_strength_ratio) / 1e3,
        "kN",
        relation="at least",
        spacing="60 mm door",
    )
