"""A box for a number that takes what is written, also out of range: what is wrong is said below it."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QWheelEvent
from PySide6.QtWidgets import QDoubleSpinBox

FAR = 1.0e6
"""What may be written, either way: more digits than this a slip of the hand does not make."""


class OpenNumber(QDoubleSpinBox):
    """A number tells its value once it is written out; steps stay within its bounds, writing need not.

    A wheel that turns over it scrolls the form unless the box has the keys.
    """

    def __init__(self) -> None:
        super().__init__()
        self._low, self._high = -FAR, FAR
        self.setRange(-FAR, FAR)
        self.setMinimumWidth(60)
        self.setKeyboardTracking(False)
        self.setAlignment(Qt.AlignmentFlag.AlignRight)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)

    def set_bounds(self, low: float, high: float) -> None:
        """Say between which values steps go, in the units shown."""
        self._low, self._high = low, high

    def stepBy(self, steps: int) -> None:
        """Go some steps up or down, no further than the bounds."""
        wanted = self.value() + steps * self.singleStep()
        self.setValue(min(max(wanted, self._low), self._high))
        self.selectAll()

    def stepEnabled(self) -> QDoubleSpinBox.StepEnabledFlag:
        """Tell which ways steps can go."""
        up, down = (
            QDoubleSpinBox.StepEnabledFlag.StepUpEnabled,
            QDoubleSpinBox.StepEnabledFlag.StepDownEnabled,
        )
        none = QDoubleSpinBox.StepEnabledFlag.StepNone
        return (up if self.value() < self._high else none) | (down if self.value() > self._low else none)

    def wheelEvent(self, event: QWheelEvent) -> None:
        """Turn the number only while the box has the keys."""
        if self.hasFocus():
            super().wheelEvent(event)
        else:
            event.ignore()
