"""The card above the moves: how the car was wrecked before anybody set a tool on it."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QMouseEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QVBoxLayout

from ui.panels.look import GRID, Look
from ui.panels.pieces import IconButton, button, label, set_flag
from ui.state.tongue import tr
from ui.state.wreck_card import WreckCard


class WreckPanel(QFrame):
    """Shows the wreck.

    Attributes
    ----------
    picked : emitted when the card is clicked
    verb_wished : emitted when its button is: work it out, watch it, or go back
    change_wished, unwanted : emitted when it is to be changed, or taken out of the plan
    """

    picked = Signal()
    verb_wished = Signal()
    change_wished = Signal()
    unwanted = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("card")
        self._title, self._lines = label("", "", wrap=True), label("", "quiet", wrap=True)
        self._outcome = label("", "", wrap=True)
        self.verb = button("Work it out", "bare")
        self.change = IconButton("change", "Change how the car is wrecked", size=14)
        self.cross = IconButton("close", "Take the wreck out of the plan", size=14)
        head = QHBoxLayout()
        head.setSpacing(0)
        head.addWidget(self._title, 1)
        head.addWidget(self.change, 0, Qt.AlignmentFlag.AlignTop)
        head.addWidget(self.cross, 0, Qt.AlignmentFlag.AlignTop)
        column = QVBoxLayout(self)
        column.setContentsMargins(GRID + 4, GRID // 2, GRID // 2, GRID // 2)
        column.setSpacing(2)
        column.addLayout(head)
        column.addWidget(self._lines)
        column.addWidget(self._outcome)
        column.addWidget(self.verb, 0, Qt.AlignmentFlag.AlignLeft)
        self.verb.clicked.connect(self.verb_wished)
        self.change.clicked.connect(self.change_wished)
        self.cross.clicked.connect(self.unwanted)

    def set_look(self, look: Look) -> None:
        """Set the title in the stronger weight."""
        self._title.setFont(look.font("small", strong=True))
        self._title.setStyleSheet("font-weight: 600;")

    def show_card(self, card: WreckCard | None) -> None:
        """Show a wreck; None hides the card."""
        self.setVisible(card is not None)
        if card is None:
            return
        set_flag(self, "selected", card.shown)
        self._title.setText(card.title)
        self._lines.setText("\n".join(card.lines))
        self._outcome.setText(card.outcome)
        self.verb.setText(card.verb)
        self.verb.setVisible(bool(card.verb))
        self.change.setVisible(card.editable)
        self.setAccessibleName(tr(f"{card.title}. {'; '.join(card.lines)}. {card.outcome}"))

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Show the wreck."""
        if event.button() == Qt.MouseButton.LeftButton:
            self.picked.emit()
