"""The words under a stage that stands alone: as large as the room lets them be, and never cut."""

from __future__ import annotations

from PySide6.QtCore import QRect, Qt
from PySide6.QtGui import QFont, QFontMetrics, QResizeEvent
from PySide6.QtWidgets import QWidget

from ui.panels.look import GRID, Look, lower_px
from ui.panels.pieces import Label

MOST_SHARE = 0.4
"""The words take no more than this share of the window's height: the metal comes first."""
STEP_PX = 2


class LowerThird(Label):
    """A sentence, or the words of a lesson's step."""

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("large")
        self.setWordWrap(True)
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.setContentsMargins(4 * GRID, GRID, 4 * GRID, GRID)
        self._look = Look()
        self.hide()

    def set_look(self, look: Look) -> None:
        """Take on another look."""
        self._look = look
        self.fit()

    def show_words(self, words: str, *, alone: bool) -> None:
        """Show words where the stage stands alone."""
        self.setText(words.replace("\n\n", "\n"))
        self.setVisible(bool(words) and alone)
        self.fit()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Look again how large the words may be."""
        super().resizeEvent(event)
        if event.size().width() != event.oldSize().width():
            self.fit()

    def fit(self) -> None:
        """Take the largest type in which the words fit, and as much height as they need in it."""
        window: QWidget = self.window()
        least, most = self._look.px("small"), lower_px(window.width(), self._look.scale)
        sides = self.contentsMargins()
        width = (self.width() if self.isVisible() else window.width()) - sides.left() - sides.right()
        for px in range(most, least - 1, -STEP_PX):
            high = self.height_of(px, width)
            if high <= MOST_SHARE * window.height():
                break
        self.setStyleSheet(f"font-size: {px}px;")
        self.setFixedHeight(high + sides.top() + sides.bottom())

    def height_of(self, px: int, width: int) -> int:
        """Return how much height the words take in a size of type at a width [px]."""
        font = QFont(self.font())
        font.setPixelSize(px)
        font.setWeight(QFont.Weight.DemiBold)
        room = QRect(0, 0, max(width, 1), 100_000)
        return QFontMetrics(font).boundingRect(room, Qt.TextFlag.TextWordWrap, self.text()).height()
