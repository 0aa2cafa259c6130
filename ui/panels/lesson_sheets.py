"""Windows of a lesson that stop nothing: sheets to print, words of the trade, local rules, the drill log."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QAbstractItemView,
    QComboBox,
    QDialog,
    QFormLayout,
    QHBoxLayout,
    QHeaderView,
    QLineEdit,
    QPlainTextEdit,
    QTableWidget,
    QTableWidgetItem,
    QVBoxLayout,
    QWidget,
)

from ui.panels.look import GRID
from ui.panels.pieces import button, label
from ui.state.drill_log import METAL_DID, Drill
from ui.state.glossary import Term
from ui.state.tongue import tr

SHEET_WORDS = {
    "bridge": "Bridge sheet: from the screen to the metal",
    "evaluation": "Evaluation sheet, by seat number",
    "handout": "Handout for the class",
    "test": "Test on paper, with its key",
    "log": "Log: what the model said, what the metal did",
    "review": "Review sheet for experts",
    "lesson": "The whole lesson on paper",
}
PAPER_WORDS = {"a4": "A4", "letter": "Letter"}


def _table(heads: Sequence[str], wide: int) -> QTableWidget:
    table = QTableWidget(0, len(heads))
    table.setObjectName("reading")
    table.setAccessibleName(tr(f"Table: {', '.join(heads)}"))
    table.setHorizontalHeaderLabels([tr(head) for head in heads])
    table.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
    table.setSelectionMode(QAbstractItemView.SelectionMode.NoSelection)
    table.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
    table.setWordWrap(True)
    table.setShowGrid(False)
    table.verticalHeader().hide()
    table.verticalHeader().setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
    header = table.horizontalHeader()
    header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft)
    header.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
    header.setSectionResizeMode(wide, QHeaderView.ResizeMode.Stretch)
    return table


def _fill(table: QTableWidget, lines: Sequence[Sequence[str]]) -> None:
    table.setRowCount(len(lines))
    for row, cells in enumerate(lines):
        for column, words in enumerate(cells):
            item = QTableWidgetItem(tr(words))
            item.setTextAlignment(Qt.AlignmentFlag.AlignTop | Qt.AlignmentFlag.AlignLeft)
            table.setItem(row, column, item)


def _column(sheet: QDialog) -> QVBoxLayout:
    column = QVBoxLayout(sheet)
    column.setContentsMargins(3 * GRID, 2 * GRID, 3 * GRID, 2 * GRID)
    column.setSpacing(GRID + GRID // 2)
    return column


class PrintSheet(QDialog):
    """Which sheet, on which paper.

    Attributes
    ----------
    pdf_wished, print_wished : emitted with kind, paper, seats and whether pictures keep their colour
    """

    pdf_wished = Signal(str, str, str, bool)
    print_wished = Signal(str, str, str, bool)

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.setWindowTitle(tr("Sheets"))
        self.setMinimumWidth(480)
        self.kind, self.paper, self.tone = QComboBox(), QComboBox(), QComboBox()
        for box, words in ((self.kind, SHEET_WORDS), (self.paper, PAPER_WORDS)):
            for name, text in words.items():
                box.addItem(tr(text), name)
        self.tone.addItem(tr("grey, as a copier prints it"), False)
        self.tone.addItem(tr("in colour"), True)
        self.seats = QLineEdit()
        self.seats.setPlaceholderText(tr("1-12, or 3,5,8"))
        form = QFormLayout()
        for words, part in (
            ("Sheet", self.kind),
            ("Paper", self.paper),
            ("Pictures", self.tone),
            ("Seats", self.seats),
        ):
            form.addRow(label(words, "quiet"), part)
            part.setAccessibleName(tr(words))
        self.kind.currentIndexChanged.connect(self._show_seats)
        pdf, paper = button("Save as PDF\u2026", "primary"), button("Print\u2026")
        for made, wish in ((pdf, self.pdf_wished), (paper, self.print_wished)):
            made.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
            made.clicked.connect(lambda _=False, wish=wish: wish.emit(*self._asked()))
        row = QHBoxLayout()
        row.addStretch(1)
        row.addWidget(paper)
        row.addWidget(pdf)
        column = _column(self)
        column.addLayout(form)
        column.addWidget(
            label("The line on the limits of the model stands on every page.", "quiet", wrap=True)
        )
        column.addLayout(row)
        self._show_seats()

    def show_kinds(self, *, lesson: bool) -> None:
        """Offer every sheet of a lesson, or of a plan alone the bridge sheet."""
        kinds = SHEET_WORDS if lesson else {"bridge": SHEET_WORDS["bridge"]}
        if self.kind.count() != len(kinds):
            self.kind.clear()
            for name, words in kinds.items():
                self.kind.addItem(tr(words), name)

    def _asked(self) -> tuple[str, str, str, bool]:
        return self.kind.currentData(), self.paper.currentData(), self.seats.text(), self.tone.currentData()

    def _show_seats(self) -> None:
        self.seats.setEnabled(self.kind.currentData() in ("evaluation", "test"))


class WordSheet(QDialog):
    """The words of the trade, found by any of their names.

    Attributes
    ----------
    sought : emitted with what was typed
    """

    sought = Signal(str)

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.setWindowTitle(tr("Words"))
        self.resize(820, 560)
        self.search = QLineEdit()
        self.search.setPlaceholderText(tr("Any word you use for it"))
        self.search.setAccessibleName(tr("Any word you use for it"))
        self.search.setClearButtonEnabled(True)
        self.search.textChanged.connect(self.sought)
        self.table = _table(("word", "means", "also called"), 1)
        self.table.horizontalHeader().setSectionResizeMode(2, QHeaderView.ResizeMode.Stretch)
        column = _column(self)
        column.addWidget(self.search)
        column.addWidget(self.table, 1)

    def show_terms(self, terms: Sequence[Term]) -> None:
        """Show some terms."""
        _fill(self.table, [(t.name, t.meaning, ", ".join(t.all_words[1:5])) for t in terms])


class RuleSheet(QDialog):
    """The service's own rules, to read and to change; always with author and date.

    Attributes
    ----------
    kept : emitted with the text when it is to be put in force
    """

    kept = Signal(str)

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.setWindowTitle(tr("Our own rules"))
        self.resize(720, 560)
        self._signed = label("", "head", wrap=True)
        self._said = label("", "quiet", wrap=True)
        self.text = QPlainTextEdit()
        self.text.setAccessibleName(tr("Our own rules, as text"))
        keep = button("Put in force", "primary")
        keep.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        keep.clicked.connect(lambda: self.kept.emit(self.text.toPlainText()))
        column = _column(self)
        column.addWidget(self._signed)
        column.addWidget(self.text, 1)
        column.addWidget(self._said)
        column.addWidget(keep, 0, Qt.AlignmentFlag.AlignRight)

    def show_rules(self, signed: str, text: str, said: str) -> None:
        """Show the rules in force, or an example to begin with."""
        self._signed.setText(signed)
        if text:
            self.text.setPlainText(text)
        self._said.setText(said)


class DrillSheet(QDialog):
    """What the model said and what the metal did, written down and read back.

    Attributes
    ----------
    written : emitted with what the metal did, the build in words, and a note
    delete_wished : emitted when the whole log is to go
    """

    written = Signal(str, str, str)
    delete_wished = Signal()

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.setWindowTitle(tr("Model said, metal did"))
        self.resize(860, 560)
        self._rate, self._about = label("", "head", wrap=True), label("", "body", wrap=True)
        self.did = QComboBox()
        for word in METAL_DID:
            self.did.addItem(tr(word), word)
        self.build, self.note = QLineEdit(), QLineEdit()
        self.build.setPlaceholderText(tr("Seam, metal, latch; no make and no model"))
        self.note.setPlaceholderText(tr("What was surprising; no names"))
        form = QFormLayout()
        for words, part in (
            ("The metal did first", self.did),
            ("The door", self.build),
            ("Note", self.note),
        ):
            form.addRow(label(words, "quiet"), part)
            part.setAccessibleName(tr(words))
        write = button("Write it down", "primary")
        write.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        write.clicked.connect(
            lambda: self.written.emit(self.did.currentData(), self.build.text(), self.note.text())
        )
        self._write = write
        self._asked = False  # whether the next press deletes
        self._delete = button("Delete the whole log")
        self._delete.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self._delete.clicked.connect(self._ask_twice)
        self.table = _table(("date", "plan", "model said", "metal did", "note"), 4)
        column = _column(self)
        column.addWidget(self._rate)
        column.addWidget(self._about)
        column.addLayout(form)
        column.addWidget(write, 0, Qt.AlignmentFlag.AlignRight)
        column.addWidget(self.table, 1)
        column.addWidget(self._delete, 0, Qt.AlignmentFlag.AlignLeft)

    def _ask_twice(self) -> None:
        """Delete at the second press: the first one says so."""
        self._asked = not self._asked
        if self._asked:
            self._delete.setText("Press again: every line will be gone")
            return
        self._delete.setText("Delete the whole log")
        self.delete_wished.emit()

    def show_drills(self, rate: str, about: str, drills: Sequence[Drill], *, can_write: bool) -> None:
        """Show the log, and what the model says of the plan in hand."""
        self._rate.setText(rate)
        self._about.setText(about)
        self._write.setEnabled(can_write)
        self._delete.setEnabled(bool(drills))
        self._delete.setText("Delete the whole log")
        self._asked = False
        lines = [(d.date, d.plan, d.model_said, d.metal_did, d.note) for d in reversed(drills)]
        _fill(self.table, lines)
