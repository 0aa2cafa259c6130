"""The roof rail as a box of sheet: over one door, or from the front to the rear pillar over both.

Its ends lie on the pillars there, which hold them; between those ends it is free to bend, to twist and to
buckle. Roof panel and cross members are left out: they would hold it against going inboard.
"""

from __future__ import annotations

import dataclasses

import numpy as np

from meshes.body import BodyStub
from meshes.box import BoxMesh, Cut, build_box
from meshes.part import MeshError, Surface
from meshes.side import member_cuts
from meshes.side_shape import SideShape

SPACING_M = 0.03
"""Wanted width of a triangle: two columns on each wall of a rail 50 by 60 mm."""
STRETCHES = (1.0, 1.25, 1.5, 2.0)
"""How much longer the triangles may be along the rail than near-equilateral ones, where nodes are scarce."""
FRONT_END, REAR_END = "front_end", "rear_end"
"""Node sets of the rail's stretches on the front and on the rear pillar."""


def rail_over_door(body: BodyStub) -> BoxMesh:
    """Return the rail between the pillars beside a door, in the door's axes; a left-hand one mirrored."""
    if body.outboard_sign < 0.0:
        return rail_over_door(body.mirrored()).mirrored()
    points = body.surfaces["roof_rail"].points
    low, high = points.min(axis=0), points.max(axis=0)
    held = body.shape.upper_width_m
    cuts = [Cut(float(x), (low[1], low[2]), (high[1], high[2])) for x in (low[0], high[0])]
    return _built(cuts, float(low[0]) + held, float(high[0]) - held)


def rail_of_side(shape: SideShape, most: int = 4000, spacing_m: float = SPACING_M) -> BoxMesh:
    """Return the rail from front to rear pillar of a right-hand side, in the front door's axes.

    Parameters
    ----------
    most : nodes it may have: its triangles are drawn out along it as far as that asks for

    Raises
    ------
    MeshError
        When it does not fit with fewer.
    """
    members = member_cuts(shape)
    _, cuts = members["roof_rail"]
    front, rear = members["front_pillar"][1][-1], members["rear_pillar"][1][-1]
    for stretch in STRETCHES:
        made = _built(cuts, front.high[0], rear.low[0], spacing_m, stretch)
        if made.surface.node_count <= most:
            return made
    raise MeshError("spacing_m", f"leaves the roof rail {most} nodes, too few; use a larger one")


def _built(
    cuts: list[Cut], front_m: float, rear_m: float, spacing_m: float = SPACING_M, stretch: float = 1.0
) -> BoxMesh:
    box = build_box(cuts, 0, spacing_m, (front_m, rear_m), stretch)
    x = box.surface.points[:, 0]
    surface: Surface = box.surface.with_nodes(FRONT_END, np.flatnonzero(x <= front_m + 1e-9))
    surface = surface.with_nodes(REAR_END, np.flatnonzero(x >= rear_m - 1e-9))
    return dataclasses.replace(box, surface=surface)
