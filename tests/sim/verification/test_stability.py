"""Buckling: the load at which the flat state's tangent stops being positive definite.

Sources
-------
Euler P = pi^2 E I / (K L)^2, pin-ended and cantilever; simply supported square plate pressed on two edges,
sigma = 4 pi^2 E / (12 (1 - nu^2)) (t / b)^2 [timoshenko-gere-1961]: from memory; 86.36 N, 21.59 N and
12.147 MPa are computed from the formulas.
"""

import numpy as np
import pytest

from meshes import lattice
from sim.factor import NotPositiveError
from sim.network import Load, Network
from sim.newton import equilibrate
from tests.sim import support

LENGTH_M, WIDTH_M, THICKNESS_M = 0.2, 0.02, 1.0e-3


def critical(structure, dead_n, high):
    """Return the factor on the dead loads at which the flat equilibrium loses stability, by halving."""
    network = Network(structure)
    state, points = network.initial_state(), structure.points
    low = 0.0
    while high - low > 1.0e-3 * high:
        middle = 0.5 * (low + high)
        load = Load((), dead_n * middle)
        ev = equilibrate(network, state, load, points).evaluation
        stable = float(np.abs(ev.points[:, 2]).max()) < 1.0e-9
        if stable:
            try:
                network.factor.refactor(network.stiffness_values(ev, state, load, ev.springs))
            except NotPositiveError:
                stable = False
        low, high = (middle, high) if stable else (low, middle)
    return 0.5 * (low + high)


@pytest.mark.parametrize(("ends", "factor", "newtons"), [("pinned", 1.0, 86.36), ("cantilever", 2.0, 21.59)])
def test_strip_buckles_at_eulers_load(ends, factor, newtons):
    lat = support.rows(LENGTH_M, WIDTH_M, 16, 2)
    structure = support.sheet(lat, THICKNESS_M, support.metal(nu=0.0))
    left, right = lat.boundary["left"], lat.boundary["right"]
    if ends == "pinned":
        structure = support.held(structure, (slice(None), "y"), (left, "xz"), (right, "z"))
    else:
        structure = support.clamped(support.held(structure, (slice(None), "y")), left)
    dead = np.zeros_like(structure.points)
    dead[right] += support.shared(structure.points, right, (-1.0, 0.0, 0.0))
    expected = np.pi**2 * support.STEEL_PA * WIDTH_M * THICKNESS_M**3 / 12.0 / (factor * LENGTH_M) ** 2
    np.testing.assert_allclose(expected, newtons, rtol=2e-4)  # the printed digits
    # 3 %, the case's allowance for sixteen segments
    np.testing.assert_allclose(critical(structure, dead, 2.0 * expected), expected, rtol=0.03)


def test_supported_plate_buckles_at_four():
    side, thickness, nu = 0.2, 0.8e-3, 0.3
    lat = lattice.rectangle(side, side, side / 16)
    structure = support.sheet(lat, thickness, support.metal(nu=nu))
    points = structure.points
    rim = np.unique(np.concatenate(list(lat.boundary.values())))
    bottom, top = support.node_at(points, side / 2, 0.0), support.node_at(points, side / 2, side)
    structure = support.held(structure, (rim, "z"), ([bottom], "xy"), ([top], "x"))
    dead = np.zeros_like(points)
    for name, sign in (("left", 1.0), ("right", -1.0)):
        chain = lat.boundary[name]
        dead[chain] += support.shared(points, chain, (sign * side * thickness, 0.0, 0.0))  # 1 Pa
    expected = 4.0 * np.pi**2 * support.STEEL_PA / (12.0 * (1.0 - nu**2)) * (thickness / side) ** 2
    np.testing.assert_allclose(expected, 12.147e6, rtol=1e-4)  # the printed digits
    # 8 %, the case's allowance on 16 x 16
    np.testing.assert_allclose(critical(structure, dead, 2.0 * expected), expected, rtol=0.08)
