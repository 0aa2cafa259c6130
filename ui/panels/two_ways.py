"""The small window with both ways on from the mark: going on, and stopping to cut."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QDialog, QGridLayout, QHBoxLayout, QLabel, QVBoxLayout, QWidget

from sim.results import LIMITS_LINE
from ui.panels.look import GRID
from ui.panels.pieces import button, label, line
from ui.state.tongue import tr
from ui.state.two_ways import BOTH_END_OFF, HEADS

WIDTH_PX = 560


class TwoWays(QDialog):
    """The sentence, and under it the figures of both ways beside each other."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.setWindowTitle(tr("Going on, or stopping to cut"))
        self.sentence = label("", "", wrap=True)
        self._rows = QWidget()
        self._grid = QGridLayout(self._rows)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setHorizontalSpacing(3 * GRID)
        self._grid.setVerticalSpacing(GRID // 2)
        away = button("Back to the stage", "")
        away.clicked.connect(self.hide)
        row = QHBoxLayout()
        row.addStretch(1)
        row.addWidget(away)
        column = QVBoxLayout(self)
        column.setContentsMargins(2 * GRID, 2 * GRID, 2 * GRID, 2 * GRID)
        column.setSpacing(GRID)
        for part in (self.sentence, line(), self._rows, label(BOTH_END_OFF, "quiet", wrap=True)):
            column.addWidget(part)
        column.addWidget(label(LIMITS_LINE, "quiet"))
        column.addStretch(1)
        column.addLayout(row)

    def show_ways(self, sentence: str, rows: tuple[tuple[str, str, str], ...]) -> None:
        """Open with what both ways came to."""
        self.sentence.setText(sentence)
        while (item := self._grid.takeAt(0)) is not None:
            item.widget().hide()
            item.widget().deleteLater()
        for across, words in enumerate(HEADS, 1):
            self._put(0, across, label(words, "heading"))
        for down, (words, on, off) in enumerate(rows, 1):
            self._put(down, 0, label(words))
            self._put(down, 1, label(on))
            self._put(down, 2, label(off))
        self._grid.setColumnStretch(0, 1)
        scale = getattr(getattr(self.parent(), "look", None), "scale", 1.0)
        self.resize(min(round(WIDTH_PX * scale), self.parentWidget().width()), self.sizeHint().height())
        self.show()
        self.raise_()
        self.activateWindow()

    def cells(self) -> list[list[str]]:
        """Return the words of the table, row by row."""
        found = []
        for down in range(self._grid.rowCount()):
            items = [self._grid.itemAtPosition(down, across) for across in range(3)]
            row = [item.widget().text() for item in items if item is not None]
            if row:
                found.append(row)
        return found

    def _put(self, down: int, across: int, made: QLabel) -> None:
        if across:
            made.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        self._grid.addWidget(made, down, across)
