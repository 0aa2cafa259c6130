"""A pair of blades on the metal as it is now: the plane they close in, what lies between, what they part.

The blades close in one plane, coming one way, from the near face of what they are set on.  A sheet is parted
along edges of the lattice: every triangle lies on one side of the plane by its centre, and the edges between
the two sides are the line.  The plane is shifted by at most half a row to where that line is shortest and
nearest, so a cut stands within half a row of its place, its ends within half an edge, and no metal is lost.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from sim.network import Network
from sim.problems import PlanError

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]
Bools = NDArray[np.bool_]

SHIFTS = 17  # places tried for the line, over one row
STRAIGHT = 0.15  # of an edge: what a metre of line costs besides its distance, so that it does not zigzag
ROW_RATIO = 0.87  # height of a row over its edge, near-equilateral


@dataclass(frozen=True)
class Blades:
    """Blades set on the metal.

    place : shape (3,), a point of the plane [m];  way : unit vector (3,), the way they come in
    normal : unit vector (3,), square to the plane
    rows : shape (m,), triangles they may take;  beams, ties : indices of those they may take
    opening_m : between the open blades;  depth_m : how far in they go from the near face
    short_m : how far short of the far face they stop at least;  reach_m : how far round the place they look
    """

    place: Floats
    way: Floats
    normal: Floats
    rows: Bools
    beams: Sequence[int] = ()
    ties: Sequence[int] = ()
    opening_m: float = 0.18
    depth_m: float = 0.3
    short_m: float = 0.0
    reach_m: float = 0.35

    @property
    def across(self) -> Floats:
        """Unit vector in the plane, square to the way they come in, shape (3,)."""
        out: Floats = np.cross(self.normal, self.way)
        return out

    def height(self, points: Floats) -> Floats:
        """Return how far points lie off the plane [m]."""
        out: Floats = (points - self.place) @ self.normal
        return out


@dataclass(frozen=True)
class Section:
    """What lies between the blades now, measured in their plane from their place [m].

    near_m, far_m : along the way they come in;  low_m, high_m : across it
    metal_m : length of sheet in the plane;  area_m2 : that times thickness
    """

    near_m: float
    far_m: float
    low_m: float
    high_m: float
    metal_m: float
    area_m2: float

    @property
    def width_m(self) -> float:
        """What the blades must open over [m]."""
        return self.high_m - self.low_m


def crossings(points: Floats, triangles: Ints, height: Floats) -> tuple[Ints, Floats]:
    """Return triangles a plane crosses, rows (k,), and the ends of what it crosses, shape (k, 2, 3) [m]."""
    h = height[triangles]
    rows = np.flatnonzero((h.min(axis=1) < 0.0) & (h.max(axis=1) >= 0.0))
    ends = np.zeros((len(rows), 2, 3))
    for at, t in enumerate(rows.tolist()):
        found = []
        for i in range(3):
            a, b = triangles[t, i], triangles[t, (i + 1) % 3]
            if (height[a] < 0.0) != (height[b] < 0.0):
                share = height[a] / (height[a] - height[b])
                found.append(points[a] + share * (points[b] - points[a]))
        ends[at] = found
    return rows, ends


def section(network: Network, points: Floats, blades: Blades) -> Section:
    """Return what lies between the blades.

    Raises
    ------
    PlanError
        When there is no metal within reach of their place.
    """
    own = np.flatnonzero(blades.rows)
    rows, ends = crossings(points, network.structure.triangles[own], blades.height(points))
    apart = ends - blades.place
    near = np.linalg.norm(apart, axis=2).max(axis=1, initial=0.0) <= blades.reach_m
    rows, apart = own[rows[near]], apart[near]
    if not len(rows):
        raise PlanError("place", "has no metal there any more; choose one where the part still stands")
    along, across = apart @ blades.way, apart @ blades.across
    size = np.linalg.norm(apart[:, 1] - apart[:, 0], axis=1)
    return Section(
        float(along.min()),
        float(along.max()),
        float(across.min()),
        float(across.max()),
        float(size.sum()),
        float(size @ network.thickness[rows]),
    )


def check_width(found: Section, opening_m: float) -> None:
    """Raise PlanError when the section is wider than the blades open."""
    if found.width_m > opening_m:
        raise PlanError(
            "opening_m",
            f"is {opening_m:g} m and the section there is {found.width_m:.3f} m across the blades: come from "
            "a narrower side, go where the section is smaller, or take blades that open wider",
        )


@dataclass(frozen=True)
class Line:
    """Where the metal parts.

    edges : shape (k, 2), edges of the lattice to be opened;  left : shape (j, 2), those not reached
    side : shape (m,), +1 or -1 for the triangles on either side of the plane, 0 for those not taken
    end_m : how far in the blades come, from their place
    """

    edges: Ints
    left: Ints
    side: Ints
    end_m: float


def hinge_triangles(network: Network) -> Ints:
    """Return the two triangles of every hinge, shape (hinges, 2)."""
    out = np.full((len(network.rest.hinges), 2), -1, dtype=np.int64)
    for t, three in enumerate(network.rest.triangle_hinges.tolist()):
        for h in three:
            if h >= 0:
                out[h, int(out[h, 0] >= 0)] = t
    return out


def line(network: Network, points: Floats, blades: Blades, found: Section) -> Line:
    """Return where the metal parts: the edges nearest the plane that the blades reach."""
    triangles, hinges = network.structure.triangles, network.rest.hinges
    pair = hinge_triangles(network)
    ends = points[hinges[:, :2]]
    apart = ends.mean(axis=1) - blades.place
    along, across = apart @ blades.way, apart @ blades.across
    middle = 0.5 * (found.low_m + found.high_m)
    held = blades.rows[pair].all(axis=1) & (np.linalg.norm(apart, axis=1) <= blades.reach_m)
    held &= np.abs(across - middle) <= 0.5 * blades.opening_m
    if not held.any():
        raise PlanError("place", "has no metal the blades could part; choose one further from the edge")
    end = min(found.near_m + blades.depth_m, found.far_m - blades.short_m)
    if blades.short_m == 0.0 and end >= found.far_m:
        end = np.inf
    size = np.linalg.norm(ends[:, 1] - ends[:, 0], axis=1)
    off = blades.height(points)
    centre = off[triangles].mean(axis=1)
    near = held & (np.abs(off[hinges[:, :2]]).min(axis=1) < 3.0 * size)
    edge = float(size[near].mean()) if near.any() else float(size[held].mean())
    best, least = 0.0, np.inf
    for shift in np.linspace(-0.5, 0.5, SHIFTS) * ROW_RATIO * edge:
        on = held & ((centre[pair] > shift)[:, 0] != (centre[pair] > shift)[:, 1])
        far = np.abs(off[hinges[on, :2]]).mean(axis=1)
        cost = float(size[on] @ (far + STRAIGHT * edge)) + 1.0e-6 * abs(float(shift))
        if on.any() and cost < least - 1.0e-12:
            best, least = float(shift), cost
    side = np.where(blades.rows, np.where(centre > best, 1, -1), 0)
    on = held & (side[pair[:, 0]] != side[pair[:, 1]])
    inside = on & (along <= end)
    return Line(hinges[inside, :2], hinges[on & ~inside, :2], side, end)
