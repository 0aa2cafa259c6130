"""Whole pictures, drawn by software: the composed page, and three small text-free scenes against stored ones.

Scenes are compared by their worst block of 16 pixels, not by the mean over all: a lost stitch must not
drown in a large calm background. Store new ones with HEMLINE_STORE_IMAGES=1 after looking at them.
"""

from __future__ import annotations

import os
from pathlib import Path

import numpy as np
import pytest
from PIL import Image

from tests.ui.scene.conftest import aim_at, moved
from ui.scene import picture as figures
from ui.scene.colours import THEMES, rgb
from ui.scene.layers import LAYERS
from ui.scene.picture import LIMITS, PictureWords, picture, save_png, screenshot
from ui.scene.stage import Stage

pytestmark = pytest.mark.gl

STORE = Path(__file__).parent / "stored"
BLOCK = 16
WORST_BLOCK = 14.0
"""Mean difference a block may have, of 255; rounding between software renderers gives up to about 5."""

WORDS = PictureWords(
    sentence="The outer skin came away over 90 mm; the latch carried a third of what it can hold.",
    title="Edge attack", caption="An invented door.", version="model 1",
)  # fmt: skip


def array_of(image):
    """Return a Qt image as numbers, shape (height, width, 3)."""
    plain = image.convertToFormat(image.Format.Format_RGB888)
    rows = np.frombuffer(plain.constBits(), dtype=np.uint8).reshape(plain.height(), plain.bytesPerLine())
    return rows[:, : 3 * plain.width()].reshape(plain.height(), plain.width(), 3).astype(int)


def worst_block(first, second):
    """Return the largest mean difference over blocks of two pictures of equal size."""
    away = np.abs(first.astype(float) - second.astype(float)).mean(axis=2)
    high, wide = (size // BLOCK * BLOCK for size in away.shape)
    blocks = away[:high, :wide].reshape(high // BLOCK, BLOCK, wide // BLOCK, BLOCK).mean(axis=(1, 3))
    return float(blocks.max())


def test_the_worst_block_sees_what_the_mean_hides():
    first = np.zeros((160, 160, 3))
    second = first.copy()
    second[40:48, 40:48] = 255.0
    assert np.abs(first - second).mean() < 1.0
    assert worst_block(first, second) > 60.0


def draw(model, prepare):
    """Return a small picture of a scene, shape (240, 320, 3)."""
    import pyvista

    plotter = pyvista.Plotter(off_screen=True, window_size=(640, 480), lighting="none")
    stage = Stage(plotter)
    stage.set_line_scale(2.0)
    stage.set_model(model)
    prepare(stage)
    image = np.asarray(figures.grab(plotter), dtype=float)
    stage.close()
    plotter.close()
    return image.reshape(240, 2, 320, 2, 3).mean(axis=(1, 3))


def scene_latch(stage):
    frame = moved(stage.door.model)
    stage.show_points(frame.points, frame)
    stage.view_preset("latch")


def scene_outboard(stage):
    scene_latch(stage)
    stage.set_theme("projector")
    stage.set_colour_mode("outboard")
    stage.view_preset("home")


def scene_inside(stage):
    scene_latch(stage)
    stage.set_theme("dark")
    stage.set_layer("skin", "off")
    stage.view_preset("home")


@pytest.mark.parametrize(
    "prepare", [scene_latch, scene_outboard, scene_inside], ids=["latch", "outboard", "inside"]
)
def test_the_scene_is_the_stored_one(model, prepare, request):
    name = request.node.callspec.id
    file = STORE / f"{name}.png"
    found = draw(model, prepare)
    if os.environ.get("HEMLINE_STORE_IMAGES"):
        STORE.mkdir(exist_ok=True)
        Image.fromarray(found.round().astype(np.uint8)).save(file, optimize=True)
    with Image.open(file) as stored:
        assert worst_block(found, np.asarray(stored.convert("RGB"))) < WORST_BLOCK


@pytest.fixture
def page(model, frame):
    return picture(model, model.start.points, frame, WORDS, (800, 500))


@pytest.mark.parametrize(("size", "scale"), [((800, 500), 1.0), ((640, 400), 2.5)])
def test_a_picture_has_its_exact_size(model, frame, size, scale):
    image = picture(model, model.start.points, frame, WORDS, size, scale=scale)
    assert (image.width(), image.height()) == (round(size[0] * scale), round(size[1] * scale))


def test_the_halves_are_from_the_same_place_and_differ_where_metal_moved(page):
    image = array_of(page)
    half = image.shape[1] // 2
    left, right = image[90:330, 20 : half - 20], image[90:330, half + 8 : 2 * half - 32]
    width = min(left.shape[1], right.shape[1])
    away = np.abs(left[:, :width] - right[:, :width]).max(axis=2)
    assert (away > 40).mean() > 0.01  # the metal
    assert (away[:20] <= 4).mean() > 0.98  # the sky


@pytest.mark.parametrize("words", ["sentence", "title", "caption", "version"])
def test_every_word_leaves_ink(model, frame, page, words):
    import dataclasses

    without = picture(model, model.start.points, frame, dataclasses.replace(WORDS, **{words: ""}), (800, 500))
    assert np.abs(array_of(without) - array_of(page)).max() > 60


def test_the_limits_line_is_always_there_and_in_the_description(model, frame, page):
    assert LIMITS in page.text("Description")
    assert WORDS.sentence in page.text("Description")
    bare = picture(model, model.start.points, frame, PictureWords(), (800, 500))
    foot = array_of(bare)[-45:-12, 16:420]
    assert (foot.mean(axis=2) < 140).sum() > 150
    assert "local procedure first" in LIMITS


def test_colours_bring_their_bar(model, frame, page):
    coloured = array_of(picture(model, model.start.points, frame, WORDS, (800, 500), mode="outboard"))
    foot = coloured[-70:, 400:]
    assert ((foot[..., 2] - foot[..., 0]) > 60).sum() > 100  # blue, out
    assert ((foot[..., 0] - foot[..., 2]) > 60).sum() > 100  # orange, in
    plain = array_of(page)[-70:, 400:]
    assert (np.abs(plain[..., 2] - plain[..., 0]) > 60).sum() == 0


@pytest.mark.parametrize("theme", THEMES)
def test_the_page_has_the_themes_paper(model, frame, theme):
    image = array_of(picture(model, model.start.points, frame, WORDS, (480, 300), theme=theme))
    np.testing.assert_allclose(image[1, 1] / 255.0, rgb(THEMES[theme].paper), rtol=0, atol=0.005)


def test_lines_keep_their_share_of_a_larger_picture(model):
    """Ink of feature lines per area stays the same when a picture is drawn three times as large."""
    import pyvista

    ink = []
    for factor in (1, 3):
        size = (320 * factor, 240 * factor)
        plotter = pyvista.Plotter(off_screen=True, window_size=size, lighting="none")
        stage = Stage(plotter)
        stage.set_line_scale(float(factor))
        stage.set_model(model)
        for layer in LAYERS:
            stage.set_layer(layer, "solid" if layer == "body" else "off")
        image = np.asarray(figures.grab(plotter), dtype=int)
        stage.cast["body_edges"].show(False)
        stage.cast["car"].show(False)
        without = np.asarray(figures.grab(plotter), dtype=int)
        ink.append(np.abs(image - without).sum() / image.size)
        stage.close()
        plotter.close()
    assert ink[1] == pytest.approx(ink[0], rel=0.35)  # whole pixels at scale 1


def test_a_screenshot_shows_what_the_stage_shows(model, frame):
    import pyvista

    plotter = pyvista.Plotter(off_screen=True, window_size=(400, 300), lighting="none")
    stage = Stage(plotter)
    stage.set_model(model)
    stage.show_points(frame.points, frame)
    stage.show_aim(aim_at(model, 0.8))
    stage.view_preset("latch")
    image = array_of(screenshot(stage, (640, 480), "A caption"))
    assert image.shape == (480, 640, 3)
    blue = (image[..., 2] > image[..., 0] + 40) & (image[..., 2] > image[..., 1])
    assert blue.sum() > 50
    stage.close()
    plotter.close()


def test_a_picture_is_written_with_its_description(page, tmp_path):
    file = tmp_path / "p.png"
    save_png(page, file)
    with Image.open(file) as written:
        assert written.size == (800, 500)
        assert LIMITS in written.text["Description"]
    with pytest.raises(OSError, match="No such file"):
        save_png(page, tmp_path / "missing" / "p.png")


def test_grey_print_keeps_the_sign_by_arrows(model):
    """Without hue, out and in differ in the picture by more than their lightness does."""

    def grey(sign):
        return draw(model, lambda s: (s.set_colour_mode("outboard"),
                                      s.show_points(s.door.rest + np.array([0.0, 0.06 * sign, 0.0])),
                                      s.view_preset("hinge"))).mean(axis=2)  # fmt: skip

    assert np.abs(grey(1.0) - grey(-1.0)).max() > 80.0
