"""A box for a number with decimals, written with the decimal mark of the language spoken."""

from __future__ import annotations

from PySide6.QtCore import QLocale, Qt
from PySide6.QtWidgets import QDoubleSpinBox

from ui.state.tongue import decimals, pointed


class NumberBox(QDoubleSpinBox):
    """Tells its value once it is written out; takes a point as well as the language's own mark."""

    def __init__(self) -> None:
        super().__init__()
        self.setLocale(QLocale.c())  # the system's own mark would stand beside the program's
        self.setKeyboardTracking(False)
        self.setAlignment(Qt.AlignmentFlag.AlignRight)

    def textFromValue(self, value: float) -> str:
        """Return a value as it is written."""
        return decimals(super().textFromValue(value))

    def valueFromText(self, text: str) -> float:
        """Return the value of what is written."""
        return super().valueFromText(pointed(text))

    def validate(self, text: str, place: int) -> object:
        """Tell whether a text is a number, or may become one."""
        state, _, place = super().validate(pointed(text), place)  # type: ignore[misc]
        return state, text, place
