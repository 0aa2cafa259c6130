"""The colour bar: what the colours mean, with the two ends in words and the zero marked."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QLinearGradient, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy

from ui.panels.bars import Painted
from ui.state.tongue import tr


@dataclass(frozen=True)
class Scale:
    """A colour bar to draw.

    Parameters
    ----------
    stops : (share of the bar 0..1, colour as #rrggbb)
    low, high : words at the two ends
    zero : share of the bar where the neutral middle is, None for a bar without one
    """

    stops: tuple[tuple[float, str], ...] = ()
    low: str = ""
    high: str = ""
    zero: float | None = None


class Legend(Painted):
    """A lying colour bar with a word at either end; empty for plain metal."""

    def __init__(self) -> None:
        super().__init__()
        self._scale = Scale()
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def sizeHint(self) -> QSize:
        """Return a bar that gives way to its neighbours."""
        return QSize(120, round(1.6 * self.look.px("small")))

    def show_scale(self, scale: Scale) -> None:
        """Show another bar."""
        self._scale = scale
        self.setVisible(bool(scale.stops))
        words = f"Colours from {scale.low} to {scale.high}" if scale.stops else "No colours"
        self.setAccessibleName(tr(words))
        self.update()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Draw the words and the bar between them."""
        if not self._scale.stops:
            return
        painter = QPainter(self)
        painter.setFont(self.look.font("small"))
        metrics = painter.fontMetrics()
        ends = tr(self._scale.low), tr(self._scale.high)
        low, high = (metrics.horizontalAdvance(words) + 8 for words in ends)
        bar = QRectF(low, self.height() / 2 - 6, max(24.0, self.width() - low - high), 12)
        gradient = QLinearGradient(bar.topLeft(), bar.topRight())
        for share, colour in self._scale.stops:
            gradient.setColorAt(min(max(share, 0.0), 1.0), QColor(colour))
        painter.fillRect(bar, gradient)
        painter.setPen(self.look.colour("ink"))
        middle = Qt.AlignmentFlag.AlignVCenter
        painter.drawText(QRectF(0, 0, low, self.height()), middle, ends[0])
        painter.drawText(QRectF(bar.right() + 8, 0, high, self.height()), middle, ends[1])
        if self._scale.zero is not None:
            x = bar.left() + self._scale.zero * bar.width()
            painter.setPen(QPen(self.look.colour("ink"), 1.5))
            painter.drawLine(QPointF(x, bar.top() - 4), QPointF(x, bar.bottom() + 4))
        painter.end()
