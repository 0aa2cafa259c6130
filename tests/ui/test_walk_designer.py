"""A curriculum designer's matching pictures by mouse and keys: view, theme, section, caption, source, saved.

Sources
-------
[png-2025]: keywords of the words inside a picture (Title, Author, Description, Copyright, Software, Comment).
Else none: what was asked for is what lies in the folder.
"""

from __future__ import annotations

import shutil
import tomllib
from pathlib import Path

import numpy as np
import pytest

pytest.importorskip("PySide6")
if shutil.which("xdotool") is None:
    pytest.skip("xdotool is not installed", allow_module_level=True)

from PIL import Image

from sim.planfile import load_plan, plan_sha256
from sim.results import MODEL_VERSION
from tests.ui.walking import at_the_window
from ui.app import App, prepare_application
from ui.panels.figures import FiguresSheet

PLAN = load_plan(Path(__file__).resolve().parents[2] / "assets" / "plans" / "first-bite-lip.toml")
"""What the moment is of: the lesson's own plan, with its author and licence."""

pytestmark = [pytest.mark.gl, pytest.mark.slow, pytest.mark.timeout(300)]


@pytest.fixture(scope="session")
def qapp():
    return prepare_application()


@pytest.fixture
def hand(qapp, qtbot, tmp_path):
    """Return a hand at a window with the caution read."""
    with at_the_window(App(folder=tmp_path / "settings"), qtbot) as found:
        found.push(found.app.window.caution.done)
        yield found


def opens_a_ready_lesson_s_moment(hand):
    """A lesson's kept moment is a picture's moment: nothing has to be run."""
    hand.menu("Teach", "Ready lessons", "First bite: edge against bend")
    for _ in range(4):
        hand.push(hand.button("Next step"))
    hand.look("moment")
    assert "of seam parted" in hand.read(hand.app.acting.lessons.panel)
    hand.qtbot.waitUntil(lambda: hand.app.session.timeline.at_end, timeout=30_000)


def looks_from_where_it_tells(hand):
    """View and ground by menu; the view from above brings its plane, which goes on along its slider."""
    app = hand.app
    hand.menu("View", "View: section from above")
    hand.menu("View", "Dark theme")
    hand.look("dark")
    assert app.session.view.options.theme == "dark"
    assert app.see.seeing.now.cut is not None
    before = app.see.seeing.now.cut.place_m
    place = app.window.see.place
    hand.sees(place)
    hand.click(place, place.rect().center())
    hand.settle()
    hand.look("section")
    assert app.see.seeing.now.cut.place_m != before


def saves_one_picture(hand, path):
    """The stage as it is, with a caption; words and limits stand on it and in it."""
    hand.menu("File", "Save a picture of the stage\u2026")
    sheet = hand.app.filing._pictures
    hand.to(sheet)
    hand.pick(sheet.preset, "1280 \u00d7 720")
    hand.click(sheet.caption)
    hand.type("Seam off round the latch")
    hand.look("picture")
    hand.push_and_answer(hand.button("Save the picture", sheet), "Save the picture", path)
    hand.qtbot.waitUntil(path.exists, timeout=60_000)
    hand.to(hand.app.window)
    hand.look("saved")
    assert path.name in hand.read(hand.app.window.notice)
    with Image.open(path) as picture:
        assert picture.size == (1280, 720)
        assert picture.text["Title"] == "Seam off round the latch"
        assert "not a real car" in picture.text["Description"]
        assert "came away" in picture.text["Description"]
        assert picture.text["Author"] == PLAN.author
        assert picture.text["Copyright"] == PLAN.licence
        assert picture.text["Software"] == f"Hemline, model version {MODEL_VERSION}"
        assert picture.text["Comment"] == f"Plan {plan_sha256(PLAN)[:12]}, model version {MODEL_VERSION}."
        shades = np.asarray(picture.convert("L"))
        assert np.median(shades) < 90  # a dark ground
        assert len(np.unique(shades)) > 40


def makes_matching_pictures(hand, folder):
    """One moment, two views that match but for their ground; a caption and a source to each."""
    hand.menu("File", "Matching pictures from a list\u2026")
    sheet = next(w for w in hand.app.window.findChildren(FiguresSheet) if w.isVisible())
    hand.to(sheet)
    hand.look("figures")
    assert "Take a moment first" in sheet.told.text()
    hand.push(hand.button("Take the moment shown", sheet))
    hand.pick(sheet.camera, "Close on the latch")
    hand.push(sheet.names)
    hand.push(hand.button("Add this view", sheet))
    hand.push(sheet.dark)
    hand.push(hand.button("Add this view", sheet))
    hand.push(sheet._boxes["sizes"]["small"])
    hand.push(sheet._boxes["sizes"]["slide"])
    hand.look("chosen")
    assert "= 2 pictures" in hand.read(sheet)
    hand.push_and_answer(hand.button("Make the pictures\u2026", sheet), "Folder for the pictures", folder)
    hand.qtbot.waitUntil(lambda: "2 pictures with captions" in sheet.told.text(), timeout=120_000)
    hand.look("made")


def test_pictures_that_match_are_saved_with_caption_and_source(hand, tmp_path):
    opens_a_ready_lesson_s_moment(hand)
    looks_from_where_it_tells(hand)
    saves_one_picture(hand, tmp_path / "seam.png")
    folder = tmp_path / "figures"
    folder.mkdir()
    makes_matching_pictures(hand, folder)
    light, dark = sorted(folder.glob("*.png"), key=lambda path: "dark" in path.name)
    for path in (light, dark):
        caption = path.with_suffix(".caption.txt").read_text(encoding="utf-8")
        for words in ("not a real car", f"Source: {PLAN.author}.", f"Licence: {PLAN.licence}."):
            assert words in caption
        assert f"Plan {plan_sha256(PLAN)[:12]}, model version {MODEL_VERSION}." in caption
        assert "Spread at the latch edge" in path.with_suffix(".alt.txt").read_text(encoding="utf-8")
        with Image.open(path) as picture:
            assert picture.text["Description"].startswith(caption.strip())
    with Image.open(light) as one, Image.open(dark) as other:
        assert one.size == other.size == (960, 600)
        assert np.median(np.asarray(one.convert("L"))) > 150 > np.median(np.asarray(other.convert("L")))
    listed = tomllib.loads((folder / "figures.toml").read_text(encoding="utf-8"))
    assert [view["camera"] for view in listed["views"]] == ["latch", "latch"]
