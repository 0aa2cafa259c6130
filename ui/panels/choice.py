"""One choice on a card: a mark, its words, and how many hands it had; by mouse and by keys."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QPointF, QRectF, Qt, QTimer, Signal
from PySide6.QtGui import QFocusEvent, QKeyEvent, QMouseEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QFrame, QHBoxLayout, QSpinBox, QWidget

from ui.panels.look import GRID, Look
from ui.panels.pieces import label
from ui.state.tongue import tr

MARK_PX, BAR_PX = 7, 3
CHOOSING = (Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Space)
OWN_KEYS = (Qt.Key.Key_Up, Qt.Key.Key_Down, Qt.Key.Key_Backspace, *CHOOSING)
DIGITS = range(Qt.Key.Key_0, Qt.Key.Key_9 + 1)


class HandsField(QSpinBox):
    """How many hands; what stands in it is replaced by what is typed."""

    def focusInEvent(self, event: QFocusEvent) -> None:
        """Mark all of it once the click that brought the focus has set its caret."""
        super().focusInEvent(event)
        QTimer.singleShot(0, self, self.selectAll)


class ChoiceRow(QFrame):
    """A choice that takes the focus: Space or Return chooses it, digits count hands, arrows go on.

    Attributes
    ----------
    chosen : emitted when it is chosen
    counted : emitted with the number of hands
    focused : emitted when the keys come to it
    stepped : emitted with -1 or +1 when the neighbour above or below is asked for
    """

    chosen = Signal()
    counted = Signal(int)
    focused = Signal()
    chooses_by_space = True
    stepped = Signal(int)

    def __init__(self, words: str, *, counted: bool) -> None:
        super().__init__()
        self.setObjectName("row")
        self._look, self._on, self._share = Look(), False, 0.0
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        self._words = label(words, "", wrap=True)
        self._words.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self.hands = HandsField()
        self.hands.setRange(0, 999)
        self.hands.setSpecialValueText(" ")
        self.hands.setAlignment(Qt.AlignmentFlag.AlignRight)
        self.hands.setFocusPolicy(Qt.FocusPolicy.ClickFocus)
        self.hands.setToolTip(tr("Hands counted for this choice"))
        self.hands.setAccessibleName(tr(f"Hands for: {words}"))
        self.hands.setVisible(counted)
        row = self._row = QHBoxLayout(self)
        row.setSpacing(GRID)
        row.addWidget(self._words, 1)
        row.addWidget(self.hands, 0, Qt.AlignmentFlag.AlignTop)
        self.hands.valueChanged.connect(self.counted)
        self.setAccessibleName(tr(words))

    def set_look(self, look: Look) -> None:
        """Take on another look."""
        self._look = look
        self._row.setContentsMargins(
            round(2.5 * GRID * (0.5 + 0.5 * look.scale)) + 4, 3, GRID // 2, 3 + BAR_PX
        )
        self.hands.setFixedWidth(round(52 * look.scale))
        self.update()

    def show_state(self, *, on: bool, hands: int, share: float, fixed: bool) -> None:
        """Show whether it is chosen, how many hands it has of all, and whether it can still be changed."""
        self._on, self._share = on, share
        self.setEnabled(not fixed)
        self._words.setStyleSheet("font-weight: 600;" if on else "")
        if hands != self.hands.value():  # set again, the caret would jump before what is being typed
            self.hands.blockSignals(True)
            self.hands.setValue(hands)
            self.hands.blockSignals(False)
        state = "chosen" if on else "not chosen"
        told = f"{state}, {hands} hands" if self.hands.isVisibleTo(self) else state
        self.setAccessibleDescription(tr(told))
        self.update()

    @property
    def on(self) -> bool:
        """Whether it is chosen."""
        return self._on

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Draw the mark, the frame of the focus, and a bar as long as its share of the hands."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        ink, quiet = self._look.colour("ink"), self._look.colour("quiet")
        size = round(MARK_PX * (0.5 + 0.5 * self._look.scale))
        middle = QPointF(GRID - MARK_PX + 4 + size, 5 + 0.6 * self._look.px("small"))
        painter.setPen(QPen(ink if self._on or self.hasFocus() else quiet, 1.6))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawEllipse(middle, size - 0.5, size - 0.5)
        if self._on:
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(ink)
            painter.drawEllipse(middle, 0.55 * size, 0.55 * size)
        if self._share > 0.0:
            left = self._row.contentsMargins().left()
            wide = (self.width() - left - GRID // 2) * self._share
            painter.fillRect(QRectF(left, self.height() - BAR_PX, wide, BAR_PX), quiet)
        if self.hasFocus():
            painter.setPen(QPen(ink, 2))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRoundedRect(QRectF(self.rect()).adjusted(1, 1, -1, -1), 4, 4)
        painter.end()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Choose it."""
        if event.button() is Qt.MouseButton.LeftButton:
            self.setFocus()
            self.chosen.emit()

    def event(self, event: QEvent) -> bool:
        """Keep the keys of a row from the window's actions while it has the focus."""
        if event.type() is QEvent.Type.ShortcutOverride and isinstance(event, QKeyEvent) and _is_own(event):
            event.accept()
            return True
        return super().event(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Choose, go to a neighbour, or count hands."""
        key = event.key()
        if key in (Qt.Key.Key_Up, Qt.Key.Key_Down):
            self.stepped.emit(-1 if key == Qt.Key.Key_Up else 1)
        elif key in CHOOSING:
            self.chosen.emit()
        elif key in DIGITS and self.hands.isVisibleTo(self):
            wanted = 10 * self.hands.value() + key - Qt.Key.Key_0
            self.hands.setValue(wanted if wanted <= self.hands.maximum() else key - Qt.Key.Key_0)
        elif key == Qt.Key.Key_Backspace:
            self.hands.setValue(self.hands.value() // 10)
        else:
            super().keyPressEvent(event)

    def focusInEvent(self, event: QEvent) -> None:
        """Show the focus, and tell."""
        self.focused.emit()
        super().focusInEvent(event)  # type: ignore[arg-type]
        self.update()

    def focusOutEvent(self, event: QEvent) -> None:
        """Show that it is gone."""
        super().focusOutEvent(event)  # type: ignore[arg-type]
        self.update()


def _is_own(event: QKeyEvent) -> bool:
    if event.modifiers() & ~Qt.KeyboardModifier.KeypadModifier:
        return False
    return event.key() in OWN_KEYS or event.key() in DIGITS


def only_stop(rows: list[ChoiceRow], keeps: ChoiceRow) -> None:
    """Let Tab stop at one row of a question; the arrows reach the others, as among radio buttons."""
    for row in rows:
        row.setFocusPolicy(Qt.FocusPolicy.StrongFocus if row is keeps else Qt.FocusPolicy.ClickFocus)


def step_focus(rows: list[ChoiceRow], row: QWidget, way: int) -> None:
    """Give the focus to a row's neighbour among the rows of its question, round at the ends."""
    place = next(i for i, item in enumerate(rows) if item is row)
    rows[(place + way) % len(rows)].setFocus(Qt.FocusReason.TabFocusReason)
