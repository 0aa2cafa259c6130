"""What stands round the door and never moves: body stub, ground with its grid, occupant."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from meshes.body import BodyStub
from meshes.occupant import Capsule
from ui.scene import tubes

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]
Solid = tuple[Floats, Ints, Floats]

GRID_M = 0.10
GROUND_BELOW_SILL_M = 0.27
"""Assumed height of the sill edge over the ground; for the eye alone."""
GRID_FROM, GRID_TO = np.array([-0.9, -1.1]), np.array([2.0, 1.5])
FADE_M = 1.55
BODY_SHARP_RAD = np.radians(20.0)


def body_solid(body: BodyStub) -> Solid:
    """Return the body's prisms as one flat-shaded solid."""
    solids = [tubes.flat_shaded(surface.points, surface.triangles) for surface in body.surfaces.values()]
    return tubes.joined(solids)


def body_edges(body: BodyStub) -> Floats:
    """Return the prisms' edges as segments, shape (k, 2, 3) [m]; the diagonals of flat faces are left out."""
    segments = []
    for surface in body.surfaces.values():
        if len(surface.points) == 8 and len(surface.triangles) == 12:
            segments.append(surface.points[tubes.BOX_EDGES])
            continue
        ends, count = np.unique(np.sort(surface.triangles[:, [[0, 1], [1, 2], [2, 0]]].reshape(-1, 2), axis=1),
                                axis=0, return_counts=True)
        segments.append(surface.points[ends[count == 1]])
    return np.concatenate(segments)


def grid_lines(sign: float) -> Floats:
    """Return the ground's grid as segments of one step each, shape (k, 2, 3) [m]; ``sign`` is outboard."""
    z = -GROUND_BELOW_SILL_M
    xs = np.arange(GRID_FROM[0], GRID_TO[0] + 1e-9, GRID_M)
    ys = np.arange(GRID_FROM[1], GRID_TO[1] + 1e-9, GRID_M)
    step = 5
    runs = []
    for x in xs:
        for first in range(0, len(ys) - 1, step):
            last = min(first + step, len(ys) - 1)
            runs.append([[x, sign * ys[first], z], [x, sign * ys[last], z]])
    for y in ys:
        for first in range(0, len(xs) - 1, step):
            last = min(first + step, len(xs) - 1)
            runs.append([[xs[first], sign * y, z], [xs[last], sign * y, z]])
    return np.array(runs)


def grid_colours(points: Floats, sign: float, ground: Floats, line: Floats) -> Floats:
    """Return the colours of grid points (n, 3), which fade into the ground away from the door, (n, 3)."""
    centre = np.array([0.5, sign * 0.15])
    away = np.linalg.norm(points[:, :2] - centre, axis=1)
    share = np.clip(1.15 - away / FADE_M, 0.0, 1.0)[:, None]
    return share * line + (1.0 - share) * ground


def shadow_patch(sign: float) -> tuple[Floats, Ints, Floats]:
    """Return a soft shadow under the sill: points, triangles and darkness 0 .. 1 of each point."""
    z = -GROUND_BELOW_SILL_M + 0.001
    xs = np.linspace(-0.45, 1.45, 20)
    ys = np.linspace(-0.75, 0.45, 16)
    grid = np.array([[x, sign * y, z] for y in ys for x in xs])
    quad = np.array([[r * 20 + c, r * 20 + c + 1, r * 20 + c + 21, r * 20 + c + 20]
                     for r in range(15) for c in range(19)])
    triangles = np.concatenate((quad[:, [0, 1, 2]], quad[:, [0, 2, 3]]))
    u = np.clip(1 - np.abs(grid[:, 0] - 0.5) / 0.95, 0, 1)
    v = np.clip(1 - np.abs(sign * grid[:, 1] + 0.15) / 0.6, 0, 1)
    dark = (u * (2 - u)) * v * v * (3 - 2 * v)
    return grid, triangles, dark


def occupant_solid(capsules: tuple[Capsule, ...]) -> Solid:
    """Return the occupant's capsules as one smooth solid."""
    return tubes.joined([tubes.capsule(c.start, c.end, c.radius_m) for c in capsules])
