"""Crush: a rigid body pressed into the side of the car, made ready; how a door is wrecked or tested.

The body starts clear of the car, its travel counts from where it first touches the metal, and it moves on
one level line.  The car's own pillars, rocker and roof rail are rigid in this model, so a body that would
have to push them in is refused: that is another car's accident.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from sim.engaged import Start
from sim.increment import ON_GRID_M, Point, Stepper, grid_m
from sim.model import DoorModel
from sim.move_words import SHAPE_WORDS
from sim.network import Network
from sim.plan import Crush
from sim.problems import PlanError
from sim.ranges import Range, check_ranges
from sim.rigid import Barrier, Pressing, first_touch, reading_points

Floats = NDArray[np.float64]

CRUSH_STEP_M = 0.005  # the grid of travel
EASE_STEP_M = 0.005
ROUNDING_M = 0.0125  # of a cylinder's or a face's edges (assumed); a sharper one cuts, which is not modelled
START_M = 1.5  # how far out a body starts: well clear of any bulge
BODY_SPLIT = 12  # triangles of the car body are looked at in this many points a side

RANGES: dict[str, Range] = {
    "size_m": (0.05, 2.0, "a pole is about 0.25 m across, another car's front 0.3 to 1.5 m"),
    "tall_m": (0.05, 2.5, "from its lower to its upper end"),
    "height_m": (-1.0, 1.2, "height of its lower end above the door's lowest point"),
    "along_m": (-0.5, 2.0, "the door runs from about 0 to 1 m behind its hinge edge"),
    "skew_rad": (-1.05, 1.05, "0 is straight inboard"),
    "travel_m": (0.001, 0.7, "about 0.46 m in the quasi-static door test"),
}


@dataclass(frozen=True)
class ReadyCrush:
    """A crush made ready.

    barrier : where it stands at travel nothing;  limit_m : travel asked for
    seats : what presses, in words
    """

    barrier: Barrier
    limit_m: float
    seats: tuple[str, ...]

    @property
    def direction(self) -> Floats:
        """Unit vector of the travel, shape (3,)."""
        return self.barrier.direction

    def touching(self, points: Floats, triangles: NDArray[np.int64]) -> ReadyCrush:
        """Return the crush with its travel counted from first touch of the metal as it is.

        Raises
        ------
        PlanError
            When the body misses the metal.
        """
        every = replace(self.barrier, triangles=np.arange(len(triangles)))
        gap = first_touch(every, points, triangles)
        if not math.isfinite(gap):
            raise PlanError(
                "along_m", "sets the body so that it misses the door; move it along or up or down"
            )
        return replace(self, barrier=every.drawn_back(-gap))

    def contacts(self, network: Network, point: Point) -> tuple[Floats, Floats]:
        """Return the middle of the pressure (1, 3) [m] and the push along the line (1, 3) [N]."""
        law = next(law for law in network.laws if isinstance(law, Pressing))
        push = point.evaluation.read["barrier push"]
        places = law.places(point.state.points)
        total = float(push.sum())
        middle = self.barrier.at(point.travel_m)
        if total > 0.0:
            middle = np.einsum("kq,kqi->i", push, places) / total
        force: Floats = float(point.force_n[-1]) * self.direction
        return middle[None], force[None]

    def let_off(self, model: DoorModel, begin: Start, make: Callable[[Network], Stepper]) -> Point:
        """Return the metal at rest after the body has been drawn back until it no longer presses."""
        return let_back(make(model.network.with_barrier(self.barrier)), begin)


def _check(move: Crush) -> None:
    check_ranges(RANGES, move)
    if move.shape == "pole" and move.tall_m < move.size_m:
        raise PlanError(
            "tall_m", f"is {move.tall_m} m, less than the pole is thick; use {move.size_m} or more"
        )


def _core(move: Crush) -> tuple[Floats, float]:
    """Return core half lengths (3,) and rounding [m]."""
    half, tall = 0.5 * move.size_m, 0.5 * move.tall_m
    if move.shape == "pole":
        return np.array([0.0, 0.0, tall - half]), half
    rounding = min(ROUNDING_M, 0.5 * half, 0.5 * tall)
    deep = 0.05  # of a face's block: only its front meets metal
    return np.array([half - rounding, deep, tall - rounding]), rounding


def _clear_of_body(model: DoorModel, press: ReadyCrush) -> None:
    """Raise PlanError when the body, driven in, would meet the car's rigid pillars, rocker or rail."""
    weights = reading_points(BODY_SPLIT)
    for name, surface in model.rigid.items():
        spots = np.einsum("qi,kij->kqj", weights, surface.points[surface.triangles]).reshape(-1, 3)
        for travel in np.linspace(0.0, press.limit_m, 5):
            if float(press.barrier.distance(spots, float(travel)).min()) < 0.0:
                part = name.replace("_", " ")
                raise PlanError(
                    "size_m",
                    f"lets the body reach the {part}, which cannot yield in this model; "
                    "make it smaller, or move it along, up or down, so that it meets the door alone",
                )


def make_crush(model: DoorModel, move: Crush, points: Floats | None = None) -> ReadyCrush:
    """Return a crush made ready on a door.

    Parameters
    ----------
    points : shape (n, 3), where the metal is now [m]; None is the untouched door

    Raises
    ------
    PlanError
        A number out of range, a body that misses the door or that would meet the rigid car body.
    """
    _check(move)
    structure = model.structure
    sign = structure.outboard_sign
    direction = np.array([math.sin(move.skew_rad), -sign * math.cos(move.skew_rad), 0.0])
    middle = np.array([move.along_m, 0.0, move.height_m + 0.5 * move.tall_m])
    core, rounding = _core(move)
    everything = np.arange(len(structure.triangles))
    barrier = Barrier(
        core, rounding, move.shape == "face", middle - START_M * direction, direction, everything
    )
    words = f"{move.size_m * 1e3:.0f} mm {SHAPE_WORDS[move.shape]}"
    press = ReadyCrush(barrier, move.travel_m, (f"{words} on the outer skin",))
    press = press.touching(model.start.points if points is None else points, structure.triangles)
    _clear_of_body(model, press)
    return press


def increments(
    press: ReadyCrush, stepper: Stepper, start: Point, stopping: Callable[[], bool]
) -> Iterator[tuple[int, Point]]:
    """Yield each increment of the grid by its number, and between them each place where something let go."""
    point, grid = start, grid_m(press.limit_m, CRUSH_STEP_M)
    reached = 0
    while reached < len(grid) and not stopping():
        taken = stepper.tally.iterations
        point = stepper.advance(point, grid[reached])
        reached += point.travel_m >= grid[reached] - ON_GRID_M
        point = stepper.counted(point, taken)
        yield reached, point


def let_back(stepper: Stepper, begin: Start) -> Point:
    """Return the metal at rest after what holds it at the last opening has been drawn back."""
    load = stepper.load(begin.opening_m, begin.state)
    held = stepper.network.evaluate(begin.state.points, begin.state, load)
    return drawn_back(
        stepper, Point(begin.state, held, begin.opening_m, held.drive_force.copy(), begin.ledger)
    )


def drawn_back(stepper: Stepper, held: Point) -> Point:
    """Return the metal at rest after what pushes has been drawn back until it no longer does."""
    point = held
    for _ in range(400):
        if float(np.max(point.force_n, initial=0.0)) <= 0.0:
            break
        point = stepper.advance(point, point.travel_m - EASE_STEP_M)
    return point
