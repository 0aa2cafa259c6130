"""A pillar whose inner wall is bowed towards the cabin, as pressed closing parts are, instead of flat."""

from __future__ import annotations

import dataclasses
import math

import numpy as np

from meshes.part import FloatArray, MeshError
from meshes.pillar import PillarMesh

MOST_BOW_M = 0.04
END_M = 0.08
"""Over this length at foot and head the bow runs out into the flat flanges."""


def bowed(mesh: PillarMesh, bow_m: float) -> PillarMesh:
    """Return the pillar with the middle of its inner wall standing inboard of its edges by ``bow_m``.

    Across the wall the bow is a parabola: its radius at the crown is width^2 / 8 bow.

    Raises
    ------
    MeshError
        When the bow is below 0 or above MOST_BOW_M.
    """
    if not (math.isfinite(bow_m) and 0.0 <= bow_m <= MOST_BOW_M):
        raise MeshError("bow_m", f"is {bow_m} m, allowed are 0 to {MOST_BOW_M} m; 0 is a flat wall")
    points = np.array(mesh.surface.points)
    points[:, 1] -= mesh.outboard_sign * bow_m * bow_shares(mesh)
    return dataclasses.replace(mesh, surface=mesh.surface.with_points(points))


def bow_shares(mesh: PillarMesh) -> FloatArray:
    """Return how much of the bow each node takes, 0 .. 1, shape (n,)."""
    surface, cuts = mesh.surface, mesh.cuts
    out = np.zeros(surface.node_count)
    inner = surface.nodes_of(("inner",))
    x, z = surface.points[inner, 0], surface.points[inner, 2]
    low, high = (np.interp(z, cuts[:, 0], cuts[:, k]) for k in (1, 3))
    across = (2.0 * x - low - high) / (high - low)
    end = np.minimum(z - cuts[0, 0], cuts[-1, 0] - z) / END_M
    out[inner] = np.clip(1.0 - across**2, 0.0, 1.0) * np.clip(end, 0.0, 1.0)
    return out
