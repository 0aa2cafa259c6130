"""The section inset: where the tip's pad stands, to scale, and how far in and at which tilt."""

from __future__ import annotations

import numpy as np
from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QBrush, QColor, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QGridLayout, QSizePolicy, QVBoxLayout, QWidget

from ui.panels.bars import Painted
from ui.panels.look import GRID, INWARD, OUTWARD
from ui.panels.pieces import IconButton, label, line
from ui.state.section_view import SectionView
from ui.state.tongue import own, tr

DRAWING_PX = 130
"""A drawing lower than this shows nothing: then the words have its room."""
LEFT_M, RIGHT_M, TOP_M, BOTTOM_M = -0.046, 0.150, 0.056, -0.128
"""What of the section is drawn [m]: the same for every depth, so that the eye sees the tip move."""


class SectionDrawing(Painted):
    """Hem, seam, shut face, bend and inner panel with the tip beside them."""

    def __init__(self) -> None:
        super().__init__()
        self._view: SectionView | None = None
        self._outward = 0.0
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setMinimumHeight(DRAWING_PX)
        self.setAccessibleName(tr("Section across the edge of the door"))

    def sizeHint(self) -> QSize:
        """Return room for the section at about its own proportions."""
        return QSize(240, 180)

    def show_view(self, view: SectionView | None, outward: float) -> None:
        """Show a section; `outward` is the outboard share of the push, -1 to 1."""
        self._view, self._outward = view, outward
        self.update()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Draw what stands still, the sheets, the tip and its push."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setFont(self.look.font("small"))
        if self._view is None:
            painter.setPen(self.look.colour("quiet"))
            words = tr("The section is drawn for tips in a gap at the door's edge.")
            painter.drawText(self.rect(), Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextWordWrap, words)
            painter.end()
            return
        self._draw(painter, self._view)
        painter.end()

    def _scale(self) -> float:
        return min(self.width() / (RIGHT_M - LEFT_M), self.height() / (TOP_M - BOTTOM_M))

    def _points(self, line_m: np.ndarray) -> QPolygonF:
        scale = self._scale()
        left = 0.5 * (self.width() - scale * (RIGHT_M - LEFT_M))
        top = 0.5 * (self.height() - scale * (TOP_M - BOTTOM_M))
        return QPolygonF([QPointF(left + scale * (x - LEFT_M), top + scale * (TOP_M - y)) for x, y in line_m])

    def _draw(self, painter: QPainter, view: SectionView) -> None:
        ink, quiet = self.look.colour("ink"), self.look.colour("quiet")
        painter.setPen(QPen(quiet, 1))
        painter.setBrush(QBrush(quiet, Qt.BrushStyle.BDiagPattern))
        painter.drawPolygon(self._points(view.still))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(QPen(QBrush(quiet), 3, Qt.PenStyle.SolidLine, Qt.PenCapStyle.RoundCap))
        for sheet in (view.shut_face, view.inner_panel):
            painter.drawPolyline(self._points(sheet))
        painter.setPen(QPen(QBrush(ink), 3, Qt.PenStyle.SolidLine, Qt.PenCapStyle.RoundCap))
        for sheet in (view.skin, view.hem):
            painter.drawPolyline(self._points(sheet))
        self._draw_seam(painter, view)
        self._draw_tip(painter, view)
        self._draw_words(painter, view)

    def _draw_seam(self, painter: QPainter, view: SectionView) -> None:
        """Draw the bead of the seam as stitches between skin and folded lip."""
        first, last = view.hem[0], view.hem[-1]
        fold = view.hem[1]
        painter.setPen(QPen(self.look.colour("paper"), 1.2))
        for share in (0.2, 0.45, 0.7, 0.95):
            upper = fold + share * (first - fold)
            lower = view.hem[2] + share * (last - view.hem[2])
            painter.drawPolyline(self._points(np.array([upper, lower])))

    def _draw_tip(self, painter: QPainter, view: SectionView) -> None:
        painter.setPen(QPen(self.look.colour("ink"), 1))
        painter.setBrush(self.look.colour("fill"))
        painter.drawPolygon(self._points(view.tip))
        painter.setPen(
            QPen(QBrush(self.look.colour("ink")), 4, Qt.PenStyle.SolidLine, Qt.PenCapStyle.FlatCap)
        )
        painter.drawPolyline(self._points(view.pad))
        start = view.pad.mean(axis=0)
        colour = OUTWARD if self._outward > 0.02 else INWARD if self._outward < -0.02 else None
        pen = QPen(self.look.colour("ink") if colour is None else QColor(colour), 2.5)
        painter.setPen(pen)
        painter.setBrush(pen.color())
        shaft = self._points(np.array([start, start + 0.042 * view.push]))
        painter.drawLine(shaft[0], shaft[1])
        along = shaft[1] - shaft[0]
        length = max(1e-6, (along.x() ** 2 + along.y() ** 2) ** 0.5)
        unit = QPointF(along.x() / length, along.y() / length)
        across = QPointF(-unit.y(), unit.x())
        head = [shaft[1] + 3 * unit, shaft[1] - 9 * unit + 5 * across, shaft[1] - 9 * unit - 5 * across]
        painter.drawPolygon(QPolygonF(head))

    def _draw_words(self, painter: QPainter, view: SectionView) -> None:
        painter.setPen(self.look.colour("quiet"))
        height = painter.fontMetrics().height()
        skin = self._points(view.skin)[0]
        panel = self._points(view.inner_panel)[-1]
        right = Qt.AlignmentFlag.AlignRight
        for point, above, words in ((skin, True, tr("outer skin")), (panel, True, tr("inner panel"))):
            top = point.y() - height - 4 if above else point.y() + 4
            painter.drawText(QRectF(self.width() - 160, top, 158, height), right, words)
        bend = self._points(view.bend[None, :])[0]
        low = bend.y() + 0.4 * height
        width = painter.fontMetrics().horizontalAdvance(tr("inner bend"))
        left = max(0.0, bend.x() - width - 10)
        painter.drawLine(QPointF(left + width + 3, low + 0.5 * height), QPointF(bend.x() - 2, bend.y() + 3))
        painter.fillRect(QRectF(left - 2, low, width + 4, height), self.look.colour("paper"))
        painter.drawText(QRectF(left, low, width + 2, height), Qt.AlignmentFlag.AlignLeft, tr("inner bend"))


class SkinShare(Painted):
    """How much of the push the skin's lip carries, as one bar."""

    def __init__(self) -> None:
        super().__init__()
        self._share = 0.0

    def sizeHint(self) -> QSize:
        """Return a thin bar."""
        return QSize(100, 8)

    def show_share(self, share: float) -> None:
        """Show a share, 0 to 1."""
        self._share = share
        self.update()

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Draw the bar: the skin's part solid, the rest hatched for the inner panel."""
        painter = QPainter(self)
        cut = self.width() * min(max(self._share, 0.0), 1.0)
        rest = QRectF(cut, 0, self.width() - cut, 8)
        painter.fillRect(rest, self.look.colour("hairline"))
        painter.fillRect(rest, QBrush(self.look.colour("quiet"), Qt.BrushStyle.BDiagPattern))
        painter.fillRect(QRectF(0, 0, cut, 8), self.look.colour("ink"))
        painter.end()


NONE = "\u2013"
"""Stands for a value that a move has not."""


class SectionPanel(QWidget):
    """The lower part of the left column: the switch of the whole lesson.

    Attributes
    ----------
    depth_turned, tilt_turned : emitted with +1 or -1
    """

    depth_turned = Signal(int)
    tilt_turned = Signal(int)

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("column")
        self.drawing, self.share = SectionDrawing(), SkinShare()
        self._seat, self._split = label("", "", wrap=True), label("", "quiet", wrap=True)
        self._depth, self._tilt = label("", ""), label("", "")
        column = QVBoxLayout(self)
        column.setContentsMargins(GRID, 0, GRID, GRID)
        column.setSpacing(GRID // 2)
        column.addWidget(line())
        column.addWidget(self._seat)
        column.addWidget(self.drawing, 1)
        column.addWidget(self.share)
        column.addWidget(self._split)
        self._turns = self._switches()
        column.addLayout(self._turns)
        self._room_px = 10_000.0

    def set_room(self, height_px: float) -> None:
        """Leave the drawing out where this height holds no more than the words."""
        self._room_px = height_px
        self._fit()

    def _fit(self) -> None:
        width = max(1, self.width() - 2 * GRID)
        words = sum(part.heightForWidth(width) for part in (self._seat, self._split))
        need = words + self._turns.sizeHint().height() + DRAWING_PX + 8 + 4 * GRID
        self.drawing.setVisible(need <= self._room_px)
        # what it does not need is the plan's
        upright = QSizePolicy.Policy.Preferred if need <= self._room_px else QSizePolicy.Policy.Maximum
        self.setSizePolicy(QSizePolicy.Policy.Preferred, upright)

    def _switches(self) -> QGridLayout:
        grid = QGridLayout()
        grid.setVerticalSpacing(0)
        rows = ((tr("Depth"), self._depth, self.depth_turned, "[ and ], with Shift for more"),
                (tr("Tilt"), self._tilt, self.tilt_turned, ", and ."))  # fmt: skip
        self._tilt_row: list[QWidget] = []
        for row, (words, value, turned, keys) in enumerate(rows):
            less = IconButton("minus", own(f"{words}: {tr('less')} ({tr(keys)})"), size=14)
            more = IconButton("plus", own(f"{words}: {tr('more')} ({tr(keys)})"), size=14)
            for made, way in ((less, -1), (more, 1)):
                made.setAutoRepeat(True)
                made.clicked.connect(lambda _=False, turned=turned, way=way: turned.emit(way))
            value.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
            for column, part in enumerate((label(words, "quiet"), value, less, more)):
                grid.addWidget(part, row, column)
                if value is self._tilt:
                    self._tilt_row.append(part)
        grid.setColumnStretch(1, 1)
        return grid

    def show_section(self, view: SectionView | None, outward: float) -> None:
        """Show the drawing."""
        self.drawing.show_view(view, outward)

    def show_words(self, *, seat: str, split: str, share: float | None, depth: str, tilt: str) -> None:
        """Show the tip's seat, the skin's share in words and as a bar, and the two values."""
        self._seat.setText(seat)
        self._split.setText(split)
        self.share.setVisible(share is not None)
        self.share.show_share(share or 0.0)
        self._depth.setText(depth)
        self._tilt.setText(tilt)
        for part in self._tilt_row:  # a push without a tilt has none to show and none to turn
            part.setVisible(tilt != NONE)
        self.drawing.setAccessibleDescription(tr(f"{seat} {split}"))
        self._fit()
