"""One move run: frames on a fixed grid of increments, then a result in numbers and words."""

from __future__ import annotations

import time
from collections.abc import Callable, Iterator
from typing import Any

from sim.builds import car_notes, labelled
from sim.course import Begin as Begin
from sim.course import UnderWay
from sim.course import never as never
from sim.door_model import DoorModel
from sim.increment import Stepper
from sim.letoff import let_off as let_off
from sim.moves import made_ready
from sim.plan import Move
from sim.record import LEFT_TEARING, Frame, MoveResult, Rung, SolverNote
from sim.spreading import STEP_M as STEP_M

DRAG_SHARE = 0.05  # of the work: more of it is told
DRAG_LEAST_J = 1.0  # below this the tips have hardly worked


class MoveRun(UnderWay):
    """One move under way: iterate for frames, `stop` to let go, then `result`.

    Raises
    ------
    PlanError
        When the move cannot be made (tip in the air and the like); nothing has been solved then.
    CancelledError
        From the iteration, when ``cancelled()`` turned true.
    """

    def __init__(
        self,
        model: DoorModel,
        move: Move,
        begin: Begin,
        move_index: int = 0,
        *,
        cancelled: Callable[[], bool] = never,
    ) -> None:
        super().__init__(model, move, begin, move_index, cancelled)
        self.course = made_ready(self)
        self._set = self.push  # as it was set, whatever slides later

    def stop(self) -> None:
        """Let go: the move ends at the increment under way and keeps that opening."""
        self.stopping = True

    def __iter__(self) -> Iterator[Frame]:
        """Yield the start, every grid increment and the end."""
        return self.course.frames()

    @property
    def end(self) -> Begin:
        """What the next move starts from."""
        assert self._point is not None
        off = self.hold is not None and self.hold.off
        return Begin(
            self._point.state,
            self._point.ledger,
            None if off else self.push,
            self._point.travel_m,
            self.model,
            self.cut_m,
        )

    def result(self, *, with_residual: bool = True) -> MoveResult:
        """Return the finished move in numbers and words; solves the let-off for the residual when asked."""
        assert self._point is not None
        start, end = self._frames[0], self._frames[-1]
        least = min(frame.clearance.distance_m for frame in self._frames)
        metal = self.metal_words
        residual = None
        if with_residual and self.push is not None:
            residual = self._inner_residual()
        books = {k: end.ledger_j[k] - start.ledger_j[k] for k in end.ledger_j}
        work = max(abs(books["work of the tips"]), 1.0e-9)
        wall = time.perf_counter() - self._started
        note = SolverNote(
            self._network.factor.name,
            "numba",
            len(self.model.structure.points),
            self._tally_increments,
            self._tally_iterations,
            self._tally_failed,
            self._factor_s,
            self._assemble_s,
            wall,
        )
        notes = [*car_notes(self.model.car)]
        found = self.begin.found
        if found is not None:
            notes.append(f"As found: {found.sentence()}")
        for event in self.events:
            if event.kind == LEFT_TEARING:
                notes.append(f"The {event.part} tore where the wreck had left it about to, no tool at work")
        if self._tally_failed:
            notes.append("some increments did not converge: the words below are not settled")
        if books["viscous"] > DRAG_SHARE * max(work, DRAG_LEAST_J):
            share = books["viscous"] / work
            notes.append(f"drag took {100 * share:.0f} % of the work: forces are that much too high")
        return MoveResult(
            seats=self._set.seats if self._set else (),
            events=tuple(self.events),
            metal=metal if not self._tally_failed else ("not settled", *metal),
            plan_effect="not settled" if self._tally_failed else self.course.effect(),
            sentence=labelled(self.model.car, self.course.sentence()),
            ladder=self._peak_ladder(),
            ledger_j=books,
            ledger_closure_ratio=abs(books["gap"]) / work,
            viscous_ratio=books["viscous"] / work,
            parted_length_m=end.parted_length_m,
            torn_length_m=end.torn_length_m,
            sharp_edge_count=end.sharp_edge_count,
            latch_demand_ratio=self.peak_latch,
            skin_mid_outboard_m=end.skin_mid_outboard_m,
            inner_mid_outboard_m=end.inner_mid_outboard_m,
            inner_residual_outboard_m=residual,
            clearance_m={
                "start": start.clearance.distance_m,
                "least": least,
                "end": end.clearance.distance_m,
            },
            start_sha256=self.begin.state.sha256(),
            solver=note,
            notes=tuple(notes),
            found={} if found is None else found.as_dict(),
            **self._room(start, end),
            **self.course.result_fields(),
        )

    def _room(self, start: Frame, end: Frame) -> dict[str, Any]:
        """Return what only a whole side is asked: each body part's clearance, exit width, spots popped."""
        if end.exit_width_m is None:
            return {}
        parts = {
            part: {
                "start": start.part_clearance_m[part],
                "least": min(frame.part_clearance_m[part] for frame in self._frames),
                "end": end.part_clearance_m[part],
            }
            for part in end.part_clearance_m
        }
        widths = {"start": start.exit_width_m or 0.0, "end": end.exit_width_m}
        return {"part_clearance_m": parts, "exit_width_m": widths, "spots_gone": end.spots_gone}

    def settle(self) -> None:
        """Make `result` and `end` true for the increments so far; the run can still be gone on with."""
        if self._point is not None:
            self.finish(self._point)

    def _peak_ladder(self) -> tuple[Rung, ...]:
        """Return each rung's largest demand during the move."""
        best: dict[tuple[str, str], float] = {}
        for frame in self._frames:
            for rung in frame.ladder:
                key = (rung.part, rung.event)
                best[key] = max(best.get(key, 0.0), rung.demand_ratio)
        for event in self.events:
            for key in best:
                if key[1] == event.kind and (key[0] == event.part or event.part.startswith(("seam", "weld"))):
                    best[key] = max(best[key], 1.0)
        rungs = [Rung(part, event, ratio) for (part, event), ratio in best.items()]
        return tuple(sorted(rungs, key=lambda rung: -rung.demand_ratio))

    def _inner_residual(self) -> float:
        rest = let_off(
            self.model, self.end.engaged, self.end, lambda network: Stepper(network, self._cancelled)
        )
        return self.model.outboard(rest.state.points, self.model.structure.names["inner_mid"])
