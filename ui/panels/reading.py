"""The reading: the one sentence, how near each part is, where the work went, the force."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import (
    QBoxLayout,
    QHBoxLayout,
    QLabel,
    QSizePolicy,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from sim.units import NO_BREAK, Units, energy_text, force_text, length_text
from ui.panels.bars import Ladder, Ledger
from ui.panels.curve_choice import FORCE, ROOM, ChoiceOfCurve
from ui.panels.look import GRID, Look
from ui.panels.pieces import button, column_area, label, line
from ui.panels.room_plot import EXIT_PLOT, ROOM_PLOT, RoomPlot
from ui.panels.sentence import Sentence
from ui.state.reading import FORCES, LEAST_J, Reading, left_behind
from ui.state.tongue import tr

if TYPE_CHECKING:
    from ui.panels.force_plot import ForcePlot

ROOMY_PX, TALL_PX, LOW_PX, LEAST_PX = 940, 760, 640, 600
WRAPPED_FROM = 1.6
"""Scale of type from which headings may take two lines."""
FIRST_WORDS = (
    "Point at the edge of the door and click to set the first tip, or open the tips where they stand."
)
BEFORE_WORDS = (
    "Once the tips open, this column tells what is nearest to giving, where the work goes and the force."
)
ASK_TIP = "Choices for the class; nothing is shown before the lock (A)"


class ReadingPanel(QWidget):
    """The right column.

    Attributes
    ----------
    moment_wished : emitted with the index, inside the move, of the moment clicked in the plot of force
    place_wished : emitted with the place of the moment, of all, clicked in the plots of room
    ask_wished : emitted when a push is to be foretold before it is run
    """

    moment_wished = Signal(int)
    place_wished = Signal(int)
    ask_wished = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("column")
        self.sentence = Sentence()
        self.sentence.setAccessibleName(tr("What happened"))
        self.ladder, self.ledger = Ladder(), Ledger()
        self._plot: ForcePlot | None = None
        self._reading, self._units, self._height = Reading(), Units.METRIC, float(TALL_PX)
        self._plot_place = QWidget()
        self._plot_place.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self._plot_place.setMinimumHeight(80)
        self.curves = ChoiceOfCurve()
        self._room_plot, self._exit_plot = RoomPlot(ROOM_PLOT), RoomPlot(EXIT_PLOT)
        self._plots = QStackedWidget()
        self._plots.setMaximumHeight(380)
        for part in (self._plot_place, self._room_plot, self._exit_plot):
            self._plots.addWidget(part)
        self.curves.turned.connect(self._turn_to)
        for made in (self._room_plot, self._exit_plot):
            made.place_wished.connect(self.place_wished)
        self._look = Look()
        self._heads: list[tuple[QLabel, QWidget | None, QBoxLayout]] = []
        self._now, self._force = label("", ""), label("Force of the tips", "heading")
        self._work = label("", "")
        self._clearance = label("", "quiet", wrap=True)
        self._edges, self._way = label(""), label("", "quiet", wrap=True)
        self._edges.hide()
        inside = QWidget()
        inside.setObjectName("column")
        column = QVBoxLayout(inside)
        column.setContentsMargins(2 * GRID, GRID, 2 * GRID, GRID // 2)
        column.setSpacing(GRID // 2)
        column.addWidget(self.sentence)
        self._nearest = self._chapter(column, label("Nearest to giving", "heading"), self.ladder)
        self._went = self._chapter(
            column, label("Where this move's work went", "heading"), self.ledger, self._work
        )
        column.addWidget(self._clearance)
        column.addWidget(self._edges)
        self._pushed = self._chapter(column, self._force, self._plots, self._now)
        for place, part in ((1, self.curves), (3, self._way)):  # below the hairline, below the heading
            self._pushed.layout().insertWidget(place, part)
        self._still = label(BEFORE_WORDS, "quiet", wrap=True)
        column.addWidget(self._still)
        self.ask = button("Ask before the push", "", ASK_TIP)
        self.ask.clicked.connect(self.ask_wished)
        self.ask.hide()
        column.addWidget(self.ask, 0, Qt.AlignmentFlag.AlignLeft)
        for chapter in (self._nearest, self._went):
            chapter.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Maximum)
        column.setStretchFactor(self._pushed, 20)
        column.addStretch(1)
        self._area = area = column_area(tr("Reading"), inside)
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.addWidget(area)

    @property
    def plot(self) -> ForcePlot:
        """The force over the opening, made when there is a moment to show: its library takes its time."""
        if self._plot is None:
            # Imported here: the window shows before it.
            from ui.panels.force_plot import ForcePlot

            self._plot = ForcePlot()
            self._plot.set_look(self._look)
            inside = QVBoxLayout(self._plot_place)
            inside.setContentsMargins(0, 0, 0, 0)
            inside.addWidget(self._plot)
            self._plot.wished.connect(self.moment_wished)
        return self._plot

    def _chapter(
        self, column: QVBoxLayout, title: QLabel, content: QWidget, number: QWidget | None = None
    ) -> QWidget:
        chapter = QWidget()
        inside = QVBoxLayout(chapter)
        inside.setContentsMargins(0, 0, 0, 0)
        inside.setSpacing(GRID // 2)
        inside.addWidget(line())
        title.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        head = QHBoxLayout()
        head.addWidget(title, 1)
        if number is not None:
            head.addWidget(number, 0, Qt.AlignmentFlag.AlignRight)
        self._heads.append((title, number, head))
        inside.addLayout(head)
        inside.addWidget(content, 1)
        inside.addStretch(0)
        column.addWidget(chapter)
        return chapter

    def set_look(self, look: Look) -> None:
        """Take on another look (the parts below do so themselves)."""
        self._look = look
        self._fit_heads()

    def _fit_heads(self) -> None:
        """Put a number that does not fit beside its heading below it; wrap a heading too long by itself."""
        room = self.width() - 6 * GRID
        for title, number, head in self._heads:
            own = title.fontMetrics().horizontalAdvance(title.text())
            beside = isinstance(number, QLabel) and bool(number.text())
            more = number.fontMetrics().horizontalAdvance(number.text()) if beside else 0
            below = beside and own + more > room
            head.setDirection(QBoxLayout.Direction.TopToBottom if below else QBoxLayout.Direction.LeftToRight)
            title.setWordWrap(self._look.scale >= WRAPPED_FROM or own > room)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Fit the headings to another width."""
        super().resizeEvent(event)
        self._fit_heads()

    def set_room(self, height: float) -> None:
        """Fit a window of a height [px at scale 1]: larger type where it is tall, fewer rows where low."""
        if (height < ROOMY_PX) is not (self._height < ROOMY_PX):
            self._height = height
            self._show_curve()
        self.sentence.set_sizes(
            "body" if height < LEAST_PX else "head", "small" if height < TALL_PX else "body"
        )
        self.ladder.set_rows(3 if height < LOW_PX else 4 if height < TALL_PX else 5)
        self.ledger.set_rows(3 if height < LOW_PX else 4)

    def show_ask(self, *, on: bool) -> None:
        """Offer to foretell the push that has yet to begin, or not."""
        self.ask.setVisible(on)

    def show_reading(self, reading: Reading, units: Units) -> None:
        """Show the reading of a moment."""
        self.sentence.setText(reading.sentence or FIRST_WORDS)
        self._reading, self._units = reading, units
        self.ladder.show_reading(reading)
        self.ledger.show_reading(reading, units)
        if self._plot is not None or reading.curve:
            self.plot.show_reading(reading, units)
        shut, moved = reading.shut, len(reading.curve) > 1
        self._nearest.setVisible(shut or self.ladder.tells)
        self._show_curve()
        self._still.setVisible(not (shut or moved or self.ladder.tells or self.ledger.tells))
        self._work.setText(_work_words(reading, units))
        self._fit_heads()
        self._clearance.setText(_clearance_words(reading, units))
        left = left_behind(reading)
        self._edges.setText(left)
        self._edges.setVisible(bool(left))

    @property
    def shown(self) -> Reading:
        """The reading shown now: without what is kept shut."""
        return self._reading

    def _turn_to(self, _curve: int) -> None:
        self._show_curve()
        # once it is laid out: in a low window it may lie below what is seen
        QTimer.singleShot(0, self, lambda: self._area.ensureWidgetVisible(self._pushed, 0, 0))

    def next_curve(self) -> None:
        """Show the next of the curves there are."""
        self.curves.turn_on()

    def _show_curve(self) -> None:
        """Show the curve chosen, of those that this reading has."""
        reading, units = self._reading, self._units
        room = reading.room
        along = room is not None and len(room.way_m) > 1
        has = (not reading.shut and len(reading.curve) > 1, along, along and bool(room and room.exit_m))
        curve = self.curves.show_able(has)
        # in a low window the curves of room take the place of where the work went: they are read from afar
        yields = curve != FORCE and self._height < ROOMY_PX
        self._went.setVisible((reading.shut or self.ledger.tells) and not yields)
        self.curves.setVisible(sum(has) > 1)
        self._pushed.setVisible(any(has))
        if room is not None and along:
            self._room_plot.show_parts(room, units)
            if room.exit_m:
                self._exit_plot.show_exit(room, units)
        self._plots.setCurrentIndex(curve)
        way = room.way_words(units) if room is not None and curve not in (FORCE, ROOM) else ""
        self._way.setText(way)
        self._way.setVisible(bool(way))
        unit = length_text(0.0, units).rpartition(NO_BREAK)[2]
        if curve == FORCE:
            opening, push = length_text(reading.opening_m, units), force_text(reading.force_n, units)
            self._force.setText(FORCES[reading.kind])
            self._now.setText(f"{push} at {opening}" if reading.curve else "")
        elif room is not None:
            self._force.setText(f"Room to the person, {unit}" if curve == ROOM else f"Exit width, {unit}")
            self._now.setText(room.room_words(units) if curve == ROOM else room.exit_words(units))
        self._fit_heads()


def _work_words(reading: Reading, units: Units) -> str:
    """Return what the tool put in, and what the metal gave back besides where that is told of."""
    words = energy_text(reading.work_j, units) if reading.work_j > 0 else ""
    if reading.sprung_j <= max(0.01 * reading.spent_j, LEAST_J):
        return words
    sprung = f"{energy_text(reading.sprung_j, units)}{NO_BREAK}sprung"
    return f"{words} + {sprung}" if words else sprung


def _clearance_words(reading: Reading, units: Units) -> str:
    if reading.clearance is None:
        return ""
    gap = length_text(reading.clearance.distance_m, units)
    change = reading.clearance_change_m
    words = f"Metal to occupant: {gap}"
    if abs(change) >= 0.0005:
        way = "more" if change > 0 else "less"
        words += f", {length_text(abs(change), units)}{NO_BREAK}{way} than at the start"
    return words
