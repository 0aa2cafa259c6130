"""Stand-ins for a door run, in a module that a worker process can import by name."""

import os
import random
import time

from sim.many import SETTLED, UNSETTLED, Tried
from sim.record import Event
from sim.scenario_runs import Job
from sim.traces import MoveTrace, RunTrace
from sim.vary import Draw

DEPTH = "moves[0].door.depth_m"
LATCH = "car.latch_strength_ratio"
THRESHOLD_M = 0.0083
LATCH_THRESHOLD = 1.4


def quick(draw: Draw) -> Tried:
    """The seam gives first up to a depth or a weak latch; nothing is solved."""
    depth = draw.plan.moves[0].door.depth_m
    latch = draw.plan.car.latch_strength_ratio
    first = "latch free" if depth > THRESHOLD_M or latch > LATCH_THRESHOLD else "seam parting"
    effect = "gained" if first == "latch free" else "spent"
    return Tried(draw.index, dict(draw.values), SETTLED, (first,), effect, first, first, 0.01, 1e3)


def never_other(draw: Draw) -> Tried:
    return Tried(draw.index, dict(draw.values), SETTLED, ("holding",), "spent", "nothing gave")


def unsettled_when_deep(draw: Draw) -> Tried:
    deep = draw.plan.moves[0].door.depth_m > 0.007
    standing = UNSETTLED if deep else SETTLED
    return Tried(draw.index, dict(draw.values), standing, ("holding",), "spent", "nothing gave")


def chance(draw: Draw) -> Tried:
    """The latch lets go in three runs of ten, by a random number of its own."""
    lucky = random.Random(draw.index).random() < 0.3
    first = "latch free" if lucky else "seam parting"
    return Tried(draw.index, dict(draw.values), SETTLED, (first,), "spent", first)


def slow(draw: Draw) -> Tried:
    time.sleep(30.0)
    return quick(draw)


def dies_on_third(draw: Draw) -> Tried:
    if draw.index == 2:
        os._exit(9)
    return quick(draw)


def raises_on_third(draw: Draw) -> Tried:
    if draw.index == 2:
        raise ZeroDivisionError("one number too many")
    return quick(draw)


def threads(draw: Draw) -> Tried:
    words = tuple(os.environ.get(name, "") for name in ("OMP_NUM_THREADS", "NUMBA_NUM_THREADS"))
    return Tried(draw.index, {}, SETTLED, words, "spent", "nothing gave", why=str(os.getpid()))


def die() -> None:
    os._exit(3)


def trace(job: Job) -> RunTrace:
    """A run as a trace: the seam parts up to a depth; nothing is solved."""
    draw = job.draw
    depth = draw.plan.moves[0].door.depth_m
    kind = "seam parting" if depth < THRESHOLD_M else "latch free"
    move = MoveTrace("spread", events=(Event(kind, "part", depth, 1e3),), curves={"opening_m": (0.0, depth)})
    return RunTrace(draw.index, dict(draw.values), (move,))


def never_trace(job: Job) -> RunTrace:
    raise AssertionError(f"run {job.draw.index} had been kept")


def trace_raises_on_third(job: Job) -> RunTrace:
    if job.draw.index == 2:
        raise ZeroDivisionError("one number too many")
    return trace(job)
