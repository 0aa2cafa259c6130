"""The outcome map's band on the door: where its cells lie; it follows the metal and goes without trace."""

from __future__ import annotations

import numpy as np
import pytest

from sim.map_grid import grid_of
from tests.ui.scene.conftest import moved, pixels
from ui.app import prepare_application
from ui.map_chart import Chart, Tones, mark_of
from ui.map_pictures import band_pictures, beside_band
from ui.map_side import _array
from ui.scene.colours import rgb
from ui.scene.map_band import COLUMN_M, _centres
from ui.scene.stage import Stage

pytestmark = pytest.mark.gl

TONES = Tones("#FFFFFF", "#000000", "#303030", "#6e6e6e")


class Ink:
    paper, ink, quiet, hairline = "#FFFFFF", "#000000", "#303030", "#6e6e6e"


@pytest.fixture(autouse=True)
def type_is_there():
    """Words are painted by Qt, which needs its machinery for type."""
    prepare_application()


@pytest.fixture
def stage(plotter, model):
    made = Stage(plotter)
    made.set_model(model)
    made.view_preset("square")
    yield made
    made.close()


def banded(stage, model, word="seam parting"):
    grid = grid_of(model.mesh.shape)
    chart = Chart([word] * len(grid.cells))
    stage.band.set_out(model.panels()["front"], grid, model.start.points, model.outboard_sign)
    images = band_pictures(chart, grid, Ink, model.outboard_sign > 0.0)
    stage.band.paper({edge: _array(image) for edge, image in images.items()})
    return grid


def share_of(picture, colour):
    return float(
        (np.abs(picture.astype(int) - np.rint(255 * rgb(colour)).astype(int)).max(axis=2) < 12).mean()
    )


def test_the_band_shows_its_hue_and_goes_without_trace(stage, model):
    before = pixels(stage)
    banded(stage, model)
    shown = pixels(stage)
    assert (
        share_of(shown, mark_of("seam parting").colour)
        > share_of(before, mark_of("seam parting").colour) + 0.01
    )
    stage.band.hide()
    np.testing.assert_array_equal(pixels(stage), before)


@pytest.mark.parametrize("which", ["model", "left_model"])
def test_every_cell_is_found_under_its_own_middle_on_metal_that_has_moved(which, request, plotter):
    model = request.getfixturevalue(which)
    made = Stage(plotter)
    made.set_model(model)
    grid = banded(made, model)
    frame = moved(model, 0.03)
    made.show_points(frame.points, frame)
    nodes, weights = _centres(model.mesh, grid)
    middles = np.einsum("ks,ksi->ki", weights, frame.points[nodes])
    assert [made.band.cell_at(middle) for middle in middles] == list(range(len(grid.cells)))
    assert made.band.cell_at(model.start.points[model.structure.names["skin_mid"]].mean(axis=0)) is None
    made.close()


def test_the_nearer_to_the_edge_the_shallower(stage, model):
    grid = banded(stage, model)
    nodes, weights = _centres(model.mesh, grid)
    middles = np.einsum("ks,ksi->ki", weights, model.start.points[nodes])
    for edge, way in (("latch_edge", -1.0), ("hinge_edge", 1.0)):
        row = middles[[grid.index(edge, 5, column) for column in range(len(grid.depth_m))]]
        assert np.diff(way * row[:, 0]) == pytest.approx(
            np.full(4, COLUMN_M), abs=0.002
        )  # the skin bulges a little


def test_pictures_read_from_outside_on_either_side(model):
    """The lip of the latch edge is at the left of a right-hand door and at the right of a left-hand one."""
    grid = grid_of(model.mesh.shape)
    words = ["stalled"] * len(grid.cells)
    for row in range(len(grid.along_m)):
        words[grid.index("latch_edge", row, 0)] = "seam parting"
    for right_side, column in ((True, 20), (False, -20)):
        image = _array(band_pictures(Chart(words), grid, Ink, right_side)["latch_edge"])
        seam = np.rint(255 * rgb(mark_of("seam parting").colour))
        assert (np.abs(image[:, column] - seam).max(axis=1) < 12).mean() > 0.7


def test_a_word_that_finds_no_room_on_the_band_stands_beside_it(stage, model):
    grid = banded(stage, model)
    words = ["seam parting"] * len(grid.cells)
    for row in range(4, 8):
        words[grid.index("latch_edge", row, 4)] = "latch free"
    found = beside_band(Chart(words), grid, right_side=True)
    assert [(edge, word) for edge, _, word in found] == [("latch_edge", "latch free")]
    assert found[0][1] == pytest.approx(0.36, abs=0.01)  # the middle of those cells
    assert beside_band(Chart(words, words), grid, right_side=True) == []
    stage.band.name(found, stage.theme, 1.0)
    assert [label.words for label in stage.band._labels if label.words] == ["latch free"]
    stage.band.hide()
    assert not any(label.words for label in stage.band._labels)


def test_words_of_both_edges_do_not_lie_over_one_another(stage, model):
    """Where the door is seen narrow, words from both edges meet half-way: one goes below the other."""
    banded(stage, model)
    words = [
        ("latch_edge", 0.36, "latch free"),
        ("hinge_edge", 0.36, "hinge free"),
        ("latch_edge", 0.34, "stalled"),
    ]
    stage.band.name(words, stage.theme, 3.0)
    boxes = [label.box() for label in stage.band._labels if label.words]
    assert len(boxes) == 3
    for k, a in enumerate(boxes):
        for b in boxes[k + 1 :]:
            assert min(a[2], b[2]) <= max(a[0], b[0]) or min(a[3], b[3]) <= max(a[1], b[1])
