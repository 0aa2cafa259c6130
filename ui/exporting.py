"""The command that writes the start and any moment of a plan for other programs."""

from __future__ import annotations

import math
import sys
from collections.abc import Callable, Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from sim.problems import PlanError
from ui.folders import check_folder, fresh_folder
from ui.refusal import Refusal, read_plan, sentence_of

if TYPE_CHECKING:
    from sim.door_model import DoorModel
    from sim.plan import Plan
    from sim.record import Frame, MoveRecord

Solve = Callable[["Plan"], "tuple[DoorModel, tuple[MoveRecord, ...]]"]


def export(path: Path, out: Path, move: int | None, opening_m: float | None, solve: Solve) -> int:
    """Solve a plan and write the start, one moment, the tables and the untouched shells.

    Parameters
    ----------
    path : the plan's file;  out : the folder
    move : number of the move, from 1;  None is the last
    opening_m : the moment of that move that is nearest to an opening; None is its end
    solve : returns model and records of a plan, and says how far it is
    """
    plan = read_plan(path)
    if not plan.moves:
        raise Refusal(f"{path}: moves is empty, so there is nothing to solve; add a [[moves]] table.")
    number = len(plan.moves) if move is None else move
    if not 1 <= number <= len(plan.moves):
        raise Refusal(f"--move {number}: is not in the plan; use 1 to {len(plan.moves)}.")
    if opening_m is not None and not 0.0 <= opening_m < math.inf:
        raise Refusal(f"--opening {opening_m}: cannot be; use metres from 0 on.")
    from sim import exports

    check_folder(out, exports.FILES)
    with fresh_folder(out) as folder:
        try:
            model, records = solve(plan)
        except PlanError as error:
            raise Refusal(f"{path}: {sentence_of(error)}") from error
        frame = moment(records[number - 1].frames, opening_m)
        exports.write_all(folder, model, records, frame)
    sys.stdout.write(f"Move {number} at {1e3 * frame.opening_m:.1f} mm of opening, and the start.\n{out}\n")
    return 0


def moment(frames: Sequence[Frame], opening_m: float | None) -> Frame:
    """Return the frame nearest to an opening, or the last one."""
    if opening_m is None:
        return frames[-1]
    return min(frames, key=lambda frame: abs(frame.opening_m - opening_m))
