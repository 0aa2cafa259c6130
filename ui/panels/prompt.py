"""A card below the stage: a question before any force, or a caution named to the hazard at hand."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from ui.panels.look import GRID, Look
from ui.panels.pieces import IconButton, label, set_flag
from ui.state.prompts import Prompt
from ui.state.tongue import tr, with_english

LOW_PX = 500
"""Below this height of the window [px at scale 1] the words would take the stage's room: the name stays."""
IN_TWO = 1.4
"""As many times that height with the English beside another language."""


class PromptCard(QWidget):
    """Shows one card of several; puts nothing in the way of what is to be done.

    Attributes
    ----------
    list_wished : emitted when the whole list before metal work is to be read
    put_away : emitted with the names of the cards that were put away
    """

    list_wished = Signal()
    put_away = Signal(object)

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("prompt")
        self._cards: tuple[Prompt, ...] = ()
        self._at = 0
        self.title, self.words = label("", "", wrap=True), label("", "", wrap=True)
        self.next = IconButton("ahead", "Next card", size=14)
        self.whole = IconButton("list", "The list before metal work on a real car", size=14)
        self._scale = 1.0
        self.cross = IconButton("close", "Put this away", size=14)
        head = QHBoxLayout()
        head.setSpacing(0)
        head.addWidget(self.title, 1)
        for part in (self.next, self.whole, self.cross):
            head.addWidget(part, 0, Qt.AlignmentFlag.AlignTop)
        column = QVBoxLayout(self)
        column.setContentsMargins(2 * GRID, 2, GRID, GRID // 2)
        column.setSpacing(0)
        column.addLayout(head)
        column.addWidget(self.words)
        self.next.clicked.connect(self._turn)
        self.whole.clicked.connect(self.list_wished)
        self.cross.clicked.connect(lambda: self.put_away.emit(tuple(card.name for card in self._cards)))
        self.hide()

    def set_look(self, look: Look) -> None:
        """Set the title in the stronger weight, on the ground of what is to be minded."""
        self._scale = look.scale
        self.title.setFont(look.font("small", strong=True))
        self.title.setStyleSheet("font-weight: 600;")

    def show_cards(self, cards: Sequence[Prompt]) -> None:
        """Show the first of some cards, or none; the one that is read stays where they are the same."""
        if tuple(cards) != self._cards:
            self._cards, self._at = tuple(cards), 0
        self.setVisible(bool(self._cards))
        if self._cards:
            self._show()

    def _turn(self) -> None:
        self._at = (self._at + 1) % len(self._cards)
        self._show()

    def _show(self) -> None:
        card = self._cards[self._at]
        count = len(self._cards)
        number = f"  {self._at + 1}/{count}" if count > 1 else ""
        lead = f"{tr('Caution')}: " if card.happened else ""
        set_flag(self, "met", card.happened)
        self.title.setText(f"{lead}{tr(card.name)}{number}")
        words = with_english(card.words)
        self.words.setText(words)
        roomy = self.window().height() >= LOW_PX * self._scale * (1.0 if words == card.words else IN_TWO)
        self.words.setVisible(roomy)
        self.setToolTip("" if roomy else words)
        self.next.setVisible(count > 1)
        self.setAccessibleName(f"{lead}{tr(card.name)}. {words}")
