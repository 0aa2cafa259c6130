"""The quasi-static side-door test: an upright rigid cylinder pressed into the closed door [fmvss-214-2007].

Door crush resistance, vehicle seats taken out: the mean force over the first 6 inches of travel, over 12,
and the greatest within 18, each with a floor.

What carries the door here: contact with the rigid flange all round its inner bend, 20 mm wide, the latch and
two hinges on rigid pillars.  In the test the pillars and the sill bend in with the door, which eases the pull
on latch and hinges, and the door's edges wedge on them; that is left out, and so is friction.  So a door of
this model is drawn off its frame sooner than a real one, and carries next to nothing after that.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import msgspec
import numpy as np
from numpy.typing import NDArray

from sim.plan import Car, Crush, Plan
from sim.record import Frame
from sim.run import solve_plan
from sim.units import INCH_M, POUND_FORCE_N

Floats = NDArray[np.float64]

STAGES_M = (6 * INCH_M, 12 * INCH_M, 18 * INCH_M)
# floors with the seats taken out, from memory: 2250, 3500 and 7000 lbf (or twice the car's weight, if less)
FLOORS_N = (2250 * POUND_FORCE_N, 3500 * POUND_FORCE_N, 7000 * POUND_FORCE_N)
FACTOR = 2.0  # how near a teaching model of a whole door can be asked to come

# the cylinder: 12 in across, lower end 5 in above the door's lowest point, upper end past the belt, opposite
# the middle of the level line across the door at its lower end (from memory)
CYLINDER = Crush(size_m=0.305, tall_m=0.55, height_m=0.127, along_m=0.487, travel_m=0.457)
WEAK_FOOT_N = 3.0e3  # two poor spot welds of a thin shut face: the least of the spot-weld table, from memory

BUILDS: dict[str, dict[str, object]] = {
    "bar": {},
    "no bar": {"bar": False},
    "weak feet": {"bar_foot_strength_n": WEAK_FOOT_N},
}


@dataclass(frozen=True)
class Resistance:
    """Mean force over the first and second stage, greatest within the third [N]."""

    initial_n: float
    intermediate_n: float
    peak_n: float

    def over(self, floors_n: Sequence[float] = FLOORS_N) -> tuple[float, float, float]:
        """Return each as a share of its floor."""
        low, middle, high = floors_n
        return self.initial_n / low, self.intermediate_n / middle, self.peak_n / high


def mean_force_n(travel_m: Floats, force_n: Floats, upto_m: float) -> float:
    """Return the mean force over travel from nothing to a limit [N]: the area of the curve over the limit."""
    inside = travel_m < upto_m
    x = np.append(travel_m[inside], upto_m)
    f = np.append(force_n[inside], np.interp(upto_m, travel_m, force_n))
    return float(np.trapezoid(f, x)) / upto_m


def resistance(
    travel_m: Sequence[float] | Floats,
    force_n: Sequence[float] | Floats,
    stages_m: tuple[float, float, float] = STAGES_M,
) -> Resistance:
    """Return what a curve of force over travel comes to.

    Parameters
    ----------
    travel_m, force_n : equally long, from no travel on and never falling back; a place may come twice where
        the force drops

    Raises
    ------
    ValueError
        When the two do not fit, travel falls back or does not begin at nothing, or the curve ends more than
        a millimetre before the second stage does.
    """
    x, f = np.asarray(travel_m, dtype=float), np.asarray(force_n, dtype=float)
    if x.shape != f.shape or x.ndim != 1 or len(x) < 2:
        raise ValueError("travel_m and force_n must be two lists of the same length, two entries or more")
    if not (np.isfinite(x).all() and np.isfinite(f).all()):
        raise ValueError("travel_m and force_n must be finite numbers")
    if x[0] != 0.0 or (np.diff(x) < 0.0).any():
        raise ValueError("travel_m must begin at 0 and never fall back")
    if x[-1] < stages_m[1] - 1.0e-3:
        raise ValueError(f"travel_m ends at {x[-1]} m; the second stage needs {stages_m[1]:.4g} m")
    low, middle, high = stages_m
    return Resistance(mean_force_n(x, f, low), mean_force_n(x, f, middle), float(f[x <= high + 1.0e-9].max()))


def curve(frames: Sequence[Frame]) -> tuple[Floats, Floats]:
    """Return travel [m] and force [N] of a crush's frames, with the force just before whatever let go."""
    travel, force = [], []
    for frame in frames:
        before = [event.force_n for event in frame.events if event.kind.endswith(" free")]
        if before:
            travel.append(frame.opening_m)
            force.append(max(before))
        travel.append(frame.opening_m)
        force.append(frame.force_n)
    return np.array(travel), np.array(force)


def plan_of(build: str, spacing_m: float = 0.06) -> Plan:
    """Return the plan of one of `BUILDS`."""
    car = msgspec.structs.replace(Car(lattice_spacing_m=spacing_m), **BUILDS[build])
    return Plan(title=f"Door test, {build}", car=car, moves=(CYLINDER,))


@dataclass(frozen=True)
class Finding:
    """One build's answer.

    failed_count : increments that did not settle;  closure_ratio : of the books
    freed : what let go, with its travel [m]
    """

    build: str
    resistance: Resistance
    failed_count: int
    closure_ratio: float
    freed: tuple[tuple[str, float], ...]


def find(build: str, spacing_m: float = 0.06) -> Finding:
    """Return what one of `BUILDS` comes to; about a minute."""
    _, (record,) = solve_plan(plan_of(build, spacing_m))
    result = record.result
    assert result is not None
    freed = tuple((e.part, e.opening_m) for e in result.events if e.kind.endswith(" free"))
    return Finding(
        build,
        resistance(*curve(record.frames)),
        result.solver.failed_count,
        result.ledger_closure_ratio,
        freed,
    )


@dataclass(frozen=True)
class Expected:
    """One line of the check: what, the range it should lie in, and where it lies [N]."""

    what: str
    low_n: float
    high_n: float
    got_n: float

    @property
    def fine(self) -> bool:
        """Whether it lies in its range."""
        return self.low_n <= self.got_n <= self.high_n


STAGE_WORDS = ("mean over 152 mm", "mean over 305 mm", "greatest within 457 mm")


def expected(findings: Sequence[Finding]) -> tuple[Expected, ...]:
    """Return the lines of the check.

    With its bar a door lies within a factor of two of each floor; without it both means lie below their
    floors by that factor; with weak feet all lie below.
    """
    out = []
    for found in findings:
        r = found.resistance
        for word, floor, got in zip(
            STAGE_WORDS, FLOORS_N, (r.initial_n, r.intermediate_n, r.peak_n), strict=True
        ):
            low, high = (floor / FACTOR, floor * FACTOR) if found.build == "bar" else (0.0, floor)
            if found.build == "no bar" and word != STAGE_WORDS[2]:
                high = floor / FACTOR
            out.append(Expected(f"door test, {found.build}: {word}", low, high, got))
    return tuple(out)
