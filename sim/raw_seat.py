"""How a spreader's tips stand on the raw ends of a cut: how far they go in, and whether their faces hold.

Closed tips are a blunt wedge: NOSE_M thick at the nose, TIPS_M from TAPER_M behind it on.  Between raw ends a
gap g apart they go in until they are as thick as the gap,

    entry = TAPER (g - NOSE) / (TIPS - NOSE),      all the way from g = TIPS on,

and bear with what lies behind the nose: on the wedge's face, half an angle atan((TIPS - NOSE) / 2 TAPER) off
square to the push, or flat once the wedge is past the near edge.  Where not even the nose goes in, each end
touches the nose's round, whose normal there stands acos(g / NOSE) off the push.  As the tips open their faces
turn with the arms, noses apart, by the arms' half angle.

The tool pushes along the line between its ends and nothing else holds it, so a face holds while it stands
within its friction angle of that line [coulomb-1785]; past it the tips run out along the metal whatever the
force.  A second cut is nothing but a larger g.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from sim import arms
from sim.blades import Blades
from sim.cut_place import blades_of, rows_of
from sim.cut_plan import Cut, PillarCut
from sim.model import DoorModel
from sim.plan import CutSpread, Tool
from sim.pocket import TIPS_M, Room, rooms
from sim.problems import PlanError
from sim.push import friction_on
from sim.raw import KERF_M
from sim.state import State
from sim.structure import RawEdge, Structure

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

NOSE_M = 0.010  # thickness of a pair of closed tips at the nose, assumed
TAPER_M = 0.040  # how far behind the nose they have their whole thickness, assumed
NEAR_M = 0.15  # a cut further than this along the pillar from the height asked for is another one
LIES_ON_M = 0.008  # depth of metal at the near edge that carries tips which do not go in, assumed
GRAIN_M = 0.002  # a raw edge is read at points this far apart


def entry_m(gap_m: float, wanted_m: float) -> float:
    """Return how far closed tips go in between raw ends [m]; never further than wanted."""
    if gap_m >= TIPS_M:
        return wanted_m
    return min(wanted_m, max(0.0, TAPER_M * (gap_m - NOSE_M) / (TIPS_M - NOSE_M)))


def face_angle_rad(gap_m: float, entered_m: float) -> float:
    """Return how far the face at the near edge stands off square to the push, the tips still closed [rad]."""
    if gap_m < NOSE_M:
        return math.acos(gap_m / NOSE_M)
    if entered_m >= TAPER_M:
        return 0.0
    return math.atan(0.5 * (TIPS_M - NOSE_M) / TAPER_M)


@dataclass(frozen=True)
class TipEnd:
    """One tip on its raw end: node weights that sum to one, shape (k,), and its part in words."""

    nodes: Ints
    weights: Floats
    part: str

    def point(self, points: Floats) -> Floats:
        """Return where it stands now, shape (3,) [m]."""
        place: Floats = self.weights @ points[self.nodes]
        return place


@dataclass(frozen=True)
class RawSeat:
    """A pair of tips set on the raw ends of a cut.

    lower, upper : on the cut end, and on the stub above it
    gap_m : between the ends;  entry_m : how far the tips have gone in
    closed_rad : of their faces off square to the push while they are closed;  holds_rad : friction angle
    """

    lower: TipEnd
    upper: TipEnd
    gap_m: float
    entry_m: float
    closed_rad: float
    holds_rad: float

    def opened_m(self, travel_m: float) -> float:
        """Return how far the tool is open after some travel: it first fills the gap [m]."""
        return max(self.gap_m - TIPS_M, 0.0) + travel_m

    def angle_rad(self, tool: Tool, travel_m: float) -> float:
        """Return how far the faces stand off square to the push after some travel, noses nearer above 0."""
        return self.closed_rad - arms.half_angle_rad(self.opened_m(travel_m), tool.arm_m)

    def margin_rad(self, tool: Tool, travel_m: float) -> float:
        """Return what is left of the friction angle [rad]; below nothing the tips slip."""
        return self.holds_rad - abs(self.angle_rad(tool, travel_m))

    def drive_ends(self) -> tuple[Ints, Floats]:
        """Return nodes and signed weights of both tips: what one is pushed with the other pushes back."""
        both, slot = np.unique(np.concatenate([self.lower.nodes, self.upper.nodes]), return_inverse=True)
        signed = np.bincount(slot, np.concatenate([self.lower.weights, -self.upper.weights]))
        return both.astype(np.int64), np.asarray(signed, dtype=float)


def raw_pairs(structure: Structure, edge: RawEdge) -> Ints:
    """Return the lattice edges that make up a raw edge, shape (k, 2): its nodes' edges with one triangle."""
    t = structure.triangles[np.isin(structure.triangles, edge.nodes).sum(axis=1) >= 2]
    pairs = np.sort(np.concatenate([t[:, [0, 1]], t[:, [1, 2]], t[:, [2, 0]]]), axis=1)
    pairs = pairs[np.isin(pairs, edge.nodes).all(axis=1)]
    found, count = np.unique(pairs, axis=0, return_counts=True)
    free: Ints = found[count == 1].astype(np.int64)
    return free


def seat_on_raw(model: DoorModel, state: State, move: CutSpread) -> RawSeat:
    """Return the tips set on the raw ends nearest to a height, on the metal as it is now.

    Raises
    ------
    PlanError
        Where nothing has been cut, or no raw metal lies under the tips.
    """
    frame = blades_of(model, state, Cut(PillarCut(move.height_m, move.tips_from)))
    room = _room_at(model, state.points, frame, move.height_m)
    s, points = model.structure, state.points
    pair = sorted((s.raw[i] for i in room.edges), key=lambda edge: _height(s, points, frame, edge))
    gap = max(room.gap_m, KERF_M)
    entered = entry_m(gap, move.depth_m)
    lower, upper = (
        _tip_end(s, points, frame, edge, move, entered, part)
        for edge, part in zip(pair, ("cut end", "stub above the cut"), strict=True)
    )
    holds = math.atan(friction_on(move.tool, "bare"))
    return RawSeat(lower, upper, gap, entered, face_angle_rad(gap, entered), holds)


def _room_at(model: DoorModel, points: Floats, frame: Blades, height_m: float) -> Room:
    pillar = np.unique(model.structure.triangles[rows_of(model, "pillar")])
    best, least = None, NEAR_M
    for room in rooms(model.structure, points):
        off = abs(float(frame.height(room.place[None])[0]))
        on_pillar = all(np.isin(model.structure.raw[i].nodes, pillar).all() for i in room.edges)
        if on_pillar and off <= least:
            best, least = room, off
    if best is None:
        raise PlanError(
            "height_m",
            f"is {height_m:g} m, and the pillar is not cut within {1e3 * NEAR_M:.0f} mm of that; "
            "cut it first, or give the height of its cut",
        )
    return best


def _height(structure: Structure, points: Floats, frame: Blades, edge: RawEdge) -> float:
    """Return how high the metal that ends at a raw edge lies, off the frame's plane [m]."""
    mine = structure.triangles[np.isin(structure.triangles, edge.nodes).any(axis=1)]
    return float(frame.height(points[mine].mean(axis=1)).mean())


def _tip_end(
    structure: Structure, points: Floats, frame: Blades, edge: RawEdge, move: CutSpread, entered_m: float,
    part: str,
) -> TipEnd:  # fmt: skip
    nodes, shares = [], []
    for a, b in raw_pairs(structure, edge).tolist():
        size = float(np.linalg.norm(points[b] - points[a]))
        count = max(1, math.ceil(size / GRAIN_M))
        at = (np.arange(count) + 0.5) / count
        nodes.append(np.tile([a, b], (count, 1)))
        shares.append(np.stack([1.0 - at, at], axis=1) * size / count)
    pairs, part_of = np.concatenate(nodes), np.concatenate(shares)
    size = part_of.sum(axis=1)
    spots = np.einsum("ks,ksi->ki", part_of / size[:, None], points[pairs]) - frame.place
    aside = np.abs(spots @ frame.across - move.off_m) <= 0.5 * move.tool.tip_width_m
    along = spots @ frame.way
    if not aside.any():
        raise PlanError("off_m", f"is {move.off_m:g} m: no raw metal lies under the tips there; use less")
    under = aside & (along <= float(along[aside].min()) + max(entered_m, LIES_ON_M))
    mine, slot = np.unique(pairs[under], return_inverse=True)
    weights = np.bincount(slot.ravel(), part_of[under].ravel())
    kept = weights > 1.0e-12
    return TipEnd(mine[kept].astype(np.int64), weights[kept] / weights[kept].sum(), part)
