"""The plan: two ready plans to begin with, then a card for each move with what became of it."""

from __future__ import annotations

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QMouseEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QScrollArea, QSizePolicy, QVBoxLayout, QWidget

from ui.panels.look import GRID, Look
from ui.panels.pieces import IconButton, button, label, set_flag
from ui.state.cards import Card
from ui.state.tongue import tr

OUTCOME_CHARACTERS = 150
READY_WORDS = {
    "edge": ("Edge attack", "Edge attack", "To the edge attack"),
    "contrast": ("The contrast", "Try the contrast", "To the contrast"),
}
"""Names of the ready plans' buttons: while it is shown, while the other is, beside a plan of one's own."""


class MoveCard(QFrame):
    """One move.

    Attributes
    ----------
    picked, unwanted : emitted when the card is clicked, and when its cross is
    """

    picked = Signal(int)
    unwanted = Signal(int)

    def __init__(self, index: int) -> None:
        super().__init__()
        self.setObjectName("card")
        self._index = index
        self._title, self._place = label("", "", wrap=True), label("", "quiet", wrap=True)
        self._outcome, self._effect = label("", "", wrap=True), label("", "heading", wrap=True)
        self._cross = IconButton("close", "Take this move out of the plan", size=14)
        self._cross.clicked.connect(lambda: self.unwanted.emit(self._index))
        head = QHBoxLayout()
        head.setSpacing(0)
        head.addWidget(self._title, 1)
        head.addWidget(self._cross, 0, Qt.AlignmentFlag.AlignTop)
        column = QVBoxLayout(self)
        column.setContentsMargins(GRID + 4, GRID // 2, GRID // 2, GRID)
        column.setSpacing(2)
        column.addLayout(head)
        for part in (self._place, self._outcome, self._effect):
            column.addWidget(part)

    def set_look(self, look: Look) -> None:
        """Set the title in the stronger weight."""
        self._title.setFont(look.font("small", strong=True))
        self._title.setStyleSheet("font-weight: 600;")

    def show_card(self, card: Card) -> None:
        """Show a move and its outcome."""
        set_flag(self, "selected", card.selected)
        self._title.setText(f"{self._index + 1}  {card.title}")
        self._place.setText(card.place)
        outcome = card.outcome
        if len(outcome) > OUTCOME_CHARACTERS:
            outcome = outcome[:OUTCOME_CHARACTERS].rsplit(" ", 1)[0] + " \u2026"
        self._outcome.setText(outcome or "Not run yet")
        self._effect.setText(card.effect)
        self._effect.setVisible(bool(card.effect))
        self.setAccessibleName(f"Move {self._index + 1}: {card.title}. {card.place}. {card.outcome}")

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Select the move."""
        if event.button() == Qt.MouseButton.LeftButton:
            self.picked.emit(self._index)


class PlanPanel(QWidget):
    """The upper part of the left column.

    Attributes
    ----------
    ready_wished : emitted with "edge" or "contrast"
    picked, unwanted : emitted with the index of a move
    spread_wished, crush_wished, ease_wished, form_wished : emitted by the buttons below the cards
    """

    ready_wished = Signal(str)
    picked = Signal(int)
    unwanted = Signal(int)
    spread_wished = Signal()
    crush_wished = Signal()
    ease_wished = Signal()
    form_wished = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("column")
        self._cards: list[MoveCard] = []
        self.edge = button("Edge attack", "choice", "Tips on the hem at the latch edge")
        self.contrast = button("Try the contrast", "choice", "The same place, the tips behind the inner bend")
        for made, name in ((self.edge, "edge"), (self.contrast, "contrast")):
            made.setCheckable(True)
            made.setAutoExclusive(False)
            made.clicked.connect(lambda _=False, name=name: self.ready_wished.emit(name))
        pair = QHBoxLayout()
        pair.setSpacing(0)
        pair.addWidget(self.edge, 1)
        pair.addWidget(self.contrast, 1)
        self._list = QVBoxLayout()
        self._list.setSpacing(GRID // 2)
        column = QVBoxLayout()
        column.setContentsMargins(GRID, GRID // 2, GRID, GRID // 2)
        column.setSpacing(GRID // 2)
        column.addLayout(self._head())
        column.addLayout(self._list)
        column.addLayout(self._buttons())
        column.addStretch(1)
        inside = QWidget()
        inside.setObjectName("column")
        inside.setLayout(column)
        self._area = area = QScrollArea()
        area.setAccessibleName(tr("Moves of the plan"))
        self._brought = -1
        area.setWidgetResizable(True)
        area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        area.setWidget(inside)
        area.setFrameShape(QFrame.Shape.NoFrame)
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.setSpacing(0)
        outer.addLayout(pair)
        outer.addWidget(area, 1)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Expanding)

    def _head(self) -> QHBoxLayout:
        """Return the plan's title, and the way to its car and tool beside it."""
        self._title = label("", "quiet", wrap=True)
        self.form = button("Car, tool \u203a", "bare", "Change the car and the tool")
        self.form.clicked.connect(self.form_wished)
        row = QHBoxLayout()
        row.setSpacing(0)
        row.addWidget(self._title, 1)
        row.addWidget(self.form, 0, Qt.AlignmentFlag.AlignTop | Qt.AlignmentFlag.AlignRight)
        return row

    def _buttons(self) -> QHBoxLayout:
        self.add = button("Spread", "bare", "Add a spread after the last move")
        self.crush = button("Crush", "bare", "Add: a rigid body pressed into the side, as in an accident")
        self.ease = button("Let off", "bare", "Add: let the tool off, the metal springs back")
        row = QHBoxLayout()
        row.setSpacing(0)
        row.addWidget(label("Add", "quiet"))
        row.addWidget(self.add)
        row.addWidget(self.crush)
        row.addWidget(self.ease)
        row.addStretch(1)
        self.add.clicked.connect(self.spread_wished)
        self.crush.clicked.connect(self.crush_wished)
        self.ease.clicked.connect(self.ease_wished)
        return row

    def show_plan(self, title: str, cards: tuple[Card, ...], ready: str) -> None:
        """Show the plan's title, its cards, and which ready plan it is ("" for one of the reader's own)."""
        self._title.setText(title)
        for made, name in ((self.edge, "edge"), (self.contrast, "contrast")):
            made.setChecked(ready == name)
            made.setText(READY_WORDS[name][0 if ready == name else 1 if ready else 2])
        while len(self._cards) < len(cards):
            self._add_card()
        while len(self._cards) > len(cards):
            card = self._cards.pop()
            self._list.removeWidget(card)
            card.deleteLater()
        for card, shown in zip(self._cards, cards, strict=True):
            card.show_card(shown)
        chosen = next((i for i, card in enumerate(cards) if card.selected), -1)
        if chosen != self._brought:
            self._brought = chosen
            QTimer.singleShot(0, self._bring)

    def _bring(self) -> None:
        """Scroll to the selected card, once it has its place."""
        if 0 <= self._brought < len(self._cards):
            self._area.ensureWidgetVisible(self._cards[self._brought], 0, GRID)

    def set_look(self, look: Look) -> None:
        """Keep the look for cards to come."""
        self._look = look

    def _add_card(self) -> None:
        card = MoveCard(len(self._cards))
        card.picked.connect(self.picked)
        card.unwanted.connect(self.unwanted)
        look = getattr(self, "_look", None)
        if look is not None:
            card.set_look(look)
            card._cross.set_look(look)
        self._cards.append(card)
        self._list.addWidget(card)
