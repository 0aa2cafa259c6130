"""Sheet bending on supported plates: deflection depends on D alone.

Sources
-------
[timoshenko-plates-1959] square plates w = alpha q a^4 / D and alpha P a^2 / D.  The four alphas are computed
(Navier's double series, and for clamped edges a series of the same book); the book's rounded table entries
0.00406, 0.01160, 0.00126, 0.00560 are from memory.  Navier's two series are typed again here.  Circular
plates q a^4 / 64 D and P a^2 / 16 pi D: formulas found for uniform load, from memory for the point load.
[skfem-2020] scikit-fem, a general-purpose library, solves the plate with Morley's element on the same
triangles: an independent code, not a closed form.
"""

from functools import lru_cache

import numpy as np
import pytest
import skfem
from skfem.helpers import dd, ddot, eye, trace

from sim.checks import plates
from sim.checks.plates import NU, SIDE_M, deflection
from sim.checks.specimens import node_at

# the four alphas as the book's formulas give them, typed again
ALPHA = {
    ("supported", "even"): 0.00406235,
    ("supported", "point"): 0.0116008,
    ("clamped", "even"): 0.00126532,
    ("clamped", "point"): 0.00561202,
}


def navier(load, terms=401):
    m = np.arange(1, terms, 2)
    M, N = np.meshgrid(m, m)
    if load == "point":
        return float(np.sum(4.0 / (np.pi**4 * (M**2 + N**2) ** 2)))
    sign = np.sin(M * np.pi / 2) * np.sin(N * np.pi / 2)
    return float(np.sum(16.0 * sign / (np.pi**6 * M * N * (M**2 + N**2) ** 2)))


@lru_cache
def morley(edge, load, count, angle_deg=0.0):
    """Return the deflection of every node from scikit-fem's Morley plate on the same triangles."""
    lat = plates.square(count, angle_deg)
    mesh = skfem.MeshTri(lat.points[:, :2].T.copy(), np.array(lat.triangles).T.copy())
    basis = skfem.Basis(mesh, skfem.ElementTriMorley())

    @skfem.BilinearForm
    def bending(u, v, _):
        moment = (1.0 - NU) * dd(u) + NU * eye(trace(dd(u)), 2)
        return ddot(moment, dd(v))

    K = bending.assemble(basis)
    centre = node_at(lat.points, SIDE_M / 2, SIDE_M / 2)
    if load == "even":
        f, unit = skfem.LinearForm(lambda v, _: 1.0 * v).assemble(basis), SIDE_M**4
    else:
        f, unit = np.zeros(K.shape[0]), SIDE_M**2
        f[basis.nodal_dofs[0][centre]] = 1.0
    nodes = basis.nodal_dofs[0]
    rim = nodes[plates.rim_of(lat)] if edge == "supported" else basis.get_dofs().all()
    x = skfem.solve(*skfem.condense(K, f, D=rim))
    return x[nodes] / unit, centre


@pytest.mark.parametrize("load", ["even", "point"])
def test_the_reference_alphas_are_naviers(load):
    # the series' own tail after 200 terms
    np.testing.assert_allclose(navier(load), ALPHA["supported", load], rtol=2e-5)


@pytest.mark.parametrize("load", ["even", "point"])
@pytest.mark.parametrize("angle_deg", [0.0, *plates.TURNED_DEG])
def test_supported_square_plate(load, angle_deg):
    expected = ALPHA["supported", load]
    coarse, fine = (plates.square_plate("supported", load, count, angle_deg) for count in (12, 24))
    assert coarse.passed
    assert fine.passed
    # 6 % on 12 x 12 and 3 % on 24 x 24: what a coarse net of constant-curvature triangles may miss
    np.testing.assert_allclose(coarse.got, expected, rtol=0.06)
    np.testing.assert_allclose(fine.got, expected, rtol=0.03)
    assert plates.square_settles("supported", load, angle_deg).got < 0.5


def test_thirty_degrees_are_the_square_s_own_mirror_image_and_the_turns_taken_are_not():
    """An equilateral lattice turned by 30 degrees has its rows along y: on a square a swap of x and y."""

    def off(angle_deg):
        swapped = plates.square(24, 0.0).points[:, [1, 0, 2]]
        away = np.linalg.norm(plates.square(24, angle_deg).points[:, None] - swapped[None], axis=2)
        return away.min(axis=1).max()

    assert off(30.0) < 1e-12
    for angle_deg in plates.TURNED_DEG:
        assert off(angle_deg) > 0.1 * SIDE_M / 24


@pytest.mark.parametrize("load", ["even", "point"])
@pytest.mark.parametrize("angle_deg", plates.TURNED_DEG)
def test_direction_of_the_lattice_does_not_show_in_a_plate(load, angle_deg):
    row = plates.turned_plate(load, angle_deg)
    assert row.passed
    # half a per cent: the rims of the turned lattices differ by as much
    np.testing.assert_allclose(row.got, row.expected, rtol=0.005)


@pytest.mark.parametrize("load", ["even", "point"])
def test_clamped_square_plate_converges_to_the_table(load):
    rows = {count: plates.square_plate("clamped", load, count) for count in (12, 24, 48)}
    error = {count: row.got / ALPHA["clamped", load] - 1.0 for count, row in rows.items()}
    # second order: halving the spacing quarters the error; 1.7 to 2.6 leaves room for the rim's part
    assert 1.7 < np.log2(error[12] / error[24]) < 2.6
    # on 48 x 48 the solver's force limit begins to show beside the load of one node
    assert abs(error[48]) < 0.5 * abs(error[24])
    # limit of the two by that order: 1 %, what is left after the leading error is taken out
    np.testing.assert_allclose((4.0 * error[24] - error[12]) / 3.0, 0.0, atol=0.01)
    # 4 % on the finer net: the deflection under a point load is the slowest to settle (Morley's is 4.6 %)
    assert abs(error[24]) < 0.04
    assert rows[48].passed


@pytest.mark.parametrize("load", ["even", "point"])
@pytest.mark.parametrize("angle_deg", plates.TURNED_DEG)
def test_a_clamped_plate_on_a_turned_lattice_is_as_soft_and_settles_as_the_straight_one(load, angle_deg):
    alpha = ALPHA["clamped", load]
    turned = {count: plates.square_plate("clamped", load, count, angle_deg) for count in (12, 24)}
    straight = plates.square_plate("clamped", load, 24)
    # 1.5 %: two nets, each some 3 % soft
    np.testing.assert_allclose(turned[24].got, straight.got, rtol=0.015)
    assert abs(turned[24].got / alpha - 1.0) < 0.04  # as on the straight one
    assert abs(turned[24].got / alpha - 1.0) < 0.5 * abs(turned[12].got / alpha - 1.0)


@pytest.mark.parametrize("case", list(ALPHA), ids=" ".join)
@pytest.mark.parametrize("angle_deg", [0.0, 45.0])
def test_agrees_with_another_plate_code_on_the_same_triangles(case, angle_deg):
    ours, centre = deflection(*case, 24, angle_deg)
    theirs, _ = morley(*case, 24, angle_deg)
    # 1.5 % of the middle's deflection at every node: both are 1 to 5 % off the limit on this net
    np.testing.assert_allclose(ours, theirs, rtol=0.0, atol=0.015 * theirs[centre])


@pytest.mark.parametrize("edge", ["supported", "clamped"])
@pytest.mark.parametrize("load", ["even", "point"])
def test_circular_plate(edge, load):
    a, rigidity = plates.RADIUS_M, plates.RIGIDITY_N_M
    expected = {
        ("clamped", "even"): plates.PRESSURE_PA * a**4 / 64.0 / rigidity,
        ("supported", "even"): 5.3 / 1.3 * plates.PRESSURE_PA * a**4 / 64.0 / rigidity,
        ("clamped", "point"): plates.POINT_N * a**2 / 16.0 / np.pi / rigidity,
        ("supported", "point"): 3.3 / 1.3 * plates.POINT_N * a**2 / 16.0 / np.pi / rigidity,
    }[edge, load]
    row = plates.round_plate(edge, load, 16)
    assert row.passed
    # 6 %, the case's own allowance for a ringed net
    np.testing.assert_allclose(row.got, 1e3 * expected, rtol=0.06)
    assert plates.round_settles(edge, load).got < 0.5


@pytest.mark.parametrize("n", [6, 12, 24])
def test_a_clamped_beam_of_lumped_bends_is_8_over_n_squared_soft(n):
    """Why clamped plates are soft: finite differences of a beam with a mirrored neighbour, all typed here.

    Even load on a clamped beam: w = 1 / 384 in the middle; with w(-h) = w(h) it is 1 / 384 (1 + 8 / n^2).
    """
    h, inside = 1.0 / n, np.arange(1, n)
    bend = np.zeros((n + 1, n + 1))
    for i in range(1, n):
        bend[i, i - 1 : i + 2] = 1.0, -2.0, 1.0
    bend[0, 1] = bend[n, n - 1] = 2.0  # the mirror; half a cell each
    weight = np.where(np.isin(np.arange(n + 1), (0, n)), 0.5, 1.0)
    K = bend.T @ np.diag(weight / h**3) @ bend
    w = np.linalg.solve(K[np.ix_(inside, inside)], np.full(n - 1, h))
    np.testing.assert_allclose(384.0 * w[n // 2 - 1], 1.0 + 8.0 / n**2, rtol=1e-9)
