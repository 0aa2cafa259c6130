"""Runs: a move becomes frames on a fixed grid of increments, then a result in numbers and words."""

from __future__ import annotations

import time
from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from sim import ladder, outcome, tearing, torn
from sim.builds import car_notes, labelled
from sim.crush import Press, increments, make_press
from sim.door_model import DoorModel, build_model
from sim.drawn import drawn_out
from sim.events import motion_events, seam_events
from sim.frames import FrameMaker
from sim.grips import just_set
from sim.increment import Point, Stepper, cut_on, stall_point
from sim.ledger import Ledger
from sim.letoff import let_off as let_off
from sim.network import Network, State
from sim.plan import Crush, Ease, Move, Plan, Spread, Squeeze
from sim.problems import PlanError
from sim.push import Push, make_push
from sim.record import Event, Frame, MoveRecord, MoveResult, Rung, SolverNote
from sim.regrip import Hold, first_step
from sim.shear import edges_under
from sim.tip_events import tip_events

Floats = NDArray[np.float64]

STEP_M = 0.0025  # the grid of tip openings; 0.5 to 10 mm gave the same verdicts in a trial


def never() -> bool:
    """Return False: nobody asked to stop."""
    return False


@dataclass(frozen=True)
class Begin:
    """What a move starts from."""

    state: State
    ledger: Ledger
    engaged: Push | Press | None = None
    opening_m: float = 0.0
    model: DoorModel | None = None  # the model as torn so far; None is the untorn one
    cut_m: float = 0.0  # length of sheet the tips have sheared through


class MoveRun:
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
        self.model = model if begin.model is None else begin.model
        self.move, self.begin, self.move_index = move, begin, move_index
        self._cut_m = begin.cut_m
        self.push: Push | Press | None = None
        if isinstance(move, Crush):
            self.push = make_press(self.model, move, begin.state.points)
        elif not isinstance(move, Ease):
            self.push = make_push(model, move)
        self._cancelled = cancelled
        self._stopping = False
        self._frames: list[Frame] = []
        self._events: list[Event] = []
        self._peak_latch = 0.0
        self._started = time.perf_counter()
        self._point: Point | None = None
        self._factor_s = self._assemble_s = 0.0
        self._tally_increments = self._tally_iterations = self._tally_failed = 0
        self._hold: Hold | None = None
        self._cut = "", 0.0
        self._set = self.push  # as it was set, whatever slides later

    def stop(self) -> None:
        """Let go: the move ends at the increment under way and keeps that opening."""
        self._stopping = True

    @property
    def frames(self) -> tuple[Frame, ...]:
        """The frames so far."""
        return tuple(self._frames)

    def __iter__(self) -> Iterator[Frame]:
        """Yield the start, every grid increment and the end."""
        if self.push is None:
            held = replace(self._rest_point(self.begin), travel_m=self.begin.opening_m)
            yield self._emit(held, None, 0)
            rest = held if self.begin.engaged is None else self._let_off()
            yield self._emit(replace(rest, travel_m=0.0), None, 1)
            self._finish(rest)
            return
        start = self._let_off() if self.begin.engaged is not None else self._rest_point(self.begin)
        if isinstance(self.push, Press):
            yield from self._crush(start, self.push)
        else:
            yield from self._spread(start, self.push)

    def _rest_point(self, begin: Begin) -> Point:
        stepper = self._stepper(self.model.network)
        return stepper.first_point(begin.state, begin.ledger)

    def _stepper(self, network: Network) -> Stepper:
        self._network = network
        network.factor.seconds = 0.0
        network.assemble_seconds = 0.0
        self._current = Stepper(network, self._cancelled)
        return self._current

    def _let_off(self) -> Point:
        """Return the metal at rest with the last tool drawn back to nothing."""
        push, begin = self.begin.engaged, self.begin
        assert push is not None
        return let_off(self.model, push, begin, self._stepper)

    def _emit(
        self, point: Point, push: Push | Press | None, increment: int, events: tuple[Event, ...] = ()
    ) -> Frame:
        frame = FrameMaker(self.model, self._network, self.move_index).frame(
            point, push, increment, events, self._cut_m, None if self._hold is None else self._hold.now()
        )
        self._frames.append(frame)
        self._events.extend(events)
        self._peak_latch = max(self._peak_latch, frame.latch_demand_ratio)
        return frame

    def _spread(self, rest: Point, push: Push) -> Iterator[Frame]:
        hold = self._hold = Hold(self.model, push, rest.state, min(STEP_M, push.limit_m))
        network = self.model.network.with_drives([hold.drive])
        stepper = self._stepper(network)
        point = stepper.first_point(just_set(rest.state), rest.ledger)
        yield self._emit(point, push, 0)
        count = max(1, round(push.limit_m / STEP_M))
        stop_at = set(self.move.stop_at) if isinstance(self.move, Spread | Squeeze) else set()
        grid = 0
        while grid < count and not self._stopping:
            target = min((grid + 1) * STEP_M, push.limit_m)
            before, taken = point, stepper.tally.iterations
            point, halt = self._step(before, target, push)
            stepper, push = self._torn_so_far(stepper, push)
            if halt == "":
                stepper, point = hold.go_on(self.model, stepper, point, before.travel_m, STEP_M)
                self._network, self._current, push = stepper.network, stepper, hold.push
            elif halt == "cut":
                edge = edges_under(self.model, push)[0]
                stepper, point = hold.cut(self.model, stepper, point, STEP_M, outer=edge.outer)
                self._network, self._current, push = stepper.network, stepper, hold.push
            self.push = push
            grid += point.travel_m >= target - 1.0e-12
            stepper.tally.increments += 1
            point = replace(point, iterations=stepper.tally.iterations - taken)
            events = self._find_events(before, point, push, halt=halt)
            frame = self._emit(point, push, grid, events)
            self._point = point
            yield frame
            if halt == "stalled" or hold.off or stop_at & {event.kind for event in events}:
                break
        self.push = push
        self._finish(point)

    def _crush(self, rest: Point, press: Press) -> Iterator[Frame]:
        network = self.model.network
        self.push = press = press.touching(rest.state.points, network.structure.triangles)
        stepper = self._stepper(network.with_barrier(press.barrier))
        before = stepper.first_point(rest.state, rest.ledger)
        yield self._emit(before, press, 0)
        stop_at = set(self.move.stop_at) if isinstance(self.move, Crush) else set()
        for grid, point in increments(press, stepper, before, lambda: self._stopping):
            events = self._find_events(before, point, press, halt="")
            frame = self._emit(point, press, grid, events)
            before = self._point = point
            yield frame
            if stop_at & {event.kind for event in events}:
                break
        self._finish(before)

    def _step(self, before: Point, target: float, push: Push) -> tuple[Point, str]:
        """Return the next point and what holds the tips up: nothing, the tool's limit or the sheet's edge."""
        if before.travel_m == 0.0 and push.place is not None:
            return first_step(before, target, lambda point, travel: self._part(point, travel, push))
        return self._part(before, target, push)

    def _part(self, before: Point, target: float, push: Push) -> tuple[Point, str]:
        edge = edges_under(self.model, push)[0]
        shear = edge.tip_n
        reached = tearing.advance(self._current, before, target, push.nodes)
        self._current, point = reached.stepper, reached.point
        force = float(np.max(point.force_n, initial=0.0))
        if force <= min(push.force_limit(point.travel_m), shear):
            return point, ""
        point = stall_point(
            self._current, reached.start, point, lambda travel: min(push.force_limit(travel), shear)
        )
        if shear >= push.force_limit(point.travel_m):
            return point, "stalled"
        self._cut_m += edge.length_m
        self._cut = "outer skin" if edge.outer else push.pads[0].part, float(np.max(point.force_n))
        return cut_on(point, point.travel_m + edge.thickness_m), "cut"

    def _torn_so_far(self, stepper: Stepper, push: Push) -> tuple[Stepper, Push]:
        """Return stepper and push on the sheet as it is now; model and tips take over what has torn."""
        new = self._current
        if new is stepper:
            return stepper, push
        self.model = tearing.torn_model(self.model, new.network)
        self._network = new.network
        drive = new.network.drives[0]
        push = replace(push, nodes=drive.nodes, weights=drive.weights)
        assert self._hold is not None
        for node, half in tearing.splits(stepper.network, new.network):
            self._hold.torn(push, node, half)
        return new, push

    def _find_events(
        self, before: Point, point: Point, push: Push | Press, *, halt: str
    ) -> tuple[Event, ...]:
        force = float(np.max(point.force_n, initial=0.0))
        at = point.travel_m
        events = []
        for tie in point.freed:
            events.append(Event(ladder.TIE_EVENT.get(tie.name, "bar foot free"), tie.name, at, tie.tool_n))
            if tie.name == "latch":
                self._peak_latch = max(self._peak_latch, tie.ratio)
        events += drawn_out(self._network, before, point)
        peak = max(float(np.max(before.force_n, initial=0.0)), force)
        seen = {event.kind + event.part for event in self._events}
        events += seam_events(self.model, self._network, before, point, peak)
        events += motion_events(self.model, point, self._frames[0], seen)
        if isinstance(push, Press):
            return tuple(events)
        events += tip_events(self._hold, self._events, before, at, halt, self._cut)
        for part, length in torn.torn_parts(self._network, point.state).items():
            if length >= outcome.limit("torn_m") and "skin tearing" + part not in seen:
                events.append(Event("skin tearing", part, at, peak))
        if halt == "stalled":
            events.append(Event("stalled", "tool", at, force))
        return tuple(events)

    def _finish(self, point: Point) -> None:
        self._point = point
        tally = self._current.tally
        self._tally_increments, self._tally_iterations = tally.increments, tally.iterations
        self._tally_failed = tally.failed
        self._factor_s, self._assemble_s = self._network.factor.seconds, self._network.assemble_seconds

    @property
    def end(self) -> Begin:
        """What the next move starts from."""
        assert self._point is not None
        off = self._hold is not None and self._hold.off
        return Begin(
            self._point.state,
            self._point.ledger,
            None if off else self.push,
            self._point.travel_m,
            self.model,
            self._cut_m,
        )

    def result(self, *, with_residual: bool = True) -> MoveResult:
        """Return the finished move in numbers and words; solves the let-off for the residual when asked."""
        assert self._point is not None
        start, end = self._frames[0], self._frames[-1]
        least = min(frame.clearance.distance_m for frame in self._frames)
        metal = outcome.metal_words(start, end, self._events)
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
        if self._tally_failed:
            notes.append("some increments did not converge: the words below are not settled")
        return MoveResult(
            seats=self._set.seats if self._set else (),
            events=tuple(self._events),
            metal=metal if not self._tally_failed else ("not settled", *metal),
            plan_effect=self._plan_effect(start, end, metal),
            sentence=labelled(
                self.model.car, outcome.sentence(start, end, self._peak_latch, self._events, self._set)
            ),
            ladder=self._peak_ladder(),
            ledger_j=books,
            ledger_closure_ratio=abs(books["gap"]) / work,
            viscous_ratio=books["viscous"] / work,
            parted_length_m=end.parted_length_m,
            torn_length_m=end.torn_length_m,
            sharp_edge_count=end.sharp_edge_count,
            latch_demand_ratio=self._peak_latch,
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
        )

    def _plan_effect(self, start: Frame, end: Frame, metal: tuple[str, ...]) -> str:
        if self._tally_failed:
            return "not settled"
        if isinstance(self.push, Press):
            return "wrecked"
        return "eased" if self.push is None else outcome.plan_word(start, end, metal)

    def settle(self) -> None:
        """Make `result` and `end` true for the increments so far; the run can still be gone on with."""
        if self._point is not None:
            self._finish(self._point)

    def _peak_ladder(self) -> tuple[Rung, ...]:
        """Return each rung's largest demand during the move."""
        best: dict[tuple[str, str], float] = {}
        for frame in self._frames:
            for rung in frame.ladder:
                key = (rung.part, rung.event)
                best[key] = max(best.get(key, 0.0), rung.demand_ratio)
        for event in self._events:
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


def start_frame(model: DoorModel) -> Frame:
    """Return the frame of the untouched door."""
    stepper = Stepper(model.network, never)
    point = stepper.first_point(model.start, Ledger())
    return FrameMaker(model, model.network, 0).frame(point, None, 0, ())


def solve_plan(
    plan: Plan,
    *,
    cancelled: Callable[[], bool] = never,
    on_frame: Callable[[Frame], None] | None = None,
) -> tuple[DoorModel, tuple[MoveRecord, ...]]:
    """Return the model and the record of every move, solved in order, each from where the last one left.

    Raises
    ------
    PlanError
        With the move's path, when a move cannot be made.
    """
    model = build_model(plan.car)
    begin = Begin(model.start, Ledger())
    records = []
    for index, move in enumerate(plan.moves):
        try:
            run = MoveRun(model, move, begin, index, cancelled=cancelled)
        except PlanError as error:
            raise error.inside(f"moves[{index}]") from error
        for frame in run:
            if on_frame is not None:
                on_frame(frame)
        records.append(MoveRecord(run.frames, run.result(), run.end.state))
        begin = run.end
    return model, tuple(records)
