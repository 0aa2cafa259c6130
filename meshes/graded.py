"""Lattices graded by a size field: near-equilateral triangles on a four-sided flat patch, finer where asked.

The points of a patch repel one another like bars under pressure until each bar has the length its place asks
for; then they are joined by Delaunay's rule.

Source: Persson and Strang, A Simple Mesh Generator in MATLAB, SIAM Review 46 (2004) 329-345 (from memory).
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from itertools import pairwise

import numpy as np
import numpy.typing as npt

from meshes.lattice import Lattice, bilinear, delaunay
from meshes.part import FloatArray, IntArray, MeshError

Size = Callable[[FloatArray], FloatArray]
"""Wanted spacing [m] at flat points of shape (n, 2); returns shape (n,)."""

ROUNDS = 120
PRESSURE = 1.15  # bars want to be this much longer than asked, so that points spread to the boundary
STEP = 0.2
REJOIN_SHARE = 0.1  # a new triangulation is due once a point has moved this share of its spacing
THINNED = 0.9  # the boundary holds points too
CLEAR_RATIO = 0.55  # interior points nearer to the boundary than this share of the spacing are dropped
SEED, TRIES = 20, 6  # other starts are tried while an inner node fans out to a side or a triangle is thin
SHARPEST_DEG, BLUNTEST_DEG = 25.0, 118.0  # angles on the flat patch; a bulge changes them a little


@dataclass(frozen=True)
class Grading:
    """Spacing finer near some segments, growing with the distance from them.

    coarse_m : spacing far away;  fine_m : on the segments;  growth : spacing gained per metre of distance
    segments : ends of straight pieces in the flat plane, shape (k, 2, 2) [m]
    """

    coarse_m: float
    fine_m: float
    growth: float
    segments: FloatArray

    def __call__(self, flat: FloatArray) -> FloatArray:
        """Return the wanted spacing [m] at flat points, shape (n,)."""
        away = np.full(len(flat), np.inf)
        for first, last in self.segments:
            along = last - first
            share = np.clip((flat - first) @ along / (along @ along), 0.0, 1.0)
            away = np.minimum(away, np.linalg.norm(flat - first - share[:, None] * along, axis=1))
        wanted: FloatArray = np.minimum(self.coarse_m, self.fine_m + self.growth * away)
        return wanted


def graded_shares(first: FloatArray, last: FloatArray, size: Size, stops: Sequence[float] = ()) -> FloatArray:
    """Return shares 0 .. 1 of nodes along a straight side, spaced as the field asks, shape (k,).

    Every share in ``stops`` becomes a node, so that a part of the sheet can end there on any lattice.
    """
    length = float(np.linalg.norm(last - first))
    marks = np.unique(np.round([0.0, *stops, 1.0], 12))
    if marks[0] < 0.0 or marks[-1] > 1.0:
        raise MeshError("stops", "leave the side; keep every fitting between the corners")
    pieces = [np.zeros(1)]
    for low, high in pairwise(marks):
        share = np.linspace(low, high, 65)
        density = length / size(first + share[:, None] * (last - first))
        total = np.concatenate(([0.0], np.cumsum(0.5 * (density[1:] + density[:-1]) * np.diff(share))))
        count = max(1, round(float(total[-1])))
        pieces.append(np.interp(np.arange(1, count + 1) / count * total[-1], total, share))
        pieces[-1][-1] = high
    return np.concatenate(pieces)


@dataclass(frozen=True)
class Sides:
    """Shares of the nodes along a patch's sides: left and right upwards, bottom and top rightwards."""

    left: FloatArray
    right: FloatArray
    bottom: FloatArray
    top: FloatArray


def graded_unit(corners: FloatArray, sides: Sides, size: Size, kept: FloatArray | None = None) -> Lattice:
    """Return the lattice on the unit square, points (s, t, 0), near-equilateral on the flat patch it maps to.

    Parameters
    ----------
    corners
        Flat corners [m] at (s, t) = (0, 0), (1, 0), (1, 1), (0, 1), shape (4, 2).
    kept
        Interior points (s, t) that must be nodes, shape (k, 2).
    """
    rim, boundary = _rim(sides)
    held = rim if kept is None else np.concatenate((rim, kept))
    for seed in range(SEED, SEED + TRIES):
        unit = _relaxed(corners, size, held, _interior(corners, size, rim, held, seed))
        triangles = delaunay(_flat(corners, unit))
        triangles = _anticlockwise(_flat(corners, unit), triangles)
        if not _fans(triangles, boundary).any() and not _thin(_flat(corners, unit), triangles).any():
            break
    return Lattice(np.column_stack((unit, np.zeros(len(unit)))), triangles, boundary)


def graded_patch(
    corners: FloatArray, unit: Lattice, bulge: Callable[[FloatArray, FloatArray], FloatArray] | None = None
) -> Lattice:
    """Return a unit lattice laid on a bilinear patch [m] of corners (4, 3), with an offset in y added."""
    s, t = unit.points[:, 0], unit.points[:, 1]
    points = bilinear(corners, s, t)
    if bulge is not None:
        points[:, 1] += bulge(s, t)
    return Lattice(points, unit.triangles, unit.boundary)


def _rim(sides: Sides) -> tuple[FloatArray, dict[str, IntArray]]:
    """Return the boundary's (s, t), shape (k, 2), and the node ids of each side, corners in both."""
    b, t = len(sides.bottom), len(sides.top)
    left, right = sides.left[1:-1], sides.right[1:-1]
    parts = (
        np.column_stack((sides.bottom, np.zeros(b))),
        np.column_stack((sides.top, np.ones(t))),
        np.column_stack((np.zeros(len(left)), left)),
        np.column_stack((np.ones(len(right)), right)),
    )
    bottom, top = np.arange(b), b + np.arange(t)
    own_left = b + t + np.arange(len(left))
    own_right = b + t + len(left) + np.arange(len(right))
    boundary = {
        "left": np.concatenate((bottom[:1], own_left, top[:1])),
        "right": np.concatenate((bottom[-1:], own_right, top[-1:])),
        "bottom": bottom,
        "top": top,
    }
    return np.concatenate(parts), boundary


def _fans(triangles: IntArray, boundary: Mapping[str, IntArray]) -> npt.NDArray[np.bool_]:
    """Return which triangles have a corner joined to four nodes or more of one straight side, shape (m,)."""
    ends = np.concatenate((triangles[:, :2], triangles[:, 1:], triangles[:, ::2]))
    pairs = np.unique(np.concatenate((ends, ends[:, ::-1])), axis=0)
    bad = np.zeros(int(triangles.max()) + 1, dtype=bool)
    for side in boundary.values():
        joined = pairs[np.isin(pairs[:, 1], side) & ~np.isin(pairs[:, 0], side), 0]
        bad |= np.bincount(joined, minlength=len(bad)) >= 4
    return np.asarray(bad[triangles].any(axis=1))


def _thin(flat: FloatArray, triangles: IntArray) -> npt.NDArray[np.bool_]:
    """Return which triangles have an angle sharper or blunter than any should, shape (m,)."""
    side = np.sort(np.linalg.norm(flat[triangles] - flat[np.roll(triangles, 1, axis=1)], axis=2), axis=1)
    a, b, c = side.T
    widest = np.arccos(np.clip((a**2 + b**2 - c**2) / (2.0 * a * b), -1.0, 1.0))
    least = np.arccos(np.clip((b**2 + c**2 - a**2) / (2.0 * b * c), -1.0, 1.0))
    thin: npt.NDArray[np.bool_] = (least < np.radians(SHARPEST_DEG)) | (widest > np.radians(BLUNTEST_DEG))
    return thin


def _flat(corners: FloatArray, unit: FloatArray) -> FloatArray:
    return bilinear(corners, unit[:, 0], unit[:, 1])


def _interior(corners: FloatArray, size: Size, rim: FloatArray, held: FloatArray, seed: int) -> FloatArray:
    """Return first interior points (s, t): one beside every interval of the sides, the rest thinned, (n, 2).

    The row beside the sides matters: an inner node joined to four of one side's would put six corners of a
    patch on one conic (two lines), and the sheet's curvature could not be told there.
    """
    beside = _beside(corners, rim)
    clear = 0.6 * size(_flat(corners, beside))
    beside = beside[_away(_flat(corners, beside), _flat(corners, held)) > clear]
    beside = _apart(corners, beside, size)
    fine = float(size(_flat(corners, held)).min())
    columns = int(float(np.ptp(corners[:, 0])) / fine) + 1
    rows = int(float(np.ptp(corners[:, 1])) / (fine * np.sqrt(0.75))) + 1
    i, j = np.meshgrid(np.arange(columns + 1), np.arange(1, rows), indexing="ij")
    unit = np.column_stack((((i + 0.5 * (j % 2)) / columns).ravel(), (j / rows).ravel()))
    unit = unit[(unit[:, 0] > 0.0) & (unit[:, 0] < 1.0)]
    share = THINNED * (fine / size(_flat(corners, unit))) ** 2
    unit = unit[np.random.default_rng(seed).random(len(unit)) < share]
    taken = np.concatenate((held, beside))
    away = _away(_flat(corners, unit), _flat(corners, taken))
    return np.concatenate((beside, unit[away > CLEAR_RATIO * size(_flat(corners, unit))]))


def _beside(corners: FloatArray, rim: FloatArray) -> FloatArray:
    """Return the (s, t) of the apex of an equilateral triangle on each interval of the sides, (k, 2)."""
    out = []
    for axis, value in ((0, 0.0), (0, 1.0), (1, 0.0), (1, 1.0)):
        side = rim[rim[:, axis] == value]
        flat = _flat(corners, side[np.argsort(side[:, 1 - axis])])
        along = np.diff(flat, axis=0)
        normal = np.column_stack((-along[:, 1], along[:, 0]))
        middle = 0.5 * (flat[1:] + flat[:-1])
        inward = np.sign(np.einsum("ki,ki->k", normal, corners.mean(axis=0) - middle))
        out.append(middle + np.sqrt(0.75) * inward[:, None] * normal)
    return _inverse(corners, np.concatenate(out))


def _away(flat: FloatArray, others: FloatArray) -> FloatArray:
    """Return the distance of each point to the nearest of the others [m], shape (n,)."""
    from scipy.spatial import cKDTree

    return np.asarray(cKDTree(others).query(flat)[0])


def _apart(corners: FloatArray, unit: FloatArray, size: Size) -> FloatArray:
    """Return the points without those too near to an earlier one (the corners' rows meet)."""
    flat = _flat(corners, unit)
    clear = 0.7 * size(flat)
    kept: list[int] = []
    for k in range(len(flat)):
        if not kept or np.linalg.norm(flat[kept] - flat[k], axis=1).min() > clear[k]:
            kept.append(k)
    return unit[kept]


def _relaxed(corners: FloatArray, size: Size, held: FloatArray, interior: FloatArray) -> FloatArray:
    """Return all points (s, t), the held ones first, once the bars between them have come to rest."""
    fixed = len(held)
    unit = np.concatenate((held, interior))
    flat = _flat(corners, unit)
    joined = np.full_like(flat, np.inf)
    for _ in range(ROUNDS):
        wanted = size(flat)
        if np.max(np.linalg.norm(flat - joined, axis=1) / wanted) > REJOIN_SHARE:
            triangles = delaunay(flat)
            ends = np.sort(np.concatenate((triangles[:, :2], triangles[:, 1:], triangles[:, ::2])), axis=1)
            bars = np.unique(ends, axis=0)
            joined = flat.copy()
        bar = flat[bars[:, 0]] - flat[bars[:, 1]]
        length = np.linalg.norm(bar, axis=1)
        asked = size(0.5 * (flat[bars[:, 0]] + flat[bars[:, 1]]))
        asked *= PRESSURE * np.sqrt(np.sum(length**2) / np.sum(asked**2))
        push = (np.maximum(asked - length, 0.0) / length)[:, None] * bar
        total = np.zeros_like(flat)
        np.add.at(total, bars[:, 0], push)
        np.add.at(total, bars[:, 1], -push)
        total[:fixed] = 0.0
        flat = _inside(corners, flat + STEP * total, size, fixed)
    return np.concatenate((held, _inverse(corners, flat[fixed:])))


def _inside(corners: FloatArray, flat: FloatArray, size: Size, fixed: int) -> FloatArray:
    """Return the points with loose ones kept clear of the sides by half their spacing."""
    loose = flat[fixed:]
    clear = 0.5 * size(loose)
    for k in range(4):
        first, last = corners[k], corners[(k + 1) % 4]
        along = (last - first) / np.linalg.norm(last - first)
        inward = np.array([-along[1], along[0]])
        short = np.maximum(clear - (loose - first) @ inward, 0.0)
        loose = loose + short[:, None] * inward
    return np.concatenate((flat[:fixed], loose))


def _inverse(corners: FloatArray, flat: FloatArray) -> FloatArray:
    """Return (s, t) of flat points by Newton's method on the bilinear map, shape (n, 2)."""
    unit = np.full_like(flat, 0.5)
    a, b, c, d = corners
    for _ in range(12):
        s, t = unit[:, :1], unit[:, 1:]
        miss = _flat(corners, unit) - flat
        ds = (1 - t) * (b - a) + t * (c - d)
        dt = (1 - s) * (d - a) + s * (c - b)
        det = ds[:, 0] * dt[:, 1] - ds[:, 1] * dt[:, 0]
        unit = unit - np.column_stack(
            (
                (dt[:, 1] * miss[:, 0] - dt[:, 0] * miss[:, 1]) / det,
                (ds[:, 0] * miss[:, 1] - ds[:, 1] * miss[:, 0]) / det,
            )
        )
    return unit


def _anticlockwise(flat: FloatArray, triangles: IntArray) -> IntArray:
    """Return the triangles turned anticlockwise, without those of three nodes on one straight side."""
    a, b, c = (flat[triangles[:, corner]] for corner in range(3))
    area = 0.5 * ((b - a)[:, 0] * (c - a)[:, 1] - (b - a)[:, 1] * (c - a)[:, 0])
    longest = np.max([np.linalg.norm(b - a, axis=1), np.linalg.norm(c - b, axis=1)], axis=0)
    whole = np.abs(area) > 1e-4 * longest**2
    turned = triangles.copy()
    turned[area < 0] = triangles[area < 0][:, ::-1]
    result: IntArray = turned[whole]
    return result
