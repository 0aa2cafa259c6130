"""Box sections swept along a member: pillars, rocker and roof rail as four walls that meet along sharp edges.

A member is given by rectangular cuts square to its axis; between two cuts it tapers straight. Upright members
run along z, lengthwise ones along x.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from itertools import pairwise

import numpy as np

from meshes.lattice import ROW_RATIO
from meshes.part import FloatArray, Frozen, IntArray, MeshError, Surface, frozen_floats

WALLS = {2: ("inner", "rear", "outer", "front"), 0: ("lower", "outer", "upper", "inner")}
"""Walls of a member by its axis (2: upright, 0: lengthwise), the way round that turns normals outward."""

LEAST_COLUMNS = 2
"""Fewest columns of triangles over a wall: one could not bend across."""


@dataclass(frozen=True)
class Cut:
    """A member's rectangle square to its axis [m].

    along_m : place on the axis (z of an upright member, x of a lengthwise one)
    low, high : lower and upper ends, (x, y) of an upright member, (y, z) of a lengthwise one
    """

    along_m: float
    low: tuple[float, float]
    high: tuple[float, float]


@dataclass(frozen=True, eq=False)
class BoxMesh(Frozen):
    """A member meshed as four walls, open at both ends; every array is read-only.

    Parameters
    ----------
    surface
        Walls as parts; node sets "start_ring" and "end_ring"; a chain for every long edge, named by the two
        walls that meet there ("outer_front_edge").
    axis
        2 for an upright member, 0 for a lengthwise one.
    cuts
        Rows of (along, low u, low v, high u, high v) [m], shape (k, 5).
    """

    surface: Surface
    axis: int
    cuts: FloatArray

    def __post_init__(self) -> None:
        """Freeze the cuts."""
        object.__setattr__(self, "cuts", frozen_floats(self.cuts, (None, 5), "cuts"))

    def section_at(self, along_m: float) -> tuple[float, float]:
        """Return the two sides [m] of the section at a place on the axis: fore and aft (or inboard) first.

        A pair of blades that comes from one side must open over the other.

        Raises
        ------
        MeshError
            If the member does not reach that place.
        """
        u0, v0, u1, v1 = section(self.cuts, along_m)
        return u1 - u0, v1 - v0

    def corners_at(self, along_m: float) -> FloatArray:
        """Return the four corners [m] of the section there, in the order of the walls' starts, (4, 3)."""
        return _ring_corners(section(self.cuts, along_m), along_m, self.axis)

    def mirrored(self) -> BoxMesh:
        """Return the mirror image in y = 0; the cuts stay those of the right-hand member."""
        return BoxMesh(self.surface.mirrored(), self.axis, self.cuts)


@dataclass(frozen=True)
class Walls:
    """The lattice of four walls before it becomes a surface.

    points : shape (n, 3) [m];  levels : place of each ring [m], shape (k,)
    rows : by wall, by ring, the node ids from one edge to the next
    triangles : shape (m, 3);  wall : index of each triangle's wall;  strip : ring below each triangle
    """

    points: FloatArray
    levels: FloatArray
    rows: tuple[tuple[IntArray, ...], ...]
    triangles: IntArray
    wall: IntArray
    strip: IntArray


def section(cuts: FloatArray, along_m: float) -> FloatArray:
    """Return (low u, low v, high u, high v) [m] of a member at a place on its axis, shape (4,)."""
    first, last = cuts[0, 0], cuts[-1, 0]
    if not first - 1e-9 <= along_m <= last + 1e-9:
        raise MeshError("along_m", f"is {along_m} m, the member runs from {first:.4g} to {last:.4g} m")
    return np.array([np.interp(along_m, cuts[:, 0], cuts[:, k]) for k in range(1, 5)])


def cut_rows(cuts: Sequence[Cut]) -> FloatArray:
    """Return cuts as rows of (along, low u, low v, high u, high v) [m], shape (k, 5).

    Raises
    ------
    MeshError
        If there are fewer than two, they are out of order, or one has no width.
    """
    rows = np.array([[cut.along_m, *cut.low, *cut.high] for cut in cuts], dtype=np.float64).reshape(-1, 5)
    if len(rows) < 2 or bool((np.diff(rows[:, 0]) <= 0.0).any()):
        raise MeshError("cuts", "need two or more, each further along the axis; put them in order")
    if bool((rows[:, 3:] - rows[:, 1:3] <= 0.0).any()):
        raise MeshError("cuts", "one has no width or no depth; make both above zero")
    return rows


def box_walls(
    cuts: FloatArray,
    axis: int,
    spacing_m: float,
    stops: Sequence[float] = (),
    finest: int = LEAST_COLUMNS,
    stretch_ratio: float = 1.0,
) -> Walls:
    """Return the near-equilateral lattice of a member's four walls, normals outward.

    Every wall keeps its number of columns, so the triangles grow and shrink with the section.

    Parameters
    ----------
    cuts
        Rows of `cut_rows`, shape (k, 5).
    spacing_m
        Wanted distance between neighbouring nodes, in the mean over the member.
    stops
        Places on the axis [m] where a ring of nodes must lie.
    finest
        Fewest columns of a wall.
    stretch_ratio
        How much longer the triangles are along the member than near-equilateral ones.
    """
    if not (np.isfinite(spacing_m) and spacing_m > 0.0):
        raise MeshError("spacing_m", f"is {spacing_m} m, must be above zero")
    columns = _columns(cuts, spacing_m, finest)
    levels = _levels(cuts, sum(columns), stops, stretch_ratio)
    points: list[FloatArray] = []
    rows: list[list[IntArray]] = [[], [], [], []]
    first = 0
    for index, along in enumerate(levels):
        ring, ids = _ring(section(cuts, float(along)), float(along), axis, columns, index % 2 == 1, first)
        points.append(ring)
        first += len(ring)
        for wall in range(4):
            rows[wall].append(ids[wall])
    triangles, walls, strips = [], [], []
    for wall in range(4):
        for index, (below, above) in enumerate(pairwise(rows[wall])):
            found = strip(below, above, even_below=index % 2 == 0)
            triangles.append(found)
            walls.append(np.full(len(found), wall))
            strips.append(np.full(len(found), index))
    return Walls(
        np.concatenate(points),
        levels,
        tuple(tuple(row) for row in rows),
        np.concatenate(triangles),
        np.concatenate(walls),
        np.concatenate(strips),
    )


def build_box(
    cuts: Sequence[Cut], axis: int, spacing_m: float, stops: Sequence[float] = (), stretch_ratio: float = 1.0
) -> BoxMesh:
    """Return a member of four walls, open at both ends; raises MeshError for bad cuts or spacing."""
    rows = cut_rows(cuts)
    made = box_walls(rows, axis, spacing_m, stops, stretch_ratio=stretch_ratio)
    surface = Surface(
        made.points, made.triangles, made.wall, WALLS[axis], ring_sets(made), edge_chains(made, axis)
    )
    return BoxMesh(surface, axis, rows)


def ring_sets(made: Walls) -> dict[str, IntArray]:
    """Return the node sets of both end rings, each once round."""
    rings = {"start_ring": 0, "end_ring": -1}
    return {name: np.concatenate([wall[at][:-1] for wall in made.rows]) for name, at in rings.items()}


def edge_chains(made: Walls, axis: int) -> Mapping[str, IntArray]:
    """Return the chains of the four long edges, named by the walls that meet there."""
    names = WALLS[axis]
    return {
        f"{names[wall]}_{names[wall - 1]}_edge": np.array([row[0] for row in made.rows[wall]])
        for wall in range(4)
    }


def strip(below: IntArray, above: IntArray, *, even_below: bool) -> IntArray:
    """Return the triangles between two rows of which the odd one holds one node more, anticlockwise.

    Seen so that the rows run to the right and ``above`` stands over ``below``, shape (2 columns + 1, 3).
    """
    even, odd = (below, above) if even_below else (above, below)
    fan = np.column_stack((even, odd[1:], odd[:-1]))
    base = np.column_stack((even[:-1], even[1:], odd[1:-1]))
    triangles = np.concatenate((fan, base)).astype(np.int64)
    return triangles if even_below else triangles[:, ::-1]


def row_shares(columns: int, odd: bool) -> FloatArray:
    """Return the shares 0 .. 1 of a row's nodes: odd rows stand half a column aside and keep their ends."""
    if odd:
        return np.concatenate(([0.0], (np.arange(columns) + 0.5) / columns, [1.0]))
    shares: FloatArray = np.arange(columns + 1) / columns
    return shares


def _columns(cuts: FloatArray, spacing_m: float, finest: int) -> list[int]:
    along = np.linspace(cuts[0, 0], cuts[-1, 0], 65)
    sides = np.array([section(cuts, float(place)) for place in along])
    first, second = (float(np.mean(sides[:, k + 2] - sides[:, k])) for k in range(2))
    return [max(finest, round(side / spacing_m)) for side in (first, second, first, second)]


def _levels(cuts: FloatArray, columns: int, stops: Sequence[float], stretch_ratio: float) -> FloatArray:
    """Return where the rings lie: rows as high as equilateral triangles of the local columns are."""
    marks = np.unique(np.round([*cuts[:, 0], *stops], 9))
    if marks[0] < cuts[0, 0] - 1e-6 or marks[-1] > cuts[-1, 0] + 1e-6:
        raise MeshError("stops", "lie beyond the member's ends; keep every fitting between them")
    levels = [float(marks[0])]
    for low, high in pairwise(marks):
        middle = section(cuts, float(np.clip(0.5 * (low + high), cuts[0, 0], cuts[-1, 0])))
        around = 2.0 * float(middle[2] - middle[0] + middle[3] - middle[1])
        count = max(1, round((high - low) / (stretch_ratio * ROW_RATIO * around / columns)))
        levels += [float(low + (high - low) * k / count) for k in range(1, count + 1)]
    levels[0], levels[-1] = float(cuts[0, 0]), float(cuts[-1, 0])
    return np.array(levels)


def _ring_corners(sides: FloatArray, along_m: float, axis: int) -> FloatArray:
    u0, v0, u1, v1 = sides
    flat = np.array([[u0, v0], [u1, v0], [u1, v1], [u0, v1]])
    return np.insert(flat, axis, along_m, axis=1)


def _ring(
    sides: FloatArray, along_m: float, axis: int, columns: Sequence[int], odd: bool, first: int
) -> tuple[FloatArray, list[IntArray]]:
    """Return the nodes of one ring and each wall's row of ids; the last wall ends where the first began."""
    corner = _ring_corners(sides, along_m, axis)
    points, ids = [], []
    start = first
    for wall in range(4):
        share = row_shares(columns[wall], odd)[:-1, None]
        points.append(corner[wall] + share * (corner[(wall + 1) % 4] - corner[wall]))
        ids.append(np.append(start + np.arange(len(share)), start + len(share)))
        start += len(share)
    ids[-1][-1] = first
    return np.concatenate(points), ids
