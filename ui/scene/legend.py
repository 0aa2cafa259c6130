"""Legends drawn by Qt: a colour bar with its words."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QBrush, QColor, QFont, QFontMetricsF, QLinearGradient, QPainter, QPen

from ui.scene.colours import FOLD_PAPERS, ColourMode, colour_bar
from ui.state.tongue import tr


def draw_bar(painter: QPainter, box: QRectF, mode: ColourMode | str, font: QFont, line: QColor) -> None:
    """Draw the colour bar of a mode with its words below; nothing for "material"."""
    stops, labels = colour_bar(mode)
    if not stops:
        return
    painter.save()
    gradient = QLinearGradient(box.topLeft(), box.topRight())
    for place, colour in stops:
        gradient.setColorAt(place, QColor(colour))
    painter.setPen(QPen(line, 1.0))
    painter.setBrush(QBrush(gradient))
    painter.drawRect(box)
    if ColourMode(mode) is ColourMode.FOLDED:
        draw_paper(painter, box)
    painter.setFont(font)
    metrics = QFontMetricsF(font)
    for place, words in ((place, tr(said)) for place, said in labels):
        x = box.left() + place * box.width()
        painter.drawLine(x, box.bottom(), x, box.bottom() + 4.0)
        wide = metrics.horizontalAdvance(words)
        left = min(max(x - place * wide, box.left()), box.right() - wide)
        painter.drawText(QRectF(left, box.bottom() + 4.0, wide + 2.0, metrics.height()), 0, words)
    painter.restore()


def draw_paper(painter: QPainter, box: QRectF) -> None:
    """Fill a box with the steps of folding as they lie on the metal, with their lines."""
    count = len(FOLD_PAPERS)
    painter.save()
    for step, (ground, ink, share) in enumerate(FOLD_PAPERS):
        part = QRectF(box.left() + step * box.width() / count, box.top(), box.width() / count, box.height())
        painter.fillRect(part, QColor(ground))
        painter.setClipRect(part)
        apart = 0.7 * box.height()
        painter.setPen(QPen(QColor(ink), share * apart / 2.0**0.5))
        left = part.left() - part.height()
        while share and left < part.right():
            painter.drawLine(QPointF(left, part.bottom()), QPointF(left + part.height(), part.top()))
            left += apart
    painter.restore()
