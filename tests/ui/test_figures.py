"""The command that draws a list of figures: twice the same, to the pixel, and a report of what changed."""

from __future__ import annotations

import json
from xml.etree import ElementTree

import pytest
from PySide6.QtGui import QImage

from ui import command

pytestmark = [pytest.mark.gl]
SVG = "{http://www.w3.org/2000/svg}"

PLAN = """schema_version = 1
title = "a short push"
[car]
lattice_spacing_m = 0.09
[[moves]]
move = "spread"
opening_m = 0.01
[moves.door]
at = "edge"
depth_m = 0.005
"""
LIST = """schema_version = 1
styles = ["colour", "grey", "before"]
[[states]]
name = "end"
plan = "push"
[[views]]
name = "latch"
camera = "latch"
colours = "seam"
[[sizes]]
name = "small"
width_px = 320
height_px = 240
"""


@pytest.fixture(scope="module")
def folder(qapp, tmp_path_factory):
    folder = tmp_path_factory.mktemp("figures")
    (folder / "push.toml").write_text(PLAN, encoding="utf-8")
    (folder / "list.toml").write_text(LIST, encoding="utf-8")
    assert command.main(["figures", str(folder / "list.toml"), "--out", str(folder / "one")]) == 0
    return folder


def test_each_picture_has_its_caption_and_its_words(folder):
    names = [f"end--latch--small--{style}" for style in ("colour", "grey", "before")]
    for name in names:
        image = QImage(str(folder / "one" / f"{name}.png"))
        assert (image.width(), image.height()) == (320, 240)
        assert "not a real car" in (folder / "one" / f"{name}.caption.txt").read_text(encoding="utf-8")
        assert "not a real car" in image.text("Description")
        assert "Spread at the latch edge" in (folder / "one" / f"{name}.alt.txt").read_text(encoding="utf-8")
    grey = QImage(str(folder / "one" / f"{names[1]}.png"))
    assert grey.allGray()
    assert not QImage(str(folder / "one" / f"{names[0]}.png")).allGray()


def test_a_vector_file_has_its_words_as_type(folder):
    listed = (folder / "list.toml").read_text(encoding="utf-8")
    listed = listed.replace('"colour", "grey", "before"]', '"colour"]\nformats = ["svg"]')
    listed = listed.replace('camera = "latch"', 'camera = "latch"\nlabels = true\ntheme = "dark"')
    (folder / "vector.toml").write_text(listed, encoding="utf-8")
    out = folder / "two"
    assert command.main(["figures", str(folder / "vector.toml"), "--out", str(out)]) == 0
    assert not list(out.glob("*.png"))
    tree = ElementTree.parse(out / "end--latch--small--colour.svg")
    words = {found.text.strip() for found in tree.iter(f"{SVG}text")}
    assert {
        "outer skin",
        "hem",
    } <= words and "Teaching model - not a real car - local procedure first" in words
    assert "bar" not in words  # the skin hides it
    assert "Spread at the latch edge" in tree.find(f"{SVG}desc").text
    assert "not a real car" in tree.find(f"{SVG}title").text


def test_a_second_run_is_equal_to_the_pixel_and_a_changed_verdict_is_told(folder, capsys):
    words = ["figures", str(folder / "list.toml"), "--out", str(folder / "one")]
    assert command.main(words) == 0
    assert "Nothing has changed" in capsys.readouterr().out
    index = folder / "one" / "figures.json"
    raw = json.loads(index.read_text(encoding="utf-8"))
    raw[0]["verdict"] = "latch free; gained"
    index.write_text(json.dumps(raw), encoding="utf-8")
    assert command.main(words) == 0
    assert "VERDICT CHANGED: push: latch free; gained, now" in capsys.readouterr().out
