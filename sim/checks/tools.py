"""The tool: its force curve read as the standards read it, kept to by a run, and force times way is work.

References
----------
[nfpa-1936-2015] spreading force is read at ten evenly spaced openings from closed to 95 % of the widest: the
largest reading is the highest spreading force, the smallest the lowest.
[en-13204-2016] spreader types by least force and distance: AS 20 kN and 600 mm, BS 50 kN and 800 mm,
CS 80 kN and 500 mm.
Virtual work: at rest the tip's force is what the metal's energy grows by per opening, conservation.
"""

from __future__ import annotations

from functools import lru_cache

import msgspec
import numpy as np
from numpy.typing import NDArray

from sim.checks import specimens
from sim.checks.row import CONSERVATION, Row
from sim.door_model import DoorModel, build_model
from sim.ledger import Ledger
from sim.network import Load
from sim.newton import equilibrate
from sim.plan import Car, EdgePoint, Spread, Tool
from sim.push import Push, make_push
from sim.run import Begin, MoveRun

Floats = NDArray[np.float64]

READINGS, WIDEST_SHARE = 10, 0.95
TYPES = {"AS": (20.0e3, 0.60), "BS": (50.0e3, 0.80), "CS": (80.0e3, 0.50)}
"""Least spreading force [N] and distance [m]."""
READY_TYPE = "AS"
# a curve that rises evenly from 20 to 60 kN over 0.8 m: 20 and 20 + 0.95 x 40 = 58 kN by hand
RISING = Tool(name="rising evenly", opening_m=(0.0, 0.8), force_n=(20.0e3, 60.0e3))
SPACING_M = 0.06


@lru_cache
def _model() -> DoorModel:
    return build_model(Car(lattice_spacing_m=SPACING_M))


def _push(tool: Tool) -> Push:
    return make_push(_model(), Spread(opening_m=0.01, tool=tool))


def readings_n(tool: Tool) -> Floats:
    """Return the force a push gives at the standard's ten openings, shape (10,) [N]."""
    push = _push(tool)
    openings = np.linspace(0.0, WIDEST_SHARE * tool.opening_m[-1], READINGS)
    # a push counts its opening from where its tips already stand
    return np.array([push.force_limit(float(opening) - push.reach_m) for opening in openings])


def highest(tool: Tool = RISING) -> Row:
    """Return the highest spreading force of a curve that rises evenly."""
    return Row(
        "spreader rising evenly from 20 to 60 kN: highest of ten readings",
        "nfpa-1936-2015",
        58.0,
        float(readings_n(tool).max()) / 1e3,
        "kN",
        1e-9,
        spacing="60 mm door",
    )


def lowest(tool: Tool = RISING) -> Row:
    """Return the lowest spreading force of a curve that rises evenly."""
    return Row(
        "spreader rising evenly from 20 to 60 kN: lowest of ten readings",
        "nfpa-1936-2015",
        20.0,
        float(readings_n(tool).min()) / 1e3,
        "kN",
        1e-9,
        spacing="60 mm door",
    )


def type_force(name: str = READY_TYPE) -> Row:
    """Return the least force the ready spreader gives against its type's."""
    return Row(
        f"ready spreader as type {name}: least force",
        "en-13204-2016",
        TYPES[name][0] / 1e3,
        float(readings_n(Tool()).min()) / 1e3,
        "kN",
        relation="at least",
        spacing="60 mm door",
    )


def type_distance(name: str = READY_TYPE) -> Row:
    """Return the ready spreader's widest opening against its type's."""
    return Row(
        f"ready spreader as type {name}: distance",
        "en-13204-2016",
        1e3 * TYPES[name][1],
        1e3 * Tool().opening_m[-1],
        "mm",
        relation="at least",
        spacing="60 mm door",
    )


STALL_N = 800.0


def stall() -> Row:
    """Return the force at which a run stalls whose tool is too weak to part the seam."""
    tool = msgspec.structs.replace(Tool(), force_n=(STALL_N,) * len(Tool().force_n))
    run = MoveRun(
        _model(), Spread(door=EdgePoint(), opening_m=0.04, tool=tool), Begin(_model().start, Ledger())
    )
    forces = [frame.force_n for frame in run]
    stalled = any(event.kind == "stalled" for frame in run.frames for event in frame.events)
    # 1 %: how close to its limit the place of a stall is found
    return Row(
        "spreader of 0.8 kN on the hem lip: force at which it stalls",
        "nfpa-1936-2015",
        STALL_N / 1e3,
        forces[-1] / 1e3 if stalled else "did not stall",
        "kN",
        0.01,
        spacing="60 mm door",
    )


def virtual_work(depth_m: float) -> Row:
    """Return the metal's energy gained per opening against the tip's force, early in a push."""
    model = _model()
    push = make_push(model, Spread(door=EdgePoint(depth_m=depth_m), opening_m=0.01))
    network = model.network.with_drives([push.drive(model.start.points)])
    travel, step, points = 1.0e-3, 3.0e-6, model.start.points
    energies, force = [], 0.0
    for at in (travel, travel - step, travel + step):
        answer = equilibrate(network, model.start, Load((at,)), points)
        if not answer.converged:
            raise specimens.NotSolvedError(f"residual {answer.residual_n} N early in a push")
        points = answer.evaluation.points
        energies.append(answer.evaluation.potential_j)
        force = force or float(answer.evaluation.drive_force[0])
    # 1e-6, the case's figure: the third derivative of the energy over a step of three micrometres
    return Row(
        f"virtual work, tips {1e3 * depth_m:.0f} mm deep: energy gained per opening is the tip's force",
        CONSERVATION,
        force,
        (energies[2] - energies[1]) / (2.0 * step),
        "N",
        1e-6,
        spacing="60 mm door",
    )
