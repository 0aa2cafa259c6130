"""Curves of room against progress as one picture: several plans that began with the same metal.

On the left the room to the nearest body part, a line a plan, told apart by their dashes and by the words
beside them; on the right, plan by plan, the same for each body part. No hue: a line of room is no motion of
metal.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QImage, QPainter, QPen, QPolygonF

from ui.scene.colours import THEMES, ColourMode, Theme
from ui.scene.picture import PictureWords, Sheet
from ui.state.plotting import spread_out, ticks
from ui.state.room_curve import LETTERED, RoomCurve

Floats = NDArray[np.float64]

DASHES: tuple[tuple[float, ...], ...] = ((), (6.0, 3.0), (1.5, 2.5), (8.0, 2.5, 1.5, 2.5))
"""A line's strokes and gaps, in its own widths; the first is drawn through."""
WIDE, SIDE = 0.58, 0.30
"""Shares of the width: the large plot, and each small one."""
LEAST_APART = 24.0
"""Between the words at the ends of lines [logical pixels at 1600 x 900]."""


class _Plot:
    """One plot: its frame, its scale, its pen."""

    def __init__(self, painter: QPainter, sheet: Sheet, box: QRectF, low: float, high: float) -> None:
        self.painter, self.sheet, self.box, self.low, self.high = painter, sheet, box, low, high

    def at(self, progress: float, room_m: float) -> QPointF:
        """Return where a value stands."""
        share = (room_m - self.low) / (self.high - self.low)
        return QPointF(
            self.box.left() + progress * self.box.width(), self.box.bottom() - share * self.box.height()
        )

    def frame(self, size: float, *, words: bool) -> None:
        """Draw the marks of both axes; their words where asked for."""
        p, sheet, unit = self.painter, self.sheet, self.sheet.unit
        p.setFont(sheet.font(size))
        for level in ticks(self.low, self.high, 7 if words else 4):
            here = self.at(0.0, level)
            ink = sheet.theme.text if abs(level) < 1.0e-9 else sheet.theme.grid
            p.setPen(QPen(QColor(ink), 1.0 * sheet.line_unit))
            p.drawLine(here, QPointF(self.box.right(), here.y()))
            p.setPen(QColor(sheet.theme.muted))
            place = QRectF(here.x() - 70 * unit, here.y() - 12 * unit, 62 * unit, 24 * unit)
            p.drawText(
                place, Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter, f"{1e3 * level:.0f}"
            )
        for share in (0.0, 1.0 / 3.0, 2.0 / 3.0, 1.0) if words else (0.0, 1.0):
            here = self.at(share, self.low)
            place = QRectF(here.x() - 40 * unit, self.box.bottom() + 4 * unit, 80 * unit, 24 * unit)
            p.drawText(place, Qt.AlignmentFlag.AlignCenter, f"{100 * share:.0f} %")

    def line(self, progress: Floats, room_m: Floats, width: float, dash: int, ink: str) -> None:
        """Draw one curve."""
        pen = QPen(QColor(ink), width * self.sheet.line_unit)
        pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
        if DASHES[dash]:
            pen.setDashPattern(list(DASHES[dash]))
        self.painter.setPen(pen)
        self.painter.drawPolyline(
            QPolygonF([self.at(float(a), float(b)) for a, b in zip(progress, room_m, strict=True)])
        )

    def level(self, room_m: float) -> None:
        """Draw the room at the start as a fine line through."""
        pen = QPen(QColor(self.sheet.theme.muted), 1.0 * self.sheet.line_unit)
        pen.setDashPattern([2.0, 4.0])
        self.painter.setPen(pen)
        self.painter.drawLine(self.at(0.0, room_m), self.at(1.0, room_m))

    def names(self, ends_m: Sequence[float], words: Sequence[str], size: float, ink: str) -> None:
        """Write a word beside each line's end."""
        p, unit = self.painter, self.sheet.unit
        p.setFont(self.sheet.font(size))
        p.setPen(QColor(ink))
        places = [self.at(1.0, end).y() for end in ends_m]
        apart = LEAST_APART * unit * size / 17.0
        for y, word in zip(spread_out(places, apart, self.box.top(), self.box.bottom()), words, strict=True):
            place = QRectF(self.box.right() + 8 * unit, y - 14 * unit, 240 * unit, 28 * unit)
            p.drawText(place, Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter, word)


def scale_of(curves: Sequence[RoomCurve]) -> tuple[float, float]:
    """Return the least and the greatest room any plot shows [m]; nothing is always among them."""
    every = np.concatenate([np.concatenate(list(curve.parts_m.values())) for curve in curves])
    low, high = min(0.0, float(every.min())), float(every.max())
    pad = 0.04 * (high - low)
    return (low - pad if low < 0.0 else 0.0), high + pad


def room_picture(
    curves: Sequence[RoomCurve],
    words: PictureWords,
    size: tuple[int, int] = (1600, 900),
    *,
    scale: float = 1.0,
    theme: Theme | str = "light",
) -> QImage:
    """Return the picture of several plans' room against progress.

    Parameters
    ----------
    words : title above, the plans' sentences below (``caption``), the version
    """
    theme = THEMES[theme] if isinstance(theme, str) else theme
    sheet = Sheet(size, scale, theme)
    image = sheet.compose((), (), words, ColourMode("material"))
    painter = QPainter(image)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    try:
        top, low = sheet.rows(words)
        _large(painter, sheet, curves, QRectF(sheet.margin, top, WIDE * sheet.width, low - top))
        left = sheet.width - sheet.margin - SIDE * sheet.width
        high = (low - top) / len(curves)
        for k, curve in enumerate(curves):
            _small(painter, sheet, curve, k, QRectF(left, top + k * high, SIDE * sheet.width, high), curves)
    finally:
        painter.end()
    return image


def _large(painter: QPainter, sheet: Sheet, curves: Sequence[RoomCurve], box: QRectF) -> None:
    unit = sheet.unit
    inner = box.adjusted(70 * unit, 40 * unit, -44 * unit, -66 * unit)
    every = np.concatenate([curve.least_m for curve in curves])
    low, high = min(0.0, float(every.min())), max(float(every.max()), 0.01)
    plot = _Plot(painter, sheet, inner, low - 0.03 * (high - low) * (low < 0.0), high * 1.06)
    painter.setPen(QColor(sheet.theme.text))
    painter.setFont(sheet.font(17, bold=True))
    painter.drawText(
        QRectF(box.left(), box.top(), box.width(), 30 * unit), "Room to the nearest body part, mm"
    )
    plot.frame(17, words=True)
    plot.level(float(curves[0].least_m[0]))
    for k, curve in enumerate(curves):
        plot.line(curve.progress, curve.least_m, 3.5, k % len(DASHES), sheet.theme.text)
    plot.names([float(c.least_m[-1]) for c in curves], LETTERED[: len(curves)], 22, sheet.theme.text)
    painter.setPen(QColor(sheet.theme.muted))
    painter.setFont(sheet.font(17))
    place = QRectF(inner.left(), inner.bottom() + 30 * unit, inner.width(), 28 * unit)
    painter.drawText(
        place, Qt.AlignmentFlag.AlignCenter, "share of the plan's way (tools' travel, all moves)"
    )


def _small(
    painter: QPainter, sheet: Sheet, curve: RoomCurve, place: int, box: QRectF, curves: Sequence[RoomCurve]
) -> None:
    unit = sheet.unit
    inner = box.adjusted(60 * unit, 36 * unit, -92 * unit, -30 * unit)
    plot = _Plot(painter, sheet, inner, *scale_of(curves))
    head = QRectF(box.left(), box.top(), box.width(), 28 * unit)
    painter.setPen(QColor(sheet.theme.text))
    painter.setFont(sheet.font(17, bold=True))
    painter.drawText(head, Qt.AlignmentFlag.AlignLeft, f"{LETTERED[place]}  {curve.title}")
    plot.frame(14, words=False)
    for share in _begun(curve):
        painter.setPen(QPen(QColor(sheet.theme.grid), 1.0 * sheet.line_unit))
        painter.drawLine(plot.at(share, plot.low), plot.at(share, plot.high))
    for room in curve.parts_m.values():
        plot.line(curve.progress, room, 1.6, 0, sheet.theme.muted)
    nearest = curve.nearest(curve.least_at)
    plot.line(curve.progress, curve.parts_m[nearest], 3.0, place % len(DASHES), sheet.theme.text)
    ends = [float(room[-1]) for room in curve.parts_m.values()]
    plot.names(ends, list(curve.parts_m), 14, sheet.theme.text)


def _begun(curve: RoomCurve) -> list[float]:
    """Return at which shares of the way a move that takes a way begins."""
    return [
        float(curve.progress[k])
        for k, (a, b) in enumerate(pairwise(curve.move.tolist()), start=1)
        if a != b and 0.0 < curve.progress[k] < 1.0
    ]
