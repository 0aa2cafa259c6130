"""The pillar between the doors as a structure: walls of two grades, flanges held by spots to a rigid body.

Front, rear and outer wall are one pressed part, the inner wall closes it. A spot is a point that peels along
the rigid member's own normal there and shears across it; flanges press on that member and never pull.
Numbers marked "assumed" have no public source.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Literal

import numpy as np
from numpy.typing import NDArray

from meshes.pillar import PillarMesh
from sim import materials
from sim.bond import bond_law, touch_law
from sim.carcheck import WELD_RISE_M
from sim.materials import Metal
from sim.problems import PlanError
from sim.ranges import Range, check_ranges
from sim.structure import Bonds, Section, Structure

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]
End = Literal["foot", "head"]

GROUP = "folding pillar"
WELD_KIND, TOUCH_KIND = "pillar weld", "pillar touch"
PILLAR_RANGES: dict[str, Range] = {
    "pressed_m": (0.0006, 0.006, "1.35 to 2.7 mm have been published"),
    "closing_m": (0.0006, 0.006, "1.0 to 1.5 mm is usual"),
    "thin_m": (0.0006, 0.004, "1.0 to 1.5 mm is usual"),
    "soft_m": (0.0, 1.0, "0 is a pillar of one grade"),
    "stiffener_m": (0.0, 0.004, "0 is none, 0.001 to 0.002 m a usual one"),
    "stiffener_reach_m": (0.0, 0.4, "0.05 to 0.15 m, assumed"),
}
PATCH_M = 0.0025  # striker and hinge reinforcement, as the doors' own (assumed)
CROSS_TENSION_N, CROSS_TENSION_POWER = 1.25e3, 2.2  # CT = 1.25 t^2.2 kN, t in mm [aws-welds-2013]
SHOP_RATIO = 2.0  # spots as made over the least the rule asks: 2 to 3, from memory
PULL_OUT_M = 4.0e-3  # way over which a spot is pulled out of its sheet, assumed
FACE_N_PER_M = 1.0e7  # penalty of a flange on the rigid member, per node
SLID_OFF_M = 0.02  # slip beyond which a flange no longer stands on it, assumed


@dataclass(frozen=True)
class PillarBuild:
    """What a pillar is made of.

    Parameters
    ----------
    pressed, closing : metal of front, rear and outer wall; of the inner wall
    pressed_m, closing_m : their thickness [m]
    soft, soft_m : metal of the foot and how high it reaches [m]; 0 is a pillar of one grade
    stiffener_m : thickness of a stiffener on the pressed walls of the foot and their flanges [m]; 0 is none
    stiffener_reach_m : how high it reaches [m]
    thin_m : thinnest sheet under a spot, which sets its strength [m]
    held : the ends whose flanges are welded on
    """

    pressed: Metal = field(default_factory=lambda: materials.PRESSED_STEEL)
    closing: Metal = field(default_factory=lambda: materials.PATCH_STEEL)
    pressed_m: float = 0.0015
    closing_m: float = 0.0012
    soft: Metal = field(default_factory=lambda: materials.PATCH_STEEL)
    soft_m: float = 0.0
    stiffener_m: float = 0.0
    stiffener_reach_m: float = 0.1
    thin_m: float = 0.0012
    held: tuple[End, ...] = ("foot", "head")

    def check(self) -> None:
        """Raise PlanError naming the field and the remedy for a number out of range."""
        check_ranges(PILLAR_RANGES, self, "pillar")
        wrong = [end for end in self.held if end not in ("foot", "head")]
        if wrong or len(set(self.held)) != len(self.held):
            raise PlanError("pillar.held", f"is {self.held}; name 'foot' and 'head' at most once each")


def spot_strength(thin_m: float, tensile_pa: float) -> tuple[float, float]:
    """Return the peel and shear force [N] a spot holds: least values of the rule times the shop's ratio.

    Shear: (-6.36e-7 S^2 + 6.58e-4 S + 1.674) S 4 t^1.5 N with S in MPa and t in mm; peel: cross tension,
    1.25 t^2.2 kN; both from memory [aws-welds-2013].
    """
    t, strength = 1e3 * thin_m, 1e-6 * tensile_pa
    factor = -6.36e-7 * strength**2 + 6.58e-4 * strength + 1.674
    return (
        SHOP_RATIO * CROSS_TENSION_N * t**CROSS_TENSION_POWER,
        SHOP_RATIO * factor * strength * 4.0 * t**1.5,
    )


def pillar_structure(mesh: PillarMesh, build: PillarBuild | None = None) -> Structure:
    """Return the structure of a pillar mesh; its nodes are the surface's, with rigid ones after them.

    Raises
    ------
    PlanError
        Naming the field of the build that is out of range.
    """
    build = PillarBuild() if build is None else build
    build.check()
    frame = _Frame(mesh)
    welds = _welds(mesh, build, frame)
    touches = [_touches(mesh, end, frame) for end in build.held]
    points = np.concatenate([mesh.surface.points, np.array(frame.points)])
    fixed = np.zeros(points.shape, dtype=bool)
    fixed[mesh.surface.node_count :] = True
    return Structure(
        points,
        mesh.surface.triangles,
        _triangle_sections(mesh, build),
        _sections(build),
        bonds=Bonds.join([*welds, *touches]),
        outboard_sign=mesh.outboard_sign,
        fixed=fixed,
        names=dict(mesh.surface.nodes),
    )


class _Frame:
    """Rigid nodes: an origin, a point along each axis, and what is added for the spots."""

    def __init__(self, mesh: PillarMesh) -> None:
        self.first = mesh.surface.node_count
        self.origin = np.zeros(3)
        self.points: list[Floats] = [self.origin, *(self.origin + axis for axis in np.eye(3))]

    def added(self, points: Floats) -> Ints:
        """Return the ids of new rigid nodes at points, shape (k,)."""
        start = self.first + len(self.points)
        self.points.extend(points)
        return start + np.arange(len(points))

    def axis(self, away: Floats) -> tuple[int, float]:
        """Return the frame's node along a direction that is an axis, and its sign."""
        k = int(np.argmax(np.abs(away)))
        return self.first + 1 + k, float(np.sign(away[k]))


def _sections(build: PillarBuild) -> tuple[Section, ...]:
    thick = PATCH_M + build.pressed_m
    foot = build.soft if build.soft_m > 0.0 else build.pressed
    stiff = Section("pillar, stiffened foot", build.pressed_m + build.stiffener_m, foot, GROUP)
    return (
        Section("pillar, pressed part", build.pressed_m, build.pressed, GROUP),
        Section("pillar, closing part", build.closing_m, build.closing, GROUP),
        Section("pillar, soft foot", build.pressed_m, build.soft, GROUP),
        Section("pillar, striker and hinge patches", thick, build.closing, GROUP),
        *((stiff,) if build.stiffener_m > 0.0 else ()),
    )


def _triangle_sections(mesh: PillarMesh, build: PillarBuild) -> Ints:
    """Return each triangle's section, shape (m,): flanges are of the wall they continue."""
    surface = mesh.surface
    out = np.zeros(len(surface.triangles), dtype=np.int64)
    names = np.array(surface.part_names)[surface.triangle_part]
    height = surface.points[surface.triangles].mean(axis=1)[:, 2]
    inner = names == "inner"
    for end in ("foot", "head"):
        mine = surface.nodes[f"{end}_inner"]
        inner |= (names == f"{end}_flange") & np.isin(surface.triangles, mine).all(axis=1)
    out[height < build.soft_m] = 2
    if build.stiffener_m > 0.0:
        out[height < build.stiffener_reach_m] = 4
    out[inner] = 1
    out[np.char.endswith(names, "_patch")] = 3
    return out


def spot_law(build: PillarBuild) -> Floats:
    """Return the law row (8,) of one spot of a pillar's foot or head, as of `sim.bond.bond_law`."""
    metals = (build.closing, build.soft if build.soft_m > 0.0 else build.pressed)
    tensile = min(materials.TENSILE_OVER_YIELD * metal.yield_pa for metal in metals)
    peel, shear = spot_strength(build.thin_m, tensile)
    return bond_law(
        strength=peel,
        energy=0.5 * peel * PULL_OUT_M,
        shear_ratio=shear / peel,
        rise_m=WELD_RISE_M,
        pressure=FACE_N_PER_M,
    )


def _welds(mesh: PillarMesh, build: PillarBuild, frame: _Frame) -> list[Bonds]:
    law, out = spot_law(build), []
    for name, spots in mesh.welds.items():
        if name[:4] not in build.held:
            continue
        under = frame.added(spots.points)
        count = len(under)
        tip, sign = frame.axis(spots.away[0])
        origin = frame.first
        nodes = np.column_stack([spots.nodes, under, np.full(count, origin), np.full(count, tip)])
        coefficients = np.zeros((count, 3, 6))
        coefficients[:, 0, :3], coefficients[:, 0, 3] = spots.weights, -1.0
        coefficients[:, 1, 4], coefficients[:, 1, 5] = -sign, sign
        out.append(_bonds(nodes, coefficients, law, WELD_KIND, SLID_OFF_M))
    return out


def _touches(mesh: PillarMesh, end: End, frame: _Frame) -> Bonds:
    """Return what keeps the flanges of an end out of the rigid member: one point per node and flange."""
    law = touch_law(pressure=FACE_N_PER_M, offset_m=0.0)
    parts = []
    for name, spots in mesh.welds.items():
        if not name.startswith(end):
            continue
        own = mesh.surface.nodes[name]
        count, origin = len(own), frame.first
        place = mesh.surface.points[own] - frame.origin
        tip, sign = frame.axis(spots.away[0])
        nodes = np.column_stack([own, *(np.full(count, origin + k) for k in range(4)), own])
        coefficients = np.zeros((count, 3, 6))
        # where the node stood, told by origin and axes, so that a moved frame takes the member along
        coefficients[:, 0, 0] = 1.0
        coefficients[:, 0, 2:5] = -place
        coefficients[:, 0, 1] = place.sum(axis=1) - 1.0
        coefficients[:, 1, 1], coefficients[:, 1, 1 + tip - origin] = -sign, sign
        parts.append(_bonds(nodes, coefficients, law, TOUCH_KIND, SLID_OFF_M))
    return Bonds.join(parts)


def _bonds(nodes: Ints, coefficients: Floats, law: Floats, kind: str, reach_m: float) -> Bonds:
    count = len(nodes)
    return Bonds(
        nodes.astype(np.int64),
        coefficients,
        np.zeros(count, bool),
        np.tile(law, (count, 1)),
        np.zeros(count, np.int64),
        (kind,),
        np.full(count, np.nan),
        np.full(count, reach_m),
    )
