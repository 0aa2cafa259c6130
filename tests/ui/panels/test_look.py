"""Words stand out from their ground in both themes: contrast as WCAG 2.2 measures it (criterion 1.4.3)."""

import re
from importlib import resources
from xml.etree import ElementTree

import pytest
from PySide6.QtCore import QSize

from ui.main_window import first_size
from ui.panels.look import DARK, LIGHT, SIZES, Look


def luminance(colour):
    """Relative luminance as WCAG 2.2 defines it."""
    parts = [int(colour[i : i + 2], 16) / 255 for i in (1, 3, 5)]
    red, green, blue = (c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in parts)
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def contrast(one, other):
    lighter, darker = sorted((luminance(one), luminance(other)), reverse=True)
    return (lighter + 0.05) / (darker + 0.05)


@pytest.mark.parametrize("tones", [LIGHT, DARK], ids=["light", "dark"])
@pytest.mark.parametrize(
    ("words", "ground"),
    [("ink", "paper"), ("ink", "ground"), ("ink", "raised"), ("ink", "warn"), ("quiet", "paper"),
     ("quiet", "raised"), ("on_strong", "strong")],
)  # fmt: skip
def test_words_have_a_contrast_of_at_least_four_and_a_half(tones, words, ground):
    assert contrast(getattr(tones, words), getattr(tones, ground)) >= 4.5


def test_there_are_four_sizes_of_type_and_they_scale():
    assert sorted(SIZES.values()) == [14, 17, 22, 34]
    assert [Look(scale=2.0).px(name) for name in SIZES] == [28, 34, 44, 68]


def test_every_icon_is_a_line_drawing_of_one_stroke_width(qtbot):
    icons = [
        item for item in resources.files("assets").joinpath("icons").iterdir() if item.name.endswith(".svg")
    ]
    assert len(icons) >= 20
    for item in icons:
        words = item.read_text(encoding="utf-8")
        root = ElementTree.fromstring(words)
        assert root.get("viewBox") == "0 0 24 24", item.name
        assert root.get("stroke-width") == "1.6", item.name
        assert root.get("stroke") == "currentColor", item.name
        assert not re.search(r"#[0-9a-fA-F]{3}", words), item.name
        icon = Look().icon(item.name.removesuffix(".svg"))
        image = icon.pixmap(48, 48).toImage()
        drawn = sum(image.pixelColor(x, y).alpha() > 128 for x in range(48) for y in range(48))
        assert 30 < drawn < 1200, item.name


def test_the_sheet_names_no_colour_that_tells_good_from_bad():
    for dark in (False, True):
        for colour in re.findall(r"#[0-9a-f]{6}", Look(dark=dark).sheet()):
            red, green, blue = (int(colour[i : i + 2], 16) for i in (1, 3, 5))
            assert max(red, green, blue) - min(red, green, blue) <= 48, colour


@pytest.mark.parametrize(
    ("screen", "size"),
    [((1920, 1080), (1632, 918)), ((1280, 720), (1280, 720)), ((1024, 768), (1024, 720)),
     ((3840, 2160), (3264, 1836))],
)  # fmt: skip
def test_the_first_window_takes_most_of_the_screen(screen, size):
    assert first_size(QSize(*screen)) == QSize(*size)
