"""The 3D view, and a second one beside it: each under its own caption, both as wide."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, Qt, QTimer
from PySide6.QtGui import QFocusEvent, QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from ui.panels.look import GRID
from ui.panels.pieces import label, line, set_flag

CAPTION_LINES = 2
FRAME_PX = 2
VEIL_MS = 600
"""Metal that is set out sooner than that follows the last picture with nothing between."""
BY_KEY = (Qt.FocusReason.TabFocusReason, Qt.FocusReason.BacktabFocusReason)


class Stages(QWidget):
    """Holds one view or two.

    Parameters
    ----------
    first : the view that is always there
    """

    def __init__(self, first: QWidget) -> None:
        super().__init__()
        self.setObjectName("column")
        self._row = QHBoxLayout(self)
        self._row.setContentsMargins(0, 0, 0, 0)
        self._row.setSpacing(0)
        self.captions = [label("", "", wrap=True), label("", "", wrap=True)]
        self._between = line(upright=True)
        for part in (self.captions[1], self._between):  # not in the row before there is a second view
            part.setParent(self)
            part.hide()
        self.views = [first]
        self._by_key, self._alone = False, False
        self._columns = [self._column(first, self.captions[0])]
        first.installEventFilter(self)
        self._veil = label("", "veil", wrap=True)
        self._veil.setParent(self)
        self._veil.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self._veil.hide()
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.setInterval(VEIL_MS)
        self._soon.timeout.connect(self._draw_veil)

    def show_veil(self, words: str) -> None:
        """Say in the picture's place what it waits for: what it shows is other metal. "" takes that away."""
        if not words:
            self._soon.stop()
            self._veil.hide()
            return
        self._veil.setText(words)
        if self._veil.isHidden() and not self._soon.isActive():
            self._soon.start()

    def _draw_veil(self) -> None:
        self._veil.setGeometry(self.rect())
        self._veil.show()
        self._veil.raise_()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Keep the veil over all of it."""
        super().resizeEvent(event)
        self._veil.setGeometry(self.rect())

    def _column(self, view: QWidget, caption: QWidget) -> QWidget:
        holder = QWidget()
        holder.setObjectName("column")
        column = QVBoxLayout(holder)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        caption.setContentsMargins(2 * GRID, GRID // 2, 2 * GRID, GRID // 2)
        caption.setAlignment(Qt.AlignmentFlag.AlignTop)
        caption.hide()
        column.addWidget(caption)
        frame = QWidget()
        frame.setObjectName("stage")
        inside = QVBoxLayout(frame)
        inside.setContentsMargins(FRAME_PX, FRAME_PX, FRAME_PX, FRAME_PX)
        inside.addWidget(view)
        column.addWidget(frame, 1)
        self._row.addWidget(holder, 1)
        return holder

    @property
    def framed(self) -> bool:
        """Whether a frame says that the stage has the keys."""
        return self._by_key and not self._alone and self.views[0].hasFocus()

    def set_alone(self, alone: bool) -> None:
        """Leave the frame out while the stage stands alone: there is nothing else to have the keys."""
        self._alone = alone
        self._show_frame()

    def _show_frame(self) -> None:
        frame = self.views[0].parentWidget()
        if frame is not None:
            set_flag(frame, "framed", self.framed)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:  # noqa: ARG002
        """Frame the stage while it has the focus and keys are used; the mouse takes the frame away."""
        kind = event.type()
        if kind is QEvent.Type.ShortcutOverride:
            self._by_key = True
        elif kind is QEvent.Type.MouseButtonPress:
            self._by_key = False
        elif kind is QEvent.Type.FocusIn and isinstance(event, QFocusEvent) and event.reason() in BY_KEY:
            self._by_key = True
        elif kind not in (QEvent.Type.FocusIn, QEvent.Type.FocusOut):
            return False
        has = kind is not QEvent.Type.FocusOut
        frame = self.views[0].parentWidget()
        if frame is not None:
            set_flag(frame, "framed", has and self._by_key and not self._alone)
        return False

    def add(self, second: QWidget) -> None:
        """Put the second view beside the first."""
        self._row.addWidget(self._between)
        self.views.append(second)
        self._columns.append(self._column(second, self.captions[1]))

    @property
    def paired(self) -> bool:
        """Whether two views are shown."""
        return len(self._columns) > 1 and self._columns[1].isVisibleTo(self)

    def show_pair(self, on: bool) -> None:
        """Show both views under their captions, or the first one alone."""
        for part in (*self.captions, self._between, *self._columns[1:]):
            part.setVisible(on)

    def show_captions(self, *words: str) -> None:
        """Show what each view is of; both captions as high."""
        for caption, text in zip(self.captions, words, strict=True):
            caption.setText(text)
            caption.setMinimumHeight(CAPTION_LINES * caption.fontMetrics().lineSpacing() + GRID)

    def close_views(self) -> None:
        """Close the views before Qt deletes them."""
        for view in self.views:
            view.close()
