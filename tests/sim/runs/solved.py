"""Solved moves that several tests look at, each solved once a run; and the readings taken from them.

Nothing here decides what is right: it only runs the program and keeps what came out.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cache, cached_property, lru_cache
from pathlib import Path

import msgspec
import numpy as np

import assets
from sim import door_test
from sim.checks import facts
from sim.door_model import DoorModel, build_model
from sim.ledger import Ledger
from sim.plan import BeltPoint, Car, EdgePoint, Spread, Tool
from sim.planfile import load_plan
from sim.record import Event, Frame, MoveRecord, MoveResult
from sim.run import Begin, MoveRun, solve_plan
from tests.once import kept, once

LETS_GO, NICKED = facts.LETS_GO, facts.nicked
PLANS = Path(assets.__file__).parent / "plans"
CAR = Car()
FEW = 8
"""Solved moves kept in memory where a folder has all of them: each is some 50 MB of frames and matrices."""
LIP_M, DEEP_M = 0.005, 0.120
"""Two depths of a tip: on the hem lip, and past the inner bend, which lies at 0.100 m."""


@dataclass(frozen=True)
class Balance:
    """What the outside puts on the door at one converged increment, summed.

    force_n, moment_n_m : length of the sums of tips, latch, hinges, rim and damping (moments about the pad)
    tip_n : force of the tips
    """

    opening_m: float
    force_n: float
    moment_n_m: float
    tip_n: float


@dataclass(frozen=True)
class Solved:
    """One move, solved; what it was solved on is made again where it is asked for."""

    of: Car
    move: Spread
    frames: tuple[Frame, ...]
    result: MoveResult
    balance: tuple[Balance, ...]

    @property
    def model(self) -> DoorModel:
        """The door it was solved on."""
        return build_model(self.of)

    @cached_property
    def run(self) -> MoveRun:
        """The run that came to this: solved again where another worker had solved it."""
        return begun(self.of, self.move, to_its_end=True)

    @property
    def first(self) -> Event:
        """The first event in which a part gives."""
        return first_of(self.result.events)

    def until(self, opening_m: float) -> Frame:
        """Return the last frame up to an opening."""
        return [frame for frame in self.frames if frame.opening_m <= opening_m + 1e-9][-1]


def first_of(events: tuple[Event, ...]) -> Event:
    """Return the first event in which a part gives."""
    return next(event for event in events if event.kind in LETS_GO)


def tool(**numbers) -> Tool:
    """Return the usual spreader with other numbers."""
    return msgspec.structs.replace(Tool(), **numbers)


def car(**numbers) -> Car:
    """Return the usual car with other numbers."""
    return msgspec.structs.replace(CAR, **numbers)


def edge(along_m: float = 0.36, depth_m: float = LIP_M, at: str = "latch_edge", **move) -> Spread:
    """Return a push at the door's edge; by default it ends where a part gives."""
    return Spread(
        door=EdgePoint(edge=at, along_m=along_m, depth_m=depth_m),
        **{"opening_m": 0.06, "stop_at": LETS_GO, **move},
    )


def belt(along_m: float, lip: str, opening_m: float) -> Spread:
    """Return a push against the belt line from inside the window opening."""
    return Spread(door=BeltPoint(along_m=along_m, lip=lip), opening_m=opening_m)


def begun(of: Car, move: Spread, *, to_its_end: bool = False) -> MoveRun:
    """Return a move on an untouched door, about to begin or followed to its end."""
    run = MoveRun(build_model(of), move, Begin(build_model(of).start, Ledger()))
    if to_its_end:
        for _ in run:
            pass
    return run


def solve(of: Car, move: Spread) -> Solved:
    """Return a move solved on an untouched door."""
    run, balance = begun(of, move), []
    for frame in run:
        if frame.increment:
            balance.append(balance_of(run))
    answer = Solved(of, move, run.frames, run.result(with_residual=False), tuple(balance))
    answer.__dict__["run"] = run
    return answer


@lru_cache(FEW if kept() else None)
def solved(of: Car, move: Spread) -> Solved:
    """Return the same, solved once for all workers and kept for the session."""
    mine = []

    def make() -> tuple[object, ...]:
        mine.append(solve(of, move))
        return mine[0].frames, mine[0].result, mine[0].balance

    frames, result, balance = once(make, "a move on a door", of, move)
    return mine[0] if mine else Solved(of, move, frames, result, balance)


def done(of: Car, move: Spread) -> facts.Done:
    """Return what the rows of the installed checks read of a push: the same answer, solved once for both."""
    answer = solved(of, move)
    parted = tuple((frame.opening_m, frame.parted_length_m) for frame in answer.frames)
    return facts.Done(answer.result, tuple(frame.force_n for frame in answer.frames), parted)


@cache
def nicked(of: Car, along_m: float) -> MoveResult:
    """Return a push on the lip beside a cut in the hem, solved once for all workers."""
    moves = (facts.NICK, facts.through(along_m))
    return once(lambda: NICKED(of, along_m), "beside a cut in the hem", of, moves)


@cache
def ready_records(name: str) -> tuple[MoveRecord, ...]:
    """Return the records of a ready plan, solved once for all workers."""
    plan = load_plan(PLANS / f"{name}.toml")
    return once(lambda: tuple(solve_plan(plan)[1]), "a ready plan", plan)


@cache
def crushed(build: str, spacing_m: float = 0.06) -> door_test.Finding:
    """Return what one build of the side-door test comes to, solved once for all workers."""
    plan = door_test.plan_of(build, spacing_m)
    return once(lambda: door_test.find(build, spacing_m), "side-door test", build, plan)


def balance_of(run: MoveRun) -> Balance:
    """Return the sum of all that acts on the door from outside, added up here and not by the solver."""
    point, push, structure = run._point, run.push, run._network.structure
    x, ev = point.state.points, point.evaluation
    pad = push.weights @ x[push.nodes]
    forces = np.zeros_like(x)
    for tie, pull in zip(structure.ties, ev.tie_force, strict=True):
        np.add.at(forces, tie.nodes, -tie.weights[:, None] * pull)
    forces[structure.rim, 1] += structure.outboard_sign * ev.rim_push
    np.add.at(forces, push.nodes, push.weights[:, None] * run.frames[-1].drive_forces[0])
    if point.before is not None:
        forces[: len(point.before)] -= run.stepper.viscous_n_per_m * (x[: len(point.before)] - point.before)
    moment = np.cross(x - pad, forces).sum(axis=0)
    return Balance(
        point.travel_m,
        float(np.linalg.norm(forces.sum(axis=0))),
        float(np.linalg.norm(moment)),
        float(point.force_n.max(initial=0.0)),
    )


def first_event(of: Car, move: Spread) -> Event | None:
    """Return the first event in which a part gives, and keep nothing else; None when nothing gave."""
    run = begun(of, move, to_its_end=True)
    return next((event for frame in run.frames for event in frame.events if event.kind in LETS_GO), None)


def with_names(model: DoorModel, **structure) -> DoorModel:
    """Return the model with parts of its structure replaced, its network kept in step."""
    changed = replace(model.structure, **structure)
    network = object.__new__(type(model.network))
    network.__dict__.update(model.network.__dict__, structure=changed)
    return replace(model, structure=changed, network=network)
