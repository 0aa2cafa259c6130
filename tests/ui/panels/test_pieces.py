"""Small parts of the window: a menu that is filled anew."""

from PySide6.QtWidgets import QMenu
from shiboken6 import isValid

from ui.panels.pieces import fill


def test_an_action_that_has_its_menu_filled_anew_outlives_its_own_event(qtbot):
    menu, wished = QMenu(), []
    qtbot.addWidget(menu)

    def wish(index):
        wished.append(index)
        made.extend(fill(menu, ("new", "newer", "newest"), wish))

    made = fill(menu, ("old", "older"), wish)
    old = made[1]
    old.trigger()
    assert wished == [1]
    assert [action.text() for action in menu.actions()] == ["new", "newer", "newest"]
    qtbot.waitUntil(lambda: not isValid(old))
    menu.actions()[2].trigger()
    assert wished == [1, 2]


def test_an_action_is_still_there_when_it_has_its_menu_filled(qtbot):
    menu, valid = QMenu(), []
    qtbot.addWidget(menu)

    def wish(_index):
        fill(menu, (), wish)
        valid.append(isValid(action))

    (action,) = fill(menu, ("one",), wish)
    action.trigger()
    assert valid == [True]
    assert not menu.isEnabled()
