"""Measuring on the metal of a moment: points that stay on the metal, and what lies between them.

A point set on a sheet is a triangle's three nodes with their shares, so its place at any moment is the
mesh's own; one set on what stands still keeps its place.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

import numpy as np
from numpy.typing import NDArray

from meshes.nearest import nearest_on_triangles
from meshes.occupant import BODY_PARTS, Capsule, clearance

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

Kind = Literal["length", "gap", "angle", "hip", "tear"]
KINDS: tuple[Kind, ...] = ("length", "gap", "angle", "hip", "tear")
KIND_WORDS = {
    "length": "Width between two points",
    "gap": "Gap to the next part",
    "angle": "Angle at the second of three points",
    "hip": "Distance to the hip",
    "tear": "Length of all tears",
}
CLICKS = {"length": 2, "gap": 1, "angle": 3, "hip": 1, "tear": 0}
"""How many places have to be clicked for each."""


@dataclass(frozen=True)
class Spot:
    """A place that was clicked.

    nodes, shares : of the triangle it lies on, empty for a place that stands still
    place_m : where it was when it was set
    """

    nodes: tuple[int, ...]
    shares: tuple[float, ...]
    place_m: tuple[float, float, float]

    def at(self, points: Floats) -> Floats:
        """Return where it is when the nodes are at points [m] (n, 3), shape (3,)."""
        if not self.nodes or max(self.nodes) >= len(points):
            return np.array(self.place_m)
        return np.asarray(np.array(self.shares) @ points[list(self.nodes)])


@dataclass(frozen=True)
class Measure:
    """A measurement asked for: its kind and the places it is taken between."""

    kind: Kind
    spots: tuple[Spot, ...]


@dataclass(frozen=True, eq=False)
class Taken:
    """What a measurement gives at a moment.

    value : [m], or [rad] for an angle;  line_m : what is drawn, shape (k, 3), k >= 2, or (0, 3)
    parts_m : of a length along the car, outboard and up [m]
    """

    kind: Kind
    value: float
    line_m: Floats
    parts_m: tuple[float, float, float] | None = None


@dataclass(frozen=True, eq=False)
class Metal:
    """The metal of a moment, as it is measured.

    points : shape (n, 3) [m];  triangles : shape (m, 3);  part : shape (m,), a number for each sheet
    whole, rest : triangles before any tear (m, 3), and the start shape (n0, 3) [m]
    occupant : capsules of the person
    """

    points: Floats
    triangles: Ints
    part: Ints
    whole: Ints
    rest: Floats
    occupant: tuple[Capsule, ...]


ON_METAL_M = 0.002
"""A click this near to a sheet is on it: pictures and rays are not exact."""


def spot_at(place: Floats, metal: Metal) -> Spot:
    """Return the spot of a place that was clicked [m], shape (3,)."""
    row, shares, away = nearest_on_triangles(place[None], metal.points, metal.triangles)
    where = (float(place[0]), float(place[1]), float(place[2]))
    if away[0] > ON_METAL_M:
        return Spot((), (), where)
    nodes = tuple(int(n) for n in metal.triangles[row[0]])
    return Spot(nodes, tuple(float(s) for s in shares[0]), where)


def taken(measure: Measure, metal: Metal) -> Taken:
    """Return what a measurement gives now."""
    at = np.array([spot.at(metal.points) for spot in measure.spots]).reshape(-1, 3)
    if measure.kind == "length":
        step = np.abs(at[1] - at[0])
        return Taken("length", float(np.linalg.norm(at[1] - at[0])), at, (step[0], step[1], step[2]))
    if measure.kind == "angle":
        one, other = at[0] - at[1], at[2] - at[1]
        size = max(float(np.linalg.norm(one) * np.linalg.norm(other)), 1e-18)
        return Taken("angle", float(np.arccos(np.clip(one @ other / size, -1.0, 1.0))), at)
    if measure.kind == "gap":
        return _gap(measure.spots[0], at[0], metal)
    if measure.kind == "hip":
        return _to_hip(at[0], metal)
    return Taken("tear", torn_m(metal), np.zeros((0, 3)))


def _gap(spot: Spot, place: Floats, metal: Metal) -> Taken:
    """Return the least distance to another sheet than the spot's own."""
    own = (metal.triangles == spot.nodes[0]).any(axis=1) if spot.nodes else np.zeros(len(metal.part), bool)
    other = ~np.isin(metal.part, np.unique(metal.part[own]))
    row, shares, away = nearest_on_triangles(place[None], metal.points, metal.triangles[other])
    nodes = metal.triangles[other][row[0]]
    return Taken("gap", float(away[0]), np.array([place, shares[0] @ metal.points[nodes]]))


def _to_hip(place: Floats, metal: Metal) -> Taken:
    hips = tuple(one for one in metal.occupant if one.name in BODY_PARTS["hip"])
    away = np.asarray(clearance(place[None], hips)).reshape(-1)
    best = hips[int(np.argmin(away))]
    axis = best.end - best.start
    share = np.clip((place - best.start) @ axis / max(float(axis @ axis), 1e-18), 0.0, 1.0)
    middle = best.start + share * axis
    out = place - middle
    near = middle + best.radius_m * out / max(float(np.linalg.norm(out)), 1e-12)
    return Taken("hip", float(away.min()), np.array([place, near]))


def torn_m(metal: Metal) -> float:
    """Return the length of all tears on the start shape [m]: half that of the edges that became free."""
    if np.array_equal(metal.triangles, metal.whole):
        return 0.0
    origin = np.arange(max(len(metal.rest), int(metal.triangles.max()) + 1))
    changed = metal.triangles != metal.whole
    origin[metal.triangles[changed]] = metal.whole[changed]
    now, before = _free_edges(metal.triangles), _free_edges(metal.whole)
    ends = np.sort(origin[now], axis=1)
    keys = {tuple(pair) for pair in before.tolist()}
    new = np.array([pair for pair in ends.tolist() if tuple(pair) not in keys]).reshape(-1, 2)
    return 0.5 * float(np.linalg.norm(metal.rest[new[:, 0]] - metal.rest[new[:, 1]], axis=1).sum())


def _free_edges(triangles: Ints) -> Ints:
    pairs = np.sort(triangles[:, [[0, 1], [1, 2], [2, 0]]].reshape(-1, 2), axis=1)
    ends, count = np.unique(pairs, axis=0, return_counts=True)
    return np.asarray(ends[count == 1])
