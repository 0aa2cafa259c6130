"""The tree of steps in the window: goes to any step of any branch, at the moment it was left at."""

from __future__ import annotations

from collections.abc import Callable

from ui.main_window import MainWindow
from ui.panels.branches import BranchPage
from ui.state.branches import branches
from ui.state.session import Session


class BranchSide:
    """Shows the tree on a page of the left column.

    Parameters
    ----------
    session, window : whose steps, and where they show
    """

    def __init__(self, session: Session, window: MainWindow) -> None:
        self.session, self.window = session, window
        self.page = BranchPage()
        window.left_pages.addWidget(self.page)
        self.page.wished.connect(self.go)
        self.page.done.connect(self.turn)
        session.document.changed.connect(self._show)

    def actions(self) -> dict[str, Callable[[], object]]:
        """Return what the window's actions of the tree do, by name."""
        return {"branches": self.turn}

    def turn(self) -> None:
        """Show the tree, or the plan again."""
        pages = self.window.left_pages
        on = pages.currentWidget() is not self.page
        pages.setCurrentIndex(0)
        if on:
            pages.setCurrentWidget(self.page)
            self._show()
            self.page.tree.setFocus()
        else:
            self.window.focus_stage()

    def go(self, number: int) -> None:
        """Go to a step, at the moment at which it was left."""
        self.session.go_to_step(number)
        self._show()

    def _show(self) -> None:
        if self.window.left_pages.currentWidget() is self.page:
            history = self.session.document.history
            self.page.show_rows(branches(history.steps, history.path))
