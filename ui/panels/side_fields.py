"""The side and the person inside, group by group: a row each, and below it what is wrong with its number."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Signal
from PySide6.QtGui import QWheelEvent
from PySide6.QtWidgets import QComboBox, QGridLayout, QLabel, QVBoxLayout, QWidget

from sim.plan import Car, Move
from sim.units import Units
from ui.panels.look import GRID, Look
from ui.panels.open_number import OpenNumber
from ui.panels.pieces import label, set_flag
from ui.state.car_fields import COUNT, Choice
from ui.state.side_fields import (
    BY_NAME,
    GROUPS,
    ONE_DOOR,
    SURVEY,
    Field,
    SideNumber,
    applies,
    hint,
    left_out,
    value_of,
)
from ui.state.tongue import tr

LETTERS = 6
"""Of a choice's words that are always seen."""
WORDS_SHARE, BOX_SHARE = 5, 6
STACKED_FROM = 1.6
"""Scale of type from which a field stands below its words."""


class _ChoiceBox(QComboBox):
    """A choice that a wheel over the form does not turn."""

    def wheelEvent(self, event: QWheelEvent) -> None:
        """Leave the wheel to the form."""
        event.ignore()


class SideRow(QWidget):
    """One field: its words, its box, and what is wrong with what was written in it.

    Attributes
    ----------
    wished : emitted with the field's name and the value asked for
    """

    wished = Signal(str, object)

    def __init__(self, field: Field) -> None:
        super().__init__()
        self.setObjectName("column")
        self.field = field
        self._units = Units.METRIC
        self.words = label(field.words, "quiet", wrap=True)
        self.trouble = label("", "trouble", wrap=True)
        self.trouble.hide()
        self.box: QComboBox | OpenNumber = (
            self._choice(field) if isinstance(field, Choice) else self._number()
        )
        self.box.setAccessibleName(tr(field.words))
        self.words.setBuddy(self.box)
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, GRID // 2)
        self._grid.setHorizontalSpacing(GRID)
        self._grid.setVerticalSpacing(2)
        self._grid.setColumnStretch(0, WORDS_SHARE)
        self._grid.setColumnStretch(1, BOX_SHARE)
        self._stand(beside=True)

    def set_look(self, look: Look) -> None:
        """Put the words above the box where the type is large."""
        self._stand(beside=look.scale < STACKED_FROM)

    def _stand(self, *, beside: bool) -> None:
        place = (0, 1, 1, 1) if beside else (1, 0, 1, 2)
        self._grid.addWidget(self.words, 0, 0, 1, 1 if beside else 2)
        self._grid.addWidget(self.box, *place)
        self._grid.addWidget(self.trouble, 2, 0, 1, 2)

    def _choice(self, field: Choice) -> QComboBox:
        box = _ChoiceBox()
        box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        box.setMinimumContentsLength(LETTERS)
        for value, words in field.options:
            box.addItem(tr(words), value)
        box.activated.connect(lambda index: self.wished.emit(field.name, box.itemData(index)))
        return box

    def _number(self) -> OpenNumber:
        box = OpenNumber()
        box.valueChanged.connect(self._wish)
        return box

    def _wish(self, shown: float) -> None:
        assert isinstance(self.field, SideNumber)
        value = self.field.meant(shown, self._units)
        self.wished.emit(self.field.name, round(value) if self.field.kind == COUNT else value)

    def show_value(self, car: Car, units: Units) -> None:
        """Show the car's value; one that cannot be used stays as it was written, with what is wrong below."""
        if isinstance(self.field, Choice):
            self.show_trouble("")
            self.box.setCurrentIndex(self.box.findData(value_of(car, self.field.name)))
            return
        changed, self._units = units is not self._units, units
        decimals, step = self.field.look(units)
        unit = self.field.unit(units)
        self.box.blockSignals(True)
        self.box.setDecimals(decimals)
        self.box.setSuffix(f"\u00a0{tr(unit)}" if unit else "")
        self.box.set_bounds(*(self.field.shown(end, units) for end in self.field.span))
        self.box.setSingleStep(step)
        self.box.setToolTip(tr(f"{self.field.words}: {hint(self.field, units)}"))
        if changed or self.trouble.isHidden():
            self.show_trouble("")
            self.box.setValue(self.field.shown(float(value_of(car, self.field.name)), units))
        self.box.blockSignals(False)

    def show_trouble(self, words: str) -> None:
        """Say below the field what is wrong with what was written; "" where nothing is."""
        self.trouble.setText(words)
        self.trouble.setVisible(bool(words))
        set_flag(self.box, "wrong", bool(words))
        said = hint(self.field, self._units) if isinstance(self.field, SideNumber) else ""
        self.box.setAccessibleDescription(tr(words or said))


class SideFields(QWidget):
    """All fields of the side and the person; what does not matter on the car shown is left out.

    Parameters
    ----------
    without : names of fields that this form leaves out

    Attributes
    ----------
    wished : emitted with a field's name and the value asked for
    rows : the fields' rows by name
    """

    wished = Signal(str, object)

    def __init__(self, without: Sequence[str] = ()) -> None:
        super().__init__()
        self.setObjectName("column")
        self._without = frozenset(without)
        self._car, self._units = Car(), Units.METRIC
        self.rows: dict[str, SideRow] = {}
        self._groups: list[tuple[QLabel, tuple[Field, ...]]] = []
        self.note, self.survey = label(ONE_DOOR, "quiet", wrap=True), label(SURVEY, "quiet", wrap=True)
        self.unfit = label("", "trouble", wrap=True)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        for heading, fields in GROUPS:
            title = label(heading, "heading", wrap=True)
            title.setContentsMargins(0, GRID, 0, GRID // 2)
            column.addWidget(title)
            self._groups.append((title, fields))
            for field in fields:
                row = self.rows[field.name] = SideRow(field)
                row.wished.connect(self.wished)
                column.addWidget(row)
                if field.name == "extent":
                    column.addWidget(self.unfit)
                    column.addWidget(self.note)
            if any(field.name == "occupant" for field in fields):
                column.addWidget(self.survey)

    def show_car(self, car: Car, units: Units, moves: Sequence[Move] = ()) -> None:
        """Show a car; what is said of a field that was changed meanwhile by other hands is taken back."""
        for name, row in self.rows.items():
            if value_of(car, name) != value_of(self._car, name):
                row.show_trouble("")
            row.show_value(car, units)
            row.setVisible(self._shows(car, name))
        self._car, self._units = car, units
        for title, fields in self._groups:
            title.setVisible(any(self._shows(car, field.name) for field in fields))
        self.note.setVisible(self._shows(car, "extent") and car.extent == "door")
        self.survey.setVisible(car.extent == "side")
        words = left_out(car, moves)
        self.unfit.setText(words)
        self.unfit.setVisible(bool(words))

    def _shows(self, car: Car, name: str) -> bool:
        return name not in self._without and applies(car, name)

    def show_trouble(self, name: str, words: str) -> None:
        """Say at a field what is wrong with what was written; a choice goes back to what the car has."""
        row = self.rows[name]
        if isinstance(BY_NAME[name], Choice):
            row.show_value(self._car, self._units)
        row.show_trouble(words)
