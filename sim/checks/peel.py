"""Peeling a strip from a rigid base and from its twin: what a seam's energy per length does to a force.

Peel load is work of the tip over the length of whole bond points released (five or more), so that the saw of
a coarse net does not enter.  The lattice, the bead and the sheet are a door's: 45, 22.5 and 11.25 mm, 60 J/m,
5 N/mm, 0.7 mm steel.

References
----------
[kendall-1975] steady peel F / b (1 - cos a) = G: at 90 degrees F / b = G, folded right back F / b = G / 2;
T-peel of two arms 2 F / b = G by the same balance.
[kinloch-1994] arms that yield add the work of bending them.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from meshes import lattice
from meshes.lattice import Lattice
from sim.bond import bond_law
from sim.checks import specimens
from sim.checks.row import CONSERVATION, ITSELF, Row, spacing_word
from sim.increment import Stepper
from sim.ledger import Ledger
from sim.materials import Metal
from sim.network import Drive, Network, State
from sim.structure import Bonds, Structure

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

WIDTH_M, THICKNESS_M = 0.045, 0.7e-3
ENERGY_J_PER_M, STRENGTH_N_PER_M, RISE_M = 60.0, 5.0e3, 3.0e-4
FREE_M, BONDED_M = 0.45, 0.45
LIFT_M = 0.25
"""How far the end of a strip is lifted before it is folded back: too little to peel it."""
TOUGHNESS = ENERGY_J_PER_M / WIDTH_M
ELASTIC = specimens.metal(nu=0.0)


def yielding(yield_pa: float) -> Metal:
    """Return a sheet metal that yields and hardens as a door's does."""
    return specimens.metal(nu=0.3, yield_pa=yield_pa, hardening_pa=1.0e9)


def _bead(
    nodes: list[tuple[int, ...]],
    first: Floats,
    second: Floats,
    stations: Floats,
    share_m: float,
    *,
    plane: bool,
) -> Bonds:
    """Return bond points at given node sextets; ``first`` and ``second`` are coefficients of p and q."""
    count = len(nodes)
    # two chains of bond points, one along either edge of the strip, share the seam's energy and strength
    law = bond_law(
        strength=0.5 * STRENGTH_N_PER_M,
        energy=0.5 * ENERGY_J_PER_M,
        shear_ratio=5.0,
        rise_m=RISE_M,
        pressure=0.5 * STRENGTH_N_PER_M / RISE_M,
        length_m=share_m,
    )
    xi = np.tile([0.25, 0.75], count // 2)
    zero = np.zeros(count)
    r = np.stack([1 - xi, xi, xi - 1, -xi, zero, zero], axis=1)
    return Bonds(
        np.array(nodes, np.int64),
        np.stack([r, first, second], axis=1),
        np.full(count, plane),
        np.tile(law, (count, 1)),
        np.zeros(count, np.int64),
        ("seam",),
        stations,
        np.full(count, 0.02),
    )


@dataclass(frozen=True)
class Specimen:
    """A strip ready to be peeled.

    point_m : the length of strip one bond point stands for
    start : what the strip has been bent to before; None is flat
    """

    network: Network
    point_m: float
    start: State | None = None


Maker = Callable[[float, Metal], Specimen]


def _strip(spacing_m: float, metal: Metal) -> tuple[Lattice, Structure]:
    lat = lattice.one_diagonal(FREE_M + BONDED_M, WIDTH_M, round((FREE_M + BONDED_M) / spacing_m), 1)
    return lat, specimens.sheet(lat, THICKNESS_M, metal)


def _cells(lat: Lattice, spacing_m: float) -> list[tuple[Ints, Ints, int]]:
    """Return (chain, other chain, cell) of every bonded cell edge, both edges of the strip."""
    edges = lat.boundary["bottom"], lat.boundary["top"]
    count = round(BONDED_M / spacing_m)
    return [(own, other, i) for own, other in (edges, edges[::-1]) for i in range(count)]


def from_base(spacing_m: float, metal: Metal) -> Specimen:
    """Return a strip bonded to a rigid base, its free end lifted straight up."""
    lat, structure = _strip(spacing_m, metal)
    points, count = structure.points, len(structure.points)
    # the base: for every node of the strip one place under it and one deeper, both held
    points = np.concatenate([points, points, points - np.array([0.0, 0.0, 0.05])])
    nodes: list[tuple[int, ...]] = []
    stations: list[float] = []
    for own, _, i in _cells(lat, spacing_m):
        a, b = int(own[i]), int(own[i + 1])
        nodes += [(a, b, a + count, b + count, a + 2 * count, b + 2 * count)] * 2
        stations += [(i + 0.25) * spacing_m, (i + 0.75) * spacing_m]
    xi, zero = np.tile([0.25, 0.75], len(nodes) // 2), np.zeros(len(nodes))
    p = np.stack([zero, zero, 1 - xi, xi, xi - 1, -xi], axis=1)
    bonds = _bead(nodes, p, np.zeros_like(p), np.array(stations), spacing_m / 2, plane=False)
    structure = replace(structure, points=points, bonds=bonds)
    base = np.arange(count, 3 * count)
    structure = specimens.held(structure, (base, "xyz"), (slice(None), "y"), (lat.boundary["left"], "xz"))
    drive = Drive(np.array(lat.boundary["right"]), np.array([0.5, 0.5]), np.array([0.0, 0.0, 1.0]), 0.0)
    return Specimen(Network(structure, [drive]), spacing_m / 4)


def folded_back(spacing_m: float, metal: Metal) -> Specimen:
    """Return a strip bonded to a rigid base whose free end has been lifted and is drawn back over it."""
    flat = from_base(spacing_m, metal)
    (up,) = flat.network.drives
    stepper = Stepper(flat.network, specimens.never, viscous_n_per_m=0.0)
    point = stepper.first_point(flat.network.initial_state(), Ledger())
    for travel in np.linspace(0.0, LIFT_M, 26)[1:]:
        point = stepper.advance(point, float(travel))
    if stepper.tally.failed or flat.network.parted(point.state).any():
        raise specimens.NotSolvedError("the strip's end could not be lifted without peeling it")
    back = np.array([-1.0, 0.0, 0.0])
    start = float(back @ (up.weights @ point.state.points[up.nodes]))
    return Specimen(
        flat.network.with_drives([Drive(up.nodes, up.weights, back, start)]), flat.point_m, point.state
    )


def from_twin(spacing_m: float, metal: Metal) -> Specimen:
    """Return two strips bonded face to face, their free ends pulled apart."""
    lat, structure = _strip(spacing_m, metal)
    count = len(structure.points)
    nodes: list[tuple[int, ...]] = []
    stations: list[float] = []
    signs: list[float] = []
    for own, other, i in _cells(lat, spacing_m):
        a, b, across = int(own[i]), int(own[i + 1]), int(other[i])
        nodes += [(a, b, a + count, b + count, across + count, across + count)] * 2
        stations += [(i + 0.25) * spacing_m, (i + 0.75) * spacing_m]
        signs += [1.0 if other[0] == lat.boundary["top"][0] else -1.0] * 2
    zero, one, sign = np.zeros(len(nodes)), np.ones(len(nodes)), np.array(signs)
    p = np.stack([zero, zero, -one, one, zero, zero], axis=1)
    q = np.stack([zero, zero, -sign, zero, sign, zero], axis=1)
    bonds = _bead(nodes, p, q, np.array(stations), spacing_m / 2, plane=True)
    structure = replace(
        structure,
        points=np.concatenate([structure.points, structure.points]),
        triangles=np.concatenate([structure.triangles, structure.triangles + count]),
        triangle_section=np.concatenate([structure.triangle_section, structure.triangle_section]),
        bonds=bonds,
    )
    left, right = lat.boundary["left"], lat.boundary["right"]
    structure = specimens.held(structure, (slice(None), "y"), (left, "xz"), (left + count, "xz"))
    ends = np.concatenate([right, right + count])
    drive = Drive(ends, np.array([0.5, 0.5, -0.5, -0.5]), np.array([0.0, 0.0, 1.0]), 0.0)
    return Specimen(Network(structure, [drive]), spacing_m / 4)


@dataclass(frozen=True)
class Peeled:
    """Energies of a stretch of steady peeling, per length and width [J/m^2]."""

    work: float
    seam: float
    folding: float
    stored: float


@lru_cache
def peel(make: Maker, spacing_m: float, metal: Metal, step_m: float = 0.004) -> Peeled:
    """Return tip work, seam, folding and stored energy per peeled length and width."""
    specimen = make(spacing_m, metal)
    network = specimen.network
    stepper = Stepper(network, specimens.never, viscous_n_per_m=0.0)
    start = network.initial_state() if specimen.start is None else specimen.start
    point = stepper.first_point(start, Ledger())
    total = len(network.structure.bonds.law)
    begun, first, released = None, 0, 0
    while released < 0.55 * total and point.travel_m < 2.0:
        point = stepper.advance(point, point.travel_m + step_m)
        released = int(network.parted(point.state).sum())
        # from a fifth of the bead on, at moments when whole stations have just gone
        if begun is None and released >= 0.2 * total:
            begun, first = point.ledger, released
    if stepper.tally.failed or begun is None or released - first < 5:
        raise specimens.NotSolvedError("the strip did not peel steadily")
    scale = (released - first) * specimen.point_m * WIDTH_M
    end = point.ledger

    def spent(*names: str) -> float:
        return sum(end.lines[name] - begun.lines[name] for name in names) / scale

    return Peeled(
        (end.work_j - begun.work_j) / scale,
        spent("seam peel", "seam slip"),
        spent("folding skin"),
        (end.stored_j - begun.stored_j) / scale,
    )


def right_angle_load(spacing_m: float) -> Row:
    """Return the load of peeling a strip off at a right angle, per width."""
    # 5 % on the load, the case's allowance
    return Row(
        "strip peeled at a right angle: load per width",
        "kendall-1975",
        TOUGHNESS / 1e3,
        peel(from_base, spacing_m, ELASTIC).work / 1e3,
        "N/mm",
        0.05,
        spacing=spacing_word(spacing_m),
    )


def right_angle_seam(spacing_m: float) -> Row:
    """Return the energy the books give the seam when a strip is peeled, per area."""
    return Row(
        "strip peeled at a right angle: energy spent on the seam",
        "turon-2007",
        TOUGHNESS / 1e3,
        peel(from_base, spacing_m, ELASTIC).seam / 1e3,
        "kJ/m\u00b2",
        0.02,
        spacing=spacing_word(spacing_m),
    )


TIGHT = (
    "the strip folds back within 7 cm, less than two of these triangles; on half the spacing it is 0.9 % off"
)


def folded_load(spacing_m: float) -> Row:
    """Return the load of peeling a strip that is folded right back, per width."""
    # the end goes two lengths for each length peeled
    return Row(
        "strip folded right back and peeled: load per width",
        "kendall-1975",
        0.5 * TOUGHNESS / 1e3,
        0.5 * peel(folded_back, spacing_m, ELASTIC).work / 1e3,
        "N/mm",
        0.05,
        spacing=spacing_word(spacing_m),
        known=TIGHT if spacing_m > 0.03 else "",
    )


def t_peel_load(spacing_m: float) -> Row:
    """Return the load of pulling two bonded strips apart, per width."""
    # the tips part by two lengths for each length peeled: F / b = G / 2 is tip work over length = G
    return Row(
        "two strips pulled apart: load per width",
        "kendall-1975",
        0.5 * TOUGHNESS / 1e3,
        0.5 * peel(from_twin, spacing_m, ELASTIC).work / 1e3,
        "N/mm",
        0.05,
        spacing=spacing_word(spacing_m),
    )


def halved_load(make: Maker, spacing_m: float) -> Row:
    """Return the peel load on half the spacing against that on the whole."""
    coarse, fine = peel(make, spacing_m, ELASTIC), peel(make, 0.5 * spacing_m, ELASTIC)
    return Row(
        f"{_specimen_word(make)}: load on half the spacing",
        ITSELF,
        coarse.work / 1e3,
        fine.work / 1e3,
        "kJ/m\u00b2",
        0.05,  # the case's allowance
        spacing=f"{spacing_word(spacing_m)} to {spacing_word(0.5 * spacing_m)}",
    )


def halved_energy(make: Maker, spacing_m: float) -> Row:
    """Return the seam energy on half the spacing against that on the whole."""
    coarse, fine = peel(make, spacing_m, ELASTIC), peel(make, 0.5 * spacing_m, ELASTIC)
    return Row(
        f"{_specimen_word(make)}: seam energy on half the spacing",
        ITSELF,
        coarse.seam / 1e3,
        fine.seam / 1e3,
        "kJ/m\u00b2",
        0.02,  # the case's allowance
        spacing=f"{spacing_word(spacing_m)} to {spacing_word(0.5 * spacing_m)}",
    )


def _specimen_word(make: Maker) -> str:
    return "strip peeled at a right angle" if make is from_base else "two strips pulled apart"


YIELD_SPACING_M = 0.0225


def plastic_load(yield_pa: float) -> Row:
    """Return the peel load with arms that yield: never below that of elastic arms."""
    return Row(
        f"strip of {yield_pa / 1e6:g} MPa peeled: yield only adds to the load",
        "kinloch-1994",
        TOUGHNESS / 1e3,
        peel(from_base, YIELD_SPACING_M, yielding(yield_pa)).work / 1e3,
        "N/mm",
        relation="at least",
        spacing=spacing_word(YIELD_SPACING_M),
    )


def plastic_seam(yield_pa: float) -> Row:
    """Return the seam's own share of the peel load with arms that yield."""
    return Row(
        f"strip of {yield_pa / 1e6:g} MPa peeled: the seam's own share stays",
        "turon-2007",
        TOUGHNESS / 1e3,
        peel(from_base, YIELD_SPACING_M, yielding(yield_pa)).seam / 1e3,
        "kJ/m\u00b2",
        0.02,
        spacing=spacing_word(YIELD_SPACING_M),
    )


def plastic_books(yield_pa: float) -> Row:
    """Return seam, folding and stored energy together against the work of the tip."""
    found = peel(from_base, YIELD_SPACING_M, yielding(yield_pa))
    return Row(
        f"strip of {yield_pa / 1e6:g} MPa peeled: seam, folding and stored energy together",
        CONSERVATION,
        found.work / 1e3,
        (found.seam + found.folding + found.stored) / 1e3,
        "kJ/m\u00b2",
        0.03,  # the case's figure
        spacing=spacing_word(YIELD_SPACING_M),
    )
