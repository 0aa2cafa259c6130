"""Two plans side by side in words: from which start, what differs, and what each came to."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QComboBox, QScrollArea, QVBoxLayout, QWidget

from ui.panels.look import GRID, Look
from ui.panels.pieces import Foot, button, column_area, dress, label, line, unbroken
from ui.state.pair_words import PairWords
from ui.state.tongue import tr

SIDES = ("Left", "Right")


class PairPage(QWidget):
    """A page of the right column.

    Attributes
    ----------
    chosen : emitted with the index of the plan to be put beside
    run_wished, put_on_wished, away_wished : the buttons
    """

    chosen = Signal(int)
    run_wished = Signal()
    put_on_wished = Signal()
    away_wished = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("column")
        self._look = Look()
        self._shown: PairWords | None = None
        self.choice = QComboBox()
        self.choice.setAccessibleName(tr("The plan on the right"))
        self.choice.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.choice.activated.connect(self.chosen)
        self._body = QVBoxLayout()
        self._body.setSpacing(GRID // 2)
        self.run = button("Run both", "primary", "Work both out from the same start (Return)")
        self.put_on = button("Put it on this car", "primary", "The other plan's moves, from this start")
        self.away = button("One plan", "", "Back to one plan (B)")
        self.run.clicked.connect(self.run_wished)
        self.put_on.clicked.connect(self.put_on_wished)
        self.away.clicked.connect(self.away_wished)
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.setSpacing(0)
        outer.addWidget(self._scroll(), 1)
        outer.addWidget(line())
        for made in (self.run, self.put_on):  # until it is known what can be done
            made.hide()
        foot = Foot((self.run, self.put_on), (self.away,))
        foot.layout().setContentsMargins(2 * GRID, GRID, 2 * GRID, GRID)
        outer.addWidget(foot)

    def _scroll(self) -> QScrollArea:
        inside = QWidget()
        inside.setObjectName("column")
        column = QVBoxLayout(inside)
        column.setContentsMargins(2 * GRID, GRID, GRID, GRID)
        column.setSpacing(GRID // 2)
        column.addWidget(label("Side by side", "head"))
        column.addWidget(label("On the right", "quiet"))
        column.addWidget(self.choice)
        column.addLayout(self._body)
        column.addStretch(1)
        return column_area(tr("Two plans side by side"), inside)

    def set_look(self, look: Look) -> None:
        """Keep the look for parts to come."""
        self._look = look

    def show_choices(self, names: Sequence[str], chosen: int) -> None:
        """List the plans that can be put on the right."""
        if [self.choice.itemText(i) for i in range(self.choice.count())] != list(names):
            self.choice.clear()
            self.choice.addItems([tr(name) for name in names])
        self.choice.setCurrentIndex(chosen)

    def show_words(self, found: PairWords) -> None:
        """Show start, differences and both outcomes."""
        self.run.setVisible(found.can_run and not found.refused)
        self.put_on.setVisible(found.can_put_on)
        if found == self._shown:
            return
        self._shown = found
        _empty(self._body)
        if found.refused:
            self._body.addWidget(label(found.refused, "body", wrap=True))
            return
        self._body.addWidget(label(found.start, "quiet", wrap=True))
        self._heading(found.heading)
        for row in found.rows:
            self._body.addWidget(label(row.words[0].upper() + row.words[1:], "", wrap=True))
            pair = (unbroken(text) for text in (row.first, row.second))
            values = label("  \u2192  ".join(pair), "", wrap=True)
            values.setStyleSheet("font-weight: 600;")
            self._body.addWidget(values)
        if found.in_words:
            self._body.addWidget(label(found.in_words, "quiet", wrap=True))
        for side, name in enumerate(SIDES):
            self._heading(f"{name}: {found.names[side]}")
            self._body.addWidget(label(found.sentences[side], "body" if side < 2 else "", wrap=True))
        dress(self, self._look)

    def _heading(self, words: str) -> None:
        self._body.addSpacing(GRID // 2)
        self._body.addWidget(line())
        self._body.addWidget(label(words, "heading", wrap=True))


def _empty(layout: QVBoxLayout) -> None:
    while layout.count():
        widget = layout.takeAt(0).widget()
        if widget is not None:
            widget.hide()
            widget.deleteLater()
