"""Keys that are typed before what they are for is there: kept, and done in their order once it is."""

from __future__ import annotations

from collections import deque
from collections.abc import Callable, Collection

from PySide6.QtCore import QEvent, QObject, Qt, QTimer
from PySide6.QtGui import QAction, QKeyEvent, QKeySequence
from PySide6.QtWidgets import QApplication, QMainWindow, QWidget

PRESSES = (QEvent.Type.KeyPress, QEvent.Type.KeyRelease, QEvent.Type.ShortcutOverride)
MOST_KEPT = 200
"""More keys than a hand types while a door is set out: a key that hangs does not fill the memory."""
MENU_KEYS = (Qt.Key.Key_Alt, Qt.Key.Key_F10)
HELD_KEYS = (Qt.Key.Key_Shift, Qt.Key.Key_Control, Qt.Key.Key_Meta, Qt.Key.Key_AltGr)
"""Do nothing by themselves: each key knows what is held with it."""


class EarlyKeys(QObject):
    """Keeps the keys of a window while it waits; they come again, one after the other, when it does not.

    Menus, other windows and what passes get their keys at once.

    Parameters
    ----------
    window : whose keys are kept
    waits : tells whether what the keys are for is not there yet
    elsewhere : tells whether the window shows a text, whose keys are its own
    passes : the window's actions, by name, that need not wait
    """

    def __init__(
        self,
        window: QMainWindow,
        waits: Callable[[], bool],
        elsewhere: Callable[[], bool],
        passes: Collection[str],
    ) -> None:
        super().__init__(window)
        self._window, self._waits, self._elsewhere = window, waits, elsewhere
        actions: dict[str, QAction] = getattr(window, "actions_by_name", {})
        self._free = [actions[name] for name in passes if name in actions]
        self._kept: deque[QKeyEvent] = deque(maxlen=MOST_KEPT)
        self._watching = True
        self._next = QTimer(self)
        self._next.setSingleShot(True)
        self._next.setInterval(0)
        self._next.timeout.connect(self._do_one)
        application = QApplication.instance()
        assert application is not None
        application.installEventFilter(self)

    @property
    def keeps(self) -> bool:
        """Whether keys are still being kept, or given back."""
        return self._watching

    def look(self) -> None:
        """Give the keys back if nothing is waited for any more."""
        if self._watching and not self._waits():
            self._next.start()

    def stop(self) -> None:
        """Keep no more keys, and forget those kept."""
        self._kept.clear()
        self._next.stop()
        self._watching = False
        application = QApplication.instance()
        if application is not None:
            application.removeEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Take a key on its way into the window, before it is an action's."""
        if event.type() not in PRESSES or not self._watching or watched is not self._window.windowHandle():
            return False
        assert isinstance(event, QKeyEvent)
        if QApplication.activePopupWidget() is not None or not self._is_kept(event):
            return False
        if event.type() is not QEvent.Type.ShortcutOverride:  # the press follows it
            self._kept.append(event.clone())
        event.accept()
        return True

    def _is_kept(self, event: QKeyEvent) -> bool:
        if event.key() in HELD_KEYS:
            return False
        if self._kept:
            return True  # none overtakes another
        if self._elsewhere() or not self._waits():
            return False
        if event.key() in MENU_KEYS or event.modifiers() & Qt.KeyboardModifier.AltModifier:
            return False
        return not any(_has_key(action, event) for action in self._free)

    def _do_one(self) -> None:
        if self._waits():  # one of them has asked for another door
            return
        if not self._kept:
            self.stop()
            return
        send(self._window, self._kept[0])
        if self._watching:
            self._kept.popleft()
            self._next.start()


def send(window: QWidget, event: QKeyEvent) -> None:
    """Do what a key does in a window: of the control that has the keys first, else an action's."""
    target = QApplication.focusWidget() or window
    if event.type() is QEvent.Type.KeyPress and target.window() is window:
        first = _as(QEvent.Type.ShortcutOverride, event)
        first.ignore()
        QApplication.sendEvent(target, first)
        if not first.isAccepted():
            for action in window.actions():
                if action.isEnabled() and _has_key(action, event):
                    action.trigger()
                    return
    QApplication.sendEvent(target, _as(event.type(), event))


def _as(kind: QEvent.Type, event: QKeyEvent) -> QKeyEvent:
    return QKeyEvent(kind, event.key(), event.modifiers(), event.text(), event.isAutoRepeat(), event.count())


def _has_key(action: QAction, event: QKeyEvent) -> bool:
    held = event.modifiers() & ~Qt.KeyboardModifier.KeypadModifier
    key = Qt.Key(event.key())
    wanted = [QKeySequence(_combined(held, key))]
    if not event.text().isalpha():  # on most keyboards a brace or a plus takes Shift to be typed
        wanted.append(QKeySequence(_combined(held & ~Qt.KeyboardModifier.ShiftModifier, key)))
    return any(keys in action.shortcuts() for keys in wanted)


def _combined(held: Qt.KeyboardModifier, key: Qt.Key) -> int:
    return int(held.value) | int(key.value)
