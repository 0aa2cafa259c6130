"""Stop and cut: the moment of a spread at which a cut is due, and what going on would cost instead.

The moment is marked on the spread itself: a gap suffices (a striker or hinge is exposed) or a sheet has begun
to tear.  What going on costs is read from two runs of the same plan from the same start: the spread to its
end, and the spread stopped at that moment, eased, and the cut made.  Where nothing is exposed yet there is no
cut to make for the fitting; a cut that is asked for is made all the same.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from pathlib import Path

import msgspec
import numpy as np

from sim.cut_plan import Cut, FittingCut
from sim.lookout import EXPOSED
from sim.model import DoorModel
from sim.plan import Ease, Move, Plan, Spread
from sim.problems import PlanError
from sim.record import STOP, Event, MoveResult
from sim.run import Begin, MoveRun
from sim.wreck import begin_of, model_of


@dataclass(frozen=True)
class Cost:
    """What a way of going on has cost at its end.

    torn_m : length of sheet torn;  sharp_edges : raw edges of tears and cuts;  opening_m : of the tips
    moved_m : how far the metal of the front door that has moved most stands off its place
    freed : latches and hinges that no longer hold
    opened_m : how far the inner structure's latch edge stands outboard of its place on average: what the
        door has opened by, whatever its skin does
    """

    torn_m: float
    sharp_edges: int
    opening_m: float
    moved_m: float
    freed: tuple[str, ...]
    opened_m: float = 0.0


@dataclass(frozen=True)
class StopAndCut:
    """The moment, and both ways on from it.

    at_m, why : opening at the mark and what it says; None and "" when there is no such moment
    going_on : the spread to its end;  stopped : stopped there, with ``cuts`` made; None without a moment
    """

    at_m: float | None
    why: str
    going_on: Cost
    stopped: Cost | None
    cuts: tuple[Cut, ...] = ()

    def sentence(self) -> str:
        """Return the comparison in one sentence."""
        if self.at_m is None or self.stopped is None:
            return "No gap suffices and nothing tears on this push: there is no moment to stop and cut."
        on = self.going_on
        return (
            f"At {1e3 * self.at_m:.0f} mm ({self.why}) stop: going on to {1e3 * on.opening_m:.0f} mm tears "
            f"{1e3 * on.torn_m:.0f} mm and leaves {on.sharp_edges} sharp edges; "
            f"{self._stopping(self.stopped)}."
        )

    def _stopping(self, off: Cost) -> str:
        torn_mm, edges = 1e3 * off.torn_m, off.sharp_edges
        if not self.cuts:
            return f"stopping there with nothing in sight to cut tears {torn_mm:.0f} mm and leaves {edges}"
        cut = f"{len(self.cuts)} cut{'s' if len(self.cuts) != 1 else ''}"
        return f"stopping there and {cut} tear {torn_mm:.0f} mm and leave {edges}"


def stop_and_cut(
    plan: Plan,
    index: int,
    cuts: Sequence[Cut] = (),
    *,
    folder: Path | None = None,
    cancelled: Callable[[], bool] = lambda: False,
) -> StopAndCut:
    """Return what going on costs against stopping at the moment and cutting, by two runs.

    Parameters
    ----------
    index : of the spread in the plan's moves;  cuts : to be made when stopped; none is the exposed fitting
    folder : where a saved start is looked for

    Raises
    ------
    PlanError
        When the move is no spread, or a move or a cut cannot be made.
    """
    move = plan.moves[index] if 0 <= index < len(plan.moves) else None
    if not isinstance(move, Spread):
        raise PlanError(f"moves[{index}]", "is no spread; name the index of one")
    model = model_of(plan)
    begin = begin_of(plan, model, folder=folder, cancelled=cancelled)
    for k, earlier in enumerate(plan.moves[:index]):
        begin = _made(model, earlier, begin, k, cancelled).end
    whole = _made(model, move, begin, index, cancelled)
    result = whole.result(with_residual=False)
    mark = next((event for event in result.events if event.kind == STOP), None)
    # both ways are looked at with the tool off: while it pushes, the metal stands further out than it stays
    eased = _made(model, Ease(), whole.end, index, cancelled)
    on = replace(_cost(whole, result, move), opened_m=_opened_m(eased))
    if mark is None:
        return StopAndCut(None, "", on, None)
    stopped = msgspec.structs.replace(move, opening_m=mark.opening_m)
    run = _made(model, stopped, begin, index, cancelled)
    opened = run.result(with_residual=False)
    chosen = tuple(cuts) or _cut_of(opened.events)
    last = run
    after: tuple[Move, ...] = (Ease(), *chosen)
    for more in after:
        last = _made(model, more, last.end, index, cancelled)
    off = _cost(last, last.result(with_residual=False), stopped)
    return StopAndCut(mark.opening_m, mark.part, on, off, chosen)


def _made(model: DoorModel, move: Move, begin: Begin, index: int, cancelled: Callable[[], bool]) -> MoveRun:
    try:
        run = MoveRun(model, move, begin, index, cancelled=cancelled)
    except PlanError as error:
        raise error.inside(f"moves[{index}]") from error
    for _ in run:
        pass
    return run


def _cut_of(events: Sequence[Event]) -> tuple[Cut, ...]:
    """Return the cut of the first fitting in sight; nothing where there is none."""
    for event in events:
        if event.kind == EXPOSED and event.part.endswith(("latch", "hinge")):
            panel = "rear" if event.part.startswith("rear ") else "front"
            name = event.part.removeprefix("front ").removeprefix("rear ")
            return (Cut(FittingCut(panel, "striker" if name == "latch" else name)),)  # type: ignore[arg-type]
    return ()


def _cost(run: MoveRun, result: MoveResult, move: Spread) -> Cost:
    frame, model, state = run.ends[1], run.model, run.end.state
    rest = model.structure.points
    nodes = np.unique(model.structure.triangles[: len(model.mesh.surface.triangles)])
    away = np.linalg.norm(state.points[nodes] - rest[nodes], axis=1)
    ties = zip(model.structure.ties, state.holding, strict=True)
    freed = tuple(tie.name for tie, on in ties if not on and tie.name.endswith(("latch", "hinge")))
    torn, edges = frame.torn_length_m, result.sharp_edge_count
    return Cost(torn, edges, move.opening_m, float(away.max()), freed, _opened_m(run))


def _opened_m(run: MoveRun) -> float:
    """Return how far the inner bend along the latch edge stands outboard of its place on average [m]."""
    model = run.model
    first, last = model.mesh.edges["latch_edge"]
    return model.outboard(run.end.state.points, model.mesh.wall[-1, first : last + 1])
