"""Rams against statics, exact geometry and handbook formulas typed here once more.

Sources
-------
Two-force members, levers, the law of cosines, the angle of friction: any textbook of statics, from memory.
Dents: virtual work of yield lines [johansen-1943], a clamped plate under a point load 4 pi m; dents in tubes
16 sqrt(2 pi / 3) m sqrt(w / t) [wierzbicki-1988], both from memory. Rocker walls of 1 to 2 mm hold 4 to 25
kN: an estimate of the trade, no source. Clamped plate with a rigid boss: integrated here. Winter's effective
width, from memory. Rolling of a plate on a bow: Taylor's first terms, worked out in the test.
"""

import math
from dataclasses import replace

import numpy as np
import pytest
from scipy.integrate import quad, solve_bvp
from scipy.optimize import minimize_scalar

from sim.base import Wall, squash_n
from sim.checks import pillars, specimens
from sim.head import Plate, angle_between, bearing
from sim.increment import Stepper
from sim.ledger import Ledger
from sim.materials import PATCH_STEEL, Metal
from sim.network import Network
from sim.plan import BaseSpot, Ram
from sim.ram import base_stand, force_limit_n, friction_of, stage_of
from sim.ram_hold import foot_angle_rad
from sim.state import Drive
from sim.structure import Section, Structure, Tie
from sim.strut import Strut
from sim.struts import FORCE

ARM_M, HINGE_TO_FOOT_M = (
    0.5,
    (-1.2, 0.1),
)  # bar from its hinge to the head; foot from the hinge, across and up


def hinged_bar():
    """Return a stiff bar, hinged along one edge at z = 0, its head at z = ARM_M on a soft spring along y."""
    lattice = specimens.rows(0.1, ARM_M, 2, 10)
    flat = np.zeros((len(lattice.points), 3))
    flat[:, [0, 2]] = np.asarray(lattice.points)[:, :2]
    hard = Metal("hard", 210.0e9, 0.3, 1.0e12, 1.0e9)
    structure = Structure(
        flat, lattice.triangles, np.zeros(len(lattice.triangles), np.int64),
        (Section("bar", 0.03, hard, "folding inner"),),
    )  # fmt: skip
    foot = np.flatnonzero(flat[:, 2] < 1e-9)
    top = np.flatnonzero(flat[:, 2] > ARM_M - 1e-9)
    fixed = np.zeros(flat.shape, bool)
    fixed[foot] = True
    spring = Tie("spring", top, np.full(len(top), 1.0 / len(top)), 2.0e3, np.full(3, np.inf))
    return replace(structure, ties=(spring,)).with_fixed(fixed), top


@pytest.fixture(scope="module")
def walked():
    """Return points of a ram that turns the bar by some 40 degrees, its foot's place and the head's nodes."""
    structure, top = hinged_bar()
    middle = float(structure.points[top, 0].mean())
    foot = np.array([middle, *HINGE_TO_FOOT_M])
    share = np.full(len(top), 1.0 / len(top))
    start = float(np.linalg.norm(share @ structure.points[top] - foot))
    drive = Drive(top, share, np.zeros(3), 0.0, 2.0e8, strut=Strut(foot, start))
    stepper = Stepper(Network(structure, [drive]), lambda: False, viscous_n_per_m=0.0)
    point = stepper.first_point(stepper.network.initial_state(), Ledger())
    out = []
    for travel in np.linspace(0.0, 0.3, 61)[1:]:
        point = stepper.advance(point, float(travel))
        out.append(point)
    assert stepper.tally.failed == 0
    return out, foot, top, start


def test_it_walks_in_line_as_a_rigid_bar_on_a_hinge_says(walked):
    """Law of cosines in the triangle hinge, foot, head: the head to 0.2 mm, the line to 0.05 degrees.

    The bar's own give and the ram's is below a tenth of a millimetre.
    """
    points, foot, top, start = walked
    base = math.hypot(*HINGE_TO_FOOT_M)
    rise = math.atan2(HINGE_TO_FOOT_M[1], -HINGE_TO_FOOT_M[0])
    turned = []
    for point in points:
        length = start + point.travel_m
        at_hinge = math.acos((base**2 + ARM_M**2 - length**2) / (2.0 * base * ARM_M))
        # the foot lies `rise` above the level on the far side, so the bar stands at `at_hinge + rise` from it
        lean = at_hinge + rise - 0.5 * math.pi
        exact = np.array([foot[0], ARM_M * math.sin(lean), ARM_M * math.cos(lean)])
        head = point.state.points[top].mean(axis=0)
        np.testing.assert_allclose(head, exact, atol=2e-4)
        line = exact - foot
        force = point.evaluation.read[FORCE][0]
        assert math.degrees(angle_between(line / np.linalg.norm(line), force / np.linalg.norm(force))) < 0.05
        turned.append(math.degrees(lean))
    assert turned[-1] > 35.0  # far beyond what a fixed line of action would follow


def test_force_times_lever_is_the_springs_moment_about_the_hinge(walked):
    """Moments about the hinge: ram and spring balance to a part in a thousand.

    No other force has a moment.
    """
    points, _, top, _ = walked
    for point in points[4:]:
        head = point.state.points[top].mean(axis=0)
        ram = np.cross(head, point.evaluation.read[FORCE][0])[0]
        spring = np.cross(head, point.evaluation.tie_force[0])[0]
        assert ram == pytest.approx(spring, rel=1e-3)


def test_its_work_is_force_times_change_of_length_and_goes_into_the_spring(walked):
    """Of the integral of force over length the spring holds all but what bar and ram store (1 %)."""
    points, _, _, _ = walked
    force = np.array([0.0, *(float(p.force_n[0]) for p in points)])
    travel = np.array([0.0, *(p.travel_m for p in points)])
    work = float(np.sum(0.5 * (force[1:] + force[:-1]) * np.diff(travel)))
    spring = float(points[-1].evaluation.tie_stored[0])
    assert points[-1].ledger.work_j == pytest.approx(work, rel=1e-9)
    assert work == pytest.approx(spring, rel=0.01)
    assert points[-1].ledger.closure_ratio() < 0.01


def test_pushed_over_by_a_ram_a_stocky_pillar_folds_at_its_plastic_moment():
    """Force across the pillar times height over the foot is sigma Z, within 8 % and never below.

    As for a pad.
    """
    width, depth, wall, height = 0.09, 0.07, 0.006, 0.8
    first = wall * depth * (width + 0.5 * depth)
    made = pillars.box((width, depth), (width, depth), height, 0.02)
    structure = pillars.stood(pillars.sheet(made, wall, specimens.metal(nu=0.3, yield_pa=350.0e6)), made)
    nodes, shares = pillars.side_walls(made, "end_ring")
    head = shares @ structure.points[nodes]
    foot = head + np.array([0.0, -1.3, 0.0])
    strut = Strut(foot, float(np.linalg.norm(head - foot)))
    drive = Drive(nodes, shares, np.zeros(3), 0.0, strut=strut)
    stepper = Stepper(Network(structure, [drive]), lambda: False)
    point = stepper.first_point(stepper.network.initial_state(), Ledger())
    second = wall * depth**2 * (0.5 * width + depth / 6.0)
    elastic = 350.0e6 * first * height**2 / (3.0 * 210.0e9 * second)
    for share in (0.3, 0.6, 0.9, 1.2, 1.5, 2.0):
        point = stepper.advance(point, share * elastic)
    force = point.evaluation.read[FORCE][0]
    now = shares @ point.state.points[nodes]
    moment = float(now[2] * force[1] - (now[1] - head[1]) * force[2])
    assert moment == pytest.approx(350.0e6 * first, rel=0.08)
    assert moment > 350.0e6 * first
    assert stepper.tally.failed == 0


# --- the base


def roof(wall, dent, length):
    """Return the force by the virtual work of each yield line, summed as they stand.

    For one dent's length.
    """
    m, n = 0.25 * wall.metal.yield_pa * wall.thickness_m**2, wall.metal.yield_pa * wall.thickness_m
    b, c, d = wall.width_m, wall.across_m, wall.along_m
    turn = 2.0 / (b - c)

    def profile(y):
        return 1.0 if abs(y) < 0.5 * c else (0.5 * b - abs(y)) * turn

    mean = quad(profile, -0.5 * b, 0.5 * b, points=[-0.5 * c, 0.5 * c])[0]
    square = quad(lambda y: profile(y) ** 2, -0.5 * b, 0.5 * b, points=[-0.5 * c, 0.5 * c])[0]
    across = 4.0 * m * turn * (d + 2.0 * quad(lambda x: 1.0 - x / length, 0.0, length)[0])
    along = 4.0 * m * mean / length
    twist = 4.0 * 2.0 * m * (turn / length) * (0.5 * (b - c) * length)
    # a line at y sinks w profile: strain (w profile / length)^2 / 2 over both sides
    stretch = n * 2.0 * length * dent * square / length**2
    return across + along + twist + stretch


@pytest.mark.parametrize("thickness_m", [0.001, 0.0015, 0.002])
@pytest.mark.parametrize("dent_m", [0.0, 0.003, 0.01, 0.03])
def test_the_dents_force_is_the_least_over_the_roofs_length(thickness_m, dent_m):
    wall = Wall(thickness_m=thickness_m)
    best = minimize_scalar(lambda x: roof(wall, dent_m, x), bounds=(0.005, 2.0), method="bounded")
    assert wall.force_n(dent_m) == pytest.approx(best.fun, rel=1e-6)


def test_under_a_point_it_is_an_upper_bound_of_the_clamped_plate():
    """4 pi m by the fan of yield lines; four straight ones give 16 m at best, 1.27 times as much."""
    wall = Wall(across_m=1e-6, along_m=1e-6)
    m = 0.25 * 350.0e6 * 0.0015**2
    assert 4.0 * math.pi * m < wall.force_n(0.0) < 1.3 * 4.0 * math.pi * m


@pytest.mark.parametrize("thickness_m", [0.001, 0.0015, 0.002])
def test_deep_dents_ask_for_what_a_tubes_do_within_a_half(thickness_m):
    """A tube dented by an edge; here a foot 60 mm wide in a wall 130 mm wide: the same order.

    Root of depth.
    """
    wall, m = Wall(thickness_m=thickness_m), 0.25 * 350.0e6 * thickness_m**2
    for dent in (0.01, 0.02, 0.03):
        tube = 16.0 * math.sqrt(2.0 * math.pi / 3.0) * m * math.sqrt(dent / thickness_m)
        assert 0.67 < wall.force_n(dent) / tube < 1.5
        assert 4.0e3 < wall.force_n(dent) < 30.0e3  # the trade's 4 to 25 kN, at 10 mm and more
    assert 4.0e3 < wall.force_n(0.01) < 25.0e3


def test_work_of_a_dent_is_the_integral_of_its_force_and_slope_its_derivative():
    for wall in (Wall(), Wall(rib_m=0.0012), Wall(across_m=0.2, along_m=0.2)):
        assert wall.work_j(0.02) == pytest.approx(quad(wall.force_n, 0.0, 0.02)[0], rel=1e-8)
        rise = (wall.force_n(0.01 + 1e-6) - wall.force_n(0.01 - 1e-6)) / 2e-6
        assert wall.slope_n_per_m(0.01) == pytest.approx(rise, rel=1e-6, abs=1e-3)


def test_the_wall_under_a_boss_is_as_stiff_as_its_plate():
    """Clamped rim and boss: phi'' + phi' / r - phi / r^2 = -P / (2 pi D r), phi 0 at both; w the integral."""
    wall = Wall(across_m=0.078, width_m=0.130)
    bending = 210.0e9 * 0.0015**3 / (12.0 * (1.0 - 0.3**2))
    r = np.linspace(0.039, 0.065, 60)
    solved = solve_bvp(
        lambda x, y: np.vstack([y[1], -y[1] / x + y[0] / x**2 - 1.0 / (2.0 * math.pi * bending * x)]),
        lambda a, b: np.array([a[0], b[0]]),
        r,
        np.zeros((2, len(r))),
        tol=1e-8,
    )
    sag = abs(quad(lambda x: float(solved.sol(x)[0]), 0.039, 0.065)[0])
    assert wall.stiffness_n_per_m == pytest.approx(1.0 / sag, rel=1e-4)


def test_a_rib_squashes_at_winters_width():
    slender = 0.06 / 0.0012 / (1.052 / math.sqrt(4.0)) ** -1 * math.sqrt(350.0e6 / 210.0e9)
    expected = 350.0e6 * 0.0012 * 0.06 * (1.0 - 0.22 / slender) / slender
    assert squash_n(0.0012, 0.06, PATCH_STEEL) == pytest.approx(expected, rel=1e-9)
    assert squash_n(0.006, 0.06, PATCH_STEEL) == pytest.approx(350.0e6 * 0.006 * 0.06)  # stocky: all of it
    assert squash_n(0.0, 0.06, PATCH_STEEL) == 0.0


# --- the head


def level(_, z):
    """Return a flat spot's depth."""
    return 0.0 * z


def bowed(radius_m):
    """Return the depth of a spot bowed upright by a radius towards the ram."""
    return lambda _, z: z * z / (2 * radius_m)


def pressed_flat(radius_m, half_m):
    """Return the depth of the same bow with its crown flattened."""
    return lambda _, z: np.maximum(z * z - half_m**2, 0.0) / (2 * radius_m)


def hollow(depth_of, tilt_rad=0.0, half_m=0.08, count=33):
    """Return points and triangles of a sheet y = depth_of(x, z), turned about x; the ram comes along +y."""
    u = np.linspace(-half_m, half_m, count)
    x, z = np.meshgrid(u, u, indexing="ij")
    points = np.stack([x, depth_of(x, z), z], axis=-1).reshape(-1, 3)
    c, s = math.cos(tilt_rad), math.sin(tilt_rad)
    k = np.arange(count * count).reshape(count, count)
    a, b, d, e = (part.ravel() for part in (k[:-1, :-1], k[1:, :-1], k[1:, 1:], k[:-1, 1:]))
    triangles = np.concatenate([np.stack([a, b, d], axis=1), np.stack([a, d, e], axis=1)])
    return points @ np.array([[1, 0, 0], [0, c, s], [0, -s, c]]), triangles


LINE = np.array([0.0, 1.0, 0.0])
PLATE = Plate(0.03, 0.015)


@pytest.mark.parametrize("degrees", [0.0, 5.0, 15.0, 30.0])
def test_on_a_flat_spot_the_head_lies_flat_and_the_angle_is_the_spots_own(degrees):
    held = bearing(*hollow(level, math.radians(degrees)), np.zeros(3), LINE, PLATE)
    assert math.degrees(held.angle_rad(LINE)) == pytest.approx(degrees, abs=1e-6)
    assert not held.rolled
    assert held.weights.sum() == pytest.approx(1.0)


def test_on_a_flat_spot_it_tips_over_its_rim_when_the_line_leaves_it():
    """Hinge h behind the face, line at an angle: it meets the face h tan(angle) off the middle.

    R is the rim.
    """
    high = Plate(0.03, 0.06)
    limit = math.degrees(math.atan(0.03 / 0.06))
    for degrees, rolled in ((limit - 8.0, False), (limit + 1.0, True)):
        sheet = hollow(level, math.radians(degrees))
        held = bearing(*sheet, np.zeros(3), LINE, high, 2e-5)  # a hard bed, so that the rim is the limit
        assert held.rolled == rolled


@pytest.mark.parametrize("radius_m", [0.04, 0.08, 0.20])
@pytest.mark.parametrize("degrees", [1.0, 3.0])
def test_on_a_bow_the_head_rolls_and_its_angle_grows(radius_m, degrees):
    """Tilted by psi the plate touches at r psi, its hinge goes aside by h psi, the line needs h angle:

    psi = h angle / (r - h), so the angle at the contact is angle r / (r - h).  Within 8 %: the bed's give.
    """
    held = bearing(*hollow(bowed(radius_m), math.radians(degrees)), np.zeros(3), LINE, PLATE)
    expected = degrees * radius_m / (radius_m - PLATE.hinge_m)
    assert math.degrees(held.angle_rad(LINE)) == pytest.approx(expected, rel=0.08)
    assert not held.rolled


def test_on_a_bow_tighter_than_its_hinge_is_high_it_rolls_over_at_the_least_tilt():
    for radius, rolled in ((0.012, True), (0.040, False)):
        held = bearing(*hollow(bowed(radius), math.radians(2.0)), np.zeros(3), LINE, PLATE)
        assert held.rolled == rolled


def test_a_dent_that_makes_the_spot_flatter_makes_the_angle_smaller():
    """The same bow with its crown pressed flat over 2 x 15 mm: a flat spot, the angle is the spot's own."""
    angle = [
        math.degrees(bearing(*hollow(f, math.radians(4.0)), np.zeros(3), LINE, PLATE).angle_rad(LINE))
        for f in (bowed(0.025), pressed_flat(0.025, 0.015))
    ]
    assert angle[0] > 1.5 * angle[1]
    assert angle[1] < 6.0


def test_the_push_goes_in_where_the_pressure_is():
    """The weights' resultant lies on the line through the hinge, square to nothing but the metal."""
    points, triangles = hollow(level, math.radians(10.0))
    held = bearing(points, triangles, np.zeros(3), LINE, PLATE)
    np.testing.assert_allclose(held.weights @ points[held.nodes], held.place, atol=1e-9)
    assert bearing(points, triangles, np.array([1.0, 0.0, 0.0]), LINE, PLATE) is None


# --- friction and stages


@pytest.mark.parametrize(("friction", "degrees"), [(0.15, 8.53), (0.3, 16.70), (0.6, 30.96)])
def test_a_head_holds_up_to_the_angle_of_friction_and_no_further(friction, degrees):
    """A block on a slope: across over pressed is tan(angle), it slides at tan(angle) = friction ratio."""
    for tilt, holds in ((degrees - 0.02, True), (degrees + 0.02, False)):
        held = bearing(*hollow(level, math.radians(tilt)), np.zeros(3), LINE, PLATE)
        pressed = float(LINE @ held.normal)
        across = float(np.linalg.norm(LINE - pressed * held.normal))
        assert (across <= friction * pressed) == holds
        assert (held.angle_rad(LINE) <= math.atan(friction)) == holds


def test_heads_hold_in_the_order_the_trade_gives():
    """Rubber, then paint, then bare and grooved, then points: common practice, no source.

    Ratios from memory.
    """
    assert friction_of("waffle", "rubber") < friction_of("waffle", "painted") < friction_of("waffle", "bare")
    for surface in ("painted", "bare"):
        assert (
            friction_of("flat", surface) < friction_of("waffle", surface) <= friction_of("pointed", surface)
        )


def test_the_force_drops_when_the_next_stage_starts():
    """About 200, 120 and 60 kN: from memory."""
    ram = Ram(stage_m=(0.3, 0.2, 0.1), stage_n=(200e3, 120e3, 60e3))
    assert [force_limit_n(ram, out) for out in (0.0, 0.299, 0.301, 0.499, 0.501, 0.6)] == [
        200e3, 200e3, 120e3, 120e3, 60e3, 60e3,
    ]  # fmt: skip
    assert [stage_of(ram, out) for out in (0.1, 0.4, 0.55)] == [0, 1, 2]


def test_a_floor_takes_what_a_foot_presses_down_with_and_nothing_else():
    """A line 20 degrees up from a rocker's wall: the floor carries the rise; fore and aft it counts."""
    head = np.array([0.9, -0.1, 0.44])
    ram = Ram()
    on_floor = base_stand(BaseSpot(), ram, head, 1.0)
    on_pillar = base_stand(BaseSpot(base="far_pillar"), ram, head, 1.0)
    raised = base_stand(BaseSpot(raised_m=0.1), ram, head, 1.0)
    up = np.array([0.0, math.cos(0.35), math.sin(0.35)])
    aft = np.array([math.sin(0.35), math.cos(0.35), 0.0])
    down = np.array([0.0, math.cos(0.35), -math.sin(0.35)])
    assert [foot_angle_rad(on_floor, line) for line in (up, aft, down)] == pytest.approx([0.0, 0.35, 0.35])
    assert foot_angle_rad(on_pillar, up) == foot_angle_rad(raised, up) == pytest.approx(0.35)
    mirrored = base_stand(BaseSpot(), ram, head * [1.0, -1.0, 1.0], -1.0)
    np.testing.assert_allclose(mirrored.place * [1.0, -1.0, 1.0], on_floor.place)
