"""Flanges of a pillar's foot and head, plain or flared over the member they lie on, and their spot welds.

A plain flange is as wide as the wall it continues and holds one row of spots. At a flared foot the laps of
the outer and the inner wall widen along the rocker downward, front and rear flange reach as far along it, and
every flange holds several rows.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from meshes.box import WALLS, Walls, row_shares, strip
from meshes.lattice import ROW_RATIO
from meshes.nearest import nearest_on_triangles
from meshes.part import FloatArray, Frozen, IntArray, frozen_floats, frozen_ids

FLANGE_ROWS = 2
"""Rows of triangles over a plain flange: one flat beside the fold, one beside the free edge."""
OUTWARD = {
    "inner": (0.0, -1.0, 0.0),
    "outer": (0.0, 1.0, 0.0),
    "front": (-1.0, 0.0, 0.0),
    "rear": (1.0, 0.0, 0.0),
}
LAPS = ("inner", "outer")
"""Walls that run straight on over the member; the other two turn outward onto it."""


@dataclass(frozen=True, eq=False)
class WeldPoints(Frozen):
    """Places of spot welds on a flange; every array is read-only.

    Parameters
    ----------
    points
        Positions [m], shape (k, 3).
    nodes, weights
        Corners of the flange's triangles they lie on, shape (k, 3), and their shares, summing to one.
    away
        Unit vectors from the rigid member's face towards the flange, along which a weld peels, shape (k, 3).
    """

    points: FloatArray
    nodes: IntArray
    weights: FloatArray
    away: FloatArray

    def __post_init__(self) -> None:
        """Check and freeze every field."""
        count = len(self.points)
        for name in ("points", "weights", "away"):
            object.__setattr__(self, name, frozen_floats(getattr(self, name), (count, 3), name))
        ids = np.asarray(self.nodes)
        object.__setattr__(self, "nodes", frozen_ids(ids, (count, 3), "nodes", int(ids.max(initial=-1)) + 1))

    def mirrored(self) -> WeldPoints:
        """Return the mirror image in y = 0."""
        flip = np.array([1.0, -1.0, 1.0])
        return WeldPoints(self.points * flip, self.nodes, self.weights, self.away * flip)


@dataclass(frozen=True)
class Reach:
    """How far the flanges of an end go.

    lap_m : of those of outer and inner wall;  turned_m : of those of front and rear wall
    wider_m : how much wider a lap is at its edge than at its fold, on either side
    spot_rows : rows of spots over a flange, the shares of it they halve
    """

    lap_m: float
    turned_m: float
    wider_m: float = 0.0
    spot_rows: int = 1


@dataclass(frozen=True)
class Flange:
    """One flange: its own nodes, its triangles, its free edge, and the way it peels.

    fold : its ends (2, 3) [m];  run : from fold to free edge (3,) [m];  wider_m : as `Reach.wider_m`
    """

    points: FloatArray
    triangles: IntArray
    fold: FloatArray
    run: FloatArray
    edge: IntArray
    away: FloatArray
    wider_m: float = 0.0

    def ends_at(self, share: float) -> FloatArray:
        """Return the fold's ends [m], as much further apart as it is wider a share of the way on, (2, 3)."""
        return _widened(self.fold, self.wider_m * share)


def make_flanges(made: Walls, ends: dict[str, Reach], spacing_m: float) -> dict[str, Flange]:
    """Return the flanges of a pillar's walls, "foot_inner" to "head_front", node ids after the walls'."""
    found: dict[str, Flange] = {}
    first = len(made.points)
    for end, at, down in (("foot", 0, -1.0), ("head", -1, 1.0)):
        odd = at == -1 and len(made.levels) % 2 == 0
        reach = ends[end]
        for wall, name in enumerate(WALLS[2]):
            side, onward = np.array(OUTWARD[name]), np.array([0.0, 0.0, down])
            laps = name in LAPS
            run, away = (onward, side) if laps else (side, -onward)
            way = run * (reach.lap_m if laps else reach.turned_m)
            wider = reach.wider_m if laps else 0.0
            rows = FLANGE_ROWS
            if reach.spot_rows > 1:
                rows = max(FLANGE_ROWS, round(float(np.linalg.norm(way)) / (ROW_RATIO * spacing_m)))
            item = _flange(made, made.rows[wall][at], odd, (way, away, wider), rows, first, down < 0.0)
            found[f"{end}_{name}"] = item
            first += len(item.points)
    return found


def _widened(ends: FloatArray, by_m: float) -> FloatArray:
    if by_m == 0.0:
        return ends
    along = (ends[1] - ends[0]) / np.linalg.norm(ends[1] - ends[0])
    wider: FloatArray = ends + by_m * np.array([-along, along])
    return wider


def _flange(
    made: Walls,
    chain: IntArray,
    odd: bool,
    way: tuple[FloatArray, FloatArray, float],
    count: int,
    first: int,
    below: bool,
) -> Flange:
    run, away, wider_m = way
    fold = made.points[[chain[0], chain[-1]]]
    columns = len(chain) - (2 if odd else 1)
    rows, points = [chain], []
    for row in range(1, count + 1):
        share = row_shares(columns, odd != (row % 2 == 1))[:, None]
        start, end = _widened(fold, wider_m * row / count)
        points.append(start + share * (end - start) + run * row / count)
        rows.append(first + np.arange(len(share)))
        first += len(share)
    triangles = []
    for row in range(count):
        even = odd == (row % 2 == 1)
        found = strip(rows[row], rows[row + 1], even_below=even)
        triangles.append(found[:, ::-1] if below else found)  # below the wall its rows run the other way up
    return Flange(np.concatenate(points), np.concatenate(triangles), fold, run, rows[-1], away, wider_m)


def weld_points(points: FloatArray, flange: Flange, pitch_m: float, rows: int = 1) -> WeldPoints:
    """Return the spots of a flange: rows of them, evenly over its way and a pitch apart along it."""
    places = []
    for row in range(rows):
        inset = (row + 0.5) / rows
        start, end = flange.ends_at(inset)
        count = max(2, round(float(np.linalg.norm(end - start)) / pitch_m))
        share = (np.arange(count)[:, None] + 0.5) / count
        places.append(start + share * (end - start) + inset * flange.run)
    spots = np.concatenate(places)
    triangle, weights, _ = nearest_on_triangles(spots, points, flange.triangles)
    return WeldPoints(spots, flange.triangles[triangle], weights, np.tile(flange.away, (len(spots), 1)))
