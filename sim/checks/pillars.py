"""Thin-walled boxes as pillars are: bent, twisted and folded, against the formulas of thin sections.

A box of midline width b, depth h and wall t, bent about the axis across its depth:

* second moment  I = b t h^2 / 2 + t h^3 / 6,  first moments of its halves  Z = b t h + t h^2 / 2;
* full plastic moment  M = sigma_y Z  (sum of yield stress times first moments);
* tip deflection of a cantilever  w = F int (H - z)^2 / (E I) dz + F int dz / (2 G t h);
* Bredt's second formula for a closed thin section  J = 4 A^2 / oint(ds / t) = 2 t (b h)^2 / (b + h).

All from memory; they stand in every handbook of mechanics of materials.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray
from scipy.integrate import quad

from meshes.box import BoxMesh, Cut, build_box
from sim.checks import specimens
from sim.checks.row import TEXTBOOK, Row, settling, spacing_word
from sim.increment import Stepper
from sim.ledger import Ledger
from sim.materials import Metal
from sim.network import Drive, Network
from sim.structure import Section, Structure

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

HEIGHT_M = 1.0
FOOT_M, HEAD_M = (0.125, 0.095), (0.075, 0.050)
WALL_M = 0.0015
POISSON = 0.3
STOCKY_M, STOCKY_WALL_M, STOCKY_YIELD_PA = (0.09, 0.07), 0.006, 350.0e6
"""A section whose walls yield before they buckle: width over wall 15, below 1.1 sqrt(E / yield) = 27."""
STOCKY_HEIGHT_M = 0.8


def box(foot: tuple[float, float], head: tuple[float, float], height_m: float, spacing_m: float) -> BoxMesh:
    """Return an upright box about the z axis, straight, tapering from foot to head."""
    ends = [Cut(z, (-0.5 * w, -0.5 * d), (0.5 * w, 0.5 * d)) for z, (w, d) in ((0.0, foot), (height_m, head))]
    return build_box(ends, 2, spacing_m)


def second_moment(width_m: float, depth_m: float, wall_m: float) -> float:
    """Return I [m^4] of a thin box bent about the axis across its depth."""
    return wall_m * depth_m**2 * (0.5 * width_m + depth_m / 6.0)


def first_moments(width_m: float, depth_m: float, wall_m: float) -> float:
    """Return the sum of the first moments [m^3] of both halves of a thin box about that axis."""
    return wall_m * depth_m * (width_m + 0.5 * depth_m)


def torsion_constant(width_m: float, depth_m: float, wall_m: float) -> float:
    """Return Bredt's J [m^4] of a thin box."""
    return 2.0 * wall_m * (width_m * depth_m) ** 2 / (width_m + depth_m)


def sheet(mesh: BoxMesh, wall_m: float, metal: Metal) -> Structure:
    """Return the structure of a box of one metal."""
    surface = mesh.surface
    section = Section("wall", wall_m, metal, "folding inner")
    return Structure(
        np.array(surface.points), surface.triangles, np.zeros(len(surface.triangles), np.int64), (section,)
    )


def stood(structure: Structure, mesh: BoxMesh) -> Structure:
    """Return the box stood on its foot, whose outer and inner wall are free to narrow.

    Holding their middles only keeps the sideways strain that a stretched wall has: stopped, it makes the
    foot up to 2 / sqrt(3) as strong.
    """
    foot = mesh.surface.nodes["start_ring"]
    away = np.abs(structure.points[foot, 0])
    return specimens.held(structure, (foot, "yz"), (foot[away <= away.min() + 1e-9], "x"))


def side_walls(mesh: BoxMesh, ring: str) -> tuple[Ints, Floats]:
    """Return the nodes of front and rear wall at an end and how they share a shear force, summing to one."""
    surface = mesh.surface
    nodes, shares = [], []
    for wall in ("front", "rear"):
        own = np.intersect1d(surface.nodes[ring], surface.nodes_of((wall,)))
        own = own[np.argsort(surface.points[own, 1])]
        nodes.append(own)
        shares.append(0.5 * specimens.shared(surface.points, own, [1.0, 0.0, 0.0])[:, 0])
    return np.concatenate(nodes), np.concatenate(shares)


@dataclass(frozen=True)
class Tip:
    """Deflection of a loaded tip per force [m/N]: by the integral, and as computed."""

    expected: float
    got: float


@lru_cache
def tip(spacing_m: float) -> Tip:
    """Return what a small load at the head of a tapering box does."""
    mesh = box(FOOT_M, HEAD_M, HEIGHT_M, spacing_m)
    structure = stood(sheet(mesh, WALL_M, specimens.metal(nu=POISSON)), mesh)
    nodes, shares = side_walls(mesh, "end_ring")
    force = np.zeros_like(structure.points)
    force[nodes, 1] = 100.0 * shares
    moved = specimens.solve(structure, force).moved
    return Tip(_tip_integral(), float(shares @ moved[nodes, 1]) / 100.0)


def _tip_integral() -> float:
    young, shear = specimens.STEEL_PA, specimens.STEEL_PA / (2.0 * (1.0 + POISSON))

    def sides(z: float) -> tuple[float, float]:
        share = z / HEIGHT_M
        return FOOT_M[0] + share * (HEAD_M[0] - FOOT_M[0]), FOOT_M[1] + share * (HEAD_M[1] - FOOT_M[1])

    def bend(z: float) -> float:
        return (HEIGHT_M - z) ** 2 / (young * second_moment(*sides(z), WALL_M))

    def slide(z: float) -> float:
        return 1.0 / (2.0 * shear * WALL_M * sides(z)[1])

    return float(quad(bend, 0.0, HEIGHT_M)[0] + quad(slide, 0.0, HEIGHT_M)[0])


@lru_cache
def twist_stiffness(spacing_m: float) -> tuple[float, float]:
    """Return G J / L [N m/rad] of a straight box, by Bredt and as computed from Bredt's own shear flow."""
    width, depth = FOOT_M
    mesh = box(FOOT_M, FOOT_M, HEIGHT_M, spacing_m)
    structure = sheet(mesh, WALL_M, specimens.metal(nu=POISSON))
    structure = specimens.held(structure, *_pinned(mesh))
    moment = 10.0
    force = np.zeros_like(structure.points)
    for ring, sign in (("end_ring", 1.0), ("start_ring", -1.0)):
        force += sign * _flow(mesh, ring, moment / (2.0 * width * depth))
    moved = specimens.solve(structure, force).moved
    angle = _turn(mesh, moved, "end_ring") - _turn(mesh, moved, "start_ring")
    shear = specimens.STEEL_PA / (2.0 * (1.0 + POISSON))
    return shear * torsion_constant(width, depth, WALL_M) / HEIGHT_M, moment / angle


def _pinned(mesh: BoxMesh) -> tuple[tuple[Ints, str], ...]:
    """Return six held directions that stop no strain: three corners of the foot."""
    corners = [mesh.surface.chains[name][0] for name in sorted(mesh.surface.chains)]
    a, b, c = (np.array([corner]) for corner in corners[:3])
    pa, pb = mesh.surface.points[a[0]], mesh.surface.points[b[0]]
    along = "x" if abs(pa[0] - pb[0]) > abs(pa[1] - pb[1]) else "y"
    return (a, "xyz"), (b, ("y" if along == "x" else "x") + "z"), (c, "z")


def _flow(mesh: BoxMesh, ring: str, flow_n_per_m: float) -> Floats:
    """Return nodal forces (n, 3) of an even shear flow round an end, anticlockwise seen from above."""
    points = mesh.surface.points
    nodes = mesh.surface.nodes[ring]
    out = np.zeros_like(points)
    for first, last in zip(nodes, np.roll(nodes, -1), strict=True):
        along = points[last] - points[first]
        out[first] += 0.5 * flow_n_per_m * along
        out[last] += 0.5 * flow_n_per_m * along
    return out


def _turn(mesh: BoxMesh, moved: Floats, ring: str) -> float:
    """Return how far an end has turned about the axis [rad], by the corners, which Bredt's section keeps."""
    corners = np.array([chain[0 if ring == "start_ring" else -1] for chain in mesh.surface.chains.values()])
    place, shift = mesh.surface.points[corners], moved[corners]
    shift = shift - shift.mean(axis=0)
    turning = place[:, 0] * shift[:, 1] - place[:, 1] * shift[:, 0]
    return float(turning.sum() / (place[:, :2] ** 2).sum())


@dataclass(frozen=True)
class Fold:
    """A box pushed over at its head.

    travel_m, force_n : shape (k,);  plastic_n : sum of yield stress times first moments over the height
    gap_ratio : of the books at the end
    """

    travel_m: Floats
    force_n: Floats
    plastic_n: float
    gap_ratio: float


def fold(
    section_m: tuple[float, float],
    wall_m: float,
    metal: Metal,
    spacing_m: float,
    travels_m: Floats,
    height_m: float = STOCKY_HEIGHT_M,
) -> Fold:
    """Return the forces of a straight box stood on its foot and pushed across at its head."""
    mesh = box(section_m, section_m, height_m, spacing_m)
    structure = stood(sheet(mesh, wall_m, metal), mesh)
    nodes, shares = side_walls(mesh, "end_ring")
    drive = Drive(nodes, shares, np.array([0.0, 1.0, 0.0]), float(shares @ structure.points[nodes, 1]), 1.0e9)
    stepper = Stepper(Network(structure, [drive]), specimens.never, viscous_n_per_m=0.0)
    point = stepper.first_point(stepper.network.initial_state(), Ledger())
    forces = []
    for travel in travels_m:
        point = stepper.advance(point, float(travel))
        forces.append(float(point.force_n[0]))
    if stepper.tally.failed:
        raise specimens.NotSolvedError("an increment of the folding box did not converge")
    plastic = metal.yield_pa * first_moments(*section_m, wall_m) / height_m
    return Fold(np.asarray(travels_m), np.array(forces), plastic, point.ledger.closure_ratio())


@lru_cache
def pushed_over(wall_m: float, section_m: tuple[float, float], yield_pa: float, spacing_m: float) -> Fold:
    """Return a box of one perfectly plastic metal pushed over to twice its elastic travel."""
    metal = specimens.metal(nu=POISSON, yield_pa=yield_pa)
    limit = yield_pa * first_moments(*section_m, wall_m) / STOCKY_HEIGHT_M
    bending = specimens.STEEL_PA * second_moment(*section_m, wall_m)
    elastic = limit * STOCKY_HEIGHT_M**3 / (3.0 * bending)
    return fold(section_m, wall_m, metal, spacing_m, elastic * PUSH_SHARES)


def effective_moment(section_m: tuple[float, float], wall_m: float, yield_pa: float) -> float:
    """Return the moment [N m] at which a thin box's pressed wall yields after it has buckled.

    Winter's effective width b (1 - 0.22 / l) / l with l = sqrt(yield / critical stress) and the critical
    stress of a long plate held along both sides, 4 pi^2 E / (12 (1 - nu^2)) (t / b)^2; side walls whole.
    """
    width, depth = section_m
    critical = 4.0 * np.pi**2 * specimens.STEEL_PA / (12.0 * (1.0 - POISSON**2)) * (wall_m / width) ** 2
    slender = float(np.sqrt(yield_pa / critical))
    pressed = width * min(1.0, (1.0 - 0.22 / slender) / slender) * wall_m
    pulled, sides = width * wall_m, 2.0 * depth * wall_m
    axis = (pressed * depth + sides * 0.5 * depth) / (pressed + pulled + sides)
    own = sides * (depth**2 / 12.0 + (0.5 * depth - axis) ** 2)
    second = pressed * (depth - axis) ** 2 + pulled * axis**2 + own
    return yield_pa * second / (depth - axis)


PUSH_SHARES = np.array([0.1, 0.2, 0.3, 0.4, 0.5, 0.55, 0.6, 0.65, 0.7, 0.75, 0.8, 0.9, 1.0, 1.25, 1.5, 2.0])
THIN_METALS = (350.0e6, 1000.0e6)


def tip_deflection(spacing_m: float) -> Row:
    """Return the deflection of a tapering pillar under a load at its head."""
    found = tip(spacing_m)
    # 6 and 3 %: triangles of even strain are stiff in the side walls' own plane, second order in the spacing
    allowed = 0.06 if spacing_m > 0.025 else 0.03
    return Row(
        "tapering pillar: head's deflection per kN",
        TEXTBOOK,
        1e6 * found.expected,
        1e6 * found.got,
        "mm/kN",
        allowed,
        spacing=spacing_word(spacing_m),
    )


def tip_settles() -> Row:
    """Return whether the deflection comes nearer on a finer lattice."""
    return settling("tapering pillar: head's deflection", tip_deflection(0.03), tip_deflection(0.02))


def twist(spacing_m: float) -> Row:
    """Return the stiffness of a pillar's section in torsion."""
    expected, got = twist_stiffness(spacing_m)
    # half a per cent: the sheet's own bending, t^2 / 3 over Bredt's, and the elastic force limit
    return Row(
        "pillar in torsion (Bredt): stiffness",
        TEXTBOOK,
        expected / 1e3,
        got / 1e3,
        "kN m/rad",
        0.005,
        spacing=spacing_word(spacing_m),
    )


def plastic_moment(spacing_m: float) -> Row:
    """Return the plastic moment at the foot of a pillar whose walls yield before they buckle."""
    found = pushed_over(STOCKY_WALL_M, STOCKY_M, STOCKY_YIELD_PA, spacing_m)
    # 12 and 8 %: the fold is short, so the metal above it stops its sideways strain (at most 2 / sqrt(3) in
    # the outer and inner wall), and it lies half a row above the foot, which shortens the lever
    allowed = 0.12 if spacing_m > 0.025 else 0.08
    return Row(
        "stocky pillar: plastic moment at the foot",
        TEXTBOOK,
        found.plastic_n * STOCKY_HEIGHT_M / 1e3,
        float(found.force_n[-1]) * STOCKY_HEIGHT_M / 1e3,
        "kN m",
        allowed,
        spacing=spacing_word(spacing_m),
    )


def plastic_settles() -> Row:
    """Return whether the plastic moment comes nearer on a finer lattice."""
    return settling("stocky pillar: plastic moment", plastic_moment(0.03), plastic_moment(0.02))


def thin_moment(yield_pa: float, spacing_m: float) -> Row:
    """Return the greatest moment at the foot of a pillar of real thickness, whose pressed wall buckles."""
    found = pushed_over(WALL_M, FOOT_M, yield_pa, spacing_m)
    # 15 %: Winter's curve was fitted to tests that scatter by as much, and the clamp at the foot helps
    return Row(
        f"thin pillar of {yield_pa / 1e6:g} MPa: moment at which it buckles and folds",
        TEXTBOOK,
        effective_moment(FOOT_M, WALL_M, yield_pa) / 1e3,
        float(found.force_n.max()) * STOCKY_HEIGHT_M / 1e3,
        "kN m",
        0.15,
        spacing=spacing_word(spacing_m),
    )
