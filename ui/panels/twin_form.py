"""The form of a twin: the car's fields, of which one is changed on the duplicate."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from sim.plan import Car
from sim.units import Units
from ui.panels.car_fields import CarFields
from ui.panels.look import GRID
from ui.panels.pieces import button, column_area, label
from ui.panels.side_fields import SideFields
from ui.state.tongue import tr

BOTH_HAVE = ("extent", "side", "lattice_spacing_m")
"""What a twin has as its plan has it: the moves are made for it, and one clock runs over both."""


class TwinForm(QWidget):
    """A page of the left column.

    Attributes
    ----------
    wished : emitted with a field's name and its value on the twin
    done : emitted when the form is to be put away
    """

    wished = Signal(str, object)
    done = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("column")
        self.fields = CarFields()
        self.side = SideFields(BOTH_HAVE)
        for fields in (self.fields, self.side):
            fields.wished.connect(self.wished)
        back = button("Back to the plan", "primary")
        back.clicked.connect(self.done)
        inside = QWidget()
        inside.setObjectName("column")
        column = QVBoxLayout(inside)
        column.setContentsMargins(2 * GRID, GRID, 2 * GRID, GRID)
        column.addWidget(label("The twin of this car", "heading"))
        column.addWidget(
            label(
                "Change one thing on it: both are worked out. Another change takes its place.",
                "quiet",
                wrap=True,
            )
        )
        column.addWidget(self.fields)
        column.addWidget(self.side)
        column.addStretch(1)
        area = column_area(tr("The twin of this car"), inside)
        foot = QHBoxLayout()
        foot.setContentsMargins(2 * GRID, GRID, 2 * GRID, GRID)
        foot.addWidget(back)
        foot.addStretch(1)
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.addWidget(area, 1)
        outer.addLayout(foot)

    def show_car(self, car: Car, units: Units) -> None:
        """Show the twin's car."""
        self.fields.show_car(car, units)
        self.side.show_car(car, units)

    def take_focus(self) -> None:
        """Give the keys to the first field."""
        self.fields.boxes["seam"].setFocus()
