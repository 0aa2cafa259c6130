"""The whole side on the stage: everything stands where the mesh puts it, and goes where its nodes go."""

from __future__ import annotations

from types import SimpleNamespace

import numpy as np
import pytest

from meshes.fittings import build_fittings
from sim.plan import Plan, Strip
from sim.surround import Ground
from tests.ui.scene.conftest import pixels
from tests.ui.scene.side_car import side_model
from ui.scene.layers import LAYERS
from ui.scene.pillar_scene import POPPED_M
from ui.scene.setting import Setting
from ui.scene.stage import Stage
from ui.tools_shown import taken_off

pytestmark = pytest.mark.gl

TRIANGLE_LIMIT, ACTOR_LIMIT = 28_000, 45


@pytest.fixture
def stage(plotter):
    made = Stage(plotter)
    made.set_model(side_model())
    yield made
    made.close()


def test_it_stays_within_the_budget_of_a_machine_without_a_graphics_card(stage):
    things = [thing for thing in stage.cast.things.values() if thing.shown]
    assert sum(thing.data.GetNumberOfPolys() for thing in things) <= TRIANGLE_LIMIT
    assert len(things) <= ACTOR_LIMIT


def test_every_sheet_passes_through_the_nodes_of_its_own_part(stage):
    model = stage.door.model
    points = model.start.points + np.array([0.01, 0.02, 0.03])
    stage.show_points(points)
    for part, (layer, name, thing, sheet) in zip(
        ("front", "front", "rear", "rear", "pillar"), stage.door.sheets(), strict=True
    ):
        first = model.first[part]
        count = getattr(model.side, part).surface.node_count
        assert layer in LAYERS and name.startswith((part, "middle"))
        assert first <= sheet.nodes.min() and sheet.nodes.max() < first + count
        drawn = np.asarray(thing.points, dtype=float)
        for node in sheet.nodes[:: max(1, len(sheet.nodes) // 40)]:
            assert np.linalg.norm(drawn - points[node], axis=1).min() < 1e-6  # 32-bit


@pytest.mark.parametrize("layer", LAYERS)
def test_a_layer_that_is_off_leaves_no_pixel(stage, layer):
    stage.view_preset("front")
    if layer != "skin":
        stage.set_layer("skin", "off")  # it covers what lies behind
    whole = pixels(stage)
    stage.set_layer(layer, "off")
    without = pixels(stage)
    for thing in stage._layer_things(layer):
        assert not thing.shown
    assert (whole != without).any()
    stage.set_layer(layer, "solid")
    np.testing.assert_array_equal(pixels(stage), whole)


def test_what_trim_hides_comes_to_light_when_it_is_stripped(stage):
    inside = stage.door.inside
    names = {name for _, solid in inside.solids() for name in solid.names}
    assert "belt_tensioner" not in names and inside.things["restraint"].data.GetNumberOfPolys() == 0
    stage.show_gone(frozenset({"lower pillar trim", "front pane"}))
    names = {name for _, solid in inside.solids() for name in solid.names}
    assert "belt_tensioner" in names and "front_pane" not in names and "rear_pane" in names
    wanted = next(one for one in build_fittings(side_model().side).items if one.name == "belt tensioner")
    drawn = np.asarray(inside.things["restraint"].points, dtype=float)
    np.testing.assert_allclose(drawn.min(axis=0), wanted.surface.points.min(axis=0), atol=1e-6, rtol=0)


def test_spots_are_drawn_as_gone_where_their_flange_has_left(stage):
    model = stage.door.model
    pillar, first = model.side.pillar, model.first["pillar"]
    points = model.start.points.copy()
    points[first + pillar.surface.nodes["foot_outer"], 1] += 3.0 * POPPED_M
    stage.show_points(points)
    popped = stage.door.pillar.popped
    assert popped.sum() == len(pillar.welds["foot_outer"].points)
    stage.show_points(model.start.points)
    assert not stage.door.pillar.popped.any()


def test_what_hangs_on_the_pillar_goes_with_it(stage):
    model = stage.door.model
    front, first = stage.door.front, model.first["pillar"]
    points = model.start.points.copy()
    points[first : first + model.side.pillar.surface.node_count, 1] += 0.10
    before = [part.points(model.start.points)[0] for part in front.hardware_parts]
    now = [part.points(points)[0] for part in front.hardware_parts]
    gone = [float(np.abs(b - a).max()) for a, b in zip(before, now, strict=True)]
    assert gone[0] < 1e-9  # the latch stays on the door
    assert gone[1] == pytest.approx(0.10, abs=1e-9)  # its striker went with the pillar
    assert max(gone[2:]) < 1e-9  # the front door's hinges hang on the front pillar


def test_a_torn_side_moves_is_painted_and_has_its_load_path(stage):
    """A node of the rear door's skin split: every part takes its own rows, and the path finds its cells."""
    model = stage.door.model
    whole = np.asarray(model.structure.triangles)
    start = model.start.points
    skin = stage.door.doors["rear"].skin_sheet
    node = int(skin.nodes[np.argmin(np.linalg.norm(start[skin.nodes] - [1.5, 0.0, 0.3], axis=1))])
    fan = np.flatnonzero((whole == node).any(axis=1))
    torn = whole.copy()
    for row in fan[: len(fan) // 2]:
        torn[row][torn[row] == node] = len(start)
    points = np.vstack((start, start[node] + [0.0, 0.05, 0.0]))
    seam = model.structure.bonds.of("seam") | model.structure.bonds.of("weld")
    frame = SimpleNamespace(
        points=points, triangles=torn, seam_damage=np.zeros(int(seam.sum())), load=np.zeros(len(whole)),
        barrier=None, opening_m=0.02, force_n=3000.0, drive_points=start[node][None], state=None,
        path_pairs=np.array([[node, int(skin.nodes[0])], [int(skin.nodes[0]), int(skin.nodes[5])]]),
        path_flow_n=np.array([2500.0, 2500.0]),
    )  # fmt: skip
    stage.show_points(points, frame)
    stage.show_path(frame)
    stage.set_colour_mode("load")
    pixels(stage)
    assert "raw_edges" in stage.cast and "path" in stage.cast
    assert np.abs(np.asarray(stage.door.doors["rear"].skin.points)[:, 1] - points[-1, 1]).min() < 1e-6
    stage.show_points(start)
    assert "raw_edges" not in stage.cast


def test_a_piece_that_was_cut_out_is_neither_drawn_nor_pointed_at(stage):
    """It is laid 2.5 m outboard: seen square to the side it would hang before the car."""
    door = stage.door
    pillar = next(part for part in door.metal if part.__class__.__name__ == "PillarScene")
    nodes = pillar.sheet.nodes
    points = door.start.copy()
    high = nodes[points[nodes, 2] > points[nodes, 2].mean()]
    points[high, 1] += 2.5 * door.sign
    stage.show_points(points)
    drawn = np.asarray(pillar.metal.points, dtype=float)
    assert np.abs(drawn[:, 1]).max() < 2.0
    assert (drawn[:, 2] < -10.0).sum() >= len(high)  # a node on a sharp edge is drawn twice
    solid = dict(pillar.solids())["pillar"]
    assert np.abs(solid.points[solid.triangles][:, :, 1]).min(axis=1).max() < 2.0
    stage.show_points(door.start)
    assert np.asarray(pillar.metal.points)[:, 2].min() > -10.0


def test_what_the_plan_has_stripped_is_off_at_kept_moments():
    model = SimpleNamespace(**vars(side_model()))
    model.start = SimpleNamespace(kept={})
    plan = Plan(car=model.car, moves=(Strip(what=("glass",)), Strip(what=("trim",))))
    off = [taken_off(model, plan, k, begun=b) for k, b in ((-1, False), (0, False), (0, True), (1, False))]
    assert off[0] == off[1] == frozenset()
    assert off[2] == off[3] and "front pane" in off[2]
    assert "lower pillar trim" in taken_off(model, plan, 1, begun=True) - off[2]


class Names(dict):
    """What a setting brings on, by name."""

    def lines(self, name, segments, _width):
        self[name] = segments

    def admit(self, name, thing):
        self[name] = thing


@pytest.mark.parametrize(
    ("up", "level_m"), [((0.0, 0.0, 1.0), -0.3), ((0.0, 1.0, 0.0), -1.2), ((0.0, -1.0, 0.0), -0.02)]
)
def test_a_car_on_its_side_is_drawn_on_the_ground_it_lies_on_with_an_arrow_that_points_down(up, level_m):
    """It was drawn on its wheels, shadow and all, whichever way it lay."""
    ground = Ground(np.array(up), level_m)
    setting = Setting.__new__(Setting)
    setting.cast, setting.sign, setting.side = Names(), 1.0, side_model().side
    around = SimpleNamespace(ground=ground)
    setting.model = SimpleNamespace(structure=SimpleNamespace(surround=around))
    setting._make_ground()
    on_wheels = up[2] > 0.5
    assert ("shadow" in setting.cast) == on_wheels
    height = setting.cast["grid"] @ ground.normal
    asked = side_model().side.shape.ground_z_m if on_wheels else level_m
    np.testing.assert_allclose(height, asked, rtol=0, atol=1e-12)
    if not on_wheels:
        foot, head = setting.cast["marks"][0]
        np.testing.assert_allclose((head - foot) / np.linalg.norm(head - foot), -ground.normal, atol=1e-12)
