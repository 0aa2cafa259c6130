"""Section plane, parts drawn apart, one part alone and the camera's places, on door and side.

Cuts are checked against trimesh and scipy's hull, general-purpose libraries.
"""

from __future__ import annotations

from types import SimpleNamespace

import numpy as np
import pytest
import trimesh
from scipy.spatial import ConvexHull

from tests.ui.scene.conftest import aim_at, moved, pixels
from tests.ui.scene.side_car import side_model
from ui.scene import section
from ui.scene.hem_fold import BOND_M, folds
from ui.scene.label import on_pixels
from ui.scene.stage import Stage
from ui.scene.word_room import Picture, Wish, find_rooms
from ui.state.seeing import CutPlane

pytestmark = pytest.mark.gl


@pytest.fixture
def side(plotter):
    made = Stage(plotter)
    made.set_model(side_model())
    yield made
    made.close()


@pytest.mark.parametrize("axis", [0, 1, 2])
def test_a_cut_square_to_any_axis_is_an_independent_librarys(axis):
    shape = trimesh.creation.icosphere(subdivisions=3, radius=0.5)
    normal = np.eye(3)[axis]
    ours = section.cut_segments(np.asarray(shape.vertices), np.asarray(shape.faces), 0.123, axis)
    theirs = trimesh.intersections.mesh_plane(shape, normal, 0.123 * normal)
    length = np.linalg.norm(np.diff(ours, axis=1), axis=2).sum()
    assert length == pytest.approx(np.linalg.norm(np.diff(theirs, axis=1), axis=2).sum(), rel=1e-9)
    points, triangles = section.cut_faces(
        [(np.asarray(shape.vertices), np.asarray(shape.faces))], 0.123, axis
    )
    outline = ConvexHull(np.delete(theirs.reshape(-1, 3), axis, axis=1))
    area = trimesh.Trimesh(points, triangles, process=False).area
    assert area == pytest.approx(outline.volume, rel=1e-6)  # the hull's "volume" in the plane is its area


def test_strips_have_length_times_thickness():
    segments = np.array([[[0.0, 0.0, 1.0], [0.3, 0.4, 1.0]], [[1.0, 0.0, 1.0], [1.0, 0.2, 1.0]]])
    points, triangles = section.strips(segments, np.array([0.0008, 0.002]), 2)
    area = trimesh.Trimesh(points, triangles, process=False).area
    assert area == pytest.approx(0.5 * 0.0008 + 0.2 * 0.002, rel=1e-9)
    assert np.abs(points[:, 2] - 1.0).max() < 1e-12


def test_the_hem_shows_three_sheets_and_the_bond_between(model):
    from ui.scene.door_scene import DoorScene

    door, car = DoorScene(model), model.car
    found = folds(
        door.seam, door.points, door.damage, 0.36, 2,
        width_m=model.mesh.shape.hem_width_m, skin_m=car.skin_thickness_m, inner_m=car.inner_thickness_m,
    )  # fmt: skip
    assert len(found) == 2  # latch edge and hinge edge
    for fold in found:
        flange, _, leg = fold.sheets
        skin = door.seam.ends(door.points)[0]
        lip = skin[np.argmin(np.linalg.norm(skin - leg[0], axis=1))]
        inboard = [float(abs(one[0, 1] - lip[1])) for one in (flange, leg)]
        step = 0.5 * (car.skin_thickness_m + car.inner_thickness_m) + BOND_M
        assert inboard[0] == pytest.approx(step, abs=6e-4)  # the hem leans a little in the plane
        assert inboard[1] > inboard[0] + 0.5 * car.inner_thickness_m
        assert np.ptp(fold.sheets[..., 2]) == pytest.approx(0.0, abs=1e-12)
        assert np.linalg.norm(leg[1] - leg[0]) == pytest.approx(model.mesh.shape.hem_width_m, rel=1e-9)


def test_the_bond_is_gone_where_the_seam_has_parted(stage, model):
    frame = moved(model)
    stage.set_cut(CutPlane("level", 0.36))
    bonds = stage.cast["cut_bond"].data.GetNumberOfLines()
    frame.seam_damage = np.ones_like(frame.seam_damage)
    stage.show_points(frame.points, frame)
    assert bonds == 2 and "cut_bond" not in stage.cast


@pytest.mark.parametrize(("way", "place"), [("level", 0.36), ("across", 0.80), ("lengthwise", -0.06)])
def test_faces_lie_in_the_plane_and_have_names(side, way, place):
    side.view_preset("front")
    side.set_cut(CutPlane(way, place))
    axis = CutPlane(way, place).axis
    for name in ("cut_lines", "cut_sheets", "cut_body"):
        away = np.abs(np.asarray(side.cast[name].points, dtype=float)[:, axis] - place)
        assert away.max() < 2e-3, name
    assert len(side.cutting.names) >= 4
    assert any("inner panel" in name or "pillar" in name for name in side.cutting.names)


def meeting(boxes):
    """Return which two boxes (left, low, right, high) lie over one another, typed here on its own."""
    return [
        (a, b)
        for k, a in enumerate(boxes)
        for b in boxes[k + 1 :]
        if min(a[2], b[2]) > max(a[0], b[0]) and min(a[3], b[3]) > max(a[1], b[1])
    ]


# what the stage has of a window of 1280 x 720 and of 1024 x 768, and on a wall with larger words
@pytest.mark.parametrize(("size", "scale"), [((690, 530), 1.0), ((610, 560), 1.0), ((610, 560), 1.5)])
@pytest.mark.parametrize(
    ("view", "way", "place"),
    [("home", "level", 0.36), ("front", "level", 0.6), ("home", "across", 1.1), ("section", "level", 0.36)],
)
def test_no_name_covers_another_word_or_a_key_place(side, size, scale, view, way, place):
    side.plotter.window_size = size
    pixels(side)
    frame = SimpleNamespace(distance_m=0.09, metal_point=(0.9, -0.16, 0.3), body_point=(0.9, -0.25, 0.3))
    side.set_line_scale(scale)
    side.view_preset(view)
    side.show_clearance(frame)
    side.set_cut(CutPlane(way, place))
    boxes = list(side.cutting.boxes)
    assert len(boxes) >= 3
    seen = [box for label in side.notes.labels if (box := label.box()) is not None]
    assert meeting(boxes + seen) == []
    for left, low, right, high in boxes:
        assert left >= 0 and low >= 0 and right <= size[0] and high <= size[1]
        for x, y in on_pixels(side.renderer, side.notes.key_places()):
            assert not (left < x < right and low < y < high)


def test_the_least_important_name_goes_first_and_a_moved_one_has_a_line():
    """Four words for one place in a picture that holds three: the first three stay, the moved one is led."""
    place = np.array([[60.0, 30.0]])
    wishes = [Wish((100.0, 16.0), place)] * 4
    none = np.zeros((0, 2))
    rooms = find_rooms(wishes, Picture((124.0, 110.0), (), none, none, none))
    assert [room is None for room in rooms] == [False, False, False, True]
    assert not rooms[0].led and any(room.led for room in rooms[1:3])
    assert meeting([room.box for room in rooms[:3]]) == []


def test_a_word_gives_way_to_words_and_places_that_were_there_before():
    place = np.array([[100.0, 60.0]])
    wish, none = Wish((80.0, 16.0), place), np.zeros((0, 2))
    alone = find_rooms([wish], Picture((300.0, 200.0), (), none, none, none))[0].box
    beside = find_rooms([wish], Picture((300.0, 200.0), (alone,), none, none, none))[0].box
    assert meeting([alone, beside]) == []
    middle = np.array([[0.5 * (alone[0] + alone[2]), 0.5 * (alone[1] + alone[3])]])
    left, low, right, high = find_rooms([wish], Picture((300.0, 200.0), (), middle, none, none))[0].box
    assert not (left < middle[0, 0] < right and low < middle[0, 1] < high)


def test_what_is_on_the_viewers_side_is_left_out(stage):
    whole = pixels(stage)
    stage.set_cut(CutPlane("level", 0.30))
    below = pixels(stage)
    assert (whole != below).any()
    stage.set_cut(None)
    np.testing.assert_array_equal(pixels(stage), whole)
    assert not [name for name in stage.cast.things if name.startswith("cut_")]


def faces_of(stage):
    """Return points and colours of every face of the cut, and where the names stand."""
    things = {name: thing for name, thing in stage.cast.things.items() if name.startswith("cut_")}
    faces = {name: (thing.points.copy(), thing.colours.copy()) for name, thing in things.items()}
    cells = {name: thing.data.GetNumberOfCells() for name, thing in things.items()}
    return faces, cells, stage.cutting.boxes


def test_a_cut_that_went_through_moments_planes_and_layers_is_the_one_made_at_once(side):
    """What stands still is cut once a plane and actors are kept: neither may show an older cut."""
    shape = side.door.model.start.points
    bent = shape + [0.0, 0.02, 0.0] * (shape[:, :1] > 0.8)
    plane = CutPlane("level", 0.36)
    side.show_points(bent)
    side.set_cut(plane)
    at_once = faces_of(side)
    side.set_cut(None)
    side.show_points(shape)
    side.set_cut(CutPlane("across", 0.8))
    side.set_layer("body", "off")
    assert "cut_body" not in side.cast
    side.set_layer("body", "solid")
    side.set_cut(CutPlane("level", 0.6))
    side.set_cut(plane)
    side.show_points(bent)
    faces, cells, boxes = faces_of(side)
    assert faces.keys() == at_once[0].keys() and cells == at_once[1]
    assert boxes == pytest.approx(np.array(at_once[2]))
    for name, (points, colours) in faces.items():
        np.testing.assert_array_equal(points, at_once[0][name][0], err_msg=name)
        np.testing.assert_array_equal(colours, at_once[0][name][1], err_msg=name)


def test_a_layer_that_is_off_has_no_face(side):
    side.set_cut(CutPlane("level", 0.36))
    both = side.cast["cut_lines"].data.GetNumberOfLines()
    side.set_layer("pillar", "off")
    assert side.cast["cut_lines"].data.GetNumberOfLines() < both
    assert "middle pillar" not in side.cutting.names


@pytest.mark.parametrize("one", ["door", "side"])
def test_apart_and_together_again_is_the_same_picture_and_the_same_points(request, one, plotter, model):
    stage = Stage(plotter)
    stage.set_model(model if one == "door" else side_model())
    stage.show_start_ghost(True)
    first, points = pixels(stage), np.array(stage.door.points)
    skin = np.array(stage.door.sheets()[0][2].points)
    stage.set_asunder(1.0)
    assert (pixels(stage) != first).any()
    assert {"outer skin", "inner panel", "bar"} <= set(stage.asunder.names)
    stage.set_asunder(0.0)
    np.testing.assert_array_equal(pixels(stage), first)
    np.testing.assert_array_equal(stage.door.points, points)
    np.testing.assert_array_equal(stage.door.sheets()[0][2].points, skin)
    assert not stage.asunder.names
    stage.close()


def test_one_points_at_parts_where_they_are_drawn(stage):
    sign = stage.door.sign
    start, end = np.array([0.5, 3.0 * sign, 0.3]), np.array([0.5, -3.0 * sign, 0.3])
    near = stage.first_hit(start, end)
    stage.set_asunder(1.0)
    far = stage.first_hit(start, end)
    assert near.part == far.part == "outer_skin"
    assert sign * (far.point - near.point)[1] == pytest.approx(stage.asunder.offset("skin", 1.0)[1], abs=1e-6)


def test_one_layer_alone_and_all_again(side):
    whole = pixels(side)
    side.set_alone("pillar")
    shown = {thing.name for thing in side.cast.things.values() if thing.shown}
    assert "middle_pillar" in shown and not shown & {"outer_skin", "inner_panel", "bar", "occupant", "body"}
    side.set_alone(None)
    np.testing.assert_array_equal(pixels(side), whole)


def test_a_parts_layer_is_told_by_its_name(side):
    wanted = {"front_outer_skin": "skin", "rear_inner_panel": "inner", "rocker": "body", "head": "occupant"}
    assert {part: side.layer_of(part) for part in wanted} == wanted
    assert side.layer_of("nothing") is None


def test_the_outline_of_the_start_shape_is_the_stored_start_exactly(side):
    model = side.door.model
    side.show_points(model.start.points + np.array([0.0, 0.1, 0.0]))
    side.show_start_ghost(True)
    drawn = np.asarray(side.cast["start"].points, dtype=float)
    ends = np.concatenate([one.reshape(-1, 3) for one in side.door.start_lines_of()])
    nodes = model.start.points[model.side.front.hem_skin]
    for node in nodes[::9]:
        assert np.linalg.norm(ends - node, axis=1).min() < 1e-12
    assert np.abs(drawn.max(axis=0) - ends.max(axis=0)).max() < 1e-6  # 32-bit


def test_a_place_of_the_camera_comes_back_to_a_millionth(stage):
    stage.view_preset("latch")
    shot = stage.shot
    stage.renderer.GetActiveCamera().Azimuth(31.0)
    stage.shot = shot
    for one, other in zip(
        (*shot.position, *shot.focus, *shot.up, shot.angle_deg),
        (*stage.shot.position, *stage.shot.focus, *stage.shot.up, stage.shot.angle_deg),
        strict=True,
    ):
        assert one == pytest.approx(other, abs=1e-6)


def test_strokes_and_measures_are_drawn_and_taken_away(stage):
    before = pixels(stage)
    line = np.array([[0.3, 0.1, 0.3], [0.7, 0.1, 0.4]]) * [1.0, stage.door.sign, 1.0]
    stage.show_marks([("pen", line), ("arrow", line + 0.1)], [(line - 0.1, "412 mm")])
    assert (pixels(stage) != before).any()
    stage.show_marks([], [])
    np.testing.assert_array_equal(pixels(stage), before)


def test_the_load_path_and_what_is_cut_away_do_not_cover_the_faces(stage, model):
    frame = moved(model)
    stage.show_points(frame.points, frame)
    stage.show_path(frame)
    stage.show_clearance(frame.clearance)  # at 0.30 m above the sill
    stage.set_cut(CutPlane("level", 0.36))
    stage.show_path(frame)
    assert not stage.cast["path"].shown and stage.cast["clearance"].shown
    stage.set_cut(CutPlane("level", 0.20))
    assert not stage.cast["clearance"].shown
    stage.set_cut(None)
    assert stage.cast["path"].shown and stage.cast["clearance"].shown and stage.notes._gap.words


def test_words_about_the_metal_are_silent_while_it_is_drawn_elsewhere(stage, model):
    stage.show_aim(aim_at(model, 0.7))
    stage.show_clearance(moved(model).clearance)
    assert stage.notes._way.words and stage.notes._gap.words
    stage.set_asunder(0.5)
    stage.show_aim(aim_at(model, 0.7))
    assert not stage.notes._way.words and not stage.notes._gap.words
    stage.set_asunder(0.0)
    assert stage.notes._way.words and stage.notes._gap.words
