"""The notice of the first start: half a screen, read once, shown again from the menu whenever wanted."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QScrollArea, QSizePolicy, QVBoxLayout, QWidget

from ui.panels.look import GRID, Look, drawing
from ui.panels.pieces import button, label
from ui.state.tongue import caution, tr


class CautionPage(QWidget):
    """The text on a page of its own.

    Attributes
    ----------
    read : emitted when the reader says so
    """

    read = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("page")
        self._picture = label()
        self._title = label("", "large", wrap=True)
        self._body = label("", "body", wrap=True)
        self.done = button("I have read this", "primary")
        self.done.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.done.clicked.connect(self.read)
        inside = QWidget()
        inside.setObjectName("page")
        column = QVBoxLayout(inside)
        column.setSpacing(2 * GRID)
        column.addStretch(1)
        column.addWidget(self._picture)
        column.addWidget(self._title)
        column.addWidget(self._body)
        column.addWidget(self.done, 0, Qt.AlignmentFlag.AlignLeft)
        column.addStretch(2)
        inside.setMaximumWidth(820)
        inside.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Preferred)
        holder = QWidget()
        holder.setObjectName("page")
        middle = QHBoxLayout(holder)
        middle.setContentsMargins(3 * GRID, 2 * GRID, 3 * GRID, 2 * GRID)
        middle.addStretch(1)
        middle.addWidget(inside, 8)
        middle.addStretch(1)
        area = QScrollArea()
        area.setAccessibleName(tr("Text to read"))
        area.setWidgetResizable(True)
        area.setWidget(holder)
        area.setFrameShape(QScrollArea.Shape.NoFrame)
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.addWidget(area)
        self._inside = inside

    def set_look(self, look: Look) -> None:
        """Draw the picture in the theme's ink; a larger type gets a wider column."""
        self._picture.setPixmap(drawing("hem", look.colour("ink").name(), 64))
        self._inside.setMaximumWidth(round(820 * look.scale))

    def show_text(self, name: str, done: str) -> None:
        """Show a text of assets/texts (its first paragraph is the title) and what the button says."""
        title, _, body = caution(name).partition("\n\n")
        self._title.setText(title)
        self._body.setText(body)
        self.done.setText(done)
        self.done.setFocus()
