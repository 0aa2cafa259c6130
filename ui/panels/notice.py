"""The bar at the top of the window: one sentence when something cannot be done, and nothing is lost."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QWidget

from ui.panels.look import GRID
from ui.panels.pieces import IconButton, button, label


class NoticeBar(QWidget):
    """A sentence with a cross, and a report to copy where the fault is the program's.

    Attributes
    ----------
    copy_wished : emitted with the report
    told : emitted with each sentence shown, and its report
    """

    copy_wished = Signal(str)
    told = Signal(str, str)

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("notice")
        self._report = ""
        self.words = label("", "", wrap=True)
        self._copy = button("Copy the report", "bare")
        cross = IconButton("close", "Put this away", size=14)
        row = QHBoxLayout(self)
        row.setContentsMargins(2 * GRID, GRID // 2, GRID, GRID // 2)
        row.addWidget(self.words, 1)
        row.addWidget(self._copy)
        row.addWidget(cross)
        cross.clicked.connect(self.hide)
        self._copy.clicked.connect(lambda: self.copy_wished.emit(self._report))
        self.hide()

    def say(self, sentence: str, report: str = "") -> None:
        """Show a sentence; an empty one puts the bar away."""
        self._report = report
        self.words.setText(sentence)
        self._copy.setVisible(bool(report))
        self.setVisible(bool(sentence))
        if sentence:
            self.told.emit(sentence, report)
