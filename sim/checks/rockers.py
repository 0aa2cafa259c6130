"""The rocker between its pillars and the flared foot on it, against beams and shafts of thin-walled section.

A rocker of width b, height h and wall t with an upright web of the same wall, held at both ends, loaded at a
and b' from them (a + b' = L):

* deflection  w = P a^3 b'^3 / (3 L^3 E I) + P a b' / (L G A), I of box and web, A of the three upright walls;
* three plastic hinges at  P = 2 M L / (a b'), M the yield stress times the first moments of both halves;
* turned by a torque there:  T = G J (1 / a + 1 / b') phi, J of the two cells by Bredt and Batho: an even
  shear flow in each, the same twist of both;
* a thin one buckles first: Winter's effective width of its pressed wall;
* fully plastic torque of one side  2 A t sy / sqrt(3), A inside the outer walls, by the sand heap: the web,
  between two cells that flow the same way, carries nothing.

All from memory; they stand in every handbook of mechanics of materials and of plastic design.
"""

from __future__ import annotations

from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from meshes.box import BoxMesh
from meshes.rocker import rocker_of_side
from meshes.side_shape import SideShape
from sim.checks import specimens
from sim.checks.members import (
    SHEAR_PA,
    Bent,
    across,
    deflection_m_per_n,
    deflection_row,
    drive_on,
    free_to_slide,
    held_deflection_m_per_n,
    lengths_m,
    load_row,
    of_one_metal,
    pressed_across,
    pushed,
)
from sim.checks.pillars import effective_moment, first_moments, second_moment
from sim.checks.row import TEXTBOOK, Row, settling, spacing_word
from sim.network import Drive
from sim.plan import Car
from sim.rocker import rocker_structure
from sim.structure import Structure
from sim.whole_side import WholeSide

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

WALL_M, STOCKY_WALL_M, YIELD_PA = 0.0015, 0.006, 350.0e6
"""Of a usual rocker; of one whose walls yield before they buckle (width over wall 25, below 27)."""
CAR_M, FINE_M = 0.055, 0.0275
"""Spacing of a car's rocker, and half of it."""
TOO_LATE = "two to three columns of even-strain triangles on a wall 130 to 150 mm wide dent too late"


def box(wall_m: float, yield_pa: float, spacing_m: float) -> tuple[BoxMesh, Structure]:
    """Return the rocker of the low car's side and its structure, of one metal that does not harden."""
    mesh = rocker_of_side(SideShape(), spacing_m=spacing_m)
    car = Car(extent="side", whole_side=WholeSide(rocker_wall_m=wall_m))
    return mesh, of_one_metal(rocker_structure(car, mesh, 1.0), yield_pa)


def section_m(mesh: BoxMesh) -> tuple[float, float, float]:
    """Return depth inboard, height, and depth of the outer cell [m]."""
    depth, height = mesh.section_at(float(mesh.cuts[0, 0]))
    return depth, height, SideShape().pillar.foot_depth_m


def torsion_constant(mesh: BoxMesh, wall_m: float) -> float:
    """Return J [m^4] of the two cells: flows q with A_i 2 G phi' = oint(q ds / t), torque 2 sum(q A)."""
    depth, height, outer = section_m(mesh)
    areas = np.array([outer, depth - outer]) * height
    around = 2.0 * (np.array([outer, depth - outer]) + height)
    compliance = (np.diag(around) - height * (1.0 - np.eye(2))) / wall_m
    flow = np.linalg.solve(compliance, 2.0 * areas)
    return float(2.0 * flow @ areas)


def middle_m() -> float:
    """Return the middle of the foot along the car [m], where the rocker is loaded."""
    shape = SideShape()
    return float(shape.pillar_shift[0]) + 0.5 * shape.pillar.foot_width_m


def turning(mesh: BoxMesh, at_m: float) -> tuple[float, Floats]:
    """Return the ring nearest to a place, and nodal forces (n, 3) on it of 1 N m: an even shear flow."""
    surface = mesh.surface
    x = surface.points[:, 0]
    walls = surface.nodes_of(("lower", "outer", "upper", "inner"))
    place = float(x[walls][np.abs(x[walls] - at_m).argmin()])
    nodes = walls[np.abs(x[walls] - place) < 1e-9]
    yz = surface.points[nodes][:, 1:]
    middle = 0.5 * (yz.min(axis=0) + yz.max(axis=0))
    nodes = nodes[np.argsort(np.arctan2(*(yz - middle).T[::-1]))]
    depth, height, _ = section_m(mesh)
    out = np.zeros_like(surface.points)
    for first, last in zip(nodes, np.roll(nodes, -1), strict=True):
        along = surface.points[last] - surface.points[first]
        out[[first, last]] += 0.5 * along / (2.0 * depth * height)
    return place, out


@lru_cache
def deflection(spacing_m: float) -> Row:
    """Return how far a rocker held at both ends goes down under a load at the foot."""
    mesh, structure = box(WALL_M, specimens.NO_YIELD_PA, spacing_m)
    place, moved = deflection_m_per_n(mesh, structure, middle_m())
    depth, height, _ = section_m(mesh)
    second = second_moment(depth, height, WALL_M) + WALL_M * height**3 / 12.0
    bending, shear = specimens.STEEL_PA * second, SHEAR_PA * 3.0 * WALL_M * height
    expected = held_deflection_m_per_n(lengths_m(mesh, place), bending, shear)
    claim = "rocker held at both ends: deflection at the foot per kN"
    return deflection_row(claim, expected, moved, 0.15, spacing_m)


@lru_cache
def twist(spacing_m: float) -> Row:
    """Return the torque that turns a rocker held at both ends at the foot, per angle."""
    mesh, structure = box(WALL_M, specimens.NO_YIELD_PA, spacing_m)
    place, force = turning(mesh, middle_m())
    moved = specimens.solve(structure, 10.0 * force).moved
    # work of the unit torque's forces: the angle that goes with it
    angle = float(np.sum(force * moved))
    a, b = lengths_m(mesh, place)
    return Row(
        "rocker held at both ends and turned at the foot (Bredt, Batho): stiffness",
        TEXTBOOK,
        SHEAR_PA * torsion_constant(mesh, WALL_M) * (1.0 / a + 1.0 / b) / 1e3,
        10.0 / angle / 1e3,
        "kN m/rad",
        0.1,
        spacing=spacing_word(spacing_m),
    )


def _round(mesh: BoxMesh, structure: Structure) -> list[Drive]:
    """Return four drives that turn the ring under the foot: each wall's mean along itself, alike in angle."""
    surface = mesh.surface
    place, _, _ = across(mesh, middle_m())
    depth, height, _ = section_m(mesh)
    ways = {"outer": (0.0, 0.0, 1.0), "upper": (0.0, -1.0, 0.0), "inner": (0.0, 0.0, -1.0)}
    drives = []
    for wall, way in {**ways, "lower": (0.0, 1.0, 0.0)}.items():
        on = np.abs(surface.points[:, 0] - place) < 1e-9
        own = np.intersect1d(np.flatnonzero(on), surface.nodes_of((wall,)))
        own = own[np.argsort(surface.points[own, 1 if way[1] else 2])]
        shares = specimens.shared(surface.points, own, [1.0, 0.0, 0.0])[:, 0]
        # a wall's mean goes its distance from the middle times the angle; all as far as outer and inner wall
        shares = shares * (depth / height if way[1] else 1.0)
        drives.append(drive_on(structure, own, shares, way))
    return drives


@lru_cache
def bent(wall_m: float, travel_m: float, spacing_m: float) -> Bent:
    """Return a rocker pressed down at the foot, held at both ends.

    Parameters
    ----------
    travel_m : what `members.SHARES` are of
    """
    mesh, structure = box(wall_m, YIELD_PA, spacing_m)
    free_to_slide(mesh, structure)
    return pressed_across(mesh, structure, middle_m(), -1.0, travel_m)


@lru_cache
def turned(spacing_m: float) -> tuple[Floats, float, float]:
    """Return the torque [N m] that turns a stocky rocker at the foot, twice the plastic torque, the gap."""
    mesh, structure = box(STOCKY_WALL_M, YIELD_PA, spacing_m)
    forces, gap = pushed(structure, _round(mesh, structure), 0.004)
    depth, height, _ = section_m(mesh)
    torque = 0.5 * depth * forces.sum(axis=1)
    side = 2.0 * depth * height * STOCKY_WALL_M * YIELD_PA / np.sqrt(3.0)
    return torque, 2.0 * side, gap


def collapse(spacing_m: float) -> Row:
    """Return the load at which a stocky rocker held at both ends folds at three places."""
    found = bent(STOCKY_WALL_M, 0.012, spacing_m)
    depth, height, _ = section_m(rocker_of_side(SideShape()))
    first = first_moments(depth, height, STOCKY_WALL_M) + STOCKY_WALL_M * height**2 / 4.0
    # as a stocky rail's: hinges are short, so the metal beside them stops their sideways strain
    claim = "stocky rocker held at both ends: plastic collapse under a load at the foot"
    return load_row(claim, found.three_hinges_per_m * YIELD_PA * first, found.forces, 0.12, spacing_m)


def thin_collapse(spacing_m: float) -> Row:
    """Return the load at which a rocker of real thickness buckles and folds."""
    found = bent(WALL_M, 0.008, spacing_m)
    depth, height, _ = section_m(rocker_of_side(SideShape()))
    # Winter's width of the pressed wall, and the web as far as its edges yield; 15 % as a thin rail's
    moment = effective_moment((depth, height), WALL_M, YIELD_PA) + YIELD_PA * WALL_M * height**2 / 6.0
    claim = "thin rocker held at both ends: load at which it buckles and folds"
    return load_row(claim, found.three_hinges_per_m * moment, found.forces, 0.15, spacing_m, TOO_LATE)


def plastic_torque(spacing_m: float) -> Row:
    """Return the torque at which a stocky rocker held at both ends turns on, wholly plastic."""
    torque, expected, _ = turned(spacing_m)
    return Row(
        "stocky rocker held at both ends and turned at the foot: plastic torque (sand heap)",
        TEXTBOOK,
        expected / 1e3,
        float(torque.max()) / 1e3,
        "kN m",
        0.12,
        spacing=spacing_word(spacing_m),
    )


def rocker_bending_settles() -> Row:
    """Return whether the deflection comes nearer on a finer lattice."""
    return settling("rocker held at both ends: deflection at the foot", deflection(CAR_M), deflection(FINE_M))
