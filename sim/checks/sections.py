"""Long sections through two thick sheets glued together: the end-notched bar, and the lap that bends.

The sections are cut in the sheet's own triangles and held in their plane; glue joins node to node.

References
----------
[russell-1982] end-notched bar on two supports 2 L apart: C = (3 a^3 + 2 L^3) / (8 E b h^3),
G = 9 P^2 a^2 / (16 E b^2 h^3).
[goland-reissner-1944] peak shear of a bonded lap whose sheets bend: k = 1 / (1 + 2 sqrt 2 tanh(u2 c)),
tmax = (p t / 8 c) [(b c / t) (1 + 3 k) coth(b c / t) + 3 (1 - k)], b^2 = 8 Ga t / (E eta).
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from meshes.lattice import split_cells
from sim.bond import bond_law, touch_law
from sim.checks import specimens
from sim.checks.cracks import pairs
from sim.checks.row import Row
from sim.increment import Stepper
from sim.ledger import Ledger
from sim.network import Drive, Load, Network
from sim.structure import Bonds, Section, Structure

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

STEEL_PA = specimens.STEEL_PA


@dataclass(frozen=True)
class Stack:
    """Two sheets in section, the second on top of the first, with two held points for the glue's direction.

    lower, upper : node ids by (column, layer), layers from below
    """

    structure: Structure
    lower: Ints
    upper: Ints
    directions: tuple[int, int]


def stack(lower_x: Floats, upper_x: Floats, height_m: float, layers: int, width_m: float, nu: float) -> Stack:
    """Return two sheets of one height in section; they touch at y = 0 and share no node."""
    y = np.linspace(0.0, height_m, layers + 1)
    blocks, grids, count = [], [], 0
    for x, low in ((lower_x, -height_m), (upper_x, 0.0)):
        xx, yy = np.meshgrid(x, y + low, indexing="ij")
        blocks.append(np.column_stack([xx.ravel(), yy.ravel(), np.zeros(xx.size)]))
        grids.append(count + np.arange(xx.size).reshape(xx.shape))
        count += xx.size
    triangles = np.concatenate([split_cells(np.asarray(ids.T)) for ids in grids])
    points = np.concatenate([*blocks, [[0.0, 0.0, 0.0], [0.0, -0.1, 0.0]]])
    section = Section("sheet in section", width_m, specimens.metal(nu=nu))
    structure = Structure(points, triangles, np.zeros(len(triangles), np.int64), (section,))
    return Stack(structure, grids[0], grids[1], (count, count + 1))


def tributary(x: Floats) -> Floats:
    """Return the length each station stands for [m]."""
    size = np.diff(x)
    share = np.zeros(len(x))
    share[:-1] += 0.5 * size
    share[1:] += 0.5 * size
    return share


# --- the end-notched bar

HEIGHT_M, WIDTH_M, CRACK_M, HALF_SPAN_M, ENERGY_J_PER_M2 = 0.010, 0.025, 0.060, 0.100, 4700.0
# ten times as stiff as 0.2 mm of epoxy (shear modulus 700 MPa), because the formula has a rigid glue line;
# half the strength that makes it elastic until it parts, so that it does not run node by node
GLUE_PA_PER_M = 10.0 * 700.0e6 / 0.2e-3
GLUE_STRENGTH_PA = 0.5 * float(np.sqrt(2.0 * ENERGY_J_PER_M2 * GLUE_PA_PER_M))
NOTCHED_C = (3.0 * CRACK_M**3 + 2.0 * HALF_SPAN_M**3) / (8.0 * STEEL_PA * WIDTH_M * HEIGHT_M**3)
NOTCHED_N = float(np.sqrt(16.0 * STEEL_PA * WIDTH_M**2 * HEIGHT_M**3 * ENERGY_J_PER_M2 / (9.0 * CRACK_M**2)))


def _notched_network(layers: int) -> Network:
    columns = 20 * layers
    x = np.linspace(0.0, 2.0 * HALF_SPAN_M, columns + 1)
    pile = stack(x, x, HEIGHT_M, layers, WIDTH_M, 0.0)
    share = tributary(x)
    glued = x > CRACK_M + 1e-9
    laws = np.array(
        [
            bond_law(
                strength=GLUE_STRENGTH_PA * WIDTH_M,
                energy=ENERGY_J_PER_M2 * WIDTH_M,
                shear_ratio=1.0,
                rise_m=GLUE_STRENGTH_PA / GLUE_PA_PER_M,
                pressure=GLUE_PA_PER_M * WIDTH_M,
                length_m=float(size),
            )
            if own
            else touch_law(pressure=GLUE_PA_PER_M * WIDTH_M * float(size), offset_m=0.0)
            for size, own in zip(share, glued, strict=True)
        ]
    )
    bonds = pairs(pile.upper[:, 0], pile.lower[:, -1], pile.directions, laws, x)
    structure = Structure(
        pile.structure.points,
        pile.structure.triangles,
        pile.structure.triangle_section,
        pile.structure.sections,
        bonds=bonds,
    )
    left, right = int(pile.lower[0, 0]), int(pile.lower[-1, 0])
    structure = specimens.held(
        structure, (slice(None), "z"), (list(pile.directions), "xyz"), ([left], "xy"), ([right], "y")
    )
    middle = np.array([pile.upper[columns // 2, -1]])
    # a soft contact: a stiff one begins each step with more energy than it takes to part the glue under it
    start = float(-structure.points[middle[0], 1])
    drive = Drive(middle, np.ones(1), np.array([0.0, -1.0, 0.0]), start, stiffness_n_per_m=1.0e9)
    return Network(structure, [drive])


@lru_cache
def notched(layers: int) -> tuple[float, float]:
    """Return the compliance of the end-notched bar [m/N] and the load at which its crack runs [N]."""
    network = _notched_network(layers)
    stepper = Stepper(network, specimens.never, viscous_n_per_m=0.0)
    point = stepper.first_point(network.initial_state(), Ledger())
    limit = NOTCHED_N * NOTCHED_C
    glued = network.structure.bonds.law[:, 4] > 0.0
    compliance, peak = 0.0, 0.0
    for share in (0.1, 0.6, *np.arange(0.7, 1.6, 0.02)):
        point = stepper.advance(point, float(share) * limit)
        if (network.parted(point.state) & glued).any():
            break
        peak = float(point.force_n[0])
        compliance = compliance or network.drives[0].travel(point.state.points) / peak
    else:
        raise specimens.NotSolvedError("the crack of the notched bar did not run")
    return compliance, peak


def notched_compliance(layers: int) -> Row:
    """Return the end-notched bar's compliance."""
    # 8 %, the case's allowance; on fine triangles the arms' own shear, left out of the formula, adds 5 %
    return Row(
        "end-notched bar: compliance",
        "russell-1982",
        1e6 * NOTCHED_C,
        1e6 * notched(layers)[0],
        "mm/kN",
        0.08,
        spacing=f"{layers} layers an arm",
    )


def notched_load(layers: int) -> Row:
    """Return the load at which the end-notched bar's crack runs."""
    return Row(
        "end-notched bar: load at which the crack runs",
        "russell-1982",
        NOTCHED_N / 1e3,
        notched(layers)[1] / 1e3,
        "kN",
        0.08,
        spacing=f"{layers} layers an arm",
    )


# --- the lap whose sheets bend

LAP_M, LAP_WIDTH_M, FREE_M = 12.5e-3, 25.0e-3, 0.08
LAP_GLUE_M, LAP_SHEAR_PA, LAP_GLUE_PA = 0.2e-3, 700.0e6, 1.85e9
JOINTS = {1.5e-3: 5.0e3, 0.8e-3: 3.0e3}
"""Thickness of the sheets [m]: pull [N]."""


def goland_reissner_pa(sheet_m: float, force_n: float, nu: float = 0.3) -> float:
    """Return the peak shear of a bonded lap whose sheets bend [Pa]."""
    c, pull = 0.5 * LAP_M, force_n / (LAP_WIDTH_M * sheet_m)
    u2c = np.sqrt(3.0 * (1.0 - nu**2) / 2.0) * c / sheet_m * np.sqrt(pull / STEEL_PA)
    k = 1.0 / (1.0 + 2.0 * np.sqrt(2.0) * np.tanh(u2c))
    bct = np.sqrt(8.0 * LAP_SHEAR_PA * sheet_m / (STEEL_PA * LAP_GLUE_M)) * c / sheet_m
    return float(pull * sheet_m / (8.0 * c) * (bct * (1.0 + 3.0 * k) / np.tanh(bct) + 3.0 * (1.0 - k)))


@lru_cache
def bent_lap_pa(sheet_m: float, layers: int) -> float:
    """Return the largest shear of the glue of a lap whose sheets bend [Pa]."""
    force_n = JOINTS[sheet_m]
    size = sheet_m / layers
    lap = np.linspace(0.0, LAP_M, max(2, round(LAP_M / size)) + 1)
    out = LAP_M + np.geomspace(size, FREE_M, 24)
    lower_x, upper_x = np.concatenate([lap, out]), np.concatenate([(LAP_M - out)[::-1], lap])
    pile = stack(lower_x, upper_x, sheet_m, layers, LAP_WIDTH_M, 0.3)
    slip, opening = (g * LAP_WIDTH_M / LAP_GLUE_M for g in (LAP_SHEAR_PA, LAP_GLUE_PA))
    rise = 1.0e-3  # far beyond the opening here: the glue stays elastic
    laws = np.array(
        [
            bond_law(
                strength=opening * rise,
                energy=20.0 * opening * rise**2,
                shear_ratio=float(np.sqrt(slip / opening)),
                rise_m=rise,
                pressure=opening,
                length_m=float(share),
            )
            for share in tributary(lap)
        ]
    )
    upper, lower = pile.upper[len(out) :, 0], pile.lower[: len(lap), -1]
    bonds: Bonds = pairs(upper, lower, pile.directions, laws, lap)
    base = pile.structure
    structure = Structure(base.points, base.triangles, base.triangle_section, base.sections, bonds=bonds)
    # the ends stand in line with each other's middles and may turn
    held_end, pulled_end = int(pile.lower[-1, layers // 2]), int(pile.upper[0, layers // 2])
    structure = specimens.held(
        structure, (slice(None), "z"), (list(pile.directions), "xyz"), ([held_end], "xy"), ([pulled_end], "y")
    )
    dead = np.zeros_like(structure.points)
    dead[pulled_end, 0] = -force_n
    network = Network(structure)
    state, x = network.initial_state(), structure.points.copy()
    x[pile.upper.ravel(), 1] += 1.0e-9  # glue at exactly no opening neither pulls nor presses yet
    for part in (0.25, 0.5, 1.0):
        ev = specimens.settled(network, state, Load((), part * dead), x)
        x = ev.points.copy()
    moved = (x[upper] - x[lower])[:, 0]
    return float(np.abs(moved).max()) * LAP_SHEAR_PA / LAP_GLUE_M


def bent_lap(sheet_m: float, layers: int) -> Row:
    """Return the peak shear of a lap whose sheets bend."""
    # 15 %, the case's allowance: the formula leaves out the sheets' own shear and the peel's share
    return Row(
        f"bonded lap of {1e3 * sheet_m:g} mm steel that bends: peak shear",
        "goland-reissner-1944",
        goland_reissner_pa(sheet_m, JOINTS[sheet_m]) / 1e6,
        bent_lap_pa(sheet_m, layers) / 1e6,
        "MPa",
        0.15,
        spacing=f"{layers} layers a sheet",
    )
