"""A roof rail that gives is drawn as it moves, and no other rail stands in its place."""

from __future__ import annotations

import msgspec
import numpy as np
import pytest

from sim.door_model import build_model
from sim.plan import Car
from ui.scene.colours import THEMES, ColourMode
from ui.scene.door_scene import DoorScene
from ui.scene.side_scene import SideScene
from ui.scene.surroundings import body_edges, standing

DOOR = Car(lattice_spacing_m=0.09, rail_wall_m=0.0015)


@pytest.mark.parametrize("extent", ["door", "side"])
def test_the_drawn_rail_goes_where_its_nodes_go(extent):
    model = build_model(msgspec.structs.replace(DOOR, extent=extent, lattice_spacing_m=0.08))
    scene = DoorScene(model) if extent == "door" else SideScene(model)
    (metal, lines) = scene.layers["body"]
    before = np.array(metal.points)
    points = model.start.points.copy()
    points[model.rail.nodes] += [0.0, -0.02, 0.05]
    scene.move(points)
    scene.paint(THEMES["light"], ColourMode.OUTBOARD)
    np.testing.assert_allclose(np.array(metal.points) - before, [[0.0, -0.02, 0.05]] * len(before), atol=1e-6)
    assert len(lines.points) == len(before)
    assert ("body", "roof_rail") in [(layer, name) for layer, name, _, _ in scene.sheets()]
    assert any(solid.holds("roof_rail") for layer, solid in scene.solids() if layer == "body")


def test_the_body_that_stands_still_has_no_second_rail():
    model = build_model(DOOR)
    still = standing(model.body, model.rigid)
    assert "roof_rail" not in still.surfaces
    assert "flange" in still.surfaces
    assert len(body_edges(still)) < len(body_edges(model.body))
    sound = build_model(msgspec.structs.replace(DOOR, rail_wall_m=0.0))
    assert set(standing(sound.body, sound.rigid).surfaces) == set(sound.body.surfaces)


def test_spots_that_go_along_with_the_rail_are_not_drawn_as_popped():
    model = build_model(msgspec.structs.replace(DOOR, extent="side", lattice_spacing_m=0.08))
    scene = SideScene(model)
    points = model.start.points.copy()
    points[np.concatenate([model.rail.nodes, np.unique(model.pillar_triangles)])] += [0.0, -0.05, 0.0]
    scene.move(points)
    welds = model.side.pillar.welds
    heads = np.array([name[:4] == "head" for name, spots in welds.items() for _ in spots.points])
    np.testing.assert_array_equal(scene.pillar.popped, ~heads)  # the foot has left what stands still
    points[model.rail.nodes] = model.start.points[model.rail.nodes]
    scene.move(points)
    assert scene.pillar.popped.all()
