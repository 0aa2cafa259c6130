"""In-plane sheet springs: the distorted patch, the pulled bar and the sheared panel.

Sources
-------
[macneal-harder-1985] the distorted patch under a linear edge displacement: the paper was found, its
numbers are from memory; the stresses for both Poisson ratios are computed (Hooke, plane stress).  The
benchmark's own inner points lie on the rectangle's diagonals; cut in triangles, every choice of diagonal puts
the six points of some bending patch on one conic, where its three hinge angles cannot tell the curvatures
apart.  The inner points here are therefore moved by about a centimetre; the answer does not depend on them.
Bar and panel: F L / E A and F / b t G, textbook, computed from the formula.
"""

import numpy as np
import pytest

from meshes import lattice
from sim.structure import Section, Structure
from tests.sim import support

# corners of the rectangle, then the four inner points [m]; five quads cut in two
PATCH_POINTS = (
    (0.0, 0.0), (0.24, 0.0), (0.24, 0.12), (0.0, 0.12),
    (0.05, 0.03), (0.17, 0.02), (0.16, 0.09), (0.07, 0.08),
)  # fmt: skip
PATCH_QUADS = ((0, 1, 5, 4), (1, 2, 6, 5), (2, 3, 7, 6), (3, 0, 4, 7), (4, 5, 6, 7))
GRADIENT = 1.0e-3 * np.array([[1.0, 0.5], [0.5, 1.0]])
# Young's modulus a million times the benchmark's, so that the solver's force limit is nothing beside the
# forces; stresses scale with it
PATCH_YOUNG_PA = 1.0e12


def patch(nu):
    points = np.column_stack([np.array(PATCH_POINTS), np.zeros(8)])
    triangles = [t for a, b, c, d in PATCH_QUADS for t in ((a, b, c), (a, c, d))]
    section = Section("sheet", 1.0e-3, support.metal(young_pa=PATCH_YOUNG_PA, nu=nu))
    return Structure(points, np.array(triangles, np.int64), np.zeros(10, np.int64), (section,))


def solved_patch(nu):
    structure = support.held(patch(nu), (np.arange(4), "xyz"))
    start = structure.points.copy()
    start[:4, :2] += start[:4, :2] @ GRADIENT.T
    return support.solve(structure, start=start)


@pytest.mark.parametrize("nu", [0.25, 1.0 / 3.0])
def test_inner_points_of_a_distorted_patch_land_on_the_linear_field(nu):
    answer = solved_patch(nu)
    expected = answer.network.structure.points[:, :2] @ GRADIENT.T
    # the field's own size times 1e-6: coupled edge springs hold a constant strain exactly
    np.testing.assert_allclose(answer.moved[:, :2], expected, rtol=0.0, atol=1e-6 * np.abs(expected).max())
    np.testing.assert_allclose(answer.moved[:, 2], 0.0, rtol=0.0, atol=1e-9)


@pytest.mark.parametrize(
    ("nu", "sigma_pa", "tau_pa"),
    [
        (0.25, 1333.3333, 400.0),  # from memory, and computed
        (1.0 / 3.0, 1500.0, 375.0),  # computed
    ],
)
def test_patch_reactions_are_those_of_the_constant_stress(nu, sigma_pa, tau_pa):
    answer = solved_patch(nu)
    F = np.eye(2) + GRADIENT
    green = 0.5 * (F.T @ F - np.eye(2))
    S = PATCH_YOUNG_PA / (1 - nu**2) * ((1 - nu) * green + nu * np.trace(green) * np.eye(2))
    nominal = F @ S
    # half of each neighbouring edge pulls on a corner; corner 2 has the edges +x (0.12 long) and +y (0.24)
    at_corner = 1.0e-3 * (nominal[:, 0] * 0.06 + nominal[:, 1] * 0.12)
    # round-off of the solve only: the field's own Green strain is used
    np.testing.assert_allclose(answer.reactions[2, :2], at_corner, rtol=1e-6)
    # 0.1 %: Green's strain of the field differs from the linear one by 0.06 %
    linear = np.array([[sigma_pa, tau_pa], [tau_pa, sigma_pa]]) * 1.0e6
    np.testing.assert_allclose(S, linear, rtol=1e-3)


def strip(angle_deg):
    # eight spacings across, as the case asks
    return lattice.rectangle(0.1, 0.02, 0.0025, np.radians(angle_deg))


@pytest.mark.parametrize("nu", [0.3, 1.0 / 3.0])
@pytest.mark.parametrize("angle_deg", support.ANGLES_DEG)
def test_bar_lengthens_and_narrows_as_hooke_says(angle_deg, nu):
    lat = strip(angle_deg)
    structure = support.sheet(lat, 1.0e-3, support.metal(nu=nu))
    left, right = lat.boundary["left"], lat.boundary["right"]
    corner = support.node_at(structure.points, 0.0, 0.0)
    structure = support.held(structure, (slice(None), "z"), (left, "x"), ([corner], "y"))
    dead = np.zeros_like(structure.points)
    dead[right] += support.shared(structure.points, right, (1000.0, 0.0, 0.0))
    moved = support.solve(structure, dead).moved
    # 0.1 %: the strain of 2.4e-4 itself is all that tells Green from small strain; same for every angle
    np.testing.assert_allclose(moved[right, 0].mean(), 1000.0 * 0.1 / (210e9 * 20e-6), rtol=1e-3)
    narrowing = moved[lat.boundary["top"], 1].mean() - moved[lat.boundary["bottom"], 1].mean()
    np.testing.assert_allclose(narrowing, -nu * 1000.0 / (210e9 * 1e-3), rtol=1e-3)


@pytest.mark.parametrize(("nu", "shear_pa"), [(0.3, 80.769e9), (1.0 / 3.0, 78.75e9)])
@pytest.mark.parametrize("angle_deg", support.ANGLES_DEG)
def test_sheared_panel_has_the_shear_modulus(angle_deg, nu, shear_pa):
    lat = strip(angle_deg)
    structure = support.sheet(lat, 1.0e-3, support.metal(nu=nu))
    points, corner = structure.points, support.node_at(structure.points, 0.0, 0.0)
    other = support.node_at(structure.points, 0.1, 0.0)
    structure = support.held(structure, (slice(None), "z"), ([corner], "xy"), ([other], "y"))
    flow = 1.0e4  # [N/m] along every edge
    dead = np.zeros_like(points)
    for name, length, way in (
        ("top", 0.1, (1, 0, 0)), ("bottom", 0.1, (-1, 0, 0)),
        ("right", 0.02, (0, 1, 0)), ("left", 0.02, (0, -1, 0)),
    ):  # fmt: skip
        chain = lat.boundary[name]
        dead[chain] += support.shared(points, chain, flow * length * np.array(way))
    moved = support.solve(structure, dead).moved
    gamma = np.mean(moved[lat.boundary["top"], 0] - moved[lat.boundary["bottom"], 0]) / 0.02
    # 0.1 %, as for the bar
    np.testing.assert_allclose(gamma, flow / (1.0e-3 * shear_pa), rtol=1e-3)
