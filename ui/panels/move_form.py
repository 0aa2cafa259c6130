"""The form of one move: every field of its type, changed in place."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import Signal
from PySide6.QtWidgets import (
    QComboBox,
    QDoubleSpinBox,
    QFormLayout,
    QHBoxLayout,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from sim.plan import Move
from sim.units import Units
from ui.panels.car_fields import choice_box, number_box
from ui.panels.look import GRID
from ui.panels.pieces import button, label
from ui.state.car_fields import Choice
from ui.state.move_fields import Field, Measure, value_of
from ui.state.tongue import tr


class MoveForm(QWidget):
    """The form in the left column.

    Attributes
    ----------
    wished : emitted with a field and the value asked for
    earlier, later, unwanted, done : emitted by the buttons below
    """

    wished = Signal(object, object)
    earlier = Signal()
    later = Signal()
    unwanted = Signal()
    done = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("column")
        self.fields: tuple[Field, ...] = ()
        self.widgets: dict[str, QComboBox | QDoubleSpinBox] = {}
        self._units = Units.METRIC
        self.title, self.trouble = label("", "heading", wrap=True), label("", "", wrap=True)
        self._inside = QWidget()
        self._inside.setObjectName("column")
        column = QVBoxLayout(self._inside)
        column.setContentsMargins(2 * GRID, GRID, 2 * GRID, GRID)
        column.addWidget(self.title)
        self._rows = QWidget()
        self._rows.setObjectName("column")
        self._form = QFormLayout(self._rows)
        self._form.setContentsMargins(0, 0, 0, 0)
        self._form.setFieldGrowthPolicy(QFormLayout.FieldGrowthPolicy.AllNonFixedFieldsGrow)
        column.addWidget(self._rows)
        column.addWidget(self.trouble)
        column.addStretch(1)
        area = QScrollArea()
        area.setAccessibleName(tr("The move's fields"))
        area.setWidgetResizable(True)
        area.setWidget(self._inside)
        area.setFrameShape(QScrollArea.Shape.NoFrame)
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.addWidget(area, 1)
        outer.addLayout(self._foot())

    def _foot(self) -> QVBoxLayout:
        self.up, self.down = button("Earlier", "bare"), button("Later", "bare")
        self.out, self.back = button("Take out", "bare"), button("Back to the plan", "primary")
        row, last = QHBoxLayout(), QHBoxLayout()
        for part in (self.up, self.down, self.out):
            row.addWidget(part)
        row.addStretch(1)
        last.addWidget(self.back)
        last.addStretch(1)
        foot = QVBoxLayout()
        foot.setContentsMargins(2 * GRID, GRID // 2, 2 * GRID, GRID)
        foot.addLayout(row)
        foot.addLayout(last)
        for made, signal in ((self.up, self.earlier), (self.down, self.later), (self.out, self.unwanted),
                             (self.back, self.done)):  # fmt: skip
            made.clicked.connect(signal)
        return foot

    def show_move(
        self, title: str, move: Move | None, fields: tuple[Field, ...], trouble: str, units: Units
    ) -> None:
        """Show a move's fields; a row is made anew only where the fields are others."""
        self._units = units
        self.title.setText(title)
        nothing = "" if fields or move is None else tr("There is nothing to set here.")
        self.trouble.setText(trouble or nothing)
        self.trouble.setVisible(bool(self.trouble.text()))
        if fields != self.fields:
            self._make(fields)
        if move is None:
            return
        for field in fields:
            widget = self.widgets[field.name]
            widget.blockSignals(True)
            value = value_of(move, field.name)
            if isinstance(widget, QComboBox):
                self._show_choice(widget, value)
            elif isinstance(field, Measure):
                self._show_number(widget, field, float(value))
            widget.blockSignals(False)

    def show_able(self, *, up: bool, down: bool) -> None:
        """Tell whether the move can stand earlier or later."""
        self.up.setEnabled(up)
        self.down.setEnabled(down)

    def _make(self, fields: tuple[Field, ...]) -> None:
        focused = next((name for name, made in self.widgets.items() if made.hasFocus()), "")
        # A row that asked for other fields may still be in its own key or mouse event: it goes after that.
        while self._form.rowCount():
            row = self._form.takeRow(0)
            for item in (row.labelItem, row.fieldItem):
                old = item.widget()
                old.hide()
                old.deleteLater()
        self.fields, self.widgets = fields, {}
        for field in fields:
            made = self._choice(field) if isinstance(field, Choice) else self._number(field)
            self.widgets[field.name] = made
            self._form.addRow(label(field.words, "quiet", wrap=True), made)
        if focused in self.widgets:
            self.widgets[focused].setFocus()

    def _choice(self, field: Choice) -> QComboBox:
        box = choice_box(field)
        box.activated.connect(lambda index: self.wished.emit(field, box.itemData(index)))
        return box

    def _number(self, field: Measure) -> QDoubleSpinBox:
        box = number_box()
        box.setAccessibleName(tr(field.words))
        box.valueChanged.connect(lambda shown: self.wished.emit(field, field.meant(shown, self._units)))
        return box

    def _show_choice(self, box: QComboBox, value: Any) -> None:
        place = box.findData(value)
        if place < 0:  # a plan may hold what the form does not offer: shown as it is
            box.addItem(str(value).replace("_", " "), value)
            place = box.count() - 1
        box.setCurrentIndex(place)

    def _show_number(self, box: QDoubleSpinBox, field: Measure, value: float) -> None:
        units = self._units
        decimals, step = field.look(units)
        box.setDecimals(decimals)
        box.setSuffix(f"\u00a0{tr(field.unit(units))}")
        box.setRange(field.shown(min(field.low, value), units), field.shown(max(field.high, value), units))
        box.setSingleStep(step)
        box.setValue(field.shown(value, units))
