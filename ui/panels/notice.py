"""The bar at the top of the window: one sentence when something cannot be done, and nothing is lost."""

from __future__ import annotations

from PySide6.QtCore import QTimer, Signal
from PySide6.QtWidgets import QHBoxLayout, QWidget

from ui.panels.look import GRID
from ui.panels.pieces import IconButton, button, label

HINT_MS = 8_000
"""How long a hint stands before it goes by itself."""


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
        self._said, self._report = "", ""
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
        self._hint_over = QTimer(self)
        self._hint_over.setSingleShot(True)
        self._hint_over.setInterval(HINT_MS)
        self._hint_over.timeout.connect(lambda: self.say(""))
        self.hide()

    def say(self, sentence: str, report: str = "") -> None:
        """Show a sentence; an empty one puts the bar away."""
        self._said, self._report = sentence, report
        self._hint_over.stop()
        self.words.setText(sentence)
        self._copy.setVisible(bool(report))
        self.setVisible(bool(sentence))
        if sentence:
            self.told.emit(sentence, report)

    def hint(self, sentence: str) -> None:
        """Show a sentence that goes by itself."""
        self.say(sentence)
        self._hint_over.start()

    def take_back(self, *sentences: str) -> None:
        """Put the bar away if it says one of these."""
        if self._said in sentences:
            self.say("")
