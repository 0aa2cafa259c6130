"""Free edges: twist of a free plate and the saddle of a bent one, which supported plates cannot see.

References
----------
[timoshenko-plates-1959] free-plate twist w = P a^2 / (2 D (1 - nu)) under alternate corner forces, and the
saddle kyy = -nu kxx of a plate bent by moments on two edges.  A net of plain, uncoupled hinges has a bending
Poisson ratio of -1/3 and would twist about half as far.
"""

from __future__ import annotations

from functools import lru_cache

import numpy as np

from meshes import lattice
from meshes.lattice import Lattice
from sim.checks import specimens
from sim.checks.row import Row

SIDE_M, THICKNESS_M, CORNER_N = 0.2, 1.0e-3, 0.1
ONE_DIAGONAL = "one diagonal"
SPACING = {12: "12 x 12", 24: "24 x 24"}


def _rigidity(nu: float) -> float:
    return specimens.STEEL_PA * THICKNESS_M**3 / (12.0 * (1.0 - nu**2))


def _square(kind: float | str, count: int) -> Lattice:
    if isinstance(kind, str):
        return lattice.one_diagonal(SIDE_M, SIDE_M, count, count)
    return lattice.rectangle(SIDE_M, SIDE_M, SIDE_M / count, np.radians(kind))


def _kind_word(kind: float | str) -> str:
    return f"lattice of {kind}" if isinstance(kind, str) else f"lattice at {kind:.0f}\u00b0"


@lru_cache
def twist_m(kind: float | str, nu: float, lifted: int, count: int = 12) -> float:
    """Return how far the loaded corner (its number, 1 or 3) of the square rises [m]."""
    lat = _square(kind, count)
    structure = specimens.sheet(lat, THICKNESS_M, specimens.metal(nu=nu))
    corners = [
        specimens.node_at(structure.points, x * SIDE_M, y * SIDE_M)
        for x, y in ((0, 0), (1, 0), (0, 1), (1, 1))
    ]
    free = corners[lifted]
    kept = [c for c in corners if c != free]
    structure = specimens.held(structure, (kept, "z"), (corners[:1], "xy"), (corners[1:2], "y"))
    dead = np.zeros_like(structure.points)
    dead[free, 2] = CORNER_N
    return float(specimens.solve(structure, dead).moved[free, 2])


def twist(kind: float | str, nu: float, lifted: int, count: int = 12) -> Row:
    """Return the twist of a free square plate along one diagonal."""
    expected = CORNER_N * SIDE_M**2 / (2.0 * _rigidity(nu) * (1.0 - nu))
    # 2 %, a quarter of the case's allowance: the exact answer is one constant twist, which the net can hold;
    # its slope of a thousandth does not matter
    return Row(
        f"free plate twisted, \u03bd {nu:.1f}, {_kind_word(kind)}, corner {lifted}: rise",
        "timoshenko-plates-1959",
        1e3 * expected,
        1e3 * twist_m(kind, nu, lifted, count),
        "mm",
        0.02,
        spacing=SPACING[count],
    )


@lru_cache
def saddle(angle_deg: float, nu: float) -> tuple[float, float, float]:
    """Return (kxx, kyy, kxy) in the middle of a plate bent by even moments on two edges, kxx expected = 1."""
    lat = lattice.rectangle(SIDE_M, SIDE_M, SIDE_M / 16, np.radians(angle_deg))
    # a thousand times steel's modulus: forces far above the solver's limit at a sag of a thirtieth of the
    # thickness (a saddle flattens itself once its sag nears the thickness)
    young_pa, moment = 1.0e3 * specimens.STEEL_PA, 100.0  # [N m/m]
    structure = specimens.sheet(lat, THICKNESS_M, specimens.metal(young_pa=young_pa, nu=nu))
    points = structure.points
    origin, side, top = (specimens.node_at(points, *p) for p in ((0, 0), (SIDE_M, 0), (0, SIDE_M)))
    structure = specimens.held(structure, ([origin, side, top], "z"), ([origin], "xy"), ([side], "y"))
    left, right = (specimens.edge_couples(structure, lat.boundary[n], moment) for n in ("left", "right"))
    moved = specimens.solve(structure, left + right).moved
    middle = specimens.near(lat, (SIDE_M / 2, SIDE_M / 2), 0.3 * SIDE_M)
    # E t^3 / 12 alone: the edges left free carry no moment
    kxx, kyy, kxy = specimens.quadratic_fit(points[middle], moved[middle, 2]) * (
        young_pa * THICKNESS_M**3 / 12.0 / moment
    )
    return float(kxx), float(kyy), float(kxy)


def bent_curvature(angle_deg: float, nu: float) -> Row:
    """Return the curvature along a plate bent by end moments."""
    # 3 %: the rim rows hold the couples unevenly
    return Row(
        f"free plate bent, \u03bd {nu:.1f}, {_kind_word(angle_deg)}: curvature along",
        "timoshenko-plates-1959",
        1.0,
        abs(saddle(angle_deg, nu)[0]),
        "of 12 M / E t\u00b3",
        0.03,
        spacing="16 x 16",
    )


def bent_saddle(angle_deg: float, nu: float) -> Row:
    """Return the curvature across a plate bent by end moments, over that along it."""
    kxx, kyy, _ = saddle(angle_deg, nu)
    # 0.05 in the ratio, half of what the case allows: a turned lattice is irregular beside a free rim
    return Row(
        f"free plate bent, \u03bd {nu:.1f}, {_kind_word(angle_deg)}: saddle",
        "timoshenko-plates-1959",
        -nu,
        kyy / kxx,
        "of the curvature along",
        0.05,
        "within",
        "16 x 16",
    )
