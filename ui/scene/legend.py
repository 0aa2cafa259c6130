"""Legends drawn by Qt: a colour bar with its words."""

from __future__ import annotations

from PySide6.QtCore import QRectF
from PySide6.QtGui import QBrush, QColor, QFont, QFontMetricsF, QLinearGradient, QPainter, QPen

from ui.scene.colours import ColourMode, colour_bar
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
    painter.setFont(font)
    metrics = QFontMetricsF(font)
    for place, words in ((place, tr(said)) for place, said in labels):
        x = box.left() + place * box.width()
        painter.drawLine(x, box.bottom(), x, box.bottom() + 4.0)
        wide = metrics.horizontalAdvance(words)
        left = min(max(x - place * wide, box.left()), box.right() - wide)
        painter.drawText(QRectF(left, box.bottom() + 4.0, wide + 2.0, metrics.height()), 0, words)
    painter.restore()
