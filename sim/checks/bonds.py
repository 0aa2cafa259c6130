"""One bond: its energy, its two strengths, and the mix of both.

References
----------
[turon-2007] area of the force-opening law = energy of parting, the definition of a cohesive law; ellipse
(Fs / Fs0)^2 + (Fn / Fn0)^2 = 1 at failure: common form for spot welds, from memory.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from functools import lru_cache
from itertools import pairwise

import numpy as np
from numpy.typing import NDArray

from sim.bond import bond_law
from sim.carcheck import SEAM_RISE_M
from sim.checks.row import TEXTBOOK, Row
from sim.network import Load, Network
from sim.newton import equilibrate
from sim.plan import Car
from sim.seam import SEAM_SHEAR_RATIO
from sim.structure import Bonds, Structure

Floats = NDArray[np.float64]

CAR = Car()
LAWS: dict[str, dict[str, float]] = {
    "seam": {
        "strength": CAR.seam_strength_n_per_m,
        "energy": CAR.seam_energy_j_per_m,
        "shear_ratio": SEAM_SHEAR_RATIO,
        "rise_m": SEAM_RISE_M,
        "pressure": 2.7e7,
        "length_m": 0.02,
    },
    "weld": {
        "strength": CAR.weld_peel_n,
        "energy": CAR.weld_energy_j,
        "shear_ratio": CAR.weld_shear_n / CAR.weld_peel_n,
        "rise_m": 2.0e-4,
        "pressure": 1.0e6,
        "length_m": 1.0,
    },
}
# normal is +y; the last two mix peel and slip
WAYS = {
    "peel": (0.0, 1.0, 0.0),
    "slip": (1.0, 0.0, 0.0),
    "slip z": (0.0, 0.0, 1.0),
    "mix": (0.6, 0.8, 0.0),
    "steep": (0.02, 0.9998, 0.0),
}


def pulled(
    law: dict[str, float], direction: Sequence[float] | Floats, travels_m: Sequence[float] | Floats
) -> tuple[Floats, float]:
    """Return force vectors on the pulled point and energy spent, the point moved along a unit direction."""
    nodes = np.array([[0, 1, 2, 2, 2, 2]], dtype=np.int64)
    r, p = [1.0, -1.0, 0, 0, 0, 0], [0, 1.0, -1.0, 0, 0, 0]
    bonds = Bonds(
        nodes,
        np.array([[r, p, [0.0] * 6]]),
        np.zeros(1, bool),
        bond_law(**law)[None],
        np.zeros(1, np.int64),
        ("seam",),
        np.zeros(1),
        np.full(1, 1.0),
    )
    points = np.array([[0.0, 0.0, 0.0], [0.0, 0.0, 0.0], [0.0, -0.1, 0.0]])
    structure = Structure(points, np.zeros((0, 3), np.int64), np.zeros(0, np.int64), (), bonds=bonds)
    network = Network(structure.with_fixed(np.ones((3, 3), bool)))
    state, forces = network.initial_state(), []
    for travel in travels_m:
        x = points.copy()
        x[0] += travel * np.asarray(direction)
        answer = equilibrate(network, replace(state, points=x), Load(), x)
        forces.append(answer.evaluation.forces[0].copy())
        state = network.commit(state, answer.evaluation)
    return np.array(forces), float(network.bond_spent(state)[0])


def parting_work(law: dict[str, float], way: Sequence[float]) -> tuple[float, float]:
    """Return the work of pulling a bond apart along a direction, and the energy it booked [J]."""
    unit = np.array(way, float) / np.linalg.norm(way)
    # effective opening per travel; the kinks of the law are met exactly
    rate = np.hypot(unit[1], law["shear_ratio"] * np.hypot(unit[0], unit[2]))
    edges = np.concatenate([[0.0], bond_law(**law)[1:4] / rate])
    travel = np.concatenate([np.linspace(a, b, 51)[1:] for a, b in pairwise(edges)])
    forces, spent = pulled(law, unit, travel)
    along = forces @ unit
    steps = np.diff(travel, prepend=0.0)
    work = float(np.sum(0.5 * (along + np.concatenate([[0.0], along[:-1]])) * steps))
    return work, spent


@lru_cache
def _parting(name: str, way: str) -> tuple[float, float]:
    return parting_work(LAWS[name], WAYS[way])


def parting_energy(name: str, way: str) -> Row:
    """Return the work of parting one bond, whatever the direction it is pulled in."""
    law = LAWS[name]
    # 1e-6, the case's figure; the force is piecewise straight, so the trapezoid is exact
    return Row(
        f"{name} pulled apart, {way}: work",
        "turon-2007",
        law["energy"] * law["length_m"],
        _parting(name, way)[0],
        "J",
        1e-6,
        spacing="one bond",
    )


def parting_booked(name: str, way: str) -> Row:
    """Return the energy the books hold for parting one bond."""
    law = LAWS[name]
    return Row(
        f"{name} pulled apart, {way}: energy booked",
        "turon-2007",
        law["energy"] * law["length_m"],
        _parting(name, way)[1],
        "J",
        1e-6,
        spacing="one bond",
    )


def strengths_on_ellipse(law: dict[str, float], slip_share: float) -> float:
    """Return the largest (Fn / Fn0)^2 + (Fs / Fs0)^2, rooted, met on the way."""
    unit = np.array([slip_share, np.sqrt(1.0 - slip_share**2), 0.0])
    rate = np.hypot(unit[1], law["shear_ratio"] * unit[0])
    forces, _ = pulled(law, unit, np.linspace(0.0, 2.0 * law["rise_m"] / rate, 201))
    peel0 = law["strength"] * law["length_m"]
    ratio = np.hypot(forces[:, 1] / peel0, forces[:, 0] / (law["shear_ratio"] * peel0))
    return float(ratio.max())


def ellipse(name: str, slip_share: float) -> Row:
    """Return where a bond's strength lies on the ellipse of peel and shear force."""
    # 1e-9: the law's own peak, met exactly at the end of its rise
    return Row(
        f"{name} pulled with {100 * slip_share:.0f} % slip: strength on the ellipse",
        TEXTBOOK,
        1.0,
        strengths_on_ellipse(LAWS[name], slip_share),
        "of the ellipse",
        1e-9,
        spacing="one bond",
    )
