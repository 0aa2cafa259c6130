"""A plan solved while the command line says how far it is.

The mechanics are imported only when something is solved, so that words about a plan come at once.
"""

from __future__ import annotations

import time
from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from ui.progress_line import ProgressLine
from ui.refusal import ready_model, time_words

if TYPE_CHECKING:
    from sim.door_model import DoorModel
    from sim.plan import Plan
    from sim.record import Frame, MoveRecord


def solve(plan: Plan, folder: Path | None = None) -> tuple[DoorModel, tuple[MoveRecord, ...]]:
    """Return the model and the record of every move; says how far it is on the error stream.

    A saved start is looked for in ``folder``.

    Raises
    ------
    PlanError
        When the door cannot be meshed or a move cannot be made; no move has been solved then.
    """
    from sim import run as runs

    ready_model(plan)
    progress = Progress(expected_frames(plan))
    try:
        return runs.solve_plan(plan, on_frame=progress.step, folder=folder)
    finally:
        progress.end()


def expected_frames(plan: Plan) -> list[int]:
    """Return how many frames each move will have if nothing stops it early."""
    from sim.crush import CRUSH_STEP_M
    from sim.move_words import opening_of
    from sim.plan import Crush, Spread
    from sim.spreading import grid_openings

    counts = []
    for move in plan.moves:
        reach = opening_of(move)
        if isinstance(move, Crush):
            steps = round(reach / CRUSH_STEP_M)
        else:  # every other driven move has the grid of a spread's tips
            steps = len(grid_openings(reach, grips=isinstance(move, Spread))) if reach else 0
        counts.append(1 + steps)
    return counts


class Progress(ProgressLine):
    """Says on the error stream how much is solved, and about how long the rest will take."""

    def __init__(self, counts: Sequence[int]) -> None:
        super().__init__()
        self.counts = counts
        self.started = time.perf_counter()
        self._said_share = -1
        self._began = 0.0  # how much was solved when the clock began to count

    def step(self, frame: Frame) -> None:
        """Count one solved frame."""
        before = sum(self.counts[: frame.move_index])
        done = min(before + frame.increment + 1, before + self.counts[frame.move_index])
        share = done / max(1, sum(self.counts))
        tenth = int(10 * share)
        if not self.live and tenth == self._said_share:
            return
        self._said_share = tenth
        if not self._began:  # what the first frame took is mostly the mechanics being made ready
            self.started, self._began = time.perf_counter(), share
        spent = time.perf_counter() - self.started
        words = f"move {frame.move_index + 1} of {len(self.counts)}, {100 * share:.0f} % solved"
        if self._began < share < 1.0 and spent > 1.0:
            words += f", about {time_words(spent * (1.0 - share) / (share - self._began))} left"
        self.write(words)
