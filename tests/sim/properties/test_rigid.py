"""Pressing a rigid body on sheets: forces and stiffness are slopes, it only pushes, it makes no energy.

Finite differences in double precision: the step is chosen so that truncation and rounding stay below the
tolerance; places within a step of an edge between two regions of the body are passed over.
"""

import numpy as np
import pytest
from numpy.testing import assert_allclose

from sim.network import Load, Network
from sim.rigid import Barrier, Pressing, first_touch, press_stiffness, reading_points, signed_distance
from tests.sim.properties.test_laws import dense, plates

BODIES = {
    "cylinder": (np.array([0.14, 0.0, 0.25]), 0.0125, False),
    "pole": (np.array([0.0, 0.0, 0.20]), 0.10, False),
    "face": (np.array([0.20, 0.05, 0.15]), 0.02, True),
}
STEP_M = 1.0e-6


def value(own, body):
    gradient, hessian = np.empty(3), np.empty((3, 3))
    return signed_distance(np.asarray(own, float), *BODIES[body], gradient, hessian), gradient, hessian


@pytest.mark.parametrize("body", BODIES)
def test_the_distance_and_its_slopes_hang_together(body):
    rng = np.random.default_rng(4)
    seen = 0
    for own in rng.uniform(-0.45, 0.45, (600, 3)):
        _, gradient, hessian = value(own, body)
        around = [(value(own + s, body), value(own - s, body)) for s in STEP_M * np.eye(3)]
        slope = [(a[0] - b[0]) / (2 * STEP_M) for a, b in around]
        bend = np.array([(a[1] - b[1]) / (2 * STEP_M) for a, b in around])
        if np.abs(bend - hessian).max() > 1e-3 * (1.0 + np.abs(hessian).max()):
            continue  # an edge between two regions lies within the step
        seen += 1
        assert_allclose(gradient, slope, rtol=0.0, atol=1e-7)
        assert np.linalg.norm(gradient) == pytest.approx(1.0, abs=1e-12)
        assert_allclose(hessian @ gradient, 0.0, atol=1e-9)
    assert seen > 590


@pytest.mark.parametrize(
    ("body", "own", "distance"),
    [
        ("cylinder", [0.2, 0.0, 0.1], 0.0475),
        ("cylinder", [0.0, -0.1525, 0.0], 0.0),
        ("cylinder", [0.0, 0.0, 0.3], 0.0375),
        ("pole", [0.0, 0.0, 0.35], 0.05),
        ("pole", [0.06, 0.0, -0.28], 0.0),
        ("face", [0.1, 0.09, -0.1], 0.02),
        ("face", [0.23, 0.09, 0.0], 0.03),
        ("face", [0.0, 0.0, 0.0], -0.07),
    ],
)
def test_the_distance_is_the_ruler_s(body, own, distance):
    """Distances read off a drawing: 3-4-5 triangles at the rounded ends and edges."""
    assert value(own, body)[0] == pytest.approx(distance, abs=1e-12)


def test_reading_points_share_a_triangle_evenly():
    """Their mean is the centroid, and they integrate a linear field exactly."""
    weights = reading_points(3)
    assert len(weights) == 9
    assert_allclose(weights.sum(axis=1), 1.0, atol=1e-14)
    assert_allclose(weights.mean(axis=0), 1.0 / 3.0, atol=1e-14)
    assert weights.min() > 0.0


def pressed(body, depth_m=2.0e-3, skew=0.3):
    """Return the two plates of the law tests with a body pressed in that deep, its load and state."""
    s = plates()
    direction = np.array([np.sin(skew), -np.cos(skew), 0.0])
    core, rounding, box = BODIES[body]
    middle = s.points.mean(axis=0) + np.array([0.0, 0.0, core[2] * 0.9])
    every = np.arange(len(s.triangles))
    far = Barrier(core, rounding, box, middle - direction, direction, every, pressure_n_per_m3=1.0e9)
    barrier = far.drawn_back(-first_touch(far, s.points, s.triangles))
    net = Network(s).with_barrier(barrier)
    return net, net.initial_state(), Load((depth_m,))


@pytest.mark.parametrize("body", BODIES)
def test_force_and_stiffness_are_slopes_of_the_energy(body):
    net, state, load = pressed(body)
    law = next(law for law in net.laws if isinstance(law, Pressing))
    x = net.structure.points + 1e-4 * np.random.default_rng(0).standard_normal(net.structure.points.shape)

    def of(y):
        ev = net.blank()
        law.forces(y, state, load, ev)
        return ev.stored["barrier"], ev.forces.ravel(), float(ev.drive_force[0])

    energy, forces, tool = of(x)
    assert energy > 0.0 and tool > 0.0
    step, numeric, bend = 1e-9, [], []
    for way in np.eye(x.size):
        there, back = of(x + step * way.reshape(x.shape)), of(x - step * way.reshape(x.shape))
        numeric.append((there[0] - back[0]) / (2 * step))
        bend.append((there[1] - back[1]) / (2 * step))
    assert_allclose(forces, numeric, rtol=0.0, atol=1e-6 * np.abs(forces).max())
    whole = np.zeros((x.size, x.size))
    active, room = (
        np.zeros(len(net.structure.triangles), bool),
        np.zeros((len(net.structure.triangles), 9, 9)),
    )
    b = law.barrier
    share = b.pressure_n_per_m3 * net.rest.area / len(reading_points())
    press_stiffness(
        x, net.structure.triangles, reading_points(), share, *b.placed(load.travel_m[0]), False, active, room
    )
    for triangle, part in zip(net.structure.triangles[active], room[active], strict=True):
        at = (3 * triangle[:, None] + np.arange(3)).ravel()
        whole[np.ix_(at, at)] += part
    assert_allclose(whole, np.array(bend), rtol=0.0, atol=1e-6 * np.abs(whole).max())


@pytest.mark.parametrize("body", BODIES)
def test_the_network_gets_its_positive_part_and_nothing_else(body):
    """What the tangent gains is symmetric, has no negative direction and the law's own blocks in place."""
    net, state, load = pressed(body)
    bare = Network(net.structure)
    x = net.structure.points
    with_it, without = net.evaluate(x, state, load), bare.evaluate(x, state, Load())
    gain = dense(net, net.stiffness_values(with_it, state, load, with_it.springs)) - dense(
        bare, bare.stiffness_values(without, state, Load(), without.springs)
    )
    assert_allclose(gain, gain.T, atol=1e-9 * np.abs(gain).max())
    low, high = np.linalg.eigvalsh(gain)[[0, -1]]
    assert low >= -1e-9 * high
    # a level move of the whole metal along the line is resisted by pressure x area under it, no more
    push = with_it.read["barrier push"]
    assert high > 0.0 and (push > 0.0).any()


@pytest.mark.parametrize("body", BODIES)
@pytest.mark.parametrize("depth_m", [-1e-3, 0.0, 1e-3, 5e-3])
def test_it_pushes_and_never_pulls(body, depth_m):
    """Every reading pushes or rests, what the metal gets is what the tool gives, and clear of it nothing."""
    net, state, load = pressed(body, depth_m)
    ev, bare = net.evaluate(net.structure.points, state, load), Network(net.structure)
    push = ev.read["barrier push"]
    assert (push >= 0.0).all()
    assert (push > 0.0).any() == (depth_m > 0.0)
    gain = ev.forces - bare.evaluate(net.structure.points, state, Load()).forces
    on_metal = -gain.sum(axis=0)
    assert float(ev.drive_force[0]) == pytest.approx(float(on_metal @ net.barrier.direction), abs=1e-9)
    assert float(ev.drive_force[0]) >= 0.0


@pytest.mark.parametrize("body", BODIES)
def test_the_tool_s_force_is_the_slope_of_energy_over_travel(body):
    net, state, load = pressed(body)
    step = 1e-8

    def energy(travel):
        return net.evaluate(net.structure.points, state, Load((travel,))).stored["barrier"]

    slope = (energy(load.travel_m[0] + step) - energy(load.travel_m[0] - step)) / (2 * step)
    force = float(net.evaluate(net.structure.points, state, load).drive_force[0])
    assert slope == pytest.approx(force, rel=1e-5)


def test_a_body_that_passes_beside_the_metal_never_touches_it():
    s = plates()
    core, rounding, box = BODIES["pole"]
    way = np.array([0.0, -1.0, 0.0])
    beside = Barrier(core, rounding, box, np.array([2.0, 1.0, 0.0]), way, np.arange(len(s.triangles)))
    assert first_touch(beside, s.points, s.triangles) == np.inf
