"""The scrub bar: open the tips, then go to any moment of the plan and to any event in it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QEvent, QPoint, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QHelpEvent, QMouseEvent, QPainter, QPaintEvent, QPen, QPolygonF, QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QMenu, QSizePolicy, QToolTip, QVBoxLayout, QWidget

from sim.units import Units, length, length_si
from ui.panels.bars import Painted
from ui.panels.look import GRID, Look
from ui.panels.number_box import NumberBox
from ui.panels.pieces import IconButton, button, label
from ui.state.playing import Loop
from ui.state.scrubbing import nearest
from ui.state.stops import Stop
from ui.state.tongue import tr

SNAP_PX = 9
STOPS_TIP = "Stop at an event: none chosen (J)"
HOLD_TIP = "Hold to open the tips, let go to stop (hold Space)"
LET_OFF_TIP = "The tool is drawn back and the metal springs back (Space)"


LINE_LEAST_PX = 120
"""What the line of moments keeps of the row."""


@dataclass(frozen=True)
class Moments:
    """What the line shows: how many moments, which one, where moves begin, and the events.

    places : where each moment stands along the line, 0 .. 1; evenly where they are left out
    """

    count: int = 0
    position: int = 0
    starts: tuple[int, ...] = ()
    marks: tuple[tuple[int, str], ...] = ()
    places: tuple[float, ...] = ()

    def place(self, position: int) -> float:
        """Return where a moment stands along the line, 0 .. 1."""
        if position < len(self.places):
            return self.places[position]
        return position / max(1, self.count - 1)

    def at(self, place: float) -> int:
        """Return the moment nearest to a place along the line."""
        if self.places:
            return nearest(place, self.places)
        last = max(0, self.count - 1)
        return min(max(round(place * last), 0), last)


class ScrubLine(Painted):
    """A line of moments with event marks; press or drag to go there.

    Attributes
    ----------
    wished : emitted with the position asked for
    """

    wished = Signal(int)

    def __init__(self) -> None:
        super().__init__()
        self._moments = Moments()
        self.setMouseTracking(True)
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(tr("Moments of the plan"))

    def sizeHint(self) -> QSize:
        """Return room for the marks above the line and the words below."""
        return QSize(320, 22 + round(1.5 * self.look.px("small")))

    def show_moments(self, moments: Moments) -> None:
        """Show a row of moments."""
        if moments != self._moments:
            self._moments = moments
            self.update()

    def _x(self, position: int) -> float:
        return 8 + (self.width() - 16) * self._moments.place(position)

    def _position(self, x: float) -> int:
        for position, _ in self._moments.marks:
            if abs(self._x(position) - x) <= SNAP_PX:
                return position
        return self._moments.at((x - 8) / max(1, self.width() - 16))

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Draw the line, the moves' beginnings, the events with their words, and the handle."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setFont(self.look.font("small"))
        ink, middle = self.look.colour("ink"), 12.0
        painter.setPen(QPen(self.look.colour("fill"), 3))
        painter.drawLine(QPointF(8, middle), QPointF(self.width() - 8, middle))
        here = self._x(self._moments.position) if self._moments.count > 1 else 8.0
        painter.setPen(QPen(ink, 3))
        painter.drawLine(QPointF(8, middle), QPointF(here, middle))
        for start in self._moments.starts:
            x = self._x(start)
            painter.setPen(QPen(self.look.colour("quiet"), 1))
            painter.drawLine(QPointF(x, middle - 8), QPointF(x, middle + 8))
        self._draw_marks(painter, middle)
        painter.setPen(QPen(self.look.colour("paper"), 2))
        painter.setBrush(ink)
        painter.drawEllipse(QPointF(here, middle), 8, 8)
        painter.end()

    def _draw_marks(self, painter: QPainter, middle: float) -> None:
        free = -1.0
        height = painter.fontMetrics().height()
        for position, said in self._moments.marks:
            x, words = self._x(position), tr(said)
            painter.setPen(QPen(self.look.colour("ink"), 1.5))
            painter.setBrush(self.look.colour("paper"))
            diamond = [
                QPointF(x, middle - 6),
                QPointF(x + 6, middle),
                QPointF(x, middle + 6),
                QPointF(x - 6, middle),
            ]
            painter.drawPolygon(QPolygonF(diamond))
            width = painter.fontMetrics().horizontalAdvance(words) + 12
            left = min(max(x - width / 2, 0.0), self.width() - width)
            if left >= free:
                painter.setPen(self.look.colour("quiet"))
                painter.drawText(QRectF(left, 22, width, height), Qt.AlignmentFlag.AlignCenter, words)
                free = left + width

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Go to the moment pressed, or to the event near it."""
        if event.button() == Qt.MouseButton.LeftButton and self._moments.count:
            self.wished.emit(self._position(event.position().x()))

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Follow a drag."""
        if event.buttons() & Qt.MouseButton.LeftButton and self._moments.count:
            self.wished.emit(self._position(event.position().x()))

    def event(self, event: QEvent) -> bool:
        """Name the events under the pointer."""
        if isinstance(event, QHelpEvent):
            near = [w for p, w in self._moments.marks if abs(self._x(p) - event.pos().x()) <= SNAP_PX]
            QToolTip.showText(event.globalPos(), "\n".join(near), self)
            return True
        return super().event(event)


def _taken(part: QWidget) -> int:
    """Return how much of the row a control takes [px]."""
    return max(part.sizeHint().width(), part.minimumWidth()) + GRID


class ScrubBar(QWidget):
    """The bar below the stage.

    Attributes
    ----------
    pressed, released : the button that opens the tips is held, and let go
    run_wished : emitted with an opening [m]
    position_wished : emitted with a moment
    start_wished, stop_wished, play_wished, go_on_wished, pace_wished, loop_wished : the other buttons
    stops_wished : emitted when the events to stop at are to be listed
    stop_turned : emitted with the kind of event that is chosen, or no longer
    """

    pressed = Signal()
    released = Signal()
    run_wished = Signal(float)
    position_wished = Signal(int)
    start_wished = Signal()
    stop_wished = Signal()
    play_wished = Signal()
    go_on_wished = Signal()
    pace_wished = Signal()
    loop_wished = Signal()
    stops_wished = Signal()
    stop_turned = Signal(str)

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("scrub")
        self._units = Units.METRIC
        self._look = Look()
        self._exact_m = 0.1
        self.line = ScrubLine()
        self._hold()
        self.back = IconButton("back", "Back to the start (Home)")
        self.play = IconButton("play", "Play the moments (P)")
        self.pace = button("1\u00d7", "bare")
        self.loop = IconButton("loop", "")
        self.halt = IconButton("halt", STOPS_TIP)
        self.halt.setText("0")
        self._stops = QMenu(self)
        self._stops.setTitle(tr("Stop at an event"))
        self.stop = button("Stop", "", "Give up what is being worked out (Esc)")
        self.go_on = button("Go on from here", "", "Cut the move at this moment and push on from there")
        self.go = button("Run to", "", "Run the plan; this move to the opening beside")
        self.opening = NumberBox()
        self.opening.setAccessibleName(tr("Opening of the tips to run to"))
        self.opening.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self._narrow = self._line_above = False
        self.now = label("", "")
        self.now.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        row = self._row = QHBoxLayout()
        row.setSpacing(GRID)
        for part in (self.open, self.go, self.opening, self.halt, self.stop, self.back, self.play):
            row.addWidget(part)
        row.addWidget(self.pace)
        row.addWidget(self.loop)
        row.addWidget(self.line, 1)
        self._gap = QWidget()
        self._gap.hide()
        row.addWidget(self._gap, 1)
        row.addWidget(self.now)
        row.addWidget(self.go_on)
        column = self._column = QVBoxLayout(self)
        column.setContentsMargins(2 * GRID, GRID // 2, 2 * GRID, GRID // 2)
        column.addLayout(row)
        self._connect()
        self.set_units(Units.METRIC)

    def _hold(self) -> None:
        self.open = button("Open the tips", "primary", HOLD_TIP)
        self.open.pressed.connect(self.pressed)
        self.open.released.connect(self.released)

    def _connect(self) -> None:
        self.line.wished.connect(self.position_wished)
        self.back.clicked.connect(self.start_wished)
        self.play.clicked.connect(self.play_wished)
        self.pace.clicked.connect(self.pace_wished)
        self.loop.clicked.connect(self.loop_wished)
        self.halt.clicked.connect(self.ask_stops)
        self.stop.clicked.connect(self.stop_wished)
        self.go_on.clicked.connect(self.go_on_wished)
        self.go.clicked.connect(self._run)
        self.opening.lineEdit().returnPressed.connect(self._run)

    def _run(self) -> None:
        self.opening.interpretText()
        self.run_wished.emit(self._asked())

    def _asked(self) -> float:
        """Return the opening asked for [m]; a number left as shown means its exact value."""
        exact = length(self._exact_m, self._units)[0]
        left = abs(self.opening.value() - exact) <= 0.5 * 10.0 ** -self.opening.decimals() + 1e-9
        return self._exact_m if left else length_si(self.opening.value(), self._units)

    def set_look(self, look: Look) -> None:
        """Keep the look for the play button, and give the number room."""
        self._look = look
        self.opening.setFixedWidth(round(96 * look.scale))

    def set_units(self, units: Units) -> None:
        """Write openings in other units."""
        self._exact_m = self._asked()
        self._units = units
        metric = units is Units.METRIC
        self.opening.setDecimals(0 if metric else 1)
        self.opening.setSuffix("\u00a0" + length(0.0, units)[1])
        self.opening.setRange(*(length(v, units)[0] for v in (0.0025, 0.66)))
        self.opening.setSingleStep(10 if metric else 0.5)
        self.opening.setValue(length(self._exact_m, units)[0])

    def show_opening(self, opening_m: float | None) -> None:
        """Show how far the selected move opens, unless someone is typing there; None where nothing opens."""
        self.go.setText("Run" if opening_m is None else "Run to")
        self.opening.setVisible(opening_m is not None)
        self.open.setToolTip(LET_OFF_TIP if opening_m is None else HOLD_TIP)
        if opening_m is None:
            self.opening.clearFocus()
        elif not self.opening.hasFocus():
            self._exact_m = opening_m
            self.opening.setValue(length(opening_m, self._units)[0])

    def show_moments(self, moments: Moments, now: str) -> None:
        """Show the row of moments and where it stands in words."""
        self.line.show_moments(moments)
        self.now.setText(now)
        self._fit()

    def show_able(self, *, can_open: bool, can_run: bool, can_stop: bool, can_go_on: bool, verb: str) -> None:
        """Enable what can be done."""
        self.open.setText(verb)
        self.open.setEnabled(can_open)
        self.go.setEnabled(can_run)
        self.stop.setVisible(can_stop)
        self.go_on.setVisible(can_go_on)
        self._fit()

    def show_playing(self, playing: bool) -> None:
        """Show whether the moments are being played."""
        self.play.set_icon("pause" if playing else "play", self._look)

    def show_manner(self, pace: int, loop: Loop, words: str) -> None:
        """Show how the moments are played."""
        self.pace.setText({1: "1\u00d7", 2: "\u00bd\u00d7", 4: "\u00bc\u00d7", 8: "\u215b\u00d7"}[pace])
        self.pace.setToolTip(f"Played at {words} (W)")
        self.pace.setAccessibleName(f"Slow motion: {words}")
        self.loop.setToolTip(f"Played at {words} (Y)")
        self.loop.setAccessibleName(f"Again and again: {words}")
        self.loop.setText({Loop.OFF: "", Loop.ALL: "all", Loop.EVENT: "event"}[loop])
        only = Qt.ToolButtonStyle.ToolButtonIconOnly
        beside = Qt.ToolButtonStyle.ToolButtonTextBesideIcon
        self.loop.setToolButtonStyle(only if loop is Loop.OFF else beside)

    def ask_stops(self) -> None:
        """Open the list of events to stop at."""
        self.stops_wished.emit()
        if not self._stops.isEmpty():
            up = self._stops.sizeHint().height()
            self._stops.popup(self.halt.mapToGlobal(QPoint(0, -up)))

    def show_stops(self, stops: Sequence[Stop]) -> None:
        """List the events to stop at, the chosen ones ticked."""
        self._stops.clear()
        for stop in stops:
            action = self._stops.addAction(tr(stop.words))
            action.setCheckable(True)
            action.setChecked(stop.on)
            action.triggered.connect(lambda _=False, kind=stop.kind: self.stop_turned.emit(kind))

    def show_stop_count(self, count: int) -> None:
        """Show at how many events the selected move stops."""
        only = Qt.ToolButtonStyle.ToolButtonIconOnly
        beside = Qt.ToolButtonStyle.ToolButtonTextBesideIcon
        self.halt.setText(str(count))
        self.halt.setToolButtonStyle(beside if count else only)
        words = f"Stops at {count} of the events (J)" if count else STOPS_TIP
        self.halt.setToolTip(words)
        self.halt.setAccessibleName(words)

    def set_narrow(self, narrow: bool) -> None:
        """Leave out what the room does not allow."""
        self._narrow = narrow
        self._fit()

    def _fit(self) -> None:
        """Say where it stands only where buttons and line leave room for it: cut words say nothing."""
        least = (self.open, self.go, self.opening, self.stop, self.play, self.go_on)
        by_key = (self.halt, self.pace, self.loop)  # J, W and Y, where there is no room for them
        need = sum(_taken(part) for part in least if not part.isHidden()) + 4 * GRID
        self.back.setVisible(need + _taken(self.back) <= self.width())  # else by Home alone
        need += 0 if self.back.isHidden() else _taken(self.back)
        more = sum(_taken(part) for part in by_key)
        self._give_line_a_row(need + more + LINE_LEAST_PX > self.width())
        for part in by_key:
            part.setVisible(not self._line_above or need + more <= self.width())
        need += (more if by_key[0].isVisibleTo(self) else 0) + (0 if self._line_above else LINE_LEAST_PX)
        shown = self._line_above or not self._narrow
        self.now.setVisible(shown and need + _taken(self.now) <= self.width())

    def _give_line_a_row(self, above: bool) -> None:
        """Put the line of moments over the buttons where they leave it too little to be pointed at."""
        if above == self._line_above:
            return
        self._line_above = above
        self._gap.setVisible(above)
        self._row.removeWidget(self.line)
        if above:
            self._column.insertWidget(0, self.line)
        else:
            self._row.insertWidget(self._row.indexOf(self._gap), self.line, 1)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Look again what there is room for."""
        super().resizeEvent(event)
        self._fit()
