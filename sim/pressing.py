"""A press as a move: a ram driven out on a grid between a part and what it stands on."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from typing import Any

import numpy as np
from numpy.typing import NDArray

from sim import outcome, press_words, tearing
from sim.course import UnderWay
from sim.crush import let_back
from sim.engaged import Start
from sim.increment import ON_GRID_M, Point, Stepper, grid_m, stall_point
from sim.model import DoorModel
from sim.network import Network, State
from sim.pillar_pads import pillar_of
from sim.plan import BaseSpot, FacePoint, PillarSpot, Press
from sim.problems import PlanError
from sim.ram import (
    FOOT_FRICTION,
    LONGEST_M,
    ReadyRam,
    Spot,
    Stand,
    base_stand,
    check_ram,
    friction_of,
    on_pillar,
    on_sheet,
    room_m,
)
from sim.ram_hold import RamHold, Slipped
from sim.record import BASE_GIVING, SEAT_OFF, SEAT_SLIPPING, Event, Frame, RamNow, Rung
from sim.rigid import Barrier
from sim.stood import ROCKER, foot_gives
from sim.struts import DENT, FORCE, dent_m, undented

Floats = NDArray[np.float64]

STEP_M = 0.0025  # the grid of the ram's length
NEXT_STAGE, OUT_OF_STROKE = "next stage", "out of stroke"
SHORT_M = 1.0e-9
FACING = ("inner_panel", "latch_wrap", "latch_patch", "hinge_patch")
"""Parts of a door's surface that face the cabin."""


def spot_of(model: DoorModel, place: PillarSpot | FacePoint, path: str) -> Spot:
    """Return a place on the metal as a spot; PlanError naming ``path`` where there is none."""
    try:
        if isinstance(place, PillarSpot):
            pillar, rows = pillar_of(model, "head")
            return on_pillar(pillar, rows, model.structure.triangles, place)
        return _on_panel(model, place)
    except PlanError as error:
        raise PlanError(error.field.replace("head", path, 1), error.message) from error


def _on_panel(model: DoorModel, place: FacePoint) -> Spot:
    if place.side != "inner":
        raise PlanError("head.side", "is 'outer'; a ram inside the car stands on the 'inner' face")
    try:
        panel = model.panel(place)
    except PlanError as error:
        raise error.inside("head") from error
    mesh = panel.mesh
    surface = mesh.surface
    target = np.array([place.along_m, -mesh.shape.shut_face_depth_m * mesh.outboard_sign, place.height_m])
    facing = np.isin(surface.triangle_part, [surface.part_index(part) for part in FACING])
    own = np.flatnonzero(facing)
    rows = own + panel.first_triangle
    triangles = model.structure.triangles
    return on_sheet(surface.points, surface.triangles[own], rows, triangles, target, "inner panel")


@dataclass(frozen=True)
class RamStands:
    """A ram in the metal between two moves; its hold is None until it has been set."""

    hold: RamHold | None
    seats: tuple[str, ...]
    way: Floats
    barrier: Barrier | None = None

    @property
    def direction(self) -> Floats:
        """Unit vector of the push as last looked at, shape (3,)."""
        return self.way

    def contacts(self, network: Network, point: Point) -> tuple[Floats, Floats]:
        """Return where head and foot push (2, 3) [m] and with what force (2, 3) [N]."""
        del network
        assert self.hold is not None
        force = point.evaluation.read[FORCE][0] if FORCE in point.evaluation.read else np.zeros(3)
        return self.hold.now(point).ends, np.stack([force, -force])

    def let_off(self, model: DoorModel, begin: Start, make: Callable[[Network], Stepper]) -> Point:
        """Return the metal at rest after the ram has been let back until it no longer pushes."""
        assert self.hold is not None
        return let_back(make(model.network.with_drives([self.hold.drive])), begin)


def make_ram(model: DoorModel, move: Press, points: Floats | None = None) -> ReadyRam:
    """Return a press made ready on the metal as it is (None: untouched).

    Raises
    ------
    PlanError
        A number out of range, an end in the air, a ram too long or too short for the place.
    """
    check_ram(move.ram)
    here = model.start.points if points is None else points
    head = spot_of(model, move.head, "head")
    place = head.middle(here)
    foot: Stand | Spot
    if isinstance(move.foot, BaseSpot):
        foot = base_stand(move.foot, move.ram, place, model.outboard_sign)
        stand = foot.place
    else:
        foot = spot_of(model, move.foot, "foot")
        stand = foot.middle(here)
    apart = float(np.linalg.norm(place - stand))
    room, part = room_m(np.stack([place, stand]), model.occupant)
    if room < 0.0:
        where = part.replace("_", " ")
        raise PlanError("foot", f"puts the ram through the person's {where}; set head or foot elsewhere")
    if not (math.isfinite(move.grip_ratio) and 0.2 <= move.grip_ratio <= 3.0):
        raise PlanError("grip_ratio", f"is {move.grip_ratio}; use 0.2 (ice) to 3 (bites), 1 is usual")
    grip = move.grip_ratio
    ready = ReadyRam(move, head, foot, grip * friction_of(move.ram.head, move.surface), grip * FOOT_FRICTION)
    shut, left = move.ram.closed_m + move.ram.piece_m, ready.length_left_m(apart)
    if apart < shut:
        raise PlanError(
            "ram.closed_m",
            f"makes the ram {shut:.2f} m long when shut and its ends stand {apart:.2f} m apart; "
            "use a shorter ram or piece, or move an end",
        )
    if left <= 0.0:
        raise PlanError(
            "ram.piece_m",
            f"leaves the ram {-left:.2f} m short of its ends, {apart:.2f} m apart; "
            "use a longer piece or move an end",
        )
    if not (math.isfinite(move.extension_m) and 0.0 < move.extension_m <= LONGEST_M):
        raise PlanError("extension_m", f"is {move.extension_m}; use above 0 to {LONGEST_M} m")
    return ready


class PressCourse:
    """Drive a ram out."""

    def __init__(self, run: UnderWay) -> None:
        self.run = run
        self.set: ReadyRam = make_ram(run.model, run.move, run.begin.state.points)
        foot = self.set.foot.word
        self.seats = (f"{run.move.ram.head} head on the {self.set.head.word}", f"foot on the {foot}")
        self._slips: list[Slipped] = []
        self.slipped_at: RamNow | None = None
        run.push = RamStands(None, self.seats, np.array([0.0, run.model.outboard_sign, 0.0]))

    @staticmethod
    def ready(model: DoorModel, move: Press) -> object:
        """Make the press ready; PlanError when it cannot be made."""
        return make_ram(model, move)

    @staticmethod
    def limit_m(model: DoorModel, move: Press) -> float:
        """Return how far the ram can still be driven out from where its ends stand [m]."""
        ready = make_ram(model, move)
        place = ready.head.middle(model.start.points)
        foot = ready.foot.place if isinstance(ready.foot, Stand) else ready.foot.middle(model.start.points)
        return min(LONGEST_M, ready.length_left_m(float(np.linalg.norm(place - foot))))

    def frames(self) -> Iterator[Frame]:
        """Yield the start, every grid increment, each place where something let go, and the end."""
        run = self.run
        rest = run.at_rest()
        state = self._same_dent(rest.state)
        hold = self.hold = RamHold(self.set, run.model.structure, state.points, dent_m(state))
        stepper = run.step(run.model.network.with_drives([hold.drive]))
        point = stepper.first_point(state, rest.ledger)
        yield self._emit(point, 0, ())
        limit = min(run.move.extension_m, sum(run.move.ram.stage_m) - hold.out_m)
        grid, reached = grid_m(limit, STEP_M), 0
        while reached < len(grid) and not run.stopping:
            before, taken = point, run.stepper.tally.iterations
            point, stalled = self._step(before, grid[reached])
            reached += point.travel_m >= grid[reached] - ON_GRID_M
            point, ends, events = self._after(before, point, stalled)
            if reached == len(grid) and limit < run.move.extension_m - SHORT_M:
                events += (self._event(OUT_OF_STROKE, "ram", point),)
            point = run.stepper.counted(point, taken)
            yield self._emit(point, reached, events)
            if ends or run.stop_here(events):
                break
        run.finish(point)

    def _same_dent(self, state: State) -> State:
        """Return the state with the dent of the last ram's foot where this one stands on the same place."""
        last = self.run.begin.engaged
        held = last.hold if isinstance(last, RamStands) else None
        same = held is not None and _same_place(held.ready.foot, self.set.foot)
        if same or DENT not in state.kept:
            return state
        return undented(state)

    def _step(self, before: Point, target: float) -> tuple[Point, bool]:
        """Return the next point and whether the ram's force ended it."""
        run, hold = self.run, self.hold
        reached = tearing.advance(run.stepper, before, target, hold.drive.nodes)
        if reached.stepper is not run.stepper:
            run.model = tearing.torn_model(run.model, reached.stepper.network)
            hold.torn(run.model.structure, reached.stepper.network.drives[0])
        run.take(reached.stepper)
        point = reached.point
        if float(np.max(point.force_n, initial=0.0)) <= hold.force_limit_n(point.travel_m):
            return point, False
        return stall_point(run.stepper, reached.start, point, hold.force_limit_n), True

    def _after(self, before: Point, point: Point, stalled: bool) -> tuple[Point, bool, tuple[Event, ...]]:
        """Return the point after slips, whether the press ends there, and what happened."""
        run, hold = self.run, self.hold
        seen = run.seen
        peak = float(np.max(np.concatenate([before.force_n, point.force_n]), initial=0.0))
        events = run.metal_events(before, point) + run.tear_events(point, peak, seen)
        now, ends = hold.now(point), stalled
        if stalled:
            events += (self._event("stalled", "ram", point),)
        force = float(np.max(point.force_n, initial=0.0))
        if now.stage > hold.stage_at(before.travel_m):
            events += (self._event(NEXT_STAGE, f"stage {now.stage}", point),)
        moved = hold.moved_m(point.state.points, now.line)
        if BASE_GIVING + self.set.foot.word not in seen and hold.base_gives(now, moved):
            events += (self._event(BASE_GIVING, self.set.foot.word, point),)
        feet = (run.begin.state.points, point.state.points)
        if BASE_GIVING + ROCKER not in seen and foot_gives(
            run.model, feet, hold.head_before(), now.line, moved
        ):
            events += (self._event(BASE_GIVING, ROCKER, point),)
        if hold.presses(force) and hold.punches(now, force):
            return self._gone_through(point, events)
        if hold.presses(force) and now.foot_margin_rad < 0.0:
            return self._foot_off(point, events)
        if hold.presses(force) and now.margin_rad < 0.0:
            return self._slip(point, now, events)
        return point, ends, events

    def _slip(
        self, point: Point, now: RamNow, events: tuple[Event, ...]
    ) -> tuple[Point, bool, tuple[Event, ...]]:
        run, hold = self.run, self.hold
        slipped_at = point
        if hold.bites:
            run.cut_m += hold.cut_points()
            events += (self._event("tip shearing through", self.set.head.word, point),)
        stepper, point, slipped = hold.slip(run.stepper, point)
        run.take(stepper)
        self._slips.append(slipped)
        self.slipped_at = now if self.slipped_at is None else self.slipped_at
        gone = hold.off or hold.slid_m >= outcome.limit("slid_m")
        if gone and SEAT_SLIPPING + "head" not in run.seen:
            events += (self._event(SEAT_SLIPPING, "head", slipped_at),)
        if hold.off:
            events += (self._event(SEAT_OFF, "head", slipped_at),)
            point = self._let_go(point)
        loose = slipped.end == "loose" and hold.slid_m >= outcome.limit("slid_m")
        return point, hold.off or loose, events

    def _foot_off(self, point: Point, events: tuple[Event, ...]) -> tuple[Point, bool, tuple[Event, ...]]:
        """Return the metal sprung back after the foot has slipped off its base."""
        after = self._let_go(point)
        events += (self._event(SEAT_SLIPPING, "foot", point), self._event(SEAT_OFF, "foot", point))
        return after, True, events

    def _gone_through(self, point: Point, events: tuple[Event, ...]) -> tuple[Point, bool, tuple[Event, ...]]:
        self.run.cut_m += self.hold.cut_points()
        after = self._let_go(point)
        return after, True, (*events, self._event("tip shearing through", self.set.head.word, point))

    def _let_go(self, point: Point) -> Point:
        run = self.run
        self.hold.off = True
        network = run.model.network.with_drives([])
        tally = run.stepper.tally
        run.step(network).tally = tally
        return run.stepper.come_to_rest(replace(point, force_n=np.zeros(0), before=None))

    def _event(self, kind: str, part: str, point: Point) -> Event:
        return Event(kind, part, point.travel_m, float(np.max(point.force_n, initial=0.0)))

    def _emit(self, point: Point, grid: int, events: tuple[Event, ...]) -> Frame:
        run, hold = self.run, self.hold
        went = tuple(Rung(e.part, e.kind, 1.0) for e in events if e.kind == SEAT_SLIPPING)
        if hold.off:
            run.push = None
            return run.emit(point, None, grid, events, rungs=went)
        now = hold.now(point)
        run.push = RamStands(hold, self.seats, now.line)
        slipped = {rung.part for rung in went}
        own = tuple(rung for rung in self._rungs(point, now) if rung.part not in slipped)
        return run.emit(point, run.push, grid, events, rungs=went + own, ram=now)

    def _rungs(self, point: Point, now: RamNow) -> tuple[Rung, ...]:
        """Return the ram's own competitors: slip of head and foot, the base, the ram's force."""
        force = float(np.max(point.force_n, initial=0.0))
        if force <= 0.0:
            return ()
        held = [("head", now.angle_rad, now.margin_rad)]
        foot = math.atan(self.set.foot_friction) - now.foot_margin_rad
        held.append(("foot", foot, now.foot_margin_rad))
        out = [
            Rung(part, SEAT_SLIPPING, angle / (angle + left))
            for part, angle, left in held
            if angle + left > 0
        ]
        out.append(Rung("ram", "stalled", force / now.limit_n))
        return tuple(out)

    def sentence(self) -> str:
        """Return what moved, what held and what gave, and why."""
        return press_words.press_sentence(self)

    def effect(self) -> str:
        """Return what it means for the plan."""
        first, last = self.run.ends
        if outcome.room_lost(first, last):
            return "lost ground"
        gained = last.clearance.distance_m > first.clearance.distance_m + outcome.limit("clearance_m")
        return "gained" if gained else "spent"

    def result_fields(self) -> dict[str, Any]:
        """Return the seats of head and foot."""
        return {}


def _same_place(a: Stand | Spot, b: Stand | Spot) -> bool:
    return isinstance(a, Stand) and isinstance(b, Stand) and bool(np.allclose(a.place, b.place, atol=0.01))
