"""The rigid body of a crush as a drawn solid: all points a rounding away from its core."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from sim.rigid import Barrier

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

ROUND, RISE = 48, 6
"""Points round it, and from its side to either end."""


def barrier_solid(barrier: Barrier, travel_m: float) -> tuple[Floats, Ints, Floats]:
    """Return points, triangles and normals of a barrier at a travel along its line [m]."""
    turn = (np.arange(ROUND) + 0.5) * (2.0 * np.pi / ROUND)
    half = np.linspace(0.0, 0.5 * np.pi, RISE)
    lift = np.concatenate([-half[::-1], half])
    level = np.stack([np.cos(turn), np.sin(turn), np.zeros(ROUND)], axis=1)
    normal = np.cos(lift)[:, None, None] * level + np.sin(lift)[:, None, None] * np.array([0.0, 0.0, 1.0])
    out = np.sign(level) if barrier.is_box else level
    reach = np.array([barrier.core[0], barrier.core[1] if barrier.is_box else barrier.core[0], 0.0])
    end = np.repeat([-1.0, 1.0], RISE)[:, None, None] * np.array([0.0, 0.0, barrier.core[2]])
    own = (out * reach + end + barrier.rounding_m * normal).reshape(-1, 3)
    tips = np.array([[0.0, 0.0, s * (barrier.core[2] + barrier.rounding_m)] for s in (-1.0, 1.0)])
    own, normals = np.concatenate([own, tips]), np.concatenate([normal.reshape(-1, 3), np.sign(tips)])
    frame = barrier.frame
    return barrier.at(travel_m) + own @ frame, _triangles(len(lift)), normals @ frame


def _triangles(rings: int) -> Ints:
    here = np.arange(ROUND)
    after = (here + 1) % ROUND
    out = []
    for k in range(rings - 1):
        low, high = k * ROUND, (k + 1) * ROUND
        out.append(np.column_stack((low + here, low + after, high + after)))
        out.append(np.column_stack((low + here, high + after, high + here)))
    last, foot = (rings - 1) * ROUND, rings * ROUND
    out.append(np.column_stack((np.full(ROUND, foot), after, here)))
    out.append(np.column_stack((np.full(ROUND, foot + 1), last + here, last + after)))
    return np.concatenate(out)
