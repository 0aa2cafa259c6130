"""Arrows on the skin that tell its outboard motion at true length: what a grey print needs instead of hue."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from ui.scene import tubes
from ui.scene.drawn import Drawn, Shading

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

APART_M = 0.15
LEAST_M = 0.006
"""Motions smaller than this have no arrow."""
RADIUS_M = 0.0026
HEAD_RADIUS_M = 0.0075
HEAD_M = 0.014
SIDES = 6


def spread_out(points: Floats, apart_m: float) -> Ints:
    """Return indices of points no two of which stand nearer than ``apart_m``, farthest first."""
    chosen = [int(np.argmin(np.linalg.norm(points - points.mean(axis=0), axis=1)))]
    away = np.linalg.norm(points - points[chosen[0]], axis=1)
    while away.max() > apart_m:
        chosen.append(int(np.argmax(away)))
        away = np.minimum(away, np.linalg.norm(points - points[chosen[-1]], axis=1))
    return np.array(chosen, dtype=np.int64)


class MotionArrows:
    """Arrows at fixed nodes of the skin; out: away from the metal, in: on to it."""

    def __init__(self, rest: Floats, nodes: Ints, sign: float) -> None:
        self.nodes = nodes[spread_out(rest[nodes], APART_M)]
        self.rest = rest[self.nodes]
        self.sign = sign
        count = len(self.nodes)
        self.drawn = Drawn(
            "motion",
            np.zeros((count * 4 * SIDES, 3)),
            triangles=tubes.tube_triangles(count, 4, SIDES),
            shading=Shading.PLAIN,
        )
        self.drawn.actor.PickableOff()
        self.drawn.show(False)

    def move(self, points: Floats) -> None:
        """Put the arrows on the skin where it is now."""
        now = points[self.nodes]
        outboard = self.sign * (now - self.rest)[:, 1]
        length = np.abs(outboard)
        head = np.minimum(HEAD_M, 0.6 * length)
        out = np.array([0.0, self.sign, 0.0])
        way = np.where(outboard[:, None] > 0, out, -out)
        tail = np.where(outboard[:, None] > 0, now + 0.004 * out, now + (length[:, None] + 0.004) * out)
        at = np.stack((np.zeros_like(length), length - head, length - head + 1e-5, length), axis=1)
        lines = tail[:, None] + at[..., None] * way[:, None]
        shown = (length > LEAST_M)[:, None]
        wide = np.array([RADIUS_M, RADIUS_M, HEAD_RADIUS_M, 1e-5]) * shown
        self.drawn.move(tubes.tube_points(lines, wide, SIDES, up=(0.2, 0.1, 1.0))[0])
