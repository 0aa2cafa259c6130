"""The faces of a cut at one height: sheets as thick lines, what is solid filled."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]


def cut_segments(points: Floats, triangles: Ints, height_m: float) -> Floats:
    """Return where triangles meet the plane z = height, as segments, shape (k, 2, 3) [m]."""
    corner = points[triangles]
    over = corner[..., 2] > height_m
    crossed = over.any(axis=1) & ~over.all(axis=1)
    corner, over = corner[crossed], over[crossed]
    alone = np.where(over.sum(axis=1) == 1, np.argmax(over, axis=1), np.argmin(over, axis=1))
    rows = np.arange(len(corner))
    apex = corner[rows, alone]
    ends = []
    for turn in (1, 2):
        other = corner[rows, (alone + turn) % 3]
        share = (height_m - apex[:, 2]) / (other[:, 2] - apex[:, 2])
        ends.append(apex + share[:, None] * (other - apex))
    return np.stack(ends, axis=1)


def cut_faces(solids: list[tuple[Floats, Ints]], height_m: float) -> tuple[Floats, Ints]:
    """Return the filled cuts through convex solids: points [m] and triangles."""
    points: list[Floats] = []
    triangles: list[Ints] = []
    shift = 0
    for place, faces in solids:
        segments = cut_segments(place, faces, height_m)
        if len(segments) < 3:
            continue
        flat = segments.reshape(-1, 3)
        centre = flat.mean(axis=0)
        order = np.argsort(np.arctan2(flat[:, 1] - centre[1], flat[:, 0] - centre[0]), kind="stable")
        ring = np.vstack((centre, flat[order]))
        count = len(flat)
        around = 1 + np.arange(count)
        triangles.append(np.column_stack((np.zeros(count, int), around, 1 + around % count)) + shift)
        points.append(ring)
        shift += count + 1
    if not points:
        return np.zeros((0, 3)), np.zeros((0, 3), dtype=np.int64)
    return np.concatenate(points), np.concatenate(triangles)
