"""A whole lesson with no mouse: keys alone, as a real keyboard sends them, each step looked at afterwards.

What has the keys is seen at every step: a control looks otherwise with the focus than without it, and the
stage has a frame. xdotool presses the keys; there is no window manager, so each window is given the focus
by its name. The pointer stands in a corner and does nothing.
"""

import shutil
import subprocess

import numpy as np
import pytest

pytest.importorskip("PySide6")
if shutil.which("xdotool") is None:
    pytest.skip("xdotool is not installed", allow_module_level=True)

from PIL import Image
from PySide6.QtCore import QPoint, QRect
from PySide6.QtWidgets import QApplication, QPushButton

from sim.plan import BodyPoint, EdgePoint
from tests.ui.walking import Hand, at_the_window
from ui.app import App, prepare_application
from ui.scene.view import StageView
from ui.state.asking import Standing

pytestmark = [pytest.mark.gl, pytest.mark.slow, pytest.mark.timeout(400)]


@pytest.fixture(scope="session")
def qapp():
    return prepare_application()


class Keys(Hand):
    """A keyboard at a window; no mouse."""

    def __init__(self, app, qtbot):
        super().__init__(app, qtbot)
        self.where = 0

    def to(self, window):
        """Give the keys to a window, as a window manager does when it comes up."""
        super().to(window)
        self.where = int(window.winId())

    def types_before_the_stage_stands(self):
        """Type while the program is busy: the caution is read, the tip goes deeper, the picture turns."""
        self.where = int(self.app.window.winId())
        for words in (["windowfocus", str(self.where)], ["key", "Return", "d", "d", "ctrl+5"]):
            subprocess.run(["xdotool", *words], check=True, timeout=20)
        assert self.app.side is None
        assert not self.app.window.at_work
        self.do("mousemove", 1399, 899)

    def tab_to(self, control):
        """Walk with Tab until a control has the keys."""
        for _ in range(80):
            if control.hasFocus():
                return
            self.do("key", "Tab")
        raise AssertionError(f"Tab does not come to {control.accessibleName() or control.text()}")

    def seen(self):
        """Hold that what has the keys is seen: on the screen, and drawn otherwise than without them."""
        control = QApplication.focusWidget()
        assert control is not None, "nothing has the keys"
        window = control.window()
        place = QRect(control.mapTo(window, QPoint(0, 0)), control.size())
        assert control.isVisible()
        assert window.rect().intersects(place)
        if isinstance(control, StageView):
            assert self.app.window.stages.framed
            return control
        with_focus = control.grab().toImage()
        control.clearFocus()
        self.qtbot.wait(1)
        without = control.grab().toImage()
        control.setFocus()
        self.qtbot.wait(1)
        assert with_focus != without, f"{type(control).__name__} with the keys looks as without"
        return control


@pytest.fixture
def keys(qapp, qtbot, tmp_path):
    app = App(folder=tmp_path / "settings")
    with at_the_window(app, qtbot, Keys, Keys.types_before_the_stage_stands) as found:
        yield found


def was_heard_from_the_first_key_on(keys):
    """What was typed before there was a stage is done, in its order, in the window it was typed into."""
    app = keys.app
    assert int(app.window.winId()) == keys.where  # a stage that makes the window anew loses its keys
    keys.qtbot.waitUntil(lambda: not app.early_keys.keeps, timeout=30_000)
    keys.settle()
    assert app.window.at_work
    assert "First look" in app.window.notice.words.text()
    assert app.session.move.door.depth_m == pytest.approx(0.009)
    assert app.side.view.stage.shot.position[0] == pytest.approx(app.side.view.stage.shot.focus[0])
    keys.seen()
    keys.press("ctrl+z")
    assert app.session.document.history.position == 0


def reads_the_caution_again(keys):
    """Found by its words; what has the keys on that page is seen, too."""
    keys.press("ctrl+f")
    keys.to(keys.app.acting._finder)
    keys.type("caution")
    keys.press("Return")
    assert not keys.app.window.at_work
    keys.to(keys.app.window)
    keys.seen()
    keys.press("Return")
    assert keys.app.window.at_work


def opens_a_lesson(keys):
    """Find it by its words, and go to the step that asks."""
    app = keys.app
    keys.press("ctrl+f")
    keys.to(app.acting._finder)
    keys.seen()
    keys.type("first bite")
    keys.press("Return")
    keys.to(app.window)
    keys.press("Next", "Next")
    walk = app.acting.lessons.walk
    assert (walk.lesson.title, walk.position) == ("First bite: edge against bend", 2)
    keys.seen()


def places_both_tips(keys):
    """Tip one along the edge and deep; tip two on the pillar's outside, further up, and back again."""
    session = keys.app.session
    before = session.move.door
    keys.press("Up", "Up", "shift+d", "d")
    door = session.move.door
    assert isinstance(door, EdgePoint)
    assert door.along_m > before.along_m
    assert door.depth_m == pytest.approx(before.depth_m + 0.012)
    keys.press("shift+z", "ctrl+Up")
    other = session.move.against
    assert isinstance(other, BodyPoint)
    assert other.seat == "pillar_outside"
    assert other.along_m == pytest.approx(door.along_m + 0.06)
    keys.seen()
    keys.press("shift+z")
    assert session.move.against is None


def stops_where_the_seam_parts(keys):
    """The first of the events on offer, by the menu's own keys."""
    keys.press("j")
    keys.press("Down", "Return")
    assert keys.app.session.move.stop_at == ("seam parting",)


def foretells(keys):
    """Arrows go, Return or Space chooses, digits count, Tab goes to the next question; then the lock."""
    asking = keys.app.session.asking
    keys.press("a")
    assert asking.standing is Standing.OPEN
    for hands, chooses in (("1", "Return"), ("2", "space"), (None, "space")):
        keys.seen()
        keys.press("Down", chooses)
        if hands:
            keys.press(hands, "0")
        keys.do("key", "Tab")
    assert asking.missing == ""
    assert sorted(asking.now.hands.values()) == [10, 20]
    keys.press("l")
    assert asking.standing is Standing.LOCKED
    keys.seen()


def runs_and_compares(keys):
    session = keys.app.session
    keys.press("Return")
    keys.qtbot.waitUntil(lambda: session.asking.now.ran_at is not None, timeout=120_000)
    keys.settle()
    keys.press("r")
    assert session.asking.standing is Standing.SHOWN
    assert session.record(0).result is not None
    keys.seen()


def scrubs_to_an_event(keys):
    """The next event, where a page of the lesson would be another key."""
    line = keys.app.session.timeline
    events = sorted(mark.position for mark in line.marks if mark.position > 0)
    assert events
    keys.press("Home", "ctrl+Next")
    assert line.position == events[0]
    assert keys.app.acting.lessons.walk.position == 2
    keys.seen()


def sees_each_part_alone(keys):
    """With no pointer on the metal, one layer after another, then all again."""
    seeing, found = keys.app.see.seeing, []
    for _ in range(12):
        keys.do("key", "i")
        if seeing.now.alone is None:
            break
        found.append(seeing.now.alone)
    assert found == ["skin", "seam", "bar", "inner", "latch_hinges", "body", "occupant"]
    keys.seen()


def cuts_a_section(keys):
    """At the tip's height first, then on along its slider."""
    app = keys.app
    keys.press("x")
    cut = app.see.seeing.now.cut
    assert cut.place_m == pytest.approx(app.session.move.door.along_m)
    keys.tab_to(app.window.see.place)
    keys.seen()
    keys.press("Right", "Right")
    assert app.see.seeing.now.cut.place_m > cut.place_m


def takes_a_figure(keys, path):
    """At another size, with a caption; the plane is put away afterwards."""
    app = keys.app
    keys.press("ctrl+p")
    sheet = app.filing._pictures
    keys.to(sheet)
    keys.seen()
    keys.press("Up")
    keys.tab_to(sheet.caption)
    keys.type("The tip behind the lip")
    keys.tab_to(sheet.save)
    keys.seen()
    keys.answer("key space", "Save the picture", path)
    keys.qtbot.waitUntil(path.exists, timeout=60_000)
    keys.qtbot.waitUntil(lambda: not sheet.isVisible(), timeout=20_000)
    with Image.open(path) as picture:
        assert picture.size == (1280, 720)
        assert len(np.unique(np.asarray(picture.convert("L")))) > 40
    keys.to(app.window)
    keys.press("Escape")
    assert app.see.seeing.now.cut is None


def looks_side_by_side(keys):
    """The lesson's own pair, and one view again."""
    app, beside = keys.app, keys.app.session.beside
    walk = app.acting.lessons.walk
    keys.press("Next", "Next", "Next", "Next")
    assert walk.step.beside == "lip"
    keys.press("b")
    assert beside.plan == walk.results["lip"].plan
    keys.seen()
    keys.press("b")
    assert beside.plan is None


def prints_the_bridge_sheet(keys, path):
    keys.press("ctrl+alt+p")
    paper = keys.app.acting.lessons.windows._paper.sheet
    keys.to(paper)
    keys.seen()
    assert paper.kind.currentData() == "bridge"
    keys.tab_to(next(b for b in paper.findChildren(QPushButton) if b.text().startswith("Save as PDF")))
    keys.seen()
    keys.answer("key space", "Save the sheet", path)
    keys.qtbot.waitUntil(path.exists, timeout=60_000)
    assert path.read_bytes().startswith(b"%PDF")
    keys.to(keys.app.window)


def takes_it_all_back(keys, step):
    history = keys.app.session.document.history
    for _ in range(60):
        if keys.app.session.document.history.position == step:
            break
        keys.do("key", "ctrl+z")
    assert keys.app.session.document.history.position == step, history.position
    keys.seen()


def test_a_lesson_from_the_first_start_to_the_bridge_sheet(keys, tmp_path):
    session = keys.app.session
    was_heard_from_the_first_key_on(keys)
    reads_the_caution_again(keys)
    opens_a_lesson(keys)
    plan, step = session.plan, session.document.history.position
    places_both_tips(keys)
    stops_where_the_seam_parts(keys)
    foretells(keys)
    runs_and_compares(keys)
    scrubs_to_an_event(keys)
    sees_each_part_alone(keys)
    cuts_a_section(keys)
    takes_a_figure(keys, tmp_path / "figure.png")
    looks_side_by_side(keys)
    prints_the_bridge_sheet(keys, tmp_path / "bridge.pdf")
    takes_it_all_back(keys, step)
    assert session.plan == plan
