"""The 3D view, and a second one beside it: each under its own caption, both as wide."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from ui.panels.look import GRID
from ui.panels.pieces import label, line

CAPTION_LINES = 2


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
        self._between.hide()
        self.views = [first]
        self._columns = [self._column(first, self.captions[0])]

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
        column.addWidget(view, 1)
        self._row.addWidget(holder, 1)
        return holder

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
