"""Round bars along polylines, and small solids, as plain arrays that can be moved in place."""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike, NDArray

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]


def tube_triangles(count: int, length: int, sides: int) -> Ints:
    """Return the triangles of ``count`` capped tubes with ``length`` rings of ``sides`` points each."""
    ring = np.arange(sides)
    after = (ring + 1) % sides
    quads = []
    for i in range(length - 1):
        low, high = i * sides, (i + 1) * sides
        quads.append(np.column_stack((low + ring, low + after, high + after)))
        quads.append(np.column_stack((low + ring, high + after, high + ring)))
    fan = np.column_stack((np.zeros(sides - 2, int), np.arange(1, sides - 1), np.arange(2, sides)))
    quads.append(fan[:, ::-1])
    quads.append(fan + (length - 1) * sides)
    one = np.concatenate(quads)
    shift = np.arange(count)[:, None, None] * (length * sides)
    return (one[None] + shift).reshape(-1, 3)


def tube_points(
    lines: ArrayLike, radius_m: ArrayLike, sides: int, up: ArrayLike = (0.0, 1.0, 0.2)
) -> tuple[Floats, Floats]:
    """Return ring points and outward normals of tubes along polylines.

    Parameters
    ----------
    lines : shape (k, length, 3) [m];  radius_m : one, or shape (k, length)
    up : a direction no line should follow; it fixes where each ring starts

    Returns
    -------
    points, normals : shape (k length sides, 3), in the order of `tube_triangles`
    """
    curve = np.asarray(lines, dtype=np.float64)
    reach = np.broadcast_to(np.asarray(radius_m, dtype=np.float64), curve.shape[:2])
    return _rings(curve, np.gradient(curve, axis=1), reach, sides, up)


def _rings(curve: Floats, along: Floats, reach: Floats, sides: int, up: ArrayLike) -> tuple[Floats, Floats]:
    """Return ring points and outward normals round points (k, length, 3) with their tangents and radii."""
    along = along / np.maximum(np.linalg.norm(along, axis=2), 1e-12)[..., None]
    side = np.cross(along, np.asarray(up, dtype=np.float64))
    weak = np.linalg.norm(side, axis=2) < 1e-3
    side[weak] = np.cross(along[weak], [1.0, 0.0, 0.0])
    side /= np.maximum(np.linalg.norm(side, axis=2), 1e-12)[..., None]
    other = np.cross(along, side)
    angle = np.arange(sides) * (2.0 * np.pi / sides)
    out = np.cos(angle)[:, None] * side[..., None, :] + np.sin(angle)[:, None] * other[..., None, :]
    points = curve[..., None, :] + reach[..., None, None] * out
    return points.reshape(-1, 3), out.reshape(-1, 3)


def tubes_of(
    curve: Floats, counts: Ints, radius_m: Floats, sides: int, up: ArrayLike
) -> tuple[Floats, Ints, Floats]:
    """Return points, triangles and normals of tubes of unequal length as one solid.

    Parameters
    ----------
    curve : shape (p, 3) [m], the points of one polyline after the other;  counts : how many each has
    radius_m : shape (p,)
    """
    last = np.cumsum(counts) - 1
    first = last - counts + 1
    along = np.empty_like(curve)
    along[1:-1] = curve[2:] - curve[:-2]
    along[first], along[last] = curve[first + 1] - curve[first], curve[last] - curve[last - 1]
    points, normals = _rings(curve[None], along[None], radius_m[None], sides, up)
    ring = np.arange(sides)
    after = (ring + 1) % sides
    low = sides * np.setdiff1d(np.arange(len(curve)), last)[:, None]
    high = low + sides
    fan = np.column_stack((np.zeros(sides - 2, int), np.arange(1, sides - 1), np.arange(2, sides)))
    quads = [
        np.stack((low + ring, low + after, high + after), axis=2),
        np.stack((low + ring, high + after, high + ring), axis=2),
        sides * first[:, None, None] + fan[:, ::-1],
        sides * last[:, None, None] + fan,
    ]
    return points, np.concatenate([q.reshape(-1, 3) for q in quads]), normals


_BOX = np.array([
    [2, 3, 7], [2, 7, 6], [0, 5, 1], [0, 4, 5], [0, 2, 6], [0, 6, 4],
    [1, 7, 3], [1, 5, 7], [0, 1, 3], [0, 3, 2], [4, 7, 5], [4, 6, 7],
])  # fmt: skip
BOX_EDGES = np.array([
    [0, 1], [2, 3], [4, 5], [6, 7], [0, 2], [1, 3], [4, 6], [5, 7], [0, 4], [1, 5], [2, 6], [3, 7],
])  # fmt: skip
"""Edges of a box with corner number = (first axis) + 2 (second) + 4 (third)."""


def flat_shaded(points: ArrayLike, triangles: Ints) -> tuple[Floats, Ints, Floats]:
    """Return points, triangles and normals with every triangle standing alone, for flat faces."""
    corner = np.asarray(points, dtype=np.float64)[triangles]
    normal = np.cross(corner[:, 1] - corner[:, 0], corner[:, 2] - corner[:, 0])
    normal /= np.maximum(np.linalg.norm(normal, axis=1), 1e-30)[:, None]
    return corner.reshape(-1, 3), np.arange(3 * len(triangles)).reshape(-1, 3), np.repeat(normal, 3, axis=0)


def box_corners(centre: ArrayLike, axes: ArrayLike, half: ArrayLike) -> Floats:
    """Return the eight corners of a box about a centre, its axes the rows of ``axes``, shape (8, 3)."""
    sign = np.array([[(i & 1) * 2 - 1, (i >> 1 & 1) * 2 - 1, (i >> 2 & 1) * 2 - 1] for i in range(8)])
    return np.asarray(centre) + (sign * np.asarray(half)) @ np.asarray(axes)


def box_triangles(count: int = 1) -> Ints:
    """Return the triangles of ``count`` boxes."""
    return (_BOX[None] + 8 * np.arange(count)[:, None, None]).reshape(-1, 3)


def arrow(
    start: ArrayLike, direction: ArrayLike, length_m: float, radius_m: float, sides: int = 16
) -> tuple[Floats, Ints, Floats]:
    """Return points, triangles and normals of an arrow from ``start``, head and all ``length_m`` long."""
    unit = np.asarray(direction, dtype=np.float64)
    unit = unit / max(float(np.linalg.norm(unit)), 1e-12)
    head = min(0.5 * length_m, 5.0 * radius_m)
    at = np.array([0.0, length_m - head, length_m - head, length_m])
    wide = np.array([radius_m, radius_m, 2.4 * radius_m, 0.02 * radius_m])
    lines = np.asarray(start, dtype=np.float64) + at[:, None] * unit
    # the doubled ring makes the head's shoulder; a hair apart, for the tangent to exist
    lines[2] -= 1e-5 * unit
    points, normals = tube_points(lines[None], wide[None], sides)
    return points, tube_triangles(1, 4, sides), normals


def broken_arrow(
    start: ArrayLike, direction: ArrayLike, length_m: float, radius_m: float, pieces: int, gap: float
) -> tuple[Floats, Ints, Floats]:
    """Return an arrow like `arrow`'s with its shaft in pieces; a gap is a share of a piece and its gap."""
    unit = np.asarray(direction, dtype=np.float64)
    unit = unit / max(float(np.linalg.norm(unit)), 1e-12)
    begin = np.asarray(start, dtype=np.float64)
    head = min(0.5 * length_m, 5.0 * radius_m)
    step = (length_m - head) / pieces
    at = np.array([length_m - head, length_m - head + 1e-5, length_m])
    wide = radius_m * np.array([0.02, 2.4, 0.02])
    points, normals = tube_points((begin + at[:, None] * unit)[None], wide[None], 16)
    solids = [(points, tube_triangles(1, 3, 16), normals)]
    for piece in range(pieces):
        ends = begin + np.array([piece * step, (piece + 1.0 - gap) * step])[:, None] * unit
        points, normals = tube_points(ends[None], radius_m, 16)
        solids.append((points, tube_triangles(1, 2, 16), normals))
    return joined(solids)


def ball(centre: ArrayLike, radius_m: float, rows: int = 8, sides: int = 14) -> tuple[Floats, Ints, Floats]:
    """Return points, triangles and normals of a ball."""
    c = np.asarray(centre, dtype=np.float64)
    return capsule(c, c, radius_m, rows, sides)


def capsule(
    start: ArrayLike, end: ArrayLike, radius_m: float, rows: int = 8, sides: int = 20
) -> tuple[Floats, Ints, Floats]:
    """Return points, triangles and normals of a capsule."""
    a, b = np.asarray(start, dtype=np.float64), np.asarray(end, dtype=np.float64)
    axis = b - a if np.linalg.norm(b - a) > 1e-9 else np.array([0.0, 0.0, 1.0])
    axis = axis / np.linalg.norm(axis)
    helper = np.eye(3)[int(np.argmin(np.abs(axis)))]
    u = np.cross(axis, helper)
    u /= np.linalg.norm(u)
    v = np.cross(axis, u)
    tilt = np.concatenate((np.linspace(-np.pi / 2, 0, rows), np.linspace(0, np.pi / 2, rows)))
    base = np.repeat(np.array([a, b]), rows, axis=0)
    turn = np.arange(sides) * (2 * np.pi / sides)
    ring = np.cos(turn)[:, None] * u + np.sin(turn)[:, None] * v
    normals = np.cos(tilt)[:, None, None] * ring + np.sin(tilt)[:, None, None] * axis
    points = base[:, None] + radius_m * normals
    triangles = tube_triangles(1, 2 * rows, sides)
    return points.reshape(-1, 3), triangles, normals.reshape(-1, 3)


def joined(solids: list[tuple[Floats, Ints, Floats]]) -> tuple[Floats, Ints, Floats]:
    """Return several solids as one."""
    shift = np.cumsum([0, *[len(s[0]) for s in solids[:-1]]])
    return (
        np.concatenate([s[0] for s in solids]),
        np.concatenate([s[1] + k for s, k in zip(solids, shift, strict=True)]),
        np.concatenate([s[2] for s in solids]),
    )
