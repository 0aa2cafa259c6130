"""The menus of what comes with the program: lessons, and plans by what they show."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtGui import QAction
from PySide6.QtWidgets import QMenu, QWidget

from ui.state.lesson_file import ready_titles
from ui.state.ready_plans import ACTION, groups
from ui.state.tongue import tr

MakeAction = Callable[[str, str, str], QAction]
"""Makes the action of a name, its words and its key."""


def lessons_menu(parent: QWidget, action: MakeAction) -> QMenu:
    """Return the menu of the ready lessons."""
    menu = QMenu(tr("Ready lessons"), parent)
    for name, title in ready_titles():
        menu.addAction(action(f"lesson_{name}", title, ""))
    return menu


def plans_menu(parent: QWidget, action: MakeAction) -> QMenu:
    """Return the menu of the ready plans, one menu of it for each group."""
    menu = QMenu(tr("Ready plans"), parent)
    for group in groups():
        of_group = menu.addMenu(tr(group.title).replace("&", "&&"))
        for name, title in group.plans:
            of_group.addAction(action(f"{ACTION}{name}", title, ""))
    return menu
