"""The outcome map beside the stage: its chart, what the cell under the pointer says, what to compare with.

Shows values and asks for changes; what is painted comes from whoever connects it.
"""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QEvent, QSize, Qt, Signal
from PySide6.QtGui import QKeyEvent, QMouseEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QComboBox, QDialog, QHBoxLayout, QSizePolicy, QVBoxLayout, QWidget

from ui.panels.look import GRID, Look
from ui.panels.pieces import IconButton, button, label, line
from ui.state.map_layout import Layout
from ui.state.map_telling import MapWords
from ui.state.tongue import tr

Paint = Callable[[QPainter, float, float, Look, bool], Layout | None]
"""Paints the chart in an area [px] of a look, large or not, and returns where its cells lie."""
ARROWS = {
    Qt.Key.Key_Left: (-1, 0),
    Qt.Key.Key_Right: (1, 0),
    Qt.Key.Key_Up: (0, 1),
    Qt.Key.Key_Down: (0, -1),
}
SHARE = 0.94
"""Share of the window that the large chart takes."""


class MapCanvas(QWidget):
    """The chart; arrows move a cursor from cell to cell, Return or a click picks one.

    Attributes
    ----------
    pointed : emitted with the cell under pointer or cursor, -1 for none;  picked : with the one picked
    restyled : emitted when it has another look
    """

    pointed = Signal(int)
    picked = Signal(int)
    restyled = Signal()

    def __init__(self, paint: Paint, *, large: bool = False) -> None:
        super().__init__()
        self._paint, self._large = paint, large
        self._layout: Layout | None = None
        self.look = Look()
        self.cursor_cell: int | None = None
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setAccessibleName(tr("Chart of the outcome map"))

    def set_look(self, look: Look) -> None:
        """Paint in another look."""
        self.look = look
        self.update()
        self.restyled.emit()

    def sizeHint(self) -> QSize:
        """Return room for the cells and their words."""
        return QSize(260, 240)

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the chart, and the focus round it."""
        painter = QPainter(self)
        inset = 4
        painter.translate(inset, inset)
        wide, tall = self.width() - 2 * inset, self.height() - 2 * inset
        self._layout = self._paint(painter, wide, tall, self.look, self._large)
        painter.resetTransform()
        if self.hasFocus():
            painter.setPen(QPen(self.look.colour("ink"), 3 if self.look.projector else 2))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(self.rect().adjusted(1, 1, -2, -2))
        painter.end()

    def _cell(self, event: QMouseEvent) -> int | None:
        at = event.position()
        return None if self._layout is None else self._layout.at(at.x() - 4, at.y() - 4)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Tell which cell is under the pointer."""
        cell = self._cell(event)
        self._go(cell)

    def leaveEvent(self, _event: QEvent) -> None:
        """Tell that none is."""
        if not self.hasFocus():
            self._go(None)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Pick the cell under the pointer."""
        cell = self._cell(event)
        if event.button() == Qt.MouseButton.LeftButton and cell is not None:
            self._go(cell)
            self.picked.emit(cell)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Move the cursor, or pick its cell."""
        key = Qt.Key(event.key())
        if self._layout is not None and key in ARROWS:
            self._go(self._layout.step(self.cursor_cell, *ARROWS[key]))
        elif self.cursor_cell is not None and key in (Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Space):
            self.picked.emit(self.cursor_cell)
        else:
            super().keyPressEvent(event)

    def event(self, event: QEvent) -> bool:
        """Keep arrows and Return from being keys of the window while the chart has the focus."""
        if event.type() == QEvent.Type.ShortcutOverride and isinstance(event, QKeyEvent):
            mine = (*ARROWS, Qt.Key.Key_Return, Qt.Key.Key_Enter)
            if self._layout is not None and Qt.Key(event.key()) in mine and not event.modifiers():
                event.accept()
                return True
        return super().event(event)

    def _go(self, cell: int | None) -> None:
        if cell != self.cursor_cell:
            self.cursor_cell = cell
            self.pointed.emit(-1 if cell is None else cell)


class MapCard(QWidget):
    """A page of the right column.

    Attributes
    ----------
    chosen : emitted with the index of what to compare with
    make_wished, stop_wished, large_wished, words_wished, away_wished : the buttons
    """

    chosen = Signal(int)
    make_wished = Signal()
    stop_wished = Signal()
    large_wished = Signal()
    words_wished = Signal()
    away_wished = Signal()

    def __init__(self, paint: Paint) -> None:
        super().__init__()
        self.setObjectName("column")
        self.canvas = MapCanvas(paint)
        self._sentence, self._cell = label("", "body", wrap=True), label("", "", wrap=True)
        self._note = label("", "quiet", wrap=True)
        self.choice = QComboBox()
        self.choice.setAccessibleName(tr("Show what changes on another door or with another tool"))
        self.choice.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.choice.activated.connect(self.chosen)
        self.make = button("Make the map", "primary", "Push at every place of the edges, each by itself")
        self.stop = button("Stop", "", "What has been worked out is kept (Esc)")
        self.large = button("Large chart", "", "The chart over the whole window (Ctrl+Shift+M)")
        self.words = button("In words", "", "The map in words, to be read or copied")
        for made, wish in (
            (self.make, self.make_wished),
            (self.stop, self.stop_wished),
            (self.large, self.large_wished),
            (self.words, self.words_wished),
        ):
            made.clicked.connect(wish)
        self._set_out()

    def _set_out(self) -> None:
        away = IconButton("close", "Put the map away", size=14)
        away.clicked.connect(self.away_wished)
        head = QHBoxLayout()
        head.addWidget(label("Outcome map", "head"), 1)
        head.addWidget(away, 0, Qt.AlignmentFlag.AlignTop)
        column = QVBoxLayout(self)
        column.setContentsMargins(2 * GRID, GRID, GRID, GRID)
        column.setSpacing(GRID)
        column.addLayout(head)
        column.addWidget(self._sentence)
        column.addWidget(self.choice)
        column.addWidget(self._note)
        column.addWidget(self.canvas, 1)
        column.addWidget(self._cell)
        column.addWidget(line())
        foot = QHBoxLayout()
        foot.setSpacing(GRID)
        for part in (self.make, self.stop, self.large, self.words):
            foot.addWidget(part)
        foot.addStretch(1)
        column.addLayout(foot)
        self._spring = QWidget()
        column.addWidget(self._spring, 0)

    def show_words(self, words: MapWords) -> None:
        """Show what the page says."""
        for part, text in (
            (self._sentence, words.sentence),
            (self._note, words.note),
            (self._cell, words.cell),
        ):
            part.setText(text)
        self._sentence.setVisible(bool(words.sentence))
        self._sentence.setObjectName("" if words.note and words.there else "body")  # two texts: smaller
        self._sentence.style().polish(self._sentence)
        self._note.setVisible(bool(words.note))
        self._cell.setVisible(words.there)
        lines = 3 if words.cell_pointed else 2
        self._cell.setMinimumHeight(lines * self._cell.fontMetrics().lineSpacing() if words.there else 0)
        self._cell.setAlignment(Qt.AlignmentFlag.AlignTop)
        self.canvas.setVisible(words.there)
        self._spring.setSizePolicy(
            QSizePolicy.Policy.Preferred,
            QSizePolicy.Policy.Fixed if words.there else QSizePolicy.Policy.Expanding,
        )
        self.canvas.setAccessibleDescription(tr(f"{words.cell} {words.told}".strip()))
        self.make.setVisible(words.can_make)
        self.stop.setVisible(words.busy)
        self.large.setVisible(words.there)
        self.words.setVisible(words.there)
        self.choice.setVisible(words.there and len(words.others) > 1)
        if [self.choice.itemText(k) for k in range(self.choice.count())] != list(words.others):
            self.choice.clear()
            self.choice.addItems([tr(other) for other in words.others])
        self.choice.setCurrentIndex(words.chosen)


class MapSheet(QDialog):
    """The chart over the whole window, for the back row."""

    def __init__(self, parent: QWidget, paint: Paint) -> None:
        super().__init__(parent)
        self.setWindowTitle(tr("Outcome map"))
        self.canvas = MapCanvas(paint, large=True)
        self._sentence, self._cell = label("", "head", wrap=True), label("", "body", wrap=True)
        self._foot = label("", "quiet", wrap=True)
        column = QVBoxLayout(self)
        column.setContentsMargins(2 * GRID, 2 * GRID, 2 * GRID, 2 * GRID)
        column.setSpacing(GRID)
        column.addWidget(self._sentence)
        column.addWidget(self.canvas, 1)
        column.addWidget(self._cell)
        column.addWidget(self._foot)

    def open_over(self, room: QSize) -> None:
        """Open as large as the window allows."""
        self.resize(QSize(round(SHARE * room.width()), round(SHARE * room.height())))
        self.show()
        self.raise_()
        self.activateWindow()
        self.canvas.setFocus()

    def show_words(self, words: MapWords) -> None:
        """Show what the sheet says."""
        self._sentence.setText(words.sentence or words.note)
        self._cell.setText(words.cell)
        self._foot.setText(words.foot)
        self._cell.setMinimumHeight(2 * self._cell.fontMetrics().lineSpacing())
        self.canvas.setAccessibleDescription(tr(f"{words.cell} {words.told}".strip()))
        self.canvas.update()
