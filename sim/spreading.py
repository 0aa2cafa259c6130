"""A spread or a squeeze as a move: tips that open or close on a grid, grip, slide, tear and cut."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

import numpy as np
from numpy.typing import NDArray

from sim import outcome, tearing
from sim.course import UnderWay
from sim.creases import crease_words, upper_moved_m
from sim.grips import just_set
from sim.increment import ON_GRID_M, Point, Stepper, cut_on, stall_point
from sim.lookout import due
from sim.model import DoorModel
from sim.plan import Spread, Squeeze
from sim.push import CLOSING_LIMIT_M, Push, make_push, opening_left
from sim.record import BASE_GIVING, Event, Frame
from sim.regrip import Hold, first_step
from sim.shear import edges_under
from sim.stood import base_events
from sim.tip_events import tip_events

Floats = NDArray[np.float64]

STEP_M = 0.0025  # the grid of tip openings; 0.5 to 10 mm gave the same verdicts in a trial
# While the tips take hold the force they are pressed with doubles from one step of that grid to the next, and
# friction, which goes by the last step, would hold twice too much: the highest force on the lip came to 1.7
# to 4.3 kN from lattice to lattice.  In steps of 0.25 mm it is 3.3 to 3.7, in 0.125 mm the same to 3 %.
HOLD_STEP_M, HOLD_M = 0.00025, 0.005


def grid_openings(limit_m: float, *, grips: bool) -> Floats:
    """Return the openings of a push's increments, shape (k,) [m], the last one its limit.

    grips : whether the tips hold by friction: then the first `HOLD_M` are taken in steps of `HOLD_STEP_M`
    """
    coarse = STEP_M * np.arange(1, max(1, round(limit_m / STEP_M)) + 1, dtype=np.float64)
    coarse[-1] = limit_m
    if not grips:
        return coarse
    fine = HOLD_STEP_M * np.arange(1, round(HOLD_M / HOLD_STEP_M) + 1, dtype=np.float64)
    just_under = limit_m - 1.0e-9
    return np.concatenate([fine[fine < just_under], coarse[coarse > min(HOLD_M + 1.0e-9, just_under)]])


class SpreadCourse:
    """Open the tips."""

    def __init__(self, run: UnderWay) -> None:
        self.run = run
        self.set: Push = make_push(run.first_model, run.move)  # as it was set, whatever slides later
        run.push = self.set

    @staticmethod
    def ready(model: DoorModel, move: Spread | Squeeze) -> object:
        """Make the push ready; PlanError when it cannot be made."""
        return make_push(model, move)

    @staticmethod
    def limit_m(model: DoorModel, move: Spread) -> float:
        """Return how far the tool can still open from where its tips stand [m]."""
        return opening_left(model, move)

    def frames(self) -> Iterator[Frame]:
        """Yield the start, every grid increment, each place where something let go, and the end."""
        run, push, rest = self.run, self.set, self.run.at_rest()
        grid = grid_openings(push.limit_m, grips=push.place is not None)
        ways = np.diff(grid, prepend=0.0, append=grid[-1] + STEP_M)
        hold = run.hold = Hold(run.model, push, rest.state, float(ways[0]))
        stepper = run.step(run.model.network.with_drives([hold.drive]))
        point = stepper.first_point(just_set(rest.state), rest.ledger)
        yield run.emit(point, push, 0)
        reached = 0
        while reached < len(grid) and not run.stopping:
            target, way = float(grid[reached]), float(ways[reached + 1])
            before, taken = point, stepper.tally.iterations
            point, halt = self._step(before, target, push)
            stepper, push = self._torn_so_far(stepper, push)
            if halt == "":
                stepper, point = hold.go_on(run.model, stepper, point, before.travel_m, way)
                run.take(stepper)
                push = hold.push
            elif halt == "cut":
                edge = edges_under(run.model, push)[0]
                stepper, point = hold.cut(run.model, stepper, point, way, outer=edge.outer)
                run.take(stepper)
                push = hold.push
            run.push = push
            reached += point.travel_m >= target - ON_GRID_M
            point = stepper.counted(point, taken)
            events = self._events(before, point, halt)
            yield run.emit(point, push, reached, events)
            if halt == "stalled" or hold.off or run.stop_here(events):
                break
        run.push = push
        run.finish(point)

    def _step(self, before: Point, target: float, push: Push) -> tuple[Point, str]:
        """Return the next point and what holds the tips up: nothing, the tool's limit or the sheet's edge."""
        if before.travel_m == 0.0 and push.place is not None:
            return first_step(before, target, lambda point, travel: self._part(point, travel, push))
        return self._part(before, target, push)

    def _part(self, before: Point, target: float, push: Push) -> tuple[Point, str]:
        run = self.run
        edge = edges_under(run.model, push)[0]
        shear = edge.tip_n
        reached = tearing.advance(run.stepper, before, target, push.nodes)
        run.stepper, point = reached.stepper, reached.point
        force = float(np.max(point.force_n, initial=0.0))
        if force <= min(push.force_limit(point.travel_m), shear):
            return point, ""
        point = stall_point(
            run.stepper, reached.start, point, lambda travel: min(push.force_limit(travel), shear)
        )
        if shear >= push.force_limit(point.travel_m):
            return point, "stalled"
        run.cut_m += edge.length_m
        run.cut = "outer skin" if edge.outer else push.pads[0].part, float(np.max(point.force_n))
        return cut_on(point, point.travel_m + edge.thickness_m), "cut"

    def _torn_so_far(self, stepper: Stepper, push: Push) -> tuple[Stepper, Push]:
        """Return stepper and push on the sheet as it is now; model and tips take over what has torn."""
        run = self.run
        new = run.stepper
        if new is stepper:
            return stepper, push
        run.model = tearing.torn_model(run.model, new.network)
        run.take(new)
        drive = new.network.drives[0]
        push = push.torn(drive)
        assert run.hold is not None
        for node, half in tearing.splits(stepper.network, new.network):
            run.hold.torn(push, node, half)
        return new, push

    def _events(self, before: Point, point: Point, halt: str) -> tuple[Event, ...]:
        run = self.run
        force = float(np.max(point.force_n, initial=0.0))
        peak = max(float(np.max(before.force_n, initial=0.0)), force)
        seen = run.seen
        events = run.metal_events(before, point)
        events += tuple(tip_events(run.hold, run.events, before, point.travel_m, halt, run.cut))
        events += run.tear_events(point, peak, seen)
        if BASE_GIVING + self.set.seats[1] not in seen:
            was = run.ends[0].points
            events += base_events(self.set, was, point.state.points, point.travel_m, force)
        events += due(events, run.events)
        if halt == "stalled":
            events += (Event("stalled", "tool", point.travel_m, force),)
        return events

    def sentence(self) -> str:
        """Return what moved, what let go, what it cost or gained, and why."""
        run = self.run
        told = outcome.push_sentence(*run.ends, run.peak_latch, run.events, self.set)
        return told + self.crease_told()

    def crease_told(self) -> str:
        """Return what became of a crease that an earlier move had left."""
        return crease_words(self.run.first_model, *self.run.ends)

    def effect(self) -> str:
        """Return what it means for the plan."""
        return outcome.plan_word(*self.run.ends, self.run.metal_words)

    def result_fields(self) -> dict[str, Any]:
        """Return how far the upper panel's middle went."""
        return {"upper_panel_m": upper_moved_m(self.run.first_model, *self.run.ends)}


class SqueezeCourse(SpreadCourse):
    """Close the tips across the door."""

    def crease_told(self) -> str:
        """Return nothing: a squeeze makes its crease."""
        return ""

    @staticmethod
    def limit_m(model: DoorModel, move: Squeeze) -> float:  # type: ignore[override]
        """Return how far tips close at most [m]."""
        del model, move
        return CLOSING_LIMIT_M
