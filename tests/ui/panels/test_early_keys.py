"""Keys typed before what they are for is there: kept, in their order, and only those that have to wait."""

import pytest

pytest.importorskip("PySide6")

from PySide6.QtCore import Qt
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QLineEdit, QMainWindow

from ui.panels.early_keys import EarlyKeys
from ui.panels.finder import Finder
from ui.state.finder import entries


class Desk:
    """A window with three actions and a field; what is done is written down."""

    def __init__(self, qtbot):
        self.window = QMainWindow()
        qtbot.addWidget(self.window)
        self.field = QLineEdit()
        self.window.setCentralWidget(self.field)
        self.done, self.unready, self.reads = [], True, False
        self.window.actions_by_name = {}
        for name, keys in (("run", "Return"), ("deeper", "D"), ("far", "}"), ("help", "F1")):
            action = QAction(name, self.window)
            action.setShortcut(QKeySequence(keys))
            action.triggered.connect(lambda *_, name=name: self.done.append(name))
            self.window.addAction(action)
            self.window.actions_by_name[name] = action
        self.early = EarlyKeys(self.window, lambda: self.unready, lambda: self.reads, ("help",))
        self.window.show()
        qtbot.waitExposed(self.window)
        self.window.activateWindow()  # shortcuts belong to the window in front, and no one else puts it there
        qtbot.waitUntil(self.window.isActiveWindow, timeout=5000)
        self.window.setFocus()

    def press(self, key, modifiers=Qt.KeyboardModifier.NoModifier):
        QTest.keyClick(self.window.windowHandle(), key, modifiers)


@pytest.fixture
def desk(qapp, qtbot):
    made = Desk(qtbot)
    yield made
    made.early.stop()


def test_keys_wait_and_come_in_their_order(desk, qtbot):
    shift = Qt.KeyboardModifier.ShiftModifier
    for key, held in (
        (Qt.Key.Key_D, None), (Qt.Key.Key_BraceRight, shift), (Qt.Key.Key_D, None), (Qt.Key.Key_Return, None),
    ):  # fmt: skip
        desk.press(key, held or Qt.KeyboardModifier.NoModifier)
    qtbot.wait(20)
    desk.early.look()
    assert desk.done == []
    desk.unready = False
    desk.early.look()
    qtbot.waitUntil(lambda: len(desk.done) == 4, timeout=2000)
    assert desk.done == ["deeper", "far", "deeper", "run"]
    desk.press(Qt.Key.Key_D)  # from now on at once
    assert desk.done[-1] == "deeper"
    assert len(desk.done) == 5


def test_help_and_a_text_in_front_have_their_keys_at_once(desk):
    desk.press(Qt.Key.Key_F1)
    assert desk.done == ["help"]
    desk.reads = True
    desk.press(Qt.Key.Key_D)
    assert desk.done == ["help", "deeper"]


def test_a_held_key_alone_is_not_waited_for(desk):
    desk.press(Qt.Key.Key_Control, Qt.KeyboardModifier.ControlModifier)
    desk.press(Qt.Key.Key_F1)
    assert desk.done == ["help"]


def test_what_another_window_has_the_keys_for_is_no_action(desk, qtbot):
    other = QLineEdit()
    qtbot.addWidget(other)
    other.returnPressed.connect(lambda: desk.done.append("returned"))
    desk.press(Qt.Key.Key_A)
    desk.press(Qt.Key.Key_Return)
    other.show()
    other.activateWindow()
    other.setFocus()
    qtbot.waitUntil(other.hasFocus, timeout=2000)
    desk.unready = False
    desk.early.look()
    qtbot.waitUntil(lambda: desk.done == ["returned"], timeout=2000)
    assert other.text() == "a"


def test_what_is_kept_is_not_overtaken_and_may_be_typed_into_a_field(desk, qtbot):
    desk.field.setFocus()
    desk.press(Qt.Key.Key_A)
    desk.press(Qt.Key.Key_F1)
    assert (desk.field.text(), desk.done) == ("", [])
    desk.unready = False
    desk.early.look()
    qtbot.waitUntil(lambda: desk.done == ["help"], timeout=2000)
    assert desk.field.text() == "a"


def test_a_key_that_sets_out_another_door_lets_those_after_it_wait(desk, qtbot):
    desk.window.actions_by_name["deeper"].triggered.connect(lambda: setattr(desk, "unready", True))
    desk.press(Qt.Key.Key_D)
    desk.press(Qt.Key.Key_Return)
    desk.unready = False
    desk.early.look()
    qtbot.wait(30)
    assert desk.done == ["deeper"]
    desk.unready = False
    desk.early.look()
    qtbot.waitUntil(lambda: desk.done == ["deeper", "run"], timeout=2000)


def test_words_typed_before_the_finder_has_the_keys_are_its_words(desk, qtbot):
    """A screen gives a new window the keys a moment late; a click below takes them back."""
    desk.early.stop()
    finder = Finder(desk.window, entries(), lambda _: True)
    chosen = []
    finder.chosen.connect(chosen.append)
    finder.ask()
    desk.press(Qt.Key.Key_D)
    for key in (Qt.Key.Key_Backspace, Qt.Key.Key_U, Qt.Key.Key_N, Qt.Key.Key_D, Qt.Key.Key_O):
        desk.press(key)
    assert (finder.field.text(), desk.done) == ("undo", [])
    desk.press(Qt.Key.Key_Return)
    assert chosen == ["undo"]
    assert not finder.isVisible()
    finder.ask()
    QTest.mouseClick(desk.window.windowHandle(), Qt.MouseButton.LeftButton)
    desk.window.activateWindow()
    qtbot.waitUntil(desk.window.isActiveWindow, timeout=2000)
    desk.window.setFocus()
    desk.press(Qt.Key.Key_D)
    assert desk.done == ["deeper"]
    finder.hide()
