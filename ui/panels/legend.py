"""The colour bar: what the colours mean, with the two ends in words and the zero marked."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import (
    QColor,
    QFontMetrics,
    QLinearGradient,
    QPainter,
    QPaintEvent,
    QPen,
    QResizeEvent,
)
from PySide6.QtWidgets import QSizePolicy

from ui.panels.bars import Painted
from ui.panels.look import Look
from ui.state.tongue import tr


@dataclass(frozen=True)
class Scale:
    """A colour bar to draw.

    Parameters
    ----------
    stops : (share of the bar 0..1, colour as #rrggbb)
    low, high : words at the two ends
    zero : share of the bar where the neutral middle is, None for a bar without one
    steps : of a bar in steps, the least first: ground, lines, their share; ``bounds``: words between them
    words : stand in the place of a bar that is kept shut
    note : stands after the bar
    """

    stops: tuple[tuple[float, str], ...] = ()
    low: str = ""
    high: str = ""
    zero: float | None = None
    steps: tuple[tuple[str, str, float], ...] = ()
    bounds: tuple[str, ...] = ()
    words: str = ""
    note: str = ""


LEAST_BAR = 0.3
"""Share of the width that a bar takes between its words, or these stand below it."""


class Legend(Painted):
    """A lying colour bar with a word at either end; empty for plain metal.

    Parameters
    ----------
    size : of its type, one of the four
    """

    def __init__(self, size: str = "small") -> None:
        super().__init__()
        self._scale, self._size, self._below = Scale(), size, False
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def sizeHint(self) -> QSize:
        """Return a bar that gives way to its neighbours; one in steps, or a narrow one, has words below."""
        rows = 2.7 if self._scale.steps or self._below else 1.6
        return QSize(120, round(rows * self.look.px(self._size)))

    @property
    def tells(self) -> bool:
        """Whether there is a bar, and not plain metal or a bar kept shut."""
        return bool(self._scale.stops)

    def set_look(self, look: Look) -> None:
        """Take on another look, whose words may need another place."""
        super().set_look(look)
        self._fit()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Look again whether the words leave the bar its room."""
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        ends = (tr(self._scale.low), tr(self._scale.high))
        metrics = QFontMetrics(self.look.font(self._size))
        left = self.width() - sum(metrics.horizontalAdvance(words) + 8 for words in ends)
        below = left < LEAST_BAR * self.width()
        if below is not self._below:
            self._below = below
            self.updateGeometry()
            self.update()

    def show_scale(self, scale: Scale) -> None:
        """Show another bar."""
        if scale == self._scale:
            return
        self._scale = scale
        self.setVisible(bool(scale.stops or scale.words))
        self.setAccessibleName(_told(scale))
        self._fit()
        self.updateGeometry()
        self.update()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Draw the words and the bar between them."""
        if not self._scale.stops and not self._scale.words:
            return
        painter = QPainter(self)
        painter.setFont(self.look.font(self._size))
        painter.setPen(self.look.colour("ink"))
        if self._scale.words:
            painter.drawText(self.rect(), Qt.AlignmentFlag.AlignVCenter, tr(self._scale.words))
        elif self._scale.steps:
            self._paint_steps(painter)
        else:
            self._paint_bar(painter)
        painter.end()

    def _paint_steps(self, painter: QPainter) -> None:
        """Draw each step with its lines, its ends in words beside it, and the bounds under the bar."""
        metrics, scale = painter.fontMetrics(), self._scale
        high, row = self.height(), float(metrics.height())
        low, end, note = (metrics.horizontalAdvance(tr(w)) + 8 for w in (scale.low, scale.high, scale.note))
        note = note if scale.note and self.width() - low - end - note > 240 else 0
        bar = QRectF(low, 1, max(60.0, self.width() - low - end - note), high - row - 2)
        wide = bar.width() / len(scale.steps)
        for step, paper in enumerate(scale.steps):
            fill_step(painter, QRectF(bar.left() + step * wide, bar.top(), wide, bar.height()), *paper)
        painter.setPen(QPen(self.look.colour("ink"), 1.0))
        painter.drawRect(bar)
        middle = Qt.AlignmentFlag.AlignVCenter
        painter.drawText(QRectF(0, bar.top(), low, bar.height()), middle, tr(scale.low))
        painter.drawText(QRectF(bar.right() + 8, bar.top(), end, bar.height()), middle, tr(scale.high))
        if note:
            left = self.width() - note + 8
            painter.drawText(QRectF(left, bar.top(), note, bar.height()), middle, tr(scale.note))
        for step, words in enumerate(scale.bounds, 1):
            x, half = bar.left() + step * wide, metrics.horizontalAdvance(words) / 2
            painter.drawLine(QPointF(x, bar.top()), QPointF(x, bar.bottom() + 3))
            painter.drawText(QRectF(x - half, bar.bottom() + 1, 2 * half + 2, row), 0, words)

    def _paint_bar(self, painter: QPainter) -> None:
        metrics = painter.fontMetrics()
        ends = tr(self._scale.low), tr(self._scale.high)
        low, high = (metrics.horizontalAdvance(words) + 8 for words in ends)
        thick = round(0.85 * self.look.px(self._size))
        if self._below:
            bar = QRectF(0, 4, self.width(), thick)
        else:
            bar = QRectF(low, (self.height() - thick) / 2, self.width() - low - high, thick)
        gradient = QLinearGradient(bar.topLeft(), bar.topRight())
        for share, colour in self._scale.stops:
            gradient.setColorAt(min(max(share, 0.0), 1.0), QColor(colour))
        painter.fillRect(bar, gradient)
        painter.setPen(self.look.colour("ink"))
        self._write_ends(painter, bar, ends, (low, high))
        if self._scale.zero is not None:
            x = bar.left() + self._scale.zero * bar.width()
            painter.setPen(QPen(self.look.colour("ink"), 1.5))
            painter.drawLine(QPointF(x, bar.top() - 4), QPointF(x, bar.bottom() + 4))

    def _write_ends(
        self, painter: QPainter, bar: QRectF, ends: tuple[str, str], wide: tuple[int, int]
    ) -> None:
        """Write the words at either end, or below the bar: there each takes half at the most."""
        middle = Qt.AlignmentFlag.AlignVCenter
        if not self._below:
            painter.drawText(QRectF(0, 0, wide[0], self.height()), middle, ends[0])
            painter.drawText(QRectF(bar.right() + 8, 0, wide[1], self.height()), middle, ends[1])
            return
        half, metrics = self.width() // 2 - 4, painter.fontMetrics()
        row = QRectF(0, bar.bottom() + 5, self.width(), self.height() - bar.bottom() - 5)
        for words, side in zip(ends, (Qt.AlignmentFlag.AlignLeft, Qt.AlignmentFlag.AlignRight), strict=True):
            told = metrics.elidedText(words, Qt.TextElideMode.ElideRight, half)
            painter.drawText(row, side | middle, told)


def fill_step(painter: QPainter, part: QRectF, ground: str, ink: str, share: float) -> None:
    """Fill a part of a bar with a ground and slanting lines that take a share of it."""
    painter.save()
    painter.setClipRect(part)
    painter.fillRect(part, QColor(ground))
    apart = 0.7 * part.height()
    painter.setPen(QPen(QColor(ink), share * apart / 2.0**0.5))
    left = part.left() - part.height()
    while share and left < part.right():
        painter.drawLine(QPointF(left, part.bottom()), QPointF(left + part.height(), part.top()))
        left += apart
    painter.restore()


def _told(scale: Scale) -> str:
    """Return a bar in words, for a reader."""
    if scale.words:
        return tr(scale.words)
    if not scale.stops:
        return tr("No colours")
    words = tr(f"Colours from {scale.low} to {scale.high}")
    return f"{words}: {', '.join(scale.bounds)}" if scale.bounds else words
