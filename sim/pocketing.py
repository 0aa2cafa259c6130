"""Tips opened between the raw ends of a cut, as a move: they go in and push, or slip off the edge."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from typing import Any

import numpy as np
from numpy.typing import NDArray

from sim import outcome, tearing
from sim.course import UnderWay
from sim.crush import let_back
from sim.cut_place import check_cut
from sim.cut_plan import Cut, PillarCut
from sim.engaged import Start
from sim.foot_words import foot_words
from sim.increment import ON_GRID_M, Point, Stepper, grid_m, stall_point
from sim.lookout import due
from sim.model import DoorModel
from sim.network import Network
from sim.plan import CutSpread
from sim.problems import PlanError
from sim.push import check_tool
from sim.ram_hold import GIVES_M
from sim.ranges import Range, check_ranges
from sim.raw_seat import RawSeat, TipEnd, seat_on_raw
from sim.record import BASE_GIVING, OFF, SLIPPING, Event, Frame, Rung
from sim.rigid import Barrier
from sim.state import Drive
from sim.strut import Strut

Floats = NDArray[np.float64]

STEP_M = 0.0025  # the grid of tip openings, as of every spread
TOOL_N_PER_M = 2.0e7  # stiffness of a spreader's tips
RANGES: dict[str, Range] = {
    "depth_m": (0.005, 0.2, "the noses go in 30 to 80 mm"),
    "off_m": (-0.1, 0.1, "0 is the middle"),
}


@dataclass(frozen=True)
class TipsInCut:
    """Tips that stand between raw ends until the next move lets them off.

    drive : the contact of the network;  way : unit vector of the push on the cut end, shape (3,)
    """

    drive: Drive
    ends: tuple[TipEnd, TipEnd]
    seats: tuple[str, ...]
    way: Floats
    barrier: Barrier | None = None

    @property
    def direction(self) -> Floats:
        """Unit vector of the push as last looked at, shape (3,)."""
        return self.way

    def contacts(self, network: Network, point: Point) -> tuple[Floats, Floats]:
        """Return where both tips push (2, 3) [m] and with what force (2, 3) [N]."""
        del network
        force = float(np.max(point.force_n, initial=0.0)) * self.way
        return np.stack([end.point(point.state.points) for end in self.ends]), np.stack([force, -force])

    def let_off(self, model: DoorModel, begin: Start, make: Callable[[Network], Stepper]) -> Point:
        """Return the metal at rest after the tips have closed until they no longer push."""
        return let_back(make(model.network.with_drives([self.drive])), begin)


class CutSpreadCourse:
    """Open the tips between raw ends."""

    def __init__(self, run: UnderWay) -> None:
        self.run = run
        self.move: CutSpread = run.move
        self.ready(run.model, self.move)
        self.seat: RawSeat = seat_on_raw(run.model, run.begin.state, self.move)
        if self.move.opening_m > self._left_m():
            raise PlanError(
                "opening_m",
                f"is {self.move.opening_m:g} m; between ends {self.seat.gap_m:.3f} m apart the tool has "
                f"{max(self._left_m(), 0.0):.2f} m left",
            )
        self.seats = tuple(f"{self._word()} the {end.part}" for end in (self.seat.lower, self.seat.upper))
        self._drive: Drive | None = None
        self._start: Floats
        self._first_way: Floats
        self._gone = False
        run.push = TipsInCut(self._placed(run.begin.state.points), self._ends, self.seats, self._way(None))

    @staticmethod
    def ready(model: DoorModel, move: CutSpread) -> object:
        """Check the numbers; where the tips stand depends on the cuts the moves before have made."""
        check_tool(move.tool)
        try:
            check_cut(model, Cut(PillarCut(move.height_m, move.tips_from)))
        except PlanError as error:
            raise PlanError("height_m", error.message) from error
        check_ranges(RANGES, move)
        if not 0.0 < move.opening_m <= move.tool.opening_m[-1]:
            raise PlanError(
                "opening_m", f"is {move.opening_m:g} m; use above 0 to {move.tool.opening_m[-1]:g} m"
            )
        return None

    @staticmethod
    def limit_m(model: DoorModel, move: CutSpread) -> float:
        """Return how far the tool can open at most [m]."""
        del model
        return float(move.tool.opening_m[-1])

    def _left_m(self) -> float:
        return float(self.move.tool.opening_m[-1]) - self.seat.opened_m(0.0)

    def _word(self) -> str:
        return "in the pocket on" if self.seat.entry_m > 0.0 else "at the raw edge of"

    @property
    def _ends(self) -> tuple[TipEnd, TipEnd]:
        return self.seat.lower, self.seat.upper

    def _between(self, points: Floats) -> Floats:
        return self.seat.lower.point(points) - self.seat.upper.point(points)

    def _placed(self, points: Floats) -> Drive:
        """Return the contact of the network: a two-force member between both tips."""
        nodes, weights = self.seat.drive_ends()
        length = float(np.linalg.norm(self._between(points)))
        strut = Strut(np.zeros(3), length)
        return Drive(nodes, weights, np.zeros(3), 0.0, TOOL_N_PER_M, strut=strut)

    def _way(self, points: Floats | None) -> Floats:
        """Return the way the cut end is pushed, unit vector (3,); down before there is a push."""
        if points is None:
            return np.array([0.0, 0.0, -1.0])
        between = self._between(points)
        unit: Floats = between / np.linalg.norm(between)
        return unit

    def frames(self) -> Iterator[Frame]:
        """Yield the start, every grid increment, and the end; only the slip where the faces do not hold."""
        run, move = self.run, self.move
        rest = run.at_rest()
        if self.seat.margin_rad(move.tool, 0.0) < 0.0:
            yield from self._slips_off(rest)
            return
        self._start, self._first_way = rest.state.points, self._way(rest.state.points)
        self._drive = self._placed(rest.state.points)
        run.step(run.model.network.with_drives([self._drive]))
        point = run.stepper.first_point(rest.state, rest.ledger)
        yield self._emit(point, 0, ())
        grid, reached = grid_m(move.opening_m, STEP_M), 0
        while reached < len(grid) and not run.stopping:
            before, taken = point, run.stepper.tally.iterations
            point, stalled = self._step(before, grid[reached])
            reached += point.travel_m >= grid[reached] - ON_GRID_M
            point = run.stepper.counted(point, taken)
            events, ends = self._events(before, point), stalled
            if stalled:
                events += (self._event("stalled", "tool", point),)
            if self.seat.margin_rad(move.tool, point.travel_m) < 0.0:
                events += (self._event(SLIPPING, self.seat.lower.part, point), self._event(OFF, "tip", point))
                point, ends = self._let_go(point), True
            yield self._emit(point, reached, events)
            if ends or run.stop_here(events):
                break
        run.finish(point)

    def _slips_off(self, rest: Point) -> Iterator[Frame]:
        """Yield the start and the moment the tips have slipped off: the metal never felt them."""
        run = self.run
        self._gone, run.push = True, None
        yield run.emit(rest, None, 0)
        events = (Event(SLIPPING, self.seat.lower.part, 0.0, 0.0), Event(OFF, "tip", 0.0, 0.0))
        yield run.emit(rest, None, 1, events)
        run.finish(rest)

    def _step(self, before: Point, target: float) -> tuple[Point, bool]:
        """Return the next point and whether the tool's force ended it."""
        run = self.run
        assert self._drive is not None
        reached = tearing.advance(run.stepper, before, target, self._drive.nodes)
        if reached.stepper is not run.stepper:
            run.model = tearing.torn_model(run.model, reached.stepper.network)
            self._drive = reached.stepper.network.drives[0]
        run.take(reached.stepper)
        point = reached.point
        if float(np.max(point.force_n, initial=0.0)) <= self._limit_n(point.travel_m):
            return point, False
        return stall_point(run.stepper, reached.start, point, self._limit_n), True

    def _limit_n(self, travel_m: float) -> float:
        """Return the most the tool can push with after some travel [N]."""
        tool = self.move.tool
        return float(np.interp(self.seat.opened_m(travel_m), tool.opening_m, tool.force_n))

    def _let_go(self, point: Point) -> Point:
        run, self._gone = self.run, True
        tally = run.stepper.tally
        run.step(run.model.network.with_drives([])).tally = tally
        return run.stepper.come_to_rest(replace(point, force_n=np.zeros(0), before=None))

    def _moved_m(self, points: Floats) -> tuple[float, float]:
        """Return how far the cut end has gone the way it is pushed, and the stub the other way [m]."""
        low, high = (end.point(points) - end.point(self._start) for end in self._ends)
        return float(self._first_way @ low), -float(self._first_way @ high)

    def _events(self, before: Point, point: Point) -> tuple[Event, ...]:
        run = self.run
        peak = float(np.max(np.concatenate([before.force_n, point.force_n]), initial=0.0))
        seen = run.seen
        events = run.metal_events(before, point) + run.tear_events(point, peak, seen)
        end, stub = self._moved_m(point.state.points)
        if stub > max(end, GIVES_M) and BASE_GIVING + self.seat.upper.part not in seen:
            events += (self._event(BASE_GIVING, self.seat.upper.part, point),)
        return events + due(events, run.events)

    def _event(self, kind: str, part: str, point: Point) -> Event:
        return Event(kind, part, point.travel_m, float(np.max(point.force_n, initial=0.0)))

    def _emit(self, point: Point, grid: int, events: tuple[Event, ...]) -> Frame:
        run = self.run
        if self._gone or self._drive is None:
            run.push = None
            return run.emit(point, None, grid, events)
        run.push = TipsInCut(self._drive, self._ends, self.seats, self._way(point.state.points))
        return run.emit(point, run.push, grid, events, rungs=self._rungs(point))

    def _rungs(self, point: Point) -> tuple[Rung, ...]:
        """Return the tool's own competitors: the slip of its faces and its force."""
        force = float(np.max(point.force_n, initial=0.0))
        if force <= 0.0:
            return ()
        angle = abs(self.seat.angle_rad(self.move.tool, point.travel_m))
        return (
            Rung(self.seat.lower.part, SLIPPING, angle / self.seat.holds_rad),
            Rung("tool", "stalled", force / self._limit_n(point.travel_m)),
        )

    def sentence(self) -> str:
        """Return whether the tips went in, what moved, what let go, and why."""
        seat, (first, last) = self.seat, self.run.ends
        angle = math.degrees(seat.angle_rad(self.move.tool, 0.0))
        if self._drive is None:
            return (
                f"The tips did not go in between ends {1e3 * seat.gap_m:.0f} mm apart; on the raw edge they "
                f"slipped off at once: their noses meet it {angle:.0f} degrees off the push and hold up to "
                f"{math.degrees(seat.holds_rad):.0f}. A second cut under the first makes room for them."
            )
        end, stub = (1e3 * way for way in self._moved_m(last.points))
        gone = [outcome.rung_words(e.part, e.kind) for e in self.run.events if e.kind.endswith(" free")]
        spots = last.spots_gone - first.spots_gone
        if spots > 0:
            gone.append(f"{spots} {'spot' if spots == 1 else 'spots'} of the pillar popped")
        side = self._outward_m(last.points) * 1e3
        held = "The tips slipped off" if self._gone else "The tips held"
        said = (
            f"The tips went {1e3 * seat.entry_m:.0f} mm in and opened {1e3 * last.opening_m:.0f} mm: the cut "
            f"end went {end:.0f} mm down and {abs(side):.0f} mm {'out' if side >= 0.0 else 'in'}, the stub "
            f"{stub:.0f} mm up; {', '.join(gone) if gone else 'nothing let go'}; "
            f"{outcome.clearance_words(first, last)}. {held}."
        )
        return f"{said} {foot_words(self.run)}".strip()

    def _outward_m(self, points: Floats) -> float:
        low = self.seat.lower
        return self.run.model.outboard_sign * float((low.point(points) - low.point(self._start))[1])

    def effect(self) -> str:
        """Return what it means for the plan."""
        first, last = self.run.ends
        if outcome.room_lost(first, last):
            return "lost ground"
        gained = last.clearance.distance_m > first.clearance.distance_m + outcome.limit("clearance_m")
        return "gained" if gained else "spent"

    def result_fields(self) -> dict[str, Any]:
        """Return nothing."""
        return {}
