"""Weight, ground and falling against closed forms of statics.

Sources
-------
Work of a weight m g h, a hinged bar at rest below its hinge, reactions of a beam on two supports, a rigid
body on springs, Coulomb's limit on a slope: textbook statics, no further source.  Densities of steel and
aluminium: textbook values.  A door weighs 20 to 35 kg and about 150 N at its latch end: common practice, no
source.
"""

from dataclasses import replace

import numpy as np
import pytest

from sim import materials
from sim.door_model import build_model
from sim.fall import at_rest, settle
from sim.handling import grasp, leaf, strap, with_prop
from sim.increment import Stepper
from sim.ledger import Ledger
from sim.network import Drive, Load, Network
from sim.plan import Car
from sim.problems import PlanError
from sim.standing import _with_body, door_among, stands_of
from sim.structure import Section, Structure, Tie
from sim.surround import Carried, Check, Ground, Stand, Surround
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


# --- ground and friction


def on_slope(angle_rad, friction):
    """Return a plate let down on a plane that leans by an angle, and how far it has slid along it."""
    up = np.array([-np.sin(angle_rad), 0.0, np.cos(angle_rad)])
    pull = -G * np.array([0.0, 0.0, 1.0])
    points, triangles, sections = plate()
    c, s = np.cos(angle_rad), np.sin(angle_rad)
    lean = np.array([[c, 0.0, s], [0.0, 1.0, 0.0], [-s, 0.0, c]])
    points = points @ np.array([[1, 0, 0], [0, 0, 1], [0, -1, 0]]) @ lean  # flat on the plane
    around = Surround(pull, ground=Ground(up, float((points @ up).min()) - 1e-6, friction))
    s = Structure(points, triangles, np.zeros(len(triangles), int), sections, surround=around)
    stepper = Stepper(Network(s), lambda: False)
    point = stepper.first_point(stepper.network.initial_state(), Ledger())
    first = None
    for count, step in enumerate(settle(stepper, point)):
        point = step.point
        if count == 1:  # what touched nothing before does not rub in its first step
            first = point.state.points
        if count > 12:
            break
    down = np.array([-np.cos(angle_rad), 0.0, -np.sin(angle_rad)])
    return float(((point.state.points - first) @ down).mean()), step.at_rest


def test_a_plate_lies_on_a_slope_below_the_angle_of_friction_and_slides_above_it():
    """Coulomb: it holds while tan(angle) < friction."""
    friction = 0.4
    held, rest = on_slope(0.9 * np.arctan(friction), friction)
    assert rest and abs(held) < 1e-4
    slid, rest = on_slope(1.1 * np.arctan(friction), friction)
    assert not rest and slid > 0.05  # and it would go on


# --- the car on its stands


def sprung(stands):
    """Return a level plate that sticks out of a car on its stands, a drive from the ground under its end."""
    points, triangles, sections = plate()
    points = points[:, [0, 2, 1]]
    load_at = np.array([LONG, 0.5 * WIDE, 0.0])
    s = Structure(points, triangles, np.zeros(len(triangles), int), sections)
    fixed = np.zeros(points.shape, bool)
    fixed[points[:, 0] < 0.06] = True
    s, body = _with_body(replace(s, fixed=fixed), 1400.0, stands, np.array([0.7, -0.9, -0.3]))
    s = replace(s, surround=Surround(np.array([0.0, 0.0, -G]), body=body))
    node = int(np.argmin(np.linalg.norm(points - load_at, axis=1)))
    own = body.weights(points[node][None])[0]
    nodes, weights = np.array([node, *body.nodes]), np.array([1.0, *own])
    up = np.array([0.0, 0.0, 1.0])
    return (
        Network(s, [Drive(nodes, weights, up, float(up @ (weights @ s.points[nodes])))]),
        points[node],
        body,
    )


def four(k, across=1.0e6, carried=3.0e3):
    places = [(-0.6, -0.15), (-0.6, -1.65), (2.1, -0.15), (2.1, -1.65)]
    return tuple(
        Stand(f"{i}", np.array([x, y, -0.3]), k, across, carried, 5.0) for i, (x, y) in enumerate(places)
    )


def risen(network, travel):
    stepper = Stepper(network, lambda: False)
    point = at_rest(stepper, stepper.first_point(network.initial_state(), Ledger()))
    for part in np.linspace(0.0, travel, 5)[1:]:
        point = stepper.advance(point, float(part))
    assert stepper.tally.failed == 0 and point.ledger.closure_ratio() < 0.02
    return stepper, point


@pytest.mark.parametrize("k", [22.0e3, 1.0e6])
def test_a_push_from_the_ground_lifts_the_car_as_a_rigid_body_on_four_springs(k):
    """Rise under a load at (x, y) of the middle: F (1 / sum k + x^2 / sum k x^2 + y^2 / sum k y^2)."""
    network, place, body = sprung(four(k))
    _, point = risen(network, 20.0e-3)
    force = float(point.force_n[0])
    x, y = np.array([-1.35, -1.35, 1.35, 1.35]), np.array([0.75, -0.75, 0.75, -0.75])
    at = np.array([place[0] - 0.75, place[1] + 0.9])
    soft = 1.0 / (4.0 * k) + at[0] ** 2 / (k * x @ x) + at[1] ** 2 / (k * y @ y)
    rise = body.moved(point.state.points, network.structure.points, place)[0]
    assert rise[2] == pytest.approx(force * soft, rel=0.01)
    pushes = point.evaluation.read["stand push"]
    assert pushes.sum() == pytest.approx(4 * 3.0e3 - force, rel=1e-3)


def test_a_push_between_two_places_of_the_car_moves_it_by_nothing_but_its_changed_weight():
    network, place, body = sprung(four(22.0e3))
    drive = network.drives[0]
    nodes, weights = drive.nodes[:1], drive.weights[:1]
    up = np.array([0.0, 0.0, 1.0])
    own = network.with_drives([Drive(nodes, weights, up, float(up @ network.structure.points[nodes[0]]))])
    _, point = risen(own, 20.0e-3)
    assert float(point.force_n[0]) > 200.0
    moved = body.moved(point.state.points, own.structure.points, place)[0]
    # the end of a 2.5 kg plate risen by 20 mm shifts its weight along by a quarter of a millimetre
    assert np.abs(moved).max() < 1e-6


def test_an_unsupported_car_moves_more_and_gives_less_opening_for_the_same_stroke():
    """Fact of the trade: support first, or part of the stroke is lost; common practice, no source."""
    rises, openings = [], []
    for stands in (stands_of("wheels", 1400.0, 1.0, -0.3), stands_of("blocks", 1400.0, 1.0, -0.3)):
        network, place, body = sprung(stands)
        _, point = risen(network, 10.0e-3)
        rise = float(body.moved(point.state.points, network.structure.points, place)[0, 2])
        rises.append(rise)
        node = network.drives[0].nodes[0]
        openings.append(float(point.state.points[node, 2] - network.structure.points[node, 2]))
        assert rise + openings[-1] == pytest.approx(10.0e-3, rel=0.01)
    assert rises[0] > 2.0 * rises[1]
    assert openings[0] < openings[1]


def test_a_lifted_wheel_carries_nothing_and_pulls_at_nothing():
    network, _, _ = sprung(four(22.0e3, carried=100.0))
    _, point = risen(network, 40.0e-3)
    pushes = point.evaluation.read["stand push"]
    assert (pushes >= 0.0).all() and pushes[0] == 0.0


@pytest.mark.parametrize("mass", [0.0, 1e5, np.nan])
def test_a_car_of_no_weight_or_of_a_lorrys_is_refused(mass):
    with pytest.raises(PlanError, match="car_kg"):
        stands_of("wheels", mass, 1.0, -0.3)


# --- doors


@pytest.fixture(scope="module")
def door():
    model = build_model(Car(lattice_spacing_m=0.06, latch="open"))
    return model, door_among(model.structure, model.mesh, model.body, ground_z_m=-0.3)


def test_a_door_weighs_what_doors_weigh(door):
    """20 to 35 kg: common practice, no source."""
    _, s = door
    assert 20.0 < kg(s) < 35.0


def test_a_door_freed_at_its_latch_hangs_on_its_hinges_and_its_latch_end_weighs_150_n(door):
    """The couple of the hinges is W x / distance; a prop under the latch carries W x / L: statics.

    About 150 N: common practice, no source; within a fifth.
    """
    model, s = door
    _, steps = fallen(s)
    point = steps[-1].point
    mass = node_mass_kg(s)
    centre = mass @ s.points / mass.sum()
    ties = {tie.name: i for i, tie in enumerate(s.ties)}
    force = point.evaluation.tie_force
    upper, lower = force[ties["upper hinge"]], force[ties["lower hinge"]]
    assert -(upper + lower)[2] == pytest.approx(kg(s) * G, rel=1e-3)
    apart = model.mesh.shape.upper_hinge_height_m - model.mesh.shape.lower_hinge_height_m
    hinge = leaf(s.ties[ties["upper hinge"]], s.points)[0]
    low = leaf(s.ties[ties["lower hinge"]], s.points)[0]
    moment = kg(s) * G * (centre[0] - low) + upper[2] * (hinge - low)
    assert upper[0] == pytest.approx(moment / apart, rel=0.02)


def test_a_doors_latch_end_weighs_about_150_n_where_it_is_held_up(door):
    """Moments about the hinge: force at the latch x its arm = W x that of the the middle of mass.

    About 150 N: common practice, no source; within a fifth.
    """
    model, s = door
    loose = replace(s, surround=replace(s.surround, edges=None))
    grip = grasp(s, s.points, model.mesh.surface.nodes["latch_plate"])
    loose = with_prop(loose, strap("strap", grip, s.points))
    stepper = Stepper(Network(loose), lambda: False)
    names = [tie.name for tie in s.ties]
    state = stepper.network.release_tie(stepper.network.initial_state(), names.index("lower hinge"))
    steps = list(settle(stepper, stepper.first_point(state, Ledger())))
    point = steps[-1].point
    assert steps[-1].at_rest
    mass = node_mass_kg(s)
    x = point.state.points
    centre, pin = mass @ x / mass.sum(), leaf(s.ties[names.index("upper hinge")], x)
    pull = point.evaluation.read["prop force"][0]
    weight = np.array([0.0, 0.0, -kg(s) * G])
    turn = np.cross(centre - pin, weight) + np.cross(grip.at(x) - pin, pull)
    np.testing.assert_allclose(turn, 0.0, atol=0.02 * kg(s) * G)
    assert pull[2] == pytest.approx(150.0, rel=0.2)


@pytest.mark.parametrize(("share", "swings"), [(0.7, False), (1.5, True)])
def test_a_check_holds_a_door_up_to_its_moment_and_no_further(door, share, swings):
    """Moment of a sideways pull about the hinges: m g_y x against the check's; statics."""
    model, s = door
    grip = grasp(s, s.points, model.mesh.surface.nodes["latch_plate"])
    check = Check(grip.nodes, grip.weights, ("lower hinge", "upper hinge"), 25.0)
    mass = node_mass_kg(s)
    arm = float((mass @ s.points / mass.sum() - grip.axis.mean(axis=0))[0])
    sideways = share * 25.0 / (mass.sum() * arm)
    around = replace(
        s.surround, edges=None, ground=None, checks=(check,), gravity_m_s2=np.array([0.0, sideways, -G])
    )
    stepper = Stepper(Network(replace(s, surround=around)), lambda: False)
    point = stepper.first_point(stepper.network.initial_state(), Ledger())
    for count, step in enumerate(settle(stepper, point)):
        point = step.point
        if count > 12:
            break
    moved = float(grip.at(point.state.points)[1] - grip.at(s.points)[1])
    assert step.at_rest != swings
    assert (moved > 0.05) if swings else (abs(moved) < 5e-3)
    assert (point.ledger.lines["friction"] > 0.5) == swings
