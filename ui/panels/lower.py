"""The words under a stage that stands alone: as large as the room lets them be, and never cut."""

from __future__ import annotations

from PySide6.QtCore import QRect, QSize, Qt
from PySide6.QtGui import QFont, QFontMetrics, QResizeEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget

from ui.panels.legend import Legend, Scale
from ui.panels.look import GRID, Look, lower_px
from ui.panels.pieces import Label, unbroken

MOST_SHARE = 0.4
"""The words take no more than this share of the window's height: the metal comes first."""
STEP_PX = 2
KEY_SHARE = 0.7


class ClassKey(Legend):
    """What the colours mean, as large as a class reads it."""

    def __init__(self) -> None:
        super().__init__("head")
        self.hide()

    def sizeHint(self) -> QSize:
        """Return a bar over the better part of the window."""
        return QSize(round(KEY_SHARE * self.window().width()), super().sizeHint().height())


class Lower(QWidget):
    """Under a stage that stands alone: what its colours mean, and the words."""

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("page")
        self.key, self.words = ClassKey(), LowerThird()
        self._alone = False
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.key, 0, Qt.AlignmentFlag.AlignHCenter)
        column.addWidget(self.words)
        self.hide()

    def text(self) -> str:
        """Return the words."""
        return self.words.text()

    def show_words(self, words: str) -> None:
        """Show a sentence, or the words of a lesson's step."""
        self.words.show_words(words, alone=self._alone)
        self._show()

    def show_scale(self, scale: Scale) -> None:
        """Show what the colours mean; nothing for plain metal, or colours that are kept shut."""
        self.key.show_scale(scale)
        self._show()

    def show_alone(self, alone: bool) -> None:
        """Stand there where the stage stands alone and there is anything to tell."""
        self._alone = alone
        self._show()
        self.words.fit()

    def _show(self) -> None:
        self.key.setVisible(self.key.tells)
        self.words.setVisible(bool(self.words.text()))
        self.setVisible(self._alone and (self.key.tells or bool(self.words.text())))


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
        self.setText(unbroken(words.replace("\n\n", "\n")))
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
