"""Runs: a plan solved move by move, each from where the last one left."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from sim.course import Begin as Begin
from sim.course import never as never
from sim.frames import FrameMaker
from sim.increment import Stepper
from sim.ledger import Ledger
from sim.letoff import let_off as let_off
from sim.model import DoorModel
from sim.move_run import MoveRun as MoveRun
from sim.plan import Plan
from sim.problems import PlanError
from sim.record import Frame, MoveRecord
from sim.spreading import STEP_M as STEP_M
from sim.wreck import begin_of, model_of


def start_frame(model: DoorModel, begin: Begin | None = None) -> Frame:
    """Return the frame of the untouched door, or of what the first move begins with."""
    begin = Begin(model.start, Ledger()) if begin is None else begin
    now = model if begin.model is None else begin.model
    point = Stepper(now.network, never).first_point(begin.state, begin.ledger)
    return FrameMaker(now, now.network, 0).frame(point, None, 0, ())


def solve_plan(
    plan: Plan,
    *,
    cancelled: Callable[[], bool] = never,
    on_frame: Callable[[Frame], None] | None = None,
    folder: Path | None = None,
    with_residual: bool = True,
) -> tuple[DoorModel, tuple[MoveRecord, ...]]:
    """Return the model and the record of every move, solved in order, each from where the last one left.

    Parameters
    ----------
    on_frame : takes each frame of the plan's own moves
    folder : where a saved start is looked for
    with_residual : also let the tool off after every move, to tell what shape is left; changes nothing else

    Raises
    ------
    PlanError
        With the move's path, when a move cannot be made; with the field, when the saved start does not fit.
    """
    model = model_of(plan)
    begin = begin_of(plan, model, folder=folder, cancelled=cancelled)
    records = []
    for index, move in enumerate(plan.moves):
        try:
            run = MoveRun(model, move, begin, index, cancelled=cancelled)
        except PlanError as error:
            raise error.inside(f"moves[{index}]") from error
        for frame in run:
            if on_frame is not None:
                on_frame(frame)
        records.append(MoveRecord(run.frames, run.result(with_residual=with_residual), run.end.state))
        begin = run.end
    return model, tuple(records)
