"""The door as a structure: which sheet, beam, bond and tie stands for which part, and by which numbers.

Numbers marked "assumed" have no public source; the others name theirs (keys in assets/sources.toml).
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import replace

import numpy as np
from numpy.typing import NDArray

from meshes.door import DoorMesh, DoorShape
from sim import materials
from sim.bond import bond_law, touch_law
from sim.latch import FITTING_STIFFNESS_N_PER_M, latch_sliders, latch_ties
from sim.plan import Car
from sim.seam import seam_bonds
from sim.structure import Beam, Bonds, Section, Structure, Tie

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

# floors of UN R11 / GTR 1 [un-regulation-2010]; z assumed equal to the transverse floor
HINGE_SET_FLOOR_N = (11.0e3, 9.0e3, 9.0e3)  # for both hinges together
HOUSING_HALF_M = 0.035  # half the side of a latch's or hinge leaf's foot on the shut face, assumed
PAD_STRENGTH_N_PER_M, PAD_ENERGY_J_PER_M = 3.3e3, 44.0  # along the bar, assumed: soft mastic, lets go early
TOUCH_STIFFNESS_N_PER_M = 2.0e6  # penalty of sheet on sheet, per node

BAR_DIAMETER_M, BAR_WALL_M = 0.032, 0.002  # tube, worked example of the tube table
BAR_FOOT_M = (0.030, 0.035, 0.025)  # bracket: depth of its middle, half height, half depth (assumed)
STRIP = (1.05e7, 1.0e3, 125.0)  # E A, E I, Mp of each belt strip: pressed channel 30 x 12 x 1, assumed
FRAME = (3.1e7, 4.2e3, 280.0)  # window frame: plastic at about 0.7 kN on a 0.4 m upright, estimated
# swages and flanged holes make an inner panel several times stiffer in bending than its flat sheet;
# its layers stand this many times further apart (assumed)
PRESSED_FORM_RATIO = 4.0
# the inner panel is thicker in its latch and hinge zones: 1.0-1.5 mm against 0.6-0.8 (from memory)
ZONE_RATIO, ZONE_M = 1.5, 0.12  # thickness there over the rest; reach from the latch and hinge edges, assumed
PATCH_THICKNESS_M = 0.0025  # latch and hinge reinforcement (2.5 mm at 350 MPa, assumed)


def tube(diameter_m: float, wall_m: float) -> tuple[float, float, float]:
    """Return area [m^2], second moment [m^4] and plastic modulus [m^3] of a round tube."""
    inner = diameter_m - 2.0 * wall_m
    area = math.pi / 4.0 * (diameter_m**2 - inner**2)
    second = math.pi / 64.0 * (diameter_m**4 - inner**4)
    return area, second, (diameter_m**3 - inner**3) / 6.0


def _sections(car: Car) -> tuple[Section, ...]:
    skin, inner = materials.SKIN[car.metal], materials.INNER[car.metal]
    return (
        Section("outer_skin", car.skin_thickness_m, skin, "folding skin"),
        Section("shut_face", car.inner_thickness_m, inner, "folding inner"),
        Section("inner_panel", car.inner_thickness_m, inner, "folding inner", PRESSED_FORM_RATIO),
        Section("latch_patch", PATCH_THICKNESS_M, materials.PATCH_STEEL, "folding inner"),
        Section("hinge_patch", PATCH_THICKNESS_M, materials.PATCH_STEEL, "folding inner"),
        Section("latch_wrap", PATCH_THICKNESS_M, materials.PATCH_STEEL, "folding inner"),
        Section("zone shut face", ZONE_RATIO * car.inner_thickness_m, inner, "folding inner"),
        Section(
            "zone inner panel", ZONE_RATIO * car.inner_thickness_m, inner, "folding inner", PRESSED_FORM_RATIO
        ),
    )


def _triangle_sections(mesh: DoorMesh, sections: Sequence[Section]) -> Ints:
    """Return each triangle's section: its part's, or the thicker latch and hinge zones', shape (m,)."""
    out = np.array(mesh.surface.triangle_part, dtype=np.int64)
    centre = mesh.surface.points[mesh.surface.triangles].mean(axis=1)
    away = mesh.shape.edge_distance(centre[:, 0], centre[:, 2])
    names = [section.name for section in sections]
    for part in ("shut_face", "inner_panel"):
        zone = (out == names.index(part)) & (away <= ZONE_M)
        out[zone] = names.index(f"zone {part.replace('_', ' ')}")
    return out


def _beams(car: Car, mesh: DoorMesh) -> tuple[Beam, ...]:
    chains = mesh.surface.chains
    young = materials.BAR_STEEL.young_pa
    area, second, plastic = tube(BAR_DIAMETER_M, BAR_WALL_M)
    scale = 1.0 if car.bar else 1.0e-4
    bar = Beam(
        "bar",
        chains["bar"],
        scale * young * area,
        scale * young * second,
        scale * plastic * materials.BAR_STEEL.yield_pa,
        "folding bar",
    )
    return (
        bar,
        Beam("belt outer strip", chains["belt_outer_strip"], *STRIP, "folding skin"),
        Beam("belt inner strip", chains["belt_inner_strip"], *STRIP, "folding inner"),
        Beam("window frame", chains["frame"], *FRAME, "folding inner"),
    )


def _face_bonds(
    mesh: DoorMesh,
    points: Floats,
    nodes: Ints,
    part: tuple[str, ...],
    law: Floats,
    kind: str,
    *,
    above: bool,
    offset: float | None,
) -> Bonds:
    """Return bonds from single nodes to the sheet under (or over) them.

    ``above``: the nodes lie outboard of the sheet; opening is then node minus sheet, else sheet minus node.
    ``offset`` None takes the gap at rest.
    """
    triangle, weights, distance = mesh.locate(points[nodes], part)
    corners = mesh.surface.triangles[triangle]
    sign = 1.0 if above else -1.0
    count = len(nodes)
    all_nodes = np.column_stack([nodes, nodes, corners, corners[:, 0]])
    r = np.zeros((count, 6))
    r[:, 0] = sign
    r[:, 2:5] = -sign * weights
    p, q = np.zeros((count, 6)), np.zeros((count, 6))
    a, b, c = (points[corners[:, i]] for i in range(3))
    normal = np.cross(b - a, c - a)[:, 1] * mesh.outboard_sign
    first = np.where(normal > 0.0, 3, 4)
    rows = np.arange(count)
    p[rows, first], p[:, 2] = 1.0, -1.0
    q[rows, 7 - first], q[:, 2] = 1.0, -1.0
    laws = np.tile(law, (count, 1))
    laws[:, 6] = distance if offset is None else offset
    return Bonds(
        all_nodes.astype(np.int64),
        np.stack([r, p, q], axis=1),
        np.ones(count, bool),
        laws,
        np.zeros(count, np.int64),
        (kind,),
        np.full(count, np.nan),
        np.full(count, 1.5 * mesh.shape.spacing_m),
    )


def _touching(car: Car, mesh: DoorMesh, points: Floats) -> list[Bonds]:
    hem = set(mesh.hem_skin.tolist())
    skin = np.array([n for n in mesh.surface.nodes_of(("outer_skin",)) if n not in hem], dtype=np.int64)
    bar = mesh.surface.chains["bar"][1:-1]
    radius = 0.5 * BAR_DIAMETER_M
    inner = ("inner_panel", "latch_wrap")
    step = float(np.linalg.norm(points[bar[1]] - points[bar[0]]))
    touch = touch_law(pressure=TOUCH_STIFFNESS_N_PER_M, offset_m=0.0)
    out = [_face_bonds(mesh, points, skin, inner, touch, "touch", above=True, offset=2.0e-3)]
    if car.bar:
        pad = bond_law(
            strength=PAD_STRENGTH_N_PER_M * step,
            energy=PAD_ENERGY_J_PER_M * step,
            shear_ratio=1.0,
            rise_m=3.0e-3,
            pressure=TOUCH_STIFFNESS_N_PER_M,
        )
        out.append(_face_bonds(mesh, points, bar, ("outer_skin",), pad, "pad", above=False, offset=None))
        out.append(_face_bonds(mesh, points, bar, inner, touch, "bar touch", above=True, offset=radius))
    return out


def _limit(floor: Sequence[float], ratio: float) -> Floats:
    return np.array(floor) * ratio


def _foot(mesh: DoorMesh, edge: str, height_m: float, depth_m: float = 0.0) -> tuple[Ints, Floats]:
    """Return nodes and weights of a latch's or hinge's housing, ``depth_m`` in from the lip; 0: half-way."""
    depth = depth_m or 0.5 * mesh.shape.shut_face_depth_m
    deep = min(HOUSING_HALF_M, depth - mesh.shape.hem_width_m) if depth_m else HOUSING_HALF_M
    return mesh.fitting_weights(edge, height_m, depth, HOUSING_HALF_M, deep)


def _latch_foot(mesh: DoorMesh) -> tuple[Ints, Floats]:
    return _foot(mesh, "latch_edge", mesh.shape.latch_height_m)


def _bar_foot(mesh: DoorMesh, foot: str) -> tuple[Ints, Floats]:
    """Return nodes and weights of the bracket that carries one end of the bar."""
    edge = "hinge_edge" if foot == "front" else "latch_edge"
    shape = mesh.shape
    return mesh.fitting_weights(edge, shape.bar_height_m, *BAR_FOOT_M)


def _ties(car: Car, mesh: DoorMesh) -> tuple[Tie, ...]:
    """Return latch, hinges and bar feet; a strength ratio below one would be below the law's floor."""
    shape = mesh.shape
    ties = latch_ties(car, _latch_foot(mesh))
    limit = _limit(HINGE_SET_FLOOR_N, 0.5 * car.hinge_strength_ratio)
    for name, height in (("upper", shape.upper_hinge_height_m), ("lower", shape.lower_hinge_height_m)):
        leaf = _foot(mesh, "hinge_edge", height, car.hinge_depth_m)
        give = car.fitting_give_m
        ties.append(Tie(f"{name} hinge", *leaf, FITTING_STIFFNESS_N_PER_M, limit, give_m=give))
    bar = mesh.surface.chains["bar"]
    for end, foot in ((bar[0], "front"), (bar[-1], "rear")):
        seat, share = _bar_foot(mesh, foot)
        limit = np.full(3, car.bar_foot_strength_n if car.bar else np.inf)
        nodes = np.concatenate([[end], seat]).astype(np.int64)
        weights = np.concatenate([[1.0], -share])
        ties.append(Tie(f"bar foot {foot}", nodes, weights, 2.0e7, limit, "bar feet"))
    return tuple(ties)


def door_shape(car: Car) -> DoorShape:
    """Return the door's dimensions for a car."""
    return replace(
        DoorShape(),
        hem_width_m=car.hem_width_m,
        shut_face_depth_m=car.shut_face_depth_m,
        spacing_m=car.lattice_spacing_m,
    )


def door_structure(car: Car, mesh: DoorMesh) -> Structure:
    """Return the structure of a door mesh."""
    surface = mesh.surface
    points = np.array(surface.points, dtype=float)
    bar = surface.chains["bar"]
    for end, foot in ((bar[0], "front"), (bar[-1], "rear")):
        nodes, weights = _bar_foot(mesh, foot)
        points[end] = weights @ points[nodes]
    sections = _sections(car)
    bonds = Bonds.join([seam_bonds(car, mesh), *_touching(car, mesh, points)])
    return Structure(
        points,
        surface.triangles,
        _triangle_sections(mesh, sections),
        sections,
        _beams(car, mesh),
        bonds,
        _ties(car, mesh),
        rim=mesh.wall[-1],
        rim_y_m=points[mesh.wall[-1], 1].copy(),
        outboard_sign=mesh.outboard_sign,
        names=dict(surface.nodes),
        sliders=latch_sliders(car, _latch_foot(mesh)),
    )
