"""The stage, drawn without a window: probes of pixels and counts before whole pictures."""

from __future__ import annotations

import dataclasses
import gc
import itertools
import weakref

import numpy as np
import pytest
import pyvista
from vtkmodules.util.numpy_support import vtk_to_numpy

from sim.plan import Spread
from sim.record import Touch
from tests.ui.scene.conftest import aim_at, moved, pixels
from ui.scene.cameras import SHOTS
from ui.scene.colours import THEMES, rgb
from ui.scene.copying import copy_to
from ui.scene.layers import LAYERS
from ui.scene.notes import way_word
from ui.scene.stage import Stage
from ui.state.aims import arrow_words
from ui.state.view_options import SIDE_LAYERS

pytestmark = pytest.mark.gl

ACTOR_LIMIT, TRIANGLE_LIMIT = 40, 25_000


def cells_of(stage):
    data = [thing.data for thing in stage.cast.things.values() if thing.shown]
    return sum(d.GetNumberOfPolys() for d in data), sum(d.GetNumberOfLines() for d in data)


def share_of(image, test):
    """Return the share of pixels for which a test of red, green and blue holds."""
    return float(np.mean(test(image[..., 0], image[..., 1], image[..., 2])))


def blue(r, g, b):
    return (b > r + 40) & (b > g)


def orange(r, g, b):
    return (r > b + 40) & (r > g)


def test_everything_at_once_stays_within_the_budget(stage, model, frame):
    stage.show_points(frame.points, frame)
    stage.set_colour_mode("outboard")
    stage.show_aim(aim_at(model, 0.7))
    stage.show_start_ghost(True)
    stage.show_clearance(frame.clearance)
    stage.show_path(frame)
    pixels(stage)
    assert stage.renderer.GetActors().GetNumberOfItems() <= ACTOR_LIMIT
    assert cells_of(stage)[0] <= TRIANGLE_LIMIT
    assert stage.renderer.GetLights().GetNumberOfItems() == 1
    assert stage.plotter.render_window.GetMultiSamples() == 0


def test_moving_writes_into_the_same_arrays(stage, frame):
    skin = stage.door.skin
    held = (skin.points, skin.colours, skin.normals, skin.actor, skin.data)
    actors = set(stage.cast.things)
    stage.show_points(frame.points, frame)
    assert all(
        a is b
        for a, b in zip(held, (skin.points, skin.colours, skin.normals, skin.actor, skin.data), strict=True)
    )
    assert set(stage.cast.things) == actors
    expected = stage.door.skin_sheet.drawn_points(frame.points)
    np.testing.assert_allclose(skin.points, expected, rtol=0, atol=1e-6)  # 32-bit


def test_what_moved_is_drawn_where_it_moved(stage, model, frame):
    before = pixels(stage)
    stage.show_points(frame.points, frame)
    moved_image = pixels(stage)
    assert np.abs(moved_image - before).max() > 60
    stage.show_points(model.start.points)
    np.testing.assert_array_equal(pixels(stage), before)


def test_out_is_blue_and_in_is_orange(stage, model, frame):
    rest = model.start.points
    stage.set_colour_mode("outboard")
    stage.show_points(rest)
    assert share_of(pixels(stage), blue) == share_of(pixels(stage), orange) == 0.0
    for sign, first, second in ((1.0, blue, orange), (-1.0, orange, blue)):
        stage.show_points(rest + np.array([0.0, 0.06 * sign, 0.0]))
        image = pixels(stage)
        assert share_of(image, first) > 0.05
        assert share_of(image, second) < 0.005


def test_out_is_blue_on_a_left_hand_door_too(plotter, left_model):
    stage = Stage(plotter)
    stage.set_model(left_model)
    stage.set_colour_mode("outboard")
    stage.show_points(left_model.start.points - np.array([0.0, 0.06, 0.0]))
    image = pixels(stage)
    assert share_of(image, blue) > 0.05
    assert share_of(image, orange) < 0.005
    stage.close()


def test_folded_metal_wears_its_step_and_takes_it_off_again(stage, model, frame):
    """The crushed step is the darkest, the first has the plain ground; afterwards the metal is as it was."""
    before = pixels(stage)
    work = np.zeros(len(model.structure.triangles))
    skin = model.mesh.surface.triangle_part == model.mesh.surface.part_index("outer_skin")
    rest = model.start.points
    stage.set_colour_mode("folded")
    shots = []
    for most in (0.0, 100.0, 400.0, 2e3, 2e4):
        work[skin] = most
        frame.fold_j_per_m2, frame.replayed = work.copy(), None
        stage.show_points(rest, frame)
        shots.append(pixels(stage))
    # the part of the picture that is skin: what the last step has darkened
    inside = shots[0].sum(axis=2) - shots[-1].sum(axis=2) > 300
    assert inside.mean() > 0.05
    light = [float(shot[inside].mean()) for shot in shots]
    assert all(a - b > 8.0 for a, b in itertools.pairwise(light)), light
    # lines change tone from one pixel to the next; a step without them changes as the light does
    side = inside[:, 1:] & inside[:, :-1]
    edges = [float(np.abs(np.diff(shot.mean(axis=2), axis=1))[side].mean()) for shot in shots]
    assert min(edges[1:4]) > 10.0 * max(edges[0], edges[4])
    stage.set_colour_mode("material")
    stage.show_points(rest)
    np.testing.assert_array_equal(pixels(stage), before)


def test_a_moment_with_no_known_folding_stays_plain_metal(stage, model, frame):
    stage.show_points(model.start.points)
    plain = pixels(stage)
    frame.fold_j_per_m2 = frame.replayed = None
    stage.set_colour_mode("folded")
    stage.show_points(model.start.points, frame)
    stage.show_points(model.start.points)
    np.testing.assert_array_equal(pixels(stage), plain)


def test_a_left_hand_door_is_the_mirror_image(stage, left_model):
    """Pixel for pixel but for the rims of lines, whose rounding has no mirror."""
    right = pixels(stage)
    stage.set_model(left_model)
    stage.view_preset("home")
    left = pixels(stage)[:, ::-1]
    differing = np.abs(right - left).max(axis=2) > 24
    assert differing.mean() < 0.02


@pytest.mark.parametrize("layer", [layer for layer in LAYERS if layer not in SIDE_LAYERS])
def test_a_layer_that_is_off_leaves_no_pixel(stage, layer):
    """With every other layer off, the picture is that of a stage with nothing on it."""
    for other in LAYERS:
        stage.set_layer(other, "off")
    empty = pixels(stage)
    stage.set_layer(layer, "solid")
    stage.view_preset("latch" if layer in ("latch_hinges", "seam") else "home")
    solid = pixels(stage)
    stage.set_layer(layer, "see_through")
    through = pixels(stage)
    stage.set_layer(layer, "off")
    off = pixels(stage)
    stage.view_preset("home")
    np.testing.assert_array_equal(pixels(stage), empty)
    assert (np.abs(solid - off).max(axis=2) > 6).sum() > 20
    if layer != "body":  # a pale body on a pale ground changes less than its edges, which stay
        assert np.abs(through - off).sum() < np.abs(solid - off).sum()


def test_a_parted_seam_is_an_opening_line_of_loose_ends_in_its_own_hue(stage, model):
    for layer in LAYERS:
        stage.set_layer(layer, "solid" if layer == "seam" else "off")
    stage.view_preset("latch")
    frame = moved(model)
    frame.seam_damage = np.zeros_like(frame.seam_damage)
    stage.show_points(frame.points, frame)
    closed = pixels(stage)
    frame.seam_damage = np.ones_like(frame.seam_damage)
    stage.show_points(frame.points, frame)
    parted = pixels(stage)
    stage.set_layer("seam", "off")
    nothing = pixels(stage)

    def purple(image):
        r, g, b = (image[..., i].astype(int) for i in range(3))
        return float(((np.abs(image - nothing).max(axis=2) > 6) & (r > g + 25) & (b > g + 15)).mean())

    assert purple(closed) == 0.0 < 5e-4 < purple(parted)
    drawn = [(np.abs(image - nothing).max(axis=2) > 6).mean() for image in (closed, parted)]
    assert drawn[1] < 0.8 * drawn[0]  # nothing is drawn across the gap any more


def test_the_arrow_before_the_push_is_blue_out_and_orange_in(stage, model):
    before = pixels(stage)
    for tilt, hue, other in ((0.9, blue, orange), (-0.9, orange, blue)):
        stage.show_aim(aim_at(model, tilt))
        image = pixels(stage)
        assert share_of(image, hue) > 3e-4
        assert share_of(image, other) == 0.0
    stage.show_aim(None)
    np.testing.assert_array_equal(pixels(stage), before)


def bodies(drawn):
    """Return of how many unconnected pieces a drawn solid consists, counted by VTK."""
    return pyvista.wrap(drawn.actor.GetMapper().GetInput()).split_bodies().n_blocks


def test_the_arrow_of_a_guess_is_broken_and_one_sees_through_it(stage, model):
    guess = aim_at(model, 0.9)
    stage.set_words(arrow=arrow_words, length=str)
    stage.show_aim(guess)
    broken = stage.cast["share"]
    assert broken.actor.GetProperty().GetOpacity() < 1.0
    assert stage.notes._way._inside.GetInput() == "outward (first guess)"
    pieces = bodies(broken)
    felt = dataclasses.replace(guess, basis="touch")
    stage.show_aim(felt)
    whole = stage.cast["share"]
    assert whole.actor.GetProperty().GetOpacity() == 1.0
    assert stage.notes._way._inside.GetInput() == "outward"
    assert bodies(whole) == 1 < pieces


def test_a_panel_that_comes_in_behind_the_lip_has_an_arrow_of_its_own(stage, model):
    stage.set_words(arrow=arrow_words, length=str)
    felt = dataclasses.replace(aim_at(model, 0.9), basis="touch")
    touch = Touch(0.0035, 6.1e3, np.array([0.0, 0.02, 0.0]), inner_m=-0.0044, room_m=-0.0017)
    stage.show_aim(dataclasses.replace(felt, touch=touch))
    assert "share" in stage.cast and "behind" in stage.cast
    assert stage.notes._way._inside.GetInput() == "lip outward, panel in"
    stage.show_aim(dataclasses.replace(felt, touch=dataclasses.replace(touch, inner_m=0.001)))
    assert "share" in stage.cast and "behind" not in stage.cast


def test_before_anything_is_known_there_is_no_arrow_and_along_the_flange_only_a_word(stage, model):
    stage.show_aim(dataclasses.replace(aim_at(model, 0.9), outward_ratio=0.0, basis="nothing"))
    assert "share" not in stage.cast and "tips" in stage.cast
    assert not stage.notes._way._inside.GetVisibility()
    stage.show_aim(dataclasses.replace(aim_at(model, 0.9), outward_ratio=-0.03))
    assert "share" not in stage.cast
    assert stage.notes._way._inside.GetVisibility()
    assert stage.notes._way._inside.GetInput() == "along the flange"


def test_the_start_outline_is_exactly_the_start_shape(stage, model, frame):
    stage.show_points(frame.points, frame)
    stage.show_start_ghost(True)
    drawn = np.asarray(stage.cast["start"].points)
    sheet = stage.door.skin_sheet
    lines = sheet.drawn_points(model.start.points)[sheet.lines[sheet.always]]
    rims = np.stack((lines[:, :-1], lines[:, 1:]), axis=2).reshape(-1, 3)  # piece by piece
    np.testing.assert_array_equal(drawn, rims.astype(np.float32))
    stage.show_start_ghost(False)
    assert "start" not in stage.cast


def test_the_start_outline_is_drawn_where_the_metal_has_left_it_and_nowhere_else(stage, model):
    stage.show_points(model.start.points)
    plain = pixels(stage)
    stage.show_start_ghost(True)
    np.testing.assert_array_equal(pixels(stage), plain)
    points = model.start.points.copy()
    points[model.start.points[:, 0] > 0.7, 1] += 0.05
    stage.show_points(points)
    stage.show_start_ghost(True)
    start = stage.cast["start"]
    ends = vtk_to_numpy(start.data.GetLines().GetConnectivityArray())
    drawn = np.asarray(start.points)[ends].reshape(-1, 2, 3)
    assert len(drawn) > 20 and (drawn[..., 0].max(axis=1) > 0.64).all()  # less a row


def test_the_outline_of_a_wrecked_cars_start_is_the_car_as_it_was_found(stage, frame):
    sheet = stage.door.skin_sheet
    lines = sheet.drawn_points(frame.points)[sheet.lines[sheet.always]]
    rims = np.stack((lines[:, :-1], lines[:, 1:]), axis=2).reshape(-1, 3)
    stage.show_start_ghost(True)
    built = np.array(stage.cast["start"].points)
    stage.show_start_ghost(True, frame.points)
    stage.set_theme("dark")  # said again, it stays
    np.testing.assert_array_equal(np.asarray(stage.cast["start"].points), rims.astype(np.float32))
    stage.show_start_ghost(True)
    np.testing.assert_array_equal(np.asarray(stage.cast["start"].points), built)
    assert np.abs(built - rims).max() > 0.02


def test_the_clearance_line_runs_between_its_two_points(stage, frame):
    stage.show_clearance(frame.clearance)
    points = np.asarray(stage.cast["clearance"].points, dtype=float)
    for end in (frame.clearance.metal_point, frame.clearance.body_point):
        assert np.linalg.norm(points - end, axis=1).min() < 0.01
    stage.show_clearance(None)
    assert "clearance" not in stage.cast


@pytest.mark.parametrize("theme", THEMES)
def test_a_theme_sets_the_ground_and_keeps_the_metal_apart_from_it(stage, theme):
    stage.set_theme(theme)
    image = pixels(stage)
    corner = image[2, 2] / 255.0
    np.testing.assert_allclose(corner, rgb(THEMES[theme].paper), rtol=0, atol=0.005)
    grey = image.mean(axis=2)
    assert grey.std() > 15.0


@pytest.mark.parametrize("name", SHOTS)
def test_views_keep_up_kept_up_and_show_the_door(stage, name):
    stage.view_preset(name)
    camera = stage.renderer.GetActiveCamera()
    up = np.array(camera.GetViewUp())
    assert abs(up[2]) == 1.0 if name not in ("section", "top") else up[1] == 1.0
    assert pixels(stage).std() > 8.0
    assert (stage.cutting.plane is not None) == (name == "section")


def test_a_view_comes_back_exactly(stage):
    stage.view_preset("latch")
    first = stage.renderer.GetActiveCamera().GetModelViewTransformMatrix().GetData()
    stage.view_preset("top")
    stage.view_preset("latch")
    assert stage.renderer.GetActiveCamera().GetModelViewTransformMatrix().GetData() == first


def test_the_section_shows_nothing_above_the_cut(stage):
    stage.view_preset("section")
    assert {"cut_lines", "cut_sheets", "cut_body"} <= set(stage.cast.things)
    height = stage.cutting.plane.place_m
    assert np.abs(np.asarray(stage.cast["cut_lines"].points)[:, 2] - height).max() < 1e-3
    stage.view_preset("home")
    assert "cut_lines" not in stage.cast


def test_picked_out_nodes_change_tone_and_back(stage, model):
    before = pixels(stage)
    stage.highlight(model.mesh.surface.nodes["belt_outer_lip"])
    assert np.abs(pixels(stage) - before).max() > 20
    stage.highlight(None)
    np.testing.assert_array_equal(pixels(stage), before)


def test_the_ray_meets_what_is_shown(stage):
    start, end = np.array([0.5, 3.0, 0.2]), np.array([0.5, -1.0, 0.2])
    assert stage.first_hit(start, end).part == "outer_skin"
    stage.set_layer("skin", "off")
    assert stage.first_hit(start, end).part == "inner_panel"
    stage.set_layer("skin", "solid")
    stage.show_points(stage.door.rest + np.array([0.0, 0.05, 0.0]))
    hit = stage.first_hit(start, end)
    assert hit.part == "outer_skin" and hit.point[1] > 0.05


def test_a_copy_draws_the_same_picture(stage, model, frame):
    import pyvista

    stage.show_points(frame.points, frame)
    stage.set_colour_mode("seam")
    stage.set_layer("body", "off")
    stage.show_aim(aim_at(model, 0.6))
    stage.show_clearance(frame.clearance)
    stage.show_start_ghost(True)
    stage.view_preset("latch")
    other = Stage(pyvista.Plotter(off_screen=True, window_size=(480, 360), lighting="none"))
    copy_to(stage, other)
    assert np.abs(pixels(stage) - pixels(other)).max() <= 2
    other.close()
    other.plotter.close()


def test_nothing_is_left_after_closing(model):
    import pyvista

    plotter = pyvista.Plotter(off_screen=True, window_size=(200, 150), lighting="none")
    stage = Stage(plotter)
    stage.set_model(model)
    held = [weakref.ref(thing.data) for thing in stage.cast.things.values()]
    held.append(weakref.ref(stage.door))
    stage.close()
    plotter.close()
    del stage, plotter
    gc.collect()
    assert [ref for ref in held if ref() is not None] == []


def test_each_change_asks_for_a_frame_and_draws_none(plotter, model, frame):
    asked, drawn = [], []
    stage = Stage(plotter, lambda: asked.append(1))
    plotter.render_window.AddObserver("StartEvent", lambda *_: drawn.append(1))
    stage.set_model(model)
    stage.show_points(frame.points, frame)
    stage.show_aim(aim_at(model, 0.3))
    stage.set_layer("skin", "see_through")
    stage.set_theme("dark")
    assert len(asked) >= 5
    assert drawn == []
    stage.close()


def test_the_clearance_is_written_in_the_words_given_and_nothing_covers_it(stage, frame):
    stage.set_words(arrow=way_word, length=lambda value_m: f"{value_m / 0.0254:.1f} in")
    stage.show_clearance(frame.clearance)
    label = stage.notes._gap
    assert label._above.GetInput() == "3.1 in to the occupant"  # 80 mm at 25.4 mm to the inch (NIST SP 811)
    for mode in ("see_through", "solid"):
        stage.set_layer("skin", mode)
        assert label._above.GetVisibility() and not label._inside.GetVisibility()
    stage.set_line_scale(2.0)
    assert label._above.GetTextProperty().GetFontSize() == 32
    assert 0.0 < stage.cast["clearance_covered"].actor.GetProperty().GetOpacity() < 1.0
    stage.show_clearance(None)
    assert not label._above.GetVisibility()
    assert "clearance" not in stage.cast and "clearance_covered" not in stage.cast


def test_a_covered_load_path_shows_faintly_through_the_metal(stage, frame):
    stage.show_path(frame)
    assert stage.cast["path_covered"].actor.GetProperty().GetOpacity() < 0.5
    assert stage.cast["path"].actor.GetProperty().GetOpacity() == 1.0
    stage.show_path(None)
    assert "path_covered" not in stage.cast and "path" not in stage.cast


def test_the_arrow_of_the_share_is_for_before_the_push(stage):
    aim = aim_at(stage.door.model, 0.8)
    stage.show_aim(aim, Spread().tool)
    assert "share" in stage.cast
    stage.show_aim(aim, Spread().tool, share=False)
    assert "share" not in stage.cast and "tips" in stage.cast
