"""The roof rail between its pillars, against beams held at both ends or at one, through a car's own rail.

A prismatic beam held at both ends, loaded in its middle, of length L, stiffness E I and shear area A:

* deflection  w = P L^3 / (192 E I) + P L / (4 G A);
* three plastic hinges at  P = 8 M / L.

Held at one end and loaded at a distance l from it: one hinge at P = M / l.  All from memory; they stand in
every handbook of mechanics of materials and of plastic design.  Section moments: `sim.checks.pillars`.
"""

from __future__ import annotations

from functools import lru_cache

from meshes.box import BoxMesh
from meshes.rail import rail_of_side
from meshes.side_shape import SideShape
from sim.checks import specimens
from sim.checks.members import (
    SHEAR_PA,
    Bent,
    deflection_m_per_n,
    deflection_row,
    free_to_slide,
    held_deflection_m_per_n,
    lengths_m,
    load_row,
    of_one_metal,
    pressed_across,
    span_m,
)
from sim.checks.pillars import effective_moment, first_moments, second_moment
from sim.checks.row import Row, settling
from sim.plan import Car
from sim.rail import rail_structure
from sim.structure import Structure

STOCKY_WALL_M = 0.004  # width over wall 12.5, below 1.1 sqrt(E / yield) = 27: it yields before it buckles
REAL_WALL_M = 0.0015
YIELD_PA = 350.0e6
COARSE = "two columns of even-strain triangles on a wall of 50 to 60 mm; 20 mm triangles meet it"


def box(held: str, wall_m: float, yield_pa: float, spacing_m: float) -> tuple[BoxMesh, Structure]:
    """Return the rail of the low car's side and its structure, of one metal that does not harden."""
    mesh = rail_of_side(SideShape(), spacing_m=spacing_m)
    car = Car(rail_wall_m=wall_m, rail_held=held)  # type: ignore[arg-type]
    return mesh, of_one_metal(rail_structure(car, mesh, 1.0), yield_pa)


def section_m(mesh: BoxMesh) -> tuple[float, float]:
    """Return depth inboard and height of the rail's section [m]."""
    depth, height = mesh.section_at(float(mesh.cuts[0, 0]))
    return depth, height


def middle_m(mesh: BoxMesh) -> float:
    """Return the middle of the rail's free length along the car [m]."""
    return 0.5 * sum(span_m(mesh))


@lru_cache
def deflection(spacing_m: float) -> Row:
    """Return the middle's deflection of a rail held at both ends."""
    mesh, structure = box("both", REAL_WALL_M, specimens.NO_YIELD_PA, spacing_m)
    place, moved = deflection_m_per_n(mesh, structure, middle_m(mesh))
    depth, height = section_m(mesh)
    bending = specimens.STEEL_PA * second_moment(depth, height, REAL_WALL_M)
    shear = SHEAR_PA * 2.0 * REAL_WALL_M * height
    # out of the middle by half a row at most: a^3 b^3 / 3 L^3 and a b / L stand for L^3 / 192 and L / 4
    expected = held_deflection_m_per_n(lengths_m(mesh, place), bending, shear)
    # 6 %: as a tapering pillar on its ordinary lattice
    claim = "roof rail held at both ends: middle's deflection per kN"
    return deflection_row(claim, expected, moved, 0.06, spacing_m, _coarse(spacing_m))


def _coarse(spacing_m: float) -> str:
    return COARSE if spacing_m > 0.025 else ""


def deflection_settles() -> Row:
    """Return whether the deflection comes nearer on a finer lattice."""
    return settling("roof rail held at both ends: middle's deflection", deflection(0.03), deflection(0.02))


@lru_cache
def bent(held: str, wall_m: float, travel_m: float, spacing_m: float) -> tuple[Bent, float]:
    """Return a rail pushed up in its middle, and its plastic moment [N m].

    Parameters
    ----------
    travel_m : what `members.SHARES` are of
    """
    mesh, structure = box(held, wall_m, YIELD_PA, spacing_m)
    if held == "both":
        free_to_slide(mesh, structure)
    moment = YIELD_PA * first_moments(*section_m(mesh), wall_m)
    return pressed_across(mesh, structure, middle_m(mesh), 1.0, travel_m), moment


def collapse(spacing_m: float) -> Row:
    """Return the load at which a stocky rail held at both ends folds at three places."""
    found, moment = bent("both", STOCKY_WALL_M, 0.008, spacing_m)
    # 12 %, as a stocky pillar's: the hinges are short, so the metal beside them stops their sideways strain
    # (at most 2 / sqrt(3) in two of the walls), and they lie half a row off the ends
    claim = "stocky roof rail held at both ends: plastic collapse under a load in its middle"
    return load_row(claim, moment * found.three_hinges_per_m, found.forces, 0.12, spacing_m)


def cut_at_front(spacing_m: float) -> Row:
    """Return the load at which a rail of real thickness, cut at its front, folds at its rear joint."""
    found, _ = bent("rear", REAL_WALL_M, 0.012, spacing_m)
    moment = effective_moment(section_m(rail_of_side(SideShape())), REAL_WALL_M, YIELD_PA)
    # 15 %, as a thin pillar's: Winter's curve was fitted to tests that scatter by as much
    claim = "thin roof rail cut at its front: load at which it buckles and folds"
    return load_row(claim, moment / found.behind_m, found.forces, 0.15, spacing_m, _coarse(spacing_m))
