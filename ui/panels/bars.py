"""The ladder and the ledger: bars that read in grey, from the back row."""

from __future__ import annotations

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QBrush, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from sim.outcome import rung_words
from sim.units import Units, energy_text
from ui.panels.look import Look
from ui.state.reading import LEAST_J, Reading
from ui.state.tongue import decimals, tr

BRUSHES = (
    Qt.BrushStyle.SolidPattern,
    Qt.BrushStyle.BDiagPattern,
    Qt.BrushStyle.Dense5Pattern,
    Qt.BrushStyle.FDiagPattern,
    Qt.BrushStyle.Dense6Pattern,
    Qt.BrushStyle.CrossPattern,
)

UNLOADED = 0.005
"""A share below this is written 0 % and says nothing."""
IDLE_J = 0.5
"""Work in all that would be written as 0 J."""


class Painted(QWidget):
    """A widget that paints itself in a look; its height follows the size of type."""

    def __init__(self) -> None:
        super().__init__()
        self.look = Look()
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def set_look(self, look: Look) -> None:
        """Paint in another look."""
        self.look = look
        self.updateGeometry()
        self.update()


class Ladder(Painted):
    """The parts nearest to giving: a bar each, full when it happens."""

    def __init__(self) -> None:
        super().__init__()
        self._rows = 5
        self._reading = Reading()
        self.setAccessibleName(tr("How near each part is to giving"))

    def show_reading(self, reading: Reading) -> None:
        """Show the ladder of a moment."""
        self._reading = reading
        words = "; ".join(f"{r.part}, {r.event}: {r.demand_ratio:.0%}" for r in reading.rungs)
        self.setAccessibleDescription(tr(words))
        self.update()

    @property
    def tells(self) -> bool:
        """Whether any part is loaded."""
        return any(rung.demand_ratio >= UNLOADED for rung in self._reading.rungs)

    def set_rows(self, rows: int) -> None:
        """Show at most that many parts."""
        if rows != self._rows:
            self._rows = rows
            self.updateGeometry()
            self.update()

    def sizeHint(self) -> QSize:
        """Return room for the rows."""
        return QSize(200, self._rows * self._row())

    def _row(self) -> int:
        return round(self.look.px("small") * 1.9)

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Draw part and event over each bar's start, and the share at the right."""
        painter = QPainter(self)
        painter.setFont(self.look.font("small"))
        row = self._row()
        rungs = [rung for rung in self._reading.rungs[: self._rows] if rung.demand_ratio >= UNLOADED]
        for index, rung in enumerate(rungs):
            self._draw_rung(painter, index * row, rung.part, rung.event, rung.demand_ratio)
        if not rungs:
            painter.setPen(self.look.colour("quiet"))
            area = QRectF(0, 0, self.width(), row)
            words = tr("Kept shut") if self._reading.shut else tr("Nothing is loaded yet")
            painter.drawText(area, Qt.AlignmentFlag.AlignVCenter, words)
        painter.end()

    def _draw_rung(self, painter: QPainter, top: int, part: str, event: str, ratio: float) -> None:
        look, width, row = self.look, self.width(), self._row()
        given = ratio >= 1.0
        text = QRectF(0, top, width, row - 7)
        painter.setPen(look.colour("ink"))
        painter.setFont(look.font("small", strong=given))
        words = tr(rung_words(part, event))
        share = tr("gives") if given else decimals(f"{min(ratio, 0.99):.0%}")
        room = width - painter.fontMetrics().horizontalAdvance(tr("gives")) - 12
        words = painter.fontMetrics().elidedText(words, Qt.TextElideMode.ElideRight, room)
        painter.drawText(text, Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignBottom, words)
        painter.drawText(text, Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignBottom, share)
        bar = QRectF(0, top + row - 6, width, 4)
        painter.fillRect(bar, look.colour("hairline"))
        filled = QRectF(0, bar.top(), width * min(max(ratio, 0.0), 1.0), bar.height())
        painter.fillRect(filled, look.colour("ink" if given else "quiet"))


class Ledger(Painted):
    """Where the work went: one bar cut into shares, each with its pattern and its words."""

    def __init__(self) -> None:
        super().__init__()
        self._rows = 4
        self._reading, self._units = Reading(), Units.METRIC
        self.setAccessibleName(tr("Where the work went"))

    def show_reading(self, reading: Reading, units: Units) -> None:
        """Show the ledger of a moment."""
        self._reading, self._units = reading, units
        parts = [f"{tr(s.words)} {energy_text(s.energy_j, units)}" for s in reading.shares]
        self.setAccessibleDescription("; ".join(parts))
        self.update()

    @property
    def tells(self) -> bool:
        """Whether any work has been done."""
        return self._reading.spent_j >= IDLE_J and bool(self._reading.shares)

    def set_rows(self, rows: int) -> None:
        """Show at most that many lines, the last of them what is left over."""
        if rows != self._rows:
            self._rows = rows
            self.updateGeometry()
            self.update()

    def sizeHint(self) -> QSize:
        """Return room for the bar and the lines."""
        return QSize(200, 20 + self._rows * self._row())

    def _row(self) -> int:
        return round(self.look.px("small") * 1.45)

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Draw the cut bar, then a line for each share."""
        painter = QPainter(self)
        painter.setFont(self.look.font("small"))
        shares = self._reading.shares
        total = max(self._reading.spent_j, sum(share.energy_j for share in shares))
        if total <= 0.0:
            painter.setPen(self.look.colour("quiet"))
            area = QRectF(0, 0, self.width(), self._row())
            words = tr("Kept shut") if self._reading.shut else tr("No work has been done yet")
            painter.drawText(area, Qt.AlignmentFlag.AlignVCenter, words)
            painter.end()
            return
        shown = [(tr(share.words), share.energy_j) for share in shares[: self._rows - 1]]
        rest = total - sum(value for _, value in shown)
        if rest > max(0.005 * total, LEAST_J):
            shown.append((tr("the rest"), rest))
        left = 0.0
        for index, (words, value) in enumerate(shown):
            width = self.width() * value / total
            area = QRectF(left, 0, max(1.0, width - 1), 14)
            self._swatch(painter, area, index)
            left += width
            self._draw_line(painter, index, words, value)
        painter.end()

    def _swatch(self, painter: QPainter, area: QRectF, index: int) -> None:
        painter.fillRect(area, self.look.colour("hairline"))
        tone = self.look.colour("quiet" if index == 0 else "ink")
        painter.fillRect(area, QBrush(tone, BRUSHES[index % len(BRUSHES)]))

    def _draw_line(self, painter: QPainter, index: int, words: str, value: float) -> None:
        row = self._row()
        top = 20 + index * row
        self._swatch(painter, QRectF(0, top + row / 2 - 5, 12, 10), index)
        painter.setPen(QPen(self.look.colour("ink")))
        text = QRectF(20, top, self.width() - 20, row)
        number = decimals(energy_text(value, self._units))
        room = self.width() - 32 - painter.fontMetrics().horizontalAdvance(number)
        words = painter.fontMetrics().elidedText(words, Qt.TextElideMode.ElideRight, room)
        painter.drawText(text, Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter, words)
        painter.drawText(text, Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter, number)
