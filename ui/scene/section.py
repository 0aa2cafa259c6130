"""The faces of a cut by a plane square to an axis: sheets as strips of their thickness, solids filled."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]


def crossing(points: Floats, triangles: Ints, place_m: float, axis: int = 2) -> Ints:
    """Return which triangles meet the plane at a place [m] on an axis, as indices."""
    over = (points[:, axis] > place_m)[triangles]
    first, second, third = over.T
    return np.flatnonzero((first != second) | (second != third))


def cut_segments(points: Floats, triangles: Ints, place_m: float, axis: int = 2) -> Floats:
    """Return where triangles meet the plane at a place on an axis, as segments, shape (k, 2, 3) [m]."""
    return segments_of(points[triangles[crossing(points, triangles, place_m, axis)]], place_m, axis)


def segments_of(corner: Floats, place_m: float, axis: int) -> Floats:
    """Return where triangles that meet the plane do so, from their corners, shape (k, 3, 3) [m]."""
    over = corner[..., axis] > place_m
    alone = np.where(over.sum(axis=1) == 1, np.argmax(over, axis=1), np.argmin(over, axis=1))
    rows = np.arange(len(corner))
    apex = corner[rows, alone]
    ends = []
    for turn in (1, 2):
        other = corner[rows, (alone + turn) % 3]
        share = (place_m - apex[:, axis]) / (other[:, axis] - apex[:, axis])
        ends.append(apex + share[:, None] * (other - apex))
    return np.stack(ends, axis=1)


def cut_faces(solids: list[tuple[Floats, Ints]], place_m: float, axis: int = 2) -> tuple[Floats, Ints]:
    """Return the filled cuts through convex solids: points [m] and triangles."""
    return filled([cut_segments(place, faces, place_m, axis) for place, faces in solids], axis)


def filled(cuts: list[Floats], axis: int) -> tuple[Floats, Ints]:
    """Return the same from each solid's cut segments, shape (k, 2, 3) [m]."""
    points: list[Floats] = []
    triangles: list[Ints] = []
    shift = 0
    first, second = (k for k in range(3) if k != axis)
    for segments in cuts:
        if len(segments) < 3:
            continue
        flat = segments.reshape(-1, 3)
        centre = flat.mean(axis=0)
        turn = np.arctan2(flat[:, second] - centre[second], flat[:, first] - centre[first])
        ring = np.vstack((centre, flat[np.argsort(turn, kind="stable")]))
        count = len(flat)
        around = 1 + np.arange(count)
        triangles.append(np.column_stack((np.zeros(count, int), around, 1 + around % count)) + shift)
        points.append(ring)
        shift += count + 1
    if not points:
        return np.zeros((0, 3)), np.zeros((0, 3), dtype=np.int64)
    return np.concatenate(points), np.concatenate(triangles)


def strips(segments: Floats, thickness_m: Floats | float, axis: int) -> tuple[Floats, Ints]:
    """Return sheets' cut faces: each segment as a strip of its thickness in the plane, points and triangles.

    Parameters
    ----------
    segments : shape (k, 2, 3) [m];  thickness_m : one, or shape (k,)
    """
    count = len(segments)
    along = segments[:, 1] - segments[:, 0]
    size = np.maximum(np.linalg.norm(along, axis=1), 1e-12)[:, None]
    square = np.cross(along / size, np.eye(3)[axis])
    half = 0.5 * np.broadcast_to(np.asarray(thickness_m, dtype=np.float64), (count,))[:, None]
    corner = np.stack(
        (
            segments[:, 0] - half * square,
            segments[:, 1] - half * square,
            segments[:, 1] + half * square,
            segments[:, 0] + half * square,
        ),
        axis=1,
    )
    first = 4 * np.arange(count)[:, None]
    triangles = np.concatenate((first + np.array([0, 1, 2]), first + np.array([0, 2, 3])))
    return corner.reshape(-1, 3), triangles.astype(np.int64)
