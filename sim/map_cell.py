"""One cell of an outcome map: the push solved there on one lattice, stopped at what gives first."""

from __future__ import annotations

from collections.abc import Sequence
from functools import lru_cache

import msgspec

from meshes.part import MeshError
from sim.kept import rival_of
from sim.likely import NOT_SETTLED
from sim.many import FAILED, GIVES, NOTHING_GAVE, SETTLED, first_give
from sim.map_grid import Cell
from sim.plan import BodyPoint, EdgePoint, Plan, Spread
from sim.problems import PlanError
from sim.record import OFF, Event, Frame
from sim.workers import Fault

STALLED = "stalled"
CANNOT = "cannot be set"
"""Word of a cell in which the tips cannot stand."""
LOST = "run lost"
"""Word of a cell whose run was lost: no outcome, and never told as one."""
ALIKE = {"weld broken": "seam parting"}
"""What is one and the same outcome: a weld that breaks is the parting of a welded seam."""


class Look(msgspec.Struct, frozen=True, omit_defaults=True):
    """What one run of a cell came to.

    word : what gave first; what the tool or the metal did when nothing gave
    part, opening_m, force_n : where, at which opening, at which force; of the end when nothing gave
    rival, margin_ratio : what else was nearest to giving just before, and how far from it (1: idle)
    together : what else gave in the same increment, so that their order is not known
    standing : "settled", "not settled" (increments did not converge) or "failed";  why : of a failed one
    seat : of the tip on the door, in words
    """

    word: str
    part: str = ""
    opening_m: float = 0.0
    force_n: float = 0.0
    rival: str = ""
    margin_ratio: float = 1.0
    together: str = ""
    standing: str = SETTLED
    why: str = ""
    seat: str = ""

    @property
    def gave(self) -> bool:
        """Whether a part gave."""
        return self.word in GIVES


class Job(msgspec.Struct, frozen=True):
    """A cell to be run: the plan whose last move is pushed there, and the lattice [m]."""

    plan: Plan
    cell: Cell
    spacing_m: float


def alike(word: str) -> str:
    """Return the outcome a word belongs to."""
    return ALIKE.get(word, word)


def base_plan(plan: Plan, move_index: int, reach_m: float) -> Plan:
    """Return what every cell of a map shares: car, what was done before, and the push with no place yet.

    Raises
    ------
    PlanError
        When the move is no spread, or has both its tips on the door.
    """
    move = plan.moves[move_index]
    if not isinstance(move, Spread):
        raise PlanError(f"moves[{move_index}]", "is no spread; a map is made of a spread: choose one")
    if not isinstance(move.against, BodyPoint | None):
        raise PlanError(
            f"moves[{move_index}].against",
            "is on the door, and a map has the other tip on the body; leave it out",
        )
    shared = msgspec.structs.replace(
        move,
        door=EdgePoint(surface=move.door.surface, panel=move.door.panel),
        against=None,
        opening_m=min(move.opening_m, reach_m),
        stop_at=GIVES,
        words="",
    )
    return Plan(car=plan.car, moves=(*plan.moves[:move_index], shared), wreck=plan.wreck, start=plan.start)


def placed(plan: Plan, cell: Cell) -> Spread:
    """Return the push of a map's plan at a cell."""
    move = plan.moves[-1]
    assert isinstance(move, Spread) and isinstance(move.door, EdgePoint)
    door = msgspec.structs.replace(move.door, edge=cell.edge, along_m=cell.along_m, depth_m=cell.depth_m)
    return msgspec.structs.replace(move, door=door)


@lru_cache(maxsize=2)
def _ready(plan: Plan, spacing_m: float) -> tuple[object, object]:
    """Return model and start of a map's plan on a lattice, after the moves before the one that is mapped."""
    from sim.move_run import MoveRun
    from sim.wreck import begin_of, model_of

    plan = plan.with_car(msgspec.structs.replace(plan.car, lattice_spacing_m=spacing_m))
    model = model_of(plan)
    begin = begin_of(plan, model)
    for index, move in enumerate(plan.moves[:-1]):
        run = MoveRun(model, move, begin, index)
        for _ in run:
            pass
        begin = run.end
    return model, begin


def look(job: Job) -> Look:
    """Return what a cell's push comes to; the job of a worker. It depends on nothing but the job."""
    from sim.move_run import MoveRun

    try:
        model, begin = _ready(job.plan, job.spacing_m)
        run = MoveRun(model, placed(job.plan, job.cell), begin, len(job.plan.moves) - 1)  # type: ignore[arg-type]
    except (PlanError, MeshError) as error:
        return Look(CANNOT, standing=FAILED, why=str(error))
    frames = list(run)
    result = run.result(with_residual=False)
    return seen(frames, result.events, result.metal, result.seats[0])


def seen(frames: Sequence[Frame], events: Sequence[Event], metal: Sequence[str], seat: str) -> Look:
    """Return a solved push as one look."""
    give = first_give(events)
    end = frames[-1]
    standing = NOT_SETTLED if NOT_SETTLED in metal else SETTLED
    if give is None:
        peak = max(frame.force_n for frame in frames)
        word = _idle_word([word for word in metal if word != NOT_SETTLED], events)
        return Look(word, "", end.opening_m, round(peak, 1), standing=standing, seat=seat)
    same = {kind for kind in GIVES if alike(kind) == alike(give.kind)}
    rival, margin = rival_of(frames, same)
    at = next(frame for frame in frames if give in frame.events)
    others = [e.kind for e in at.events if e.kind in GIVES and e.kind not in same]
    return Look(
        give.kind,
        give.part,
        round(give.opening_m, 6),
        round(give.force_n, 1),
        rival,
        round(margin, 3),
        others[0] if others else "",
        standing,
        seat=seat,
    )


def _idle_word(metal: Sequence[str], events: Sequence[Event]) -> str:
    """Return what a push came to in which nothing gave: how it ended, else the metal's first word."""
    kinds = {event.kind for event in events}
    for word in (OFF, STALLED):
        if word in kinds:
            return word
    return metal[0].partition(" (")[0] if metal else NOTHING_GAVE


def look_or_fault(answer: Look | Fault) -> Look:
    """Return a worker's answer; a fault becomes a run that failed."""
    if isinstance(answer, Fault):
        return Look(LOST, standing=FAILED, why=answer.sentence)
    return answer
