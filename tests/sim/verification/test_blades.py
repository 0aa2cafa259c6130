"""What blades part and what is left: boxes and pillars cut, against formulas typed here once more.

Sources
-------
Second moment, plastic moment and shear flow of a channel, energy of a pulled bar: any handbook of mechanics
of materials, from memory; the section is summed up numerically here.
That a pillar's face is often wider than blades open, so that one goes from its narrow side; that an
incomplete cut stays a strong tie; that a relief cut at the foot lowers the force to fold it: common practice,
no source.
"""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from meshes.pillar import PillarShape, build_pillar
from sim import materials
from sim.blades import Blades, section
from sim.checks import blades as rows
from sim.checks import specimens
from sim.cutting import cut, part
from sim.increment import Stepper
from sim.ledger import Ledger
from sim.network import Drive, Load, Network
from sim.pieces import TAKEN, piece_of
from sim.pillar import PillarBuild, pillar_structure
from sim.problems import PlanError
from sim.raw import KIND
from sim.structure import Bonds
from sim.torn import sharp_edge_count

ORDINARY = PillarBuild(pressed=materials.PATCH_STEEL, pressed_m=0.0012, closing_m=0.0010)
HEIGHT_M = 0.55  # of the push
FRONT, OUTER, INNER = (1.0, 0.0, 0.0), (0.0, -1.0, 0.0), (0.0, 1.0, 0.0)


def summed_channel(width, depth, wall, count=20000):
    """Return I and the plastic modulus of a wall of a width with two webs of a depth, by slices."""
    share = (np.arange(count) + 0.5) / count
    y = np.concatenate([np.zeros(count), depth * share, depth * share])
    area = wall * np.concatenate([np.full(count, width / count), *[np.full(count, depth / count)] * 2])
    middle = float(area @ y / area.sum())
    order = np.argsort(y, kind="stable")
    half = y[order][np.searchsorted(np.cumsum(area[order]), 0.5 * area.sum())]
    return float(area @ (y - middle) ** 2), float(area @ np.abs(y - half))


@pytest.mark.parametrize("size", [(0.125, 0.095), (0.09, 0.07)])
def test_closed_forms_of_the_channel_are_what_its_section_sums_to(size):
    second, plastic = summed_channel(*size, 0.0015)
    found = rows.channel(*size, 0.0015)
    assert found[0] == pytest.approx(second, rel=1e-3)
    assert found[1] == pytest.approx(plastic, rel=1e-3)


def test_a_box_cut_along_two_edges_bends_as_the_channel_left():
    """3 % at 20 mm, as for the whole box; the whole box is more than twice as stiff."""
    whole, left = rows.open_box(0.02)
    second, _ = summed_channel(*rows.SECTION_M, rows.WALL_M)
    bending = 1.0 / (3.0 * 210.0e9 * second)
    assert left > bending * 0.97
    assert left == pytest.approx(rows.head_m_per_n(*rows.SECTION_M, rows.WALL_M, 1.0), rel=0.03)
    assert left > 2.0 * whole


def test_a_box_with_a_length_of_wall_cut_out_folds_at_the_moment_of_the_channel_left():
    """5 % of the value read at no spacing; each lattice lies above it, the finer one nearer."""
    row = rows.gap_moment()
    plastic = summed_channel(*rows.STOCKY_M, rows.STOCKY_WALL_M)[1] * 350.0e6
    assert row.expected == pytest.approx(
        plastic / (0.8 - rows.GAP_M[0]) / 1e3, rel=0.02
    )  # half a row of place
    assert row.got == pytest.approx(row.expected, rel=0.05)
    assert rows.gap_settles().passed
    found = rows.gap(0.02)
    assert found.failed == 0 and found.gap_ratio < 0.02
    assert found.taken_kg == pytest.approx(7850.0 * 0.006 * 0.09 * 0.20, rel=0.1)  # 20 mm of place


def test_cut_through_a_pulled_box_lets_all_its_energy_go_and_holds_nothing():
    found = rows.parted(0.03)
    assert found.done.open and found.done.left_m == 0.0
    stored = 0.5 * 210.0e9 * 2.0 * 0.0015 * (0.125 + 0.095) * 1.0e-4**2
    assert found.released_j == pytest.approx(stored, rel=5e-3)
    assert abs(found.after_n) < 1e-4 * found.before_n


def test_blades_work_is_shear_over_the_thickness_of_what_they_part():
    """Tau t per area: 0.8 of the strength (yield, where a metal never necks) times t^2 times the length."""
    done = rows.parted(0.03).done
    metal = specimens.metal()
    work = 0.8 * metal.yield_pa * rows.WALL_M**2 * done.cut_m
    assert done.work_j == pytest.approx(work, rel=1e-9)
    assert done.cut_m == pytest.approx(2.0 * (0.125 + 0.095), rel=1e-6)  # a straight ring, no zigzag


# ---- the pillar ------------------------------------------------------------------------------------------


def middle_at(mesh, height):
    c = mesh.cuts
    return np.array(
        [
            np.interp(height, c[:, 0], 0.5 * (c[:, 1] + c[:, 3])),
            np.interp(height, c[:, 0], 0.5 * (c[:, 2] + c[:, 4])),
            height,
        ]
    )


def blades(mesh, network, height, way=FRONT, **numbers):
    every = np.ones(len(network.structure.triangles), dtype=bool)
    return Blades(middle_at(mesh, height), np.array(way), np.array([0.0, 0.0, 1.0]), every, **numbers)


def pushed(mesh, build, travels=()):
    """Return stepper and point of a push outward on the inner wall half-way up."""
    structure = pillar_structure(mesh, build)
    points = mesh.surface.points
    inner = mesh.surface.nodes_of(("inner",))
    middle = np.mean([np.interp(HEIGHT_M, mesh.cuts[:, 0], mesh.cuts[:, k]) for k in (1, 3)])
    away = np.hypot(points[inner, 0] - middle, points[inner, 2] - HEIGHT_M)
    nodes, weights = inner[away < 0.05], 1.0 - away[away < 0.05] / 0.05
    weights = weights / weights.sum()
    outward = np.array([0.0, mesh.outboard_sign, 0.0])
    drive = Drive(nodes, weights, outward, float(outward @ (weights @ points[nodes])))
    stepper = Stepper(Network(structure, [drive]), lambda: False)
    point = stepper.first_point(stepper.network.initial_state(), Ledger())
    return on(stepper, point, travels)


def on(stepper, point, travels):
    for travel in travels:
        point = stepper.advance(point, float(travel))
    assert stepper.tally.failed == 0
    return stepper, point


STEPS = np.arange(0.0025, 0.0101, 0.0025)


@pytest.fixture(scope="module")
def mesh():
    return build_pillar(PillarShape(weld_pitch_m=0.025))


@pytest.fixture(scope="module")
def bent(mesh):
    return pushed(mesh, ORDINARY, STEPS)


def tool_gap(point):
    """Return the gap over the work of the tips alone."""
    return abs(point.ledger.gap_j) / (point.ledger.work_j - point.ledger.lines["cut"])


def test_a_top_cut_frees_the_pillar_and_a_short_one_leaves_it_tied(mesh, bent):
    stepper, point = bent
    before = float(point.force_n[0])
    free, freed, done = cut(stepper, point, blades(mesh, stepper.network, 0.9))
    assert done.open and done.word == "cut open"
    assert float(freed.force_n[0]) < 0.6 * before
    tied, held, left = cut(stepper, point, blades(mesh, stepper.network, 0.9, short_m=0.02))
    assert left.word == "cut short" and left.cut_m > 0.1
    # the far wall and 20 mm of two walls stand, to half an edge of the lattice on either side
    wanted = left.section.width_m + 2.0 * 0.02
    assert left.left_m == pytest.approx(wanted, abs=0.026)
    assert float(held.force_n[0]) > 0.9 * before
    further = STEPS[-1] + STEPS
    loose, tight = on(free, freed, further)[1], on(tied, held, further)[1]
    assert float(tight.force_n[0]) > 2.0 * float(loose.force_n[0])
    for end in (freed, held, loose, tight):
        assert tool_gap(end) < 0.02 and min(end.ledger.lines.values()) >= 0.0
    assert freed.ledger.lines["released in a jump"] > held.ledger.lines["released in a jump"] > 0.0


def test_metal_away_from_the_cut_keeps_its_stress(mesh, bent):
    """Right after the blades, before the metal moves: nodal forces three rows off are what they were."""
    stepper, point = bent
    made = part(stepper.network, point.state, blades(mesh, stepper.network, 0.9))
    count = len(point.state.points)
    np.testing.assert_array_equal(made.state.points[:count], point.state.points)
    load = stepper.load(point.travel_m, point.state)
    was = stepper.network.evaluate(point.state.points, point.state, load)
    now = made.network.evaluate(made.state.points, made.state, replace(load, origin=made.state.points))
    far = np.abs(point.state.points[:, 2] - 0.9) > 0.08
    np.testing.assert_allclose(now.forces[:count][far], was.forces[far], rtol=1e-9, atol=1e-6)
    assert now.stored_j <= was.stored_j + 1e-9
    flowed = point.state.hardening.any(axis=1)
    assert flowed.sum() > 20
    np.testing.assert_array_equal(made.state.hardening, point.state.hardening)


def test_metal_pressed_far_in_is_cut_where_it_is_now_and_lets_its_stress_go(mesh):
    """80 mm in at mid height: the section has widened there; a third of what is stored goes."""
    structure = pillar_structure(mesh, ORDINARY)
    outer = mesh.surface.nodes_of(("outer",))
    away = np.hypot(*(mesh.surface.points[outer] - middle_at(mesh, HEIGHT_M))[:, [0, 2]].T)
    nodes, weights = outer[away < 0.06], 1.0 - away[away < 0.06] / 0.06
    weights = weights / weights.sum()
    inward = np.array(OUTER)
    drive = Drive(nodes, weights, inward, float(inward @ (weights @ structure.points[nodes])))
    stepper = Stepper(Network(structure, [drive]), lambda: False)
    start = stepper.first_point(stepper.network.initial_state(), Ledger())
    stepper, point = on(stepper, start, np.arange(0.0025, 0.0801, 0.0025))
    set_ = blades(mesh, stepper.network, 0.50)
    before = section(stepper.network, structure.points, set_)
    near = np.argsort(np.abs(mesh.surface.points[:, 2] - 0.50))[:20]
    moved = (point.state.points[near] - structure.points[near]).mean(axis=0)
    assert abs(moved[1]) > 0.03
    _, end, done = cut(stepper, point, replace(set_, place=set_.place + moved))
    assert done.open and done.section.width_m > 1.02 * before.width_m
    assert float(end.force_n[0]) < 0.3 * float(point.force_n[0])
    released = end.ledger.lines["released in a jump"] - point.ledger.lines["released in a jump"]
    assert 0.3 * point.ledger.stored_j < released < point.ledger.stored_j
    assert tool_gap(end) < 0.02 and stepper.tally.failed == 0


def test_nothing_moves_when_metal_without_stress_is_cut(mesh):
    stepper, point = pushed(mesh, ORDINARY)
    _, end, _ = cut(stepper, point, blades(mesh, stepper.network, 0.9))
    count = len(point.state.points)
    np.testing.assert_allclose(end.state.points[:count], point.state.points, atol=1e-9)
    assert end.ledger.lines["released in a jump"] < 1e-9


def test_a_second_cut_under_the_first_leaves_a_piece_that_comes_out(mesh):
    stepper, point = pushed(mesh, ORDINARY)
    first, point, _ = cut(stepper, point, blades(mesh, stepper.network, 0.90))
    assert sharp_edge_count(first.network, point.state) == 2
    second, point, done = cut(first, point, blades(mesh, first.network, 0.84))
    around, height = 0.28, 0.06
    # 12 and 10 thousandths thick; a row of 19 mm of place at either end
    assert done.taken_kg == pytest.approx(7850.0 * around * height * 0.00115, rel=0.35)
    gone = second.network.structure.names[TAKEN]
    assert np.asarray(second.network.structure.fixed)[gone].all()
    assert sharp_edge_count(second.network, point.state) == 2  # its own two went with it
    structure = second.network.structure
    left = np.setdiff1d(np.arange(len(structure.points)), gone)
    z = point.state.points[left, 2]
    own = np.isin(left, structure.triangles)
    room = np.sort(z[own])
    apart = np.diff(room[(room > 0.75) & (room < 1.0)]).max()
    assert apart == pytest.approx(height, abs=0.02)
    piece, held = piece_of(structure, point.state)
    assert held[piece[structure.triangles[:, 0]]].all()


def test_a_wide_face_is_refused_with_the_remedy_and_taken_from_its_narrow_side():
    wide = build_pillar(PillarShape(foot_width_m=0.21, belt_width_m=0.205))
    network = Network(pillar_structure(wide, ORDINARY))
    state = network.initial_state()
    with pytest.raises(
        PlanError, match=r"opening_m is 0.18 m and the section there is 0.20\d m .* narrower side"
    ):
        part(network, state, blades(wide, network, 0.6, OUTER, opening_m=0.18))
    assert part(network, state, blades(wide, network, 0.6, FRONT, opening_m=0.18)).done.open
    assert part(network, state, blades(wide, network, 0.6, OUTER, opening_m=0.21)).done.open


def test_the_section_is_measured_on_the_metal_as_it_is_now(mesh):
    """Pressed in by a tenth of its depth on either side it is a fifth narrower across the blades."""
    network = Network(pillar_structure(mesh, ORDINARY))
    points = mesh.surface.points.copy()
    whole = section(network, network.structure.points, blades(mesh, network, 0.6))
    middle = middle_at(mesh, 0.6)
    points[:, 1] = middle[1] + 0.8 * (points[:, 1] - middle[1])
    now = np.concatenate([points, network.structure.points[len(points) :]])
    flat = section(network, now, blades(mesh, network, 0.6))
    assert flat.width_m == pytest.approx(0.8 * whole.width_m, rel=1e-9)


def test_a_relief_cut_at_the_foot_lowers_the_force_to_fold_it(mesh):
    """By 40 % or more from the inner side over two thirds of the depth; a cut of a third does not do it."""
    build = replace(ORDINARY, held=("foot",))
    steps = np.arange(0.0025, 0.0201, 0.0025)

    def peak(depth):
        stepper, point = pushed(mesh, build)
        if depth:
            foot = blades(mesh, stepper.network, 0.06, INNER, depth_m=depth)
            stepper, point, done = cut(stepper, point, foot)
            assert not done.open
        forces = []
        for travel in steps:
            stepper, point = on(stepper, point, [travel])
            forces.append(float(point.force_n[0]))
        assert tool_gap(point) < 0.02
        return max(forces)

    whole = peak(0.0)
    assert peak(0.06) < 0.6 * whole
    assert 0.6 * whole < peak(0.03) < whole


def test_raw_edges_press_once_the_kerf_has_closed_and_never_pull(mesh):
    stepper, point = pushed(mesh, ORDINARY)
    after, point, _ = cut(stepper, point, blades(mesh, stepper.network, 0.9))
    s = after.network.structure
    above = np.zeros(len(s.points), dtype=bool)
    piece, _ = piece_of(s, point.state)
    head = piece[np.argmax(np.where(np.isin(np.arange(len(s.points)), s.triangles), s.points[:, 2], -9.0))]
    above[piece == head] = s.points[piece == head, 2] < 2.0
    kept = s.bonds.of(KIND)
    assert kept.sum() >= 10
    for lift, presses in ((0.001, False), (-0.0015, False), (-0.003, True)):
        points = point.state.points.copy()
        points[above, 2] += lift
        ev = after.network.evaluate(points, point.state, Load((0.0,)))
        pressed = ev.normal_force[kept]
        assert (pressed <= 0.0).all()
        assert bool((pressed < -1.0).all()) == presses and bool((pressed == 0.0).all()) != presses


def test_left_pillar_mirrors_the_cut(mesh):
    def cut_at(built):
        stepper, point = pushed(built, ORDINARY, STEPS[:2])
        return cut(stepper, point, blades(built, stepper.network, 0.9))

    right, left = cut_at(mesh), cut_at(mesh.mirrored())
    assert left[2].cut_m == pytest.approx(right[2].cut_m, rel=1e-9)
    assert float(left[1].force_n[0]) == pytest.approx(float(right[1].force_n[0]), rel=1e-6)


def test_too_little_depth_and_no_metal_are_refused(mesh):
    network = Network(pillar_structure(mesh, ORDINARY))
    with pytest.raises(PlanError, match=r"place has no metal"):
        part(network, network.initial_state(), blades(mesh, network, 2.5))
    far = blades(mesh, network, 0.6, depth_m=1.0e-4)
    with pytest.raises(PlanError, match=r"depth_m parts nothing"):
        part(network, network.initial_state(), replace(far, way=np.array([np.sqrt(0.5), np.sqrt(0.5), 0.0])))


def test_bonds_of_a_structure_without_a_cut_are_untouched(mesh):
    network = Network(pillar_structure(mesh, ORDINARY))
    made = part(network, network.initial_state(), blades(mesh, network, 0.9))
    old, new = network.structure.bonds, made.network.structure.bonds
    count = len(old.law)
    assert isinstance(new, Bonds) and len(new.law) > count
    np.testing.assert_array_equal(new.law[:count][old.of("pillar weld")], old.law[old.of("pillar weld")])
