"""Torn metal: the drawing opens where the network opened, and closes again when time runs back."""

from __future__ import annotations

import numpy as np
import pytest

from sim.split import split
from sim.tear import Candidate
from tests.ui.scene.conftest import moved, pixels
from ui.scene.door_scene import DoorScene
from ui.scene.seam import make_stitches
from ui.scene.torn import origins, stitches_after

OPEN_M = 0.04


def tear_at(structure, lip, model):
    """Return a tear of the skin from a node of the lip to the node squarely behind it."""
    triangles = structure.triangles
    skin = np.flatnonzero(model.mesh.surface.triangle_part == 0)
    fan = skin[(triangles[skin] == lip).any(axis=1)]
    around = np.setdiff1d(np.unique(triangles[fan]), [lip, *model.mesh.hem_skin])
    away = np.abs(structure.points[around] - structure.points[lip])
    tip = int(around[np.argmin(away[:, 2])])
    cut = 0.5 * (structure.points[lip, 2] + structure.points[tip, 2])
    height = structure.points[triangles[fan]].mean(axis=1)[:, 2]
    side = tuple(int(t) for t in fan[height > cut])
    return Candidate(lip, tip, side, 0.045, 1.0, 1.0)


@pytest.fixture
def torn(model):
    """Return the torn structure, its tear, and a frame in which it gapes."""
    first, last = model.mesh.edges["latch_edge"]
    lip = int(model.mesh.hem_skin[(first + last) // 2])
    tear = tear_at(model.structure, lip, model)
    structure = split(model.structure, tear)
    frame = moved(model, 0.0)
    frame.points = np.array(structure.points)
    frame.points[-1] += [0.0, OPEN_M, 0.03]
    frame.triangles = structure.triangles
    return structure, tear, frame


def test_each_new_node_knows_what_it_was(model, torn):
    structure, tear, _ = torn
    count = len(model.structure.points)
    found = origins(model.structure.triangles, structure.triangles, count)
    np.testing.assert_array_equal(found[:count], np.arange(count))
    assert found[count:].tolist() == [tear.node]


def test_stitches_follow_as_the_mechanics_own_seam_does(model, torn):
    """The distance across every stitch is what the torn structure's bonds say."""
    structure, _, frame = torn
    stitches = stitches_after(make_stitches(model), model.structure.triangles, structure.triangles)
    bonds = structure.bonds
    seam = bonds.of("seam") | bonds.of("weld")
    gap = np.einsum("kj,kji->ki", bonds.coefficients[seam, 0], frame.points[bonds.nodes[seam]])
    skin, inner = stitches.ends(frame.points)
    np.testing.assert_allclose(skin - inner, gap, rtol=0, atol=1e-12)
    assert np.linalg.norm(gap, axis=1).max() > 0.5 * OPEN_M


def test_the_sheet_opens_along_the_tear_and_closes_again(model, torn):
    _, tear, frame = torn
    new = len(model.structure.points)
    door = DoorScene(model)
    rims = int(door.skin_sheet.always.sum())
    before = np.array(door.skin.points)
    door.set_triangles(frame.triangles)
    door.move(frame.points, frame.seam_damage, frame.load)
    assert int(door.skin_sheet.always.sum()) == rims + 2  # both lips of the tear
    assert {tear.node, new} <= set(door.skin_sheet.nodes.tolist())
    place = door.skin_sheet.drawn_points(frame.points)
    np.testing.assert_allclose(door.skin.points, place, rtol=0, atol=1e-6)  # 32-bit
    for node in (tear.node, new):
        assert np.linalg.norm(place - frame.points[node], axis=1).min() < 1e-12
    door.move(model.start.points)
    np.testing.assert_array_equal(door.skin.points, before)


def test_a_torn_state_is_drawn_from_memory_the_second_time(model, torn):
    _, _, frame = torn
    door = DoorScene(model)
    door.set_triangles(frame.triangles)
    sheet = door.skin_sheet
    door.set_triangles(None)
    assert len(door.skin_sheet.source) == len(door.whole_sheet.source)
    door.set_triangles(frame.triangles.copy())
    assert door.skin_sheet is sheet


@pytest.mark.gl
@pytest.mark.parametrize("mode", ["material", "outboard", "seam", "load"])
def test_a_tear_shows_and_goes_when_time_runs_back(stage, model, torn, mode):
    _, _, frame = torn
    stage.set_colour_mode(mode)
    stage.view_preset("latch")
    start = moved(model, 0.0)
    stage.show_points(model.start.points, start)
    whole = pixels(stage)
    stage.show_points(frame.points, frame)
    stage.show_path(frame)
    stage.show_start_ghost(True)
    assert np.abs(pixels(stage) - whole).max() > 60
    stage.show_path(None)
    stage.show_start_ghost(False)
    stage.show_points(model.start.points, start)
    np.testing.assert_array_equal(pixels(stage), whole)
    stage.show_points(
        frame.points
    )  # a torn shape that comes without its frame is drawn as far as it is known
    stage.show_points(model.start.points)
    stage.show_points(model.start.points, start)
    np.testing.assert_array_equal(pixels(stage), whole)
