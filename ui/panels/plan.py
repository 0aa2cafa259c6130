"""The plan: two ready plans to begin with, how the car was wrecked, then a card for each move."""

from __future__ import annotations

import re

from PySide6.QtCore import QPoint, Qt, QTimer, Signal
from PySide6.QtGui import QAction, QMouseEvent
from PySide6.QtWidgets import (
    QApplication,
    QFrame,
    QHBoxLayout,
    QMenu,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from ui.panels.look import GRID, Look
from ui.panels.pieces import IconButton, button, column_area, label, line, set_flag, unbroken
from ui.panels.wreck_card import WreckPanel
from ui.state.cards import Card
from ui.state.move_fields import NEW_MOVES
from ui.state.tongue import tr

OUTCOME_CHARACTERS, LOW_CHARACTERS = 150, 70
LOW_PX = 760
"""Below this height [px at scale 1] a card tells less of what came out: the reading tells it whole."""
CLAUSE_END = re.compile(r"[.;](?=\s)|\.$")
"""Where a clause of an outcome ends, and no number's point."""
READY_WORDS = {
    "edge": ("Edge attack", "Edge attack", "To the edge attack"),
    "contrast": ("The contrast", "Try the contrast", "To the contrast"),
}
"""Names of the ready plans' buttons: while it is shown, while the other is, beside a plan of one's own."""


def shortened(words: str, most: int) -> str:
    """Return as many whole clauses as fit into `most` characters; of one too long by itself its beginning."""
    if len(words) <= most:
        return words
    ends = [found.start() for found in CLAUSE_END.finditer(words) if found.start() < most]
    if ends:
        return words[: ends[-1]] + "."
    return words[:most].rsplit(" ", 1)[0] + " \u2026"


class MoveCard(QFrame):
    """One move.

    Attributes
    ----------
    picked, unwanted, change_wished : emitted when the card is clicked, when its cross is, or its sliders
    dragged, dropped : emitted while it is drawn up or down, and when it is let go, with the pointer's height
        on the screen
    """

    picked = Signal(int)
    unwanted = Signal(int)
    change_wished = Signal(int)
    dragged = Signal(int, int)
    dropped = Signal(int, int)

    def __init__(self, index: int) -> None:
        super().__init__()
        self.setObjectName("card")
        self._index = index
        self._title, self._place = label("", "", wrap=True), label("", "quiet", wrap=True)
        self._outcome, self._effect = label("", "", wrap=True), label("", "heading", wrap=True)
        self._cross = IconButton("close", "Take this move out of the plan", size=14)
        self._cross.clicked.connect(lambda: self.unwanted.emit(self._index))
        self._change = IconButton("change", "Change this move (Ctrl+E)", size=14)
        self._change.clicked.connect(lambda: self.change_wished.emit(self._index))
        self._pressed: QPoint | None = None
        self._drawn = False
        head = QHBoxLayout()
        head.setSpacing(0)
        head.addWidget(self._title, 1)
        head.addWidget(self._change, 0, Qt.AlignmentFlag.AlignTop)
        head.addWidget(self._cross, 0, Qt.AlignmentFlag.AlignTop)
        column = QVBoxLayout(self)
        column.setContentsMargins(GRID + 4, GRID // 2, GRID // 2, GRID)
        column.setSpacing(2)
        column.addLayout(head)
        for part in (self._place, self._effect, self._outcome):
            column.addWidget(part)

    def set_look(self, look: Look) -> None:
        """Set the title in the stronger weight."""
        self._title.setFont(look.font("small", strong=True))
        self._title.setStyleSheet("font-weight: 600;")

    def show_card(self, card: Card, most: int = OUTCOME_CHARACTERS) -> None:
        """Show a move and its outcome, the latter in `most` characters."""
        set_flag(self, "selected", card.selected)
        self._title.setText(f"{self._index + 1}  {card.title}")
        self._place.setText(card.place)
        # told whole, then cut
        self._outcome.setText(unbroken(shortened(tr(card.outcome), most)) or "Not run yet")
        self._effect.setText(card.effect)
        self._effect.setVisible(bool(card.effect))
        self.setAccessibleName(tr(f"Move {self._index + 1}: {card.title}. {card.place}. {card.outcome}"))

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Select the move."""
        if event.button() == Qt.MouseButton.LeftButton:
            self._pressed, self._drawn = event.globalPosition().toPoint(), False
            self.picked.emit(self._index)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Follow a card that is drawn to another place."""
        here = event.globalPosition().toPoint()
        if self._pressed is None:
            return
        if abs(here.y() - self._pressed.y()) >= QApplication.startDragDistance():
            self._drawn = True
        if self._drawn:
            self.dragged.emit(self._index, here.y())

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """Let a drawn card go at its new place."""
        self._pressed = None
        if self._drawn:
            self._drawn = False
            self.dropped.emit(self._index, event.globalPosition().toPoint().y())


class PlanPanel(QWidget):
    """The upper part of the left column.

    Attributes
    ----------
    ready_wished : emitted with "edge" or "contrast"
    picked, unwanted, change_wished : emitted with the index of a move
    moved : emitted with the index of a move and the place it is to have
    add_wished : emitted with the name of the action that adds a move
    form_wished : emitted when car and tool are to be changed
    """

    ready_wished = Signal(str)
    picked = Signal(int)
    unwanted = Signal(int)
    change_wished = Signal(int)
    moved = Signal(int, int)
    add_wished = Signal(str)
    form_wished = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("column")
        self._cards: list[MoveCard] = []
        self._look = Look()
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
        self.wreck = WreckPanel()
        self.wreck.hide()
        column.addWidget(self.wreck)
        column.addLayout(self._list)
        column.addStretch(1)
        inside = QWidget()
        inside.setObjectName("column")
        inside.setLayout(column)
        self._gap = line()
        self._gap.setParent(inside)
        self._gap.hide()
        self._area = area = column_area(tr("Moves of the plan"), inside)
        self._brought = -1
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.setSpacing(0)
        outer.addLayout(pair)
        outer.addWidget(area, 1)
        outer.addLayout(self._buttons())  # below the cards that scroll: always in sight
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
        self.ease = button("Let off", "bare", "Add: let the tool off, the metal springs back")
        self.more = button("Other\u2026", "bare", "Add a move of another type, or a wreck before the plan")
        self._types = QMenu(self)
        for name, (words, _) in NEW_MOVES.items():
            self._offer(name, words)
        self._types.addSeparator()
        self._offer("add_wreck", "A wreck before the plan")
        row = QHBoxLayout()
        row.setContentsMargins(GRID, 0, GRID, 0)
        row.setSpacing(0)
        row.addWidget(label("Add", "quiet"))
        for made in (self.add, self.ease, self.more):
            row.addWidget(made)
        row.addStretch(1)
        self.add.clicked.connect(lambda: self.add_wished.emit("add_spread"))
        self.ease.clicked.connect(lambda: self.add_wished.emit("add_ease"))
        self.more.clicked.connect(self.offer_types)
        return row

    def _offer(self, name: str, words: str) -> None:
        action = QAction(tr(words), self._types)
        action.triggered.connect(lambda: self.add_wished.emit(name))
        self._types.addAction(action)

    def offer_types(self) -> None:
        """List the types of move that can be added."""
        self._types.popup(self.more.mapToGlobal(QPoint(0, self.more.height())))

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
            card.hide()
            card.deleteLater()
        low = self.window().height() < LOW_PX * self._look.scale
        for card, shown in zip(self._cards, cards, strict=True):
            card.show_card(shown, LOW_CHARACTERS if low else OUTCOME_CHARACTERS)
        chosen = next((i for i, card in enumerate(cards) if card.selected), -1)
        if chosen != self._brought:
            self._brought = chosen
            QTimer.singleShot(0, self, self._bring)

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
        card.change_wished.connect(self.change_wished)
        card.dragged.connect(self._draw_gap)
        card.dropped.connect(self._drop)
        for part in (card, card._cross, card._change):
            part.set_look(self._look)
        self._cards.append(card)
        self._list.addWidget(card)

    # --- another order -----------------------------------------------------------------------------------

    def _slot(self, height: int) -> int:
        """Return before which card a height on the screen lies; the count of cards below all of them."""
        inside = self._gap.parentWidget().mapFromGlobal(QPoint(0, height)).y()
        return sum(1 for card in self._cards if card.geometry().center().y() < inside)

    def _draw_gap(self, index: int, height: int) -> None:
        """Show where a card that is drawn would come to stand."""
        del index
        slot = self._slot(height)
        card = self._cards[min(slot, len(self._cards) - 1)]
        top = card.geometry().top() if slot < len(self._cards) else card.geometry().bottom()
        self._gap.setGeometry(card.x(), top - 1, card.width(), 3)
        self._gap.setStyleSheet(f"background: {self._look.colour('ink').name()};")
        self._gap.show()
        self._gap.raise_()

    def _drop(self, index: int, height: int) -> None:
        self._gap.hide()
        slot = self._slot(height)
        place = slot - 1 if slot > index else slot
        if place != index:
            self.moved.emit(index, place)
