"""Random legal pushes: any edge or lip, any depth, tilt and tool, each from a number; and how each one ends.

The generator knows nothing of outcomes.  A push that the program refuses with a sentence is drawn again.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np

from sim.door_model import build_model
from sim.ledger import Ledger
from sim.plan import BeltPoint, Car, EdgePoint, Spread, Tool
from sim.problems import PlanError
from sim.push import make_push
from sim.run import STEP_M, Begin, MoveRun

SPACING_M = 0.06
GAP_RATIO = 0.02
LEAST_WORK_J = 10.0
"""A gap is judged against this much work at least: one step may gape by 0.03 J before it is halved."""
ENDS = ("stalled", "tip off")
"""Events that end a push before its opening."""


@dataclass(frozen=True)
class Ended:
    """How one random push ended.

    reached : got to its opening;  named : ended before with an event that says why
    finite : no frame holds a NaN or an infinity;  gap_ratio : worst gap of the books on the way
    failed : increments that did not converge;  fault : what was raised, if anything
    """

    number: int
    words: str
    reached: bool = False
    named: str = ""
    finite: bool = True
    gap_ratio: float = 0.0
    failed: int = 0
    events: tuple[str, ...] = ()
    fault: str = ""

    @property
    def problems(self) -> tuple[str, ...]:
        """What is wrong with it, in words; empty when nothing is."""
        books = (f"books gape by {100 * self.gap_ratio:.1f} %",) if self.gap_ratio > GAP_RATIO else ()
        return (*self.faults, *books)

    @property
    def faults(self) -> tuple[str, ...]:
        """What is wrong with it, its books apart."""
        out = []
        if self.fault:
            out.append(f"raised {self.fault}")
        elif not (self.reached or self.named):
            out.append("ended early and no event says why")
        if not self.finite:
            out.append("holds numbers that are not finite")
        if self.failed:
            out.append(f"{self.failed} increments did not converge")
        return tuple(out)


def _drawn(rng: np.random.Generator) -> tuple[Car, Spread]:
    tool = Tool(
        tip_width_m=round(float(rng.uniform(0.015, 0.08)), 4),
        tip_depth_m=round(float(rng.uniform(0.01, 0.05)), 4),
        force_n=tuple(float(f) for f in rng.choice([0.1, 0.5, 1.0]) * np.array(Tool().force_n)),
    )
    car = Car(
        lattice_spacing_m=SPACING_M,
        seam=str(rng.choice(["bonded", "welded", "mixed"])),
        latch=str(rng.choice(["full", "half", "open"])),
    )
    opening = round(float(rng.uniform(0.01, 0.03)) / STEP_M) * STEP_M
    if rng.random() < 0.25:
        lip = str(rng.choice(["outer", "inner", "both"]))
        belt = BeltPoint(along_m=round(float(rng.uniform(0.0, 1.1)), 3), lip=lip)
        return car, Spread(door=belt, opening_m=opening, tool=tool)
    place = EdgePoint(
        edge=str(rng.choice(["latch_edge", "hinge_edge", "sill_edge"])),
        along_m=round(float(rng.uniform(0.0, 1.0)), 3),
        depth_m=round(float(rng.uniform(0.0, 0.16)), 4),
    )
    tilt = round(float(rng.uniform(-0.5 * math.pi, 0.5 * math.pi)), 3)
    return car, Spread(door=place, tilt_rad=tilt, opening_m=opening, tool=tool)


def push_of(number: int) -> tuple[Car, Spread]:
    """Return the legal push of a number: always the same one."""
    rng = np.random.default_rng([20, number])
    while True:
        car, move = _drawn(rng)
        try:
            make_push(build_model(car), move)
        except PlanError:
            continue
        return car, move


def words_of(car: Car, move: Spread) -> str:
    """Return a push in one line, enough to make it again."""
    door, tool = move.door, move.tool
    where = (
        f"{door.edge} {door.along_m} deep {door.depth_m}"
        if isinstance(door, EdgePoint)
        else (f"belt {door.lip} {door.along_m}")
    )
    tilt = "" if isinstance(door, BeltPoint) else f" tilt {move.tilt_rad}"
    pad = f"tip {tool.tip_width_m} x {tool.tip_depth_m}, {tool.force_n[0]:.0f} N"
    return f"{car.seam}, latch {car.latch}; {where}{tilt}, to {move.opening_m:.4f}; {pad}"


def ended(number: int) -> Ended:
    """Return how the push of a number ends; catches whatever is raised: that is what is looked for."""
    car, move = push_of(number)
    words = words_of(car, move)
    try:
        return _followed(number, car, move, words)
    except Exception as error:  # noqa: BLE001 - any fault at all is an answer here
        return Ended(number, words, fault=f"{type(error).__name__}: {error}")


def _followed(number: int, car: Car, move: Spread, words: str) -> Ended:
    model = build_model(car)
    run = MoveRun(model, move, Begin(model.start, Ledger()))
    finite, gap = True, 0.0
    for frame in run:
        numbers = [frame.points.ravel(), [frame.force_n, frame.opening_m], list(frame.ledger_j.values())]
        finite = finite and bool(np.isfinite(np.concatenate(numbers)).all())
        work = max(abs(frame.ledger_j["work of the tips"]), LEAST_WORK_J)
        gap = max(gap, abs(frame.ledger_j["gap"]) / work)
    result = run.result(with_residual=False)
    kinds = tuple(event.kind for event in result.events)
    reached = run.frames[-1].opening_m >= move.opening_m - 1e-9
    named = next((kind for kind in kinds if kind in ENDS), "")
    return Ended(
        number, words, reached, named, finite, gap, result.solver.failed_count, tuple(dict.fromkeys(kinds))
    )
