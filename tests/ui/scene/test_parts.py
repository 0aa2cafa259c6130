"""Stitches, fittings, ghosts, arrows, load path, cut and picker: each against what it must show."""

from __future__ import annotations

import dataclasses
import itertools
from importlib import resources
from pathlib import Path

import msgspec
import numpy as np
import pytest
import trimesh
from scipy.spatial import ConvexHull
from scipy.spatial.transform import Rotation

from sim.aim import aim
from sim.checks.facts import NICK
from sim.door_model import build_model
from sim.plan import BeltPoint, Car, EdgePoint, Plan, Spread, Squeeze, Tool
from sim.planfile import load_plan
from sim.run import solve_plan
from tests.once import once
from tests.ui.scene.conftest import aim_at, moved
from ui.scene import fittings, ghost, motion, section, surroundings, tubes
from ui.scene.path import CELL_M, LEAST_N, OUTLET_M, LoadPath, radius_of
from ui.scene.pick import Picker, Solid
from ui.scene.seam import GONE_DAMAGE, make_stitches


@pytest.mark.parametrize("car", [Car(), Car(seam="welded"), Car(side="left")], ids=["bead", "welds", "left"])
def test_one_stitch_stands_at_each_point_of_the_seam(car):
    model = build_model(car)
    stitches = make_stitches(model)
    frame = moved(model)
    assert stitches.count == len(frame.seam_damage)
    skin, inner = stitches.ends(model.start.points)
    np.testing.assert_allclose(skin, inner, rtol=0, atol=1e-12)  # closed at rest
    bonds = model.structure.bonds
    seam = bonds.of("seam") | bonds.of("weld")
    skin, inner = stitches.ends(frame.points)
    gap = np.einsum("kj,kji->ki", bonds.coefficients[seam, 0], frame.points[bonds.nodes[seam]])
    np.testing.assert_allclose(skin - inner, gap, rtol=0, atol=1e-12)  # open by what the mechanics calls open


def test_a_stitch_thins_as_it_stretches_and_leaves_a_loose_end_on_either_lip_when_it_parts(model):
    stitches = make_stitches(model)
    damage = np.linspace(0.0, 1.0, stitches.count)
    size = stitches.radii(damage)
    whole = damage < GONE_DAMAGE
    assert (np.diff(size[whole], axis=0) < 0.0).all()
    assert size[0].min() > 0.002 and size[whole].min() > 0.001
    assert size[-1, :2].min() > 0.002 and size[-1, 4:].min() > 0.002 and not size[-1, 2:4].any()
    points = moved(model).points
    path = stitches.paths(points, np.ones(stitches.count))
    skin, inner = stitches.ends(points)
    assert np.linalg.norm(path[:, 2] - skin, axis=1).max() < 0.012  # it bridges nothing
    assert np.linalg.norm(path[:, 3] - inner, axis=1).max() < 0.012


def test_stitches_lie_on_the_outside_of_the_metal(model):
    paths = make_stitches(model).paths(model.start.points)
    hem = model.start.points[model.mesh.hem_skin].mean(axis=0)
    assert (paths[:, 0, 1] > -1e-3).all()  # on the skin's face
    assert (paths[:, -1, 1] < -0.008).all()  # round the lip, on the shut face
    out = np.linalg.norm((paths[:, 4] - hem)[:, [0, 2]], axis=1) - np.linalg.norm(
        (paths[:, 0] - hem)[:, [0, 2]], axis=1
    )
    assert (out > 0.0).all()


@pytest.mark.parametrize(
    "solid",
    [
        tubes.capsule((0, 0, 0), (0, 0, 1), 0.2),
        tubes.arrow((0, 0, 0), (1, 1, 0), 0.5, 0.02),
        tubes.ball((1, 2, 3), 0.4),
    ],
    ids=["capsule", "arrow", "ball"],
)
def test_solids_are_closed_and_face_outward(solid):
    points, triangles, normals = solid
    mesh = trimesh.Trimesh(points, triangles)
    mesh.merge_vertices(digits_vertex=9)
    mesh.update_faces(mesh.nondegenerate_faces())  # the rings at a pole are points
    assert mesh.is_watertight
    assert mesh.volume > 0.0
    facing = np.einsum("ij,ij->i", normals, points - points.mean(axis=0))
    assert np.mean(facing > -1e-9) > 0.7


def test_a_capsule_has_its_volume():
    """Pi r^2 l + 4/3 pi r^3; an inscribed polyhedron falls short by a few parts in a hundred."""
    points, triangles, _ = tubes.capsule((0.1, 0, 0), (0.1, 0.3, 0.4), 0.2, rows=24, sides=64)
    exact = np.pi * 0.04 * 0.5 + 4 / 3 * np.pi * 0.008
    assert trimesh.Trimesh(points, triangles).volume == pytest.approx(exact, rel=0.01)


def test_the_best_turn_is_an_independent_librarys():
    random = np.random.default_rng(5)
    rest = random.normal(size=(9, 3))
    turn = Rotation.from_rotvec([0.3, -0.2, 0.9])
    now = turn.apply(rest) + [0.1, 0.2, 0.3] + 0.01 * random.normal(size=(9, 3))
    found, centre, start = fittings.best_turn(rest, now)
    theirs, _ = Rotation.align_vectors(now - now.mean(axis=0), rest - rest.mean(axis=0))
    np.testing.assert_allclose(found, theirs.as_matrix(), rtol=0, atol=1e-9)
    np.testing.assert_allclose(centre - start, now.mean(axis=0) - rest.mean(axis=0), rtol=0, atol=1e-12)


def test_fittings_keep_their_size_and_the_striker_stays(model):
    parts = fittings.latch_and_hinges(model.mesh, model.start.points)
    turned = model.start.points @ Rotation.from_rotvec([0.0, 0.0, 0.2]).as_matrix().T
    assert sum(len(part.nodes) == 0 for part in parts) == 3  # striker and two body halves
    for part in parts:
        before, now = part.points(model.start.points)[0], part.points(turned)[0]
        size = [np.linalg.norm(p - p[:1], axis=1) for p in (before, now)]
        np.testing.assert_allclose(size[0], size[1], rtol=0, atol=1e-12)
        assert np.allclose(before, now, rtol=0, atol=1e-12) == (len(part.nodes) == 0)


@pytest.mark.parametrize(("width_m", "depth_m"), [(0.05, 0.03), (0.02, 0.015)])
def test_tips_have_their_true_width_and_reach_in_by_half_their_depth(model, width_m, depth_m):
    aimed = aim_at(model, 0.6)
    (points, _, _), edges = ghost.tips(aimed, 1.0, Tool(tip_width_m=width_m, tip_depth_m=depth_m))
    assert np.abs(np.ptp(edges.reshape(-1, 3), axis=0) - np.ptp(points, axis=0)).max() < 1e-12
    assert np.ptp(points[:, 2]) == pytest.approx(width_m, abs=1e-9)
    assert aimed.tips[0][1] - points[:, 1].min() == pytest.approx(0.5 * depth_m, abs=1e-9)


def felt(aim):
    """Return an aim whose arrow rests on a touch: it is drawn whole."""
    return dataclasses.replace(aim, basis="touch")


@pytest.mark.parametrize("side", ["right", "left"])
@pytest.mark.parametrize("tilt_rad", [0.9, 0.3, -0.3, -0.9])
def test_the_arrow_points_the_way_the_push_goes(side, tilt_rad):
    model = build_model(Car(side=side))
    sign = model.outboard_sign
    aimed = felt(aim_at(model, tilt_rad))
    middle = model.start.points[model.mesh.surface.nodes["skin_mid"]].mean(axis=0)
    points, _, _ = ghost.share_arrow(aimed, sign, middle)
    word = ghost.word_place(aimed, sign, middle)
    ring = points.reshape(4, -1, 3).mean(axis=1)
    way = ring[-1] - ring[0]
    assert np.sign(sign * way[1]) == np.sign(tilt_rad)
    assert np.linalg.norm(way[[0, 2]]) < 1e-9
    broken, _, _ = ghost.share_arrow(aim_at(model, tilt_rad), sign, middle)
    np.testing.assert_allclose(
        [broken[:, 1].min(), broken[:, 1].max()], [points[:, 1].min(), points[:, 1].max()], atol=1e-6
    )
    assert (
        sign * word[1] > sign * ring[:, 1].max() if sign > 0 else sign * word[1] > (sign * ring[:, 1]).max()
    )
    longer, _, _ = ghost.share_arrow(felt(aim_at(model, 1.3 * tilt_rad)), sign, middle)
    steeper = longer.reshape(4, -1, 3).mean(axis=1)
    assert abs(steeper[-1, 1] - steeper[0, 1]) > abs(way[1])


def test_a_push_along_the_car_has_no_arrow(model):
    middle = model.start.points[model.mesh.surface.nodes["skin_mid"]].mean(axis=0)
    assert ghost.share_arrow(aim_at(model, 0.01), 1.0, middle) is None


def test_tips_that_close_on_the_door_face_each_other_and_go_neither_way(model):
    move = Squeeze(along_m=0.8, height_m=0.5)
    squeeze = aim(model, move)
    normals = ghost.pad_normals(squeeze)
    np.testing.assert_allclose(normals[0], -normals[1], rtol=0, atol=1e-12)
    assert normals[0][1] < -0.9  # the outer tip faces into the car
    middle = model.start.points[model.mesh.surface.nodes["skin_mid"]].mean(axis=0)
    assert ghost.share_arrow(squeeze, 1.0, middle) is None
    (points, _, _), _ = ghost.tips(squeeze, 1.0, move.tool)
    assert points[:, 2].max() > move.height_m + 0.1  # the arms come from above


def test_tips_that_opened_far_outward_still_face_along_the_gap(model):
    """Tip one of a spread may end further out than along: it is still driven away from tip two."""
    spread = aim_at(model, 0.8)
    far = dataclasses.replace(spread, tips=spread.tips + np.array([[-0.01, 0.06, 0.0], [0.0, 0.0, 0.0]]))
    assert not ghost.closes_on_the_door(far)
    assert abs(ghost.pad_normals(far)[0][0]) > 0.99


def test_tips_on_the_belt_face_up_and_down(model):
    normals = ghost.pad_normals(aim(model, Spread(door=BeltPoint(along_m=0.5))))
    assert normals[0][2] < -0.99 and normals[1][2] > 0.99


@pytest.mark.parametrize(
    ("edge", "axis", "way"), [("latch_edge", 0, -1), ("hinge_edge", 0, 1), ("sill_edge", 2, 1)]
)
def test_a_tip_at_an_edge_faces_into_the_door(model, edge, axis, way):
    normals = ghost.pad_normals(aim(model, Spread(door=EdgePoint(edge=edge, along_m=0.3))))
    assert way * normals[0][axis] > 0.99


def test_motion_arrows_are_as_long_as_the_motion(model, frame):
    nodes = model.mesh.surface.nodes_of(("outer_skin",))
    arrows = motion.MotionArrows(model.start.points, nodes, 1.0)
    arrows.move(frame.points)
    ring = np.asarray(arrows.drawn.points, dtype=float).reshape(-1, 4, motion.SIDES, 3).mean(axis=2)
    true = (frame.points - model.start.points)[arrows.nodes, 1]
    shown = np.abs(true) > motion.LEAST_M
    assert shown.any() and (true[shown] > 0).any() and (true[shown] < 0).any()
    np.testing.assert_allclose(
        (ring[:, 3] - ring[:, 0])[shown, 1], true[shown], rtol=0, atol=1e-6
    )  # 32-bit points
    heads = np.asarray(arrows.drawn.points, dtype=float).reshape(-1, 4, motion.SIDES, 3)[:, 2]
    wide = np.ptp(heads[..., 2], axis=1)
    assert wide[shown].min() > motion.HEAD_RADIUS_M and wide[~shown].max(initial=0.0) < 1e-6
    apart = np.linalg.norm(arrows.rest[:, None] - arrows.rest[None], axis=2) + np.eye(len(arrows.rest))
    assert apart.min() >= motion.APART_M


@pytest.fixture(scope="module")
def pushes():
    """Return path, model and frames of the two ready pushes, a short way into each, while they push."""
    found = {}
    for name in ("edge-at-latch", "behind-the-bend"):
        plan = load_plan(Path(str(resources.files("assets").joinpath("plans", f"{name}.toml"))))
        move = msgspec.structs.replace(plan.moves[0], opening_m=0.0125)
        model, records = solve_plan(msgspec.structs.replace(plan, moves=(move,)))
        pushing = [frame for frame in records[0].frames if frame.force_n > LEAST_N or frame.opening_m == 0.0]
        found[name] = LoadPath(model), model, pushing
    return found


@pytest.mark.parametrize("name", ["edge-at-latch", "behind-the-bend"])
def test_every_step_of_the_load_path_is_in_the_flow_and_as_wide_as_what_it_brings(pushes, name):
    path, _, frames = pushes[name]
    for frame in frames[1:]:
        cells = path.cells_of(frame)
        flow = _net_flow(cells, frame)
        strands = path.strands(frame)
        assert strands
        forces, steps = [], set()
        for strand in strands:
            for a, b, force in zip(strand.cells[:-1], strand.cells[1:], strand.force_n, strict=True):
                assert (a, b) not in steps  # each step is drawn once
                steps.add((a, b))
                assert flow[a, b] > flow.get((b, a), 0.0)  # it runs the way the force does
                assert force > 0.0
                forces.append(force)
        # what a way brings is what leaves the metal round its end
        net = np.zeros(path.count)
        for (a, b), force in flow.items():
            net[a], net[b] = net[a] - force, net[b] + force
        middle = np.array([frame.points[cells == c].mean(axis=0) for c in range(path.count)])
        for way in path.ways(frame):
            round_it = np.linalg.norm(middle - middle[way.cells[-1]], axis=1) < 2.0 * OUTLET_M
            assert 0.0 < way.force_n[-1] <= net[round_it & (net > 0.0)].sum() * (1.0 + 1e-9)
        sources = {strand.cells[0] for strand in strands} - {b for _, b in steps}
        tip = np.asarray(frame.drive_points).reshape(-1, 3)[0]
        middles = {c: frame.points[cells == c].mean(axis=0) for c in sources}
        # a river from the tip: what no drawn step leads to lies under it
        assert all(np.linalg.norm(middles[c] - tip) < 2.5 * CELL_M for c in sources)
        forces.sort()
        radii = [radius_of(force, frame.force_n) for force in forces]
        assert all(one <= other for one, other in itertools.pairwise(radii))


def _net_flow(cells, frame):
    """Return what passes from cell to cell, by pair [N]."""
    flow = {}
    for (a, b), force in zip(cells[frame.path_pairs].tolist(), frame.path_flow_n, strict=True):
        flow[a, b] = flow.get((a, b), 0.0) + force
    return flow


def test_after_a_tear_the_load_path_is_a_few_ways_that_end_where_something_holds():
    """Beside a cut in the hem: metal that has yielded keeps forces that run in circles, which are no part."""
    plan = Plan(car=Car(lattice_spacing_m=0.06), moves=(NICK, Spread(opening_m=0.06)))
    model = build_model(plan.car)
    path = LoadPath(model)
    held = {"latch_plate", "upper_hinge", "lower_hinge"}
    places = np.concatenate([model.start.points[model.mesh.surface.nodes[name]] for name in held])
    rim = model.start.points[model.structure.rim]
    record = once(lambda: solve_plan(plan)[1], "a push beside a cut in the hem", plan)[-1]
    assert record.result.torn_length_m > 0.02
    torn = [frame for frame in record.frames if frame.torn_length_m > 0.0 and frame.force_n > LEAST_N]
    assert len(torn) > 5
    for frame in torn:
        ways = path.ways(frame)
        assert 1 <= len(ways) <= 4
        cells = path.cells_of(frame)
        for way in ways:
            end = model.start.points[path.cells == way.cells[-1]]
            apart = np.linalg.norm(end[:, None] - np.concatenate((places, rim))[None], axis=2)
            assert apart.min() < CELL_M
            middles = np.array([frame.points[cells == cell].mean(axis=0) for cell in way.cells])
            turned = np.diff(middles, axis=0)
            along = np.linalg.norm(turned, axis=1).sum()
            assert along < 2.5  # from the latch to the hinges it is one metre


def test_the_edge_push_runs_in_the_skin_and_the_push_behind_the_bend_in_the_inner_panel(pushes):
    share = {}
    for name, (path, model, frames) in pushes.items():
        skin = set(path.cells[model.mesh.surface.nodes_of(("outer_skin",))].tolist())
        inside = outside = 0.0
        # after the latch is free only the swing is left, which says nothing
        hardest = max(frames, key=lambda frame: frame.force_n)
        for strand in path.strands(hardest):
            for a, b, force in zip(strand.cells[:-1], strand.cells[1:], strand.force_n, strict=True):
                if a in skin and b in skin:
                    outside += force
                else:
                    inside += force
        share[name] = outside / (inside + outside)
    assert share["behind-the-bend"] < 0.1 < share["edge-at-latch"]


def test_the_load_path_of_a_deep_push_arrives_at_both_hinges_and_the_latch(pushes):
    """Statics: with the latch still holding, the push leaves the door through latch and hinges together."""
    path, model, frames = pushes["behind-the-bend"]
    frame = max(frames, key=lambda f: f.force_n)
    assert frame.latch_demand_ratio > 0.2  # it holds, and is loaded
    cells = np.concatenate([strand.cells for strand in path.strands(frame)])
    middles = np.array([frame.points[path.cells == cell].mean(axis=0) for cell in cells])
    for name in ("latch_plate", "upper_hinge", "lower_hinge"):
        place = frame.points[model.mesh.surface.nodes[name]].mean(axis=0)
        assert np.linalg.norm(middles - place, axis=1).min() < 0.12, name


def test_nothing_pushed_has_no_load_path(pushes):
    path, _, frames = pushes["edge-at-latch"]
    assert path.ribbons(dataclasses.replace(frames[-1], force_n=0.0)) is None
    assert path.ribbons(frames[0]) is None


def test_a_cut_is_an_independent_librarys():
    shape = trimesh.creation.icosphere(subdivisions=3, radius=0.5)
    ours = section.cut_segments(np.asarray(shape.vertices), np.asarray(shape.faces), 0.123)
    theirs = trimesh.intersections.mesh_plane(shape, [0, 0, 1], [0, 0, 0.123])
    assert np.linalg.norm(np.diff(ours, axis=1), axis=2).sum() == pytest.approx(
        np.linalg.norm(np.diff(theirs, axis=1), axis=2).sum(), rel=1e-9
    )
    assert np.abs(ours[..., 2] - 0.123).max() < 1e-12


def test_the_cut_face_of_a_prism_has_its_area(model):
    pillar = model.body.surfaces["rocker"]
    height = -0.07
    points, triangles = section.cut_faces([(pillar.points, pillar.triangles)], height)
    area = trimesh.Trimesh(points, triangles, process=False).area
    assert area == pytest.approx(np.ptp(pillar.points[:, 0]) * np.ptp(pillar.points[:, 1]), rel=1e-9)


def test_no_edge_of_the_body_is_drawn_inside_its_neighbour(model):
    segments = surroundings.body_edges(model.body)
    middles = segments.mean(axis=1)
    touched = np.zeros(len(middles), dtype=int)
    for surface in surroundings.prisms(model.body).values():
        faces = ConvexHull(surface.points).equations
        touched += (middles @ faces[:, :3].T + faces[:, 3] < 1e-5).all(axis=1)
    assert touched.max() == 1  # its own prism's surface, and nobody else's inside or face


def test_the_picker_finds_the_first_part_on_the_ray():
    near, far = (tubes.ball((0, 0, z), 0.1) for z in (1.0, -1.0))
    picker = Picker()
    assert picker.first_hit(np.array([0, 0, 3.0]), np.array([0, 0, -3.0])) is None
    picker.load([Solid.of("far", *far[:2]), Solid.of("near", *near[:2])])
    hit = picker.first_hit(np.array([0.01, 0.01, 3.0]), np.array([0.01, 0.01, -3.0]))
    assert hit.part == "near"
    assert hit.point[2] == pytest.approx(1.1, abs=0.006)  # a ball of flat faces
    assert picker.first_hit(np.array([0.01, 0.01, -3.0]), np.array([0.01, 0.01, 3.0])).part == "far"
    assert picker.first_hit(np.array([5.0, 0, 3.0]), np.array([5.0, 0, -3.0])) is None
