"""Weight, ground and falling against closed forms of statics.

Sources
-------
Work of a weight m g h, a hinged bar at rest below its hinge, reactions of a beam on two supports, a rigid
body on springs, Coulomb's limit on a slope: textbook statics, no further source.  Densities of steel and
aluminium: textbook values.  A door weighs 20 to 35 kg and about 150 N at its latch end: common practice, no
source.
"""

import numpy as np
import pytest

from sim import materials
from sim.fall import settle
from sim.increment import Stepper
from sim.ledger import Ledger
from sim.network import Load, Network
from sim.structure import Section, Structure, Tie
from sim.surround import Carried, Ground, Surround
from sim.weight import node_mass_kg

G = 9.81
LONG, WIDE, THICK = 0.4, 0.2, 0.004


def plate(nx=9, ny=5, *, metal=materials.PATCH_STEEL, turned=0.0):
    """Return points and triangles of an upright plate in the plane y = 0, its lower edge at z = 0."""
    x, z = np.meshgrid(np.linspace(0.0, LONG, nx), np.linspace(0.0, WIDE, ny), indexing="ij")
    points = np.column_stack([x.ravel(), np.zeros(x.size), z.ravel()])
    at = np.arange(nx * ny).reshape(nx, ny)
    a, b, c, d = at[:-1, :-1].ravel(), at[1:, :-1].ravel(), at[1:, 1:].ravel(), at[:-1, 1:].ravel()
    triangles = np.concatenate([np.column_stack([a, b, c]), np.column_stack([a, c, d])])
    if turned:
        c, s = np.cos(turned), np.sin(turned)
        points = points @ np.array([[c, 0.0, s], [0.0, 1.0, 0.0], [-s, 0.0, c]])
    return points, triangles, (Section("plate", THICK, metal),)


def structure(ties=(), around=None, **more):
    points, triangles, sections = plate(**more)
    around = Surround(np.array([0.0, 0.0, -G])) if around is None else around
    return Structure(
        points, triangles, np.zeros(len(triangles), int), sections, ties=tuple(ties), surround=around
    )


def fallen(s):
    stepper = Stepper(Network(s), lambda: False)
    start = stepper.first_point(stepper.network.initial_state(), Ledger())
    steps = list(settle(stepper, start))
    assert steps[-1].at_rest and stepper.tally.failed == 0
    return stepper, steps


def kg(s):
    return float(node_mass_kg(s).sum())


@pytest.mark.parametrize("metal", [materials.PATCH_STEEL, materials.SKIN_ALLOY])
def test_a_plate_weighs_its_volume_times_its_density_and_what_it_carries(metal):
    density = {"patch steel": 7850.0, "skin alloy": 2700.0}[metal.name]  # kg/m^3, textbook
    nodes = np.array([3, 4])
    load = Carried("glass", 2.5, nodes, np.array([0.4, 0.6]))
    s = structure(around=Surround(np.array([0.0, 0.0, -G]), (load,)), metal=metal)
    assert kg(s) == pytest.approx(LONG * WIDE * THICK * density + 2.5, rel=1e-12)
    net = Network(s)
    ev = net.evaluate(s.points, net.initial_state(), Load())
    np.testing.assert_allclose(-ev.forces.sum(axis=0), [0.0, 0.0, -G * kg(s)], atol=1e-9)
    bare = structure(around=Surround(np.array([0.0, 0.0, -G])), metal=metal)
    more = node_mass_kg(s) - node_mass_kg(bare)
    np.testing.assert_allclose(more[nodes], [1.0, 1.5], rtol=1e-12)


def test_a_falling_plate_books_m_g_h_and_the_drag_took_as_much():
    """The drag's own work, sum of force x way, is the same figure from the other side."""
    height = 0.3
    ground = Ground(np.array([0.0, 0.0, 1.0]), -height)
    s = structure(around=Surround(np.array([0.0, 0.0, -G]), ground=ground))
    _, steps = fallen(s)
    end = steps[-1].point
    low = end.state.points[:, 2].min()
    assert low == pytest.approx(-height, abs=2e-4)  # m g over the ground's penalty is a hundredth of a mm
    wanted = kg(s) * G * height
    assert end.ledger.lines["drop"] == pytest.approx(wanted, rel=2e-3)
    assert end.ledger.weight_j == pytest.approx(-wanted, rel=2e-3)
    assert abs(end.ledger.gap_j) < 1e-6 * wanted
    free = [step for step in steps if step.point.state.points[:, 2].min() > -height + 0.01]
    assert len(free) > 4
    ways = [np.ptp(step.point.state.points[:, 2] - s.points[:, 2]) for step in free]
    assert max(ways) < 1e-6  # it falls as one


def test_a_bar_hinged_at_one_end_comes_to_rest_below_its_hinge():
    end = np.array([0, 1, 2, 3, 4])
    weights = np.full(5, 0.2)
    tie = Tie("pin", end, weights, 1.0e7, np.full(3, np.inf))
    s = structure([tie])
    _, steps = fallen(s)
    point = steps[-1].point
    mass = node_mass_kg(s)
    centre = mass @ point.state.points / mass.sum()
    pin = weights @ point.state.points[end]
    arm = 0.5 * LONG
    np.testing.assert_allclose(centre - pin, [0.0, 0.0, -arm], atol=2e-3 * arm)
    assert point.ledger.lines["drop"] == pytest.approx(kg(s) * G * arm, rel=0.01)
    pull = point.evaluation.tie_force[0]
    np.testing.assert_allclose(pull, [0.0, 0.0, -kg(s) * G], atol=0.01 * kg(s) * G)


def test_two_props_share_a_weight_as_a_beam_on_two_supports_does():
    """Reactions W b / L and W a / L of a load at a and b from supports L apart."""
    left = Tie("left", np.array([0]), np.ones(1), 1.0e7, np.full(3, np.inf))
    right = Tie("right", np.array([30]), np.ones(1), 1.0e7, np.full(3, np.inf))
    s = structure([left, right])
    x = s.points[30, 0]
    point = fallen(s)[1][-1].point
    share = 0.5 * LONG / x
    force = -point.evaluation.tie_force[:, 2] / (kg(s) * G)
    np.testing.assert_allclose(force, [1.0 - share, share], atol=2e-3)
