"""The curves of force, room and exit width: the next one in the reading, all of them in a large window."""

from __future__ import annotations

import dataclasses
from collections.abc import Callable
from typing import TYPE_CHECKING

from ui.main_window import MainWindow
from ui.state.session import Session

if TYPE_CHECKING:
    from ui.panels.curve_sheet import CurveSheet


class CurveSide:
    """Does what the keys of the curves wish.

    Parameters
    ----------
    session, window : whose moments, and where they show
    go_inside_move : shows a moment of the move shown, by its index there
    """

    def __init__(self, session: Session, window: MainWindow, go_inside_move: Callable[[int], object]) -> None:
        self._session, self._window, self._go_inside_move = session, window, go_inside_move
        self._sheet: CurveSheet | None = None
        window.reading.place_wished.connect(session.timeline.go)

    def actions(self) -> dict[str, Callable[[], object]]:
        """Return what the window's actions of the curves do, by name."""
        return {"curve": self.next_curve, "curves_large": self.large}

    def next_curve(self) -> None:
        """Show the next curve of the reading; where that is in its drawer, take it out."""
        view = self._session.view
        if view.options.columns(self._window.width())[1]:
            self._window.reading.next_curve()
        else:
            view.set(dataclasses.replace(view.options, drawer="reading", stage_only=False))

    def large(self) -> None:
        """Open the large window, or put it away."""
        if self._sheet is not None and self._sheet.isVisible():
            self._sheet.hide()
            return
        if self._sheet is None:
            # Imported here: its library takes its time, and few open it.
            from ui.panels.curve_sheet import CurveSheet

            self._sheet = CurveSheet(self._window)
            self._sheet.place_wished.connect(self._session.timeline.go)
            self._sheet.moment_wished.connect(self._go_inside_move)
        self._sheet.show()
        self._sheet.raise_()
        self.show()

    def show(self) -> None:
        """Show in the large window what the reading shows."""
        sheet = self._sheet
        if sheet is not None and sheet.isVisible():
            sheet.take_look(self._window.look)
            sheet.show_reading(self._window.reading.shown, self._session.view.options.units)
