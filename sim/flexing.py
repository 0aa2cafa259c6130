"""A flex as a move: a hand lever that pries a window frame or a door's edge outward, as far as a hand can."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from typing import Any

import numpy as np
from numpy.typing import NDArray

from sim import outcome, tearing
from sim.course import UnderWay
from sim.crush import drawn_back
from sim.engaged import Start
from sim.increment import ON_GRID_M, Point, Stepper, grid_m, stall_point
from sim.lever import Lever
from sim.model import DoorModel, Panel
from sim.network import Drive, Network
from sim.pads import pad_on
from sim.plan import Flex, FramePoint, Tool
from sim.problems import PlanError
from sim.push import push_direction
from sim.ranges import Range, check_ranges, check_tilt
from sim.record import Event, Frame, Rung
from sim.rigid import Barrier

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

STEP_M = 0.0025  # the grid of the tip's way
SAMPLES = 9
FOOT_NODES = 2  # a foot on fewer carries no moment
BAR_TIP_DEEP_M = 0.03  # length of the bar's tip on the metal, assumed: forks and blades are 25-50 mm wide

RANGES: dict[str, Range] = {
    "length_m": (0.3, 1.5, "0.75 to 0.9 m is usual"),
    "tip_m": (0.02, 0.2, "0.03 to 0.08 m is usual"),
    "tip_width_m": (0.01, 0.1, "0.025 to 0.05 m is usual"),
    "hand_n": (20.0, 1500.0, "400 to 700 N is a hard pull"),
}


@dataclass(frozen=True)
class ReadyBar:
    """A bar set on the metal, and what stands there between two moves.

    nodes, weights : what the tip bears on;  way : unit vector of the push, shape (3,)
    start_m : where along the way the metal was when the bar was set
    """

    nodes: Ints
    weights: Floats
    way: Floats
    start_m: float
    lever: Lever
    seats: tuple[str, ...]
    barrier: Barrier | None = None

    @property
    def direction(self) -> Floats:
        """Unit vector of the push, shape (3,)."""
        return self.way

    @property
    def drive(self) -> Drive:
        """The contact of the network."""
        return Drive(self.nodes, self.weights, self.way, self.start_m)

    def set_on(self, points: Floats) -> ReadyBar:
        """Return the bar set on the metal as it is."""
        return replace(self, start_m=float(self.way @ (self.weights @ points[self.nodes])))

    def contacts(self, network: Network, point: Point) -> tuple[Floats, Floats]:
        """Return where the tip pushes (1, 3) [m] and with what force (1, 3) [N]."""
        del network
        place = self.weights @ point.state.points[self.nodes]
        return place[None], (float(np.max(point.force_n, initial=0.0)) * self.way)[None]

    def let_off(self, model: DoorModel, begin: Start, make: Callable[[Network], Stepper]) -> Point:
        """Return the metal at rest after the bar has been let back until it no longer pushes."""
        stepper = make(model.network.with_drives([self.drive]))
        load = stepper.load(begin.opening_m, begin.state)
        held = stepper.network.evaluate(begin.state.points, begin.state, load)
        point = Point(begin.state, held, begin.opening_m, held.drive_force.copy(), begin.ledger)
        return drawn_back(stepper, point)


def make_bar(model: DoorModel, move: Flex) -> ReadyBar:
    """Return a flex made ready on a door.

    Raises
    ------
    PlanError
        A number out of range, a tip in the air, more way than the bar has.
    """
    bar = move.bar
    check_ranges(RANGES, bar, "bar")
    if bar.tip_m > 0.5 * bar.length_m:
        raise PlanError("bar.tip_m", f"is {bar.tip_m} m, more than half the bar; set the heel nearer the tip")
    lever = Lever(bar.length_m, bar.tip_m, bar.hand_n)
    if not (math.isfinite(move.opening_m) and 0.0 < move.opening_m <= lever.reach_m):
        raise PlanError(
            "opening_m",
            f"is {move.opening_m} m; with its heel {bar.tip_m} m from the tip the bar goes up to "
            f"{lever.reach_m:.3f} m; move the heel back for more way and less force",
        )
    check_tilt(move.tilt_rad)
    if isinstance(move.on, FramePoint):
        try:
            panel = model.panel(move.on)
        except PlanError as error:
            raise error.inside("on") from error
        nodes, weights = _on_frame(panel, move.on, bar.tip_width_m)
        edge, seat = "latch_edge", "window frame"
    else:
        tool = Tool(tip_width_m=bar.tip_width_m, tip_depth_m=BAR_TIP_DEEP_M)
        try:
            pad = pad_on(model, move.on, tool)
        except PlanError as error:
            raise error.inside("on") from error
        nodes, weights, edge, seat = pad.nodes, pad.weights, move.on.edge, pad.seat
    way = push_direction(model, edge, move.tilt_rad)
    bar_set = ReadyBar(nodes, weights, way, 0.0, lever, (seat, "bar's heel beside it"))
    return bar_set.set_on(model.start.points)


def _on_frame(panel: Panel, place: FramePoint, width_m: float) -> tuple[Ints, Floats]:
    """Return nodes and weights (summing to 1) of a tip on the window frame's chain."""
    mesh = panel.mesh
    chain = mesh.surface.chains["frame"]
    points = mesh.surface.points[chain]
    free = np.flatnonzero(points[:, 2] > mesh.shape.height_m - 1.0e-6)
    # the node on the belt is one of a foot's too
    if 1 + min(free[0], len(points) - 1 - free[-1]) < FOOT_NODES:
        raise PlanError(
            "on",
            "is a window frame that stands on one node at a foot on this lattice, so it would swing "
            "freely and cost the hand nothing; use a smaller car.lattice_spacing_m, such as 0.08, or pry "
            "at the edge",
        )
    chain, points = chain[free], points[free]
    along = np.concatenate([[0.0], np.cumsum(np.linalg.norm(np.diff(points, axis=0), axis=1))])
    if not 0.0 <= place.along_m <= along[-1]:
        raise PlanError(
            "on.along_m", f"is {place.along_m} m; the window frame is {along[-1]:.2f} m long, use less"
        )
    at = place.along_m + width_m * ((np.arange(SAMPLES) + 0.5) / SAMPLES - 0.5)
    at = np.clip(at, 0.0, along[-1])
    cell = np.clip(np.searchsorted(along, at, side="right") - 1, 0, len(along) - 2)
    share = (at - along[cell]) / (along[cell + 1] - along[cell])
    total = np.bincount(np.concatenate([cell, cell + 1]), np.concatenate([1.0 - share, share]), len(chain))
    kept = total > 1.0e-12
    return np.asarray(chain[kept] + panel.first, dtype=np.int64), total[kept] / total[kept].sum()


class FlexCourse:
    """Pull the bar."""

    def __init__(self, run: UnderWay) -> None:
        self.run = run
        self.set: ReadyBar = make_bar(run.model, run.move)
        run.push = self.set
        self._most = 0.0, 0.0  # the most a hand has pulled and the tip has pushed with [N]

    @staticmethod
    def ready(model: DoorModel, move: Flex) -> object:
        """Make the flex ready; PlanError when it cannot be made."""
        return make_bar(model, move)

    @staticmethod
    def limit_m(model: DoorModel, move: Flex) -> float:
        """Return how far the bar's tip goes at most [m]."""
        del model
        return Lever(move.bar.length_m, move.bar.tip_m, move.bar.hand_n).reach_m

    def frames(self) -> Iterator[Frame]:
        """Yield the start, every grid increment, each place where something let go, and the end."""
        run = self.run
        rest = run.at_rest()
        bar = run.push = self.set = self.set.set_on(rest.state.points)
        stepper = run.step(run.model.network.with_drives([bar.drive]))
        point = stepper.first_point(rest.state, rest.ledger)
        yield run.emit(point, bar, 0)
        limit = run.move.opening_m
        grid, reached = grid_m(limit, STEP_M), 0
        while reached < len(grid) and not run.stopping:
            before, taken = point, run.stepper.tally.iterations
            point, stalled = self._step(before, grid[reached])
            reached += point.travel_m >= grid[reached] - ON_GRID_M
            point = run.stepper.counted(point, taken)
            events = self._events(before, point, stalled=stalled)
            yield run.emit(point, run.push, reached, events, rungs=self._rungs(point))
            if stalled or run.stop_here(events):
                break
        run.finish(point)

    def _step(self, before: Point, target: float) -> tuple[Point, bool]:
        """Return the next point and whether the hand's strength ended it."""
        run = self.run
        reached = tearing.advance(run.stepper, before, target, self.set.nodes)
        if reached.stepper is not run.stepper:
            run.model = tearing.torn_model(run.model, reached.stepper.network)
            drive = reached.stepper.network.drives[0]
            run.push = self.set = replace(self.set, nodes=drive.nodes, weights=drive.weights)
        run.take(reached.stepper)
        point, limit = reached.point, self.set.lever.tip_n
        if float(np.max(point.force_n, initial=0.0)) <= limit(point.travel_m):
            return point, False
        return stall_point(run.stepper, reached.start, point, limit), True

    def _events(self, before: Point, point: Point, *, stalled: bool) -> tuple[Event, ...]:
        run, seen = self.run, self.run.seen
        force = float(np.max(point.force_n, initial=0.0))
        peak = max(float(np.max(before.force_n, initial=0.0)), force)
        self._most = max(self._most, (force / self.set.lever.gain(point.travel_m), force))
        events = run.metal_events(before, point) + run.tear_events(point, peak, seen)
        return (*events, Event("stalled", "hand", point.travel_m, force)) if stalled else events

    def _rungs(self, point: Point) -> tuple[Rung, ...]:
        force = float(np.max(point.force_n, initial=0.0))
        return (Rung("hand", "stalled", force / self.set.lever.tip_n(point.travel_m)),)

    def sentence(self) -> str:
        """Return how far the tip went, what let go, and what the hand had to pull."""
        first, last = self.run.ends
        lever = self.set.lever
        gone = [outcome.rung_words(e.part, e.kind) for e in self.run.events if e.kind.endswith(" free")]
        let_go = ", ".join(gone) if gone else "nothing let go"
        hand, tip = self._most
        stalled = any(event.kind == "stalled" for event in self.run.events)
        why = "that is all a hand has" if stalled else "at the most"
        return (
            f"The bar's tip, on the {self.set.seats[0]}, went {last.opening_m * 1e3:.0f} mm, {let_go}; "
            f"{outcome.clearance_words(first, last)}. {hand:.0f} N at the end of {lever.length_m:g} m of bar "
            f"made {tip / 1e3:.1f} kN at its tip, {why}."
        ).replace("on the behind", "behind")

    def effect(self) -> str:
        """Return what it means for the plan."""
        return outcome.plan_word(*self.run.ends, self.run.metal_words)

    def result_fields(self) -> dict[str, Any]:
        """Return nothing."""
        return {}
