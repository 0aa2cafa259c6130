"""Force over opening, with a cursor at the moment shown."""

from __future__ import annotations

import pyqtgraph as pg
from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QSizePolicy

from sim.units import Units, force, length
from ui.panels.look import Look
from ui.state.reading import Reading
from ui.state.tongue import decimals, tr

LABELLED_PX = 120


class NumberedAxis(pg.AxisItem):
    """An axis whose numbers have the decimal mark of the language spoken."""

    def tickStrings(self, values: list[float], scale: float, spacing: float) -> list[str]:
        """Return the numbers beside the ticks."""
        return [decimals(words) for words in super().tickStrings(values, scale, spacing)]


class ForcePlot(pg.PlotWidget):
    """The curve of the move shown.

    Attributes
    ----------
    wished : emitted with the index of the moment of the move that was clicked
    """

    wished = Signal(int)

    def __init__(self) -> None:
        super().__init__(axisItems={side: NumberedAxis(side) for side in ("left", "bottom")})
        self._reading, self._units, self._look = Reading(), Units.METRIC, Look()
        self.setMenuEnabled(False)
        self.setMouseEnabled(x=False, y=False)
        self.hideButtons()
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.viewport().setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setAccessibleName(tr("Force of the tips over their opening"))
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setMinimumHeight(80)
        self.setMaximumHeight(380)
        self._curve = self.plot([], [])
        self._events = pg.ScatterPlotItem(symbol="d", size=11)
        self._cursor = pg.InfiniteLine(angle=90, movable=False)
        self._here = pg.ScatterPlotItem(symbol="o", size=9)
        for item in (self._events, self._cursor, self._here):
            self.addItem(item, ignoreBounds=True)
        self.set_look(self._look)

    def sizeHint(self) -> QSize:
        """Return a modest size; the column gives more where there is room."""
        return QSize(240, 80)

    def set_look(self, look: Look) -> None:
        """Draw in another look."""
        self._look = look
        ink, quiet = look.colour("ink"), look.colour("quiet")
        self.setBackground(look.colour("paper"))
        self._curve.setPen(pg.mkPen(ink, width=2))
        self._cursor.setPen(pg.mkPen(quiet, width=1))
        self._events.setPen(pg.mkPen(ink))
        self._events.setBrush(pg.mkBrush(look.colour("paper")))
        self._here.setBrush(pg.mkBrush(ink))
        self._here.setPen(pg.mkPen(look.colour("paper")))
        for side in ("left", "bottom"):
            axis = self.getAxis(side)
            axis.setPen(pg.mkPen(look.colour("hairline")))
            axis.setTextPen(pg.mkPen(quiet))
            axis.setTickFont(look.font("small"))
            axis.label.setFont(look.font("small"))
            axis.setTickDensity(0.6 if look.scale == 1.0 else 0.35)
            axis.setStyle(maxTickLevel=0)
        self.getAxis("left").setWidth(round(3.9 * look.px("small")))
        self._titles()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Leave out words and numbers that a low plot has no room for; the heading has the units."""
        super().resizeEvent(event)
        if getattr(self, "_look", None) is not None:  # the library resizes while it is being made
            self._fit()

    def _fit(self) -> None:
        room = self.height() >= LABELLED_PX * self._look.scale
        axis = self.getAxis("left")
        axis.showLabel(room)
        self.getAxis("bottom").showLabel(room)
        # two numbers or three where more would stand into each other
        axis.setTickDensity((0.6 if self._look.scale == 1.0 else 0.35) if room else 0.2)
        axis.setStyle(hideOverlappingLabels=True)

    def show_reading(self, reading: Reading, units: Units) -> None:
        """Show the curve, its events and the cursor of a moment."""
        told = (units, reading.pressed, reading.ram)
        changed = told != (self._units, self._reading.pressed, self._reading.ram)
        self._reading, self._units = reading, units
        if changed:
            self._titles()
        opening = [length(o, units)[0] for o, _ in reading.curve]
        push = [force(f, units)[0] for _, f in reading.curve]
        self._curve.setData(opening, push)
        self._events.setData(
            [length(o, units)[0] for o, _, _ in reading.marks],
            [force(f, units)[0] for _, f, _ in reading.marks],
        )
        self._cursor.setVisible(bool(opening))
        self._here.setVisible(bool(opening))
        self.setXRange(0.0, max([*opening, length(0.02, units)[0]]), padding=0.02)
        self.setYRange(0.0, max([*push, force(1000.0, units)[0]]) * 1.08, padding=0.0)
        if opening:
            at = min(reading.cursor, len(opening) - 1)
            self._cursor.setValue(opening[at])
            self._here.setData([opening[at]], [push[at]])

    def mousePressEvent(self, event) -> None:
        """Ask for the moment under the pointer."""
        if event.button() != Qt.MouseButton.LeftButton or not self._reading.curve:
            return
        x = self.plotItem.vb.mapSceneToView(self.mapToScene(event.position().toPoint())).x()
        away = [abs(length(o, self._units)[0] - x) for o, _ in self._reading.curve]
        self.wished.emit(away.index(min(away)))

    def _titles(self) -> None:
        colour = self._look.colour("quiet").name()
        style = {"color": colour, "font-size": f"{self._look.px('small')}px"}
        way = tr("travel") if self._reading.pressed or self._reading.ram else tr("opening")
        self.setLabel("bottom", f"{way}, {length(0.0, self._units)[1]}", **style)
        self.setLabel("left", f"{tr('force')}, {force(0.0, self._units)[1]}", **style)
        for side in ("left", "bottom"):
            # Naming an axis turns its prefixes on again: inches would be written in thousandths.
            self.getAxis(side).enableAutoSIPrefix(False)
        self._fit()  # naming an axis shows its name, whatever the room
