"""Sheet bending on supported and clamped plates: deflection depends on the rigidity D alone.

References
----------
[timoshenko-plates-1959] square plates w = alpha q a^4 / D and alpha P a^2 / D, circular plates q a^4 / 64 D
and P a^2 / 16 pi D, on supports times (5 + nu) / (1 + nu) and (3 + nu) / (1 + nu).  The four alphas are
computed: Navier's double series, and for clamped edges a series of the same book.
"""

from __future__ import annotations

from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from meshes import lattice
from meshes.lattice import Lattice
from sim.checks import specimens
from sim.checks.row import ITSELF, Row, settling

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

SIDE_M, THICKNESS_M, NU = 0.3, 0.8e-3, 0.3
# a thousand times steel's modulus and loads to match, so that the solver's force limit of a millinewton is
# nothing beside the load of one node; deflections of a twentieth of the thickness: linear
YOUNG_PA, PRESSURE_PA, POINT_N = 1.0e3 * specimens.STEEL_PA, 1.0e4, 1.0e3
RIGIDITY_N_M = YOUNG_PA * THICKNESS_M**3 / (12.0 * (1.0 - NU**2))
ALPHA = {
    ("supported", "even"): 0.00406235,
    ("supported", "point"): 0.0116008,
    ("clamped", "even"): 0.00126532,
    ("clamped", "point"): 0.00561202,
}
LOAD_WORD = {"even": "even load", "point": "point load"}
TURNED_DEG = (10.0, 45.0)
"""How far lattices are turned on a square: by 30 degrees it is the straight one, mirrored in the diagonal."""
RADIUS_M = 0.15


@lru_cache
def square(count: int, angle_deg: float) -> Lattice:
    """Return the square's lattice, ``count`` spacings a side."""
    return lattice.rectangle(SIDE_M, SIDE_M, SIDE_M / count, np.radians(angle_deg))


def rim_of(lat: Lattice) -> Ints:
    """Return all nodes on the rim."""
    return np.unique(np.concatenate(list(lat.boundary.values())))


@lru_cache
def deflection(edge: str, load: str, count: int, angle_deg: float = 0.0) -> tuple[Floats, int]:
    """Return the deflection of every node over q a^4 / D or P a^2 / D, and the middle node."""
    lat = square(count, angle_deg)
    structure = specimens.sheet(lat, THICKNESS_M, specimens.metal(young_pa=YOUNG_PA, nu=NU))
    centre = specimens.node_at(structure.points, SIDE_M / 2, SIDE_M / 2)
    dead = np.zeros_like(structure.points)
    if load == "even":
        dead = specimens.spread_over(structure.points, structure.triangles, (0.0, 0.0, PRESSURE_PA))
        unit = PRESSURE_PA * SIDE_M**4 / RIGIDITY_N_M
    else:
        dead[centre, 2] = POINT_N
        unit = POINT_N * SIDE_M**2 / RIGIDITY_N_M
    if edge == "supported":
        side = specimens.node_at(structure.points, SIDE_M, SIDE_M / 2)
        structure = specimens.held(structure, (rim_of(lat), "z"), ([centre], "xy"), ([side], "y"))
    else:
        for chain in lat.boundary.values():
            structure = specimens.clamped(structure, chain)
    w = specimens.solve(structure, dead).moved[: len(lat.points), 2] / unit
    return w, centre


TOLERANCE = {12: 0.06, 24: 0.03, 48: 0.03}
"""Allowed error of a square plate by spacings a side: what constant-curvature triangles may miss."""
KNOWN = (
    "a clamped edge is second order but soft, 8 / n\u00b2 on a beam of n segments; "
    "another plate code is as far off"
)
SHORT = {("even", 12), ("point", 12), ("point", 24), ("even", "8 rings"), ("point", "8 rings")}
"""Clamped plates known to miss their allowance, by load and lattice."""


def square_plate(edge: str, load: str, count: int, angle_deg: float = 0.0) -> Row:
    """Return the deflection of a square plate's middle."""
    w, centre = deflection(edge, load, count, angle_deg)
    turned = f", lattice at {angle_deg:.0f}\u00b0" if angle_deg else ""
    return Row(
        f"square plate, {edge}, {LOAD_WORD[load]}{turned}: \u03b1 of the middle",
        "timoshenko-plates-1959",
        ALPHA[edge, load],
        float(w[centre]),
        "\u03b1",
        TOLERANCE[count],
        spacing=f"{count} x {count}",
        known=KNOWN if edge == "clamped" and (load, count) in SHORT else "",
    )


def square_settles(edge: str, load: str, angle_deg: float = 0.0) -> Row:
    """Return whether the square plate's error shrinks with the spacing."""
    coarse, fine = (square_plate(edge, load, count, angle_deg) for count in (12, 24))
    return settling(f"square plate, {edge}, {LOAD_WORD[load]}", coarse, fine)


def turned_plate(load: str, angle_deg: float) -> Row:
    """Return the deflection of a supported plate on a turned lattice against the straight one."""
    straight, middle = deflection("supported", load, 24, 0.0)
    turned, centre = deflection("supported", load, 24, angle_deg)
    # half a per cent: the rims of the turned lattices differ by as much
    return Row(
        f"square plate, {LOAD_WORD[load]}: lattice at {angle_deg:.0f}\u00b0 against 0\u00b0",
        ITSELF,
        float(straight[middle]),
        float(turned[centre]),
        "\u03b1",
        0.005,
        spacing="24 x 24",
    )


def round_expected(edge: str, load: str) -> float:
    """Return the closed form of a circular plate's middle [m]."""
    if load == "even":
        factor = (5.0 + NU) / (1.0 + NU) if edge == "supported" else 1.0
        return factor * PRESSURE_PA * RADIUS_M**4 / (64.0 * RIGIDITY_N_M)
    factor = (3.0 + NU) / (1.0 + NU) if edge == "supported" else 1.0
    return factor * POINT_N * RADIUS_M**2 / (16.0 * np.pi * RIGIDITY_N_M)


@lru_cache
def _round_middle(edge: str, load: str, rings: int) -> float:
    lat = lattice.disc(RADIUS_M, rings)
    structure = specimens.sheet(lat, THICKNESS_M, specimens.metal(young_pa=YOUNG_PA, nu=NU))
    rim = lat.boundary["rim"]
    if edge == "supported":
        structure = specimens.held(structure, (rim, "z"), ([0], "xy"), ([int(rim[0])], "y"))
    else:
        structure = specimens.clamped(structure, rim)
    dead = np.zeros((len(lat.points), 3))
    if load == "even":
        dead = specimens.spread_over(np.array(lat.points), np.array(lat.triangles), (0.0, 0.0, PRESSURE_PA))
    else:
        dead[0, 2] = POINT_N
    return float(specimens.solve(structure, dead).moved[0, 2])


def round_plate(edge: str, load: str, rings: int) -> Row:
    """Return the deflection of a circular plate's middle."""
    # 6 %, the case's own allowance for a ringed net
    return Row(
        f"circular plate, {edge}, {LOAD_WORD[load]}: middle",
        "timoshenko-plates-1959",
        1e3 * round_expected(edge, load),
        1e3 * _round_middle(edge, load, rings),
        "mm",
        0.06,
        spacing=f"{rings} rings",
        known=KNOWN if edge == "clamped" and (load, f"{rings} rings") in SHORT else "",
    )


def round_settles(edge: str, load: str) -> Row:
    """Return whether the circular plate's error shrinks with the spacing."""
    coarse, fine = (round_plate(edge, load, rings) for rings in (8, 16))
    return settling(f"circular plate, {edge}, {LOAD_WORD[load]}", coarse, fine)
