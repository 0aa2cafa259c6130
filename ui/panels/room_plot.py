"""Room to each body part, or the exit width, along the tools' way: lines told by word, strokes and tone.

A click on it asks for the moment there.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QFontMetricsF, QMouseEvent, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QSizePolicy

from sim.units import Units, length
from ui.panels.bars import Painted
from ui.panels.look import Look
from ui.state.plotting import spread_out, ticks
from ui.state.room_now import NEAREST, RoomNow
from ui.state.tongue import decimals, tr

STROKES: dict[str, tuple[float, ...]] = {
    "head": (),
    "trunk": (7.0, 3.0),
    "hip": (1.5, 2.5),
    "thigh": (8.0, 2.5, 1.5, 2.5),
    "lower leg": (3.0, 1.5),
}
"""Strokes and gaps of a line, in its own widths; a line not named here is drawn through."""
INKS: dict[str, tuple[str, str, str]] = {
    "trunk": ("#00705a", "#3fc79f", "#005a44"),
    "hip": ("#9a3f74", "#e29bc4", "#8c2f68"),
    "thigh": ("#855800", "#f0b429", "#704800"),
    "lower leg": ("#565c63", "#a9b0b7", "#303030"),
}
"""Tones in the light theme, the dark one and on a projector; a line not named here has the ink of the theme.

Hues of Okabe and Ito's palette, darkened or lightened until each stands out from its ground, without the two
that say outward and inward.
"""
LEAST_PX = 110
THIN, THICK = 1.6, 3.0
LOW_ROWS, TALL_ROWS = 3, 7
"""Marks at most on the upright axis."""
NAMED_ROWS = 8
"""Height in lines of type from which the lower axis has its words."""


ROOM_PLOT, EXIT_PLOT = "Room to each body part", "Exit width"
TIPS = {
    ROOM_PLOT: "From the nearest point of any sheet; the line on the stage is to a node of the inner metal",
    EXIT_PLOT: (
        "The longest stretch between the pillars with no metal in it, from hip to shoulder; no rule says how "
        "much is enough: local procedure and who treats the patient decide"
    ),
}
"""What is told and what is not, for each plot by its name."""


@dataclass(frozen=True)
class Level:
    """A level drawn through: where [m], and its word ("" for none)."""

    at_m: float
    words: str = ""


class RoomPlot(Painted):
    """One plot over the tools' way.

    Attributes
    ----------
    place_wished : emitted with the place, in the whole row of moments, of the one clicked
    """

    place_wished = Signal(int)

    def __init__(self, name: str) -> None:
        super().__init__()
        self._room: RoomNow | None = None
        self.setToolTip(tr(TIPS[name]))
        self._lines: dict[str, tuple[float, ...]] = {}
        self._far: dict[str, float] = {}
        self._levels: tuple[Level, ...] = ()
        self._units = Units.METRIC
        self._box = QRectF()
        self._low, self._high = 0.0, 1.0
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setMinimumHeight(LEAST_PX)
        self.setAccessibleName(tr(name))
        self.setCursor(Qt.CursorShape.PointingHandCursor)

    def sizeHint(self) -> QSize:
        """Return a modest size; the column gives more where there is room."""
        return QSize(240, 80)

    def show_parts(self, room: RoomNow, units: Units) -> None:
        """Show the room to each body part; where it was least at first is drawn through."""
        self._far = {name: room.lines_m[name][room.cursor] for name in room.far}
        near = {name: values for name, values in room.lines_m.items() if name not in self._far}
        self._show(room, near, (Level(room.at_first_m),), units)

    def show_exit(self, room: RoomNow, units: Units) -> None:
        """Show the exit width, with the breadth of this person's shoulders beside it."""
        wide = room.shoulders_m
        self._show(room, {"": room.exit_m}, () if wide is None else (Level(wide, "shoulders"),), units)

    def _show(
        self, room: RoomNow, lines: dict[str, tuple[float, ...]], levels: Sequence[Level], units: Units
    ) -> None:
        self._room, self._lines, self._levels, self._units = room, lines, tuple(levels), units
        self.setAccessibleDescription(tr(room.told(units)))
        self.update()

    def place_at(self, x: float) -> int:
        """Return the moment whose way is nearest to a place across the plot [px]."""
        assert self._room is not None
        away = [abs(self._x(way) - x) for way in self._room.way_m]
        least = min(away)
        near = [k for k, far in enumerate(away) if far - least < 0.5]
        shown = self._room.cursor  # of moments at one way the shown one, else the last
        return shown if shown in near else near[-1]

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Ask for the moment under the pointer."""
        if event.button() == Qt.MouseButton.LeftButton and self._room is not None:
            self.place_wished.emit(self.place_at(event.position().x()))

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Ask for the moments the pointer is drawn over."""
        if event.buttons() & Qt.MouseButton.LeftButton and self._room is not None:
            self.place_wished.emit(self.place_at(event.position().x()))

    # --- drawing -----------------------------------------------------------------------------------------

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Draw axes, levels, lines and their words, and where the moment shown stands."""
        if self._room is None:
            return
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setFont(self.look.font("small"))
        metrics = QFontMetricsF(painter.font())
        self._fit(metrics)
        self._draw_axes(painter, metrics)
        for level in self._levels:
            self._draw_level(painter, level)
        self._draw_lines(painter)
        self._draw_words(painter, metrics)
        self._draw_moment(painter)
        painter.end()

    def _fit(self, metrics: QFontMetricsF) -> None:
        assert self._room is not None
        row = metrics.height()
        values = [value for line in self._lines.values() for value in line]
        values += [level.at_m for level in self._levels]
        low, high = min(0.0, *values), max(0.02, *values)
        self._low, self._high = low - 0.04 * (high - low) * (low < 0.0), high + 0.06 * (high - low)
        words = [tr(name) for name in self._lines] + [tr(level.words) for level in self._levels]
        words += [self._far_words(name) for name in self._far]
        wide = max(metrics.horizontalAdvance(word) for word in words)
        numbers = [self._number(value) for value in self._marks()]
        left = max(metrics.horizontalAdvance(number) for number in numbers) + 8.0
        named = self.height() >= NAMED_ROWS * row
        self._box = QRectF(
            left, 0.5 * row, self.width() - left - wide - 10.0, self.height() - (2.6 if named else 1.7) * row
        )

    def _marks(self) -> tuple[float, ...]:
        """Return the marks of the upright axis, in the reader's unit."""
        rows = self.height() / QFontMetricsF(self.look.font("small")).height()
        most = int(min(TALL_ROWS, max(LOW_ROWS, rows / 2.2)))
        return ticks(self._shown(self._low), self._shown(self._high), most)

    def _shown(self, value_m: float) -> float:
        return length(value_m, self._units)[0]

    def _number(self, shown: float) -> str:
        return decimals(f"{shown:.10g}".replace("-", "\u2212"))

    @property
    def _whole_m(self) -> float:
        assert self._room is not None
        return max(self._room.way_m[-1], 0.01)

    def _x(self, way_m: float) -> float:
        return self._box.left() + way_m / self._whole_m * self._box.width()

    def _y(self, value_m: float) -> float:
        share = (value_m - self._low) / (self._high - self._low)
        return self._box.bottom() - share * self._box.height()

    def _draw_axes(self, painter: QPainter, metrics: QFontMetricsF) -> None:
        assert self._room is not None
        look, box, row = self.look, self._box, metrics.height()
        one = self._shown(1.0)
        right = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
        for mark in self._marks():
            y = self._y(mark / one)
            if not box.top() - 1.0 <= y <= box.bottom() + 1.0:
                continue
            painter.setPen(QPen(look.colour("quiet" if mark == 0.0 else "hairline"), 1.0))
            painter.drawLine(QPointF(box.left(), y), QPointF(box.right(), y))
            painter.setPen(look.colour("quiet"))
            painter.drawText(QRectF(0.0, y - row, box.left() - 6.0, 2.0 * row), right, self._number(mark))
        for way in self._room.begun_m:
            painter.setPen(QPen(look.colour("hairline"), 1.0))
            painter.drawLine(QPointF(self._x(way), box.top()), QPointF(self._x(way), box.bottom()))
        painter.setPen(look.colour("quiet"))
        most = int(max(2, box.width() / (5.0 * metrics.horizontalAdvance("0"))))
        for mark in ticks(0.0, self._shown(self._whole_m), min(most, 6)):
            place = QRectF(self._x(mark / one) - 3 * row, box.bottom() + 2.0, 6 * row, row)
            painter.drawText(place, Qt.AlignmentFlag.AlignCenter, self._number(mark))
        if self.height() >= NAMED_ROWS * row:
            unit = length(0.0, self._units)[1]
            place = QRectF(0.0, box.bottom() + 1.05 * row, self.width(), row)
            painter.drawText(place, Qt.AlignmentFlag.AlignHCenter, f"{tr('way of the tools')}, {unit}")

    def _draw_level(self, painter: QPainter, level: Level) -> None:
        pen = QPen(self.look.colour("quiet"), 1.0)
        pen.setDashPattern([2.0, 4.0])
        painter.setPen(pen)
        y = self._y(level.at_m)
        painter.drawLine(QPointF(self._box.left(), y), QPointF(self._box.right(), y))

    def _ink(self, name: str) -> QColor:
        tones = INKS.get(name)
        if tones is None:
            return self.look.colour("ink")
        return QColor(tones[2 if self.look.projector else 1 if self.look.dark else 0])

    def _draw_lines(self, painter: QPainter) -> None:
        assert self._room is not None
        size = 1.5 if self.look.projector else 1.0
        nearest = self._room.nearest
        # what is nearest is drawn last, over the others
        for name in sorted(self._lines, key=lambda name: name == nearest):
            pen = QPen(self._ink(name), size * (THICK if name in (nearest, "") else THIN))
            pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
            pen.setCapStyle(Qt.PenCapStyle.FlatCap)
            strokes = STROKES.get(name, ())
            if strokes:
                pen.setDashPattern(list(strokes))
            painter.setPen(pen)
            pairs = zip(self._room.way_m, self._lines[name], strict=True)
            painter.drawPolyline(QPolygonF([QPointF(self._x(a), self._y(b)) for a, b in pairs]))

    def _draw_words(self, painter: QPainter, metrics: QFontMetricsF) -> None:
        """Write each line's word beside its end; where they do not all fit, those of the widest room go."""
        row, box = metrics.height(), self._box
        ends = [(values[-1], name, name) for name, values in self._lines.items() if name]
        ends += [(level.at_m, level.words, "level") for level in self._levels if level.words]
        ends += [(value, self._far_words(name), name) for name, value in self._far.items()]
        fit = max(1, int((self.height() - 0.6 * row) / (0.92 * row)))
        shown = sorted(ends)[:fit]
        wanted = [max(self._y(end), box.top()) for end, _, _ in shown]
        places = spread_out(wanted, 0.92 * row, 0.4 * row, box.bottom())
        assert self._room is not None
        for (_, words, name), y in zip(shown, places, strict=True):
            strong = name == self._room.nearest and name != NEAREST
            painter.setFont(self.look.font("small", strong=strong))
            painter.setPen(self.look.colour("quiet") if name == "level" else self._ink(name))
            place = QRectF(box.right() + 8.0, y - row, self.width() - box.right() - 8.0, 2.0 * row)
            painter.drawText(place, Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter, tr(words))
        painter.setFont(self.look.font("small"))

    def _far_words(self, name: str) -> str:
        """Return the word of what lies above the plot, with how far metal is from it now."""
        number = round(self._shown(self._far[name]), 0 if self._units is Units.METRIC else 1)
        return f"{tr(name)} \u2191{decimals(f'{number:g}')}"

    def _draw_moment(self, painter: QPainter) -> None:
        assert self._room is not None
        room, look, box = self._room, self.look, self._box
        line = self._lines.get(room.nearest) or next(iter(self._lines.values()))
        painter.setPen(QPen(look.colour("ink"), 1.0))
        painter.setBrush(look.colour("paper"))
        for k in room.marks:
            x, y = self._x(room.way_m[k]), self._y(line[k])
            painter.drawPolygon(
                QPolygonF([QPointF(x, y - 5), QPointF(x + 5, y), QPointF(x, y + 5), QPointF(x - 5, y)])
            )
        x = self._x(room.way_m[room.cursor])
        painter.setPen(QPen(look.colour("quiet"), 1.0))
        painter.drawLine(QPointF(x, box.top()), QPointF(x, box.bottom()))
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(look.colour("ink"))
        painter.drawEllipse(QPointF(x, self._y(line[room.cursor])), 4.5, 4.5)

    def set_look(self, look: Look) -> None:
        """Draw in another look."""
        super().set_look(look)
        self.setMinimumHeight(round(LEAST_PX * max(1.0, 0.75 * look.scale)))
