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

from meshes import lattice
from tests.sim import support

SIDE_M, THICKNESS_M, NU = 0.3, 0.8e-3, 0.3
# a thousand times steel's modulus and loads to match, so that the solver's force limit of a millinewton is
# nothing beside the load of one node; deflections of a twentieth of the thickness: linear
YOUNG_PA, PRESSURE_PA, POINT_N = 1.0e3 * support.STEEL_PA, 1.0e4, 1.0e3
RIGIDITY_N_M = YOUNG_PA * THICKNESS_M**3 / (12.0 * (1.0 - NU**2))
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
def square(count, angle_deg):
    return lattice.rectangle(SIDE_M, SIDE_M, SIDE_M / count, np.radians(angle_deg))


def rim_of(lat):
    return np.unique(np.concatenate(list(lat.boundary.values())))


@lru_cache
def deflection(edge, load, count, angle_deg=0.0):
    """Return the deflection of every node over q a^4 / D or P a^2 / D, and the middle node."""
    lat = square(count, angle_deg)
    structure = support.sheet(lat, THICKNESS_M, support.metal(young_pa=YOUNG_PA, nu=NU))
    centre = support.node_at(structure.points, SIDE_M / 2, SIDE_M / 2)
    dead = np.zeros_like(structure.points)
    if load == "even":
        dead = support.spread_over(structure.points, structure.triangles, (0.0, 0.0, PRESSURE_PA))
        unit = PRESSURE_PA * SIDE_M**4 / RIGIDITY_N_M
    else:
        dead[centre, 2] = POINT_N
        unit = POINT_N * SIDE_M**2 / RIGIDITY_N_M
    if edge == "supported":
        side = support.node_at(structure.points, SIDE_M, SIDE_M / 2)
        structure = support.held(structure, (rim_of(lat), "z"), ([centre], "xy"), ([side], "y"))
    else:
        for chain in lat.boundary.values():
            structure = support.clamped(structure, chain)
    w = support.solve(structure, dead).moved[: len(lat.points), 2] / unit
    return w, centre


@lru_cache
def morley(edge, load, count, angle_deg=0.0):
    """Return the same from scikit-fem's Morley plate on the same triangles."""
    lat = square(count, angle_deg)
    mesh = skfem.MeshTri(lat.points[:, :2].T.copy(), np.array(lat.triangles).T.copy())
    basis = skfem.Basis(mesh, skfem.ElementTriMorley())

    @skfem.BilinearForm
    def bending(u, v, _):
        moment = (1.0 - NU) * dd(u) + NU * eye(trace(dd(u)), 2)
        return ddot(moment, dd(v))

    K = bending.assemble(basis)
    centre = support.node_at(lat.points, SIDE_M / 2, SIDE_M / 2)
    if load == "even":
        f, unit = skfem.LinearForm(lambda v, _: 1.0 * v).assemble(basis), SIDE_M**4
    else:
        f, unit = np.zeros(K.shape[0]), SIDE_M**2
        f[basis.nodal_dofs[0][centre]] = 1.0
    nodes = basis.nodal_dofs[0]
    rim = nodes[rim_of(lat)] if edge == "supported" else basis.get_dofs().all()
    x = skfem.solve(*skfem.condense(K, f, D=rim))
    return x[nodes] / unit, centre


@pytest.mark.parametrize("load", ["even", "point"])
def test_the_reference_alphas_are_naviers(load):
    # the series' own tail after 200 terms
    np.testing.assert_allclose(navier(load), ALPHA["supported", load], rtol=2e-5)


@pytest.mark.parametrize("load", ["even", "point"])
@pytest.mark.parametrize("angle_deg", support.ANGLES_DEG)
def test_supported_square_plate(load, angle_deg):
    expected = ALPHA["supported", load]
    coarse, centre = deflection("supported", load, 12, angle_deg)
    fine, middle = deflection("supported", load, 24, angle_deg)
    # 6 % on 12 x 12 and 3 % on 24 x 24: what a coarse net of constant-curvature triangles may miss
    np.testing.assert_allclose(coarse[centre], expected, rtol=0.06)
    np.testing.assert_allclose(fine[middle], expected, rtol=0.03)
    assert abs(fine[middle] - expected) < 0.5 * abs(coarse[centre] - expected)


@pytest.mark.parametrize("load", ["even", "point"])
@pytest.mark.parametrize("angle_deg", support.ANGLES_DEG)
def test_direction_of_the_lattice_does_not_show_in_a_plate(load, angle_deg):
    straight, middle = deflection("supported", load, 24, 0.0)
    turned, centre = deflection("supported", load, 24, angle_deg)
    # half a per cent: the rims of the turned lattices differ by as much
    np.testing.assert_allclose(turned[centre], straight[middle], rtol=0.005)


@pytest.mark.parametrize("load", ["even", "point"])
def test_clamped_square_plate_converges_to_the_table(load):
    expected = ALPHA["clamped", load]
    error = {}
    for count in (12, 24):
        w, centre = deflection("clamped", load, count)
        error[count] = w[centre] / expected - 1.0
    # second order: halving the spacing quarters the error; 1.7 to 2.6 leaves room for the rim's part
    assert 1.7 < np.log2(error[12] / error[24]) < 2.6
    # limit of the two by that order: 1 %, what is left after the leading error is taken out
    np.testing.assert_allclose((4.0 * error[24] - error[12]) / 3.0, 0.0, atol=0.01)
    # 4 % on the fine net: the deflection under a point load is the slowest to settle (Morley's is 4.6 %)
    assert abs(error[24]) < 0.04


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
    a, rings = 0.15, 16
    lat = lattice.disc(a, rings)
    structure = support.sheet(lat, THICKNESS_M, support.metal(young_pa=YOUNG_PA, nu=NU))
    rim = lat.boundary["rim"]
    if edge == "supported":
        structure = support.held(structure, (rim, "z"), ([0], "xy"), ([rim[0]], "y"))
    else:
        structure = support.clamped(structure, rim)
    dead = np.zeros((len(lat.points), 3))
    if load == "even":
        dead = support.spread_over(np.array(lat.points), np.array(lat.triangles), (0.0, 0.0, PRESSURE_PA))
        expected = PRESSURE_PA * a**4 / (64.0 * RIGIDITY_N_M)
        expected *= (5.0 + NU) / (1.0 + NU) if edge == "supported" else 1.0
    else:
        dead[0, 2] = POINT_N
        expected = POINT_N * a**2 / (16.0 * np.pi * RIGIDITY_N_M)
        expected *= (3.0 + NU) / (1.0 + NU) if edge == "supported" else 1.0
    # 6 %, the case's own allowance for a ringed net
    np.testing.assert_allclose(support.solve(structure, dead).moved[0, 2], expected, rtol=0.06)
