"""A bonded lap pulled in shear: the seam's shear rises towards its ends.

References
----------
[volkersen-1938] tmax / tmean = x coth x, x = b l / 2, b^2 = 2 G / (E t eta).
"""

from __future__ import annotations

from functools import lru_cache

import numpy as np

from sim.bond import bond_law
from sim.checks import specimens
from sim.checks.row import Row, settling
from sim.network import Load, Network
from sim.structure import Beam, Bonds, Structure

YOUNG_PA, SHEAR_PA, BOND_M, LAP_M, WIDTH_M = 210.0e9, 700.0e6, 0.2e-3, 12.5e-3, 25.0e-3
# thickness of the sheets [m]: force [N]
JOINTS = {1.5e-3: 5.0e3, 0.8e-3: 3.0e3}


@lru_cache
def peak_shear_pa(sheet_m: float, force_n: float, cells: int) -> float:
    """Return the shear stress at the end of the lap, the sheets taken as bars that only stretch."""
    count, h = cells + 1, LAP_M / cells
    x = np.linspace(0.0, LAP_M, count)
    flat = np.column_stack([x, np.zeros((count, 2))])
    # upper bar, lower bar, and two held points that give the direction across the bond
    points = np.concatenate([flat, flat, [[0.0, 0.0, 0.0], [0.0, 0.0, -0.1]]])
    upper, lower, top, deep = np.arange(count), np.arange(count) + count, 2 * count, 2 * count + 1
    share = np.full(count, h)
    share[[0, -1]] *= 0.5
    stiffness = SHEAR_PA * WIDTH_M / BOND_M  # per length of lap and slip
    rise = 1.0e-4  # far beyond the slip here: the bond stays elastic
    laws = [
        bond_law(
            strength=stiffness * rise,
            energy=20.0 * stiffness * rise**2,
            shear_ratio=1.0,
            rise_m=rise,
            pressure=stiffness,
            length_m=float(size),
        )
        for size in share
    ]
    nodes = np.column_stack([upper, lower, np.full(count, top), np.full(count, deep), lower, lower])
    r, p = [1.0, -1.0, 0, 0, 0, 0], [0, 0, 1.0, -1.0, 0, 0]
    bonds = Bonds(
        nodes.astype(np.int64),
        np.tile([r, p, [0.0] * 6], (count, 1, 1)),
        np.zeros(count, bool),
        np.array(laws),
        np.zeros(count, np.int64),
        ("seam",),
        x,
        np.full(count, 1.0),
    )
    beams = tuple(Beam("bar", chain, YOUNG_PA * sheet_m * WIDTH_M, 1.0e-6, 1.0e6) for chain in (upper, lower))
    none = np.zeros((0, 3), np.int64)
    structure = Structure(points, none, np.zeros(0, np.int64), (), beams=beams, bonds=bonds)
    structure = specimens.held(structure, (slice(None), "yz"), ([top, deep], "x"), (lower[-1:], "x"))
    dead = np.zeros_like(points)
    dead[upper[0], 0] = -force_n
    network = Network(structure)
    ev = specimens.settled(network, network.initial_state(), Load((), dead), points)
    return float(SHEAR_PA / BOND_M * network.bond_opening(ev)[0])


def lap(sheet_m: float, cells: int) -> Row:
    """Return the peak of the shear at the end of a bonded lap."""
    force_n = JOINTS[sheet_m]
    x = 0.5 * LAP_M * np.sqrt(2.0 * SHEAR_PA / (YOUNG_PA * sheet_m * BOND_M))
    # 3 % with ten stations, the case's allowance
    return Row(
        f"bonded lap of {1e3 * sheet_m:g} mm steel: peak shear",
        "volkersen-1938",
        float(force_n / (WIDTH_M * LAP_M) * x / np.tanh(x)) / 1e6,
        peak_shear_pa(sheet_m, force_n, cells) / 1e6,
        "MPa",
        0.03,
        spacing=f"{cells} stations",
    )


def lap_settles(sheet_m: float) -> Row:
    """Return whether the peak's error shrinks with the spacing."""
    return settling(f"bonded lap of {1e3 * sheet_m:g} mm steel", lap(sheet_m, 10), lap(sheet_m, 20))
