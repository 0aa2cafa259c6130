"""The stage in a window: one frame is one render, a click is not a drag, keys and files are the window's."""

from __future__ import annotations

import gc
import time

import numpy as np
import pytest
from PySide6.QtCore import QEvent, QPoint, QPointF, Qt
from PySide6.QtGui import QMouseEvent, QWheelEvent
from PySide6.QtWidgets import QApplication, QMainWindow
from vtkmodules.vtkCommonCore import vtkObjectBase

from tests.ui.scene.conftest import moved
from ui.scene.view import STILL_MS, StageView

pytestmark = pytest.mark.gl


class Renders:
    """Counts how often VTK draws."""

    def __init__(self, view):
        self.count = 0
        view.ren_win.AddObserver("EndEvent", self._add)

    def _add(self, *_event):
        self.count += 1


@pytest.fixture
def view(qtbot, model):
    window = QMainWindow()
    made = StageView(window)
    window.setCentralWidget(made)
    window.resize(640, 480)
    window.show()
    qtbot.waitExposed(window)
    made.stage.set_model(model)
    settle(qtbot, made)
    yield made
    made.close()
    window.close()
    window.deleteLater()
    QApplication.processEvents()


def settle(qtbot, view):
    """Wait until a frame has been drawn, and once more for the eye at rest; then no other is asked for."""
    renders = Renders(view)
    view.request_frame()
    qtbot.waitUntil(lambda: renders.count > 1, timeout=10_000)
    for _ in range(5):
        QApplication.processEvents()


def test_a_frame_is_drawn_once(qtbot, view, model):
    frames = [moved(model, 0.01 * k) for k in range(6)]
    view._at_rest.setInterval(60_000)
    renders = Renders(view)
    for number, frame in enumerate(frames, start=1):
        view.stage.show_points(frame.points, frame)
        view.stage.show_clearance(frame.clearance)
        view.render()
        qtbot.waitUntil(lambda wanted=number: renders.count >= wanted, timeout=5000)
        for _ in range(3):
            QApplication.processEvents()
        assert renders.count == number


def test_edges_are_smoothed_once_at_rest_and_not_in_motion(qtbot, view, model, frame):
    smoothed = []
    watch = view.ren_win.AddObserver("EndEvent", lambda *_: smoothed.append(view.renderer.GetUseFXAA()))
    view.stage.show_points(frame.points, frame)
    qtbot.waitUntil(lambda: len(smoothed) >= 2, timeout=10_000)
    qtbot.wait(2 * STILL_MS)
    view.ren_win.RemoveObserver(watch)  # it would keep the view it looks at
    assert smoothed == [False, True]


def test_nothing_is_drawn_while_nothing_changes(qtbot, view):
    renders = Renders(view)
    qtbot.wait(300)  # the point is that nothing happens in this time
    assert renders.count == 0


def test_each_step_of_turning_the_view_is_drawn_once(qtbot, view):
    view._at_rest.setInterval(60_000)
    renders = Renders(view)
    before = np.array(view.renderer.GetActiveCamera().GetPosition())
    qtbot.mousePress(view, Qt.MouseButton.LeftButton, pos=QPoint(300, 200))
    for step in range(1, 5):
        qtbot.mouseMove(view, QPoint(300 + 20 * step, 200))
        QApplication.processEvents()
        QApplication.processEvents()
    qtbot.mouseRelease(view, Qt.MouseButton.LeftButton, pos=QPoint(380, 200))
    for _ in range(4):
        QApplication.processEvents()
    after = np.array(view.renderer.GetActiveCamera().GetPosition())
    assert np.linalg.norm(after - before) > 0.1
    assert view.renderer.GetActiveCamera().GetViewUp()[2] > 0.5
    assert 1 <= renders.count <= 6


def test_a_click_says_what_was_clicked_and_a_drag_does_not(qtbot, view):
    said = []
    view.clicked.connect(said.append)
    middle = QPoint(view.width() // 2, view.height() // 2)
    qtbot.mouseClick(view, Qt.MouseButton.LeftButton, pos=middle)
    assert len(said) == 1
    assert said[0].part == "outer_skin"
    assert said[0].point.shape == (3,)
    qtbot.mousePress(view, Qt.MouseButton.LeftButton, pos=middle)
    qtbot.mouseMove(view, middle + QPoint(60, 10))
    qtbot.mouseRelease(view, Qt.MouseButton.LeftButton, pos=middle + QPoint(60, 10))
    assert len(said) == 1
    qtbot.mouseClick(view, Qt.MouseButton.LeftButton, pos=QPoint(3, 3))
    assert said[1] is None


def drawn(qtbot, view, button):
    """Draw the pointer across the view with a button down and return how far that turned the camera [m]."""
    before = np.array(view.renderer.GetActiveCamera().GetPosition())
    middle = QPoint(view.width() // 2, view.height() // 2)
    qtbot.mousePress(view, button, pos=middle)
    for across in (20, 40, 60):
        here = QPointF(middle + QPoint(across, 0))
        move = QMouseEvent(
            QEvent.Type.MouseMove, here, view.mapToGlobal(here), Qt.MouseButton.NoButton, button,
            Qt.KeyboardModifier.NoModifier,
        )  # fmt: skip
        QApplication.sendEvent(view, move)
    qtbot.mouseRelease(view, button, pos=middle + QPoint(60, 0))
    return float(np.linalg.norm(np.array(view.renderer.GetActiveCamera().GetPosition()) - before))


def test_the_right_button_can_turn_the_picture_and_the_left_one_only_points(qtbot, view):
    said, left = [], []
    view.clicked.connect(said.append)
    view.left.connect(left.append)
    assert drawn(qtbot, view, Qt.MouseButton.LeftButton) > 0.1
    view.turn_button = Qt.MouseButton.RightButton
    assert drawn(qtbot, view, Qt.MouseButton.LeftButton) == 0.0
    assert len(left) == 1 and said == []
    assert drawn(qtbot, view, Qt.MouseButton.RightButton) > 0.1
    assert len(left) == 2 and said == []
    qtbot.mouseClick(view, Qt.MouseButton.RightButton, pos=QPoint(3, 3))
    assert said == []
    qtbot.mouseClick(view, Qt.MouseButton.LeftButton, pos=QPoint(3, 3))
    assert said == [None]


def test_the_place_under_the_pointer_is_where_it_is_drawn(view):
    """The picker's place, thrown back on to the screen by VTK's own matrices, is the pointer's."""
    x, y = 330.0, 250.0
    point = view.pointed_at(x, y).point
    view.renderer.SetWorldPoint(*point, 1.0)
    view.renderer.WorldToDisplay()
    across, up, _ = view.renderer.GetDisplayPoint()
    ratio = view.devicePixelRatioF()
    assert across == pytest.approx(x * ratio, abs=0.01)
    assert up == pytest.approx((view.height() - 1 - y) * ratio, abs=0.01)


def test_hovering_says_the_part_and_leaving_says_nothing(qtbot, view):
    said = []
    view.hovered.connect(said.append)
    qtbot.mouseMove(view, QPoint(view.width() // 2 - 5, view.height() // 2))
    qtbot.mouseMove(view, QPoint(view.width() // 2, view.height() // 2))
    qtbot.waitUntil(lambda: bool(said), timeout=2000)
    assert said[-1].part == "outer_skin"
    qtbot.mouseMove(view, QPoint(2, 2))
    qtbot.waitUntil(lambda: said[-1] is None, timeout=2000)


def test_pointing_is_quick(view):
    """A hover may cost a millisecond; the best of several, for a busy machine."""
    view.pointed_at(300, 200)
    costs = []
    for k in range(60):
        began = time.perf_counter()
        view.pointed_at(300 + k, 200)
        costs.append(time.perf_counter() - began)
    assert np.median(costs) < 1e-3


def wheel(view, eighths, modifiers=Qt.KeyboardModifier.NoModifier):
    event = QWheelEvent(
        QPointF(200, 200), QPointF(200, 200), QPoint(), QPoint(0, eighths), Qt.MouseButton.NoButton,
        modifiers, Qt.ScrollPhase.NoScrollPhase, False,
    )  # fmt: skip
    view.wheelEvent(event)


def test_the_wheel_is_offered_first_and_zooms_when_nobody_takes_it(view):
    said, offered = [], []
    view.wheel_turned.connect(said.append)
    camera = view.renderer.GetActiveCamera()
    away = camera.GetDistance()
    wheel(view, 120)
    assert camera.GetDistance() < away
    away = camera.GetDistance()
    view.wheel_filter = lambda notches, modifiers: offered.append((notches, modifiers)) or True
    wheel(view, -240, Qt.KeyboardModifier.ShiftModifier)
    assert camera.GetDistance() == away
    assert offered == [(-2, Qt.KeyboardModifier.ShiftModifier)]
    assert said == [1, -2]


def test_small_turns_of_a_fine_wheel_add_up(view):
    offered = []
    view.wheel_filter = lambda notches, _: offered.append(notches) or True
    for _ in range(8):
        wheel(view, 30)
    assert offered == [1, 1]


@pytest.mark.parametrize("key", "wsvCbq3+-irpfe")
def test_keys_do_nothing_to_the_scene(qtbot, view, key):
    stereo = view.ren_win.GetStereoRender()
    camera = view.renderer.GetActiveCamera().GetPosition()
    before = pixels_of(view)
    qtbot.keyClicks(view, key)
    QApplication.processEvents()
    assert view.isVisible()
    assert view.ren_win.GetStereoRender() == stereo
    assert view.renderer.GetActiveCamera().GetPosition() == camera
    np.testing.assert_array_equal(pixels_of(view), before)


def pixels_of(view):
    image = view.grabFramebuffer()
    return np.frombuffer(image.constBits(), dtype=np.uint8).copy()


def test_files_dropped_on_the_view_are_the_windows(view):
    assert not view.acceptDrops()


def test_closing_leaves_no_vtk_object(qtbot, model):
    def count():
        gc.collect()
        return sum(isinstance(o, vtkObjectBase) for o in gc.get_objects())

    def once():
        window = QMainWindow()
        made = StageView(window)
        window.setCentralWidget(made)
        window.resize(320, 240)
        window.show()
        qtbot.waitExposed(window)
        made.stage.set_model(model)
        settle(qtbot, made)
        made.close()
        assert made.close()  # a second time is no fault
        window.close()
        window.deleteLater()
        QApplication.processEvents()

    once()
    before = count()
    once()
    assert count() <= before
