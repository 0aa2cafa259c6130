"""What is shown before a push: the tips, their line of action, and which way the metal under them will go."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from sim.record import Aim
from ui.scene import tubes

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]
Solid = tuple[Floats, Ints, Floats]

TIP_LENGTH_M = 0.16
TIP_BACK_M = 0.016
"""Thickness of a tip at its pad's end; grows towards the arm."""
TIP_EDGES = np.array([
    *([k, k + 4] for k in range(8)), [0, 1], [0, 2], [1, 3], [2, 3], [8, 9], [8, 10], [9, 11], [10, 11],
])  # fmt: skip
"""Edges of a tip, over its corners."""
ROD_REACH_M = 0.34
ROD_RADIUS_M = 0.0028
ARROW_M = 0.26
ARROW_RADIUS_M = 0.011
BESIDE_M = 0.10
FLAT = np.array([1.0, 0.0, 1.0])
"""Leaves out what goes across the car."""
ACROSS_SHARE = 0.8
"""Tips further across the car from each other than this share of their distance close on the door."""
LEAST_GAP_M = 0.001
GUESS_PIECES, GUESS_GAP = 3, 0.4
"""The shaft of a guess is broken into pieces; a gap is this share of a piece and its gap."""


def pad_normals(aim: Aim) -> Floats:
    """Return the way each pad faces, shape (2, 3).

    Across the door when the tips close on it from both sides; else along the line between the tips, level
    with the car's side, for the tool lies flat in the gap.
    """
    line = np.asarray(aim.tips[0]) - np.asarray(aim.tips[1])
    if closes_on_the_door(aim):
        return np.array([-_unit(line), _unit(line)])
    line = line * FLAT
    if np.linalg.norm(line) < LEAST_GAP_M:
        line = np.asarray(aim.direction) * FLAT
    if np.linalg.norm(line) < 1e-6:
        line = np.array([-1.0, 0.0, 0.0])
    return np.array([_unit(line), -_unit(line)])


def closes_on_the_door(aim: Aim) -> bool:
    """Return whether the tips stand on both sides of the door and close on it: neither out nor in.

    Tips that open are driven away from each other, however far out one of them has gone.
    """
    line = np.asarray(aim.tips[0]) - np.asarray(aim.tips[1])
    size = float(np.linalg.norm(line))
    closing = float(line @ np.asarray(aim.direction)) < 0.0
    return closing and size > 10.0 * LEAST_GAP_M and abs(float(line[1])) > ACROSS_SHARE * size


def pad_axes(aim: Aim, sign: float) -> tuple[Floats, Floats, float, float]:
    """Return the pad's directions along its width and its depth, and width and depth [m].

    The pad's sample points say how large the tip is; where they are too few, a hand's breadth stands in.
    """
    normal = pad_normals(aim)[0]
    pad = np.asarray(aim.pad, dtype=np.float64).reshape(-1, 3)
    reach = np.array([0.0, -sign, 0.0]) if abs(normal[1]) < ACROSS_SHARE else np.array([0.0, 0.0, -1.0])
    depth_axis = _unit(reach - (reach @ normal) * normal)
    width_axis = np.cross(normal, depth_axis)
    if len(pad) < 3:
        return width_axis, depth_axis, 0.05, 0.03
    return width_axis, depth_axis, float(np.ptp(pad @ width_axis)), float(np.ptp(pad @ depth_axis))


def tip_corners(point: Floats, normal: Floats, depth_axis: Floats, width: float, depth: float) -> Floats:
    """Return the corners of one tip: a wedge whose pad lies on the metal at ``point``, facing ``normal``.

    It reaches in by half the pad's depth and out, away from the car, along the arm: nose, pad's end, arm's
    end, four corners each, shape (12, 3) [m].
    """
    n = _unit(normal)
    d = _unit(depth_axis - (depth_axis @ n) * n)
    w = _unit(np.cross(n, d))
    rows = []
    for along, thick, wide in (
        (0.5 * depth, 0.4 * TIP_BACK_M, 1.0),
        (-0.5 * depth, TIP_BACK_M, 1.0),
        (-0.5 * depth - TIP_LENGTH_M, 3.0 * TIP_BACK_M, 0.8),
    ):
        base = point + along * d
        for side in (-1.0, 1.0):
            for back in (0.0, thick):
                rows.append(base + side * 0.5 * wide * width * w - back * n)
    return np.array(rows)


def tip_solid(corners: Floats) -> Solid:
    """Return one tip from its corners."""
    quads = []
    for k in (0, 4):
        quads += [
            [k, k + 2, k + 6, k + 4],
            [k + 1, k + 5, k + 7, k + 3],
            [k, k + 4, k + 5, k + 1],
            [k + 2, k + 3, k + 7, k + 6],
        ]
    quads += [[0, 1, 3, 2], [8, 10, 11, 9]]
    quad = np.array(quads)
    triangles = np.concatenate((quad[:, [0, 1, 2]], quad[:, [0, 2, 3]]))
    return tubes.flat_shaded(corners, triangles)


def tips(aim: Aim, sign: float, tool: object | None = None) -> tuple[Solid, Floats]:
    """Return both tips at their true width and depth, and their edges, shape (k, 2, 3) [m].

    The tool's own numbers go before the pad's extent.
    """
    _, depth_axis, width, depth = pad_axes(aim, sign)
    if tool is not None:
        width, depth = float(tool.tip_width_m), float(tool.tip_depth_m)
    both = [
        tip_corners(np.asarray(point), np.asarray(normal), depth_axis, width, depth)
        for point, normal in zip(aim.tips, pad_normals(aim), strict=True)
    ]
    edges = np.concatenate([corners[TIP_EDGES] for corners in both])
    return tubes.joined([tip_solid(corners) for corners in both]), edges


def action_rod(aim: Aim) -> Solid:
    """Return the line of action as a thin rod through the tip on the door."""
    centre, unit = np.asarray(aim.tips[0]), _unit(np.asarray(aim.direction))
    line = np.linspace(centre - ROD_REACH_M * unit, centre + ROD_REACH_M * unit, 2)[None]
    points, normals = tubes.tube_points(line, ROD_RADIUS_M, 8, up=(0.31, 0.2, 0.93))
    return points, tubes.tube_triangles(1, 2, 8), normals


def share_arrow(aim: Aim, sign: float, middle: Floats) -> Solid | None:
    """Return the arrow of the way the metal under tip one is expected to go, out or in; None when neither.

    It stands on the door beside the tips, on the way to the door's ``middle`` [m]. Its length is the outboard
    share of that way: straight out or in is longest. The shaft of a guess is broken.
    """
    if aim.basis == "nothing" or aim.way == "along" or closes_on_the_door(aim):
        return None
    foot, length = _foot(aim, sign, middle), _length(aim)
    out = np.array([0.0, sign, 0.0])
    start, way = (foot + 0.01 * out, out) if aim.way == "out" else (foot + (0.01 + length) * out, -out)
    if aim.basis == "guess":
        return tubes.broken_arrow(start, way, length, ARROW_RADIUS_M, GUESS_PIECES, GUESS_GAP)
    return tubes.arrow(start, way, length, ARROW_RADIUS_M)


def word_place(aim: Aim, sign: float, middle: Floats) -> Floats | None:
    """Return where the word for that way stands, shape (3,) [m]; None where nothing is said."""
    if aim.basis == "nothing" or closes_on_the_door(aim):
        return None
    high = _length(aim) + 0.06 if aim.way != "along" else ARROW_M
    return _foot(aim, sign, middle) + np.array([0.0, sign * high, -0.03])


def _foot(aim: Aim, sign: float, middle: Floats) -> Floats:
    foot = np.asarray(aim.tips[0]) + BESIDE_M * _unit((middle - aim.tips[0]) * FLAT)
    foot[1] = max(sign * foot[1], sign * middle[1]) * sign
    return foot


def _length(aim: Aim) -> float:
    return ARROW_M * (0.35 + 0.65 * abs(float(aim.outward_ratio)))


def _unit(vector: Floats) -> Floats:
    return np.asarray(vector, dtype=np.float64) / max(float(np.linalg.norm(vector)), 1e-12)
