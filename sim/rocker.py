"""The rocker as a structure that yields: a box of sheet with a web, held under the front and the rear pillar.

Where a car's rocker has a wall thickness it is sheet as the rail is: it bends, twists, dents under a tip and
buckles by the sheet's own law. The middle pillar's foot hangs on it by its spots, outer lap on the outer
wall, inner lap on the web, the other two flanges on top, so a foot can be torn off, and pulled or turned with
what it stands on. Web and bulkheads are welded to the walls by spots of the rocker's sheet.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

import numpy as np
from numpy.typing import NDArray

from meshes.box import BoxMesh
from meshes.flanges import WeldPoints
from meshes.pillar import PillarMesh
from meshes.rail import FRONT_END, REAR_END
from meshes.rocker import ON, WEB
from sim import materials
from sim.bond import bond_law
from sim.car import Car
from sim.carcheck import WELD_RISE_M
from sim.pillar import FACE_N_PER_M, PULL_OUT_M, PillarBuild, spot_strength
from sim.rail import Rail, end_on_member, spots_on, steel
from sim.structure import Bonds, Section, Structure

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

GROUP = "folding rocker"
PLATE_KIND = "rocker weld"
PLATE_PITCH_M = 0.035  # spots along the edges of web and bulkheads: 30-60 mm, common practice, no source
STIFFNESS, PRESSURE = 0, 5  # columns of a law row (`sim.bond.bond_law`)
INTO = {
    "upper": (0.0, 0.0, -1.0),
    "lower": (0.0, 0.0, 1.0),
    "outer": (0.0, -1.0, 0.0),
    "inner": (0.0, 1.0, 0.0),
}
OFF_WEB = {"outer": (0.0, 1.0, 0.0), "inner": (0.0, -1.0, 0.0)}
"""From a wall into the rocker, and from the web into its outer and inner cell, on the right-hand side."""
WALL_OF = {"outer": "outer", "inner": "web", "front": "upper", "rear": "upper"}
"""The rocker's wall that each flange of the pillar's foot lies on."""


@dataclass(frozen=True, eq=False)
class Rocker(Rail):
    """The rocker of a model: its box, and where its nodes and triangles begin; tips stand on top of it."""

    bears: ClassVar[str] = "upper"


def yields(car: Car) -> bool:
    """Tell whether a car's rocker is sheet that gives; else it stands still."""
    return car.extent == "side" and car.whole_side.rocker_wall_m > 0.0


def rocker_structure(car: Car, mesh: BoxMesh, outboard_sign: float) -> Structure:
    """Return the rocker of a car, held where it lies under front and rear pillar."""
    whole, surface = car.whole_side, mesh.surface
    fixed = np.zeros(surface.points.shape, bool)
    for end in (FRONT_END, REAR_END):
        fixed[surface.nodes[end]] = True
    wall = Section("wall", whole.rocker_wall_m, steel(whole.rocker_yield_pa), GROUP)
    points = np.array(surface.points, dtype=float)
    return Structure(
        points,
        surface.triangles,
        np.zeros(len(surface.triangles), np.int64),
        (wall,),
        bonds=_plates_welded(points, mesh, wall, outboard_sign),
        outboard_sign=outboard_sign,
        fixed=fixed,
        names=dict(surface.nodes),
    )


def foot_on_rocker(
    points: Floats, pillar: tuple[PillarMesh, int], rocker: tuple[BoxMesh, int], build: PillarBuild
) -> Bonds:
    """Return the spots and the pressure between the pillar's foot and the rocker.

    Parameters
    ----------
    points : all nodes, shape (n, 3) [m];  pillar, rocker : mesh and first node;  build : of the pillar
    """
    return end_on_member(points, pillar, rocker, build, ("foot", WALL_OF))


def _plates_welded(points: Floats, mesh: BoxMesh, wall: Section, sign: float) -> Bonds:
    """Return what welds the edges of web and bulkheads to the walls: one bond per node, of as many spots."""
    tensile = materials.TENSILE_OVER_YIELD * wall.metal.yield_pa
    peel, shear = spot_strength(wall.thickness_m, tensile)
    law = bond_law(
        strength=peel,
        energy=0.5 * peel * PULL_OUT_M,
        shear_ratio=shear / peel,
        rise_m=WELD_RISE_M,
        pressure=FACE_N_PER_M,
    )
    parts = []
    for name, nodes in mesh.surface.chains.items():
        plate, on, under = name.partition(ON)
        if not on:
            continue
        away = INTO[under] if under != WEB else OFF_WEB[plate[:5]]
        spots = WeldPoints(
            points[nodes],
            np.column_stack([nodes, nodes, nodes]),
            np.tile([1.0, 0.0, 0.0], (len(nodes), 1)),
            np.tile(np.array(away) * [1.0, sign, 1.0], (len(nodes), 1)),
        )
        bonds = spots_on(points, spots, 0, mesh.surface.triangles_of(under), law, PLATE_KIND)
        step = np.linalg.norm(np.diff(points[nodes], axis=0), axis=1)
        many = 0.5 * (np.append(step, 0.0) + np.append(0.0, step)) / PLATE_PITCH_M
        for column in (STIFFNESS, PRESSURE):
            bonds.law[:, column] *= many
        parts.append(bonds)
    return Bonds.join(parts)
