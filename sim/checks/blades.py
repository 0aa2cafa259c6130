"""Boxes with a side cut, against the formulas of the open section that is left.

A thin box of midline width b, depth h, wall t with one of its two walls of width b gone is a channel:

* its middle lies at  c = h^2 / (b + 2 h)  from the wall left;
* I = b t c^2 + 2 (t h^3 / 12 + t h (h / 2 - c)^2);
* fully plastic, as much of it pulls as presses: for 2 h > b the line between stands at  p = (2 h - b) / 4
  from the wall left and  M = sigma_y t (b p + p^2 + (h - p)^2);
* a cantilever's head moves by  F H^3 / (3 E I) + H F int (S / I)^2 ds / (G t),  S the first moment, from the
  webs' free edges on, of what lies beyond s (shear flow F S / I).

All from memory; they stand in every handbook of mechanics of materials.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray
from scipy.integrate import quad

from meshes.box import BoxMesh
from sim.blades import Blades
from sim.checks import specimens
from sim.checks.pillars import (
    HEIGHT_M,
    POISSON,
    STOCKY_HEIGHT_M,
    STOCKY_M,
    STOCKY_WALL_M,
    STOCKY_YIELD_PA,
    box,
    sheet,
    stood,
)
from sim.checks.row import CONSERVATION, TEXTBOOK, Row, settling, spacing_word
from sim.cutting import CutDone, cut
from sim.increment import Point, Stepper
from sim.ledger import Ledger
from sim.network import Drive, Network
from sim.structure import Structure

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

SECTION_M, WALL_M = (0.125, 0.095), 0.0015
GAP_M = (0.10, 0.30)
"""From where to where the stocky box's wall is cut out: low enough that the metal there gives first."""


def channel(width_m: float, depth_m: float, wall_m: float) -> tuple[float, float]:
    """Return I [m^4] and the plastic modulus [m^3] of what is left of a box without one wall of its width."""
    b, h, t = width_m, depth_m, wall_m
    c, p = h * h / (b + 2.0 * h), 0.25 * (2.0 * h - b)
    second = b * t * c**2 + 2.0 * (t * h**3 / 12.0 + t * h * (0.5 * h - c) ** 2)
    return second, t * (b * p + p**2 + (h - p) ** 2)


def head_m_per_n(width_m: float, depth_m: float, wall_m: float, height_m: float) -> float:
    """Return how far a channel's head moves per force [m/N]."""
    b, h, t = width_m, depth_m, wall_m
    second, _ = channel(b, h, t)
    c = h * h / (b + 2.0 * h)
    young = specimens.STEEL_PA
    shear = young / (2.0 * (1.0 + POISSON))

    def web(s: float) -> float:  # from the free edge
        return float(t * s * (h - c - 0.5 * s))

    at_corner = web(h)

    def flange(s: float) -> float:  # from the corner to the middle, where the flow is nothing
        return float(at_corner * (1.0 - s / (0.5 * b)))

    flow = 2.0 * (quad(lambda s: web(s) ** 2, 0.0, h)[0] + quad(lambda s: flange(s) ** 2, 0.0, 0.5 * b)[0])
    return float(height_m**3 / (3.0 * young * second) + height_m * flow / (second**2 * shear * t))


def _stepper(structure: Structure, drives: tuple[Drive, ...] = ()) -> Stepper:
    return Stepper(Network(structure, drives), specimens.never, viscous_n_per_m=0.0)


def _cut(stepper: Stepper, point: Point, blades: Blades) -> tuple[Stepper, Point, CutDone]:
    every = np.ones(len(stepper.network.structure.triangles), dtype=bool)
    return cut(stepper, point, replace(blades, rows=every))


def _webs(structure: Structure, mesh: BoxMesh, height_m: float) -> tuple[Ints, Floats]:
    """Return the nodes of front and rear wall at a height and how they share a force, summing to one."""
    nodes, shares = [], []
    names = np.array(mesh.surface.part_names)[mesh.surface.triangle_part]
    for wall in ("front", "rear"):
        own = np.unique(structure.triangles[names == wall])
        own = own[np.abs(structure.points[own, 2] - height_m) < 1e-9]
        own = own[np.argsort(structure.points[own, 1])]
        nodes.append(own)
        shares.append(0.5 * specimens.shared(structure.points, own, [1.0, 0.0, 0.0])[:, 0])
    return np.concatenate(nodes), np.concatenate(shares)


@lru_cache
def open_box(spacing_m: float) -> tuple[float, float]:
    """Return what the head of a box moves per force [m/N]: whole, and cut along both edges of a wall."""
    mesh = box(SECTION_M, SECTION_M, HEIGHT_M, spacing_m)
    whole = stood(sheet(mesh, WALL_M, specimens.metal(nu=POISSON)), mesh)
    stepper = _stepper(whole)
    point = stepper.first_point(stepper.network.initial_state(), Ledger())
    half, inset = 0.5 * SECTION_M[0], 0.002
    for sign in (1.0, -1.0):
        place = np.array([sign * (half - inset), 0.5 * SECTION_M[1], 0.5 * HEIGHT_M])
        blades = Blades(
            place,
            np.array([0.0, -1.0, 0.0]),
            np.array([sign, 0.0, 0.0]),
            np.zeros(0, bool),
            opening_m=3.0 * HEIGHT_M,
            depth_m=0.005,
            reach_m=HEIGHT_M,
        )
        stepper, point, _ = _cut(stepper, point, blades)
    found = []
    for structure in (whole, stepper.network.structure):
        nodes, shares = _webs(structure, mesh, HEIGHT_M)
        force = np.zeros_like(structure.points)
        force[nodes, 1] = 20.0 * shares
        moved = specimens.solve(structure, force).moved
        found.append(float(shares @ moved[nodes, 1]) / 20.0)
    return found[0], found[1]


def open_stiffness(spacing_m: float) -> Row:
    """Return the deflection of a box whose outer wall is cut along both its edges."""
    # as the tapering pillar's row: triangles of even strain are stiff in the webs' own plane
    allowed = 0.06 if spacing_m > 0.025 else 0.03
    return Row(
        "box cut along two edges: head's deflection of the channel left",
        TEXTBOOK,
        1e6 * head_m_per_n(*SECTION_M, WALL_M, HEIGHT_M),
        1e6 * open_box(spacing_m)[1],
        "mm/kN",
        allowed,
        spacing=spacing_word(spacing_m),
    )


def open_settles() -> Row:
    """Return whether the deflection comes nearer on a finer lattice."""
    return settling("box cut along two edges", open_stiffness(0.03), open_stiffness(0.02))


@dataclass(frozen=True)
class Gap:
    """A stocky box with a length of one wall cut out, pushed over.

    force_n : shape (k,), over the travels;  plastic_n : of the channel left, at its lower end
    taken_kg : mass of the piece that came out;  gap_ratio, failed : of the books, and steps not converged
    """

    travel_m: Floats
    force_n: Floats
    plastic_n: float
    taken_kg: float
    gap_ratio: float
    failed: int


def _round_the_piece() -> list[Blades]:
    """Return the four cuts round a piece of the wall at the back."""
    width, depth = STOCKY_M
    low, high = GAP_M
    way, none = np.array([0.0, 1.0, 0.0]), np.zeros(0, bool)
    out = [
        Blades(np.array([0.0, -0.5 * depth, z]), way, np.array([0.0, 0.0, 1.0]), none, depth_m=0.002)
        for z in GAP_M
    ]
    for sign in (1.0, -1.0):
        place = np.array([sign * (0.5 * width - 0.002), -0.5 * depth, 0.5 * (low + high)])
        reach = 0.5 * (high - low) + 0.01
        normal = np.array([sign, 0.0, 0.0])
        out.append(Blades(place, way, normal, none, opening_m=2.0 * reach, depth_m=0.005, reach_m=reach))
    return out


@lru_cache
def gap(spacing_m: float) -> Gap:
    """Return the forces of a stocky box, its pulled wall cut out over a length, pushed to twice yield."""
    metal = specimens.metal(nu=POISSON, yield_pa=STOCKY_YIELD_PA)
    mesh = box(STOCKY_M, STOCKY_M, STOCKY_HEIGHT_M, spacing_m)
    structure = stood(sheet(mesh, STOCKY_WALL_M, metal), mesh)
    nodes, shares = _webs(structure, mesh, STOCKY_HEIGHT_M)
    drive = Drive(nodes, shares, np.array([0.0, 1.0, 0.0]), float(shares @ structure.points[nodes, 1]), 1.0e9)
    stepper = _stepper(structure, (drive,))
    point = stepper.first_point(stepper.network.initial_state(), Ledger())
    for blades in _round_the_piece():
        stepper, point, done = _cut(stepper, point, blades)
    left = stepper.network.structure
    lowest = min(float(left.points[edge.nodes, 2].min()) for edge in left.raw)
    width, depth = STOCKY_M
    limit = STOCKY_YIELD_PA * channel(width, depth, STOCKY_WALL_M)[1] / (STOCKY_HEIGHT_M - lowest)
    elastic = limit * head_m_per_n(width, depth, STOCKY_WALL_M, STOCKY_HEIGHT_M)
    travels = elastic * np.array([0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.8, 1.0, 1.25, 1.5, 2.0])
    forces = []
    for travel in travels:
        point = stepper.advance(point, float(travel))
        forces.append(float(point.force_n[0]))
    tips = point.ledger.work_j - point.ledger.lines["cut"]
    ratio = point.ledger.closure_ratio(tips)
    return Gap(travels, np.array(forces), limit, done.taken_kg, ratio, stepper.tally.failed)


def _gap_ratio(spacing_m: float) -> float:
    found = gap(spacing_m)
    return float(found.force_n[-1]) / found.plastic_n


GAP_LATTICES_M = (0.03, 0.02)


def gap_moment() -> Row:
    """Return the force at which a box folds where its pulled wall has been cut out, on no spacing at all."""
    coarse, fine = GAP_LATTICES_M
    # the fold lies half a row above the end of the gap, and a row of metal beside it stops its sideways
    # strain: both are of first order in the spacing, so a line through two lattices is read where it ends
    ratio = _gap_ratio(fine) - (_gap_ratio(coarse) - _gap_ratio(fine)) * fine / (coarse - fine)
    plastic = gap(fine).plastic_n
    return Row(
        "stocky box, pulled wall cut out: force at which the channel left is plastic",
        TEXTBOOK,
        plastic / 1e3,
        ratio * plastic / 1e3,
        "kN",
        0.05,  # of the extrapolation: the line through 20 and 12 mm ends 2 % higher
        spacing="30 and 20 mm, to 0",
    )


def gap_settles() -> Row:
    """Return whether that force comes nearer on a finer lattice."""
    rows = [
        Row("", TEXTBOOK, 1.0, _gap_ratio(spacing), spacing=f"{1e3 * spacing:g} mm")
        for spacing in GAP_LATTICES_M
    ]
    return settling("stocky box, pulled wall cut out", *rows)


@dataclass(frozen=True)
class Parted:
    """A box pulled along by its head and cut through meanwhile.

    before_n, after_n : force at the head, before the cut and after it [N]
    stored_j : energy the pull had stored, by the closed form;  released_j : what was booked as released
    done : what the cut did
    """

    before_n: float
    after_n: float
    stored_j: float
    released_j: float
    done: CutDone


PULLED_M = 1.0e-4


@lru_cache
def parted(spacing_m: float) -> Parted:
    """Return what becomes of a box pulled at its head when it is cut through."""
    mesh = box(SECTION_M, SECTION_M, HEIGHT_M, spacing_m)
    structure = stood(sheet(mesh, WALL_M, specimens.metal(nu=POISSON)), mesh)
    nodes = mesh.surface.nodes["end_ring"]
    size = np.linalg.norm(structure.points[np.roll(nodes, -1)] - structure.points[nodes], axis=1)
    shares = 0.5 * (size + np.roll(size, 1)) / size.sum()
    drive = Drive(
        nodes, shares, np.array([0.0, 0.0, 1.0]), float(shares @ structure.points[nodes, 2]), 1.0e11
    )
    stepper = Stepper(Network(structure, (drive,)), specimens.never)
    start = stepper.first_point(stepper.network.initial_state(), Ledger())
    point = stepper.advance(start, PULLED_M)
    blades = Blades(
        np.array([0.0, 0.0, 0.6]),
        np.array([1.0, 0.0, 0.0]),
        np.array([0.0, 0.0, 1.0]),
        np.zeros(0, bool),
    )
    _, after, done = _cut(stepper, point, blades)
    lines = after.ledger.lines
    area = 2.0 * WALL_M * sum(SECTION_M)
    stored = 0.5 * specimens.STEEL_PA * area / HEIGHT_M * PULLED_M**2
    return Parted(float(point.force_n[0]), float(after.force_n[0]), stored, lines["released in a jump"], done)


def released(spacing_m: float) -> Row:
    """Return the energy a pulled box lets go when it is cut through: all E A d^2 / 2 L it had stored."""
    found = parted(spacing_m)
    return Row(
        "pulled box cut through: energy released",
        TEXTBOOK,
        found.stored_j,
        found.released_j,
        "J",
        0.005,  # the tool's contact, a thousand times as stiff, and the drag while it comes to rest
        spacing=spacing_word(spacing_m),
    )


def parted_pull(spacing_m: float) -> Row:
    """Return what a box still holds after a cut through: nothing but the drag of its free nodes."""
    found = parted(spacing_m)
    return Row(
        "box cut through: pull at its head over that of the whole one",
        CONSERVATION,
        0.0,
        found.after_n / found.before_n,
        "-",
        1.0e-4,  # five newtons per metre and node of drag on the piece that comes off
        relation="within",
        spacing=spacing_word(spacing_m),
    )
