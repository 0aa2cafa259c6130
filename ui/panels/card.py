"""The model card: one table a chapter, a search field, and the checks run when wished."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QCloseEvent, QFont, QFontMetrics, QResizeEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QButtonGroup,
    QDialog,
    QHBoxLayout,
    QHeaderView,
    QLineEdit,
    QSizePolicy,
    QTableWidget,
    QTableWidgetItem,
    QVBoxLayout,
    QWidget,
)

from ui.panels.look import GRID
from ui.panels.pieces import button, label
from ui.state.model_card import CHAPTERS, CHECKS, DRILLS, ModelCard, Page
from ui.state.tongue import tr

NARROW = {"value": 16, "belongs to": 16, "who says so": 20, "lattice": 12, "expected": 12, "got": 22,
          "error": 10, "verdict": 13, "60 mm": 12, "45 mm": 14, "30 mm": 12, "what": 24, "number": 30,
          "date": 12, "plan": 30, "model said": 18, "metal did": 18, "push": 24,
          "varied": 30, "range": 24, "spread": 16, "scenario": 26, "runs": 12, "true share": 14, "word": 22,
          }  # fmt: skip
"""Width of a column in letters; the others share what is left."""


class CardSheet(QDialog):
    """Shows the card; knows nothing of how checks are run.

    Attributes
    ----------
    chapter_wished, words_wished : emitted with a chapter's number, with the words sought
    check_wished, stop_wished : emitted with no more than that
    """

    chapter_wished = Signal(int)
    words_wished = Signal(str)
    check_wished = Signal()
    stop_wished = Signal()

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.setWindowTitle(tr("Model card"))
        self._page: Page | None = None
        self._lead = label("", "body", wrap=True)
        self.search = QLineEdit()
        self.search.setPlaceholderText(tr("Search this chapter"))
        self.search.setAccessibleName(tr("Search this chapter"))
        self.search.setClearButtonEnabled(True)
        self.search.textChanged.connect(self.words_wished)
        self.table = QTableWidget()
        self.table.setAccessibleName(tr("Table of this chapter"))
        self.table.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.table.setSelectionMode(QAbstractItemView.SelectionMode.NoSelection)
        self.table.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.table.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.table.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOn)  # widths stay as they are
        self.table.setWordWrap(True)
        self.table.setShowGrid(False)
        self.table.setObjectName("reading")
        self.table.verticalHeader().hide()
        self.table.horizontalHeader().setDefaultAlignment(Qt.AlignmentFlag.AlignLeft)
        self.said = label("", "quiet", wrap=True)
        self.said.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Minimum)
        self.check = button("Run the fast checks now", "primary")
        self.stop = button("Stop")
        self.check.clicked.connect(self.check_wished)
        self.stop.clicked.connect(self.stop_wished)
        column = QVBoxLayout(self)
        column.setContentsMargins(2 * GRID, 2 * GRID, 2 * GRID, 2 * GRID)
        column.setSpacing(GRID)
        column.addWidget(self._lead)
        column.addLayout(self._chapter_row())
        column.addWidget(self.table, 1)
        foot = QHBoxLayout()
        foot.setSpacing(GRID)
        foot.addWidget(self.said, 1)
        foot.addStretch(0)
        foot.addWidget(self.stop)
        foot.addWidget(self.check)
        column.addLayout(foot)

    def _chapter_row(self) -> QHBoxLayout:
        self._chapters = QButtonGroup(self)
        row = QHBoxLayout()
        row.setSpacing(2 * GRID)
        for number, word in enumerate(CHAPTERS):
            made = button(word, "choice")
            made.setCheckable(True)
            self._chapters.addButton(made, number)
            row.addWidget(made)
        self._chapters.idClicked.connect(self.chapter_wished)
        row.addStretch(1)
        self.search.setMaximumWidth(420)
        row.addWidget(self.search, 6)
        return row

    def show_card(self, state: ModelCard) -> None:
        """Show the chapter and the state of the checks."""
        self._lead.setText(state.card.lead)
        self._chapters.button(state.chapter).setChecked(True)
        self.said.setText(state.said)
        if state.chapter != CHECKS and not state.running:
            self.said.setText(state.rate if state.chapter == DRILLS else "")
        self.check.setEnabled(not state.running)
        self.stop.setVisible(state.running)
        page = state.page()
        if page != self._page:
            self._fill(page)

    def _fill(self, page: Page) -> None:
        before, self._page = self._page, page
        table = self.table
        grown = (
            before is not None
            and before.heads == page.heads
            and page.lines[: len(before.lines)] == before.lines
        )
        first = len(before.lines) if grown and before is not None else 0
        table.setUpdatesEnabled(False)
        if not grown:
            table.clear()
            table.setColumnCount(len(page.heads))
            table.setHorizontalHeaderLabels([tr(head[0].upper() + head[1:]) for head in page.heads])
        table.setRowCount(len(page.lines))
        for place in range(first, len(page.lines)):
            self._fill_line(place, page.lines[place], strong=place in page.marked)
        if not grown:
            self._set_widths(page)
        for place in range(first, len(page.lines)):
            table.resizeRowToContents(place)
        if grown:
            table.scrollToBottom()
        table.setUpdatesEnabled(True)

    def _fill_line(self, place: int, cells: tuple[str, ...], *, strong: bool) -> None:
        for column, words in enumerate(cells):
            item = QTableWidgetItem(tr(words))
            item.setTextAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop)
            if strong:
                font = QFont(self.table.font())
                font.setBold(True)
                item.setFont(font)
            self.table.setItem(place, column, item)

    def _set_widths(self, page: Page) -> None:
        letter = self.table.fontMetrics().averageCharWidth()
        header = self.table.horizontalHeader()
        for column, head in enumerate(page.heads):
            fixed = column != page.wide and head in NARROW
            mode = QHeaderView.ResizeMode.Fixed if fixed else QHeaderView.ResizeMode.Stretch
            header.setSectionResizeMode(column, mode)
            if fixed:
                share = 0.9 * self.table.viewport().width() / max(2, len(page.heads))
                self.table.setColumnWidth(column, round(min(NARROW[head] * letter, share)))

    def refit(self) -> None:
        """Fit widths and heights again after the size or the type has changed."""
        header = self.table.horizontalHeader()
        header.setMinimumHeight(header.fontMetrics().height() + 2 * GRID)
        for made in self._chapters.buttons():
            bold = QFont(made.font())
            bold.setBold(True)
            made.setMinimumWidth(QFontMetrics(bold).horizontalAdvance(made.text()) + GRID)
        if self._page is not None:
            self._set_widths(self._page)
            self.table.resizeRowsToContents()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Fit the table to another size."""
        super().resizeEvent(event)
        self.refit()

    def closeEvent(self, event: QCloseEvent) -> None:
        """Give up checks under way: nobody is looking."""
        self.stop_wished.emit()
        super().closeEvent(event)
