"""The car's fields, one row each: a choice of words, or a number with its unit and range."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QComboBox, QDoubleSpinBox, QFormLayout, QWidget

from sim.plan import Car
from sim.units import Units
from ui.panels.number_box import NumberBox
from ui.panels.pieces import label
from ui.state.car_fields import (
    BUILD,
    COMPOSITE,
    COUNT,
    FIELDS,
    Choice,
    Number,
    applies,
    hint,
    note_on,
    span,
    value_of,
)
from ui.state.tongue import tr

WORDS_RATIO = 0.45
"""Of the form's width, at most: the rest is the boxes'."""


def number_box() -> QDoubleSpinBox:
    """Return a box for a number that tells its value once it is written out."""
    made = NumberBox()
    made.setMinimumWidth(60)
    return made


def choice_box(choice: Choice) -> QComboBox:
    """Return a box to choose from."""
    made = QComboBox()
    made.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
    made.setMinimumContentsLength(6)
    made.setAccessibleName(tr(choice.words))
    for value, words in choice.options:
        made.addItem(tr(words), value)
    return made


class CarFields(QWidget):
    """All fields of the car; what does not matter on the car shown is left out.

    Attributes
    ----------
    wished : emitted with a field's name and the value asked for
    boxes, numbers : the widgets by their field's name
    """

    wished = Signal(str, object)

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("column")
        self._units = Units.METRIC
        self.boxes: dict[str, QComboBox] = {}
        self.numbers: dict[str, QDoubleSpinBox] = {}
        self.note = label("", "quiet", wrap=True)
        form = self._form = QFormLayout(self)
        form.setContentsMargins(0, 0, 0, 0)
        form.setFieldGrowthPolicy(QFormLayout.FieldGrowthPolicy.AllNonFixedFieldsGrow)
        self._words = [label(field.words, "quiet", wrap=True) for field in (BUILD, *FIELDS)]
        for words, field in zip(self._words, (BUILD, *FIELDS), strict=True):
            form.addRow(words, self._widget(field))
            if field is BUILD:
                form.addRow(self.note)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Break the words where they would take room that the boxes need."""
        super().resizeEvent(event)
        for words in self._words:
            words.setMaximumWidth(round(WORDS_RATIO * self.width()))

    def _widget(self, field: Choice | Number) -> QWidget:
        name = field.name
        if isinstance(field, Choice):
            box = self.boxes[name] = choice_box(field)
            box.activated.connect(lambda i: self.wished.emit(name, box.itemData(i)))
            return box
        number = self.numbers[name] = number_box()
        number.setAccessibleName(tr(field.words))
        number.valueChanged.connect(lambda shown: self._wish_number(field, shown))
        return number

    def _wish_number(self, field: Number, shown: float) -> None:
        value = field.meant(shown, self._units)
        self.wished.emit(field.name, int(value) if field.kind == COUNT else value)

    def show_car(self, car: Car, units: Units) -> None:
        """Show a car; what the fields say is not taken for a wish meanwhile."""
        self._units = units
        note = note_on(car)
        self.note.setText(note)
        self.note.setVisible(bool(note))
        metal = self.boxes["metal"]
        if (metal.findData(COMPOSITE[0]) >= 0) != (car.metal == COMPOSITE[0]):
            if car.metal == COMPOSITE[0]:
                metal.addItem(tr(COMPOSITE[1]), COMPOSITE[0])
            else:
                metal.removeItem(metal.findData(COMPOSITE[0]))
        for field in (BUILD, *FIELDS):
            kind = self.boxes if isinstance(field, Choice) else self.numbers
            widget = kind[field.name]
            widget.blockSignals(True)
            if isinstance(field, Choice):
                self._show_choice(field, car)
            else:
                self._show_number(field, car)
            widget.blockSignals(False)
            self._form.setRowVisible(widget, applies(car, field.name))

    def _show_choice(self, field: Choice, car: Car) -> None:
        box = self.boxes[field.name]
        box.setCurrentIndex(box.findData(value_of(car, field.name)))

    def _show_number(self, field: Number, car: Car) -> None:
        box, units = self.numbers[field.name], self._units
        decimals, step = field.look(units)
        unit = field.unit(units)
        box.setDecimals(decimals)
        box.setSuffix(f"\u00a0{tr(unit)}" if unit else "")
        box.setRange(*(field.shown(end, units) for end in span(field.name)))
        box.setSingleStep(step)
        box.setToolTip(tr(hint(field, units)))
        box.setValue(field.shown(float(value_of(car, field.name)), units))
