"""One bond: its energy, its two strengths, and the mix of both.

Sources
-------
Area of the force-opening law = energy of parting, the definition of a cohesive law [turon-2007] (memory);
ellipse (Fs / Fs0)^2 + (Fn / Fn0)^2 = 1 at failure: common form for spot welds, from memory.
"""

from dataclasses import replace
from itertools import pairwise

import numpy as np
import pytest
from scipy.integrate import quad

from sim.bond import bond_law, bond_response, envelope
from sim.network import Load, Network
from sim.newton import equilibrate
from sim.structure import Bonds, Structure

SEAM = {
    "strength": 5.0e3,
    "energy": 60.0,
    "shear_ratio": 19.0,
    "rise_m": 3.0e-4,
    "pressure": 2.7e7,
    "length_m": 0.02,
}
WELD = {"strength": 1.5e3, "energy": 3.0, "shear_ratio": 2.0, "rise_m": 2.0e-4, "pressure": 1.0e6}
LAWS = {
    "seam": SEAM,
    "strong seam": SEAM | {"strength": 12.0e3, "energy": 250.0, "shear_ratio": 5.0},
    "weak seam": SEAM | {"strength": 4.0e3, "energy": 12.0, "shear_ratio": 3.0, "rise_m": 1.0e-4},
    "weld": WELD,
    "no plateau": WELD | {"plateau_share": 0.0},
}


def size(law):
    return law.get("length_m", 1.0)


@pytest.mark.parametrize("name", list(LAWS))
def test_area_under_the_law_is_its_energy(name):
    row = bond_law(**LAWS[name])
    kinks = row[1:3]
    end = row[3]
    area, _ = quad(
        lambda d: envelope(d, row)[1], 0.0, end, points=list(kinks), limit=200, epsabs=0, epsrel=1e-10
    )
    # 1e-9: straight pieces, integrated piece by piece
    np.testing.assert_allclose(area, LAWS[name]["energy"], rtol=1e-9)
    stored, spent, force, _ = bond_response(1.01 * end, 0.0, row)
    np.testing.assert_allclose(
        (stored, spent, force), (0.0, LAWS[name]["energy"], 0.0), rtol=1e-9, atol=1e-12
    )


def pulled(law, direction, travels_m):
    """Return force vectors on the pulled point and energy spent, the point moved along a unit direction."""
    nodes = np.array([[0, 1, 2, 2, 2, 2]], dtype=np.int64)
    r, p = [1.0, -1.0, 0, 0, 0, 0], [0, 1.0, -1.0, 0, 0, 0]
    bonds = Bonds(
        nodes, np.array([[r, p, [0.0] * 6]]), np.zeros(1, bool), bond_law(**law)[None], np.zeros(1, np.int64),
        ("seam",), np.zeros(1), np.full(1, 1.0),
    )  # fmt: skip
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


# normal is +y; the last two mix peel and slip
WAYS = {
    "peel": (0, 1, 0),
    "slip": (1, 0, 0),
    "slip z": (0, 0, 1),
    "mix": (0.6, 0.8, 0),
    "steep": (0.02, 0.9998, 0),
}


@pytest.mark.parametrize("name", list(LAWS))
@pytest.mark.parametrize("way", list(WAYS))
def test_parting_costs_the_energy_per_length_times_the_length_in_every_direction(name, way):
    law, unit = LAWS[name], np.array(WAYS[way], float) / np.linalg.norm(WAYS[way])
    row = bond_law(**law)
    # effective opening per travel
    rate = np.hypot(unit[1], law["shear_ratio"] * np.hypot(unit[0], unit[2]))
    kinks = row[1:4] / rate
    edges = np.concatenate([[0.0], kinks])
    travel = np.concatenate([np.linspace(a, b, 51)[1:] for a, b in pairwise(edges)])
    forces, spent = pulled(law, unit, travel)
    along = forces @ unit
    work = float(np.sum(0.5 * (along + np.concatenate([[0.0], along[:-1]])) * np.diff(travel, prepend=0.0)))
    # 1e-6, the case's figure; the force is piecewise straight, so the trapezoid is exact
    np.testing.assert_allclose((work, spent), law["energy"] * size(law), rtol=1e-6)


@pytest.mark.parametrize("name", list(LAWS))
@pytest.mark.parametrize("slip_share", [0.0, 0.02, 0.1, 0.3, 0.7, 1.0])
def test_strengths_meet_on_the_ellipse(name, slip_share):
    law = LAWS[name]
    unit = np.array([slip_share, np.sqrt(1.0 - slip_share**2), 0.0])
    rate = np.hypot(unit[1], law["shear_ratio"] * unit[0])
    forces, _ = pulled(law, unit, np.linspace(0.0, 2.0 * law["rise_m"] / rate, 201))
    peel0 = law["strength"] * size(law)
    ratio = np.hypot(forces[:, 1] / peel0, forces[:, 0] / (law["shear_ratio"] * peel0))
    # 1e-9: the law's own peak, met exactly at the end of its rise
    np.testing.assert_allclose(ratio.max(), 1.0, rtol=1e-9)


def test_closing_presses_and_never_pulls():
    law = LAWS["seam"]
    forces, spent = pulled(law, (0, -1, 0), [1.0e-5, 2.0e-5, 1.0e-5])
    # penalty per length times length, on top of the bead's own zero opening
    np.testing.assert_allclose(
        forces[:, 1], -law["pressure"] * size(law) * np.array([1, 2, 1]) * 1.0e-5, rtol=1e-9
    )
    assert spent == 0.0
