"""Coming to rest under weight: how a freed part is followed down, at fixed tips.

A quasi-static solve of a part that nothing holds has no answer; a part that swings or falls is followed along
its way by a drag on its mass,

    m k (x - x_before) = - dV/dx,            k [1/s^2],

an implicit step of steepest descent measured by mass: a free body moves as one, by g / k a step, a hinged
one turns.  Steps grow while the metal moves little and shrink where it moves far, and it is at rest when it
would let a free body move a long way and yet hardly moves.  Nothing swings past or bounces: what a fall sets
free is taken by the drag.  It is on the ledger's line `drop`, the fall of the whole potential at fixed tips
less what went into folding, seams and friction on the way.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

import numpy as np
from numpy.typing import NDArray

from sim.ledger import spent
from sim.state import Evaluation, Load
from sim.surround import GRAVITY_M_S2
from sim.weight import node_mass_kg

if TYPE_CHECKING:
    from sim.increment import Freed, Point, Stepper

Floats = NDArray[np.float64]

FIRST_M = 0.004  # how far the first step lets a free body fall
LEAST_M, MOST_M = 1.0e-5, 0.2  # the same of the shortest and the longest step
FAR_M, LITTLE_M = (
    0.04,
    0.012,
)  # a step in which something moves farther is taken back; below, the next is longer
REST_RATIO = 1.0e-3  # at rest: nothing moves more than this share of what a free body would
REST_M = 5.0e-5  # nor more than this
STEPS = 400
SHOWN_M = 0.03  # a fall is shown each time something has gone so far
BODY_SHARE = 0.25  # of the car's mass on each body node


@dataclass(frozen=True)
class Settled:
    """One step on the way to rest.

    at_rest : whether it is the last one because nothing moves any more
    """

    point: Point
    moved_m: float
    at_rest: bool


def masses_kg(stepper: Stepper) -> Floats:
    """Return the mass each node is dragged by, (n,) [kg]: massless nodes take the least of the others."""
    structure = stepper.network.structure
    mass = node_mass_kg(structure)
    around = structure.surround
    if around is not None and around.body is not None:
        mass[around.body.nodes] = BODY_SHARE * around.body.mass_kg
    some = mass > 0.0
    return np.where(some, mass, float(mass[some].min()) if some.any() else 1.0)


def settle(stepper: Stepper, point: Point) -> Iterator[Settled]:
    """Yield each step of the metal's way to rest at fixed tips; ties past their limit let go on the way."""
    mass, free_m = masses_kg(stepper), FIRST_M
    for _ in range(STEPS):
        point = replace(point, state=stepper.look(point.state))
        drag = mass * GRAVITY_M_S2 / free_m
        load = _load(stepper, point, drag)
        answer = stepper.balanced(point.state, load, point.state.points)
        ev = answer.evaluation
        moved = (
            float(np.abs(ev.points - point.state.points).max()) if np.isfinite(ev.points).all() else np.inf
        )
        if (not answer.converged or moved > FAR_M) and free_m > LEAST_M:
            free_m = max(0.25 * free_m, LEAST_M)
            continue
        if not answer.converged:
            stepper.tally.failed += 1
            return
        point = taken(stepper, point, load, answer.evaluation)
        point = stepper.let_go(point)
        rest = not point.freed and moved < min(REST_M, REST_RATIO * free_m)
        yield Settled(point, moved, rest)
        if rest:
            return
        if point.freed:
            free_m = FIRST_M
        elif moved < LITTLE_M:
            free_m = min(2.0 * free_m, MOST_M)
    stepper.tally.failed += 1


def _load(stepper: Stepper, point: Point, drag: Floats) -> Load:
    plain = stepper.load(point.travel_m, point.state)
    return replace(plain, viscous_n_per_m=0.0, drag_n_per_m=drag)


def taken(stepper: Stepper, point: Point, load: Load, ev: Evaluation) -> Point:
    """Return where a step at fixed tips ends; what the potential lost beyond its losses is the drop."""
    lines = spent(stepper.network, point.state, ev, load)
    lines["drop"] = max(point.ledger.stored_j - ev.stored_j - sum(lines.values()), 0.0)
    return replace(stepper.accept(point, point.travel_m, ev, lines, 0.0), before=None)


def way_down(stepper: Stepper, point: Point) -> Iterator[Point]:
    """Yield the way to rest in steps worth a picture, and where it ends, each with what let go before it."""
    shown, freed = point.state.points, list(point.freed)
    for step in settle(stepper, point):
        point = step.point
        freed += point.freed
        count = min(len(shown), len(point.state.points))
        gone = float(np.abs(point.state.points[:count] - shown[:count]).max())
        if gone > SHOWN_M and not step.at_rest:
            yield replace(point, freed=tuple(freed))
            shown, freed = point.state.points, []
    yield replace(point, freed=tuple(freed))


def at_rest(stepper: Stepper, point: Point) -> Point:
    """Return where the metal comes to rest at fixed tips, with all that has let go up to there."""
    freed: list[Freed] = list(point.freed)
    for step in settle(stepper, point):
        point = step.point
        freed += point.freed
    return replace(point, freed=tuple(freed))
