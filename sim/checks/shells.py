"""Sheets that leave their plane far: the lifted lip of a slit ring, and plates stiffened by their membrane.

References
----------
[sze-2004] slit annular plate under a line load on one lip, problem 3.  [timoshenko-plates-1959] clamped
circular plate whose rim cannot move in, under even load: values from the von Karman equations, integrated.
[levy-1942] clamped square plate that cannot move in, Poisson ratio 0.316.
"""

from __future__ import annotations

from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from meshes import lattice
from sim.checks import specimens
from sim.checks.plates import KNOWN
from sim.checks.row import Row, settling
from sim.network import Load, Network
from sim.structure import Structure

Floats = NDArray[np.float64]

SLIT_RING = {0.1: (4.277, 5.876), 0.2: (6.725, 9.160), 0.4: (9.529, 12.661), 0.6: (11.257, 14.674),
             0.8: (12.642, 16.202), 1.0: (13.891, 17.528)}  # fmt: skip
RING_TOLERANCE = {(6, 30): 0.10, (10, 60): 0.05}
"""The case's allowances by lattice, radial and around."""
LIPS = ("inner", "outer")


@lru_cache
def _slit_ring(radial: int, around: int) -> dict[float, tuple[float, float]]:
    # lengths as metres and E scaled by a thousand with the load, so that the force limit does not matter
    lat = lattice.slit_ring(6.0, 10.0, radial, around)
    structure = specimens.sheet(lat, 0.03, specimens.metal(young_pa=21.0e9, nu=0.0))
    structure = specimens.clamped(structure, lat.boundary["slit_end"])
    lip = lat.boundary["slit_start"]
    full = np.zeros((len(structure.points), 3))
    full[lip] += specimens.shared(structure.points, lip, (0.0, 0.0, 0.8 * 4.0 * 1.0e3))
    network = Network(structure)
    state, x, got = network.initial_state(), structure.points.copy(), {}
    for share in (0.01, 0.025, 0.05, 0.1, 0.15, 0.2, 0.3, 0.4, 0.6, 0.8, 1.0):
        x = specimens.settled(network, state, Load((), full * share), x).points.copy()
        got[share] = float(x[lip[0], 2]), float(x[lip[-1], 2])
    return got


def slit_ring(share: float, lip: str, radial: int, around: int) -> Row:
    """Return the rise of a slit ring's lifted lip at its inner or outer end."""
    index = LIPS.index(lip)
    return Row(
        f"slit ring, {share:.1f} of the load: rise of the {lip} end",
        "sze-2004",
        SLIT_RING[share][index],
        _slit_ring(radial, around)[share][index],
        "(radii 6, 10)",
        RING_TOLERANCE[radial, around],
        spacing=f"{radial} x {around}",
    )


def slit_ring_settles(lip: str) -> Row:
    """Return whether the slit ring's error shrinks with the spacing, at full load."""
    coarse, fine = (slit_ring(1.0, lip, *size) for size in RING_TOLERANCE)
    return settling(f"slit ring, {lip} end", coarse, fine)


# w0 / h by q a^4 / E h^4 for nu 0.3: von Karman's equations as a boundary value problem, computed
ROUND = {0.5: 0.08498, 1.0: 0.16803, 5.0: 0.67960, 10.0: 1.05196}
# the same for the square plate (a its side) and nu 0.316, table from memory
SQUARE = {17.79: 0.237, 38.3: 0.471, 63.4: 0.695, 95.0: 0.912, 134.9: 1.121, 184.0: 1.323, 245.0: 1.521,
          318.0: 1.714, 402.0: 1.902}  # fmt: skip


@lru_cache
def _round_sag(rings: int) -> dict[float, float]:
    """Return w0 / h of the clamped disc by load; E and load are large so that the force limit is nothing."""
    thickness, radius, young_pa = 1.0e-3, 0.1, 1.0e3 * specimens.STEEL_PA
    lat = lattice.disc(radius, rings)
    structure = specimens.sheet(lat, thickness, specimens.metal(young_pa=young_pa, nu=0.3))
    structure = specimens.clamped(structure, lat.boundary["rim"])
    unit = young_pa * thickness**4 / radius**4
    even = specimens.spread_over(np.array(lat.points), np.array(lat.triangles), (0.0, 0.0, unit))
    return _sags(structure, even, 0, tuple(ROUND), thickness)


@lru_cache
def _square_sag(count: int) -> dict[float, float]:
    thickness, side, young_pa = 1.0e-3, 0.2, 1.0e3 * specimens.STEEL_PA
    lat = lattice.rectangle(side, side, side / count)
    structure = specimens.sheet(lat, thickness, specimens.metal(young_pa=young_pa, nu=0.316))
    centre = specimens.node_at(structure.points, side / 2, side / 2)
    for chain in lat.boundary.values():
        structure = specimens.clamped(structure, chain)
    unit = young_pa * thickness**4 / side**4
    even = specimens.spread_over(np.array(lat.points), np.array(lat.triangles), (0.0, 0.0, unit))
    return _sags(structure, even, centre, tuple(SQUARE), thickness)


def _sags(
    structure: Structure, even: Floats, centre: int, loads: tuple[float, ...], thickness: float
) -> dict[float, float]:
    dead = np.zeros_like(structure.points)
    dead[: len(even)] = even
    network = Network(structure)
    state, x, got = network.initial_state(), structure.points.copy(), {}
    for load in loads:
        x = specimens.settled(network, state, Load((), dead * load), x).points.copy()
        got[load] = float(x[centre, 2]) / thickness
    return got


def stiffened_disc(load: float, rings: int) -> Row:
    """Return the sag of a clamped disc that stretches as it sags."""
    return Row(
        f"clamped disc held in its plane, q a\u2074 / E h\u2074 = {load:g}: sag",
        "timoshenko-plates-1959",
        ROUND[load],
        _round_sag(rings)[load],
        "thicknesses",
        0.05,  # the case's allowance on ten rings
        spacing=f"{rings} rings",
    )


def stiffened_square(load: float, count: int) -> Row:
    """Return the sag of a clamped square plate that stretches as it sags."""
    # 5 %: the table's truncated series and another code differ by 2 to 3 %
    return Row(
        f"clamped square held in its plane, q a\u2074 / E h\u2074 = {load:g}: sag",
        "levy-1942",
        SQUARE[load],
        _square_sag(count)[load],
        "thicknesses",
        0.05,
        spacing=f"{count} x {count}",
        known=KNOWN if count == 14 and load < 20.0 else "",
    )
