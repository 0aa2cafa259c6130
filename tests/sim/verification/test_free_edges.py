"""Free edges: twist of a free plate and the saddle of a bent one, which supported plates cannot see.

Sources
-------
[timoshenko-plates-1959] free-plate twist w = P a^2 / (2 D (1 - nu)) under alternate corner forces, and the
saddle kyy = -nu kxx of a plate bent by moments on two edges: from memory; 0.14857 mm is computed from the
formula.  A net of plain, uncoupled hinges has a bending Poisson ratio of -1/3 and would give 0.078 mm.
"""

import numpy as np
import pytest

from sim.checks import free_edges
from sim.checks.plates import TURNED_DEG
from sim.checks.specimens import ANGLES_DEG


@pytest.mark.parametrize("kind", [0.0, *TURNED_DEG, free_edges.ONE_DIAGONAL])
@pytest.mark.parametrize("nu", [0.3, 0.0])
def test_free_plate_twists_by_its_own_poisson_ratio(kind, nu):
    expected = 1e3 * 0.1 * 0.2**2 / (2.0 * (210e9 * 1e-9 / (12.0 * (1.0 - nu**2))) * (1.0 - nu))
    if nu == 0.3:
        np.testing.assert_allclose(expected, 0.14857, rtol=1e-4)  # the case's figure
    rows = free_edges.twist(kind, nu, 3), free_edges.twist(kind, nu, 1)
    assert all(row.passed for row in rows)
    # 2 %, a quarter of the case's allowance: the exact answer is one constant twist, which the net can hold
    np.testing.assert_allclose([row.got for row in rows], expected, rtol=0.02)


@pytest.mark.parametrize("nu", [0.3, 0.0])
@pytest.mark.parametrize("angle_deg", ANGLES_DEG)
def test_bent_plate_becomes_a_saddle(angle_deg, nu):
    rows = free_edges.bent_curvature(angle_deg, nu), free_edges.bent_saddle(angle_deg, nu)
    assert all(row.passed for row in rows)
    np.testing.assert_allclose(rows[0].got, 1.0, rtol=0.03)
    np.testing.assert_allclose(rows[1].got, -nu, rtol=0.0, atol=0.05)
    kxx, _, kxy = free_edges.saddle(angle_deg, nu)
    np.testing.assert_allclose(kxy / kxx, 0.0, rtol=0.0, atol=0.02)  # it does not twist
