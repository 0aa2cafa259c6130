"""The one widget that shows a stage; the only file that knows how VTK draws inside Qt.

One frame is one render: everything that wants a picture asks `StageView.request_frame`, Qt gathers the
requests, and VTK draws inside ``paintGL`` and nowhere else. Keys are left to the window's actions.
"""

from __future__ import annotations

import time
from collections.abc import Callable
from typing import Protocol

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QEvent, Qt, QTimer, Signal
from PySide6.QtGui import QMouseEvent, QWheelEvent
from PySide6.QtWidgets import QWidget
from pyvistaqt import QtInteractor

from ui.scene.pick import Pointed
from ui.scene.stage import Stage

Floats = NDArray[np.float64]

CLICK_SLACK_PX = 5
"""A press and release no further apart than this is a click, else it was a drag."""
STILL_MS = 250
"""Once nothing has changed for so long, the picture is drawn once more with smoothed edges."""
TURN_S = 0.8
"""Turns of the wheel that follow each other faster are one, for the camera's way back."""
WHEEL_STEP = 120
"""Eighths of a degree that Qt reports for one notch of a common wheel."""


class Hand(Protocol):
    """Who draws on the picture: has the left button while it is there; places in logical pixels."""

    def press(self, x: float, y: float) -> None:
        """Begin a stroke."""

    def drag(self, x: float, y: float) -> None:
        """Draw on."""

    def release(self) -> None:
        """End it."""


class StageView(QtInteractor):
    """A stage in a window.

    Signals
    -------
    hovered : `ui.scene.pick.Pointed`, or None where there is nothing, when it changes
    clicked : the same, after a click with the left button
    wheel_turned : notches of the wheel, away from the user positive
    left : the `ui.scene.cameras.Shot` the viewer is about to leave, by drag or wheel
    """

    hovered = Signal(object)
    clicked = Signal(object)
    wheel_turned = Signal(int)
    left = Signal(object)

    _at_rest: QTimer | None = None

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent, auto_update=False, multi_samples=0)
        self.wheel_filter: Callable[[int, Qt.KeyboardModifier], bool] | None = None
        self.hand: Hand | None = None
        self.turn_button = Qt.MouseButton.LeftButton
        self._pressed_at: tuple[float, float] | None = None
        self._turned_at = -1.0
        self._dragged = False
        self._pointed: Pointed | None = None
        self._wheel_rest = 0
        self._smooth = False
        self._at_rest = QTimer(self)
        self._at_rest.setSingleShot(True)
        self._at_rest.setInterval(STILL_MS)
        self._at_rest.timeout.connect(self._draw_smooth)
        self.setAcceptDrops(False)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self._iren_of_vtk = self.ren_win.GetInteractor()
        # VTK's own requests to draw become requests to Qt; paintGL alone lets it draw.
        self._iren_of_vtk.EnableRenderOff()
        self._render_tag = self._iren_of_vtk.AddObserver("RenderEvent", self._vtk_wants_frame)
        self.enable_terrain_style(mouse_wheel_zooms=True, shift_pans=True)
        self._iren_of_vtk.GetInteractorStyle().AutoAdjustCameraClippingRangeOff()
        self.clear_key_bindings()
        self.stage = Stage(self, self.request_frame)

    def clear_key_bindings(self) -> None:
        """Forget every key of the drawing library: keys belong to the window's actions."""
        self.iren.clear_key_event_callbacks()
        for event in ("KeyPressEvent", "KeyReleaseEvent", "CharEvent"):
            self._iren_of_vtk.RemoveObservers(event)

    # drawing ----------------------------------------------------------------------------------------------

    def request_frame(self) -> None:
        """Ask for one frame; several requests before it is drawn are one."""
        if not self._closed:
            self._smooth = False
            if self._at_rest is not None:  # the library asks for frames while it is being made
                self._at_rest.stop()  # else it could make the frame that is asked for a smoothed one
            self.update()

    def _draw_smooth(self) -> None:
        """Draw once more, with smoothed edges: too dear in motion on a machine without a graphics card."""
        self.stage.settle()
        self._at_rest.stop()
        self._smooth = True
        self.update()

    def render(self, *_args: object, **_options: object) -> None:
        """Ask for one frame: what the drawing library calls rendering."""
        self.request_frame()

    def _vtk_wants_frame(self, *_event: object) -> None:
        if not self._in_paint:
            self.request_frame()

    def paintGL(self) -> None:
        """Draw: the one place where VTK renders."""
        if self._closed:
            return
        self.stage.set_clipping()
        self.renderer.SetUseFXAA(self._smooth)
        if not self._smooth:
            self._at_rest.start()
        self._iren_of_vtk.EnableRenderOn()
        try:
            super().paintGL()
        finally:
            self._iren_of_vtk.EnableRenderOff()

    # the pointer ------------------------------------------------------------------------------------------

    def pointed_at(self, x: float, y: float) -> Pointed | None:
        """Return what lies under a place of the widget [logical pixels, from the upper left], or None."""
        return self.stage.first_hit(*self.ray(x, y))

    def ray(self, x: float, y: float) -> tuple[Floats, Floats]:
        """Return where the line of sight through a place of the widget begins and ends [m]."""
        ratio = self.devicePixelRatioF()
        across, up = x * ratio, (self.height() - 1 - y) * ratio
        ends = []
        for depth in (0.0, 1.0):
            self.renderer.SetDisplayPoint(across, up, depth)
            self.renderer.DisplayToWorld()
            point = np.array(self.renderer.GetWorldPoint())
            ends.append(point[:3] / point[3])
        return ends[0], ends[1]

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Begin a click, a drag or a stroke of the hand that draws."""
        if self.hand is not None and event.button() is Qt.MouseButton.LeftButton:
            self.hand.press(event.position().x(), event.position().y())
            return
        if event.button() in (Qt.MouseButton.LeftButton, self.turn_button):
            self._pressed_at = (event.position().x(), event.position().y())
            self._dragged = False
        if event.button() is self.turn_button:
            super().mousePressEvent(_with_left(event))
        elif event.button() is not Qt.MouseButton.LeftButton:
            super().mousePressEvent(event)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Turn the view while a button is down, else say what is pointed at."""
        here = event.position()
        if self.hand is not None and event.buttons() & Qt.MouseButton.LeftButton:
            self.hand.drag(here.x(), here.y())
            return
        if self._pressed_at is not None and not self._dragged:
            away = max(abs(here.x() - self._pressed_at[0]), abs(here.y() - self._pressed_at[1]))
            if away <= CLICK_SLACK_PX:
                return  # a hand that trembles while it clicks turns nothing
            self._dragged = True
            if event.buttons() & self.turn_button:
                self.left.emit(self.stage.shot)
        super().mouseMoveEvent(event)
        if event.buttons() == Qt.MouseButton.NoButton:
            self._say_pointed(self.pointed_at(here.x(), here.y()))

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """End a drag or a stroke, or say what was clicked."""
        if self.hand is not None and event.button() is Qt.MouseButton.LeftButton:
            self.hand.release()
            return
        super().mouseReleaseEvent(event)
        if event.button() not in (Qt.MouseButton.LeftButton, self.turn_button) or self._pressed_at is None:
            return
        was_click, self._pressed_at = not self._dragged, None
        if was_click and event.button() is Qt.MouseButton.LeftButton:
            self.clicked.emit(self.pointed_at(event.position().x(), event.position().y()))

    def leaveEvent(self, event: QEvent) -> None:
        """Point at nothing."""
        super().leaveEvent(event)
        self._say_pointed(None)

    def _say_pointed(self, pointed: Pointed | None) -> None:
        if pointed is None and self._pointed is None:
            return
        self._pointed = pointed
        self.hovered.emit(pointed)

    def wheelEvent(self, event: QWheelEvent) -> None:
        """Offer the wheel to the filter first; zoom when it is not taken."""
        self._wheel_rest += event.angleDelta().y()
        notches = int(self._wheel_rest / WHEEL_STEP)
        self._wheel_rest -= notches * WHEEL_STEP
        event.accept()
        if not notches:
            return
        taken = self.wheel_filter is not None and self.wheel_filter(notches, event.modifiers())
        self.wheel_turned.emit(notches)
        if not taken:
            self.zoom(notches)

    def zoom(self, notches: int) -> None:
        """Bring the camera nearer by 12 % a notch, or further away."""
        now = time.monotonic()
        if now - self._turned_at > TURN_S:
            self.left.emit(self.stage.shot)
        self._turned_at = now
        camera = self.renderer.GetActiveCamera()
        camera.Dolly(1.12**notches)
        self.request_frame()

    def keyPressEvent(self, event: QEvent) -> None:
        """Leave the key to the window."""
        event.ignore()

    def keyReleaseEvent(self, event: QEvent) -> None:
        """Leave the key to the window."""
        event.ignore()

    # the end ----------------------------------------------------------------------------------------------

    def close(self) -> bool:
        """Let go of every VTK object; call it before Qt deletes the window."""
        if self._closed:
            return True
        self._at_rest.stop()
        self.stage.close()
        self._iren_of_vtk.RemoveObserver(self._render_tag)
        super().close()
        return True


def _with_left(event: QMouseEvent) -> QMouseEvent:
    """Return a press as one of the left button, with which the drawing library turns the picture."""
    left = Qt.MouseButton.LeftButton
    return QMouseEvent(event.type(), event.position(), event.globalPosition(), left, left, event.modifiers())
