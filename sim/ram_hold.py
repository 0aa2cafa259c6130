"""A ram while it is driven: how its head bears, how near it is to slipping, and where it goes when it slips.

A two-force member pushes along its own line, so an end holds as long as that line lies within the friction
angle of the metal it stands on; beyond, no force of it can be in balance there, large or small, and the head
runs along the metal the way the line points.  As it goes the ram, no longer than it was, loses its load and
the metal springs back.  It stops where the line is within the friction angle again, or with no load left; or
it runs off the part.  A head that has rolled over kicks out at once.  Points that bite hold until what
pushes across cuts the sheet they stand in.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from meshes.nearest import nearest_on_triangles
from sim.base import Wall
from sim.head import Bearing, angle_between, bearing
from sim.increment import Point, Stepper
from sim.ladder import PRESSES_N
from sim.problems import PlanError
from sim.ram import POINT_M, POINTS, ReadyRam, Spot, Stand, force_limit_n, stage_of
from sim.record import RamNow
from sim.regrip import at_rest, with_drives
from sim.shear import SHEAR_ULTIMATE_RATIO, TENSILE_OVER_YIELD, cut_length_m
from sim.state import Drive
from sim.structure import Structure
from sim.strut import Strut
from sim.struts import SINK, dent_m

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

SLIDE_STEP_M = 0.004  # a head that slips is followed in steps of this
SLIDE_STEPS = 60
SQUARE = 1.0e-9  # a line this near to square points no way to slide
GIVES_M = 0.005  # less is the give of the seat itself: common practice, no source
RAM_N_PER_M = 2.0e7  # stiffness of a ram, as of a spreader's tips


@dataclass(frozen=True)
class Slipped:
    """What came of a slip: how far along the metal [m], and whether the head holds, hangs loose or is off."""

    way_m: float
    end: str


class RamHold:
    """The ram of one press.

    Attributes
    ----------
    spot : where the head stands now;  drive : the contact of the network
    slid_m : how far the head has slid in all;  cut : whether its points have cut through
    """

    def __init__(self, ready: ReadyRam, structure: Structure, points: Floats, sunk_m: float = 0.0) -> None:
        self.ready, self.spot = ready, ready.head
        self.slid_m, self.cut, self.off = 0.0, False, False
        self._structure = structure
        set_down = self._bear(points, self._aim(points, sunk_m))
        if set_down is None:
            raise PlanError("head", "finds no metal under it; set it elsewhere")
        self._bearing = set_down
        self._fixed, self._wall, self._normal = _base_of(ready)
        nodes, weights = self._ends(points)
        between = weights @ points[nodes] - self._fixed
        if self._normal is not None:
            between = between + sunk_m * self._normal
        self.length_m = float(np.linalg.norm(between))
        self.drive = self._drive(nodes, weights)
        self._start = points[self.spot.nodes].copy()
        self._sunk_m, self._foot_start = sunk_m, self._foot_now(points, sunk_m)
        self.first_line = self.line(points, sunk_m)
        self._first_spot = self.spot

    @property
    def out_m(self) -> float:
        """How far the ram is driven out at travel nothing [m]."""
        ram = self.ready.move.ram
        return self.length_m - ram.closed_m - ram.piece_m

    def force_limit_n(self, travel_m: float) -> float:
        """Return the most the ram can push with after some travel [N]."""
        return force_limit_n(self.ready.move.ram, self.out_m + travel_m)

    def _ends(self, points: Floats) -> tuple[Ints, Floats]:
        """Return nodes and signed weights of head and foot."""
        nodes, weights = self._bearing.nodes, self._bearing.weights
        foot = self.ready.foot
        if isinstance(foot, Stand):
            return nodes, weights
        line = self._aim(points, 0.0)
        stood = bearing(points, foot.triangles, foot.middle(points), -line, self.ready.plate)
        if stood is None:
            raise PlanError("foot", "finds no metal under it; set it elsewhere")
        both, slot = np.unique(np.concatenate([nodes, stood.nodes]), return_inverse=True)
        signed = np.bincount(slot, np.concatenate([weights, -stood.weights]))
        return both.astype(np.int64), signed.astype(float)

    def _drive(self, nodes: Ints, weights: Floats) -> Drive:
        strut = Strut(self._fixed, self.length_m, self._wall, self._normal)
        way = np.zeros(3)
        return Drive(nodes.astype(np.int64), weights, way, 0.0, RAM_N_PER_M, strut=strut)

    def _foot_now(self, points: Floats, sunk_m: float) -> Floats:
        foot = self.ready.foot
        if isinstance(foot, Stand):
            return np.asarray(foot.place - sunk_m * foot.normal)
        return foot.middle(points)

    def _aim(self, points: Floats, sunk_m: float) -> Floats:
        """Return the line from the foot to the metal under the head's middle, unit vector (3,)."""
        line = self.spot.middle(points) - self._foot_now(points, sunk_m)
        unit: Floats = line / np.linalg.norm(line)
        return unit

    def _bear(self, points: Floats, line: Floats) -> Bearing | None:
        spot = self.spot
        return bearing(points, spot.triangles, spot.middle(points), line, self.ready.plate)

    def line(self, points: Floats, sunk_m: float) -> Floats:
        """Return the ram's line as it pushes now, unit vector (3,) from foot to head."""
        between = self.drive.weights @ points[self.drive.nodes] - self._fixed
        if self._normal is not None:
            between = between + sunk_m * self._normal
        unit: Floats = between / np.linalg.norm(between)
        return unit

    def now(self, point: Point) -> RamNow:
        """Return how the ram stands, for a frame and for what comes next."""
        points, travel = point.state.points, point.travel_m
        sunk = float(point.evaluation.read[SINK][0]) if SINK in point.evaluation.read else dent_m(point.state)
        line = self.line(points, sunk)
        held = self._bear(points, line)
        angle = math.pi / 2.0 if held is None else held.angle_rad(line)
        rolled = held is not None and held.rolled
        force = float(np.max(point.force_n, initial=0.0))
        head = (
            self.drive.weights[self.drive.weights > 0.0] @ points[self.drive.nodes[self.drive.weights > 0.0]]
        )
        ram = self.ready.move.ram
        return RamNow(
            ends=np.stack([head, self._foot_now(points, sunk)]),
            line=line,
            normal=line if held is None else held.normal,
            out_m=self.out_m + travel,
            stage=stage_of(ram, self.out_m + travel) + 1,
            limit_n=self.force_limit_n(travel),
            angle_rad=angle,
            margin_rad=(0.0 if rolled else self._holds_rad(force)) - angle,
            foot_margin_rad=math.atan(self.ready.foot_friction) - self._foot_angle(points, line),
            rolled=rolled,
            sink_m=sunk,
            slid_m=self.slid_m,
        )

    def _foot_angle(self, points: Floats, line: Floats) -> float:
        foot = self.ready.foot
        if isinstance(foot, Stand):
            return foot_angle_rad(foot, line)
        stood = bearing(points, foot.triangles, foot.middle(points), -line, self.ready.plate)
        return math.pi / 2.0 if stood is None else stood.angle_rad(-line)

    def bite(self) -> tuple[float, float]:
        """Return what points hold across before they cut the sheet, and straight on before they go through.

        Both in N, by the shear of the sheet under them, as for a tip that cuts (`sim.shear`).
        """
        structure, held = self._structure, self._bearing
        weight = np.zeros(len(structure.points))
        weight[held.nodes] = held.weights
        share = weight[self.spot.triangles].sum(axis=1)
        strength = SHEAR_ULTIMATE_RATIO * TENSILE_OVER_YIELD
        sections = (structure.sections[k] for k in structure.triangle_section[self.spot.rows])
        per_m = np.array([strength * s.metal.yield_pa * s.thickness_m for s in sections])
        sheet = float(share @ per_m / share.sum())
        return POINTS * sheet * cut_length_m(POINT_M, POINT_M), POINTS * sheet * math.pi * POINT_M

    @property
    def bites(self) -> bool:
        """Whether points stand in the sheet."""
        return self.ready.move.ram.head == "pointed" and not self.cut

    def cut_points(self) -> float:
        """Let the points cut through; return the length of sheet they have cut [m]."""
        self.cut = True
        return POINTS * cut_length_m(POINT_M, POINT_M)

    @staticmethod
    def presses(force_n: float) -> bool:
        """Tell whether a ram presses hard enough to be said to slip: more than it weighs."""
        return force_n > PRESSES_N

    def stage_at(self, travel_m: float) -> int:
        """Return which stage moves after some travel, from 1."""
        return stage_of(self.ready.move.ram, self.out_m + travel_m) + 1

    def head_before(self) -> Floats:
        """Return where the head was set, shape (3,) [m]."""
        place: Floats = self._first_spot.shares @ self._start
        return place

    def base_gives(self, now: RamNow, moved_m: float) -> bool:
        """Tell whether what the ram stands on has moved more than what it pushes, and visibly."""
        foot = self.ready.foot
        gone = now.sink_m - self._sunk_m
        if isinstance(foot, Spot):
            gone = float(now.line @ (self._foot_start - now.ends[1]))
        return gone > max(moved_m, GIVES_M)

    def torn(self, structure: Structure, drive: Drive) -> None:
        """Take over structure and nodes after a sheet has torn."""
        self._structure, self.drive = structure, drive
        self.spot = replace(self.spot, triangles=structure.triangles[self.spot.rows])
        foot = self.ready.foot
        if isinstance(foot, Spot):
            foot = replace(foot, triangles=structure.triangles[foot.rows])
            self.ready = replace(self.ready, foot=foot)

    def _holds_rad(self, force_n: float) -> float:
        """Return the angle up to which the head holds at a force [rad]."""
        rubs = math.atan(self.ready.friction)
        if self.ready.move.ram.head != "pointed" or self.cut or force_n <= 0.0:
            return rubs
        return max(rubs, math.asin(min(1.0, self.bite()[0] / force_n)))

    def punches(self, now: RamNow, force_n: float) -> bool:
        """Tell whether points go straight through the sheet under them."""
        pointed = self.ready.move.ram.head == "pointed"
        return pointed and force_n * math.cos(now.angle_rad) > self.bite()[1]

    def moved_m(self, points: Floats, line: Floats) -> float:
        """Return how far the metal where the head was set has moved along the line [m]."""
        spot = self._first_spot
        return float(line @ (spot.shares @ (points[spot.nodes] - self._start)))

    def slip(self, stepper: Stepper, point: Point) -> tuple[Stepper, Point, Slipped]:
        """Return stepper and point after a head past its friction angle has run along the metal."""
        began = self.slid_m
        end = "off"
        for _ in range(SLIDE_STEPS):
            now = self.now(point)
            force = float(np.max(point.force_n, initial=0.0))
            if force <= PRESSES_N:
                end = "loose"
                break
            if now.margin_rad >= 0.0:
                end = "holds"
                break
            if now.rolled or not self._next_spot(point.state.points, now):
                break
            nodes, weights = self._ends(point.state.points)
            self.drive = self._drive(nodes, weights)
            network = with_drives(stepper.network, [self.drive])
            rub = self.ready.friction * force * math.cos(now.angle_rad) * SLIDE_STEP_M
            stepper, point = at_rest(stepper, point, network, rub)
        self.off = end == "off"
        return stepper, point, Slipped(self.slid_m - began, end)

    def _next_spot(self, points: Floats, now: RamNow) -> bool:
        """Move the head on along the metal the way its line points; False where it runs off the part."""
        way = now.line - (now.line @ now.normal) * now.normal
        if float(np.linalg.norm(way)) < SQUARE:
            return False
        way = way / np.linalg.norm(way)
        here = self.spot.middle(points)
        row, shares, _ = nearest_on_triangles((here + SLIDE_STEP_M * way)[None], points, self.spot.triangles)
        nodes = self.spot.triangles[int(row[0])]
        there = shares[0] @ points[nodes]
        if float((there - here) @ way) < 0.25 * SLIDE_STEP_M:
            return False
        before, self.spot = self.spot, replace(self.spot, nodes=nodes, shares=shares[0])
        set_down = self._bear(points, now.line)
        if set_down is None or set_down.patch_m2 <= 0.0:
            self.spot = before
            return False
        self._bearing = set_down
        self.slid_m += float(np.linalg.norm(there - here))
        return True


def foot_angle_rad(foot: Stand, line: Floats) -> float:
    """Return the angle between a ram's line and its base's normal [rad]; a floor takes what presses down."""
    up = np.array([0.0, 0.0, 1.0])
    if foot.floored and float(line @ up) > 0.0:
        line = line - (line @ up) * up
        line = line / np.linalg.norm(line)
    return angle_between(foot.normal, line)


def _base_of(ready: ReadyRam) -> tuple[Floats, Wall | None, Floats | None]:
    """Return place, wall and normal of the base; a foot on the metal has none of them."""
    foot = ready.foot
    if isinstance(foot, Stand):
        return foot.place, foot.wall, foot.normal
    return np.zeros(3), None, None
