"""Every law is the derivative of its own energy, and every kernel says what the plain form says.

Central differences hold gradient and stiffness to the energy; numpy on one element at a time, the plain
functions of `sim.sheet` and `sim.yielding`, and scipy's rotations and quadrature hold the compiled kernels
to something else.  Numbers are invented; no measured figure is needed here.
"""

import numpy as np
import pytest
from scipy.integrate import quad
from scipy.spatial.transform import Rotation

from sim import beam, bond, hinge, materials, sheet, tangent
from sim import section as sections
from sim.bond import END, LENGTH, OFFSET, bond_law, touch_law
from sim.network import Drive, Load, Network
from sim.pattern import build_pattern
from sim.structure import Beam, Bonds, Section, Structure, Tie
from sim.yielding import LAYER_COUNT, layer_rule, plane_stress_return

STEEL = materials.SKIN_STEEL
METAL = np.array([STEEL.young_pa, STEEL.poisson_ratio, STEEL.yield_pa, STEEL.hardening_pa])


def slope(function, x, step):
    """Return the central difference of a function (of any shape) by every entry of x, last axis."""
    columns = []
    for index in np.ndindex(x.shape):
        plus, minus = x.copy(), x.copy()
        plus[index] += step
        minus[index] -= step
        columns.append((np.asarray(function(plus)) - np.asarray(function(minus))) / (2.0 * step))
    return np.stack(columns, axis=-1)


def assert_near(got, wanted, ratio):
    """Compare against the largest entry of the wanted array."""
    np.testing.assert_allclose(got, wanted, rtol=0.0, atol=ratio * max(np.abs(wanted).max(), 1.0e-30))


# --- hinges


def hinge_points(seed):
    flat = np.array([[0.0, 0.0, 0.0], [0.05, 0.0, 0.0], [0.02, 0.04, 0.0], [0.03, -0.045, 0.0]])
    return flat + 0.015 * np.random.default_rng(seed).standard_normal((4, 3))


HINGE = np.array([[0, 1, 2, 3]])


def angle_of(points):
    angle, gradient = np.zeros(1), np.zeros((1, 4, 3))
    hinge.hinge_angles(points, HINGE, angle, gradient)
    return angle[0], gradient[0]


def curvature_of(points):
    """Return the second derivatives (12, 12) put together from the kernel's lower blocks."""
    blocks, hessian = np.empty((9, 3, 3)), np.zeros((12, 12))
    tangent.hinge_blocks(points, HINGE[0], 1.0, blocks, np.empty((19, 3)))
    pairs = [(0, 0), (1, 0), (1, 1), (2, 0), (2, 1), (2, 2), (3, 0), (3, 1), (3, 3)]
    for (p, q), block in zip(pairs, blocks, strict=True):
        hessian[3 * p : 3 * p + 3, 3 * q : 3 * q + 3] = block
        hessian[3 * q : 3 * q + 3, 3 * p : 3 * p + 3] = block.T
    return hessian


@pytest.mark.parametrize("seed", range(8))
def test_hinge_angle_is_the_plain_one_and_its_derivatives_are_its_own(seed):
    points = hinge_points(seed)
    angle, gradient = angle_of(points)
    assert angle == pytest.approx(sheet.hinge_angle(points, HINGE)[0], rel=1e-12)
    assert_near(gradient.ravel(), slope(lambda x: angle_of(x)[0], points, 1e-7), 1e-6)
    hessian = curvature_of(points)
    assert_near(hessian, slope(lambda x: angle_of(x)[1].ravel(), points, 1e-7), 1e-6)
    assert_near(hessian, hessian.T, 1e-12)


def test_a_hinge_opened_by_a_known_turn_has_that_angle():
    for turn in (-2.5, -1.0, 0.3, 3.0):
        points = np.array([[0.0, 0.0, 0.0], [0.05, 0.0, 0.0], [0.02, 0.04, 0.0], [0.02, -0.04, 0.0]])
        points[3] = Rotation.from_rotvec([-turn, 0.0, 0.0]).apply(points[3])
        assert angle_of(points)[0] == pytest.approx(turn, abs=1e-12)


# --- sections and triangles

THICKNESS = 0.0007


def section(strain, curvature, plastic=None, hardening=None, form=1.0):
    """Return energy, dissipation, resultants, stiffness and new plastic set of one section."""
    heights, weights = layer_rule()
    old = np.zeros((LAYER_COUNT, 3)) if plastic is None else plastic
    hard = np.zeros(LAYER_COUNT) if hardening is None else hardening
    new, new_hard = np.zeros((LAYER_COUNT, 3)), np.zeros(LAYER_COUNT)
    resultant, stiffness = np.zeros(6), np.zeros((6, 6))
    psi, heat = sections.section_response(
        strain, curvature, THICKNESS, form, METAL, heights, weights, old, hard, new, new_hard, resultant,
        stiffness, np.empty((5, 3)),
    )  # fmt: skip
    return psi, heat, resultant, stiffness, new, new_hard


def layer_by_layer(strain, curvature, plastic, hardening, form):
    """Return energy, dissipation and resultants by the plain sum over layers."""
    psi, heat, resultant = 0.0, 0.0, np.zeros(6)
    for k, (z, w) in enumerate(zip(*layer_rule(), strict=True)):
        z, w = z * THICKNESS * form, w * THICKNESS
        stress, set_, tangent = np.zeros(3), np.zeros(3), np.zeros((3, 3))
        _, stored, lost = plane_stress_return(
            strain + z * curvature, plastic[k], hardening[k], *METAL, stress, set_, tangent
        )
        psi, heat = psi + w * stored, heat + w * lost
        resultant += w * np.concatenate([stress, z * stress])
    return psi, heat, resultant


def histories():
    """Return strains, curvatures and what went before: elastic, flowing, turned back, flowing again."""
    rng = np.random.default_rng(3)
    for size in (2e-4, 2e-3, 2e-2):
        for back in (None, -0.2, -1.0, 1.5):
            strain = size * rng.standard_normal(3)
            curvature = size / THICKNESS * rng.standard_normal(3)
            if back is None:
                yield strain, curvature, np.zeros((LAYER_COUNT, 3)), np.zeros(LAYER_COUNT)
            else:
                *_, set_, hard = section(strain, curvature)
                yield back * strain, back * curvature, set_, hard


@pytest.mark.parametrize(("strain", "curvature", "plastic", "hardening"), list(histories()))
def test_section_forces_are_the_layers_sum_and_the_slope_of_their_energy(
    strain, curvature, plastic, hardening
):
    heights, weights = layer_rule()
    resultant = np.zeros(6)
    psi, heat, flowing = sections.section_forces(
        strain, curvature, THICKNESS, 1.0, METAL, heights, weights, plastic, hardening, plastic.copy(),
        hardening.copy(), resultant,
    )  # fmt: skip
    plain = layer_by_layer(strain, curvature, plastic, hardening, 1.0)
    np.testing.assert_allclose([psi, heat], plain[:2], rtol=1e-12, atol=1e-12 * plain[0])
    assert_near(resultant, plain[2], 1e-12)
    assert flowing == (plain[1] > 0.0)
    full = section(strain, curvature, plastic, hardening)
    assert_near(resultant, full[2], 1e-12)
    # in thickness units, so that both halves weigh the same
    unit = np.array([1.0, 1.0, 1.0, *(3 * [1.0 / THICKNESS])])
    start = np.concatenate([strain, curvature]) / unit

    def energy(x):
        return sum(section((unit * x)[:3], (unit * x)[3:], plastic, hardening)[:2])

    def forces(x):
        return section((unit * x)[:3], (unit * x)[3:], plastic, hardening)[2] * unit

    assert_near(resultant * unit, slope(energy, start, 1e-7), 1e-5)
    stiffness = unit[:, None] * full[3] * unit
    assert_near(stiffness, slope(forces, start, 1e-8), 1e-5)
    assert_near(stiffness, stiffness.T, 1e-12)


def test_an_elastic_section_is_the_plate_of_the_textbook():
    """N over E t / (1 - nu^2) and M over E t^3 / 12 / (1 - nu^2) [timoshenko-plates-1959]."""
    *_, stiffness, _, _ = section(np.zeros(3), np.zeros(3))
    plate = STEEL.young_pa / (1.0 - STEEL.poisson_ratio**2) * sheet.plate_matrix(STEEL.poisson_ratio)
    assert_near(stiffness[:3, :3], THICKNESS * plate, 1e-12)
    assert_near(stiffness[3:, 3:], THICKNESS**3 / 12.0 * plate, 1e-12)
    assert_near(stiffness[:3, 3:] + 1.0, np.ones((3, 3)), 1e-9)


# --- bonds


def one_bond(plane, law):
    """Return a bond over a triangle (or along a wall's depth line), every slot a node of its own."""
    r, p, q = np.zeros(6), np.zeros(6), np.zeros(6)
    if plane:
        r[:4] = 1.0, -0.3, -0.3, -0.4
        p[1:3], q[1], q[3] = (-1.0, 1.0), -1.0, 1.0
    else:
        r[:4] = 0.6, 0.4, -0.6, -0.4
        p[2:] = 0.6, 0.4, -0.6, -0.4
    return np.arange(6)[None], np.stack([r, p, q])[None], np.array([plane]), law[None]


def bond_points(plane, opening, slip, seed=0):
    rng = np.random.default_rng(seed)
    if plane:
        a, b, c = np.array([[0.0, 0.0, 0.0], [0.04, 0.0, 0.0], [0.01, 0.05, 0.0]])
        foot = 0.3 * a + 0.3 * b + 0.4 * c
        upper = foot + np.array([slip * 0.8, slip * 0.6, opening])
        x = np.array([upper, a, b, c, a + 1.0, a + 2.0])
    else:
        lower = np.array([[0.0, 0.0, 0.0], [0.05, 0.0, 0.0]])
        x = np.concatenate(
            [lower + np.array([slip * 0.6, slip * 0.8, opening]), lower, lower - [0.0, 0.0, 0.03]]
        )
    return Rotation.from_rotvec(rng.standard_normal(3)).apply(x) + rng.standard_normal(3)


def bond_values(points, plane, law, worst=0.0, touching=True):
    nodes, coefficients, flat, rows = one_bond(plane, law)
    active, out = np.zeros(1, bool), [np.zeros(1) for _ in range(5)]
    forces = np.zeros((6, 3))
    bond.bond_forces(
        points, nodes, coefficients, flat, rows, np.array([worst]), np.array([touching]), active, *out, forces
    )
    stiffness = np.zeros((1, 18, 18))
    bond.bond_stiffness(
        points,
        nodes,
        coefficients,
        flat,
        rows,
        np.array([worst]),
        np.array([touching]),
        True,
        active,
        stiffness,
    )
    new_worst, opening, normal, stored, lost = (float(v[0]) for v in out)
    return {
        "energy": stored + lost, "forces": forces, "stiffness": stiffness[0], "worst": new_worst,
        "opening": opening, "normal": normal, "active": bool(active[0]), "lost": lost,
    }  # fmt: skip


SEAM = bond_law(
    strength=5000.0,
    energy=60.0,
    shear_ratio=3.0,
    rise_m=3e-4,
    plateau_share=0.3,
    pressure=2.7e7,
    length_m=0.02,
)
WELD = bond_law(strength=1500.0, energy=3.0, shear_ratio=2.0, rise_m=2e-4, pressure=1e6)
TOUCH = touch_law(pressure=2.0e6, offset_m=2e-3)
BRANCHES = {
    "rise": (SEAM, 1.5e-4, 3e-5, 0.0),
    "rise in shear": (SEAM, 1e-5, 6e-5, 0.0),
    "plateau": (SEAM, 2.0e-3, 5e-4, 0.0),
    "softening": (SEAM, 1.2e-2, 1e-3, 0.0),
    "unloading": (SEAM, 2.0e-3, 3e-4, 9e-3),
    "nothing left": (SEAM, 2.0e-3, 3e-4, 0.1),
    "pressed": (SEAM, -2e-4, 2e-5, 0.0),
    "pressed and slipping": (SEAM, -2e-4, 2e-3, 0.0),
    "pressed with nothing left": (SEAM, -2e-4, 2e-3, 0.1),
    "weld rising": (WELD, 1e-4, 4e-5, 0.0),
    "weld failing": (WELD, 1.2e-3, 6e-4, 0.0),
    "sheets apart": (TOUCH, 3e-3, 1e-3, 0.0),
    "sheets pressed": (TOUCH, 1.5e-3, 1e-3, 0.0),
}


@pytest.mark.parametrize("plane", [True, False])
@pytest.mark.parametrize("branch", BRANCHES)
def test_bond_forces_and_stiffness_are_slopes_of_the_energy(branch, plane):
    law, opening, slip, worst = BRANCHES[branch]
    x = bond_points(plane, opening, slip)
    at = bond_values(x, plane, law, worst)
    assert at["opening"] == pytest.approx(opening, abs=1e-12)
    scale = max(np.abs(at["forces"]).max(), 1e-6)
    numeric = slope(lambda y: bond_values(y, plane, law, worst)["energy"], x, 1e-8)
    np.testing.assert_allclose(at["forces"].ravel(), numeric, rtol=0.0, atol=1e-5 * scale + 1e-5)
    if at["active"]:
        numeric = slope(lambda y: bond_values(y, plane, law, worst)["forces"].ravel(), x, 1e-9)
        assert_near(at["stiffness"], numeric, 2e-5)
        assert_near(at["stiffness"], at["stiffness"].T, 1e-12)
    else:
        assert not np.abs(at["forces"]).max()


@pytest.mark.parametrize("plane", [True, False])
@pytest.mark.parametrize("branch", BRANCHES)
def test_a_bond_pulls_and_turns_nothing_as_a_whole(branch, plane):
    law, opening, slip, worst = BRANCHES[branch]
    x = bond_points(plane, opening, slip, seed=1)
    forces = bond_values(x, plane, law, worst)["forces"]
    scale = np.abs(forces).sum() + 1e-9
    assert np.abs(forces.sum(axis=0)).max() <= 1e-12 * scale
    assert np.abs(np.cross(x - x.mean(axis=0), forces).sum(axis=0)).max() <= 1e-10 * scale


@pytest.mark.parametrize("share", [0.0, 0.05, 0.5, 1.0])
@pytest.mark.parametrize("mode", [0.0, 0.5, 1.0])
def test_a_bond_costs_its_energy_to_part_in_any_mixture(share, mode):
    """The area of the force-opening curve by scipy's quadrature is the energy asked for, peel to slip."""
    law = bond_law(
        strength=5000.0,
        energy=60.0,
        shear_ratio=3.0,
        rise_m=3e-4,
        plateau_share=share,
        pressure=1.0,
        length_m=0.02,
    )
    corners = law[1:4]
    area = sum(
        quad(lambda d: bond.envelope(d, law)[1], a, b, epsabs=1e-12)[0]
        for a, b in zip([0.0, *corners[:2]], corners, strict=True)
    )
    assert area == pytest.approx(60.0, rel=1e-9)
    far = 1.001 * law[END]
    parted = bond_values(
        bond_points(True, far * (1 - mode) + 1e-9, far * mode / 3.0 + far * (mode == 0.5)), True, law
    )
    assert parted["lost"] == pytest.approx(60.0 * law[LENGTH], rel=1e-9)


def test_a_touch_never_pulls_and_never_acts_once_slid_off():
    apart = bond_values(bond_points(True, TOUCH[OFFSET] + 1e-4, 0.0), True, TOUCH)
    pressed = bond_values(bond_points(True, TOUCH[OFFSET] - 1e-4, 0.0), True, TOUCH)
    off = bond_values(bond_points(True, TOUCH[OFFSET] - 1e-4, 0.0), True, TOUCH, touching=False)
    assert apart["normal"] == off["normal"] == 0.0
    assert pressed["normal"] == pytest.approx(-200.0, rel=1e-9)


# --- beams


def test_link_forces_and_stiffness_are_slopes_of_the_energy():
    links, rest, axial = np.array([[0, 1]]), np.array([0.1]), np.array([1e7])
    x = np.array([[0.0, 0.0, 0.0], [0.08, 0.05, 0.03]])

    def values(y):
        stored, tension, forces = np.zeros(1), np.zeros(1), np.zeros((2, 3))
        beam.link_forces(y, links, rest, axial, stored, tension, forces)
        return stored[0], forces, tension

    _, forces, tension = values(x)
    assert_near(forces.ravel(), slope(lambda y: values(y)[0], x, 1e-8), 1e-6)
    stiffness = np.zeros((1, 6, 6))
    beam.link_stiffness(x, links, rest, axial, tension, False, stiffness)
    assert_near(stiffness[0], slope(lambda y: values(y)[1].ravel(), x, 1e-8), 1e-6)


@pytest.mark.parametrize("reference", [3, -1], ids=["beside", "alone"])
@pytest.mark.parametrize("limit", [1e9, 50.0], ids=["elastic", "flowing"])
def test_bend_forces_and_stiffness_are_slopes_of_the_energy(limit, reference):
    bends, rest = np.array([[0, 1, 2, reference]]), np.array([[0.05, -0.02]])
    bending, limits, old = np.array([2e3]), np.array([limit]), np.array([[0.01, 0.02]])
    x = np.array([[0.0, 0.0, 0.0], [0.1, 0.01, 0.0], [0.19, 0.05, 0.03], [0.12, 0.06, -0.15]])

    def values(y):
        turn, moment, stored, lost, forces = *np.zeros((2, 1, 2)), *np.zeros((2, 1)), np.zeros((4, 3))
        beam.bend_forces(y, bends, rest, bending, limits, old, turn, moment, stored, lost, forces)
        return stored[0] + lost[0], forces, lost[0]

    _, forces, lost = values(x)
    assert (lost > 0.0) == (limit == 50.0)
    assert_near(forces.ravel(), slope(lambda y: values(y)[0], x, 1e-7), 1e-6)
    stiffness = np.zeros((1, 12, 12))
    beam.bend_stiffness(x, bends, rest, bending, limits, old, stiffness)
    assert_near(stiffness[0], slope(lambda y: values(y)[1].ravel(), x, 1e-7), 1e-5)
    assert_near(stiffness[0], stiffness[0].T, 1e-12)


def test_the_curvature_binormal_is_twice_the_tangent_of_half_the_angle():
    out, by_e, by_f = np.zeros(3), np.zeros((3, 3)), np.zeros((3, 3))
    for turn in (0.1, 1.0, 2.0):
        e = np.array([0.1, 0.0, 0.0])
        beam.binormal(e, Rotation.from_rotvec([0.0, 0.0, turn]).apply(2.0 * e), out, by_e, by_f)
        np.testing.assert_allclose(out, [0.0, 0.0, 2.0 * np.tan(turn / 2.0)], rtol=1e-12, atol=1e-15)


# --- the whole network


def plates():
    """Return a structure with every kind of element: two plates, seam, touch, beam, ties and a rim."""
    side, pitch = 4, 0.05
    i, j = np.meshgrid(np.arange(side), np.arange(side), indexing="ij")
    flat = np.stack([pitch * (i + 0.5 * j), 0.0 * i, 0.87 * pitch * j], axis=-1).reshape(-1, 3)
    cells = [(a * side + b, (a + 1) * side + b) for a in range(side - 1) for b in range(side - 1)]
    triangles = np.array([t for a, b in cells for t in ((a, b, a + 1), (b, b + 1, a + 1))])
    n = side * side
    points = np.concatenate([flat, flat + np.array([0.0, 0.004, 0.0])])
    both = np.concatenate([triangles, triangles + n])
    law = np.stack([SEAM, SEAM, TOUCH, TOUCH])
    over = np.array([0, 3, 5, 10])
    nodes, coefficients = [], []
    for k in over:
        t = triangles[np.flatnonzero((triangles == k).any(axis=1))[0]]
        nodes.append([n + k, n + k, *t, t[0]])
        r, p, q = np.zeros(6), np.zeros(6), np.zeros(6)
        r[0], r[2:5] = 1.0, -(t == k).astype(float)
        p[2], p[4], q[2], q[3] = -1.0, 1.0, -1.0, 1.0
        coefficients.append([r, p, q])
    count = len(over)
    law[:, OFFSET] = [0.004, 0.004, 0.0045, 0.0035]
    bonds = Bonds(
        np.array(nodes), np.array(coefficients), np.ones(count, bool), law, np.zeros(count, np.int64),
        ("seam",), np.full(count, np.nan), np.full(count, 0.1),
    )  # fmt: skip
    sections = (Section("a", 0.0007, STEEL), Section("b", 0.0008, materials.INNER_STEEL, form_ratio=2.0))
    ties = (
        Tie("one", np.array([1, 2]), np.array([0.4, 0.6]), 1e7, np.full(3, np.inf)),
        Tie("two", np.array([n + 3, 7]), np.array([1.0, -1.0]), 2e7, np.full(3, np.inf)),
    )
    rim = np.array([0, 4, 8])
    return Structure(
        points, both, np.repeat([0, 1], len(triangles)), sections,
        (Beam("bar", np.arange(4, 8), 1e6, 50.0, 20.0),), bonds, ties, rim,
        points[rim, 1] + np.array([1e-4, -1e-3, 1e-4]),
    )  # fmt: skip


def network():
    s = plates()
    d = Drive(np.array([13, 14]), np.array([0.5, 0.5]), np.array([0.6, 0.8, 0.0]), 0.0)
    d = Drive(d.nodes, d.weights, d.direction, d.travel(s.points))
    return Network(s, [d])


def load_at(net, state):
    dead = np.zeros_like(state.points)
    dead[9] = [5.0, -3.0, 2.0]
    return Load((0.002,), dead, 50.0, state.points)


def bent(net, size, seed=2):
    """Return the network's points bent smoothly, with a little unevenness."""
    x = net.structure.points.copy()
    x[:, 1] += size * (4.0 * x[:, 0] ** 2 - 3.0 * x[:, 2] * x[:, 0]) * 10.0
    return x + 0.02 * size * np.random.default_rng(seed).standard_normal(x.shape)


def dense(net, values):
    n = net.free.size
    lower = np.zeros((n, n))
    lower[net.pattern.rows, net.pattern.columns] = values
    return lower + np.tril(lower, -1).T


@pytest.mark.parametrize("size", [1e-4, 3e-3, 3e-2])
@pytest.mark.parametrize("history", [False, True])
def test_the_networks_forces_and_tangent_are_slopes_of_its_potential(size, history):
    net = network()
    state = net.initial_state()
    if history:
        state = net.commit(state, net.evaluate(bent(net, -0.02, seed=5), state, load_at(net, state)))
    load, x = load_at(net, state), bent(net, size)
    ev = net.evaluate(x, state, load)
    rng = np.random.default_rng(0)
    matrix = dense(net, net.stiffness_values(ev, state, load, ev.springs))
    scale = np.abs(ev.forces).max()
    for _ in range(12):
        way = rng.standard_normal(x.shape)
        way /= np.abs(way).max()
        step = 1e-8
        there, back = net.evaluate(x + step * way, state, load), net.evaluate(x - step * way, state, load)
        work = (there.potential_j - back.potential_j) / (2 * step)
        assert work == pytest.approx(float(np.sum(ev.forces * way)), rel=1e-5, abs=1e-5 * scale)
        turn = (there.forces - back.forces).ravel() / (2 * step)
        assert_near(matrix @ way.ravel(), turn, 1e-5)


def test_the_pattern_keeps_every_entry_of_the_tangent():
    """The sparse tangent is the dense one, column by column; nothing falls outside the pattern."""
    net = network()
    state = net.initial_state()
    load, x = load_at(net, state), bent(net, 3e-3)
    ev = net.evaluate(x, state, load)
    matrix = dense(net, net.stiffness_values(ev, state, load, ev.springs))
    assert_near(matrix, slope(lambda y: net.evaluate(y, state, load).forces.ravel(), x, 1e-8), 1e-6)


def test_a_patch_on_one_conic_is_refused_by_name():
    """Three triangles round one node leave a patch of five corners: always on one conic, no W."""
    points = np.array([[0.0, 0.0, 0.0], [0.05, 0.0, 0.0], [-0.02, 0.04, 0.0], [-0.03, -0.04, 0.0]])
    triangles = np.array([[0, 1, 2], [0, 2, 3], [0, 3, 1]])
    with pytest.raises(ValueError, match="on one conic"):
        Network(Structure(points, triangles, np.zeros(3, np.int64), (Section("a", 0.001, STEEL),)))


def test_what_is_left_of_an_indefinite_tangent_has_no_negative_direction():
    net = network()
    state = net.initial_state()
    load, x = load_at(net, state), bent(net, 3e-2)
    ev = net.evaluate(x, state, load)
    whole = dense(net, net.stiffness_values(ev, state, load, ev.springs))
    kept = dense(net, net.stiffness_values(ev, state, load, ev.springs, positive=True, shift=1.0e3))
    assert np.linalg.eigvalsh(whole)[0] < 0.0 < np.linalg.eigvalsh(kept)[0]


def loose(net):
    """Return the same network held by nothing: no tie, rim, drive or load."""
    s = net.structure
    return Network(Structure(s.points, s.triangles, s.triangle_section, s.sections, s.beams, s.bonds))


@pytest.mark.parametrize("size", [1e-4, 3e-3, 3e-2])
def test_a_network_carried_and_turned_as_a_whole_feels_nothing_new(size):
    net = loose(network())
    state, x = net.initial_state(), bent(net, size)
    ev = net.evaluate(x, state, Load())
    turn = Rotation.from_rotvec([0.7, -1.9, 0.4])
    moved = net.evaluate(turn.apply(x) + np.array([3.0, -1.0, 2.0]), state, Load())
    assert moved.potential_j == pytest.approx(ev.potential_j, rel=1e-7)
    assert_near(moved.forces, turn.apply(ev.forces), 1e-6)
    rest = net.evaluate(turn.apply(net.structure.points), state, Load())
    calm = net.evaluate(net.structure.points, state, Load())
    assert rest.potential_j == pytest.approx(calm.potential_j, abs=1e-12)


@pytest.mark.parametrize("size", [1e-4, 3e-3, 3e-2])
def test_inner_forces_add_up_to_nothing(size):
    net = loose(network())
    x = bent(net, size)
    forces = net.evaluate(x, net.initial_state(), Load()).forces
    scale = np.abs(forces).sum()
    assert np.abs(forces.sum(axis=0)).max() <= 1e-12 * scale
    assert np.abs(np.cross(x, forces).sum(axis=0)).max() <= 1e-12 * scale


def test_the_elastic_short_cut_is_the_sum_over_layers():
    """Just inside yield the closed form acts, with a trace of history the layers do: the same forces."""
    net = loose(network())
    state, x = net.initial_state(), bent(net, 1e-4)
    short = net.evaluate(x, state, Load())
    assert not short.flowing.any()
    state.hardening[:] = 1e-300
    layered = net.evaluate(x, state, Load())
    assert_near(layered.springs, short.springs, 1e-11)
    np.testing.assert_allclose(layered.triangle_stored, short.triangle_stored, rtol=1e-10, atol=1e-16)


def test_a_reused_evaluation_holds_nothing_of_its_past():
    net = network()
    state = net.initial_state()
    load = load_at(net, state)
    used = net.evaluate(bent(net, 3e-2), state, load)
    again = net.evaluate(bent(net, 1e-4), state, load, out=used)
    fresh = net.evaluate(bent(net, 1e-4), state, load)
    for name, value in vars(fresh).items():
        assert np.array_equal(getattr(again, name), value), name


def test_a_mean_that_names_a_node_twice_is_refused():
    with pytest.raises(ValueError, match="twice"):
        build_pattern(3, [np.array([[0, 1, 2]])], [np.array([1, 1])], np.zeros((3, 3), bool))
