"""Which curve stands in the reading: the force, the room to the person, or the exit width."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Signal
from PySide6.QtGui import QFontMetrics
from PySide6.QtWidgets import QButtonGroup, QHBoxLayout, QWidget

from ui.panels.look import GRID, Look
from ui.panels.pieces import button

CURVES = ("Force", "Room", "Exit width")
FORCE, ROOM, EXIT = range(3)


class ChoiceOfCurve(QWidget):
    """A row of the curves there are; what was chosen is shown again once there is such a curve again.

    Attributes
    ----------
    turned : emitted with the curve chosen
    """

    turned = Signal(int)

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("column")
        self._wished, self._able = FORCE, (True, True, True)
        self.buttons = QButtonGroup(self)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(2 * GRID)
        for number, words in enumerate(CURVES):
            made = button(words, "choice")
            made.setCheckable(True)
            self.buttons.addButton(made, number)
            row.addWidget(made)
        row.addStretch(1)
        self.buttons.idClicked.connect(self._wish)
        self.buttons.button(FORCE).setChecked(True)

    def set_look(self, look: Look) -> None:
        """Give the words their room: the one chosen is bold."""
        metrics = QFontMetrics(look.font("small", strong=True))
        for made in self.buttons.buttons():
            made.setMinimumWidth(metrics.horizontalAdvance(made.text()) + GRID)

    def show_able(self, able: Sequence[bool]) -> int:
        """Offer the curves there are; return which one is shown."""
        self._able = tuple(able)
        for number, can in enumerate(self._able):
            self.buttons.button(number).setVisible(can)
        shown = self._wished
        if not self._able[shown]:
            shown = next((number for number, can in enumerate(self._able) if can), FORCE)
        self.buttons.button(shown).setChecked(True)
        return shown

    def turn_on(self) -> None:
        """Choose the next of the curves there are."""
        shown = self.buttons.checkedId()
        order = [(shown + step) % len(CURVES) for step in range(1, len(CURVES))]
        found = next((number for number in order if self._able[number]), shown)
        self._wish(found)

    def _wish(self, number: int) -> None:
        self._wished = number
        self.turned.emit(number)
