"""A window with a text to read or copy: the moment in words, a report of the machine, the log."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QDialog, QHBoxLayout, QPlainTextEdit, QVBoxLayout, QWidget

from ui.panels.look import GRID
from ui.panels.pieces import button, label
from ui.state.tongue import tr

WIDTH_PX, HEIGHT_PX = 620, 380


class ToldSheet(QDialog):
    """A text that can be walked through by keyboard, and a button that copies it.

    Parameters
    ----------
    title, name : of the window, and of its text for a screen reader
    lead : a sentence above the text
    copy : what the button says
    """

    def __init__(self, parent: QWidget, title: str, name: str, lead: str, copy: str) -> None:
        super().__init__(parent)
        self.setWindowTitle(tr(title))
        self.lead = label(lead, "quiet", wrap=True)
        self.text = QPlainTextEdit()
        self.text.setReadOnly(True)
        self.text.setTabChangesFocus(True)
        self.text.setAccessibleName(tr(name))
        self.copy = button(copy, "")
        self.copy.clicked.connect(lambda: QGuiApplication.clipboard().setText(self.text.toPlainText()))
        again = button("Look again", "")
        again.clicked.connect(self.refresh)
        self._source: Callable[[], str] = str
        row = QHBoxLayout()
        row.addWidget(again)
        row.addStretch(1)
        row.addWidget(self.copy)
        column = QVBoxLayout(self)
        column.setContentsMargins(2 * GRID, 2 * GRID, 2 * GRID, 2 * GRID)
        column.setSpacing(GRID)
        column.addWidget(self.lead)
        column.addWidget(self.text, 1)
        column.addLayout(row)

    def show_text(self, source: Callable[[], str]) -> None:
        """Open with the text that a source gives now, and gives again when asked."""
        self._source = source
        self.refresh()
        scale = getattr(getattr(self.parent(), "look", None), "scale", 1.0)
        room = self.parentWidget().size()
        self.resize(min(round(WIDTH_PX * scale), room.width()), min(round(HEIGHT_PX * scale), room.height()))
        self.show()
        self.raise_()
        self.activateWindow()
        self.text.setFocus()

    def refresh(self) -> None:
        """Show what the source gives now."""
        self.text.setPlainText(tr(self._source()))
