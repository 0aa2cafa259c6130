"""The tool by its numbers, and the crew's own list of tools to choose from and to keep one in."""

from __future__ import annotations

import msgspec
from PySide6.QtCore import Signal
from PySide6.QtWidgets import (
    QComboBox,
    QDoubleSpinBox,
    QFormLayout,
    QHBoxLayout,
    QLineEdit,
    QVBoxLayout,
    QWidget,
)

from sim.plan import Tool
from sim.units import Units, length, length_si
from ui.panels.car_fields import number_box
from ui.panels.pieces import button, label
from ui.state.tongue import tr
from ui.state.tool_list import LONGEST_NAME, RANGES, TOOL_WORDS, alike

STANDARD = Tool()
LENGTHS = ("tip_width_m", "tip_depth_m")
NOT_KEPT = "this plan's own"
NAME_TIP = "A name of the crew's own, no maker's; what counts are the numbers"


class ToolFields(QWidget):
    """The tool's fields.

    Attributes
    ----------
    wished : emitted with a number's field name and its value
    taken : emitted with the tool chosen from the list
    keep_wished : emitted with the tool shown under the name typed
    drop_wished : emitted with the name of the tool to be taken off the list
    """

    wished = Signal(str, float)
    taken = Signal(object)
    keep_wished = Signal(object)
    drop_wished = Signal(str)

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("column")
        self._tool, self._units = STANDARD, Units.METRIC
        self._kept: tuple[Tool, ...] = ()
        self.box, self.name = QComboBox(), QLineEdit()
        self.box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.box.setMinimumContentsLength(6)
        self.box.setAccessibleName(tr("The tool"))
        self.name.setMaxLength(LONGEST_NAME)
        self.name.setMinimumWidth(40)
        self.name.setToolTip(tr(NAME_TIP))
        self.name.setAccessibleName(tr("Name of the tool"))
        self.numbers: dict[str, QDoubleSpinBox] = {name: number_box() for name in RANGES}
        self.keep = button("Keep in the list", "", "Kept with your settings, for every plan")
        self.drop = button("Take off", "", "The plan keeps the tool's numbers")
        form = QFormLayout()
        form.setContentsMargins(0, 0, 0, 0)
        form.setFieldGrowthPolicy(QFormLayout.FieldGrowthPolicy.AllNonFixedFieldsGrow)
        form.addRow(label("Tool", "quiet"), self.box)
        for name, box in self.numbers.items():
            box.setAccessibleName(tr(TOOL_WORDS[name]))
            form.addRow(label(TOOL_WORDS[name], "quiet"), box)
            box.valueChanged.connect(
                lambda shown, name=name: self.wished.emit(name, self._meant(name, shown))
            )
        form.addRow(label("Called", "quiet"), self.name)
        row = QHBoxLayout()
        row.addWidget(self.keep)
        row.addWidget(self.drop)
        row.addStretch(1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addLayout(form)
        column.addLayout(row)
        self.box.activated.connect(self._take)
        self.name.returnPressed.connect(self._keep)
        self.keep.clicked.connect(self._keep)
        self.drop.clicked.connect(lambda: self.drop_wished.emit(self.box.currentText()))

    def show_kept(self, kept: tuple[Tool, ...]) -> None:
        """Show other tools to choose from."""
        self._kept = kept
        self._show_box()

    def show_tool(self, tool: Tool, units: Units) -> None:
        """Show a tool; what the fields say is not taken for a wish meanwhile."""
        self._tool, self._units = tool, units
        metric = units is Units.METRIC
        for name, box in self.numbers.items():
            is_length = name in LENGTHS
            low, high, usual = RANGES[name]
            box.blockSignals(True)
            box.setDecimals(2 if not is_length or not metric else 0)
            box.setSuffix("\u00a0" + length(0.0, units)[1] if is_length else "")
            ends = (length(end, units)[0] if is_length else end for end in (low, high))
            box.setRange(*ends)
            box.setSingleStep(0.05 if not is_length else 5 if metric else 0.25)
            value = getattr(tool, name)
            box.setValue(length(value, units)[0] if is_length else value)
            box.setToolTip(tr(f"{TOOL_WORDS[name]}: {usual}"))
            box.blockSignals(False)
        self._show_box()

    def _show_box(self) -> None:
        tools = self.offered()
        self.box.blockSignals(True)
        self.box.clear()
        for tool in tools:
            self.box.addItem(tr(tool.name), tool)
        place = next((i for i, tool in enumerate(tools) if alike(tool, self._tool)), -1)
        if place < 0:
            self.box.addItem(tr(f"{self._tool.name} ({NOT_KEPT})"), self._tool)
            place = self.box.count() - 1
        self.box.setCurrentIndex(place)
        self.box.blockSignals(False)
        kept = next((tool.name for tool in self._kept if alike(tool, self._tool)), "")
        self.drop.setEnabled(bool(kept))
        if not self.name.hasFocus():
            self.name.setText(kept or tr(self._tool.name))

    def offered(self) -> tuple[Tool, ...]:
        """Return the tools to choose from: the standard one, unless its name is taken, and the crew's."""
        named = {tool.name for tool in self._kept}
        return (*(() if STANDARD.name in named else (STANDARD,)), *self._kept)

    def _wish(self, name: str, shown: float) -> None:
        self.wished.emit(name, self._meant(name, shown))

    def _meant(self, name: str, shown: float) -> float:
        return round(length_si(shown, self._units), 5) if name in LENGTHS else round(shown, 3)

    def _take(self, index: int) -> None:
        tool = self.box.itemData(index)
        if not alike(tool, self._tool):
            self.taken.emit(tool)

    def _keep(self) -> None:
        self.keep_wished.emit(msgspec.structs.replace(self._tool, name=self.name.text()))
