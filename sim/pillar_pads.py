"""Pads flat on the walls of the pillar between the doors: a squeeze's tips over its inner and outer wall."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from meshes.nearest import nearest_on_triangles
from meshes.pillar import PillarMesh
from sim.model import DoorModel
from sim.plan import PillarSpot, Tool
from sim.problems import PlanError
from sim.ram import pillar_middle
from sim.side import SideModel
from sim.tip import Footprint

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

SAMPLES = 7


def pillar_of(model: DoorModel, field: str) -> tuple[PillarMesh, Ints]:
    """Return the pillar and its triangles' rows in the structure; PlanError naming a field without one."""
    if not isinstance(model, SideModel):
        raise PlanError(
            field,
            "stands on the pillar between the doors, which this car is not built with; "
            "set car.extent to 'side', or choose a place on the door",
        )
    side = model.side
    before = len(side.front.surface.triangles) + len(side.rear.surface.triangles)
    return side.pillar, before + np.arange(len(side.pillar.surface.triangles))


def wall_pad(model: DoorModel, place: PillarSpot, tool: Tool, wall: str) -> Footprint:
    """Return the pad of a tip flat on a pillar's "inner" or "outer" wall, tip width up and down."""
    pillar, rows = pillar_of(model, "on")
    x, z = pillar_middle(pillar, place, "on")
    share = (np.arange(SAMPLES) + 0.5) / SAMPLES - 0.5
    # sought in the wall's own plane, however far inboard it stands there
    grid = np.array([[x + tool.tip_depth_m * a, 0.0, z + tool.tip_width_m * b] for a in share for b in share])
    surface = pillar.surface
    own = np.flatnonzero(surface.triangle_part == surface.part_index(wall))
    row, part, _ = nearest_on_triangles(grid, surface.points * [1.0, 0.0, 1.0], surface.triangles[own])
    corners = model.structure.triangles[rows[own[row]]]
    nodes, slot = np.unique(corners, return_inverse=True)
    weights = np.bincount(slot.ravel(), part.ravel())
    kept = weights > 1.0e-12
    spots = np.einsum("kc,kci->ki", part, model.start.points[corners])
    total = weights[kept] / weights[kept].sum()
    return Footprint(nodes[kept].astype(np.int64), total, 0.0, spots, f"pillar {wall}", "pillar", None)
