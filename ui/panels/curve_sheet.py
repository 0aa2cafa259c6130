"""The curves of force, room and exit width in a window of their own, legible from the back row."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QDialog, QHBoxLayout, QLabel, QVBoxLayout, QWidget

from sim.units import NO_BREAK, Units, force_text, length_text
from ui.panels.force_plot import ForcePlot
from ui.panels.look import GRID, Look
from ui.panels.pieces import dress, label
from ui.panels.room_plot import EXIT_PLOT, ROOM_PLOT, RoomPlot
from ui.state.reading import FORCES, Reading
from ui.state.tongue import tr

FIRST_PX = 900, 640
SHARES = 4, 5, 3
"""Of the height: force, room, exit width."""
KEPT_SHUT = "Nothing may be seen of it now, or nothing has moved yet."


class CurveSheet(QDialog):
    """Shows the curves; does not know what they are of.

    Attributes
    ----------
    moment_wished, place_wished : as of the reading
    """

    moment_wished = Signal(int)
    place_wished = Signal(int)

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.setWindowTitle(tr("Force, room and exit width"))
        self.setObjectName("page")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.resize(*FIRST_PX)
        self.force, self.room, self.exit = ForcePlot(), RoomPlot(ROOM_PLOT), RoomPlot(EXIT_PLOT)
        self.force.setMaximumHeight(4000)
        self._look: Look | None = None
        self._none = label(KEPT_SHUT, "body", wrap=True)
        column = QVBoxLayout(self)
        column.setContentsMargins(2 * GRID, GRID, 2 * GRID, GRID)
        self._parts: list[tuple[QWidget, QLabel, QLabel]] = []
        for plot, share in zip((self.force, self.room, self.exit), SHARES, strict=True):
            part, head, now = QWidget(), label("", "heading"), label("", "body")
            inside = QVBoxLayout(part)
            inside.setContentsMargins(0, 0, 0, 0)
            row = QHBoxLayout()
            row.addWidget(head, 1)
            row.addWidget(now)
            inside.addLayout(row)
            inside.addWidget(plot, 1)
            column.addWidget(part, share)
            self._parts.append((part, head, now))
        self._way = label("", "quiet", wrap=True)
        self.exit.parentWidget().layout().insertWidget(1, self._way)
        column.addWidget(self._none)
        self.force.wished.connect(self.moment_wished)
        for made in (self.room, self.exit):
            made.place_wished.connect(self.place_wished)

    def take_look(self, look: Look) -> None:
        """Take on the window's look."""
        if look is not self._look:
            self._look = look
            dress(self, look)

    def show_reading(self, reading: Reading, units: Units) -> None:
        """Show the curves of a reading; what it does not hold is left out."""
        room = reading.room if reading.room is not None and len(reading.room.way_m) > 1 else None
        has = (
            not reading.shut and len(reading.curve) > 1,
            room is not None,
            room is not None and bool(room.exit_m),
        )
        for (part, _, _), shown in zip(self._parts, has, strict=True):
            part.setVisible(shown)
        self._none.setVisible(not any(has))
        unit = length_text(0.0, units).rpartition(NO_BREAK)[2]
        opening, push = length_text(reading.opening_m, units), force_text(reading.force_n, units)
        self._say(0, FORCES[reading.kind], f"{push} at {opening}")
        self.force.show_reading(reading, units)
        if room is not None:
            self.room.show_parts(room, units)
            self._say(1, f"Room to the person, {unit}", room.room_words(units))
            if room.exit_m:
                self.exit.show_exit(room, units)
            self._say(2, f"Exit width, {unit}", room.exit_words(units))
            self._way.setText(room.way_words(units))
            self._way.setVisible(room.in_the_way is not None)

    def _say(self, which: int, head: str, now: str) -> None:
        _, title, number = self._parts[which]
        title.setText(head)
        number.setText(now)
