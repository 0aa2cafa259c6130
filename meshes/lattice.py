"""Near-equilateral lattices: on a four-cornered patch, and flat shapes for checking sheet laws."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

from meshes.part import FloatArray, Frozen, IntArray, MeshError, NamedIds, frozen_floats, frozen_ids

ROW_RATIO = float(np.sqrt(3.0) / 2.0)
"""Height of an equilateral triangle over its side."""

BOUNDARY_CLEARANCE_RATIO = 0.45
"""Turned lattices: an interior point nearer to the boundary than this share of the spacing is dropped."""

Bulge = Callable[[FloatArray, FloatArray], FloatArray]
"""Offset in y [m] at patch parameters (s, t), each of shape (n,)."""


@dataclass(frozen=True, eq=False)
class Lattice(Frozen):
    """A triangulated patch with ordered boundary chains; every array is read-only.

    Parameters
    ----------
    points
        Node positions, shape (n, 3); [m] unless the maker says otherwise.
    triangles
        Node ids, shape (m, 3).
    boundary
        Ordered node ids of each named edge, corners in both edges that meet there.
    """

    points: FloatArray
    triangles: IntArray
    boundary: Mapping[str, IntArray]

    def __post_init__(self) -> None:
        """Check and freeze every field."""
        points = frozen_floats(self.points, (None, 3), "points")
        object.__setattr__(self, "points", points)
        object.__setattr__(self, "triangles", frozen_ids(self.triangles, (None, 3), "triangles", len(points)))
        object.__setattr__(self, "boundary", NamedIds(self.boundary, len(points)))


# --- four-cornered patch


def patch_counts(width_m: float, height_m: float, spacing_m: float) -> tuple[int, int]:
    """Return the interval counts (columns, rows) with which a patch is nearest to equilateral."""
    columns = max(1, round(width_m / spacing_m))
    rows = max(1, round(height_m / (spacing_m * ROW_RATIO)))
    return columns, rows


def unit_patch(columns: int, rows: int) -> Lattice:
    """Return the lattice on the unit square, points (s, t, 0), triangles anticlockwise in (s, t).

    Even rows hold columns + 1 evenly spaced nodes. Odd rows are shifted by half a spacing and keep an end
    node on either side, so each side is straight and owns one node per row; the triangles there are half
    ones.

    Parameters
    ----------
    columns, rows
        Number of intervals along s and t, each >= 1. Row j stands at t = j / rows.
    """
    if columns < 1 or rows < 1:
        short = "columns" if columns < 1 else "rows"
        raise MeshError(short, "needs at least one interval; use a finer spacing")
    even = np.arange(columns + 1) / columns
    odd = np.concatenate(([0.0], (np.arange(columns) + 0.5) / columns, [1.0]))
    levels = [odd if row % 2 else even for row in range(rows + 1)]
    first = np.concatenate(([0], np.cumsum([len(level) for level in levels])))
    s = np.concatenate(levels)
    t = np.concatenate([np.full(len(level), row / rows) for row, level in enumerate(levels)])
    strips = [_strip(int(first[row]), int(first[row + 1]), columns, row % 2 == 0) for row in range(rows)]
    boundary = {
        "left": first[:-1],
        "right": first[1:] - 1,
        "bottom": np.arange(first[1]),
        "top": np.arange(first[rows], first[rows + 1]),
    }
    return Lattice(np.column_stack((s, t, np.zeros_like(s))), np.concatenate(strips), boundary)


def _strip(lower: int, upper: int, columns: int, even_below: bool) -> IntArray:
    """Return the 2 columns + 1 triangles between an even and an odd row whose first nodes are given."""
    even, odd = (lower, upper) if even_below else (upper, lower)
    i = np.arange(columns + 1)
    fan = np.column_stack((even + i, odd + i + 1, odd + i))
    i = i[:-1]
    base = np.column_stack((even + i, even + i + 1, odd + i + 1))
    triangles = np.concatenate((fan, base)).astype(np.int64)
    return triangles if even_below else triangles[:, ::-1]


def quad_patch(corners: npt.ArrayLike, columns: int, rows: int, bulge: Bulge | None = None) -> Lattice:
    """Return the lattice on a bilinear patch [m], triangles anticlockwise from corner 0 over 1 and 2 to 3.

    Parameters
    ----------
    corners
        Positions [m] of the corners at (s, t) = (0, 0), (1, 0), (1, 1), (0, 1), shape (4, 3).
    columns, rows
        Number of intervals, see `unit_patch`.
    bulge
        Offset in y [m] added at (s, t); none: the bilinear patch itself.
    """
    unit = unit_patch(columns, rows)
    corner = frozen_floats(corners, (4, 3), "corners")
    s, t = unit.points[:, 0], unit.points[:, 1]
    points = bilinear(corner, s, t)
    if bulge is not None:
        points[:, 1] += bulge(s, t)
    return Lattice(points, unit.triangles, unit.boundary)


def bilinear(corners: FloatArray, s: FloatArray, t: FloatArray) -> FloatArray:
    """Return the points at (s, t) of the bilinear patch over `corners`, shape (n, 3)."""
    weights = np.stack(((1 - s) * (1 - t), s * (1 - t), s * t, (1 - s) * t), axis=-1)
    result: FloatArray = weights @ corners
    return result


# --- flat shapes


def delaunay(flat: FloatArray) -> IntArray:
    """Return Delaunay's triangles of flat points of shape (n, 2), as scipy finds them, shape (m, 3)."""
    from scipy.spatial import Delaunay  # half a second: a window stands before its first lattice

    triangles: IntArray = Delaunay(flat).simplices.astype(np.int64)
    return triangles


def rectangle(length_m: float, width_m: float, spacing_m: float, angle_rad: float = 0.0) -> Lattice:
    """Return the rectangle (0..length, 0..width, 0) filled with an equilateral lattice turned by `angle_rad`.

    Boundary nodes stand on the edges at about the spacing; interior nodes nearer to an edge than 0.45
    spacings are left out, so triangles beside the edges are only roughly equilateral.
    """
    for name, value in (("length_m", length_m), ("width_m", width_m), ("spacing_m", spacing_m)):
        _check_positive(name, value)
    across, up = max(1, round(length_m / spacing_m)), max(1, round(width_m / spacing_m))
    rim, boundary = _rectangle_rim(length_m, width_m, across, up)
    inside = _turned_lattice(length_m, width_m, spacing_m, angle_rad)
    flat = np.concatenate((rim, inside))
    triangles = delaunay(flat)
    triangles = _without_slivers(flat, triangles, spacing_m)
    return Lattice(_lifted(flat), _anticlockwise(flat, triangles), boundary)


def _rectangle_rim(
    length_m: float, width_m: float, across: int, up: int
) -> tuple[FloatArray, dict[str, IntArray]]:
    """Return the boundary points of a rectangle, shape (k, 2), and the ids of its four edges."""
    x, y = np.linspace(0.0, length_m, across + 1), np.linspace(0.0, width_m, up + 1)
    bottom, top = np.arange(across + 1), np.arange(across + 1, 2 * across + 2)
    left_inner = np.arange(up - 1) + 2 * across + 2
    right_inner = left_inner + up - 1
    y = y[1:-1]
    rim = np.concatenate(
        (
            np.column_stack((x, 0 * x)),
            np.column_stack((x, 0 * x + width_m)),
            np.column_stack((0 * y, y)),
            np.column_stack((0 * y + length_m, y)),
        )
    )
    left = np.concatenate((bottom[:1], left_inner, top[:1]))
    right = np.concatenate((bottom[-1:], right_inner, top[-1:]))
    return rim, {"left": left, "right": right, "bottom": bottom, "top": top}


def _turned_lattice(length_m: float, width_m: float, spacing_m: float, angle_rad: float) -> FloatArray:
    """Return the points of a turned equilateral lattice through the middle clear of the edges, (k, 2)."""
    reach = int(np.ceil(np.hypot(length_m, width_m) / (spacing_m * ROW_RATIO))) + 2
    i, j = np.meshgrid(np.arange(-reach, reach + 1), np.arange(-reach, reach + 1), indexing="ij")
    u, v = (i + 0.5 * (j % 2)).ravel() * spacing_m, j.ravel() * spacing_m * ROW_RATIO
    cos, sin = np.cos(angle_rad), np.sin(angle_rad)
    x = 0.5 * length_m + cos * u - sin * v
    y = 0.5 * width_m + sin * u + cos * v
    clear = BOUNDARY_CLEARANCE_RATIO * spacing_m * (1 - 1e-9)
    keep = (x > clear) & (x < length_m - clear) & (y > clear) & (y < width_m - clear)
    return np.column_stack((x[keep], y[keep]))


def one_diagonal(length_m: float, width_m: float, nx: int, ny: int) -> Lattice:
    """Return the rectangle (0..length, 0..width, 0) cut into nx x ny cells, all split the same way."""
    _check_positive("length_m", length_m)
    _check_positive("width_m", width_m)
    if nx < 1 or ny < 1:
        raise MeshError("nx" if nx < 1 else "ny", "needs at least one cell")
    x, y = np.meshgrid(np.linspace(0.0, length_m, nx + 1), np.linspace(0.0, width_m, ny + 1))
    ids = np.arange((nx + 1) * (ny + 1)).reshape(ny + 1, nx + 1)
    boundary = {"left": ids[:, 0], "right": ids[:, -1], "bottom": ids[0], "top": ids[-1]}
    return Lattice(np.column_stack((x.ravel(), y.ravel(), 0 * x.ravel())), split_cells(ids), boundary)


def split_cells(ids: IntArray) -> IntArray:
    """Return the triangles of a node grid, shape (2 cells, 3), all cells split along the same diagonal.

    They turn from the grid's second axis to its first.
    """
    a, b, c, d = ids[:-1, :-1].ravel(), ids[:-1, 1:].ravel(), ids[1:, 1:].ravel(), ids[1:, :-1].ravel()
    return np.concatenate((np.column_stack((a, b, d)), np.column_stack((b, c, d)))).astype(np.int64)


def disc(radius_m: float, rings: int) -> Lattice:
    """Return a disc about the origin, ring i holding 6 i nodes; boundary "rim" and "centre"."""
    _check_positive("radius_m", radius_m)
    if rings < 1:
        raise MeshError("rings", "needs at least one ring")
    points = [np.zeros((1, 2))]
    for ring in range(1, rings + 1):
        angle = 2 * np.pi * np.arange(6 * ring) / (6 * ring)
        points.append(radius_m * ring / rings * np.column_stack((np.cos(angle), np.sin(angle))))
    triangles = np.concatenate([_ring_triangles(ring) for ring in range(1, rings + 1)])
    rim = np.arange(6 * rings) + 1 + 3 * rings * (rings - 1)
    return Lattice(_lifted(np.concatenate(points)), triangles, {"rim": rim, "centre": np.array([0])})


def _ring_triangles(ring: int) -> IntArray:
    """Return the triangles between ring - 1 and ring of a disc, anticlockwise."""
    start, inner_start = 1 + 3 * ring * (ring - 1), 1 + 3 * (ring - 1) * (ring - 2)

    def outer(i: int) -> int:
        return start + i % (6 * ring)

    def inner(i: int) -> int:
        return inner_start + i % (6 * (ring - 1)) if ring > 1 else 0

    found = []
    for sector in range(6):
        for step in range(ring):
            here, below = sector * ring + step, sector * (ring - 1) + step
            found.append((outer(here), outer(here + 1), inner(below)))
            if step < ring - 1:
                found.append((inner(below), outer(here + 1), inner(below + 1)))
    return np.array(found, dtype=np.int64)


def slit_ring(inner_m: float, outer_m: float, n_radial: int, n_around: int) -> Lattice:
    """Return a flat ring cut open along +x; boundary "inner", "outer", "slit_start", "slit_end".

    Rows run round the ring, odd ones shifted by half a step. The lips of the slit lie on one another and
    share no node; chains of the lips run outward, those of the rims anticlockwise.
    """
    _check_positive("inner_m", inner_m)
    if not outer_m > inner_m:
        raise MeshError("outer_m", f"must exceed inner_m = {inner_m}; enlarge it")
    unit = unit_patch(n_around, n_radial)
    angle, radius = 2 * np.pi * unit.points[:, 0], inner_m + (outer_m - inner_m) * unit.points[:, 1]
    flat = np.column_stack((radius * np.cos(angle), radius * np.sin(angle)))
    edge = unit.boundary
    boundary = {
        "inner": edge["bottom"],
        "outer": edge["top"],
        "slit_start": edge["left"],
        "slit_end": edge["right"],
    }
    return Lattice(_lifted(flat), _anticlockwise(flat, unit.triangles), boundary)


# --- helpers


def _lifted(flat: FloatArray) -> FloatArray:
    return np.column_stack((flat, np.zeros(len(flat))))


def _signed_areas(flat: FloatArray, triangles: IntArray) -> FloatArray:
    a, b, c = (flat[triangles[:, corner]] for corner in range(3))
    ab, ac = b - a, c - a
    area: FloatArray = 0.5 * (ab[:, 0] * ac[:, 1] - ab[:, 1] * ac[:, 0])
    return area


def _without_slivers(flat: FloatArray, triangles: IntArray, spacing_m: float) -> IntArray:
    """Return the triangles without those of three nodes on one straight edge (rounding makes them)."""
    return triangles[np.abs(_signed_areas(flat, triangles)) > 1e-6 * spacing_m**2]


def _anticlockwise(flat: FloatArray, triangles: IntArray) -> IntArray:
    turned = triangles.copy()
    wrong = _signed_areas(flat, triangles) < 0
    turned[wrong] = triangles[wrong][:, ::-1]
    return turned


def _check_positive(name: str, value: float) -> None:
    if not (np.isfinite(value) and value > 0):
        raise MeshError(name, f"is {value}, must be above zero")
