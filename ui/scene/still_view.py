"""The stage as still pictures, where a window cannot draw in three dimensions: slower, and all there.

The picture is drawn without a window and shown once it is ready; it can be pointed at, clicked and turned
as the moving one can.
"""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
import pyvista
from numpy.typing import NDArray
from PySide6.QtCore import QEvent, Qt, QTimer, Signal
from PySide6.QtGui import QImage, QMouseEvent, QPainter, QPaintEvent, QResizeEvent, QWheelEvent
from PySide6.QtWidgets import QWidget

from ui.scene.pick import Pointed
from ui.scene.picture import grab
from ui.scene.stage import Stage
from ui.scene.view import CLICK_SLACK_PX, WHEEL_STEP, Hand

DRAW_MS = 40
TURN_DEG_PER_PX = 0.35
STEEPEST_DEG = 85.0


class StillView(QWidget):
    """Has the manners of `ui.scene.view.StageView`.

    Signals
    -------
    hovered, clicked, wheel_turned, left : as there
    frameSwapped : emitted when another picture is shown
    """

    hovered = Signal(object)
    clicked = Signal(object)
    wheel_turned = Signal(int)
    left = Signal(object)
    frameSwapped = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.wheel_filter: Callable[[int, Qt.KeyboardModifier], bool] | None = None
        self.hand: Hand | None = None
        self.turn_button = Qt.MouseButton.LeftButton
        self._closed = False
        self._image: QImage | None = None
        self._pressed_at: tuple[float, float] | None = None
        self._turned_to = (0.0, 0.0)
        self._dragged = False
        self._pointed: Pointed | None = None
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.setInterval(DRAW_MS)
        self._soon.timeout.connect(self._draw)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setMinimumSize(200, 150)
        self._plotter = pyvista.Plotter(off_screen=True, window_size=[640, 400], lighting="none")
        self.renderer = self._plotter.renderer
        self.stage = Stage(self._plotter, self.request_frame)

    # --- drawing -----------------------------------------------------------------------------------------

    def request_frame(self) -> None:
        """Ask for a picture; several requests before it is drawn are one."""
        if not self._closed:
            self._soon.start()

    def _draw(self) -> None:
        if self._closed or not self.isVisible():
            return
        ratio = self.devicePixelRatioF()
        size = [max(64, round(self.width() * ratio)), max(64, round(self.height() * ratio))]
        self._plotter.render_window.SetSize(*size)
        self.stage.settle()
        self.stage.set_clipping()
        self.renderer.SetUseFXAA(True)
        data = np.ascontiguousarray(grab(self._plotter)[..., :3])
        height, width, _ = data.shape
        image = QImage(data.data, width, height, 3 * width, QImage.Format.Format_RGB888).copy()
        image.setDevicePixelRatio(ratio)
        self._image = image
        self.update()
        self.frameSwapped.emit()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Show the picture drawn last."""
        if self._image is not None:
            painter = QPainter(self)
            painter.drawImage(self.rect(), self._image)
            painter.end()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Draw at the new size."""
        super().resizeEvent(event)
        self.request_frame()

    def showEvent(self, event: QEvent) -> None:
        """Draw when first seen."""
        super().showEvent(event)
        self.request_frame()

    # --- the pointer -------------------------------------------------------------------------------------

    def pointed_at(self, x: float, y: float) -> Pointed | None:
        """Return what lies under a place of the widget [logical pixels, from the upper left], or None."""
        return self.stage.first_hit(*self.ray(x, y))

    def ray(self, x: float, y: float) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
        """Return where the line of sight through a place of the widget begins and ends [m]."""
        ratio = self.devicePixelRatioF()
        ends = []
        for depth in (0.0, 1.0):
            self.renderer.SetDisplayPoint(x * ratio, (self.height() - 1 - y) * ratio, depth)
            self.renderer.DisplayToWorld()
            point = np.array(self.renderer.GetWorldPoint())
            ends.append(point[:3] / point[3])
        return ends[0], ends[1]

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Begin a click, a drag or a stroke of the hand that draws."""
        if event.button() not in (Qt.MouseButton.LeftButton, self.turn_button):
            return
        here = (event.position().x(), event.position().y())
        if self.hand is not None and event.button() is Qt.MouseButton.LeftButton:
            self.hand.press(*here)
            return
        self._pressed_at = self._turned_to = here
        self._dragged = False

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Turn the view while the button is down, else say what is pointed at."""
        x, y = event.position().x(), event.position().y()
        turning = bool(event.buttons() & self.turn_button)
        if self.hand is not None and event.buttons() & Qt.MouseButton.LeftButton:
            self.hand.drag(x, y)
        elif event.buttons() and self._pressed_at is not None:
            away = max(abs(x - self._pressed_at[0]), abs(y - self._pressed_at[1]))
            if not self._dragged and away > CLICK_SLACK_PX:
                self._dragged = True
                if turning:
                    self.left.emit(self.stage.shot)
            if self._dragged and turning:
                self._turn(x - self._turned_to[0], y - self._turned_to[1])
                self._turned_to = (x, y)
        elif not event.buttons():
            self._say_pointed(self.pointed_at(x, y))

    def _turn(self, across: float, down: float) -> None:
        camera = self.renderer.GetActiveCamera()
        camera.Azimuth(-TURN_DEG_PER_PX * across)
        back = np.array(camera.GetPosition()) - np.array(camera.GetFocalPoint())
        height = np.degrees(np.arcsin(back[2] / max(float(np.linalg.norm(back)), 1e-9)))
        wanted = float(np.clip(height + TURN_DEG_PER_PX * down, -STEEPEST_DEG, STEEPEST_DEG))
        if abs(camera.GetViewUp()[2]) > 0.5:
            camera.Elevation(wanted - height)
            camera.SetViewUp(0.0, 0.0, 1.0)
        self.request_frame()

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """End a drag or a stroke, or say what was clicked."""
        if event.button() is not Qt.MouseButton.LeftButton:
            return
        if self.hand is not None:
            self.hand.release()
            return
        pressed, self._pressed_at = self._pressed_at, None
        if pressed is not None and not self._dragged:
            self.clicked.emit(self.pointed_at(event.position().x(), event.position().y()))

    def leaveEvent(self, event: QEvent) -> None:
        """Point at nothing."""
        super().leaveEvent(event)
        self._say_pointed(None)

    def _say_pointed(self, pointed: Pointed | None) -> None:
        if pointed is not None or self._pointed is not None:
            self._pointed = pointed
            self.hovered.emit(pointed)

    def wheelEvent(self, event: QWheelEvent) -> None:
        """Offer the wheel to the filter first; zoom when it is not taken."""
        notches = int(event.angleDelta().y() / WHEEL_STEP)
        event.accept()
        if not notches:
            return
        taken = self.wheel_filter is not None and self.wheel_filter(notches, event.modifiers())
        self.wheel_turned.emit(notches)
        if not taken:
            self.zoom(notches)

    def zoom(self, notches: int) -> None:
        """Bring the camera nearer by 12 % a notch, or further away."""
        self.left.emit(self.stage.shot)
        self.renderer.GetActiveCamera().Dolly(1.12**notches)
        self.request_frame()

    # --- the end -----------------------------------------------------------------------------------------

    def close(self) -> bool:
        """Let go of every VTK object; call it before Qt deletes the window."""
        if not self._closed:
            self._closed = True
            self._soon.stop()
            self.stage.close()
            self._plotter.close()
        return super().close()
