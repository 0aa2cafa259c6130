"""The teacher's window while a class looks at the picture: this page, its notes, the next one, the time."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QCloseEvent
from PySide6.QtWidgets import QHBoxLayout, QScrollArea, QVBoxLayout, QWidget

from ui.panels.look import GRID, Look
from ui.panels.pieces import button, column_area, dress, label, line
from ui.state.tongue import tr


@dataclass(frozen=True)
class NotesWords:
    """What the teacher reads.

    place : "page 2 of 6";  title, words, notes : of this page, words being what the class sees
    following : the next page's title;  standing : what is shut, asked or locked
    clock : time of day and how long it has gone on
    """

    place: str = ""
    title: str = ""
    words: str = ""
    notes: str = ""
    following: str = ""
    standing: str = ""
    clock: str = ""


class NotesWindow(QWidget):
    """A window of its own.

    Attributes
    ----------
    back_wished, on_wished, ask_wished, shut_wished, end_wished : the buttons
    closed : emitted when the window is put away
    """

    back_wished = Signal()
    on_wished = Signal()
    ask_wished = Signal()
    shut_wished = Signal()
    end_wished = Signal()
    closed = Signal()

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent, Qt.WindowType.Window)
        self.setObjectName("page")
        self.setWindowTitle(tr("Notes for the teacher \u2013 Hemline"))
        self.resize(720, 520)
        self._place, self._clock = label("", "quiet"), label("", "quiet")
        self._title, self._words = label("", "head", wrap=True), label("", "quiet", wrap=True)
        self._notes = label("", "body", wrap=True)
        self._next, self._standing = label("", "body", wrap=True), label("", "heading", wrap=True)
        self._notes.setAccessibleName(tr("Notes"))
        self.shut = button("Shut or open answers", "", "Answers, ladder, arrow and map (T)")
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.setSpacing(0)
        outer.addWidget(self._scroll(), 1)
        outer.addWidget(line())
        outer.addLayout(self._coming())
        outer.addWidget(line())
        outer.addLayout(self._buttons())

    def _scroll(self) -> QScrollArea:
        inside = QWidget()
        inside.setObjectName("column")
        column = QVBoxLayout(inside)
        column.setContentsMargins(3 * GRID, 2 * GRID, 3 * GRID, 2 * GRID)
        column.setSpacing(GRID)
        head = QHBoxLayout()
        head.addWidget(self._place, 1)
        head.addWidget(self._clock)
        column.addLayout(head)
        for part in (self._title, self._words, self._notes, self._standing):
            column.addWidget(part)
        column.addStretch(1)
        area = column_area(tr("Notes for the teacher"), inside)
        area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        return area

    def _coming(self) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setContentsMargins(3 * GRID, GRID, 3 * GRID, GRID)
        row.setSpacing(2 * GRID)
        row.addWidget(label("Next", "quiet"), 0, Qt.AlignmentFlag.AlignTop)
        row.addWidget(self._next, 1)
        return row

    def _buttons(self) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setContentsMargins(3 * GRID, GRID, 3 * GRID, 2 * GRID)
        row.setSpacing(GRID)
        made = (
            (button("Next page", "primary", "Next page (Page Down)"), self.on_wished),
            (button("Back", "", "Page before (Page Up)"), self.back_wished),
            (button("Ask", "", "Ask before the push (A)"), self.ask_wished),
            (self.shut, self.shut_wished),
            (button("End", "", "Back to the work (F5)"), self.end_wished),
        )
        for part, signal in made:
            part.clicked.connect(signal)
            row.addWidget(part)
        row.insertStretch(4, 1)
        return row

    def set_look(self, look: Look) -> None:
        """Dress the window as the main one is dressed."""
        self.setStyleSheet(look.sheet())
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        dress(self, look)

    def show_words(self, words: NotesWords) -> None:
        """Show a page."""
        for part, text in (
            (self._place, words.place), (self._title, words.title), (self._words, words.words),
            (self._notes, words.notes), (self._next, words.following or "The last page"),
            (self._standing, words.standing), (self._clock, words.clock),
        ):  # fmt: skip
            part.setText(text)
            part.setVisible(bool(text))

    def show_clock(self, words: str) -> None:
        """Show another time."""
        self._clock.setText(words)

    def closeEvent(self, event: QCloseEvent) -> None:
        """Tell that it is put away."""
        self.closed.emit()
        super().closeEvent(event)
