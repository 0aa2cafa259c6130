"""The roof rail as a structure that yields: a box of sheet held at the front and at the rear pillar.

Where a car's rail has a wall thickness it is sheet like the pillar's: it bends, twists, dents under a tip and
buckles by the sheet's own law, and no law of its own is needed.  The middle pillar's head hangs on it by the
same spots, here from flange to wall; the flanges press on the walls and never pull.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import ClassVar

import numpy as np
from numpy.typing import NDArray

from meshes.box import BoxMesh
from meshes.flanges import WeldPoints
from meshes.nearest import nearest_on_triangles
from meshes.pillar import PillarMesh
from meshes.rail import FRONT_END, REAR_END
from sim import materials
from sim.bond import OFFSET, touch_law
from sim.car import Car
from sim.materials import Metal
from sim.pillar import FACE_N_PER_M, SLID_OFF_M, TOUCH_KIND, WELD_KIND, End, PillarBuild, spot_law
from sim.structure import Bonds, Section, Structure

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

GROUP = "folding rail"
SEAT_SAMPLES = 5
WALL_OF = {"outer": "outer", "inner": "inner", "front": "lower", "rear": "lower"}
"""The rail's wall that each flange of the pillar's head lies on."""


@dataclass(frozen=True, eq=False)
class Rail:
    """The rail of a model.

    mesh : its box, in the front door's axes;  first, first_triangle : where its nodes and its triangles begin
    bears : its wall that a tip stands on
    """

    mesh: BoxMesh
    first: int
    first_triangle: int
    bears: ClassVar[str] = "lower"

    @property
    def count(self) -> int:
        """How many nodes it has."""
        return self.mesh.surface.node_count

    @property
    def nodes(self) -> Ints:
        """Its nodes, as the structure counts them."""
        return self.first + np.arange(self.count)

    @property
    def triangles(self) -> Ints:
        """Its triangles at rest, shape (m, 3)."""
        triangles: Ints = self.mesh.surface.triangles + self.first
        return triangles

    def seat(self, points: Floats, point: Floats, tip_m: tuple[float, float]) -> tuple[Ints, Floats]:
        """Return nodes and weights, summing to one, of a tip on the wall that bears it.

        Parameters
        ----------
        points : where the metal stands, shape (n, 3);  point : the tip's middle, shape (3,) [m]
        tip_m : width (along the rail) and depth of the tip
        """
        share = (np.arange(SEAT_SAMPLES) + 0.5) / SEAT_SAMPLES - 0.5
        spots = np.tile(np.asarray(point, dtype=float), (SEAT_SAMPLES, SEAT_SAMPLES, 1))
        spots[:, :, 0] += tip_m[0] * share[:, None]
        spots[:, :, 1] += tip_m[1] * share[None, :]
        under = self.mesh.surface.triangles_of(self.bears) + self.first
        triangle, weights, _ = nearest_on_triangles(spots.reshape(-1, 3), points, under)
        nodes, slot = np.unique(under[triangle], return_inverse=True)
        total = np.bincount(slot.ravel(), weights.ravel())
        kept = total > 1.0e-12
        return nodes[kept], total[kept] / total[kept].sum()


def yields(car: Car) -> bool:
    """Tell whether a car's roof rail is sheet that gives; else it stands still."""
    return car.rail_wall_m > 0.0


def steel(yield_pa: float) -> Metal:
    """Return the steel of a body member by its yield stress: press-hardened above 600 MPa."""
    base = materials.PRESSED_STEEL if yield_pa > 600.0e6 else materials.PATCH_STEEL
    if yield_pa == base.yield_pa:
        return base
    return replace(base, yield_pa=yield_pa, tensile_pa=materials.TENSILE_OVER_YIELD * yield_pa)


def rail_structure(car: Car, mesh: BoxMesh, outboard_sign: float) -> Structure:
    """Return the rail of a car, held where it lies on the pillars that the car says still hold it."""
    surface = mesh.surface
    fixed = np.zeros(surface.points.shape, bool)
    for end, word in ((FRONT_END, "front"), (REAR_END, "rear")):
        if car.rail_held in ("both", word):
            fixed[surface.nodes[end]] = True
    wall = Section("wall", car.rail_wall_m, steel(car.rail_yield_pa), GROUP)
    return Structure(
        np.array(surface.points, dtype=float),
        surface.triangles,
        np.zeros(len(surface.triangles), np.int64),
        (wall,),
        outboard_sign=outboard_sign,
        fixed=fixed,
        names=dict(surface.nodes),
    )


def head_on_rail(
    points: Floats, pillar: tuple[PillarMesh, int], rail: tuple[BoxMesh, int], build: PillarBuild
) -> Bonds:
    """Return the spots and the pressure between the pillar's head and the rail; as `end_on_member`."""
    return end_on_member(points, pillar, rail, build, ("head", WALL_OF))


def end_on_member(
    points: Floats,
    pillar: tuple[PillarMesh, int],
    member: tuple[BoxMesh, int],
    build: PillarBuild,
    lies: tuple[End, Mapping[str, str]],
) -> Bonds:
    """Return the spots and the pressure between an end of the pillar and a member of sheet.

    Parameters
    ----------
    points : all nodes, shape (n, 3) [m];  pillar, member : mesh and first node;  build : of the pillar
    lies : which end, and the member's wall that each flange lies on
    """
    mesh, first = pillar
    parts = []
    for name, spots in mesh.welds.items():
        end, wall = name.split("_")
        if end != lies[0]:
            continue
        under = member[0].surface.triangles_of(lies[1][wall]) + member[1]
        parts.append(spots_on(points, spots, first, under, spot_law(build)))
        parts.append(_touches(points, mesh.surface.nodes[name] + first, spots.away[0], under))
    return Bonds.join(parts)


def spots_on(
    points: Floats, spots: WeldPoints, first: int, under: Ints, law: Floats, kind: str = WELD_KIND
) -> Bonds:
    """Return one bond per spot, from its flange's triangle to the member's that lies under it."""
    own = spots.nodes + first
    places = np.einsum("kc,kci->ki", spots.weights, points[own])
    triangle, weights, _ = nearest_on_triangles(places, points, under)
    corners = _facing(points, under[triangle], spots.away)
    nodes = np.concatenate([own, corners], axis=1)
    coefficients = np.zeros((len(own), 3, 6))
    coefficients[:, 0, :3] = spots.weights
    coefficients[:, 0, 3:] = -_reordered(under[triangle], corners, weights)
    coefficients[:, 1, 4], coefficients[:, 1, 3] = 1.0, -1.0
    coefficients[:, 2, 5], coefficients[:, 2, 3] = 1.0, -1.0
    return _on_faces(nodes, coefficients, law, kind)


def _touches(points: Floats, own: Ints, away: Floats, under: Ints) -> Bonds:
    """Return what keeps a flange's nodes out of the rail's wall: one point per node."""
    triangle, weights, _ = nearest_on_triangles(points[own], points, under)
    corners = _facing(points, under[triangle], np.tile(away, (len(own), 1)))
    nodes = np.column_stack([own, own, corners, corners[:, 0]])
    coefficients = np.zeros((len(own), 3, 6))
    coefficients[:, 0, 0] = 1.0
    coefficients[:, 0, 2:5] = -_reordered(under[triangle], corners, weights)
    coefficients[:, 1, 3], coefficients[:, 1, 2] = 1.0, -1.0
    coefficients[:, 2, 4], coefficients[:, 2, 2] = 1.0, -1.0
    bonds = _on_faces(nodes, coefficients, touch_law(pressure=FACE_N_PER_M, offset_m=0.0), TOUCH_KIND)
    apart = points[own] - np.einsum("kc,kci->ki", weights, points[under[triangle]])
    bonds.law[:, OFFSET] = np.minimum(apart @ away, 0.0)
    return bonds


def _facing(points: Floats, corners: Ints, away: Floats) -> Ints:
    """Return triangles (k, 3) with their corners in the order whose normal points ``away`` (k, 3)."""
    a, b, c = (points[corners[:, i]] for i in range(3))
    wrong = np.einsum("ki,ki->k", np.cross(b - a, c - a), away) < 0.0
    return np.where(wrong[:, None], corners[:, [0, 2, 1]], corners)


def _reordered(before: Ints, after: Ints, weights: Floats) -> Floats:
    """Return weights (k, 3) of triangles' corners in their new order."""
    same = (before == after).all(axis=1)
    return np.where(same[:, None], weights, weights[:, [0, 2, 1]])


def _on_faces(nodes: Ints, coefficients: Floats, law: Floats, kind: str) -> Bonds:
    count = len(nodes)
    return Bonds(
        nodes.astype(np.int64),
        coefficients,
        np.ones(count, bool),
        np.tile(law, (count, 1)),
        np.zeros(count, np.int64),
        (kind,),
        np.full(count, np.nan),
        np.full(count, SLID_OFF_M),
    )
