"""Tips that hold by friction: Coulomb's law on a block, the arms' geometry, the pad that leans, the cut.

Sources
-------
Block on an incline slides from tan(angle) = coefficient of friction: Coulomb's law, textbook [coulomb-1785].
Rigid pad on a bed of springs: pressure proportional to dent [winkler-1867].
Draw-back of two arms of 0.45 m: worked out by hand from a circle's chord, 3, 26, 76 and 115 mm.
Shear-out on three sides, tau_u t (width + 2 depth): textbook; tau_u and coefficients of friction from memory.
"""

from dataclasses import replace
from itertools import pairwise

import numpy as np
import pytest

from sim import arms
from sim.checks.specimens import held, metal, never, rows, sheet
from sim.door_model import build_model
from sim.grip import FRICTION_RATIO, Grip, grip_energy, grip_gradient, grip_hessian, grip_slip
from sim.grips import FORCE, PRESSED, SLID
from sim.increment import Stepper
from sim.ledger import Ledger
from sim.materials import STEEL_TEAR_J_PER_M2
from sim.network import Drive, Load, Network
from sim.newton import equilibrate
from sim.plan import Car, EdgePoint, Spread, Tool
from sim.push import make_push
from sim.seat import axes_of, between, seat_of
from sim.shear import edges_under
from sim.tip import loaded_part, slid_footprint

STIFF = 2.0e7
UP, ACROSS = np.array([0.0, 0.0, 1.0]), np.array([1.0, 0.0, 0.0])


def plate():
    """Return a small steel plate of 2 mm; what carries the block's weight and shape."""
    return sheet(rows(0.1, 0.1, 3, 3), 2.0e-3, metal())


def gripped(structure, *, way, bearing, friction, cap_n=float("inf")):
    """Return a network whose nodes are all under one pad."""
    count = len(structure.points)
    nodes, weights = np.arange(count), np.full(count, 1.0 / count)
    grip = Grip(weights @ structure.points, way, bearing, friction, cap_n)
    return Network(structure, [Drive(nodes, weights, bearing, 0.0, STIFF, grip=grip)])


# ---- Coulomb -----------------------------------------------------------------------------------------------

WEIGHT_N, DRAG_N_PER_M = 500.0, 100.0


def block_slides_m(angle_rad, friction):
    """Return how far a block on an incline slides in one step against a drag on every node [m]."""
    network = gripped(plate(), way=UP, bearing=UP, friction=friction)
    state, count = network.initial_state(), len(network.structure.points)
    pull = WEIGHT_N / count * (np.sin(angle_rad) * ACROSS - np.cos(angle_rad) * UP)
    # set down first, level: the pad presses with the block's weight across the incline
    level = np.tile(-WEIGHT_N / count * np.cos(angle_rad) * UP, (count, 1))
    still = equilibrate(network, state, Load((0.0,), level), state.points, cancelled=never)
    state = network.commit(state, still.evaluation)
    assert state.kept[PRESSED][0] == pytest.approx(WEIGHT_N * np.cos(angle_rad), rel=1e-6)
    load = Load((0.0,), np.tile(pull, (count, 1)), DRAG_N_PER_M, state.points)
    answer = equilibrate(network, state, load, state.points, cancelled=never)
    assert answer.converged
    return -float(network.commit(state, answer.evaluation).kept[SLID][0] @ ACROSS)


@pytest.mark.parametrize("friction", [0.15, 0.4, 0.6])
def test_a_block_on_an_incline_slides_from_the_friction_angle(friction):
    limit = np.arctan(friction)
    # held a hundredth of a degree below it, and not above
    assert block_slides_m(limit - np.radians(0.01), friction) == pytest.approx(0.0, abs=1e-12)
    assert block_slides_m(limit + np.radians(0.01), friction) > 1e-9


@pytest.mark.parametrize("angle_deg", [25.0, 40.0, 60.0])
def test_what_friction_cannot_hold_the_drag_takes(angle_deg):
    angle, friction, count = np.radians(angle_deg), 0.4, len(plate().points)
    rest_n = WEIGHT_N * (np.sin(angle) - friction * np.cos(angle))
    # the block moves by rest / drag; the pad's own spring, mu N / k = 1e-5 m of about a metre, moves with it
    give_m = friction * WEIGHT_N * np.cos(angle) / STIFF
    moved = rest_n / (count * DRAG_N_PER_M)
    assert block_slides_m(angle, friction) == pytest.approx(moved - give_m, rel=1e-6)


def test_common_surfaces_stand_in_the_trades_order():
    # common practice, no source: rubber slides before paint, paint before bare steel
    assert FRICTION_RATIO["rubber"] < FRICTION_RATIO["painted"] < FRICTION_RATIO["bare"]
    # serrated tips on painted steel, 0.3 to 0.6, from memory
    assert 0.3 <= Tool().friction_ratio == FRICTION_RATIO["painted"] <= 0.6


def fixed_plate():
    structure = plate()
    return held(structure, (np.arange(len(structure.points)), "xyz"))


def slid_at(angle_rad, friction, steps):
    """Return how far a pad slides that is pushed on a plate that cannot move, at an angle, in some steps."""
    way = np.cos(angle_rad) * UP + np.sin(angle_rad) * ACROSS
    network = gripped(fixed_plate(), way=way, bearing=UP, friction=friction)
    stepper = Stepper(network, never)
    point = stepper.first_point(network.initial_state(), Ledger())
    point = replace(point, state=network.initial_state())
    for k in range(steps):
        point = stepper.advance(point, 1.0e-5 * (k + 1) / steps)
    return float(np.linalg.norm(point.state.kept[SLID][0])), point


@pytest.mark.parametrize("steps", [4, 8, 16, 32])
def test_the_lag_of_one_step_is_of_first_order(steps):
    # friction knows the force of the last step only: under a force that grows evenly a sliding pad
    # holds mu (n - 1) / n of it across, short of mu by one part in n, halved with the step
    friction = 0.4
    slid_m, point = slid_at(np.arctan(friction) + 0.1, friction, steps)
    force = point.evaluation.read[FORCE][0]
    assert slid_m > 0.0
    assert force[0] / force[2] == pytest.approx(friction * (steps - 1) / steps, rel=1e-9)


def test_friction_takes_its_limit_times_the_way_slid_and_the_books_close():
    friction, dent_m, drag_m = 0.4, 5.0e-5, 2.0e-3
    network = gripped(fixed_plate(), way=UP, bearing=UP, friction=friction)
    stepper = Stepper(network, never)
    point = stepper.advance(
        replace(stepper.first_point(network.initial_state(), Ledger()), state=network.initial_state()), dent_m
    )
    pressed = STIFF * dent_m
    assert point.force_n[0] == pytest.approx(pressed, rel=1e-9)
    # then across, the dent kept: the same spring, another way
    drive = network.drives[0]
    lag = dent_m * UP
    place = drive.weights @ point.state.points[drive.nodes]
    grip = Grip(place + lag - dent_m * ACROSS, ACROSS, UP, friction)
    stepper = replace(stepper, network=network.with_grips([replace(drive, grip=grip)]))
    ev = stepper.network.evaluate(point.state.points, point.state, stepper.load(dent_m, point.state))
    point = replace(point, evaluation=ev, force_n=ev.drive_force.copy())
    for k in range(20):
        point = stepper.advance(point, dent_m + drag_m * (k + 1) / 20)
    limit = friction * pressed
    spent = point.ledger.lines["friction"]
    assert spent == pytest.approx(limit * (drag_m - limit / STIFF), rel=1e-9)
    assert spent > 0.0
    assert point.evaluation.read[FORCE][0] == pytest.approx([limit, 0.0, pressed], rel=1e-9, abs=1e-6)
    # the step in which sliding begins is a trapezoid over a knee: half its rise, limit^2 / 2k at most
    assert abs(point.ledger.gap_j) <= 0.5 * limit * drag_m / 20 + limit**2 / STIFF


RNG = np.random.default_rng(3)
LAGS = RNG.normal(scale=1.0e-4, size=(20, 3))


@pytest.mark.parametrize("limit_n", [0.0, 300.0, 1.0e9])
def test_law_is_its_own_slope(limit_n):
    unit = np.array([0.6, 0.0, 0.8])
    for lag in LAGS:
        energy = lambda d: sum(grip_energy(d, unit, limit_n, STIFF))  # noqa: E731
        force = lambda d: grip_gradient(d, unit, limit_n, STIFF)  # noqa: E731
        step = 1e-10
        slope = [(energy(lag + step * e) - energy(lag - step * e)) / (2 * step) for e in np.eye(3)]
        # central difference of energies of about 0.1 J: rounding 1e-17 / 1e-10 over 1e3 N
        np.testing.assert_allclose(force(lag), slope, rtol=1e-4, atol=1e-2)
        bend = np.array([(force(lag + step * e) - force(lag - step * e)) / (2 * step) for e in np.eye(3)])
        hessian = grip_hessian(lag, unit, limit_n, STIFF)
        np.testing.assert_allclose(hessian, bend, rtol=1e-4, atol=1e-4 * STIFF)
        np.testing.assert_allclose(hessian, hessian.T, rtol=0.0, atol=1e-6)
        assert np.linalg.eigvalsh(hessian).min() >= -1e-6


def test_what_slid_is_what_the_spring_no_longer_holds():
    unit, limit = UP, 300.0
    for lag in LAGS:
        left = lag - grip_slip(lag, unit, limit, STIFF)
        across = left - (left @ unit) * unit
        assert STIFF * np.linalg.norm(across) <= limit * (1.0 + 1e-12)
        assert sum(grip_energy(lag, unit, limit, STIFF)) >= sum(grip_energy(left, unit, limit, STIFF)) - 1e-15


# ---- the arms ----------------------------------------------------------------------------------------------

ARM_M = 0.45


@pytest.mark.parametrize(("opening_m", "back_mm"), [(0.1, 3), (0.3, 26), (0.5, 76), (0.6, 115)])
def test_tips_draw_back_as_they_part(opening_m, back_mm):
    # worked out by hand, rounded to the millimetre
    assert 1e3 * arms.drawn_back_m(opening_m, ARM_M) == pytest.approx(back_mm, abs=0.5)


@pytest.mark.parametrize("opening_m", [0.01, 0.1, 0.3, 0.6])
def test_force_times_opening_is_torque_times_turn(opening_m):
    # virtual work: F d(opening) = 2 M d(beta), by central difference of the arms' own geometry
    step, force_n = 1.0e-6, 1234.0
    turn = arms.half_angle_rad(opening_m + step, ARM_M) - arms.half_angle_rad(opening_m - step, ARM_M)
    work = 2.0 * arms.torque_n_m(force_n, opening_m, ARM_M) * turn
    assert work == pytest.approx(force_n * 2.0 * step, rel=1e-6)


def test_the_tip_of_a_standing_tool_stays_on_its_circle():
    along, inboard = np.array([-1.0, 0.0, 0.0]), np.array([0.0, -1.0, 0.0])
    place, openings = np.zeros(3), np.linspace(0.0, 0.6, 61)
    for start, end in pairwise(openings):
        place = place + (end - start) * arms.chord(start, end, ARM_M, along, inboard)
        # pivot an arm's length behind the closed tips, half of the opening on either side of the axis
        half, ahead = 0.5 * float(place @ along), ARM_M + float(place @ inboard)
        assert np.hypot(half, ahead) == pytest.approx(ARM_M, rel=1e-12)
    assert float(place @ inboard) == pytest.approx(-arms.drawn_back_m(0.6, ARM_M), rel=1e-12)


@pytest.mark.parametrize("tilt_rad", [0.0, 0.5, 1.2])
def test_a_face_turns_outboard_with_its_arm_and_stays_square_to_it(tilt_rad):
    along, out = np.array([-1.0, 0.0, 0.0]), np.array([0.0, 1.0, 0.0])
    push = np.cos(tilt_rad) * along + np.sin(tilt_rad) * out
    inboard = arms.inboard_of(push, along, out)
    assert inboard @ push == pytest.approx(0.0, abs=1e-15)
    assert inboard @ out < 0.0
    beta = arms.half_angle_rad(0.3, ARM_M)
    face = arms.face_of(push, inboard, beta)
    arm = np.sin(beta) * push + np.cos(beta) * inboard
    assert face @ arm == pytest.approx(0.0, abs=1e-15)


# ---- the pad that leans ------------------------------------------------------------------------------------

PAD_M, DENT_M = 0.03, 1.0e-3


@pytest.mark.parametrize("lean_rad", [0.0, 0.02, 0.05, 0.0665, 0.0667, 0.1, 0.3, -0.05, -0.2])
def test_a_leaning_pad_bears_where_springs_under_it_would(lean_rad):
    # by summing springs: dent + slope x >= 0, their mean dent as given
    x = (np.arange(200_000) + 0.5) / 200_000 * PAD_M - 0.5 * PAD_M
    slope = np.tan(lean_rad)
    low, high = -1.0, 1.0
    for _ in range(80):  # how deep the middle stands for that mean
        middle = 0.5 * (low + high)
        low, high = (middle, high) if np.maximum(middle + slope * x, 0.0).mean() < DENT_M else (low, middle)
    pressure = np.maximum(middle + slope * x, 0.0)
    centre = float((pressure * x).sum() / pressure.sum())
    off, length = loaded_part(PAD_M, lean_rad)
    assert off == pytest.approx(centre, abs=1e-7)
    assert length == pytest.approx(PAD_M - 2.0 * abs(centre), abs=2e-7)


def test_a_lean_moves_the_lips_share_as_its_end_bears():
    mesh, tool = build_model(Car()).mesh, Tool()
    place = EdgePoint(depth_m=0.016)
    outboard, square, inboard = (slid_footprint(mesh, place, tool, r).skin_share for r in (-0.05, 0.0, 0.05))
    assert outboard > square > inboard


# ---- the seat ----------------------------------------------------------------------------------------------


def bearing_at(depth_m, tilt_rad):
    model = build_model(Car())
    move = Spread(door=EdgePoint(depth_m=depth_m), tilt_rad=tilt_rad)
    push = make_push(model, move)
    args = (push.direction, 0.0, push.tool.tip_depth_m, model.start.points)
    return push, seat_of(model, move.door, push.pads[0], *args)


@pytest.mark.parametrize("tilt_rad", [0.0, 0.4, 0.8])
@pytest.mark.parametrize("depth_m", [0.005, 0.12])
def test_an_edge_takes_the_faces_own_normal(depth_m, tilt_rad):
    push, seat = bearing_at(depth_m, tilt_rad)
    # on the bend as far as the two sheets leave it: the shut face leans in by a tenth
    angle = np.degrees(np.arccos(np.clip(seat.bearing @ push.direction, -1.0, 1.0)))
    assert angle == pytest.approx(0.0, abs=1e-6 if depth_m < 0.01 or tilt_rad > 0.2 else 8.0)


@pytest.mark.parametrize("tilt_rad", [0.0, 0.4, 0.8])
def test_the_flat_of_the_shut_face_has_its_own_normal(tilt_rad):
    _, seat = bearing_at(0.05, tilt_rad)
    shape = build_model(Car()).mesh.shape
    lean = np.arctan(shape.shut_face_inset_m / shape.shut_face_depth_m)
    # inwards of the lip the shut face draws in towards the bend
    assert seat.bearing[1] == pytest.approx(np.sin(lean), abs=0.02)
    assert seat.bearing[0] < -0.98


def test_seat_directions_are_square_and_grow_the_right_way():
    for depth in (0.005, 0.05, 0.12):
        _, seat = bearing_at(depth, 0.4)
        frame = np.array([seat.bearing, seat.inboard, seat.edge])
        np.testing.assert_allclose(frame @ frame.T, np.eye(3), atol=1e-12)
        assert seat.inboard[1] < 0.0 < seat.edge[2]


def test_a_bend_lets_a_face_turn_between_its_two_sheets_only():
    axes = axes_of(build_model(Car()), EdgePoint())
    shut, panel = axes.into, axes.outboard
    half = (shut + panel) / np.sqrt(2.0)
    np.testing.assert_array_equal(between(half, shut, panel, axes), half)
    inward = (shut - 0.5 * panel) / np.linalg.norm(shut - 0.5 * panel)
    np.testing.assert_array_equal(between(inward, shut, panel, axes), shut)


# ---- the cut -----------------------------------------------------------------------------------------------


@pytest.mark.parametrize(("width_m", "depth_m"), [(0.02, 0.01), (0.02, 0.03), (0.05, 0.03), (0.06, 0.03)])
def test_a_pad_shears_its_sheet_out_on_three_sides(width_m, depth_m):
    model = build_model(Car())
    tool = Tool(tip_width_m=width_m, tip_depth_m=depth_m)
    (edge,) = edges_under(model, make_push(model, Spread(door=EdgePoint(depth_m=0.0), tool=tool)))
    # 0.7 mm skin of 220 MPa yield; tensile over yield 1.4 assumed, shear over tensile 0.8 from memory
    assert edge.tip_n == pytest.approx(0.8 * 1.4 * 220.0e6 * 0.7e-3 * (width_m + 2.0 * depth_m), rel=1e-9)
    assert edge.length_m == pytest.approx(width_m + 2.0 * depth_m, rel=1e-12)
    # the work of a cut, F t over its area, is of the size a running tear asks for: both from memory
    work_j_per_m2 = edge.tip_n * edge.thickness_m / (edge.length_m * edge.thickness_m)
    assert work_j_per_m2 == pytest.approx(STEEL_TEAR_J_PER_M2, rel=0.3)
