"""Practice with the questions of a lesson: guided, coached or as a test, one question at a time."""

from __future__ import annotations

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtWidgets import (
    QButtonGroup,
    QDialog,
    QHBoxLayout,
    QRadioButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from ui.panels.look import GRID
from ui.panels.pieces import button, column_area, label
from ui.state.practice import MODE_WORDS, SCORED_LINE, Mode, Practice, reveal
from ui.state.tongue import own, tr


class PracticeSheet(QDialog):
    """Shows one question of a practice.

    Attributes
    ----------
    mode_wished : emitted with a mode's word;  answered : with an outcome, once it is locked
    hint_wished, on_wished : the buttons
    """

    mode_wished = Signal(str)
    answered = Signal(str)
    hint_wished = Signal()
    on_wished = Signal()

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.setWindowTitle(tr("Questions"))
        self.resize(680, 520)
        self._modes = QButtonGroup(self)
        modes = QHBoxLayout()
        for k, mode in enumerate(Mode):
            made = button(mode.value.capitalize(), "choice", MODE_WORDS[mode])
            made.setCheckable(True)
            made.setMinimumWidth(11 * GRID)
            made.setAutoDefault(False)  # Return is for the answer
            self._modes.addButton(made, k)
            modes.addWidget(made)
        modes.addStretch(1)
        self._modes.idClicked.connect(lambda k: self.mode_wished.emit(list(Mode)[k].value))
        self._about, self._ask = label("", "quiet", wrap=True), label("", "head", wrap=True)
        self._choices = QVBoxLayout()
        self._choices.setSpacing(GRID)
        self._group = QButtonGroup(self)
        self._told, self._hint = label("", "body", wrap=True), label("", "quiet", wrap=True)
        self._picked = ""
        self._hint_button, self._on = button("A hint"), button("Next question", "primary")
        self._hint_button.setAutoDefault(False)
        self._lock = button("Lock", "primary")
        self._lock.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self._lock.clicked.connect(lambda: self._picked and self.answered.emit(self._picked))
        for made, wish in ((self._hint_button, self.hint_wished), (self._on, self.on_wished)):
            made.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
            made.clicked.connect(wish)
        foot = QHBoxLayout()
        foot.addWidget(label(SCORED_LINE, "quiet"), 1)
        for part in (self._hint_button, self._lock, self._on):
            foot.addWidget(part)
        column = QVBoxLayout(self)
        column.setContentsMargins(3 * GRID, 2 * GRID, 3 * GRID, 2 * GRID)
        column.setSpacing(GRID + GRID // 2)
        column.addLayout(modes)
        for part in (self._about, self._ask):
            column.addWidget(part)
        column.addLayout(self._choices)
        column.addWidget(self._below(), 1)
        column.addLayout(foot)

    def _below(self) -> QScrollArea:
        """Return the place below the choices: hint and answers, as long as they are."""
        inside = QWidget()
        inside.setObjectName("column")
        text = QVBoxLayout(inside)
        text.setContentsMargins(0, 0, GRID, 0)
        for part in (self._hint, self._told):
            text.addWidget(part)
        text.addStretch(1)
        return column_area(tr("Answers"), inside)

    def hold(self, on: bool) -> None:
        """Keep the window behind out of reach, or give it back."""
        wanted = Qt.WindowModality.WindowModal if on else Qt.WindowModality.NonModal
        if wanted != self.windowModality():
            shown, place = self.isVisible(), self.pos()
            self.hide()
            self.setWindowModality(wanted)
            if shown:
                self.move(place)
                self.show()
                self.activateWindow()

    def show_practice(self, practice: Practice) -> None:
        """Show the question in hand, or how it ended."""
        self._modes.button(list(Mode).index(practice.mode)).setChecked(True)
        self._clear()
        item = practice.item
        asking = item is not None
        self._hint.setText(practice.hint)
        self._told.setText(practice.told)
        can_hint = asking and bool(item.hint) and practice.mode in (Mode.GUIDED, Mode.COACHED)
        self._hint_button.setVisible(can_hint and not practice.hint)
        waits = practice.mode is Mode.TEST or (practice.mode is Mode.COACHED and not practice.answered())
        self._on.setVisible(asking and not waits)
        self._lock.setVisible(asking and waits)
        self._lock.setEnabled(False)
        self._picked = ""
        if item is None:
            self._show_end(practice)
            return
        # how far the model is settled tells something of the answer: said with it and not before
        told = f", {item.key.difficulty}" if practice.told else ""
        self._about.setText(f"Question {practice.position + 1} of {len(practice.items)}{told}")
        self._ask.setText(item.ask)
        for choice in item.choices:
            made = QRadioButton(choice.words)
            made.setChecked(choice.outcome == practice.answered())
            made.setEnabled(practice.mode is not Mode.GUIDED and not practice.answered())
            made.toggled.connect(lambda on, outcome=choice.outcome: on and self._pick(outcome))
            self._group.addButton(made)
            self._choices.addWidget(made)
        QTimer.singleShot(0, self, self._take_focus)  # new choices are shown only then

    def _take_focus(self) -> None:
        """Give the keys to the first choice while an answer is waited for, else to what goes on."""
        first = self._choices.itemAt(0)
        if self._on.isVisibleTo(self):
            self._on.setDefault(True)
            self._on.setFocus()
        elif first is not None and first.widget() is not None:
            first.widget().setFocus()

    def _show_end(self, practice: Practice) -> None:
        if practice.mode is Mode.FREE:
            self._about.setText(MODE_WORDS[Mode.FREE])
            self._ask.setText("Try the plans on the stage; undo as often as you like.")
            return
        self._about.setText("")
        self._ask.setText(
            practice.score.words if practice.score.graded or practice.score.not_graded else "Done."
        )
        if practice.mode is Mode.TEST:
            self._told.setText("\n\n".join(_answered(practice, k) for k in range(len(practice.items))))

    def _pick(self, outcome: str) -> None:
        """Choose an answer, which counts once it is locked."""
        self._picked = outcome
        self._lock.setEnabled(True)
        self._lock.setDefault(True)

    def _clear(self) -> None:
        while self._choices.count():
            old = self._choices.takeAt(0).widget()
            if old is not None:
                self._group.removeButton(old)
                old.hide()
                old.deleteLater()


def _answered(practice: Practice, position: int) -> str:
    """Return a question of a test with what was answered and what the runs say."""
    item = practice.items[position]
    answered = tr(f"Answered: {item.words_of(practice.answered(position))}.")
    return own(f"{position + 1}  {item.ask}\n{answered} {tr(reveal(item))}")
