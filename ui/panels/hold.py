"""Hold a key to open the tips: pressed once, let go once, whatever the keyboard repeats."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, Qt, QTimer, Signal
from PySide6.QtGui import QFocusEvent, QGuiApplication, QKeyEvent
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractScrollArea,
    QAbstractSlider,
    QAbstractSpinBox,
    QApplication,
    QComboBox,
    QLineEdit,
    QPlainTextEdit,
    QTextEdit,
    QWidget,
)

TYPED_IN = (QLineEdit, QAbstractSpinBox, QTextEdit, QPlainTextEdit, QComboBox)
LOST = (
    Qt.FocusReason.ActiveWindowFocusReason,
    Qt.FocusReason.PopupFocusReason,
    Qt.FocusReason.MenuBarFocusReason,
    Qt.FocusReason.MouseFocusReason,
)
"""Reasons for which a release may never arrive; a button that is merely disabled is none of them."""


def is_typing(widget: QWidget | None) -> bool:
    """Tell whether keys belong to a field that is being typed in."""
    return isinstance(widget, TYPED_IN)


UP_AND_DOWN = frozenset({Qt.Key.Key_Up, Qt.Key.Key_Down})
ARROWS = UP_AND_DOWN | {Qt.Key.Key_Left, Qt.Key.Key_Right, Qt.Key.Key_Home, Qt.Key.Key_End}


def moved_by(widget: QWidget) -> frozenset[Qt.Key]:
    """Return the keys that move a control that has the focus: a slider by arrows, a column up and down."""
    if isinstance(widget, QAbstractSlider):
        return ARROWS
    return UP_AND_DOWN if isinstance(widget, QAbstractScrollArea) else frozenset()


SETTLE_MS = 50
"""A repeated key's press follows its release within a few milliseconds; a finger takes longer."""


class HoldKey(QObject):
    """Watches one key for one window.

    Auto-repeat comes as release and press, on some screens not marked as such: a release counts once no press
    has followed it. Losing the focus brings no release at all: that counts as letting go at once.

    Parameters
    ----------
    window : the window whose keys are watched
    key : which one

    Attributes
    ----------
    pressed, released : emitted once each
    """

    pressed = Signal()
    released = Signal()

    def __init__(self, window: QWidget, key: Qt.Key = Qt.Key.Key_Space) -> None:
        super().__init__(window)
        self._window, self._key, self._down = window, key, False
        self._settling = QTimer(self)
        self._settling.setSingleShot(True)
        self._settling.setInterval(SETTLE_MS)
        self._settling.timeout.connect(self.let_go)
        application = QApplication.instance()
        assert isinstance(application, QGuiApplication)
        application.installEventFilter(self)
        application.applicationStateChanged.connect(self._state_changed)

    @property
    def down(self) -> bool:
        """Whether the key is held."""
        return self._down

    def let_go(self) -> None:
        """Count as let go, if held."""
        self._settling.stop()
        if self._down:
            self._down = False
            self.released.emit()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Take the key's presses and releases; see the window lose its focus."""
        kind = event.type()
        if kind in (QEvent.Type.KeyPress, QEvent.Type.KeyRelease, QEvent.Type.ShortcutOverride):
            assert isinstance(event, QKeyEvent)
            return self._key_event(watched, event)
        # a plot that is put away loses its scene's activity too: the window's alone counts
        deactivated = kind == QEvent.Type.WindowDeactivate and watched is self._window
        if self._down and (deactivated or _focus_lost(event)):
            self.let_go()
        return False

    def _key_event(self, watched: QObject, event: QKeyEvent) -> bool:
        if not isinstance(watched, QWidget) or watched.window() is not self._window:
            return False
        if is_typing(QApplication.focusWidget()) or event.key() in moved_by(watched):
            # What is typed into a field, and arrows that move a control, are not the window's actions'.
            if event.type() == QEvent.Type.ShortcutOverride and not event.modifiers() & _COMMAND:
                event.accept()
                return True
            return False
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and isinstance(watched, QAbstractButton):
            # The held key does not press buttons here, so Return does, before it is an action's key.
            if event.type() == QEvent.Type.KeyPress and watched.isEnabled():
                watched.click()
            event.accept()
            return True
        if event.key() != self._key or event.modifiers() & _COMMAND:
            return False
        if getattr(watched, "chooses_by_space", False) and not self._down:
            return False
        if event.type() == QEvent.Type.ShortcutOverride:
            event.accept()
            return True
        if not event.isAutoRepeat():
            self._turn(down=event.type() == QEvent.Type.KeyPress)
        return True

    def _turn(self, *, down: bool) -> None:
        if not down:
            if self._down:
                self._settling.start()
            return
        self._settling.stop()
        if not self._down:
            self._down = True
            self.pressed.emit()

    def _state_changed(self, state: Qt.ApplicationState) -> None:
        if state != Qt.ApplicationState.ApplicationActive:
            self.let_go()


_COMMAND = (
    Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.AltModifier | Qt.KeyboardModifier.MetaModifier
)


def _focus_lost(event: QEvent) -> bool:
    return isinstance(event, QFocusEvent) and event.type() == QEvent.Type.FocusOut and event.reason() in LOST
