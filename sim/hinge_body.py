"""A hinge as a body one can see and cut: a knuckle under the shut line, between leaf and leaf.

The tie of a hinge holds a point half-way down the shut face, where its leaves sit.  What blades close on is
its knuckle, KNUCKLE_TALL_M high and KNUCKLE_DEPTH_M in from the outer face in the middle of the gap; it goes
with what the hinge hangs on.  The pillar's face stands back from it behind an outer edge, the wing's or the
pillar's own, as far as a door's edge needs to swing in; that edge, WING_EDGE_M deep, stays where it is drawn.

Blades come from outside and are set along the knuckle: their plane holds its axis.  Where a car's doors turn
about their knuckles (`car.hinge_depth_m`), the knuckle stands in the middle of that recess and is looked for
from the doorway too; else it stands in the shut line, and a door that swings open sweeps over it.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray
from scipy import sparse
from scipy.sparse.csgraph import connected_components

from sim.cut_place import moved_with
from sim.exposed import (
    BEHIND_M,
    LEANS,
    OUT_M,
    OWN_M,
    ROOM_M,
    SIGHT_M,
    TAPER_M,
    TIP_M,
    View,
    blocked_ways,
)
from sim.structure import Structure, Tie

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]
Bools = NDArray[np.bool_]

KNUCKLE_DEPTH_M = 0.030  # its axis in from the outer face: 20 to 40 mm, from memory
KNUCKLE_TALL_M = 0.060  # 50 to 70 mm, from memory
WING_EDGE_M = 0.015  # how deep the wing's turned edge reaches beside the shut line, assumed
RECESS_M = 0.040  # how far the pillar's face stands back behind it: 30 to 60 mm, from memory
FACE_M = 0.06  # of what a hinge hangs on: nearer than this along the car it is the pillar's face
NEAREST_M = 0.001
OFF_DEG = tuple(range(-60, 61, 10))  # off straight outboard about the knuckle
DOORWAY_DEG = tuple(range(70, 131, 10))  # the same from an open door's doorway, leaning in: assumed
RISES_DEG = (0, 20, -20)  # and up or down it
ALONG_KNUCKLE = (0.0, 0.3, -0.3)  # of its height, from its middle: where one looks at


@dataclass(frozen=True)
class Knuckle:
    """A hinge's knuckle: unit vectors shape (3,), its middle [m].

    middle : of the knuckle;  axis : along it, upwards
    into : from what it hangs on towards the door;  outboard : out of the car
    doorway : whether it is looked for from the doorway too
    """

    middle: Floats
    axis: Floats
    into: Floats
    outboard: Floats
    doorway: bool = False

    def moved(self, turn: Floats, shift: Floats) -> Knuckle:
        """Return it turned (3, 3) and shifted (3,) as a rigid body."""
        axis, into, outboard = (turn @ way for way in (self.axis, self.into, self.outboard))
        return Knuckle(turn @ self.middle + shift, axis, into, outboard, self.doorway)

    def places(self) -> Floats:
        """Return where it is looked at, shape (k, 3) [m]."""
        return self.middle + np.outer(ALONG_KNUCKLE, KNUCKLE_TALL_M * self.axis)

    def ways(self) -> Floats:
        """Return the ways out along which it is looked for, unit vectors (k, 3)."""
        out = []
        offs = (*OFF_DEG, *DOORWAY_DEG) if self.doorway else OFF_DEG
        for off, rise in ((a, b) for b in RISES_DEG for a in offs):
            a, b = np.radians(off), np.radians(rise)
            flat = np.cos(a) * self.outboard + np.sin(a) * self.into
            out.append(np.cos(b) * flat + np.sin(b) * self.axis)
        return np.array(out)


def knuckle_of(door_seat: Floats, body_seat: Floats, edge: Floats, outboard_sign: float) -> Knuckle:
    """Return the knuckle between both seats of a hinge at rest, (3,) [m] each; ``edge`` leads up the gap."""
    outboard = np.array([0.0, outboard_sign, 0.0])
    axis = edge / np.linalg.norm(edge)
    into = np.cross(axis, outboard)
    into = into / np.linalg.norm(into)
    into = into if float(into @ (door_seat - body_seat)) > 0.0 else -into
    middle = 0.5 * (door_seat + body_seat)
    middle = middle + (-KNUCKLE_DEPTH_M - float(middle @ outboard)) * outboard
    return Knuckle(middle, axis, into, outboard)


def in_recess(knuckle: Knuckle) -> Knuckle:
    """Return a knuckle in the middle of its recess, past which a door that turns about it sweeps."""
    return replace(knuckle, middle=knuckle.middle - 0.5 * RECESS_M * knuckle.into, doorway=True)


def carried_by(structure: Structure, tie: Tie, points: Floats, knuckle: Knuckle) -> Knuckle:
    """Return a knuckle where the metal its hinge hangs on has gone; as it is where that cannot move."""
    seat = tie.nodes[tie.weights < 0.0]
    if not len(seat):
        return knuckle
    rows = np.asarray(np.isin(structure.triangles, seat).any(axis=1))
    turn, shift = moved_with(structure, points, rows, structure.points[seat].mean(axis=0))
    return knuckle.moved(turn, shift)


def carrier_rows(structure: Structure, tie: Tie) -> Bools:
    """Return which triangles hang together with what a hinge hangs on, shape (m,); none where that is rigid.

    Asked at rest: a triangle keeps its place in the order whatever is cut or torn.
    """
    t, seat = structure.triangles, tie.nodes[tie.weights < 0.0]
    if not len(seat):
        return np.zeros(len(t), dtype=bool)
    pairs = np.concatenate([t[:, [0, 1]], t[:, [1, 2]]])
    size = len(structure.points)
    graph = sparse.coo_array((np.ones(len(pairs)), (pairs[:, 0], pairs[:, 1])), shape=(size, size))
    piece = connected_components(graph, directed=False)[1]
    out: Bools = piece[t[:, 0]] == piece[seat[0]]
    return out


def set_back(spots: Floats, knuckle: Knuckle) -> Floats:
    """Return points (k, 3) of what a hinge hangs on, with its face behind the outer edge set back [m]."""
    apart = spots - knuckle.middle
    depth = KNUCKLE_DEPTH_M - apart @ knuckle.outboard
    face = (depth > WING_EDGE_M) & (np.abs(apart @ knuckle.into) < FACE_M)
    out: Floats = np.where(face[:, None], spots - RECESS_M * knuckle.into, spots)
    return out


def hinge_view(knuckle: Knuckle, spots: Floats, opening_m: float, by: Ints | None = None) -> View | None:
    """Return how a knuckle can be seen and blades set round it; None where it cannot.

    Parameters
    ----------
    spots : shape (k, 3), points of all metal near it [m];  opening_m : between the open blades
    by : filled with which spot stands in the way of each place and way it is looked from, or -1
    """
    ways = knuckle.ways()
    by = np.zeros((len(ALONG_KNUCKLE), len(ways)), dtype=np.int64) if by is None else by
    seen = np.zeros(len(ways), dtype=bool)
    for place, mine in zip(knuckle.places(), by, strict=True):
        blocked = np.zeros(len(ways), dtype=bool)
        blocked_ways(spots, place, ways, NEAREST_M, SIGHT_M, blocked, mine)
        seen |= ~blocked
    for way in ways[seen]:
        normal = room_along(knuckle, spots, way, opening_m)
        if normal is not None:
            return View(knuckle.middle, way, normal)
    return None


def room_along(knuckle: Knuckle, spots: Floats, way: Floats, opening_m: float) -> Floats | None:
    """Return the normal of the blades' plane through a knuckle's axis, (3,); None without room for them."""
    apart = spots - knuckle.middle
    apart = apart[np.linalg.norm(apart, axis=1) > OWN_M]
    normal = np.cross(knuckle.axis, way)
    normal = normal / np.linalg.norm(normal)
    up = np.cross(way, normal)
    along = apart @ way
    mine = (along > -BEHIND_M) & (along < OUT_M) & (np.abs(apart @ up) < 0.5 * opening_m)
    apart, along = apart[mine], along[mine]
    half = 0.5 * np.clip(TIP_M + (ROOM_M - TIP_M) * along / TAPER_M, TIP_M, ROOM_M)
    for lean in LEANS:
        if not (np.abs(apart @ normal - lean * (half - 0.5 * TIP_M)) < half).any():
            found: Floats = normal
            return found
    return None
