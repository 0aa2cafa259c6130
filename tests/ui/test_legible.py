"""What the back row sees: contrast and size of words measured in screenshots of the window, theme by theme.

Source
------
[wcag-2.2] W3C, Web Content Accessibility Guidelines 2.2: relative luminance, contrast ratio; 1.4.3 asks 4.5:1
of text, 1.4.11 asks 3:1 of what else has to be seen. Text of 24 px at 1080 lines: common practice, no source.
"""

from __future__ import annotations

import dataclasses

import numpy as np
import pytest
from PySide6.QtCore import QPoint
from PySide6.QtWidgets import QLabel, QPushButton

from ui.main_window import MainWindow
from ui.panels.look import DARK, LIGHT, PROJECTOR, SIZES, Look
from ui.state.view_options import TEXT_RATIOS, ViewOptions

TEXT, SEEN = 4.5, 3.0
LOOKS = {
    "light": Look(),
    "dark": Look(dark=True),
    "projector": Look(scale=24.0 / 14.0, projector=True),
}


def luminance(pixels):
    """Return relative luminance [wcag-2.2] of pixels (..., 3) from 0 to 255."""
    c = np.asarray(pixels, dtype=float) / 255.0
    linear = np.where(c <= 0.04045, c / 12.92, ((c + 0.055) / 1.055) ** 2.4)
    return linear @ [0.2126, 0.7152, 0.0722]


def contrast_of(pixels):
    """Return the contrast of words with their ground: the commonest tone and the one furthest from it."""
    light = luminance(pixels).ravel()
    values, counts = np.unique(np.round(light, 3), return_counts=True)
    ground = values[np.argmax(counts)]
    ink = values[np.argmax(np.abs(np.log((values + 0.05) / (ground + 0.05))))]
    high, low = max(ground, ink), min(ground, ink)
    return (high + 0.05) / (low + 0.05)


def shot_of(window):
    """Return a screenshot of a window, shape (height, width, 3)."""
    image = window.grab().toImage()
    image = image.convertToFormat(image.Format.Format_RGB888)
    rows = np.frombuffer(image.constBits(), dtype=np.uint8).reshape(image.height(), image.bytesPerLine())
    return rows[:, : 3 * image.width()].reshape(image.height(), image.width(), 3).copy()


def part_of(shot, window, widget):
    """Return a widget's place in a screenshot of its window."""
    at = widget.mapTo(window, QPoint(0, 0))
    return shot[max(at.y(), 0) : at.y() + widget.height(), max(at.x(), 0) : at.x() + widget.width()]


@pytest.fixture(params=list(LOOKS))
def window(request, qtbot):
    made = MainWindow()
    qtbot.addWidget(made)
    made.resize(1920, 1080)
    made.set_look(LOOKS[request.param])
    made.show_layout(ViewOptions(projector=request.param == "projector"))
    made.readout.show_words("Hem: hem lip")
    made.show()
    qtbot.waitExposed(made)
    return made


def words_of(window):
    """Return the labels and buttons that show words now."""
    found = window.findChildren(QLabel) + window.findChildren(QPushButton)
    return [w for w in found if w.isVisible() and w.isEnabled() and w.text().strip() and w.height() > 8]


def test_every_word_on_the_screen_stands_out_from_its_ground(window):
    low, shot = {}, shot_of(window)
    words = words_of(window)
    assert len(words) > 12
    for widget in words:
        found = contrast_of(part_of(shot, window, widget))
        if found < TEXT:
            low[widget.text()] = round(float(found), 2)
    assert not low


@pytest.mark.parametrize("window", ["projector"], indirect=True)
def test_no_word_is_smaller_than_24_pixels_on_the_projector(window):
    small = {w.text(): w.fontInfo().pixelSize() for w in words_of(window) if w.fontInfo().pixelSize() < 24}
    assert not small


def test_the_projectors_hairlines_are_seen_and_its_ground_is_white():
    def contrast(one, other):
        pair = [luminance([int(word[i : i + 2], 16) for i in (1, 3, 5)]) for word in (one, other)]
        return (max(pair) + 0.05) / (min(pair) + 0.05)

    assert PROJECTOR.paper == PROJECTOR.ground == "#ffffff"
    assert contrast(PROJECTOR.hairline, PROJECTOR.paper) >= SEEN
    for tones in (LIGHT, DARK, PROJECTOR):
        for words, ground in (("ink", "paper"), ("quiet", "paper"), ("quiet", "raised"), ("ink", "warn")):
            assert contrast(getattr(tones, words), getattr(tones, ground)) >= TEXT
    assert "2px solid" in Look(projector=True).sheet() and "3px solid" in Look(projector=True).sheet()


def test_the_measure_of_contrast_sees_a_grey_that_is_too_faint():
    picture = np.full((20, 60, 3), 255, dtype=np.uint8)
    picture[5:9, 10:30] = 0x76  # 4.54:1 on white
    assert contrast_of(picture) == pytest.approx(4.54, abs=0.02)
    picture[5:9, 10:30] = 0x80
    assert contrast_of(picture) < TEXT


def test_type_grows_to_twice_its_size_and_no_further():
    options = ViewOptions()
    sizes = []
    for _ in range(len(TEXT_RATIOS) + 2):
        sizes.append(options.text_scale(1920))
        options = options.with_text(1)
    assert sizes == [1.0, 1.25, 1.5, 1.75, 2.0, 2.0, 2.0]
    assert ViewOptions().with_text(-1) == ViewOptions()
    wall = dataclasses.replace(ViewOptions(), projector=True)
    assert wall.text_scale(1920) * min(SIZES.values()) >= 24.0
    assert dataclasses.replace(wall, text_ratio=2.0).text_scale(1920) == 2.0


@pytest.mark.parametrize("width", [1024, 1280])
def test_at_twice_its_size_the_limits_line_is_whole_and_nothing_is_cut_off(qtbot, width):
    made = MainWindow()
    qtbot.addWidget(made)
    made.resize(width, 768)
    made.set_look(Look(scale=2.0))
    made.show_layout(ViewOptions(text_ratio=2.0))
    made.solver.say("1293 nodes, 58 steps, CHOLMOD, 86.5 s", "1293 nodes, 58 steps", "1293 nodes")
    made.show()
    qtbot.waitExposed(made)
    limits = next(
        w for w in made.findChildren(QLabel) if "local procedure first" in w.text() and w.isVisible()
    )
    assert limits.width() >= limits.sizeHint().width()
    assert limits.mapTo(made, QPoint(limits.width(), 0)).x() <= made.width()
    reading = made.reading.sentence
    assert reading.mapTo(made, QPoint(reading.width(), 0)).x() <= made.width()
