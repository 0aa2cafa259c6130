"""The lesson beside the stage: its steps, and of the one shown what the class reads and the teacher says."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QMouseEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QScrollArea, QVBoxLayout, QWidget

from ui.panels.look import GRID, Look
from ui.panels.pieces import (
    FittedButton,
    Foot,
    IconButton,
    button,
    column_area,
    dress,
    label,
    line,
    set_flag,
)
from ui.state.tongue import own, tr


@dataclass(frozen=True)
class StepWords:
    """One step as it is shown.

    title, phase : in the list;  words, notes : only of the step shown
    asks : whether there is a question to it;  beside : title of the plan to look at beside it, or ""
    """

    title: str
    phase: str
    words: str = ""
    notes: str = ""
    asks: bool = False
    beside: str = ""


class StepCard(QFrame):
    """One step; the one shown is open.

    Attributes
    ----------
    picked : emitted with the step's index when it is clicked
    """

    picked = Signal(int)

    def __init__(self, index: int, panel: LessonPanel) -> None:
        super().__init__()
        self.setObjectName("card")
        self._index = index
        self._title = label("", "", wrap=True)
        self._words = label("", "body", wrap=True)
        self._heading, self._notes = label("For the teacher", "heading"), label("", "quiet", wrap=True)
        self._ask = button(
            "Ask before the push", "", "Choices for the class; nothing is shown before the lock (A)"
        )
        self._beside = FittedButton("The same moment of the other plan; Page Down goes on")
        self._ask.clicked.connect(panel.ask_wished)
        self._beside.clicked.connect(panel.beside_wished)
        column = QVBoxLayout(self)
        column.setContentsMargins(GRID + 4, GRID // 2, GRID // 2, GRID // 2)
        column.setSpacing(GRID // 2)
        for part in (self._title, self._words, self._heading, self._notes, self._ask, self._beside):
            column.addWidget(part)

    def set_look(self, look: Look) -> None:
        """Set the title in the weight that belongs to it."""
        self._look = look
        self._show_weight()

    def show_step(self, step: StepWords, *, shown: bool, notes: bool) -> None:
        """Show a step, open or not."""
        set_flag(self, "selected", shown)
        self._shown = shown
        self._show_weight()
        self._title.setText(own(f"{self._index + 1}  {step.title}"))
        for part, there in (
            (self._words, bool(step.words)),
            (self._heading, notes and bool(step.notes)),
            (self._notes, notes and bool(step.notes)),
            (self._ask, step.asks),
            (self._beside, bool(step.beside)),
        ):
            part.setVisible(shown and there)
        self._words.setText(own(step.words))
        self._notes.setText(step.notes)
        self._beside.say(f"Look at: {step.beside}", "Look at the other plan", "Other plan")
        about = tr(f"Step {self._index + 1}, {step.phase}")
        self.setAccessibleName(own(f"{about}: {step.title}. {step.words}"))

    def _show_weight(self) -> None:
        weight = 600 if getattr(self, "_shown", False) else 400
        self._title.setStyleSheet(f"font-weight: {weight};")

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Go to the step."""
        if event.button() == Qt.MouseButton.LeftButton:
            self.picked.emit(self._index)


class LessonPanel(QWidget):
    """A page of the left column.

    Attributes
    ----------
    picked : emitted with the index of a step
    back_wished, on_wished, away_wished, plan_wished : the buttons
    ask_wished, beside_wished, run_wished : of the step shown
    notes_wished : the teacher's notes shown or hidden
    """

    picked = Signal(int)
    back_wished = Signal()
    on_wished = Signal()
    away_wished = Signal()
    plan_wished = Signal()
    ask_wished = Signal()
    beside_wished = Signal()
    run_wished = Signal()
    notes_wished = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("column")
        self._look = Look()
        self._cards: list[StepCard] = []
        self._phases: list[QWidget] = []
        self._title, self._place = label("", "heading", wrap=True), label("", "quiet", wrap=True)
        self._stale = label("", "quiet", wrap=True)
        self._local_heading, self._local = label("Our own rules", "heading"), label("", "", wrap=True)
        self._run = button("Run it again", "", "Solve the plan of this step now")
        self._run.clicked.connect(self.run_wished)
        self._list = QVBoxLayout()
        self._list.setSpacing(2)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addLayout(self._head())
        column.addWidget(line())
        column.addWidget(self._scroll(), 1)
        column.addWidget(line())
        column.addWidget(self._foot())

    def _head(self) -> QVBoxLayout:
        away = IconButton("close", "Put the lesson away", size=14)
        away.clicked.connect(self.away_wished)
        plan = button("Plan \u203a", "bare", "The plan's cards in this place (K brings the lesson back)")
        plan.clicked.connect(self.plan_wished)
        row = QHBoxLayout()
        row.setSpacing(0)
        row.addWidget(self._title, 1)
        row.addWidget(plan, 0, Qt.AlignmentFlag.AlignTop)
        row.addWidget(away, 0, Qt.AlignmentFlag.AlignTop)
        head = QVBoxLayout()
        head.setContentsMargins(GRID, GRID // 2, GRID // 2, GRID // 2)
        head.setSpacing(2)
        head.addLayout(row)
        head.addWidget(self._place)
        return head

    def _scroll(self) -> QScrollArea:
        inside = QWidget()
        inside.setObjectName("column")
        column = QVBoxLayout(inside)
        column.setContentsMargins(GRID // 2, GRID // 2, GRID // 2, GRID)
        column.setSpacing(GRID // 2)
        column.addLayout(self._list)
        column.addWidget(self._stale)
        column.addWidget(self._run, 0, Qt.AlignmentFlag.AlignLeft)
        for part in (self._local_heading, self._local):
            part.setContentsMargins(GRID // 2, GRID // 2, GRID // 2, 0)
            column.addWidget(part)
        column.addStretch(1)
        self._area = column_area(tr("Steps of the lesson"), inside)
        return self._area

    def _foot(self) -> Foot:
        self._back, self._on = (
            button("Back", "", "The step before (Page Up)"),
            button("Next step", "primary", "The next step (Page Down)"),
        )
        self._notes = button("Notes", "bare", "Show or hide the notes for the teacher")
        self._notes.setCheckable(True)
        for made, wish in (
            (self._back, self.back_wished),
            (self._on, self.on_wished),
            (self._notes, self.notes_wished),
        ):
            made.clicked.connect(wish)
        foot = Foot((self._back, self._notes), (self._on,))
        foot.layout().setContentsMargins(GRID, GRID // 2, GRID, GRID // 2)
        return foot

    def set_look(self, look: Look) -> None:
        """Keep the look for steps to come."""
        self._look = look

    def show_lesson(
        self,
        title: str,
        place: str,
        steps: tuple[StepWords, ...],
        position: int,
        *,
        notes: bool,
        stale: str,
        local: str = "",
    ) -> None:
        """Show a lesson at a step.

        Parameters
        ----------
        title, place : above the steps;  position : index of the step shown
        notes : whether the teacher's notes are shown;  stale : which results are not fresh, or ""
        local : the service's own rules, with who wrote them and when, or ""
        """
        self._title.setText(own(title))
        self._place.setText(place)
        self._stale.setText(stale)
        self._stale.setVisible(bool(stale))
        self._local.setText(local)
        for part in (self._local_heading, self._local):
            part.setVisible(bool(local))
        self._run.setVisible(bool(stale))
        self._notes.setChecked(notes)
        self._back.setEnabled(position > 0)
        self._on.setEnabled(position + 1 < len(steps))
        self._make_cards(steps)
        for k, (card, step) in enumerate(zip(self._cards, steps, strict=True)):
            card.show_step(step, shown=k == position, notes=notes)
        self._position = position
        QTimer.singleShot(0, self, self._bring)

    def _make_cards(self, steps: tuple[StepWords, ...]) -> None:
        phases = tuple(step.phase for step in steps)
        if phases == getattr(self, "_made_for", None):
            return
        self._made_for = phases
        for old in (*self._cards, *self._phases):
            self._list.removeWidget(old)
            old.hide()  # else it is drawn over the new ones until it is gone
            old.deleteLater()
        self._cards, self._phases = [], []
        for k, phase in enumerate(phases):
            if not k or phase != phases[k - 1]:
                heading = label(phase.capitalize(), "heading")
                heading.setContentsMargins(GRID // 2, GRID, 0, 0)
                self._phases.append(heading)
                self._list.addWidget(heading)
            card = StepCard(k, self)
            card.picked.connect(self.picked)
            self._cards.append(card)
            self._list.addWidget(card)
        dress(self, self._look)

    def _bring(self) -> None:
        """Scroll to the step shown, once it has its place."""
        if not 0 <= self._position < len(self._cards):
            return
        card, bar = self._cards[self._position], self._area.verticalScrollBar()
        self._area.ensureWidgetVisible(card, 0, GRID)
        # one that is taller than the room is read from its title on
        bar.setValue(min(bar.value(), max(0, card.y() - GRID)))
