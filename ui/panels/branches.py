"""Every step of the work and every branch of it, drawn as a tree; a click or Return goes there."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QKeyEvent, QMouseEvent, QPainter, QPainterPath, QPaintEvent, QPen
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from ui.panels.bars import Painted
from ui.panels.look import GRID
from ui.panels.pieces import button, column_area, label
from ui.state.branches import Branch
from ui.state.tongue import tr

LANE_PX, DOT_PX = 14, 5
LANES_DRAWN = 8
KEYPAD = Qt.KeyboardModifier.KeypadModifier
OWN_KEYS = (
    Qt.Key.Key_Up, Qt.Key.Key_Down, Qt.Key.Key_Home, Qt.Key.Key_End, Qt.Key.Key_Return, Qt.Key.Key_Enter,
)  # fmt: skip


class BranchTree(Painted):
    """The tree itself.

    Attributes
    ----------
    wished : emitted with the number of the step to go to
    marked : emitted with the row the cursor has come to, so that it is scrolled to
    """

    wished = Signal(int)
    marked = Signal(int)

    def __init__(self) -> None:
        super().__init__()
        self._rows: tuple[Branch, ...] = ()
        self._cursor = 0
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        self.setAccessibleName(tr("Steps of the work and their branches"))

    def show_rows(self, rows: tuple[Branch, ...]) -> None:
        """Show the steps; the cursor goes to the present one when that has changed."""
        now = next((i for i, row in enumerate(rows) if row.now), 0)
        before = next((i for i, row in enumerate(self._rows) if row.now), -1)
        self._rows = rows
        if now != before or self._cursor >= len(rows):
            self._cursor = now
        self.setFixedHeight(max(1, len(rows)) * self.row_px())
        self._tell()
        self.update()

    def row_px(self) -> int:
        """Return the height of a row."""
        return round(self.look.px("small") * 1.8)

    def sizeHint(self) -> QSize:
        """Return room for the rows."""
        return QSize(200, max(1, len(self._rows)) * self.row_px())

    def _tell(self) -> None:
        if self._rows:
            row = self._rows[self._cursor]
            here = ", the present one" if row.now else ""
            told = f"Step {self._cursor + 1} of {len(self._rows)}: {row.label}{here}"
            self.setAccessibleDescription(tr(told))

    def _dot(self, number: int) -> QPointF:
        lane = min(self._rows[number].lane, LANES_DRAWN - 1)
        return QPointF(GRID + LANE_PX * lane, (number + 0.5) * self.row_px())

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw the rows that are seen: the way to each from its parent, its dot, its words."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        row = self.row_px()
        first, last = event.rect().top() // row, event.rect().bottom() // row
        for number, item in enumerate(self._rows):
            if number >= first and item.parent <= last:
                self._draw_way(painter, number, item)
        lanes = min(max((item.lane for item in self._rows), default=0), LANES_DRAWN - 1)
        left = 2 * GRID + LANE_PX * lanes
        for number in range(first, min(last + 1, len(self._rows))):
            self._draw_row(painter, number, left)
        painter.end()

    def _draw_way(self, painter: QPainter, number: int, item: Branch) -> None:
        if item.parent < 0:
            return
        tone = "ink" if item.on_path else "quiet"
        painter.setPen(QPen(self.look.colour(tone), 2.4 if item.on_path else 1.2))
        start, end = self._dot(item.parent), self._dot(number)
        way = QPainterPath(start)
        if start.x() != end.x():
            bend = start.y() + 0.5 * self.row_px()
            way.cubicTo(QPointF(start.x(), bend), QPointF(end.x(), start.y() + 4), QPointF(end.x(), bend + 4))
        way.lineTo(end)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawPath(way)

    def _draw_row(self, painter: QPainter, number: int, left: int) -> None:
        look, item, row = self.look, self._rows[number], self.row_px()
        area = QRectF(left, number * row, self.width() - left, row)
        if number == self._cursor and self.hasFocus():
            painter.setPen(QPen(look.colour("ink"), 2))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRoundedRect(area.adjusted(0, 1, -2, -1), 4, 4)
        painter.setPen(QPen(look.colour("ink" if item.on_path else "quiet"), 1.6))
        painter.setBrush(look.colour("ink" if item.now else "paper"))
        painter.drawEllipse(self._dot(number), DOT_PX, DOT_PX)
        painter.setFont(look.font("small", strong=item.now))
        painter.setPen(look.colour("ink" if item.on_path else "quiet"))
        text = area.adjusted(GRID // 2, 0, -GRID // 2, 0)
        words = painter.fontMetrics().elidedText(
            tr(item.label), Qt.TextElideMode.ElideRight, round(text.width())
        )
        painter.drawText(text, Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter, words)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Go to the step that was pressed."""
        number = int(event.position().y() // self.row_px())
        if event.button() is Qt.MouseButton.LeftButton and 0 <= number < len(self._rows):
            self._mark(number)
            self.wished.emit(number)

    def event(self, event: QEvent) -> bool:
        """Keep the keys of the tree from the window's actions while it has the focus."""
        override = event.type() is QEvent.Type.ShortcutOverride and isinstance(event, QKeyEvent)
        if override and event.key() in OWN_KEYS and not event.modifiers() & ~KEYPAD:
            event.accept()
            return True
        return super().event(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Move the cursor, or go to its step."""
        last = len(self._rows) - 1
        ways = {
            Qt.Key.Key_Up: self._cursor - 1, Qt.Key.Key_Down: self._cursor + 1,
            Qt.Key.Key_Home: 0, Qt.Key.Key_End: last,
        }  # fmt: skip
        if event.key() in ways:
            self._mark(min(max(ways[Qt.Key(event.key())], 0), last))
        elif event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.wished.emit(self._cursor)
        else:
            super().keyPressEvent(event)

    def _mark(self, number: int) -> None:
        self._cursor = number
        self._tell()
        self.marked.emit(number)
        self.update()


class BranchPage(QWidget):
    """The tree on a page of the left column.

    Attributes
    ----------
    wished : emitted with the number of the step to go to
    done : emitted when the page is to be put away
    """

    wished = Signal(int)
    done = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("column")
        self.tree = BranchTree()
        self.tree.wished.connect(self.wished)
        self.tree.marked.connect(self._bring)
        self.words = label("", "quiet", wrap=True)
        inside = QWidget()
        inside.setObjectName("column")
        column = QVBoxLayout(inside)
        column.setContentsMargins(GRID, 0, GRID, GRID)
        column.addWidget(self.tree)
        column.addStretch(1)
        self._area = area = column_area(tr("Steps and branches"), inside)
        area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        back = button("Back to the plan", "primary")
        back.clicked.connect(self.done)
        head = QVBoxLayout()
        head.setContentsMargins(2 * GRID, GRID, 2 * GRID, GRID)
        head.addWidget(label("Steps and branches", "heading"))
        head.addWidget(self.words)
        foot = QHBoxLayout()
        foot.setContentsMargins(2 * GRID, GRID, 2 * GRID, GRID)
        foot.addWidget(back)
        foot.addStretch(1)
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.setSpacing(0)
        outer.addLayout(head)
        outer.addWidget(area, 1)
        outer.addLayout(foot)

    def show_rows(self, rows: tuple[Branch, ...]) -> None:
        """Show the steps."""
        self.tree.show_rows(rows)
        ends = len(rows) - len({row.parent for row in rows if row.parent >= 0})
        self.words.setText(f"{len(rows)} steps, {ends} {'end' if ends == 1 else 'ends'}. Nothing is lost.")

    def _bring(self, number: int) -> None:
        row = self.tree.row_px()
        place = self.tree.pos().y() + number * row + row // 2
        self._area.ensureVisible(0, place, 0, 2 * row)
