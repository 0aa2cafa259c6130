"""The card of a prediction: questions, the lock, and afterwards prediction and outcome beside each other."""

from __future__ import annotations

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QFontMetrics
from PySide6.QtWidgets import QHBoxLayout, QLineEdit, QScrollArea, QVBoxLayout, QWidget

from ui.panels.choice import ChoiceRow, only_stop, step_focus
from ui.panels.look import GRID, Look
from ui.panels.pieces import button, column_area, dress, label, line
from ui.state.asking import Asking, Standing
from ui.state.questions import OWN, WHY, Question
from ui.state.tongue import tr
from ui.state.verdict import Comparison

LOCK_TIP = "No choice can be changed after this, and nothing of the outcome is shown before it (L)"
HOW = "Arrows move, Space chooses, digits count hands (most hands choose), Tab goes to the next question."
LOCKED = "Locked at {at}. Run the push (Return) and watch the metal; then compare."
RUN = "Locked at {at}. Watch the push to its end; compare when the class is ready."


class AskCard(QWidget):
    """A page of the right column.

    Attributes
    ----------
    chosen : emitted with question and choice;  counted : with question, choice and hands
    written : emitted with the reason in one's own words
    lock_wished, run_wished, show_wished, away_wished, again_wished : the buttons
    """

    chosen = Signal(str, str)
    counted = Signal(str, str, int)
    written = Signal(str)
    lock_wished = Signal()
    run_wished = Signal()
    show_wished = Signal()
    away_wished = Signal()
    again_wished = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("column")
        self._look = Look()
        self._rows: dict[tuple[str, str], ChoiceRow] = {}
        self._asked: tuple[Question, ...] = ()
        self.title, self.about = label("", "head", wrap=True), label("", "quiet", wrap=True)
        self.own = QLineEdit()
        self.own.setMaxLength(160)
        self.own.setPlaceholderText(tr("In a few words"))
        self.own.setAccessibleName(tr("The reason in your own words"))
        self.own.textEdited.connect(self.written)
        self.note = label("", "quiet", wrap=True)
        self._body = QVBoxLayout()
        self._body.setSpacing(2)
        self._area = self._scroll()
        self.lock = button("Lock", "primary", LOCK_TIP)
        self.run = button("Run the push", "primary", "Run it and watch (Return)")
        self.show_button = button("Compare", "primary", "Prediction and outcome beside each other (R)")
        self.again = button("Ask again", "", "A new prediction for the push that is selected (A)")
        self.away = button("Put away", "", "Back to the reading")
        foot = QHBoxLayout()
        foot.setContentsMargins(2 * GRID, GRID, 2 * GRID, GRID)
        for part in (self.lock, self.run, self.show_button, self.again):
            foot.addWidget(part)
        foot.addStretch(1)
        foot.addWidget(self.away)
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.setSpacing(0)
        outer.addWidget(self._area, 1)
        outer.addWidget(line())
        hint = QVBoxLayout()
        hint.setContentsMargins(2 * GRID, GRID // 2, 2 * GRID, 0)
        hint.addWidget(self.note)
        outer.addLayout(hint)
        outer.addLayout(foot)
        for made, signal in (
            (self.lock, self.lock_wished),
            (self.run, self.run_wished),
            (self.show_button, self.show_wished),
            (self.again, self.again_wished),
            (self.away, self.away_wished),
        ):
            made.clicked.connect(signal)

    def _scroll(self) -> QScrollArea:
        inside = QWidget()
        inside.setObjectName("column")
        column = QVBoxLayout(inside)
        column.setContentsMargins(2 * GRID, GRID, GRID, GRID)
        column.setSpacing(GRID // 2)
        column.addWidget(self.title)
        column.addWidget(self.about)
        column.addLayout(self._body)
        column.addStretch(1)
        area = column_area(tr("Prediction"), inside)
        area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        return area

    def set_look(self, look: Look) -> None:
        """Keep the look for rows to come."""
        self._look = look

    # --- the questions -----------------------------------------------------------------------------------

    def show_asking(self, asking: Asking, about: str) -> None:
        """Show the questions with what is chosen so far, or that they are locked."""
        self.title.setText("Before the push")
        self.about.setText(about)
        if asking.questions != self._asked or not self._rows:
            self._build(asking.questions)
        now, fixed = asking.now, not asking.open
        for (question, choice), row in self._rows.items():
            most = sum(n for (asked, _), n in now.hands.items() if asked == question)
            hands = now.hands.get((question, choice), 0)
            on = now.chosen.get(question) == choice
            row.show_state(on=on, hands=hands, share=hands / most if most else 0.0, fixed=fixed)
            row.setVisible(not fixed or on or hands > 0)
        for asked in self._asked:
            self._let_tab_stop(asked.key, now.chosen.get(asked.key))
        self.own.setVisible(now.chosen.get(WHY) == OWN)
        self.own.setEnabled(not fixed)
        if self.own.text() != now.own_words:
            self.own.setText(now.own_words)
        at = now.locked_at.strftime("%H:%M:%S") if now.locked_at is not None else ""
        words = (asking.missing or HOW) if asking.open else (RUN if now.ran_at else LOCKED).format(at=at)
        self.note.setText(words)
        self.lock.setEnabled(not asking.missing)
        self._show_buttons(asking.standing, ran=now.ran_at is not None)

    def _show_buttons(self, standing: Standing, *, ran: bool) -> None:
        locked = standing is Standing.LOCKED
        self.lock.setVisible(standing is Standing.OPEN)
        self.run.setVisible(locked and not ran)
        self.show_button.setVisible(locked and ran)
        self.again.setVisible(standing is Standing.SHOWN)

    def _build(self, asked: tuple[Question, ...]) -> None:
        self._clear()
        self._asked = asked
        for question in asked:
            head = label(question.words, "", wrap=True)
            head.setStyleSheet("font-weight: 600;")
            self._body.addSpacing(GRID)
            top = QHBoxLayout()
            top.addWidget(head, 1)
            if question.counted:
                hands = label("Hands", "quiet")
                hands.setContentsMargins(0, 0, GRID // 2, 0)
                top.addWidget(hands, 0, Qt.AlignmentFlag.AlignBottom)
            self._body.addLayout(top)
            rows: list[ChoiceRow] = []
            for choice in question.choices:
                row = self._row(question, choice.key, choice.words)
                row.stepped.connect(lambda way, row=row, rows=rows: step_focus(rows, row, way))
                rows.append(row)
                self._body.addWidget(row)
        self._body.addWidget(self.own)

    def _row(self, question: Question, key: str, words: str) -> ChoiceRow:
        row = ChoiceRow(words, counted=question.counted)
        row.set_look(self._look)
        row.chosen.connect(lambda: self._choose(question.key, key))
        row.focused.connect(lambda: self._area.ensureWidgetVisible(row, 0, 3 * GRID))
        row.focused.connect(lambda: self._let_tab_stop(question.key, key))
        row.counted.connect(lambda hands: self.counted.emit(question.key, key, hands))
        self._rows[question.key, key] = row
        return row

    def _choose(self, question: str, key: str) -> None:
        self.chosen.emit(question, key)
        if key == OWN:
            self.own.setFocus()

    def _let_tab_stop(self, question: str, chosen: str | None) -> None:
        rows = [row for (asked, _), row in self._rows.items() if asked == question]
        held = next((row for row in rows if row.hasFocus()), None)
        picked = self._rows.get((question, chosen)) if chosen else None
        if rows:
            only_stop(rows, held or picked or rows[0])

    def take_focus(self) -> None:
        """Give the keys to the first question that is still open."""
        chosen = {asked for (asked, _), row in self._rows.items() if row.on}
        rows = [row for (asked, _), row in self._rows.items() if asked not in chosen]
        first = next(iter(rows or self._rows.values()), None)
        if first is not None:
            QTimer.singleShot(0, first, lambda: first.setFocus(Qt.FocusReason.TabFocusReason))

    # --- the comparison ----------------------------------------------------------------------------------

    def show_comparison(self, found: Comparison, about: str) -> None:
        """Show prediction and outcome beside each other."""
        self._clear()
        self._asked = ()
        self.title.setText("What came of it")
        self.about.setText(about)
        for item in found.lines:
            self._body.addSpacing(GRID)
            self._body.addWidget(label(item.asked, "quiet", wrap=True))
            self._body.addLayout(self._pair("Foretold", item.said, strong=False))
            self._body.addLayout(self._pair("Happened", item.came, strong=item.agrees is not None))
            words = "; ".join(part for part in (item.word, item.hands) if part)
            if words:
                self._body.addWidget(label(words[0].upper() + words[1:] + ".", "heading", wrap=True))
            self._body.addWidget(line())
        for words, name in ((found.note, "body"), (found.sentence, "body"), (found.near, "")):
            if words:
                self._body.addSpacing(GRID // 2)
                self._body.addWidget(label(words, name, wrap=True))
        self.note.setText("Ask: what would have to be different for the other answers to come out?")
        self._show_buttons(Standing.SHOWN, ran=True)
        self._area.verticalScrollBar().setValue(0)
        dress(self, self._look)

    def _pair(self, head: str, words: str, *, strong: bool) -> QHBoxLayout:
        name, text = label(head, "quiet"), label(words, "", wrap=True)
        if strong:
            text.setStyleSheet("font-weight: 600;")
        name.setFixedWidth(QFontMetrics(self._look.font("small")).horizontalAdvance("Happened") + GRID)
        row = QHBoxLayout()
        row.setSpacing(0)
        row.addWidget(name, 0, Qt.AlignmentFlag.AlignTop)
        row.addWidget(text, 1)
        return row

    def _clear(self) -> None:
        self._rows = {}
        self._body.removeWidget(self.own)
        self.own.setParent(self)
        self.own.hide()
        _empty(self._body)


def _empty(layout: QVBoxLayout | QHBoxLayout) -> None:
    while layout.count():
        item = layout.takeAt(0)
        widget, inner = item.widget(), item.layout()
        if widget is not None:
            widget.hide()
            widget.deleteLater()
        elif isinstance(inner, (QHBoxLayout, QVBoxLayout)):
            _empty(inner)
