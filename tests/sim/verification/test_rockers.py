"""The rocker that gives: beam, shaft and plastic limit from handbooks, and how the pillar's foot hangs on it.

Sections are reckoned here anew: outer walls 150 by 130 mm, a web at 95 mm from the outer one, 1.7 to 1.9 m
between front and rear pillar, loaded at the foot. Formulas from memory; they stand in every handbook.
"""

import dataclasses

import msgspec
import numpy as np
import pytest

from meshes.rail import FRONT_END, REAR_END
from sim.carcheck import check_car
from sim.checks import members, rockers
from sim.door_model import build_model
from sim.network import Load
from sim.plan import Car, Plan
from sim.planhash import plan_sha256
from sim.problems import PlanError
from sim.stood import FOOT_RING, foot_gives, foot_way_m
from sim.whole_side import WholeSide
from tests.sim.verification import hung

E_PA, G_PA, YIELD_PA = 210.0e9, 210.0e9 / 2.6, 350.0e6
DEPTH_M, HEIGHT_M, CELL_M = 0.150, 0.130, 0.095
AHEAD_M, BEHIND_M = 1.054, 0.823
"""From the middle of the foot to the front and to the rear pillar."""


def test_section_and_lengths_are_the_ones_reckoned_with():
    mesh, _ = rockers.box(0.0015, YIELD_PA, rockers.CAR_M)
    assert rockers.section_m(mesh) == pytest.approx((DEPTH_M, HEIGHT_M, CELL_M))
    place, _, _ = members.across(mesh, rockers.middle_m())
    assert members.lengths_m(mesh, place) == pytest.approx((AHEAD_M, BEHIND_M), abs=0.03)


def test_it_bends_as_a_beam_held_at_both_ends():
    """P a^3 b^3 / 3 L^3 E I + P a b / L G A: 11 % stiff on a car's lattice, 2 % on half of it."""
    t = 0.0015
    second = 2 * DEPTH_M * t * (HEIGHT_M / 2) ** 2 + 3 * t * HEIGHT_M**3 / 12
    for spacing, allowed in ((rockers.CAR_M, 0.15), (rockers.FINE_M, 0.04)):
        mesh, _ = rockers.box(t, YIELD_PA, spacing)
        a, b = members.lengths_m(mesh, members.across(mesh, rockers.middle_m())[0])
        expected = (a * b / (a + b)) ** 3 / (3 * E_PA * second) + a * b / (a + b) / (G_PA * 3 * t * HEIGHT_M)
        assert 1e-6 * rockers.deflection(spacing).got == pytest.approx(expected, rel=allowed)


def test_it_turns_as_a_shaft_of_two_cells():
    """Bredt for one cell 150 by 130 mm gives G J (1 / a + 1 / b); its web adds under two per cent."""
    t = 0.0015
    one = 2 * t * (DEPTH_M * HEIGHT_M) ** 2 / (DEPTH_M + HEIGHT_M)
    mesh, _ = rockers.box(t, YIELD_PA, rockers.CAR_M)
    a, b = members.lengths_m(mesh, rockers.turning(mesh, rockers.middle_m())[0])
    stiffness = 1e3 * rockers.twist(rockers.CAR_M).got
    assert 0.99 < stiffness / (G_PA * one * (1 / a + 1 / b)) < 1.02
    assert rockers.twist(rockers.CAR_M).passed


def test_a_stocky_one_folds_at_three_places_on_a_plateau():
    """2 M L / a b with M = sy (t h (b + h / 2) + t h^2 / 4): never below, 12 % above."""
    t = 0.006
    moment = YIELD_PA * (t * HEIGHT_M * (DEPTH_M + HEIGHT_M / 2) + t * HEIGHT_M**2 / 4)
    found = rockers.bent(t, 0.012, rockers.CAR_M)
    a, b, force = found.ahead_m, found.behind_m, found.forces
    load = moment * 2 * (a + b) / (a * b)
    assert load < force.max() < 1.12 * load
    assert abs(force[-1] - force[-3]) < 0.02 * force[-1]
    assert found.gap < 0.02


def test_a_stocky_one_turns_on_at_its_plastic_torque():
    """2 b h t sy / sqrt(3) to either side (sand heap): within 5 %, and it does not grow any further."""
    torque, _, gap = rockers.turned(rockers.CAR_M)
    side = 2 * DEPTH_M * HEIGHT_M * 0.006 * YIELD_PA / np.sqrt(3)
    assert torque.max() == pytest.approx(2 * side, rel=0.05)
    assert torque[-1] < torque.max()
    assert gap < 0.02


@pytest.fixture(scope="module", params=["right", "left"])
def side(request):
    """Return a side whose rocker gives, with a flared foot on it."""
    whole = WholeSide(rocker_wall_m=0.0015, foot_flare_m=0.25)
    return build_model(Car(extent="side", lattice_spacing_m=0.08, side=request.param, whole_side=whole))


def foot_bonds(model, kind="pillar weld"):
    """Return the bonds of a kind at the foot."""
    bonds = model.structure.bonds
    return np.flatnonzero(bonds.of(kind) & (model.structure.points[bonds.nodes[:, 0], 2] < 0.5))


def test_its_ends_are_held_and_nothing_of_it_else(side):
    fixed, rocker = side.structure.fixed, side.rocker
    held = np.union1d(rocker.mesh.surface.nodes[FRONT_END], rocker.mesh.surface.nodes[REAR_END])
    still = np.flatnonzero(fixed[rocker.nodes].all(axis=1))
    np.testing.assert_array_equal(still, held)
    assert "rocker" not in side.rigid and side.whole_count == len(side.start.points)
    assert side.surface.part_names[-1] == "rocker bulkhead"


def test_spots_of_the_foot_peel_away_from_the_rocker_and_press_towards_it(side):
    spots = foot_bonds(side)
    assert len(spots) == len(hung.flange_of_spot(side, "foot")) > 30
    hung.hold_that_flanges_peel_and_press(side, "foot", spots)


def test_web_and_bulkheads_peel_off_the_walls_they_are_welded_to(side):
    """Every plate drawn in by 1 % about its own middle pulls at every bond, on all its welded edges."""
    mesh, first = side.rocker.mesh, side.rocker.first
    points = side.start.points.copy()
    edges = {name: ids for name, ids in mesh.surface.chains.items() if "_on_" in name}
    plates = {name.partition("_on_")[0] for name in edges}
    assert len(plates) == 5 and len(edges) == 2 + 4 * 4
    for plate in plates:
        own = np.unique(
            np.concatenate([ids for name, ids in edges.items() if name.startswith(f"{plate}_on")])
        )
        ways = [2] if plate == "web" else [1, 2]
        for k in ways:
            middle = 0.5 * (points[own + first, k].min() + points[own + first, k].max())
            points[own + first, k] += 0.01 * (middle - points[own + first, k])
    ev = side.network.evaluate(points, side.start, Load())
    welds = side.structure.bonds.of("rocker weld")
    assert welds.sum() == sum(map(len, edges.values()))
    assert (ev.opening[welds] > 1e-4).all() and (ev.normal_force[welds] > 0.0).all()


def test_the_foot_goes_along_when_the_rocker_moves_and_turns(side):
    """Rocker and pillar shifted and turned as one: no spot, no flange and no plate feels anything."""
    ev = hung.moved_as_one(side, side.rocker.nodes)
    kinds = ("pillar weld", "pillar touch", "rocker weld")
    mine = np.concatenate([foot_bonds(side, kind) for kind in kinds])
    assert len(mine) > 150
    # 1e-3 N: a spot is 1e8 N/m stiff and places are known to 1e-13 m; those of plates stand for several
    np.testing.assert_allclose(ev.normal_force[mine], 0.0, atol=1.0e-3)


def test_a_side_at_the_default_lattice_stays_below_4000_nodes():
    model = build_model(Car(extent="side", whole_side=WholeSide(rocker_wall_m=0.0015, foot_flare_m=0.25)))
    assert 3900 < len(model.start.points) <= 4000
    assert model.whole_count == len(model.start.points)


def test_at_their_defaults_the_fields_are_not_in_the_hash():
    car = Car(extent="side")
    named = msgspec.structs.replace(
        car.whole_side, foot_flare_m=0.0, foot_rows=2, rocker_wall_m=0.0, rocker_bulkheads=True
    )
    plan = Plan(car=car, moves=())
    assert plan_sha256(plan.with_car(msgspec.structs.replace(car, whole_side=named))) == plan_sha256(plan)
    flared = msgspec.structs.replace(named, foot_flare_m=0.25)
    assert plan_sha256(plan.with_car(msgspec.structs.replace(car, whole_side=flared))) != plan_sha256(plan)


@pytest.mark.parametrize(
    ("fields", "word"),
    [
        ({"rocker_wall_m": 0.0001}, "rocker_wall_m"),
        ({"rocker_wall_m": float("nan")}, "rocker_wall_m"),
        ({"rocker_yield_pa": 1.0}, "rocker_yield_pa"),
        ({"foot_flare_m": 0.6}, "foot_flare_m"),
        ({"foot_rows": 5}, "foot_rows"),
        ({"foot_stiffener_m": -0.001}, "foot_stiffener_m"),
    ],
)
def test_bad_numbers_are_named_with_their_remedy(fields, word):
    with pytest.raises(PlanError) as caught:
        check_car(Car(extent="side", whole_side=WholeSide(**fields)))
    assert f"car.whole_side.{word}" in str(caught.value) and "use" in str(caught.value)


def test_a_flare_too_short_for_the_foot_is_refused_by_its_field():
    with pytest.raises(PlanError, match=r"car.whole_side.foot_flare_m"):
        build_model(Car(extent="side", lattice_spacing_m=0.08, whole_side=WholeSide(foot_flare_m=0.1)))


def test_a_foot_that_turns_takes_a_head_along_by_its_height():
    """Turned by 0.1 rad about the car's length and shifted 2 mm: 0.6 m up, sin(0.1) 0.6 + 0.002 m."""
    ring = np.array([[x, y, 0.0] for x in (0.0, 0.1) for y in (0.0, -0.1)])
    turn = np.array([[1, 0, 0], [0, np.cos(0.1), np.sin(0.1)], [0, -np.sin(0.1), np.cos(0.1)]])
    middle, out = ring.mean(axis=0), np.array([0.0, 1.0, 0.0])
    after = (ring - middle) @ turn.T + middle + 0.002 * out
    head = middle + np.array([0.0, 0.0, 0.6])
    assert foot_way_m((ring, after), head, out) == pytest.approx(0.6 * np.sin(0.1) + 0.002)


def test_a_base_under_the_pillar_gives_when_most_of_the_head_s_way_is_its(side):
    """What turns the whole side about the foot gives; what moves the head alone does not."""
    start, out = side.start.points, np.array([0.0, side.outboard_sign, 0.0])
    ring = side.structure.names[FOOT_RING]
    middle = start[ring].mean(axis=0)
    head = middle + np.array([0.0, 0.0, 0.6])
    turned = start.copy()
    turned[ring] += 0.05 * (start[ring] - middle)[:, [1]] * [0.0, 0.0, -side.outboard_sign]
    way = foot_way_m((start[ring], turned[ring]), head, out)
    assert way == pytest.approx(0.03, rel=0.03)  # 0.05 rad at 0.6 m
    assert foot_gives(side, (start, turned), head, out, 0.05)
    assert not foot_gives(side, (start, turned), head, out, 0.07)
    assert not foot_gives(side, (start, start), head, out, 0.05)
    rigid = dataclasses.replace(side, rocker=None)
    assert not foot_gives(rigid, (start, turned), head, out, 0.05)
