"""The double cantilever: two bonded arms, the door's beams, split apart.

References
----------
[kanninen-1973] arms on an elastic foundation, k = E_a b / (t_a / 2), l = (k / 4 E I)^(1/4): compliance
2 / (3 E I l^3) [(l a)^3 + 3 (l a)^2 + 3 l a + 1.5], G = P^2 (a + 1 / l)^2 / (b E I).
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from sim.bond import LENGTH, bond_law
from sim.checks import specimens
from sim.checks.row import CONSERVATION, Row, settling
from sim.increment import Point, Stepper
from sim.ledger import Ledger
from sim.network import Drive, Network
from sim.structure import Beam, Bonds, Structure

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

STEEL_PA = specimens.STEEL_PA


def glue(stiffness: float, strength: float, energy: float, length_m: float) -> Floats:
    """Return the law of a glue line, the same in peel and slip.

    stiffness : [N/m^2], force per length and opening;  strength : [N/m];  energy : [J/m]
    """
    return bond_law(
        strength=strength,
        energy=energy,
        shear_ratio=1.0,
        rise_m=strength / stiffness,
        pressure=stiffness,
        length_m=length_m,
    )


def pairs(upper: Ints, lower: Ints, directions: tuple[int, int], laws: Floats, stations: Floats) -> Bonds:
    """Return bonds between pairs of nodes; the line between two held nodes gives the opening's direction."""
    count = len(upper)
    first, second = (np.full(count, node) for node in directions)
    nodes = np.column_stack([upper, lower, first, second, lower, lower])
    r, p = [1.0, -1.0, 0, 0, 0, 0], [0, 0, 1.0, -1.0, 0, 0]
    return Bonds(
        nodes.astype(np.int64),
        np.tile([r, p, [0.0] * 6], (count, 1, 1)),
        np.zeros(count, bool),
        laws,
        np.zeros(count, np.int64),
        ("seam",),
        stations,
        np.full(count, 1.0),
    )


# --- the double cantilever


@dataclass(frozen=True)
class Split:
    """A double cantilever: arm height, width, crack length, bond line [m], modulus [Pa], bond energy [J/m^2].

    The strength is nine tenths of what makes the bond elastic until it parts, as the formula has it: a weaker
    one softens over a zone ahead of the crack and runs at up to a tenth less.
    """

    name: str
    height_m: float
    width_m: float
    crack_m: float
    bond_m: float = 0.2e-3
    bond_pa: float = 1.85e9
    strength_pa: float = 80.0e6
    energy_j_per_m2: float = 430.0

    @property
    def bending(self) -> float:
        """E I of one arm [N m^2]."""
        return STEEL_PA * self.width_m * self.height_m**3 / 12.0

    @property
    def reach_m(self) -> float:
        """1 / l, the length over which the bond's edge opens [m]."""
        foundation = self.bond_pa * self.width_m / (0.5 * self.bond_m)
        return float((foundation / (4.0 * self.bending)) ** -0.25)

    @property
    def compliance(self) -> float:
        """Opening per load [m/N]."""
        la = self.crack_m / self.reach_m
        cubic = la**3 + 3.0 * la**2 + 3.0 * la + 1.5
        return 2.0 * self.reach_m**3 / (3.0 * self.bending) * cubic

    @property
    def load_n(self) -> float:
        """Load at which the crack runs [N]."""
        root = np.sqrt(self.energy_j_per_m2 * self.width_m * self.bending)
        return float(root / (self.crack_m + self.reach_m))


SPLITS = {
    "thick": Split("10 mm arms", 0.010, 0.025, 0.050),
    "skin": Split("0.75 mm arms", 0.75e-3, 0.020, 0.030),
}


@dataclass(frozen=True)
class Opened:
    """A double cantilever pulled open: compliance [m/N], largest load [N], books of the running crack [J]."""

    compliance: float
    load_n: float
    work_j: float
    stored_j: float
    parted_j: float


def _split_network(case: Split, cells: int, grown_m: float) -> tuple[Network, float]:
    """Return the network and its spacing; the crack ends half way past node ``cells`` - 1 from the load."""
    size = case.crack_m / (cells - 0.5)
    count = cells + int(np.ceil((grown_m + 6.0 * case.reach_m) / size)) + 1
    x = np.arange(count) * size
    arm = np.column_stack([x, np.zeros((count, 2))])
    points = np.concatenate([arm, arm, [[0.0, 0.0, 0.0], [0.0, 0.0, -0.1]]])
    upper, lower = np.arange(count), np.arange(count) + count
    bonded = np.arange(cells, count)
    law = glue(
        case.bond_pa * case.width_m / case.bond_m,
        case.strength_pa * case.width_m,
        case.energy_j_per_m2 * case.width_m,
        size,
    )
    laws = np.tile(law, (len(bonded), 1))
    stations: Floats = size * bonded.astype(np.float64)
    bonds = pairs(upper[bonded], lower[bonded], (2 * count, 2 * count + 1), laws, stations)
    stretch = STEEL_PA * case.width_m * case.height_m
    beams = tuple(Beam("arm", chain, stretch, case.bending, 1.0e9) for chain in (upper, lower))
    structure = Structure(
        points, np.zeros((0, 3), np.int64), np.zeros(0, np.int64), (), beams=beams, bonds=bonds
    )
    far = [int(upper[-1]), int(lower[-1])]
    structure = specimens.held(
        structure, (slice(None), "y"), ([2 * count, 2 * count + 1], "xyz"), (far, "xz")
    )
    nodes = np.array([upper[0], lower[0]])
    drive = Drive(nodes, np.array([1.0, -1.0]), np.array([0.0, 0.0, 1.0]), 0.0, stiffness_n_per_m=1.0e9)
    return Network(structure, [drive]), size


@lru_cache
def opened(name: str, cells: int) -> Opened:
    """Return a double cantilever pulled open until its crack has grown by half its length."""
    case = SPLITS[name]
    network, _ = _split_network(case, cells, 0.6 * case.crack_m)
    stepper = Stepper(network, specimens.never, viscous_n_per_m=0.0)
    rest = stepper.first_point(network.initial_state(), Ledger())
    limit = case.load_n * case.compliance
    point = stepper.advance(rest, 0.1 * limit)
    compliance = point.travel_m / float(point.force_n[0])
    wanted = int(0.5 * cells)
    peak, path = 0.0, [rest]
    travel = 0.8 * limit
    while int(network.parted(point.state).sum()) < wanted and travel < 6.0 * limit:
        point = stepper.advance(point, travel)
        path.append(point)
        if not network.parted(point.state).any():
            peak = max(peak, float(point.force_n[0]))
        travel += 0.01 * limit
    if stepper.tally.failed:
        raise specimens.NotSolvedError(f"the {case.name} did not open steadily")
    return Opened(compliance, peak, point.ledger.work_j, point.ledger.stored_j, _parted_j(network, point))


def _parted_j(network: Network, point: Point) -> float:
    """Return the energy of all bonds of which nothing is left [J]."""
    law = network.structure.bonds.law
    gone = network.parted(point.state)
    energy = 0.5 * law[:, 0] * law[:, 1] * (law[:, 3] + law[:, 2] - law[:, 1]) * law[:, LENGTH]
    return float(energy[gone].sum())


PER_REACH = {1: 0.10, 2: 0.05, 8: 0.05, 16: 0.05}
"""Nodes per 1 / l and the case's allowances; a bond this brittle runs node by node on fewer than eight."""
COARSE = "eight bends along the arm are coarse beside the bond's edge; on half the spacing it is 3 % soft"


def _cells(name: str, per_reach: int) -> int:
    """Return the cells from the load to the crack for so many nodes on 1 / l."""
    case = SPLITS[name]
    return round(case.crack_m / case.reach_m * per_reach + 0.5)


def _split_spacing(name: str, per_reach: int) -> str:
    size = SPLITS[name].crack_m / (_cells(name, per_reach) - 0.5)
    return f"{1e3 * size:.2g} mm"


def split_compliance(name: str, per_reach: int) -> Row:
    """Return a double cantilever's compliance."""
    case = SPLITS[name]
    return Row(
        f"double cantilever, {case.name}: compliance",
        "kanninen-1973",
        1e6 * case.compliance,
        1e6 * opened(name, _cells(name, per_reach)).compliance,
        "mm/kN",
        PER_REACH[per_reach],
        spacing=_split_spacing(name, per_reach),
        known=COARSE if (name, per_reach) == ("thick", 1) else "",
    )


def split_load(name: str, per_reach: int) -> Row:
    """Return the load at which a double cantilever's crack begins to run."""
    case = SPLITS[name]
    return Row(
        f"double cantilever, {case.name}: load at which the crack runs",
        "kanninen-1973",
        case.load_n,
        opened(name, _cells(name, per_reach)).load_n,
        "N",
        PER_REACH[per_reach],
        spacing=_split_spacing(name, per_reach),
    )


def split_books(name: str, per_reach: int) -> Row:
    """Return work less stored energy of the whole opening against the energy of the bond that has gone."""
    found = opened(name, _cells(name, per_reach))
    return Row(
        f"double cantilever, {SPLITS[name].name}: work less stored is what the parted bond took",
        CONSERVATION,
        found.parted_j,
        found.work_j - found.stored_j,
        "J",
        0.02,  # the case's figure
        spacing=_split_spacing(name, per_reach),
    )


def split_settles(name: str) -> Row:
    """Return whether the running load's error shrinks with the spacing."""
    return settling(
        f"double cantilever, {SPLITS[name].name}: load", split_load(name, 8), split_load(name, 16)
    )
