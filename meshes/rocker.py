"""The rocker under both doors as a box of sheet with plates inside, from the front to the rear pillar.

An upright web stands where the middle pillar's inner wall comes down, as the flanges do that join a rocker's
outer and inner half. Under that pillar's front and rear wall a bulkhead closes either cell, as rockers are
stiffened there (common practice, no source): without them the foot turns the section out of its shape.
Triangles are near-equilateral round the foot and drawn out along the car beyond it. The ends lie under front
and rear pillar, which hold them. Floor and cross members are left out: they would hold it against going
inboard and against twisting.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

import numpy as np

from meshes.box import (
    WALLS,
    BoxMesh,
    Cut,
    Walls,
    box_walls,
    cut_rows,
    edge_chains,
    ring_sets,
    row_shares,
    strip,
)
from meshes.lattice import ROW_RATIO
from meshes.part import FloatArray, IntArray, MeshError, Surface
from meshes.rail import FRONT_END, REAR_END
from meshes.side import member_cuts
from meshes.side_shape import SideShape

SPACING_M = 0.055
"""Wanted width of a triangle: two to three columns on a wall of 130 to 150 mm."""
FAR_STRETCH = 2.0
"""How much longer the triangles are along the car away from the foot than near-equilateral ones."""
BESIDE_FOOT_M = 0.10
"""How far beyond the foot's flanges they are near-equilateral."""
WEB, BULKHEAD = "web", "bulkhead"
PARTS = (*WALLS[0], WEB, BULKHEAD)
ON = "_on_"
"""A chain "web_on_upper" is the edge of the web that is welded to the upper wall, and so on."""


def rocker_of_side(
    shape: SideShape, most: int = 4000, spacing_m: float = SPACING_M, *, bulkheads: bool = True
) -> BoxMesh:
    """Return the rocker of a right-hand side, in the front door's axes.

    Parameters
    ----------
    most : nodes it may have;  bulkheads : whether it has them

    Raises
    ------
    MeshError
        When it has more.
    """
    members = member_cuts(shape)
    _, cuts = members["rocker"]
    held = members["front_pillar"][1][0].high[0], members["rear_pillar"][1][0].low[0]
    pillar, x = shape.pillar, float(shape.pillar_shift[0])
    beyond = max(0.5 * (pillar.foot_flare_m - pillar.foot_width_m), pillar.flange_m) + BESIDE_FOOT_M
    fine = x - beyond, x + pillar.foot_width_m + beyond
    walls = (x, x + pillar.foot_width_m) if bulkheads else ()
    mesh = rocker_box(cuts, held, fine, (-pillar.foot_depth_m, *walls), spacing_m)
    if mesh.surface.node_count > most:
        raise MeshError("rocker", f"needs {mesh.surface.node_count} nodes of its own, {most} are left")
    return mesh


def rocker_box(
    cuts: Sequence[Cut],
    held_m: tuple[float, float],
    fine_m: tuple[float, float],
    inside_m: Sequence[float],
    spacing_m: float = SPACING_M,
) -> BoxMesh:
    """Return a prismatic rocker with what stands inside it.

    Parameters
    ----------
    cuts : both ends;  held_m : where the front pillar ends and the rear one begins along the car [m]
    fine_m : from where to where the triangles are near-equilateral [m]
    inside_m : where the web stands inboard (its y), then where bulkheads stand along the car (their x)
    """
    rows = cut_rows(cuts)
    start, inner, low, outer, high = (float(value) for value in rows[0])
    # with one ring at either end, to learn how many columns the walls have
    ends = box_walls(rows, 0, spacing_m, (), stretch_ratio=1.0e9)
    row_m = ROW_RATIO * 2.0 * (outer - inner + high - low) / sum(len(wall[0]) - 1 for wall in ends.rows)
    rings = _rings((start, held_m[0], *fine_m, held_m[1], float(rows[-1, 0])), row_m)
    made = box_walls(rows, 0, spacing_m, rings, stretch_ratio=1.0e9)
    plates = _Plates(made)
    web, *walls = inside_m
    plates.add_web(web, low, high)
    for number, x in enumerate(walls):
        plates.add_bulkhead(f"outer{number}", x, (outer, web), (low, high), spacing_m)
        plates.add_bulkhead(f"inner{number}", x, (web, inner), (low, high), spacing_m)
    surface: Surface = plates.surface()
    x_m = surface.points[:, 0]
    surface = surface.with_nodes(FRONT_END, np.flatnonzero(x_m <= held_m[0] + 1e-9))
    surface = surface.with_nodes(REAR_END, np.flatnonzero(x_m >= held_m[1] - 1e-9))
    return BoxMesh(surface, 0, rows)


def _rings(marks: tuple[float, ...], row_m: float) -> list[float]:
    """Return the places of the rings: near-equilateral in the middle stretch, drawn out in the others."""
    rings = [marks[0]]
    for number, (low, high) in enumerate(pairwise(marks)):
        stretch = 1.0 if number == len(marks) // 2 - 1 else FAR_STRETCH
        count = max(1, round((high - low) / (stretch * row_m)))
        rings += [low + (high - low) * k / count for k in range(1, count + 1)]
    return rings


class _Plates:
    """The walls of a rocker and the plates inside, with nodes of their own, as they are put together."""

    def __init__(self, made: Walls) -> None:
        self.made = made
        self.points, self.triangles = [made.points], [made.triangles]
        self.part: list[IntArray] = [made.wall]
        self.chains: dict[str, IntArray] = dict(edge_chains(made, 0))
        self.count = len(made.points)

    def add_web(self, y_m: float, low_m: float, high_m: float) -> None:
        """Add the upright web, a row of nodes at every ring."""
        start, way = np.array([0.0, y_m, high_m]), np.array([0.0, 0.0, low_m - high_m])
        rows = self._add(start, way, 2, [np.array([x, 0.0, 0.0]) for x in self.made.levels], WEB)
        self._edges(WEB, upper=[row[0] for row in rows], lower=[row[-1] for row in rows])

    def add_bulkhead(
        self,
        name: str,
        x_m: float,
        across_m: tuple[float, float],
        up_m: tuple[float, float],
        spacing_m: float,
    ) -> None:
        """Add a plate across a cell, from its outboard wall to its inboard one and from below upward."""
        (near, far), (low, high) = across_m, up_m
        columns = max(1, round((near - far) / spacing_m))
        count = max(2, round((high - low) / (ROW_RATIO * (near - far) / columns)))
        up = [np.array([0.0, 0.0, (high - low) * k / count]) for k in range(count + 1)]
        start, way = np.array([x_m, near, low]), np.array([0.0, far - near, 0.0])
        rows = self._add(start, way, columns, up, BULKHEAD)
        outboard, inboard = ("outer", WEB) if name.startswith("outer") else (WEB, "inner")
        sides = {outboard: [row[0] for row in rows], inboard: [row[-1] for row in rows]}
        self._edges(f"{name}_{BULKHEAD}", lower=rows[0], upper=rows[-1], **sides)

    def _add(
        self, start: FloatArray, way: FloatArray, columns: int, along: Sequence[FloatArray], part: str
    ) -> list[IntArray]:
        """Add a plate of rows of nodes over ``way``, shifted by each of ``along``; return the rows' ids."""
        rows = []
        for index, shift in enumerate(along):
            share = row_shares(columns, index % 2 == 1)[:, None]
            self.points.append(start + shift + share * way)
            rows.append(self.count + np.arange(len(share)))
            self.count += len(share)
        for index, (below, above) in enumerate(pairwise(rows)):
            found = strip(below, above, even_below=index % 2 == 0)
            self.triangles.append(found)
            self.part.append(np.full(len(found), PARTS.index(part)))
        return rows

    def _edges(self, plate: str, **edges: Sequence[int] | IntArray) -> None:
        self.chains.update({f"{plate}{ON}{wall}": np.asarray(ids) for wall, ids in edges.items()})

    def surface(self) -> Surface:
        """Return all of it."""
        points, triangles = np.concatenate(self.points), np.concatenate(self.triangles)
        part = np.concatenate(self.part)
        return Surface(points, triangles, part, PARTS, ring_sets(self.made), self.chains)
